//! Words in the headings of tables.

/// Whether a folded heading has a word of a list: words of [`fold`](crate::model::typed_words::fold) with spaces
/// between, so without the e of "oe"; a hyphen stands for the rest of a longer word.
pub(super) fn has_word(heading: &str, list: &str) -> bool {
    heading.split(' ').filter(|word| !word.is_empty()).any(|word| {
        list.split(' ').any(|known| match (known.strip_suffix('-'), known.strip_prefix('-')) {
            (Some(start), _) => word.starts_with(start),
            (None, Some(end)) => word.ends_with(end),
            (None, None) => word == known,
        })
    })
}

/// Fails where a word of a list is not as [`has_word`] takes it.
#[cfg(test)]
pub(super) fn assert_folded(lists: &[&str]) {
    use crate::model::typed_words::fold;
    for word in lists.iter().flat_map(|list| list.split(' ')) {
        let plain = word.trim_matches('-');
        assert_eq!(fold(plain), plain, "{word}");
    }
}
