//! A file of marks → a table of cells, each with its row as a spreadsheet counts them.
//!
//! Reads what pages, hands and spreadsheets write: commas, semicolons or tabs between cells, quotes as
//! in RFC 4180, a byte-order mark, UTF-8, UTF-16 or the Windows letters of Western Europe.

use crate::quantity::{Date, Quantity};

/// One row with its cells.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// From 1, as a spreadsheet numbers it.
    pub number: usize,
    pub cells: Vec<String>,
}

impl Row {
    /// The cell at a column, trimmed; empty where the row ends before it.
    pub fn cell(&self, column: usize) -> &str {
        self.cells.get(column).map_or("", |cell| cell.trim())
    }

    fn is_blank(&self) -> bool {
        self.cells.iter().all(|cell| cell.trim().is_empty())
    }
}

/// A file as a table: the first row that holds anything names the columns.
#[derive(Clone, Debug)]
pub struct Table {
    pub head: Row,
    pub rows: Vec<Row>,
    /// Where the file says itself until when it may be kept.
    pub keep_until: Option<Date>,
}

/// Between cells.
const DELIMITERS: [char; 3] = [',', ';', '\t'];

/// Reads a table.
///
/// # Errors
/// A sentence for the teacher, where there is no row of column names or a date to keep it until is none.
pub fn read_table(bytes: &[u8]) -> Result<Table, String> {
    let text = read_letters(bytes);
    if text.matches('"').count() % 2 == 1 {
        return Err(
            "a quote (\") is opened and not closed, so that cells run into one another.".into()
        );
    }
    let (named, text) = match text.strip_prefix("sep=").and_then(|rest| rest.split_once('\n')) {
        Some((mark, rest)) => (mark.trim_end_matches('\r').chars().next(), rest),
        None => (None, text.as_str()),
    };
    let first_number = if named.is_some() { 2 } else { 1 };
    let delimiter = named.unwrap_or_else(|| sniff_delimiter(text));
    let mut rows = split_rows(text, delimiter, first_number);
    rows.retain(|row| !row.is_blank());
    let mut rows = rows.into_iter().peekable();
    let mut keep_until = None;
    while let Some(line) = rows.next_if(is_keep_line) {
        keep_until = Some(read_keep_line(&line)?);
    }
    let head = rows.next().ok_or("it is empty: its first row names the columns.")?;
    Ok(Table { head, rows: rows.collect(), keep_until })
}

fn is_keep_line(row: &Row) -> bool {
    let first = row.cell(0).to_lowercase().replace([' ', '-'], "_");
    first.starts_with("keep_until")
}

/// `keep_until: 2027-07-31`, in one cell or in two.
fn read_keep_line(row: &Row) -> Result<Date, String> {
    let whole = row.cells.join(" ");
    let after = whole.trim().get("keep_until".len()..).unwrap_or_default();
    Date::read_quantity(after.trim_matches([' ', ':', '='])).map_err(|fault| {
        format!("row {}: after keep_until: {}. {}", row.number, fault.says, fault.way_out)
    })
}

/// The date after `keep_until` in the first line that begins so, if one does.
///
/// # Errors
/// A sentence for the teacher, where it is no date.
pub fn read_keep_date(text: &str) -> Result<Option<Date>, String> {
    let rows = text.lines().zip(1..).map(|(line, number)| Row { number, cells: vec![line.into()] });
    rows.into_iter().find(is_keep_line).map(|row| read_keep_line(&row)).transpose()
}

/// The letters of a file. What is neither UTF-8 nor UTF-16 is taken as the Windows letters.
pub fn read_letters(bytes: &[u8]) -> String {
    let wide = |rest: &[u8], of: fn([u8; 2]) -> u16| {
        let units: Vec<u16> = rest.chunks_exact(2).map(|pair| of([pair[0], pair[1]])).collect();
        String::from_utf16_lossy(&units)
    };
    match bytes {
        [0xFF, 0xFE, rest @ ..] => wide(rest, u16::from_le_bytes),
        [0xFE, 0xFF, rest @ ..] => wide(rest, u16::from_be_bytes),
        [0xEF, 0xBB, 0xBF, rest @ ..] => read_narrow(rest),
        _ => read_narrow(bytes),
    }
}

fn read_narrow(bytes: &[u8]) -> String {
    std::str::from_utf8(bytes)
        .map_or_else(|_| bytes.iter().map(|byte| windows_letter(*byte)).collect(), str::to_owned)
}

/// Windows-1252: as Latin-1, but for the quotes and dashes that spreadsheets put in.
const fn windows_letter(byte: u8) -> char {
    match byte {
        0x80 => '€',
        0x91 => '‘',
        0x92 => '’',
        0x93 => '“',
        0x94 => '”',
        0x96 => '–',
        0x97 => '—',
        _ => byte as char,
    }
}

