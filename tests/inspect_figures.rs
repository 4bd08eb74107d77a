//! The rules that rest on a figure, on both sides of it. Where the figure is common practice of the
//! trade and no published norm, the test says so, as the rule does.

use std::collections::BTreeSet;

use homeground::inspect::{example_pack, rules};
use homeground::read::Selection;

/// The codes that an example gives, laid over the sound pack.
fn codes_of(example: &str) -> BTreeSet<&'static str> {
    let inspected = homeground::inspect(&example_pack(example), &Selection::All).expect("a pack");
    inspected.findings.iter().map(|finding| finding.code).collect()
}

/// Holds a rule to silence at `inside` and to a finding at `beyond`.
#[track_caller]
fn limit(code: &str, inside: &str, beyond: &str) {
    assert!(rules::find_rule(code).is_some(), "there is no rule {code}");
    assert!(!codes_of(inside).contains(code), "{code} must let this pass:\n{inside}");
    assert!(codes_of(beyond).contains(code), "{code} must find fault with this:\n{beyond}");
}

/// A stretch task with these lines; it takes the place of the sound one of 2 min 30 s.
fn stretch(lines: &str) -> String {
    let lines: String = lines.lines().map(|line| format!("    {line}\n")).collect();
    format!(
        "stretch:\n  - title: Change feet\n    task: extend\n    how: Hop from one foot to the other.\n    \
         easier: Step.\n    harder: Hop backwards.\n    movements: [hopping]\n{lines}"
    )
}

/// The slack of half a minute is this project's own choice.
#[test]
fn the_sum_may_be_half_a_minute_off() {
    let time = |time: &str| stretch(&format!("effort: moderate\ntime: {time}"));
    limit("slot-sum", &time("3 min"), &time("3 min 1 s"));
    limit("slot-sum", &time("2 min"), &time("1 min 59 s"));
}

/// Common practice: home sessions of up to 20 min to the age of 7, 30 min to 11, 45 min to 16.
#[test]
fn slots_by_age() {
    let slot = |ages: &str, minutes: u32| format!("ages: {ages}\nminutes: {minutes}\n");
    for (ages, longest) in
        [("5-7", 20), ("7-8", 30), ("8-11", 30), ("11-12", 45), ("14-16", 45), ("16-17", 60)]
    {
        limit("slot-long", &slot(ages, longest), &slot(ages, longest + 1));
    }
}

/// Common practice: talk takes at most a quarter. The sound session talks for one minute elsewhere.
#[test]
fn a_quarter_of_talk() {
    let talk = |seconds: u32| {
        stretch(&format!("effort: moderate\ntime: {{explain: {seconds} s, work: 1 min}}"))
    };
    limit("talk-long", &talk(4 * 60), &talk(4 * 60 + 1));
}

/// At least half of the time moderate to vigorous (CDC). The sound session has 9 min of such work
/// beside the stretch task, in a slot of 20 min.
#[test]
fn half_of_the_slot_is_active() {
    let work = |seconds: u32| {
        let rest = 150 - seconds;
        stretch(&format!("effort: moderate\ntime: {{work: {seconds} s, recover: {rest} s}}"))
    };
    limit("active-share", &work(60), &work(59));
}

/// Twice the usual first round (common practice: 20 s to the age of 7, 30 s to 11, 40 s above).
#[test]
fn rounds_of_vigorous_work() {
    for (ages, longest) in [("5-7", 40), ("9-11", 60), ("12-14", 80)] {
        let work = |seconds: u32| {
            let hard = stretch(&format!(
                "effort: vigorous\ntime: {{work: {seconds} s, rest: 30 s, rounds: 2}}"
            ));
            format!("ages: {ages}\n{hard}")
        };
        limit("work-long", &work(longest), &work(longest + 1));
    }
}

/// Six words that can be called out, and three key points a task: common practice.
#[test]
fn key_points() {
    let points = |points: &str| {
        stretch(&format!("effort: moderate\ntime: 2 min 30 s\nkey_points: {points}"))
    };
    limit(
        "key-point-long",
        &points("[one two three four five six]"),
        &points("[one two three four five six seven]"),
    );
    limit("key-points-many", &points("[a, b, c]"), &points("[a, b, c, d]"));
    assert!(
        !codes_of(&points("[\"**one** two three four *five* six\"]")).contains("key-point-long")
    );
}

