//! How many syllables a word has by the rules of English spelling: its groups of vowels, less those
//! that are silent, and more where two vowels that stand together are both heard.
//!
//! The rules are our own, made in the usual way; how often they are right is measured against the CMU
//! Pronouncing Dictionary in `tests/outside/check_reading.py`.

/// The longest word that is looked at; what is longer is cut off.
const LONGEST: usize = 64;

/// The syllables of a lower-case word without apostrophes; at least one.
pub fn ruled_syllables(word: &str) -> u32 {
    let (mut room, mut length) = ([0; LONGEST], 0);
    for letter in word.chars().take(LONGEST) {
        room[length] = plain_letter(letter);
        length += 1;
    }
    let letters = &room[..length];
    let vowels = vowels_of(letters);
    let more = groups(vowels) + heard_apart(letters, vowels) + ends_in_hum(letters);
    let less = silent_ending(letters) + silent_inside(letters);
    more.saturating_sub(less).max(1)
}

/// A letter without its accent. An e with one is never silent, so it becomes a capital.
fn plain_letter(letter: char) -> u8 {
    match letter {
        'à' | 'á' | 'â' | 'ã' | 'ä' | 'å' => b'a',
        'è' | 'é' | 'ê' | 'ë' => b'E',
        'ì' | 'í' | 'î' | 'ï' => b'i',
        'ò' | 'ó' | 'ô' | 'õ' | 'ö' | 'ø' | 'œ' => b'o',
        'ù' | 'ú' | 'û' | 'ü' => b'u',
        other if other.is_ascii_lowercase() => u8::try_from(other).unwrap_or(b'x'),
        _ => b'x',
    }
}

/// Whether the letter at `at` stands for a vowel here: not the u of “queen” and “guess”, and not the
/// y of “yes” and “player”.
fn is_vowel(letters: &[u8], at: usize) -> bool {
    let opens = |at: usize| letters.get(at).is_some_and(|l| b"aeiouE".contains(l));
    let before = at.checked_sub(1).map(|before| letters[before]);
    match letters[at] {
        b'u' => !(before == Some(b'q') || (before == Some(b'g') && opens(at + 1))),
        b'y' => !(opens(at + 1) && before.is_none_or(|b| b"aeiou".contains(&b))),
        _ => opens(at),
    }
}

/// Where the vowels stand: the first letter is the lowest bit.
fn vowels_of(letters: &[u8]) -> u64 {
    (0..letters.len()).filter(|at| is_vowel(letters, *at)).fold(0, |mask, at| mask | (1 << at))
}

/// Runs of vowels, counted at their beginnings.
fn groups(vowels: u64) -> u32 {
    (vowels & !(vowels << 1)).count_ones()
}

/// Neighbouring vowels that are heard apart: “qui-et”, “go-ing”, “sci-ence”, but “pa-tient”.
fn heard_apart(letters: &[u8], vowels: u64) -> u32 {
    let (mut pairs, mut apart) = (vowels & (vowels >> 1), 0);
    while pairs != 0 {
        let at = pairs.trailing_zeros() as usize;
        pairs &= pairs - 1;
        let before = at.checked_sub(1).map_or(b' ', |before| letters[before]);
        apart += u32::from(parts(before, letters[at], letters[at + 1], &letters[at + 2..]));
    }
    apart
}

/// Whether two vowels are heard apart between the letter before them and those after.
fn parts(before: u8, first: u8, second: u8, after: &[u8]) -> bool {
    let goes_on = |with: &[&str]| with.iter().any(|next| after.starts_with(next.as_bytes()));
    let ends = |with: &[&str]| with.iter().any(|end| after == end.as_bytes());
    match (first, second) {
        (b'i', b'a') => !b"cts".contains(&before),
        (b'i', b'o') => {
            !(b"ctsgx".contains(&before) || (b"ln".contains(&before) && goes_on(&["n"])))
        }
        (b'i', b'e') => {
            goes_on(&["t"])
                || ends(&["r", "rs", "st"])
                || (goes_on(&["nc", "nt"]) && !b"ct".contains(&before))
        }
        (b'e', b'o') => before != b'g',
        (b'u', b'e') => goes_on(&["l", "n", "t"]),
        (b'u', b'i') => goes_on(&["ty", "ti", "d", "n", "sh"]),
        (b'o', b'i') => ends(&["ng", "c", "st", "ngs"]),
        (b'o', b'e') => goes_on(&["m", "t"]),
        (b'e', b'i') => ends(&["ng", "ngs"]),
        (b'a', b'i') => ends(&["c"]),
        (b'e', b'u') => ends(&["m", "ms", "s"]),
        (b'y', b'e') => !ends(&["", "s", "d"]),
        (b'i', b'i' | b'u')
        | (b'u', b'a' | b'o')
        | (b'a', b'o')
        | (b'y', b'i' | b'a' | b'o')
        | (_, b'E')
        | (b'E', _) => true,
        _ => false,
    }
}

