//! The page of a unit for teachers: the plan with its reasons, effort by week, questions that come back, and
//! what of the curriculum is covered.

use serde::Serialize;

use super::Site;
use super::frame::{Frame, frame_of_unit, unit_root};
use super::html::{Html, Scribe};
use super::units::scribe_of;
use crate::pack::Unit;
use crate::plan::unit::{CoverPlan, Origin, PlannedDay, UnitPlan, UnitWeek};
use crate::prose::plain_line;
use crate::quantity::Duration;
use crate::render::quantities::Said;
use crate::render::unit::{
    UnitWords, active_share, clock, date_words, question_of, unit_page, week_title,
};
use crate::render::{Bundle, RenderFault, page_path};
use crate::words::Filling;

#[derive(Serialize, Clone, Debug)]
struct UnitTeachersPage {
    frame: Frame,
    title: Html,
    /// The families’ page, from their folder.
    href: String,
    dates: String,
    rows: Vec<PlanRow>,
    left_over: Option<String>,
    order: Option<String>,
    is_best_order: bool,
    weeks: Vec<EffortRow>,
    returns: String,
    questions: Vec<QuestionRow>,
    cover: Vec<String>,
    has_cover: bool,
    is_best_cover: bool,
}

#[derive(Serialize, Clone, Debug)]
struct PlanRow {
    week: u32,
    date: String,
    clock: String,
    /// The teachers’ page of the session.
    href: String,
    title: Html,
    why: String,
    changes: String,
    vigorous: String,
}

#[derive(Serialize, Clone, Debug)]
struct EffortRow {
    week: String,
    vigorous: String,
    active: String,
    share: u32,
    days: u32,
}

#[derive(Serialize, Clone, Debug)]
struct QuestionRow {
    date: String,
    asks: Vec<AskRow>,
}

#[derive(Serialize, Clone, Debug)]
struct AskRow {
    ask: String,
    answer: Option<String>,
    from: String,
    time: String,
}

/// The teachers’ page of every unit.
pub(super) fn render_unit_teachers(site: &Site<'_>) -> Result<Bundle, RenderFault> {
    let publication = site.publication;
    let mut bundle = Bundle::new();
    let wants = |unit: &Unit| publication.wants(&unit_page(unit));
    for (at, unit) in publication.pack.units.iter().enumerate().filter(|(_, unit)| wants(unit)) {
        let plan = &publication.units()[at];
        let page = show_plan(site, unit, plan);
        bundle.insert(unit_page(unit), site.templates.fill("teachers/unit.html", &page)?);
    }
    Ok(bundle)
}

fn show_plan(site: &Site<'_>, unit: &Unit, plan: &UnitPlan) -> UnitTeachersPage {
    let spacing = unit.bring_back;
    let figures = [
        ("after", Filling::Count(spacing.after_days)),
        ("growth", Filling::Count(spacing.growth)),
        ("most", Filling::Count(spacing.a_day)),
    ];
    UnitTeachersPage {
        frame: frame_of_unit(site, "unit", unit),
        title: scribe_of(site, "").line(&unit.title),
        href: unit_page(unit),
        dates: UnitWords::of(unit, plan, &site.words).dates,
        rows: plan.days.iter().map(|day| show_row(site, unit, plan, day)).collect(),
        left_over: show_left_over(site, unit, plan),
        order: (plan.open > 1).then(|| show_order(site, plan)),
        is_best_order: plan.is_best_order,
        weeks: plan.weeks.iter().map(|week| show_effort(site, week)).collect(),
        returns: site.words.say_with("unit-returns-rule", &figures),
        questions: show_questions(site, plan),
        has_cover: plan.cover.is_some(),
        is_best_cover: plan.cover.as_ref().is_some_and(|cover| cover.is_best),
        cover: plan.cover.as_ref().map(|cover| show_cover(site, cover)).unwrap_or_default(),
    }
}

