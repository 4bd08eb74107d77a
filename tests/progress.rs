//! `homeground progress` through the real program: what can’t be read is listed, what a spreadsheet would
//! run is made safe, and children’s marks are kept apart and only as long as was said.

use std::path::{Path, PathBuf};
use std::process::{Command, Output};

const PACK: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/sessions");
const CLASS: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/marks/three_weeks.csv");

/// A folder with a file of marks, outside of every work tree.
struct Room {
    folder: tempfile::TempDir,
}

impl Room {
    fn with(marks: &str) -> Self {
        let folder = tempfile::tempdir().expect("a folder to write into");
        std::fs::write(folder.path().join("marks.csv"), marks).expect("a file");
        Self { folder }
    }

    fn at(&self, path: &str) -> PathBuf {
        self.folder.path().join(path)
    }

    fn text(&self, path: &str) -> String {
        std::fs::read_to_string(self.at(path)).unwrap_or_else(|_| panic!("{path} was written"))
    }

    /// Runs `progress` on the demo pack, on a day, with more arguments.
    fn progress(&self, today: &str, more: &[&str]) -> Output {
        let mut command = program();
        command.arg("progress").arg(PACK).arg("--marks").arg(self.at("marks.csv"));
        command.arg("--to").arg(self.at("results")).args(["--as-of", today]).args(more);
        command.output().expect("it runs")
    }
}

fn program() -> Command {
    let mut program = Command::new(env!("CARGO_BIN_EXE_homeground"));
    program.env("RUST_BACKTRACE", "0");
    program
}

