//! The line at the foot of every whole page: which sheet it is, its edition, and whose it is. Where it has no room
//! for all, the title is called by what stands before its colon and then cut, since it stands in full at the head;
//! then the maker’s name. The edition and the licence are never cut.

use std::borrow::Cow;

use super::one_line::{DOT, cut_text, fit_line, short_title, whole_line, width_of};
use super::page::Item;
use super::scale::Type;
use super::shaper::Shaper;
use super::sheets::Rights;
use super::strip::placed;

/// A cut title keeps at least this much of the line.
const LEAST_TITLE: f32 = 0.22;

/// A space between words, in sizes.
const SPACE: f32 = 0.3;

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
    /// “Standing jump”, “Edition K7QP”, “CC-BY-4.0”, “Hollin Staithe School”
    fn pieces<'t>(&'t self, title: &'t str, credit: &'t str) -> impl Iterator<Item = &'t str> {
        let (code, edition) = (self.code.as_deref(), self.edition.as_deref());
        let all = [code, Some(title), edition, self.rights.licence.as_deref(), Some(credit)];
        all.into_iter().flatten().filter(|text| !text.is_empty())
    }

    fn say(&self, title: &str, credit: &str) -> String {
        self.pieces(title, credit).collect::<Vec<_>>().join(DOT)
    }

    /// All of it on one line from the left, or as much as there is room for.
    pub fn lay(&self, shaper: &mut Shaper<'_>, kind: Type, room: f32) -> Vec<Item> {
        let is_rtl = shaper.is_rtl();
        let credit = self.rights.credit.as_deref().unwrap_or_default();
        let whole = whole_line(shaper, &self.say(&self.title, credit), kind);
        let whole = whole.filter(|line| line.width <= room);
        if let Some(line) = whole.as_ref().filter(|_| !is_rtl) {
            return placed(line.clone(), 0.0).collect();
        }
        let (title, credit) = match whole {
            Some(_) => (self.title.as_str().into(), credit.into()),
            None => self.fit(shaper, kind, room),
        };
        if !is_rtl {
            let line = fit_line(shaper, &self.say(&title, &credit), kind, room);
            return line.into_iter().flat_map(|line| placed(line, 0.0)).collect();
        }
        // Names in Latin letters would draw all that stands between them into one stretch that runs the other way.
        let (mut items, mut x) = (Vec::new(), 0.0);
        for piece in self.pieces(&title, &credit) {
            let dot = (x > 0.0).then_some(DOT.trim());
            for piece in dot.into_iter().chain([piece]) {
                if let Some(line) = fit_line(shaper, piece, kind, room - x) {
                    let next = x + line.width + kind.size * SPACE;
                    items.extend(placed(line, x));
                    x = next;
                }
            }
        }
        items
    }

    /// The title and the maker’s name cut so that they have room.
    fn fit<'t>(
        &'t self,
        shaper: &mut Shaper<'_>,
        kind: Type,
        room: f32,
    ) -> (Cow<'t, str>, Cow<'t, str>) {
        let credit = self.rights.credit.as_deref().unwrap_or_default();
        let dot = width_of(shaper, DOT, kind);
        let beside = width_of(shaper, &self.say("", credit), kind) + dot;
        let least = room * LEAST_TITLE;
        let left = (room - beside).max(least);
        let title = short_title(shaper, &self.title, kind, left);
        let title = cut_text(shaper, title, kind, left).unwrap_or_default();
        let beside = width_of(shaper, &self.say(&title, ""), kind) + dot;
        let credit = cut_text(shaper, credit, kind, room - beside).unwrap_or_default();
        (title, credit)
    }
}
