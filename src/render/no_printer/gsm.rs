//! Letters of a text message: what a message holds, and how a text is put into those letters.
//!
//! 3GPP TS 23.038, 6.2.1: the default alphabet has 127 letters of one septet each, and ten more of
//! two behind an escape. A message holds 140 octets: 160 septets, or 70 units of UCS-2 where any
//! letter is outside the alphabet.

/// Septets of one message, and UTF-16 units of one that can’t be written in septets.
pub const MOST_SEPTETS: usize = 160;
pub const MOST_UNITS: usize = 70;

/// The default alphabet, in the order of its codes, without the escape.
const BASIC: &str = "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?\
                     ¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà";

/// What takes an escape first.
const EXTENDED: &str = "\u{c}^{}\\[~]|€";

/// Whether a text fits one message, by the letters it has.
pub fn fits(text: &str) -> bool {
    match septets(text) {
        Some(count) => count <= MOST_SEPTETS,
        None => text.encode_utf16().count() <= MOST_UNITS,
    }
}

/// How many septets a text takes; `None` where a letter is outside the alphabet.
fn septets(text: &str) -> Option<usize> {
    text.chars()
        .map(|letter| match letter {
            _ if BASIC.contains(letter) => Some(1),
            _ if EXTENDED.contains(letter) => Some(2),
            _ => None,
        })
        .sum()
}

/// Signs of print in the letters of a message: straight quotes, plain dashes, three points.
pub fn plain_signs(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '‘' | '’' | '‚' | '`' | '´' | '′' => plain.push('\''),
            '“' | '”' | '„' | '«' | '»' | '″' => plain.push('"'),
            '–' | '—' | '‐' | '\u{2011}' | '−' | '·' | '•' => plain.push('-'),
            '…' => plain.push_str("..."),
            '×' => plain.push('x'),
            '½' => plain.push_str("1/2"),
            '¼' => plain.push_str("1/4"),
            '¾' => plain.push_str("3/4"),
            '²' => plain.push('2'),
            '³' => plain.push('3'),
            '→' => plain.push_str("->"),
            '\u{ad}' | '\u{200b}' | '\u{feff}' => {}
            c if c.is_whitespace() => plain.push(' '),
            c => plain.push(c),
        }
    }
    plain
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_alphabet_has_its_127_letters() {
        assert_eq!(BASIC.chars().count(), 127);
        assert_eq!(septets("é€"), Some(3));
        assert_eq!(septets("ł"), None);
        assert!(fits(&"a".repeat(160)) && !fits(&"a".repeat(161)));
        assert!(fits(&"ł".repeat(70)) && !fits(&"ł".repeat(71)));
        assert!(fits(&"€".repeat(80)) && !fits(&"€".repeat(81)));
    }
}
