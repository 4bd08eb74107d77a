//! Findings → what a teacher, a script or an editor reads.

mod json;
mod text;

pub use json::report_json;
pub use text::{report_text, summary_of};
