//! How much of a page is inked: laid-out pages → the share of the paper that is black.
//!
//! Every area is reckoned exactly – glyphs and shapes from their outlines by Green’s theorem, lines
//! from length and thickness – and counts by how much darker it is than what lies under it. What
//! lies under is looked up on a coarse grid of the fills painted so far: white words on a black tab
//! take ink away.

use std::collections::BTreeSet;

use skrifa::instance::{LocationRef, Size};
use skrifa::outline::{DrawSettings, OutlinePen};
use skrifa::{FontRef, MetadataProvider};

use super::faces::{Face, Faces};
use super::page::{At, Corner, GlyphRun, Item, Page, PlacedGlyph, Stroke};
use super::paper_pictures::PaperPictures;
use super::plate::Impression;
use super::stock::Stock;

/// The side of a cell of a page’s grid, in points.
const CELL: f32 = 2.0;

/// Measures pages; the areas of glyphs are kept from page to page.
pub struct InkMeter<'f> {
    faces: &'f Faces,
    /// Of each face, the area of each glyph in squares of the type’s size, once it is known.
    glyphs: Vec<Vec<Option<f32>>>,
    /// The cells of the last page, kept as room.
    cells: Vec<u8>,
}

impl<'f> InkMeter<'f> {
    pub fn new(faces: &'f Faces) -> Self {
        let glyphs = faces.loaded.iter().map(|face| vec![None; face.widths.len()]).collect();
        Self { faces, glyphs, cells: Vec::new() }
    }

    /// The share of a page that is inked, from 0 to 1; half a grey is half the ink.
    pub fn measure(&mut self, page: &Page, stock: &Stock, pictures: &PaperPictures) -> f32 {
        let room = std::mem::take(&mut self.cells);
        let mut ground = Ground::new((page.width, page.height), CELL, room);
        let mut ink = 0.0;
        let mut lines = BTreeSet::new();
        let mut items = Vec::new();
        flatten(&page.items, &mut items);
        for item in items {
            ink += match item {
                Item::Group { .. } => 0.0,
                Item::Glyphs(run) => self.glyph_ink(run, &ground),
                // The lower line of a table’s row is the upper line of the next: it is inked once.
                Item::Line { from, to, .. } if !lines.insert(tenths(*from, *to)) => 0.0,
                Item::Line { from, to, thickness, dash, grey } => {
                    let stroke =
                        Stroke { thickness: *thickness, grey: *grey, dash: *dash, is_open: false };
                    line_ink(*from, *to, stroke, &ground)
                }
                Item::Shape { outline, fill, stroke } => {
                    shape_ink((outline, PIECES), *fill, *stroke, &mut ground)
                }
                Item::Plate(set) => plate_ink(set, stock, &ground),
                Item::Picture { path, width, height, .. } => {
                    pictures.get(path).map_or(0.0, |picture| picture.darkness * width * height)
                }
            };
        }
        self.cells = ground.cells;
        ink / (page.width * page.height)
    }

    fn glyph_ink(&mut self, run: &GlyphRun, ground: &Ground) -> f32 {
        let darker = |glyph: &PlacedGlyph| {
            let middle = (run.at.0 + glyph.x + run.size * 0.25, run.at.1 - run.size * 0.25);
            1.0 - run.grey - ground.darkness(middle)
        };
        let (Some(first), Some(last)) = (run.glyphs.first(), run.glyphs.last()) else { return 0.0 };
        let ends = [darker(first), darker(last)];
        let is_even = ends[0].to_bits() == ends[1].to_bits();
        let areas = run.glyphs.iter().map(|glyph| {
            let darker = if is_even { ends[0] } else { darker(glyph) };
            self.glyph_area(run.face, glyph.id) * darker
        });
        areas.sum::<f32>() * run.size * run.size
    }

    fn glyph_area(&mut self, face: Face, glyph: u16) -> f32 {
        let faces = self.faces;
        let area = || area_of_glyph(faces.get(face).blob.as_ref(), glyph).unwrap_or(0.0);
        let known = self.glyphs.get_mut(face as usize);
        match known.and_then(|known| known.get_mut(usize::from(glyph))) {
            Some(known) => *known.get_or_insert_with(area),
            None => 0.0,
        }
    }
}

