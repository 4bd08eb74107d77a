use crate::finding::Severity;
use crate::inspect::pictures::pictures_of;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;
use crate::read::nearest;

pub const RULE: Rule = Rule {
    code: "picture-missing",
    severity: Severity::Problem,
    asks: "Every picture is in the pack.",
    why: "An empty frame on the card is worse than no picture.",
    source: "",
    bad: "pictures: [{file: pictures/hopp.png, alt: A child stands on one bent leg}]\n",
    good: "pictures: [{file: pictures/hop.png, alt: A child stands on one bent leg}]\n",
    check: Check::SessionInPack(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    for picture in pictures_of(session) {
        let says = match &picture.path {
            Some(path) if pack.paths.contains(path) => continue,
            Some(path) => format!("There is no picture “{path}” in this pack."),
            None => format!("“{}” leads out of the pack.", picture.file),
        };
        let known: Vec<&str> = pack.pictures.keys().map(String::as_str).collect();
        let near = picture.path.as_ref().and_then(|path| nearest(path, &known));
        let way_out = match near {
            Some(near) => format!("Did you mean “{near}”?"),
            None => {
                "Put it into a folder “pictures” beside the session, and write “pictures/NAME.png”."
                    .into()
            }
        };
        notes.find(picture.file.place, says, way_out);
    }
}
