//! What the sheets of one session share in their files: subsets of the faces, with the glyphs that any of
//! the sheets has, and pictures. They are made once, by printpdf, from a specimen that shows each glyph;
//! every file takes those it needs as finished bytes.

use std::collections::btree_map::Entry;
use std::collections::{BTreeMap, BTreeSet};

use lopdf::{Dictionary, Document, Object, ObjectId};
use printpdf::{
    Codepoint, FontId, Op, PdfDocument, PdfFont, PdfFontHandle, PdfPage, PdfSaveOptions, Point, Pt,
    RawImage, RawImageData, RawImageFormat, Rect, TextItem, XObject, XObjectId,
};

use super::content::ContentWriter;
use super::deflate::Deflater;
use super::faces::{Face, Faces};
use super::font_program::thin_program;
use super::paper_pictures::PaperPictures;
use super::pdf_file::PdfFile;
use super::pdf_text::PdfText;
use super::plate::{Edge, Form, Impression};
use super::used::{Glyphs, Used};

/// Fonts, pictures and plates, finished for every file of a session.
#[derive(Debug)]
pub struct Stock {
    fonts: Vec<StockFont>,
    pictures: BTreeMap<String, StockThing>,
    plates: BTreeMap<Edge, StockPlate>,
    /// The first number that is free for the objects of a file.
    pub first_free: usize,
}

/// A subset of a face.
#[derive(Debug)]
struct StockFont {
    face: Face,
    /// What each glyph is called in the subset, by its number; 0 is none.
    codes: Vec<u16>,
    thing: StockThing,
}

/// A plate, and its ink in squares of its unit.
#[derive(Debug)]
struct StockPlate {
    thing: StockThing,
    ink: f32,
}

/// Something of the stock: its own number, and it and all it leads to as they are written.
#[derive(Debug, Default)]
struct StockThing {
    number: usize,
    objects: Vec<(usize, Vec<u8>)>,
}

/// What printpdf makes stock of; the fonts in it are read once and used for every session.
pub struct StockMaker<'f> {
    faces: &'f Faces,
    specimen: PdfDocument,
}

impl<'f> StockMaker<'f> {
    pub fn new(faces: &'f Faces) -> Self {
        Self { faces, specimen: PdfDocument::new("") }
    }

    /// The stock of what sheets show.
    pub fn make(
        &mut self,
        used: Used<'_>,
        pictures: &PaperPictures,
        deflater: &mut Deflater,
    ) -> Stock {
        let Used { glyphs, paths, plates } = used;
        self.show_specimen(&glyphs, &paths, pictures);
        let options = PdfSaveOptions { image_optimization: None, ..PdfSaveOptions::default() };
        let mut written = self.specimen.to_lopdf_document(&options, &mut Vec::new());
        finish_streams(&mut written, deflater);
        let stock = stock_of(&written, glyphs, paths).unwrap_or_else(Stock::empty);
        stock.with_plates(&plates, deflater)
    }

    /// One page with every glyph once, in order, and the pictures.
    fn show_specimen(
        &mut self,
        glyphs: &BTreeMap<Face, Glyphs>,
        paths: &BTreeSet<&String>,
        pictures: &PaperPictures,
    ) {
        let shown = &mut self.specimen.resources.xobjects.map;
        shown.clear();
        for path in paths {
            if let Some(picture) = pictures.get(path) {
                shown.insert(picture_id(path), XObject::Image(raw_picture(&picture.dots)));
            }
        }
        let mut ops = vec![Op::StartTextSection];
        let fonts = &mut self.specimen.resources.fonts.map;
        for (face, glyphs) in glyphs {
            let id = FontId(face.tag().to_owned());
            if let (Entry::Vacant(place), Some(font)) =
                (fonts.entry(id), self.faces.get(*face).parsed())
            {
                place.insert(PdfFont::new(font.clone()));
            }
            let font = PdfFontHandle::External(FontId(face.tag().to_owned()));
            ops.push(Op::SetFont { font, size: Pt(1.0) });
            let codes =
                glyphs.used().map(|(id, text)| Codepoint::with_cid(id, 0.0, text.to_string()));
            ops.push(Op::SetTextCursor { pos: Point { x: Pt(0.0), y: Pt(0.0) } });
            ops.push(Op::ShowText { items: vec![TextItem::GlyphIds(codes.collect())] });
        }
        ops.push(Op::EndTextSection);
        let sheet = Rect::from_wh(Pt(10.0), Pt(10.0));
        self.specimen.pages = vec![PdfPage {
            media_box: sheet.clone(),
            trim_box: sheet.clone(),
            crop_box: sheet,
            ops,
        }];
    }
}

