//! A TrueType program → a smaller one with those of its glyphs that sheets show, in the tables that a PDF needs.
//!
//! ISO 32000-1, 9.9: for a `CIDFontType2` they are glyf, head, hhea, hmtx, loca and maxp, and cvt, fpgm
//! and prep for hinted outlines, which ours are not (`outlines`). The tables: OpenType specification.

use std::borrow::Cow;

use super::outlines::{Outlines, short};

/// Length of the table directory’s head, and of one of its records.
const HEAD: usize = 12;
const RECORD: usize = 16;

/// What begins a program of TrueType outlines: the first is usual, the second Apple’s.
const VERSIONS: [&[u8; 4]; 2] = [&[0, 1, 0, 0], b"true"];

/// A table with its name.
type Table<'p> = (&'p [u8], Cow<'p, [u8]>);

/// A program with the tables that are read of it.
#[derive(Debug)]
pub struct FontProgram<'p> {
    version: &'p [u8],
    tables: Vec<(&'p [u8], &'p [u8])>,
    head: &'p [u8],
    hhea: &'p [u8],
    hmtx: &'p [u8],
    maxp: &'p [u8],
    outlines: Outlines<'p>,
}

impl<'p> FontProgram<'p> {
    /// `None` where it is no TrueType program.
    pub fn read(program: &'p [u8]) -> Option<Self> {
        let version =
            program.get(..4).filter(|begins| VERSIONS.iter().any(|known| begins == known))?;
        let tables = tables_of(program)?;
        let find = |wanted: &[u8; 4]| {
            tables.iter().find(|(name, _)| name == wanted).map(|(_, table)| *table)
        };
        let head = find(b"head").filter(|head| head.len() >= LOCA_FORMAT + 2)?;
        let hhea = find(b"hhea").filter(|hhea| hhea.len() >= METRICS + 2)?;
        let maxp = find(b"maxp").filter(|maxp| maxp.len() >= GLYPHS + 2)?;
        let outlines = Outlines::new(find(b"glyf")?, find(b"loca")?, head[LOCA_FORMAT + 1] == 1);
        Some(Self { version, head, hhea, hmtx: find(b"hmtx")?, maxp, outlines, tables })
    }

    /// How many glyphs it has.
    pub fn glyphs(&self) -> u16 {
        short(self.maxp, GLYPHS).unwrap_or(0)
    }

    /// A program with glyph 0, which stands for whatever is missing, then these glyphs in their order, then what
    /// they are put together from. `None` where one of them is not sound.
    pub fn cut(&self, glyphs: &[u16]) -> Option<Vec<u8>> {
        program_of(self.version, &self.cut_tables(glyphs)?)
    }

    /// A program with glyph 0 alone, with all that a reader learns of the face besides its glyphs.
    pub fn without_glyphs(&self) -> Option<Vec<u8>> {
        let mut tables = self.cut_tables(&[])?;
        for (name, table) in &self.tables {
            match *name {
                b"OS/2" | b"name" => tables.push((name, Cow::Borrowed(table))),
                b"post" => {
                    let nameless = [&VERSION_3, table.get(4..NAMELESS)?].concat();
                    tables.push((name, Cow::Owned(nameless)));
                }
                _ => {}
            }
        }
        tables.push((b"cmap", Cow::Borrowed(&NO_LETTERS)));
        tables.sort_by_key(|(name, _)| *name);
        program_of(self.version, &tables)
    }

    fn cut_tables(&self, glyphs: &[u16]) -> Option<Vec<Table<'p>>> {
        let mut taken: Vec<u16> = std::iter::once(0).chain(glyphs.iter().copied()).collect();
        let (mut outlines, mut places) = (Vec::new(), vec![0]);
        let mut next = 0;
        while let Some(glyph) = taken.get(next).copied() {
            let mut called = |part: u16| {
                let known = taken.iter().position(|taken| *taken == part);
                let index = known.unwrap_or_else(|| {
                    taken.push(part);
                    taken.len() - 1
                });
                u16::try_from(index).ok()
            };
            self.outlines.copy_bare(glyph, &mut outlines, &mut called)?;
            outlines.resize(outlines.len().next_multiple_of(2), 0);
            places.push(outlines.len());
            next += 1;
        }
        let count = u16::try_from(taken.len()).ok()?;
        let (loca, format) = loca_of(&places)?;
        Some(vec![
            (b"glyf", Cow::Owned(outlines)),
            (b"head", with_short(self.head, LOCA_FORMAT, format)),
            (b"hhea", with_short(self.hhea, METRICS, count)),
            (b"hmtx", Cow::Owned(self.metrics_of(&taken)?)),
            (b"loca", Cow::Owned(loca)),
            (b"maxp", with_short(self.maxp, GLYPHS, count)),
        ])
    }

    /// Advance and left bearing of each glyph. Of those at the end of the table all have the last advance.
    fn metrics_of(&self, glyphs: &[u16]) -> Option<Vec<u8>> {
        let long = usize::from(short(self.hhea, METRICS)?);
        let mut metrics = Vec::with_capacity(glyphs.len() * 4);
        for glyph in glyphs.iter().copied().map(usize::from) {
            let advance = glyph.min(long.checked_sub(1)?) * 4;
            let bearing = if glyph < long { glyph * 4 + 2 } else { long * 4 + (glyph - long) * 2 };
            metrics.extend(self.hmtx.get(advance..advance + 2)?);
            metrics.extend(self.hmtx.get(bearing..bearing + 2)?);
        }
        Some(metrics)
    }
}

