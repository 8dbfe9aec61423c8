//! Links that were given away must open for ever, with the figures their sender saw.
//!
//! Each link stands beside the whole setup it means. A link here is never changed: where a test
//! fails, the reading code is wrong. A new version or edition of the catalogue adds links.

use crate::common;

use common::sample;
use nightbank::link::{decode, encode};
use nightbank::model::{Draw, Load, Setup, StayEnd, Usage, Window};
use nightbank::units::Watts;

struct Golden {
    what: &'static str,
    link: &'static str,
    means: &'static str,
}

const GOLDEN: [Golden; 8] = [
    Golden {
        what: "version 1, edition 1: nothing but the defaults",
        link: "109b3KBwIUF0",
        means: include_str!("data/links/v1_plain.json"),
    },
    Golden {
        what: "version 1, edition 1: 25 loads, most from the catalogue",
        link: "14O0TLwIA5ymNZrEfJY8kRo44Hxvkmd1EXgYrW7UVtP0TCgka0sodXtN8bWEQpc88inBjWBISMx\
            gHRpSns4fKIY4OaaAC51SXtizytwIS5U79MkYnG5xVwnwkDxDfIzmEFEzY8d4Vca8rhaaTDQhPi\
            UcB5YYoaV9SYb4l0N5e78LjapClYaKpryfqRkRzEpTYAmAiJgR5ag1iRYFtyIZNWk1L6g4EBt8n\
            uSC3YkovDAEudXXP091CdcVOmx2V16Y13hQQC2UyUPaC9rH2Lg",
        means: include_str!("data/links/v1_typical.json"),
    },
    Golden {
        what: "version 1, edition 1: every part and every choice",
        link: "1HoSZb95hXvHLZrEfJY8kRo44Hxvkmd1EXgYrW7UW1T0TCgka0sodXtN8bWEQpc88inBjWBISMx\
            gHRpSns4fKIY4OaaAC3ZZ0FjVFGVg9Ipoo0XL02jZdH273KMIyvRrklgpDbuFviMsBOTeRAXu0c\
            OLBa9iDDpKIon0CkG9wO8fgNZl82JxLJ61XlcFEfdxhaQIku0noGvFPwkf6KioLA2tXxL8CGDVK\
            uawgQQ8XCG19Rfr0JhY0uol0kQUGT04Sjkr97IQJaMFCfrccaxYNsXtzmORNXLxD6eqlbGrG1gI\
            OnPRkNZY9TeLfC7uXd9bFcM6evM9vPKbm0j6NLGgnzgURMEv2ZfWKUqhlz3XutfTjEFdFH2DK0P\
            UfzxveW94ZK5GEX7Bw35XE4VIHP9GQGi9vx8sABsKOOGGGU33KSnd10UcHbd0jQhpaAg80X4ngY\
            d6I7e5e4LHUYtg9Ipoo0XL02jZdH2EkhGJ7wwXWNsu7buFviLixJA3Fu6V1hMODQbHVHxFwszYg\
            SRRvVGs43G72MeS88OVn5N8YSHghLJs51p4dEtfiPUpCdVFk5T9GY4XuB2cL3bBCGS8lXEJgcI3\
            dzs228Akg9wYhfjhQLk0fps5T9GY4EmPs0oY0WKJzIA7wlqHdc4R4bGiFS9Wq5VAazBn7TZk9Yy\
            7lW5vzT2XBtngKKnAeXBXWuRF1FqG53ld20cMI0Azh3BQGMQI87T6N8Xa8Nhnyqq5jxSbfyjs6V\
            4XxbIzQQ3sIcS7nGxZ2nq6lbNdrjhN2uxREGHbKoux9MxKUANkDVTNnVg2QTdK5eAhRhI7VRVWC\
            tos40GsyL7eVCEDQ6IVtbyXREwOe0zIrY2ObFTUr5dYNGSOsT78IhGsPVffbJ9wuW101YULR08V\
            HfSdsYjIs9t2kGku2SaL5HuKDp8yt5Z2C1e61RiHI7j6A4528t68tA6DlxUSmAwcByVSNicGJLN\
            ZsprGM3WSAzuvx4Sw181ulMZjj7TWh7BgfdTJABG63FKMBRN1XMEwl9wHX1SIr9yM9DiNICwsVn\
            tjV1xK393afCxBnBByrLM3R1Z7zr92z0d9Y7IOXqPZg02Sc2ZE2ymCBlV",
        means: include_str!("data/links/v1_everything.json"),
    },
    Golden {
        what: "version 1, edition 2: nothing but the defaults",
        link: "10AKBX5wF6Org",
        means: include_str!("data/links/v1_2_plain.json"),
    },
    Golden {
        what: "version 1, edition 2: 25 loads, most from the catalogue",
        link: "14O2FDNc3ymbnetxIRC4Mg9114UTwC9ko8Q8iNWs7yLW3RnnS2OlqePUPlBamm622BCIQsXp75j\
            v4MSMhT1AKZdW6992Y1FrdTQkUiz4c1N1mqBdhEfXQBnpZuYE3sI99uCbS29lcu92DQOUPOwa3c\
            PMfXKHpkvp2hqBpndTVsAwUf8wozx7O2BVki1WCUza12h2g4v6ltfLihyTBBMLyIpYNTlrRu2Cq\
            WekcEa3nDw6lrUEF6bAwhwpS2d7BWDHdNEOHcCT2DgnkjFWt5Q",
        means: include_str!("data/links/v1_2_typical.json"),
    },
    Golden {
        what: "version 1, edition 2: every part, every choice and each extension",
        link: "1HtOQyodZCguFetxIRC4Mg9114UTwC9ko8Q8iNWs80MW3RnnS2OlqePUPlBamm622BCIQsXp75j\
            v4MSMhT1AKZdW6992Y0tOFYvsJJcgTTL40XJOwLyUUixiY2iQ2KRs8shuvfPi72OkiuoKkqBB6U\
            zRMJgTb0Yfy3lAhEbk5RQWU5tRHVZzKpH0NwP3oAPUQJkcjQbXqQIEV2EMsQZYeD9lvgw7wQ7IT\
            mBwGwztCDi3KZ1J8vzJ9HFOM1zyd7FW7BRDHmK6ZtaYnfSu9UWzBNLAHej6qNpzImADBfFrRcE6\
            mGXcsF1UqP5ebYy7lW5vzTHMxKQRgXcMZLTNBF1MUD37bq3jG8usa7iAwUlNyiudMxC17Lw7WLO\
            TFuCAhLABmsZ19yfeY0lso17p4Lma2iJ9I1SmjOGBBVGkqpdWllKW3mnilK3Ij3mImtjNIEM6cp\
            RUCNCcUvI0eqqgTTL40XJOwLyUUixkTNwQ4aK2aHkw9fPi72OSutU0oTbSTaowJYThL60MJojMV\
            E9Dtns6FNe60WAQeIN4zZbCWpMkfLdHHBJvBt2buTsCRj56LJ5appzxJp6eDq3znzgkYeBG29uw\
            Xhd673cFaKNEffeIXmn1TZcTQWcuUaStwGMdc3f5XX3VKuawgQQ8XCFyE6BgZ0NN1ywNtzieRTj\
            EFdFH2DK0PUUeNhcE7e6bS7YbZnT40GWnCQhRqTCTr21zT7QdMxC17Lw7WLOTD4RhLvjA1eMWt9\
            ORrWwDGSU62ghbzUQd8VgD4ckDCVdjuIybfykeOyERYbt1Y7PeaOiKgiu7vNGiRIhGzv7LSZo5H\
            PcnYYM1ZTGV52Z01JI0FKDO0b9JMdeQ2UtqnAPSZNf51PO5XgKyQ62ABJhJGdOx8TDGvVGEljQE\
            FyJPTp61Lm3X6QLYN9QSfyB0PWVMQZK1vXTf9MqFx6PYShZbB9N6vUq5iGncRHCbHXbJlqla4SK\
            qZ8gxOwdCeWjXkHK8Qe6vQWyRXtU2oWVoKaXrLB1t6RI8NQRWIiqOnciN7R79K7pdl90B8NYUMk\
            3enYswQbWN153B2KXfO6dbiYKAxCwUmSc00c9Vdo0kC3gaa1PhBRoDkYvlM2ry",
        means: include_str!("data/links/v1_2_everything.json"),
    },
    Golden {
        what: "version 1, edition 2: what runs once, on arrival and on leaving",
        link: "10KbSvSycLDVhTVMijZDuo4",
        means: include_str!("data/links/v1_2_once.json"),
    },
    Golden {
        what: "version 1, edition 2: used at several times of the day",
        link: "10W6DU6zkmpIVNJ9tplwDn0Fp9HnXgGWWWG",
        means: include_str!("data/links/v1_2_several_times.json"),
    },
];

