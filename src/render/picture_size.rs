//! How wide and tall a picture is, from its first bytes.

/// Width and height in pixels of a PNG or JPEG; `None` for anything else.
pub fn picture_size(bytes: &[u8]) -> Option<(f32, f32)> {
    let kind = imagesize::image_type(bytes).ok()?;
    if !matches!(kind, imagesize::ImageType::Png | imagesize::ImageType::Jpeg) {
        return None;
    }
    let size = imagesize::blob_size(bytes).ok()?;
    let whole =
        |pixels: usize| u16::try_from(pixels).ok().filter(|pixels| *pixels > 0).map(f32::from);
    Some((whole(size.width)?, whole(size.height)?))
}
