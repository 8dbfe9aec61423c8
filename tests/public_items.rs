//! Public items that nothing in `src` uses: tests of such an item prove nothing about the page.
//!
//! Told by names: an item counts as used where its name stands in `src` outside the tests, an import and
//! its own definition. Two items of one name hide each other, so this finds most, not all.

use proc_macro2::{Delimiter, TokenStream, TokenTree};
use std::collections::BTreeMap;
use std::path::Path;

/// Public items that only something outside `src` uses, each with its reason.
const ALLOWED: [(&str, &str); 6] = [
    ("candidate_count", "printed by the benchmark of the search"),
    ("screened_frac", "printed by the benchmark of the search"),
    ("finished", "told by the benchmark of a trial"),
    ("step_by_step", "what the maps are held to, by their tests and the benchmark"),
    ("residual", "the ledger that every step and trip of the tests is balanced by"),
    ("write_library", "the same text as `library_json`, in one call"),
];

/// What the sources say about names.
#[derive(Default)]
struct Names {
    /// Files that define a public item of the name.
    defined: BTreeMap<String, Vec<String>>,
    /// How often the name stands anywhere, its definitions included.
    seen: BTreeMap<String, usize>,
}

impl Names {
    /// Reads the tokens of one file or block; tests and imports are left out.
    fn read(&mut self, file: &str, tokens: TokenStream) {
        let tokens: Vec<TokenTree> = tokens.into_iter().collect();
        let mut at = 0;
        while at < tokens.len() {
            if is_test_attribute(&tokens[at..]) {
                at = end_of_item(&tokens, at + 2);
                continue;
            }
            match &tokens[at] {
                TokenTree::Ident(word) if word == "use" => {
                    at = end_of_item(&tokens, at);
                    continue;
                }
                TokenTree::Ident(word) => {
                    let word = word.to_string();
                    if word == "pub"
                        && let Some(name) = defined_after(&tokens[at + 1..])
                    {
                        self.defined.entry(name).or_default().push(file.to_owned());
                    }
                    *self.seen.entry(word).or_default() += 1;
                }
                TokenTree::Group(group) => self.read(file, group.stream()),
                TokenTree::Punct(_) | TokenTree::Literal(_) => {}
            }
            at += 1;
        }
    }

    /// Names of public items that stand nowhere but in their definitions, with a file of each.
    fn unused(&self) -> Vec<(&str, &str)> {
        self.defined
            .iter()
            .filter(|(name, files)| self.seen.get(*name) <= Some(&files.len()))
            .map(|(name, files)| (name.as_str(), files[0].as_str()))
            .collect()
    }
}

/// `#[cfg(test)]` or `#[test]`.
fn is_test_attribute(tokens: &[TokenTree]) -> bool {
    let [TokenTree::Punct(hash), TokenTree::Group(inside), ..] = tokens else {
        return false;
    };
    let text = inside.stream().to_string().replace(' ', "");
    hash.as_char() == '#' && (text == "cfg(test)" || text == "test")
}

/// Behind the next `;` or block in braces.
fn end_of_item(tokens: &[TokenTree], from: usize) -> usize {
    let import = matches!(&tokens[from], TokenTree::Ident(word) if word == "use");
    let ends = |token: &TokenTree| match token {
        TokenTree::Punct(mark) => mark.as_char() == ';',
        TokenTree::Group(group) => !import && group.delimiter() == Delimiter::Brace,
        _ => false,
    };
    (from..tokens.len()).find(|&at| ends(&tokens[at])).map_or(tokens.len(), |at| at + 1)
}

/// Name of what `pub` makes public: a function, type, constant or trait.
fn defined_after(tokens: &[TokenTree]) -> Option<String> {
    let mut words = tokens.iter().filter(|token| !matches!(token, TokenTree::Group(_))).take(4);
    let mut kind = words.next()?.to_string();
    for word in words {
        let word = word.to_string();
        match kind.as_str() {
            "const" | "async" | "unsafe" if word == "fn" => kind = word,
            // A name a macro fills in, `$name`, is told by its mark alone.
            "fn" | "struct" | "enum" | "const" | "static" | "type" | "trait" => {
                return (word != "$").then_some(word);
            }
            _ => return None,
        }
    }
    None
}

fn read_folder(folder: &Path, names: &mut Names) {
    for entry in std::fs::read_dir(folder).expect("folder") {
        let path = entry.expect("entry").path();
        if path.is_dir() {
            read_folder(&path, names);
        } else if path.extension().is_some_and(|ending| ending == "rs")
            && !path.ends_with("tests.rs")
        {
            let text = std::fs::read_to_string(&path).expect("text");
            let tokens = text.parse().unwrap_or_else(|error| panic!("{path:?}: {error}"));
            names.read(&path.to_string_lossy(), tokens);
        }
    }
}

#[test]
fn every_public_item_is_used_by_the_page() {
    let mut names = Names::default();
    read_folder(Path::new("src"), &mut names);
    assert!(names.defined.len() > 500, "{} public items read", names.defined.len());
    let unused: Vec<_> = names
        .unused()
        .into_iter()
        .filter(|(name, _)| ALLOWED.iter().all(|(allowed, _)| allowed != name))
        .collect();
    assert!(unused.is_empty(), "used by nothing in src: {unused:#?}");
    for (allowed, reason) in ALLOWED {
        let still = names.unused().iter().any(|(name, _)| *name == allowed);
        assert!(still, "{allowed} ({reason}) is used or gone: take it off the list");
    }
}

/// The search itself: an item used by tests and an import alone is found, one that is called is not.
#[test]
fn an_item_that_only_its_tests_use_is_found() {
    let mut names = Names::default();
    let text = "pub use a::idle; /// idle()\npub const fn idle() {} pub(crate) struct Called; \
                fn x() { Called; } pub const LONE: u8 = 1; #[cfg(test)] mod tests { fn t() { idle(); LONE; } }";
    names.read("x.rs", text.parse().expect("tokens"));
    assert_eq!(names.unused(), [("LONE", "x.rs"), ("idle", "x.rs")]);
}
