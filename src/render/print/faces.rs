//! The faces that paper is set in. They are read once for a run and shared by every thread.

use std::sync::{Arc, OnceLock};

use parley::fontique::Blob;
use skrifa::instance::{LocationRef, Size};
use skrifa::{FontRef, MetadataProvider};

use super::font_mould::FontMould;
use super::font_program::FontProgram;
use crate::render::RenderFault;
use crate::render::house::{House, shipped_file};

/// A face of the type family.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Face {
    Regular,
    Bold,
    Italic,
    Arabic,
    ArabicBold,
}

impl Face {
    pub const ALL: [Self; 5] =
        [Self::Regular, Self::Bold, Self::Italic, Self::Arabic, Self::ArabicBold];

    /// Whether it is cut for the Arabic script, of which Urdu’s letters are a part.
    pub const fn is_arabic(self) -> bool {
        matches!(self, Self::Arabic | Self::ArabicBold)
    }

    const fn file(self) -> &'static str {
        match self {
            Self::Regular => "static/type/Andika-Regular.ttf",
            Self::Bold => "static/type/Andika-Bold.ttf",
            Self::Italic => "static/type/Andika-Italic.ttf",
            Self::Arabic => "static/type/HomegroundNaskh-Regular.ttf",
            Self::ArabicBold => "static/type/HomegroundNaskh-Bold.ttf",
        }
    }

    /// The name of the font in a PDF; its six letters mark a subset (ISO 32000-1, 9.6.4).
    pub const fn tag(self) -> &'static str {
        match self {
            Self::Regular => "HGREGA",
            Self::Bold => "HGBOLD",
            Self::Italic => "HGITAL",
            Self::Arabic => "HGNASK",
            Self::ArabicBold => "HGNASB",
        }
    }
}

/// One face, read for shaping and for embedding.
pub struct LoadedFace {
    pub face: Face,
    /// The program ships it; else it is of the pack’s own look.
    pub is_shipped: bool,
    /// The same bytes for every thread's shaper; their id ties a shaped run to its face.
    pub blob: Blob<u8>,
    /// What a PDF says about it, once it is asked for.
    mould: OnceLock<Option<FontMould>>,
    /// Advance of each glyph in thousandths of the size, rounded to hundredths as the PDF’s width table has them: a line
    /// of words is then less than a thousandth astray.
    pub widths: Vec<f32>,
    /// Ascent and descent, in sizes.
    heights: (f32, f32),
    /// The glyph shown where a word is broken: that of the soft hyphen, so that a reader of the PDF
    /// can tell it from a hyphen that belongs to the word (ISO 32000-1, 14.8.2.2.3).
    pub hyphen: u16,
    /// Its width, in sizes of the type.
    pub hyphen_width: f32,
    /// The glyph of the space.
    pub space: u16,
}

impl LoadedFace {
    /// What a PDF says about it; nothing where the font is not sound.
    pub fn mould(&self) -> Option<&FontMould> {
        let make = || FontMould::of(&self.program()?.without_glyphs()?, self.face.tag());
        self.mould.get_or_init(make).as_ref()
    }

    /// What its glyphs are taken from.
    pub fn program(&self) -> Option<FontProgram<'_>> {
        FontProgram::read(self.blob.as_ref())
    }

    /// The advance of a glyph, in thousandths of the size.
    pub fn width(&self, glyph: u16) -> f32 {
        self.widths.get(usize::from(glyph)).copied().unwrap_or(0.0)
    }

    /// Whether each of its glyphs can be printed with.
    fn is_sound(&self) -> bool {
        let cut = self.program().and_then(|program| {
            let all: Vec<u16> = (1..program.glyphs()).collect();
            program.cut(&all)
        });
        cut.is_some() && self.mould().is_some()
    }
}

/// All faces.
pub struct Faces {
    pub loaded: Vec<LoadedFace>,
}

