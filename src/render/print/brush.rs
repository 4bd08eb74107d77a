//! Lines, shapes and the state of drawing → operators of PDF (ISO 32000-1, 8.4 and 8.5; 9.3 for text).

use super::faces::Face;
use super::page::{At, Corner, Grey, Stroke};
use super::pdf_text::{PdfText, steps_of};

/// Writes what is drawn on one page, or in one form that pages show.
#[derive(Debug)]
pub struct Brush {
    pub text: PdfText,
    /// Of the page: places are counted from its top, in a file from its foot.
    pub height: f32,
    /// Of the places it writes.
    decimals: u32,
    state: State,
}

/// What the operators before have set; what is set already is not set again.
#[derive(Clone, Copy, Debug)]
struct State {
    fill: Grey,
    stroke: Stroke,
    font: Option<(Face, f32)>,
    /// Between `BT` and `ET`: where the last words began, in hundredths of a point.
    text: Option<(i64, i64)>,
}

impl State {
    /// As a page begins (ISO 32000-1, table 52).
    const FIRST: Self = Self {
        fill: 0.0,
        stroke: Stroke { thickness: 1.0, grey: 0.0, dash: None, is_open: false },
        font: None,
        text: None,
    };

    /// As a form begins: with whatever the page has set, but lines are not dashed.
    const UNKNOWN: Self = Self {
        fill: f32::NAN,
        stroke: Stroke { thickness: f32::NAN, grey: f32::NAN, dash: None, is_open: false },
        ..Self::FIRST
    };
}

impl Brush {
    /// On a page places are written to a hundredth of a point.
    pub fn on_page(height: f32) -> Self {
        let text = PdfText { bytes: Vec::with_capacity(16_000) };
        Self { text, height, decimals: 2, state: State::FIRST }
    }

    /// In a form, to a whole step of its own grid.
    pub fn in_form(height: f32) -> Self {
        let text = PdfText { bytes: Vec::with_capacity(4_000) };
        Self { text, height, decimals: 0, state: State::UNKNOWN }
    }

    fn point(&mut self, at: At) -> &mut PdfText {
        let (y, decimals) = (self.height - at.1, self.decimals);
        self.text.spaced(at.0, decimals).spaced(y, decimals)
    }

    /// Begins to write words, unless it is at it.
    pub fn begin_text(&mut self) {
        if self.state.text.is_none() {
            self.state.text = Some((0, 0));
            self.text.put("BT\n");
        }
    }

    pub fn end_text(&mut self) {
        if self.state.text.take().is_some() {
            self.text.put("ET\n");
        }
    }

    /// Moves to where the next words begin: it is counted from where the last ones did.
    pub fn move_text(&mut self, at: At) {
        let [x, y] = [at.0, self.height - at.1].map(|place| steps_of(place, 2));
        let before = self.state.text.replace((x, y)).unwrap_or_default();
        self.text.spaced_steps(x - before.0, 2).spaced_steps(y - before.1, 2).put("Td");
    }

    pub fn set_font(&mut self, face: Face, size: f32) {
        if self.state.font != Some((face, size)) {
            self.state.font = Some((face, size));
            self.text.put("/").put(face.tag()).put(" ").fixed(size, 3).put(" Tf\n");
        }
    }

    pub fn set_fill(&mut self, grey: Grey) {
        if self.state.fill.to_bits() != grey.to_bits() {
            self.state.fill = grey;
            self.text.fixed(grey, 3).put(" g\n");
        }
    }

    /// Sets how lines are drawn; a path can’t begin among words.
    fn set_stroke(&mut self, stroke: Stroke) {
        self.end_text();
        let before = std::mem::replace(&mut self.state.stroke, stroke);
        if before.grey.to_bits() != stroke.grey.to_bits() {
            self.text.fixed(stroke.grey, 3).put(" G\n");
        }
        if before.thickness.to_bits() != stroke.thickness.to_bits() {
            self.text.fixed(stroke.thickness, self.decimals).put(" w\n");
        }
        if before.dash != stroke.dash {
            let (on, off) = stroke.dash.unwrap_or_default();
            let dash = [on, off];
            self.text.reals(if stroke.dash.is_some() { &dash } else { &[] }).put("0 d\n");
        }
    }

    pub fn write_line(&mut self, from: At, to: At, stroke: Stroke) {
        self.set_stroke(stroke);
        self.point(from).put("m ");
        self.point(to).put("l S\n");
    }

    pub fn write_shape(&mut self, outline: &[Corner], fill: Option<Grey>, stroke: Option<Stroke>) {
        self.end_text();
        if let Some(grey) = fill {
            self.set_fill(grey);
        }
        if let Some(stroke) = stroke {
            self.set_stroke(stroke);
        }
        match outline {
            [first, second, third, fourth] if is_upright([first, second, third, fourth]) => {
                self.write_rectangle(first.at, third.at);
            }
            _ => self.write_path(outline),
        }
        let is_open = stroke.is_some_and(|stroke| stroke.is_open);
        // A fill closes its path by itself; capitals leave the line open (ISO 32000-1, table 60).
        self.text.put(match (fill, stroke) {
            (Some(_), Some(_)) if is_open => "B\n",
            (Some(_), Some(_)) => "b\n",
            (Some(_), None) => "f\n",
            _ if is_open => "S\n",
            _ => "s\n",
        });
    }

    /// A rectangle from one corner to the one across, which begins and goes round as its corners do. Its sides lie on the
    /// same steps as those of its neighbours.
    fn write_rectangle(&mut self, from: At, to: At) {
        let (height, decimals) = (self.height, self.decimals);
        let [left, right] = [from.0, to.0].map(|x| steps_of(x, decimals));
        let [top, foot] = [from.1, to.1].map(|y| steps_of(height - y, decimals));
        for number in [left, top, right - left, foot - top] {
            self.text.spaced_steps(number, decimals);
        }
        self.text.put("re ");
    }

    /// Corners as path operators; two bent ones and a straight one make a curve.
    fn write_path(&mut self, outline: &[Corner]) {
        let mut corners = outline.iter();
        let mut operator = "m ";
        while let Some(corner) = corners.next() {
            self.point(corner.at);
            if corner.is_bent
                && let (Some(second), Some(end)) = (corners.next(), corners.next())
            {
                self.point(second.at);
                self.point(end.at).put("c ");
            } else {
                self.text.put(operator);
            }
            operator = "l ";
        }
    }

    /// Shows something of the file’s resources, so large and with its foot at so far down the page.
    pub fn show(&mut self, name: &str, (x, foot): At, (width, height): At) {
        self.end_text();
        if self.state.stroke.dash.is_some() {
            self.set_stroke(Stroke { dash: None, ..self.state.stroke });
        }
        let y = self.height - foot;
        self.text.put("q ").spaced(width, 2).put("0 0 ").spaced(height, 2);
        self.text.spaced(x, 2).spaced(y, 2).put("cm/").put(name).put(" Do Q\n");
    }
}

/// Whether four corners are a rectangle that stands upright and is gone round from side to side first.
fn is_upright(corners: [&Corner; 4]) -> bool {
    let [a, b, c, d] = corners.map(|corner| (corner.at.0.to_bits(), corner.at.1.to_bits()));
    let is_straight = corners.iter().all(|corner| !corner.is_bent);
    is_straight && a.1 == b.1 && b.0 == c.0 && c.1 == d.1 && d.0 == a.0
}
