//! The survey that asks families what a class list holds.

use super::ClassPress;
use crate::fit::ClassPlan;
use crate::homes::HEADINGS;
use crate::prose::plain_line;
use crate::render::print::{ClassEntry, ClassSection, ClassSheet};
use crate::render::site::ClassTable;
use crate::render::{Bundle, RenderFault};

impl ClassPress<'_> {
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
