//! The teachers’ folder: what a family has no use for, apart from the families’ pages, which neither hold
//! nor name it.

use rayon::prelude::*;

use super::assets::gather_assets;
use super::picture::encoded_path;
use super::{Site, coverage, poses, rules, teachers, unit_teachers};
use crate::edition::RECORD;
use crate::pack::Session;
use crate::plan::Plans;
use crate::render::print::render_pose_sheet;
use crate::render::{Bundle, POSES_SHEET, Publication, RenderFault, page_path, write_edition};

/// Renders the folder; `families` leads from it to the families’ pages: `../published/`.
///
/// # Errors
/// Where a template of the pack's own look can't be used.
pub fn render_teacher_pages(
    publication: &Publication<'_>,
    families: &str,
) -> Result<Bundle, RenderFault> {
    let mut site = Site::of(publication)?;
    site.families = Some(encoded_path(families));
    let mut bundle = Bundle::new();
    if publication.wants_below("static/") {
        bundle = gather_assets(publication);
        // Pictures lie with the families’ pages; scripts are theirs alone.
        bundle.retain(|path, _| path.starts_with("static/") && !path.ends_with(".js"));
    }
    if publication.wants("index.html") {
        bundle.insert("index.html".into(), teachers::render_teachers(&site)?);
    }
    if publication.wants("rules.html") {
        bundle.insert("rules.html".into(), rules::render_rules(&site)?);
    }
    if publication.wants("poses.html") {
        bundle.insert("poses.html".into(), poses::render_poses(&site)?);
    }
    if publication.wants(POSES_SHEET) {
        bundle.insert(POSES_SHEET.into(), render_pose_sheet(publication)?);
    }
    if publication.wants("coverage.html") || publication.wants("coverage.csv") {
        bundle.extend(coverage::render_coverage(&site)?);
    }
    bundle.extend(unit_teachers::render_unit_teachers(&site)?);
    let is_wanted = |(session, _): &(&Session, &Plans)| publication.wants(&page_path(&session.id));
    let sessions: Vec<_> = site.sessions().filter(is_wanted).collect();
    let lessons: Result<Vec<_>, RenderFault> = sessions
        .into_par_iter()
        .map(|(session, plans)| teachers::render_lesson(&site, session, plans))
        .collect();
    bundle.extend(lessons?);
    let record = write_edition(publication, false);
    bundle.extend(record.map(|record| (RECORD.to_owned(), record)));
    Ok(bundle)
}
