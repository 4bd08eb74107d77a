//! Pictures of a pack on its pages, and their size in pixels, read from the head of the file so that
//! the page does not jump while they load.

use std::fmt::Write as _;

use serde::Serialize;

use super::html::{Html, Scribe};
use crate::pack::{Pack, Picture};

#[derive(Serialize, Clone, Debug)]
pub(super) struct PictureView {
    /// From the top folder.
    src: String,
    width: u32,
    height: u32,
    alt: String,
    caption: Option<Html>,
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
        })
    };
    pictures.iter().filter_map(show).collect()
}

/// Where a picture of the pack is published, as the address written in a page.
pub(super) fn picture_path(path: &str) -> String {
    let mut address = String::from("pictures/");
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

/// Width and height of a PNG or JPEG; nothing for anything else.
pub(super) fn pixels_of(bytes: &[u8]) -> Option<(u32, u32)> {
    png_pixels(bytes).or_else(|| jpeg_pixels(bytes))
}

/// PNG (W3C, third edition): signature, then the IHDR chunk with width and height first.
fn png_pixels(bytes: &[u8]) -> Option<(u32, u32)> {
    let header = bytes.strip_prefix(b"\x89PNG\r\n\x1a\n")?;
    let size = (header.get(4..8)? == b"IHDR").then(|| header.get(8..16))??;
    let (width, height) = size.split_first_chunk::<4>()?;
    Some((u32::from_be_bytes(*width), u32::from_be_bytes(*height.first_chunk()?)))
}

/// JPEG (ITU-T T.81): markers with lengths, up to the first frame header (SOF).
fn jpeg_pixels(bytes: &[u8]) -> Option<(u32, u32)> {
    let mut rest = bytes.strip_prefix(b"\xff\xd8")?;
    loop {
        let (marker, after) = (rest.get(..2)?, rest.get(2..)?);
        let length = usize::from(u16::from_be_bytes(*after.first_chunk()?));
        match marker {
            // C4, C8 and CC are tables and an extension, not frames.
            [0xff, code @ 0xc0..=0xcf] if ![0xc4, 0xc8, 0xcc].contains(code) => {
                let height = u16::from_be_bytes(*after.get(3..)?.first_chunk()?);
                let width = u16::from_be_bytes(*after.get(5..)?.first_chunk()?);
                return Some((width.into(), height.into()));
            }
            [0xff, 0xff] => rest = rest.get(1..)?,
            [0xff, _] => rest = after.get(length.max(2)..)?,
            _ => return None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_come_from_the_head() {
        let png = b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\x01\x40\0\0\0\xf0\x08\x06\0\0\0";
        assert_eq!(pixels_of(png), Some((320, 240)));
        let jpeg = b"\xff\xd8\xff\xe0\0\x04ab\xff\xc0\0\x11\x08\0\xf0\x01\x40\x03";
        assert_eq!(pixels_of(jpeg), Some((320, 240)));
        assert_eq!(pixels_of(b"GIF89a"), None);
        assert_eq!(pixels_of(b"\xff\xd8\xff\xe0\0"), None);
    }

    #[test]
    fn addresses_are_written_safely() {
        assert_eq!(
            picture_path("games/pictures/a b#1.png"),
            "pictures/games/pictures/a%20b%231.png"
        );
    }
}
