//! Tables of marks → tries, ticked faults and answers; what can’t be read is listed with its row and
//! column, and the rest of its row still counts.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::code::{is_personal, read_code};
use super::columns::{Column, Columns, read_columns};
use super::messages::{Letters, strange_of, table_of};
use super::resolve::{
    FaultAt, resolve_date, resolve_fault, resolve_part, resolve_question, resolve_right,
    resolve_session,
};
use super::table::{Row, Table};
use super::words::clean_words;
use crate::pack::{Pack, Session};
use crate::plan::marks::{Attempt, read_returned_mark};
use crate::plan::{MarksPlan, plan_marks};
use crate::quantity::Date;

/// A measured part: its session and its place there.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct TaskAt {
    pub session: usize,
    pub part: usize,
}

/// The tries of one child in one task on one day, by their number.
pub type Day = BTreeMap<usize, Attempt>;

/// What was answered to a review question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    pub text: String,
    /// What the teacher said of it.
    pub right: Option<bool>,
}

/// A cell that could not be read, or not used.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unread {
    pub file: String,
    pub row: usize,
    /// From 1, and its name.
    pub column: Option<(usize, String)>,
    pub says: String,
}

/// Everything that was read.
#[derive(Clone, Debug, Default)]
pub struct Entries {
    pub tries: BTreeMap<TaskAt, BTreeMap<String, BTreeMap<Date, Day>>>,
    /// By session and child: the faults that were ticked, the latest last.
    pub faults: BTreeMap<usize, BTreeMap<String, Vec<(Date, FaultAt)>>>,
    /// By session, question and child.
    pub answers: BTreeMap<(usize, usize), BTreeMap<String, Answer>>,
    pub codes: BTreeSet<String>,
    pub unread: Vec<Unread>,
    pub keep_until: Option<Date>,
}

impl Entries {
    /// Adds a code, and gives it back as it was spelled first: K07, k07 and “k 07” are one child.
    pub fn add_code(&mut self, code: String) -> String {
        let bare = |code: &str| code.replace([' ', '-', '_'], "").to_lowercase();
        let asked = bare(&code);
        if let Some(known) = self.codes.iter().find(|known| bare(known) == asked) {
            return known.clone();
        }
        self.codes.insert(code.clone());
        code
    }
}

/// Reads rows into entries, one file after another.
#[derive(Debug)]
pub struct EntryReader<'p> {
    sessions: &'p [Arc<Session>],
    /// By session; none where a part is not measured in numbers.
    marks: Vec<Vec<Option<MarksPlan>>>,
    file: String,
    columns: Columns,
    head: Row,
    pub entries: Entries,
}

impl<'p> EntryReader<'p> {
    pub fn new(pack: &'p Pack) -> Self {
        Self {
            sessions: &pack.sessions,
            marks: pack.sessions.iter().map(|session| plan_marks(session)).collect(),
            file: String::new(),
            columns: Columns::default(),
            head: Row { number: 1, cells: Vec::new() },
            entries: Entries::default(),
        }
    }

    /// Reads one file’s table.
    ///
    /// # Errors
    /// A sentence for the teacher, where the columns can’t be used at all.
    pub fn read_file(&mut self, file: &str, table: Table) -> Result<(), String> {
        self.columns = read_columns(&table.head).map_err(|why| format!("{file}: {why}"))?;
        file.clone_into(&mut self.file);
        self.head = table.head;
        let dates = [self.entries.keep_until, table.keep_until];
        self.entries.keep_until = dates.into_iter().flatten().min();
        for (name, at) in self.columns.strange.clone() {
            let says = format!("the column “{name}” is not one of ours; nothing in it is used.");
            self.note(self.head.number, Some(at), says);
        }
        for row in &table.rows {
            self.read_row(row);
        }
        Ok(())
    }

    /// Reads the messages of one file.
    ///
    /// # Errors
    /// As for [`Self::read_file`].
    pub fn read_letters(&mut self, file: &str, letters: &Letters) -> Result<(), String> {
        self.read_file(file, table_of(letters))?;
        for (line, says) in strange_of(letters) {
            self.note(line, None, says);
        }
        Ok(())
    }

    fn read_row(&mut self, row: &Row) {
        let Some(code) = self.cell(row, Column::Code, read_code) else { return };
        let code = self.entries.add_code(code);
        let wanted = [Column::Session, Column::Question, Column::Fault, Column::Mark];
        let says_something = wanted.iter().any(|column| !self.text(row, *column).is_empty())
            || self.columns.attempts().iter().any(|(_, at)| !row.cell(*at).is_empty());
        if !says_something {
            return;
        }
        let sessions = self.sessions;
        let session = self.cell(row, Column::Session, |text| resolve_session(text, sessions));
        let Some(session) = session else { return };
        self.read_marks(row, &code, session);
        self.read_answer(row, &code, session);
        self.note_beyond(row);
    }

    fn read_marks(&mut self, row: &Row, code: &str, session: usize) {
        let cells = self.mark_cells(row);
        let has_fault = !self.text(row, Column::Fault).is_empty();
        if cells.is_empty() && !has_fault {
            return;
        }
        let Some(date) = self.cell(row, Column::Date, resolve_date) else { return };
        let whole = &self.sessions[session];
        if has_fault
            && let Some(fault) = self.cell(row, Column::Fault, |text| resolve_fault(text, whole))
        {
            let ticked = self.entries.faults.entry(session).or_default();
            let ticked = ticked.entry(code.to_owned()).or_default();
            if !ticked.contains(&(date, fault)) {
                ticked.push((date, fault));
                ticked.sort_unstable();
            }
        }
        if cells.is_empty() {
            return;
        }
        let Some(part) = self.cell(row, Column::Part, |text| resolve_part(text, whole)) else {
            return;
        };
        let task = TaskAt { session, part };
        for (number, at) in cells {
            self.read_try(row, (number, at), task, code, date);
        }
    }

