//! How many syllables figures and units have when they are read aloud, as Flesch (1948) and
//! `McLaughlin` (1969) count them: 30 is “thir-ty”, 1.5 “one-point-five”, cm “cen-ti-me-tres”.

/// Zero to nineteen.
const ONES: [u32; 20] = [2, 1, 1, 1, 1, 1, 1, 2, 1, 1, 1, 3, 1, 2, 2, 2, 2, 3, 2, 2];
/// Twenty to ninety.
const TENS: [u32; 8] = [2, 2, 2, 2, 2, 3, 2, 2];
const HUNDRED: u32 = 2;
const THOUSAND: u32 = 2;
const AND: u32 = 1;
const POINT: u32 = 1;

/// Units by their signs, and how many syllables their names have.
const UNITS: [(&str, u32); 11] = [
    ("cm", 4),
    ("g", 1),
    ("h", 1),
    ("kg", 3),
    ("km", 4),
    ("m", 2),
    ("min", 2),
    ("mins", 2),
    ("mm", 4),
    ("s", 2),
    ("sec", 2),
];

/// The syllables of a unit’s name.
pub fn unit_syllables(sign: &str) -> Option<u32> {
    if sign.len() > 4 {
        return None;
    }
    UNITS.iter().find(|(unit, _)| *unit == sign).map(|(_, syllables)| *syllables)
}

/// The syllables of a figure that has digits, points and commas only. A comma parts thousands; what
/// follows a point, and what is longer than six digits, is read digit by digit.
pub fn figure_syllables(figure: &str) -> u32 {
    let figure: String = figure.chars().filter(|c| *c != ',').collect();
    let mut pieces = figure.split('.').filter(|piece| !piece.is_empty());
    let whole = pieces.next().map_or(0, whole_syllables);
    whole + pieces.map(|piece| POINT + digit_by_digit(piece)).sum::<u32>()
}

fn digit_by_digit(digits: &str) -> u32 {
    digits.bytes().map(|digit| ONES[usize::from(digit.saturating_sub(b'0')) % 10]).sum()
}

fn whole_syllables(digits: &str) -> u32 {
    match digits.parse::<usize>() {
        Ok(number) if number < 1_000_000 && (number == 0 || !digits.starts_with('0')) => {
            number_syllables(number)
        }
        _ => digit_by_digit(digits),
    }
}

fn number_syllables(number: usize) -> u32 {
    match number {
        0..20 => ONES[number],
        20..100 => TENS[number / 10 - 2] + rest(number % 10, 0),
        100..1000 => ONES[number / 100] + HUNDRED + rest(number % 100, AND),
        // Years: 1918 is nineteen-eighteen, 1900 nineteen hundred, 1905 nineteen-o-five.
        1100..2000 => match number % 100 {
            0 => ONES[number / 100] + HUNDRED,
            low @ 1..10 => ONES[number / 100] + 1 + ONES[low],
            low => ONES[number / 100] + number_syllables(low),
        },
        _ => {
            let low = number % 1000;
            number_syllables(number / 1000) + THOUSAND + rest(low, if low < 100 { AND } else { 0 })
        }
    }
}

/// What is said after tens, hundreds or thousands: nothing for a nought.
fn rest(low: usize, joined: u32) -> u32 {
    if low == 0 { 0 } else { joined + number_syllables(low) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_are_read_aloud() {
        let said = [
            ("0", 2),       // ze-ro
            ("7", 2),       // se-ven
            ("17", 3),      // se-ven-teen
            ("30", 2),      // thir-ty
            ("77", 5),      // se-ven-ty-se-ven
            ("100", 3),     // one hun-dred
            ("105", 5),     // one hun-dred and five
            ("1918", 4),    // nine-teen eigh-teen: Flesch’s own example
            ("1,000", 3),   // one thou-sand
            ("2026", 7),    // two thou-sand and twen-ty-six
            ("12,345", 10), // twelve thou-sand three hun-dred and for-ty-five
            ("1.5", 3),     // one point five
            ("0.25", 5),    // ze-ro point two five
            ("007", 6),     // ze-ro ze-ro se-ven
        ];
        for (figure, syllables) in said {
            assert_eq!(figure_syllables(figure), syllables, "{figure}");
        }
        assert_eq!(figure_syllables("1234567"), 8);
        assert_eq!((unit_syllables("cm"), unit_syllables("cat")), (Some(4), None));
    }
}
