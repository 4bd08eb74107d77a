//! Every rule of `inspect`, held to the examples that the rule reference shows; and the packs that
//! must come through clean.

use std::collections::BTreeSet;

use homeground::finding::{Finding, Severity};
use homeground::inspect::{Check, Rule, example_pack, rules};
use homeground::quantity::{Date, Quantity};
use homeground::read::Selection;
use homeground::report::report_text;
use homeground::source::{Folder, Source};

fn codes_of(source: &dyn Source) -> (BTreeSet<&'static str>, String) {
    let inspected =
        homeground::inspect(source, &Selection::All).expect("a pack that can be looked into");
    let codes = inspected.findings.iter().map(|finding: &Finding| finding.code).collect();
    (codes, report_text(&inspected.findings, &inspected.pack.files, false))
}

/// Rules whose subject no text can show: a locked file, bytes that are no text, a link on disk.
/// The pack on disk in `tests/packs/broken` shows those.
fn has_example(rule: &Rule) -> bool {
    !rule.bad.is_empty()
}

#[test]
fn each_bad_example_is_found_fault_with_for_its_own_reason_alone() {
    let mut faults = String::new();
    for rule in rules::ALL.iter().filter(|rule| has_example(rule)) {
        let (codes, report) = codes_of(&example_pack(rule.bad));
        if codes != BTreeSet::from([rule.code]) {
            faults.push_str(&format!("{}: found {codes:?}\n{report}\n", rule.code));
        }
    }
    assert!(faults.is_empty(), "{faults}");
}

#[test]
fn each_good_example_is_let_pass() {
    let mut faults = String::new();
    for rule in rules::ALL.iter().filter(|rule| has_example(rule)) {
        let (codes, report) = codes_of(&example_pack(rule.good));
        if !codes.is_empty() {
            faults.push_str(&format!("{}: {report}\n", rule.code));
        }
    }
    assert!(faults.is_empty(), "{faults}");
}

#[test]
fn the_sound_pack_under_the_examples_is_clean() {
    let (codes, report) = codes_of(&example_pack(""));
    assert!(codes.is_empty(), "{report}");
}

#[test]
fn a_rule_says_what_it_asks_and_why() {
    for rule in rules::ALL {
        let is_sentence = |text: &str| text.ends_with('.') && text.len() > 15;
        assert!(is_sentence(rule.asks), "{}: asks “{}”", rule.code, rule.asks);
        assert!(rule.asks.len() <= 140, "{}: what it asks is one short sentence", rule.code);
        assert!(rule.why.len() > 40, "{}: why “{}”", rule.code, rule.why);
        assert_eq!(
            rule.bad.is_empty(),
            rule.good.is_empty(),
            "{}: both examples or neither",
            rule.code
        );
        let is_read = matches!(rule.check, Check::Reading);
        assert!(
            has_example(rule) || is_read,
            "{}: only a rule of reading may lack an example",
            rule.code
        );
        if is_read {
            assert_eq!(
                rule.severity,
                Severity::Problem,
                "{}: what can’t be read can’t go out",
                rule.code
            );
        }
    }
}

#[test]
fn codes_are_small_words_joined_by_hyphens_and_stand_once() {
    let mut seen = BTreeSet::new();
    for rule in rules::ALL {
        let is_word =
            |word: &str| !word.is_empty() && word.bytes().all(|byte| byte.is_ascii_lowercase());
        assert!(rule.code.contains('-') && rule.code.split('-').all(is_word), "{}", rule.code);
        assert!(rule.code.len() <= 24, "{} is long", rule.code);
        assert!(seen.insert(rule.code), "{} stands twice", rule.code);
    }
    assert!(rules::ALL.len() >= 50, "{} rules", rules::ALL.len());
}

/// What a teacher reads must hold no words of the language the program is written in, nor of the
/// YAML package.
#[test]
fn findings_speak_to_teachers() {
    const FOREIGN: [&str; 14] = [
        "Some(",
        "None",
        "Option",
        "Vec<",
        "String",
        "struct",
        "enum",
        "u32",
        "mapping",
        "scalar",
        "sequence",
        "parse",
        "serde",
        "invalid type",
    ];
    for rule in rules::ALL.iter().filter(|rule| has_example(rule)) {
        let inspected =
            homeground::inspect(&example_pack(rule.bad), &Selection::All).expect("a pack");
        for finding in inspected.findings {
            let said = format!("{} {}", finding.says, finding.way_out);
            assert!(!FOREIGN.iter().any(|word| said.contains(word)), "{}: {said}", finding.code);
            assert!(
                finding.says.ends_with(['.', '?', '!', '”']),
                "{}: {}",
                finding.code,
                finding.says
            );
            assert!(finding.way_out.len() > 8, "{}: a way out is missing", finding.code);
        }
    }
}

/// Held on one day, so that the demo pack's own dates to look again don't break the test.
#[test]
fn the_demo_pack_has_no_problem_and_no_warning() {
    let day = Date::read_quantity("2026-11-01").expect("a date in the calendar");
    let source = Folder::new(concat!(env!("CARGO_MANIFEST_DIR"), "/sessions")).on(day);
    let inspected = homeground::inspect(&source, &Selection::All).expect("the demo pack");
    assert!(inspected.pack.sessions.len() >= 8);
    let serious: Vec<Finding> =
        inspected.findings.into_iter().filter(|f| f.severity != Severity::Advice).collect();
    assert!(serious.is_empty(), "{}", report_text(&serious, &inspected.pack.files, false));
}
