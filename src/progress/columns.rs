//! Which column holds what. Names are matched kindly: case, spaces and a slip of the hand don’t count.

use super::table::Row;

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Column {
    Code,
    Session,
    Part,
    Date,
    /// A try by its number, in the wide form.
    Attempt(usize),
    /// Which try it is, in the long form.
    AttemptNumber,
    /// The mark, in the long form.
    Mark,
    Fault,
    Question,
    Answer,
    Right,
}

/// What each may be called, in small letters.
const NAMES: [(Column, &[&str]); 10] = [
    (Column::Code, &["code", "code name", "pupil code", "child code"]),
    (Column::Session, &["session", "lesson"]),
    (Column::Part, &["part", "task", "challenge"]),
    (Column::Date, &["date", "day", "done on"]),
    (Column::AttemptNumber, &["attempt", "try", "trial", "attempt number"]),
    (Column::Mark, &["mark", "result", "score"]),
    (Column::Fault, &["fault", "common fault"]),
    (Column::Question, &["question", "review question"]),
    (Column::Answer, &["answer", "reply"]),
    (Column::Right, &["right", "correct", "right?"]),
];

/// What must never be in such a file: the first words of a column’s name that say so.
const PERSONAL: [&str; 12] = [
    "name",
    "first name",
    "last name",
    "surname",
    "forename",
    "pupil name",
    "child name",
    "email",
    "e-mail",
    "birth",
    "dob",
    "date of birth",
];

/// How alike two names must be to be taken for the same (Jaro–Winkler, from 0 to 1; our own choice).
const ALIKE: f64 = 0.91;

/// The columns that were found, with their place; and those that hold nothing we know.
#[derive(Clone, Debug, Default)]
pub struct Columns {
    found: Vec<(Column, usize)>,
    /// Each with its name and place.
    pub strange: Vec<(String, usize)>,
}

impl Columns {
    /// Where a column stands.
    pub fn at(&self, column: Column) -> Option<usize> {
        self.found.iter().find(|(found, _)| *found == column).map(|(_, at)| *at)
    }

    /// The tries of the wide form, by their number.
    pub fn attempts(&self) -> Vec<(usize, usize)> {
        let mut tries: Vec<(usize, usize)> = self
            .found
            .iter()
            .filter_map(|(column, at)| match column {
                Column::Attempt(number) => Some((*number, *at)),
                _ => None,
            })
            .collect();
        tries.sort_unstable();
        tries
    }
}

/// Finds the columns in the row that names them.
///
/// # Errors
/// A sentence for the teacher: where a column would hold what says who a child is, or where one is
/// missing without which nothing can be read.
pub fn read_columns(head: &Row) -> Result<Columns, String> {
    let mut columns = Columns::default();
    for (at, name) in head.cells.iter().enumerate() {
        let plain = plain_name(name);
        if plain.is_empty() {
            continue;
        }
        if let Some(column) = column_of(&plain).filter(|column| columns.at(*column).is_none()) {
            columns.found.push((column, at));
        } else if is_personal(&plain) {
            return Err(format!(
                "the column “{}” would say who a child is. Only codes are read: take it out.",
                name.trim()
            ));
        } else {
            columns.strange.push((name.trim().to_owned(), at));
        }
    }
    for (column, name) in [(Column::Code, "code"), (Column::Session, "session")] {
        if columns.at(column).is_none() {
            return Err(format!(
                "there is no column “{name}”. Name the columns in the first row: code, session, \
                 part, date, attempt 1, attempt 2 …"
            ));
        }
    }
    Ok(columns)
}

fn plain_name(name: &str) -> String {
    let spaced: String =
        name.chars().map(|c| if c == '_' { ' ' } else { c }).flat_map(char::to_lowercase).collect();
    spaced.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn column_of(plain: &str) -> Option<Column> {
    let exact = NAMES.iter().find(|(_, names)| names.contains(&plain));
    if let Some((column, _)) = exact {
        return Some(*column);
    }
    let word = plain.trim_end_matches(|c: char| c.is_ascii_digit() || c == ' ' || c == '.');
    let number = plain[word.len()..].trim_matches([' ', '.']).parse().ok();
    if let Some(number) = number.filter(|number| *number > 0) {
        let is_try = ["attempt", "try", "trial", "mark"].iter().any(|try_| is_alike(word, try_));
        return is_try.then_some(Column::Attempt(number));
    }
    if is_personal(plain) {
        return None;
    }
    let likeness = |names: &[&str]| {
        names.iter().map(|name| strsim::jaro_winkler(plain, name)).fold(0.0, f64::max)
    };
    let nearest = NAMES.iter().max_by(|a, b| likeness(a.1).total_cmp(&likeness(b.1)))?;
    (likeness(nearest.1) >= ALIKE).then_some(nearest.0)
}

fn is_alike(word: &str, other: &str) -> bool {
    strsim::jaro_winkler(word, other) >= ALIKE
}

fn is_personal(plain: &str) -> bool {
    PERSONAL.iter().any(|word| plain == *word || plain.starts_with(&format!("{word} ")))
        || plain.ends_with(" name") && plain != "code name"
        || plain.contains("birth")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(names: &[&str]) -> Result<Columns, String> {
        let cells = names.iter().map(|name| (*name).to_owned()).collect();
        read_columns(&Row { number: 1, cells })
    }

    #[test]
    fn names_are_matched_kindly() {
        let columns = read(&["Code", "sesion", "DATE", "Attempt_2", "Atempt 1", "notes"]).unwrap();
        assert_eq!(columns.at(Column::Session), Some(1));
        assert_eq!(columns.at(Column::Date), Some(2));
        assert_eq!(columns.attempts(), [(1, 4), (2, 3)]);
        assert_eq!(columns.strange, [("notes".to_owned(), 5)]);
        let long = read(&["code", "session", "attempt", "mark"]).unwrap();
        assert_eq!(long.at(Column::AttemptNumber), Some(2));
        assert_eq!(long.at(Column::Mark), Some(3));
    }

    #[test]
    fn names_of_children_are_refused() {
        for bad in ["Name", "Surname", "Pupil name", "e-mail", "Date of birth", "DOB"] {
            assert!(
                read(&["code", "session", bad]).unwrap_err().contains("who a child is"),
                "{bad}"
            );
        }
        assert!(read(&["code", "mark"]).unwrap_err().contains("“session”"));
    }
}
