//! Findings as a teacher reads them: the line shown, what is wrong, and a way out.

use std::fmt::Write as _;

use annotate_snippets::{AnnotationKind, Group, Level, Renderer, Snippet};
use rayon::prelude::*;

use crate::finding::{Finding, Severity, count_severity};
use crate::inspect::Allowed;
use crate::place::{FileText, Files};

/// A longer line is shown only around the place.
const WIDEST: usize = 110;

/// All findings, each with its line, then a line that counts them.
pub fn report_text(findings: &[Finding], files: &Files, in_colour: bool) -> String {
    let renderer =
        if in_colour { Renderer::styled() } else { Renderer::plain() }.term_width(WIDEST);
    // A library of thousands of sessions has tens of thousands of findings.
    let shown = findings.par_iter().map(|finding| render_finding(finding, files, &renderer));
    let mut report = String::new();
    for finding in shown.collect::<Vec<_>>() {
        let _ = writeln!(report, "{finding}\n");
    }
    report.push_str(&summary_of(findings));
    report.push('\n');
    report
}

fn render_finding(finding: &Finding, files: &Files, renderer: &Renderer) -> String {
    let level = match finding.severity {
        Severity::Problem => Level::ERROR,
        Severity::Warning => Level::WARNING,
        Severity::Advice => Level::NOTE,
    }
    .with_name(finding.severity.word());
    let file = files.get(finding.place.file);
    let title = level.primary_title(&finding.says).id(finding.code);
    let way_out = Level::HELP.with_name("way out").message(&finding.way_out);
    let group = Group::with_title(title);
    let group = if file.text.is_empty() {
        group.element(annotate_snippets::Origin::path(file.path.as_str()))
    } else {
        group.element(snippet(file, finding))
    };
    renderer.render(&[group.element(way_out)])
}

fn snippet<'f>(
    file: &'f FileText,
    finding: &Finding,
) -> Snippet<'f, annotate_snippets::Annotation<'f>> {
    let (start, end) = first_line_of(&file.text, finding);
    Snippet::source(&*file.text)
        .path(file.path.as_str())
        .annotation(AnnotationKind::Primary.span(start..end))
}

/// A long text is marked on its first line only.
fn first_line_of(text: &str, finding: &Finding) -> (usize, usize) {
    let start = (finding.place.start as usize).min(text.len());
    let end = (finding.place.end as usize).clamp(start, text.len());
    let marked = text.get(start..end).unwrap_or_default();
    let line = marked.lines().next().unwrap_or_default().trim_end();
    (start, start + line.len())
}

/// What is allowed to stay, a line each, with its reason; empty where nothing is.
pub fn report_allowed(allowed: &[Allowed], files: &Files) -> String {
    let line = |kept: &Allowed| {
        let finding = &kept.finding;
        let line = files.line_column(finding.place).line;
        let until = kept.allowance.until.as_ref();
        let until = until.map(|day| format!(" (until {})", day.value.in_words()));
        format!(
            "allowed: {}:{line}: {} [{}]\n    {}{}\n",
            files.get(finding.place.file).path,
            finding.says,
            finding.code,
            kept.allowance.why.value,
            until.unwrap_or_default(),
        )
    };
    allowed.iter().map(line).collect()
}

/// “2 problems, 1 warning.”
pub fn summary_of(findings: &[Finding]) -> String {
    let counted = |severity, one: &str, more: &str| match count_severity(findings, severity) {
        0 => None,
        1 => Some(format!("1 {one}")),
        count => Some(format!("{count} {more}")),
    };
    let parts: Vec<String> = [
        counted(Severity::Problem, "problem", "problems"),
        counted(Severity::Warning, "warning", "warnings"),
        counted(Severity::Advice, "piece of advice", "pieces of advice"),
    ]
    .into_iter()
    .flatten()
    .collect();
    if parts.is_empty() { "Nothing to mend.".into() } else { format!("{}.", parts.join(", ")) }
}
