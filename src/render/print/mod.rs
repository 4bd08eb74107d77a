//! The printed sheets.

use super::{Bundle, Publication};

pub fn render_sheets(_publication: &Publication<'_>) -> Bundle {
    Bundle::new()
}
