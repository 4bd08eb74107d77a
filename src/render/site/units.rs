//! The page of a unit for families: what to gather, week by week what is done when, and which questions come back.

use serde::Serialize;

use super::Site;
use super::frame::{Frame, frame_of_unit, unit_root};
use super::html::{Html, Scribe};
use crate::pack::{NoSchool, Unit};
use crate::plan::unit::{BackAgain, PlannedDay, UnitPlan};
use crate::prose::plain_line;
use crate::quantity::Date;
use crate::render::equipment_phrases::counted_things;
use crate::render::phrases::comma;
use crate::render::quantities::Said;
use crate::render::unit::{
    UnitWords, clock, date_words, span_words, unit_calendar, unit_gather, unit_page, unit_poster,
    unit_remember, week_title, write_calendar,
};
use crate::render::{Bundle, RenderFault, page_path};
use crate::words::Filling;

#[derive(Serialize, Clone, Debug)]
pub(super) struct UnitPage {
    frame: Frame,
    title: Html,
    summary: Option<Html>,
    is_old_translation: bool,
    ages: Option<String>,
    dates: String,
    times: String,
    zone: Option<String>,
    calendar: String,
    papers: Vec<UnitPaper>,
    gather: Vec<String>,
    is_least: bool,
    steps: Vec<StepView>,
    weeks: Vec<WeekView>,
}

/// Something to print.
#[derive(Serialize, Clone, Debug)]
struct UnitPaper {
    href: String,
    key: &'static str,
}

#[derive(Serialize, Clone, Debug)]
struct StepView {
    title: String,
    things: String,
}

#[derive(Serialize, Clone, Debug)]
struct WeekView {
    anchor: u32,
    title: String,
    days: Vec<DayView>,
    /// Days without school in this week and before the next.
    none: Vec<NoneView>,
}

#[derive(Serialize, Clone, Debug)]
struct NoneView {
    what: Option<Html>,
    dates: String,
}

#[derive(Serialize, Clone, Debug)]
struct DayView {
    date: String,
    iso: String,
    clock: String,
    length: String,
    href: String,
    title: Html,
    get_out: Option<String>,
    put_back: Option<String>,
    /// It is not the first, and needs what the one before needed.
    is_same: bool,
    remember: Vec<RememberView>,
}

/// A question that comes back.
#[derive(Serialize, Clone, Debug)]
struct RememberView {
    ask: Html,
    answer: Option<Html>,
    from: Html,
    /// Where its answer stands in a book.
    anchor: Option<String>,
    #[serde(skip)]
    back: BackAgain,
}

impl UnitPage {
    /// The same with questions that lead to their answers elsewhere, by the anchors given.
    pub(super) fn with_answers(mut self, anchor: &dyn Fn(BackAgain) -> Option<String>) -> Self {
        let days = self.weeks.iter_mut().flat_map(|week| &mut week.days);
        for question in days.flat_map(|day| &mut day.remember) {
            question.anchor = question.answer.as_ref().and_then(|_| anchor(question.back));
        }
        self
    }
}

/// A unit in the list of the front page.
#[derive(Serialize, Clone, Debug)]
pub(super) struct UnitLink {
    href: String,
    title: Html,
    summary: Option<Html>,
    dates: String,
}

/// The units for the front page.
pub(super) fn unit_links(site: &Site<'_>) -> Vec<UnitLink> {
    let publication = site.publication;
    let link = |(unit, plan): (&Unit, &UnitPlan)| {
        let scribe = scribe_of(site, "");
        UnitLink {
            href: unit_page(unit),
            title: scribe.line(&unit.title),
            summary: scribe.line_if_any(unit.summary.as_ref()),
            dates: UnitWords::of(unit, plan, &site.words).dates,
        }
    };
    publication.pack.units.iter().zip(publication.units()).map(link).collect()
}

/// Every unit’s page and calendar.
pub(super) fn render_units(site: &Site<'_>) -> Result<Bundle, RenderFault> {
    let publication = site.publication;
    let mut bundle = Bundle::new();
    let wants = |unit: &Unit| {
        publication.wants(&unit_page(unit)) || publication.wants(&unit_calendar(unit))
    };
    for (at, unit) in publication.pack.units.iter().enumerate().filter(|(_, unit)| wants(unit)) {
        let plan = &publication.units()[at];
        let page = show_unit(site, unit, plan);
        bundle.insert(unit_page(unit), site.templates.fill("unit.html", &page)?);
        bundle.insert(unit_calendar(unit), write_calendar(publication, unit, plan));
    }
    Ok(bundle)
}

/// For what units and sessions say.
pub(super) fn scribe_of<'p>(site: &Site<'p>, root: &str) -> Scribe<'p> {
    Scribe::new(site.publication.pack, root).above(&site.up())
}

