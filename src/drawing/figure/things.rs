//! What is held, and what stands on the floor or behind: plain shapes in the ink of the body.

use super::Sketch;
use super::camera::small;
use super::limbs::palm;
use super::outline::{between, gap, plus, round};
use super::{hands_together, is_seated};
use crate::drawing::{At, Look};
use crate::figure::{Holding, Moment, Scene, Side, Support};

/// What a held thing looks like.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Held {
    Ball,
    Bag,
    Cushion,
    /// A towel or rope between the hands.
    Rope,
    Weight,
    Tub,
    Stick,
    Sheet,
}

impl Held {
    /// The word in its label’s key.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Ball => "ball",
            Self::Bag => "bag",
            Self::Cushion => "cushion",
            Self::Rope => "rope",
            Self::Weight => "weight",
            Self::Tub => "tub",
            Self::Stick => "stick",
            Self::Sheet => "sheet",
        }
    }

    /// By the words of its name: the equipment list is the teacher’s own.
    pub fn of(name: &str) -> Self {
        let name = name.to_lowercase();
        let has = |words: &[&str]| words.iter().any(|word| name.contains(word));
        if has(&["weight", "bottle", "tin", "dumb"]) {
            Self::Weight
        } else if has(&["beanbag", "sock", "bag"]) {
            Self::Bag
        } else if has(&["towel", "rope", "scarf", "band", "cloth"]) {
            Self::Rope
        } else if has(&["cushion", "pillow"]) {
            Self::Cushion
        } else if has(&["tub", "bucket", "bowl", "box", "basket", "cup", "hoop"]) {
            Self::Tub
        } else if has(&["stick", "bat", "racket", "racquet", "tube", "spoon", "javelin"]) {
            Self::Stick
        } else if has(&["paper", "card", "plate", "book", "newspaper"]) {
            Self::Sheet
        } else {
            Self::Ball
        }
    }
}

pub(super) fn draw_held(sketch: &mut Sketch<'_>, moment: &Moment) {
    let Some(thing) = &moment.holds else { return };
    let held = Held::of(thing);
    let [left, right] = Side::BOTH.map(|side| palm(sketch, side));
    let usual = if hands_together(sketch.body) { Holding::Both } else { Holding::Right };
    let places = match moment.pose.hold.unwrap_or(usual) {
        Holding::Both if held == Held::Rope => {
            sketch.push(vec![left, between(left, right, 0.5), right], Look::Rope, true);
            return;
        }
        Holding::Both => vec![between(left, right, 0.5)],
        Holding::Left => vec![left],
        Holding::Right => vec![right],
        Holding::Each => vec![left, right],
    };
    for at in places {
        draw_at(sketch, held, at);
    }
}

fn draw_at(sketch: &mut Sketch<'_>, held: Held, at: At) {
    match held {
        Held::Ball => sketch.push(round(at, 0.05), Look::Thing, false),
        Held::Bag => sketch.push(boxed(at, 0.045, 0.034), Look::Thing, false),
        Held::Cushion => sketch.push(boxed(at, 0.1, 0.085), Look::Thing, false),
        Held::Rope => {
            let end = plus(at, (0.03, 0.2), 1.0);
            sketch.push(vec![at, plus(at, (-0.02, 0.1), 1.0), end], Look::Rope, true);
        }
        Held::Weight => {
            sketch.push(boxed(at, 0.055, 0.026), Look::Thing, false);
        }
        Held::Tub => {
            let corners = [(-0.07, -0.05), (0.07, -0.05), (0.05, 0.06), (-0.05, 0.06)];
            sketch.push(doubled(corners.map(|c| plus(at, c, 1.0))), Look::Thing, false);
        }
        Held::Stick => sketch.push(
            vec![plus(at, (-0.02, 0.05), 1.0), plus(at, (0.06, -0.22), 1.0)],
            Look::Rope,
            true,
        ),
        Held::Sheet => sketch.push(boxed(at, 0.075, 0.055), Look::Thing, false),
    }
}

fn boxed(at: At, wide: f32, tall: f32) -> Vec<At> {
    let corners = [(-wide, -tall), (wide, -tall), (wide, tall), (-wide, tall)];
    let mut around = Vec::new();
    for (index, corner) in corners.iter().enumerate() {
        let next = corners[(index + 1) % 4];
        around.extend([plus(at, *corner, 1.0), plus(at, between(*corner, next, 0.5), 1.0)]);
    }
    around
}

/// Corners that a smooth outline keeps sharp.
fn doubled<const N: usize>(corners: [At; N]) -> Vec<At> {
    corners.into_iter().flat_map(|corner| [corner, corner, corner]).collect()
}

pub(super) fn draw_behind(sketch: &mut Sketch<'_>, moment: &Moment) {
    match moment.pose.on {
        Support::Chair => draw_chair(sketch),
        Support::Wheelchair => draw_wheelchair(sketch),
        _ => {}
    }
    let ahead = if sketch.camera.ahead() < -0.2 { -1.0 } else { 1.0 };
    for scene in &moment.pose.with {
        draw_scene(sketch, *scene, ahead, moment.pose.on);
    }
}

