//! The mini-site.

use super::{Bundle, Publication, RenderFault};

/// Renders every page and asset of the mini-site.
///
/// # Errors
/// Where a template of the pack's own look can't be used.
pub fn render_site(_publication: &Publication<'_>) -> Result<Bundle, RenderFault> {
    Ok(Bundle::new())
}
