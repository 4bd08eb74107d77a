//! What is found, as a panel over a page: in the words of `inspect`, with file, line and the line shown.
//! Everything of the pack’s is escaped.

use super::scene::Scene;
use crate::finding::{Finding, Severity};
use crate::place::Files;
use crate::report::summary_of;

/// So many findings are shown on one page; the others are counted.
const MOST: usize = 40;
/// Letters of the first finding that are shown while the panel is shut.
const MOST_IN_HEAD: usize = 110;
/// Letters of a line that are shown before and after the place.
const AROUND: usize = 60;

/// What the panel says of the page under it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// It is the page as it is now.
    Fresh,
    /// It is as it last was without a problem.
    LastSound,
    /// There is none to show.
    Missing,
}

/// Writes the panel of a page: of one session where it is one’s, else of the pack.
pub fn write_panel(
    scene: &Scene,
    session: Option<&str>,
    standing: Standing,
    fault: Option<&str>,
) -> String {
    let own = session.map(|session| scene.findings_of(session)).unwrap_or_default();
    let is_problem = |finding: &&Finding| finding.severity == Severity::Problem;
    let is_own = |finding: &Finding| own.iter().any(|own| std::ptr::eq(*own, finding));
    let others = scene.findings.iter().filter(is_problem).filter(|finding| !is_own(finding));
    let mut shown: Vec<&Finding> = own.iter().copied().chain(others).collect();
    shown.sort_by_key(|finding| finding.severity);
    let has_problem = fault.is_some() || shown.iter().any(is_problem);
    let more = scene.findings.len() - shown.len() + shown.len().saturating_sub(MOST);
    shown.truncate(MOST);
    let items: String = shown.iter().map(|finding| write_finding(finding, &scene.files)).collect();
    let (open, state) = if has_problem { (" open", "problems") } else { ("", "sound") };
    let head = if scene.pack.sessions.is_empty() && scene.findings.is_empty() {
        "no session yet".to_owned()
    } else if shown.is_empty() && fault.is_none() {
        "nothing to mend here".to_owned()
    } else if let Some(first) = shown.first().filter(|_| !has_problem) {
        // The panel stays shut, and yet tells what the picture above may be wrong about.
        let all: Vec<Finding> = shown.iter().map(|finding| (*finding).clone()).collect();
        format!("{} {}", summary_of(&all), first_words(&first.says))
    } else {
        let all: Vec<Finding> = shown.iter().map(|finding| (*finding).clone()).collect();
        fault.map_or_else(
            || summary_of(&all).trim_end_matches('.').to_owned(),
            |_| "the look of the pages can’t be used".into(),
        )
    };
    format!(
        "<aside id=\"rehearsal\" class=\"{state}\" lang=\"en-GB\" dir=\"ltr\" aria-label=\"Rehearsal\">\
         <details{open}><summary><b>Rehearsal:</b> {}</summary><div class=\"rehearsal-in\">{}{}{}{items}{}\
         <p class=\"rehearsal-ways\"><a href=\"/index.html\">Front page</a> \
         <a href=\"/for-teachers/index.html\">For teachers</a></p></div></details></aside>",
        escape(&head),
        say_standing(standing),
        say_empty(scene),
        fault.map_or_else(String::new, |fault| format!("<p>{}</p>", escape(fault))),
        say_more(more),
    )
}

/// What is found first, in a line.
fn first_words(says: &str) -> String {
    let cut: String = says.chars().take(MOST_IN_HEAD).collect();
    if cut.len() < says.len() { format!("{}…", cut.trim_end()) } else { cut }
}

const fn say_standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Fresh => "",
        Standing::LastSound => {
            "<p class=\"rehearsal-last\">This page is as it last was without a problem.</p>"
        }
        Standing::Missing => {
            "<p class=\"rehearsal-last\">There is no page to show until this is mended.</p>"
        }
    }
}

