//! What depends on where the reader lives: the region of a language tag, its currency, and how an amount is written.

use super::Lang;

/// The region of a tag such as `en-US` or `zh-Hant-TW` (BCP 47: two letters after language and script).
#[must_use]
pub fn region_of_tag(tag: &str) -> Option<&str> {
    tag.split(['-', '_'])
        .skip(1)
        .take_while(|part| part.len() > 1)
        .find(|part| part.len() == 2 && part.bytes().all(|byte| byte.is_ascii_alphabetic()))
}

/// Sign of the currency of a region (ISO 3166-1 code), as people there write it; the euro where it is not known.
/// From memory; CLDR's narrow symbols.
#[must_use]
pub fn currency_of_region(region: &str) -> &'static str {
    match region {
        "US" | "CA" | "AU" | "NZ" | "PR" | "MX" | "CL" | "AR" | "CO" => "$",
        "GB" | "IM" | "JE" | "GG" | "GI" => "£",
        "CH" | "LI" => "CHF",
        "SE" | "NO" | "DK" | "IS" => "kr",
        "PL" => "zł",
        "CZ" => "Kč",
        "HU" => "Ft",
        "RO" => "lei",
        "TR" => "₺",
        "UA" => "₴",
        "ZA" | "NA" => "R",
        "BR" => "R$",
        "IN" => "₹",
        "JP" | "CN" => "¥",
        "KR" => "₩",
        _ => "€",
    }
}

/// An amount with its currency, as the language writes it (patterns of CLDR, from memory: English `¤#`, letters
/// with a space; Dutch `¤ #`; German and French `# ¤`). A minus goes before the currency.
#[must_use]
pub fn money(lang: Lang, figures: &str, currency: &str) -> String {
    // Never parted at the end of a line.
    const SPACE: char = '\u{a0}';
    if currency.is_empty() {
        return figures.to_owned();
    }
    let (sign, size) = match figures.strip_prefix(['-', '\u{2212}']) {
        Some(size) => ("\u{2212}", size),
        None => ("", figures),
    };
    match lang {
        Lang::En if currency.ends_with(char::is_alphabetic) => {
            format!("{sign}{currency}{SPACE}{size}")
        }
        Lang::En => format!("{sign}{currency}{size}"),
        Lang::Nl => format!("{currency}{SPACE}{figures}"),
        Lang::De | Lang::Fr => format!("{figures}{SPACE}{currency}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn regions_of_tags() {
        for (tag, region) in [
            ("en-US", Some("US")),
            ("en_GB", Some("GB")),
            ("zh-Hant-TW", Some("TW")),
            ("de", None),
            ("sr-Latn", None),
            ("en-u-ca-gregory", None),
            ("es-419", None),
            ("", None),
        ] {
            assert_eq!(region_of_tag(tag), region, "{tag}");
        }
    }

    /// CLDR's examples of currency patterns, from memory.
    #[test]
    fn amounts_of_money() {
        assert_eq!(money(Lang::En, "1,120", "€"), "€1,120");
        assert_eq!(money(Lang::En, "120", "$"), "$120");
        assert_eq!(money(Lang::En, "\u{2212}120", "£"), "\u{2212}£120");
        assert_eq!(money(Lang::En, "120", "CHF"), "CHF\u{a0}120");
        assert_eq!(money(Lang::De, "120", "€"), "120\u{a0}€");
        assert_eq!(money(Lang::Fr, "1\u{202f}120", "€"), "1\u{202f}120\u{a0}€");
        assert_eq!(money(Lang::Nl, "120", "€"), "€\u{a0}120");
        assert_eq!(money(Lang::Nl, "120", ""), "120");
    }

    #[test]
    fn currencies() {
        for (region, sign) in
            [("US", "$"), ("GB", "£"), ("CH", "CHF"), ("DE", "€"), ("", "€"), ("XX", "€")]
        {
            assert_eq!(currency_of_region(region), sign);
        }
    }
}
