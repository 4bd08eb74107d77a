//! Laid-out pages → the bytes of a PDF, the same on every run.

use std::collections::BTreeMap;
use std::sync::Arc;

use lopdf::{Dictionary, Object, StringFormat};
use printpdf::{
    Codepoint, Color, DictItem, FontId, Greyscale, Line, LineDashPattern, LinePoint, Op, PaintMode,
    PdfDocument, PdfFont, PdfFontHandle, PdfPage, PdfSaveOptions, Point, Polygon, PolygonRing, Pt,
    RawImage, RawImageData, RawImageFormat, Rect, TextItem, TextMatrix, WindingOrder, XObject,
    XObjectId, XObjectTransform,
};

use super::faces::Faces;
use super::font_program::thin_program;
use super::page::{At, Corner, GlyphRun, Item, Page, Role, Stroke, Tag};
use super::structure::{Structure, room_of, words_of};
use super::tagged::{piece_name, tag_document};
use crate::picture::dots_for_paper;

/// What a PDF says about itself.
#[derive(Clone, Debug)]
pub struct About {
    pub title: String,
    pub author: String,
    /// BCP 47 tag.
    pub language: String,
    /// YYYYMMDD; fixed by the session, so that the same session gives the same bytes.
    pub date: String,
    /// Its pages lie on the sheets as they are folded, not as they are read.
    pub is_folded: bool,
}

/// One thread's writer; the fonts in it are read once and used for every document.
pub struct Writer<'f> {
    faces: &'f Faces,
    document: PdfDocument,
}

impl<'f> Writer<'f> {
    pub fn new(faces: &'f Faces) -> Self {
        let mut document = PdfDocument::new("");
        for face in &faces.loaded {
            let id = FontId(face.face.tag().to_owned());
            document.resources.fonts.map.insert(id, PdfFont::new(face.parsed.clone()));
        }
        Self { faces, document }
    }

    /// Writes a document.
    pub fn write(
        &mut self,
        pages: &[Page],
        about: &About,
        pictures: &BTreeMap<String, Arc<[u8]>>,
    ) -> Vec<u8> {
        self.document.resources.xobjects.map.clear();
        self.add_pictures(pages, pictures);
        let mut structure = Structure::default();
        self.document.pages =
            pages.iter().map(|page| self.write_page(page, &mut structure)).collect();
        if about.is_folded {
            structure.order_as_laid();
        }
        let options = PdfSaveOptions { image_optimization: None, ..PdfSaveOptions::default() };
        let mut pdf = self.document.to_lopdf_document(&options, &mut Vec::new());
        finish(&mut pdf, &structure, about)
    }

    fn add_pictures(&mut self, pages: &[Page], pictures: &BTreeMap<String, Arc<[u8]>>) {
        let mut paths = Vec::new();
        for page in pages {
            gather_pictures(&page.items, &mut paths);
        }
        for path in paths {
            let decoded = pictures.get(path).and_then(|bytes| dots_for_paper(bytes));
            if let Some(picture) = decoded {
                let id = picture_id(path);
                self.document
                    .resources
                    .xobjects
                    .map
                    .insert(id, XObject::Image(raw_picture(picture)));
            }
        }
    }

    fn write_page(&self, page: &Page, structure: &mut Structure) -> PdfPage {
        structure.pages.push(Vec::new());
        let mut ops = Vec::with_capacity(page.items.len() * 6);
        self.write_items(&page.items, None, page.height, structure, &mut ops);
        let sheet = Rect::from_wh(Pt(page.width), Pt(page.height));
        PdfPage { media_box: sheet.clone(), trim_box: sheet.clone(), crop_box: sheet, ops }
    }

    /// Writes items in their order: what belongs to an element as marked pieces of it, the rest as
    /// decoration.
    fn write_items(
        &self,
        items: &[Item],
        within: Option<(usize, &Role)>,
        height: f32,
        structure: &mut Structure,
        ops: &mut Vec<Op>,
    ) {
        let mut rest = items;
        while let Some((first, after)) = rest.split_first() {
            if let Item::Group { tag, items } = first {
                self.write_group(tag, items, within, (height, structure), ops);
                rest = after;
                continue;
            }
            let is_content = belongs(first, within);
            let alike = |item: &&Item| {
                !matches!(item, Item::Group { .. }) && belongs(item, within) == is_content
            };
            let count = rest.iter().take_while(alike).count();
            match within.filter(|_| is_content) {
                Some((element, role)) => {
                    ops.push(begin_piece(role, structure.add_piece(element)));
                }
                None => ops.push(Op::BeginMarkedContent { tag: "Artifact".to_owned() }),
            }
            for item in &rest[..count] {
                self.write_item(item, height, ops);
            }
            ops.push(Op::EndMarkedContent);
            rest = &rest[count..];
        }
    }

