//! How a class list is written: with commas, semicolons or tabs between its cells (RFC 4180 for the rest).

use super::headings::Heading;

/// What may stand between cells.
const SEPARATORS: [u8; 3] = [b',', b';', b'\t'];

/// The separator that makes the most headings of the first line; a comma where none does.
pub fn sniff_separator(text: &str) -> u8 {
    let first = text.lines().next().unwrap_or_default();
    let known = |separator: u8| {
        let cells = first.split(char::from(separator));
        cells.filter(|cell| Heading::of(cell.trim().trim_matches('"')).is_some()).count()
    };
    let best = SEPARATORS.into_iter().rev().max_by_key(|separator| known(*separator));
    best.unwrap_or(b',')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_separator_is_found() {
        assert_eq!(sniff_separator("code,minutes,things"), b',');
        assert_eq!(sniff_separator("code;minutes;floor length"), b';');
        assert_eq!(sniff_separator("\"code\"\tminutes"), b'\t');
        assert_eq!(sniff_separator("code"), b',');
    }
}
