//! Thins an embedded TrueType program to the tables that a PDF needs.
//!
//! ISO 32000-1, 9.9: for a `CIDFontType2` they are glyf, head, hhea, hmtx, loca and maxp, and cvt, fpgm
//! and prep for hinted outlines, which ours are not (`unhint`). The name table alone is larger than the outlines of a
//! whole sheet.

use std::borrow::Cow;

use super::unhint::unhint;

/// In the order of the directory.
const NEEDED: [&[u8; 4]; 6] = [b"glyf", b"head", b"hhea", b"hmtx", b"loca", b"maxp"];

/// What hinted outlines need besides.
const OF_HINTS: [&[u8; 4]; 3] = [b"cvt ", b"fpgm", b"prep"];

/// Length of the table directory’s head, and of one of its records.
const HEAD: usize = 12;
const RECORD: usize = 16;

/// A table with its name.
type Table<'p> = (&'p [u8], Cow<'p, [u8]>);

/// The program with only the tables it needs; `None` where it is no TrueType program.
pub fn thin_program(program: &[u8]) -> Option<Vec<u8>> {
    let mut tables = tables_of(program)?;
    tables.retain(|(name, _)| NEEDED.iter().chain(&OF_HINTS).any(|needed| name == needed));
    if strip_hints(&mut tables).is_some() {
        tables.retain(|(name, _)| NEEDED.iter().any(|needed| name == needed));
    }
    program_of(program.get(..4)?, &tables)
}

/// What is read for every subset and never used: the tables for shaping, the names of glyphs and which letters they are
/// for. Glyphs are asked for by their numbers.
const UNREAD: [&[u8; 4]; 4] = [b"GDEF", b"GPOS", b"GSUB", b"Silt"];

/// A table `cmap` in which no letter has a glyph: format 4 with the one segment that ends it (OpenType, `cmap`).
const NO_LETTERS: [u8; 36] = [
    0, 0, 0, 1, 0, 3, 0, 1, 0, 0, 0, 12, 0, 4, 0, 24, 0, 0, 0, 2, 0, 2, 0, 0, 0, 0, 0xFF, 0xFF, 0,
    0, 0xFF, 0xFF, 0, 1, 0, 0,
];

/// Length of a table `post` without the names of glyphs, and its version.
const NAMELESS: usize = 32;
const VERSION_3: [u8; 4] = [0, 3, 0, 0];

/// The program that subsets are taken from: with all its glyphs, and no more.
pub fn source_program(program: &[u8]) -> Option<Vec<u8>> {
    let mut tables = tables_of(program)?;
    tables.retain(|(name, _)| UNREAD.iter().all(|unread| name != unread));
    for (name, table) in &mut tables {
        match *name {
            b"cmap" => *table = Cow::Borrowed(&NO_LETTERS),
            b"post" => *table = Cow::Owned([&VERSION_3, table.get(4..NAMELESS)?].concat()),
            _ => {}
        }
    }
    program_of(program.get(..4)?, &tables)
}

/// Tables, in the order of their names, put together with a directory.
fn program_of(version: &[u8], tables: &[Table<'_>]) -> Option<Vec<u8>> {
    let lengths = tables.iter().map(|(_, table)| table.len().next_multiple_of(4));
    let mut offset = HEAD + tables.len() * RECORD;
    let mut whole = Vec::with_capacity(offset + lengths.sum::<usize>());
    whole.extend_from_slice(version);
    whole.extend(directory_head(u16::try_from(tables.len()).ok()?));
    for (name, table) in tables {
        whole.extend_from_slice(name);
        whole.extend(checksum(table).to_be_bytes());
        whole.extend(u32::try_from(offset).ok()?.to_be_bytes());
        whole.extend(u32::try_from(table.len()).ok()?.to_be_bytes());
        offset += table.len().next_multiple_of(4);
    }
    for (_, table) in tables {
        whole.extend_from_slice(table);
        whole.resize(whole.len().next_multiple_of(4), 0);
    }
    Some(whole)
}

/// The tables of a program, by the order of its directory.
fn tables_of(program: &[u8]) -> Option<Vec<Table<'_>>> {
    let count = usize::from(u16::from_be_bytes(program.get(4..6)?.try_into().ok()?));
    let records = program.get(HEAD..HEAD + count * RECORD)?.chunks(RECORD);
    let table = |record: &'_ [u8]| {
        let start = number(record, 8)?;
        program.get(start..start + number(record, 12)?)
    };
    records.map(|record| Some((&record[..4], Cow::Borrowed(table(record)?)))).collect()
}

