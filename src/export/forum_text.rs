//! The answer as text to paste: plain, Markdown, BBCode.
//!
//! The page hands over finished words and figures in the reader's language. Names in them are the
//! user's own or came in a link, so in each markup they are made to stay text: no tag, no link, no
//! picture, no mention comes out of a name.

/// A figure with what it means.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Line {
    /// What it is, e.g. `Nights`.
    pub label: String,
    /// The figure with its unit, e.g. `4 of 7`.
    pub value: String,
}

/// A setup and its answer, in finished words.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct ForumAnswer {
    /// Name of the setup.
    pub title: String,
    /// What it comes to, in a sentence or two.
    pub verdict: String,
    /// What stands between a label and its value, such as `: `.
    pub between: String,
    /// The setup and its answer in a few lines.
    pub lines: Vec<Line>,
    /// Heading of the list of what draws most.
    pub drains_title: String,
    /// What draws most, largest first.
    pub drains: Vec<Line>,
    /// Sentences after it: cautions, how sure the answer is.
    pub notes: Vec<String>,
    /// Words the link stands behind.
    pub link_label: String,
    /// Whole address of the setup; empty for none.
    pub link: String,
}

/// What the forum or chat understands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Markup {
    /// Nothing: chats, mail.
    Plain,
    /// CommonMark and its relatives.
    Markdown,
    /// BBCode.
    BbCode,
}

impl Markup {
    /// All, in the order they are offered.
    pub const ALL: [Self; 3] = [Self::Plain, Self::Markdown, Self::BbCode];
}

/// The answer as text.
///
/// The link stands behind words where there is markup: forums show a bare long address abridged,
/// and people then copy the abridged text.
#[must_use]
pub fn forum_text(answer: &ForumAnswer, markup: Markup) -> String {
    let text = |raw: &str| as_text(raw, markup);
    let strong = |raw: &str| match markup {
        Markup::Plain => text(raw),
        Markup::Markdown => format!("**{}**", text(raw)),
        Markup::BbCode => format!("[b]{}[/b]", text(raw)),
    };
    let between = &answer.between;
    let pair = |line: &Line| format!("{}{between}{}", text(&line.label), text(&line.value));
    let bullet = if markup == Markup::Markdown { "- " } else { "" };
    let mut parts = Vec::new();
    if has_text(&answer.title) {
        parts.push(strong(&answer.title));
    }
    parts.push(text(&answer.verdict));
    let lines: Vec<String> =
        answer.lines.iter().map(|line| format!("{bullet}{}", pair(line))).collect();
    parts.push(lines.join("\n"));
    if !answer.drains.is_empty() {
        if has_text(&answer.drains_title) {
            parts.push(strong(&answer.drains_title));
        }
        let drains = answer.drains.iter().enumerate();
        let drains: Vec<String> =
            drains.map(|(index, line)| format!("{}. {}", index + 1, pair(line))).collect();
        parts.push(drains.join("\n"));
    }
    parts.extend(answer.notes.iter().map(|note| text(note)));
    parts.push(marked_link(&answer.link_label, &answer.link, between, markup));
    parts.retain(|part| !part.trim().is_empty());
    parts.join("\n\n") + "\n"
}

/// A link behind words; empty without an address.
pub(super) fn marked_link(label: &str, address: &str, between: &str, markup: Markup) -> String {
    let (link, label) = (safe_address(address), as_text(label, markup));
    if link.is_empty() {
        return String::new();
    }
    match markup {
        Markup::Plain => format!("{label}{between}{link}"),
        Markup::Markdown => format!("[{label}]({link})"),
        Markup::BbCode => format!("[url={link}]{label}[/url]"),
    }
}

fn has_text(raw: &str) -> bool {
    raw.chars().any(|c| !is_blank(c))
}

fn is_blank(c: char) -> bool {
    c.is_whitespace() || c.is_control()
}

/// A character of no width that keeps two others apart.
const JOINER: char = '\u{2060}';

/// Stands for what follows the text, which may be a mark of ours.
const END: char = '\0';

/// One line of text that the markup leaves alone.
pub(super) fn as_text(raw: &str, markup: Markup) -> String {
    let line = raw.split(is_blank).filter(|word| !word.is_empty()).collect::<Vec<_>>().join(" ");
    let mut text = String::with_capacity(line.len() + 8);
    let mut chars = line.chars().peekable();
    let mut before = ' ';
    while let Some(c) = chars.next() {
        let next = chars.peek().copied().unwrap_or(END);
        match markup {
            Markup::Plain => text.push(c),
            Markup::Markdown => {
                if is_markdown(c, before, next) {
                    text.push('\\');
                }
                text.push(c);
            }
            Markup::BbCode => text.push(c),
        }
        if markup != Markup::Plain && starts_something(c, before, next, markup) {
            text.push(JOINER);
        }
        before = c;
    }
    text
}

