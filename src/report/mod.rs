//! Findings, and the ink of sheets → what a teacher, a script or an editor reads.

mod ink;
mod json;
mod sarif;
mod text;

pub use ink::{advise_ink, say_ink};
pub use json::report_json;
pub use sarif::report_sarif;
pub use text::{report_allowed, report_text, summary_of};
