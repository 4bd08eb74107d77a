//! Two wordings of one text: which words went and which came, by their longest common run of words
//! (the usual table of a longest common subsequence).

/// Longer texts are shown whole: the table grows with the product of their words.
const MOST_WORDS: usize = 800;

/// Some words of a text in a row.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Piece {
    pub words: String,
    /// They stand in the other wording too.
    pub is_kept: bool,
}

/// The pieces of the wording before, and of that now.
pub fn mark_words(before: &str, now: &str) -> (Vec<Piece>, Vec<Piece>) {
    let (old, new): (Vec<&str>, Vec<&str>) =
        (before.split_whitespace().collect(), now.split_whitespace().collect());
    if old.len() > MOST_WORDS || new.len() > MOST_WORDS {
        let whole = |text: &str| vec![Piece { words: text.to_owned(), is_kept: false }];
        return (whole(before), whole(now));
    }
    let pairs = common(&old, &new, |a, b| a == b);
    let kept_old: Vec<usize> = pairs.iter().map(|pair| pair.0).collect();
    let kept_new: Vec<usize> = pairs.iter().map(|pair| pair.1).collect();
    (pieces(&old, &kept_old), pieces(&new, &kept_new))
}

/// So many words that stayed are shown beside those that changed.
const BESIDE: usize = 6;

/// The same pieces with “…” for what stayed and stands far from any change.
pub fn shorten(pieces: Vec<Piece>) -> Vec<Piece> {
    let last = pieces.len().saturating_sub(1);
    let shorter = |(at, piece): (usize, Piece)| {
        let words: Vec<&str> = piece.words.split_whitespace().collect();
        let (before, after) =
            (if at == 0 { 0 } else { BESIDE }, if at == last { 0 } else { BESIDE });
        if !piece.is_kept || words.len() <= before + after + BESIDE {
            return piece;
        }
        let (head, tail) = (&words[..before], &words[words.len() - after..]);
        let shown: Vec<&str> = head.iter().chain(&["…"]).chain(tail).copied().collect();
        Piece { words: shown.join(" "), is_kept: true }
    };
    pieces.into_iter().enumerate().map(shorter).collect()
}

fn pieces(words: &[&str], kept: &[usize]) -> Vec<Piece> {
    let mut pieces: Vec<Piece> = Vec::new();
    for (at, word) in words.iter().enumerate() {
        let is_kept = kept.binary_search(&at).is_ok();
        match pieces.last_mut() {
            Some(last) if last.is_kept == is_kept => {
                last.words.push(' ');
                last.words.push_str(word);
            }
            _ => pieces.push(Piece { words: (*word).to_owned(), is_kept }),
        }
    }
    pieces
}

/// The indices of a longest common subsequence, in order.
pub(super) fn common<T>(
    old: &[T],
    new: &[T],
    same: impl Fn(&T, &T) -> bool,
) -> Vec<(usize, usize)> {
    let wide = new.len() + 1;
    let mut longest = vec![0_u32; (old.len() + 1) * wide];
    for at in (0..old.len()).rev() {
        for to in (0..new.len()).rev() {
            longest[at * wide + to] = if same(&old[at], &new[to]) {
                longest[(at + 1) * wide + to + 1] + 1
            } else {
                longest[(at + 1) * wide + to].max(longest[at * wide + to + 1])
            };
        }
    }
    let (mut at, mut to, mut pairs) = (0, 0, Vec::new());
    while at < old.len() && to < new.len() {
        if same(&old[at], &new[to]) {
            pairs.push((at, to));
            (at, to) = (at + 1, to + 1);
        } else if longest[(at + 1) * wide + to] >= longest[at * wide + to + 1] {
            at += 1;
        } else {
            to += 1;
        }
    }
    pairs
}

/// Whether two wordings differ in points, spaces and capitals alone.
pub fn is_small_correction(before: &str, now: &str) -> bool {
    let bare = |text: &str| -> String {
        text.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_lowercase).collect()
    };
    bare(before) == bare(now)
}

/// How alike two texts are, in per cent of their words.
pub(super) fn likeness(before: &str, now: &str) -> usize {
    let (old, new): (Vec<&str>, Vec<&str>) =
        (before.split_whitespace().collect(), now.split_whitespace().collect());
    if old.len() > MOST_WORDS || new.len() > MOST_WORDS {
        return 0;
    }
    let both = common(&old, &new, |a, b| a == b).len();
    (200 * both).checked_div(old.len() + new.len()).unwrap_or(100)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn changed_words_are_found() {
        let (before, now) = mark_words("Hop twice and hold.", "Hop three times and hold.");
        let shown = |pieces: &[Piece]| -> Vec<String> {
            pieces
                .iter()
                .map(|p| if p.is_kept { p.words.clone() } else { format!("[{}]", p.words) })
                .collect()
        };
        assert_eq!(shown(&before), ["Hop", "[twice]", "and hold."]);
        assert_eq!(shown(&now), ["Hop", "[three times]", "and hold."]);
        let long = "a b c d e f g h i j k l m n o p".to_owned();
        let kept = Piece { words: long, is_kept: true };
        let changed = Piece { words: "x".into(), is_kept: false };
        let short = shorten(vec![kept.clone(), changed, kept]);
        assert_eq!(short[0].words, "… k l m n o p");
        assert_eq!(short[2].words, "a b c d e f …");
        assert!(is_small_correction("Hop, hold", "hop hold."));
        assert!(!is_small_correction("Hop 2", "Hop 3"));
    }
}
