//! A part of a session as it is written: every key of a warm-up, step, challenge, stretch task or cool-down.

use super::compendium::Compendium;
use super::figure_file::MomentDoc;
use super::part_time::PartTime;
use super::record::record;
use super::session_file::PictureDoc;
use super::shared_file::OrShared;
use super::text::{Line, Prose};
use super::words::{AdultHelp, Better, Effort, Measured, Movement, SpaceKind, Suited, Task};
use crate::place::Placed;
use crate::quantity::{Angle, Decimal, Duration, Length, Speed};

record! {
    /// A warm-up, technique step, challenge, stretch task or cool-down.
    pub struct PartDoc = "a part of the session" {
        /// A part of shared.yaml that this one is, but for the keys that stand here too.
        r#use: Option<Placed<Line>> = "river crossing",
        /// What the part is called.
        title: Placed<Line> = "Best of three leaps",
        /// Its time, in one figure or shared out over explaining, work, rest and rounds.
        time: Option<Placed<PartTime>>,
        /// The shortest time it still makes sense for.
        shortest: Option<Placed<Duration>>,
        /// The longest time it keeps its sense for.
        longest: Option<Placed<Duration>>,
        /// Whether it stays in however short the slot is.
        essential: Option<Placed<bool>>,
        /// How much it matters, from 1 to 5; 3 where it is not said.
        worth: Option<Placed<u32>>,
        /// Rest, light, moderate or vigorous.
        effort: Option<Placed<Effort>>,
        /// The entry of the Compendium of Physical Activities it is most like.
        compendium: Option<Placed<Compendium>>,
        /// What the body does.
        movements: Vec<Placed<Movement>>,
        /// Whether this part wants an adult nearby or helping.
        adult: Option<Placed<AdultHelp>>,
        /// What the practice task does: inform, extend, refine or apply.
        task: Option<Placed<Task>>,
        /// The floor and headroom this part takes.
        space: Option<Placed<PartSpaceDoc>>,
        /// How what is thrown, tossed or kicked flies.
        flight: Option<Placed<FlightDoc>>,
        /// What to do, said to the child.
        how: Placed<Prose> = "Swing your arms back, then jump as far as you can.",
        /// What to think of, short enough to call out.
        key_points: Vec<Placed<OrShared<Line>>> = "Swing and push",
        /// Common faults, and what to say.
        faults: Vec<FaultDoc>,
        /// An easier form.
        easier: Option<Placed<Line>> = "Start from one foot.",
        /// A harder form.
        harder: Option<Placed<Line>> = "Land and hold for five seconds.",
        /// Other versions of this part, for homes and children that it doesn’t suit as it is.
        alternatives: Vec<AlternativeDoc>,
        /// How the try is measured.
        measure: Option<Placed<MeasureDoc>>,
        /// The rules for things that fly.
        throw: Option<Placed<ThrowDoc>>,
        /// Pictures of this part.
        pictures: Vec<PictureDoc>,
        /// The figure drawn from a pose, or a strip of two to five.
        figure: Vec<MomentDoc>,
    }
}

record! {
    /// Another version of a part.
    pub struct AlternativeDoc = "another version of a part" {
        /// Whom or what it is for.
        r#for: Vec<Placed<Suited>>,
        /// What to do instead, said to the child.
        how: Placed<Prose> = "Sit tall and reach as far along the floor as you can.",
        /// The floor it takes, where that is another than the part’s.
        space: Option<Placed<PartSpaceDoc>>,
        /// The things it uses, of those the part does; all of them where it is not said.
        needs: Option<Vec<Placed<Line>>> = "tape measure",
    }
}

record! {
    /// A common fault and what to say to the child who shows it.
    pub struct FaultDoc = "a common fault" {
        /// What is seen.
        see: Placed<Line> = "Arms stay still",
        /// What to say.
        say: Placed<Line> = "Throw your hands at the far wall",
    }
}

