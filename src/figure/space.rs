//! Points and turned frames in three dimensions.

/// A point or a way: forwards, to the left, up.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Point {
    pub x: f64,
    pub y: f64,
    pub z: f64,
}

impl Point {
    pub const fn new(x: f64, y: f64, z: f64) -> Self {
        Self { x, y, z }
    }

    #[must_use]
    pub fn plus(self, other: Self) -> Self {
        Self::new(self.x + other.x, self.y + other.y, self.z + other.z)
    }

    #[must_use]
    pub fn times(self, by: f64) -> Self {
        Self::new(self.x * by, self.y * by, self.z * by)
    }

    /// So much of the way to another point.
    #[must_use]
    pub fn toward(self, other: Self, share: f64) -> Self {
        self.times(1.0 - share).plus(other.times(share))
    }

    pub fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y + self.z * other.z
    }

    pub fn distance(self, other: Self) -> f64 {
        let gap = self.plus(other.times(-1.0));
        gap.dot(gap).sqrt()
    }
}

/// Sine and cosine of an angle; none for no angle, which most joints have and which costs nothing then.
fn turn(degrees: f64) -> Option<(f64, f64)> {
    (degrees != 0.0).then(|| degrees.to_radians().sin_cos())
}

/// Three axes at right angles: where a segment’s forwards, left and up lie.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frame {
    pub forward: Point,
    pub left: Point,
    pub up: Point,
}

impl Frame {
    pub const UPRIGHT: Self = Self {
        forward: Point::new(1.0, 0.0, 0.0),
        left: Point::new(0.0, 1.0, 0.0),
        up: Point::new(0.0, 0.0, 1.0),
    };

    /// A way of this frame as the room has it.
    pub fn way(&self, x: f64, y: f64, z: f64) -> Point {
        self.forward.times(x).plus(self.left.times(y)).plus(self.up.times(z))
    }

    /// Turned about its own left axis, so that up tips forwards.
    #[must_use]
    pub fn pitched(self, degrees: f64) -> Self {
        let Some((sin, cos)) = turn(degrees) else { return self };
        Self { forward: self.way(cos, 0.0, -sin), left: self.left, up: self.way(sin, 0.0, cos) }
    }

    /// Turned about its own forward axis, so that up tips to the right.
    #[must_use]
    pub fn rolled(self, degrees: f64) -> Self {
        let Some((sin, cos)) = turn(degrees) else { return self };
        Self { forward: self.forward, left: self.way(0.0, cos, sin), up: self.way(0.0, -sin, cos) }
    }

    /// Turned about its own up axis, to the left.
    #[must_use]
    pub fn turned(self, degrees: f64) -> Self {
        let Some((sin, cos)) = turn(degrees) else { return self };
        Self { forward: self.way(cos, sin, 0.0), left: self.way(-sin, cos, 0.0), up: self.up }
    }

    /// Level, heading where this one heads; where it heads straight up or down, its underside leads.
    #[must_use]
    pub fn levelled(self) -> Self {
        let level = |way: Point| Point::new(way.x, way.y, 0.0);
        let mut ahead = level(self.forward);
        if ahead.dot(ahead) < 0.04 {
            ahead = level(self.up.times(if self.forward.z < 0.0 { 1.0 } else { -1.0 }));
        }
        let length = ahead.dot(ahead).sqrt().max(1e-9);
        let ahead = ahead.times(1.0 / length);
        let up = Point::new(0.0, 0.0, 1.0);
        Self { forward: ahead, left: Point::new(-ahead.y, ahead.x, 0.0), up }
    }
}
