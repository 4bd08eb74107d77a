//! An earlier state of a pack, read from git's own store through the `git` command line.
//!
//! The revision is handed over as one argument and never to a shell; what could be taken for an option is
//! refused. Only plain files are read, each no larger than a pack's files may be.

use std::collections::BTreeMap;
use std::io::Write;
use std::path::Path;
use std::process::{Command, Output, Stdio};

use crate::quantity::{Date, Quantity};
use crate::source::Memory;

/// A larger file is none that a pack reads.
const LARGEST_FILE: u64 = 16 * 1024 * 1024;
/// All files of a state together.
const LARGEST_STATE: u64 = 1024 * 1024 * 1024;

/// The files of a pack as they were in a revision, and its name with its date.
///
/// # Errors
/// A sentence for the teacher.
pub fn read_revision(revision: &str, pack: &Path) -> Result<(Memory, String), String> {
    let unknown = || {
        format!(
            "There is no folder {revision} here, and git knows no revision of that name. After --since name \
             a published folder, a pack’s folder or a git revision, such as HEAD~1 or a tag."
        )
    };
    if revision.starts_with('-') || revision.chars().any(char::is_control) || revision.is_empty() {
        return Err(unknown());
    }
    let inside = run_git(pack, &["rev-parse", "--is-inside-work-tree"])?;
    if !inside.status.success() {
        return Err(format!(
            "There is no folder {revision} here, and {} is not kept in git, so that no earlier state of it is known.",
            pack.display()
        ));
    }
    let commit = format!("{revision}^{{commit}}");
    let found = run_git(pack, &["rev-parse", "--verify", "--quiet", "--end-of-options", &commit])?;
    if !found.status.success() {
        return Err(unknown());
    }
    let commit = text_of(&found).trim().to_owned();
    let day = text_of(&run_git(pack, &["show", "-s", "--format=%cs", &commit])?).trim().to_owned();
    let today = Date::read_quantity(&day).map_err(|_| unknown())?;
    let files = read_files(pack, &commit)?;
    Ok((Memory { files, today }, format!("{revision} ({day})")))
}

fn run_git(pack: &Path, arguments: &[&str]) -> Result<Output, String> {
    let mut command = Command::new("git");
    command.arg("-C").arg(pack).args(arguments).stdin(Stdio::null());
    command.env("GIT_OPTIONAL_LOCKS", "0").output().map_err(|_| no_git())
}

fn no_git() -> String {
    "The program git is not installed here. Install it, or name a published folder or a pack’s folder after --since."
        .into()
}

fn text_of(output: &Output) -> String {
    String::from_utf8_lossy(&output.stdout).into_owned()
}

/// One plain file of a state.
struct Listed {
    path: String,
    id: String,
    bytes: u64,
}

/// The pack's own files, and those of packs beside it where it draws on one.
fn read_files(pack: &Path, commit: &str) -> Result<BTreeMap<String, Vec<u8>>, String> {
    let mut files = read_files_at(pack, commit, ".")?;
    let names_one = |bytes: &Vec<u8>| String::from_utf8_lossy(bytes).contains("../");
    if files.get("pack.yaml").is_some_and(names_one) {
        let beside = read_files_at(pack, commit, "..")?;
        files.extend(beside.into_iter().filter(|(path, _)| path.starts_with("../")));
    }
    Ok(files)
}

fn read_files_at(
    pack: &Path,
    commit: &str,
    place: &str,
) -> Result<BTreeMap<String, Vec<u8>>, String> {
    let listed = run_git(pack, &["ls-tree", "-r", "-z", "--long", commit, place])?;
    let entries = text_of(&listed);
    let listed: Vec<Listed> = entries.split('\0').filter_map(read_entry).collect();
    if listed.iter().map(|file| file.bytes).sum::<u64>() > LARGEST_STATE {
        return Err("That state of the pack is too large to be read.".into());
    }
    let ids: String = listed.iter().map(|file| format!("{}\n", file.id)).collect();
    let blobs = ask_blobs(pack, ids)?;
    let mut rest = blobs.as_slice();
    let mut files = BTreeMap::new();
    for file in listed {
        let bytes = next_blob(&mut rest).ok_or("git could not show that state of the pack.")?;
        files.insert(file.path, bytes.to_vec());
    }
    Ok(files)
}

/// “100644 blob ID  SIZE⇥PATH”. Links and what is hidden hold nothing of the pack.
fn read_entry(entry: &str) -> Option<Listed> {
    let (about, path) = entry.split_once('\t')?;
    let mut words = about.split_whitespace();
    let (mode, kind, id, bytes) = (words.next()?, words.next()?, words.next()?, words.next()?);
    let bytes = bytes.parse().ok()?;
    let is_plain = kind == "blob" && mode.starts_with("100") && bytes <= LARGEST_FILE;
    let is_shown = path.split('/').all(|name| name == ".." || !name.starts_with('.'));
    (is_plain && is_shown).then(|| Listed { path: path.to_owned(), id: id.to_owned(), bytes })
}

/// Asks for many files in one run; a thread feeds the names, so that neither end waits for the other.
fn ask_blobs(pack: &Path, ids: String) -> Result<Vec<u8>, String> {
    let mut git = Command::new("git");
    git.arg("-C").arg(pack).args(["cat-file", "--batch"]);
    git.stdin(Stdio::piped()).stdout(Stdio::piped()).stderr(Stdio::null());
    let mut git = git.spawn().map_err(|_| no_git())?;
    let mut asked = git.stdin.take().ok_or_else(no_git)?;
    let feeding = std::thread::spawn(move || asked.write_all(ids.as_bytes()));
    let output = git.wait_with_output().map_err(|_| no_git())?;
    // Where git went away early, its answer is short, which is told of below.
    let _ = feeding.join();
    Ok(output.stdout)
}

/// The next “ID blob SIZE”, its bytes and a line end.
fn next_blob<'b>(rest: &mut &'b [u8]) -> Option<&'b [u8]> {
    let end = rest.iter().position(|byte| *byte == b'\n')?;
    let head = std::str::from_utf8(&rest[..end]).ok()?;
    let bytes: usize = head.rsplit_once(' ')?.1.parse().ok()?;
    let after = end + 1;
    let blob = rest.get(after..after.checked_add(bytes)?)?;
    *rest = rest.get(after + bytes + 1..)?;
    Some(blob)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn plain_files_are_listed_and_nothing_else() {
        let path = |entry: &str| read_entry(entry).map(|file| file.path);
        assert_eq!(
            path("100644 blob 0123abcd      42\tgames/a b.yaml").as_deref(),
            Some("games/a b.yaml")
        );
        assert_eq!(path("120000 blob 0123abcd      42\tlink.yaml"), None);
        assert_eq!(path("160000 commit 0123abcd       -\tmodule"), None);
        assert_eq!(path("100644 blob 0123abcd      42\t.hidden/a.yaml"), None);
    }

    #[test]
    fn blobs_are_taken_by_their_size() {
        let mut rest: &[u8] = b"aa blob 3\na\nb\nbb blob 0\n\n";
        assert_eq!(next_blob(&mut rest), Some(b"a\nb".as_slice()));
        assert_eq!(next_blob(&mut rest), Some(b"".as_slice()));
        assert_eq!(next_blob(&mut rest), None);
        let mut short: &[u8] = b"aa blob 9\nabc\n";
        assert_eq!(next_blob(&mut short), None);
    }
}
