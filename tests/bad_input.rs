//! Files that no session should look like, through the real program: each ends with the right status
//! and a finding at its line and column, in words for a teacher, and never with a panic.

use std::collections::BTreeSet;
use std::path::Path;
use std::process::{Command, Output, Stdio};
use std::time::{Duration, Instant};

use homeground::quantity::{Date, Quantity};
use homeground::read::Selection;
use homeground::source::{Entry, EntryKind, Source};
use serde_json::Value;

/// A session without fault, to spoil in one place.
const SOUND: &str = include_str!("../src/inspect/sound/session.yaml");
const SOUND_FILES: [(&str, &str); 3] = [
    ("pack.yaml", include_str!("../src/inspect/sound/pack.yaml")),
    ("equipment.yaml", include_str!("../src/inspect/sound/equipment.yaml")),
    ("curriculum.yaml", include_str!("../src/inspect/sound/curriculum.yaml")),
];

/// Far more than any of these takes, even on a busy computer.
const PATIENCE: Duration = Duration::from_secs(60);

/// A pack in a folder of its own, and what inspecting it must come to.
struct Pack {
    folder: tempfile::TempDir,
}

impl Pack {
    /// A sound pack with one session, `games/hop.yaml`, of this text.
    fn with(session: impl AsRef<[u8]>) -> Self {
        let pack = Self::empty().file("games/hop.yaml", session);
        SOUND_FILES.into_iter().fold(pack, |pack, (path, text)| pack.file(path, text))
    }

    /// The sound session with one piece of it changed.
    fn changed(from: &str, to: &str) -> Self {
        assert_eq!(SOUND.matches(from).count(), 1, "“{from}” stands once in the sound session");
        Self::with(SOUND.replace(from, to))
    }

    fn empty() -> Self {
        Self { folder: tempfile::tempdir().expect("a folder to write into") }
    }

    fn file(self, path: &str, bytes: impl AsRef<[u8]>) -> Self {
        let path = self.folder.path().join(path);
        std::fs::create_dir_all(path.parent().expect("a folder")).expect("a folder");
        std::fs::write(path, bytes).expect("a file");
        self
    }

    fn path(&self) -> &Path {
        self.folder.path()
    }

    /// Inspects it both ways and holds both reports to `code` at line and column.
    #[track_caller]
    fn finds(&self, code: &str, line: u64, column: u64) -> String {
        self.finds_in("games/hop.yaml", code, line, column)
    }

    #[track_caller]
    fn finds_in(&self, file: &str, code: &str, line: u64, column: u64) -> String {
        let rows = self.findings();
        let at = |row: &Value| {
            (row["file"].as_str() == Some(file), row["line"].as_u64(), row["column"].as_u64())
        };
        let found = rows.iter().find(|row| row["code"] == code);
        let row = found.unwrap_or_else(|| panic!("no {code} among {rows:#?}"));
        assert_eq!(at(row), (true, Some(line), Some(column)), "{row:#}");
        let text = run(&["inspect", &self.path().display().to_string()]);
        assert_eq!(text.status.code(), Some(1));
        let shown = said(&text);
        assert!(shown.contains(&format!("problem[{code}]")), "{shown}");
        assert!(shown.contains(&format!("{file}:{line}:{column}")) || line == 1, "{shown}");
        row["message"].as_str().unwrap_or_default().to_owned()
            + row["way_out"].as_str().unwrap_or_default()
    }

    /// The rows of `--report json`, each with everything that a script may rely on.
    #[track_caller]
    fn findings(&self) -> Vec<Value> {
        let output = run(&["inspect", &self.path().display().to_string(), "--report", "json"]);
        said(&output);
        let rows: Vec<Value> = serde_json::from_slice(&output.stdout).expect("valid JSON");
        for row in &rows {
            assert!(row["line"].as_u64().is_some_and(|line| line > 0), "{row}");
            assert!(row["column"].as_u64().is_some_and(|column| column > 0), "{row}");
            assert!(
                ["problem", "warning", "advice"].iter().any(|word| row["severity"] == *word),
                "{row}"
            );
            assert!(
                ["file", "code", "message", "way_out"].iter().all(|key| row[key].is_string()),
                "{row}"
            );
        }
        let has_problem = rows.iter().any(|row| row["severity"] == "problem");
        assert_eq!(output.status.code(), Some(i32::from(has_problem)), "{rows:#?}");
        rows
    }
}

