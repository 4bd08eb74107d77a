//! The columns of a class list. Upper case, underscores and hyphens count as small letters and spaces.

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Heading {
    Code,
    Minutes,
    /// Of the floor of this number, from 0.
    Floor(usize, FloorPart),
    Things,
    Helpers,
    Needs,
    Language,
    Reads,
}

/// One figure of a floor.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FloorPart {
    Length,
    Width,
    Height,
    Surface,
    Outdoors,
    /// The corner that is missing from an L.
    CornerLength,
    CornerWidth,
}

/// The columns in the order in which the survey writes them.
pub const HEADINGS: [&str; 21] = [
    "code",
    "minutes",
    "floor length",
    "floor width",
    "floor height",
    "floor surface",
    "floor outdoors",
    "floor corner length",
    "floor corner width",
    "floor 2 length",
    "floor 2 width",
    "floor 2 height",
    "floor 2 surface",
    "floor 2 outdoors",
    "floor 2 corner length",
    "floor 2 corner width",
    "things",
    "helpers",
    "needs",
    "language",
    "reads",
];

/// No home has more floors that are worth asking for.
pub const MOST_FLOORS: usize = 4;

impl Heading {
    /// The column of a heading, if it is one.
    pub fn of(written: &str) -> Option<Self> {
        let plain = plain(written);
        let by_name = match plain.as_str() {
            "code" => Some(Self::Code),
            "minutes" | "minutes a day" => Some(Self::Minutes),
            "things" => Some(Self::Things),
            "helpers" => Some(Self::Helpers),
            "needs" => Some(Self::Needs),
            "language" => Some(Self::Language),
            "reads" => Some(Self::Reads),
            _ => None,
        };
        by_name.or_else(|| floor_heading(&plain))
    }
}

fn floor_heading(plain: &str) -> Option<Heading> {
    let rest = plain.strip_prefix("floor ")?;
    let (number, part) = match rest.split_once(' ') {
        Some((number, part)) if number.parse::<usize>().is_ok() => (number.parse().ok()?, part),
        _ => (1, rest),
    };
    let part = match part {
        "length" => FloorPart::Length,
        "width" => FloorPart::Width,
        "height" => FloorPart::Height,
        "surface" => FloorPart::Surface,
        "outdoors" => FloorPart::Outdoors,
        "corner length" => FloorPart::CornerLength,
        "corner width" => FloorPart::CornerWidth,
        _ => return None,
    };
    (1..=MOST_FLOORS).contains(&number).then(|| Heading::Floor(number - 1, part))
}

pub fn plain(written: &str) -> String {
    let spaced = written.to_lowercase().replace(['_', '-'], " ");
    spaced.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn headings_are_read_in_any_letters() {
        assert_eq!(Heading::of("Floor_2_Width"), Some(Heading::Floor(1, FloorPart::Width)));
        assert_eq!(Heading::of("floor length"), Some(Heading::Floor(0, FloorPart::Length)));
        assert_eq!(Heading::of("pupil"), None);
        assert!(HEADINGS.iter().all(|heading| Heading::of(heading).is_some()));
    }
}