fn draw_scene(sketch: &mut Sketch<'_>, scene: Scene, ahead: f32, on: Support) {
    let reach = front_of(sketch, ahead);
    match scene {
        Scene::Line => {
            let x = reach + ahead * 0.03;
            sketch.push(doubled([(x - 0.035, 0.0), (x + 0.035, 0.0)]), Look::Rope, true);
        }
        Scene::Marker => {
            let at = (reach + ahead * 0.16, 0.0);
            let corners = [(-0.06, 0.0), (-0.018, -0.09), (0.018, -0.09), (0.06, 0.0)];
            sketch.push(doubled(corners.map(|c| plus(at, c, 1.0))), Look::Thing, false);
        }
        Scene::Ball => {
            sketch.push(round((reach + ahead * 0.11, -0.055), 0.055), Look::Thing, false);
        }
        Scene::Skittles => {
            for step in [0.2, 0.3, 0.4] {
                let at = (reach + ahead * step, 0.0);
                let corners = [(-0.028, 0.0), (-0.028, -0.13), (0.028, -0.13), (0.028, 0.0)];
                sketch.push(corners.map(|c| plus(at, c, 1.0)).to_vec(), Look::Thing, false);
            }
        }
        Scene::Mat => {
            let (low, high) = span(sketch);
            sketch.push(
                doubled([
                    (low - 0.06, 0.0),
                    (high + 0.06, 0.0),
                    (high + 0.06, 0.028),
                    (low - 0.06, 0.028),
                ]),
                Look::Far,
                false,
            );
        }
        Scene::Cushion => {
            let at = (f32::midpoint(span(sketch).0, span(sketch).1), -0.02);
            sketch.push(boxed(at, 0.13, 0.04), Look::Thing, false);
        }
        Scene::Wall => {
            let x = reach + ahead * 0.012;
            sketch.push(doubled([(x, 0.0), (x, -1.12)]), Look::Rope, true);
        }
        Scene::ChairBeside if !is_seated(on) => {
            let seat = -0.27;
            let x = reach - ahead * 0.02;
            let far = x + ahead * 0.26;
            for leg in [x + ahead * 0.02, far] {
                sketch.push(doubled([(leg, seat), (leg, 0.0)]), Look::Post, true);
            }
            sketch.push(doubled([(x, seat), (far, seat), (far, seat - 0.3)]), Look::Post, true);
        }
        Scene::ChairBeside => {}
    }
}

/// Every point of the hands and feet, from left to right.
fn span(sketch: &Sketch<'_>) -> (f32, f32) {
    let body = sketch.body;
    let limbs = body.arms.iter().chain(&body.legs);
    let points =
        limbs.flat_map(|limb| [limb.bend, limb.end, limb.tip]).chain([body.head, body.hips]);
    let xs = points.map(|at| sketch.camera.see(at).0);
    xs.fold((f32::MAX, f32::MIN), |(low, high), x| (low.min(x), high.max(x)))
}

/// How far the body reaches forwards.
fn front_of(sketch: &Sketch<'_>, ahead: f32) -> f32 {
    let (low, high) = span(sketch);
    if ahead > 0.0 { high } else { low }
}

/// A chair that suits: its seat under the body, its back behind.
fn draw_chair(sketch: &mut Sketch<'_>) {
    let hips = sketch.camera.see(sketch.body.hips);
    let seat = hips.1 + 0.068 * sketch.girth();
    let camera = sketch.camera;
    let ahead = camera.ahead();
    if ahead.abs() < 0.5 {
        for side in [-0.13, 0.13] {
            sketch.push(
                doubled([(hips.0 + side, seat - 0.34), (hips.0 + side, 0.0)]),
                Look::Post,
                true,
            );
        }
        let top = [(hips.0 - 0.13, seat - 0.33), (hips.0 + 0.13, seat - 0.33)];
        sketch.push(doubled(top), Look::Post, true);
        return;
    }
    let ahead = ahead.signum();
    let (back, front) = (hips.0 - ahead * 0.11, hips.0 + ahead * 0.19);
    sketch.push(
        doubled([(front - ahead * 0.02, seat), (front - ahead * 0.02, 0.0)]),
        Look::Post,
        true,
    );
    sketch.push(
        doubled([(back, 0.0), (back, seat), (back - ahead * 0.03, seat - 0.36)]),
        Look::Post,
        true,
    );
    sketch.push(doubled([(back, seat), (front, seat)]), Look::Post, true);
}

fn draw_wheelchair(sketch: &mut Sketch<'_>) {
    let hips = sketch.camera.see(sketch.body.hips);
    let seat = hips.1 + 0.068 * sketch.girth();
    let ahead = if sketch.camera.ahead() < -0.2 { -1.0 } else { 1.0 };
    let lowest = 0.0;
    let big = 0.17;
    let hub = (hips.0 - ahead * 0.02, lowest - big);
    let (back, front) = (hips.0 - ahead * 0.11, hips.0 + ahead * 0.2);
    sketch.push(
        doubled([
            (back - ahead * 0.1, seat - 0.26),
            (back, seat - 0.26),
            (back, seat),
            (front, seat),
        ]),
        Look::Post,
        true,
    );
    let toe = sketch.camera.see(sketch.body.leg(Side::Right).tip);
    let plate = (toe.0, toe.1 + 0.012);
    sketch.push(
        doubled([(front, seat), plate, (plate.0 - ahead * 0.11, plate.1)]),
        Look::Post,
        true,
    );
    sketch.push(round((front + ahead * 0.0, lowest - 0.045), 0.045), Look::Post, false);
    sketch.push(round(hub, big), Look::Post, false);
    let _ = (gap(hub, plate), small(0.0));
}
