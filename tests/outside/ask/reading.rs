//! Answers about the reading plan, for `check_reading.py`: texts, single words or bare counts in;
//! counts, scores, long words and long sentences out.

use homeground::plan::reading::{Scores, TextCounts, count_syllables, plan_reading, sentences_of};
use serde_json::{Value, json};

/// The answer to `{"texts": […]}`, `{"words": […]}` or `{"counts": {…}}`.
pub fn answer(question: &Value) -> Value {
    if let Some(words) = question.get("words") {
        let syllables: Vec<u32> = strings(words).into_iter().map(count_syllables).collect();
        return json!({ "syllables": syllables });
    }
    if let Some(counts) = question.get("counts") {
        return json!({ "scores": scores_json(Scores::of(&read_counts(counts))) });
    }
    texts_answer(&strings(&question["texts"]))
}

fn texts_answer(texts: &[&str]) -> Value {
    let report = plan_reading(texts);
    let counts = report.counts;
    let sentences: Vec<&str> = texts
        .iter()
        .flat_map(|text| sentences_of(text).into_iter().map(|range| &text[range]))
        .collect();
    let long_words: Vec<Value> = report
        .long_words
        .iter()
        .map(|w| json!({"word": w.word, "syllables": w.syllables, "count": w.count, "text": w.text, "start": w.start}))
        .collect();
    let long_sentences: Vec<Value> = report
        .long_sentences
        .iter()
        .map(|s| json!({"text": s.text, "start": s.range.start, "end": s.range.end, "words": s.words}))
        .collect();
    json!({
        "counts": {
            "sentences": counts.sentences, "words": counts.words, "letters": counts.letters,
            "characters": counts.characters, "syllables": counts.syllables,
            "polysyllables": counts.polysyllables,
        },
        "scores": scores_json(report.scores),
        "reading_age": report.reading_age,
        "sentences": sentences,
        "long_words": long_words,
        "long_sentences": long_sentences,
    })
}

fn scores_json(scores: Option<Scores>) -> Value {
    scores.map_or(Value::Null, |s| {
        json!({
            "flesch": s.flesch, "flesch_kincaid": s.flesch_kincaid, "smog": s.smog, "ari": s.ari,
            "coleman_liau": s.coleman_liau, "reading_age": s.reading_age(),
        })
    })
}

fn read_counts(counts: &Value) -> TextCounts {
    let count = |key: &str| u32::try_from(counts[key].as_u64().unwrap_or(0)).unwrap_or(u32::MAX);
    TextCounts {
        sentences: count("sentences"),
        words: count("words"),
        letters: count("letters"),
        characters: count("characters"),
        syllables: count("syllables"),
        polysyllables: count("polysyllables"),
    }
}

fn strings(list: &Value) -> Vec<&str> {
    list.as_array().into_iter().flatten().filter_map(Value::as_str).collect()
}
