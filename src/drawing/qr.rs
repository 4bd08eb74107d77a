//! A QR code: an address for a phone’s camera, on paper that can’t be clicked.
//!
//! ISO/IEC 18004, model 2, error correction M (about 15 % may be lost), a quiet zone of four modules
//! (by the standard), modules of at least 0.42 mm: five dots of a 300 dpi printer, which the holder
//! of the trade mark asks for (qrcode.com, “Setting the module size”: four dots or more).

use qrcode::{Color, EcLevel, QrCode};

use super::{Drawing, Mark, Tone};

/// The side of a module: half a millimetre, in points.
const MODULE: f32 = 0.5 * 72.0 / 25.4;

/// Modules that stay white all round.
const QUIET: u8 = 4;

/// Draws an address as a code; `None` where it is longer than a small code should hold.
pub fn draw_qr(address: &str) -> Option<Drawing> {
    let code = QrCode::with_error_correction_level(address, EcLevel::M).ok()?;
    // Larger than a hundred modules it would be wider than a third of a card.
    let side = u8::try_from(code.width()).ok().filter(|side| *side <= 101)?;
    let whole = f32::from(side + 2 * QUIET) * MODULE;
    let marks = dark_fields(&code.to_colors(), side).into_iter().map(|field| {
        let place = |modules: u8| f32::from(modules + QUIET) * MODULE;
        let size = (f32::from(field.width) * MODULE, f32::from(field.height) * MODULE);
        Mark::rectangle((place(field.x), place(field.y)), size, Some(Tone::Ink), None)
    });
    Some(Drawing { width: whole, height: whole, marks: marks.collect(), says: address.to_owned() })
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
fn dark_fields(modules: &[Color], side: u8) -> Vec<Field> {
    let mut done = Vec::new();
    let mut open: Vec<Field> = Vec::new();
    for (row, y) in modules.chunks(usize::from(side)).zip(0_u8..) {
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
fn dark_runs(row: &[Color]) -> Vec<(u8, u8)> {
    let mut runs: Vec<(u8, u8)> = Vec::new();
    for (module, x) in row.iter().zip(0_u8..) {
        if *module == Color::Light {
            continue;
        }
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
        let code =
            QrCode::with_error_correction_level("https://example.org/a", EcLevel::M).unwrap();
        let (colors, side) = (code.to_colors(), code.width());
        let mut seen = vec![0_u8; side * side];
        for field in dark_fields(&colors, u8::try_from(side).unwrap()) {
            for y in field.y..field.y + field.height {
                for x in field.x..field.x + field.width {
                    seen[usize::from(y) * side + usize::from(x)] += 1;
                }
            }
        }
        let asked: Vec<u8> = colors.iter().map(|c| u8::from(*c == Color::Dark)).collect();
        assert_eq!(seen, asked);
    }

    #[test]
    fn a_whole_page_of_text_is_no_address() {
        assert!(draw_qr(&"a".repeat(900)).is_none());
        assert!(draw_qr("https://pe.example.org/sessions/a.html").is_some());
    }
}
