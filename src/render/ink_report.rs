//! How much ink each published sheet takes, against the pack’s budget.

use std::collections::BTreeMap;

/// The share of each page that is inked, from 0 to 1, by the path of its sheet.
pub type InkReport = BTreeMap<String, Vec<f32>>;

/// The mean share of all pages of each kind of sheet, by its file’s name: `cards`, `home-guide` …
pub fn ink_by_sheet(report: &InkReport) -> BTreeMap<&str, f32> {
    let mut pages: BTreeMap<&str, Vec<f32>> = BTreeMap::new();
    for (path, shares) in report {
        let file = path.rsplit_once('/').map_or(path.as_str(), |(_, file)| file);
        let name = file.strip_suffix(".pdf").unwrap_or(file);
        pages.entry(name).or_default().extend(shares);
    }
    pages.into_iter().map(|(name, shares)| (name, mean(&shares))).collect()
}

/// The sheets with a page above a share, with the largest of their pages.
pub fn sheets_over(report: &InkReport, share: f32) -> Vec<(&str, f32)> {
    let largest = |shares: &Vec<f32>| shares.iter().copied().fold(0.0, f32::max);
    let all = report.iter().map(|(path, shares)| (path.as_str(), largest(shares)));
    all.filter(|(_, most)| *most > share).collect()
}

#[allow(clippy::cast_precision_loss, reason = "no pack has millions of pages")]
fn mean(shares: &[f32]) -> f32 {
    shares.iter().sum::<f32>() / shares.len().max(1) as f32
}
