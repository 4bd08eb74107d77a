//! Answers browsers on this computer alone: only on its own addresses, under its own names (a page from
//! elsewhere that turns its name round to here is refused), and only reading.

use std::collections::BTreeMap;
use std::net::{Ipv4Addr, Ipv6Addr, SocketAddr, TcpListener};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Duration;

use axum::Router;
use axum::body::Body;
use axum::extract::{Request, State};
use axum::http::{HeaderName, HeaderValue, Method, Response, StatusCode, header};
use tokio::sync::watch::Receiver;
use tower_http::set_header::SetResponseHeaderLayer;

use super::page::{Answer, answer_of, decode, path_of};
use super::scene::Scene;

/// So many ports after the one that was wished for are tried.
const TRIED: u16 = 50;

/// A browser asks again after so long, whether something has changed or not.
const PATIENCE: Duration = Duration::from_secs(20);

/// So many pages are remembered as they last were.
const REMEMBERED: usize = 100;

const PANEL_SHEET: &str = include_str!("../../static/rehearse/panel.css");
const REFRESH_SCRIPT: &str = include_str!("../../static/rehearse/refresh.js");

/// The addresses that are listened at: this computer’s own, of both kinds where it has both.
#[derive(Debug)]
pub struct Doors {
    pub port: u16,
    listeners: Vec<TcpListener>,
}

/// Opens the first port from the one wished for that is free.
///
/// # Errors
/// A sentence for the teacher, where none is.
pub fn open_doors(wished: u16) -> Result<Doors, String> {
    for port in wished..=wished.saturating_add(TRIED) {
        let Ok(four) = TcpListener::bind((Ipv4Addr::LOCALHOST, port)) else { continue };
        match TcpListener::bind((Ipv6Addr::LOCALHOST, port)) {
            Ok(six) => return Ok(Doors { port, listeners: vec![four, six] }),
            // Somebody else answers to “localhost” there.
            Err(why) if why.kind() == std::io::ErrorKind::AddrInUse => {}
            Err(_) => return Ok(Doors { port, listeners: vec![four] }),
        }
    }
    Err(format!("The ports from {wished} on are all taken. Choose another with --port."))
}

/// What every answer is made from.
#[derive(Clone)]
struct Stage {
    scenes: Receiver<Arc<Scene>>,
    port: u16,
    /// Pages as they were last made, by path.
    last: Arc<Mutex<BTreeMap<String, Vec<u8>>>>,
}

/// Answers until the process is asked to stop (Ctrl-C).
///
/// # Errors
/// Where the system refuses.
pub async fn serve_scenes(doors: Doors, scenes: Receiver<Arc<Scene>>) -> std::io::Result<()> {
    let stage = Stage { scenes, port: doors.port, last: Arc::default() };
    let fixed = |name: HeaderName, value: &'static str| {
        SetResponseHeaderLayer::overriding(name, HeaderValue::from_static(value))
    };
    let router: Router = Router::new()
        .fallback(answer)
        .layer(fixed(header::CACHE_CONTROL, "no-store"))
        .layer(fixed(header::X_CONTENT_TYPE_OPTIONS, "nosniff"))
        .layer(fixed(header::REFERRER_POLICY, "no-referrer"))
        .layer(fixed(header::CONTENT_SECURITY_POLICY, "frame-ancestors 'none'"))
        .layer(fixed(HeaderName::from_static("cross-origin-resource-policy"), "same-origin"))
        .with_state(stage);
    for listener in doors.listeners {
        listener.set_nonblocking(true)?;
        let listener = tokio::net::TcpListener::from_std(listener)?;
        let router = router.clone();
        tokio::spawn(async move { axum::serve(listener, router).await });
    }
    tokio::signal::ctrl_c().await
}

async fn answer(State(stage): State<Stage>, request: Request) -> Response<Body> {
    if let Some(refusal) = refuse(&stage, &request) {
        return refusal;
    }
    let is_head = request.method() == Method::HEAD;
    let mut response = match request.uri().path() {
        "/-rehearse/panel.css" => plain(StatusCode::OK, "text/css; charset=utf-8", PANEL_SHEET),
        "/-rehearse/refresh.js" => plain(StatusCode::OK, SCRIPT, REFRESH_SCRIPT),
        "/-rehearse/wait.js" => wait(stage, request.uri().query().unwrap_or_default()).await,
        path => show(stage, path).await,
    };
    if is_head {
        *response.body_mut() = Body::empty();
    }
    response
}

const SCRIPT: &str = "text/javascript; charset=utf-8";
const TEXT: &str = "text/plain; charset=utf-8";

