//! Links that were given away must open for ever, with the figures their sender saw.
//!
//! Each link stands beside the whole setup it means. A link here is never changed: where a test
//! fails, the reading code is wrong. A new version or edition of the catalogue adds links.

mod common;

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
        link: "14LTyoXCSnJRHZrEfJY8kRo44Hxvkmd1EXgYrW7UVtP0TCgka0votPCY6P8PH04WYxNeuu9pcDQHInVD\
            3cdMTqAwCjlHFbnAZZCc9lNauHH7dXclM88jqPjDgLZ3M4KV7xkBPbYbfqMDbP1AmS3CXSHtSYsYFmF2\
            NtaHnlUbqvAvT3Vy6EHkTWb14soS4W6iCPgR87TpUOgBjgiuVrBPpLJDkDA1HTrHCte6bJ0mo3vAfX6s\
            S53Ijywu2fDul3a6k6g53XiEZeTkSnZY",
        means: include_str!("data/links/v1_typical.json"),
    },
    Golden {
        what: "version 1, edition 1: every part and every choice",
        link: "1HcCJs2LmQfsNZrEfJY8kRo44Hxvkmd1EXgYrW7UW1T0TCgka0votPCY6P8PH04WYxNeuu9pcDQHInVD\
            3cdMTqAwCjlHFEaqRW8obmREp4VDpbPzo4hzqKXl9K8MXnv0NAbxpeAhRixtxgfPwFA21DLzmUptVKCf\
            RcgK5d6TMaTOteBG29uwXhd67BDZAjw5vMZHiL5wpZb2QG7dOEAmEFM2sueK8nkJyIOo7JT0g7tEtV1B\
            E1m7e1hlEd0Xc9h2UXYuh6ve85SFywR97bIzQQ3sIbQesUTWI04Zu4uwP6LA2NbZdukulR2491Azxa9Z\
            gLn6xxML2i4miKgiu8KnUec5Oq1rH1qsoCia5oZoej69h2UXYuh6we85SH9bkRdbIzQQ3sIbQEsOUtHs\
            d1PcDHrCUv5jWWXiA19ailFUS8KUJWgFf4zZbCWpMkfMMlr7GzY3K7JGybW1ZNyUptVKCfRcgK6b37Ge\
            08BeBG29uwXhd679wcPEIBVDDmUCGcj9wT04Sjkr97IQJmqXqllWYfyxdeHloUbCFy5d79ly0fbqBJhF\
            GpgTQWcuUaStwJFxf12rqfYXBXWuRF1FqG3vpXdDddvZ718bSWodBMVE9Dtns6F3AWO24ZbzjWyRcCRd\
            SXkPmkwLNSkVtUuwzKqCDIB7FW7BRDHmK6ZruQ7Fre32x1UkPbgN10NwOxBdi6PfWQbmHs96BAQnogF0\
            AhL7M89j7e7Dz45hOsFBrf9KzTop8suFIRQ5GgpnSjvLlPpkxfDQELEofFf6TjjAzFFMTrJjNAhCSG02\
            pHgFtXgZHDNIpgYkVZL3x1rW6mNO0Kx3gczeaxkd0NyTHC53zWomsdPX7YTuZMbK05XW7lfVkDQmEqVU\
            zDyapZBhjsYDGay0LYONm4y3XztQ7gciodycXHcQ4bmCbHaUvAXhTXbrpPhEgmGEEpqAWhDIYZcWlbBM\
            jVo1lxI031EX6TWcyffCAjfJSTxSU1hU5bGBMldHDUmJP0LxVxhuB1MlRP23PHNO4ruGAvmnIUr3Dc3y\
            rVTMt2OPbzsmbRnrhHMkud8fUajVbyo3NXCvqLJ9ylZ4HUN2f4RLsJs",
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