/// A setup with a load that runs once at each end of the stay.
fn once() -> Setup {
    let load = |id, at, minutes| Load {
        id,
        usage: Usage::Once { at, minutes },
        draw: Draw::Power { watts: Watts(300.0) },
        ..Load::default()
    };
    let loads = vec![load(1, StayEnd::Arrival, 90.0), load(2, StayEnd::Leaving, 10.0)];
    Setup { loads, ..Setup::default() }
}

/// A setup with a load used at three times of the day, one of them past midnight, and one used at two.
fn several_times() -> Setup {
    let window = |from_min, to_min| Window { from_min, to_min };
    let load = |id, window, more_windows| Load {
        id,
        window,
        more_windows,
        draw: Draw::Power { watts: Watts(60.0) },
        ..Load::default()
    };
    let night = vec![window(1080, 1320), window(1425, 15)];
    let loads = vec![
        load(1, window(360, 480), night),
        load(2, Window::EVENING, vec![Window::MORNING]),
        load(3, Window::NIGHT, Vec::new()),
    ];
    Setup { loads, ..Setup::default() }
}

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
    let setups =
        [Setup::default(), sample::typical(25), sample::everything(), once(), several_times()];
    let names = ["plain", "typical", "everything", "once", "several times"];
    for (setup, name) in setups.into_iter().zip(names) {
        println!("{name} {}", encode(&setup).expect("short enough"));
        println!("{name} {}", serde_json::to_string(&setup).expect("plain data"));
    }
}
