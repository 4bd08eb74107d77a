//! A class list → homes, one a row; every finding names its row and column.

use std::collections::{BTreeMap, BTreeSet};

use super::dialect::sniff_separator;
use super::headings::{FloorPart, HEADINGS, Heading, MOST_FLOORS};
use super::privacy::{is_code, personal_heading, personal_value};
use super::things::read_things;
use super::{Home, HomeFloor, HomeNeed, Reads};
use crate::finding::Finding;
use crate::place::{FileId, Place, Placed};
use crate::plan::Floor;
use crate::quantity::{Duration, Length, Quantity};
use crate::read::nearest;
use crate::read::words::Surface;

/// Reads a class list; homes that can be read travel on beside the findings of those that can’t.
pub fn read_class(text: &str, file: FileId) -> (Vec<Home>, Vec<Finding>) {
    let mut list = List { text, file, findings: Vec::new() };
    let rows = list.read_rows();
    let Some((heads, rows)) = rows.split_first() else {
        list.refuse(Place::top_of(file), "This list is empty.", "Write one home a row.");
        return (Vec::new(), list.findings);
    };
    list.check_privacy(heads, rows);
    if !list.findings.is_empty() {
        return (Vec::new(), list.findings);
    }
    let columns: Vec<Option<Heading>> = heads.iter().map(|head| list.read_heading(head)).collect();
    list.check_columns(&columns);
    let homes: Vec<Home> =
        rows.iter().zip(2..).filter_map(|(row, n)| list.read_home(&columns, row, n)).collect();
    list.check_codes(&homes);
    (homes, list.findings)
}

type Cell = Placed<String>;

struct List<'t> {
    text: &'t str,
    file: FileId,
    findings: Vec<Finding>,
}

impl List<'_> {
    fn note(&mut self, code: &'static str, place: Place, says: String, way_out: String) {
        self.findings.push(Finding::problem(code, place, says, way_out));
    }

    fn refuse(&mut self, place: Place, says: impl Into<String>, way_out: impl Into<String>) {
        self.note("homes-unfit", place, says.into(), way_out.into());
    }

    /// Every row that is not empty, each cell with its place.
    fn read_rows(&mut self) -> Vec<Vec<Cell>> {
        let mut reader = csv::ReaderBuilder::new()
            .delimiter(sniff_separator(self.text))
            .has_headers(false)
            .flexible(true)
            .trim(csv::Trim::All)
            .from_reader(self.text.as_bytes());
        let mut rows = Vec::new();
        let mut record = csv::StringRecord::new();
        while reader.read_record(&mut record).unwrap_or(false) {
            let start = record.position().map_or(0, csv::Position::byte);
            let end = reader.position().byte();
            if record.iter().any(|cell| !cell.is_empty()) {
                rows.push(self.place_cells(&record, start, end));
            }
        }
        rows
    }

    /// Cells stand in their row in order; one that is written with doubled quotes counts as the whole row.
    fn place_cells(&self, record: &csv::StringRecord, start: u64, end: u64) -> Vec<Cell> {
        let size = |at: u64| usize::try_from(at).unwrap_or(usize::MAX).min(self.text.len());
        let (start, end) = (size(start), size(end));
        let mut cursor = start;
        let cell = |cell: &str| {
            let found = self.text.get(cursor..end).and_then(|rest| rest.find(cell));
            let (from, to) =
                found.map_or((start, end), |at| (cursor + at, cursor + at + cell.len()));
            if found.is_some() {
                cursor = to;
            }
            let short = |at: usize| u32::try_from(at).unwrap_or(u32::MAX);
            let place = Place { file: self.file, start: short(from), end: short(to) };
            Placed::new(cell.to_owned(), place)
        };
        record.iter().map(cell).collect()
    }

    /// A column about people refuses the whole list: nothing else is read of it.
    fn check_privacy(&mut self, heads: &[Cell], rows: &[Vec<Cell>]) {
        let way_out = "Take the column out. Homes go by codes such as H07; keep the list of who is who \
                       somewhere safe.";
        for (column, head) in heads.iter().enumerate() {
            let cells = rows.iter().filter_map(|row| row.get(column));
            let by_value = cells.clone().find_map(|cell| Some((cell.place, personal_value(cell)?)));
            let found = personal_heading(head).map(|what| (head.place, what)).or(by_value);
            if let Some((place, what)) = found {
                let says = format!("The column “{}” looks like {what}.", head.value);
                self.note("homes-personal", place, says, way_out.to_owned());
            }
        }
    }

    fn read_heading(&mut self, head: &Cell) -> Option<Heading> {
        let heading = Heading::of(head);
        if heading.is_none() && !head.is_empty() {
            let says = format!("“{}” is not a column of a class list.", head.value);
            let way_out = match nearest(head, &HEADINGS) {
                Some(near) => format!("Did you mean “{near}”?"),
                None => format!("The columns are: {}.", HEADINGS.join(", ")),
            };
            self.refuse(head.place, says, way_out);
        }
        heading
    }

    fn check_columns(&mut self, columns: &[Option<Heading>]) {
        for (asked, name) in [(Heading::Code, "code"), (Heading::Minutes, "minutes")] {
            if !columns.contains(&Some(asked)) {
                let says = format!("There is no column “{name}”.");
                self.refuse(Place::top_of(self.file), says, format!("Add a column “{name}”."));
            }
        }
        let mut seen = BTreeSet::new();
        if columns.iter().flatten().any(|column| !seen.insert(*column)) {
            let says = "A column stands in this list twice.";
            self.refuse(Place::top_of(self.file), says, "Take one of the two out.");
        }
    }

    fn read_home(
        &mut self,
        columns: &[Option<Heading>],
        row: &[Cell],
        number: usize,
    ) -> Option<Home> {
        let cells: BTreeMap<Heading, &Cell> = columns
            .iter()
            .zip(row)
            .filter_map(|(column, cell)| Some(((*column)?, cell)))
            .filter(|(_, cell)| !cell.is_empty())
            .collect();
        let mut row_of = Row { list: self, cells, number };
        let code = row_of.code(row)?;
        let minutes = row_of.minutes(&code)?;
        Some(Home {
            minutes,
            floors: row_of.floors(),
            things: row_of.things(),
            helpers: row_of.helpers(),
            needs: row_of.needs(),
            language: row_of.text(Heading::Language),
            reads: row_of.reads(),
            code,
        })
    }

    fn check_codes(&mut self, homes: &[Home]) {
        let mut known = BTreeSet::new();
        let twice = homes.iter().filter(|home| !known.insert(home.code.to_lowercase()));
        for place in twice.map(|home| home.code.place).collect::<Vec<_>>() {
            self.refuse(
                place,
                "This code stands in the list twice.",
                "Give each home its own code.",
            );
        }
    }
}