impl Stock {
    fn empty() -> Self {
        let (pictures, plates) = (BTreeMap::new(), BTreeMap::new());
        Self { fonts: Vec::new(), pictures, plates, first_free: 1 }
    }

    fn with_plates(
        mut self,
        plates: &BTreeMap<Edge, &Impression>,
        deflater: &mut Deflater,
    ) -> Self {
        for (edge, impression) in plates {
            let number = self.first_free;
            let Form { object, ink } = impression.form(deflater);
            let thing = StockThing { number, objects: vec![(number, object)] };
            self.plates.insert(*edge, StockPlate { thing, ink });
            self.first_free += 1;
        }
        self
    }

    /// What a face’s glyphs are called.
    pub fn codes(&self, face: Face) -> Option<&[u16]> {
        self.fonts.iter().find(|font| font.face == face).map(|font| font.codes.as_slice())
    }

    /// Whether it has a picture. One that can’t be read is left out.
    pub fn has_picture(&self, path: &str) -> bool {
        self.pictures.contains_key(path)
    }

    /// The ink of a plate, in squares of its unit.
    pub fn plate_ink(&self, edge: Edge) -> f32 {
        self.plates.get(&edge).map_or(0.0, |plate| plate.ink)
    }

    /// The name of a picture on a page.
    pub fn picture_name(&self, path: &str) -> String {
        let index = self.pictures.keys().take_while(|known| *known != path).count();
        format!("P{index}")
    }

    /// Puts into a file what its pages need, and gives the entries for their resources.
    pub fn write_to(&self, file: &mut PdfFile, shown: &ContentWriter<'_>) -> String {
        let (faces, paths) = (&shown.used_faces, &shown.used_pictures);
        let mut entries = "/Font<<".to_owned();
        for font in self.fonts.iter().filter(|font| faces.contains(&font.face)) {
            entries.push_str(&format!("/{} {} 0 R", font.face.tag(), font.thing.number));
            font.thing.write_to(file);
        }
        entries.push_str(">>/XObject<<");
        for (path, picture) in self.pictures.iter().filter(|(path, _)| paths.contains(*path)) {
            entries.push_str(&format!("/{} {} 0 R", self.picture_name(path), picture.number));
            picture.write_to(file);
        }
        for edge in &shown.used_plates {
            let Some(plate) = self.plates.get(edge) else { continue };
            entries.push_str(&format!("/{} {} 0 R", edge.name(), plate.thing.number));
            plate.thing.write_to(file);
        }
        entries + ">>"
    }
}

impl StockThing {
    fn write_to(&self, file: &mut PdfFile) {
        for (number, body) in &self.objects {
            file.whole(*number, body);
        }
    }

    /// An object of the specimen’s file and all that it leads to.
    fn of(written: &Document, id: ObjectId) -> Self {
        let mut thing = Self { number: number_of(id), objects: Vec::new() };
        thing.take(written, id);
        thing
    }

    fn take(&mut self, written: &Document, id: ObjectId) {
        let number = number_of(id);
        if self.objects.iter().any(|(known, _)| *known == number) {
            return;
        }
        let Ok(object) = written.get_object(id) else { return };
        let mut body = PdfText::default();
        write_object(object, &mut body);
        self.objects.push((number, body.bytes));
        for id in references_in(object) {
            self.take(written, id);
        }
    }
}

fn stock_of(
    written: &Document,
    glyphs: BTreeMap<Face, Glyphs>,
    paths: BTreeSet<&String>,
) -> Option<Stock> {
    let page = written.page_iter().next()?;
    let named = |kind: &[u8]| resources_of(written, page, kind);
    let (fonts, pictures) = (named(b"Font")?, named(b"XObject")?);
    let thing = |named: &Dictionary, name: &str| {
        let id = named.get(name.as_bytes()).ok()?.as_reference().ok()?;
        Some(StockThing::of(written, id))
    };
    let mut codes = shown_codes(written, page)?.into_iter();
    let fonts = glyphs.into_iter().filter_map(|(face, glyphs)| {
        let mut called = vec![0; glyphs.0.len()];
        for ((id, _), code) in glyphs.used().zip(codes.by_ref()) {
            called[usize::from(id)] = code;
        }
        Some(StockFont { face, codes: called, thing: thing(fonts, face.tag())? })
    });
    let fonts = fonts.collect();
    let pictures = paths
        .into_iter()
        .filter_map(|path| Some((path.clone(), thing(pictures, &picture_id(path).0)?)));
    let first_free = usize::try_from(written.max_id).ok()? + 1;
    Some(Stock { fonts, pictures: pictures.collect(), plates: BTreeMap::new(), first_free })
}

