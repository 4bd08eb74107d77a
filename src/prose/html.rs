//! Cleaned text → HTML.

use pulldown_cmark::{CowStr, Event, HeadingLevel, LinkType, Tag, TagEnd, html};

use super::clean::{clean_events, clean_line_events};

/// Where a relative link or picture leads on the page; `None` makes it plain words.
pub type Follow<'f> = &'f dyn Fn(&str) -> Option<String>;

/// HTML of a text of several paragraphs. Headings are moved three steps down, since the text stands
/// inside a part that has a heading of its own.
pub fn prose_to_html(text: &str, follow: Follow<'_>) -> String {
    to_html(clean_events(text), follow)
}

/// HTML of one line, with nothing around it.
pub fn line_to_html(line: &str, follow: Follow<'_>) -> String {
    to_html(clean_line_events(line), follow)
}

fn to_html(events: Vec<Event<'_>>, follow: Follow<'_>) -> String {
    let mut dropped = Vec::new();
    let shown = events.into_iter().filter_map(|event| match event {
        Event::Start(Tag::Link { link_type, dest_url, title, id }) => {
            // “<pe@example.org>”: the renderer writes the mailto itself.
            let leads_to = match link_type {
                LinkType::Email => Some(dest_url),
                _ => lead(&dest_url, follow),
            };
            dropped.push(leads_to.is_none());
            leads_to.map(|dest_url| Event::Start(Tag::Link { link_type, dest_url, title, id }))
        }
        Event::Start(Tag::Image { link_type, dest_url, title, id }) => {
            let leads_to = lead(&dest_url, follow);
            dropped.push(leads_to.is_none());
            leads_to.map(|dest_url| Event::Start(Tag::Image { link_type, dest_url, title, id }))
        }
        Event::End(TagEnd::Link | TagEnd::Image) => {
            (!dropped.pop().unwrap_or(false)).then_some(event)
        }
        Event::Start(Tag::Heading { level, id, classes, attrs }) => {
            Some(Event::Start(Tag::Heading { level: lower(level), id, classes, attrs }))
        }
        Event::End(TagEnd::Heading(level)) => Some(Event::End(TagEnd::Heading(lower(level)))),
        other => Some(other),
    });
    let mut page = String::new();
    html::push_html(&mut page, shown);
    page
}

fn lead<'e>(dest: &CowStr<'e>, follow: Follow<'_>) -> Option<CowStr<'e>> {
    let lower = dest.to_lowercase();
    if ["http://", "https://", "mailto:"].iter().any(|start| lower.starts_with(start)) {
        return Some(dest.clone());
    }
    follow(dest).map(CowStr::from)
}

const fn lower(level: HeadingLevel) -> HeadingLevel {
    match level {
        HeadingLevel::H1 => HeadingLevel::H4,
        HeadingLevel::H2 => HeadingLevel::H5,
        _ => HeadingLevel::H6,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn html(text: &str) -> String {
        prose_to_html(text, &|link| Some(link.to_owned()))
    }

    #[test]
    fn raw_html_is_shown_as_text() {
        assert_eq!(html("a <b>c</b>"), "<p>a &lt;b&gt;c&lt;/b&gt;</p>\n");
        assert!(!html("<script>alert(1)</script>\n\n<img src=x onerror=alert(1)>").contains("<s"));
    }

    #[test]
    fn unsafe_links_become_words() {
        assert_eq!(html("[a](javascript:alert(1))"), "<p>a</p>\n");
        assert_eq!(html("![a](https://example.org/a.png)"), "<p>a</p>\n");
        assert!(html("[a](https://example.org)").contains("href=\"https://example.org\""));
    }

    #[test]
    fn a_line_is_never_a_list_or_heading() {
        let line = |text| line_to_html(text, &|_| None);
        assert_eq!(line("5. Jump *high*"), "5. Jump <em>high</em>");
        assert_eq!(line("# one"), "# one");
        assert_eq!(line("*Soft* knees"), "<em>Soft</em> knees");
        assert_eq!(line("x marks it"), "x marks it");
    }
}