/// Whoever begins a pack is told how.
fn say_empty(scene: &Scene) -> &'static str {
    if scene.pack.sessions.is_empty() && scene.findings.is_empty() {
        "<p>There is no session in this pack yet. To begin with a starter: \
         <code>homeground draft \"TITLE\" --into FOLDER</code></p>"
    } else {
        ""
    }
}

fn say_more(more: usize) -> String {
    match more {
        0 => String::new(),
        _ => format!(
            "<p>{more} more in other files or further down. To read them all: <code>homeground inspect</code></p>"
        ),
    }
}

fn write_finding(finding: &Finding, files: &Files) -> String {
    let (file, at) = (files.get(finding.place.file), files.line_column(finding.place));
    let place = if file.text.is_empty() {
        escape(&file.path)
    } else {
        format!("{}, line {}", escape(&file.path), at.line)
    };
    format!(
        "<section class=\"rehearsal-{word}\"><h2><b>{}</b> {place} <small>{}</small></h2>{}\
         <p>{}</p><p><b>Way out:</b> {}</p></section>",
        capital(finding.severity.word()),
        finding.code,
        show_line(finding, files, at.line),
        escape(&finding.says),
        escape(&finding.way_out),
        word = finding.severity.word(),
    )
}

fn capital(word: &str) -> String {
    let mut letters = word.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// The line of a finding with its number, the place in it marked; a long line only around the place.
fn show_line(finding: &Finding, files: &Files, number: usize) -> String {
    let text = &files.get(finding.place.file).text;
    let start = floor(text, finding.place.start as usize);
    let from = text[..start].rfind('\n').map_or(0, |newline| newline + 1);
    let to = text[start..].find('\n').map_or(text.len(), |newline| start + newline);
    let end = floor(text, finding.place.end as usize).clamp(start, to);
    if text[from..to].trim().is_empty() {
        return String::new();
    }
    let before: String = last_letters(&text[from..start], AROUND);
    let after = first_letters(&text[end..to], AROUND);
    let marked = first_letters(&text[start..end], AROUND * 2);
    format!(
        "<pre><code>{number} | {}<mark>{}</mark>{}</code></pre>",
        escape(&before),
        escape(&marked),
        escape(&after)
    )
}

/// The nearest place between two letters at or before `at`.
fn floor(text: &str, at: usize) -> usize {
    let at = at.min(text.len());
    (0..=at).rev().find(|at| text.is_char_boundary(*at)).unwrap_or(0)
}

fn first_letters(text: &str, most: usize) -> String {
    match text.char_indices().nth(most) {
        Some((at, _)) => format!("{}…", &text[..at]),
        None => text.to_owned(),
    }
}

fn last_letters(text: &str, most: usize) -> String {
    let count = text.chars().count();
    match text.char_indices().nth(count.saturating_sub(most)) {
        Some((at, _)) if count > most => format!("…{}", &text[at..]),
        _ => text.to_owned(),
    }
}

/// Text as the content of an element or of an attribute in double quotes.
pub fn escape(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            _ => safe.push(letter),
        }
    }
    safe
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::place::Place;

    #[test]
    fn the_line_is_shown_and_nothing_of_it_is_markup() {
        let mut files = Files::default();
        let text = format!("title: a\nhow: <b>{}é</b>\n", "x".repeat(100));
        let file = files.add("a<b>.yaml".into(), text.clone());
        let start = u32::try_from(text.find('é').unwrap()).unwrap();
        let place = Place { file, start, end: start + 2 };
        let finding = Finding::problem("raw-html", place, "No <script> here.", "Take “&” out.");
        let shown = write_finding(&finding, &files);
        assert!(shown.contains("a&lt;b&gt;.yaml, line 2"), "{shown}");
        assert!(shown.contains("2 | …") && shown.contains("<mark>é</mark>&lt;/b&gt;"), "{shown}");
        assert!(!shown.contains("<script>") && shown.contains("“&amp;”"), "{shown}");
        // Inside a letter, and beyond the end: a slip of ours must not break the panel.
        for (start, end) in [(start + 1, start + 1), (9999, 99999)] {
            write_finding(&Finding::problem("x", Place { file, start, end }, "", ""), &files);
        }
    }
}
