//! The floor plan of a part, to scale: its zones on the floor that the session asks for, with
//! dimensions, the places to stand and to wait, the direction, what is kept clear, and a scale bar.

use super::pen::{arrow, circle, dimension};
use super::{Anchor, At, Drawing, Mark, Pen, Room, Tone};
use crate::plan::{Floor, Footprint, PartFloor, Placement, Point, ZoneKind};
use crate::quantity::Length;
use crate::render::quantities::Said;
use crate::words::{Filling, Words};

/// Draws the plan. The floor is drawn where the footprint has a place on it.
pub fn draw_floor_plan(
    part: &PartFloor,
    floor: Option<&Floor>,
    words: &Words,
    room: Room,
) -> Drawing {
    let sheet = Sheet::new(part, floor, words, room);
    let mut marks = sheet.floor_marks();
    marks.extend(sheet.zone_marks());
    marks.extend(sheet.people_marks());
    marks.extend(sheet.dimension_marks());
    let (scale_bar, mut y) = sheet.scale_bar();
    marks.extend(scale_bar);
    let entries = legend(&part.footprint, sheet.has_floor);
    let rows = rows_of(&entries, words, room);
    for row in rows {
        for (entry, left) in row.into_iter().zip([0.0, room.width / 2.0]) {
            let explained = legend_entry(entry, words, y, room.words);
            marks.extend(explained.into_iter().map(|mark| mark.moved(left, 0.0)));
        }
        y += room.words * 1.4;
    }
    Drawing { width: room.width, height: y + 2.0, marks, says: says(&part.footprint, words) }
}

fn says(footprint: &Footprint, words: &Words) -> String {
    let (width, length) = footprint.size();
    let (width, length) = (width.say(words), length.say(words));
    words.say_with(
        "plan-says",
        &[("length", Filling::Text(&length)), ("width", Filling::Text(&width))],
    )
}

/// Where the plan lies on the drawing.
struct Sheet<'p> {
    footprint: &'p Footprint,
    placement: Placement,
    has_floor: bool,
    /// Length and width of what is drawn, in millimetres.
    field: (f64, f64),
    floor: Option<&'p Floor>,
    scale: f64,
    origin: At,
    room: Room,
    words: &'p Words,
}

/// Room beside the plan for dimensions and their figures, in sizes of the words.
const LEFT: f32 = 3.2;
const RIGHT: f32 = 4.2;

impl<'p> Sheet<'p> {
    fn new(part: &'p PartFloor, floor: Option<&'p Floor>, words: &'p Words, room: Room) -> Self {
        let placed = floor.zip(part.placement);
        let (placement, field) = match placed {
            Some((floor, placement)) => {
                (placement, (millimetres(floor.length), millimetres(floor.width)))
            }
            None => lying_down(&part.footprint),
        };
        let is_chain_level = (placement.turned.sin()).abs() > 0.5;
        let left = room.words * if is_chain_level { 0.6 } else { LEFT };
        let right = room.words * RIGHT;
        let (wide, tall) = (f64::from(room.width - left - right), f64::from(room.tallest));
        let scale = (wide / field.0).min(tall / field.1);
        Self {
            footprint: &part.footprint,
            placement,
            has_floor: placed.is_some(),
            field,
            floor,
            scale,
            origin: (left, room.words * 1.7),
            room,
            words,
        }
    }

    /// A point of the floor on the drawing, where down is down.
    #[allow(clippy::cast_possible_truncation, reason = "points on a page")]
    fn at(&self, floor: Point) -> At {
        let (x, y) = (floor.x * self.scale, (self.field.1 - floor.y) * self.scale);
        (self.origin.0 + x as f32, self.origin.1 + y as f32)
    }

    fn of_part(&self, point: Point) -> At {
        self.at(self.placement.place(point))
    }

    fn bottom(&self) -> f32 {
        self.at(Point::new(0.0, 0.0)).1
    }

