//! The glyphs of a face that the sheets of a session show → a font, finished for every file of the session.

use super::deflate::Deflater;
use super::faces::{Face, LoadedFace};
use super::pdf_text::PdfText;
use super::stock::StockThing;
use super::text_map::text_map;
use super::used::Glyphs;

/// A subset of a face.
#[derive(Debug)]
pub struct StockFont {
    pub face: Face,
    /// What each glyph is called in the subset, by its number; 0 is none.
    pub codes: Vec<u16>,
    pub thing: StockThing,
}

impl StockFont {
    /// Its objects are numbered from `number` on.
    pub fn of(
        face: &LoadedFace,
        glyphs: &Glyphs,
        number: usize,
        deflater: &mut Deflater,
    ) -> Option<Self> {
        let mould = face.mould()?;
        let shown: Vec<u16> = glyphs.used().map(|(id, _)| id).collect();
        let program = face.program()?.cut(&shown)?;
        let mut codes = vec![0; glyphs.0.len()];
        for (code, id) in (1..).zip(&shown) {
            codes[usize::from(*id)] = code;
        }
        let [map, descriptor, file] = [number + 1, number + 2, number + 3];
        let mut font = PdfText::default();
        font.put("<<").put_bytes(&mould.font).put("/ToUnicode ").reference(map);
        font.put("/DescendantFonts[<<").put_bytes(&mould.descendant);
        font.put("/FontDescriptor ").reference(descriptor).put("/W[1[");
        for id in &shown {
            font.spaced(face.width(*id), 2);
        }
        font.put("]]>>]>>");
        let mut described = PdfText::default();
        described.put("<<").put_bytes(&mould.descriptor);
        described.put("/FontFile2 ").reference(file).put(">>");
        let mut thing = StockThing { number, ..StockThing::default() };
        thing.packed = vec![(number, font.bytes), (descriptor, described.bytes)];
        thing.add_stream(map, "", text_map(glyphs).as_bytes(), deflater);
        let length = format!("/Length1 {}", program.len());
        thing.add_stream(file, &length, &program, deflater);
        Some(Self { face: face.face, codes, thing })
    }

    /// How many objects it is.
    pub const OBJECTS: usize = 4;
}
