//! Which keys of a file people read, and so stand in its translations.

/// Keys whose values people read.
const TEXTS: [&str; 27] = [
    "title",
    "summary",
    "objectives",
    "success",
    "safety",
    "note",
    "why",
    "how",
    "key_points",
    "see",
    "say",
    "says",
    "easier",
    "harder",
    "landing_zone",
    "stop_and_collect",
    "criteria",
    "ask",
    "answer",
    "shows",
    "alt",
    "caption",
    "unit",
    "welcome",
    "cautions",
    "contact",
    "school",
];

/// Groups that hold such keys.
const GROUPS: [&str; 15] = [
    "warm_up",
    "technique",
    "challenge",
    "stretch",
    "cool_down",
    "faults",
    "throw",
    "measure",
    "review",
    "adaptations",
    "adult",
    "film",
    "pictures",
    "figure",
    "no_school",
];

/// Whether the value of a key is text: every key of the adaptations is. What days without school are is text;
/// what a measure is, is none.
pub(crate) fn is_text(key: &str, group: &str) -> bool {
    group == "adaptations" || TEXTS.contains(&key) || (key == "what" && group == "no_school")
}

/// Whether what stands under a key is a group, or a list of groups, that hold texts.
pub(crate) fn holds_texts(key: &str) -> bool {
    GROUPS.contains(&key)
}
