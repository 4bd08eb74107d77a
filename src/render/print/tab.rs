//! The black tab that cards, posters and booklets begin with, as on a card index.

use super::page::{BLACK, Corner, Item};

/// A tab with its right shoulder cut off.
pub fn tab(width: f32, tall: f32) -> Item {
    let cut = tall / 3.0;
    let points = [(0.0, 0.0), (width - cut, 0.0), (width, cut), (width, tall), (0.0, tall)];
    let outline = points.map(|at| Corner { at, is_bent: false }).to_vec();
    Item::Shape { outline, fill: Some(BLACK), stroke: None }
}
