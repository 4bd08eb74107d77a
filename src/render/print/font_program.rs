//! Thins an embedded TrueType program to the tables that a PDF needs.
//!
//! ISO 32000-1, 9.9: for a `CIDFontType2` they are glyf, head, hhea, hmtx, loca and maxp, and cvt, fpgm
//! and prep for hinted outlines. The name table alone is larger than the outlines of a whole sheet.

const NEEDED: [&[u8; 4]; 9] =
    [b"cvt ", b"fpgm", b"glyf", b"head", b"hhea", b"hmtx", b"loca", b"maxp", b"prep"];

/// Length of the table directory’s head, and of one of its records.
const HEAD: usize = 12;
const RECORD: usize = 16;

/// The program with only the tables it needs; `None` where it is no TrueType program.
pub fn thin_program(program: &[u8]) -> Option<Vec<u8>> {
    let count = usize::from(u16::from_be_bytes(program.get(4..6)?.try_into().ok()?));
    let records: Vec<&[u8]> = program.get(HEAD..HEAD + count * RECORD)?.chunks(RECORD).collect();
    let kept: Vec<&[u8]> = records
        .into_iter()
        .filter(|record| NEEDED.iter().any(|name| record.starts_with(*name)))
        .collect();
    let mut thin = program.get(..4)?.to_vec();
    thin.extend(directory_head(u16::try_from(kept.len()).ok()?));
    let mut offset = HEAD + kept.len() * RECORD;
    let mut tables: Vec<u8> = Vec::new();
    for record in kept {
        let start = number(record, 8)?;
        let table = program.get(start..start + number(record, 12)?)?;
        thin.extend_from_slice(&record[..8]);
        thin.extend(u32::try_from(offset).ok()?.to_be_bytes());
        thin.extend_from_slice(&record[12..16]);
        tables.extend_from_slice(table);
        tables.resize(tables.len().next_multiple_of(4), 0);
        offset += table.len().next_multiple_of(4);
    }
    thin.extend(tables);
    Some(thin)
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
    use skrifa::{FontRef, MetadataProvider, raw::TableProvider};

    #[test]
    fn a_thin_program_keeps_its_outlines() {
        let whole = include_bytes!("../../../static/type/Andika-Regular.ttf");
        let thin = thin_program(whole).unwrap();
        assert!(thin.len() < whole.len());
        // skrifa (an independent reader) finds the same outlines and no names.
        let font = FontRef::new(&thin).unwrap();
        let before = FontRef::new(whole).unwrap();
        assert_eq!(font.maxp().unwrap().num_glyphs(), before.maxp().unwrap().num_glyphs());
        assert!(font.outline_glyphs().get(36_u32.into()).is_some());
        assert!(font.name().is_err());
    }
}
