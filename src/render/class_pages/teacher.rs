//! The teacher’s page and sheet about a class: what to lend, what to rethink, and each home.

use super::ClassPress;
use crate::fit::{ClassPlan, FittedHome, HomePlan, Rethink, SessionPlan};
use crate::homes::{Home, HomeNeed, Reads};
use crate::pack::Session;
use crate::prose::plain_line;
use crate::render::fit_phrases::{left_out_sentences, things_list, unfit_sentences, why_phrase};
use crate::render::house::House;
use crate::render::phrases::hold_together;
use crate::render::print::{ClassEntry, ClassSection, ClassSheet};
use crate::render::site::{ClassRow, ClassTable};
use crate::render::{Bundle, RenderFault};
use crate::words::Filling;

impl ClassPress<'_> {
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
            let name = self.language_name(language);
            said.push(words.say_with("fit-home-language", &[("language", Filling::Text(&name))]));
        }
        format!("{}.", said.join(", "))
    }

    /// What a language calls itself, where its labels are known; else its code.
    fn language_name(&self, language: &str) -> String {
        let house = House::new(&self.pack.look);
        let known = house.has_words(language).then(|| house.kept_words(language).ok()).flatten();
        known.map_or_else(|| language.to_owned(), |words| words.say("language-name"))
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
