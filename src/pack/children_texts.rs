//! The texts of a session that a child reads, for judging how hard they are.
//!
//! Left out is what is written to the family or the teacher: the summary, objectives, cautions, notes,
//! common faults (for whoever watches), answers and adaptations.

use super::part::{Part, placed};
use super::session::Session;
use crate::place::Placed;
use crate::prose::{Run, read_blocks};

/// Every text that the child reads, as CommonMark with its place, in the order of the session.
pub fn children_texts(session: &Session) -> Vec<Placed<&str>> {
    let mut texts = vec![placed(&session.title)];
    texts.extend(session.success.iter().map(placed));
    texts.extend(session.parts.iter().flat_map(part_texts));
    texts.extend(session.review.iter().map(|question| placed(&question.ask)));
    texts
}

fn part_texts(part: &Part) -> Vec<Placed<&str>> {
    let mut texts = vec![placed(&part.title), placed(&part.how)];
    texts.extend(part.key_points.iter().map(placed));
    texts.extend(part.easier.iter().chain(&part.harder).map(placed));
    if let Some(rules) = &part.throw {
        texts.extend(rules.landing_zone.iter().chain(&rules.stop_and_collect).map(placed));
    }
    texts.extend(part.measure.iter().flat_map(|measure| &measure.criteria).map(placed));
    texts.extend(part.pictures.iter().filter_map(|picture| picture.caption.as_ref()).map(placed));
    texts
}

/// The plain words of each paragraph, heading and list entry of a text.
pub fn plain_paragraphs(text: &str) -> Vec<String> {
    let words = |runs: Vec<Run>| {
        let whole: String = runs.into_iter().map(|run| run.text).collect();
        whole.split_whitespace().collect::<Vec<_>>().join(" ")
    };
    read_blocks(text).into_iter().map(|block| words(block.runs)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn paragraphs_and_list_entries_stand_apart_without_marks() {
        let text = "Hop **twice**\nand hold.\n\n1. Left\n2. [Right](a.html) foot";
        assert_eq!(plain_paragraphs(text), ["Hop twice and hold.", "Left", "Right foot"]);
    }
}
