//! The report of a class’s progress: one page for the teacher, in a folder of its own.

use std::sync::Arc;

use super::assets::{FOLDERS, house_assets};
use super::templates::Templates;
use crate::progress::view::ReportView;
use crate::render::house::House;
use crate::render::{Bundle, RenderFault};
use crate::words::Words;

/// The page and what it loads.
///
/// # Errors
/// Where a template of the pack's own look can't be used.
pub fn render_progress_page(
    house: &House<'_>,
    words: &Arc<Words>,
    report: &ReportView,
) -> Result<Bundle, RenderFault> {
    let templates = Templates::load(house, Arc::clone(words))?;
    let [site, fonts] = FOLDERS;
    let mut bundle = house_assets(house, &[site, fonts, ("static/progress/", "static/")], false);
    let page = templates.fill("progress/report.html", report)?;
    bundle.insert("report.html".into(), page);
    Ok(bundle)
}
