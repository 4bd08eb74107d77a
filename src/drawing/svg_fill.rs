//! Fields of a drawing as SVG: which of them lie apart, and hatching, written short.

use std::fmt::Write;

use super::pen::hatch_lines;
use super::svg::{add_to, paint, shown};
use super::svg_path::PathData;
use super::{At, Mark, Pen};

/// The fields that marks take up, each with its pen.
pub(super) struct Field(Vec<(At, At)>);

impl Field {
    pub(super) fn of(mark: &Mark) -> Self {
        Self(extent(mark).into_iter().collect())
    }

    pub(super) fn add(&mut self, mark: &Mark) {
        self.0.extend(extent(mark));
    }

    /// Whether a mark lies beside all of them.
    pub(super) fn is_apart(&self, mark: &Mark) -> bool {
        let Some((low, high)) = extent(mark) else { return true };
        self.0
            .iter()
            .all(|(from, to)| to.0 < low.0 || high.0 < from.0 || to.1 < low.1 || high.1 < from.1)
    }
}

/// From the least to the greatest corner of a shape, its pen with it.
fn extent(mark: &Mark) -> Option<(At, At)> {
    let Mark::Shape { outline, pen, .. } = mark else { return None };
    let around = pen.map_or(0.0, |pen| pen.thickness / 2.0);
    let points: Vec<At> = outline.iter().map(|corner| corner.at).collect();
    let (low, high) = bounds(&points);
    Some(((low.0 - around, low.1 - around), (high.0 + around, high.1 + around)))
}

fn bounds(points: &[At]) -> (At, At) {
    let start = ((f32::MAX, f32::MAX), (f32::MIN, f32::MIN));
    points.iter().fold(start, |(low, high), at| {
        ((low.0.min(at.0), low.1.min(at.1)), (high.0.max(at.0), high.1.max(at.1)))
    })
}

/// Hatching in a rectangle is one dashed line, as thick as the rectangle is long and cut off at its edge;
/// in any other outline each stroke is written.
pub(super) fn write_hatched(svg: &mut String, mark: &Mark) {
    let Mark::Hatched { outline, apart, pen } = mark else { return };
    let (low, high) = bounds(outline);
    if is_rectangle(outline, low, high) {
        write_dashes(svg, (low, high), *apart, *pen);
        return;
    }
    let mut path = PathData::default();
    for line in hatch_lines(outline, *apart, *pen) {
        add_to(&mut path, &line);
    }
    // Writing to a string can’t fail.
    let _ = write!(svg, "<path d=\"{}\"{}/>", path.into_text(), paint(None, Some(*pen)));
}

fn is_rectangle(outline: &[At], low: At, high: At) -> bool {
    let is_at = |a: f32, b: f32| (a - b).abs() < 0.05;
    let is_corner = |at: &At| {
        (is_at(at.0, low.0) || is_at(at.0, high.0)) && (is_at(at.1, low.1) || is_at(at.1, high.1))
    };
    outline.len() == 4 && outline.iter().all(is_corner)
}

/// The dashes of a line that runs down to the right slant up to the right.
fn write_dashes(svg: &mut String, (low, high): (At, At), apart: f32, pen: Pen) {
    let (wide, tall) = (high.0 - low.0, high.1 - low.1);
    let long = f32::midpoint(wide, tall).ceil();
    let thick = (wide.max(tall) * std::f32::consts::SQRT_2).ceil();
    let gap = apart * std::f32::consts::FRAC_1_SQRT_2 - pen.thickness;
    let paint =
        paint(None, Some(Pen { thickness: thick, dash: Some((pen.thickness, gap)), ..pen }));
    let [x, y, wide, tall] = [low.0, low.1, wide, tall].map(shown);
    let _ = write!(
        svg,
        "<svg x=\"{x}\" y=\"{y}\" width=\"{wide}\" height=\"{tall}\"><path d=\"M0 0l{long} {long}\"{paint}/></svg>"
    );
}

#[cfg(test)]
mod tests {
    use super::super::{Drawing, to_svg};
    use super::*;

    fn drawn(outline: &[At]) -> String {
        let marks =
            vec![Mark::Hatched { outline: outline.to_vec(), apart: 7.0, pen: Pen::soft(0.8) }];
        to_svg(&Drawing { marks, ..Drawing::default() }, "")
    }

    #[test]
    fn a_rectangle_is_hatched_by_one_line() {
        let svg = drawn(&[(2.0, 1.0), (12.0, 1.0), (12.0, 5.0), (2.0, 5.0)]);
        let inner = "<svg x=\"2\" y=\"1\" width=\"10\" height=\"4\"><path d=\"M0 0l7 7\" class=\"pen-soft\" stroke-width=\"15\" stroke-dasharray=\".8 4.1\"/></svg>";
        assert!(svg.contains(inner), "{svg}");
    }

    #[test]
    fn another_outline_by_its_strokes() {
        let svg = drawn(&[(0.0, 0.0), (20.0, 0.0), (30.0, 30.0)]);
        assert!(svg.contains("<path d=\"M7 0l"), "{svg}");
    }
}
