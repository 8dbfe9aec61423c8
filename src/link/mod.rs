//! A setup as a link: everything after the `#` of the page's address.
//!
//! [`encode`] gives the version character and letters and digits only, so that no forum or chat
//! breaks it; [`decode`] takes whatever a person pastes, the whole address included. A fragment
//! stays in the browser: it is not sent to the server.
//!
//! A link carries numbers at fixed steps ([`quantised`] shows what arrives), names as typed, and no
//! precise place: latitude and longitude are rounded to 0.1 deg (up to 6 km off), the altitude to
//! 50 m. The name of the place goes along as written.
//!
//! ```
//! use nightbank::link::{decode, encode, quantised};
//! use nightbank::model::Setup;
//!
//! let setup = Setup { name: "Lakeside in June".to_owned(), ..Setup::default() };
//! let fragment = encode(&setup).expect("short enough");
//! assert_eq!(decode(&format!("<https://camp.example/#{fragment}>.")), Ok(quantised(&setup)));
//! ```

mod address;
mod base62;
mod bits;
mod editions;
mod v1;
mod wire;

pub use address::MAX_READ_CHARS;

use crate::model::Setup;
use std::fmt;

/// Links longer than this are long for a chat; the page says so.
pub const WARN_CHARS: usize = 500;
/// Longer links are not given out: many chats and old programs stop at 2,000 characters.
pub const REFUSE_CHARS: usize = 1800;

/// The setup is too large for a link; a file carries it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TooLong {
    /// Characters the link would have, more than [`REFUSE_CHARS`].
    pub chars: usize,
}

impl fmt::Display for TooLong {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "the link would have {} characters, {REFUSE_CHARS} is the limit", self.chars)
    }
}

impl std::error::Error for TooLong {}

/// Why a link does not open. Nothing is guessed and nothing stored is touched.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LinkError {
    /// There is no link in the text.
    Empty,
    /// The end is missing: only part of the link was copied.
    Truncated,
    /// Written by a newer version of the page.
    Newer {
        /// Version of the link: `2`; in a version 1 link `1.3` for edition 3 of the catalogue, `1+7`
        /// for extension 7, `1+` for a choice that is not known here.
        version: String,
    },
    /// Characters were changed on the way, or it is no link of this page.
    Corrupt,
}

impl fmt::Display for LinkError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => write!(f, "there is no link in the text"),
            Self::Truncated => write!(f, "the end of the link is missing"),
            Self::Newer { version } => write!(f, "the link is of the newer version {version}"),
            Self::Corrupt => write!(f, "the link was changed on the way"),
        }
    }
}

impl std::error::Error for LinkError {}

/// A link that opened.
#[derive(Clone, Debug, PartialEq)]
pub struct Opened {
    /// The setup, inside every bound.
    pub setup: Setup,
    /// Values that had to be pulled into bounds; 0 for any link this page wrote.
    pub adjusted: usize,
}

/// The setup as text for after the `#`: the version character, then letters and digits.
///
/// # Errors
///
/// [`TooLong`] where the text would have more than [`REFUSE_CHARS`] characters.
pub fn encode(setup: &Setup) -> Result<String, TooLong> {
    let text = v1::pack(&quantised(setup));
    let chars = text.chars().count();
    if chars > REFUSE_CHARS { Err(TooLong { chars }) } else { Ok(text) }
}

/// The setup as a link carries it: inside every bound, numbers at the steps of the link, the place
/// rounded, loads numbered by row. Doing it twice changes nothing.
#[must_use]
pub fn quantised(setup: &Setup) -> Setup {
    v1::rounded(setup.clone())
}

/// The setup in a link, a whole address, or a text around one.
///
/// # Errors
///
/// [`LinkError`] says what is wrong with it.
pub fn decode(pasted: &str) -> Result<Setup, LinkError> {
    open(pasted).map(|opened| opened.setup)
}

/// As [`decode`], telling how many values had to be pulled into bounds.
///
/// # Errors
///
/// [`LinkError`] says what is wrong with it.
pub fn open(pasted: &str) -> Result<Opened, LinkError> {
    let mut telling = (0, 0);
    let mut failure = LinkError::Empty;
    for candidate in address::candidates(pasted) {
        match open_candidate(&candidate) {
            Ok(opened) => return Ok(opened),
            Err(error) => {
                let says = (rank(&candidate), candidate.text.len());
                if says >= telling {
                    (telling, failure) = (says, error);
                }
            }
        }
    }
    Err(failure)
}

/// Whether an address's fragment is meant as a link of ours, opening or not, rather than as a place
/// on the page: those start with a letter.
#[must_use]
pub fn is_link(fragment: &str) -> bool {
    let starts =
        |candidate: &address::Candidate| candidate.text.starts_with(|c| matches!(c, '1'..='9'));
    let candidates = address::candidates(fragment);
    candidates.iter().any(starts)
}

/// Of several failures the one to tell: a `#` elsewhere in the text is often no link at all.
fn rank(candidate: &address::Candidate) -> u8 {
    match candidate.text.chars().next() {
        Some(v1::VERSION) => 3,
        Some('2'..='9') => 2,
        _ => 1,
    }
}

fn open_candidate(candidate: &address::Candidate) -> Result<Opened, LinkError> {
    let mut chars = candidate.text.chars();
    match chars.next() {
        Some(v1::VERSION) => match v1::unpack(chars.as_str()) {
            Ok(setup) => {
                let (setup, adjusted) = setup.sanitised();
                Ok(Opened { setup, adjusted })
            }
            Err(v1::Refusal::Short) => Err(LinkError::Truncated),
            Err(v1::Refusal::Newer(version)) => Err(LinkError::Newer { version }),
            Err(v1::Refusal::Corrupt) => Err(LinkError::Corrupt),
        },
        Some(version @ '2'..='9') => Err(LinkError::Newer { version: version.to_string() }),
        None if candidate.abridged => Err(LinkError::Truncated),
        _ => Err(LinkError::Corrupt),
    }
}