pub(super) fn show_unit(site: &Site<'_>, unit: &Unit, plan: &UnitPlan) -> UnitPage {
    let root = unit_root(unit);
    let scribe = scribe_of(site, &root);
    let said = UnitWords::of(unit, plan, &site.words);
    let papers = [
        (unit_poster(unit), "unit-poster"),
        (unit_remember(unit), "unit-remember-sheet"),
        (unit_gather(unit), "unit-gather-sheet"),
    ];
    let is_printed = |key: &str| match key {
        "unit-remember-sheet" => plan.days.iter().any(|day| !day.remember.is_empty()),
        "unit-gather-sheet" => !plan.gather.things.is_empty(),
        _ => !plan.days.is_empty(),
    };
    UnitPage {
        frame: frame_of_unit(site, "unit", unit),
        title: scribe.line(&unit.title),
        summary: scribe.line_if_any(unit.summary.as_ref()),
        is_old_translation: unit.is_old_translation,
        ages: unit.ages.as_ref().map(ToString::to_string),
        dates: said.dates,
        times: said.times,
        zone: unit.time_zone.as_ref().map(|zone| zone.replace('_', " ")),
        calendar: unit_calendar(unit),
        papers: papers
            .into_iter()
            .filter(|(_, key)| is_printed(key))
            .map(|(href, key)| UnitPaper { href, key })
            .collect(),
        gather: plan.gather.things.iter().map(counted_things).collect(),
        is_least: plan.gather.is_proven,
        steps: unit.gather.iter().map(|step| show_step(site, step)).collect(),
        weeks: show_weeks(site, unit, plan),
    }
}

fn show_step(site: &Site<'_>, step: &crate::pack::GatherStep) -> StepView {
    let things: Vec<String> = step.things.iter().map(|thing| plain_line(thing)).collect();
    let week = [("week", Filling::Count(step.week.value))];
    StepView {
        title: site.words.say_with("unit-gather-by", &week),
        things: things.join(comma(&site.words)),
    }
}

fn show_weeks(site: &Site<'_>, unit: &Unit, plan: &UnitPlan) -> Vec<WeekView> {
    let mut numbers: Vec<u32> = plan.slots.iter().map(|slot| slot.week).collect();
    numbers.dedup();
    let monday_of = |week: u32| {
        let slot = plan.slots.iter().find(|slot| slot.week == week)?;
        Some(slot.date.plus_days(-slot.date.days_after_monday()))
    };
    let week = |number: u32| WeekView {
        anchor: number,
        title: week_title(number, &site.words),
        days: plan
            .days
            .iter()
            .enumerate()
            .filter(|(_, day)| day.slot.week == number)
            .map(|(at, day)| show_day(site, unit, day, at == 0))
            .collect(),
        none: match (monday_of(number), monday_of(number + 1)) {
            (Some(from), Some(to)) => show_none(site, unit, from, to),
            (Some(from), None) => show_none(site, unit, from, from.plus_days(7)),
            _ => Vec::new(),
        },
    };
    numbers.into_iter().map(week).collect()
}

/// The days without school that begin in a span.
fn show_none(site: &Site<'_>, unit: &Unit, from: Date, to: Date) -> Vec<NoneView> {
    let begins = |days: &&NoSchool| (from..to).contains(&days.from.value);
    let scribe = scribe_of(site, &unit_root(unit));
    let show = |days: &NoSchool| NoneView {
        what: scribe.line_if_any(days.what.as_ref()),
        dates: span_words(days.from.value, days.to, &site.words),
    };
    unit.no_school.iter().filter(begins).map(show).collect()
}

fn show_day(site: &Site<'_>, unit: &Unit, day: &PlannedDay, is_first: bool) -> DayView {
    let pack = site.publication.pack;
    let session = &pack.sessions[day.session];
    let listed = |key: &str, things: &[String]| {
        let things: Vec<String> = things.iter().map(|thing| plain_line(thing)).collect();
        let things = things.join(", ");
        (!things.is_empty())
            .then(|| site.words.say_with(key, &[("things", Filling::Text(&things))]))
    };
    DayView {
        date: date_words(day.slot.date, &site.words),
        iso: format!("{}T{}", day.slot.date, clock(day)),
        clock: clock(day),
        length: session.slot.say(&site.words),
        href: page_path(&session.id),
        title: told(site, unit).line(&session.title),
        get_out: listed("unit-get-out", &day.get_out),
        put_back: listed("unit-put-back", &day.put_back),
        is_same: !is_first && day.get_out.is_empty() && day.put_back.is_empty(),
        remember: day.remember.iter().filter_map(|back| show_back(site, unit, *back)).collect(),
    }
}

/// A scribe on the page of a unit.
fn told<'p>(site: &Site<'p>, unit: &Unit) -> Scribe<'p> {
    scribe_of(site, &unit_root(unit))
}

fn show_back(site: &Site<'_>, unit: &Unit, back: BackAgain) -> Option<RememberView> {
    let session = &site.publication.pack.sessions[back.session];
    let question = session.review.get(back.question)?;
    let scribe = told(site, unit);
    Some(RememberView {
        ask: scribe.prose(&question.ask),
        answer: question.answer.as_ref().map(|answer| scribe.prose(answer)),
        from: scribe.line(&session.title),
        anchor: None,
        back,
    })
}
