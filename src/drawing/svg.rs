//! A drawing as SVG, to stand in a page. Tones become classes, so that the page’s style sheet gives
//! them their colours, in the light and in the dark.

use std::fmt::Write;

use super::look::{curves_of, start_of};
use super::{Anchor, At, Corner, Drawing, Mark, Pen, Tone};

/// The drawing as one `svg` element of a class; its description is its name for screen readers.
pub fn to_svg(drawing: &Drawing, class: &str) -> String {
    let mut svg = format!(
        "<svg class=\"drawing {class}\" viewBox=\"0 0 {} {}\" role=\"img\" aria-label=\"{}\">",
        figure(drawing.width),
        figure(drawing.height),
        escape(&drawing.says)
    );
    for mark in &drawing.marks {
        write_mark(&mut svg, mark);
    }
    svg.push_str("</svg>");
    svg
}

/// Marks alone, to stand in a group of a larger drawing.
pub fn marks_to_svg(marks: &[Mark]) -> String {
    let mut svg = String::new();
    for mark in marks {
        write_mark(&mut svg, mark);
    }
    svg
}

fn write_mark(svg: &mut String, mark: &Mark) {
    // Writing to a string can’t fail.
    let _ = match mark {
        Mark::Line { from, to, pen } => write!(
            svg,
            "<path d=\"M{} {}L{} {}\"{}/>",
            figure(from.0),
            figure(from.1),
            figure(to.0),
            figure(to.1),
            paint(None, Some(*pen))
        ),
        Mark::Shape { outline, fill, pen } => {
            write!(svg, "<path d=\"{}Z\"{}/>", path_of(outline), paint(*fill, *pen))
        }
        Mark::Smooth { around, look, is_open, .. } => {
            write!(
                svg,
                "<path class=\"{}\" d=\"{}\"/>",
                look.class(),
                smooth_path(around, *is_open)
            )
        }
        Mark::Words { at, text, size, anchor, is_bold } => {
            let anchor = match anchor {
                Anchor::Start => "",
                Anchor::Middle => " text-anchor=\"middle\"",
                Anchor::End => " text-anchor=\"end\"",
            };
            let weight = if *is_bold { " font-weight=\"700\"" } else { "" };
            write!(
                svg,
                "<text x=\"{}\" y=\"{}\" font-size=\"{}\"{anchor}{weight}>{}</text>",
                figure(at.0),
                figure(at.1),
                figure(*size),
                escape(text)
            )
        }
    };
}

/// Corners as path commands; two bent ones and a straight one make a curve.
fn path_of(outline: &[Corner]) -> String {
    let mut path = String::new();
    let mut corners = outline.iter();
    let mut command = 'M';
    while let Some(corner) = corners.next() {
        if corner.is_bent
            && let (Some(second), Some(end)) = (corners.next(), corners.next())
        {
            let points =
                [corner, second, end].map(|c| format!("{} {}", figure(c.at.0), figure(c.at.1)));
            path.push_str(&format!("C{}", points.join(" ")));
        } else {
            path.push_str(&format!("{command}{} {}", figure(corner.at.0), figure(corner.at.1)));
        }
        command = 'L';
    }
    path
}

/// A smooth line in whole units, each from the point before it: short, and fine enough where a stature
/// has two hundred.
fn smooth_path(around: &[At], is_open: bool) -> String {
    let mut path = String::new();
    let mut pen = (0, 0);
    for (index, (control, end)) in curves_of(around, is_open).into_iter().enumerate() {
        if index == 0 {
            pen = whole(start_of(around, is_open));
            path.push_str(&format!("M{} {}q", pen.0, pen.1));
        }
        let (control, end) = (whole(control), whole(end));
        for (x, y) in [control, end] {
            push_number(&mut path, x - pen.0);
            push_number(&mut path, y - pen.1);
        }
        pen = end;
    }
    if !is_open {
        path.push('z');
    }
    path
}

#[allow(clippy::cast_possible_truncation, reason = "a drawing is some hundred units wide")]
fn whole((x, y): At) -> (i32, i32) {
    (x.round() as i32, y.round() as i32)
}

/// A minus sign parts numbers by itself.
fn push_number(path: &mut String, number: i32) {
    if number >= 0 && path.ends_with(|c: char| c.is_ascii_digit()) {
        path.push(' ');
    }
    path.push_str(&number.to_string());
}

fn paint(fill: Option<Tone>, pen: Option<Pen>) -> String {
    let mut said = match fill {
        Some(tone) => format!(" class=\"fill-{}", name(tone)),
        None => " class=\"fill-none".to_owned(),
    };
    let Some(pen) = pen else {
        said.push('"');
        return said;
    };
    said.push_str(&format!(" pen-{}\" stroke-width=\"{}\"", name(pen.tone), figure(pen.thickness)));
    if let Some((on, off)) = pen.dash {
        said.push_str(&format!(" stroke-dasharray=\"{} {}\"", figure(on), figure(off)));
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
fn figure(number: f32) -> String {
    let text = format!("{number:.1}");
    text.strip_suffix(".0").map_or_else(|| text.clone(), str::to_owned)
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
        assert!(svg.contains("<path d=\"M3 2C3 2.6 2.6 3 2 3C"), "{svg}");
    }
}
