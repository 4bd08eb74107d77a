//! Which letters each glyph of a font stands for, so that words can be read out, found and copied (ISO 32000-1,
//! 9.10.3): a map in the language of `CMap`s.

use super::used::Glyphs;

/// A block of a map has no more lines (Adobe Technical Note 5014).
const MOST_LINES: usize = 100;

const BEGIN: &str = "/CIDInit/ProcSet findresource begin\n12 dict begin\nbegincmap\n\
    /CIDSystemInfo<</Registry(Adobe)/Ordering(UCS)/Supplement 0>>def\n\
    /CMapName/Adobe-Identity-UCS def\n/CMapType 2 def\n\
    1 begincodespacerange\n<0000><FFFF>\nendcodespacerange\n";

const END: &str = "endcmap\nCMapName currentdict/CMap defineresource pop\nend\nend";

/// Glyphs that follow one another and stand for letters that do.
struct Stretch {
    first: usize,
    last: usize,
    /// In UTF-16.
    text: Vec<u16>,
}

/// The map of glyphs that are called by their order, from 1 on. What stands for nothing is left out.
pub fn text_map(glyphs: &Glyphs) -> String {
    let mut stretches: Vec<Stretch> = Vec::new();
    for (code, (_, text)) in (1..).zip(glyphs.used()) {
        let text: Vec<u16> = text.to_string().encode_utf16().collect();
        match stretches.last_mut() {
            _ if text.is_empty() => {}
            Some(stretch) if stretch.goes_on(code, &text) => stretch.last = code,
            _ => stretches.push(Stretch { first: code, last: code, text }),
        }
    }
    let (ranges, letters): (Vec<_>, Vec<_>) =
        stretches.iter().partition(|stretch| stretch.first < stretch.last);
    let mut map = BEGIN.to_owned();
    write_blocks(&ranges, "range", &mut map);
    write_blocks(&letters, "char", &mut map);
    map + END
}

impl Stretch {
    /// Within a stretch only the last byte changes, of codes and of letters.
    fn goes_on(&self, code: usize, text: &[u16]) -> bool {
        let ([first], [letter]) = (self.text.as_slice(), text) else { return false };
        let further = code - self.first;
        code == self.last + 1
            && usize::from(*letter) == usize::from(*first) + further
            && first >> 8 == letter >> 8
            && self.first >> 8 == code >> 8
    }
}

fn write_blocks(stretches: &[&Stretch], kind: &str, map: &mut String) {
    for block in stretches.chunks(MOST_LINES) {
        map.push_str(&format!("{} beginbf{kind}\n", block.len()));
        for Stretch { first, last, text } in block {
            map.push_str(&format!("<{first:04X}>"));
            if first < last {
                map.push_str(&format!("<{last:04X}>"));
            }
            map.push('<');
            for unit in text {
                map.push_str(&format!("{unit:04X}"));
            }
            map.push_str(">\n");
        }
        map.push_str(&format!("endbf{kind}\n"));
    }
}

#[cfg(test)]
mod tests {
    use super::super::page::GlyphText;
    use super::*;
    use printpdf::cmap::ToUnicodeCMap;

    /// A map is read back by printpdf, an independent reader.
    #[test]
    fn every_glyph_is_found_again() {
        let texts = ["a", "b", "c", "", "d", "fi", "\u{fe}", "\u{ff}", "\u{100}", "𝄞", "z"];
        let own = texts.iter().map(|text| GlyphText::of(text));
        let letters =
            (0x21..0x400).map(|letter| GlyphText::Letter(char::from_u32(letter).unwrap()));
        let many = letters.enumerate().filter(|(at, _)| at % 3 != 0 || *at < 300).map(|(_, l)| l);
        let glyphs = Glyphs(std::iter::once(None).chain(own.chain(many).map(Some)).collect());
        let read = ToUnicodeCMap::parse(&text_map(&glyphs)).unwrap().mappings;
        let mut found = 0;
        for (code, (_, text)) in (1..).zip(glyphs.used()) {
            let letters: Vec<u32> = text.to_string().chars().map(u32::from).collect();
            assert_eq!(read.get(&code).cloned().unwrap_or_default(), letters, "glyph {code}");
            found += usize::from(!letters.is_empty());
        }
        assert_eq!(found, read.len());
    }
}