fn show_row(site: &Site<'_>, unit: &Unit, plan: &UnitPlan, day: &PlannedDay) -> PlanRow {
    let session = &site.publication.pack.sessions[day.session];
    let (root, _) = site.ways_from(&unit_root(unit));
    let join = |things: &[String]| {
        things.iter().map(|thing| plain_line(thing)).collect::<Vec<_>>().join(", ")
    };
    let changed = [("+", &day.get_out), ("−", &day.put_back)];
    let changed = changed.iter().filter(|(_, things)| !things.is_empty());
    PlanRow {
        week: day.slot.week,
        date: date_words(day.slot.date, &site.words),
        clock: clock(day),
        href: page_path(&session.id),
        title: Scribe::new(site.publication.pack, &root).line(&session.title),
        why: show_why(site, plan, day),
        changes: changed
            .map(|(sign, things)| format!("{sign} {}", join(things)))
            .collect::<Vec<_>>()
            .join("; "),
        vigorous: minutes(site, day.vigorous),
    }
}

fn show_why(site: &Site<'_>, plan: &UnitPlan, day: &PlannedDay) -> String {
    match day.origin {
        Origin::Added(at) => {
            let codes = plan.cover.as_ref().and_then(|cover| cover.picked.get(at));
            let codes = codes.map(|picked| picked.covers.join(", ")).unwrap_or_default();
            site.words.say_with("unit-why-cover", &[("codes", Filling::Text(&codes))])
        }
        Origin::Entry(_) if day.is_chosen => site.words.say("unit-why-order"),
        Origin::Entry(_) => site.words.say("unit-why-named"),
    }
}

fn show_left_over(site: &Site<'_>, unit: &Unit, plan: &UnitPlan) -> Option<String> {
    let name = |origin: &Origin| match origin {
        Origin::Entry(at) => Some(unit.entries[*at].named.to_string()),
        Origin::Added(at) => {
            let picked = plan.cover.as_ref()?.picked.get(*at)?;
            Some(site.publication.pack.sessions[picked.session].id.to_string())
        }
    };
    let names: Vec<String> = plan.left_over.iter().filter_map(name).collect();
    let names = names.join(", ");
    (!names.is_empty())
        .then(|| site.words.say_with("unit-left-over", &[("sessions", Filling::Text(&names))]))
}

fn show_order(site: &Site<'_>, plan: &UnitPlan) -> String {
    let lost = minutes(site, Duration::from_seconds(plan.order.active_lost));
    let figures = [
        ("grounds", Filling::Count(plan.order.grounds_later)),
        ("vigorous", Filling::Count(plan.order.vigorous_running)),
        ("same", Filling::Count(plan.order.same_running)),
        ("things", Filling::Count(plan.order.things_changed)),
        ("lost", Filling::Text(&lost)),
    ];
    site.words.say_with("unit-order-rule", &figures)
}

fn minutes(site: &Site<'_>, length: Duration) -> String {
    length.say(&site.words)
}

fn show_effort(site: &Site<'_>, week: &UnitWeek) -> EffortRow {
    EffortRow {
        week: week_title(week.week, &site.words),
        vigorous: minutes(site, week.vigorous),
        active: minutes(site, week.active),
        share: active_share(week),
        days: week.vigorous_days,
    }
}

fn show_questions(site: &Site<'_>, plan: &UnitPlan) -> Vec<QuestionRow> {
    let row = |day: &PlannedDay| QuestionRow {
        date: date_words(day.slot.date, &site.words),
        asks: day
            .remember
            .iter()
            .map(|back| {
                let (ask, answer, from) = question_of(site.publication.pack, *back);
                let time = [("time", Filling::Count(back.time))];
                AskRow { ask, answer, from, time: site.words.say_with("unit-returns-time", &time) }
            })
            .collect(),
    };
    plan.days.iter().filter(|day| !day.remember.is_empty()).map(row).collect()
}

/// What is covered, by what, and what is not, in sentences.
fn show_cover(site: &Site<'_>, cover: &CoverPlan) -> Vec<String> {
    let say = |key: &str, codes: &[String]| {
        let codes = codes.join(", ");
        (!codes.is_empty()).then(|| site.words.say_with(key, &[("codes", Filling::Text(&codes))]))
    };
    let added = cover.picked.iter().map(|picked| {
        let title = plain_line(&site.publication.pack.sessions[picked.session].title);
        let codes = picked.covers.join(", ");
        let with = [("session", Filling::Text(&title)), ("codes", Filling::Text(&codes))];
        site.words.say_with("unit-cover-added", &with)
    });
    let mut said: Vec<String> = say("unit-cover-met", &cover.met).into_iter().collect();
    said.extend(added);
    said.extend(say("unit-cover-none", &cover.out_of_reach));
    said.extend(say("unit-cover-room", &cover.no_room));
    said
}
