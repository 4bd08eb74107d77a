//! A class → the pack of each home, the teacher’s page and sheet, and the survey.
//!
//! Homes are rendered one by one, so that memory doesn’t grow with the class. Sheets that come out alike, and
//! what all pages load, are rendered once: later homes only name where the first of them lies.

use std::collections::BTreeMap;
use std::sync::Mutex;

use super::fit_phrases::{left_out_sentences, things_list, unfit_sentences, why_phrase};
use super::home_pack::{key_of, pack_of_home, session_of_home};
use super::house::House;
use super::phrases::hold_together;
use super::print::{ClassEntry, ClassSection, ClassSheet, Press};
use super::site::{ClassRow, ClassTable, class_assets, render_class_page, render_site};
use super::{Bundle, Publication, RenderFault, Sheet};
use crate::fit::{ClassPlan, FittedHome, HomePlan, Rethink, SessionPlan};
use crate::homes::{HEADINGS, Home, HomeNeed, Reads};
use crate::pack::{Pack, Session, SessionId};
use crate::prose::plain_line;
use crate::words::{Filling, Words};

/// What all homes of a run share.
#[derive(Debug)]
pub struct ClassPress<'p> {
    pack: &'p Pack,
    sessions: Vec<&'p Session>,
    press: Press,
    words: Words,
    assets: Bundle,
    /// The folder that the sheets of a session lie in, by what tells them apart.
    known: Mutex<BTreeMap<String, String>>,
}

/// The files of one home.
#[derive(Debug, Default)]
pub struct HomeFiles {
    pub fresh: Bundle,
    /// Files that lie elsewhere already: their path, and where.
    pub repeats: Vec<(String, String)>,
    /// The sheets that are fresh: what tells them apart, and their folder.
    sheets: Vec<(String, String)>,
}

impl<'p> ClassPress<'p> {
    /// Gets everything ready that homes share.
    ///
    /// # Errors
    /// Where a file of the pack's own look can't be used.
    pub fn begin(pack: &'p Pack, sessions: Vec<&'p Session>) -> Result<Self, RenderFault> {
        let publication = Publication::of(pack)?;
        Ok(Self {
            press: Press::load(&publication.house)?,
            words: publication.house.words(&pack.language)?,
            assets: class_assets(&publication),
            known: Mutex::default(),
            pack,
            sessions,
        })
    }

    /// What all pages load; it lies at the top, and homes repeat it.
    pub fn assets(&self) -> &Bundle {
        &self.assets
    }

    /// The pack of one home, below a folder named by its code.
    ///
    /// # Errors
    /// Where a template of the pack's own look can't be used.
    pub fn render_home(&self, home: &Home, plan: &HomePlan) -> Result<HomeFiles, RenderFault> {
        let fitted: Vec<(&Session, &FittedHome)> = self.fitted(plan).collect();
        if fitted.is_empty() {
            return Ok(HomeFiles::default());
        }
        let language = home.language.as_ref().unwrap_or(&self.pack.language.value);
        let translated = self.pack.in_language(language);
        let words = House::new(&self.pack.look).words(language)?;
        let is_large = home.needs.contains(&HomeNeed::LowVision);
        let as_done = |(session, fitted): &(&Session, &FittedHome)| {
            let own = translated.sessions.iter().find(|own| own.id == session.id);
            let session = session_of_home(own.map_or(*session, |own| own), fitted, home, &words);
            // Sheets are alike only in one language and size.
            let key = format!("{language} {is_large} {}", key_of(&session, fitted));
            (session, key)
        };
        let (sessions, keys): (Vec<Session>, Vec<String>) = fitted.iter().map(as_done).unzip();
        let ids: Vec<SessionId> = sessions.iter().map(|session| session.id.clone()).collect();
        let folders: Vec<Option<String>> = keys.iter().map(|key| self.folder_of(key)).collect();
        let pack = pack_of_home(&translated, sessions, home);
        let publication = Publication::of(&pack)?;
        let is_new = |id: &SessionId| ids.iter().zip(&folders).any(|(i, f)| i == id && f.is_none());
        let mut bundle = render_site(&publication)?;
        bundle.append(&mut self.press.render(&publication, &is_new).0);
        let mut files = self.sort_out(&home.code, bundle);
        for ((id, key), folder) in ids.iter().zip(keys).zip(folders) {
            let own = home.code.value.clone();
            match folder {
                None => files.sheets.push((key, own)),
                Some(other) => {
                    files.repeats.extend(Sheet::chosen(&pack.printing).iter().map(|sheet| {
                        let path = sheet.path(id);
                        (format!("{own}/{path}"), format!("{other}/{path}"))
                    }));
                }
            }
        }
        Ok(files)
    }

