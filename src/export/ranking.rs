//! The ranking of what takes most, as a picture to paste or print.
//!
//! The page hands over finished words and figures.

use super::drawing::{Drawing, MARGIN};

pub use super::drawing::RankedRow;

/// A ranking in words and figures.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Ranking {
    /// Heading.
    pub title: String,
    /// What it is of, and when.
    pub subtitle: String,
    /// Largest first.
    pub rows: Vec<RankedRow>,
    /// Small print.
    pub footer: String,
}

const FIRST_ROW: f64 = 112.0;

/// The ranking as an SVG document of its own.
#[must_use]
pub fn ranking_svg(ranking: &Ranking) -> String {
    let mut drawing = Drawing::new(&ranking.title, &ranking.subtitle);
    let end = drawing.rows(FIRST_ROW, &ranking.rows);
    drawing.text((MARGIN, end + 28.0), "font-size=\"16\" fill=\"#4c566b\"", &ranking.footer);
    drawing.finish(end + 48.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn ranking(label: &str, length_frac: f64) -> Ranking {
        let row = RankedRow { label: label.to_owned(), value: "80 Wh".to_owned(), length_frac };
        Ranking {
            title: "What takes most".to_owned(),
            subtitle: label.to_owned(),
            rows: vec![row],
            footer: "Nightbank".to_owned(),
        }
    }

    /// Names of the elements, as a reader of XML finds their marks.
    fn elements(svg: &str) -> Vec<&str> {
        let tags = svg.split('<').skip(1);
        tags.map(|tag| tag.split([' ', '>', '/']).find(|name| !name.is_empty()).unwrap_or(""))
            .collect()
    }

    const OWN: [&str; 16] = [
        "svg", "title", "title", "rect", "text", "text", "text", "text", "text", "text", "text",
        "text", "rect", "path", "text", "text",
    ];

    #[test]
    fn bars_are_as_long_as_their_share() {
        let svg = ranking_svg(&ranking("Fridge", 0.5));
        assert!(svg.contains(">Fridge</text>") && svg.contains(">80 Wh</text>"));
        assert!(svg.contains("width=\"328.0\""), "half of 720 - 2 * 32: {svg}");
        for odd in [f64::NAN, f64::INFINITY, -1.0] {
            let svg = ranking_svg(&ranking("Fridge", odd));
            assert!(!svg.contains("NaN") && !svg.contains("inf"), "{svg}");
        }
        assert!(ranking_svg(&ranking("Fridge", 9.0)).contains("width=\"656.0\""));
    }

    #[test]
    fn long_names_end_in_dots() {
        let svg = ranking_svg(&ranking(&"x".repeat(80), 1.0));
        assert!(svg.contains(&format!(
            ">{}…</text>",
            "x".repeat(crate::export::drawing::LABEL_CHARS - 1)
        )));
    }

    proptest! {
        #[test]
        fn no_name_becomes_an_element(name in any::<String>()) {
            let svg = ranking_svg(&ranking(&name, 1.0));
            let mut own = OWN.to_vec();
            own.push("svg");
            prop_assert_eq!(elements(&svg), own);
            prop_assert!(!svg.chars().any(|c| c.is_control() && c != '\n'));
        }
    }
}
