use crate::finding::Severity;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::prose::is_web_address;

pub const RULE: Rule = Rule {
    code: "film-link",
    severity: Severity::Problem,
    asks: "A film has a whole web address.",
    why: "Pages show it as a link and paper as an address to type, so it has to begin with https://.",
    source: "",
    bad: "film: {link: school drive/films/hop.mp4, shows: Five hops from the side}\n",
    good: "film: {link: \"https://example.org/hop\", shows: Five hops from the side}\n",
    check: Check::Session(check),
};

fn check(session: &Session, _: &Plans, _: &Pack, notes: &mut Notes<'_>) {
    if let Some(film) = &session.film
        && !is_web_address(&film.link)
    {
        notes.find(
            film.link.place,
            format!("“{}” is no web address.", film.link),
            "Write the whole address in quotation marks, with https:// at the start.",
        );
    }
}
