//! The line at the foot of every whole page: which sheet it is, its edition, and whose it is. Where it has no room
//! for all, the title is called by what stands before its colon and then cut, since it stands in full at the head;
//! then the maker’s name. The edition and the licence are never cut.

use super::card_foot::{DOT, short_title, width_of};
use super::scale::Type;
use super::shaper::{ShapedLine, Shaper};
use super::sheets::{Rights, cut_text, fit_line};

/// A cut title keeps at least this much of the line.
const LEAST_TITLE: f32 = 0.22;

/// What stands at the foot of a page.
#[derive(Clone, Debug, Default)]
pub struct Origin {
    /// What a sheet must be known by, as the code of a child’s slip.
    pub code: Option<String>,
    pub title: String,
    /// “Edition K7QP”
    pub edition: Option<String>,
    pub rights: Rights,
}

impl Origin {
    /// “Standing jump · Edition K7QP · CC-BY-4.0 · Hollin Staithe School”
    fn say(&self, title: &str, credit: &str) -> String {
        let (code, edition) = (self.code.as_deref(), self.edition.as_deref());
        let all = [code, Some(title), edition, self.rights.licence.as_deref(), Some(credit)];
        let said = all.into_iter().flatten().filter(|text| !text.is_empty());
        said.collect::<Vec<_>>().join(DOT)
    }

    /// All of it on one line, or as much as there is room for.
    pub fn fit(&self, shaper: &mut Shaper<'_>, kind: Type, room: f32) -> Option<ShapedLine> {
        let credit = self.rights.credit.as_deref().unwrap_or_default();
        let whole = self.say(&self.title, credit);
        if width_of(shaper, &whole, kind) <= room {
            return fit_line(shaper, &whole, kind, room);
        }
        let dot = width_of(shaper, DOT, kind);
        let beside = width_of(shaper, &self.say("", credit), kind) + dot;
        let least = room * LEAST_TITLE;
        let left = (room - beside).max(least);
        let title = short_title(shaper, &self.title, kind, left);
        let title = cut_text(shaper, title, kind, left).unwrap_or_default();
        let beside = width_of(shaper, &self.say(&title, ""), kind) + dot;
        let credit = cut_text(shaper, credit, kind, room - beside).unwrap_or_default();
        fit_line(shaper, &self.say(&title, &credit), kind, room)
    }
}
