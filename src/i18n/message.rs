//! Finds messages in Fluent files and formats them with their arguments.
//!
//! `fluent-syntax` reads a message when it is asked for, as the start of the page needs few of them.
//! What a message may hold is what the texts of the page hold: values, and variants chosen by a value
//! ([Fluent's rules](https://projectfluent.org/fluent/guide/selectors.html)). One with anything else
//! gives way like a missing one; `tests/text_counts.rs` lists it, and compares every message with
//! what `fluent-bundle` makes of it. That library would do for the page too, but for its weight: with
//! its tables of plural rules and numbers it is a sixth of what the page may weigh. The plural
//! categories come from outside instead, in the page from the browser.

use super::Lang;
use fluent_syntax::ast::{
    Entry, Expression, InlineExpression, Message, Pattern, PatternElement, Variant, VariantKey,
};
use fluent_syntax::parser::parse_runtime;
use fluent_syntax::unicode::unescape_unicode;
use std::borrow::Cow;

/// A value put into a text.
#[derive(Clone, Debug, PartialEq)]
pub enum Arg<'a> {
    /// Text as it stands; numbers are formatted by the caller.
    Text(&'a str),
    /// A count that may choose between plural forms.
    Count(i32),
    /// A number as it is shown, and its value: the text asks for both, for `{ $x }` with the first
    /// and for `{ $x_n -> ... }` with the second, which chooses between plural forms.
    Shown(&'a str, f64),
}

/// Tells the CLDR plural category of a number in a language, such as `one` or `other`.
pub type PluralCategory = fn(Lang, f64) -> String;

/// A Fluent file and where its messages stand.
pub(super) struct Source {
    text: Cow<'static, str>,
    /// In the order of their keys.
    messages: Vec<Place>,
}

/// Where a message stands [bytes].
#[derive(Clone, Copy)]
struct Place {
    start: usize,
    key_end: usize,
    end: usize,
}

impl Source {
    pub(super) fn new(text: Cow<'static, str>) -> Self {
        // A message starts with its key at the start of a line and goes on to the next (EBNF of
        // Fluent 1.0: all that belongs to it is indented or stands in braces).
        let mut messages: Vec<Place> = Vec::new();
        let mut at = 0;
        for line in text.split_inclusive('\n') {
            let starts = line.starts_with(|c: char| c.is_ascii_alphabetic());
            if (starts || line.starts_with('#'))
                && let Some(before) = messages.last_mut()
            {
                before.end = before.end.min(at);
            }
            if starts {
                let key = line.find(|c: char| !c.is_ascii_alphanumeric() && c != '-' && c != '_');
                let key_end = at + key.unwrap_or(line.len());
                messages.push(Place { start: at, key_end, end: text.len() });
            }
            at += line.len();
        }
        messages.sort_by(|a, b| text[a.start..a.key_end].cmp(&text[b.start..b.key_end]));
        Self { text, messages }
    }

    fn key(&self, place: &Place) -> &str {
        &self.text[place.start..place.key_end]
    }

    /// The message in Fluent.
    pub(super) fn message(&self, key: &str) -> Option<&str> {
        let index = self.messages.binary_search_by(|place| self.key(place).cmp(key)).ok()?;
        let place = self.messages.get(index)?;
        Some(&self.text[place.start..place.end])
    }
}

fn parsed(text: &str) -> Option<Message<&str>> {
    let resource = parse_runtime(text).unwrap_or_else(|(resource, _)| resource);
    resource.body.into_iter().find_map(|entry| match entry {
        Entry::Message(message) => Some(message),
        _ => None,
    })
}

pub(super) fn faults_of(sources: &[Source]) -> Vec<String> {
    let mut faults = Vec::new();
    let mut keys = std::collections::BTreeSet::new();
    for source in sources {
        if let Err((_, errors)) = parse_runtime(&*source.text) {
            faults.extend(errors.iter().map(ToString::to_string));
        }
        for place in &source.messages {
            let key = source.key(place);
            if !keys.insert(key) {
                faults.push(format!("{key} stands twice"));
            }
            let known = parsed(&source.text[place.start..place.end])
                .and_then(|message| message.value)
                .is_some_and(|pattern| is_known(&pattern));
            if !known {
                faults.push(format!("{key} is not a message this page can fill in"));
            }
        }
    }
    faults
}

fn is_known(pattern: &Pattern<&str>) -> bool {
    let value = |inline: &InlineExpression<&str>| {
        matches!(
            inline,
            InlineExpression::VariableReference { .. } | InlineExpression::StringLiteral { .. }
        )
    };
    pattern.elements.iter().all(|element| match element {
        PatternElement::TextElement { .. } => true,
        PatternElement::Placeable { expression: Expression::Inline(inline) } => value(inline),
        PatternElement::Placeable { expression: Expression::Select { selector, variants } } => {
            matches!(selector, InlineExpression::VariableReference { .. })
                && variants.iter().all(|variant| {
                    let whole = match variant.key {
                        VariantKey::NumberLiteral { value } => value.parse::<i32>().is_ok(),
                        VariantKey::Identifier { .. } => true,
                    };
                    whole && is_known(&variant.value)
                })
        }
    })
}

/// What a name stands for in a message.
enum Value<'a> {
    Text(&'a str),
    Number(f64),
}

/// What a message is filled in with.
pub(super) struct Filling<'a> {
    pub(super) args: &'a [(&'a str, Arg<'a>)],
    pub(super) lang: Lang,
    pub(super) category: PluralCategory,
}