record! {
    /// Where thrown, kicked or struck things may land, and when they are fetched.
    pub struct ThrowDoc = "the rules for throwing" {
        /// The zone that is kept clear.
        landing_zone: Option<Placed<Line>> = "Your own square, with nobody else inside it",
        /// When to stop and collect.
        stop_and_collect: Option<Placed<Line>> = "Stop, look round, then walk to fetch it.",
    }
}

record! {
    /// The floor and headroom that one part takes.
    pub struct PartSpaceDoc = "the space of a part" {
        /// Area, strip, jump, wall or throw.
        kind: Placed<SpaceKind>,
        /// The room before the line: run-up, or the place to stand.
        run_up: Option<Placed<Length>>,
        /// The longer side of an area, the marked length of a strip, the room along a wall.
        length: Option<Placed<Length>>,
        /// The furthest that a jump or throw is expected to come down.
        reach: Option<Placed<Length>>,
        /// The room to come to a stop after a strip.
        stopping: Option<Placed<Length>>,
        /// The shorter side of an area, the width of a lane, the room in front of a wall.
        width: Option<Placed<Length>>,
        /// The room kept clear round the space, or beyond the furthest landing.
        margin: Option<Placed<Length>>,
        /// The headroom.
        height: Option<Placed<Length>>,
        /// The angle between the sector lines of a throw.
        sector: Option<Placed<Angle>>,
        /// How many do it side by side, 1 where it is not said.
        people: Option<Placed<u32>>,
    }
}

record! {
    /// How what is thrown, tossed or kicked flies.
    pub struct FlightDoc = "the flight" {
        /// What flies: a thing of this session, or a ball of the rules.
        of: Option<Placed<Line>> = "beanbag",
        /// The speed it leaves the hand or foot with.
        speed: Option<Placed<Speed>>,
        /// Or how far it comes.
        distance: Option<Placed<Length>>,
        /// Or how far it rises, for a toss straight up.
        rise: Option<Placed<Length>>,
        /// The angle above level; a toss goes straight up.
        angle: Option<Placed<Angle>>,
        /// The height of the hand or foot above the floor.
        height: Placed<Length>,
    }
}

record! {
    /// How a try is measured.
    pub struct MeasureDoc = "the measure" {
        /// Distance, time, count, points or criteria.
        what: Placed<Measured>,
        /// The unit of the mark.
        unit: Option<Placed<Line>> = "cm",
        /// The smallest step of a mark: 1 cm, 0.1 s …
        step: Option<Placed<Line>> = "1 cm",
        /// How many attempts count.
        attempts: Option<Placed<u32>>,
        /// Whether more or less is better.
        better: Option<Placed<Better>>,
        /// What is judged, for a mark by criteria.
        criteria: Vec<Placed<Line>> = "Lands on both feet",
        /// Points for a mark.
        points: Option<Placed<PointsDoc>>,
        /// A mark to compare with, and where it is from.
        reference: Option<Placed<ReferenceDoc>>,
    }
}

record! {
    /// Points for a mark, by steps or by a formula.
    pub struct PointsDoc = "the points" {
        /// Steps: a mark, and the points from there on.
        steps: Vec<StepDoc>,
        /// Or a formula.
        formula: Option<Placed<FormulaDoc>>,
        /// Where the points are from.
        source: Option<Placed<Line>> = "Our own table, from last year’s marks",
    }
}

record! {
    /// A step of a points table.
    pub struct StepDoc = "a step of the points" {
        /// The mark it begins at.
        from: Placed<Line> = "120",
        /// The points.
        points: Placed<u32>,
    }
}

record! {
    /// Points by the formula of combined events: the whole part of a · |mark − b|^c.
    pub struct FormulaDoc = "the points formula" {
        /// The factor.
        a: Placed<Decimal>,
        /// The mark that is worth nothing.
        b: Placed<Decimal>,
        /// The exponent.
        c: Placed<Decimal>,
    }
}

record! {
    /// A mark to compare with.
    pub struct ReferenceDoc = "the reference mark" {
        /// The mark.
        mark: Placed<Line> = "147 cm",
        /// Where it is from.
        source: Option<Placed<Line>> = "Median of a published survey",
    }
}
