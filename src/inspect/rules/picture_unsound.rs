use crate::finding::Severity;
use crate::inspect::pictures::pictures_of;
use crate::inspect::rule::{Check, Notes, Rule};
use crate::pack::{Pack, Session};
use crate::picture::{LONGEST_SIDE, dots_for_paper};
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
    check: Check::SessionInPack(check),
};

fn check(session: &Session, _: &Plans, pack: &Pack, notes: &mut Notes<'_>) {
    for picture in pictures_of(session) {
        let Some(path) = picture.path.as_ref().filter(|path| pack.paths.contains(*path)) else {
            continue;
        };
        match pack.pictures.get(path) {
            Some(bytes) if dots_for_paper(bytes).is_some() => {}
            Some(_) => notes.find(
                picture.file.place,
                format!(
                    "“{path}” is not a sound PNG or JPEG picture, or is more than {LONGEST_SIDE} dots \
                     wide or high."
                ),
                "Open it in a picture program, and export it again as PNG or JPEG of about 1600 dots.",
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
