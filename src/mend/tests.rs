use super::mend_text;
use crate::read::session_file::SessionDoc;

fn mend(text: &str) -> (String, Vec<String>) {
    let mended = mend_text(text, Some(&SessionDoc::GROUP));
    let changes = mended.changes.iter().map(|c| format!("{}: {}", c.line, c.says)).collect();
    (mended.text, changes)
}

#[test]
fn units_lists_spaces_and_order_are_mended_and_comments_stay() {
    let text = "\
# head of the file
summary: One line.   \n\
title: Hop   # its name
ages: 8 - 11
minutes: 20
activity: games

# what is needed
equipment:
  - count: 2   # two of them
    need: marker
    for: warm_up
  - {for: [warm_up,technique], count: 3, need: cone}
space: {width: 2m, length: 4 metres}
warm_up:
  time: {explain: 90 sec,work: 30s}
  # said to the child
  how: |
    Walk.  \n    \n    # not a comment
  title: Walk
";
    let (mended, changes) = mend(text);
    let wanted = "\
# head of the file
title: Hop   # its name
summary: One line.
ages: 8-11
minutes: 20
activity: games

# what is needed
equipment:
  - need: marker
    count: 2   # two of them
    for: [warm_up]
  - {need: cone, count: 3, for: [warm_up, technique]}
space: {length: 4 m, width: 2 m}
warm_up:
  title: Walk
  time: {explain: 90 s, work: 30 s}
  # said to the child
  how: |
    Walk.  \n
    # not a comment
";
    assert_eq!(mended, wanted, "{changes:#?}");
    assert!(changes.contains(&"4: wrote “8 - 11” as “8-11”".to_owned()), "{changes:#?}");
    assert!(changes.contains(&"16: wrote “90 sec” as “90 s”".to_owned()), "{changes:#?}");
    assert_eq!(mend(wanted), (wanted.to_owned(), Vec::new()));
}

#[test]
fn other_line_ends_are_kept() {
    let (mended, _) = mend("summary: One.\r\ntitle: Hop\r\nages: 8 - 11  \r\n");
    assert_eq!(mended, "title: Hop\r\nsummary: One.\r\nages: 8-11\r\n");
}

#[test]
fn what_is_not_certain_is_left() {
    for text in [
        "titel: Hop\nsummary: One.\nages: 8-11\n",
        "title: Hop\n\tages: 8 - 11\n",
        "minutes: about 20\n",
        "safety: Keep off, and mind the cat.\n",
        "title: [unclosed\n",
        "space: &room {length: 4 m, width: 2 m}\n",
    ] {
        assert_eq!(mend(text), (text.to_owned(), Vec::new()), "{text}");
    }
}
