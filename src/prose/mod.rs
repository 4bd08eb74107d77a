//! CommonMark text → what is shown: safe HTML for pages, blocks of styled words for paper.
//!
//! Raw HTML is shown as the text it is. Links lead only to http(s), mailto or a place inside the
//! pack; pictures only to files of the pack. Both outputs come from the same cleaned stream of
//! events, so that page and paper say the same.

mod blocks;
mod clean;
mod html;
mod links;

pub use blocks::{Block, Marker, Run, read_blocks, read_line};
pub use html::{line_to_html, prose_to_html};
pub use links::{LinkFault, is_web_address, judge_link, links_of};

/// The words alone, with single spaces; for titles, labels and searching.
pub fn plain_words(text: &str) -> String {
    let runs = read_blocks(text).into_iter().flat_map(|block| {
        let mut runs = block.runs;
        runs.push(Run::plain(" "));
        runs
    });
    let all: String = runs.map(|run| run.text).collect();
    all.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// The words of one line alone.
pub fn plain_line(text: &str) -> String {
    let all: String = read_line(text).into_iter().map(|run| run.text).collect();
    all.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Whether the text holds raw HTML, which is shown as text.
pub fn has_raw_html(text: &str) -> bool {
    use pulldown_cmark::{Event, Parser};
    Parser::new(text).any(|event| matches!(event, Event::Html(_) | Event::InlineHtml(_)))
}
