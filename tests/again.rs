//! Edits of a pack, hundreds one after the other, by chance: what is made again from what was made before is, byte
//! for byte, what a run from nothing makes, and what is found again is what is found anew. Sessions, shared files,
//! units, translations, pictures and a neighbour’s files are changed, added and taken away.

#![allow(clippy::unwrap_used, reason = "a test that can’t set up its folders has failed")]

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicUsize, Ordering};

use homeground::finding::{Finding, Severity};
use homeground::place::Files;
use homeground::publish::{LIST, LastTime, publish_again};
use homeground::read::Selection;
use homeground::rehearse::Rehearsal;
use homeground::render::key::Key;
use homeground::render::shelf::{Left, Made, Shelf};
use homeground::render::{Bundle, Order, render_order, render_pack};
use homeground::source::Folder;
use homeground::{Inspected, inspect_noting, read_resolved};

const EDITS: usize = 400;
const SOUND: [(&str, &str); 5] = [
    ("pack.yaml", include_str!("../src/inspect/sound/pack.yaml")),
    ("equipment.yaml", include_str!("../src/inspect/sound/equipment.yaml")),
    ("curriculum.yaml", include_str!("../src/inspect/sound/curriculum.yaml")),
    ("games/hop.yaml", include_str!("../src/inspect/sound/session.yaml")),
    ("games/hop.fr.yaml", include_str!("../src/inspect/sound/session.fr.yaml")),
];
const SHARED: &str = "\
cautions: [{name: socks, says: Never do this in socks.}]
key_points: [{name: land, points: [Toes first, Sink down]}]
";
const UNIT: &str = "\
title: Spring
starts: 2027-01-11
weeks: 3
days: [{day: monday, at: 9:30}, {day: thursday, at: 14:00}]
cover: {statements: [jump-1], at_most: 1}
sessions: [{session: games/hop, week: 1, day: monday}, games/skip, ball/roll]
";
const POSES: &str = "poses: [{name: brook stance, knees: bent 50}]\n";
const LENDER: &str = "_neighbours/marsh";
const OTHER_PICTURE: &[u8] =
    include_bytes!("../sessions/_neighbours/saltmarsh/gymnastics/pictures/one-leg.png");
const PICTURE: &[u8] = include_bytes!("../src/inspect/sound/pictures/hop.png");
const WORDS: [&str; 8] = [
    "gently",
    "**now**",
    "[this one](hop.yaml)",
    "[another](../ball/roll.yaml)",
    "<b>",
    "extraordinarily",
    "3 m",
    "![](pictures/hop.png)",
];

/// Numbers by chance, the same in every run (Knuth's linear congruential generator, MMIX).
struct Chance(u64);

impl Chance {
    fn below(&mut self, most: usize) -> usize {
        self.0 =
            self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).unwrap() % most.max(1)
    }

    fn of<'t, T>(&mut self, all: &'t [T]) -> &'t T {
        &all[self.below(all.len())]
    }
}

struct Room {
    folder: tempfile::TempDir,
}

impl Room {
    fn with_pack() -> Self {
        let room = Self { folder: tempfile::tempdir().unwrap() };
        for (path, text) in SOUND {
            room.put(path, text.as_bytes());
        }
        room.put(
            "pack.yaml",
            format!("{}draws_on: [{{name: marsh, folder: {LENDER}}}]\n", SOUND[0].1).as_bytes(),
        );
        for (path, text) in
            [("shared.yaml", SHARED), ("units/spring.yaml", UNIT), ("poses.yaml", POSES)]
        {
            room.put(path, text.as_bytes());
        }
        let session = SOUND[3].1;
        for (path, _) in SOUND.iter().take(2) {
            room.put(
                &format!("{LENDER}/{path}"),
                SOUND.iter().find(|(of, _)| of == path).unwrap().1.as_bytes(),
            );
        }
        let lent = session.replacen("Hop and hold", "Wade and wait", 1)
            + "pictures: [{file: pictures/wade.png, alt: A child stands on one leg}]\n";
        room.put(&format!("{LENDER}/games/wade.yaml"), lent.as_bytes());
        room.put(&format!("{LENDER}/games/pictures/wade.png"), OTHER_PICTURE);
        room.put("games/lent.yaml", b"borrows: marsh/games/wade\ntitle: Lent for a while\n");
        for (path, title) in
            [("games/skip.yaml", "Skip and stop"), ("ball/roll.yaml", "Roll and run")]
        {
            let text = session.replacen("Hop and hold", title, 1);
            let text = text.replacen("safety:\n", "safety:\n  - {use: socks}\n", 1);
            room.put(path, text.as_bytes());
        }
        room.put("games/pictures/hop.png", PICTURE);
        room
    }

