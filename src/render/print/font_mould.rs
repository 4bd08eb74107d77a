//! What a PDF says about a face, as printpdf has it: made once from the face without its glyphs, and filled in with
//! those that the sheets of a session show.

use lopdf::{Dictionary, Document, Object};
use printpdf::{
    Codepoint, FontId, Op, ParsedFont, PdfDocument, PdfFont, PdfFontHandle, PdfPage,
    PdfSaveOptions, Pt, Rect, TextItem,
};

use super::pdf_object::write_entries;
use super::pdf_text::PdfText;

/// The entries of the dictionaries that make a font (ISO 32000-1, 9.7), without those that its glyphs decide.
#[derive(Debug)]
pub struct FontMould {
    /// Type 0, as pages know it.
    pub font: Vec<u8>,
    /// `CIDFontType2`.
    pub descendant: Vec<u8>,
    pub descriptor: Vec<u8>,
}

impl FontMould {
    /// From a program that need have no glyphs. `None` where printpdf can’t read it.
    pub fn of(program: &[u8], tag: &str) -> Option<Self> {
        let parsed = ParsedFont::from_bytes(program, 0, &mut Vec::new())?;
        let written = specimen_of(parsed, tag);
        let page = written.page_iter().next()?;
        let fonts = written.get_dictionary(page).ok()?.get(b"Resources").ok()?;
        let fonts = follow(&written, follow(&written, fonts)?.get(b"Font").ok()?)?;
        let mut font = follow(&written, fonts.get(tag.as_bytes()).ok()?)?.clone();
        font.remove(b"ToUnicode")?;
        let below = font.remove(b"DescendantFonts")?;
        let mut descendant = below.as_array().ok()?.first()?.as_dict().ok()?.clone();
        descendant.remove(b"W")?;
        let described = descendant.remove(b"FontDescriptor")?;
        let mut descriptor = follow(&written, &described)?.clone();
        // Other outlines than TrueType’s have other keys.
        descriptor.remove(b"FontFile2")?;
        let [font, descendant, descriptor] = [font, descendant, descriptor].map(|entries| {
            let mut text = PdfText::default();
            write_entries(&entries, &mut text);
            text.bytes
        });
        Some(Self { font, descendant, descriptor })
    }
}

/// A page that shows the glyph for what is missing.
fn specimen_of(parsed: ParsedFont, tag: &str) -> Document {
    let mut specimen = PdfDocument::new("");
    let id = FontId(tag.to_owned());
    specimen.resources.fonts.map.insert(id.clone(), PdfFont::new(parsed));
    let glyph = Codepoint::with_cid(0, 0.0, String::new());
    let ops = vec![
        Op::StartTextSection,
        Op::SetFont { font: PdfFontHandle::External(id), size: Pt(1.0) },
        Op::ShowText { items: vec![TextItem::GlyphIds(vec![glyph])] },
        Op::EndTextSection,
    ];
    let [media_box, trim_box, crop_box] = [(); 3].map(|()| Rect::from_wh(Pt(10.0), Pt(10.0)));
    specimen.pages = vec![PdfPage { media_box, trim_box, crop_box, ops }];
    specimen.to_lopdf_document(&PdfSaveOptions::default(), &mut Vec::new())
}

fn follow<'d>(written: &'d Document, object: &'d Object) -> Option<&'d Dictionary> {
    written.dereference(object).ok()?.1.as_dict().ok()
}
