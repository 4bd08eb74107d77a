//! Where a relative path written in a session leads, never outside the pack.

use crate::pack::Picture;
use crate::read::session_file::PictureDoc;

pub(super) fn resolve_pictures(session_path: &str, docs: Vec<PictureDoc>) -> Vec<Picture> {
    docs.into_iter()
        .map(|doc| Picture {
            path: path_from(session_path, &doc.file),
            file: doc.file,
            alt: doc.alt,
            caption: doc.caption,
        })
        .collect()
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
