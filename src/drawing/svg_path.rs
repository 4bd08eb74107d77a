//! Path data of SVG, written short: whole tenths of a point, each step from the place before (SVG 2, 9.3).

use super::{At, Corner};

/// Path data as it grows; any number of lines and outlines.
#[derive(Debug, Default)]
pub(super) struct PathData {
    text: String,
    /// Where the pen stands, in tenths.
    at: (i32, i32),
    /// Where the outline began: closing it leads back there.
    began: (i32, i32),
    /// The command that the last figures belong to: more of its figures need not say it again.
    command: char,
}

impl PathData {
    pub(super) fn line(&mut self, from: At, to: At) {
        self.move_to(tenths(from));
        self.line_to(tenths(to));
    }

    /// A closed outline; two bent corners and a straight one make a curve.
    pub(super) fn outline(&mut self, outline: &[Corner]) {
        let mut corners = outline.iter();
        let mut is_begun = false;
        while let Some(corner) = corners.next() {
            if corner.is_bent
                && let (Some(second), Some(end)) = (corners.next(), corners.next())
            {
                self.curve_to([corner, second, end].map(|corner| tenths(corner.at)));
            } else if is_begun {
                self.line_to(tenths(corner.at));
            } else {
                self.move_to(tenths(corner.at));
            }
            is_begun = true;
        }
        self.text.push('z');
        self.command = 'z';
        self.at = self.began;
    }

    pub(super) fn into_text(self) -> String {
        self.text
    }

    fn move_to(&mut self, to: (i32, i32)) {
        self.text.push('M');
        self.command = 'M';
        self.number(to.0);
        self.number(to.1);
        (self.at, self.began) = (to, to);
    }

    fn line_to(&mut self, to: (i32, i32)) {
        match (to.0 - self.at.0, to.1 - self.at.1) {
            (across, 0) => self.step('h', &[across]),
            (0, down) => self.step('v', &[down]),
            (across, down) => self.step('l', &[across, down]),
        }
        self.at = to;
    }

    fn curve_to(&mut self, to: [(i32, i32); 3]) {
        let from = self.at;
        let steps = to.map(|(x, y)| [x - from.0, y - from.1]);
        self.step('c', steps.as_flattened());
        self.at = to[2];
    }

    fn step(&mut self, command: char, figures: &[i32]) {
        if self.command != command {
            self.text.push(command);
            self.command = command;
        }
        for figure in figures {
            self.number(*figure);
        }
    }

    /// A space only where two figures would run together.
    fn number(&mut self, tenths: i32) {
        if tenths >= 0 && self.text.ends_with(|c: char| c.is_ascii_digit()) {
            self.text.push(' ');
        }
        self.text.push_str(&figure(tenths));
    }
}

/// A figure of some tenths: `-3.5`, `12`.
pub(super) fn figure(tenths: i32) -> String {
    let (whole, rest) = (tenths.unsigned_abs() / 10, tenths.unsigned_abs() % 10);
    let sign = if tenths < 0 { "-" } else { "" };
    match (whole, rest) {
        (whole, 0) => format!("{sign}{whole}"),
        (0, rest) => format!("{sign}.{rest}"),
        (whole, rest) => format!("{sign}{whole}.{rest}"),
    }
}

fn tenths((x, y): At) -> (i32, i32) {
    (to_tenths(x), to_tenths(y))
}

/// A tenth of a point is less than anyone sees. Drawings are no larger than a page, so that it fits.
#[allow(clippy::cast_possible_truncation)]
pub(super) fn to_tenths(points: f32) -> i32 {
    (points * 10.0).round() as i32
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn steps_add_up_to_where_the_marks_stand() {
        let mut path = PathData::default();
        path.line((1.04, 2.0), (11.04, 2.0));
        path.line((0.0, 0.0), (-0.5, 3.26));
        assert_eq!(path.into_text(), "M1 2h10M0 0l-.5 3.3");
    }

    #[test]
    fn an_outline_closes_where_it_began() {
        let corner = |x, y| Corner { at: (x, y), is_bent: false };
        let mut path = PathData::default();
        path.outline(&[corner(1.0, 1.0), corner(3.0, 1.0), corner(3.0, 2.5)]);
        path.outline(&[corner(1.0, 1.0), corner(1.0, 3.0)]);
        assert_eq!(path.into_text(), "M1 1h2v1.5zM1 1v2z");
    }

    #[test]
    fn a_command_is_said_once() {
        let corner = |x, y| Corner { at: (x, y), is_bent: false };
        let mut path = PathData::default();
        path.outline(&[corner(0.0, 0.0), corner(3.0, 1.0), corner(5.0, 4.0), corner(1.0, 3.0)]);
        assert_eq!(path.into_text(), "M0 0l3 1 2 3-4-1z");
    }
}
