//! A glyph of a font → the area inside its outline, in squares of the type’s size.

use skrifa::instance::{LocationRef, Size};
use skrifa::outline::{DrawSettings, OutlinePen};
use skrifa::{FontRef, MetadataProvider};

use super::ink::cross;
use super::page::At;

/// The area inside a glyph’s outline, in squares of the type’s size.
pub fn area_of_glyph(font: &[u8], glyph: u16) -> Option<f32> {
    let font = FontRef::new(font).ok()?;
    let em = f32::from(font.metrics(Size::unscaled(), LocationRef::default()).units_per_em);
    let mut pen = AreaPen::default();
    let settings = DrawSettings::unhinted(Size::unscaled(), LocationRef::default());
    font.outline_glyphs().get(u32::from(glyph).into())?.draw(settings, &mut pen).ok()?;
    Some(pen.area.abs() / (em * em))
}

/// Adds up the area inside the contours of a glyph; holes run the other way round.
#[derive(Default)]
struct AreaPen {
    area: f32,
    start: At,
    at: At,
}

impl OutlinePen for AreaPen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.start = (x, y);
        self.at = (x, y);
    }

    fn line_to(&mut self, x: f32, y: f32) {
        self.area += cross(self.at, (x, y)) / 2.0;
        self.at = (x, y);
    }

    fn quad_to(&mut self, cx: f32, cy: f32, x: f32, y: f32) {
        let (start, bend, end) = (self.at, (cx, cy), (x, y));
        self.area += (2.0 * cross(start, bend) + 2.0 * cross(bend, end) + cross(start, end)) / 6.0;
        self.at = end;
    }

    fn curve_to(&mut self, ax: f32, ay: f32, bx: f32, by: f32, x: f32, y: f32) {
        let (start, a, b, end) = (self.at, (ax, ay), (bx, by), (x, y));
        let (near, far) = (cross(start, a) + cross(b, end), cross(start, b) + cross(a, end));
        self.area += (6.0 * near + 3.0 * far + 3.0 * cross(a, b) + cross(start, end)) / 20.0;
        self.at = end;
    }

    fn close(&mut self) {
        let (x, y) = self.start;
        self.line_to(x, y);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn areas_are_those_of_geometry() {
        let mut pen = AreaPen::default();
        // A circle of radius 1 by four cubic curves; the usual approximation is good to 3 in 10,000.
        let k = 0.5523;
        pen.move_to(1.0, 0.0);
        pen.curve_to(1.0, k, k, 1.0, 0.0, 1.0);
        pen.curve_to(-k, 1.0, -1.0, k, -1.0, 0.0);
        pen.curve_to(-1.0, -k, -k, -1.0, 0.0, -1.0);
        pen.curve_to(k, -1.0, 1.0, -k, 1.0, 0.0);
        pen.close();
        assert!((pen.area - std::f32::consts::PI).abs() < 0.002, "{}", pen.area);
        let mut pen = AreaPen::default();
        // Under a parabola: two thirds of the box round it (Archimedes).
        pen.move_to(0.0, 0.0);
        pen.quad_to(1.0, 2.0, 2.0, 0.0);
        pen.close();
        assert!((pen.area.abs() - 4.0 / 3.0).abs() < 1e-5, "{}", pen.area);
    }
}
