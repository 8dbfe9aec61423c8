//! Links that were given away must open for ever, with the figures their sender saw.
//!
//! Each link stands beside the whole setup it means. A link here is never changed: where a test
//! fails, the reading code is wrong. A new version or edition of the catalogue adds links.

use crate::common;

use common::sample;
use nightbank::link::{decode, encode};
use nightbank::model::Setup;

struct Golden {
    what: &'static str,
    link: &'static str,
    means: &'static str,
}

const GOLDEN: [Golden; 3] = [
    Golden {
        what: "version 1, edition 1: nothing but the defaults",
        link: "109b3KBwIUF0",
        means: include_str!("data/links/v1_plain.json"),
    },
    Golden {
        what: "version 1, edition 1: 25 loads, most from the catalogue",
        link: "14LYpbw75BSDnZrEfJY8kRo44Hxvkmd1EXgYrW7UVtP0TCgka0votPCY6P8PH04WYxNeuu9pcDQ\
            HInVD3cdMTqAwCjlHFbnAZZCc9lNauHH7dXclM88jqPjDgLZ3M4KV7xkBPbYbfqMDbP1AmS3CXS\
            HtSYsYFmF2NtaHnlUbqvAvT3Vy6EHkTWb14soS4W6iCPgR87TpUOgBjgiuVrBPpLIeuoBM25zTt\
            XuSRYHB4MGtFmyuOjOFKXmQc0hKkWpfodTYRS7OGl135viS",
        means: include_str!("data/links/v1_typical.json"),
    },
    Golden {
        what: "version 1, edition 1: every part and every choice",
        link: "1HeKSQpOnwCi7ZrEfJY8kRo44Hxvkmd1EXgYrW7UW1T0TCgka0votPCY6P8PH04WYxNeuu9pcDQ\
            HInVD3cdMTqAwCjlHFEaqRW8obmREp4VDpbPzo4hzqKXl9K8MXnv0NAbxpeAhRixtxgfPwFA21D\
            LzmUptVKCfRcgK5d6TMaTOteBG29uwXhd67BDZAjw5vMZHiL5wpZb2QG7dOEAmEFM2sueK8nkJy\
            IOo7JT0g7tEtV1BE1m7e1hlEd0Xc9h2UXYuh6ve85SFywR97bIzQQ3sIbQesUTWI04Zu4uwP6LA\
            2NbZdukulR2491Azxa9ZgLn6xxML2i4miKgiu8KnUec5Oq1rH1qsoCia5oZoej69h2UXYuh6we8\
            5SH9bkRdbIzQQ3sIbQEsOUtHsd1PcDHrCUv5jWWXiA19ailFUS8KUJWgFf4zZbCWpMkfMMlr7Gz\
            Y3K7JGybW1ZNyUptVKCfRcgK6b37Ge08BeBG29uwXhd679wcPEIBVDDmUCGcj9wT04Sjkr97IQJ\
            mqXqllWYfyxdeHloUbCFy5d79ly0fbqBJhFGpgTQWcuUaStwJFxf12rqfYXBXWuRF1FqG3vpXdD\
            ddvZ718bSWodBMVE9Dtns6F3AWO24ZbzjWyRcCRdSXkPmkwLNSkVtUuwzKqCDIB7FW7BRDHmK6Z\
            ruQ7Fre32x1UkPbgN10NwOxBdi6PfWQbmHs96BAQnogF0AhL7M89j7e7Dz45hOsFBrf9KzTop8s\
            uFIRQ5GgpnSjvLlPpkxfDQELEofFf6TjjAzFFMTrJjNAhCSG02pHgFtXgZHDNIpgYkVZL3x1rW6\
            mNO0Kx3gczeaxkd0NyTHADzwrZdHJhlYmExHgIVI8rAGkVCBcee7OUn5jSKPaR8dkqoBKx6ck7c\
            6OB6IdnFSZy2VY20dPsZo0mDAmBZiEKzp6iKTSjjDircDa0rWKdzL7SQpyC5w8i0hqNREaYlBCV\
            0TPZfsMrLf7w6CWFXa63kScuoLvm4uO4Lo6KgSCIrva5HWGGBeQrHmrBlkG0stmSuuAyFeaPASj\
            Jfe9B3CE3zhayCX1yrANs53XokCLxNjBA0JguKXoNqER7bk",
        means: include_str!("data/links/v1_everything.json"),
    },
];

#[test]
fn links_given_away_open_for_ever() {
    for golden in &GOLDEN {
        let means: Setup = serde_json::from_str(golden.means).expect("plain data");
        assert_eq!(decode(golden.link), Ok(means), "{}", golden.what);
    }
}

#[test]
fn the_golden_links_are_about_something() {
    let plain: Setup = serde_json::from_str(GOLDEN[0].means).expect("plain data");
    assert!(plain.loads.is_empty());
    let everything: Setup = serde_json::from_str(GOLDEN[2].means).expect("plain data");
    assert_eq!(everything.loads.len(), 22);
    assert_eq!((everything.readings.len(), everything.cables.len()), (3, 2));
    assert_eq!(everything.trip.place.latitude.0, 43.5);
}

/// Writes the links and meanings of a new version or edition, to be added above by hand.
#[test]
#[ignore = "prints material for a new version"]
fn print_golden_links() {
    let setups = [Setup::default(), sample::typical(25), sample::everything()];
    for (setup, name) in setups.into_iter().zip(["plain", "typical", "everything"]) {
        println!("{name} {}", encode(&setup).expect("short enough"));
        println!("{name} {}", serde_json::to_string(&setup).expect("plain data"));
    }
}
