//! A table to post: plain, Markdown, BBCode. The page reads the first two back ([`crate::import::table`]).

use super::forum_text::{Markup, as_text, marked_link};

/// A table in finished words.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct ForumTable {
    /// Headings of the columns.
    pub headings: Vec<String>,
    /// Rows of as many cells.
    pub rows: Vec<Vec<String>>,
    /// What stands between a label and its value, such as `: `.
    pub between: String,
    /// Words the link stands behind.
    pub link_label: String,
    /// Whole address of the setup; empty for none.
    pub link: String,
}

/// The table as text, with the link under it.
#[must_use]
pub fn forum_table(table: &ForumTable, markup: Markup) -> String {
    let row = |cells: &[String]| {
        let cells = cells.iter().map(|cell| as_text(cell, markup));
        match markup {
            // A semicolon in a cell would part it.
            Markup::Plain => {
                cells.map(|cell| cell.replace(';', ",")).collect::<Vec<_>>().join("; ")
            }
            Markup::Markdown => format!("| {} |", cells.collect::<Vec<_>>().join(" | ")),
            Markup::BbCode => {
                let cells: String = cells.map(|cell| format!("[td]{cell}[/td]")).collect();
                format!("[tr]{cells}[/tr]")
            }
        }
    };
    let mut lines = vec![row(&table.headings)];
    if markup == Markup::Markdown {
        lines.push(format!("|{}", " --- |".repeat(table.headings.len())));
    }
    lines.extend(table.rows.iter().map(|cells| row(cells)));
    if markup == Markup::BbCode {
        lines.insert(0, "[table]".to_owned());
        lines.push("[/table]".to_owned());
    }
    let link = marked_link(&table.link_label, &table.link, &table.between, markup);
    if !link.is_empty() {
        lines.extend([String::new(), link]);
    }
    lines.join("\n") + "\n"
}

#[cfg(test)]
mod tests {
    use super::*;

    fn table() -> ForumTable {
        ForumTable {
            headings: ["Appliance", "Draw (W)"].map(str::to_owned).to_vec(),
            rows: vec![
                ["Fan | big; [b]x[/b]", "20"].map(str::to_owned).to_vec(),
                ["Lamp", "3.5"].map(str::to_owned).to_vec(),
            ],
            between: ": ".to_owned(),
            link_label: "Open".to_owned(),
            link: "https://camp.example/#1abc".to_owned(),
        }
    }

    #[test]
    fn in_each_markup() {
        assert_eq!(
            forum_table(&table(), Markup::Plain),
            "Appliance; Draw (W)\nFan | big, [b]x[/b]; 20\nLamp; 3.5\n\nOpen: https://camp.example/#1abc\n"
        );
        let markdown = forum_table(&table(), Markup::Markdown);
        assert!(
            markdown.starts_with("| Appliance | Draw (W) |\n| --- | --- |\n| Fan \\| big;"),
            "{markdown}"
        );
        assert!(
            markdown.ends_with("| Lamp | 3.5 |\n\n[Open](https://camp.example/#1abc)\n"),
            "{markdown}"
        );
        let bbcode = forum_table(&table(), Markup::BbCode);
        assert!(
            bbcode.starts_with("[table]\n[tr][td]Appliance[/td][td]Draw (W)[/td][/tr]\n"),
            "{bbcode}"
        );
        assert!(!bbcode.contains("[b]"), "{bbcode}");
        assert!(
            bbcode.contains("[/table]\n\n[url=https://camp.example/#1abc]Open[/url]\n"),
            "{bbcode}"
        );
    }
}
