//! A session's id: made from the place of its file, so that it stays the same while the file does.

use std::fmt;

/// Lower-case letters, digits and hyphens, with `/` between folders: `athletics/standing-jump`.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct SessionId(String);

impl SessionId {
    /// The id of the session in the file at `path` ("Athletics/Standing jump.yaml").
    pub fn of_path(path: &str) -> Self {
        let stem = path.rsplit_once('.').map_or(path, |(stem, _)| stem);
        let parts: Vec<String> =
            stem.split('/').map(plain_name).filter(|part| !part.is_empty()).collect();
        Self(if parts.is_empty() { "session".into() } else { parts.join("/") })
    }

    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// How many folders deep it lies.
    pub fn depth(&self) -> usize {
        self.0.matches('/').count()
    }
}

/// Lower case, runs of anything but letters and digits as one hyphen.
fn plain_name(name: &str) -> String {
    let spaced: String = name
        .chars()
        .flat_map(char::to_lowercase)
        .map(|c| if c.is_alphanumeric() { c } else { ' ' })
        .collect();
    spaced.split_whitespace().collect::<Vec<_>>().join("-")
}

impl fmt::Display for SessionId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ids_come_from_the_place_of_the_file() {
        let id = |path| SessionId::of_path(path).to_string();
        assert_eq!(id("athletics/standing-jump.yaml"), "athletics/standing-jump");
        assert_eq!(id("Year 4/Jump & turn.yml"), "year-4/jump-turn");
        assert_eq!(id("../../etc/passwd.yaml"), "etc/passwd");
        assert_eq!(id("….yaml"), "session");
    }
}
