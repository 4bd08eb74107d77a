//! A laid-out page → its content in the operators of PDF (ISO 32000-1, annex A), with what is to be read
//! out in marked pieces, which the structure collects.

use std::collections::{BTreeMap, BTreeSet};

use super::faces::{Face, Faces};
use super::page::{At, Corner, GlyphRun, Grey, Item, Page, PlacedGlyph, Role, Stroke, Tag};
use super::pdf_text::PdfText;
use super::stock::Stock;
use super::structure::{Structure, room_of, words_of};
use super::tagged::role_name;

/// Writes the content of one page after the other.
pub struct ContentWriter<'w> {
    faces: &'w Faces,
    stock: &'w Stock,
    /// What each face’s glyphs are called.
    codes: BTreeMap<Face, &'w BTreeMap<u16, u16>>,
    pub structure: Structure,
    /// What its pages need of the stock.
    pub used_faces: BTreeSet<Face>,
    pub used_pictures: BTreeSet<String>,
    height: f32,
    text: PdfText,
    state: State,
}

/// What the operators before have set; what is set already is not set again.
#[derive(Clone, Copy, Debug)]
struct State {
    fill: Grey,
    stroke: Stroke,
    font: Option<(Face, f32)>,
    /// Between `BT` and `ET`.
    is_text: bool,
}

