//! The answer as a picture to post: nights, lanterns, the course of the battery, and what takes most.
//!
//! The page hands over finished words and figures.

use super::drawing::{
    Drawing, EDGE, GLOW, INK, MARGIN, RankedRow, SHEET, SOFT, WIDTH, escaped, part,
};

/// Height of the plot of the course.
const PLOT: f64 = 250.0;
/// Room for the words left of the plot.
const GUTTER: f64 = 58.0;
/// A letter of the words in the plot is about so wide.
const LETTER: f64 = 8.6;
/// Side of a sign.
const SIGN: f64 = 16.0;
/// Night on paper, and the limit.
const NIGHT: &str = "#e3dcd0";
const LIMIT: &str = "#a3241c";

/// One night.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PictureLantern {
    /// How far it glows, 0..1.
    pub glow_frac: f64,
    /// Day of the week.
    pub day: String,
    /// Chance of lasting, in words.
    pub chance: String,
}

/// One hour of the course, at its end, all as shares of a full battery, 0..1.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PictureHour {
    /// The line.
    pub soc_frac: f64,
    /// The limit.
    pub low_frac: f64,
    /// One course in ten lies below the first, one above the second; `None` where they are not known.
    pub band_frac: Option<(f64, f64)>,
}

/// What happens at a time.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PictureSign {
    /// Hours from the start.
    pub hour: f64,
    /// The `d` of a path of strokes in a box of 16 by 16.
    pub path: String,
}

/// The course of the battery. Hours count from its start.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PictureCourse {
    /// Charge at the start, 0..1.
    pub start_frac: f64,
    /// Hour by hour.
    pub hours: Vec<PictureHour>,
    /// Sunset to sunrise [h].
    pub nights: Vec<(f64, f64)>,
    /// Each calendar day [h], with its name.
    pub days: Vec<((f64, f64), String)>,
    /// What people do, and the weather below it.
    pub signs: [Vec<PictureSign>; 2],
    /// The words for empty, half and full.
    pub levels: [String; 3],
    /// The words for the limit.
    pub low_words: String,
}

/// The answer in words and figures.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct OutlookPicture {
    /// Name of the setup.
    pub title: String,
    /// Where and when.
    pub subtitle: String,
    /// Nights as a figure.
    pub figure: String,
    /// The words for what is counted.
    pub counted: String,
    /// How sure that is.
    pub sure: String,
    /// Night by night.
    pub lanterns: Vec<PictureLantern>,
    /// The course; `None` where there is none.
    pub course: Option<PictureCourse>,
    /// Heading of what takes most.
    pub drains_title: String,
    /// What takes most, largest first.
    pub drains: Vec<RankedRow>,
    /// Small print.
    pub footer: String,
}

/// The answer as an SVG document of its own.
#[must_use]
pub fn outlook_svg(picture: &OutlookPicture) -> String {
    let mut drawing = Drawing::new(&picture.title, &picture.subtitle);
    drawing.add(format_args!(
        "<text x=\"{MARGIN}\" y=\"146\" font-family=\"Georgia, serif\" font-weight=\"600\">\
         <tspan font-size=\"62\">{}</tspan><tspan font-size=\"24\" dx=\"12\">{}</tspan></text>",
        escaped(&picture.figure),
        escaped(&picture.counted)
    ));
    drawing.text((MARGIN, 174.0), &small(SOFT), &picture.sure);
    lanterns(&mut drawing, 190.0, &picture.lanterns);
    let mut y = 290.0;
    if let Some(course) = &picture.course {
        y = Plot { drawing: &mut drawing, course, top: y }.draw() + 16.0;
    }
    let heading = "font-size=\"21\" font-weight=\"600\" font-family=\"Georgia, serif\"";
    drawing.text((MARGIN, y + 20.0), heading, &picture.drains_title);
    let end = drawing.rows(y + 36.0, &picture.drains);
    drawing.text((MARGIN, end + 24.0), &small(SOFT), &picture.footer);
    drawing.finish((end + 44.0).ceil())
}

fn small(colour: &str) -> String {
    format!("font-size=\"17\" fill=\"{colour}\"")
}

fn centred(colour: &str) -> String {
    format!("font-size=\"16\" fill=\"{colour}\" text-anchor=\"middle\"")
}