/// Why a request is not answered, if it is not.
fn refuse(stage: &Stage, request: &Request) -> Option<Response<Body>> {
    let said = |name: &str| request.headers().get(name).and_then(|value| value.to_str().ok());
    if !is_own_name(said("host").unwrap_or_default(), stage.port) {
        let says = "This rehearsal answers only under the addresses of this computer.\n";
        return Some(plain(StatusCode::FORBIDDEN, TEXT, says));
    }
    if !matches!(*request.method(), Method::GET | Method::HEAD) {
        return Some(plain(
            StatusCode::METHOD_NOT_ALLOWED,
            TEXT,
            "Here is only something to read.\n",
        ));
    }
    // A page from elsewhere may lead here, but not use what is here.
    let from_elsewhere = said("sec-fetch-site")
        .is_some_and(|site| matches!(site, "cross-site" | "same-site"))
        && said("sec-fetch-mode") != Some("navigate");
    // A page that keeps itself for later would hide what has just been saved.
    let keeps_pages = said("service-worker").is_some();
    (from_elsewhere || keeps_pages)
        .then(|| plain(StatusCode::FORBIDDEN, TEXT, "Not in a rehearsal.\n"))
}

/// Whether a `Host` is one of this computer’s own names with our port.
fn is_own_name(host: &str, port: u16) -> bool {
    let Some((name, said_port)) = host.rsplit_once(':') else { return false };
    let is_own =
        ["localhost", "127.0.0.1", "[::1]"].iter().any(|own| name.eq_ignore_ascii_case(own));
    is_own && said_port.parse() == Ok(port)
}

fn plain(status: StatusCode, kind: &'static str, body: impl Into<Body>) -> Response<Body> {
    let mut response = Response::new(body.into());
    *response.status_mut() = status;
    response.headers_mut().insert(header::CONTENT_TYPE, HeaderValue::from_static(kind));
    response
}

async fn show(stage: Stage, address: &str) -> Response<Body> {
    let Some(path) = path_of(address) else {
        return plain(StatusCode::BAD_REQUEST, TEXT, "There is no such address.\n");
    };
    let scene = Arc::clone(&stage.scenes.borrow());
    match make(&stage, scene, path).await {
        Some(answer) => {
            let status = if answer.is_found { StatusCode::OK } else { StatusCode::NOT_FOUND };
            plain(status, answer.kind, answer.bytes)
        }
        None => {
            plain(StatusCode::INTERNAL_SERVER_ERROR, TEXT, "This is a mistake in the program.\n")
        }
    }
}

/// Makes an answer on a thread where that may take its time; `None` where the program breaks.
async fn make(stage: &Stage, scene: Arc<Scene>, path: String) -> Option<Answer> {
    let last = Arc::clone(&stage.last);
    let work = move || {
        let held = || last.lock().unwrap_or_else(PoisonError::into_inner);
        let before = held().get(&path).cloned();
        let (answer, page) = answer_of(&scene, &path, before.as_deref());
        if let Some(page) = page {
            let mut last = held();
            if last.len() >= REMEMBERED {
                last.pop_first();
            }
            last.insert(path, page);
        }
        answer
    };
    tokio::task::spawn_blocking(work).await.ok()
}

/// Answers when the page that waits has changed, or when it should ask again. The answer is a script, so
/// that the pages’ own policy holds in a rehearsal as well.
async fn wait(mut stage: Stage, query: &str) -> Response<Body> {
    let asked = |name: &str| {
        let pairs = query.split('&').filter_map(|pair| pair.split_once('='));
        pairs.filter(|(key, _)| *key == name).find_map(|(_, value)| decode(value))
    };
    let (Some(path), Some(mark)) = (asked("page").as_deref().and_then(path_of), asked("mark"))
    else {
        return plain(StatusCode::BAD_REQUEST, TEXT, "There is no such page.\n");
    };
    let until = tokio::time::Instant::now() + PATIENCE;
    loop {
        let scene = Arc::clone(&stage.scenes.borrow_and_update());
        let answer = make(&stage, scene, path.clone()).await;
        // Where the program breaks, the page that is there stays.
        if let Some(answer) = answer.filter(|answer| answer.mark != mark) {
            return plain(StatusCode::OK, SCRIPT, news_of(&answer));
        }
        match tokio::time::timeout_at(until, stage.scenes.changed()).await {
            Ok(Ok(())) => {}
            _ => return plain(StatusCode::OK, SCRIPT, "homegroundRehearsal(null);"),
        }
    }
}

/// The new page, handed over at once; nothing where there is none any more, which the browser is to find.
fn news_of(answer: &Answer) -> String {
    let page = answer.is_found.then(|| String::from_utf8_lossy(&answer.bytes));
    let news =
        serde_json::json!({ "mark": answer.mark, "page": page, "pictures": answer.pictures });
    format!("homegroundRehearsal({news});")
}

impl Doors {
    /// Where to look: the address for a browser.
    pub fn address(&self) -> String {
        format!("http://{}/", SocketAddr::from((Ipv4Addr::LOCALHOST, self.port)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_own_names_are_answered() {
        for own in ["localhost:8020", "LOCALHOST:8020", "127.0.0.1:8020", "[::1]:8020"] {
            assert!(is_own_name(own, 8020), "{own}");
        }
        for other in [
            "",
            "localhost",
            "localhost:80",
            "school.example:8020",
            "127.0.0.1.school.example:8020",
            "192.168.0.2:8020",
        ] {
            assert!(!is_own_name(other, 8020), "{other}");
        }
    }

    #[test]
    fn a_taken_port_is_passed_over() {
        let first = open_doors(18020).unwrap();
        let second = open_doors(first.port).unwrap();
        assert!(second.port > first.port);
    }
}
