use crate::finding::Severity;
use crate::inspect::pictures::pictures_of;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::plan::Plans;

pub const RULE: Rule = Rule {
    code: "picture-unsound",
    severity: Severity::Problem,
    asks: "A picture is a PNG or JPEG of at most 2 MB.",
    why: "Those two show everywhere and print. A larger one takes a family’s data and a printer’s \
          patience, and looks no better on a card.",
    source: "",
    bad: "\
pictures: [{file: pictures/arm.png, alt: An arm stretched out to the side}]
# whole file: games/pictures/arm.png
This is a note about a picture, saved under a wrong name.
",
    good: "pictures: [{file: pictures/hop.png, alt: A child stands on one bent leg}]\n",
    check: Check::Session(check),
};

const PNG: &[u8] = b"\x89PNG\r\n\x1a\n";
const JPEG: &[u8] = b"\xff\xd8\xff";

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    for picture in pictures_of(session) {
        let Some(path) = picture.path.as_ref().filter(|path| pack.paths.contains(*path)) else {
            continue;
        };
        let is_sound = |bytes: &[u8]| bytes.starts_with(PNG) || bytes.starts_with(JPEG);
        match pack.pictures.get(path) {
            Some(bytes) if is_sound(bytes) => {}
            Some(_) => notes.find(
                picture.file.place,
                format!("“{path}” is not a PNG or JPEG picture, whatever its name says."),
                "Open it in a picture program and export it as PNG or JPEG.",
            ),
            None => notes.find(
                picture.file.place,
                format!(
                    "“{path}” is larger than 2 MB, or its name doesn’t end in .png, .jpg or .jpeg."
                ),
                "Scale it to about 1600 dots on the long side, and save it as PNG or JPEG.",
            ),
        }
    }
}
