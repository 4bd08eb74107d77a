//! Keeps children’s marks out of what is shared: a git work tree without an ignore rule, a published
//! folder, a pack.

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use super::keep::KEEP_FILE;
use crate::publish::LIST;

/// Looks whether marks may lie at a path: a file of marks, or the folder for the results.
///
/// # Errors
/// A sentence for the teacher: why not, and what to do.
pub fn check_kept_apart(path: &Path, pack: &Path) -> Result<(), String> {
    let whole = whole(path);
    if whole.starts_with(self::whole(pack)) {
        return Err(format!(
            "{} lies in the pack, which is shared. Keep children’s marks outside of it.",
            path.display()
        ));
    }
    let is_published = |folder: &&Path| folder.join(LIST).is_file() && !holds_results(folder);
    if let Some(folder) = whole.ancestors().find(is_published) {
        return Err(format!(
            "{} lies in {}, which is published. Keep children’s marks where nobody else looks.",
            path.display(),
            folder.display()
        ));
    }
    let has_git = |folder: &&Path| folder.join(".git").exists();
    match whole.ancestors().find(has_git) {
        Some(tree) if !is_ignored(&whole, tree) => Err(format!(
            "{} lies in the git work tree {}, so that children’s marks could be committed. Move it \
             out, or add an ignore rule for it to .gitignore and, if it was committed, remove it there.",
            path.display(),
            tree.display()
        )),
        _ => Ok(()),
    }
}

/// Looks whether a folder holds results of children, over which nothing is published.
///
/// # Errors
/// A sentence for the teacher.
pub fn check_no_results(folder: &Path) -> Result<(), String> {
    let holding = whole(folder);
    match holding.ancestors().find(|folder| holds_results(folder)) {
        Some(found) => Err(format!(
            "{} holds children’s results, which are never published. Choose another folder after --to.",
            found.display()
        )),
        None => Ok(()),
    }
}

fn holds_results(folder: &Path) -> bool {
    folder.join(KEEP_FILE).is_file()
}

/// Asks git itself: what it tracks counts as not ignored. Where git can’t be asked, nothing is ignored.
fn is_ignored(path: &Path, tree: &Path) -> bool {
    if path.is_file() {
        return asks_git(path, tree);
    }
    // A folder that is not there yet is known to be one by what will lie in it.
    [KEEP_FILE, "report.html", "marks.csv"].iter().all(|file| asks_git(&path.join(file), tree))
}

fn asks_git(path: &Path, tree: &Path) -> bool {
    let mut git = Command::new("git");
    git.arg("-C").arg(tree).args(["check-ignore", "--quiet", "--"]).arg(path);
    git.stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
    // A hook or a script may point git at another work tree.
    for name in ["GIT_DIR", "GIT_WORK_TREE", "GIT_INDEX_FILE"] {
        git.env_remove(name);
    }
    git.status().is_ok_and(|status| status.success())
}

/// The path with links followed as far as it exists.
fn whole(path: &Path) -> PathBuf {
    let path = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
    let real = path.ancestors().find_map(|ancestor| {
        let rest = path.strip_prefix(ancestor).unwrap_or(Path::new(""));
        let real = ancestor.canonicalize().ok()?;
        Some(if rest.as_os_str().is_empty() { real } else { real.join(rest) })
    });
    real.unwrap_or(path)
}
