//! A laid-out page → its content in the operators of PDF (ISO 32000-1, annex A), with what is to be read
//! out in marked pieces, which the structure collects.

use std::collections::{BTreeMap, BTreeSet};

use super::brush::Brush;
use super::faces::{Face, Faces};
use super::page::{At, GlyphRun, Item, Page, PlacedGlyph, Role, Stroke, Tag};
use super::plate::{Edge, Impression};
use super::read_out::words_of;
use super::stock::Stock;
use super::structure::{Structure, room_of};
use super::tagged::role_name;

/// Writes the content of one page after the other.
pub struct ContentWriter<'w> {
    faces: &'w Faces,
    stock: &'w Stock,
    /// What each face’s glyphs are called.
    codes: BTreeMap<Face, &'w [u16]>,
    pub structure: Structure,
    /// What its pages need of the stock.
    pub used_faces: BTreeSet<Face>,
    pub used_pictures: BTreeSet<String>,
    pub used_plates: BTreeSet<Edge>,
    brush: Brush,
    /// The piece that is being written.
    piece: Option<Piece>,
}

/// What a marked piece of a page belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Piece {
    Decoration,
    Element(usize),
}

/// How far a glyph may stand from its place, in thousandths of the size, before it is put right: a fiftieth of a
/// millimetre in running words.
const SLACK: f32 = 5.0;

impl<'w> ContentWriter<'w> {
    pub fn new(faces: &'w Faces, stock: &'w Stock) -> Self {
        let codes = Face::ALL.into_iter().filter_map(|face| Some((face, stock.codes(face)?)));
        Self {
            faces,
            stock,
            codes: codes.collect(),
            structure: Structure::default(),
            used_faces: BTreeSet::new(),
            used_pictures: BTreeSet::new(),
            used_plates: BTreeSet::new(),
            brush: Brush::on_page(0.0),
            piece: None,
        }
    }

    /// The content of the next page.
    pub fn write_page(&mut self, page: &Page) -> Vec<u8> {
        self.structure.pages.push(Vec::new());
        self.brush = Brush::on_page(page.height);
        self.write_items(&page.items, None);
        self.end_piece();
        std::mem::take(&mut self.brush.text.bytes)
    }

    /// Writes items in their order: what belongs to an element as marked pieces of it, the rest as
    /// decoration.
    fn write_items(&mut self, items: &[Item], within: Option<(usize, &Role)>) {
        let mut rest = items;
        while let Some((first, after)) = rest.split_first() {
            if let Item::Group { tag, items } = first {
                self.write_group(tag, items, within);
                rest = after;
                continue;
            }
            let is_content = belongs(first, within);
            let alike = |item: &&Item| {
                !matches!(item, Item::Group { .. }) && belongs(item, within) == is_content
            };
            let count = rest.iter().take_while(alike).count();
            self.begin_piece(within.filter(|_| is_content));
            for item in &rest[..count] {
                self.write_item(item);
            }
            rest = &rest[count..];
        }
    }

    /// Goes on with a piece of the same element – the lines of a paragraph are one – or begins another.
    fn begin_piece(&mut self, within: Option<(usize, &Role)>) {
        let piece = within.map_or(Piece::Decoration, |(element, _)| Piece::Element(element));
        if self.piece == Some(piece) {
            return;
        }
        self.end_piece();
        self.piece = Some(piece);
        let Some((element, role)) = within else {
            self.brush.text.put("/Artifact BMC\n");
            return;
        };
        let number = self.structure.add_piece(element);
        let text = self.brush.text.put("/").put(role_name(role));
        text.put("<</MCID ").integer(number).put(">>BDC\n");
    }

    fn end_piece(&mut self) {
        if self.piece.take().is_some() {
            self.brush.end_text();
            self.brush.text.put("EMC\n");
        }
    }

    fn write_group(&mut self, tag: &Tag, items: &[Item], within: Option<(usize, &Role)>) {
        if tag.role == Role::Decoration {
            self.write_items(items, None);
            return;
        }
        let element = self.structure.open(tag, within.map(|(element, _)| element));
        self.write_items(items, Some((element, &tag.role)));
        match &tag.role {
            Role::Link(address) => {
                let room = self.room_on_page(items);
                self.structure.add_link(element, address, room);
            }
            Role::Figure(_) => {
                let page = self.structure.pages.len() - 1;
                let room = self.room_on_page(items);
                self.structure.elements[element].room = Some((page, room));
            }
            Role::Heading(1) => {
                let room = self.room_on_page(items);
                self.structure.add_bookmark(element, &words_of(items), room[3]);
            }
            _ => {}
        }
    }