fn wash(colour: &str, opacity: f64) -> String {
    format!("fill=\"{colour}\" fill-opacity=\"{opacity}\"")
}

/// One lantern a night: glass filled as far as it glows, day and chance below.
fn lanterns(drawing: &mut Drawing, top: f64, nights: &[PictureLantern]) {
    let step = (WIDTH - 2.0 * MARGIN) / nights.len().max(8) as f64;
    for (index, night) in nights.iter().enumerate() {
        let x = MARGIN + step * (index as f64 + 0.5);
        let glow = 28.0 * part(night.glow_frac);
        let edge = if night.glow_frac > 0.0 { INK } else { EDGE };
        drawing.rect((x - 10.0, top + 38.0 - glow), (20.0, glow), GLOW);
        drawing.add(format_args!(
            "<path d=\"M{:.1} {:.1}a6 6 0 0 1 12 0m4 0v28h-20v-28z\" fill=\"none\" stroke=\"{edge}\" \
             stroke-width=\"2\"/>",
            x - 6.0,
            top + 10.0
        ));
        drawing.text((x, top + 58.0), &centred(SOFT), &night.day);
        drawing.text((x, top + 77.0), &centred(INK), &night.chance);
    }
}

/// The course being drawn.
struct Plot<'a> {
    drawing: &'a mut Drawing,
    course: &'a PictureCourse,
    top: f64,
}

