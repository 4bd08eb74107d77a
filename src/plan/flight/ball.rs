//! Balls, and anything else that is thrown and is as round as a ball.

use std::f64::consts::PI;

use super::{AIR_DENSITY, SPHERE_DRAG};

/// A sphere that flies.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ball {
    /// kg.
    pub mass: f64,
    /// m.
    pub diameter: f64,
    /// Without unit; [`SPHERE_DRAG`] for a smooth sphere.
    pub drag_coefficient: f64,
}

impl Ball {
    /// 56.0–59.4 g, 6.541–6.858 cm across. Source: ITF Rules of Tennis, appendix I (type 2 ball);
    /// the middle of each range.
    pub const TENNIS: Self = Self::of_mass_and_size(0.0577, 0.066_995);

    /// 2.7 g, 40 mm across. From memory of the ITTF laws of table tennis (law 2.3).
    pub const TABLE_TENNIS: Self = Self::of_mass_and_size(0.0027, 0.040);

    /// Size 5: 410–450 g, 68–70 cm round. Source: IFAB Laws of the Game, law 2; the middle of
    /// each range.
    pub const FOOTBALL_5: Self = Self::of_mass_and_girth(0.430, 0.690);

    /// Size 5: 400–450 g, 690–710 mm round. Source: World Netball, Rules of Netball; the middle
    /// of each range.
    pub const NETBALL: Self = Self::of_mass_and_girth(0.425, 0.700);

    /// Size 7: 580–620 g, 750–770 mm round. Source: FIBA Official Basketball Rules, Basketball
    /// Equipment; the middle of each range.
    pub const BASKETBALL_7: Self = Self::of_mass_and_girth(0.600, 0.760);

    /// Size 6: 510–550 g, 715–730 mm round. Source: as for size 7.
    pub const BASKETBALL_6: Self = Self::of_mass_and_girth(0.530, 0.7225);

    /// Size 5: 465–495 g, 685–700 mm round. Source: as for size 7.
    pub const BASKETBALL_5: Self = Self::of_mass_and_girth(0.480, 0.6925);

    /// Every ball with a published mass and size, by the name that is used for it.
    pub const PUBLISHED: &'static [(&'static str, Self)] = &[
        ("tennis ball", Self::TENNIS),
        ("table tennis ball", Self::TABLE_TENNIS),
        ("football, size 5", Self::FOOTBALL_5),
        ("netball", Self::NETBALL),
        ("basketball, size 7", Self::BASKETBALL_7),
        ("basketball, size 6", Self::BASKETBALL_6),
        ("basketball, size 5", Self::BASKETBALL_5),
    ];

    /// Anything else that is about as round as a ball: a rolled pair of socks, a beanbag.
    /// Mass in kg, diameter in m; the drag is that of a smooth sphere.
    pub const fn of_mass_and_size(mass: f64, diameter: f64) -> Self {
        Self { mass, diameter, drag_coefficient: SPHERE_DRAG }
    }

    /// Rules give the size of large balls as the way round, in m.
    const fn of_mass_and_girth(mass: f64, girth: f64) -> Self {
        Self::of_mass_and_size(mass, girth / PI)
    }

    /// Half the diameter, m.
    pub const fn radius(&self) -> f64 {
        self.diameter / 2.0
    }

    /// Whether there can be such a ball: finite, with a mass and a size.
    pub fn is_possible(&self) -> bool {
        let finite = self.mass.is_finite() && self.diameter.is_finite();
        finite
            && self.mass > 0.0
            && self.diameter > 0.0
            && self.drag_coefficient.is_finite()
            && self.drag_coefficient >= 0.0
    }

    /// Slowing by drag for each m/s squared, 1/m: ½ρ·C·A/m, with A the area of the ball seen
    /// from the front. Source: the drag equation.
    pub(super) fn slowing(&self) -> f64 {
        let area = PI * self.radius() * self.radius();
        0.5 * AIR_DENSITY * self.drag_coefficient * area / self.mass
    }
}