    /// Takes note that the files of a home have been written, so that others may repeat them.
    pub fn remember(&self, files: HomeFiles) {
        self.known().extend(files.sheets);
    }

    fn known(&self) -> std::sync::MutexGuard<'_, BTreeMap<String, String>> {
        self.known.lock().unwrap_or_else(std::sync::PoisonError::into_inner)
    }

    fn folder_of(&self, key: &str) -> Option<String> {
        self.known().get(key).cloned()
    }

    /// Tells what is the home’s own from what lies at the top already.
    fn sort_out(&self, code: &str, bundle: Bundle) -> HomeFiles {
        let mut files = HomeFiles::default();
        for (path, bytes) in bundle {
            let to = format!("{code}/{path}");
            if self.assets.get(&path) == Some(&bytes) {
                files.repeats.push((to, path));
            } else {
                files.fresh.insert(to, bytes);
            }
        }
        files
    }

    fn fitted<'h>(
        &'h self,
        plan: &'h HomePlan,
    ) -> impl Iterator<Item = (&'p Session, &'h FittedHome)> {
        self.sessions.iter().zip(&plan.sessions).filter_map(|(session, plan)| match plan {
            SessionPlan::Fits(fitted) => Some((*session, fitted)),
            SessionPlan::Unfit { .. } => None,
        })
    }

    /// `teacher.html` and `teacher.pdf`.
    ///
    /// # Errors
    /// Where a template of the pack's own look can't be used.
    pub fn render_teacher(&self, homes: &[Home], plan: &ClassPlan) -> Result<Bundle, RenderFault> {
        let words = &self.words;
        let mut sheet = ClassSheet {
            kind: words.say("fit-teacher"),
            title: plain_line(&self.pack.title),
            lead: words.say_with("fit-teacher-lead", &[("count", count_of(homes.len()))]),
            sections: vec![self.lend_section(homes, plan), self.rethink_section(homes, plan)],
        };
        let each = homes.iter().zip(&plan.homes).map(|(home, plan)| self.home_section(home, plan));
        sheet.sections.extend(each);
        let table = self.table(homes, plan);
        self.page_and_sheet(("teacher", "teacher.html", "teacher.pdf"), &sheet, &table)
    }

    fn page_and_sheet(
        &self,
        (here, page, paper): (&'static str, &'static str, &'static str),
        sheet: &ClassSheet,
        table: &ClassTable,
    ) -> Result<Bundle, RenderFault> {
        let publication = Publication::of(self.pack)?;
        Ok(Bundle::from([
            (page.to_owned(), render_class_page(&publication, (here, paper), sheet, table)?),
            (paper.to_owned(), self.press.render_class(self.pack, &self.words, sheet)),
        ]))
    }

    fn lend_section(&self, homes: &[Home], plan: &ClassPlan) -> ClassSection {
        let words = &self.words;
        let all = plan
            .lend
            .iter()
            .map(|things| ClassEntry::Tick(things_list(std::slice::from_ref(things))));
        let lent = homes.iter().zip(&plan.homes).filter(|(_, plan)| !plan.lend.is_empty());
        let each = lent.map(|(home, plan)| ClassEntry::Told {
            title: home.code.value.clone(),
            lines: vec![things_list(&plan.lend)],
        });
        let entries: Vec<ClassEntry> = all.chain(each).collect();
        let is_least = plan.homes.iter().all(|home| home.is_least);
        let about = match (entries.is_empty(), is_least) {
            (true, _) => words.say("fit-lend-nothing"),
            (false, true) => words.say("fit-lend-how"),
            (false, false) => {
                format!("{} {}", words.say("fit-lend-how"), words.say("things-once-unproven"))
            }
        };
        ClassSection { heading: words.say("fit-lend"), about, entries }
    }

    fn rethink_section(&self, homes: &[Home], plan: &ClassPlan) -> ClassSection {
        let words = &self.words;
        let entry = |rethink: &Rethink| {
            let session = self.sessions[rethink.session];
            let title = plain_line(&session.title);
            let title = match rethink.part {
                Some(part) => format!("{title}: {}", plain_line(&session.parts[part].title)),
                None => title,
            };
            let with = [("count", count_of(rethink.homes)), ("of", count_of(homes.len()))];
            let mut lines = vec![words.say_with("fit-rethink-homes", &with)];
            if let Some(why) = &rethink.why {
                let why = why_phrase(why, session, words);
                lines.push(words.say_with("fit-rethink-why", &[("why", Filling::Text(&why))]));
            }
            ClassEntry::Told { title, lines }
        };
        let entries: Vec<ClassEntry> = plan.rethink.iter().map(entry).collect();
        let about = if entries.is_empty() { "fit-rethink-nothing" } else { "fit-rethink-how" };
        ClassSection { heading: words.say("fit-rethink"), about: words.say(about), entries }
    }

    fn home_section(&self, home: &Home, plan: &HomePlan) -> ClassSection {
        let words = &self.words;
        let entries = self.sessions.iter().zip(&plan.sessions);
        let entries = entries.map(|(session, plan)| self.session_entry(session, plan));
        let with = [("code", Filling::Text(&home.code))];
        ClassSection {
            heading: words.say_with("fit-home-heading", &with),
            about: self.about_home(home),
            entries: entries.collect(),
        }
    }

    fn about_home(&self, home: &Home) -> String {
        let words = &self.words;
        let minutes = hold_together(&home.minutes.to_string());
        let mut said =
            vec![words.say_with("fit-home-minutes", &[("time", Filling::Text(&minutes))])];
        said.extend(home.needs.iter().map(|need| words.say(need_key(*need))));
        said.push(words.say(if home.reads == Reads::Paper {
            "fit-reads-paper"
        } else {
            "fit-reads-phone"
        }));
        if let Some(language) =
            home.language.as_ref().filter(|own| **own != self.pack.language.value)
        {
            said.push(
                words.say_with("fit-home-language", &[("language", Filling::Text(language))]),
            );
        }
        format!("{}.", said.join(", "))
    }

    fn session_entry(&self, session: &Session, plan: &SessionPlan) -> ClassEntry {
        let words = &self.words;
        let title = plain_line(&session.title);
        match plan {
            SessionPlan::Unfit { why, one_thing } => {
                let lines = unfit_sentences(why, one_thing.as_ref(), session, words);
                let not = words.say("fit-not");
                ClassEntry::Told { title: format!("{title} – {not}"), lines }
            }
            SessionPlan::Fits(fitted) => {
                let time = hold_together(&fitted.choice.total().to_string());
                ClassEntry::Told {
                    title: format!("{title} – {time}"),
                    lines: self.fitted_lines(session, fitted),
                }
            }
        }
    }

    /// What differs from the session as written, and what serves it.
    fn fitted_lines(&self, session: &Session, fitted: &FittedHome) -> Vec<String> {
        let words = &self.words;
        let mut lines: Vec<String> = left_out_sentences(&fitted.left_out, session, words);
        for (part, version) in session.parts.iter().zip(&fitted.versions) {
            let Some(other) = version.and_then(|version| version.checked_sub(1)) else { continue };
            let suits = &part.alternatives[other].suits;
            let key = |suited: &crate::place::Placed<crate::read::words::Suited>| {
                words.say(&format!("fit-version-{}", suited.word().replace(' ', "-")))
            };
            let name = suits.iter().map(key).collect::<Vec<_>>().join(", ");
            lines.push(format!("{}: {name}.", plain_line(&part.title)));
        }
        let served = session.needs.iter().zip(&fitted.served);
        let stands_in = served.filter(|(need, served)| {
            !served.is_empty() && served.iter().any(|thing| thing.name != need.name.value.0)
        });
        let things: Vec<String> = stands_in
            .map(|(need, served)| {
                let (things, need) = (things_list(served), plain_line(&need.name));
                let with = [("things", Filling::Text(&things)), ("need", Filling::Text(&need))];
                words.say_with("things-as", &with)
            })
            .collect();
        if !things.is_empty() {
            let list = things.join(", ");
            lines.push(words.say_with("fit-uses", &[("list", Filling::Text(&list))]));
        }
        if lines.is_empty() {
            lines.push(words.say("fit-as-written"));
        }
        lines
    }

    fn table(&self, homes: &[Home], plan: &ClassPlan) -> ClassTable {
        let cell = |session: &Session, plan: &SessionPlan| match plan {
            SessionPlan::Unfit { .. } => "–".to_owned(),
            SessionPlan::Fits(fitted) => {
                let minutes = fitted.choice.total().seconds().div_ceil(60);
                let (kept, all) = (fitted.choice.kept(), session.parts.len());
                let with = [
                    ("minutes", Filling::Count(minutes)),
                    ("kept", count_of(kept)),
                    ("all", count_of(all)),
                ];
                self.words.say_with(if kept == all { "fit-cell-whole" } else { "fit-cell" }, &with)
            }
        };
        let row = |(home, plan): (&Home, &HomePlan)| ClassRow {
            code: home.code.value.clone(),
            href: self.fitted(plan).next().map(|_| format!("{}/index.html", home.code.value)),
            cells: self.sessions.iter().zip(&plan.sessions).map(|(s, p)| cell(s, p)).collect(),
        };
        ClassTable {
            heads: self.sessions.iter().map(|session| plain_line(&session.title)).collect(),
            rows: homes.iter().zip(&plan.homes).map(row).collect(),
        }
    }

    /// `survey.html`, `survey.pdf` and `survey.csv`: what a class list asks, from the pack’s own things.
    ///
    /// # Errors
    /// Where a template of the pack's own look can't be used.
    pub fn render_survey(&self, plan: &ClassPlan) -> Result<Bundle, RenderFault> {
        let words = &self.words;
        let fill =
            |keys: &[&str]| keys.iter().map(|key| ClassEntry::Fill(words.say(key))).collect();
        let tick =
            |keys: &[&str]| keys.iter().map(|key| ClassEntry::Tick(words.say(key))).collect();
        let section = |heading: &str, about: &str, entries: Vec<ClassEntry>| ClassSection {
            heading: words.say(heading),
            about: if about.is_empty() { String::new() } else { words.say(about) },
            entries,
        };
        let surfaces = crate::read::words::Surface::WORDS.iter().map(|word| {
            ClassEntry::Tick(words.say(&format!("surface-{}", word.replace(' ', "-"))))
        });
        let mut floor: Vec<ClassEntry> =
            fill(&["fit-ask-length", "fit-ask-width", "fit-ask-height"]);
        floor.push(ClassEntry::Tick(words.say("fit-ask-outdoors")));
        floor.extend(surfaces);
        let cupboard = &plan.cupboard;
        let mut things: Vec<&str> = cupboard
            .names()
            .filter(|name| cupboard.find(name).is_some_and(|thing| !cupboard.is_household(thing)))
            .collect();
        things.sort_unstable();
        let things = things.into_iter().map(|name| ClassEntry::Count(plain_line(name))).collect();
        let sheet = ClassSheet {
            kind: words.say("fit-survey"),
            title: words.say("fit-survey-title"),
            lead: words.say("fit-survey-lead"),
            sections: vec![
                section("fit-ask-code", "fit-ask-code-how", fill(&["fit-ask-code-line"])),
                section("fit-ask-time", "", fill(&["fit-ask-minutes", "fit-ask-helpers"])),
                section(
                    "fit-ask-needs",
                    "",
                    tick(&["fit-ask-seated", "fit-ask-low-vision", "fit-ask-quiet"]),
                ),
                section("fit-ask-reads", "", {
                    let mut entries: Vec<ClassEntry> = tick(&["fit-ask-paper", "fit-ask-phone"]);
                    entries.push(ClassEntry::Fill(words.say("fit-ask-language")));
                    entries
                }),
                section("fit-ask-floor", "fit-ask-floor-how", floor.clone()),
                section("fit-ask-floor-2", "fit-ask-floor-2-how", floor),
                section("fit-ask-things", "fit-ask-things-how", things),
            ],
        };
        let none = ClassTable::default();
        let mut bundle =
            self.page_and_sheet(("survey", "survey.html", "survey.pdf"), &sheet, &none)?;
        bundle.insert("survey.csv".into(), format!("{}\r\n", HEADINGS.join(",")).into_bytes());
        Ok(bundle)
    }
}

const fn need_key(need: HomeNeed) -> &'static str {
    match need {
        HomeNeed::Seated => "fit-version-seated",
        HomeNeed::LowVision => "fit-version-low-vision",
        HomeNeed::Quiet => "fit-version-quiet",
    }
}

fn count_of(number: usize) -> Filling<'static> {
    Filling::Count(u32::try_from(number).unwrap_or(u32::MAX))
}