/// A plate’s own lights and shades were reckoned once: it stands on one ground.
fn plate_ink(set: &Impression, stock: &Stock, ground: &Ground) -> f32 {
    let middle = (set.at.0 + set.width() / 2.0, set.at.1 + set.height() / 2.0);
    stock.plate_ink(set.edge()) * set.scale * set.scale * (1.0 - ground.darkness(middle))
}

/// The ink of shapes on white paper, in squares of their unit; the finest they are looked at is a cell.
pub fn ink_of_shapes(items: &[Item], size: At, cell: f32) -> f32 {
    let mut ground = Ground::new(size, cell, Vec::new());
    let ink = items.iter().map(|item| match item {
        Item::Shape { outline, fill, stroke } => {
            shape_ink((outline, FEW_PIECES), *fill, *stroke, &mut ground)
        }
        _ => 0.0,
    });
    ink.sum()
}

/// Every item that is drawn, in the order of drawing.
fn flatten<'i>(items: &'i [Item], flat: &mut Vec<&'i Item>) {
    for item in items {
        match item {
            Item::Group { items, .. } => flatten(items, flat),
            drawn => flat.push(drawn),
        }
    }
}

/// How dark the fills painted so far have made each cell of a page.
struct Ground {
    /// The side of a cell.
    cell: f32,
    columns: usize,
    /// 255 is black.
    cells: Vec<u8>,
    /// Where rows of cells cross an outline, kept as room.
    crossings: Vec<(usize, f32)>,
}

impl Ground {
    fn new((width, height): At, cell: f32, mut cells: Vec<u8>) -> Self {
        cells.clear();
        let mut ground = Self { cell, columns: 0, cells, crossings: Vec::new() };
        ground.columns = ground.index(width) + 1;
        let count = ground.columns * (ground.index(height) + 1);
        ground.cells.resize(count, 0);
        ground
    }

    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "paper is small")]
    fn index(&self, at: f32) -> usize {
        (at / self.cell).max(0.0) as usize
    }

    fn darkness(&self, at: At) -> f32 {
        let place = self.index(at.1) * self.columns + self.index(at.0).min(self.columns - 1);
        self.cells.get(place).map_or(0.0, |cell| f32::from(*cell) / 255.0)
    }

    /// Paints the cells whose middle lies inside an outline with straight sides.
    fn paint(&mut self, corners: &[At], darkness: f32) {
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a share of 255"
        )]
        let painted = (darkness * 255.0).round() as u8;
        let mut crossed = std::mem::take(&mut self.crossings);
        self.cross_outline(corners, &mut crossed);
        for pair in crossed.chunks_exact(2) {
            let columns = pair.iter().map(|(_, at)| self.index(at + self.cell / 2.0));
            let mut places =
                columns.map(|column| pair[0].0 * self.columns + column.min(self.columns));
            let (Some(start), Some(end)) = (places.next(), places.next()) else { continue };
            if let Some(cells) = self.cells.get_mut(start..end) {
                cells.fill(painted);
            }
        }
        self.crossings = crossed;
    }

    /// Where the middles of the rows cross an outline: row by row, from the left. A side from one row’s middle to
    /// another’s crosses the first of them and not the last, so that each row is crossed an even number of times.
    fn cross_outline(&self, corners: &[At], crossed: &mut Vec<(usize, f32)>) {
        crossed.clear();
        let Some(mut a) = corners.last() else { return };
        for b in corners {
            let (low, high) = if a.1 < b.1 { (a.1, b.1) } else { (b.1, a.1) };
            let slope = (b.0 - a.0) / (b.1 - a.1);
            for row in self.first_row(low)..self.first_row(high) {
                #[allow(clippy::cast_precision_loss, reason = "paper has a few hundred rows")]
                let y = (row as f32 + 0.5) * self.cell;
                crossed.push((row, a.0 + slope * (y - a.1)));
            }
            a = b;
        }
        crossed.sort_unstable_by(|a, b| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)));
    }

    /// The first row whose middle lies at a height or below it.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "paper is small")]
    fn first_row(&self, y: f32) -> usize {
        let row = (y / self.cell - 0.5).max(0.0);
        let whole = row as usize;
        #[allow(clippy::cast_precision_loss, reason = "paper has a few hundred rows")]
        let is_whole = whole as f32 >= row;
        if is_whole { whole } else { whole + 1 }
    }
}

