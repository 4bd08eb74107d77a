//! The foot of a card: the session’s title, who made it, its licence, the number of the set and the edition; on one
//! line where there is room for all, else on two. A pocket card that is full has no room for two: there the maker’s name
//! is cut, which stands in full on the cards that are not, and on the home guide.

use super::one_line::{DOT, cut_text, fit_line, short_title, whole_line, width_of};
use super::page::Item;
use super::scale::Type;
use super::shaper::{ShapedLine, Shaper};
use super::sheets::Rights;
use super::strip::placed;

/// What stands at the foot of a card.
pub struct Foot<'f> {
    /// Where it does not stand at the head.
    pub title: Option<&'f str>,
    pub mark: &'f str,
    pub rights: &'f Rights,
}

/// Between the title at the left and the rights at the right of one line.
const APART: f32 = 14.0;

/// The share of a single line that a long title may take.
const TITLE_SHARE: f32 = 0.52;

impl Foot<'_> {
    /// How many lines all of it needs.
    pub fn count_lines(&self, shaper: &mut Shaper<'_>, width: f32, kind: Type) -> usize {
        let title = self.title.map_or(0.0, |title| width_of(shaper, title, kind) + APART);
        let rights = width_of(shaper, &self.end(), kind);
        if title + rights <= width { 1 } else { 2 }
    }

    /// “Hollin Staithe School · CC-BY-4.0 · K7QP”
    fn end(&self) -> String {
        let Rights { credit, licence } = self.rights;
        let all = [credit.as_deref(), licence.as_deref(), Some(self.mark)].into_iter().flatten();
        all.filter(|text| !text.is_empty()).collect::<Vec<_>>().join(DOT)
    }

    /// The items of the foot, the top of its last line being at 0, on so many lines at most.
    pub fn lay(
        &self,
        shaper: &mut Shaper<'_>,
        (width, most): (f32, usize),
        kind: Type,
    ) -> Vec<Item> {
        if self.count_lines(shaper, width, kind) == 1 {
            return self.lay_one(shaper, width, kind);
        }
        if most == 1 {
            return self.lay_cut(shaper, width, kind);
        }
        // Without a title, the maker stands beside the edition, and the licence below.
        let first = self.title.or(self.rights.credit.as_deref()).unwrap_or_default();
        let credit = self.rights.credit.clone().filter(|_| self.title.is_some());
        let second = Rights { credit, licence: self.rights.licence.clone() };
        let first = named_line(shaper, (first, self.mark), width, kind).into_iter();
        let first = first.flat_map(|line| placed(line, 0.0));
        let second = second.fit(shaper, kind, width).into_iter().flat_map(|line| placed(line, 0.0));
        first.map(|item| item.moved(0.0, -kind.leading)).chain(second).collect()
    }

    /// All on the one line that a pocket card has: the title called by what stands before its colon, the maker cut.
    fn lay_cut(&self, shaper: &mut Shaper<'_>, width: f32, kind: Type) -> Vec<Item> {
        let room = width * TITLE_SHARE;
        let title = self.title.map(|title| short_title(shaper, title, kind, room));
        let beside = title.map_or(0.0, |title| width_of(shaper, title, kind) + APART);
        let last = [self.rights.licence.as_deref().unwrap_or_default(), self.mark];
        let last: Vec<&str> = last.into_iter().filter(|text| !text.is_empty()).collect();
        let rights = Rights { credit: self.rights.credit.clone(), licence: Some(last.join(DOT)) };
        let rights = rights.fit(shaper, kind, (width - beside).max(width - room));
        let left = width - rights.as_ref().map_or(0.0, |rights| rights.width);
        let title = title.and_then(|title| fit_line(shaper, title, kind, left - APART));
        let sides = [(rights, left), (title, 0.0)].into_iter();
        sides.filter_map(|(line, left)| Some(placed(line?, left))).flatten().collect()
    }

    /// The title at the left, all else at the right.
    fn lay_one(&self, shaper: &mut Shaper<'_>, width: f32, kind: Type) -> Vec<Item> {
        let end = whole_line(shaper, &self.end(), kind);
        let mut items: Vec<Item> = end
            .into_iter()
            .flat_map(|line| {
                let left = width - line.width;
                placed(line, left)
            })
            .collect();
        let title = self.title.and_then(|title| whole_line(shaper, title, kind));
        items.extend(title.into_iter().flat_map(|line| placed(line, 0.0)));
        items
    }
}

/// “Leap the brook: standing long jump · K7QP”: a name that is too long is called by what stands before its colon, and
/// cut at last.
fn named_line(
    shaper: &mut Shaper<'_>,
    (name, mark): (&str, &str),
    width: f32,
    kind: Type,
) -> Option<ShapedLine> {
    let dot = if name.is_empty() || mark.is_empty() { "" } else { DOT };
    let end = format!("{dot}{mark}");
    let room = width - width_of(shaper, &end, kind);
    let name = short_title(shaper, name, kind, room);
    let name = cut_text(shaper, name, kind, room).unwrap_or_default();
    whole_line(shaper, &format!("{name}{end}"), kind)
}
