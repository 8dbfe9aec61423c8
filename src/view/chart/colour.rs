//! Reading a colour as it is written in the style sheets.

/// Red, green, blue.
pub type Rgb = (u8, u8, u8);

/// The colour of `#rgb`, `#rrggbb` or `rgb(r g b)`; a trailing alpha is left out. `None` for
/// anything else.
#[must_use]
pub fn parse_colour(text: &str) -> Option<Rgb> {
    let text = text.trim();
    if let Some(hex) = text.strip_prefix('#') {
        return parse_hex(hex);
    }
    let inside =
        text.strip_prefix("rgba(").or_else(|| text.strip_prefix("rgb("))?.strip_suffix(')')?;
    let mut parts = inside.split([' ', ',', '/']).filter(|part| !part.is_empty());
    let mut channel = || parts.next()?.parse::<f64>().ok().map(|value| value.round() as u8);
    Some((channel()?, channel()?, channel()?))
}

fn parse_hex(hex: &str) -> Option<Rgb> {
    let digits: Vec<u8> =
        hex.chars().map(|c| c.to_digit(16).map(|d| d as u8)).collect::<Option<_>>()?;
    match *digits.as_slice() {
        [r, g, b] | [r, g, b, _] => Some((r * 17, g * 17, b * 17)),
        [r, r2, g, g2, b, b2] | [r, r2, g, g2, b, b2, _, _] => {
            Some((r * 16 + r2, g * 16 + g2, b * 16 + b2))
        }
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_ways_a_colour_is_written() {
        assert_eq!(parse_colour(" #1b2740 "), Some((27, 39, 64)));
        assert_eq!(parse_colour("#FFF"), Some((255, 255, 255)));
        assert_eq!(parse_colour("#11223380"), Some((17, 34, 51)));
        assert_eq!(parse_colour("rgb(20 28 46 / 55%)"), Some((20, 28, 46)));
        assert_eq!(parse_colour("rgba(1, 2, 3, 0.5)"), Some((1, 2, 3)));
        assert_eq!(parse_colour("rgb(1, 2)"), None);
        assert_eq!(parse_colour("#12g"), None);
        assert_eq!(parse_colour("#ä1"), None);
        assert_eq!(parse_colour(""), None);
        assert_eq!(parse_colour("tomato"), None);
    }
}
