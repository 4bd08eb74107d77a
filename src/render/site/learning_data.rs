//! A session as open data in its page: JSON-LD in the words of schema.org, so that a school’s search or a
//! learning platform can read what it is, for whom, and what it takes.
//!
//! Source: schema.org 29, `LearningResource` and `HowTo`; JSON-LD 1.1 (W3C); durations by ISO 8601.

use serde_json::{Map, Value, json};

use crate::pack::{Need, Part, Session, Statement};
use crate::place::Placed;
use crate::prose::plain_line;
use crate::quantity::Duration;
use crate::read::Line;
use crate::render::Publication;
use crate::words::Words;

/// The data of a session as the inside of a `script` element: no `<` stands in it, so that no text of a
/// pack can end the element.
pub(super) fn learning_data(
    publication: &Publication<'_>,
    session: &Session,
    address: Option<&str>,
    licence: Option<&str>,
) -> String {
    let words = &publication.words;
    let mut data = Map::new();
    let mut put = |key: &str, value: Value| {
        let is_empty = value.is_null() || value.as_array().is_some_and(Vec::is_empty);
        if !is_empty {
            data.insert(key.to_owned(), value);
        }
    };
    put("@context", json!("https://schema.org"));
    put("@type", json!(["LearningResource", "HowTo"]));
    put("name", json!(plain_line(&session.title)));
    put("description", json!(plain_line(&session.summary)));
    put("url", json!(address));
    put("inLanguage", json!(session.language));
    put("license", json!(licence));
    put("creditText", json!(session.credit.as_ref().map(|credit| plain_line(credit))));
    put("publisher", publisher_of(publication));
    put("learningResourceType", json!("lesson plan"));
    put("keywords", json!(words.say(&format!("activity-{}", session.activity.word()))));
    put("typicalAgeRange", json!(session.ages.to_string().replace('–', "-")));
    put("timeRequired", json!(span_of(session.slot.value)));
    put("totalTime", json!(span_of(session.slot.value)));
    put("isAccessibleForFree", json!(true));
    put("dateModified", json!(dated(session)));
    put("teaches", json!(session.objectives.iter().map(|o| plain_line(o)).collect::<Vec<_>>()));
    put("educationalAlignment", json!(alignments_of(publication, session)));
    put("tool", json!(session.needs.iter().map(tool_of).collect::<Vec<_>>()));
    put("step", json!(steps_of(session, words, address)));
    Value::Object(data).to_string().replace('<', "\\u003c")
}

/// The day a session’s standing was last set, the only date it has of its own.
pub(super) fn dated(session: &Session) -> Option<String> {
    Some(session.standing.as_ref()?.on.as_ref()?.value.to_string())
}

fn publisher_of(publication: &Publication<'_>) -> Value {
    let school = publication.pack.school.as_ref();
    json!(school.map(|name| json!({"@type": "EducationalOrganization", "name": plain_line(name)})))
}

/// `PT30M`, `PT4M30S`.
fn span_of(time: Duration) -> String {
    let (minutes, seconds) = (time.seconds() / 60, time.seconds() % 60);
    match (minutes, seconds) {
        (minutes, 0) => format!("PT{minutes}M"),
        (0, seconds) => format!("PT{seconds}S"),
        (minutes, seconds) => format!("PT{minutes}M{seconds}S"),
    }
}

fn alignments_of(publication: &Publication<'_>, session: &Session) -> Vec<Value> {
    let Some(list) = &publication.pack.curriculum else { return Vec::new() };
    let met =
        session.curriculum.iter().filter_map(|code| Some((code, list.statements.get(&code.0)?)));
    met.map(|(code, statement)| alignment(&list.title, code, statement)).collect()
}

fn alignment(framework: &str, code: &Placed<Line>, statement: &Statement) -> Value {
    json!({
        "@type": "AlignmentObject",
        "alignmentType": "teaches",
        "educationalFramework": plain_line(framework),
        "targetName": code.to_string(),
        "targetDescription": plain_line(&statement.says),
    })
}

fn tool_of(need: &Need) -> Value {
    json!({"@type": "HowToTool", "name": plain_line(&need.name), "requiredQuantity": need.count})
}

fn steps_of(session: &Session, words: &Words, address: Option<&str>) -> Vec<Value> {
    let step = |(at, part): (usize, &Part)| {
        let kind = words.say(&format!("part-{}", crate::render::phrases::part_key(part.kind)));
        let cues: Vec<String> = part.key_points.iter().map(|cue| plain_line(cue)).collect();
        let text = if cues.is_empty() { kind } else { format!("{kind}: {}.", cues.join("; ")) };
        let mut step = json!({
            "@type": "HowToStep", "position": at + 1, "name": plain_line(&part.title), "text": text,
        });
        if let Some(page) = address {
            step["url"] = json!(format!("{page}#part-{}", at + 1));
        }
        step
    };
    session.parts.iter().enumerate().map(step).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn times_are_written_as_iso_8601_asks() {
        let written = [1800, 270, 45].map(|seconds| span_of(Duration::from_seconds(seconds)));
        assert_eq!(written, ["PT30M", "PT4M30S", "PT45S"]);
    }
}