    /// The floor’s edge, dashed; of an L without its missing corner.
    fn floor_marks(&self) -> Vec<Mark> {
        let Some(floor) = self.floor.filter(|_| self.has_floor) else { return Vec::new() };
        let (length, width) = self.field;
        let p = Point::new;
        let corners = match floor.notch {
            None => vec![p(0.0, 0.0), p(length, 0.0), p(length, width), p(0.0, width)],
            Some((cut_length, cut_width)) => {
                let (x, y) = (length - millimetres(cut_length), width - millimetres(cut_width));
                let near = [p(0.0, 0.0), p(length, 0.0), p(length, y)];
                near.into_iter().chain([p(x, y), p(x, width), p(0.0, width)]).collect()
            }
        };
        let corners: Vec<At> = corners.into_iter().map(|corner| self.at(corner)).collect();
        vec![Mark::polygon(&corners, None, Some(Pen::ink(1.0).dashed(5.0, 3.0)))]
    }

    fn zone_marks(&self) -> Vec<Mark> {
        let mut marks = Vec::new();
        for zone in &self.footprint.zones {
            let corners: Vec<At> = zone.outline.iter().map(|point| self.of_part(*point)).collect();
            marks.extend(zone_mark(zone.kind, &corners));
        }
        let thick = [(&self.footprint.line, 3.0), (&self.footprint.wall, 6.0)];
        for (ends, thickness) in thick {
            let Some((from, to)) = ends else { continue };
            marks.push(Mark::line(self.of_part(*from), self.of_part(*to), Pen::ink(thickness)));
        }
        marks
    }

    fn people_marks(&self) -> Vec<Mark> {
        let size = self.room.words * 0.36;
        let stand = self.of_part(self.footprint.stand);
        let mut marks = vec![circle(stand, size, Some(Tone::Ink), None)];
        if self.footprint.goes_forward {
            let ahead = Point::new(self.footprint.stand.x, self.footprint.stand.y + 1.0);
            let there = self.of_part(ahead);
            let way = (there.0 - stand.0, there.1 - stand.1);
            let length = way.0.hypot(way.1).max(1e-6);
            let step = |by: f32| (stand.0 + way.0 / length * by, stand.1 + way.1 / length * by);
            marks.extend(arrow(step(size + 2.0), step(size + 2.0 + self.room.words * 1.7), 1.6));
        }
        if let Some(wait) = self.footprint.wait {
            let ring = circle(self.of_part(wait), size, Some(Tone::Ground), Some(Pen::ink(1.4)));
            marks.push(ring);
        }
        marks
    }

    /// Both sides of the floor, or of the footprint where no floor is drawn, and the chain of lengths
    /// along the way it goes, where that lies straight.
    fn dimension_marks(&self) -> Vec<Mark> {
        let size = self.room.words;
        let (length, width) = self.field;
        let [corner, right, far] =
            [(0.0, 0.0), (length, 0.0), (length, width)].map(|(x, y)| self.at(Point::new(x, y)));
        let below = size * 0.6;
        let mut marks = dimension(
            (corner.0, corner.1 + below),
            (right.0, right.1 + below),
            &in_metres(length, self.words),
            size,
        );
        let beside = size * 0.6;
        let (low, high) = ((right.0 + beside, right.1), (far.0 + beside, far.1));
        marks.extend(dimension(high, low, &in_metres(width, self.words), size));
        if !self.placement.is_askew() {
            marks.extend(self.chain_marks());
        }
        marks
    }

    /// The lengths of the zones one behind another, over or beside the plan.
    fn chain_marks(&self) -> Vec<Mark> {
        let size = self.room.words;
        let chain = &self.footprint.chain;
        let Some((near, _)) = self.footprint.line.filter(|_| chain.len() > 1) else {
            return Vec::new();
        };
        let before: f64 = self.before_line();
        let mut along = -before;
        let mut marks = Vec::new();
        for length in chain {
            let [from, to] =
                [along, along + millimetres(*length)].map(|y| self.of_part(Point::new(near.x, y)));
            let is_level = (from.1 - to.1).abs() < (from.0 - to.0).abs();
            let (from, to) = if is_level {
                ((from.0, self.origin.1 - 4.0), (to.0, self.origin.1 - 4.0))
            } else {
                ((self.origin.0 - 5.0, from.1), (self.origin.0 - 5.0, to.1))
            };
            marks.extend(chain_piece(from, to, is_level, &length.say(self.words), size));
            along += millimetres(*length);
        }
        marks
    }

