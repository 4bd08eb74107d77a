//! What every sheet maker works from.

use std::sync::Arc;

use super::figure_case::FigureCase;
use super::one_line::{DOT, cut_text, whole_line, width_of};
use super::origin::Origin;
use super::scale::{SMALLEST, Type};
use super::scan::Codes;
use super::shaper::{ShapedLine, Shaper};
use crate::drawing::Room;
use crate::edition::{Mark, Sheets};
use crate::pack::{Pack, Session};
use crate::place::Placed;
use crate::plan::Plans;
use crate::prose::{Run, plain_line};
use crate::read::Line;
use crate::read::words::Paper;
use crate::words::{Filling, Words};

/// What stands on every page of a sheet, and the paper it is for.
pub struct Letterhead<'s> {
    pub paper: Paper,
    pub words: &'s Words,
    pub school: String,
    /// At the foot of every page.
    pub origin: Origin,
}

impl<'s> Letterhead<'s> {
    /// Of a sheet for the whole pack.
    pub fn of_pack(pack: &Pack, words: &'s Words) -> Self {
        let licence = pack.sessions.iter().find_map(|session| session.licence.as_ref());
        let licence = licence.map(|licence| plain_line(licence));
        let rights = Rights { credit: None, licence };
        Self {
            paper: pack.paper,
            words,
            school: pack.school.clone().unwrap_or_else(|| pack.title.clone()),
            origin: Origin { title: plain_line(&pack.title), rights, ..Origin::default() },
        }
    }
}

/// One session, ready to be laid out.
#[derive(Clone)]
pub struct SheetSource<'s> {
    pub session: &'s Session,
    pub plans: &'s Plans,
    pub pack: &'s Pack,
    pub words: &'s Words,
    pub codes: Arc<Codes>,
    pub figures: Arc<FigureCase>,
    /// The edition mark of each kind of sheet.
    pub marks: Vec<(Sheets, Mark)>,
    /// The kind that is laid out.
    pub sheets: Sheets,
}

impl SheetSource<'_> {
    /// The edition mark of what is laid out.
    pub fn mark(&self) -> Option<Mark> {
        self.marks.iter().find(|(sheets, _)| *sheets == self.sheets).map(|(_, mark)| *mark)
    }

    /// “Edition K7QP”, for the foot of a whole page.
    pub fn edition(&self) -> Option<String> {
        let mark = self.mark()?.to_string();
        Some(self.words.say_with("edition-mark", &[("mark", Filling::Text(&mark))]))
    }

    pub const fn paper(&self) -> Paper {
        self.pack.paper
    }

    pub fn letterhead(&self) -> Letterhead<'_> {
        let school = self.pack.school.clone().unwrap_or_else(|| self.pack.title.clone());
        Letterhead { paper: self.paper(), words: self.words, school, origin: self.origin() }
    }

    pub fn title(&self) -> String {
        plain_line(&self.session.title)
    }

    /// The room for a drawing so wide; its words as small as paper has them.
    #[allow(clippy::unused_self, reason = "the room may depend on the paper")]
    pub fn room(&self, width: f32) -> Room {
        // The whole sheet is mirrored where the script runs from right to left, and this with it.
        Room { width, tallest: width * 0.34, words: SMALLEST, is_rtl: false }
    }

    /// For the foot of every whole page.
    pub fn origin(&self) -> Origin {
        let (title, edition, rights) = (self.title(), self.edition(), self.rights());
        Origin { code: None, title, edition, rights }
    }

    /// Who made the session, and its licence.
    pub fn rights(&self) -> Rights {
        let plain = |line: &Option<_>| line.as_ref().map(|line: &Placed<Line>| plain_line(line));
        Rights { credit: plain(&self.session.credit), licence: plain(&self.session.licence) }
    }
}

/// Who made a session, and what may be done with it.
#[derive(Clone, Debug, Default)]
pub struct Rights {
    pub credit: Option<String>,
    pub licence: Option<String>,
}

impl Rights {
    /// “Hollin Staithe School · CC-BY-4.0” on one line. Where there is no room the maker’s name is cut, which
    /// stands in full on the home guide; the licence never is.
    pub fn fit(&self, shaper: &mut Shaper<'_>, kind: Type, room: f32) -> Option<ShapedLine> {
        let licence = self.licence.as_deref().unwrap_or_default();
        let end = if licence.is_empty() { String::new() } else { format!("{DOT}{licence}") };
        let name = self.credit.as_deref().unwrap_or_default();
        let left = room - width_of(shaper, &end, kind);
        let name = cut_text(shaper, name, kind, left).unwrap_or_default();
        if name.is_empty() {
            return whole_line(shaper, licence, kind);
        }
        whole_line(shaper, &format!("{name}{end}"), kind)
    }
}

/// One line of plain words as a run.
pub fn one(text: impl Into<String>) -> Vec<Run> {
    vec![Run::plain(text)]
}

/// A title in lines. One that needs two is broken after its colon where both parts have a line: “Leap the brook:” over
/// “standing long jump”.
pub fn shape_title(
    shaper: &mut Shaper<'_>,
    title: &str,
    kind: Type,
    width: f32,
) -> Vec<ShapedLine> {
    let lines = shaper.shape(&one(title), kind, width);
    let Some(colon) = title.find(": ").filter(|_| lines.len() == 2) else { return lines };
    let (name, rest) = title.split_at(colon + 2);
    let parts = [name, rest].map(|text| shaper.shape(&one(text), kind, width));
    if parts.iter().all(|part| part.len() == 1) {
        parts.into_iter().flatten().collect()
    } else {
        lines
    }
}