/// Runs the program, and gives up on it when it hangs.
#[track_caller]
fn run(arguments: &[&str]) -> Output {
    let mut child = Command::new(env!("CARGO_BIN_EXE_homeground"))
        .args(arguments)
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts");
    // Read on a thread of its own, so that a long report can't block the program.
    let id = child.id();
    let begun = Instant::now();
    let (done, is_done) = std::sync::mpsc::channel();
    let mut out = child.stdout.take().expect("a pipe");
    let mut err = child.stderr.take().expect("a pipe");
    std::thread::spawn(move || {
        let (mut stdout, mut stderr) = (Vec::new(), Vec::new());
        let _ = std::io::copy(&mut out, &mut stdout);
        let _ = std::io::copy(&mut err, &mut stderr);
        let _ = done.send((stdout, stderr));
    });
    let Ok((stdout, stderr)) = is_done.recv_timeout(PATIENCE) else {
        let _ = child.kill();
        panic!("{arguments:?} (process {id}) still ran after {:?}", begun.elapsed());
    };
    Output { status: child.wait().expect("it ends"), stdout, stderr }
}

/// What was printed, which must hold no panic and no word that only a programmer knows.
#[track_caller]
fn said(output: &Output) -> String {
    const FOREIGN: [&str; 14] = [
        "panicked",
        "RUST_BACKTRACE",
        "unwrap",
        "Option<",
        "Vec<",
        "Some(",
        "Err(",
        "u32",
        "usize",
        "serde",
        "saphyr",
        "scalar",
        "mapping",
        "deserialize",
    ];
    let both = [output.stdout.as_slice(), output.stderr.as_slice()].concat();
    let text = String::from_utf8(both).expect("what is printed is UTF-8");
    for word in FOREIGN {
        assert!(!text.contains(word), "“{word}” in:\n{}", &text[..text.len().min(4000)]);
    }
    text
}

/// Line and column, from 1, of the first `words` in a text.
fn place_of(text: &str, words: &str) -> (u64, u64) {
    let at = text.find(words).expect("the words are there");
    let line_start = text[..at].rfind('\n').map_or(0, |newline| newline + 1);
    let count = |n: usize| u64::try_from(n).expect("a small number") + 1;
    (count(text[..at].matches('\n').count()), count(text[line_start..at].chars().count()))
}

#[test]
fn a_sound_pack_ends_well() {
    assert_eq!(Pack::with(SOUND).findings(), Vec::<Value>::new());
    let text = run(&["inspect", &Pack::with(SOUND).path().display().to_string()]);
    assert_eq!(said(&text), "Nothing to mend.\n");
}

#[test]
fn warnings_alone_end_well() {
    let rows = Pack::changed("    harder: Hop backwards.\n", "").findings();
    let codes: Vec<_> = rows.iter().filter_map(|row| row["code"].as_str()).collect();
    assert_eq!(codes, ["easier-harder-missing"]);
}

#[test]
fn an_empty_file() {
    Pack::with("").finds("file-empty", 1, 1);
    Pack::with("\n  \n# later\n").finds("file-empty", 1, 1);
}

#[test]
fn tabs() {
    let told =
        Pack::with(SOUND.replace("  title: Stone", "\ttitle: Stone")).finds("yaml-broken", 16, 1);
    assert!(told.contains("tab"), "{told}");
    let told = Pack::with("title: A\n\tsummary: B\n").finds("yaml-broken", 2, 1);
    assert!(told.contains("tab"), "{told}");
}

#[test]
fn wrong_indentation() {
    let told =
        Pack::changed("  title: Slow reach", "     title: Slow reach").finds("yaml-broken", 64, 3);
    assert!(told.contains("the one above in column 6"), "{told}");
}

#[test]
fn a_doubled_key() {
    let line = u64::try_from(SOUND.lines().count()).expect("a small number") + 1;
    let told = Pack::with(format!("{SOUND}title: Again\n")).finds("key-twice", line, 1);
    assert!(told.contains("“title”"), "{told}");
}

#[test]
fn a_misspelt_key() {
    let told = Pack::changed("summary:", "sumary:").finds("key-unknown", 2, 1);
    assert!(told.contains("Did you mean “summary”?"), "{told}");
    let rows = Pack::changed("summary:", "sumary:").findings();
    assert_eq!(rows.len(), 1, "the slip is told once: {rows:#?}");
}