    /// The cells that hold tries, each with the number of its try where the file says it.
    fn mark_cells(&mut self, row: &Row) -> Vec<(Option<usize>, usize)> {
        let wide = self.columns.attempts().into_iter().map(|(number, at)| (Some(number), at));
        let mut cells: Vec<_> = wide.filter(|(_, at)| !row.cell(*at).is_empty()).collect();
        let long = self.columns.at(Column::Mark).filter(|at| !row.cell(*at).is_empty());
        let Some(at) = long else { return cells };
        let number = self.text(row, Column::AttemptNumber);
        if number.is_empty() {
            cells.push((None, at));
        } else if let Some(number) = number.parse().ok().filter(|number| *number > 0) {
            cells.push((Some(number), at));
        } else {
            let says = format!("“{number}” is not the number of a try. Write 1, 2, 3 …");
            self.note(row.number, self.columns.at(Column::AttemptNumber), says);
        }
        cells
    }

    fn read_try(
        &mut self,
        row: &Row,
        (number, at): (Option<usize>, usize),
        task: TaskAt,
        code: &str,
        date: Date,
    ) {
        let Some(plan) = self.marks[task.session][task.part].as_ref() else {
            let says = "this part is judged by criteria, which have no marks.";
            return self.note(row.number, Some(at), says.into());
        };
        let attempt = match read_returned_mark(row.cell(at), plan.rule) {
            Ok(attempt) => attempt,
            Err(fault) => {
                return self.note(
                    row.number,
                    Some(at),
                    format!("{}. {}", fault.says, fault.way_out),
                );
            }
        };
        let measure = self.sessions[task.session].parts[task.part].measure.as_ref();
        let counted = measure.and_then(|measure| measure.attempts.as_ref());
        let most =
            counted.and_then(|count| usize::try_from(count.value).ok()).unwrap_or(usize::MAX);
        let children = self.entries.tries.entry(task).or_default();
        let day = children.entry(code.to_owned()).or_default().entry(date).or_default();
        let number = number.unwrap_or_else(|| day.last_key_value().map_or(1, |(last, _)| last + 1));
        let says = match day.get(&number) {
            _ if number > most => format!("only {most} tries count here; this one is left out."),
            Some(same) if *same == attempt => {
                "this try stands here a second time; it is counted once.".into()
            }
            Some(_) => {
                format!("there is another mark for try {number} of this day; the first one counts.")
            }
            None => {
                day.insert(number, attempt);
                return;
            }
        };
        self.note(row.number, Some(at), says);
    }

    fn read_answer(&mut self, row: &Row, code: &str, session: usize) {
        if self.text(row, Column::Question).is_empty() {
            let stray = !self.text(row, Column::Answer).is_empty();
            if stray {
                let says = "this answer belongs to no question. Write its number beside it.";
                self.note(row.number, self.columns.at(Column::Answer), says.into());
            }
            return;
        }
        let whole = &self.sessions[session];
        let question = self.cell(row, Column::Question, |text| resolve_question(text, whole));
        let Some(question) = question else { return };
        let right = self.cell(row, Column::Right, resolve_right).flatten();
        let mut text = clean_words(self.text(row, Column::Answer));
        if is_personal(&text) {
            let says = "this answer holds an e-mail address or a telephone number; its words are left out.";
            self.note(row.number, self.columns.at(Column::Answer), says.into());
            text.clear();
        }
        let answer = Answer { text, right };
        let answers = self.entries.answers.entry((session, question)).or_default();
        if answers.insert(code.to_owned(), answer).is_some() {
            let says = "this question was answered further up; the later answer counts.";
            self.note(row.number, self.columns.at(Column::Question), says.into());
        }
    }

    /// Cells to the right of the last named column.
    fn note_beyond(&mut self, row: &Row) {
        let beyond = (self.head.cells.len()..row.cells.len()).find(|at| !row.cell(*at).is_empty());
        if let Some(at) = beyond {
            self.note(row.number, Some(at), "this column has no name, so it is not used.".into());
        }
    }

    fn text<'r>(&self, row: &'r Row, column: Column) -> &'r str {
        self.columns.at(column).map_or("", |at| row.cell(at))
    }

    /// Reads one cell, or lists why it can’t be.
    fn cell<T>(
        &mut self,
        row: &Row,
        column: Column,
        read: impl FnOnce(&str) -> Result<T, String>,
    ) -> Option<T> {
        match read(self.text(row, column)) {
            Ok(value) => Some(value),
            Err(says) => {
                self.note(row.number, self.columns.at(column), says);
                None
            }
        }
    }

    fn note(&mut self, row: usize, column: Option<usize>, says: String) {
        let name = |at: usize| self.head.cells.get(at).map_or("", |name| name.trim()).to_owned();
        let column = column.map(|at| (at + 1, name(at)));
        self.entries.unread.push(Unread { file: self.file.clone(), row, column, says });
    }
}
