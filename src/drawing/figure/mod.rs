//! A figure: a body in a pose → marks. Limbs with volume, near ones white, far ones in the shade, a bib on
//! the chest: a style of our own that holds in one ink at 30 mm.
//!
//! Thicknesses of the body are our choice, in fractions of stature; lengths are those of
//! [`crate::figure::proportions`].

mod arrows;
mod camera;
mod head;
mod limbs;
mod outline;
mod strip;
mod things;
mod trunk;

pub use strip::{BELOW_FLOOR, Strip, draw_moment};
pub use things::Held;

use super::{At, Drawing, Look, Mark};
use crate::figure::{Body, Moment, Side, Support};
use camera::Camera;

/// A figure being drawn: marks in fractions of stature, down from the floor.
struct Sketch<'b> {
    body: &'b Body,
    camera: Camera,
    marks: Vec<Mark>,
}

impl Sketch<'_> {
    fn push(&mut self, around: Vec<At>, look: Look, is_open: bool) {
        if around.len() > 1 {
            self.marks.push(Mark::Smooth { around, look, is_open, scale: 1.0 });
        }
    }

    fn girth(&self) -> f32 {
        camera::small(self.body.proportions.girth())
    }
}

/// The marks of a moment, so many units a stature; the floor is y = 0.
fn sketch_moment(moment: &Moment, body: &Body, is_rtl: bool) -> Vec<Mark> {
    let camera = Camera::of(moment.pose.view, is_rtl);
    let mut sketch = Sketch { body, camera, marks: Vec::new() };
    things::draw_behind(&mut sketch, moment);
    let mut limbs = limbs::limbs_by_depth(&sketch);
    let front = limbs.split_off(limbs.iter().take_while(|limb| limb.is_behind).count());
    for limb in &limbs {
        limbs::draw_limb(&mut sketch, limb);
    }
    let is_face_down = sketch.camera.depth(body.face.up) < -0.3;
    if is_face_down {
        head::draw_head(&mut sketch);
    }
    trunk::draw_neck(&mut sketch);
    trunk::draw_trunk(&mut sketch);
    if !is_face_down {
        head::draw_head(&mut sketch);
    }
    for limb in &front {
        limbs::draw_limb(&mut sketch, limb);
    }
    things::draw_held(&mut sketch, moment);
    arrows::draw_arrows(&mut sketch, moment);
    sketch.marks
}

/// Whether the hands are as good as together, so that a ball is held in both.
fn hands_together(body: &Body) -> bool {
    let [left, right] = Side::BOTH.map(|side| body.arm(side).tip);
    left.distance(right) < 0.2
}

const fn is_seated(on: Support) -> bool {
    on.is_seated()
}