    fn write_group(
        &self,
        tag: &Tag,
        items: &[Item],
        within: Option<(usize, &Role)>,
        (height, structure): (f32, &mut Structure),
        ops: &mut Vec<Op>,
    ) {
        if tag.role == Role::Decoration {
            self.write_items(items, None, height, structure, ops);
            return;
        }
        let element = structure.open(tag, within.map(|(element, _)| element));
        self.write_items(items, Some((element, &tag.role)), height, structure, ops);
        let room = || {
            let [left, top, right, bottom] = room_of(items, &|run| self.width_of(run));
            [left, height - bottom, right, height - top]
        };
        match &tag.role {
            Role::Link(address) => structure.add_link(element, address, room()),
            Role::Figure(_) => {
                let page = structure.pages.len() - 1;
                structure.elements[element].room = Some((page, room()));
            }
            Role::Heading(1) => structure.add_bookmark(&words_of(items), room()[3]),
            _ => {}
        }
    }

    fn width_of(&self, run: &GlyphRun) -> f32 {
        let widths = &self.faces.get(run.face).widths;
        run.glyphs.last().map_or(0.0, |glyph| {
            let own = widths.get(usize::from(glyph.id)).copied().unwrap_or(0.0);
            glyph.x + own * run.size / 1000.0
        })
    }

    fn write_item(&self, item: &Item, height: f32, ops: &mut Vec<Op>) {
        match item {
            Item::Glyphs(run) => self.write_glyphs(run, height, ops),
            Item::Line { from, to, thickness, dash, grey } => {
                set_stroke(
                    Stroke { thickness: *thickness, grey: *grey, dash: *dash, is_open: false },
                    ops,
                );
                let points = [*from, *to].map(|at| line_point(at, height, false)).to_vec();
                ops.push(Op::DrawLine { line: Line { points, is_closed: false } });
            }
            Item::Shape { outline, fill, stroke } => {
                write_shape(outline, *fill, *stroke, height, ops);
            }
            Item::Picture { path, at, width, height: tall } => {
                self.write_picture(path, *at, (*width, *tall), height, ops);
            }
            Item::Group { .. } => unreachable!("groups are opened before their items are written"),
        }
    }

    fn write_glyphs(&self, run: &GlyphRun, height: f32, ops: &mut Vec<Op>) {
        let widths = &self.faces.get(run.face).widths;
        let font = PdfFontHandle::External(FontId(run.face.tag().to_owned()));
        ops.push(Op::SetFillColor { col: ink(run.grey) });
        ops.push(Op::StartTextSection);
        ops.push(Op::SetFont { font, size: Pt(run.size) });
        for level in run.glyphs.chunk_by(|a, b| a.rise.to_bits() == b.rise.to_bits()) {
            let start = level[0].x;
            let (x, y) = (run.at.0 + start, height - run.at.1 + level[0].rise);
            ops.push(Op::SetTextMatrix { matrix: TextMatrix::Translate(Pt(x), Pt(y)) });
            let mut pen = start;
            let codepoints = level
                .iter()
                .enumerate()
                .map(|(index, glyph)| {
                    // The reader moves on by the width table; what differs from the shaped place
                    // is put right after the glyph, in thousandths of the size, leftwards.
                    pen += widths.get(usize::from(glyph.id)).copied().unwrap_or(0.0) * run.size
                        / 1000.0;
                    let offset = level.get(index + 1).map_or(0.0, |next| {
                        let thousandths = ((pen - next.x) * 1000.0 / run.size).round();
                        pen -= thousandths * run.size / 1000.0;
                        thousandths
                    });
                    Codepoint::with_cid(glyph.id, offset, glyph.text.to_string())
                })
                .collect();
            ops.push(Op::ShowText { items: vec![TextItem::GlyphIds(codepoints)] });
        }
        ops.push(Op::EndTextSection);
    }

