//! What the pictures have in common: SVG 1.1 in the colours of paper and ink, 720 units wide, so that the smallest
//! letters can be read where a forum shows them 600 px wide.
//!
//! Names are the user's own or came in a link; they are written as character data, so that no element comes out of
//! one.

use std::fmt::{self, Write};

/// Width of a picture; its unit is that of the `viewBox`.
pub(super) const WIDTH: f64 = 720.0;
/// Room left and right.
pub(super) const MARGIN: f64 = 32.0;
/// Height of a row with its bar.
const ROW: f64 = 52.0;
/// Characters of a name that fit beside its figure.
pub(super) const LABEL_CHARS: usize = 44;

/// Colours of the page on paper.
const PAPER: &str = "#f5f0e6";
pub(super) const SHEET: &str = "#fffaf0";
pub(super) const INK: &str = "#1b2740";
pub(super) const SOFT: &str = "#4c566b";
pub(super) const EDGE: &str = "#857a63";
pub(super) const GLOW: &str = "#c47812";

/// One row of a ranking.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct RankedRow {
    /// What it is.
    pub label: String,
    /// How much, with its unit.
    pub value: String,
    /// Length of the bar, 0..1 of the longest.
    pub length_frac: f64,
}

/// A picture on its way.
pub(super) struct Drawing {
    title: String,
    body: String,
}

impl Drawing {
    /// With its heading and the line under it.
    pub(super) fn new(title: &str, subtitle: &str) -> Self {
        let mut drawing = Self { title: title.to_owned(), body: String::new() };
        let heading = "font-size=\"26\" font-weight=\"600\" font-family=\"Georgia, serif\"";
        drawing.text((MARGIN, 52.0), heading, title);
        let soft = format!("font-size=\"18\" fill=\"{}\"", SOFT);
        drawing.text((MARGIN, 80.0), &soft, subtitle);
        drawing
    }

    /// Words at a place, in the way the attributes say.
    pub(super) fn text(&mut self, (x, y): (f64, f64), attributes: &str, words: &str) {
        self.add(format_args!(
            "<text x=\"{x:.1}\" y=\"{y:.1}\" {attributes}>{}</text>",
            escaped(words)
        ));
    }

    /// A filled rectangle: its corner, its size.
    pub(super) fn rect(&mut self, (x, y): (f64, f64), (width, height): (f64, f64), colour: &str) {
        self.add(format_args!(
            "<rect x=\"{x:.1}\" y=\"{y:.1}\" width=\"{width:.1}\" height=\"{height:.1}\" fill=\"{colour}\"/>"
        ));
    }

    /// An element as it stands; words that are not our own go through [`escaped`] first.
    pub(super) fn add(&mut self, element: fmt::Arguments<'_>) {
        // Writing to a String cannot fail.
        let _ = writeln!(self.body, "{element}");
    }

    /// A line, or the edge of a shape, through points; broken as the attributes say.
    pub(super) fn path(&mut self, points: impl IntoIterator<Item = (f64, f64)>, attributes: &str) {
        let mut path = String::new();
        for (x, y) in points {
            let letter = if path.is_empty() { 'M' } else { 'L' };
            let _ = write!(path, "{letter}{x:.1} {y:.1}");
        }
        self.add(format_args!("<path d=\"{path}\" {attributes}/>"));
    }

    /// Rows with bars from `top` down; tells where they end.
    pub(super) fn rows(&mut self, top: f64, rows: &[RankedRow]) -> f64 {
        let (right, room) = (WIDTH - MARGIN, WIDTH - 2.0 * MARGIN);
        for (index, row) in rows.iter().enumerate() {
            let y = top + ROW * index as f64 + 16.0;
            self.text((MARGIN, y), "font-size=\"19\"", &shortened(&row.label));
            let end = "font-size=\"19\" font-weight=\"600\" text-anchor=\"end\"";
            self.text((right, y), end, &row.value);
            let y = y + 8.0;
            self.rect((MARGIN, y), ((part(row.length_frac) * room).max(2.0), 9.0), GLOW);
            let stroke = format!("stroke=\"{}\"", EDGE);
            self.path([(MARGIN, y + 9.5), (right, y + 9.5)], &stroke);
        }
        top + ROW * rows.len() as f64
    }

    /// The document, so high.
    pub(super) fn finish(self, height: f64) -> String {
        format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {WIDTH} {height}\" \
             width=\"{WIDTH}\" height=\"{height}\" font-family=\"system-ui, sans-serif\" \
             fill=\"{INK}\" role=\"img\">\n<title>{}</title>\n\
             <rect width=\"{WIDTH}\" height=\"{height}\" fill=\"{PAPER}\"/>\n{}</svg>\n",
            escaped(&self.title),
            self.body
        )
    }
}

/// A share of a length, 0..1; none where it is no number.
pub(super) fn part(frac: f64) -> f64 {
    if frac.is_finite() { frac.clamp(0.0, 1.0) } else { 0.0 }
}

fn shortened(label: &str) -> String {
    if label.chars().count() <= LABEL_CHARS {
        return label.to_owned();
    }
    label.chars().take(LABEL_CHARS - 1).chain(['…']).collect()
}

/// Character data of XML 1.0: marks escaped, characters that XML does not allow left out.
pub(super) fn escaped(text: &str) -> String {
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

    proptest! {
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
