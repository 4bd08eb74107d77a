//! The labels of every shipped language: none missing, none too many, no unknown variable, and a form for
//! every plural that the language has for whole numbers (Unicode CLDR 46, plural rules).

use std::collections::{BTreeMap, BTreeSet};
use std::fs;

/// What a label asks to be filled in, and the plural forms of each choice in it.
#[derive(Debug, Default)]
struct Label {
    variables: BTreeSet<String>,
    choices: Vec<BTreeSet<String>>,
}

/// The labels of a language, by their keys. A label begins where a line does, its further lines are
/// indented or close its choice.
fn labels_of(language: &str) -> BTreeMap<String, Label> {
    let text = fs::read_to_string(format!("static/words/{language}.ftl")).expect("a catalogue");
    let mut labels: BTreeMap<String, Label> = BTreeMap::new();
    let mut key = String::new();
    for line in text.lines().filter(|line| !line.starts_with('#')) {
        if line.starts_with(|letter: char| letter.is_ascii_lowercase()) {
            let (name, _) = line.split_once(" = ").unwrap_or_else(|| panic!("{language}: {line}"));
            name.clone_into(&mut key);
            let twice = labels.insert(key.clone(), Label::default()).is_some();
            assert!(!twice, "{language}: {key} stands twice");
        }
        let label = labels.entry(key.clone()).or_default();
        label.variables.extend(line.split('$').skip(1).map(|rest| {
            rest.chars().take_while(|c| c.is_ascii_alphanumeric() || *c == '-').collect()
        }));
        if line.ends_with("->") {
            label.choices.push(BTreeSet::new());
        }
        let form = line.trim().trim_start_matches('*').strip_prefix('[');
        if let Some((form, _)) = form.and_then(|rest| rest.split_once(']')) {
            label.choices.last_mut().expect("a choice is open").insert(form.to_owned());
        }
    }
    labels.remove("");
    labels
}

fn languages() -> Vec<String> {
    let tag = |path: std::path::PathBuf| Some(path.file_stem()?.to_str()?.to_owned());
    let files = fs::read_dir("static/words").expect("the folder of catalogues");
    let mut tags: Vec<String> = files.filter_map(|file| tag(file.ok()?.path())).collect();
    tags.sort();
    tags
}

#[test]
fn every_language_has_every_label() {
    let usual = labels_of("en-GB");
    let mut faults = String::new();
    for language in languages() {
        let labels = labels_of(&language);
        for key in usual.keys().filter(|key| !labels.contains_key(*key)) {
            faults.push_str(&format!("{language} lacks {key}\n"));
        }
        for (key, label) in &labels {
            match usual.get(key) {
                None => faults.push_str(&format!("{language} has {key}, which nothing asks for\n")),
                Some(usual) if !label.variables.is_subset(&usual.variables) => {
                    faults.push_str(&format!("{language}: {key} asks for {:?}\n", label.variables));
                }
                Some(_) => {}
            }
        }
    }
    assert!(faults.is_empty(), "{faults}");
}

#[test]
fn every_plural_of_a_language_has_its_form() {
    let few: [(&str, &[&str]); 9] = [
        ("ar", &["zero", "one", "two", "few", "many", "other"]),
        ("cy", &["zero", "one", "two", "few", "many", "other"]),
        ("en-GB", &["one", "other"]),
        ("en-US", &["one", "other"]),
        ("es", &["one", "other"]),
        ("fr", &["one", "other"]),
        ("pl", &["one", "few", "many", "other"]),
        ("uk", &["one", "few", "many", "other"]),
        ("ur", &["one", "other"]),
    ];
    let known: Vec<&str> = few.iter().map(|(language, _)| *language).collect();
    assert_eq!(languages(), known);
    for (language, forms) in few {
        let forms: BTreeSet<String> = forms.iter().map(|form| (*form).to_owned()).collect();
        for (key, label) in labels_of(language) {
            for choice in label.choices {
                assert_eq!(choice, forms, "{language}: {key}");
            }
        }
    }
}