    fn write_picture(&self, path: &str, at: At, size: At, height: f32, ops: &mut Vec<Op>) {
        let id = picture_id(path);
        if !self.document.resources.xobjects.map.contains_key(&id) {
            return;
        }
        ops.push(Op::UseXobject {
            id,
            transform: XObjectTransform {
                translate_x: Some(Pt(at.0)),
                translate_y: Some(Pt(height - at.1 - size.1)),
                scale_x: Some(size.0),
                scale_y: Some(size.1),
                no_auto_scale: true,
                ..XObjectTransform::default()
            },
        });
    }
}

/// Whether an item is content of its group: words and pictures are, and all of a figure.
fn belongs(item: &Item, within: Option<(usize, &Role)>) -> bool {
    let is_words = matches!(item, Item::Glyphs(_) | Item::Picture { .. });
    within.is_some_and(|(_, role)| is_words || matches!(role, Role::Figure(_)))
}

fn begin_piece(role: &Role, number: usize) -> Op {
    let number = DictItem::Int(i64::try_from(number).unwrap_or(i64::MAX));
    let properties = DictItem::Dict { map: BTreeMap::from([("MCID".to_owned(), number)]) };
    Op::BeginMarkedContentWithProperties { tag: piece_name(role), properties }
}

fn gather_pictures<'i>(items: &'i [Item], paths: &mut Vec<&'i String>) {
    for item in items {
        match item {
            Item::Picture { path, .. } => paths.push(path),
            Item::Group { items, .. } => gather_pictures(items, paths),
            _ => {}
        }
    }
}

fn raw_picture(picture: image::RgbImage) -> RawImage {
    let side = |dots: u32| usize::try_from(dots).unwrap_or(0);
    RawImage {
        width: side(picture.width()),
        height: side(picture.height()),
        pixels: RawImageData::U8(picture.into_raw()),
        data_format: RawImageFormat::RGB8,
        tag: Vec::new(),
    }
}

fn picture_id(path: &str) -> XObjectId {
    let plain: String = path.chars().filter(char::is_ascii_alphanumeric).collect();
    XObjectId(format!("P{plain}{:x}", fingerprint(path.as_bytes())))
}

fn set_stroke(stroke: Stroke, ops: &mut Vec<Op>) {
    let pattern = stroke
        .dash
        .map_or_else(LineDashPattern::default, |(on, off)| LineDashPattern::new(0.0, &[on, off]));
    ops.push(Op::SetLineDashPattern { dash: pattern });
    ops.push(Op::SetOutlineThickness { pt: Pt(stroke.thickness) });
    ops.push(Op::SetOutlineColor { col: ink(stroke.grey) });
}

fn write_shape(
    outline: &[Corner],
    fill: Option<f32>,
    stroke: Option<Stroke>,
    height: f32,
    ops: &mut Vec<Op>,
) {
    if let Some(grey) = fill {
        ops.push(Op::SetFillColor { col: ink(grey) });
    }
    if let Some(stroke) = stroke {
        set_stroke(stroke, ops);
    }
    let points: Vec<LinePoint> =
        outline.iter().map(|corner| line_point(corner.at, height, corner.is_bent)).collect();
    // The fill closes an open outline, its line does not.
    let open = stroke.is_some_and(|stroke| stroke.is_open).then(|| points.clone());
    let mode = match (fill, stroke) {
        (None, Some(_)) if open.is_some() => None,
        (Some(_), Some(_)) if open.is_none() => Some(PaintMode::FillStroke),
        (Some(_), _) => Some(PaintMode::Fill),
        _ => Some(PaintMode::Stroke),
    };
    if let Some(mode) = mode {
        let rings = vec![PolygonRing { points }];
        ops.push(Op::DrawPolygon {
            polygon: Polygon { rings, mode, winding_order: WindingOrder::NonZero },
        });
    }
    if let Some(points) = open {
        ops.push(Op::DrawLine { line: Line { points, is_closed: false } });
    }
}

fn line_point(at: At, height: f32, bezier: bool) -> LinePoint {
    LinePoint { p: Point { x: Pt(at.0), y: Pt(height - at.1) }, bezier }
}

fn ink(grey: f32) -> Color {
    Color::Greyscale(Greyscale { percent: grey, icc_profile: None })
}

