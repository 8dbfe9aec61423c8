//! Coordinates as people type or paste them.
//!
//! Understood: decimal degrees with point or comma (`52.1, 5.2`, `52,1 5,2`), degrees and minutes
//! and seconds (`52°06'N 5°11'E`, `N 52 6 30 E 5 11 12`), signs or the letters N, S, E, W, the
//! Dutch Z for south, longitude first if letters say so, and `geo:` links (RFC 5870).

use crate::units::Degrees;
use std::fmt;

/// Why a text gave no coordinates.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CoordinateError {
    /// No numbers, or letters that are no part of coordinates: rather the name of a place.
    NotCoordinates,
    /// Latitude or longitude is missing.
    OnlyOne,
    /// More numbers than two coordinates have, or not clear which belong together.
    Unclear,
    /// The letter O: east in German and Dutch, west in French, Italian and Spanish.
    LetterO,
    /// Two latitudes or two longitudes.
    TwoAlike,
    /// Minutes or seconds not within 0 to below 60.
    SixtiethsOutOfRange {
        /// What was typed.
        value: f64,
    },
    /// Latitude not within -90 to 90.
    LatitudeOutOfRange {
        /// What was typed.
        latitude: Degrees,
    },
    /// Longitude not within -180 to 180.
    LongitudeOutOfRange {
        /// What was typed.
        longitude: Degrees,
    },
}

impl fmt::Display for CoordinateError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotCoordinates => write!(out, "not coordinates"),
            Self::OnlyOne => write!(out, "latitude or longitude is missing"),
            Self::Unclear => write!(out, "unclear which numbers are latitude and longitude"),
            Self::LetterO => write!(out, "O can mean east or west: use E or W"),
            Self::TwoAlike => write!(out, "two latitudes or two longitudes"),
            Self::SixtiethsOutOfRange { value } => {
                write!(out, "minutes and seconds go from 0 to 59, not {value}")
            }
            Self::LatitudeOutOfRange { latitude } => {
                write!(out, "latitude goes from -90 to 90, not {}", latitude.0)
            }
            Self::LongitudeOutOfRange { longitude } => {
                write!(out, "longitude goes from -180 to 180, not {}", longitude.0)
            }
        }
    }
}

impl std::error::Error for CoordinateError {}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Token {
    /// `degrees` and `sixtieth`: the mark that follows.
    Number {
        size: f64,
        negative: bool,
        degrees: bool,
        sixtieth: bool,
    },
    Side(char),
    Separator,
}

/// What people write after minutes and seconds.
const SIXTIETH_MARKS: &str = "'’′\"”″´`";

/// Latitude and longitude [deg], north and east positive.
///
/// # Errors
/// [`CoordinateError`], one for each way in which a text can fail; [`CoordinateError::NotCoordinates`]
/// for what is better searched as a name.
///
/// ```
/// use nightbank::model::places::coordinates::parse;
/// let (lat, lon) = parse("52°06'N 5°11'E").unwrap();
/// assert!((lat.0 - 52.1).abs() < 1e-9 && (lon.0 - 5.1833).abs() < 1e-4);
/// ```
pub fn parse(text: &str) -> Result<(Degrees, Degrees), CoordinateError> {
    let tokens = tokens(text)?;
    let (first, second) = halves(&tokens)?;
    let (first, second) = (Angle::read(first)?, Angle::read(second)?);
    let (latitude, longitude) = match (first.is_longitude, second.is_longitude) {
        (Some(true), Some(false) | None) => (second, first),
        // `52 6 N` is rather one latitude than a longitude before one.
        (None, Some(false)) => return Err(CoordinateError::Unclear),
        (Some(false) | None, Some(true) | None) => (first, second),
        (Some(true), Some(true)) | (Some(false), Some(false)) => {
            return Err(CoordinateError::TwoAlike);
        }
    };
    let (latitude, longitude) = (Degrees(latitude.degrees), Degrees(longitude.degrees));
    if latitude.0.abs() > 90.0 {
        Err(CoordinateError::LatitudeOutOfRange { latitude })
    } else if longitude.0.abs() > 180.0 {
        Err(CoordinateError::LongitudeOutOfRange { longitude })
    } else {
        Ok((latitude, longitude))
    }
}

fn tokens(text: &str) -> Result<Vec<Token>, CoordinateError> {
    let trimmed = text.trim().trim_end_matches([',', ';']).trim_end();
    let bare = trimmed.strip_prefix("geo:").unwrap_or(trimmed);
    let text: Vec<char> = with_decimal_points(bare).chars().collect();
    let mut tokens = Vec::new();
    let mut at = 0;
    while let Some(&c) = text.get(at) {
        let next = text.get(at + 1).copied();
        if c.is_ascii_digit() || (is_sign(c) && next.is_some_and(|n| n.is_ascii_digit())) {
            let sign = is_sign(c);
            let start = if sign { at + 1 } else { at };
            let digits: String =
                text.iter().skip(start).take_while(|c| c.is_ascii_digit() || **c == '.').collect();
            at = start + digits.chars().count();
            let size = digits.parse().map_err(|_| CoordinateError::Unclear)?;
            let degrees = text.get(at).is_some_and(|c| matches!(c, '°' | 'º' | '˚'));
            let sixtieth = text.get(at).is_some_and(|c| SIXTIETH_MARKS.contains(*c));
            tokens.push(Token::Number { size, negative: sign && c != '+', degrees, sixtieth });
            continue;
        }
        if c.is_alphabetic() && c != 'º' {
            if next.is_some_and(|n| n.is_alphabetic() && n != 'º') {
                return Err(CoordinateError::NotCoordinates);
            }
            tokens.push(Token::Side(match c.to_ascii_uppercase() {
                side @ ('N' | 'S' | 'E' | 'W') => side,
                'Z' => 'S',
                'O' => 'O',
                _ => return Err(CoordinateError::NotCoordinates),
            }));
        } else if matches!(c, ',' | ';' | '/') {
            tokens.push(Token::Separator);
        } else if !(c.is_whitespace() || "°º˚()".contains(c) || SIXTIETH_MARKS.contains(c)) {
            return Err(CoordinateError::NotCoordinates);
        }
        at += 1;
    }
    let has = |wanted: fn(&Token) -> bool| tokens.iter().any(wanted);
    if !has(|token| matches!(token, Token::Number { .. })) {
        return Err(CoordinateError::NotCoordinates);
    }
    if has(|token| *token == Token::Side('O')) {
        return Err(CoordinateError::LetterO);
    }
    Ok(tokens)
}

