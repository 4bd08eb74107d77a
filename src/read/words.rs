//! The fixed words a teacher chooses from, said once for reading, checking and showing.

use super::record::choice;

choice! {
    /// What kind of activity a session is, by the areas that curricula name.
    pub enum Activity = "an activity this program knows" {
        Athletics = "athletics",
        Dance = "dance",
        Fitness = "fitness",
        Games = "games",
        Gymnastics = "gymnastics",
        Outdoor = "outdoor",
    }
}

choice! {
    /// How hard a part is meant to feel. The bands are the usual ones of physical activity:
    /// light, moderate and vigorous (WHO guidelines 2020).
    pub enum Effort = "an effort this program knows" {
        Rest = "rest",
        Light = "light",
        Moderate = "moderate",
        Vigorous = "vigorous",
    }
}

choice! {
    /// What the body does in a part; the safety rules ask by it.
    pub enum Movement = "a movement this program knows" {
        Balancing = "balancing",
        Catching = "catching",
        Climbing = "climbing",
        Dancing = "dancing",
        Dodging = "dodging",
        Dribbling = "dribbling",
        Hopping = "hopping",
        Jumping = "jumping",
        Kicking = "kicking",
        Landing = "landing",
        Lifting = "lifting",
        Rolling = "rolling",
        Running = "running",
        Skipping = "skipping",
        Stretching = "stretching",
        Striking = "striking",
        Throwing = "throwing",
        Turning = "turning",
        Walking = "walking",
    }
}

impl Movement {
    /// Whether the feet leave the ground and come down again.
    pub const fn lands(self) -> bool {
        matches!(self, Self::Jumping | Self::Hopping | Self::Skipping | Self::Landing)
    }

    /// Whether something flies or rolls away from the child.
    pub const fn sends_something(self) -> bool {
        matches!(self, Self::Throwing | Self::Kicking | Self::Striking)
    }
}

choice! {
    /// What a practice task does for the learner (the trade's order: inform, extend, refine, apply).
    pub enum Task = "what a practice task does" {
        /// The first, plain form of the task.
        Inform = "inform",
        /// Makes it harder or different.
        Extend = "extend",
        /// Asks for better quality at the same difficulty.
        Refine = "refine",
        /// Uses it in a game or a test.
        Apply = "apply",
    }
}

choice! {
    /// How an adult is needed.
    pub enum AdultHelp = "how an adult is needed" {
        Nearby = "nearby",
        Helping = "helping",
    }
}

choice! {
    /// Where a session can be done.
    pub enum Whereabouts = "a place this program knows" {
        Indoors = "indoors",
        Outdoors = "outdoors",
    }
}

choice! {
    /// What is underfoot.
    pub enum Surface = "a surface this program knows" {
        Carpet = "carpet",
        Grass = "grass",
        HardFloor = "hard floor",
        Mat = "mat",
        Paving = "paving",
        Sand = "sand",
        SoftPlay = "soft play",
    }
}

choice! {
    /// How a part takes up floor.
    pub enum SpaceKind = "a kind of space" {
        /// Room for one or more to move about in.
        Area = "area",
        /// A straight line with a run-up and room to stop.
        Strip = "strip",
        /// A take-off line with a run-up, a landing and room beyond it.
        Jump = "jump",
        /// Room in front of a wall.
        Wall = "wall",
        /// A throwing line with a sector and a margin beyond the furthest landing.
        Throw = "throw",
    }
}

choice! {
    /// Whom or what another version of a part is for.
    pub enum Suited = "whom another version can be for" {
        /// Done sitting on a chair or in a wheelchair.
        Seated = "seated",
        /// Without feet that leave the floor and come down again.
        Quiet = "quiet",
        SmallSpace = "small space",
        LowVision = "low vision",
        Partner = "partner",
        Alone = "alone",
    }
}

choice! {
    /// What a container is filled with, to weigh something.
    pub enum Filling = "a filling this program knows" {
        Water = "water",
        Rice = "rice",
        Sand = "sand",
    }
}

choice! {
    /// What a challenge measures.
    pub enum Measured = "something this program can measure" {
        Distance = "distance",
        Time = "time",
        Count = "count",
        Points = "points",
        Criteria = "criteria",
    }
}

impl Measured {
    /// The units that fit; empty where any words or none will do.
    pub const fn units(self) -> &'static [&'static str] {
        match self {
            Self::Distance => &["cm", "m"],
            Self::Time => &["s", "min"],
            Self::Points => &["points"],
            Self::Count | Self::Criteria => &[],
        }
    }
}

choice! {
    /// Which mark is the better one.
    pub enum Better = "which mark is better" {
        More = "more",
        Less = "less",
    }
}

choice! {
    /// What a review question asks of the child.
    pub enum QuestionKind = "a kind of question" {
        Recall = "recall",
        Explain = "explain",
        Compare = "compare",
        Apply = "apply",
        Reflect = "reflect",
    }
}

choice! {
    /// Where a session stands in the department's work.
    pub enum State = "a standing this program knows" {
        Draft = "draft",
        Reviewed = "reviewed",
        Approved = "approved",
        Retired = "retired",
    }
}

choice! {
    /// The paper that sheets are laid out for.
    pub enum Paper = "a paper this program knows" {
        A4 = "A4",
        Letter = "Letter",
    }
}

choice! {
    /// A day of the week.
    pub enum Weekday = "a day of the week" {
        Monday = "monday",
        Tuesday = "tuesday",
        Wednesday = "wednesday",
        Thursday = "thursday",
        Friday = "friday",
        Saturday = "saturday",
        Sunday = "sunday",
    }
}

impl Weekday {
    /// The day so many days after Monday, from 0 to 6.
    pub fn after_monday(days: i32) -> Option<Self> {
        Self::ALL.get(usize::try_from(days).ok()?).copied()
    }

    /// “Monday”, for messages.
    pub fn name(self) -> String {
        let mut letters = self.word().chars();
        letters
            .next()
            .map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
    }
}
