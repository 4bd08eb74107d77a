//! The cleaned stream of CommonMark events that both outputs are made from.

use pulldown_cmark::{CowStr, Event, LinkType, Options, Parser, Tag, TagEnd};

use super::links::judge_link;

/// Events with raw HTML as text, and without links and pictures that lead where they must not.
pub(super) fn clean_events(text: &str) -> Vec<Event<'_>> {
    let mut open_links = Vec::new();
    let mut open_pictures = Vec::new();
    Parser::new_ext(text, Options::empty())
        .filter_map(|event| match event {
            Event::Html(raw) | Event::InlineHtml(raw) => Some(Event::Text(raw)),
            Event::Start(Tag::HtmlBlock) => Some(Event::Start(Tag::Paragraph)),
            Event::End(TagEnd::HtmlBlock) => Some(Event::End(TagEnd::Paragraph)),
            Event::Start(Tag::Link { link_type, ref dest_url, .. }) => {
                let is_kept = link_type == LinkType::Email || judge_link(dest_url).is_ok();
                open_links.push(is_kept);
                is_kept.then_some(event)
            }
            Event::End(TagEnd::Link) => open_links.pop().unwrap_or(false).then_some(event),
            Event::Start(Tag::Image { ref dest_url, .. }) => {
                // A picture from elsewhere would load from elsewhere: its words stay.
                let is_kept = judge_link(dest_url).is_ok() && !dest_url.contains(':');
                open_pictures.push(is_kept);
                is_kept.then_some(event)
            }
            Event::End(TagEnd::Image) => open_pictures.pop().unwrap_or(false).then_some(event),
            other => Some(other),
        })
        .collect()
}

/// A word put before a line so that “5. Jump” or “# one” is read as words, not as a list.
const ANCHOR: &str = "x ";

/// Events of one line: nothing but what can stand inside a paragraph.
pub(super) fn clean_line_events(line: &str) -> Vec<Event<'static>> {
    let anchored = format!("{ANCHOR}{line}");
    let mut events: Vec<Event<'static>> = clean_events(&anchored)
        .into_iter()
        .filter(|event| {
            !matches!(event, Event::Start(Tag::Paragraph) | Event::End(TagEnd::Paragraph))
        })
        .map(Event::into_static)
        .collect();
    if let Some(Event::Text(first)) = events.first_mut() {
        let rest = first.strip_prefix(ANCHOR).or_else(|| first.strip_prefix('x')).unwrap_or(first);
        *first = CowStr::from(rest.to_owned());
    }
    events
}
