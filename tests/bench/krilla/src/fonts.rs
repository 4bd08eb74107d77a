//! The faces of `static/type`, as parley and as krilla know them.

use std::collections::BTreeMap;
use std::sync::Arc;

use krilla::text::Font;
use parley::FontContext;
use parley::fontique::{Blob, Collection, CollectionOptions, SourceCache};

pub struct Fonts {
    pub context: FontContext,
    /// By the number parley gives the file.
    pub faces: BTreeMap<u64, Font>,
}

impl Fonts {
    pub fn load(folder: &str) -> Self {
        let options = CollectionOptions { shared: false, system_fonts: false };
        let mut collection = Collection::new(options);
        let mut faces = BTreeMap::new();
        for face in ["Regular", "Bold", "Italic"] {
            let bytes = std::fs::read(format!("{folder}/Andika-{face}.ttf")).expect("a face");
            let font = Font::new(bytes.clone().into(), 0).expect("a sound face");
            let blob = Blob::new(Arc::new(bytes));
            faces.insert(blob.id(), font);
            collection.register_fonts(blob, None);
        }
        let context = FontContext { collection, source_cache: SourceCache::default() };
        Self { context, faces }
    }
}
