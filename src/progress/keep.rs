//! Until when results may be kept. The date stands beside them, and after it they are refused.

use std::path::Path;

use crate::quantity::{Date, Quantity};

/// The file beside the results that says until when.
pub const KEEP_FILE: &str = "keep-until.txt";

/// The text of the file.
pub fn write_keep(until: Date) -> Vec<u8> {
    format!(
        "keep_until: {until}\nThese are children’s marks. After this day delete them: homeground progress --to FOLDER --forget\n"
    )
    .into_bytes()
}

/// Until when the results in a folder may be kept; none where it holds none.
pub fn read_keep(folder: &Path) -> Option<Date> {
    let text = std::fs::read_to_string(folder.join(KEEP_FILE)).ok()?;
    let line = text.lines().next()?.strip_prefix("keep_until:")?;
    Date::read_quantity(line).ok()
}

/// The date that counts: the option’s, else the files’, else the one beside the last results. Never
/// later than a date in the files.
///
/// # Errors
/// A sentence for the teacher: where there is no date, or it has passed.
pub fn choose_date(
    option: Option<Date>,
    in_files: Option<Date>,
    folder: &Path,
    today: Date,
) -> Result<Date, String> {
    let beside = read_keep(folder);
    if let Some(passed) = beside.filter(|date| *date < today) {
        return Err(format!(
            "The results in {} were to be kept until {passed}. Delete them: homeground progress --to {} --forget",
            folder.display(),
            folder.display()
        ));
    }
    if let Some(passed) = in_files.filter(|date| *date < today) {
        return Err(format!(
            "These marks were to be kept until {passed}. Delete the file; nothing was made of it."
        ));
    }
    let asked = option.or(in_files).or(beside).ok_or(
        "Say until when children’s marks are kept, such as --keep-until 2027-07-31, or with a line \
         “keep_until: 2027-07-31” at the top of the file.",
    )?;
    let date = in_files.map_or(asked, |latest| asked.min(latest));
    if date < today {
        return Err(format!("After --keep-until: {date} has passed already. Name a day to come."));
    }
    Ok(date)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn date(text: &str) -> Date {
        Date::read_quantity(text).unwrap()
    }

    #[test]
    fn a_date_is_asked_for_and_kept() {
        let folder = tempfile::tempdir().unwrap();
        let choose = |option: Option<&str>, file: Option<&str>, today: &str| {
            choose_date(option.map(date), file.map(date), folder.path(), date(today))
        };
        assert!(choose(None, None, "2027-01-01").unwrap_err().contains("--keep-until"));
        assert_eq!(
            choose(Some("2028-01-01"), Some("2027-07-31"), "2027-01-01"),
            Ok(date("2027-07-31"))
        );
        assert!(choose(None, Some("2027-07-31"), "2027-08-01").is_err());
        assert!(choose(Some("2026-12-31"), None, "2027-01-01").is_err());
        std::fs::write(folder.path().join(KEEP_FILE), write_keep(date("2027-07-31"))).unwrap();
        assert_eq!(choose(None, None, "2027-07-31"), Ok(date("2027-07-31")));
        assert!(choose(Some("2029-01-01"), None, "2027-08-01").unwrap_err().contains("--forget"));
    }
}
