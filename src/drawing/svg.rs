//! A drawing as SVG, to stand in a page. Tones become classes, so that the page’s style sheet gives
//! them their colours, in the light and in the dark.

use std::fmt::Write;

use super::look::{curves_of, start_of};
use super::svg_fill::{Field, write_hatched};
use super::svg_path::{PathData, figure, to_tenths};
use super::{Anchor, At, Drawing, Look, Mark, Pen, Tone};

/// The size of most words and the pen of most lines on the drawings of a page, said once for all of them.
const USUAL_SIZE: f32 = 14.0;
const USUAL_PEN: f32 = 0.8;

/// The drawing as one `svg` element of a class; its description is its name for screen readers.
pub fn to_svg(drawing: &Drawing, class: &str) -> String {
    let mut svg = format!(
        "<svg class=\"drawing {class}\" viewBox=\"0 0 {} {}\" fill=\"none\" stroke-width=\".8\" font-size=\"{USUAL_SIZE}\" role=\"img\" aria-label=\"{}\">",
        shown(drawing.width),
        shown(drawing.height),
        escape(&drawing.says)
    );
    let mut marks = drawing.marks.iter().peekable();
    while let Some(mark) = marks.next() {
        let Some(paint) = paint_of(mark) else {
            write_words(&mut svg, mark);
            write_smooth(&mut svg, mark);
            write_hatched(&mut svg, mark);
            continue;
        };
        let mut path = PathData::default();
        let mut field = Field::of(mark);
        add_to(&mut path, mark);
        // Marks of one paint, one after another, are one path, where none of them covers another.
        while let Some(next) = marks.next_if(|next| {
            paint_of(next).as_ref() == Some(&paint) && (!is_filled(next) || field.is_apart(next))
        }) {
            add_to(&mut path, next);
            field.add(next);
        }
        let _ = write!(svg, "<path d=\"{}\"{paint}/>", path.into_text());
    }
    svg.push_str("</svg>");
    svg
}

/// Smooth marks alone, to stand in a group of a larger drawing. A far limb that a near one lies upon is left
/// out: nothing of it is seen.
pub fn marks_to_svg(marks: &[Mark]) -> String {
    let mut svg = String::new();
    for (index, mark) in marks.iter().enumerate() {
        if !marks[index..].iter().any(|nearer| is_hidden_by(mark, nearer)) {
            write_smooth(&mut svg, mark);
        }
    }
    svg
}

/// Whether a near limb has the outline of a far one, within a step of the grid they are written on: less
/// than the near one’s pen is wider.
fn is_hidden_by(far: &Mark, near: &Mark) -> bool {
    let (
        Mark::Smooth { around: far, look: Look::Far, .. },
        Mark::Smooth { around: near, look: Look::Near, .. },
    ) = (far, near)
    else {
        return false;
    };
    let is_near = |(a, b): (&At, &At)| (a.0 - b.0).abs() <= STEP && (a.1 - b.1).abs() <= STEP;
    far.len() == near.len() && far.iter().zip(near).all(is_near)
}

fn write_smooth(svg: &mut String, mark: &Mark) {
    if let Mark::Smooth { around, look, is_open, .. } = mark {
        let path = smooth_path(around, *is_open);
        let _ = write!(svg, "<path class=\"{}\" d=\"{path}\"/>", look.class());
    }
}

fn paint_of(mark: &Mark) -> Option<String> {
    match mark {
        Mark::Line { pen, .. } => Some(paint(None, Some(*pen))),
        Mark::Shape { fill, pen, .. } => Some(paint(*fill, *pen)),
        Mark::Smooth { .. } | Mark::Words { .. } | Mark::Hatched { .. } => None,
    }
}

fn is_filled(mark: &Mark) -> bool {
    matches!(mark, Mark::Shape { fill: Some(_), .. })
}

pub(super) fn add_to(path: &mut PathData, mark: &Mark) {
    match mark {
        Mark::Line { from, to, .. } => path.line(*from, *to),
        Mark::Shape { outline, .. } => path.outline(outline),
        Mark::Smooth { .. } | Mark::Words { .. } | Mark::Hatched { .. } => {}
    }
}

fn write_words(svg: &mut String, mark: &Mark) {
    let Mark::Words { at, text, size, anchor, is_bold } = mark else { return };
    let anchor = match anchor {
        Anchor::Start => "",
        Anchor::Middle => " text-anchor=\"middle\"",
        Anchor::End => " text-anchor=\"end\"",
    };
    let weight = if *is_bold { " font-weight=\"700\"" } else { "" };
    let is_usual = to_tenths(*size) == to_tenths(USUAL_SIZE);
    let size = if is_usual { String::new() } else { format!(" font-size=\"{}\"", shown(*size)) };
    let (x, y) = (shown(at.0), shown(at.1));
    // Writing to a string can’t fail.
    let _ = write!(svg, "<text x=\"{x}\" y=\"{y}\"{size}{anchor}{weight}>{}</text>", escape(text));
}

/// The grid that smooth lines are written on.
const STEP: f32 = 2.0;

