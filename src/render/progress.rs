//! The progress of a class → an ordered map of path → bytes: a page, a PDF, slips and tables.

use std::sync::Arc;

use super::house::House;
use super::print::render_progress_sheets;
use super::site::render_progress_page;
use super::{Bundle, RenderFault};
use crate::pack::Pack;
use crate::progress::keep::{KEEP_FILE, write_keep};
use crate::progress::model::Progress;
use crate::progress::phrases::Speaker;
use crate::progress::spreadsheet::{write_answers, write_comments, write_marks, write_unread};
use crate::progress::view::{show_report, show_slips};
use crate::quantity::Date;

/// Renders everything that is made of marks.
///
/// # Errors
/// Where a template or other file of the pack's own look can't be used.
pub fn render_progress(
    pack: &Pack,
    progress: &Progress,
    keep_until: Date,
    today: Date,
) -> Result<Bundle, RenderFault> {
    let house = House::new(&pack.look);
    let words = Arc::new(house.words(&pack.language)?);
    let speaker = Speaker { pack, words: &words };
    let report = show_report(progress, speaker, keep_until);
    let slips = show_slips(progress, speaker);
    let mut bundle = render_progress_page(&house, &words, &report)?;
    bundle.append(&mut render_progress_sheets(&house, speaker, &report, &slips, today)?);
    bundle.insert("marks.csv".into(), write_marks(progress, speaker));
    bundle.insert("comments.csv".into(), write_comments(progress, speaker));
    if !progress.questions.is_empty() {
        bundle.insert("answers.csv".into(), write_answers(progress, speaker));
    }
    if !progress.unread.is_empty() {
        bundle.insert("not-read.csv".into(), write_unread(progress));
    }
    bundle.insert(KEEP_FILE.into(), write_keep(keep_until));
    // Should the folder ever come into a work tree, nothing in it is taken up.
    bundle.insert(".gitignore".into(), b"*\n".to_vec());
    Ok(bundle)
}
