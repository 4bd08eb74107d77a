//! Pictures of a pack: their size, and their dots for paper. Only PNG and JPEG, and only of a size that
//! a page or card can use: nothing that unpacks without end is ever unpacked.

use std::io::Cursor;

use image::{DynamicImage, ImageFormat, ImageReader, Limits, RgbImage};

/// The longest side of a picture, in dots: more than a phone’s camera makes.
pub const LONGEST_SIDE: u32 = 8000;

/// On paper a picture is a card wide at most: so many dots are finer than a printer’s.
const PAPER_SIDE: u32 = 1200;

/// Room for one unpacked picture.
const MOST_BYTES: u64 = 256 * 1024 * 1024;

/// Width and height in dots of a PNG or JPEG; nothing for anything else, or for a giant.
pub fn pixels_of(bytes: &[u8]) -> Option<(u32, u32)> {
    let (width, height) = open(bytes)?.into_dimensions().ok()?;
    let is_fit = |side: u32| (1..=LONGEST_SIDE).contains(&side);
    (is_fit(width) && is_fit(height)).then_some((width, height))
}

/// The dots of a picture on white paper, no more of them than paper shows; nothing where the file is
/// broken.
pub fn dots_for_paper(bytes: &[u8]) -> Option<RgbImage> {
    let (width, height) = pixels_of(bytes)?;
    let picture = open(bytes)?.decode().ok()?;
    let picture = if width.max(height) > PAPER_SIDE {
        picture.thumbnail(PAPER_SIDE, PAPER_SIDE)
    } else {
        picture
    };
    Some(on_white(&picture))
}

fn open(bytes: &[u8]) -> Option<ImageReader<Cursor<&[u8]>>> {
    let mut reader = ImageReader::new(Cursor::new(bytes)).with_guessed_format().ok()?;
    matches!(reader.format()?, ImageFormat::Png | ImageFormat::Jpeg).then_some(())?;
    let mut limits = Limits::default();
    limits.max_alloc = Some(MOST_BYTES);
    reader.limits(limits);
    Some(reader)
}

/// What is see-through lets the paper through.
fn on_white(picture: &DynamicImage) -> RgbImage {
    if !picture.color().has_alpha() {
        return picture.to_rgb8();
    }
    let seen = picture.to_rgba8();
    RgbImage::from_fn(seen.width(), seen.height(), |x, y| {
        let [red, green, blue, cover] = seen.get_pixel(x, y).0;
        let blend = |ink: u8| {
            let (ink, cover) = (u32::from(ink), u32::from(cover));
            u8::try_from((ink * cover + 255 * (255 - cover)) / 255).unwrap_or(255)
        };
        image::Rgb([blend(red), blend(green), blend(blue)])
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn png(picture: &DynamicImage) -> Vec<u8> {
        let mut bytes = Cursor::new(Vec::new());
        picture.write_to(&mut bytes, ImageFormat::Png).unwrap();
        bytes.into_inner()
    }

    #[test]
    fn every_kind_of_png_becomes_dots_on_white() {
        let (width, height) = (30, 20);
        for picture in [
            DynamicImage::new_luma8(width, height),
            DynamicImage::new_luma_a8(width, height),
            DynamicImage::new_rgb16(width, height),
            DynamicImage::new_rgba16(width, height),
        ] {
            let has_alpha = picture.color().has_alpha();
            let bytes = png(&picture);
            assert_eq!(pixels_of(&bytes), Some((width, height)));
            let dot = dots_for_paper(&bytes).unwrap().get_pixel(3, 3).0;
            assert_eq!(dot, if has_alpha { [255; 3] } else { [0; 3] });
        }
    }

    #[test]
    fn broken_and_giant_pictures_are_refused() {
        let mut bytes = png(&DynamicImage::new_rgb8(30, 20));
        assert_eq!(pixels_of(b"GIF89a"), None);
        bytes.truncate(bytes.len() - 20);
        assert!(dots_for_paper(&bytes).is_none());
        // The head of a PNG (W3C, third edition) that promises 100,000 dots a side.
        let mut giant = png(&DynamicImage::new_rgb8(30, 20));
        giant[16..24].copy_from_slice(&[0, 1, 0x86, 0xa0, 0, 1, 0x86, 0xa0]);
        assert_eq!(pixels_of(&giant), None);
    }
}