fn span(values: impl Iterator<Item = f32>) -> (f32, f32) {
    values.fold((f32::MAX, f32::MIN), |(low, high), value| (low.min(value), high.max(value)))
}

/// Where a line runs, in tenths of a point.
fn tenths(from: At, to: At) -> [i32; 4] {
    #[allow(clippy::cast_possible_truncation, reason = "paper is small")]
    let tenth = |points: f32| (points * 10.0).round() as i32;
    [from.0, from.1, to.0, to.1].map(tenth)
}

fn line_ink(from: At, to: At, stroke: Stroke, ground: &Ground) -> f32 {
    let drawn = stroke.dash.map_or(1.0, |(on, off)| on / (on + off));
    let middle = (f32::midpoint(from.0, to.0), f32::midpoint(from.1, to.1));
    let darker = 1.0 - stroke.grey - ground.darkness(middle);
    (to.0 - from.0).hypot(to.1 - from.1) * stroke.thickness * drawn * darker
}

fn shape_ink(
    (outline, pieces): (&[Corner], u8),
    fill: Option<f32>,
    stroke: Option<Stroke>,
    ground: &mut Ground,
) -> f32 {
    let corners = straightened(outline, pieces);
    let mut ink = 0.0;
    if let Some(grey) = fill {
        let (left, right) = span(corners.iter().map(|corner| corner.0));
        let (top, bottom) = span(corners.iter().map(|corner| corner.1));
        let middle = (f32::midpoint(left, right), f32::midpoint(top, bottom));
        ink += area_within(&corners) * (1.0 - grey - ground.darkness(middle));
        ground.paint(&corners, 1.0 - grey);
    }
    if let Some(stroke) = stroke {
        let drawn = corners.len().saturating_sub(usize::from(stroke.is_open));
        let sides = corners.iter().zip(corners.iter().cycle().skip(1)).take(drawn);
        ink += sides.map(|(a, b)| side_ink(*a, *b, stroke, fill, ground)).sum::<f32>();
    }
    ink
}

/// A side of an outline: half of its stroke lies on the shape’s own fill, half outside.
fn side_ink(from: At, to: At, stroke: Stroke, fill: Option<f32>, ground: &Ground) -> f32 {
    let beside = line_ink(from, to, stroke, ground);
    let Some(grey) = fill else { return beside };
    let length = (to.0 - from.0).hypot(to.1 - from.1);
    length * stroke.thickness * ((1.0 - stroke.grey) - (1.0 - grey) / 2.0)
}

/// Pieces that a bend is cut into.
const PIECES: u8 = 8;

/// The same in plates, whose outlines are of many short bends.
const FEW_PIECES: u8 = 3;

/// An outline with each bend as a few straight pieces.
fn straightened(outline: &[Corner], pieces: u8) -> Vec<At> {
    let mut points: Vec<At> = Vec::with_capacity(outline.len());
    let mut corners = outline.iter();
    while let Some(corner) = corners.next() {
        let start = points.last().copied();
        match (corner.is_bent, start) {
            (true, Some(start)) => {
                let (Some(second), Some(end)) = (corners.next(), corners.next()) else { break };
                let bend = [start, corner.at, second.at, end.at];
                let shares = (1..=pieces).map(|piece| f32::from(piece) / f32::from(pieces));
                points.extend(shares.map(|share| on_bend(bend, share)));
            }
            _ => points.push(corner.at),
        }
    }
    points
}

/// A point of a cubic curve, so much of the way along.
fn on_bend([start, near, far, end]: [At; 4], t: f32) -> At {
    let u = 1.0 - t;
    let shares = [u * u * u, 3.0 * u * u * t, 3.0 * u * t * t, t * t * t];
    let along = |of: fn(At) -> f32| {
        shares[0] * of(start) + shares[1] * of(near) + shares[2] * of(far) + shares[3] * of(end)
    };
    (along(|at| at.0), along(|at| at.1))
}