#[test]
fn quantities_that_are_nearly_right() {
    let (line, column) = place_of(SOUND, "4 min");
    for (written, way_out) in [
        ("5 mins", "Write 5 min."),
        ("1,5 min", "1.5 min"),
        ("-4 min", "can’t be negative"),
        ("4", "Add one"),
        ("four min", "no number"),
        ("99999999 min", "far too large"),
        ("\"\"", ""),
    ] {
        let told = Pack::changed("time: 4 min", &format!("time: {written}")).finds(
            "value-unfit",
            line,
            column,
        );
        assert!(told.contains(way_out), "{written}: {told}");
    }
}

#[test]
fn a_decimal_comma_in_a_length() {
    let block = "space:\n  length: 1,5 m\n  width: 2 m\n";
    let group = SOUND.lines().find(|line| line.starts_with("space:")).expect("the sound space");
    let told = Pack::changed(group, block.trim_end()).finds("value-unfit", 13, 11);
    assert!(told.contains("1.5 m"), "{told}");
    // Inside { } the comma begins a new key, and that is what is said.
    let told = Pack::changed("length: 4 m,", "length: 1,5 m,").finds("key-unknown", 12, 19);
    assert!(told.contains("with a point"), "{told}");
}

/// “A billion laughs”: ten lists, each ten times the one before.
#[test]
fn an_alias_bomb() {
    let mut bomb = "a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n".to_owned();
    for level in 1..10 {
        let before = vec![format!("*a{}", level - 1); 10].join(", ");
        bomb.push_str(&format!("a{level}: &a{level} [{before}]\n"));
    }
    let rows = Pack::with(&bomb).findings();
    assert_eq!(rows[0]["code"], "file-too-much");
    assert!(rows[0]["line"].as_u64() <= Some(10));
}

#[test]
fn an_anchor_inside_itself() {
    let rows = Pack::with("title: &a [*a]\n").findings();
    assert!(rows.iter().any(|row| row["severity"] == "problem"), "{rows:#?}");
}

#[test]
fn ten_thousand_nested_lists() {
    let deep = 10_000;
    let flow = format!("title: {}{}\n", "[".repeat(deep), "]".repeat(deep));
    let unclosed = format!("title: {}\n", "[".repeat(deep));
    let groups = format!("title: {}\n", "{a: ".repeat(deep));
    let block = format!("title:\n  {}x\n", "- ".repeat(deep));
    for (text, line) in [(flow, 1), (unclosed, 1), (groups, 1), (block, 2)] {
        let rows = Pack::with(&text).findings();
        assert_eq!(
            (&rows[0]["code"], rows[0]["line"].as_u64()),
            (&"file-too-much".into(), Some(line))
        );
    }
}

/// Nested lists on lines of their own, as deep as a file of the largest size can be.
#[test]
fn nested_lists_line_by_line() {
    let text: String = (0..1000).map(|depth| format!("{}-\n", " ".repeat(depth))).collect();
    let rows = Pack::with(format!("title:\n{text}")).findings();
    assert_eq!(rows[0]["code"], "file-too-much");
}

#[test]
fn bytes_that_are_no_text() {
    Pack::with(b"title: A\nsummary: Caf\xe9\n").finds("file-not-text", 2, 13);
    let nul = SOUND.replace("Slow reach", "Slow\0reach");
    let (line, column) = place_of(&nul, "\0");
    Pack::with(&nul).finds("file-not-text", line, column);
    Pack::with([0; 1000]).finds("file-not-text", 1, 1);
    let utf16: Vec<u8> = "\u{feff}title: A\n".encode_utf16().flat_map(u16::to_le_bytes).collect();
    let told = Pack::with(utf16).finds("file-not-text", 1, 1);
    assert!(told.contains("UTF-16"), "{told}");
}

#[test]
fn a_byte_order_mark_and_crlf_change_nothing() {
    assert!(Pack::with(format!("\u{feff}{SOUND}")).findings().is_empty());
    assert!(Pack::with(SOUND.replace('\n', "\r\n")).findings().is_empty());
    let slip = SOUND.replace("time: 4 min", "time: 5 mins");
    let (line, column) = place_of(&slip, "5 mins");
    Pack::with(format!("\u{feff}{slip}")).finds("value-unfit", line, column);
    Pack::with(slip.replace('\n', "\r\n")).finds("value-unfit", line, column);
}

