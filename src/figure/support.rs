//! What a figure is on.

use crate::read::record::choice;

choice! {
    /// What carries the body.
    pub enum Support = "what a figure can be on" {
        Feet = "both feet",
        LeftFoot = "left foot",
        RightFoot = "right foot",
        HandsAndFeet = "hands and feet",
        HandsAndKnees = "hands and knees",
        Knees = "knees",
        /// Half kneeling.
        OneKnee = "one knee",
        /// Sitting on the floor.
        Seat = "seat",
        Chair = "chair",
        Wheelchair = "wheelchair",
        Back = "back",
        Front = "front",
        LeftSide = "left side",
        RightSide = "right side",
        /// In flight.
        Air = "air",
    }
}

impl Support {
    #[must_use]
    pub const fn mirrored(self) -> Self {
        match self {
            Self::LeftFoot => Self::RightFoot,
            Self::RightFoot => Self::LeftFoot,
            Self::LeftSide => Self::RightSide,
            Self::RightSide => Self::LeftSide,
            other => other,
        }
    }

    pub const fn is_seated(self) -> bool {
        matches!(self, Self::Chair | Self::Wheelchair)
    }
}