fn area_within(corners: &[At]) -> f32 {
    let sides = corners.iter().zip(corners.iter().cycle().skip(1));
    (sides.map(|(a, b)| cross(*a, *b)).sum::<f32>() / 2.0).abs()
}

fn cross(a: At, b: At) -> f32 {
    a.0 * b.1 - a.1 * b.0
}

/// The area inside a glyph’s outline, in squares of the type’s size.
fn area_of_glyph(font: &[u8], glyph: u16) -> Option<f32> {
    let font = FontRef::new(font).ok()?;
    let em = f32::from(font.metrics(Size::unscaled(), LocationRef::default()).units_per_em);
    let mut pen = AreaPen::default();
    let settings = DrawSettings::unhinted(Size::unscaled(), LocationRef::default());
    font.outline_glyphs().get(u32::from(glyph).into())?.draw(settings, &mut pen).ok()?;
    Some(pen.area.abs() / (em * em))
}

/// Adds up the area inside the contours of a glyph; holes run the other way round.
#[derive(Default)]
struct AreaPen {
    area: f32,
    start: At,
    at: At,
}

impl OutlinePen for AreaPen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.start = (x, y);
        self.at = (x, y);
    }

    fn line_to(&mut self, x: f32, y: f32) {
        self.area += cross(self.at, (x, y)) / 2.0;
        self.at = (x, y);
    }

    fn quad_to(&mut self, cx: f32, cy: f32, x: f32, y: f32) {
        let (start, bend, end) = (self.at, (cx, cy), (x, y));
        self.area += (2.0 * cross(start, bend) + 2.0 * cross(bend, end) + cross(start, end)) / 6.0;
        self.at = end;
    }

    fn curve_to(&mut self, ax: f32, ay: f32, bx: f32, by: f32, x: f32, y: f32) {
        let (start, a, b, end) = (self.at, (ax, ay), (bx, by), (x, y));
        let (near, far) = (cross(start, a) + cross(b, end), cross(start, b) + cross(a, end));
        self.area += (6.0 * near + 3.0 * far + 3.0 * cross(a, b) + cross(start, end)) / 20.0;
        self.at = end;
    }

    fn close(&mut self) {
        let (x, y) = self.start;
        self.line_to(x, y);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn areas_are_those_of_geometry() {
        let mut pen = AreaPen::default();
        // A circle of radius 1 by four cubic curves; the usual approximation is good to 3 in 10,000.
        let k = 0.5523;
        pen.move_to(1.0, 0.0);
        pen.curve_to(1.0, k, k, 1.0, 0.0, 1.0);
        pen.curve_to(-k, 1.0, -1.0, k, -1.0, 0.0);
        pen.curve_to(-1.0, -k, -k, -1.0, 0.0, -1.0);
        pen.curve_to(k, -1.0, 1.0, -k, 1.0, 0.0);
        pen.close();
        assert!((pen.area - std::f32::consts::PI).abs() < 0.002, "{}", pen.area);
        let mut pen = AreaPen::default();
        // Under a parabola: two thirds of the box round it (Archimedes).
        pen.move_to(0.0, 0.0);
        pen.quad_to(1.0, 2.0, 2.0, 0.0);
        pen.close();
        assert!((pen.area.abs() - 4.0 / 3.0).abs() < 1e-5, "{}", pen.area);
    }

    #[test]
    fn white_on_black_takes_ink_away() {
        let mut ground = Ground::new((100.0, 100.0), CELL, Vec::new());
        let square =
            |at: f32, side: f32| match Item::rectangle((at, at), (side, side), Some(0.0), None) {
                Item::Shape { outline, .. } => outline,
                _ => Vec::new(),
            };
        let black = shape_ink((&square(10.0, 50.0), PIECES), Some(0.0), None, &mut ground);
        let white = shape_ink((&square(20.0, 10.0), PIECES), Some(1.0), None, &mut ground);
        assert!((black - 2500.0).abs() < 0.1 && (white + 100.0).abs() < 0.1, "{black} {white}");
    }
}
