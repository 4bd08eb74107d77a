//! The outlines of a TrueType program, one by one, without the instructions for coarse screens: paper and today’s screens
//! need none, and they are a third of a subset.
//!
//! Source: the OpenType specification, tables `glyf` and `loca`.

/// The two tables as they stand in a program.
#[derive(Clone, Copy, Debug)]
pub struct Outlines<'p> {
    glyf: &'p [u8],
    loca: &'p [u8],
    /// `loca` counts in four bytes (`indexToLocFormat` of `head`).
    is_long: bool,
}

impl<'p> Outlines<'p> {
    pub const fn new(glyf: &'p [u8], loca: &'p [u8], is_long: bool) -> Self {
        Self { glyf, loca, is_long }
    }

    /// Adds the bare outline of a glyph to others; one of several parts calls these by the numbers that `called` has
    /// for them. A space adds nothing. `None` where it is not sound.
    pub fn copy_bare(
        &self,
        glyph: u16,
        to: &mut Vec<u8>,
        called: &mut dyn FnMut(u16) -> Option<u16>,
    ) -> Option<()> {
        let at = usize::from(glyph);
        let outline = self.glyf.get(self.place(at)?..self.place(at + 1)?)?;
        if outline.is_empty() {
            return Some(());
        }
        match usize::try_from(i16::from_be_bytes(*outline.first_chunk()?)) {
            Ok(contours) => copy_simple(outline, contours, to),
            Err(_) => copy_composite(outline, to, called),
        }
    }

    /// Where a glyph begins.
    fn place(&self, at: usize) -> Option<usize> {
        if self.is_long {
            let place = u32::from_be_bytes(*self.loca.get(at * 4..)?.first_chunk()?);
            return usize::try_from(place).ok();
        }
        Some(usize::from(short(self.loca, at * 2)?) * 2)
    }
}

/// The head of a glyph: its contours and its box.
const HEAD: usize = 10;

/// A glyph of contours: after the ends of those come the instructions with their length.
fn copy_simple(outline: &[u8], contours: usize, to: &mut Vec<u8>) -> Option<()> {
    let at = HEAD + 2 * contours;
    let points = at + 2 + usize::from(short(outline, at)?);
    to.extend_from_slice(outline.get(..at)?);
    to.extend([0, 0]);
    to.extend_from_slice(outline.get(points..)?);
    Some(())
}

const ARGUMENTS_ARE_WORDS: u16 = 0x0001;
const HAS_SCALE: u16 = 0x0008;
const MORE_COMPONENTS: u16 = 0x0020;
const HAS_TWO_SCALES: u16 = 0x0040;
const HAS_MATRIX: u16 = 0x0080;
const HAS_INSTRUCTIONS: u16 = 0x0100;

/// A glyph made of others: after the last of them come the instructions, if a flag says so.
fn copy_composite(
    outline: &[u8],
    to: &mut Vec<u8>,
    called: &mut dyn FnMut(u16) -> Option<u16>,
) -> Option<()> {
    to.extend_from_slice(outline.get(..HEAD)?);
    let mut at = HEAD;
    loop {
        let (flags, part) = (short(outline, at)?, short(outline, at + 2)?);
        let arguments = if flags & ARGUMENTS_ARE_WORDS == 0 { 2 } else { 4 };
        let scale = match flags {
            flags if flags & HAS_SCALE != 0 => 2,
            flags if flags & HAS_TWO_SCALES != 0 => 4,
            flags if flags & HAS_MATRIX != 0 => 8,
            _ => 0,
        };
        to.extend((flags & !HAS_INSTRUCTIONS).to_be_bytes());
        to.extend(called(part)?.to_be_bytes());
        let next = at + 4 + arguments + scale;
        to.extend_from_slice(outline.get(at + 4..next)?);
        at = next;
        if flags & MORE_COMPONENTS == 0 {
            return Some(());
        }
    }
}

/// A number of two bytes.
pub fn short(bytes: &[u8], at: usize) -> Option<u16> {
    Some(u16::from_be_bytes(*bytes.get(at..)?.first_chunk()?))
}
