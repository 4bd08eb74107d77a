//! The pages for teachers: all sessions at a glance, and a page for each with its time line, plans, answers
//! and standing.

use serde::Serialize;

use super::Site;
use super::equipment_matrix::{EquipmentMatrix, show_matrix};
use super::facts::{Facts, facts_of};
use super::frame::{Frame, frame_of_page, frame_of_session, root_of};
use super::html::{Html, Scribe};
use super::part::PartView;
use super::plans::show_time_line;
use super::session::{QuestionView, show_parts, show_review};
use super::teacher_plans::{TeacherPlans, show_teacher_plans};
use super::things::{Link, link_to};
use super::units::{UnitLink, unit_links};
use crate::pack::{self, Session};
use crate::plan::Plans;
use crate::prose::plain_line;
use crate::render::quantities::Said;
use crate::render::{RenderFault, page_path};

/// All sessions at a glance.
#[derive(Serialize, Clone, Debug)]
struct TeachersPage {
    frame: Frame,
    sessions: Vec<Glance>,
    matrix: EquipmentMatrix,
    units: Vec<UnitLink>,
    /// There is a page about the coverage of the curriculum.
    has_coverage: bool,
}

/// A session in one row.
#[derive(Serialize, Clone, Debug)]
struct Glance {
    page: Link,
    facts: Facts,
    active_share: u32,
    /// The Flesch–Kincaid grade of what a child reads; nothing where there are too few words.
    grade: Option<String>,
    standing: Option<StandingView>,
}

/// One session on a page of its own.
#[derive(Serialize, Clone, Debug)]
struct LessonPage {
    frame: Frame,
    session: Lesson,
}

#[derive(Serialize, Clone, Debug)]
struct Lesson {
    /// The family’s page, from the families’ folder; kept with a notice where the session is retired.
    href: Option<String>,
    title: String,
    facts: Facts,
    line: Html,
    plans: TeacherPlans,
    /// Moderate and vigorous work, and its share of the slot in per cent.
    active: String,
    active_share: u32,
    parts: Vec<PartView>,
    objectives: Vec<Html>,
    success: Vec<Html>,
    codes: Vec<String>,
    review: Vec<QuestionView>,
    standing: Option<StandingView>,
}

#[derive(Serialize, Clone, Debug)]
struct StandingView {
    state: &'static str,
    by: Option<String>,
    on: Option<String>,
    look_again: Option<String>,
    changed: Vec<Html>,
}

/// `index.html` of the teachers’ folder.
pub(super) fn render_teachers(site: &Site<'_>) -> Result<Vec<u8>, RenderFault> {
    let (title, about) = (site.words.say("nav-teachers"), site.words.say("teachers-intro"));
    let page = TeachersPage {
        frame: frame_of_page(site, "teachers", &title, &about),
        sessions: site
            .sessions()
            .map(|(session, plans)| show_glance(site, session, plans))
            .collect(),
        matrix: show_matrix(site),
        units: unit_links(site),
        has_coverage: site.publication.pack.curriculum.is_some(),
    };
    site.templates.fill("teachers.html", &page)
}

/// The page of one session and its path in the teachers’ folder.
pub(super) fn render_lesson(
    site: &Site<'_>,
    session: &Session,
    plans: &Plans,
) -> Result<(String, Vec<u8>), RenderFault> {
    let frame = frame_of_session(site, "lesson", session);
    let page = LessonPage { frame, session: show_lesson(site, session, plans) };
    Ok((page_path(&session.id), site.templates.fill("lesson.html", &page)?))
}

fn show_glance(site: &Site<'_>, session: &Session, plans: &Plans) -> Glance {
    let (root, _) = site.ways_from("");
    let reading =
        plans.reading(session, site.publication.pack).filter(|reading| reading.is_enough());
    let scores = reading.and_then(|reading| reading.whole.scores.as_ref());
    Glance {
        page: link_to(session),
        facts: facts_of(session, &plans.time, &site.words),
        active_share: active_share(session, plans),
        grade: scores.map(|scores| site.words.number(&format!("{:.1}", scores.flesch_kincaid))),
        standing: session
            .standing
            .as_deref()
            .map(|standing| show_standing(&Scribe::new(site.publication.pack, &root), standing)),
    }
}

fn active_share(session: &Session, plans: &Plans) -> u32 {
    let slot = session.slot.seconds().max(1);
    (plans.effort.active().seconds() * 200 + slot) / (slot * 2)
}

fn show_lesson(site: &Site<'_>, session: &Session, plans: &Plans) -> Lesson {
    let pack = site.publication.pack;
    let (root, _) = site.ways_from(&root_of(session));
    let scribe = Scribe::new(pack, &root);
    Lesson {
        href: Some(page_path(&session.id)),
        title: plain_line(&session.title),
        facts: facts_of(session, &plans.time, &site.words),
        line: show_time_line(site, session, plans),
        plans: show_teacher_plans(site, session, plans),
        active: plans.effort.active().say(&site.words),
        active_share: active_share(session, plans),
        parts: show_parts(site, &scribe, session, plans),
        objectives: scribe.lines(&session.objectives),
        success: scribe.lines(&session.success),
        codes: session.curriculum.iter().map(ToString::to_string).collect(),
        review: show_review(&scribe, session),
        standing: session.standing.as_deref().map(|standing| show_standing(&scribe, standing)),
    }
}

fn show_standing(scribe: &Scribe<'_>, standing: &pack::Standing) -> StandingView {
    let by: Vec<String> = standing.by.iter().map(|initials| plain_line(initials)).collect();
    StandingView {
        state: standing.state.word(),
        by: (!by.is_empty()).then(|| by.join(", ")),
        on: standing.on.as_ref().map(|date| date.value.in_words()),
        look_again: standing.look_again.as_ref().map(|date| date.value.in_words()),
        changed: scribe.lines(&standing.changed),
    }
}
