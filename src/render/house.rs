//! The house files: templates, style sheets, fonts and labels, shipped inside the program. A pack can
//! put single files of its own in their place, in its folder `look`.

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

use include_dir::{Dir, include_dir};

use super::RenderFault;
use super::key::KeyMaker;
use crate::words::Words;

static TEMPLATES: Dir<'static> = include_dir!("$CARGO_MANIFEST_DIR/templates");
static STATIC: Dir<'static> = include_dir!("$CARGO_MANIFEST_DIR/static");

/// The language of the labels where there are none in the pack's own.
const USUAL_LABELS: &str = "en-GB";

/// The shipped files with a pack's own in place of some.
#[derive(Debug)]
pub struct House<'p> {
    /// By path below the pack's `look` folder: `templates/site/session.html`, `static/site.css`.
    own: &'p BTreeMap<String, Arc<[u8]>>,
}

impl<'p> House<'p> {
    pub fn new(own: &'p BTreeMap<String, Arc<[u8]>>) -> Self {
        Self { own }
    }

    /// A mark of the pack's own files: the shipped ones are the program’s.
    pub fn own_key(&self) -> String {
        let files = self.own.iter();
        let all = files.fold(KeyMaker::default(), |all, (path, bytes)| all.with(path).with(bytes));
        all.finish().to_string()
    }

    /// Whether the pack has its own file at a path.
    pub fn is_own(&self, path: &str) -> bool {
        self.own.contains_key(path)
    }

    /// The bytes at `templates/…` or `static/…`: the pack's own, else the shipped ones.
    pub fn file(&self, path: &str) -> Option<&[u8]> {
        if let Some(own) = self.own.get(path) {
            return Some(own);
        }
        shipped_file(path)
    }

    /// The text of a house file.
    ///
    /// # Panics
    /// Where the program was built without it.
    pub fn text(&self, path: &str) -> Cow<'_, str> {
        let bytes = self.file(path).unwrap_or_else(|| panic!("{path} is not in the program"));
        String::from_utf8_lossy(bytes)
    }

    /// The paths below a folder such as `static/fonts`, shipped and own, in order.
    pub fn paths_below(&self, folder: &str) -> Vec<String> {
        let shipped = [("templates", &TEMPLATES), ("static", &STATIC)];
        let mut paths: Vec<String> = shipped
            .into_iter()
            .flat_map(|(root, dir)| files_of(dir).map(move |path| format!("{root}/{path}")))
            .chain(self.own.keys().cloned())
            .filter(|path| path.strip_prefix(folder).is_some_and(|rest| rest.starts_with('/')))
            .collect();
        paths.sort();
        paths.dedup();
        paths
    }

    /// Whether there are labels of a language.
    pub fn has_words(&self, language: &str) -> bool {
        self.file(&words_path(language)).is_some()
            || shipped_file(&words_path(primary_of(language))).is_some()
    }

    /// The languages that labels are shipped in, by their tags in order.
    pub fn shipped_languages() -> Vec<String> {
        let folder = STATIC.get_dir("words").into_iter().flat_map(Dir::files);
        let mut tags: Vec<String> = folder
            .filter_map(|file| file.path().file_stem()?.to_str().map(ToOwned::to_owned))
            .collect();
        tags.sort();
        tags
    }

    /// Whether the pack has no look of its own: what is made of shipped files alone is then made once and kept.
    pub fn is_as_shipped(&self) -> bool {
        self.own.is_empty()
    }

    /// The labels of a language; those that are shipped are read once, since a rehearsal asks for them at each save.
    ///
    /// # Errors
    /// Where the pack's own labels can't be read.
    pub fn kept_words(&self, language: &str) -> Result<Arc<Words>, RenderFault> {
        static SHIPPED: Mutex<BTreeMap<String, Arc<Words>>> = Mutex::new(BTreeMap::new());
        if !self.is_as_shipped() {
            return self.words(language).map(Arc::new);
        }
        let kept = || SHIPPED.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(words) = kept().get(language) {
            return Ok(Arc::clone(words));
        }
        let words = Arc::new(self.words(language)?);
        kept().insert(language.to_owned(), Arc::clone(&words));
        Ok(words)
    }

    /// The labels of a language, with the usual ones where it has none: those of `fr` serve `fr-CA`, and
    /// what no nearer catalogue says is said in British English.
    ///
    /// # Errors
    /// Where the pack's own labels can't be read.
    pub fn words(&self, language: &str) -> Result<Words, RenderFault> {
        let known = if self.has_words(language) { language } else { USUAL_LABELS };
        let file = words_path(known);
        let layers = [words_path(USUAL_LABELS), words_path(primary_of(known)), file.clone()];
        let shipped: Vec<&str> = layers
            .iter()
            .filter_map(|path| std::str::from_utf8(shipped_file(path)?).ok())
            .collect();
        let own = self.own.get(&file).map(|own| String::from_utf8_lossy(own));
        Words::from_fluent(known, &shipped, own.as_deref())
            .map_err(|says| RenderFault { file: format!("look/{file}"), says })
    }
}

/// The bytes at `templates/…` or `static/…` as they were shipped.
pub fn shipped_file(path: &str) -> Option<&'static [u8]> {
    let (root, rest) = path.split_once('/')?;
    let shipped = match root {
        "templates" => &TEMPLATES,
        "static" => &STATIC,
        _ => return None,
    };
    shipped.get_file(rest).map(include_dir::File::contents)
}

/// “fr” of “fr-CA”.
fn primary_of(language: &str) -> &str {
    language.split('-').next().unwrap_or(language)
}

fn words_path(language: &str) -> String {
    format!("static/words/{language}.ftl")
}

fn files_of(dir: &'static Dir<'static>) -> Box<dyn Iterator<Item = String>> {
    let here = dir.files().map(|file| file.path().to_string_lossy().replace('\\', "/"));
    let below = dir.dirs().flat_map(files_of);
    Box::new(here.chain(below))
}