/// Marks that a backslash keeps literal (CommonMark 0.31, section 2.4). A point or bracket between
/// a figure and its unit stays readable where the text ends up in a place without Markdown.
fn is_markdown(c: char, before: char, next: char) -> bool {
    match c {
        '\\' | '`' | '*' | '_' | '[' | ']' | '<' | '>' | '#' | '~' | '|' | '&' | '$' | '^'
        | '=' => true,
        '!' => next == '[',
        // At the start of a line these begin a list, a rule or a definition, between words they do not.
        '-' | '+' | ':' => before == ' ' || before == c || next == c,
        '.' | ')' => before.is_ascii_digit() && matches!(next, ' ' | END),
        _ => false,
    }
}

/// What engines make links, mentions, tags or smileys of without any mark that could be escaped.
fn starts_something(c: char, before: char, next: char, markup: Markup) -> bool {
    match c {
        '@' => next != ' ',
        // `https://`, `mailto:a`, `:smile:`, `:)`
        ':' => next != ' ' && !next.is_ascii_digit(),
        // `www.place.example`, `place.example`
        '.' => before.is_alphanumeric() && next.is_alphabetic(),
        '[' | ';' => markup == Markup::BbCode && next != ' ',
        _ => false,
    }
}

/// The address with everything encoded that a markup could take for its own.
fn safe_address(address: &str) -> String {
    let mut safe = String::with_capacity(address.len());
    for byte in address.trim().bytes() {
        match byte {
            b'A'..=b'Z' | b'a'..=b'z' | b'0'..=b'9' => safe.push(char::from(byte)),
            b'-' | b'.' | b'~' | b':' | b'/' | b'?' | b'#' | b'&' | b'=' | b'%' | b'_' => {
                safe.push(char::from(byte));
            }
            _ => safe.push_str(&format!("%{byte:02X}")),
        }
    }
    safe
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use pulldown_cmark::{Event, Options, Parser, Tag, TagEnd};

    fn line(label: &str, value: &str) -> Line {
        Line { label: label.to_owned(), value: value.to_owned() }
    }

    fn answer(name: &str) -> ForumAnswer {
        ForumAnswer {
            title: name.to_owned(),
            verdict: "Friday is safe.".to_owned(),
            between: ": ".to_owned(),
            lines: vec![line("Nights", "4 of 7"), line("Battery", "105 Ah, LiFePO4")],
            drains_title: "What draws most".to_owned(),
            drains: vec![line(name, "540 Wh"), line("Lamps", "3.5 Wh")],
            notes: vec!["Clouds may cost a night.".to_owned(), name.to_owned()],
            link_label: "Open this setup".to_owned(),
            link: "https://camp.example/#1abc".to_owned(),
        }
    }

    #[test]
    fn plain_text_reads_as_it_is() {
        let text = forum_text(&answer("Our van"), Markup::Plain);
        assert_eq!(
            text,
            "Our van\n\nFriday is safe.\n\nNights: 4 of 7\nBattery: 105 Ah, LiFePO4\n\nWhat draws most\n\n\
             1. Our van: 540 Wh\n2. Lamps: 3.5 Wh\n\nClouds may cost a night.\n\n\
             Our van\n\nOpen this setup: https://camp.example/#1abc\n"
        );
    }

    #[test]
    fn markdown_and_bbcode_have_their_marks_and_readable_figures() {
        let markdown = forum_text(&answer("Our van"), Markup::Markdown);
        assert!(
            markdown.starts_with(
                "**Our van**\n\nFriday is safe.\n\n- Nights: 4 of 7\n- Battery: 105 Ah,"
            )
        );
        assert!(markdown.contains("\n2. Lamps: 3.5 Wh\n"));
        assert!(markdown.ends_with("[Open this setup](https://camp.example/#1abc)\n"));
        let bbcode = forum_text(&answer("Our van"), Markup::BbCode);
        assert!(bbcode.starts_with("[b]Our van[/b]\n\nFriday is safe.\n\nNights: 4 of 7\n"));
        assert!(bbcode.ends_with("[url=https://camp.example/#1abc]Open this setup[/url]\n"));
    }

    /// Curly quotes change the look of a name, not its meaning.
    const ALL_BUT_QUOTES: Options = Options::all().difference(Options::ENABLE_SMART_PUNCTUATION);

    /// Text of the first drain as a reader of Markdown sees it, and every tag in the document.
    fn rendered(markdown: &str) -> (String, Vec<String>) {
        let (mut text, mut tags, mut items, mut inside) = (String::new(), Vec::new(), 0, false);
        let mut all_items = 0;
        for event in Parser::new_ext(markdown, ALL_BUT_QUOTES) {
            all_items += usize::from(matches!(event, Event::Start(Tag::Item)));
            match event {
                Event::Start(Tag::List(Some(_))) => inside = true,
                Event::Start(Tag::Item) if inside => items += 1,
                Event::End(TagEnd::List(true)) => inside = false,
                Event::Text(words) if inside && items == 1 => text.push_str(&words),
                Event::Start(Tag::Paragraph | Tag::Item | Tag::List(None) | Tag::Strong)
                | Event::End(_)
                | Event::Text(_)
                | Event::SoftBreak => {}
                other => tags.push(format!("{other:?}")),
            }
        }
        assert_eq!(all_items, 4, "{markdown}");
        (text.replace(JOINER, ""), tags)
    }

    fn expect_text(name: &str) {
        let (text, tags) = rendered(&forum_text(&answer(name), Markup::Markdown));
        let flat = name.split(is_blank).filter(|w| !w.is_empty()).collect::<Vec<_>>().join(" ");
        assert_eq!(text, format!("{flat}: 540 Wh").replace(JOINER, "").trim_start(), "{name:?}");
        let ours = tags.iter().filter(|tag| tag.contains("https://camp.example/#1abc")).count();
        assert_eq!((ours, tags.len()), (1, 1), "{name:?} gave {tags:?}");
    }

    #[test]
    fn a_name_stays_text_in_markdown() {
        for name in [
            "**bold**",
            "_em_",
            "`code`",
            "[a](https://bad.example)",
            "![x](y)",
            "<b>x</b>",
            "# big",
            "- item",
            "1. one",
            "+ plus",
            "> quote",
            "~~gone~~",
            "a | b",
            "&lt;script&gt;",
            "\\",
            "$x$",
            "<https://bad.example>",
            "---",
            "===",
            "***",
            "[^1]: note",
            "[x]: /y",
            "1) one",
            "^a^",
            "==a==",
            "a\nb\n\n# c",
            "    code",
            ":smile:",
            "\t- tab",
            "(c)",
            "[ ] task",
            "| - |",
        ] {
            expect_text(name);
        }
    }

    #[test]
    fn a_name_makes_no_link_and_calls_nobody() {
        for markup in [Markup::Markdown, Markup::BbCode] {
            for name in
                ["see https://bad.example/x", "www.bad.example", "@someone", "a@bad.example"]
            {
                let text = forum_text(&answer(name), markup);
                let own = text.replace("https://camp.example/#1abc", "");
                for taken in ["://", "www.b", "@s", "@b", "bad.e"] {
                    assert!(!own.contains(taken), "{taken} in {own}");
                }
            }
        }
    }

    #[test]
    fn a_name_is_no_tag_in_bbcode() {
        for name in [
            "[b]x[/b]",
            "[/b][img]https://bad.example/x.png[/img]",
            "[url=x]y[/url]",
            "[*]",
            "[[b]]",
        ] {
            let text = forum_text(&answer(name), Markup::BbCode);
            let tags: Vec<&str> = text
                .split('[')
                .skip(1)
                .filter(|rest| !rest.starts_with(JOINER))
                .map(|rest| rest.split(']').next().unwrap_or(rest))
                .collect();
            assert_eq!(tags, ["b", "/b", "b", "/b", "url=https://camp.example/#1abc", "/url"]);
        }
    }

    #[test]
    fn an_address_cannot_end_its_mark() {
        let mut hostile = answer("Van");
        hostile.link = "https://camp.example/a)b]c\"d<e> f#1abc".to_owned();
        let safe = "https://camp.example/a%29b%5Dc%22d%3Ce%3E%20f#1abc";
        assert!(forum_text(&hostile, Markup::Markdown).ends_with(&format!("]({safe})\n")));
        assert!(forum_text(&hostile, Markup::BbCode).contains(&format!("[url={safe}]")));
        hostile.link = String::new();
        assert!(!forum_text(&hostile, Markup::Markdown).contains("]("));
    }

    proptest! {
        #[test]
        fn any_name_stays_text_in_markdown(name in "[ -~äé€]{0,40}") {
            expect_text(&name);
        }

        #[test]
        fn any_name_opens_no_tag_in_bbcode(name in any::<String>()) {
            let text = forum_text(&answer(&name), Markup::BbCode);
            let own = text.split('[').skip(1).filter(|rest| !rest.starts_with([JOINER, ' ']));
            // The heading goes where the name is blank.
            let title = if has_text(&name) { 2 } else { 0 };
            prop_assert_eq!(own.count(), 4 + title);
        }
    }
}
