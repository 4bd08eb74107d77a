//! The kinds of printed sheets that a fact can stand on.

/// A set of kinds of sheets: one bit a kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Sheets(u8);

impl Sheets {
    pub const NONE: Self = Self(0);
    pub const CARDS: Self = Self(1);
    pub const GUIDE: Self = Self(2);
    pub const RECORD: Self = Self(4);
    pub const REVIEW: Self = Self(8);
    /// The sheets with the school’s name at the head and the licence at the foot.
    pub const PAGES: Self = Self(2 | 4 | 8);
    pub const ALL: Self = Self(15);

    /// Each kind with its name, in the order they are offered.
    pub const EACH: [(Self, &'static str); 4] = [
        (Self::CARDS, "cards"),
        (Self::GUIDE, "home-guide"),
        (Self::RECORD, "record"),
        (Self::REVIEW, "review"),
    ];

    #[must_use]
    pub const fn and(self, other: Self) -> Self {
        Self(self.0 | other.0)
    }

    /// Whether the two have a kind in common.
    pub const fn meets(self, other: Self) -> bool {
        self.0 & other.0 != 0
    }

    /// The name of one kind, as in the path of its file.
    pub fn name(self) -> &'static str {
        Self::EACH.iter().find(|(sheets, _)| *sheets == self).map_or("", |(_, name)| name)
    }

    pub fn named(name: &str) -> Option<Self> {
        Self::EACH.iter().find(|(_, known)| *known == name).map(|(sheets, _)| *sheets)
    }
}
