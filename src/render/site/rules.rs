//! The reference of every rule of `inspect`, made from what the rules say of themselves.

use serde::Serialize;

use super::Site;
use super::frame::{Frame, frame_of_page};
use super::html::{Html, loose_line, loose_prose};
use crate::inspect::{Rule, rules};
use crate::render::RenderFault;

#[derive(Serialize, Clone, Debug)]
struct RulesPage {
    frame: Frame,
    rules: Vec<RuleEntry>,
}

#[derive(Serialize, Clone, Debug)]
struct RuleEntry {
    code: &'static str,
    asks: Html,
    severity: &'static str,
    why: Html,
    source: Option<Html>,
    bad: &'static str,
    good: &'static str,
}

pub(super) fn render_rules(site: &Site<'_>) -> Result<Vec<u8>, RenderFault> {
    let (title, about) = (site.words.say("nav-rules"), site.words.say("rules-intro"));
    let page = RulesPage {
        frame: frame_of_page(site, "rules", &title, &about),
        rules: rules::ALL.iter().map(show_rule).collect(),
    };
    site.templates.fill("rules.html", &page)
}

fn show_rule(rule: &Rule) -> RuleEntry {
    RuleEntry {
        code: rule.code,
        asks: loose_line(rule.asks),
        severity: rule.severity.word(),
        why: loose_prose(rule.why),
        source: (!rule.source.is_empty()).then(|| loose_line(rule.source)),
        bad: rule.bad.trim(),
        good: rule.good.trim(),
    }
}