    /// The room that items take: left, bottom, right, top, from the foot of the page.
    fn room_on_page(&self, items: &[Item]) -> [f32; 4] {
        let [left, top, right, bottom] = room_of(items, &|run| self.width_of(run));
        let height = self.brush.height;
        [left, height - bottom, right, height - top]
    }

    fn width_of(&self, run: &GlyphRun) -> f32 {
        let widths = &self.faces.get(run.face).widths;
        run.rightmost().map_or(0.0, |glyph| {
            let own = widths.get(usize::from(glyph.id)).copied().unwrap_or(0.0);
            glyph.x + own * run.size / 1000.0
        })
    }

    fn write_item(&mut self, item: &Item) {
        match item {
            Item::Glyphs(run) => self.write_glyphs(run),
            Item::Line { from, to, thickness, dash, grey } => {
                let (thickness, grey, dash) = (*thickness, *grey, *dash);
                self.brush.write_line(*from, *to, Stroke { thickness, grey, dash, is_open: false });
            }
            Item::Shape { outline, fill, stroke } => {
                self.brush.write_shape(outline, *fill, *stroke);
            }
            Item::Picture { path, at, width, height } => {
                self.write_picture(path, *at, (*width, *height));
            }
            Item::Plate(impression) => self.write_plate(impression),
            Item::Group { .. } => unreachable!("groups are opened before their items are written"),
        }
    }

    fn write_glyphs(&mut self, run: &GlyphRun) {
        let Some(codes) = self.codes.get(&run.face).copied() else { return };
        let faces = self.faces;
        let widths = &faces.get(run.face).widths;
        self.used_faces.insert(run.face);
        self.brush.set_fill(run.grey);
        self.brush.begin_text();
        self.brush.set_font(run.face, run.size);
        for level in run.as_they_stand().chunk_by(|a, b| a.rise.to_bits() == b.rise.to_bits()) {
            self.brush.move_text((run.at.0 + level[0].x, run.at.1 - level[0].rise));
            self.brush.text.put("[(");
            self.write_level(level, run.size, widths, codes);
            self.brush.text.put(")]TJ\n");
        }
    }

    /// Glyphs on one baseline.
    fn write_level(&mut self, level: &[PlacedGlyph], size: f32, widths: &[f32], codes: &[u16]) {
        let (mut pen, thousandth) = (level[0].x, size / 1000.0);
        for (index, glyph) in level.iter().enumerate() {
            self.brush.text.code(codes.get(usize::from(glyph.id)).copied().unwrap_or(0));
            // The reader moves on by the width table; where that leads astray it is put right after the glyph, in
            // thousandths of the size, leftwards.
            pen += widths.get(usize::from(glyph.id)).copied().unwrap_or(0.0) * thousandth;
            let Some(next) = level.get(index + 1) else { break };
            let astray = (pen - next.x) / thousandth;
            if astray.abs() > SLACK {
                let astray = astray.round();
                pen -= astray * thousandth;
                self.brush.text.put(")").fixed(astray, 0).put("(");
            }
        }
    }

    fn write_picture(&mut self, path: &str, at: At, size: At) {
        if !self.stock.has_picture(path) {
            return;
        }
        self.used_pictures.insert(path.to_owned());
        self.brush.show(&self.stock.picture_name(path), (at.0, at.1 + size.1), size);
    }

    fn write_plate(&mut self, impression: &Impression) {
        let edge = impression.edge();
        self.used_plates.insert(edge);
        let foot = (impression.at.0, impression.at.1 + impression.height());
        self.brush.show(&edge.name(), foot, (impression.scale, impression.scale));
    }
}

/// Whether an item is content of its group: words and pictures are, and all of a figure.
fn belongs(item: &Item, within: Option<(usize, &Role)>) -> bool {
    let is_words = matches!(item, Item::Glyphs(_) | Item::Picture { .. } | Item::Plate(_));
    within.is_some_and(|(_, role)| is_words || matches!(role, Role::Figure(_)))
}