impl Plot<'_> {
    const LEFT: f64 = MARGIN + GUTTER;
    const RIGHT: f64 = WIDTH - MARGIN;

    fn x(&self, hour: f64) -> f64 {
        let end = self.course.hours.len().max(1) as f64;
        Self::LEFT + part(hour / end) * (Self::RIGHT - Self::LEFT)
    }

    fn y(&self, soc_frac: f64) -> f64 {
        self.top + (1.0 - part(soc_frac)) * PLOT
    }

    /// Points at the start and at the end of each hour.
    fn curve(&self, start: f64, of: impl Fn(&PictureHour) -> Option<f64>) -> Vec<(f64, f64)> {
        let after = self.course.hours.iter().enumerate();
        let after = after.filter_map(|(at, hour)| of(hour).map(|frac| (at as f64 + 1.0, frac)));
        std::iter::once((0.0, start))
            .chain(after)
            .map(|(at, frac)| (self.x(at), self.y(frac)))
            .collect()
    }

    /// Draws it; tells where it ends.
    fn draw(mut self) -> f64 {
        let bottom = self.top + PLOT;
        self.ground(bottom);
        let course = self.course;
        let start = course.start_frac;
        let line = self.curve(start, |hour| Some(hour.soc_frac));
        let first_low = course.hours.first().map_or(0.0, |hour| hour.low_frac);
        let low = self.curve(first_low, |hour| Some(hour.low_frac));
        let mut below = low.clone();
        below.extend([(Self::RIGHT, bottom), (Self::LEFT, bottom)]);
        self.drawing.path(below, &wash(EDGE, 0.22));
        let under = self.curve(start, |hour| hour.band_frac.map(|(low, _)| low));
        let over = self.curve(start, |hour| hour.band_frac.map(|(_, high)| high));
        if under.len() > 1 {
            let band = over.into_iter().chain(under.into_iter().rev());
            self.drawing.path(band, &wash(GLOW, 0.34));
        }
        let broken = format!(
            "fill=\"none\" stroke=\"{LIMIT}\" stroke-width=\"1.6\" stroke-dasharray=\"7 4\""
        );
        self.drawing.path(low.iter().copied(), &broken);
        let whole = format!(
            "fill=\"none\" stroke=\"{INK}\" stroke-width=\"2.2\" stroke-linejoin=\"round\""
        );
        self.drawing.path(line.iter().copied(), &whole);
        self.low_words(&line, &low);
        let end = self.signs(bottom);
        self.days(end)
    }

    /// Paper, nights, levels.
    fn ground(&mut self, bottom: f64) {
        let (left, right, top) = (Self::LEFT, Self::RIGHT, self.top);
        self.drawing.rect((left, top), (right - left, PLOT), SHEET);
        for (from, to) in &self.course.nights {
            let (from, to) = (self.x(*from), self.x(*to));
            if to - from >= 4.0 {
                self.drawing.rect((from, top), (to - from, PLOT), NIGHT);
            }
        }
        for quarter in 0..=4_u8 {
            let y = self.y(f64::from(quarter) / 4.0);
            let colour = if quarter == 0 { EDGE } else { "#d8cfbd" };
            self.drawing
                .add(format_args!("<path d=\"M{left} {y:.1}H{right}\" stroke=\"{colour}\"/>"));
        }
        for (words, frac) in self.course.levels.iter().zip([0.0, 0.5, 1.0]) {
            let at = (left - 8.0, self.y(frac).clamp(top + 6.0, bottom) + 5.0);
            let style = format!("font-size=\"16\" fill=\"{SOFT}\" text-anchor=\"end\"");
            self.drawing.text(at, &style, words);
        }
    }

    /// The words for the limit, above it at the end where the line is further away.
    fn low_words(&mut self, line: &[(f64, f64)], low: &[(f64, f64)]) {
        let words = &self.course.low_words;
        let wide = words.chars().count() as f64 * LETTER;
        let place = |from: f64| {
            let under = low.iter().filter(|(x, _)| *x >= from && *x <= from + wide);
            let y = under.map(|(_, y)| *y).fold(f64::INFINITY, f64::min) - 7.0;
            let beside = line.iter().filter(|(x, _)| *x >= from && *x <= from + wide);
            let room = beside.map(|(_, at)| (y - 6.0 - at).abs()).fold(f64::INFINITY, f64::min);
            (room, from, y)
        };
        let [left, right] =
            [Self::LEFT + 6.0, (Self::RIGHT - 6.0 - wide).max(Self::LEFT + 6.0)].map(place);
        let (_, x, y) = if right.0 > left.0 { right } else { left };
        if !y.is_finite() {
            return;
        }
        let style = format!(
            "font-size=\"16\" font-weight=\"600\" fill=\"{LIMIT}\" stroke=\"{}\" stroke-width=\"4\" \
             stroke-linejoin=\"round\" paint-order=\"stroke\"",
            SHEET
        );
        self.drawing.text((x, y.max(self.top + 18.0)), &style, words);
    }

    /// Rows of signs; tells where they end. One that would lie over the one before is left out.
    fn signs(&mut self, mut y: f64) -> f64 {
        for row in self.course.signs.iter().filter(|row| !row.is_empty()) {
            let mut free = 0.0;
            for sign in row {
                let x = self.x(sign.hour) - SIGN / 2.0;
                if x >= free {
                    free = x + SIGN + 2.0;
                    self.drawing.add(format_args!(
                        "<path transform=\"translate({x:.1} {:.1})\" d=\"{}\" fill=\"none\" stroke=\"{INK}\" \
                         stroke-width=\"1.4\"/>",
                        y + 6.0,
                        escaped(&sign.path)
                    ));
                }
            }
            y += SIGN + 6.0;
        }
        y
    }

    /// The names of the days; tells where they end.
    fn days(&mut self, y: f64) -> f64 {
        let days = &self.course.days;
        let widest =
            days.iter().map(|((from, to), _)| self.x(*to) - self.x(*from)).fold(1.0, f64::max);
        let letters = days.iter().map(|(_, name)| name.chars().count()).max().unwrap_or(0);
        // Where a day is narrower than its name, each second, third, ... one is named.
        let need = letters as f64 * LETTER + 12.0;
        let nth = (need / widest).ceil().max(1.0) as usize;
        for ((from, to), name) in days.iter().step_by(nth) {
            let (from, to) = (self.x(*from), self.x(*to));
            // A day cut short has no room for its name.
            if to - from >= (0.6 * widest).min(need) {
                let middle = f64::midpoint(from, to).clamp(Self::LEFT, Self::RIGHT - 20.0);
                self.drawing.text((middle, y + 22.0), &centred(SOFT), name);
            }
        }
        y + 28.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn picture(name: &str, hours: Vec<PictureHour>) -> OutlookPicture {
        let night = PictureLantern { glow_frac: 1.0, day: "Fri".into(), chance: "98%".into() };
        OutlookPicture {
            title: name.into(),
            figure: "3".into(),
            counted: "nights".into(),
            lanterns: vec![night.clone(), PictureLantern { glow_frac: 0.35, ..night }],
            course: Some(PictureCourse {
                start_frac: 1.0,
                nights: vec![(-3.0, 1.0), (1.5, 2.0)],
                days: vec![((0.0, 2.0), "Fri 5".into())],
                signs: [vec![PictureSign { hour: 1.0, path: "M0 0L8 8".into() }; 2], Vec::new()],
                low_words: "limit 50%".into(),
                hours,
                ..PictureCourse::default()
            }),
            drains: vec![RankedRow { label: name.into(), value: "80 Wh".into(), length_frac: 1.0 }],
            ..OutlookPicture::default()
        }
    }

    fn hour(soc_frac: f64) -> PictureHour {
        PictureHour { soc_frac, low_frac: 0.5, band_frac: Some((soc_frac - 0.1, soc_frac + 0.1)) }
    }

    #[test]
    fn the_line_goes_from_start_to_end_and_the_limit_lies_half_way() {
        let svg = outlook_svg(&picture("Van", vec![hour(0.75), hour(0.5)]));
        // Left, middle and right of the plot; full, three quarters and half of its 250 from 290 down.
        assert!(svg.contains("M90.0 290.0L389.0 352.5L688.0 415.0\" fill=\"none\""), "{svg}");
        assert!(svg.contains("M90.0 415.0L389.0 415.0L688.0 415.0\" fill=\"none\""), "{svg}");
        // The likely range, there above and back below.
        assert!(
            svg.contains("M90.0 290.0L389.0 327.5L688.0 390.0L688.0 440.0L389.0 377.5L90.0 290.0")
        );
        // Glass filled whole, and a third.
        assert!(svg.contains("height=\"28.0\"") && svg.contains("height=\"9.8\""));
        // Of two signs at one moment one is drawn; what lies before the start is cut off.
        assert_eq!(svg.matches("M0 0L8 8").count(), 1);
        assert!(svg.contains("x=\"90.0\" y=\"290.0\" width=\"299.0\""), "{svg}");
    }

    #[test]
    fn of_days_narrower_than_their_names_each_second_is_named() {
        let mut picture = picture("Van", vec![hour(0.75); 7 * 24]);
        let days = (0..7).map(|day| f64::from(day) * 24.0);
        let named =
            |name: &str| days.clone().map(|from| ((from, from + 24.0), name.to_owned())).collect();
        let course = picture.course.as_mut().expect("a course");
        // Seven days on 598: 85 for each; five letters take 55, eleven 107.
        course.days = named("Fri 5");
        assert_eq!(outlook_svg(&picture).matches(">Fri 5<").count(), 7);
        picture.course.as_mut().expect("a course").days = named("Wed 16 Sept");
        assert_eq!(outlook_svg(&picture).matches(">Wed 16 Sept<").count(), 4);
    }

    #[test]
    fn without_a_course_there_is_room_for_none() {
        let with = picture("Van", vec![hour(0.75)]);
        let without = OutlookPicture { course: None, ..with.clone() };
        let height = |picture| {
            let svg = outlook_svg(picture);
            let start = svg.find(" height=\"").expect("a height") + 9;
            svg[start..]
                .split('"')
                .next()
                .and_then(|text| text.parse::<f64>().ok())
                .expect("a number")
        };
        assert_eq!(height(&with) - height(&without), 250.0 + 22.0 + 28.0 + 16.0);
    }

    proptest! {
        #[test]
        fn no_name_becomes_an_element(name in any::<String>()) {
            let svg = outlook_svg(&picture(&name, vec![hour(0.75)]));
            let elements = |svg: &str| {
                let tags = svg.split('<').skip(1);
                let names = tags.map(|tag| tag.split([' ', '>', '/']).find(|name| !name.is_empty()).map(str::to_owned));
                names.flatten().collect::<std::collections::BTreeSet<_>>()
            };
            let own = ["path", "rect", "svg", "text", "title", "tspan"].map(str::to_owned);
            prop_assert_eq!(elements(&svg), own.into_iter().collect());
            prop_assert!(!svg.chars().any(|c| c.is_control() && c != '\n'));
        }

        #[test]
        fn no_figure_is_none(hours in proptest::collection::vec(any::<f64>(), 0..40)) {
            let svg = outlook_svg(&picture("Van", hours.into_iter().map(hour).collect()));
            prop_assert!(!svg.contains("NaN") && !svg.contains("inf"), "{}", svg);
        }
    }
}
