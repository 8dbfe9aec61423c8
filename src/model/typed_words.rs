//! Finding an entry by what somebody types: accents, case and umlaut spellings do not matter.
//!
//! Text and query are folded the same way, so a folded query that starts a folded word starts the
//! word. Covers the Latin script with its European accents; a full Unicode table would weigh more
//! in the download than everything it is used on.

/// How well a query fits, the smaller the better; orders the results.
pub type Rank = u16;

/// Lower case without accents; "ae", "oe" and "ue" count as the plain vowel, as do the umlauts
/// they spell. Everything that is neither letter nor digit becomes one space, apostrophes too: what
/// follows the article in "l'eau" is a word of its own.
///
/// ```
/// use nightbank::model::typed_words::fold;
/// assert_eq!(fold("Kühl-Schrank"), "kuhl schrank");
/// assert_eq!(fold("KUEHLSCHRANK"), fold("Kühlschrank"));
/// ```
#[must_use]
pub fn fold(text: &str) -> String {
    let mut folded = String::with_capacity(text.len());
    for c in text.chars().flat_map(char::to_lowercase) {
        match c {
            'a'..='d' | 'f'..='z' | '0'..='9' => folded.push(c),
            'e' => {
                if !folded.ends_with(['a', 'o', 'u']) {
                    folded.push('e');
                }
            }
            'à' | 'á' | 'â' | 'ã' | 'ä' | 'å' | 'ā' | 'ă' | 'ą' | 'æ' => folded.push('a'),
            'ç' | 'ć' | 'č' | 'ĉ' | 'ċ' => folded.push('c'),
            'ď' | 'đ' | 'ð' => folded.push('d'),
            'è' | 'é' | 'ê' | 'ë' | 'ē' | 'ė' | 'ę' | 'ě' => folded.push('e'),
            'ğ' | 'ģ' | 'ġ' => folded.push('g'),
            'ì' | 'í' | 'î' | 'ï' | 'ī' | 'į' | 'ı' => folded.push('i'),
            'ķ' => folded.push('k'),
            'ł' | 'ľ' | 'ļ' | 'ĺ' => folded.push('l'),
            'ñ' | 'ń' | 'ň' | 'ņ' => folded.push('n'),
            'ò' | 'ó' | 'ô' | 'õ' | 'ö' | 'ø' | 'ō' | 'ő' | 'œ' => folded.push('o'),
            'ŕ' | 'ř' => folded.push('r'),
            'ś' | 'š' | 'ş' | 'ș' => folded.push('s'),
            'ß' => folded.push_str("ss"),
            'ť' | 'ţ' | 'ț' => folded.push('t'),
            'þ' => folded.push_str("th"),
            'ù' | 'ú' | 'û' | 'ü' | 'ū' | 'ů' | 'ű' | 'ų' => folded.push('u'),
            'ý' | 'ÿ' => folded.push('y'),
            'ź' | 'ż' | 'ž' => folded.push('z'),
            // Accents standing alone leave no gap.
            '\u{300}'..='\u{36f}' => {}
            other if other.is_alphanumeric() => folded.push(other),
            _ => {
                if !folded.is_empty() && !folded.ends_with(' ') {
                    folded.push(' ');
                }
            }
        }
    }
    while folded.ends_with(' ') {
        folded.pop();
    }
    folded
}

/// How well the folded `query` fits a folded `name` and further folded `words`.
///
/// Every word of the query has to be found; `None` if one is not. Beside longer words a single letter
/// is not looked for: it is the article of "l'eau", or a word that has just been begun. A word counts best where the
/// name starts with it, then where it starts another word of the name, then a word of `words`,
/// and last inside a longer word of the name (for compounds such as "Kühlschrank").
#[must_use]
pub fn rank(query: &str, name: &str, words: &str) -> Option<Rank> {
    let stands_alone = |typed: &str| typed.len() > 1 || typed.contains(|c: char| c.is_numeric());
    let any = query.split(' ').any(stands_alone);
    query
        .split(' ')
        .filter(|typed| !typed.is_empty() && (!any || stands_alone(typed)))
        .try_fold(0, |sum, typed| Some(sum + rank_word(typed, name, words)?))
}

