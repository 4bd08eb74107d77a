//! Pictures as paper shows them, unpacked once for all that is done with them: they are printed, and their ink is
//! measured.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use image::RgbImage;

use crate::picture::dots_for_paper;

/// The pictures of a document, by their paths in the pack.
#[derive(Debug, Default)]
pub struct PaperPictures {
    kept: BTreeMap<String, PaperPicture>,
}

#[derive(Debug)]
pub struct PaperPicture {
    pub dots: RgbImage,
    /// The mean of all dots, 1 being black.
    pub darkness: f32,
}

impl PaperPictures {
    /// Unpacks those that are shown. One that can’t be read is left out.
    pub fn of(paths: &BTreeSet<&String>, files: &BTreeMap<String, Arc<[u8]>>) -> Self {
        let unpack = |path: &String| {
            let dots = dots_for_paper(files.get(path)?)?;
            let darkness = darkness_of(&dots);
            Some((path.clone(), PaperPicture { dots, darkness }))
        };
        Self { kept: paths.iter().filter_map(|path| unpack(path)).collect() }
    }

    pub fn get(&self, path: &str) -> Option<&PaperPicture> {
        self.kept.get(path)
    }
}

/// The mean darkness of a picture, by the weights of ITU-R BT.601.
fn darkness_of(dots: &RgbImage) -> f32 {
    let light = |dot: &image::Rgb<u8>| {
        let [red, green, blue] = dot.0.map(u32::from);
        u64::from(299 * red + 587 * green + 114 * blue)
    };
    let sum: u64 = dots.pixels().map(light).sum();
    let whole = u64::from(dots.width()) * u64::from(dots.height()) * 255_000;
    #[allow(clippy::cast_precision_loss, reason = "a share to a few digits")]
    let share = sum as f32 / whole.max(1) as f32;
    1.0 - share
}
