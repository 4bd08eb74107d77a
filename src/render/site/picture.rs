//! Pictures of a pack on its pages, with their size in pixels so that the page does not jump while
//! they load.

use std::fmt::Write as _;

use serde::Serialize;

use super::html::{Html, Scribe};
use crate::pack::{Pack, Picture};
use crate::picture::pixels_of;

#[derive(Serialize, Clone, Debug)]
pub(super) struct PictureView {
    /// From the top folder.
    src: String,
    width: u32,
    height: u32,
    alt: String,
    caption: Option<Html>,
    /// Whose it is, where it is a neighbour’s.
    rights: Option<String>,
}

/// Those pictures that are in the pack and that browsers show.
pub(super) fn show_pictures(
    pack: &Pack,
    scribe: &Scribe<'_>,
    pictures: &[Picture],
) -> Vec<PictureView> {
    let show = |picture: &Picture| {
        let path = picture.path.as_deref()?;
        let (width, height) = pixels_of(pack.pictures.get(path)?)?;
        Some(PictureView {
            src: picture_path(path),
            width,
            height,
            alt: picture.alt.as_ref().map(|alt| crate::prose::plain_line(alt)).unwrap_or_default(),
            caption: picture.caption.as_ref().map(|caption| scribe.line(caption)),
            rights: picture.rights.clone(),
        })
    };
    pictures.iter().filter_map(show).collect()
}

/// Where a picture of the pack is published, as the address written in a page.
pub(crate) fn picture_path(path: &str) -> String {
    format!("pictures/{}", encoded_path(path))
}

/// A path as the address written in a page (URL Standard: the path percent-encode set).
pub(super) fn encoded_path(path: &str) -> String {
    let mut address = String::with_capacity(path.len());
    for letter in path.chars() {
        match letter {
            ' ' | '%' | '#' | '?' | '"' | '<' | '>' | '\\' | '^' | '`' | '{' | '|' | '}' => {
                let _ = write!(address, "%{:02X}", u32::from(letter));
            }
            _ => address.push(letter),
        }
    }
    address
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn addresses_are_written_safely() {
        assert_eq!(
            picture_path("games/pictures/a b#1.png"),
            "pictures/games/pictures/a%20b%231.png"
        );
    }
}
