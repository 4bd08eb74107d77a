//! A QR code: an address for a phone’s camera, on paper that can’t be clicked.
//!
//! ISO/IEC 18004, model 2, error correction M (about 15 % may be lost), a quiet zone of four modules
//! (by the standard), modules of at least 0.42 mm: five dots of a 300 dpi printer, which the holder
//! of the trade mark asks for (qrcode.com, “Setting the module size”: four dots or more).

use fast_qr::{ECL, QRBuilder};

use super::{Drawing, Mark, Tone};

/// The side of a module: half a millimetre, in points.
const MODULE: f32 = 0.5 * 72.0 / 25.4;

/// Modules that stay white all round.
const QUIET: u8 = 4;

/// Draws an address as a code; `None` where it is longer than a small code should hold.
pub fn draw_qr(address: &str) -> Option<Drawing> {
    let rows = dark_rows(address)?;
    // Larger than a hundred modules it would be wider than a third of a card.
    let side = u8::try_from(rows.len()).ok().filter(|side| *side <= 101)?;
    let whole = f32::from(side + 2 * QUIET) * MODULE;
    let marks = dark_fields(&rows).into_iter().map(|field| {
        let place = |modules: u8| f32::from(modules + QUIET) * MODULE;
        let size = (f32::from(field.width) * MODULE, f32::from(field.height) * MODULE);
        Mark::rectangle((place(field.x), place(field.y)), size, Some(Tone::Ink), None)
    });
    Some(Drawing { width: whole, height: whole, marks: marks.collect(), says: address.to_owned() })
}

/// The modules of a code, row by row: whether each is dark.
fn dark_rows(address: &str) -> Option<Vec<Vec<bool>>> {
    let code = QRBuilder::new(address).ecl(ECL::M).build().ok()?;
    let row = |y: usize| code[y].iter().map(|module| module.value()).collect();
    Some((0..code.size).map(row).collect())
}

/// A rectangle of dark modules.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Field {
    x: u8,
    y: u8,
    width: u8,
    height: u8,
}

/// The dark modules as runs of a row, a run joined to one of the same place in the row above: no
/// hairs of white between rows, and few shapes.
fn dark_fields(rows: &[Vec<bool>]) -> Vec<Field> {
    let mut done = Vec::new();
    let mut open: Vec<Field> = Vec::new();
    for (row, y) in rows.iter().zip(0_u8..) {
        let runs = dark_runs(row);
        let (kept, ended): (Vec<Field>, Vec<Field>) =
            open.into_iter().partition(|field| runs.contains(&(field.x, field.width)));
        done.extend(ended);
        open = runs
            .into_iter()
            .map(|(x, width)| {
                let above = kept.iter().find(|field| (field.x, field.width) == (x, width));
                above.map_or(Field { x, y, width, height: 1 }, |field| Field {
                    height: field.height + 1,
                    ..*field
                })
            })
            .collect();
    }
    done.extend(open);
    done
}

/// Where each run of dark modules in a row begins, and how long it is.
fn dark_runs(row: &[bool]) -> Vec<(u8, u8)> {
    let mut runs: Vec<(u8, u8)> = Vec::new();
    let dark = row.iter().zip(0_u8..).filter(|(is_dark, _)| **is_dark);
    for (_, x) in dark {
        match runs.last_mut() {
            Some((start, width)) if *start + *width == x => *width += 1,
            _ => runs.push((x, 1)),
        }
    }
    runs
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fields_cover_each_dark_module_once() {
        let rows = dark_rows("https://example.org/a").unwrap();
        let mut seen = vec![vec![0_u8; rows.len()]; rows.len()];
        for field in dark_fields(&rows) {
            for row in &mut seen[usize::from(field.y)..][..usize::from(field.height)] {
                for times in &mut row[usize::from(field.x)..][..usize::from(field.width)] {
                    *times += 1;
                }
            }
        }
        let asked: Vec<Vec<u8>> =
            rows.iter().map(|row| row.iter().map(|dark| u8::from(*dark)).collect()).collect();
        assert_eq!(seen, asked);
    }

    #[test]
    fn a_whole_page_of_text_is_no_address() {
        assert!(draw_qr(&"a".repeat(900)).is_none());
        assert!(draw_qr("https://pe.example.org/sessions/a.html").is_some());
    }
}
