//! Setting a space out with nothing but a tape: right angles by 3-4-5, rectangles by equal diagonals,
//! sector lines by their chord.

use super::footprint::{Footprint, whole};
use super::kinds::USUAL_SECTOR;
use crate::pack::PartSpace;
use crate::quantity::{Angle, Length};
use crate::read::words::SpaceKind;

/// One step of setting out, with what to measure.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TapeStep {
    /// Lay a line so long.
    Line { length: Length },
    /// From one end of the line, so far along it and so far away from it; the two ends are the third apart.
    RightAngle { along: Length, away: Length, across: Length },
    /// A rectangle is square when both diagonals are so long.
    Diagonals { length: Length, width: Length, diagonal: Length },
    /// From the middle of the line, each sector line is so long; their ends are so far apart.
    SectorLines { along: Length, apart: Length },
    /// From the line straight on, so far to the furthest landing and so much more kept clear.
    Reach { reach: Length, margin: Length },
    /// Round the space so much more is kept clear.
    Around { margin: Length },
    /// Those who wait stand so far behind the line.
    Wait { behind: Length },
}

/// The steps for a part’s space, in the order they are done.
pub fn plan_setting_out(space: &PartSpace, footprint: &Footprint) -> Vec<TapeStep> {
    match space.kind.value {
        SpaceKind::Area => area(space, footprint),
        SpaceKind::Wall => corners(footprint.size()).into_iter().collect(),
        SpaceKind::Strip | SpaceKind::Jump => {
            let line = line_of(footprint);
            let forward: u32 = footprint.chain.iter().skip(1).map(|l| l.millimetres()).sum();
            let right_angle = line.map(|line| right_angle(line, Length::from_millimetres(forward)));
            line.map(|length| TapeStep::Line { length }).into_iter().chain(right_angle).collect()
        }
        SpaceKind::Throw => throw(space, footprint),
    }
}

fn line_of(footprint: &Footprint) -> Option<Length> {
    footprint.line.map(|(from, to)| whole((to.x - from.x).hypot(to.y - from.y)))
}

/// The space itself, then what is kept clear round it.
fn area(space: &PartSpace, footprint: &Footprint) -> Vec<TapeStep> {
    let margin = space.margin.as_ref().map_or(Length::default(), |margin| margin.value);
    let inside = |side: Length| {
        Length::from_millimetres(side.millimetres().saturating_sub(2 * margin.millimetres()))
    };
    let (width, length) = footprint.size();
    let around = (margin > Length::default()).then_some(TapeStep::Around { margin });
    corners((inside(width), inside(length))).into_iter().chain(around).collect()
}

fn corners((width, length): (Length, Length)) -> Option<TapeStep> {
    let diagonal = f64::from(width.millimetres()).hypot(f64::from(length.millimetres()));
    let diagonal = to_centimetre(diagonal);
    (width > Length::default()).then_some(TapeStep::Diagonals { length, width, diagonal })
}

fn throw(space: &PartSpace, footprint: &Footprint) -> Vec<TapeStep> {
    let [behind, reach, margin] = footprint.chain[..] else { return Vec::new() };
    let sector = space.sector.as_ref().map_or(USUAL_SECTOR, |sector| sector.value);
    let line = line_of(footprint).map(|length| TapeStep::Line { length });
    let rest = [
        TapeStep::SectorLines { along: reach, apart: chord(reach, sector) },
        TapeStep::Reach { reach, margin },
        TapeStep::Wait { behind },
    ];
    line.into_iter().chain(rest).collect()
}

/// How far apart two lines from one point are at `along` on each: 2 · along · sin(sector ÷ 2), to the
/// nearest centimetre. At 34.92° it is 0.6 of the length and at 28.96° half of it (World Athletics
/// technical rules, which define the sectors so).
pub fn chord(along: Length, sector: Angle) -> Length {
    to_centimetre(2.0 * f64::from(along.millimetres()) * (sector.radians() / 2.0).sin())
}

/// A tape at home is read to the centimetre.
fn to_centimetre(millimetres: f64) -> Length {
    Length::from_millimetres(whole((millimetres / 10.0).round() * 10.0).millimetres())
}

/// 3, 4 and 5 times a unit: the largest whole one that lies within the line and the way forward, of
/// those that are easy to measure.
fn right_angle(line: Length, forward: Length) -> TapeStep {
    let fits = |unit: u32| 3 * unit <= line.millimetres() && 4 * unit <= forward.millimetres();
    let unit = [1000, 500, 400, 300, 250, 200].into_iter().find(|unit| fits(*unit)).unwrap_or(100);
    let times = |count: u32| Length::from_millimetres(count * unit);
    TapeStep::RightAngle { along: times(3), away: times(4), across: times(5) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Quantity;

    #[test]
    fn sectors_of_the_rule_book() {
        // World Athletics technical rules: 12 m apart at 20 m along the lines; half the distance for javelin.
        let metres = Length::from_millimetres(20_000);
        assert_eq!(chord(metres, USUAL_SECTOR).to_string(), "12 m");
        let javelin = Angle::read_quantity("28.96").unwrap();
        assert_eq!(chord(metres, javelin).to_string(), "10 m");
    }

    #[test]
    fn right_angles_are_three_four_five() {
        let step = right_angle(Length::from_millimetres(1000), Length::from_millimetres(3000));
        let TapeStep::RightAngle { along, away, across } = step else { panic!("{step:?}") };
        assert_eq!(
            (along.to_string(), away.to_string(), across.to_string()),
            ("90 cm".into(), "1.2 m".into(), "1.5 m".into())
        );
    }
}
