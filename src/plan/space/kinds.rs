//! Footprints by kind: area, strip, jump, wall and throw.

use super::footprint::{Footprint, Point, Zone, ZoneKind, rectangle, whole};
use crate::pack::{Part, PartSpace};
use crate::place::Placed;
use crate::quantity::{Angle, Length};
use crate::read::words::SpaceKind;

/// Room for one to work standing, either way: common practice.
const USUAL_ROOM: Length = Length::from_millimetres(2000);
/// The width of a lane or a take-off: our own choice.
const USUAL_LANE: Length = Length::from_millimetres(1000);
/// To stand and swing the arms before a jump, or to step into a throw: our own choice.
const USUAL_RUN_UP: Length = Length::from_millimetres(1000);
/// To come to a stop, and beyond the furthest landing of a jump: our own choice.
const USUAL_STOP: Length = Length::from_millimetres(1000);
/// Beyond the furthest landing of a throw at least so much, and a quarter of the reach: our own choice.
const LEAST_THROW_MARGIN: Length = Length::from_millimetres(1000);
/// Beside the sector lines, an arm’s length at most: our own choice.
pub const SIDE_MARGIN: Length = Length::from_millimetres(500);
/// The sector of shot, discus and hammer: 2·asin(0.3) (World Athletics technical rules).
pub const USUAL_SECTOR: Angle = Angle::from_hundredths(3492);

/// Tangents of the arc that bounds a sector: an even number, so that one touches it straight ahead.
const ARC_TANGENTS: u32 = 12;

/// The footprint of a part; `None` where it says nothing of its space, or a jump or throw has no reach.
pub fn plan_footprint(part: &Part) -> Option<Footprint> {
    let space = part.space.as_ref()?;
    let mut footprint = match space.kind.value {
        SpaceKind::Area => area(space),
        SpaceKind::Strip => strip(space),
        SpaceKind::Wall => wall(space),
        SpaceKind::Jump => jump(space, reach_of(part, space)?),
        SpaceKind::Throw => throw(space, reach_of(part, space)?),
    };
    footprint.headroom = space.height.as_ref().map(|height| height.value);
    Some(footprint)
}

/// The reach that is written, else the distance that the flight is said to have.
fn reach_of(part: &Part, space: &PartSpace) -> Option<Length> {
    let flown = part.flight.as_ref().and_then(|flight| flight.distance.as_ref());
    space.reach.as_ref().or(flown).map(|reach| reach.value)
}

fn said(written: Option<&Placed<Length>>, usual: Length) -> f64 {
    f64::from(written.map_or(usual, |length| length.value).millimetres())
}

fn people(space: &PartSpace) -> f64 {
    f64::from(space.people.as_ref().map_or(1, |people| people.value).max(1))
}

/// Room for each side by side, and a margin round them all.
fn area(space: &PartSpace) -> Footprint {
    let (length, width) =
        (said(space.length.as_ref(), USUAL_ROOM), said(space.width.as_ref(), USUAL_ROOM));
    let margin = said(space.margin.as_ref(), Length::default());
    let count = people(space);
    let right = width * count;
    let mut zones = Vec::new();
    if margin > 0.0 {
        let outline = rectangle(-margin, right + margin, -margin, length + margin);
        zones.push(Zone { kind: ZoneKind::Clear, outline });
    }
    let mut left = 0.0;
    while left < right - 0.5 {
        let outline = rectangle(left, left + width, 0.0, length);
        zones.push(Zone { kind: ZoneKind::Moving, outline });
        left += width;
    }
    let stand = Point::new(width / 2.0, length / 2.0);
    Footprint::of_zones(zones, stand)
}

/// Run-up, the marked length and room to stop, as wide as its lanes.
fn strip(space: &PartSpace) -> Footprint {
    let length = said(space.length.as_ref(), USUAL_ROOM);
    let half = said(space.width.as_ref(), USUAL_LANE) * people(space) / 2.0;
    let run_up = said(space.run_up.as_ref(), Length::default());
    let stop = said(space.stopping.as_ref(), USUAL_STOP);
    along(
        &[(ZoneKind::RunUp, run_up), (ZoneKind::Moving, length), (ZoneKind::Stopping, stop)],
        half,
        run_up,
    )
}

