//! Pages of a small pack, looked at from outside: links lead somewhere, nothing a pack holds becomes
//! markup, nothing is loaded from elsewhere.

use std::collections::BTreeSet;

use super::{render_site, render_teacher_pages};
use crate::inspect::example_pack;
use crate::pack::Pack;
use crate::read::{Selection, read_pack};
use crate::render::Edition;
use crate::render::house::House;
use crate::render::no_printer::{copy_path, messages_path};
use crate::render::{
    Bundle, GATHER_SHEET, Gathered, Order, Publication, Sheet, page_path, plans_of,
};
use crate::resolve::resolve_pack;

const HOSTILE: &str = r#"
title: <script>alert(1)</script> "quoted" & 'more'
summary: An <img src=x onerror=alert(2)> and [a trap](javascript:alert(3)) and [home](https://example.org).
"#;

fn pack_of(example: &str) -> Pack {
    resolve_pack(read_pack(&example_pack(example), &Selection::All).expect("a readable pack"))
}

fn pages_of(pack: &Pack) -> Bundle {
    with_publication(pack, |publication| {
        render_site(publication).expect("the shipped templates fit")
    })
}

fn with_publication(pack: &Pack, render: impl Fn(&Publication<'_>) -> Bundle) -> Bundle {
    let house = House::new(&pack.look);
    let name = "English".to_owned();
    let language = pack.language.value.clone();
    let editions = [Edition { language, name, folder: String::new() }];
    let publication = Publication {
        pack,
        plans: plans_of(pack),
        words: house.words(&pack.language).unwrap().into(),
        house,
        editions: editions.to_vec(),
        edition: 0,
        order: Order::default(),
        gathered: Gathered::default(),
    };
    render(&publication)
}

fn html(pages: &Bundle) -> impl Iterator<Item = (&String, String)> {
    let page = |(path, bytes): (_, &Vec<u8>)| (path, String::from_utf8(bytes.clone()).unwrap());
    pages.iter().filter(|(path, _)| path.ends_with(".html")).map(page)
}

/// Every value of an attribute in a page.
fn values<'p>(page: &'p str, attribute: &str) -> Vec<&'p str> {
    let opening = format!(" {attribute}=\"");
    page.split(&opening).skip(1).filter_map(|rest| rest.split('"').next()).collect()
}

/// The path that a relative link leads to from a page.
fn target(page: &str, link: &str) -> String {
    let mut folders: Vec<&str> = page.split('/').collect();
    folders.pop();
    for step in link.split('/') {
        match step {
            ".." => assert!(folders.pop().is_some(), "{link} in {page} leaves the site"),
            name => folders.push(name),
        }
    }
    folders.join("/")
}

#[test]
fn every_link_inside_the_site_leads_somewhere() {
    let pack = pack_of("");
    let pages = pages_of(&pack);
    let sheets = pack
        .sessions
        .iter()
        .flat_map(|s| Sheet::chosen(&pack.printing).into_iter().map(|sheet| sheet.path(&s.id)));
    let mut paths: BTreeSet<String> = pages.keys().cloned().chain(sheets).collect();
    paths.insert(GATHER_SHEET.to_owned());
    paths.extend(pack.sessions.iter().flat_map(|s| [copy_path(&s.id), messages_path(&s.id)]));
    let mut followed = 0;
    for (path, page) in html(&pages) {
        let ids: BTreeSet<&str> = values(&page, "id").into_iter().collect();
        for link in values(&page, "href").into_iter().chain(values(&page, "src")) {
            if let Some(anchor) = link.strip_prefix('#') {
                assert!(ids.contains(anchor), "{path} has no {link}");
            } else if !link.contains(':') {
                let leads_to = target(path, link);
                assert!(paths.contains(&leads_to), "{link} in {path} leads to {leads_to}");
            }
            followed += 1;
        }
    }
    assert!(followed > 40, "only {followed} links were found");
}

#[test]
fn nothing_a_pack_holds_becomes_markup() {
    let pages = pages_of(&pack_of(HOSTILE));
    for (path, page) in html(&pages) {
        for forbidden in ["<script>", "<img src=x", "javascript:", " style=\"", "\" onerror"] {
            assert!(!page.contains(forbidden), "{path} holds {forbidden}");
        }
    }
    let front = String::from_utf8(pages["index.html"].clone()).unwrap();
    assert!(front.contains("&lt;script&gt;"), "the title is shown as it was written");
    assert!(front.contains(r#"href="https://example.org""#));
}

#[test]
fn what_is_for_teachers_stands_apart() {
    let pack = pack_of("");
    let families = pages_of(&pack);
    assert!(html(&families).all(|(_, page)| !page.contains("teachers")));
    let teachers = with_publication(&pack, |publication| {
        render_teacher_pages(publication, "../for families/").expect("the shipped templates fit")
    });
    let session = &pack.sessions[0].id;
    let lesson = String::from_utf8(teachers[&page_path(session)].clone()).unwrap();
    let way = format!("href=\"../../../for%20families/{}\"", page_path(session));
    assert!(lesson.contains(&way), "{way} in {lesson}");
    assert!(teachers.contains_key("index.html") && teachers.contains_key("rules.html"));
    assert!(teachers.keys().all(|path| !path.ends_with(".js")));
}

#[test]
fn a_shared_text_leads_from_the_file_it_stands_in() {
    // The note stands at the top of the pack and is shown two folders deep.
    let pack = pack_of(
        "\
# file: equipment.yaml
equipment:
  - name: marker
    instead:
      - {thing: rolled-up sock, note: \"Roll it like [this](games/pictures/hop.png).\"}
  - {name: tape measure, instead: [{thing: ruler and string}]}
",
    );
    let pages = pages_of(&pack);
    let (_, page) = html(&pages).find(|(path, _)| path.starts_with("sessions/")).unwrap();
    assert!(page.contains("href=\"../../pictures/games/pictures/hop.png\""), "{page}");
    assert!(pages.contains_key("pictures/games/pictures/hop.png"));
}