/// One row while it is read.
struct Row<'r, 't> {
    list: &'r mut List<'t>,
    cells: BTreeMap<Heading, &'r Cell>,
    /// As a spreadsheet counts them.
    number: usize,
}

impl Row<'_, '_> {
    fn refuse(&mut self, column: &str, place: Place, says: &str, way_out: &str) {
        let says = format!("Row {}, column “{column}”: {says}", self.number);
        self.list.refuse(place, says, way_out);
    }

    fn code(&mut self, row: &[Cell]) -> Option<Placed<String>> {
        let Some(code) = self.cells.get(&Heading::Code).copied() else {
            let place = row.first().map_or(Place::top_of(self.list.file), |cell| cell.place);
            self.refuse("code", place, "this home has no code.", "Give it one, such as H07.");
            return None;
        };
        if is_code(code) {
            return Some(code.clone());
        }
        let says = format!("“{}” may be a name.", code.value);
        let way_out =
            "Write a code of letters, digits and hyphens with a digit in it, such as H07.";
        self.refuse("code", code.place, &says, way_out);
        None
    }

    fn minutes(&mut self, code: &Placed<String>) -> Option<Duration> {
        let Some(cell) = self.cells.get(&Heading::Minutes).copied() else {
            let way_out = "Write how many minutes there are in a day.";
            self.refuse("minutes", code.place, "nothing is written.", way_out);
            return None;
        };
        let minutes = cell.trim_end_matches("min").trim().parse::<u32>().ok();
        let minutes = minutes.filter(|minutes| (1..=600).contains(minutes));
        if minutes.is_none() {
            let says = format!("“{}” is not a number of minutes.", cell.value);
            self.refuse("minutes", cell.place, &says, "Write whole minutes, such as 20.");
        }
        minutes.map(Duration::from_minutes)
    }

    fn floors(&mut self) -> Vec<HomeFloor> {
        (0..MOST_FLOORS).filter_map(|floor| self.floor(floor)).collect()
    }

