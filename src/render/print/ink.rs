//! How much of a page is inked: laid-out pages → the share of the paper that is black.
//!
//! Every area is reckoned exactly – glyphs and shapes from their outlines by Green’s theorem, lines
//! from length and thickness – and counts by how much darker it is than what lies under it. What
//! lies under is looked up on a coarse grid of the fills painted so far: white words on a black tab
//! take ink away.

use std::collections::BTreeSet;

use super::faces::{Face, Faces};
use super::glyph_area::area_of_glyph;
use super::ground::Ground;
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

/// The ink of shapes on white paper, in squares of their unit; the finest they are looked at is a cell. From the last
/// to the first, each is inked where no later one covers it.
pub fn ink_of_shapes(items: &[Item], size: At, cell: f32) -> f32 {
    let mut covered = Ground::new(size, cell, Vec::new());
    let ink = items.iter().rev().map(|item| match item {
        Item::Shape { outline, fill, stroke } => {
            let corners = straightened(outline, FEW_PIECES);
            let seen = stroke.map_or(0.0, |stroke| seen_stroke(&corners, stroke, *fill, &covered));
            seen + fill.map_or(0.0, |grey| covered.cover(&corners) * (1.0 - grey))
        }
        _ => 0.0,
    });
    ink.sum()
}

/// The ink of a stroke where nothing covers it; the inner half of it lies on the shape’s own fill.
fn seen_stroke(corners: &[At], stroke: Stroke, fill: Option<f32>, covered: &Ground) -> f32 {
    let own = fill.map_or(0.0, |grey| (1.0 - grey) / 2.0);
    let seen: f32 = sides_of(corners, stroke).map(|(a, b)| seen_length(a, b, covered)).sum();
    seen * stroke.thickness * (1.0 - stroke.grey - own)
}

/// A side is looked at in pieces of so many cells.
const PIECE: f32 = 4.0;

/// How much of a side is not covered.
fn seen_length(a: At, b: At, covered: &Ground) -> f32 {
    let (dx, dy) = (b.0 - a.0, b.1 - a.1);
    let length = (dx * dx + dy * dy).sqrt();
    let (mut seen, mut done, step) = (0.0, 0.0, PIECE * covered.cell);
    while done < length {
        let piece = step.min(length - done);
        let along = (done + piece / 2.0) / length;
        if covered.darkness((a.0 + dx * along, a.1 + dy * along)) == 0.0 {
            seen += piece;
        }
        done += step;
    }
    seen
}

/// The sides of an outline that are drawn.
fn sides_of(corners: &[At], stroke: Stroke) -> impl Iterator<Item = (At, At)> {
    let drawn = corners.len().saturating_sub(usize::from(stroke.is_open));
    let ends = corners.iter().cycle().skip(1);
    corners.iter().zip(ends).take(drawn).map(|(a, b)| (*a, *b))
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
        let sides = sides_of(&corners, stroke);
        ink += sides.map(|(a, b)| side_ink(a, b, stroke, fill, ground)).sum::<f32>();
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
const FEW_PIECES: u8 = 2;

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

/// Twice the area of the triangle with the origin, signed.
pub fn cross(a: At, b: At) -> f32 {
    a.0 * b.1 - a.1 * b.0
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Two black-edged white squares, one over a quarter of the other: of the lower one’s edge three quarters are seen.
    #[test]
    fn what_is_covered_is_not_inked() {
        let square = |at: f32| Item::rectangle((at, at), (20.0, 20.0), Some(1.0), Some(1.0));
        let items = [square(10.0), square(20.0)];
        let ink = ink_of_shapes(&items, (50.0, 50.0), 0.5);
        assert!((ink - (2.0 * 80.0 - 20.0)).abs() < 2.0, "{ink}");
        let grey = Item::rectangle((10.0, 10.0), (20.0, 20.0), Some(0.5), None);
        let ink = ink_of_shapes(&[grey, square(20.0)], (50.0, 50.0), 0.5);
        assert!((ink - (300.0 * 0.5 + 80.0)).abs() < 2.0, "{ink}");
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
