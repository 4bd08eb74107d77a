//! The coverage matrix as a table for spreadsheets (RFC 4180): a row a statement, a column a session and a
//! column a year group; UTF-8 with its mark, and no cell that a spreadsheet would run as a formula.

use crate::pack::Pack;
use crate::plan::CoveragePlan;
use crate::progress::spreadsheet::write_table;
use crate::prose::plain_line;
use crate::words::Words;

/// Writes the matrix.
pub fn write_coverage(pack: &Pack, plan: &CoveragePlan, words: &Words) -> Vec<u8> {
    let mut head: Vec<String> = ["code", "statement", "ages", "sessions", "note"]
        .iter()
        .map(|name| (*name).to_owned())
        .collect();
    head.extend(plan.sessions.iter().map(|at| pack.sessions[*at].id.to_string()));
    head.extend(plan.groups.iter().map(|group| plain_line(&group.name)));
    let said = pack.curriculum.iter().flat_map(|curriculum| curriculum.statements.values());
    let rows = plan.statements.iter().zip(said).map(|(statement, said)| {
        let note = match (statement.has_gap(), statement.is_often) {
            (true, _) => words.say("coverage-gap"),
            (false, true) => words.say("coverage-often"),
            (false, false) => String::new(),
        };
        let mut row = vec![
            statement.code.clone(),
            plain_line(&said.says),
            said.ages.map(|ages| ages.to_string()).unwrap_or_default(),
            statement.sessions.len().to_string(),
            note,
        ];
        let meets =
            |at: &usize| if statement.sessions.binary_search(at).is_ok() { "1" } else { "" };
        row.extend(plan.sessions.iter().map(|at| meets(at).to_owned()));
        let count =
            |count: &Option<usize>| count.map(|count| count.to_string()).unwrap_or_default();
        row.extend(statement.by_group.iter().map(count));
        row
    });
    let head: Vec<&str> = head.iter().map(String::as_str).collect();
    write_table(&head, rows)
}