fn resources_of<'d>(written: &'d Document, page: ObjectId, kind: &[u8]) -> Option<&'d Dictionary> {
    let follow = |owner: &'d Dictionary, key: &[u8]| {
        let object = owner.get(key).ok()?;
        written.dereference(object).ok()?.1.as_dict().ok()
    };
    follow(follow(written.get_dictionary(page).ok()?, b"Resources")?, kind)
}

/// What the glyphs of the specimen are called, in the order that they were given in.
fn shown_codes(written: &Document, page: ObjectId) -> Option<Vec<u16>> {
    let content = lopdf::content::Content::decode(&written.get_page_content(page)).ok()?;
    let shown = content.operations.iter().filter(|operation| operation.operator.starts_with('T'));
    let mut codes = Vec::new();
    for operand in shown.flat_map(|operation| &operation.operands) {
        let strings = operand.as_array().map_or(std::slice::from_ref(operand), Vec::as_slice);
        for bytes in strings.iter().filter_map(|string| string.as_str().ok()) {
            codes.extend(bytes.chunks_exact(2).map(|code| u16::from_be_bytes([code[0], code[1]])));
        }
    }
    Some(codes)
}

/// An object in the syntax of PDF; in strings every byte is written by its number.
fn write_object(object: &Object, text: &mut PdfText) {
    match object {
        Object::Null => text.put("null "),
        Object::Boolean(value) => text.put(&format!("{value} ")),
        Object::Integer(value) => text.put(&format!("{value} ")),
        Object::Real(value) => text.put(&format!("{value} ")),
        Object::Name(name) => text.put("/").put(&String::from_utf8_lossy(name)).put(" "),
        Object::String(bytes, _) => {
            let digits: String = bytes.iter().map(|byte| format!("{byte:02X}")).collect();
            text.put("<").put(&digits).put(">")
        }
        Object::Array(objects) => {
            text.put("[");
            for object in objects {
                write_object(object, text);
            }
            text.put("]")
        }
        Object::Dictionary(entries) => write_entries(entries, text),
        Object::Stream(stream) => {
            write_entries(&stream.dict, text).put("stream\n");
            text.bytes.extend_from_slice(&stream.content);
            text.put("\nendstream")
        }
        Object::Reference(id) => text.reference(number_of(*id)).put(" "),
    };
}

fn write_entries<'t>(entries: &Dictionary, text: &'t mut PdfText) -> &'t mut PdfText {
    text.put("<<");
    for (name, object) in entries {
        text.put("/").put(&String::from_utf8_lossy(name)).put(" ");
        write_object(object, text);
    }
    text.put(">>")
}

fn references_in(object: &Object) -> Vec<ObjectId> {
    match object {
        Object::Reference(id) => vec![*id],
        Object::Array(objects) => objects.iter().flat_map(references_in).collect(),
        Object::Dictionary(entries) => {
            entries.iter().flat_map(|(_, object)| references_in(object)).collect()
        }
        Object::Stream(stream) => {
            stream.dict.iter().flat_map(|(_, object)| references_in(object)).collect()
        }
        _ => Vec::new(),
    }
}

fn number_of(id: ObjectId) -> usize {
    usize::try_from(id.0).expect("a number of 32 bits fits")
}

/// Thins font programs and deflates every stream that is not yet.
fn finish_streams(written: &mut Document, deflater: &mut Deflater) {
    for object in written.objects.values_mut() {
        let Object::Stream(stream) = object else { continue };
        if stream.dict.has(b"Length1")
            && let Some(thin) = thin_program(&stream.content)
        {
            stream.dict.set("Length1", i64::try_from(thin.len()).unwrap_or(0));
            stream.set_content(thin);
        }
        if stream.dict.get(b"Filter").is_err() {
            let deflated = deflater.deflate_well(&stream.content);
            if deflated.len() < stream.content.len() {
                stream.dict.set("Filter", "FlateDecode");
                stream.set_content(deflated);
            }
        }
    }
}

fn raw_picture(picture: &image::RgbImage) -> RawImage {
    let side = |dots: u32| usize::try_from(dots).unwrap_or(0);
    RawImage {
        width: side(picture.width()),
        height: side(picture.height()),
        pixels: RawImageData::U8(picture.as_raw().clone()),
        data_format: RawImageFormat::RGB8,
        tag: Vec::new(),
    }
}

/// A name that no other picture of the pack has and that PDF needs no escapes for.
fn picture_id(path: &str) -> XObjectId {
    XObjectId(path.bytes().map(|byte| format!("{byte:02x}")).collect())
}
