//! The events of the decathlon and the heptathlon with the constants of their points.
//!
//! Source: World Athletics, Scoring Tables for Combined Events; the constants agree in two
//! public data sets, the R package `combinedevents` and the repository `AthPoints`. They were made
//! for adult champions: for children they are arithmetic to play with, no measure of worth. They
//! ask for automatic times; what is added to times taken by hand in competition is not added here.

use super::formula::{Formula, Kind};

/// An event of the combined events and its formula.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CombinedEvent {
    pub name: &'static str,
    pub formula: Formula,
}

// The mark worth nothing is published in seconds, centimetres or metres; here it stands in the
// largest unit in which it is whole for every event of its kind.
const fn track(name: &'static str, a: f64, milliseconds: i64, c: f64) -> CombinedEvent {
    CombinedEvent { name, formula: Formula { kind: Kind::Track, a, b: milliseconds, c } }
}

const fn jump(name: &'static str, a: f64, centimetres: i64, c: f64) -> CombinedEvent {
    CombinedEvent { name, formula: Formula { kind: Kind::Jump, a, b: centimetres * 10, c } }
}

const fn throw(name: &'static str, a: f64, millimetres: i64, c: f64) -> CombinedEvent {
    CombinedEvent { name, formula: Formula { kind: Kind::Throw, a, b: millimetres, c } }
}

/// The decathlon of the men, in the order it is contested.
pub const MEN: &[CombinedEvent] = &[
    track("100 m", 25.4347, 18_000, 1.81),
    jump("long jump", 0.14354, 220, 1.40),
    throw("shot put", 51.39, 1_500, 1.05),
    jump("high jump", 0.8465, 75, 1.42),
    track("400 m", 1.53775, 82_000, 1.81),
    track("110 m hurdles", 5.74352, 28_500, 1.92),
    throw("discus throw", 12.91, 4_000, 1.10),
    jump("pole vault", 0.2797, 100, 1.35),
    throw("javelin throw", 10.14, 7_000, 1.08),
    track("1500 m", 0.03768, 480_000, 1.85),
];

/// The heptathlon of the women, in the order it is contested.
pub const WOMEN: &[CombinedEvent] = &[
    track("100 m hurdles", 9.23076, 26_700, 1.835),
    jump("high jump", 1.84523, 75, 1.348),
    throw("shot put", 56.0211, 1_500, 1.05),
    track("200 m", 4.99087, 42_500, 1.81),
    jump("long jump", 0.188_807, 210, 1.41),
    throw("javelin throw", 15.9803, 3_800, 1.04),
    track("800 m", 0.11193, 254_000, 1.88),
];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::marks::{MarkRule, read_mark};

    fn points(events: &[CombinedEvent], marks: &[&str]) -> Vec<u32> {
        let one = |(event, mark): (&CombinedEvent, &&str)| {
            let rule = if event.formula.kind == Kind::Track {
                MarkRule::AUTOMATIC_TIME_IN_S
            } else {
                MarkRule::DISTANCE_IN_M
            };
            event.formula.points(read_mark(mark, rule).unwrap(), rule).unwrap()
        };
        events.iter().zip(marks).map(one).collect()
    }

    #[test]
    fn published_performances() {
        // From the tests of the R package `combinedevents`.
        let marks = ["10.8", "7.1", "12", "2.05", "49.5", "14.5", "35", "4.6", "40", "4:21"];
        let expected = [906, 838, 606, 850, 838, 911, 564, 790, 442, 805];
        assert_eq!(points(MEN, &marks), expected);
        // Performances that scored 9126 and 7291 points.
        let marks = [
            "10.55", "7.80", "16.00", "2.05", "48.42", "13.75", "50.54", "5.45", "71.90", "4:36.11",
        ];
        assert_eq!(points(MEN, &marks).iter().sum::<u32>(), 9126);
        let marks = ["12.69", "1.86", "15.80", "22.56", "7.27", "45.66", "2:08.51"];
        assert_eq!(points(WOMEN, &marks).iter().sum::<u32>(), 7291);
    }

    #[test]
    fn a_mark_worth_nothing_and_one_of_another_kind() {
        let zero = |text| points(&MEN[..1], &[text])[0];
        assert_eq!((zero("18"), zero("25"), zero("17.8")), (0, 0, 1));
        let count = read_mark("12", MarkRule::COUNT).unwrap();
        assert_eq!(MEN[0].formula.points(count, MarkRule::COUNT), None);
    }
}
