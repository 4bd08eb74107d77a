//! The edition mark: four characters made from what a sheet says, so that they change with it alone.
//!
//! The alphabet is Douglas Crockford’s base 32 (crockford.com/base32.html): no I, L, O or U; what is typed
//! as O counts as 0, I and L as 1, in either case. The hash is FNV-1a of 64 bits (Fowler, Noll and Vo; RFC
//! 9923), folded to 20 bits as its authors advise. Two different sheets share a mark once in a million.

use std::fmt;

use super::sheets::Sheets;
use super::{Fact, PartOutline};

/// The digits of Crockford’s base 32.
pub const ALPHABET: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

const OFFSET: u64 = 0xcbf2_9ce4_8422_2325;
const PRIME: u64 = 0x0100_0000_01b3;

/// Four characters, five bits each.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Mark([u8; 4]);

impl Mark {
    /// The mark of all facts that stand on these sheets.
    pub fn of(facts: &[Fact], parts: &[PartOutline], sheets: Sheets) -> Self {
        let mut hash = OFFSET;
        let mut take = |text: &str, end: u8| {
            for byte in text.bytes().chain([end]) {
                hash = (hash ^ u64::from(byte)).wrapping_mul(PRIME);
            }
        };
        let groups = std::iter::once(facts).chain(parts.iter().map(|part| part.facts.as_slice()));
        for group in groups {
            let mut printed = group.iter().filter(|fact| fact.kind.sheets.meets(sheets)).peekable();
            // A part that these sheets say nothing of doesn’t count.
            let has_any = printed.peek().is_some();
            for fact in printed {
                take(fact.kind.key, 0x1f);
                take(&fact.says, 0x1e);
            }
            if has_any {
                take("", 0x1d);
            }
        }
        Self::of_hash(hash)
    }

    /// A mark of any bytes, such as those of a picture.
    pub fn of_bytes(bytes: &[u8]) -> Self {
        let take = |hash: u64, byte: &u8| (hash ^ u64::from(*byte)).wrapping_mul(PRIME);
        Self::of_hash(bytes.iter().fold(OFFSET, take))
    }

    fn of_hash(hash: u64) -> Self {
        // Folded: what the high bits know is not lost.
        let folded = (hash >> 60) ^ (hash >> 40) ^ (hash >> 20) ^ hash;
        let digit = |place: u32| {
            let five = usize::try_from((folded >> (5 * place)) & 31).unwrap_or_default();
            ALPHABET[five]
        };
        Self([digit(3), digit(2), digit(1), digit(0)])
    }

    /// Reads a mark as people type it.
    pub fn read(text: &str) -> Option<Self> {
        let typed = text.chars().filter(|c| !c.is_whitespace() && *c != '-');
        let digits: Option<Vec<u8>> = typed
            .map(|letter| {
                let letter = match letter.to_ascii_uppercase() {
                    'O' => '0',
                    'I' | 'L' => '1',
                    other => other,
                };
                u8::try_from(letter).ok().filter(|byte| ALPHABET.contains(byte))
            })
            .collect();
        digits?.try_into().ok().map(Self)
    }
}

impl fmt::Display for Mark {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.iter().try_for_each(|byte| write!(f, "{}", char::from(*byte)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_hash_is_fnv_1a() {
        // RFC 9923 (FNV-1a, 64 bits): the empty text and “a”.
        assert_eq!(OFFSET, 0xcbf2_9ce4_8422_2325);
        let of_a = (OFFSET ^ u64::from(b'a')).wrapping_mul(PRIME);
        assert_eq!(of_a, 0xaf63_dc4c_8601_ec8c);
    }

    #[test]
    fn marks_are_read_as_people_type_them() {
        let mark = Mark::of_hash(0x1234_5678_9abc_def0);
        assert_eq!(Mark::read(&format!(" {} ", mark.to_string().to_lowercase())), Some(mark));
        assert_eq!(Mark::read("o1lI").unwrap().to_string(), "0111");
        assert!(Mark::read("ABC").is_none() && Mark::read("ABCU").is_none());
        assert!(Mark::read("ABCDE").is_none() && Mark::read("ÄBCD").is_none());
    }
}