    /// The room before the line: the first of the chain, where there is any.
    fn before_line(&self) -> f64 {
        let has_run_up = self.footprint.zones.iter().any(|zone| zone.kind == ZoneKind::RunUp);
        self.footprint
            .chain
            .first()
            .filter(|_| has_run_up)
            .map_or(0.0, |length| millimetres(*length))
    }

    /// A bar of one metre, or half of one, or five; and where the next thing below it begins.
    fn scale_bar(&self) -> (Vec<Mark>, f32) {
        let size = self.room.words;
        let longest = self.field.0.max(self.field.1);
        let bar = if longest < 1500.0 {
            500
        } else if longest < 15_000.0 {
            1000
        } else {
            5000
        };
        #[allow(clippy::cast_possible_truncation, reason = "points on a page")]
        let wide = (f64::from(bar) * self.scale) as f32;
        let y = self.bottom() + size * 2.6;
        let (left, label) = (self.origin.0, Length::from_millimetres(bar).say(self.words));
        let half = wide / 2.0;
        let marks = vec![
            Mark::rectangle((left, y), (half, 4.0), Some(Tone::Ink), Some(Pen::ink(0.8))),
            Mark::rectangle((left + half, y), (half, 4.0), Some(Tone::Ground), Some(Pen::ink(0.8))),
            Mark::words((left + wide + 5.0, y + 4.0 + size * 0.2), label, size, Anchor::Start),
        ];
        (marks, y + size * 1.1)
    }
}

/// A length of the chain: a line with strokes at its ends; the figure stands over it or left of it.
fn chain_piece(from: At, to: At, is_level: bool, figure: &str, size: f32) -> Vec<Mark> {
    let middle = (f32::midpoint(from.0, to.0), f32::midpoint(from.1, to.1));
    let stroke = |(x, y): At| {
        let (a, b) =
            if is_level { ((x, y - 3.0), (x, y + 3.0)) } else { ((x - 3.0, y), (x + 3.0, y)) };
        Mark::line(a, b, Pen::ink(0.8))
    };
    let words = if is_level {
        Mark::words((middle.0, middle.1 - 4.5), figure, size, Anchor::Middle)
    } else {
        Mark::words((middle.0 - 5.0, middle.1 + size * 0.36), figure, size, Anchor::End)
    };
    vec![Mark::line(from, to, Pen::ink(0.8)), stroke(from), stroke(to), words]
}

/// Without a floor the longer way lies level: a plan is then wide rather than tall.
fn lying_down(footprint: &Footprint) -> (Placement, (f64, f64)) {
    let turned = -std::f64::consts::FRAC_PI_2;
    let points: Vec<Point> = footprint.outline.iter().map(|point| point.turned(turned)).collect();
    let low = points.iter().fold((f64::MAX, f64::MAX), |low, p| (low.0.min(p.x), low.1.min(p.y)));
    let (width, length) = footprint.size();
    let moved = Point::new(-low.0, -low.1);
    (Placement { turned, moved }, (millimetres(length), millimetres(width)))
}

fn zone_mark(kind: ZoneKind, corners: &[At]) -> Vec<Mark> {
    let solid = |fill, pen| vec![Mark::polygon(corners, fill, Some(pen))];
    match kind {
        ZoneKind::Moving => solid(Some(Tone::Ground), Pen::ink(1.4)),
        ZoneKind::RunUp => solid(Some(Tone::Ground), Pen::ink(0.9).dashed(3.0, 2.0)),
        ZoneKind::Landing => solid(Some(Tone::Measured), Pen::ink(1.4)),
        ZoneKind::Stopping => solid(Some(Tone::Pale), Pen::ink(0.9)),
        ZoneKind::Clear => {
            vec![
                Mark::polygon(corners, Some(Tone::Ground), None),
                Mark::Hatched { outline: corners.to_vec(), apart: 7.0, pen: Pen::soft(0.8) },
                Mark::polygon(corners, None, Some(Pen::ink(0.9))),
            ]
        }
    }
}

