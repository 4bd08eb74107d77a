//! What every sheet maker works from.

use std::borrow::Cow;
use std::sync::Arc;

use super::figure_case::FigureCase;
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
    pub fn fit(
        &self,
        shaper: &mut Shaper<'_>,
        kind: super::scale::Type,
        room: f32,
    ) -> Option<super::shaper::ShapedLine> {
        let licence = self.licence.clone().unwrap_or_default();
        let mut credit: Vec<char> = self.credit.iter().flat_map(|text| text.chars()).collect();
        let mut end = "";
        loop {
            let name = credit.iter().collect::<String>();
            let name = format!("{}{end}", name.trim_end());
            let parts =
                [name.as_str(), licence.as_str()].into_iter().filter(|text| !text.is_empty());
            let text = parts.collect::<Vec<_>>().join(" · ");
            let line = shaper.shape(&one(text), kind, f32::MAX / 4.0).drain(..).next()?;
            if line.width <= room || credit.pop().is_none() {
                return Some(line);
            }
            end = if credit.is_empty() { "" } else { "…" };
        }
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

/// Cuts a line with “…” where it is wider than the room for it; only for what stands elsewhere in full.
pub fn fit_line(shaper: &mut Shaper<'_>, text: &str, kind: Type, width: f32) -> Option<ShapedLine> {
    let line = whole_line(shaper, text, kind)?;
    if line.width <= width {
        return Some(line);
    }
    let text = cut_text(shaper, text, kind, width)?;
    whole_line(shaper, &text, kind)
}

/// A text that is no wider than the room for it, cut with “…” where it must be; nothing where there is no room even
/// for that.
pub fn cut_text<'t>(
    shaper: &mut Shaper<'_>,
    text: &'t str,
    kind: Type,
    width: f32,
) -> Option<Cow<'t, str>> {
    let line = whole_line(shaper, text, kind)?;
    if line.width <= width {
        return Some(Cow::Borrowed(text));
    }
    // As many letters as there is room for: the share of the width is a good guess, then one more or less
    // at a time.
    let letters: Vec<char> = text.chars().collect();
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        clippy::cast_precision_loss,
        reason = "a count of letters of one line"
    )]
    let guess = (letters.len() as f32 * width / line.width) as usize;
    let cut = |shaper: &mut Shaper<'_>, count: usize| {
        let shown: String = letters[..count].iter().collect();
        let text = format!("{}…", shown.trim_end());
        (whole_line(shaper, &text, kind)?.width <= width).then_some(text)
    };
    let mut fitting = (0..=guess.min(letters.len() - 1))
        .rev()
        .find_map(|count| cut(shaper, count).map(|text| (count, text)))?;
    while fitting.0 < letters.len()
        && let Some(longer) = cut(shaper, fitting.0 + 1)
    {
        fitting = (fitting.0 + 1, longer);
    }
    Some(Cow::Owned(fitting.1))
}

/// A text on one line, however long.
pub fn whole_line(shaper: &mut Shaper<'_>, text: &str, kind: Type) -> Option<ShapedLine> {
    shaper.shape(&one(text), kind, f32::MAX / 4.0).into_iter().next()
}