/// Puts title, language, dates and ids of our own in place, thins the fonts and saves.
fn finish(pdf: &mut lopdf::Document, structure: &Structure, about: &About) -> Vec<u8> {
    "1.7".clone_into(&mut pdf.version);
    let info = pdf.add_object(info_of(about));
    pdf.trailer.set("Info", info);
    if let Ok(catalog) = pdf.catalog_mut() {
        catalog.set("Lang", text(&about.language));
        let mut view = Dictionary::new();
        view.set("DisplayDocTitle", true);
        catalog.set("ViewerPreferences", view);
    }
    tag_document(pdf, structure, about);
    thin_fonts(pdf);
    pdf.prune_objects();
    let id = document_id(pdf, about);
    pdf.trailer.set("ID", vec![id.clone(), id]);
    compress(pdf);
    let mut bytes = Vec::new();
    pdf.save_modern(&mut bytes).expect("memory takes every byte");
    bytes
}

fn info_of(about: &About) -> Dictionary {
    let date = format!("D:{}000000Z", about.date);
    let mut info = Dictionary::new();
    info.set("Title", text(&about.title));
    info.set("Author", text(&about.author));
    info.set("Creator", text("homeground"));
    info.set("CreationDate", Object::String(date.clone().into_bytes(), StringFormat::Literal));
    info.set("ModDate", Object::String(date.into_bytes(), StringFormat::Literal));
    info
}

/// A text string: plain where it is ASCII, else UTF-16 with its mark (ISO 32000-1, 7.9.2.2).
pub(super) fn text(words: &str) -> Object {
    if words.is_ascii() {
        return Object::String(words.as_bytes().to_vec(), StringFormat::Literal);
    }
    let units = words.encode_utf16().flat_map(u16::to_be_bytes);
    let bytes = [0xFE, 0xFF].into_iter().chain(units).collect();
    Object::String(bytes, StringFormat::Hexadecimal)
}

/// The id is drawn from the content, so that the same pages have the same id.
fn document_id(pdf: &lopdf::Document, about: &About) -> Object {
    let mut seen = about.title.clone().into_bytes();
    for object in pdf.objects.values() {
        if let Object::Stream(stream) = object {
            seen.extend_from_slice(&stream.content);
        }
    }
    let (low, high) = (fingerprint(&seen), fingerprint(about.date.as_bytes()));
    let bytes = [low.to_be_bytes(), (low.rotate_left(29) ^ high).to_be_bytes()].concat();
    Object::String(bytes, StringFormat::Hexadecimal)
}

/// FNV-1a, 64 bit.
fn fingerprint(bytes: &[u8]) -> u64 {
    bytes.iter().fold(0xcbf2_9ce4_8422_2325, |hash, byte| {
        (hash ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3)
    })
}

/// Leaves out of each embedded font what no reader of a PDF looks at.
fn thin_fonts(pdf: &mut lopdf::Document) {
    let programs: Vec<lopdf::ObjectId> = pdf
        .objects
        .values()
        .filter_map(|object| object.as_dict().ok()?.get(b"FontFile2").ok()?.as_reference().ok())
        .collect();
    for id in programs {
        let Some(Object::Stream(stream)) = pdf.objects.get_mut(&id) else { continue };
        if let Some(thin) = thin_program(&stream.content) {
            stream.dict.set("Length1", i64::try_from(thin.len()).unwrap_or(0));
            stream.set_content(thin);
        }
    }
}

/// Deflates every stream that is not yet; a middling level saves nearly all for half the time.
fn compress(pdf: &mut lopdf::Document) {
    for object in pdf.objects.values_mut() {
        if let Object::Stream(stream) = object
            && stream.dict.get(b"Filter").is_err()
            // What says that it is PDF/UA is left for every reader to find.
            && !stream.dict.has_type(b"Metadata")
        {
            let level = flate2::Compression::new(6);
            let mut encoder = flate2::write::ZlibEncoder::new(Vec::new(), level);
            let written = std::io::Write::write_all(&mut encoder, &stream.content);
            if let Some(deflated) = written.and_then(|()| encoder.finish()).ok()
                && deflated.len() < stream.content.len()
            {
                stream.dict.set("Filter", "FlateDecode");
                stream.set_content(deflated);
            }
        }
    }
}