    fn pack(&self) -> PathBuf {
        self.folder.path().join("pack")
    }

    fn published(&self) -> PathBuf {
        self.folder.path().join("published")
    }

    fn put(&self, path: &str, bytes: &[u8]) {
        let at = self.pack().join(path);
        fs::create_dir_all(at.parent().unwrap()).unwrap();
        fs::write(at, bytes).unwrap();
    }

    /// The texts of the pack, by path.
    fn texts(&self) -> Vec<(String, String)> {
        let files = files_below(&self.pack()).into_iter();
        files.filter_map(|(path, bytes)| Some((path, String::from_utf8(bytes).ok()?))).collect()
    }

    fn inspect(&self) -> Inspected {
        homeground::inspect(&Folder::new(self.pack()), &Selection::All).unwrap()
    }
}

fn files_below(folder: &Path) -> BTreeMap<String, Vec<u8>> {
    let mut files = BTreeMap::new();
    let mut folders = vec![folder.to_owned()];
    while let Some(next) = folders.pop() {
        for entry in fs::read_dir(next).unwrap().flatten() {
            let path = entry.path();
            if path.is_dir() {
                folders.push(path);
            } else {
                let name = path.strip_prefix(folder).unwrap().to_str().unwrap().to_owned();
                files.insert(name, fs::read(&path).unwrap());
            }
        }
    }
    files
}

/// One edit as a teacher might make it, and many that none would.
fn edit(room: &Room, chance: &mut Chance) -> String {
    let texts = room.texts();
    let (path, text) = chance.of(&texts).clone();
    let mut lines: Vec<String> = text.lines().map(str::to_owned).collect();
    let at = chance.below(lines.len());
    let kind = chance.below(18);
    match kind {
        0..=4 => {
            let mut words: Vec<String> = lines[at].split(' ').map(str::to_owned).collect();
            let word = words.len() - 1 - chance.below(words.len() / 2 + 1);
            match chance.below(3) {
                0 => words.insert(word.max(1), (*chance.of(&WORDS)).to_owned()),
                1 => words[word] = words[word].replace(['3', '4'], "5"),
                _ => drop(words.remove(word)),
            }
            lines[at] = words.join(" ");
        }
        5 => drop(lines.remove(at)),
        6 => lines.insert(at, lines[at].clone()),
        7 => lines.insert(at, "# A remark moves all lines below it.".into()),
        8 => lines[0] = format!("title: Title {}", chance.below(50)),
        9 => {
            let state = *chance.of(&["retired", "draft", "ready"]);
            lines.retain(|line| !line.starts_with("standing:"));
            lines.push(format!("standing: {{state: {state}, by: [AB], on: 2026-01-05}}"));
        }
        10 => {
            let name = format!("{}/new-{}.yaml", chance.of(&["games", "ball"]), chance.below(3));
            let title = format!("title: New {}\n", chance.below(99));
            let rest = SOUND[3].1.split_once('\n').unwrap().1;
            room.put(&name, format!("{title}{rest}").as_bytes());
            return format!("{name} is new");
        }
        12 => return put_or_take(room, "games/pictures/more.png", PICTURE),
        13 => {
            let path = ["games/pictures/hop.png", "_neighbours/marsh/games/pictures/wade.png"];
            let (path, picture) = (*chance.of(&path), *chance.of(&[PICTURE, OTHER_PICTURE]));
            room.put(path, picture);
            return format!("{path} is another");
        }
        14 => {
            let shared = [
                ("curriculum.yaml", SOUND[2].1),
                ("shared.yaml", SHARED),
                ("poses.yaml", POSES),
                ("units/spring.yaml", UNIT),
                ("games/skip.fr.yaml", SOUND[4].1),
                ("games/hop.fr.yaml", SOUND[4].1),
            ];
            let (path, text) = *chance.of(&shared);
            return put_or_take(room, path, text.as_bytes());
        }
        15 => {
            // Lines of a shared file move: what is taken from it stands elsewhere, and says what it said.
            let path =
                *chance.of(&["pack.yaml", "equipment.yaml", "shared.yaml", "curriculum.yaml"]);
            let Some((_, text)) = texts.iter().find(|(of, _)| of == path) else {
                return "nothing".into();
            };
            room.put(path, format!("# A remark\n{text}").as_bytes());
            return format!("{path} begins with a remark");
        }
        16 => {
            let first = edit(room, chance);
            return format!("{first}; {}", edit(room, chance));
        }
        _ => {
            let session = texts.iter().find(|(path, _)| path.contains("/new-"));
            let gone = session.map(|(path, _)| path.clone());
            if let Some(gone) = gone {
                fs::remove_file(room.pack().join(&gone)).unwrap();
                return format!("{gone} is gone");
            }
            lines.swap(at, 0);
        }
    }
    room.put(&path, (lines.join("\n") + "\n").as_bytes());
    format!("{path}, line {}, edit {kind}", at + 1)
}

