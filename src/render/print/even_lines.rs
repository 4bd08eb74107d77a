//! Large words in lines of about one length: none of them ends with a word alone.

use super::breaks::shape_running;
use super::scale::Type;
use super::shaper::{ShapedLine, Shaper};
use crate::prose::Run;

/// The widths that are tried: so much of what each line would take if all were alike.
const WIDTHS: [f32; 6] = [1.0, 1.06, 1.14, 1.24, 1.36, 1.5];

/// A text in as few lines as it needs, and those about as long as each other.
pub fn even_lines(
    shaper: &mut Shaper<'_>,
    runs: &[Run],
    kind: Type,
    width: f32,
) -> Vec<ShapedLine> {
    let lines = shape_running(shaper, runs, kind, width);
    let count = lines.len();
    if count < 2 {
        return lines;
    }
    #[allow(clippy::cast_precision_loss, reason = "a key point has a handful of lines")]
    let even = lines.iter().map(|line| line.width).sum::<f32>() / count as f32;
    for narrow in WIDTHS.map(|share| share * even).into_iter().filter(|narrow| *narrow < width) {
        let tried = shape_running(shaper, runs, kind, narrow);
        if tried.len() == count && tried.iter().all(|line| line.width <= narrow) {
            return tried;
        }
    }
    lines
}