/// What a plan can show, in the order it is explained.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Entry {
    Stand,
    Wait,
    Line,
    Wall,
    Zone(ZoneKind),
    Floor,
}

fn legend(footprint: &Footprint, has_floor: bool) -> Vec<Entry> {
    let mut entries = vec![Entry::Stand];
    entries.extend(footprint.wait.map(|_| Entry::Wait));
    entries.extend(footprint.line.map(|_| Entry::Line));
    entries.extend(footprint.wall.map(|_| Entry::Wall));
    let kinds =
        [ZoneKind::Moving, ZoneKind::RunUp, ZoneKind::Landing, ZoneKind::Stopping, ZoneKind::Clear];
    let shown = |kind: &ZoneKind| footprint.zones.iter().any(|zone| zone.kind == *kind);
    entries.extend(kinds.into_iter().filter(shown).map(Entry::Zone));
    entries.extend(has_floor.then_some(Entry::Floor));
    entries
}

/// Entries in pairs, where both of a pair are short enough; a letter is guessed at half an em.
fn rows_of(entries: &[Entry], words: &Words, room: Room) -> Vec<Vec<Entry>> {
    #[allow(clippy::cast_precision_loss, reason = "a label has a few letters")]
    let is_short = |entry: Entry| {
        let letters = words.say(entry.key()).chars().count() as f32;
        SWATCH + letters * room.words * 0.54 < room.width / 2.0
    };
    let mut sorted = entries.to_vec();
    sorted.sort_by_key(|entry| !is_short(*entry));
    let mut rows: Vec<Vec<Entry>> = Vec::new();
    for entry in sorted {
        match rows.last_mut() {
            Some(row) if row.len() == 1 && is_short(entry) => row.push(entry),
            _ => rows.push(vec![entry]),
        }
    }
    rows
}

/// From the left of a swatch to its words.
const SWATCH: f32 = 29.0;

impl Entry {
    const fn key(self) -> &'static str {
        match self {
            Self::Stand => "plan-stand",
            Self::Wait => "plan-wait",
            Self::Line => "plan-line",
            Self::Wall => "plan-wall",
            Self::Floor => "plan-floor",
            Self::Zone(ZoneKind::Moving) => "plan-moving",
            Self::Zone(ZoneKind::RunUp) => "plan-run-up",
            Self::Zone(ZoneKind::Landing) => "plan-landing",
            Self::Zone(ZoneKind::Stopping) => "plan-stopping",
            Self::Zone(ZoneKind::Clear) => "plan-clear",
        }
    }
}

/// A swatch and its words; `y` is the top of the line.
fn legend_entry(entry: Entry, words: &Words, y: f32, size: f32) -> Vec<Mark> {
    let swatch = [(0.0, y + size * 0.15), (22.0, y + size * 1.15)];
    let [(left, top), (right, bottom)] = swatch;
    let corners = [(left, top), (right, top), (right, bottom), (left, bottom)];
    let middle = (11.0, f32::midpoint(top, bottom));
    let level = |thickness| Mark::line((left, middle.1), (right, middle.1), Pen::ink(thickness));
    let mut marks = match entry {
        Entry::Stand => vec![circle(middle, size * 0.36, Some(Tone::Ink), None)],
        Entry::Wait => {
            vec![circle(middle, size * 0.36, Some(Tone::Ground), Some(Pen::ink(1.4)))]
        }
        Entry::Line => vec![level(3.0)],
        Entry::Wall => vec![level(6.0)],
        Entry::Zone(kind) => zone_mark(kind, &corners),
        Entry::Floor => {
            vec![Mark::polygon(&corners, None, Some(Pen::ink(1.0).dashed(5.0, 3.0)))]
        }
    };
    marks.push(Mark::words((SWATCH, y + size), words.say(entry.key()), size, Anchor::Start));
    marks
}

fn millimetres(length: Length) -> f64 {
    f64::from(length.millimetres())
}

#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a floor is no longer than a length can be"
)]
fn in_metres(millimetres: f64, words: &Words) -> String {
    Length::from_millimetres(millimetres.round() as u32).say(words)
}