/// Where tables have what a cut changes: how places are counted (`head`), how many advances there are (`hhea`) and how
/// many glyphs (`maxp`).
const LOCA_FORMAT: usize = 50;
const METRICS: usize = 34;
const GLYPHS: usize = 4;

/// A table `cmap` in which no letter has a glyph: format 4 with the one segment that ends it (OpenType, `cmap`).
const NO_LETTERS: [u8; 36] = [
    0, 0, 0, 1, 0, 3, 0, 1, 0, 0, 0, 12, 0, 4, 0, 24, 0, 0, 0, 2, 0, 2, 0, 0, 0, 0, 0xFF, 0xFF, 0,
    0, 0xFF, 0xFF, 0, 1, 0, 0,
];

/// Length of a table `post` without the names of glyphs, and its version.
const NAMELESS: usize = 32;
const VERSION_3: [u8; 4] = [0, 3, 0, 0];

/// Where glyphs begin, and how that is counted: 0 in halves if these have room in two bytes, else 1.
fn loca_of(places: &[usize]) -> Option<(Vec<u8>, u16)> {
    if let Some(Ok(_)) = places.last().map(|last| u16::try_from(last / 2)) {
        let halves = places.iter().filter_map(|place| u16::try_from(place / 2).ok());
        return Some((halves.flat_map(u16::to_be_bytes).collect(), 0));
    }
    let long: Option<Vec<u32>> = places.iter().map(|place| u32::try_from(*place).ok()).collect();
    Some((long?.into_iter().flat_map(u32::to_be_bytes).collect(), 1))
}

fn with_short(table: &[u8], at: usize, value: u16) -> Cow<'static, [u8]> {
    let mut table = table.to_vec();
    table[at..at + 2].copy_from_slice(&value.to_be_bytes());
    Cow::Owned(table)
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
fn tables_of(program: &[u8]) -> Option<Vec<(&[u8], &[u8])>> {
    let count = usize::from(short(program, 4)?);
    let records = program.get(HEAD..HEAD + count * RECORD)?.chunks(RECORD);
    let table = |record: &'_ [u8]| {
        let start = number(record, 8)?;
        program.get(start..start.checked_add(number(record, 12)?)?)
    };
    records.map(|record| Some((&record[..4], table(record)?))).collect()
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

fn number(bytes: &[u8], at: usize) -> Option<usize> {
    usize::try_from(u32::from_be_bytes(*bytes.get(at..)?.first_chunk()?)).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use skrifa::instance::{LocationRef, Size};
    use skrifa::outline::{DrawSettings, pen::SvgPen};
    use skrifa::{FontRef, MetadataProvider, raw::TableProvider};

    /// The path of a glyph as skrifa draws it, an independent reader.
    fn path_of(font: &FontRef<'_>, glyph: u16) -> Option<String> {
        let mut pen = SvgPen::new();
        let settings = DrawSettings::unhinted(Size::unscaled(), LocationRef::default());
        font.outline_glyphs().get(glyph.into())?.draw(settings, &mut pen).ok()?;
        Some(pen.to_string())
    }

    fn advance_of(font: &FontRef<'_>, glyph: u16) -> Option<f32> {
        let metrics = font.glyph_metrics(Size::unscaled(), LocationRef::default());
        metrics.advance_width(glyph.into())
    }

    const FILES: [&[u8]; 2] = [
        include_bytes!("../../../static/type/Andika-Regular.ttf"),
        include_bytes!("../../../static/type/HomegroundNaskh-Regular.ttf"),
    ];

    /// All glyphs, then every seventh: outlines, of parts too, and advances are what they were.
    #[test]
    fn a_cut_program_keeps_its_outlines() {
        for whole in FILES {
            let program = FontProgram::read(whole).unwrap();
            for step in [1, 7] {
                let glyphs: Vec<u16> = (1..program.glyphs()).step_by(step).collect();
                let cut = program.cut(&glyphs).unwrap();
                assert!(cut.len() < whole.len());
                let (font, before) = (FontRef::new(&cut).unwrap(), FontRef::new(whole).unwrap());
                let drawn = (0..).zip([0].iter().chain(&glyphs)).filter(|(called, glyph)| {
                    let paths = (path_of(&font, *called), path_of(&before, **glyph));
                    assert_eq!(paths.0, paths.1, "glyph {glyph}");
                    assert_eq!(advance_of(&font, *called), advance_of(&before, **glyph));
                    paths.0.is_some_and(|path| !path.is_empty())
                });
                assert!(drawn.count() > 400 / step);
                assert!(font.name().is_err());
                assert!(font.table_data(skrifa::Tag::new(b"prep")).is_none());
            }
        }
    }

    #[test]
    fn what_is_no_program_is_refused() {
        assert!(FontProgram::read(b"OTTO").is_none() && FontProgram::read(b"").is_none());
        let whole = FILES[0];
        for length in [3, 11, 40, 300, 5_000] {
            assert!(FontProgram::read(&whole[..length]).is_none(), "{length}");
        }
    }
}