fn rank_word(typed: &str, name: &str, words: &str) -> Option<Rank> {
    let whole = |text: &str| text.split(' ').any(|word| word == typed);
    let starts = |text: &str| text.split(' ').any(|word| word.starts_with(typed));
    // Typed without the apostrophe: "laquila", "giants".
    let joined = |text: &str| {
        text.split(' ').zip(text.split(' ').skip(1)).any(|(word, next)| {
            word.len().min(next.len()) == 1
                && typed.len() > word.len()
                && typed.strip_prefix(word).is_some_and(|rest| next.starts_with(rest))
        })
    };
    if name.split(' ').next() == Some(typed) {
        Some(0)
    } else if whole(name) {
        Some(1)
    } else if name.starts_with(typed) {
        Some(2)
    } else if starts(name) || joined(name) {
        Some(3)
    } else if whole(words) {
        Some(4)
    } else if starts(words) {
        Some(5)
    } else if typed.len() >= 3 && name.contains(typed) {
        Some(6)
    } else if typed.len() >= 3 && words.contains(typed) {
        Some(7)
    } else {
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn accents_case_and_umlaut_spellings_fold_away() {
        assert_eq!(fold("Réfrigérateur à COMPRESSEUR"), "refrigerateur a compresseur");
        assert_eq!(fold("Føn"), fold("Foen"));
        assert_eq!(fold("  Straße 7,  Łódź "), "strasse 7 lodz");
        assert_eq!(fold("e\u{301}te\u{301}"), "ete");
    }

    /// Names of places as a keyboard without their accents types them.
    #[test]
    fn names_are_typed_without_the_accents_of_their_language() {
        for (name, typed) in [
            ("Żuławy, Łeba, Śląsk, Toruń", "zulawy leba slask torun"),
            ("Žďár, Třebíč, Plzeň, Ústí, Nový", "zdar trebic plzen usti novy"),
            ("Ľubica, Šaľa, Ťahanovce", "lubica sala tahanovce"),
            ("Győr, Hévíz, Fertőd, Szűcs", "gyor heviz fertod szucs"),
            ("Brașov, Constanța, Târgu, Băile", "brasov constanta targu baile"),
            ("Çeşme, Muğla, Ağrı", "cesme mugla agri"),
            ("Ķemeri, Rūjiena, Ģipka, Cēsis", "kemeri rujiena gipka cesis"),
            ("Šiauliai, Žagarė, Ryškėnų", "siauliai zagare ryskenu"),
            ("Þingvellir, Egilsstaðir, Höfn", "thingvellir egilsstadir hofn"),
            ("São João, Peñíscola, Órgiva", "sao joao peniscola orgiva"),
            ("Ærø, Århus, Hönö", "aro arhus hono"),
        ] {
            assert_eq!(fold(name), typed);
        }
    }

    #[test]
    fn an_apostrophe_parts_words_and_may_be_left_out() {
        assert_eq!(fold("Pompe d’évacuation de l'eau"), "pompe d evacuation de l eau");
        let purifier = fold("Purificateur d’eau, UV");
        for typed in ["eau", "l'eau", "d’eau", "purificateur d'eau", "deau", "purificateur d"] {
            assert!(rank(&fold(typed), &purifier, "").is_some(), "{typed}");
        }
        for (typed, name) in [
            ("aquila", "L'Aquila"),
            ("l'aquila", "L’Aquila"),
            ("laquila", "L'Aquila"),
            ("giants", "Giant's Causeway"),
            ("giants causeway", "Giant's Causeway"),
            ("giant", "Giant's Causeway"),
        ] {
            assert!(rank(&fold(typed), &fold(name), "").is_some_and(|rank| rank <= 4), "{typed}");
        }
        assert_eq!(rank("leau", &purifier, ""), None);
        assert_eq!(rank("x", &purifier, ""), None);
        assert_eq!(rank("purificateur 3", &purifier, ""), None);
    }

    #[test]
    fn a_started_word_stays_found_while_it_is_typed_on() {
        for word in ["Kühlschrank", "koelkast", "Boiler", "Åndalsnes", "Quechua", "Aeroe"] {
            let folded = fold(word);
            let mut typed = String::new();
            for c in word.chars() {
                typed.push(c);
                assert!(folded.starts_with(&fold(&typed)), "{typed} in {word}");
            }
        }
    }

    #[test]
    fn the_name_goes_before_the_words_and_all_words_count() {
        assert!(rank("pump", "pump tap", "") < rank("pump", "water pump", ""));
        assert!(rank("pump", "water pump", "") < rank("pump", "flush", "pump"));
        assert_eq!(rank("pump sun", "water pump", "tap"), None);
        assert_eq!(rank("", "water pump", ""), Some(0));
        assert!(rank("schrank", "kuhlschrank", "").is_some());
    }
}