/// Takes the instructions out of the outlines, where those can be read.
fn strip_hints(tables: &mut [Table<'_>]) -> Option<()> {
    let find = |wanted: &[u8; 4]| tables.iter().position(|(name, _)| name == wanted);
    let (glyf, head, loca) = (find(b"glyf")?, find(b"head")?, find(b"loca")?);
    // indexToLocFormat: 1 where places are counted in four bytes.
    let is_long = tables[head].1.get(51).copied()? == 1;
    let (outlines, places) = unhint(&tables[glyf].1, &tables[loca].1, is_long)?;
    tables[glyf].1 = Cow::Owned(outlines);
    tables[loca].1 = Cow::Owned(places);
    Some(())
}

/// The sum of a table’s words of four bytes.
fn checksum(table: &[u8]) -> u32 {
    let words = table.chunks_exact(4);
    let mut last = [0; 4];
    last[..words.remainder().len()].copy_from_slice(words.remainder());
    let sum = |sum: u32, word: &[u8]| {
        let word = word.first_chunk().map_or(0, |bytes| u32::from_be_bytes(*bytes));
        sum.wrapping_add(word)
    };
    sum(words.fold(0, sum), &last)
}

/// Count of tables, and the three figures for searching that follow from it.
fn directory_head(count: u16) -> Vec<u8> {
    let power = count.max(1).ilog2();
    let range = (1_u16 << power) * 16;
    let figures = [count, range, u16::try_from(power).unwrap_or(0), count * 16 - range];
    figures.into_iter().flat_map(u16::to_be_bytes).collect()
}

fn number(record: &[u8], at: usize) -> Option<usize> {
    let bytes = record.get(at..at + 4)?.try_into().ok()?;
    usize::try_from(u32::from_be_bytes(bytes)).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use skrifa::instance::{LocationRef, Size};
    use skrifa::outline::{DrawSettings, pen::SvgPen};
    use skrifa::{FontRef, MetadataProvider, raw::TableProvider};

    /// The path of a glyph as skrifa draws it, an independent reader.
    fn path_of(font: &FontRef<'_>, glyph: u32) -> Option<String> {
        let mut pen = SvgPen::new();
        let settings = DrawSettings::unhinted(Size::unscaled(), LocationRef::default());
        font.outline_glyphs().get(glyph.into())?.draw(settings, &mut pen).ok()?;
        Some(pen.to_string())
    }

    #[test]
    fn a_thin_program_keeps_its_outlines() {
        let files: [&[u8]; 2] = [
            include_bytes!("../../../static/type/Andika-Regular.ttf"),
            include_bytes!("../../../static/type/HomegroundNaskh-Regular.ttf"),
        ];
        for whole in files {
            let thin = thin_program(whole).unwrap();
            assert!(thin.len() < whole.len());
            let (font, before) = (FontRef::new(&thin).unwrap(), FontRef::new(whole).unwrap());
            let count = u32::from(before.maxp().unwrap().num_glyphs());
            assert_eq!(u32::from(font.maxp().unwrap().num_glyphs()), count);
            let drawn = (0..count).filter(|glyph| {
                let paths = (path_of(&font, *glyph), path_of(&before, *glyph));
                assert_eq!(paths.0, paths.1, "glyph {glyph}");
                paths.0.is_some_and(|path| !path.is_empty())
            });
            assert!(drawn.count() > 500);
            assert!(font.name().is_err() && font.table_data(skrifa::Tag::new(b"prep")).is_none());
        }
    }
}
