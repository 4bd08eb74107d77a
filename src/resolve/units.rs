//! Units of work: what is not said gets its usual value, days their order in the week.

use crate::pack::{BringBack, Cover, GatherStep, NoSchool, SessionId, Unit, UnitDay, UnitEntry};
use crate::place::{Files, Placed};
use crate::read::Written;
use crate::read::translation::TranslatedUnit;
use crate::read::unit_file::{BringBackDoc, NoSchoolDoc, UnitDoc, UnitSessionDoc};

/// The units of a pack in the order of their first days, then of their addresses.
pub(super) fn resolve_units(
    units: Vec<Written<UnitDoc>>,
    files: &Files,
    language: &str,
) -> Vec<Unit> {
    let resolve = |unit: Written<UnitDoc>| {
        let path = files.get(unit.file).path.clone();
        resolve_unit(unit, &path, language)
    };
    let mut units: Vec<Unit> = units.into_iter().map(resolve).collect();
    units.sort_by(|a, b| (a.starts.value, &a.id, a.file).cmp(&(b.starts.value, &b.id, b.file)));
    units
}

/// A unit has no more: two days for each of the week, a session on most days of a year, a holiday every week.
const MOST_DAYS: usize = 14;
const MOST_SESSIONS: usize = 400;
const MOST_HOLIDAYS: usize = 100;

/// A unit under the id of the original that a translation is laid over.
pub(super) fn resolve_translated_unit(translated: TranslatedUnit) -> (String, Unit) {
    let TranslatedUnit { language, file, original, doc, is_old } = translated;
    let unit = resolve_unit(Written { file, doc }, &original, &language);
    (language, Unit { is_old_translation: is_old, ..unit })
}

/// A unit with the texts of a language, by the path that its id is made from.
fn resolve_unit(written: Written<UnitDoc>, path: &str, language: &str) -> Unit {
    let Written { file, mut doc } = written;
    let was_cut = doc.days.len() > MOST_DAYS
        || doc.sessions.len() > MOST_SESSIONS
        || doc.no_school.len() > MOST_HOLIDAYS;
    doc.days.truncate(MOST_DAYS);
    doc.sessions.truncate(MOST_SESSIONS);
    doc.no_school.truncate(MOST_HOLIDAYS);
    let mut days: Vec<UnitDay> =
        doc.days.into_iter().map(|day| UnitDay { day: day.day, at: day.at.value }).collect();
    days.sort_by_key(|day| (day.day.value, day.at));
    Unit {
        id: SessionId::of_path(path.strip_prefix("units/").unwrap_or(path)),
        file,
        language: language.to_owned(),
        is_old_translation: false,
        title: doc.title,
        summary: doc.summary,
        ages: doc.ages,
        starts: doc.starts,
        weeks: doc.weeks,
        days,
        time_zone: doc.time_zone,
        no_school: doc.no_school.into_iter().map(resolve_no_school).collect(),
        entries: doc.sessions.into_iter().map(resolve_entry).collect(),
        cover: doc.cover.map(|cover| Cover {
            statements: cover.value.statements,
            at_most: cover.value.at_most.map(|most| most.value),
        }),
        gather: doc
            .gather
            .into_iter()
            .map(|step| GatherStep { week: step.week, things: step.things })
            .collect(),
        bring_back: doc.bring_back.map(|doc| resolve_bring_back(&doc)).unwrap_or_default(),
        changed: doc.changed,
        was_cut,
    }
}

/// Days written the wrong way round are meant the right way round.
fn resolve_no_school(doc: NoSchoolDoc) -> NoSchool {
    let to = doc.to.map_or(doc.from.value, |to| to.value);
    let from = Placed::new(doc.from.value.min(to), doc.from.place);
    NoSchool { to: doc.from.value.max(to), from, what: doc.what }
}

fn resolve_entry(UnitSessionDoc(doc): UnitSessionDoc) -> UnitEntry {
    UnitEntry { named: doc.session, week: doc.week, day: doc.day }
}

fn resolve_bring_back(doc: &BringBackDoc) -> BringBack {
    let usual = BringBack::default();
    BringBack {
        after_days: doc.after_days.as_ref().map_or(usual.after_days, |days| days.value.max(1)),
        growth: doc.growth.as_ref().map_or(usual.growth, |growth| growth.value.max(1)),
        a_day: doc.a_day.as_ref().map_or(usual.a_day, |most| most.value),
    }
}
