//! A least and a most of a quantity: "10-15 cm", "at most 500 g", "at least 5 cm", "20 cm".

use std::fmt;

use super::form::{NUMBER, tidy_with};
use super::{Form, Length, Mass, Quantity, Unreadable};

/// A least and a most, either of which may be open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Range<T> {
    pub least: Option<T>,
    pub most: Option<T>,
}

impl<T: Copy + Ord> Range<T> {
    /// Whether everything in `inner` lies within this range; an open end counts as fitting, since
    /// nothing is known against it.
    pub fn holds(&self, inner: &Self) -> bool {
        !self.is_below(inner) && !self.is_above(inner)
    }

    /// Whether `inner` reaches above the most of this range.
    pub fn is_above(&self, inner: &Self) -> bool {
        matches!((self.most, inner.most.or(inner.least)), (Some(limit), Some(value)) if value > limit)
    }

    /// Whether `inner` reaches below the least of this range.
    pub fn is_below(&self, inner: &Self) -> bool {
        matches!((self.least, inner.least.or(inner.most)), (Some(limit), Some(value)) if value < limit)
    }
}

/// Reads either form; the unit may be said once for both ends ("10-15 cm").
fn read_range<T: Quantity + Ord + Copy>(text: &str) -> Result<Range<T>, Unreadable> {
    let text = text.trim();
    if let Some(most) = text.strip_prefix("at most ") {
        return Ok(Range { least: None, most: Some(T::read_quantity(most)?) });
    }
    if let Some(least) = text.strip_prefix("at least ") {
        return Ok(Range { least: Some(T::read_quantity(least)?), most: None });
    }
    let Some((low, high)) = text.split_once(['-', '–']).filter(|(low, _)| !low.is_empty()) else {
        let both = T::read_quantity(text)?;
        return Ok(Range { least: Some(both), most: Some(both) });
    };
    let most = T::read_quantity(high)?;
    let unit = high.trim().trim_start_matches(|c: char| !c.is_alphabetic());
    let least = if low.trim().ends_with(char::is_alphabetic) {
        T::read_quantity(low)?
    } else {
        T::read_quantity(&format!("{low} {unit}"))?
    };
    if least > most {
        return Err(Unreadable::new(
            format!("“{text}” begins with the larger figure"),
            "Write the smaller first, then the larger.",
        ));
    }
    Ok(Range { least: Some(least), most: Some(most) })
}

/// The form of a range of something whose own form is known.
fn range_form<T: Quantity>(
    asked: &'static str,
    examples: &'static [&'static str],
    tidy: fn(&str) -> Option<String>,
) -> Form {
    let one = T::form().pattern;
    let one = one.trim_start_matches("^\\s*").trim_end_matches("\\s*$");
    let low = format!("{NUMBER}(?:\\s*[a-z]+)?");
    let pattern = format!("^\\s*(?:(?:at most |at least |{low}\\s*[-–])\\s*)?{one}\\s*$");
    Form { asked, pattern, examples, bare: None, tidy }
}

/// The house way, end by end: “40-100g” → “40-100 g”.
fn tidy_range<T: Quantity>(text: &str) -> Option<String> {
    let one = T::form().tidy;
    for limit in ["at most ", "at least "] {
        if let Some(rest) = text.strip_prefix(limit) {
            return Some(format!("{limit}{}", one(rest)?));
        }
    }
    let Some((low, high)) = text.split_once(['-', '–']) else { return one(text) };
    let high = one(high.trim())?;
    if low.trim().ends_with(char::is_alphabetic) {
        return Some(format!("{} - {high}", one(low.trim())?));
    }
    Some(format!("{}-{high}", low.trim()))
}

impl Quantity for Range<Length> {
    const ASKED: &'static str = "a size, such as 10-15 cm, at most 20 cm or at least 5 cm";
    fn read_quantity(text: &str) -> Result<Self, Unreadable> {
        read_range(text)
    }
    fn form() -> Form {
        range_form::<Length>(Self::ASKED, &["10-15 cm", "at most 20 cm"], |text| {
            tidy_with::<Self>(text, tidy_range::<Length>)
        })
    }
}

impl Quantity for Range<Mass> {
    const ASKED: &'static str = "a mass, such as 40-100 g, at most 500 g or at least 50 g";
    fn read_quantity(text: &str) -> Result<Self, Unreadable> {
        read_range(text)
    }
    fn form() -> Form {
        range_form::<Mass>(Self::ASKED, &["40-100 g", "at most 500 g"], |text| {
            tidy_with::<Self>(text, tidy_range::<Mass>)
        })
    }
}

impl<T: fmt::Display + PartialEq> fmt::Display for Range<T> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (&self.least, &self.most) {
            (Some(least), Some(most)) if least == most => write!(f, "{least}"),
            (Some(least), Some(most)) => write_both(f, &least.to_string(), &most.to_string()),
            (None, Some(most)) => write!(f, "at most {most}"),
            (Some(least), None) => write!(f, "at least {least}"),
            (None, None) => write!(f, "any"),
        }
    }
}

/// Says the unit once where both ends share it.
fn write_both(f: &mut fmt::Formatter<'_>, least: &str, most: &str) -> fmt::Result {
    match (least.split_once(' '), most.split_once(' ')) {
        (Some((low, unit)), Some((_, same))) if unit == same => write!(f, "{low}–{most}"),
        _ => write!(f, "{least} – {most}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_every_form() {
        let read = |text| Range::<Mass>::read_quantity(text).unwrap();
        assert_eq!(read("40-100 g").to_string(), "40–100 g");
        assert_eq!(read("500 g - 1.2 kg").to_string(), "500 g – 1.2 kg");
        assert_eq!(read("at most 500 g").to_string(), "at most 500 g");
        assert_eq!(read("500 g").to_string(), "500 g");
        assert!(Range::<Mass>::read_quantity("100-40 g").is_err());
        assert!(Range::<Mass>::read_quantity("40-100").is_err());
        assert!(Range::<Mass>::read_quantity("-40 g").is_err());
    }

    #[test]
    fn too_heavy_and_too_light() {
        let asked = Range::<Mass>::read_quantity("50-500 g").unwrap();
        let read = |text| Range::<Mass>::read_quantity(text).unwrap();
        assert!(asked.holds(&read("60-100 g")));
        assert!(asked.is_above(&read("1.2 kg")));
        assert!(asked.is_below(&read("40-100 g")));
        assert!(asked.is_above(&read("400-600 g")));
    }
}