/// Puts a file there, or takes it away if it is there.
fn put_or_take(room: &Room, path: &str, bytes: &[u8]) -> String {
    let at = room.pack().join(path);
    if at.exists() {
        fs::remove_file(at).unwrap();
        return format!("{path} is gone");
    }
    room.put(path, bytes);
    format!("{path} is there")
}

/// Now and then something happens to what was published, or to the record of it.
fn damage(room: &Room, chance: &mut Chance) {
    let kind = chance.below(12);
    let published: Vec<String> = files_below(&room.published()).into_keys().collect();
    let path = room.published().join(chance.of(&published));
    let record = room.folder.path().join(".published.homeground-made");
    match kind {
        0 if path.file_name().is_some_and(|name| name != LIST) => {
            let mut bytes = fs::read(&path).unwrap();
            bytes.pop();
            bytes.push(b'!');
            // A new file: the old bytes may be one file with another name.
            fs::remove_file(&path).unwrap();
            fs::write(&path, bytes).unwrap();
        }
        1 if path.file_name().is_some_and(|name| name != LIST) => fs::remove_file(&path).unwrap(),
        4 => {
            // The same length and the same time of writing: only the time of change tells.
            let Ok(written) = fs::metadata(&path).and_then(|about| about.modified()) else {
                return;
            };
            let mut bytes = fs::read(&path).unwrap();
            if let Some(last) = bytes.last_mut() {
                *last = last.wrapping_add(1);
            }
            let is_list = path.file_name().is_some_and(|name| name == LIST);
            if !is_list {
                fs::write(&path, bytes).unwrap();
                fs::File::options().write(true).open(&path).unwrap().set_modified(written).unwrap();
            }
        }
        5 => {
            let notes = room.folder.path().join(".published.homeground-notes");
            let mut bytes = fs::read(&notes).unwrap();
            let at = chance.below(bytes.len());
            bytes[at] = bytes[at].wrapping_add(1);
            fs::write(&notes, bytes).unwrap();
        }
        2 => {
            let mut bytes = fs::read(&record).unwrap();
            let at = chance.below(bytes.len());
            bytes[at] = bytes[at].wrapping_add(1);
            fs::write(&record, bytes).unwrap();
        }
        3 => fs::remove_file(&record).unwrap(),
        _ => {}
    }
}

/// Counts what a shelf gives.
struct Counted<'s> {
    shelf: &'s LastTime,
    found: &'s AtomicUsize,
    made: &'s AtomicUsize,
    /// What was had the near way, unread.
    left: &'s AtomicUsize,
}

impl Shelf for Counted<'_> {
    fn find(&self, key: Key) -> Option<Vec<Made>> {
        let found = self.shelf.find(key);
        self.found.fetch_add(usize::from(found.is_some()), Ordering::Relaxed);
        self.made.fetch_add(usize::from(found.is_none()), Ordering::Relaxed);
        found
    }

    fn keep(&self, key: Key, made: &[Made]) {
        self.shelf.keep(key, made);
    }

    fn leave(&self, key: Key, paths: &[String]) -> Option<Vec<Left>> {
        let left = self.shelf.leave(key, paths);
        self.left.fetch_add(usize::from(left.is_some()), Ordering::Relaxed);
        left
    }

    fn find_note(&self, key: Key) -> Option<Vec<u8>> {
        let note = self.shelf.find_note(key);
        self.left.fetch_add(usize::from(note.is_some()), Ordering::Relaxed);
        note
    }

    fn keep_note(&self, key: Key, note: &[u8]) {
        self.shelf.keep_note(key, note);
    }
}

