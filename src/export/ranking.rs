//! The ranking of what takes most, as a picture to paste or print: SVG 1.1, plain text and bars.
//!
//! The page hands over finished words and figures. Names are the user's own or came in a link; they
//! are written as character data, so that no element comes out of one.

use std::fmt::Write;

/// One row.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct RankedRow {
    /// What it is.
    pub label: String,
    /// How much, with its unit.
    pub value: String,
    /// Length of the bar, 0..1 of the longest.
    pub length_frac: f64,
}

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

/// Width of the picture; its unit is that of the `viewBox`.
const WIDTH: f64 = 720.0;
const MARGIN: f64 = 32.0;
const FIRST_ROW: f64 = 112.0;
const ROW: f64 = 52.0;
/// Characters of a name that fit beside its figure.
const LABEL_CHARS: usize = 44;

/// The ranking as an SVG document of its own.
#[must_use]
pub fn ranking_svg(ranking: &Ranking) -> String {
    let height = FIRST_ROW + ROW * ranking.rows.len() as f64 + 48.0;
    let (right, room) = (WIDTH - MARGIN, WIDTH - 2.0 * MARGIN);
    let mut svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {WIDTH} {height}\" \
         width=\"{WIDTH}\" height=\"{height}\" font-family=\"system-ui, sans-serif\" \
         fill=\"#1b2740\" role=\"img\">\n<title>{}</title>\n\
         <rect width=\"{WIDTH}\" height=\"{height}\" fill=\"#f5f0e6\"/>\n",
        escaped(&ranking.title)
    );
    let mut text = |at: (f64, f64), style: &str, words: &str| {
        // Writing to a String cannot fail.
        let _ =
            writeln!(svg, "<text x=\"{}\" y=\"{}\" {style}>{}</text>", at.0, at.1, escaped(words));
    };
    let heading = "font-size=\"26\" font-weight=\"600\" font-family=\"Georgia, serif\"";
    text((MARGIN, 52.0), heading, &ranking.title);
    text((MARGIN, 80.0), "font-size=\"18\" fill=\"#4c566b\"", &ranking.subtitle);
    for (index, row) in ranking.rows.iter().enumerate() {
        let y = FIRST_ROW + ROW * index as f64 + 16.0;
        text((MARGIN, y), "font-size=\"19\"", &shortened(&row.label));
        text((right, y), "font-size=\"19\" font-weight=\"600\" text-anchor=\"end\"", &row.value);
    }
    text((MARGIN, height - 20.0), "font-size=\"16\" fill=\"#4c566b\"", &ranking.footer);
    for (index, row) in ranking.rows.iter().enumerate() {
        let y = FIRST_ROW + ROW * index as f64 + 24.0;
        let frac = if row.length_frac.is_finite() { row.length_frac.clamp(0.0, 1.0) } else { 0.0 };
        let _ = writeln!(
            svg,
            "<rect x=\"{MARGIN}\" y=\"{y}\" width=\"{:.1}\" height=\"9\" fill=\"#c47812\"/>\
             <path d=\"M{MARGIN} {}H{right}\" stroke=\"#857a63\"/>",
            (frac * room).max(2.0),
            y + 9.5
        );
    }
    svg.push_str("</svg>\n");
    svg
}

fn shortened(label: &str) -> String {
    if label.chars().count() <= LABEL_CHARS {
        return label.to_owned();
    }
    label.chars().take(LABEL_CHARS - 1).chain(['…']).collect()
}

/// Character data of XML 1.0: marks escaped, characters that XML does not allow left out.
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\u{fffe}' | '\u{ffff}' => {}
            c if c.is_control() => out.push(' '),
            c => out.push(c),
        }
    }
    out
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
        "text", "text", "text", "rect", "path",
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
        assert!(svg.contains(&format!(">{}…</text>", "x".repeat(LABEL_CHARS - 1))));
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

        #[test]
        fn escaping_loses_nothing(name in "[ -~äé€<>&\"]{0,60}") {
            let back = escaped(&name)
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&amp;", "&");
            prop_assert_eq!(back, name);
        }
    }
}
