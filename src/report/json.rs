//! Findings as JSON: one list of objects, for scripts.

use serde::Serialize;

use crate::finding::Finding;
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
}

/// A JSON list with file, line, column (both from 1), code, severity, message and way out.
pub fn report_json(findings: &[Finding], files: &Files) -> String {
    let rows: Vec<Row<'_>> = findings
        .iter()
        .map(|finding| {
            let at = files.line_column(finding.place);
            Row {
                file: &files.get(finding.place.file).path,
                line: at.line,
                column: at.column,
                code: finding.code,
                severity: finding.severity.word(),
                message: &finding.says,
                way_out: &finding.way_out,
            }
        })
        .collect();
    let mut json = serde_json::to_string_pretty(&rows).expect("text and numbers are always JSON");
    json.push('\n');
    json
}
