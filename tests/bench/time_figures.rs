//! How long figures take and how large they are: figures a second, bytes of each in SVG. No test. With a
//! folder after `--into`, every pose of the library is written there as an SVG file of its own.

#![allow(clippy::print_stdout, reason = "the figures are this program’s output")]

use std::time::Instant;

use homeground::drawing::figure::{Strip, draw_moment};
use homeground::drawing::to_svg;
use homeground::figure::balance::steadiness;
use homeground::figure::library::{Library, Named};
use homeground::figure::proportions::Proportions;
use homeground::figure::range::beyond_range;
use homeground::figure::{Moment, place_body};

fn main() {
    let into = std::env::args().skip_while(|word| word != "--into").nth(1);
    let poses = &Library::shipped().poses;
    let strip = Strip { stature: 400.0, is_rtl: false };
    let body = Proportions::of_age(10.0);
    let started = Instant::now();
    let rounds = 20_u32;
    let mut bytes = 0;
    for round in 0..rounds {
        // Each round has an age of its own, so that no body is placed twice.
        let body = Proportions::of_age(6.0 + 12.0 * f64::from(round) / f64::from(rounds));
        for named in poses {
            bytes += to_svg(&draw_moment(&moment_of(named), body, strip), "figure").len();
        }
    }
    let count = f64::from(rounds) * f64::from(u32::try_from(poses.len()).unwrap_or(0));
    let seconds = started.elapsed().as_secs_f64();
    println!("{} poses, {:.0} figures a second", poses.len(), count / seconds);
    println!("{:.0} bytes each in SVG", f64::from(u32::try_from(bytes).unwrap_or(0)) / count);
    let Some(into) = into else { return };
    for (number, named) in poses.iter().enumerate() {
        let drawing = draw_moment(&moment_of(named), body, strip);
        let (placed, angles) = place_body(&named.pose, body);
        let steady = steadiness(&named.pose, &placed);
        let beyond = beyond_range(&angles);
        println!("{number:02} {:32} steady {steady:?} {beyond:?}", named.name);
        let path = format!("{into}/{number:02} {}.svg", named.name.replace(':', ""));
        let _ = std::fs::write(path, to_svg(&drawing, "figure"));
    }
}

fn moment_of(named: &Named) -> Moment {
    Moment::of(&named.name, named.pose.clone())
}
