//! Findings as JSON: one list of objects, for scripts.

use serde::Serialize;

use crate::finding::Finding;
use crate::inspect::Allowed;
use crate::place::Files;

#[derive(Serialize)]
struct Row<'f> {
    file: &'f str,
    line: usize,
    column: usize,
    code: &'f str,
    severity: &'f str,
    message: &'f str,
    way_out: &'f str,
    /// The reason, where it is allowed to stay.
    #[serde(skip_serializing_if = "Option::is_none")]
    allowed: Option<&'f str>,
}

/// A JSON list with file, line, column (both from 1), code, severity, message and way out;
/// what is allowed to stay comes last, with its reason.
pub fn report_json(findings: &[Finding], allowed: &[Allowed], files: &Files) -> String {
    let found = findings.iter().map(|finding| (finding, None));
    let kept = allowed.iter().map(|kept| (&kept.finding, Some(kept.allowance.why.0.as_str())));
    let rows: Vec<Row<'_>> = found
        .chain(kept)
        .map(|(finding, allowed)| {
            let at = files.line_column(finding.place);
            Row {
                file: &files.get(finding.place.file).path,
                line: at.line,
                column: at.column,
                code: finding.code,
                severity: finding.severity.word(),
                message: &finding.says,
                way_out: &finding.way_out,
                allowed,
            }
        })
        .collect();
    let mut json = serde_json::to_string_pretty(&rows).expect("text and numbers are always JSON");
    json.push('\n');
    json
}
