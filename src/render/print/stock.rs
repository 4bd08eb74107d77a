//! What the sheets of one session share in their files: subsets of the faces, with the glyphs that any of
//! the sheets has, pictures and plates. They are made once; every file takes those it needs as finished bytes.

use std::collections::BTreeMap;

use super::content::ContentWriter;
use super::deflate::Deflater;
use super::faces::{Face, Faces};
use super::paper_pictures::PaperPictures;
use super::pdf_file::PdfFile;
use super::pdf_text::PdfText;
use super::plate::{Edge, Form, Impression};
use super::stock_font::StockFont;
use super::stock_picture::pictures_of;
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

/// A plate, and its ink in squares of its unit.
#[derive(Debug)]
struct StockPlate {
    thing: StockThing,
    ink: f32,
}

/// Something of the stock: its own number, and it and all it leads to as they are written.
#[derive(Debug, Default)]
pub struct StockThing {
    pub number: usize,
    /// Objects that are no streams.
    pub packed: Vec<(usize, Vec<u8>)>,
    pub streams: Vec<(usize, Vec<u8>)>,
}

impl Stock {
    /// The stock of what sheets show.
    pub fn of(
        used: &Used<'_>,
        faces: &Faces,
        pictures: &PaperPictures,
        deflater: &mut Deflater,
    ) -> Self {
        let (pictures, first_free) = pictures_of(&used.paths, pictures, deflater);
        let (fonts, plates) = (Vec::new(), BTreeMap::new());
        let mut stock = Self { fonts, pictures, plates, first_free };
        stock.add_fonts(&used.glyphs, faces, deflater);
        stock.add_plates(&used.plates, deflater);
        stock
    }

    fn add_fonts(
        &mut self,
        glyphs: &BTreeMap<Face, Glyphs>,
        faces: &Faces,
        deflater: &mut Deflater,
    ) {
        for (face, glyphs) in glyphs {
            let font = StockFont::of(faces.get(*face), glyphs, self.first_free, deflater);
            self.fonts.extend(font);
            self.first_free += StockFont::OBJECTS;
        }
    }

    fn add_plates(&mut self, plates: &BTreeMap<Edge, &Impression>, deflater: &mut Deflater) {
        for (edge, impression) in plates {
            let number = self.first_free;
            let Form { object, ink } = impression.form(deflater);
            let thing = StockThing { number, packed: Vec::new(), streams: vec![(number, object)] };
            self.plates.insert(*edge, StockPlate { thing, ink });
            self.first_free += 1;
        }
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
    /// Adds a stream with these entries in its dictionary.
    pub fn add_stream(
        &mut self,
        number: usize,
        entries: &str,
        content: &[u8],
        deflater: &mut Deflater,
    ) {
        let deflated = deflater.deflate(content);
        let mut text = PdfText { bytes: Vec::with_capacity(deflated.len() + 100) };
        text.put("<</Filter/FlateDecode").put(entries).put("/Length ").integer(deflated.len());
        text.put(">>stream\n").put_bytes(&deflated).put("\nendstream");
        self.streams.push((number, text.bytes));
    }

    fn write_to(&self, file: &mut PdfFile) {
        for (number, body) in &self.packed {
            file.object(*number, |text| _ = text.put_bytes(body));
        }
        for (number, body) in &self.streams {
            file.whole(*number, body);
        }
    }
}
