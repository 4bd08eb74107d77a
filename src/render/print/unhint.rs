//! Outlines of a TrueType program without the instructions for coarse screens: paper and today’s screens need none,
//! and they are a third of a subset.
//!
//! Source: the OpenType specification, tables `glyf` and `loca`.

/// The two tables anew; `None` where they are not sound, and better left as they are. `is_long` tells how `loca`
/// counts (`indexToLocFormat` of `head`).
pub fn unhint(glyf: &[u8], loca: &[u8], is_long: bool) -> Option<(Vec<u8>, Vec<u8>)> {
    let places: Vec<usize> = if is_long {
        let words = loca.chunks_exact(4).filter_map(|word| word.try_into().ok());
        words.filter_map(|word| usize::try_from(u32::from_be_bytes(word)).ok()).collect()
    } else {
        let words = loca.chunks_exact(2).filter_map(|word| word.try_into().ok());
        words.map(|word| usize::from(u16::from_be_bytes(word)) * 2).collect()
    };
    let mut outlines = Vec::with_capacity(glyf.len());
    let mut starts = vec![0];
    for pair in places.windows(2) {
        let glyph = glyf.get(pair[0]..pair[1])?;
        if !glyph.is_empty() {
            outlines.extend(bare_glyph(glyph)?);
            outlines.resize(outlines.len().next_multiple_of(4), 0);
        }
        starts.push(outlines.len());
    }
    let written = starts.into_iter().map(|start| {
        let short = u16::try_from(start / 2).ok().filter(|_| !is_long);
        let long = u32::try_from(start).ok().filter(|_| is_long);
        short.map(|place| place.to_be_bytes().to_vec()).or(long.map(|p| p.to_be_bytes().to_vec()))
    });
    let places: Vec<Vec<u8>> = written.collect::<Option<_>>()?;
    Some((outlines, places.concat()))
}

fn bare_glyph(glyph: &[u8]) -> Option<Vec<u8>> {
    let contours = i16::from_be_bytes(glyph.get(..2)?.try_into().ok()?);
    match usize::try_from(contours) {
        Ok(contours) => bare_outline(glyph, contours),
        Err(_) => bare_composite(glyph),
    }
}

/// The head of a glyph: its contours and its box.
const HEAD: usize = 10;

/// A glyph of contours: after the ends of those come the instructions with their length.
fn bare_outline(glyph: &[u8], contours: usize) -> Option<Vec<u8>> {
    let at = HEAD + 2 * contours;
    let length = usize::from(short(glyph, at)?);
    let mut bare = glyph.get(..at)?.to_vec();
    bare.extend([0, 0]);
    bare.extend(glyph.get(at + 2 + length..)?);
    Some(bare)
}

const ARGUMENTS_ARE_WORDS: u16 = 0x0001;
const HAS_SCALE: u16 = 0x0008;
const MORE_COMPONENTS: u16 = 0x0020;
const HAS_TWO_SCALES: u16 = 0x0040;
const HAS_MATRIX: u16 = 0x0080;
const HAS_INSTRUCTIONS: u16 = 0x0100;

/// A glyph made of others: after the last of them come the instructions, if a flag says so.
fn bare_composite(glyph: &[u8]) -> Option<Vec<u8>> {
    let mut bare = glyph.to_vec();
    let mut at = HEAD;
    loop {
        let flags = short(glyph, at)?;
        bare.get_mut(at..at + 2)?.copy_from_slice(&(flags & !HAS_INSTRUCTIONS).to_be_bytes());
        let arguments = if flags & ARGUMENTS_ARE_WORDS == 0 { 2 } else { 4 };
        let scale = match flags {
            flags if flags & HAS_SCALE != 0 => 2,
            flags if flags & HAS_TWO_SCALES != 0 => 4,
            flags if flags & HAS_MATRIX != 0 => 8,
            _ => 0,
        };
        at += 4 + arguments + scale;
        if flags & MORE_COMPONENTS == 0 {
            break;
        }
    }
    (at <= bare.len()).then(|| {
        bare.truncate(at);
        bare
    })
}

fn short(bytes: &[u8], at: usize) -> Option<u16> {
    Some(u16::from_be_bytes(bytes.get(at..at + 2)?.try_into().ok()?))
}
