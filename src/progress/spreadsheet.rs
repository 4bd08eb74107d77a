//! Progress as tables for the school’s system: comma-separated, UTF-8 with its mark so that
//! spreadsheets know it, and no cell that one would run as a formula.

use super::model::{Progress, TaskProgress};
use super::phrases::Speaker;

/// What makes a spreadsheet take a cell for a formula (OWASP, CSV injection).
const FORMULA_SIGNS: [char; 6] = ['=', '+', '-', '@', '\t', '\r'];

/// A cell made safe: a leading apostrophe turns what looks like a formula into words. A plain number
/// stays a number.
pub fn safe_cell(text: &str) -> String {
    let is_number = text.parse::<f64>().is_ok_and(f64::is_finite);
    let looks_run = text.trim_start_matches(' ').starts_with(FORMULA_SIGNS);
    if looks_run && !is_number { format!("'{text}") } else { text.to_owned() }
}

/// One row a child and task: marks in their unit, as numbers where they are numbers.
pub fn write_marks(progress: &Progress, speaker: Speaker<'_>) -> Vec<u8> {
    let head = [
        "code", "session", "part", "unit", "first", "last", "change", "verdict", "best", "best on",
        "tries", "points", "next",
    ];
    let rows = progress.tasks.iter().flat_map(|task| mark_rows(task, speaker));
    write_table(&head, rows)
}

fn mark_rows<'t>(
    task: &'t TaskProgress,
    speaker: Speaker<'t>,
) -> impl Iterator<Item = Vec<String>> + use<'t> {
    let id = speaker.session(task.at.session).id.to_string();
    let part = speaker.part_title(task.at.session, task.at.part);
    let rule = task.plan.rule;
    task.children.iter().map(move |child| {
        let number = |text: String| text.split(' ').next().unwrap_or_default().replace('−', "-");
        let show = |mark| number(rule.show(mark));
        let unit = rule.show(crate::plan::marks::Mark::from_steps(0));
        let unit = unit.split_once(' ').map_or("", |(_, unit)| unit).to_owned();
        let (first, last) = child.ends().unzip();
        let (best, best_on) = child.best.unzip();
        let points = best.and_then(|best| speaker.points(&task.plan, best));
        vec![
            child.code.clone(),
            id.clone(),
            part.clone(),
            unit,
            first.map(show).unwrap_or_default(),
            last.map(show).unwrap_or_default(),
            child.change.map(|change| number(change.show(rule))).unwrap_or_default(),
            speaker.verdict(child),
            best.map(show).unwrap_or_default(),
            best_on.map(|date| date.to_string()).unwrap_or_default(),
            child.attempts().to_string(),
            points.map(|points| points.to_string()).unwrap_or_default(),
            speaker.next(task, child),
        ]
    })
}

/// One row a child and task: the comment to edit.
pub fn write_comments(progress: &Progress, speaker: Speaker<'_>) -> Vec<u8> {
    let rows = progress.tasks.iter().flat_map(|task| {
        task.children.iter().map(move |child| {
            let session = speaker.session_title(task.at.session);
            vec![child.code.clone(), session, speaker.comment(task, child)]
        })
    });
    write_table(&["code", "session", "comment"], rows)
}

/// One row an answer, as it was given.
pub fn write_answers(progress: &Progress, speaker: Speaker<'_>) -> Vec<u8> {
    let rows = progress.questions.iter().flat_map(|question| {
        let session = speaker.session(question.session).id.to_string();
        question.answers.iter().map(move |(code, answer)| {
            let right = answer.right.map_or("", |right| if right { "yes" } else { "no" });
            let number = (question.question + 1).to_string();
            vec![code.clone(), session.clone(), number, answer.text.clone(), right.to_owned()]
        })
    });
    write_table(&["code", "session", "question", "answer", "right"], rows)
}

/// Cells that could not be read, with what is wrong.
pub fn write_unread(progress: &Progress) -> Vec<u8> {
    let rows = progress.unread.iter().map(|unread| {
        let (column, name) = unread.column.clone().map_or_else(
            || (String::new(), String::new()),
            |(column, name)| (column.to_string(), name),
        );
        vec![unread.file.clone(), unread.row.to_string(), column, name, unread.says.clone()]
    });
    write_table(&["file", "row", "column", "name", "what is wrong"], rows)
}

/// A head and rows, every cell made safe; UTF-8 with its mark, lines ended as RFC 4180 has it.
pub fn write_table(head: &[&str], rows: impl Iterator<Item = Vec<String>>) -> Vec<u8> {
    let mut writer = csv::WriterBuilder::new()
        .terminator(csv::Terminator::CRLF)
        .from_writer("\u{feff}".as_bytes().to_vec());
    let in_memory = "memory takes every byte";
    writer.write_record(head).expect(in_memory);
    for row in rows {
        writer.write_record(row.iter().map(|cell| safe_cell(cell))).expect(in_memory);
    }
    writer.into_inner().expect(in_memory)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn formulas_become_words_and_numbers_stay() {
        for (text, safe) in [
            ("=1+1", "'=1+1"),
            ("@SUM(A1)", "'@SUM(A1)"),
            ("+cmd", "'+cmd"),
            ("-2+3", "'-2+3"),
            ("  =1", "'  =1"),
            ("\t=1", "'\t=1"),
            ("-inf", "'-inf"),
            ("+15", "+15"),
            ("-0.3", "-0.3"),
            ("147", "147"),
            ("K07", "K07"),
        ] {
            assert_eq!(safe_cell(text), safe);
        }
    }
}
