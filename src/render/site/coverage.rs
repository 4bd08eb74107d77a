//! The coverage of the curriculum for teachers: statements against sessions, and against year groups.

use serde::Serialize;

use super::Site;
use super::frame::{Frame, frame_of_page};
use super::html::{Html, loose_line};
use super::things::{Link, link_to};
use crate::plan::{CoveragePlan, OFTEN, StatementCoverage, plan_coverage};
use crate::prose::plain_line;
use crate::render::unit::write_coverage;
use crate::render::{Bundle, RenderFault};
use crate::words::Filling;

/// A wider matrix can’t be read on a screen; the table for spreadsheets has every session.
const MOST_COLUMNS: usize = 40;

const TABLE: &str = "coverage.csv";

#[derive(Serialize, Clone, Debug)]
struct CoveragePage {
    frame: Frame,
    title: Html,
    source: Option<Html>,
    licence: Option<Html>,
    table: &'static str,
    key: String,
    /// Every statement is met for every year group it is for.
    is_whole: bool,
    groups: Vec<Html>,
    /// Empty where there are too many to show.
    sessions: Vec<Link>,
    statements: Vec<StatementRow>,
}

#[derive(Serialize, Clone, Debug)]
struct StatementRow {
    code: String,
    says: Html,
    ages: Option<String>,
    count: usize,
    has_gap: bool,
    is_often: bool,
    /// In the order of the sessions.
    meets: Vec<bool>,
    groups: Vec<GroupCell>,
}

#[derive(Serialize, Clone, Debug)]
struct GroupCell {
    is_for: bool,
    count: usize,
}

/// The page and the table, where the pack has a curriculum list.
pub(super) fn render_coverage(site: &Site<'_>) -> Result<Bundle, RenderFault> {
    let pack = site.publication.pack;
    let (Some(list), Some(plan)) = (&pack.curriculum, plan_coverage(pack)) else {
        return Ok(Bundle::new());
    };
    let (title, about) = (site.words.say("coverage-title"), site.words.say("coverage-lead"));
    let line = |text: &Option<String>| text.as_ref().map(|text| loose_line(text));
    let least = u32::try_from(OFTEN).unwrap_or(u32::MAX);
    let shown = if plan.sessions.len() <= MOST_COLUMNS { plan.sessions.as_slice() } else { &[] };
    let said = list.statements.values();
    let page = CoveragePage {
        frame: frame_of_page(site, "coverage", &title, &about),
        title: loose_line(&list.title),
        source: line(&list.source),
        licence: line(&list.licence),
        table: TABLE,
        key: site.words.say_with("coverage-key", &[("least", Filling::Count(least))]),
        is_whole: !plan.statements.iter().any(StatementCoverage::has_gap),
        groups: plan.groups.iter().map(|group| loose_line(&group.name)).collect(),
        sessions: shown.iter().map(|at| link_to(&pack.sessions[*at])).collect(),
        statements: plan
            .statements
            .iter()
            .zip(said)
            .map(|(statement, said)| show_statement(&plan, shown, statement, said))
            .collect(),
    };
    Ok(Bundle::from([
        ("coverage.html".into(), site.templates.fill("teachers/coverage.html", &page)?),
        (TABLE.into(), write_coverage(pack, &plan, &site.words)),
    ]))
}

fn show_statement(
    plan: &CoveragePlan,
    shown: &[usize],
    statement: &StatementCoverage,
    said: &crate::pack::Statement,
) -> StatementRow {
    debug_assert_eq!(statement.by_group.len(), plan.groups.len());
    StatementRow {
        code: plain_line(&statement.code),
        says: loose_line(&said.says),
        ages: said.ages.map(|ages| ages.to_string()),
        count: statement.sessions.len(),
        has_gap: statement.has_gap(),
        is_often: statement.is_often,
        meets: shown.iter().map(|at| statement.sessions.binary_search(at).is_ok()).collect(),
        groups: statement
            .by_group
            .iter()
            .map(|count| GroupCell { is_for: count.is_some(), count: count.unwrap_or(0) })
            .collect(),
    }
}