/// Run-up, the furthest landing and room beyond it.
fn jump(space: &PartSpace, reach: Length) -> Footprint {
    let half = said(space.width.as_ref(), USUAL_LANE) * people(space) / 2.0;
    let run_up = said(space.run_up.as_ref(), USUAL_RUN_UP);
    let beyond = said(space.margin.as_ref(), USUAL_STOP);
    let reach = f64::from(reach.millimetres());
    along(
        &[(ZoneKind::RunUp, run_up), (ZoneKind::Landing, reach), (ZoneKind::Clear, beyond)],
        half,
        run_up,
    )
}

/// Zones one behind another, the line after the first of them.
fn along(lengths: &[(ZoneKind, f64)], half: f64, before_line: f64) -> Footprint {
    let mut near = -before_line;
    let mut zones = Vec::new();
    for (kind, length) in lengths.iter().filter(|(_, length)| *length > 0.0) {
        let outline = rectangle(-half, half, near, near + length);
        zones.push(Zone { kind: *kind, outline });
        near += length;
    }
    let stand = Point::new(0.0, -before_line / 2.0);
    Footprint {
        line: Some((Point::new(-half, 0.0), Point::new(half, 0.0))),
        goes_forward: true,
        chain: lengths.iter().filter(|(_, l)| *l > 0.0).map(|(_, l)| whole(*l)).collect(),
        ..Footprint::of_zones(zones, stand)
    }
}

/// Room along a wall and in front of it.
fn wall(space: &PartSpace) -> Footprint {
    let along = said(space.length.as_ref(), USUAL_ROOM);
    let before = said(space.width.as_ref(), USUAL_ROOM);
    let outline = rectangle(0.0, along, 0.0, before);
    let zones = vec![Zone { kind: ZoneKind::Moving, outline }];
    Footprint {
        wall: Some((Point::new(0.0, before), Point::new(along, before))),
        goes_forward: true,
        ..Footprint::of_zones(zones, Point::new(along / 2.0, before * 0.3))
    }
}

/// The place to stand behind the line, the sector to the furthest landing, and what is kept clear
/// round it: a margin beyond, and an arm’s length at most beside the sector lines.
fn throw(space: &PartSpace, reach: Length) -> Footprint {
    let half_angle = space.sector.as_ref().map_or(USUAL_SECTOR, |s| s.value).radians() / 2.0;
    let reach = f64::from(reach.millimetres());
    let usual = Length::from_millimetres(whole(reach / 4.0).millimetres()).max(LEAST_THROW_MARGIN);
    let margin = said(space.margin.as_ref(), usual);
    let behind = said(space.run_up.as_ref(), USUAL_RUN_UP);
    let half = said(space.width.as_ref(), USUAL_LANE) * people(space) / 2.0;
    let side = margin.min(f64::from(SIDE_MARGIN.millimetres()));
    let mut sector = vec![Point::new(0.0, 0.0)];
    sector.extend(arc(half_angle, reach, 0.0));
    // The lines of the margin run beside the sector lines and meet the throwing line outside it.
    let foot = (side / half_angle.cos()).max(1.0);
    let mut clear = vec![Point::new(-foot, 0.0), Point::new(foot, 0.0)];
    clear.extend(arc(half_angle, reach + margin, side));
    let zones = vec![
        Zone { kind: ZoneKind::Clear, outline: super::hull::convex_hull(clear) },
        Zone { kind: ZoneKind::Landing, outline: sector },
        Zone { kind: ZoneKind::RunUp, outline: rectangle(-half, half, -behind, 0.0) },
    ];
    Footprint {
        line: Some((Point::new(-half, 0.0), Point::new(half, 0.0))),
        goes_forward: true,
        chain: [behind, reach, margin].into_iter().map(whole).collect(),
        wait: Some(Point::new(0.0, -behind)),
        ..Footprint::of_zones(zones, Point::new(0.0, -behind / 2.0))
    }
}

/// The arc of a sector from right to left, its ends moved outwards by `side`: the ends lie on the circle,
/// the corners between them where its tangents meet, so that what is kept clear is never cut into.
fn arc(half_angle: f64, radius: f64, side: f64) -> impl Iterator<Item = Point> {
    let lean = (side / radius.max(1.0)).clamp(0.0, 1.0).asin();
    let ends = half_angle + lean;
    let step = 2.0 * ends / f64::from(ARC_TANGENTS);
    let outside = radius / (step / 2.0).cos();
    let at = |radius: f64, angle: f64| Point::new(radius * angle.sin(), radius * angle.cos());
    let between = (0..ARC_TANGENTS).map(move |n| at(outside, ends - step * (f64::from(n) + 0.5)));
    std::iter::once(at(radius, ends)).chain(between).chain([at(radius, -ends)])
}
