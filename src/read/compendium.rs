//! Entries of the Compendium of Physical Activities that a part can be likened to.
//!
//! Source: Ainsworth et al., 2011 Compendium of Physical Activities, Medicine & Science in Sports &
//! Exercise 43(8). Its figures are of adults and do not carry over to children one for one; they serve
//! to tell light from moderate from vigorous, and every use of them is an estimate.

use super::record::choice;
use super::words::Effort;
use crate::quantity::Decimal;

choice! {
    /// What a part is most like, in the words of the Compendium.
    pub enum Compendium = "an activity of the Compendium that this program knows" {
        StandingQuietly = "standing quietly",
        MildStretching = "mild stretching",
        /// 2.5 miles an hour.
        WalkingSlowly = "slow walking",
        /// 3 miles an hour.
        Walking = "walking",
        /// 3.5 miles an hour.
        WalkingBriskly = "brisk walking",
        PlayingCatch = "playing catch",
        LightCalisthenics = "light calisthenics",
        ModerateCalisthenics = "moderate calisthenics",
        VigorousCalisthenics = "vigorous calisthenics",
        CircuitTraining = "circuit training",
        ShootingBaskets = "shooting baskets",
        TableTennis = "table tennis",
        Juggling = "juggling",
        Badminton = "social badminton",
        ChildrensGames = "children’s games",
        Dancing = "dancing",
        JoggingOnTheSpot = "jogging on the spot",
        /// Fewer than 100 skips a minute.
        SkippingSlowly = "slow rope skipping",
        /// 100 to 120 skips a minute.
        Skipping = "rope skipping",
        /// 120 to 160 skips a minute.
        SkippingFast = "fast rope skipping",
    }
}

impl Compendium {
    /// Its metabolic equivalent: so many times the energy of sitting still.
    pub const fn met(self) -> Decimal {
        Decimal::from_tenths(match self {
            Self::StandingQuietly => 13,
            Self::MildStretching => 23,
            Self::PlayingCatch => 25,
            Self::LightCalisthenics => 28,
            Self::WalkingSlowly => 30,
            Self::Walking => 35,
            Self::ModerateCalisthenics => 38,
            Self::TableTennis | Self::Juggling => 40,
            Self::WalkingBriskly | Self::CircuitTraining => 43,
            Self::ShootingBaskets => 45,
            Self::Badminton => 55,
            Self::ChildrensGames => 58,
            Self::Dancing => 78,
            Self::VigorousCalisthenics | Self::JoggingOnTheSpot => 80,
            Self::SkippingSlowly => 88,
            Self::Skipping => 118,
            Self::SkippingFast => 123,
        })
    }

    /// Its band: light from 1.5, moderate from `moderate_from`, vigorous from 6 (WHO guidelines 2020
    /// for the bands; for young people some sources set the second at 3, others at 4).
    pub fn band(self, moderate_from: Decimal) -> Effort {
        let met = self.met();
        if met >= VIGOROUS_FROM {
            Effort::Vigorous
        } else if met >= moderate_from {
            Effort::Moderate
        } else if met >= LIGHT_FROM {
            Effort::Light
        } else {
            Effort::Rest
        }
    }
}

/// Where vigorous begins (WHO guidelines 2020).
pub const VIGOROUS_FROM: Decimal = Decimal::from_tenths(60);

/// Where light begins; what is below is sitting or standing still.
const LIGHT_FROM: Decimal = Decimal::from_tenths(15);

/// Where moderate begins for a pack that sets nothing: the stricter of the two published figures.
pub const USUAL_MODERATE_FROM: Decimal = Decimal::from_tenths(40);
