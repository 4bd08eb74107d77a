//! One file of a scene, made when a browser asks for it; a page with the panel over it. In: a scene and the
//! path of an address; out: what to answer.

use super::panel::{Standing, escape, write_panel};
use super::scene::Scene;
use crate::pack::SessionId;
use crate::render::key::Key;
use crate::render::site::picture_path;
use crate::render::{Order, RenderFault, render_order, render_teacher_folder};

/// Where the pages for teachers stand in a rehearsal, in a folder that no language has.
const FOR_TEACHERS: &str = "for-teachers/";

/// The same policy as that of the pages.
const POLICY: &str = "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

/// What is answered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Answer {
    pub is_found: bool,
    pub bytes: Vec<u8>,
    pub kind: &'static str,
    /// Another for another page, panel or picture.
    pub mark: String,
    /// The mark of the pictures on a page; empty where there are none.
    pub pictures: String,
}

/// The path below the published folder that an address means; `None` where it leads out of it.
pub fn path_of(address: &str) -> Option<String> {
    let path = decode(address.trim_start_matches('/'))?;
    let is_inside =
        !path.contains(['\\', '\0']) && path.split('/').all(|step| step != ".." && step != ".");
    let is_folder = path.is_empty() || path.ends_with('/');
    is_inside.then(|| if is_folder { format!("{path}index.html") } else { path })
}

/// Undoes percent signs (RFC 3986, 2.1).
pub fn decode(text: &str) -> Option<String> {
    let mut bytes = Vec::with_capacity(text.len());
    let mut rest = text.as_bytes();
    while let Some((first, after)) = rest.split_first() {
        if *first == b'%' {
            let figures = std::str::from_utf8(after.get(..2)?).ok()?;
            bytes.push(u8::from_str_radix(figures, 16).ok()?);
            rest = &after[2..];
        } else {
            bytes.push(*first);
            rest = after;
        }
    }
    String::from_utf8(bytes).ok()
}

/// The file at a path of a scene; `last` is the same page as it was last made.
pub fn answer_of(scene: &Scene, path: &str, last: Option<&[u8]>) -> (Answer, Option<Vec<u8>>) {
    let (made, fault) = match make_file(scene, path) {
        Ok(made) => (made, None),
        Err(fault) => (None, Some(fault.to_string())),
    };
    if !path.ends_with(".html") {
        let is_found = made.is_some();
        let bytes = made.unwrap_or_else(|| b"There is no such file in this pack.\n".to_vec());
        let kind = if is_found { kind_of(path) } else { "text/plain; charset=utf-8" };
        let (mark, pictures) = (mark_of(&bytes), String::new());
        return (Answer { is_found, bytes, kind, mark, pictures }, None);
    }
    let session = session_of(scene, path);
    let page = made.clone().or_else(|| last.filter(|_| fault.is_some()).map(<[u8]>::to_vec));
    let is_stale = session.as_deref().is_some_and(|id| has_problem(scene, id));
    let standing = match (&page, is_stale || fault.is_some()) {
        (None, _) => Standing::Missing,
        (Some(_), true) => Standing::LastSound,
        (Some(_), false) => Standing::Fresh,
    };
    let panel = write_panel(scene, session.as_deref(), standing, fault.as_deref());
    let is_found = page.is_some();
    let page = page.map_or_else(
        || stand_in(session.is_some_and(|id| scene.has_file_of(&id))),
        |page| String::from_utf8_lossy(&page).into_owned(),
    );
    let pictures = mark_of_pictures(scene, &page);
    let mark = mark_of(format!("{page}{panel}{pictures}").as_bytes());
    let bytes = with_panel(&page, &panel, (&mark, &pictures)).into_bytes();
    (Answer { is_found, bytes, kind: kind_of(path), mark, pictures }, made)
}

fn has_problem(scene: &Scene, session: &str) -> bool {
    let findings = scene.findings_of(session);
    findings.iter().any(|finding| finding.severity == crate::finding::Severity::Problem)
}

