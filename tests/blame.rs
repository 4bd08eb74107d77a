//! A slip is told of where it is made: nobody else is blamed for what can’t be read in another file.

#![allow(clippy::unwrap_used, reason = "a test that can’t read its pack has failed")]

use std::collections::{BTreeMap, BTreeSet};

use homeground::inspect;
use homeground::quantity::{Date, Quantity};
use homeground::read::Selection;
use homeground::source::Memory;

const SOUND: [(&str, &str); 4] = [
    ("pack.yaml", include_str!("../src/inspect/sound/pack.yaml")),
    ("equipment.yaml", include_str!("../src/inspect/sound/equipment.yaml")),
    ("curriculum.yaml", include_str!("../src/inspect/sound/curriculum.yaml")),
    ("games/hop.yaml", include_str!("../src/inspect/sound/session.yaml")),
];
/// Rests on `games/hop` in every way that there is.
const SKIP: &str = "builds_on: [games/hop]\n";
const UNIT: &str = "\
title: Spring
starts: 2027-01-11
weeks: 1
days: [{day: monday, at: 9:30}, {day: tuesday, at: 9:30}]
cover: {statements: [jump-1]}
sessions: [{session: games/hop, week: 1, day: monday}, {session: games/skip, week: 1, day: tuesday}]
";
const SHARED: &str = "\
cautions: [{name: socks, says: Never do this in socks.}]
key_points: [{name: land, points: [Toes first, Sink down]}]
";
const POSES: &str = "poses: [{name: brook stance, knees: bent 50}]\n";

type Slip = fn(&str) -> String;

fn pack() -> BTreeMap<String, Vec<u8>> {
    let mut files: BTreeMap<String, Vec<u8>> =
        SOUND.iter().map(|(path, text)| ((*path).to_owned(), text.as_bytes().to_vec())).collect();
    let hop = SOUND[3].1.replacen("safety:\n", "safety:\n  - {use: socks}\n", 1);
    let skip = hop.replacen("title: Hop and hold", &format!("{SKIP}title: Skip and stop"), 1);
    let skip = skip.replacen("summary: Hop", "summary: Skip as in [the other](hop.yaml). Hop", 1);
    let skip = skip.replacen("curriculum: [jump-1]\n", "", 1);
    files.insert("games/hop.yaml".into(), hop.into_bytes());
    files.insert("games/skip.yaml".into(), skip.into_bytes());
    files.insert("units/spring.yaml".into(), UNIT.as_bytes().to_vec());
    files.insert("shared.yaml".into(), SHARED.as_bytes().to_vec());
    files.insert("poses.yaml".into(), POSES.as_bytes().to_vec());
    files
}

/// What is found, as file and code; each once.
fn found(files: BTreeMap<String, Vec<u8>>, selection: &Selection) -> Vec<(String, &'static str)> {
    let today = Date::read_quantity("2026-06-01").unwrap();
    let inspected = inspect(&Memory { files, today }, selection).unwrap();
    let place = |place: homeground::place::Place| &inspected.pack.files.get(place.file).path;
    inspected.findings.iter().map(|f| (place(f.place).clone(), f.code)).collect()
}

fn spoil(path: &str, slip: Slip) -> BTreeMap<String, Vec<u8>> {
    let mut files = pack();
    let text = String::from_utf8(files.remove(path).unwrap()).unwrap();
    files.insert(path.into(), slip(&text).into_bytes());
    files
}

#[test]
fn a_session_that_can_not_be_read_is_told_of_alone() {
    let sound = found(pack(), &Selection::All);
    assert!(sound.iter().all(|(_, code)| *code != "yaml-broken"), "{sound:?}");
    let cases: [(&str, Slip); 5] = [
        ("yaml-broken", |text| text.replacen("title: ", "title: \"", 1)),
        ("yaml-broken", |text| format!("{text}\tx: 1\n")),
        ("key-missing", |text| text.replacen("title: Hop and hold\n", "", 1)),
        ("file-empty", |_| String::new()),
        ("shared-unknown", |text| text.replacen("warm_up:\n", "warm_up:\n  use: brook\n", 1)),
    ];
    for (code, slip) in cases {
        let met = found(spoil("games/hop.yaml", slip), &Selection::All);
        let there: Vec<_> = met.iter().filter(|found| !sound.contains(found)).collect();
        assert_eq!(there, [&("games/hop.yaml".to_owned(), code)], "{met:?}");
    }
    // One that is not there at all is still missed.
    let mut files = pack();
    files.remove("games/hop.yaml");
    let codes: BTreeSet<_> =
        found(files, &Selection::All).into_iter().map(|(_, code)| code).collect();
    for code in ["unit-session-unknown", "builds-on-unknown", "link-dead", "unit-statement-unmet"] {
        assert!(codes.contains(code), "{code} of {codes:?}");
    }
}

#[test]
fn a_shared_file_that_can_not_be_read_is_told_of_alone() {
    for path in ["pack.yaml", "equipment.yaml", "curriculum.yaml", "shared.yaml", "poses.yaml"] {
        let met = found(spoil(path, |text| format!("{text}x: [1\n")), &Selection::All);
        assert_eq!(met, [(path.to_owned(), "yaml-broken")], "{path}");
    }
}

#[test]
fn one_file_alone_is_not_blamed_for_those_that_are_not_looked_at() {
    let sound = found(pack(), &Selection::All);
    let one = Selection::Only(BTreeSet::from(["games/skip.yaml".to_owned()]));
    let met = found(pack(), &one);
    assert!(met.iter().all(|found| sound.contains(found)), "{met:?}");
}
