//! What a licence asks of those who pass a session on, by its SPDX name.
//!
//! Source: SPDX licence list for the names; Creative Commons legal code 4.0 for the terms.

/// A term beyond naming the maker.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Term {
    NonCommercial,
    /// It may be passed on only as it is.
    NoDerivatives,
    /// What is made of it goes under the same licence.
    ShareAlike,
}

/// The terms that a Creative Commons name carries; none for any other licence.
pub fn terms_of(licence: &str) -> Vec<Term> {
    let name = licence.to_uppercase().replace(' ', "-");
    if !name.starts_with("CC-") {
        return Vec::new();
    }
    let words =
        [("NC", Term::NonCommercial), ("ND", Term::NoDerivatives), ("SA", Term::ShareAlike)];
    words
        .into_iter()
        .filter(|(word, _)| name.split('-').any(|part| part == *word))
        .map(|(_, term)| term)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_letters_of_a_name_are_its_terms() {
        assert_eq!(terms_of("CC-BY-4.0"), []);
        assert_eq!(terms_of("CC BY-NC-SA 4.0"), [Term::NonCommercial, Term::ShareAlike]);
        assert_eq!(terms_of("CC-BY-ND-4.0"), [Term::NoDerivatives]);
        assert_eq!(terms_of("OGL-UK-3.0"), []);
    }
}