/// The bytes of a file, made now or earlier in this scene.
fn make_file(scene: &Scene, path: &str) -> Result<Option<Vec<u8>>, RenderFault> {
    if let Some(bytes) = scene.made().get(path) {
        return Ok(Some(bytes.clone()));
    }
    let plans = scene.plans.clone();
    let order = Order { shelf: Some(scene.shelf.as_ref()), ..Order::default() };
    let made = match path.strip_prefix(FOR_TEACHERS) {
        Some(inside) => {
            let order = Order { only: Some(inside), ..order };
            let bundle = render_teacher_folder(&scene.pack, plans, "../", order)?;
            bundle
                .into_iter()
                .map(|(path, bytes)| (format!("{FOR_TEACHERS}{path}"), bytes))
                .collect()
        }
        None => render_order(&scene.pack, plans, Order { only: Some(path), ..order })?.bundle,
    };
    let bytes = made.get(path).cloned();
    scene.made().extend(made);
    Ok(bytes)
}

/// The id of the session that a page is of.
fn session_of(scene: &Scene, path: &str) -> Option<String> {
    let path = path.strip_prefix(FOR_TEACHERS).unwrap_or(path);
    let mut languages = scene.pack.languages.iter();
    let path = languages
        .find_map(|language| path.strip_prefix(language.as_str())?.strip_prefix('/'))
        .unwrap_or(path);
    let id = path.strip_prefix("sessions/")?.strip_suffix(".html")?;
    Some(SessionId::of_path(&format!("{id}.yaml")).to_string())
}

/// A page where there is none: its session has a problem, or is gone.
fn stand_in(has_file: bool) -> String {
    let (title, says) = if has_file {
        ("This session can’t be shown yet", "Mend what the panel tells of, and save the file.")
    } else {
        ("There is no such page", "It may have been moved or taken out of the pack.")
    };
    format!(
        "<!doctype html>\n<html lang=\"en-GB\"><head><meta charset=\"utf-8\">\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\
         <meta http-equiv=\"Content-Security-Policy\" content=\"{POLICY}\"><title>{title}</title>\
         <link rel=\"stylesheet\" href=\"/static/ground.css\"></head>\
         <body class=\"rehearsal-stand-in\"><main id=\"content\"><h1>{title}</h1><p>{says}</p></main></body></html>\n"
    )
}

/// Puts the panel over a page, with what it loads; nothing of it is in a published page.
fn with_panel(page: &str, panel: &str, (mark, pictures): (&str, &str)) -> String {
    // Before the page’s own scripts: it sees what they listen to.
    let head = format!(
        "<head><link rel=\"stylesheet\" href=\"/-rehearse/panel.css\">\
         <script src=\"/-rehearse/refresh.js\" data-mark=\"{}\" data-pictures=\"{}\" defer></script>",
        escape(mark),
        escape(pictures)
    );
    let with_head = page.replacen("<head>", &head, 1);
    match with_head.rfind("</body>") {
        Some(at) => format!("{}{panel}{}", &with_head[..at], &with_head[at..]),
        None => format!("{with_head}{panel}"),
    }
}

/// The mark of the pictures that a page names.
fn mark_of_pictures(scene: &Scene, page: &str) -> String {
    let is_named = |path: &str| page.contains(&picture_path(path));
    let named = scene.pack.pictures.iter().filter(|(path, _)| is_named(path));
    let marks: String = named.map(|(_, bytes)| Key::of(bytes).to_string()).collect();
    if marks.is_empty() { marks } else { mark_of(marks.as_bytes()) }
}

fn mark_of(bytes: &[u8]) -> String {
    Key::of(bytes).to_string().chars().take(16).collect()
}

/// The media type of a file by the ending of its name.
fn kind_of(path: &str) -> &'static str {
    match path.rsplit_once('.').map_or("", |(_, ending)| ending) {
        "html" => "text/html; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "json" => "application/json",
        "webmanifest" => "application/manifest+json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "jpg" | "jpeg" => "image/jpeg",
        "woff2" => "font/woff2",
        "pdf" => "application/pdf",
        "csv" => "text/csv; charset=utf-8",
        "ics" => "text/calendar; charset=utf-8",
        "xml" => "application/xml",
        "wasm" => "application/wasm",
        _ => "text/plain; charset=utf-8",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn addresses_stay_inside() {
        let of = |address| path_of(address);
        assert_eq!(of("/").as_deref(), Some("index.html"));
        assert_eq!(of("/fr/").as_deref(), Some("fr/index.html"));
        assert_eq!(of("/sessions/a%20b.html").as_deref(), Some("sessions/a b.html"));
        for out in ["/../x", "/a/../../x", "/%2e%2e/x", "/a%5cb", "/%00", "/%zz", "/%f", "/%ff"] {
            assert_eq!(of(out), None, "{out}");
        }
    }
}
