use super::*;

const M: MarkRule = MarkRule::DISTANCE_IN_M;
const CM: MarkRule = MarkRule::DISTANCE_IN_CM;
const S: MarkRule = MarkRule::HAND_TIME_IN_S;
const MIN: MarkRule = MarkRule::HAND_TIME_IN_MIN;

fn read(text: &str, rule: MarkRule) -> Result<String, String> {
    read_mark(text, rule).map(|mark| rule.show(mark)).map_err(|fault| fault.way_out)
}

#[test]
fn reads_what_people_write() {
    for (text, rule, shown) in [
        ("2.05 m", M, "2.05 m"),
        ("2.05", M, "2.05 m"),
        ("205cm", M, "2.05 m"),
        ("145", CM, "145 cm"),
        ("145.7 cm", CM, "145 cm"),
        ("1.457 m", CM, "145 cm"),
        ("1459 mm", CM, "145 cm"),
        ("10.11", S, "10.2 s"),
        ("1:23.4", S, "83.4 s"),
        ("1:23.41", MIN, "1:23.5"),
        ("1 min 5 s", MIN, "1:05.0"),
        ("1 minute 5.31 seconds", MIN, "1:05.4"),
        ("1.45 Metres", CM, "145 cm"),
        ("0:07", S, "7.0 s"),
        ("1:23.4 min", S, "83.4 s"),
        ("2 min", MIN, "2:00.0"),
        ("90 s", MIN, "1:30.0"),
        ("12", MarkRule::COUNT, "12"),
        ("12 points", MarkRule::POINTS, "12"),
    ] {
        assert_eq!(read(text, rule), Ok(shown.to_owned()), "{text}");
    }
}

#[test]
fn every_two_decimal_metre_keeps_its_centimetres() {
    // floor(x · 100) on binary fractions is wrong for 69 of these.
    for centimetres in 1..1000_i64 {
        let text = format!("{}.{:02} m", centimetres / 100, centimetres % 100);
        for rule in [M, CM] {
            assert_eq!(read_mark(&text, rule), Ok(Mark::from_steps(centimetres)), "{text}");
        }
    }
}

#[test]
fn says_what_to_write_instead() {
    for (text, rule, way_out) in [
        ("2,05 m", M, "2.05 m"),
        ("2.05", CM, "2.05 m"),
        ("1:5", MIN, "1:05"),
        ("1:75", MIN, "2:15"),
        ("1.5 min", MIN, "1:30"),
        ("90", MIN, "90 s"),
        ("12 cm", MarkRule::COUNT, "12"),
        ("7 s", M, "2.05 m"),
        ("", S, "x for"),
    ] {
        let said = read(text, rule).unwrap_err();
        assert!(said.contains(way_out), "{text}: {said}");
    }
}

#[test]
fn nonsense_is_refused() {
    for text in [
        "-3",
        "far",
        "1..2",
        "1e3",
        "NaN",
        "inf",
        ".5",
        "5.",
        "٣",
        "1:2:3",
        "99999999999",
        "1:",
        ":",
    ] {
        for rule in [M, CM, S, MIN, MarkRule::COUNT, MarkRule::POINTS] {
            assert!(read_mark(text, rule).is_err(), "{text}");
        }
    }
    assert!(read_mark("12.5", MarkRule::COUNT).is_err());
    assert!(read_mark("1:23", M).is_err());
}

#[test]
fn an_attempt_may_have_no_mark() {
    for text in ["x", "X", " foul ", "–", "-", "No mark"] {
        assert_eq!(read_attempt(text, M), Ok(Attempt::NoMark), "{text}");
    }
    assert_eq!(read_attempt("2.05", M), Ok(Attempt::Valid(Mark::from_steps(205))));
}

#[test]
fn what_families_type_is_read_kindly() {
    for (text, rule, shown) in [
        ("147,5", CM, "147 cm"),
        ("1,47 m", CM, "147 cm"),
        ("1:23,4", S, "83.4 s"),
        ("١٣١", CM, "131 cm"),
        ("۱٫۳۱ م", CM, "131 cm"),
        ("\u{200f}131\u{a0}سم", CM, "131 cm"),
        ("131 см", CM, "131 cm"),
        ("1 хв 5 с", MIN, "1:05.0"),
    ] {
        let read = read_returned(text, rule).map(|attempt| attempt.mark().map(|m| rule.show(m)));
        assert_eq!(read, Ok(Some(shown.to_owned())), "{text}");
    }
    assert_eq!(read_returned(" Х ", CM), Ok(Attempt::NoMark));
    for (text, why) in [
        ("1,2,3", Refusal::WrongUnit),
        ("1.234,5", Refusal::WrongUnit),
        ("½", Refusal::NoNumber),
        ("1/2", Refusal::WrongUnit),
        ("99999999 m", Refusal::TooLarge),
    ] {
        assert_eq!(read_returned(text, CM), Err(why), "{text}");
    }
}

#[test]
fn every_refusal_has_the_key_it_is_written_with() {
    for (_, then) in Spelling::of_marks().units.into_iter().flatten() {
        if let Then::Refuse(why) = then {
            assert_eq!(serde_json::to_value(then).unwrap(), why.key());
        }
    }
}
