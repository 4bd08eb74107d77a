//! The packs on disk in which each rule is broken once, for a person to read and to try
//! `homeground inspect tests/packs/broken` on. `bare` is a second pack, without pack.yaml and
//! curriculum.yaml, for the rules that a pack with them can't break.
//!
//! The session files are made from the bad examples of the rules:
//! `cargo test --test broken_packs -- --ignored` writes them anew. Each begins with the codes it
//! must give: `# expects: slot-sum`.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use homeground::finding::Finding;
use homeground::inspect::{Rule, example_pack, rules};
use homeground::quantity::{Date, Quantity};
use homeground::read::Selection;
use homeground::source::Folder;

/// Shown in `bare`; each needs a session that says itself what pack.yaml says elsewhere.
const BARE: [&str; 5] = [
    "pack-file-missing",
    "curriculum-listless",
    "licence-missing",
    "safety-missing",
    "surroundings-unthought",
];

/// Shown by files written by hand: the shared files, and what no text can show.
const BY_HAND: [&str; 11] = [
    "shared-twice",
    "neighbour-unfit",
    "language-unknown",
    "translation-unlabelled",
    "address-unsound",
    "thing-twice",
    "weight-grip",
    "curriculum-twice",
    "file-not-text",
    "file-unreadable",
    "link-leaves-pack",
];

fn packs() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/packs")
}

fn inspect(pack: &str) -> Vec<(String, Finding)> {
    let day = Date::read_quantity("2026-06-01").expect("a date in the calendar");
    let source = Folder::new(packs().join(pack)).on(day);
    let inspected = homeground::inspect(&source, &Selection::All).expect("a pack on disk");
    let path = |finding: &Finding| inspected.pack.files.get(finding.place.file).path.clone();
    inspected.findings.iter().map(|finding| (path(finding), finding.clone())).collect()
}

/// The codes after `# expects:` on the first line of a file, which need not be text.
fn expected_of(file: &Path) -> Vec<String> {
    let file = if file.is_dir() { file.join("expects.txt") } else { file.to_owned() };
    let bytes = std::fs::read(&file).expect("a file of the pack");
    let first = bytes.split(|byte| *byte == b'\n').next().unwrap_or_default();
    let first = std::str::from_utf8(first).expect("the first line is text");
    let codes = first
        .strip_prefix("# expects: ")
        .unwrap_or_else(|| panic!("{} says nothing", file.display()));
    let mut codes: Vec<String> = codes.split(", ").map(str::to_owned).collect();
    codes.retain(|code| code != "nothing");
    codes.sort();
    codes
}

fn yaml_files(pack: &str) -> Vec<String> {
    let root = packs().join(pack);
    let in_folder = |folder: &str| -> Vec<String> {
        let entries = std::fs::read_dir(root.join(folder)).expect("a folder of the pack");
        let names = entries.map(|entry| entry.expect("an entry").file_name());
        names.map(|name| format!("{folder}{}", name.to_string_lossy())).collect()
    };
    let units = if pack == "broken" {
        [in_folder("units/"), in_folder("_neighbours/saltmarsh/games/")].concat()
    } else {
        Vec::new()
    };
    let mut files = [in_folder(""), in_folder("rules/"), units].concat();
    files.retain(|path| path.ends_with(".yaml"));
    files.sort();
    files
}

#[test]
fn each_file_gives_the_findings_it_expects_and_no_other() {
    for pack in ["broken", "bare"] {
        let mut found: BTreeMap<String, Vec<String>> = BTreeMap::new();
        for (path, finding) in inspect(pack) {
            found.entry(path).or_default().push(finding.code.to_owned());
        }
        for path in yaml_files(pack) {
            let mut codes = found.remove(&path).unwrap_or_default();
            codes.sort();
            assert_eq!(codes, expected_of(&packs().join(pack).join(&path)), "{pack}/{path}");
        }
        assert!(found.is_empty(), "{pack}: findings in files that are not there: {found:?}");
    }
}

#[test]
fn each_rule_is_shown_once() {
    let findings = [inspect("broken"), inspect("bare")].concat();
    for rule in rules::ALL {
        let shown = findings.iter().filter(|(_, finding)| finding.code == rule.code).count();
        assert_eq!(shown, 1, "{} is shown {shown} times", rule.code);
    }
    let is_rule = |code: &str| rules::ALL.iter().any(|rule| rule.code == code);
    assert!(findings.iter().all(|(_, finding)| is_rule(finding.code)), "a finding without a rule");
}

#[test]
fn the_files_are_made_from_the_rules_as_they_are_now() {
    for (path, text) in written_files() {
        let on_disk = std::fs::read(packs().join(&path)).unwrap_or_default();
        assert!(on_disk == text, "{path} is stale: cargo test --test broken_packs -- --ignored");
    }
}

#[test]
#[ignore = "writes the packs anew after a rule's example has changed"]
fn write_the_files() {
    for (path, text) in written_files() {
        let file = packs().join(path);
        std::fs::create_dir_all(file.parent().expect("a folder")).expect("a folder to write into");
        std::fs::write(file, text).expect("a file that can be written");
    }
}