/// Findings as a teacher reads them: file, line, code, sentence and way out.
fn told(findings: &[Finding], files: &Files) -> Vec<String> {
    let tell = |finding: &Finding| {
        let (path, at) = (&files.get(finding.place.file).path, files.line_column(finding.place));
        let Finding { code, says, way_out, .. } = finding;
        format!("{path}:{}:{} {code} {says} {way_out}", at.line, at.column)
    };
    findings.iter().map(tell).collect()
}

#[test]
fn what_is_made_again_is_what_is_made_anew() {
    let room = Room::with_pack();
    let mut chance = Chance(7);
    let mut rehearsal = Rehearsal::begin(&room.pack()).unwrap();
    let (found, made) = (AtomicUsize::new(0), AtomicUsize::new(0));
    let left = AtomicUsize::new(0);
    let (mut published, mut files) = (0, 0);
    let mut sound: Vec<(String, String)> = room.texts();
    for number in 0..EDITS {
        let what = if number == 0 { "as it came".to_owned() } else { edit(&room, &mut chance) };
        rehearsal.look_again().unwrap();
        let inspected = room.inspect();
        let scene = rehearsal.scene();
        let (again, anew) =
            (told(&scene.findings, &scene.files), told(&inspected.findings, &inspected.pack.files));
        assert_eq!(again, anew, "edit {number}: {what}");
        let is_sound = inspected.findings.iter().all(|f| f.severity != Severity::Problem);
        if !is_sound || inspected.pack.sessions.is_empty() {
            // Half of the time the next edit falls on a pack that is broken already.
            if chance.below(2) == 0 {
                for (path, _) in room.texts() {
                    fs::remove_file(room.pack().join(path)).unwrap();
                }
                for (path, text) in &sound {
                    room.put(path, text.as_bytes());
                }
            }
            continue;
        }
        sound = room.texts();
        // Every other edit is published together with the next.
        if number % 2 == 1 {
            continue;
        }
        let whole = render_pack(&inspected.pack, &|| ()).unwrap();
        if number % 4 == 0 {
            // What is shown in a rehearsal is what would be published.
            let shown = render_order(&scene.pack, scene.plans.clone(), Order::default()).unwrap();
            let keys = |files: &Bundle| -> Vec<(String, Key)> {
                files.iter().map(|(path, bytes)| (path.clone(), Key::of(bytes))).collect()
            };
            assert_eq!(keys(&shown.bundle), keys(&whole.bundle), "edit {number}: {what}");
        }
        if published > 0 {
            damage(&room, &mut chance);
        }
        let last = LastTime::look_up(&room.published());
        let shelf = Counted { shelf: &last, found: &found, made: &made, left: &left };
        // As `publish` does it: what was found last time is read from notes.
        let (pack, met) = read_resolved(&Folder::new(room.pack()), &Selection::All).unwrap();
        let noted = inspect_noting(pack, met, &shelf);
        assert_eq!(told(&noted.findings, &noted.pack.files), anew, "edit {number}: {what}");
        let order = Order { shelf: Some(&shelf), ..Order::default() };
        let again = render_order(&noted.pack, noted.plans, order).unwrap();
        assert_eq!(again.ink, whole.ink, "edit {number}: {what}");
        publish_again(&again.bundle, &room.published(), &room.pack(), &last).unwrap();
        let mut there = files_below(&room.published());
        assert!(there.remove(LIST).is_some());
        let keys = |files: &BTreeMap<String, Vec<u8>>| -> Vec<(String, Key)> {
            files.iter().map(|(path, bytes)| (path.clone(), Key::of(bytes))).collect()
        };
        assert_eq!(keys(&there), keys(&whole.bundle), "edit {number}: {what}");
        published += 1;
        files += there.len();
    }
    let (found, made, left) = (found.into_inner(), made.into_inner(), left.into_inner());
    println!(
        "{published} published, {files} files compared; {left} pieces left as they were, {found} found, {made} made"
    );
    assert!(published > EDITS / 5, "{published}");
    // Most of what an edit does not touch is found again.
    assert!(left + found > made, "{left} left, {found} found, {made} made");
    assert!(left > EDITS, "{left} left");
}
