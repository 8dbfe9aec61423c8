//! Copies set beside the setup on screen for comparing, as stored.
//!
//! The same JSON as a file, with any number of setups from none to [`MAX_SETUPS`](file::MAX_SETUPS):
//!
//! ```json
//! { "format": "nightbank", "schema": 1, "setups": [] }
//! ```

use super::file::{self, FileContent, FileError};
use crate::model::Setup;
use serde_json::Value;

/// The copies as a value to store.
#[must_use]
pub fn copies_json(copies: &[Setup]) -> Value {
    file::setups_json(copies)
}

/// The copies in the stored text, pulled into bounds; where a field did not fit, the text is to be set aside too.
///
/// # Errors
///
/// [`FileError`]; [`FileError::Newer`] must not be written over, anything else is to be set aside
/// before it is.
pub fn read_copies(raw: &str) -> Result<FileContent, FileError> {
    let mut object = file::object(raw)?;
    let steps = file::steps(&object)?;
    let Some(Value::Array(setups)) = object.remove("setups") else {
        return Err(FileError::NoSetups);
    };
    file::read_setups(setups, &steps)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::Load;
    use crate::model::example::example_setup;
    use crate::store::file::MAX_SETUPS;

    #[test]
    fn copies_come_back_and_so_do_none() {
        let other = Setup { loads: vec![Load::default()], ..Setup::default() };
        for copies in [vec![], vec![example_setup()], vec![example_setup(), other.clone(), other]] {
            let copies: Vec<Setup> = copies.into_iter().map(|copy| copy.sanitised().0).collect();
            let read = read_copies(&copies_json(&copies).to_string()).expect("reads");
            assert_eq!(read, FileContent { setups: copies, ..FileContent::default() });
        }
    }

    #[test]
    fn what_comes_out_is_within_bounds() {
        let text = copies_json(&[Setup::default()]).to_string();
        let text = text.replacen("\"parallel\":1", "\"parallel\":200", 1);
        let read = read_copies(&text).expect("reads").setups;
        assert_eq!(read[0].bank.parallel, 16);
        assert_eq!(read[0].clone().sanitised().1, 0);
    }

    #[test]
    fn what_does_not_read_says_so() {
        let whole = copies_json(&[Setup::default()]).to_string();
        let newer = whole.replacen("\"schema\":1", "\"schema\":2", 1);
        assert_eq!(read_copies(&newer), Err(FileError::Newer { schema: 2 }));
        assert_eq!(read_copies(""), Err(FileError::Empty));
        assert_eq!(read_copies(r#"{"format":"nightbank","schema":1}"#), Err(FileError::NoSetups));
        assert!(matches!(read_copies(&whole[..40]), Err(FileError::NotJson { .. })));
        let wrong = whole.replacen("\"chemistry\":\"agm\"", "\"chemistry\":7", 1);
        assert_eq!(
            read_copies(&wrong).map(|read| (read.setups.len(), read.misfits.len())),
            Ok((1, 1))
        );
        let many = vec![Setup::default(); MAX_SETUPS + 1];
        let many = copies_json(&many).to_string();
        let count = MAX_SETUPS + 1;
        assert_eq!(read_copies(&many), Err(FileError::TooManySetups { count }));
    }
}
