//! Where a relative path written in a session leads, never outside the pack; in what a neighbour wrote, never
//! outside that neighbour’s pack.

use crate::pack::Picture;
use crate::place::{FileId, Files, Lent};
use crate::read::session_file::PictureDoc;

/// The pictures of a session at a path; those of a neighbour stand beside the neighbour’s own file.
pub(super) fn resolve_pictures(
    session_path: &str,
    docs: Vec<PictureDoc>,
    files: &Files,
) -> Vec<Picture> {
    let path_of = |doc: &PictureDoc| match &files.get(doc.file.place.file).lent {
        Some(lent) => path_in_lent(lent, &doc.file),
        None => path_from(session_path, &doc.file),
    };
    docs.into_iter()
        .map(|doc| Picture {
            path: path_of(&doc),
            is_lent: files.get(doc.file.place.file).lent.is_some(),
            rights: None,
            file: doc.file,
            alt: doc.alt,
            caption: doc.caption,
        })
        .collect()
}

/// The path inside the pack that a link in one of its files leads to.
pub fn path_from_file(files: &Files, from: FileId, link: &str) -> Option<String> {
    let from = files.get(from);
    match &from.lent {
        Some(lent) => path_in_lent(lent, link),
        None => path_from(&from.path, link),
    }
}

fn path_in_lent(lent: &Lent, link: &str) -> Option<String> {
    Some(format!("{}/{}", lent.under, path_from(&lent.path, link)?))
}

/// The path inside the pack that `link` leads to from the file at `from`; `None` where it leaves
/// the pack or is not relative.
pub fn path_from(from: &str, link: &str) -> Option<String> {
    let link = link.split(['#', '?']).next().unwrap_or_default();
    if link.starts_with('/') || link.contains('\\') || link.contains(':') {
        return None;
    }
    let mut parts: Vec<&str> = from.split('/').collect();
    parts.pop();
    for part in link.split('/') {
        match part {
            "" | "." => {}
            ".." => {
                parts.pop()?;
            }
            name => parts.push(name),
        }
    }
    Some(parts.join("/"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_lent_stays_with_the_lender() {
        let lent = Lent { path: "games/ball.yaml".into(), under: "~marsh".into() };
        let from = |link| path_in_lent(&lent, link);
        assert_eq!(from("pictures/a.png").as_deref(), Some("~marsh/games/pictures/a.png"));
        assert_eq!(from("../pictures/a.png").as_deref(), Some("~marsh/pictures/a.png"));
        assert_eq!(from("../../a.png"), None);
    }

    #[test]
    fn paths_stay_inside_the_pack() {
        let from = |link| path_from("games/ball.yaml", link);
        assert_eq!(from("pictures/a.png").as_deref(), Some("games/pictures/a.png"));
        assert_eq!(from("../pictures/a.png").as_deref(), Some("pictures/a.png"));
        assert_eq!(from("../../a.png"), None);
        assert_eq!(from("/etc/passwd"), None);
        assert_eq!(from("C:\\a.png"), None);
        assert_eq!(from("file:a.png"), None);
    }
}