#[test]
fn columns_count_letters_and_not_bytes() {
    Pack::changed("time: 4 min\n  effort: light", "time: 4 min\n  effort: lïght – so").finds(
        "value-unfit",
        65,
        11,
    );
    let slip =
        SOUND.replace("{ask: What bends when you land?,", "{ask: Was heißt “fällt”?, knd: x,");
    let (line, column) = place_of(&slip, "knd");
    let told = Pack::with(slip).finds("key-unknown", line, column);
    assert!(told.contains("Did you mean “kind”?"), "{told}");
}

/// Sparse, so that it costs the disk nothing.
#[test]
fn a_file_of_fifty_megabytes() {
    let pack = Pack::with("");
    let file = std::fs::OpenOptions::new().write(true).open(pack.path().join("games/hop.yaml"));
    file.and_then(|file| file.set_len(50_000_000)).expect("a large file");
    let told = pack.finds("file-too-much", 1, 1);
    assert!(told.contains("50 MB"), "{told}");
}

#[test]
fn a_very_long_line() {
    let long =
        SOUND.replace("Reach up and", &format!("{} and", "Reach up ".repeat(20_000 / 9 + 1)));
    let (line, _) = place_of(&long, "how: Reach");
    let told = Pack::with(long).finds("value-unfit", line, 8);
    assert!(told.contains("Shorten it"), "{told}");
    let key = format!("{SOUND}zz: {}\n", "a".repeat(900_000));
    let pack = Pack::with(key);
    pack.finds("key-unknown", 72, 1);
    let text = run(&["inspect", &pack.path().display().to_string()]);
    assert!(text.stdout.len() < 10_000, "the report shows only the beginning of the line");
}

#[test]
fn a_folder_named_as_a_file() {
    let pack = Pack::with(SOUND).file("games/tag.yaml/notes.txt", "notes");
    pack.finds_in("games/tag.yaml", "file-unreadable", 1, 1);
}

#[cfg(unix)]
#[test]
fn a_link_that_leaves_the_pack() {
    let outside = Pack::with(SOUND);
    let pack = Pack::with(SOUND);
    let link = |to: &Path, name: &str| {
        std::os::unix::fs::symlink(to, pack.path().join(name)).expect("a link");
    };
    link(&outside.path().join("games/hop.yaml"), "games/linked.yaml");
    link(Path::new("../../../../../../etc/hostname"), "games/other.yaml");
    link(Path::new("nowhere.yaml"), "games/lost.yaml");
    for name in ["games/linked.yaml", "games/other.yaml", "games/lost.yaml"] {
        let rows = pack.findings();
        let row = rows.iter().find(|row| row["file"] == name).expect("a finding for the link");
        assert_eq!(row["code"], "link-leaves-pack");
    }
}

/// Opening a pipe would wait for ever for somebody to write into it.
#[cfg(unix)]
#[test]
fn a_pipe_is_not_waited_for() {
    let pack = Pack::with(SOUND).file("look/static/x", "");
    for name in ["games/pipe.yaml", "games/pipe.png", "look/pipe"] {
        let made = Command::new("mkfifo").arg(pack.path().join(name)).status();
        assert!(made.expect("mkfifo").success());
    }
    pack.finds_in("games/pipe.yaml", "file-unreadable", 1, 1);
}

/// Permissions don't bind whoever runs these tests as root, so the refusal comes from a source.
#[test]
fn a_file_that_may_not_be_opened() {
    struct Locked;
    impl Source for Locked {
        fn name(&self) -> String {
            "Locked".into()
        }
        fn entries(&self) -> Result<Vec<Entry>, String> {
            Ok(vec![Entry { path: "hop.yaml".into(), kind: EntryKind::File { bytes: 100 } }])
        }
        fn bytes(&self, _: &str) -> Result<Vec<u8>, String> {
            Err("This computer may not open it".into())
        }
        fn today(&self) -> Date {
            Date::read_quantity("2026-06-01").expect("a date")
        }
    }
    let inspected = homeground::inspect(&Locked, &Selection::All).expect("findings, not a failure");
    let [finding] = inspected.findings.as_slice() else { panic!("{:?}", inspected.findings) };
    assert_eq!(finding.code, "file-unreadable");
    assert!(finding.says.contains("may not open"), "{}", finding.says);
}