    fn floor(&mut self, floor: usize) -> Option<HomeFloor> {
        let mut length_of = |part| self.length(Heading::Floor(floor, part));
        let (length, width) = (length_of(FloorPart::Length)?, length_of(FloorPart::Width)?);
        let height = length_of(FloorPart::Height);
        let corner = (length_of(FloorPart::CornerLength), length_of(FloorPart::CornerWidth));
        let notch = corner.0.zip(corner.1).filter(|(l, w)| *l < length && *w < width);
        let is_outdoors = self.is_yes(Heading::Floor(floor, FloorPart::Outdoors));
        let surface = self.surface(Heading::Floor(floor, FloorPart::Surface));
        Some(HomeFloor { floor: Floor { length, width, notch }, height, surface, is_outdoors })
    }

    /// “2.5”, “2,5”, “2.5 m” or “250 cm”; metres where no unit stands.
    fn length(&mut self, column: Heading) -> Option<Length> {
        let cell = self.cells.get(&column).copied()?;
        let point = cell.replace(',', ".");
        let has_unit = point.ends_with(|c: char| c.is_alphabetic());
        let written = if has_unit { point } else { format!("{point} m") };
        match Length::read_quantity(&written) {
            Ok(length) if length > Length::default() => Some(length),
            _ => {
                let says = format!("“{}” is not a length.", cell.value);
                self.refuse("floor", cell.place, &says, "Write metres, such as 2.5.");
                None
            }
        }
    }

    fn surface(&mut self, column: Heading) -> Option<Surface> {
        let cell = self.cells.get(&column).copied()?;
        let written = cell.to_lowercase();
        let surface = Surface::ALL.iter().copied().find(|surface| surface.word() == written);
        if surface.is_none() {
            let says = format!("“{}” is not a surface that is known.", cell.value);
            let way_out = format!("Choose one of: {}.", Surface::WORDS.join(", "));
            self.refuse("floor surface", cell.place, &says, &way_out);
        }
        surface
    }

    fn is_yes(&mut self, column: Heading) -> bool {
        let Some(cell) = self.cells.get(&column).copied() else { return false };
        match cell.to_lowercase().as_str() {
            "yes" | "true" | "outdoors" | "y" | "1" | "x" => true,
            "no" | "false" | "indoors" | "n" | "0" => false,
            _ => {
                let says = format!("“{}” is neither yes nor no.", cell.value);
                self.refuse("floor outdoors", cell.place, &says, "Write yes or no.");
                false
            }
        }
    }

    fn things(&self) -> Vec<super::HomeThing> {
        let cell = self.cells.get(&Heading::Things);
        cell.map(|cell| read_things(cell, cell.place)).unwrap_or_default()
    }

    fn helpers(&mut self) -> u32 {
        let Some(cell) = self.cells.get(&Heading::Helpers).copied() else { return 0 };
        cell.parse::<u32>().ok().filter(|helpers| *helpers <= 20).unwrap_or_else(|| {
            let says = format!("“{}” is not a number of people.", cell.value);
            self.refuse("helpers", cell.place, &says, "Write a whole number, such as 1.");
            0
        })
    }

    fn needs(&mut self) -> BTreeSet<HomeNeed> {
        let Some(cell) = self.cells.get(&Heading::Needs).copied() else { return BTreeSet::new() };
        let words = cell.split([';', ',', '|']).map(|word| word.trim().to_lowercase());
        let mut needs = BTreeSet::new();
        for word in words.filter(|word| !word.is_empty()) {
            if let Some(need) = HomeNeed::ALL.iter().find(|need| need.word() == word) {
                needs.insert(*need);
            } else {
                let says = format!("“{word}” is not a need that is known.");
                let way_out = format!("Choose from: {}.", HomeNeed::WORDS.join(", "));
                self.refuse("needs", cell.place, &says, &way_out);
            }
        }
        needs
    }

    fn reads(&mut self) -> Reads {
        let Some(cell) = self.cells.get(&Heading::Reads).copied() else { return Reads::Paper };
        let written = cell.to_lowercase();
        let found = Reads::ALL.iter().copied().find(|reads| reads.word() == written);
        found.unwrap_or_else(|| {
            let says = format!("“{}” is neither paper nor phone.", cell.value);
            self.refuse("reads", cell.place, &says, "Write paper or phone.");
            Reads::Paper
        })
    }

    fn text(&self, column: Heading) -> Option<String> {
        self.cells.get(&column).map(|cell| cell.value.clone())
    }
}