impl Faces {
    /// Reads the faces.
    ///
    /// # Errors
    /// Where a font of the pack's own look is no sound TrueType font.
    pub fn load(house: &House<'_>) -> Result<Self, RenderFault> {
        let loaded = Face::ALL.into_iter().map(|face| {
            let loaded = load_face(face, house);
            // The shipped ones are sound.
            let is_sound = |face: &LoadedFace| face.is_shipped || face.is_sound();
            loaded.filter(is_sound).ok_or_else(|| RenderFault {
                file: format!("look/{}", face.file()),
                says: "This is not a TrueType font that can be printed with. Take the family’s “.ttf” file, \
                       or take this one out to print in the program’s own letters."
                    .into(),
            })
        });
        Ok(Self { loaded: loaded.collect::<Result<_, _>>()? })
    }

    /// The face whose bytes a shaped run was set in.
    pub fn by_blob(&self, id: u64) -> Option<&LoadedFace> {
        self.loaded.iter().find(|face| face.blob.id() == id)
    }

    /// Ascent and descent of the upright face, in sizes.
    pub fn upright_metrics(&self) -> (f32, f32) {
        self.get(Face::Regular).heights
    }

    /// The upright face of a weight.
    pub fn of_weight(&self, is_bold: bool) -> &LoadedFace {
        self.get(if is_bold { Face::Bold } else { Face::Regular })
    }

    pub fn get(&self, face: Face) -> &LoadedFace {
        &self.loaded[face as usize]
    }
}

fn load_face(face: Face, house: &House<'_>) -> Option<LoadedFace> {
    let shipped = shipped_file(face.file()).filter(|_| !house.is_own(face.file()));
    let bytes = shipped.or_else(|| house.file(face.file())).expect("the program ships its fonts");
    let widths = widths_of(bytes)?;
    let hyphen = hyphen_of(bytes)?;
    Some(LoadedFace {
        face,
        is_shipped: shipped.is_some(),
        hyphen,
        hyphen_width: widths.get(usize::from(hyphen)).copied().unwrap_or_default() / 1000.0,
        space: glyph_of(bytes, ' ')?,
        blob: match shipped {
            Some(bytes) => Blob::new(Arc::new(bytes)),
            None => Blob::new(Arc::new(bytes.to_vec())),
        },
        mould: OnceLock::new(),
        widths,
        heights: heights_of(bytes)?,
    })
}

fn heights_of(bytes: &[u8]) -> Option<(f32, f32)> {
    let metrics = FontRef::new(bytes).ok()?.metrics(Size::new(1.0), LocationRef::default());
    Some((metrics.ascent, metrics.descent.abs()))
}

fn glyph_of(bytes: &[u8], letter: char) -> Option<u16> {
    let glyph = FontRef::new(bytes).ok()?.charmap().map(letter);
    u16::try_from(glyph.map_or(0, skrifa::GlyphId::to_u32)).ok()
}

/// The glyph of the soft hyphen, or of the plain one in a font that lacks it.
fn hyphen_of(bytes: &[u8]) -> Option<u16> {
    let letters = FontRef::new(bytes).ok()?.charmap();
    let glyph = letters.map('\u{ad}').or_else(|| letters.map('-'));
    // A face of Arabic letters alone has neither, and breaks no words.
    u16::try_from(glyph.map_or(0, skrifa::GlyphId::to_u32)).ok()
}

fn widths_of(bytes: &[u8]) -> Option<Vec<f32>> {
    let font = FontRef::new(bytes).ok()?;
    let metrics = font.metrics(Size::unscaled(), LocationRef::default());
    let glyphs = font.glyph_metrics(Size::unscaled(), LocationRef::default());
    let per_em = f32::from(metrics.units_per_em);
    let widths = (0..metrics.glyph_count)
        .map(|glyph| {
            let advance = glyphs.advance_width(u32::from(glyph).into()).unwrap_or(0.0);
            (advance * 100_000.0 / per_em).round() / 100.0
        })
        .collect();
    Some(widths)
}