#[test]
fn what_is_no_session_at_all() {
    Pack::with("- a\n- b\n").finds("yaml-broken", 1, 1);
    Pack::with("hello\n").finds("yaml-broken", 1, 1);
    Pack::with(format!("{SOUND}---\ntitle: B\n")).finds("yaml-broken", 73, 1);
    Pack::with("title: *nobody\n").finds("yaml-broken", 1, 8);
    Pack::with("title: \"never closed\n").finds("yaml-broken", 1, 8);
    let open = "title: A\nequipment:\n  - {need: marker, count: 2\n  - {need: chair, count: 1}\n";
    Pack::with(open).finds("yaml-broken", 3, 5);
    Pack::with("[a, b]: c\n? {x: 1}\n: y\n").findings();
    Pack::with("title: !!python/object:os.system x\n").finds("key-missing", 1, 1);
}

#[test]
fn the_shared_files_are_held_to_the_same() {
    let pack = |name: &str, text: &str| Pack::with(SOUND).file(name, text);
    pack("pack.yaml", "title: A\npaper: A5\n").finds_in("pack.yaml", "value-unfit", 2, 8);
    pack("equipment.yaml", "equipment: 5\n").finds_in("equipment.yaml", "value-unfit", 1, 12);
    pack("curriculum.yaml", "statements: []\n").finds_in("curriculum.yaml", "key-missing", 1, 1);
}

#[test]
fn one_bad_file_does_not_hide_the_others() {
    let pack = Pack::changed("time: 4 min", "time: 5 mins")
        .file("games/b.yaml", "title: [\n")
        .file("games/c.yaml", "");
    let codes: BTreeSet<String> =
        pack.findings().iter().filter_map(|row| row["code"].as_str().map(str::to_owned)).collect();
    for code in ["value-unfit", "yaml-broken", "file-empty"] {
        assert!(codes.contains(code), "{code} is missing from {codes:?}");
    }
}

#[test]
fn what_could_not_run_ends_with_two() {
    let pack = Pack::with(SOUND);
    let nowhere = pack.path().join("nowhere").display().to_string();
    let folder = pack.path().display().to_string();
    let another = Pack::with(SOUND).file("notes.txt", "Bring the tape.");
    let other = another.path().display().to_string();
    let notes = another.path().join("notes.txt").display().to_string();
    for arguments in [
        vec!["inspect", &nowhere],
        vec!["inspect", &folder, &other],
        vec!["inspect", &notes],
        vec!["inspect", &folder, "--as-of", "soon"],
        vec!["inspect", &folder, "--report", "paper"],
        vec!["publish", &nowhere, "--to", &nowhere],
    ] {
        let output = run(&arguments);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}");
        assert!(output.stdout.is_empty(), "{arguments:?}: a message is no result");
        assert!(!said(&output).is_empty());
    }
}

/// A problem leaves what was published before as it was, and no half-written pack.
#[test]
fn problems_stop_publishing() {
    let pack = Pack::changed("time: 4 min", "time: 5 mins");
    let to = Pack::empty();
    let target = to.path().join("out");
    let output = run(&[
        "publish",
        &pack.path().display().to_string(),
        "--to",
        &target.display().to_string(),
    ]);
    assert_eq!(output.status.code(), Some(1));
    assert!(said(&output).contains("problem[value-unfit]"));
    assert!(!target.exists());
    assert_eq!(
        std::fs::read_dir(to.path()).expect("a folder").count(),
        0,
        "nothing is left beside it"
    );
}

#[test]
fn the_starter_passes() {
    let draft = run(&["draft", "A title with: “marks” # and more"]);
    assert_eq!(draft.status.code(), Some(0));
    assert_eq!(Pack::with(&draft.stdout).findings(), Vec::<Value>::new());
}

#[test]
fn a_folder_inside_a_pack_is_no_pack_of_its_own() {
    let pack = Pack::with(SOUND).file("dance/broken.yaml", "title: [\n");
    let inside = |folder: &str| pack.path().join(folder).display().to_string();
    let clean = run(&["inspect", &inside("games")]);
    assert_eq!(said(&clean).trim(), "Nothing to mend.");
    assert_eq!(clean.status.code(), Some(0));
    assert_eq!(run(&["inspect", &inside("dance")]).status.code(), Some(1));
}

