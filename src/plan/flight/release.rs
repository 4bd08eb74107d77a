//! How something is let go, and what becomes of it.

/// The moment something leaves the hand, the foot or the ground.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Release {
    /// m/s, not negative.
    pub speed: f64,
    /// Degrees above level: 90 is straight up, less than 0 is downwards; from −90 to 90.
    pub angle: f64,
    /// Of the middle of the thing above the ground, m, not negative.
    pub height: f64,
}

/// What becomes of a release over level ground.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Flight {
    /// Along the ground, from below the release to where it lands, m.
    pub distance: f64,
    /// The highest point of the middle of the thing above the ground, m.
    pub apex: f64,
    /// From release to landing, s.
    pub time: f64,
    /// m/s.
    pub landing_speed: f64,
    /// Degrees below level: 90 is straight down.
    pub landing_angle: f64,
}

impl Release {
    /// Whether there can be such a release: finite, no backward throw, nothing below the ground.
    pub fn is_possible(&self) -> bool {
        let finite = [self.speed, self.angle, self.height].iter().all(|value| value.is_finite());
        finite && self.speed >= 0.0 && self.height >= 0.0 && self.angle.abs() <= 90.0
    }

    /// The same throw at another angle.
    #[must_use]
    pub fn at_angle(self, angle: f64) -> Self {
        Self { angle, ..self }
    }

    /// The same throw at another speed.
    #[must_use]
    pub fn at_speed(self, speed: f64) -> Self {
        Self { speed, ..self }
    }

    /// The speed along the ground and the speed upwards, m/s.
    ///
    /// The cosine is the sine of what is missing to 90°: straight up is then exactly so, and a
    /// steep throw loses no digits.
    pub(super) fn parts(&self) -> (f64, f64) {
        let from_upright = (90.0 - self.angle.abs()).to_radians();
        (self.speed * from_upright.sin(), self.speed * self.angle.to_radians().sin())
    }
}

impl Flight {
    /// The five figures, for what is asked of all of them alike.
    pub(super) fn figures(&self) -> [f64; 5] {
        [self.distance, self.apex, self.time, self.landing_speed, self.landing_angle]
    }

    /// The flight, unless a figure ran out of range.
    pub(super) fn if_finite(self) -> Option<Self> {
        self.figures().iter().all(|figure| figure.is_finite()).then_some(self)
    }
}