/// A smooth line in whole units, each from the point before it. Its control points lie on even ones, so that
/// the ends between them are whole; then each control point is its forerunner mirrored at the end between
/// them, and SVG’s `t` needs the ends alone.
fn smooth_path(around: &[At], is_open: bool) -> String {
    let even: Vec<At> = around
        .iter()
        .map(|(x, y)| ((x / STEP).round() * STEP, (y / STEP).round() * STEP))
        .collect();
    let mut pen = whole(start_of(&even, is_open));
    let mut path = format!("M{} {}", pen.0, pen.1);
    for (index, (control, end)) in curves_of(&even, is_open).into_iter().enumerate() {
        let (control, end) = (whole(control), whole(end));
        if index == 0 && control == end {
            path.push('l');
        } else if index == 0 {
            path.push('q');
            push_number(&mut path, control.0 - pen.0);
            push_number(&mut path, control.1 - pen.1);
        } else if index == 1 {
            path.push('t');
        }
        push_number(&mut path, end.0 - pen.0);
        push_number(&mut path, end.1 - pen.1);
        pen = end;
    }
    if !is_open {
        path.push('z');
    }
    path
}

#[allow(clippy::cast_possible_truncation, reason = "a drawing is some hundred units wide")]
const fn whole((x, y): At) -> (i32, i32) {
    (x as i32, y as i32)
}

/// A minus sign parts numbers by itself.
fn push_number(path: &mut String, number: i32) {
    if number >= 0 && path.ends_with(|c: char| c.is_ascii_digit()) {
        path.push(' ');
    }
    path.push_str(&number.to_string());
}

pub(super) fn paint(fill: Option<Tone>, pen: Option<Pen>) -> String {
    let tones = [fill.map(|tone| ("fill", tone)), pen.map(|pen| ("pen", pen.tone))];
    let classes: Vec<String> =
        tones.into_iter().flatten().map(|(of, tone)| format!("{of}-{}", name(tone))).collect();
    let mut said = format!(" class=\"{}\"", classes.join(" "));
    let Some(pen) = pen else { return said };
    if to_tenths(pen.thickness) != to_tenths(USUAL_PEN) {
        said.push_str(&format!(" stroke-width=\"{}\"", shown(pen.thickness)));
    }
    if let Some((on, off)) = pen.dash {
        said.push_str(&format!(" stroke-dasharray=\"{} {}\"", shown(on), shown(off)));
    }
    said
}

const fn name(tone: Tone) -> &'static str {
    match tone {
        Tone::Ground => "ground",
        Tone::Pale => "pale",
        Tone::Soft => "soft",
        Tone::Ink => "ink",
        Tone::Measured => "measured",
    }
}

/// One decimal: a tenth of a point is less than anyone sees.
pub(super) fn shown(number: f32) -> String {
    figure(to_tenths(number))
}

/// Text as the inside of an element or attribute.
pub fn escape(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_are_escaped_and_curves_stay_curves() {
        let mut drawing = Drawing { width: 10.0, height: 5.5, ..Drawing::default() };
        drawing.says = "a \"b\" <c>".into();
        drawing.marks.push(Mark::words((1.0, 2.04), "<&", 11.0, Anchor::End));
        drawing.marks.push(crate::drawing::pen::circle((2.0, 2.0), 1.0, Some(Tone::Pale), None));
        let svg = to_svg(&drawing, "plan");
        assert!(svg.contains("aria-label=\"a &quot;b&quot; &lt;c&gt;\""));
        assert!(svg.contains(
            "<text x=\"1\" y=\"2\" font-size=\"11\" text-anchor=\"end\">&lt;&amp;</text>"
        ));
        assert!(svg.contains("<path d=\"M3 2c0 .6-.4 1-1 1-"), "{svg}");
    }

    #[test]
    fn lines_of_one_pen_are_one_path() {
        let mut drawing = Drawing::default();
        for y in [1.0, 2.0] {
            drawing.marks.push(Mark::line((0.0, y), (5.0, y), Pen::ink(1.0)));
        }
        drawing.marks.push(Mark::line((0.0, 3.0), (5.0, 3.0), Pen::ink(2.0)));
        let svg = to_svg(&drawing, "plan");
        assert!(svg.contains("d=\"M0 1h5M0 2h5\""), "{svg}");
        assert_eq!(svg.matches("<path").count(), 2);
    }

    #[test]
    fn fields_of_one_paint_are_one_path_only_side_by_side() {
        let field =
            |x| Mark::rectangle((x, 0.0), (5.0, 5.0), Some(Tone::Pale), Some(Pen::ink(1.0)));
        let paths = |at: &[f32]| {
            let marks = at.iter().map(|x| field(*x)).collect();
            to_svg(&Drawing { marks, ..Drawing::default() }, "").matches("<path").count()
        };
        assert_eq!(paths(&[0.0, 7.0, 14.0]), 1);
        assert_eq!(paths(&[0.0, 7.0, 5.5]), 2);
    }

    #[test]
    fn a_far_limb_is_left_out_only_behind_a_near_one() {
        let limb = |x: f32, look| Mark::Smooth {
            around: vec![(x, 0.0), (x + 8.0, 0.0), (x, 90.0)],
            look,
            is_open: false,
            scale: 1.0,
        };
        let count = |x, looks: [Look; 2]| {
            marks_to_svg(&[limb(0.0, looks[0]), limb(x, looks[1])]).matches("<path").count()
        };
        assert_eq!(count(1.0, [Look::Far, Look::Near]), 1);
        assert_eq!(count(3.0, [Look::Far, Look::Near]), 2);
        assert_eq!(count(1.0, [Look::Near, Look::Far]), 2);
    }
}
