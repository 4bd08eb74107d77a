//! A resolved session.

use crate::place::{FileId, Lent, Place, Placed};
use crate::quantity::{Ages, Date, Duration, Length};
use crate::read::words::{Activity, QuestionKind, State, Surface, Whereabouts};
use crate::read::{Line, Prose};

use super::allowance::Allowance;
use super::equipment::Need;
use super::id::SessionId;
use super::part::{Measure, Part, PartKind, placed};

/// One session with everything shared filled in.
#[derive(Clone, Debug)]
pub struct Session {
    pub id: SessionId,
    pub file: FileId,
    /// The path of its file inside the pack.
    pub path: String,
    /// The language of its texts, as a BCP 47 tag.
    pub language: String,
    /// It is a translation, and its original has changed since.
    pub is_old_translation: bool,
    pub title: Placed<Line>,
    pub summary: Placed<Line>,
    pub ages: Placed<Ages>,
    pub slot: Placed<Duration>,
    pub activity: Placed<Activity>,
    pub licence: Option<Placed<Line>>,
    pub credit: Option<Placed<Line>>,
    pub curriculum: Vec<Placed<Line>>,
    /// The addresses of the sessions whose skills it builds on.
    pub builds_on: Vec<Placed<Line>>,
    pub objectives: Vec<Placed<Line>>,
    pub success: Vec<Placed<Line>>,
    pub needs: Vec<Need>,
    pub space: Option<Placed<Space>>,
    /// The session's own cautions; the pack's usual ones come after them.
    pub safety: Vec<Placed<Prose>>,
    pub adult: Option<Placed<AdultTime>>,
    pub film: Option<Film>,
    pub pictures: Vec<Picture>,
    /// All parts in the order they are done.
    pub parts: Vec<Part>,
    pub review: Vec<Question>,
    pub adaptations: Adaptations,
    pub standing: Option<Placed<Standing>>,
    /// Where it was borrowed, if it is another school’s.
    pub borrowed: Option<Borrowed>,
    /// What its file allows to stay.
    pub allow: Vec<Allowance>,
}

impl Session {
    pub fn parts_of(&self, kind: PartKind) -> impl Iterator<Item = &Part> {
        self.parts.iter().filter(move |part| part.kind == kind)
    }

    /// The parts that are measured, each with its measure.
    pub fn measured(&self) -> impl Iterator<Item = (&Part, &Placed<Measure>)> {
        self.parts.iter().filter_map(|part| Some((part, part.measure.as_ref()?)))
    }

    /// Whether the session is kept but no longer offered.
    pub fn is_retired(&self) -> bool {
        self.standing.as_ref().is_some_and(|standing| standing.state.value == State::Retired)
    }

    /// Every CommonMark text of the session, with its place.
    pub fn texts(&self) -> Vec<Placed<&str>> {
        let mut texts = vec![placed(&self.title), placed(&self.summary)];
        texts.extend(self.objectives.iter().chain(&self.success).map(placed));
        texts.extend(self.safety.iter().map(placed));
        texts.extend(self.needs.iter().filter_map(|need| need.note.as_ref()).map(placed));
        for substitute in self.needs.iter().flat_map(|need| &need.substitutes) {
            texts.extend(substitute.note.iter().map(placed));
        }
        texts.extend(self.adult.iter().filter_map(|adult| adult.why.as_ref()).map(placed));
        texts.extend(self.film.iter().map(|film| placed(&film.shows)));
        texts.extend(
            self.pictures.iter().filter_map(|picture| picture.caption.as_ref()).map(placed),
        );
        texts.extend(self.parts.iter().flat_map(Part::texts));
        for question in &self.review {
            texts.extend(std::iter::once(&question.ask).chain(&question.answer).map(placed));
        }
        texts.extend(self.adaptations.each().into_iter().map(|(_, text)| placed(text)));
        texts
    }
}

/// A session’s way from a neighbour’s pack.
#[derive(Clone, Debug)]
pub struct Borrowed {
    /// The neighbour’s name in pack.yaml.
    pub lender: String,
    /// Where it stands in the neighbour’s pack.
    pub stands: Lent,
    /// What the neighbour’s pack is called.
    pub pack: String,
    /// The keys that were changed.
    pub changed: Vec<String>,
    /// The school that changed them.
    pub changed_by: Option<String>,
    /// Where it is said that it is borrowed.
    pub place: Place,
}

/// The floor and headroom a session needs.
#[derive(Clone, Debug)]
pub struct Space {
    pub length: Placed<Length>,
    pub width: Placed<Length>,
    pub height: Option<Placed<Length>>,
    /// Length and width of the corner that is missing from an L-shaped floor; a home’s only.
    pub notch: Option<(Length, Length)>,
    /// Never empty: both, where nothing was said.
    pub whereabouts: Vec<Whereabouts>,
    pub surfaces: Vec<Surface>,
}

/// How much of an adult's time a session needs.
#[derive(Clone, Debug)]
pub struct AdultTime {
    pub nearby: Option<Placed<Duration>>,
    pub helping: Option<Placed<Duration>>,
    pub why: Option<Placed<Line>>,
}

/// A film to watch before.
#[derive(Clone, Debug)]
pub struct Film {
    pub link: Placed<Line>,
    pub shows: Placed<Line>,
}

/// A picture with its alternative text.
#[derive(Clone, Debug)]
pub struct Picture {
    pub file: Placed<Line>,
    /// The path inside the pack, where it stays inside it.
    pub path: Option<String>,
    /// It is a neighbour’s.
    pub is_lent: bool,
    /// Whose it is and under which licence, where that is a neighbour’s to say.
    pub rights: Option<String>,
    pub alt: Option<Placed<Line>>,
    pub caption: Option<Placed<Line>>,
}

/// A review question and its model answer.
#[derive(Clone, Debug)]
pub struct Question {
    pub ask: Placed<Prose>,
    pub answer: Option<Placed<Prose>>,
    pub kind: Option<Placed<QuestionKind>>,
}

/// What to change for another space, task, thing or child.
#[derive(Clone, Debug, Default)]
pub struct Adaptations {
    pub space: Option<Placed<Prose>>,
    pub task: Option<Placed<Prose>>,
    pub equipment: Option<Placed<Prose>>,
    pub people: Option<Placed<Prose>>,
}

impl Adaptations {
    /// Those that are written, with their key, in the order they are shown.
    pub fn each(&self) -> Vec<(&'static str, &Placed<Prose>)> {
        let all = [
            ("space", &self.space),
            ("task", &self.task),
            ("equipment", &self.equipment),
            ("people", &self.people),
        ];
        all.into_iter().filter_map(|(key, text)| text.as_ref().map(|text| (key, text))).collect()
    }
}

/// Where a session stands in the department's work.
#[derive(Clone, Debug)]
pub struct Standing {
    pub state: Placed<State>,
    pub by: Vec<Placed<Line>>,
    pub on: Option<Placed<Date>>,
    pub look_again: Option<Placed<Date>>,
    pub changed: Vec<Placed<Line>>,
}
