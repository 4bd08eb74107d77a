//! Which letters the printing type has. A sign that it lacks is left out on paper, so a rule tells of it.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use skrifa::{FontRef, MetadataProvider};

use crate::render::house::shipped_file;

static PRINTED: LazyLock<BTreeSet<u32>> = LazyLock::new(|| {
    ["Andika-Regular", "HomegroundNaskh-Regular"].into_iter().flat_map(letters_of).collect()
});

fn letters_of(face: &str) -> Vec<u32> {
    let path = format!("static/type/{face}.ttf");
    let font = shipped_file(&path).expect("the program ships its type");
    let font = FontRef::new(font).expect("the shipped type is sound");
    font.charmap().mappings().map(|(letter, _)| letter).collect()
}

/// Whether a letter or sign can be printed.
pub fn can_print(letter: char) -> bool {
    let joins = matches!(letter, '\u{200c}'..='\u{200f}' | '\u{fe0e}' | '\u{fe0f}');
    letter.is_ascii() || letter.is_control() || joins || PRINTED.contains(&u32::from(letter))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_of_the_languages_around_are_printed() {
        assert!("Zażółć gęślą jaźń, ŵ ŷ, Îles, “…” – × → ½ €".chars().all(can_print));
        assert!(
            "Розминка ґ є і ї, الإحماء، التهدئة؟ جسم گرم کرنا ٹ ڈ ڑ ں ھ ے ۔".chars().all(can_print)
        );
        assert!(!can_print('🏃') && !can_print('中'));
    }
}