/// The mark that splits the row of column names into most cells; it counts outside quotes only.
fn sniff_delimiter(text: &str) -> char {
    let heads = text.lines().filter(|line| {
        let plain = line.trim().to_lowercase().replace([' ', '-'], "_");
        !plain.is_empty() && !plain.starts_with("keep_until")
    });
    let head = heads.map(str::to_owned).next().unwrap_or_default();
    let count = |mark: char| {
        head.split('"').step_by(2).map(|bare| bare.matches(mark).count()).sum::<usize>()
    };
    let mut best = DELIMITERS[0];
    for mark in DELIMITERS {
        if count(mark) > count(best) {
            best = mark;
        }
    }
    best
}

fn split_rows(text: &str, delimiter: char, first_number: usize) -> Vec<Row> {
    let delimiter = u8::try_from(delimiter).unwrap_or(b',');
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(delimiter)
        .has_headers(false)
        .flexible(true)
        .from_reader(text.as_bytes());
    let mut rows = Vec::new();
    // Lines that are over, and those of them inside cells: a cell of several lines is one row of a
    // spreadsheet, but several lines of the file. An empty line is a row of its own.
    let (mut seen, mut lines, mut inner_lines) = (0, 0, 0);
    for record in reader.records().flatten() {
        let start = record.position().map_or(0, csv::Position::byte);
        let start = usize::try_from(start).unwrap_or(usize::MAX).min(text.len());
        // The reader’s place lies before the ends of lines that it passes over.
        let passed =
            text.as_bytes()[start..].iter().take_while(|byte| matches!(byte, b'\r' | b'\n'));
        let start = start + passed.count();
        lines += count_line_ends(text.get(seen..start).unwrap_or_default());
        seen = start;
        let cells: Vec<String> = record.iter().map(str::to_owned).collect();
        rows.push(Row { number: lines - inner_lines + first_number, cells });
        if let Some(row) = rows.last() {
            inner_lines += row.cells.iter().map(|cell| count_line_ends(cell)).sum::<usize>();
        }
    }
    rows
}

/// A line ends with a line feed, a carriage return, or both.
fn count_line_ends(text: &str) -> usize {
    text.matches('\n').count() + text.matches('\r').count() - text.matches("\r\n").count()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cells(bytes: &[u8]) -> Vec<(usize, Vec<String>)> {
        let table = read_table(bytes).unwrap();
        std::iter::once(table.head).chain(table.rows).map(|row| (row.number, row.cells)).collect()
    }

    #[test]
    fn every_dialect_gives_the_same_cells() {
        let expected = cells("code,mark\nA1,\"147,5\"\n".as_bytes());
        assert_eq!(expected[1].1, ["A1", "147,5"]);
        let wide: Vec<u8> = [0xFF, 0xFE]
            .into_iter()
            .chain("code\tmark\r\nA1\t147,5\r\n".encode_utf16().flat_map(u16::to_le_bytes))
            .collect();
        for bytes in [
            "\u{feff}code;mark\r\nA1;147,5\r\n".as_bytes(),
            "code\tmark\nA1\t147,5".as_bytes(),
            &wide,
        ] {
            assert_eq!(cells(bytes), expected);
        }
        assert_eq!(cells(b"sep=;\ncode;mark\nA1;147,5")[1], (3, expected[1].1.clone()));
    }

    #[test]
    fn rows_are_numbered_as_a_spreadsheet_does() {
        let found = cells(b"code,answer\n\nA1,\"two\nlines\"\nA2,one\n");
        assert_eq!(found.iter().map(|row| row.0).collect::<Vec<_>>(), [1, 3, 4]);
        let found = cells(b"code,answer\r\n\r\nA1,\"two\r\nlines\"\r\nA2,one\r\nA3,\r\n");
        assert_eq!(found.iter().map(|row| row.0).collect::<Vec<_>>(), [1, 3, 4, 5]);
    }

    #[test]
    fn windows_letters_and_the_line_to_keep_until() {
        let table = read_table(b"keep_until: 2027-07-31\ncode,answer\nA1,na\xEFve\n").unwrap();
        assert_eq!(table.rows[0].cell(1), "naïve");
        assert_eq!(table.keep_until.unwrap().to_string(), "2027-07-31");
        assert!(read_table(b"keep_until: soon\ncode\n").is_err());
        assert!(read_table(b"\n\n").is_err());
        assert!(read_table(b"code,answer\nA1,\"yes\nA2,no\n").unwrap_err().contains("not closed"));
    }
}
