//! How much processor time the sheets of a pack take on one thread, and how large they are: shaped,
//! laid out, tagged, with subset fonts. Run: `cargo run --release --example time_sheets -- sessions`
//! With `--cards FOLDER` after the pack it sets the cards alone, leaves them in the folder and prints one
//! JSON line, for `compare_sheets.py`.

#![allow(clippy::print_stdout, reason = "the rows are this program’s output")]

#[path = "processor_time.rs"]
mod processor_time;

/// As in the program itself.
#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

use homeground::pack::Pack;
use homeground::quantity::{Date, Quantity};
use homeground::read::Selection;
use homeground::render::{Bundle, RenderFault, render_cards_of, render_sheets_of};
use homeground::source::Folder;

/// The whole pack is rendered so often; the fastest run counts.
const RUNS: usize = 5;

/// What the fastest run made.
struct Measured {
    milliseconds: f64,
    files: usize,
    pages: usize,
    bytes: usize,
    bundle: Bundle,
}

fn main() {
    let mut arguments = std::env::args().skip(1);
    let folder = arguments.next().unwrap_or_else(|| "sessions".to_owned());
    let today = Date::read_quantity("2026-06-01").expect("a date in the calendar");
    let source = Folder::new(folder).on(today);
    let pack = homeground::inspect(&source, &Selection::All).expect("a pack").pack;
    if arguments.next().is_some_and(|option| option == "--cards") {
        let to = arguments.next().expect("a folder after --cards");
        print_line(&measure(&pack, 2, render_cards_of), std::path::Path::new(&to));
    } else {
        print_rows(&measure(&pack, RUNS, render_sheets_of));
    }
}

fn measure(
    pack: &Pack,
    runs: usize,
    render: impl Fn(&Pack) -> Result<Bundle, RenderFault> + Sync,
) -> Measured {
    let one = rayon::ThreadPoolBuilder::new().num_threads(1).build().expect("one thread");
    let mut milliseconds = f64::INFINITY;
    let mut bundle = Bundle::new();
    for _ in 0..runs {
        let began = processor_time::milliseconds();
        bundle = one.install(|| render(pack)).expect("sheets");
        milliseconds = milliseconds.min(processor_time::milliseconds() - began);
    }
    Measured {
        milliseconds,
        files: bundle.len(),
        pages: bundle.values().map(|file| pages_of(file)).sum(),
        bytes: bundle.values().map(Vec::len).sum(),
        bundle,
    }
}

fn print_line(measured: &Measured, folder: &std::path::Path) {
    for (number, file) in measured.bundle.values().enumerate() {
        std::fs::write(folder.join(format!("{number:02}.pdf")), file)
            .expect("a folder to write to");
    }
    let Measured { milliseconds, pages, bytes, .. } = measured;
    println!(r#"{{"ms": {milliseconds:.3}, "pages": {pages}, "bytes": {bytes}}}"#);
}

fn print_rows(measured: &Measured) {
    let Measured { milliseconds, files, pages, bytes, .. } = *measured;
    let each =
        |total: f64, among: usize| total / f64::from(u32::try_from(among).unwrap_or(1).max(1));
    let bytes_of = f64::from(u32::try_from(bytes).unwrap_or(u32::MAX));
    println!(
        "{files} files, {pages} pages, {bytes} bytes in {milliseconds:.1} ms, the fastest of {RUNS} runs"
    );
    println!(
        "{:.2} ms a file, {:.2} ms for two pages",
        each(milliseconds, files),
        each(milliseconds, pages) * 2.0
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