fn said(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

const KEEP: [&str; 2] = ["--keep-until", "2027-07-31"];
const HEAD: &str =
    "code,session,part,date,attempt 1,attempt 2,attempt 3,fault,question,answer,right\n";

#[test]
fn what_cannot_be_read_is_listed_with_row_and_column() {
    let room = Room::with(&format!(
        "{HEAD}K01,brook-leap,,2027-05-04,far,120,130,,,,\n\
         Anna Smith,brook-leap,,2027-05-04,120,,,,,,\n\
         K02,brook-lep,,2027-05-04,120,,,,,,\n\
         K03,brook-leap,,4/5/2027,120,,,,,,\n\
         K04,brook-leap,,2027-05-04,\"147,5\",x,1.2 m,99,9,why,perhaps\n\
         K05,night-bus,,2027-05-04,12,,,,,,\n\
         K06,brook-leap,,2027-05-04,120,121,122,,,,,over\n"
    ));
    let output = room.progress("2027-06-01", &KEEP);
    assert_eq!(output.status.code(), Some(1), "{}", said(&output));
    let told = said(&output);
    for line in [
        "marks.csv: row 2, column 5 (attempt 1): “far” is not a mark",
        "row 3, column 1 (code): this looks like a child’s name",
        "row 4, column 2 (session): there is no session “brook-lep”. Did you mean “athletics/brook-leap”?",
        "row 5, column 4 (date): “4/5/2027” may be two days",
        "row 6, column 8 (fault): this session has the common faults 1 to",
        "row 6, column 9 (question): this session has the review questions 1 to 5",
        "row 7, column 5 (attempt 1): this part is judged by criteria",
        "row 8, column 12: this column has no name",
    ] {
        assert!(told.contains(line), "“{line}” is not in:\n{told}");
    }
    assert!(!told.contains("Anna"), "a name is not repeated");
    let marks = room.text("results/marks.csv");
    assert!(marks.contains("K01,athletics/brook-leap,Best of three leaps,cm,130,130,"), "{marks}");
    // 147.5 cm is kept as whole centimetres, down: the rule of the event.
    assert!(marks.contains("K04,athletics/brook-leap,Best of three leaps,cm,147,147,"), "{marks}");
    assert!(room.text("results/not-read.csv").contains("marks.csv,4,2,session,"));
    assert!(room.text("results/report.html").contains("Not read"));
}

#[test]
fn columns_that_say_who_a_child_is_are_refused() {
    let room = Room::with("code,surname,session,mark\nK01,Otter,brook-leap,120\n");
    let output = room.progress("2027-06-01", &KEEP);
    assert_eq!(output.status.code(), Some(2));
    assert!(said(&output).contains("“surname” would say who a child is"));
    assert!(!room.at("results").exists());
}

#[test]
fn the_long_form_and_other_dialects_come_to_the_same() {
    let wide = Room::with(&format!("{HEAD}K01,brook-leap,challenge,2027-05-04,120,x,131,,,,\n"));
    let long = Room::with(
        "\u{feff}Code;Session;Date;Attempt;Mark\r\nK01;Brook-Leap;4.5.2027;1;120\r\n\
         k01;Brook-Leap;4.5.2027;2;x\r\nK01;Brook-Leap;4.5.2027;3;\"1,31 m\"\r\n",
    );
    for room in [&wide, &long] {
        let output = room.progress("2027-06-01", &KEEP);
        assert_eq!(output.status.code(), Some(0), "{}", said(&output));
    }
    assert_eq!(wide.text("results/marks.csv"), long.text("results/marks.csv"));
}

#[test]
fn what_a_spreadsheet_would_run_is_made_safe() {
    let row = |n: u32, text: &str| format!("K0{n},brook-leap,,,,,,,1,{text},no\n");
    let texts = ["=1+1", "@SUM(A1)", "+cmd|x", "-2+3"];
    let rows: String = texts.iter().zip(1..).map(|(text, n)| row(n, text)).collect();
    let room = Room::with(&format!("{HEAD}{rows}"));
    let output = room.progress("2027-06-01", &KEEP);
    assert_eq!(output.status.code(), Some(0), "{}", said(&output));
    let answers = room.text("results/answers.csv");
    for text in texts {
        assert!(answers.contains(&format!(",'{text},no")), "{answers}");
    }
}

#[test]
fn results_are_kept_until_a_day_and_forgotten_after_it() {
    let room = Room::with(&format!("{HEAD}K01,brook-leap,,2027-05-04,120,,,,,,\n"));
    let asked = room.progress("2027-06-01", &[]);
    assert_eq!(asked.status.code(), Some(2));
    assert!(said(&asked).contains("--keep-until"));
    assert_eq!(room.progress("2027-06-01", &KEEP).status.code(), Some(0));
    assert!(room.text("results/keep-until.txt").starts_with("keep_until: 2027-07-31\n"));
    assert_eq!(room.progress("2027-07-31", &[]).status.code(), Some(0), "the last day counts");
    let late = room.progress("2027-08-01", &["--keep-until", "2029-01-01"]);
    assert_eq!(late.status.code(), Some(2), "no later date brings them back");
    assert!(said(&late).contains("--forget"));
    std::fs::write(room.at("results/mine.txt"), "a note").expect("a file of the teacher’s");
    let forget = program().args(["progress", "--forget", "--to"]).arg(room.at("results")).output();
    assert_eq!(forget.expect("it runs").status.code(), Some(0));
    let left: Vec<_> = std::fs::read_dir(room.at("results")).expect("a folder").flatten().collect();
    assert_eq!(left.len(), 1, "{left:?}");
    assert!(room.at("results/mine.txt").is_file() && room.at("marks.csv").is_file());
    let again = program().args(["progress", "--forget", "--to"]).arg(room.at("results")).output();
    assert_eq!(again.expect("it runs").status.code(), Some(2), "there is nothing more to forget");
}

#[test]
fn a_date_in_the_file_is_never_outlasted() {
    let room = Room::with(&format!(
        "keep_until: 2027-06-30\n{HEAD}K01,brook-leap,,2027-05-04,120,,,,,,\n"
    ));
    let longer = room.progress("2027-06-01", &["--keep-until", "2030-01-01"]);
    assert_eq!(longer.status.code(), Some(0), "{}", said(&longer));
    assert!(room.text("results/keep-until.txt").starts_with("keep_until: 2027-06-30\n"));
}

fn git(folder: &Path, arguments: &[&str]) {
    let mut git = Command::new("git");
    git.arg("-C").arg(folder).args(["-c", "user.name=t", "-c", "user.email=t@example.invalid"]);
    assert!(git.args(arguments).output().expect("git is installed").status.success());
}

#[test]
fn marks_in_a_work_tree_need_an_ignore_rule() {
    let room = Room::with(&format!("{HEAD}K01,brook-leap,,2027-05-04,120,,,,,,\n"));
    git(room.folder.path(), &["init", "--quiet"]);
    let bare = room.progress("2027-06-01", &KEEP);
    assert_eq!(bare.status.code(), Some(2));
    assert!(said(&bare).contains("could be committed"), "{}", said(&bare));
    std::fs::write(room.at(".gitignore"), "marks.csv\n").expect("a file");
    let half = room.progress("2027-06-01", &KEEP);
    assert_eq!(half.status.code(), Some(2), "the results would lie in the tree too");
    std::fs::write(room.at(".gitignore"), "marks.csv\nresults/\n").expect("a file");
    let ignored = room.progress("2027-06-01", &KEEP);
    assert_eq!(ignored.status.code(), Some(0), "{}", said(&ignored));
    // What was committed before a rule was made stays committed.
    git(room.folder.path(), &["add", "--force", "marks.csv"]);
    assert_eq!(room.progress("2027-06-01", &KEEP).status.code(), Some(2));
}

#[test]
fn marks_are_never_published() {
    let room = Room::with(&format!("{HEAD}K01,brook-leap,,2027-05-04,120,,,,,,\n"));
    assert_eq!(room.progress("2027-06-01", &KEEP).status.code(), Some(0));
    let publish = |to: &str| {
        let mut publish = program();
        publish.args(["publish", PACK, "--as-of", "2027-06-01", "--to"]).arg(room.at(to));
        publish.output().expect("it runs")
    };
    for to in ["results", "results/site"] {
        let output = publish(to);
        assert_eq!(output.status.code(), Some(2));
        assert!(said(&output).contains("never published"), "{}", said(&output));
    }
    assert_eq!(publish("site").status.code(), Some(0));
    for to in ["site", "site/results"] {
        let mut into = program();
        into.args(["progress", PACK, "--as-of", "2027-06-01", "--marks"]).arg(room.at("marks.csv"));
        let output = into.args(KEEP).arg("--to").arg(room.at(to)).output().expect("it runs");
        assert_eq!(output.status.code(), Some(2));
        assert!(said(&output).contains("which is published"), "{}", said(&output));
    }
    assert!(room.at("site/index.html").is_file());
}

#[test]
fn the_class_of_thirty_is_made_the_same_every_time() {
    let marks = std::fs::read_to_string(CLASS).expect("the invented class");
    let rooms = [Room::with(&marks), Room::with(&marks)];
    for room in &rooms {
        let output = room.progress("2027-06-01", &[]);
        assert_eq!(output.status.code(), Some(0), "{}", said(&output));
    }
    for path in
        ["report.html", "report.pdf", "slips.pdf", "slips/K01.pdf", "marks.csv", "comments.csv"]
    {
        let [first, second] =
            [0, 1].map(|at: usize| std::fs::read(rooms[at].at("results").join(path)).expect(path));
        assert_eq!(first, second, "{path}");
    }
    let page = rooms[0].text("results/report.html");
    assert!(page.contains("Nothing sent yet") && page.contains("K11"));
    assert!(!page.contains(">Place<"));
    assert_eq!(rooms[0].progress("2027-06-01", &["--rank"]).status.code(), Some(0));
    assert!(rooms[0].text("results/report.html").contains(">Place<"));
}

/// As a session’s page writes it; the README shows the same.
const MESSAGE: &str = "{homeground 1 | K07 | athletics/brook-leap | sent 2027-05-11 18:05\n\
     | 2027-05-11 challenge 1: 124 cm, x, 131 cm\n\
     | answer 1: From the line to the heel\n\
     | check 568A}\n";

#[test]
fn messages_from_home_are_read_out_of_mail() {
    let readme = include_str!("../README.md");
    assert!(readme.contains(MESSAGE), "the README shows a message that can be read");
    let quoted: String = MESSAGE.lines().map(|line| format!("> {line}\n")).collect();
    let mail = format!("keep_until: 2027-07-31\nGood morning,\n{quoted}\nKind regards\n{MESSAGE}");
    let room = Room::with(&mail);
    let done = room.progress("2027-06-01", &[]);
    assert!(done.status.success(), "{}", said(&done));
    assert!(room.text("results/marks.csv").contains("K07,athletics/brook-leap"));
    assert!(room.text("results/answers.csv").contains("From the line to the heel"));
    let line = MESSAGE.replace("131", "181");
    let room = Room::with(&format!("{mail}\nand\n{line}"));
    let done = room.progress("2027-06-01", &[]);
    assert_eq!(done.status.code(), Some(1));
    assert!(said(&done).contains("row 15: the check code"), "{}", said(&done));
    assert!(!room.text("results/marks.csv").contains("181"));
}