#[test]
fn titles_and_summaries() {
    let of = |key: &str, letters: usize| format!("{key}: {}\n", "é".repeat(letters));
    limit("title-long", &of("title", 60), &of("title", 61));
    limit("summary-long", &of("summary", 200), &of("summary", 201));
}

/// An adult's minutes are added up exactly: 150 s of the stretch task here.
#[test]
fn help_is_counted_to_the_second() {
    let help = |given: &str| {
        let part = stretch("effort: moderate\ntime: 2 min 30 s\nadult: helping");
        format!("adult: {{helping: {given}, why: To turn the rope}}\n{part}")
    };
    limit("adult-uncounted", &help("2 min 30 s"), &help("2 min 29 s"));
    limit(
        "adult-over-slot",
        "adult: {nearby: 20 min, why: x}\n",
        "adult: {nearby: 20 min 1 s, why: x}\n",
    );
}

/// Socks of 40 to 100 g and 8 to 14 cm, named by the session itself.
#[test]
fn substitutes_at_the_limit_fit() {
    let marker = |limits: &str| {
        format!(
            "equipment:\n  - {{need: marker, count: 2, for: [warm_up, challenge], {limits}}}\n  \
             - {{need: tape measure, for: [challenge]}}\n"
        )
    };
    let socks = |limits: &str| {
        marker(&format!(
            "{limits}, instead: [{{thing: rolled socks, mass: 40-100 g, size: 8-14 cm}}]"
        ))
    };
    limit("substitute-unfit", &socks("mass: at most 100 g"), &socks("mass: at most 99.9 g"));
    limit("substitute-unfit", &socks("mass: at least 40 g"), &socks("mass: at least 41 g"));
    limit("substitute-unfit", &socks("size: 8-14 cm"), &socks("size: 80-139 mm"));
    // What the shared list names is put aside by itself; with nothing left, that is said.
    limit("substitute-missing", &marker("mass: at most 100 g"), &marker("mass: at most 99.9 g"));
    limit("thing-unfit", &marker("size: at most 25 cm"), &marker("size: at most 24.9 cm"));
    let own = |soft: &str| marker(&format!("soft: true, instead: [{{thing: slipper{soft}}}]"));
    limit("substitute-unfit", &own(", soft: true"), &own(""));
    limit("substitute-unfit", &own(", soft: true"), &own(", soft: false"));
}

/// A limit with a least and no most is no limit for a child who lifts.
#[test]
fn a_weight_needs_a_most() {
    let weight = |limit: &str| {
        format!(
            "equipment:\n  - {{need: marker, count: 2, for: [warm_up, challenge]}}\n  \
             - {{need: tape measure, for: [challenge]}}\n  - {{need: hand weight, for: [stretch]{limit}}}\n"
        )
    };
    limit("weight-unlimited", &weight(", mass: at most 500 g"), &weight(", mass: at least 300 g"));
}

/// The example packs stand on 1 June 2026.
#[test]
fn the_day_to_look_again_is_still_in_time() {
    let due = |day: &str| {
        format!("standing: {{state: approved, by: [AK], on: 2026-01-01, look_again: {day}}}\n")
    };
    limit("look-again-overdue", &due("2026-06-01"), &due("2026-05-31"));
    limit("look-again-early", &due("2026-01-02"), &due("2026-01-01"));
    let retired = "standing: {state: retired, on: 2024-01-01, look_again: 2025-01-01}\n";
    assert!(!codes_of(retired).contains("look-again-overdue"), "nobody looks at a retired session");
}

#[test]
fn ages_that_share_a_year_share_a_statement() {
    limit("curriculum-ages", "ages: 11-14\n", "ages: 12-14\n");
    limit("curriculum-ages", "ages: 5-7\n", "ages: 5-6\n");
}

/// Rules that look for English words are silent in a pack in another language.
#[test]
fn english_words_are_looked_for_in_english_packs_only() {
    let in_welsh = "# file: pack.yaml\nlanguage: cy\n";
    for (code, bad) in [
        ("success-voice", "success: [Glanio yn dawel]\n"),
        (
            "surroundings-unthought",
            "safety: [Yfwch ddŵr.]\n# file: pack.yaml\ncautions: [Gwyliwch.]\n",
        ),
    ] {
        assert!(codes_of(bad).contains(code), "{code}");
        let bad = if bad.contains("# file") {
            format!("{bad}language: cy\n")
        } else {
            format!("{bad}{in_welsh}")
        };
        assert!(!codes_of(&bad).contains(code), "{code}");
    }
}