/// “pris-m”, “rhyth-m”: a syllable without a vowel.
fn ends_in_hum(letters: &[u8]) -> u32 {
    let letters = letters.strip_suffix(b"s").unwrap_or(letters);
    u32::from(letters.ends_with(b"sm") || letters.ends_with(b"thm"))
}

/// The e of “hope”, “hopes” and “hoped”, but not of “table”, “metre”, “boxes” and “landed”.
fn silent_ending(letters: &[u8]) -> u32 {
    let is_silent = match letters {
        [stem @ .., b'e'] => ends_closed(stem) && !keeps_sound(stem),
        [stem @ .., b'e', b's'] => ends_closed(stem) && !keeps_sound(stem) && !hisses(stem),
        [stem @ .., b'e', b'd'] => {
            ends_closed(stem)
                && !keeps_sound(stem)
                && !stem.ends_with(b"t")
                && !stem.ends_with(b"d")
        }
        _ => false,
    };
    u32::from(is_silent)
}

/// Whether a stem ends in a consonant; the y of “play” is one where an ending follows.
fn ends_closed(stem: &[u8]) -> bool {
    match stem {
        [.., before, b'y'] => b"aeiou".contains(before),
        [.., last] => !b"aeiouyE".contains(last),
        [] => false,
    }
}

fn hisses(stem: &[u8]) -> bool {
    stem.last().is_some_and(|last| b"cgsxz".contains(last))
        || stem.ends_with(b"ch")
        || stem.ends_with(b"sh")
}

/// “ta-bl(e)”, “me-tr(e)”, “fi-br(e)”: consonants that can’t be said without a vowel.
fn keeps_sound(stem: &[u8]) -> bool {
    match stem {
        [.., before, b'l'] => !b"aeiouylrwE".contains(before),
        [.., b't' | b'b', b'r'] => true,
        _ => false,
    }
}

/// The e of “safely” and “movement”, and of “something” and “homework”.
fn silent_inside(letters: &[u8]) -> u32 {
    let is_before = |ending: &&str| match letters.strip_suffix(ending.as_bytes()) {
        Some([stem @ .., b'e']) => ends_closed(stem) && !keeps_sound(stem) && vowels_of(stem) > 0,
        _ => false,
    };
    let is_after = |opening: &&str| {
        letters.strip_prefix(opening.as_bytes()).is_some_and(|rest| {
            rest.first().is_some_and(|next| !b"aeiouyrE".contains(next)) && vowels_of(rest) > 0
        })
    };
    u32::from(ENDINGS.iter().any(is_before) || OPENINGS.iter().any(is_after))
}

/// Endings that leave an e before them silent.
const ENDINGS: [&str; 12] = [
    "ly", "ment", "ments", "ful", "fully", "fulness", "less", "ness", "some", "thing", "ty",
    "where",
];
/// First halves of compounds that keep their e silent.
const OPENINGS: [&str; 10] =
    ["some", "home", "time", "life", "there", "where", "fore", "ware", "fire", "side"];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_rules_alone_know_the_usual_spellings() {
        let spoken = [
            ("cat", 1),
            ("hope", 1),
            ("hopes", 1),
            ("hoped", 1),
            ("landed", 2),
            ("boxes", 2),
            ("table", 2),
            ("tables", 2),
            ("handled", 2),
            ("metre", 2),
            ("fibres", 2),
            ("safely", 2),
            ("movement", 2),
            ("queen", 1),
            ("guess", 1),
            ("player", 2),
            ("yes", 1),
            ("going", 2),
            ("quiet", 2),
            ("easiest", 3),
            ("patient", 2),
            ("audience", 3),
            ("station", 2),
            ("stadium", 3),
            ("flying", 2),
            ("rhythm", 2),
            ("prism", 2),
            ("café", 2),
            ("nth", 1),
            ("", 1),
        ];
        for (word, syllables) in spoken {
            assert_eq!(ruled_syllables(word), syllables, "{word}");
        }
    }
}