impl State {
    /// As a page begins (ISO 32000-1, table 52).
    const FIRST: Self = Self {
        fill: 0.0,
        stroke: Stroke { thickness: 1.0, grey: 0.0, dash: None, is_open: false },
        font: None,
        is_text: false,
    };
}

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
            height: 0.0,
            text: PdfText::default(),
            state: State::FIRST,
        }
    }

    /// The content of the next page.
    pub fn write_page(&mut self, page: &Page) -> Vec<u8> {
        self.structure.pages.push(Vec::new());
        self.height = page.height;
        self.state = State::FIRST;
        self.text.bytes = Vec::with_capacity(16_000);
        self.write_items(&page.items, None);
        std::mem::take(&mut self.text.bytes)
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
            self.end_text();
            self.text.put("EMC\n");
            rest = &rest[count..];
        }
    }

    fn begin_piece(&mut self, within: Option<(usize, &Role)>) {
        let Some((element, role)) = within else {
            self.text.put("/Artifact BMC\n");
            return;
        };
        let number = self.structure.add_piece(element);
        self.text.put("/").put(role_name(role)).put("<</MCID ").integer(number).put(">>BDC\n");
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
                self.structure.add_bookmark(&words_of(items), room[3]);
            }
            _ => {}
        }
    }

    /// The room that items take: left, bottom, right, top, from the foot of the page.
    fn room_on_page(&self, items: &[Item]) -> [f32; 4] {
        let [left, top, right, bottom] = room_of(items, &|run| self.width_of(run));
        [left, self.height - bottom, right, self.height - top]
    }

    fn width_of(&self, run: &GlyphRun) -> f32 {
        let widths = &self.faces.get(run.face).widths;
        run.glyphs.last().map_or(0.0, |glyph| {
            let own = widths.get(usize::from(glyph.id)).copied().unwrap_or(0.0);
            glyph.x + own * run.size / 1000.0
        })
    }

    fn write_item(&mut self, item: &Item) {
        match item {
            Item::Glyphs(run) => self.write_glyphs(run),
            Item::Line { from, to, thickness, dash, grey } => {
                let (thickness, grey, dash) = (*thickness, *grey, *dash);
                self.set_stroke(Stroke { thickness, grey, dash, is_open: false });
                self.point(*from).put("m ");
                self.point(*to).put("l S\n");
            }
            Item::Shape { outline, fill, stroke } => self.write_shape(outline, *fill, *stroke),
            Item::Picture { path, at, width, height } => {
                self.write_picture(path, *at, (*width, *height));
            }
            Item::Group { .. } => unreachable!("groups are opened before their items are written"),
        }
    }

    fn point(&mut self, at: At) -> &mut PdfText {
        let y = self.height - at.1;
        self.text.real(at.0).put(" ").real(y).put(" ")
    }

    fn write_glyphs(&mut self, run: &GlyphRun) {
        let Some(codes) = self.codes.get(&run.face).copied() else { return };
        let faces = self.faces;
        let widths = &faces.get(run.face).widths;
        self.used_faces.insert(run.face);
        self.set_fill(run.grey);
        if !self.state.is_text {
            self.text.put("BT\n");
            self.state.is_text = true;
        }
        if self.state.font != Some((run.face, run.size)) {
            self.state.font = Some((run.face, run.size));
            self.text.put("/").put(run.face.tag()).put(" ").fixed(run.size, 3).put(" Tf\n");
        }
        for level in run.glyphs.chunk_by(|a, b| a.rise.to_bits() == b.rise.to_bits()) {
            let (x, y) = (run.at.0 + level[0].x, self.height - run.at.1 + level[0].rise);
            self.text.put("1 0 0 1 ").real(x).put(" ").real(y).put(" Tm[<");
            self.write_level(level, run.size, widths, codes);
            self.text.put(">]TJ\n");
        }
    }

    /// Glyphs on one baseline.
    fn write_level(
        &mut self,
        level: &[PlacedGlyph],
        size: f32,
        widths: &[f32],
        codes: &BTreeMap<u16, u16>,
    ) {
        let mut pen = level[0].x;
        for (index, glyph) in level.iter().enumerate() {
            self.text.code(codes.get(&glyph.id).copied().unwrap_or(0));
            // The reader moves on by the width table; what differs from the shaped place is put right
            // after the glyph, in thousandths of the size, leftwards.
            pen += widths.get(usize::from(glyph.id)).copied().unwrap_or(0.0) * size / 1000.0;
            let Some(next) = level.get(index + 1) else { break };
            let thousandths = ((pen - next.x) * 1000.0 / size).round();
            if thousandths != 0.0 {
                pen -= thousandths * size / 1000.0;
                self.text.put(">").fixed(thousandths, 0).put("<");
            }
        }
    }

    fn end_text(&mut self) {
        if std::mem::take(&mut self.state.is_text) {
            self.text.put("ET\n");
        }
    }

    fn set_fill(&mut self, grey: Grey) {
        if self.state.fill.to_bits() != grey.to_bits() {
            self.state.fill = grey;
            self.text.fixed(grey, 3).put(" g\n");
        }
    }

    /// Sets how lines are drawn; a path can’t begin among words.
    fn set_stroke(&mut self, stroke: Stroke) {
        self.end_text();
        let before = std::mem::replace(&mut self.state.stroke, stroke);
        if before.grey.to_bits() != stroke.grey.to_bits() {
            self.text.fixed(stroke.grey, 3).put(" G\n");
        }
        if before.thickness.to_bits() != stroke.thickness.to_bits() {
            self.text.real(stroke.thickness).put(" w\n");
        }
        if before.dash != stroke.dash {
            let (on, off) = stroke.dash.unwrap_or_default();
            let dash = [on, off];
            self.text.reals(if stroke.dash.is_some() { &dash } else { &[] }).put("0 d\n");
        }
    }

    fn write_shape(&mut self, outline: &[Corner], fill: Option<Grey>, stroke: Option<Stroke>) {
        self.end_text();
        if let Some(grey) = fill {
            self.set_fill(grey);
        }
        if let Some(stroke) = stroke {
            self.set_stroke(stroke);
        }
        self.write_path(outline);
        let is_open = stroke.is_some_and(|stroke| stroke.is_open);
        // A fill closes its path by itself; capitals leave the line open (ISO 32000-1, table 60).
        self.text.put(match (fill, stroke) {
            (Some(_), Some(_)) if is_open => "B\n",
            (Some(_), Some(_)) => "b\n",
            (Some(_), None) => "f\n",
            _ if is_open => "S\n",
            _ => "s\n",
        });
    }

    /// Corners as path operators; two bent ones and a straight one make a curve.
    fn write_path(&mut self, outline: &[Corner]) {
        let mut corners = outline.iter();
        let mut operator = "m ";
        while let Some(corner) = corners.next() {
            self.point(corner.at);
            if corner.is_bent
                && let (Some(second), Some(end)) = (corners.next(), corners.next())
            {
                self.point(second.at);
                self.point(end.at).put("c ");
            } else {
                self.text.put(operator);
            }
            operator = "l ";
        }
    }

    fn write_picture(&mut self, path: &str, at: At, size: At) {
        if !self.stock.has_picture(path) {
            return;
        }
        self.end_text();
        self.used_pictures.insert(path.to_owned());
        let y = self.height - at.1 - size.1;
        self.text.put("q ").real(size.0).put(" 0 0 ").real(size.1).put(" ");
        self.text.real(at.0).put(" ").real(y).put(" cm/").put(&self.stock.picture_name(path));
        self.text.put(" Do Q\n");
    }
}

/// Whether an item is content of its group: words and pictures are, and all of a figure.
fn belongs(item: &Item, within: Option<(usize, &Role)>) -> bool {
    let is_words = matches!(item, Item::Glyphs(_) | Item::Picture { .. });
    within.is_some_and(|(_, role)| is_words || matches!(role, Role::Figure(_)))
}