fn is_sign(c: char) -> bool {
    matches!(c, '-' | '−' | '–' | '+')
}

/// Commas that are decimal marks become points, the others stay.
///
/// With a point in the text, every comma separates. Without, a comma between two digits is a
/// decimal mark if something else separates the numbers, and of `52,1,5,2` the middle comma
/// separates. `52,5` alone may be half a pair or a whole one: both readings end as an error.
fn with_decimal_points(text: &str) -> String {
    if text.contains('.') {
        return text.to_owned();
    }
    let chars: Vec<char> = text.trim().chars().collect();
    let digit =
        |at: Option<usize>| at.and_then(|at| chars.get(at)).is_some_and(char::is_ascii_digit);
    let between_digits = |at: usize| digit(at.checked_sub(1)) && digit(Some(at + 1));
    let tight: Vec<usize> = chars
        .iter()
        .enumerate()
        .filter(|(at, c)| **c == ',' && between_digits(*at))
        .map(|(at, _)| at)
        .collect();
    let other = chars
        .iter()
        .enumerate()
        .any(|(at, c)| !c.is_ascii_digit() && !is_sign(*c) && !tight.contains(&at));
    let decimal = |at: usize| match (other, tight.as_slice()) {
        (true, tight) => tight.contains(&at),
        (false, [only]) => at == *only,
        (false, [first, _, third]) => at == *first || at == *third,
        (false, _) => false,
    };
    chars.iter().enumerate().map(|(at, c)| if decimal(at) { '.' } else { *c }).collect()
}

/// Splits into the tokens of the first and of the second coordinate.
fn halves(tokens: &[Token]) -> Result<(&[Token], &[Token]), CoordinateError> {
    let places = |wanted: fn(&Token) -> bool| -> Vec<usize> {
        tokens.iter().enumerate().filter(|(_, t)| wanted(t)).map(|(at, _)| at).collect()
    };
    let numbers = places(|token| matches!(token, Token::Number { .. }));
    let degrees = places(|token| matches!(token, Token::Number { degrees: true, .. }));
    let sides = places(|token| matches!(token, Token::Side(_)));
    let separators = places(|token| *token == Token::Separator);
    if numbers.len() < 2 {
        return Err(CoordinateError::OnlyOne);
    }
    if numbers.len() > 6 || sides.len() > 2 || degrees.len() > 2 {
        return Err(CoordinateError::Unclear);
    }
    let cut = match (separators.as_slice(), sides.as_slice(), degrees.as_slice()) {
        ([at], _, _) => *at,
        ([], [0, second], _) => *second,
        ([], [first, _], _) => first + 1,
        ([], _, [_, second]) => *second,
        ([], _, [_]) => return Err(CoordinateError::OnlyOne),
        ([], [at], _) if *at > 0 && at + 1 < tokens.len() => at + 1,
        ([], _, _) if numbers.len().is_multiple_of(2) => {
            *numbers.get(numbers.len() / 2).ok_or(CoordinateError::Unclear)?
        }
        _ => return Err(CoordinateError::Unclear),
    };
    let (first, second) = tokens.split_at_checked(cut).ok_or(CoordinateError::Unclear)?;
    Ok((first, second))
}

struct Angle {
    degrees: f64,
    /// `None` where no letter says so.
    is_longitude: Option<bool>,
}

impl Angle {
    fn read(tokens: &[Token]) -> Result<Self, CoordinateError> {
        let (mut size, mut unit, mut negative) = (0.0, 1.0, false);
        let mut side = None;
        for token in tokens {
            match *token {
                Token::Number { size: part, negative: minus, degrees, sixtieth } => {
                    let first = unit == 1.0;
                    if unit > 3600.0 || (first && sixtieth) || (!first && (minus || degrees)) {
                        return Err(CoordinateError::Unclear);
                    }
                    if unit > 1.0 && part >= 60.0 {
                        return Err(CoordinateError::SixtiethsOutOfRange { value: part });
                    }
                    size += part / unit;
                    unit *= 60.0;
                    negative |= minus;
                }
                Token::Side(letter) if side.is_none() => side = Some(letter),
                Token::Side(_) => return Err(CoordinateError::Unclear),
                Token::Separator => {}
            }
        }
        if unit == 1.0 {
            return Err(CoordinateError::OnlyOne);
        }
        // A minus and a letter together contradict or double each other.
        if negative && side.is_some() {
            return Err(CoordinateError::Unclear);
        }
        let negative = negative || matches!(side, Some('S' | 'W'));
        Ok(Self {
            degrees: if negative { -size } else { size },
            is_longitude: side.map(|letter| matches!(letter, 'E' | 'W')),
        })
    }
}