/// Every file that is made from a rule, by its path below `tests/packs`.
fn written_files() -> BTreeMap<String, Vec<u8>> {
    let mut files = BTreeMap::new();
    for rule in rules::ALL.iter().filter(|rule| !BY_HAND.contains(&rule.code)) {
        let pack = if BARE.contains(&rule.code) { "bare" } else { "broken" };
        for (path, bytes) in example_pack(&with_base(rule)).files {
            if let Some(unit) = unit_of(rule, &path, &bytes) {
                files.insert(format!("{pack}/units/{}.yaml", rule.code), unit);
                continue;
            }
            let Some(name) = path.strip_prefix("games/") else { continue };
            if let Some((name, expects)) = place_of(rule, name) {
                let head = if expects.is_empty() {
                    String::new()
                } else {
                    format!("# expects: {expects}\n")
                };
                let here = format!("builds_on: [rules/{}-2", rule.code);
                let bytes = match String::from_utf8(bytes) {
                    Ok(text) => text.replace("builds_on: [games/example-2", &here).into_bytes(),
                    Err(picture) => picture.into_bytes(),
                };
                files.insert(format!("{pack}/rules/{name}"), [head.into_bytes(), bytes].concat());
            }
        }
    }
    files
}

/// Whether a rule looks at units of work.
fn is_of_unit(rule: &Rule) -> bool {
    matches!(rule.check, homeground::inspect::Check::Unit(_))
}

/// The unit of an example, its sessions under the names they have in the broken pack.
fn unit_of(rule: &Rule, path: &str, bytes: &[u8]) -> Option<Vec<u8>> {
    path.strip_prefix("units/").filter(|_| is_of_unit(rule))?;
    let text =
        String::from_utf8_lossy(bytes).replace("games/example", &format!("rules/{}", rule.code));
    Some(format!("# expects: {}\n{text}", rule.code).into_bytes())
}

/// The name of a file of an example, and what it expects; `None` where it shows nothing.
fn place_of(rule: &Rule, name: &str) -> Option<(String, String)> {
    let code = rule.code;
    match (code, name) {
        (_, picture) if picture.starts_with("pictures/") => {
            (!BARE.contains(&code)).then(|| (picture.into(), String::new()))
        }
        ("file-empty" | "file-misnamed" | "borrowed-unknown", "example.yaml") => None,
        // A translation is named after its original, which is sound.
        (_, "example.fr.yaml") => Some((format!("{code}.fr.yaml"), code.into())),
        ("translation-missing" | "translation-old" | "translation-too-much", _) => {
            Some((format!("{code}.yaml"), "nothing".into()))
        }
        // Its fault is its name.
        ("file-misnamed", name) => Some((name.into(), code.into())),
        // A finding about the pack stands in its first file.
        ("pack-file-missing", _) => Some((format!("1-{code}.yaml"), code.into())),
        // What is found stands in the lender’s file.
        ("link-unborrowed", "example.yaml") => Some((format!("{code}.yaml"), "nothing".into())),
        // Of two that clash the second is found fault with, in the order of their paths.
        ("id-twice", "Example.yaml") => Some(("id twice.yaml".into(), "nothing".into())),
        ("title-twice", "example.yaml") => Some((format!("{code}-1.yaml"), "nothing".into())),
        // The fault of a unit stands in the unit: its sessions are sound.
        (code, "example.yaml") if code.starts_with("unit-") && is_of_unit(rule) => {
            Some((format!("{code}.yaml"), "nothing".into()))
        }
        (_, "example-2.yaml") => Some((format!("{code}-2.yaml"), "nothing".into())),
        ("title-twice", _) => Some((format!("{code}-2.yaml"), code.into())),
        _ => Some((format!("{code}.yaml"), code.into())),
    }
}

/// The bad example over what all these files share: a title of its own and no date that runs out,
/// and in `bare` what pack.yaml says elsewhere.
fn with_base(rule: &Rule) -> String {
    let mut base = vec![("standing", "{state: draft}".to_owned())];
    if rule.code != "title-twice" {
        base.push(("title", format!("Example for {}", rule.code)));
    }
    let is_bare = BARE.contains(&rule.code);
    if is_bare && rule.code != "licence-missing" {
        base.push(("licence", "CC-BY-4.0".into()));
    }
    if is_bare && rule.code != "curriculum-listless" {
        base.push(("curriculum", "~".into()));
    }
    if rule.code == "surroundings-unthought" {
        base.push(("safety", "[Drink when you are thirsty.]".into()));
    } else if is_bare {
        let cautions =
            "[\"Keep an arm’s length from walls and furniture, and pets out of the space.\"]";
        base.push(("safety", cautions.into()));
    }
    let own: Vec<&str> = rule
        .bad
        .lines()
        .take_while(|line| !line.starts_with("# "))
        .filter_map(|l| l.split(':').next())
        .collect();
    let lines = base.iter().filter(|(key, _)| !own.contains(key));
    let lines: String = lines.map(|(key, value)| format!("{key}: {value}\n")).collect();
    let is_second = |line: &str| line.starts_with("# file: games/");
    let draft = |line: &str| if is_second(line) { "standing: {state: draft}\n" } else { "" };
    let bad: String = rule.bad.lines().map(|line| format!("{line}\n{}", draft(line))).collect();
    format!("{lines}{bad}")
}
