//! How long the sheets of a pack take on one thread, and how large they are: shaped, laid out, tagged,
//! with subset fonts. Run: `cargo run --release --example time_sheets -- sessions`

#![allow(clippy::print_stdout, reason = "the rows are this program’s output")]

use std::time::Instant;

/// As in the program itself.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

use homeground::quantity::{Date, Quantity};
use homeground::read::Selection;
use homeground::render::render_sheets_of;
use homeground::source::Folder;

/// The whole pack is rendered so often; the fastest run counts.
const RUNS: usize = 5;

fn main() {
    let folder = std::env::args().nth(1).unwrap_or_else(|| "sessions".to_owned());
    let today = Date::read_quantity("2026-06-01").expect("a date in the calendar");
    let source = Folder::new(folder).on(today);
    let pack = homeground::inspect(&source, &Selection::All).expect("a pack").pack;
    let one = rayon::ThreadPoolBuilder::new().num_threads(1).build().expect("one thread");
    let mut fastest = f64::INFINITY;
    let mut bundle = homeground::render::Bundle::new();
    for _ in 0..RUNS {
        let began = Instant::now();
        bundle = one.install(|| render_sheets_of(&pack)).expect("sheets");
        fastest = fastest.min(began.elapsed().as_secs_f64() * 1000.0);
    }
    let files = bundle.len();
    let bytes: usize = bundle.values().map(Vec::len).sum();
    let pages: usize = bundle.values().map(|file| pages_of(file)).sum();
    let each =
        |total: f64, among: usize| total / f64::from(u32::try_from(among).unwrap_or(1).max(1));
    let bytes_of = f64::from(u32::try_from(bytes).unwrap_or(u32::MAX));
    println!(
        "{files} files, {pages} pages, {bytes} bytes in {fastest:.1} ms, the fastest of {RUNS} runs"
    );
    println!(
        "{:.2} ms a file, {:.2} ms for two pages",
        each(fastest, files),
        each(fastest, pages) * 2.0
    );
    println!(
        "{:.0} bytes a file, {:.0} bytes a page",
        each(bytes_of, files),
        each(bytes_of, pages)
    );
}

/// Pages of a file, as its page tree counts them.
fn pages_of(file: &[u8]) -> usize {
    lopdf::Document::load_mem(file).map_or(0, |document| document.get_pages().len())
}
