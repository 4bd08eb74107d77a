//! Arrows for the way something moves.

use super::Sketch;
use super::limbs::palm;
use super::outline::{between, plus};
use crate::drawing::{At, Look};
use crate::figure::{Arrow, Moment, Part, Side, Way};

const LONG: f32 = 0.2;

pub(super) fn draw_arrows(sketch: &mut Sketch<'_>, moment: &Moment) {
    for arrow in &moment.arrows {
        draw_arrow(sketch, *arrow, moment.pose.lead());
    }
}

fn draw_arrow(sketch: &mut Sketch<'_>, arrow: Arrow, lead: Side) {
    let way = way_of(sketch, arrow.way);
    let from = plus(start_of(sketch, arrow, lead), way, 0.075);
    let to = plus(from, way, LONG);
    // Bowed a little, as a hand draws it.
    let aside = (way.1 * 0.025, -way.0 * 0.025);
    let bow = plus(between(from, to, 0.5), aside, 1.0);
    let neck = plus(to, way, -0.035);
    sketch.push(vec![from, bow, neck], Look::Arrow, true);
    let side = (-way.1, way.0);
    let back = plus(to, way, -0.06);
    let head = vec![plus(back, side, 0.034), to, to, plus(back, side, -0.034)];
    sketch.push(head, Look::Arrow, true);
}

fn way_of(sketch: &Sketch<'_>, way: Way) -> At {
    let ahead = if sketch.camera.ahead() < -0.2 { -1.0 } else { 1.0 };
    let slant = std::f32::consts::FRAC_1_SQRT_2;
    match way {
        Way::Forward => (ahead, 0.0),
        Way::Back => (-ahead, 0.0),
        Way::Up => (0.0, -1.0),
        Way::Down => (0.0, 1.0),
        Way::ForwardUp => (ahead * slant, -slant),
        Way::ForwardDown => (ahead * slant, slant),
        Way::BackUp => (-ahead * slant, -slant),
        Way::Left => (-1.0, 0.0),
        Way::Right => (1.0, 0.0),
    }
}

fn start_of(sketch: &Sketch<'_>, arrow: Arrow, lead: Side) -> At {
    let body = sketch.body;
    let see = |at| sketch.camera.see(at);
    let middle = |points: [At; 2]| between(points[0], points[1], 0.5);
    match arrow.of {
        Part::Body => {
            let out = if matches!(arrow.way, Way::Down) { 0.12 } else { 0.0 };
            let way = way_of(sketch, arrow.way);
            let trunk = see(body.waist);
            plus(trunk, way, if way.1.abs() > 0.9 && out == 0.0 { 0.42 } else { 0.12 })
        }
        Part::Hands => middle(Side::BOTH.map(|side| palm(sketch, side))),
        Part::Hand | Part::Thing => palm(sketch, lead),
        Part::Feet => middle(Side::BOTH.map(|side| see(body.leg(side).end))),
        Part::Foot => see(body.leg(lead).tip),
        Part::Knees => middle(Side::BOTH.map(|side| see(body.leg(side).bend))),
        Part::Knee => see(body.leg(lead).bend),
        Part::Head => see(body.head),
    }
}
