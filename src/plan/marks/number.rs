//! Decimal numbers as digits and a power of ten, never as binary fractions.

/// A number as it was written: `digits` / 10^`places`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Decimal {
    pub digits: u64,
    pub places: u32,
}

/// More digits than any mark has, few enough that no product leaves its type.
const MOST_DIGITS: usize = 9;

/// Reads "2.05"; `None` for anything but ASCII digits with at most one point among them.
pub(super) fn read_decimal(text: &str) -> Option<Decimal> {
    let (whole, fraction) = match text.split_once('.') {
        Some((_, "")) => return None,
        Some(halves) => halves,
        None => (text, ""),
    };
    let plain = |digits: &str| digits.bytes().all(|byte| byte.is_ascii_digit());
    let fits = |digits: &str| digits.len() <= MOST_DIGITS && plain(digits);
    if whole.is_empty() || !fits(whole) || !fits(fraction) {
        return None;
    }
    let digits = format!("{whole}{fraction}").parse().ok()?;
    Some(Decimal { digits, places: u32::try_from(fraction.len()).ok()? })
}

/// `amount / size` with so many decimals; what is beyond them must be nothing.
pub(super) fn write_decimal(amount: i128, size: u32, places: u32) -> String {
    let scale = 10_u128.pow(places);
    let scaled = amount.unsigned_abs() * scale / u128::from(size);
    let sign = if amount < 0 { "−" } else { "" };
    let (whole, fraction) = (scaled / scale, scaled % scale);
    match usize::try_from(places) {
        Ok(0) | Err(_) => format!("{sign}{whole}"),
        Ok(width) => format!("{sign}{whole}.{fraction:0width$}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn digits_are_kept_as_written() {
        assert_eq!(read_decimal("2.05"), Some(Decimal { digits: 205, places: 2 }));
        assert_eq!(read_decimal("007"), Some(Decimal { digits: 7, places: 0 }));
        for bad in
            ["", ".", ".5", "5.", "1.2.3", "-1", "+1", "1e3", "١٢", "1_0", "1234567890", "NaN"]
        {
            assert_eq!(read_decimal(bad), None, "{bad}");
        }
    }

    #[test]
    fn a_loss_has_a_minus_sign() {
        assert_eq!(write_decimal(-50, 1000, 2), "−0.05");
        assert_eq!(write_decimal(2050, 1000, 2), "2.05");
    }
}
