//! Which links a text may hold.

use pulldown_cmark::{Event, Parser, Tag};

/// Why a link is not made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LinkFault {
    /// Neither http(s), mailto nor a place in the pack.
    Scheme,
    /// It names a place on one computer, or leaves the pack.
    Absolute,
}

/// Whether a link may stand: http, https, mailto, or relative.
///
/// # Errors
/// Why it may not.
pub fn judge_link(link: &str) -> Result<(), LinkFault> {
    let plain: String = link.chars().filter(|c| !c.is_control() && !c.is_whitespace()).collect();
    let lower = plain.to_lowercase();
    if ["http://", "https://", "mailto:"].iter().any(|start| lower.starts_with(start)) {
        return Ok(());
    }
    let before_path = lower.split(['/', '?', '#']).next().unwrap_or_default();
    if before_path.contains(':') {
        return Err(LinkFault::Scheme);
    }
    if lower.starts_with('/') || lower.starts_with('\\') {
        return Err(LinkFault::Absolute);
    }
    Ok(())
}

/// Whether a text is an http(s) address with a host and no spaces.
pub fn is_web_address(text: &str) -> bool {
    let lower = text.to_lowercase();
    let rest = lower.strip_prefix("https://").or_else(|| lower.strip_prefix("http://"));
    let host = rest.and_then(|rest| rest.split(['/', '?', '#']).next()).unwrap_or_default();
    !host.is_empty() && !text.contains(char::is_whitespace)
}

/// The target of every link and picture in a text, as written.
pub fn links_of(text: &str) -> Vec<String> {
    // Most texts have none, which is seen at once (CommonMark 0.31.2, 6.3 to 6.5).
    if !text.contains([']', '<']) {
        return Vec::new();
    }
    Parser::new(text)
        .filter_map(|event| match event {
            Event::Start(Tag::Link { dest_url, .. } | Tag::Image { dest_url, .. }) => {
                Some(dest_url.into_string())
            }
            _ => None,
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_open_and_inner_links_stand() {
        for good in [
            "https://example.org/a",
            "HTTP://example.org",
            "mailto:pe@example.org",
            "a.html",
            "../b.yaml#x",
            "",
        ] {
            assert_eq!(judge_link(good), Ok(()), "{good}");
        }
        for bad in [
            "javascript:alert(1)",
            "JaVa\tScript:alert(1)",
            "data:text/html,x",
            "file:///etc",
            "vbscript:x",
        ] {
            assert_eq!(judge_link(bad), Err(LinkFault::Scheme), "{bad}");
        }
        assert_eq!(judge_link("/etc/passwd"), Err(LinkFault::Absolute));
        assert_eq!(judge_link("//example.org/a.png"), Err(LinkFault::Absolute));
    }
}
