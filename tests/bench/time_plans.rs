//! How long each plan takes: a row a plan, in microseconds for one session of a pack, and as a share of
//! all plans of a session together. Run: `cargo run --release --example time_plans -- sessions`

#![allow(clippy::print_stdout, reason = "the rows are this program’s output")]

use std::hint::black_box;
use std::time::Instant;

use homeground::pack::Pack;
use homeground::plan;
use homeground::quantity::{Date, Quantity};
use homeground::read::Selection;
use homeground::source::Folder;

/// Each plan is run so often over the whole pack; the fastest run counts.
const RUNS: usize = 40;

/// A plan and its run over the whole pack.
type Row<'p> = (&'static str, Box<dyn Fn() + 'p>);

fn main() {
    let folder = std::env::args().nth(1).unwrap_or_else(|| "sessions".to_owned());
    let today = Date::read_quantity("2026-06-01").expect("a date in the calendar");
    let source = Folder::new(folder).on(today);
    let pack = homeground::inspect(&source, &Selection::All).expect("a pack").pack;
    let sessions = pack.sessions.len();
    let all = time_of(sessions, || each(&pack, |s| drop(black_box(plan::plan_session(s, &pack)))));
    println!("{sessions} sessions, the fastest of {RUNS} runs, for one session:");
    println!("{:<22}{:>10.1} µs", "all plans together", all);
    let rows: [Row<'_>; 8] = [
        ("time", Box::new(|| each(&pack, |s| drop(black_box(plan::plan_time(s)))))),
        ("other slots", Box::new(|| each(&pack, |s| drop(black_box(plan::plan_other_slots(s)))))),
        (
            "effort",
            Box::new(|| {
                each(&pack, |s| drop(black_box(plan::plan_effort(s, &plan::plan_time(s)))));
            }),
        ),
        ("equipment", Box::new(|| each(&pack, |s| drop(black_box(plan::plan_equipment(s)))))),
        ("space", Box::new(|| each(&pack, |s| drop(black_box(plan::plan_space(s, &[])))))),
        (
            "flight",
            Box::new(|| {
                each(&pack, |s| drop(black_box(plan::plan_flights(s, pack.room_height))));
            }),
        ),
        ("marks", Box::new(|| each(&pack, |s| drop(black_box(plan::plan_marks(s)))))),
        ("reading", Box::new(|| each(&pack, |s| drop(black_box(plan::plan_session_reading(s)))))),
    ];
    for (name, run) in rows {
        let took = time_of(sessions, run);
        println!("{name:<22}{took:>10.1} µs{:>8.1} %", took / all * 100.0);
    }
    let once = time_of(1, || drop(black_box(plan::plan_gather_set(&pack))));
    println!("{:<22}{once:>10.1} µs for the whole pack", "gather once");
}

fn each(pack: &Pack, plan: impl Fn(&homeground::pack::Session)) {
    pack.sessions.iter().for_each(|session| plan(session));
}

/// Microseconds for one of `among`, in the fastest run.
#[allow(
    clippy::cast_precision_loss,
    reason = "a pack has fewer sessions than a double holds exactly"
)]
fn time_of(among: usize, run: impl Fn()) -> f64 {
    let times = (0..RUNS).map(|_| {
        let began = Instant::now();
        run();
        began.elapsed().as_secs_f64()
    });
    times.fold(f64::INFINITY, f64::min) * 1e6 / among.max(1) as f64
}
