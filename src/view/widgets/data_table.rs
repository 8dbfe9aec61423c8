//! A plain table of figures; every chart has one behind it.

use leptos::prelude::*;

/// A table.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct DataTable {
    /// What it shows.
    pub caption: String,
    /// Heads of the columns.
    pub heads: Vec<String>,
    /// Rows; the first cell of each names the row.
    pub rows: Vec<Vec<String>>,
}

/// The table on the page, in a box that scrolls by itself on narrow screens.
#[must_use]
pub fn data_table(table: DataTable) -> AnyView {
    let heads: Vec<AnyView> = table
        .heads
        .into_iter()
        .map(|head| view! { <th scope="col">{head}</th> }.into_any())
        .collect();
    let rows: Vec<AnyView> = table
        .rows
        .into_iter()
        .map(|row| {
            let cells: Vec<AnyView> = row
                .into_iter()
                .enumerate()
                .map(|(column, cell)| {
                    if column == 0 {
                        view! { <th scope="row">{cell}</th> }.into_any()
                    } else {
                        view! { <td>{cell}</td> }.into_any()
                    }
                })
                .collect();
            view! { <tr>{cells}</tr> }.into_any()
        })
        .collect();
    let name = table.caption.clone();
    view! {
        <div class="table-box" tabindex="0" role="group" aria-label=name>
            <table>
                <caption>{table.caption}</caption>
                <thead><tr>{heads}</tr></thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
    }
    .into_any()
}
