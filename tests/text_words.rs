//! One word for one thing: what the glossary in `DEVELOPERS.md` has replaced does not come back.

use crate::text_common;

use nightbank::i18n::Lang;
use std::fs;
use text_common::{files, root};

/// Words that are not used on the page, and what is said instead. Capitals count.
const AVOIDED: &[(Lang, &[(&str, &str)])] = &[
    (
        Lang::En,
        &[
            ("Dc-dc", "DC-DC"),
            ("dc-dc", "DC-DC"),
            ("even odds", "half the time"),
            ("Even odds", "Half the time"),
            ("cases of ten", "9 times out of 10"),
            ("ases out of ten", "9 times out of 10"),
            ("lowest allowed", "limit"),
            ("lowest level", "limit, lowest charge"),
            ("Lowest level", "limit, lowest charge"),
            ("aker’s", "manufacturer’s"),
            ("akers’", "manufacturers’"),
            ("eavy current", "high current"),
            ("eavy-current", "high-current"),
            ("ooking up", "hook-up"),
            ("loose panel", "portable panel"),
            ("kinds of weather", "runs of weather"),
            ("layed ", "simulated"),
            ("laying ", "working out"),
            ("Your loads", "appliances"),
            ("your loads", "appliances"),
            ("other loads", "other appliances"),
            ("fetched", "loaded"),
            ("would not", "could not"),
            ("Nothing of yours", "Your own setups"),
            ("no forecast", "what was checked, with its figures"),
            ("anuals", "instructions"),
            ("poles of", "terminals"),
            ("licensed", "qualified"),
            ("is safe.", "is safe 9 times out of 10"),
            ("nights are safe.", "are safe 9 times out of 10"),
            ("hat takes most", "what uses most"),
            ("panels bring", "panels give"),
            ("really brings", "really give"),
            ("dies of age", "wears out"),
            ("glow plug at stop", "at shutdown"),
        ],
    ),
    (
        Lang::De,
        &[
            ("Leerlaufaufnahme", "Leerlaufverbrauch"),
            ("Eigenaufnahme", "Leerlaufverbrauch"),
            ("niedrigsten erlaubten", "deine Untergrenze"),
            ("iedrigster erlaubter", "deine Untergrenze"),
            ("} am Tag", "pro Tag"),
            ("weniger am Tag", "pro Tag"),
            ("kWh/m² am Tag", "pro Tag"),
            ("iefster", "Niedrigster"),
            ("tiefsten", "niedrigsten"),
            ("„Strom“", "„Batterie“"),
            ("„Ändern“", "„Verbessern“"),
            ("(bulk)", "(Hauptladung, Bulk)"),
            ("(absorption)", "(Absorption)"),
            ("float)", "(Erhaltungsladung, Float)"),
            ("Absorptionsphase", "Absorption"),
            ("mittlerem Wetter", "durchschnittlichem Wetter"),
            ("urch Kaufen", "Anschaffungen"),
            ("von zehn Fällen", "9 von 10 Fällen"),
            ("geholt", "geladen"),
            ("Gebühr", "Preis des Platzes"),
            (":00", "10 Uhr"),
            ("eine Grenze", "deine Untergrenze"),
            ("einer Grenze", "deiner Untergrenze"),
            ("urchgespielt", "durchgerechnet"),
            ("Spielt ", "wird durchgerechnet"),
            ("Nächte sind sicher", "in 9 von 10 Fällen"),
            ("üblichen Werten", "typischen Werten"),
            ("übliche Werte", "typische Werte"),
            ("loses ", "mobiles Modul"),
            ("Eigenverlust", "Selbstentladung"),
            ("chlafmodus", "Sparmodus"),
            ("schlafen", "Sparmodus"),
            ("gewärmt", "beheizt"),
            ("Batterieelektronik", "Batterie-Elektronik"),
            ("pitzensonnen", "volle Sonnenstunden"),
            ("Tag(e)", "Tage"),
        ],
    ),
    (
        Lang::Fr,
        &[
            (" :", "narrow no-break space before it"),
            (" ;", "narrow no-break space before it"),
            (" !", "narrow no-break space before it"),
            (" ?", "narrow no-break space before it"),
            (" »", "narrow no-break space before it"),
            ("« ", "narrow no-break space behind it"),
            ("a chance", "la probabilité"),
            ("ne chance", "une probabilité"),
            ("Chance", "probabilité"),
            ("météos", "scénarios météo"),
            ("étéo moyenne", "temps moyen"),
            ("quoi qui", "du seul fait d’être allumé"),
            ("à ce lieu", "en ce lieu"),
            ("de solaire", "de panneaux"),
            ("quel solaire", "quels panneaux"),
            ("minimum autorisé", "limite"),
            ("minimal autorisé", "limite"),
            ("Minimum accepté", "limite"),
            ("euf fois sur dix", "9 fois sur 10"),
            ("depuis pleine", "depuis la pleine charge"),
            ("aux de marche", "taux de fonctionnement"),
            ("la somme", "le total"),
            ("hargeur secteur", "chargeur 230 V"),
            ("ranchement secteur", "branchement 230 V"),
            ("n’a pas voulu", "n’a pas pu"),
            ("là-dedans", "dans ce texte"),
            ("se tromper", "être faux"),
            ("ension perdue", "chute de tension"),
            ("es tailles", "combinaisons"),
            ("maintien (float)", "floating"),
            ("à porter", "à bord"),
            ("ension basse", "tension trop basse"),
            (" en fichier", "dans un fichier"),
            ("able du climat", "table climatique"),
            ("pur sinus", "à sinus pur"),
            ("uissance-crête", "puissance crête"),
            ("est à vous", "vos propres installations"),
            ("griller", "fondre"),
            ("de souci", "la batterie tient, avec sa probabilité"),
            (" assurée", "la batterie tient, avec sa probabilité"),
            (":00", "10 h"),
        ],
    ),
    (
        Lang::Nl,
        &[
            ("aan sta", "aanstaat, aanstaan"),
            ("uur na uur", "uur voor uur"),
            ("doorgespeeld", "doorgerekend"),
            ("laagste niveau", "ondergrens, laagste laadtoestand"),
            ("toegestane niveau", "ondergrens"),
            ("toelaat", "toestaat"),
            ("ntlaaddiepte", "ontladingsdiepte"),
            ("pstelling", "configuratie"),
            ("etlader", "230 V-acculader"),
            ("evraagde nachten", "gewenste nachten"),
            ("evraagde maanden", "gekozen maanden"),
            ("eigen verlies", "zelfontlading"),
            ("ruppelladen", "onderhoudslading"),
            ("eruggedraai", "ongedaan gemaakt"),
            ("erugdraai", "ongedaan maken"),
            ("opgehaald", "geladen"),
            ("ekenblad", "spreadsheet"),
            ("wilde", "kon niet"),
            ("zekerder", "betrouwbaarder"),
            ("datums", "data"),
            ("Datums", "Data"),
            ("negen van de tien ge", "9 van de 10 keer"),
            ("doorslaan", "doorbranden"),
            ("onneregelaar", "laadregelaar"),
            ("die van mij", "mijn"),
            ("laapstand", "spaarstand"),
            ("ebruikelijke waarden", "typische waarden"),
            ("bij Reis", "bij ‘Reis’"),
            ("bij Stroom", "bij ‘Accu’"),
            ("‘Stroom’", "‘Accu’"),
            ("hoge stromen", "grote stromen"),
            ("aan blij", "aanblijft, aanblijven"),
            ("lage accu", "bijna lege accu"),
            ("orte keren", "kort gebruik"),
            ("zitten goed", "9 van de 10 keer"),
        ],
    ),
];

#[test]
fn words_that_were_replaced_do_not_come_back() {
    let mut seen = 0;
    let mut found = Vec::new();
    for (lang, avoided) in AVOIDED {
        for path in files(&root().join("src/i18n").join(lang.code()), "ftl") {
            let text = fs::read_to_string(&path).expect("a Fluent file");
            for line in text.lines().filter(|line| !line.starts_with('#')) {
                seen += 1;
                // The key is not shown.
                let said = line.split_once(" = ").map_or(line, |(_, said)| said);
                for (word, instead) in *avoided {
                    if said.contains(word) {
                        found.push(format!("{}: {line} ({word:?}: say {instead:?})", lang.code()));
                    }
                }
            }
        }
    }
    assert!(seen > 1_000, "only {seen} lines read");
    assert!(found.is_empty(), "{found:#?}");
}
