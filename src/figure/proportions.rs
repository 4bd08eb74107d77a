//! How long and heavy the segments of a body are, as fractions of stature and of body mass.
//!
//! Source: Drillis and Contini (1966) for lengths, Dempster (1955) for masses and centres, both as tabled
//! in Winter, Biomechanics and Motor Control of Human Movement (figure 4.1, table 4.1); written down from
//! memory. A child’s head is larger: about a sixth of stature at six years and a seventh at twelve (common
//! in books on growth and on drawing; from memory), everything else shrinks alike.

/// A segment of the published tables.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Segment {
    Hand,
    Forearm,
    UpperArm,
    Foot,
    Shank,
    Thigh,
    HeadAndNeck,
    Trunk,
}

impl Segment {
    pub const ALL: [Self; 8] = [
        Self::Hand,
        Self::Forearm,
        Self::UpperArm,
        Self::Foot,
        Self::Shank,
        Self::Thigh,
        Self::HeadAndNeck,
        Self::Trunk,
    ];

    /// Its length over stature, for grown-ups.
    pub const fn length(self) -> f64 {
        match self {
            Self::Hand => 0.108,
            Self::Forearm => 0.146,
            Self::UpperArm => 0.186,
            Self::Foot => 0.152,
            Self::Shank => 0.246,
            Self::Thigh => 0.245,
            Self::HeadAndNeck => 0.182,
            Self::Trunk => 0.288,
        }
    }

    /// Its mass over that of the body; of a pair, one.
    pub const fn mass(self) -> f64 {
        match self {
            Self::Hand => 0.006,
            Self::Forearm => 0.016,
            Self::UpperArm => 0.028,
            Self::Foot => 0.0145,
            Self::Shank => 0.0465,
            Self::Thigh => 0.100,
            Self::HeadAndNeck => 0.081,
            Self::Trunk => 0.497,
        }
    }

    /// Where its centre of mass lies, from the end nearer to the trunk; of the trunk, from the hips; of head
    /// and neck, at the ears.
    pub const fn centre(self) -> f64 {
        match self {
            Self::Hand => 0.506,
            Self::Forearm => 0.430,
            Self::UpperArm => 0.436,
            Self::Foot | Self::Trunk => 0.500,
            Self::Shank | Self::Thigh => 0.433,
            Self::HeadAndNeck => 1.000,
        }
    }

    pub const fn name(self) -> &'static str {
        match self {
            Self::Hand => "hand",
            Self::Forearm => "forearm",
            Self::UpperArm => "upper arm",
            Self::Foot => "foot",
            Self::Shank => "shank",
            Self::Thigh => "thigh",
            Self::HeadAndNeck => "head and neck",
            Self::Trunk => "trunk",
        }
    }
}

/// The height of the head of a grown-up, chin to crown.
pub const HEAD: f64 = 0.130;
/// From the shoulders to the chin.
const NECK: f64 = 0.052;
/// The ankle above the sole.
const ANKLE: f64 = 0.039;
const SHOULDERS: f64 = 0.259;
/// From one hip joint to the other: half the breadth of the hips, 0.191 (the half is our choice).
const HIPS: f64 = 0.191 / 2.0;
const FOOT_WIDTH: f64 = 0.055;

/// The share of the trunk below the bend of the back (our choice).
pub const PELVIS_SHARE: f64 = 0.35;
/// The share of the foot behind the ankle (our choice).
pub const HEEL_SHARE: f64 = 0.28;
/// The share of the foot behind the ball (our choice).
pub const BALL_SHARE: f64 = 0.76;

/// A body’s proportions: the head, and what everything else is scaled by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Proportions {
    /// Chin to crown over stature.
    pub head: f64,
    rest: f64,
}

impl Proportions {
    pub const GROWN: Self = Self { head: HEAD, rest: 1.0 };

    /// Of a child of so many years: a sixth at six, a seventh at twelve, a grown-up’s share at eighteen.
    pub fn of_age(years: f64) -> Self {
        let steps = [(6.0, 1.0 / 6.0), (12.0, 1.0 / 7.0), (18.0, HEAD)];
        let years = years.clamp(6.0, 18.0);
        let [young, middle, grown] = steps;
        let (from, to) = if years < 12.0 { (young, middle) } else { (middle, grown) };
        let share = (years - from.0) / (to.0 - from.0);
        let head = from.1 + (to.1 - from.1) * share;
        Self { head, rest: (1.0 - head) / (1.0 - HEAD) }
    }

    /// A segment’s length over stature; the head and neck to the crown.
    pub fn length(&self, segment: Segment) -> f64 {
        match segment {
            Segment::HeadAndNeck => self.neck() + self.head,
            other => other.length() * self.rest,
        }
    }

    /// How thick limbs are against a grown-up’s of the same stature.
    pub const fn girth(&self) -> f64 {
        self.rest
    }

    pub fn neck(&self) -> f64 {
        NECK * self.rest
    }

    pub fn ankle(&self) -> f64 {
        ANKLE * self.rest
    }

    pub fn shoulders(&self) -> f64 {
        SHOULDERS * self.rest
    }

    pub fn hips(&self) -> f64 {
        HIPS * self.rest
    }

    pub fn foot_width(&self) -> f64 {
        FOOT_WIDTH * self.rest
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn segments_make_up_the_whole_body() {
        let pair = |segment: Segment| match segment {
            Segment::HeadAndNeck | Segment::Trunk => 1.0,
            _ => 2.0,
        };
        let mass: f64 = Segment::ALL.iter().map(|s| s.mass() * pair(*s)).sum();
        assert!((mass - 1.0).abs() < 1e-9, "{mass}");
        for years in [5.0, 7.0, 10.0, 14.0, 30.0] {
            let body = Proportions::of_age(years);
            let stacked = [Segment::Shank, Segment::Thigh, Segment::Trunk, Segment::HeadAndNeck];
            let tall: f64 = stacked.iter().map(|s| body.length(*s)).sum::<f64>() + body.ankle();
            assert!((tall - 1.0).abs() < 1e-9, "{years}: {tall}");
        }
    }
}