#[test]
fn publishing_leaves_what_is_not_its_own() {
    let pack = Pack::with(SOUND);
    let from = pack.path().display().to_string();
    let shelf = tempfile::tempdir().expect("a folder to write into");
    let target = shelf.path().join("out");
    let to = target.display().to_string();
    let publish = || run(&["publish", &from, "--to", &to, "--as-of", "2026-06-01"]).status.code();
    assert_eq!(publish(), Some(0));
    std::fs::write(target.join(".DS_Store"), "").expect("a file browser’s dropping");
    assert_eq!(publish(), Some(0), "droppings are nobody’s");
    std::fs::create_dir(target.join("photos")).expect("a folder of the teacher’s");
    assert_eq!(publish(), Some(2), "a folder of the teacher’s, even an empty one, is left");
    assert!(target.join("photos").is_dir() && target.join("index.html").is_file());
}

#[test]
fn wishes_for_paper_are_held_to_their_words() {
    let print = |wish: &str| {
        let text = format!("title: A\nprint:\n  {wish}\n");
        Pack::with(SOUND).file("pack.yaml", text)
    };
    let said = print("cards: 3").finds_in("pack.yaml", "value-unfit", 3, 10);
    assert!(said.contains("1, 2, 4, 8"), "{said}");
    let said = print("sides: long-edge").finds_in("pack.yaml", "value-unfit", 3, 10);
    assert!(said.contains("long_edge"), "{said}");
    print("copies: 0").finds_in("pack.yaml", "value-unfit", 3, 11);
    print("copies: 41").finds_in("pack.yaml", "value-unfit", 3, 11);
    print("record: [child, clas]").finds_in("pack.yaml", "value-unfit", 3, 19);
    let said = print("boklet: true").finds_in("pack.yaml", "key-unknown", 3, 3);
    assert!(said.contains("booklet"), "{said}");
}

#[test]
fn the_command_prints_over_what_the_pack_wishes() {
    let wishes = "title: A\nprint: {poster: true, booklet: true, record: [class, week]}\n";
    let pack = Pack::with(SOUND).file("pack.yaml", wishes);
    let (from, shelf) = (pack.path().display().to_string(), tempfile::tempdir().expect("a folder"));
    let sheets = |name: &str, more: &[&str]| {
        let to = shelf.path().join(name);
        let published = ["publish", &from, "--to", &to.display().to_string()];
        assert_eq!(run(&[&published, more].concat()).status.code(), Some(0));
        let made = std::fs::read_dir(to.join("print/games/hop")).expect("sheets");
        made.map(|file| file.expect("a file").file_name().to_string_lossy().into_owned())
            .filter(|name| name.ends_with(".pdf"))
            .collect::<BTreeSet<_>>()
    };
    let usual = ["cards.pdf", "home-guide.pdf", "review.pdf"];
    let with = |more: &[&str]| [&usual, more].concat().iter().map(ToString::to_string).collect();
    let wished: BTreeSet<String> =
        with(&["poster.pdf", "booklet.pdf", "record-class.pdf", "record-week.pdf"]);
    assert_eq!(sheets("pack", &[]), wished);
    let over = ["--booklet=false", "--record", "child", "--copies", "2", "--large-print"];
    let wished: BTreeSet<String> =
        with(&["poster.pdf", "record.pdf", "class-set.pdf", "large-print.pdf"]);
    assert_eq!(sheets("command", &over), wished);
    let slip = run(&["publish", &from, "--to", "nowhere", "--cards", "3"]);
    assert_eq!(slip.status.code(), Some(2));
}

#[test]
fn slips_in_the_command_line_are_told_in_words() {
    let cases: [(&[&str], &str); 7] = [
        (&["inpect"], "There is no command “inpect”. Did you mean “inspect”?"),
        (&["publish", "sessions"], "This is still needed: --to <DIR>."),
        (&["publish", "--too", "x"], "“--too” is not understood here. Did you mean “--to”?"),
        (&["inspect", "--report", "txt"], "“txt” does not fit after --report <REPORT>."),
        (&["inspect", "--report", "txt"], "Write one of: text, json, sarif."),
        (&["draft"], "This is still needed: <TITLE>."),
        (&["inspect", "sessions", "--as-of", "31/12/2026"], "can’t be read as a date"),
    ];
    for (arguments, wanted) in cases {
        let output = run(arguments);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}");
        let said = said(&output);
        assert!(said.contains(wanted), "{arguments:?}: {said}");
        assert!(!said.contains("subcommand"), "{arguments:?}: {said}");
    }
}