impl Filling<'_> {
    /// Fills in a message given in Fluent; `None` where it asks for a value it is not given, which
    /// must not show through as "{$name}", or for something the page does not know.
    pub(super) fn fill(&self, message: &str, said: &mut String) -> Option<()> {
        self.write(&parsed(message)?.value?, said)
    }

    fn value(&self, name: &str) -> Option<Value<'_>> {
        self.args.iter().find_map(|(given, arg)| match arg {
            Arg::Text(text) if *given == name => Some(Value::Text(text)),
            Arg::Count(count) if *given == name => Some(Value::Number(f64::from(*count))),
            Arg::Shown(text, _) if *given == name => Some(Value::Text(text)),
            Arg::Shown(_, number) if name.strip_suffix("_n") == Some(*given) => {
                Some(Value::Number(*number))
            }
            _ => None,
        })
    }

    fn write(&self, pattern: &Pattern<&str>, said: &mut String) -> Option<()> {
        for element in &pattern.elements {
            match element {
                PatternElement::TextElement { value } => said.push_str(value),
                PatternElement::Placeable { expression: Expression::Inline(inline) } => {
                    self.write_inline(inline, said)?;
                }
                PatternElement::Placeable {
                    expression: Expression::Select { selector, variants },
                } => {
                    let InlineExpression::VariableReference { id } = selector else { return None };
                    let variant = self.choose(&self.value(id.name)?, variants)?;
                    self.write(&variant.value, said)?;
                }
            }
        }
        Some(())
    }

    fn write_inline(&self, inline: &InlineExpression<&str>, said: &mut String) -> Option<()> {
        match inline {
            InlineExpression::VariableReference { id } => match self.value(id.name)? {
                Value::Text(text) => said.push_str(text),
                Value::Number(number) => said.push_str(&number.to_string()),
            },
            InlineExpression::StringLiteral { value } => unescape_unicode(said, value).ok()?,
            _ => return None,
        }
        Some(())
    }

    /// The first variant whose key is the value or its plural category, else the default one.
    fn choose<'v, 's>(
        &self,
        value: &Value<'_>,
        variants: &'v [Variant<&'s str>],
    ) -> Option<&'v Variant<&'s str>> {
        let category = match value {
            Value::Text(_) => None,
            Value::Number(number) => Some((self.category)(self.lang, *number)),
        };
        let fits = |key: &VariantKey<&str>| match (key, value) {
            (VariantKey::Identifier { name }, Value::Text(text)) => name == text,
            (VariantKey::Identifier { name }, Value::Number(_)) => {
                category.as_deref() == Some(name)
            }
            (VariantKey::NumberLiteral { value }, Value::Number(number)) => {
                value.parse::<i32>().is_ok_and(|key| f64::from(key) == *number)
            }
            (VariantKey::NumberLiteral { .. }, Value::Text(_)) => false,
        };
        variants
            .iter()
            .find(|variant| fits(&variant.key))
            .or_else(|| variants.iter().find(|variant| variant.default))
    }
}
