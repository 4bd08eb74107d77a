//! The content of the cards around the parts of a session: what to know first, what a helper looks for, and how to make
//! it fit, as strips that may go on on another card.

use super::card::{Said, fault_entry, pictures};
use super::card_type::CardType;
use super::scan::scan_codes;
use super::sheets::{SheetSource, one};
use super::strip::{Column, Seat};
use crate::prose::{Run, plain_line, read_blocks, read_line};
use crate::render::phrases::colon;
use crate::render::plan_phrases::{slot_name, slot_sentence};
use crate::words::Filling;

/// The card that comes first: what the session is, what to gather and what to take care of.
pub fn opening_said(column: &mut Column<'_, '_>, source: &SheetSource<'_>, kind: CardType) -> Said {
    let (body, session) = (kind.words(), source.session);
    column.words(&read_line(&session.summary), body, Seat::default());
    scan_codes(column, source, (kind.label(), kind.small()));
    listed(column, (source, "success", kind), session.success.iter().map(|line| read_line(line)));
    let front = std::mem::take(&mut column.strips);
    let needs = session.needs.iter();
    let needs = needs.map(|need| one(crate::render::phrases::need_name(need, source.words)));
    listed(column, (source, "things", kind), needs);
    let things = std::mem::take(&mut column.strips);
    let cautions = session.safety.iter().flat_map(|text| read_blocks(text));
    listed(column, (source, "cautions", kind), cautions.map(|block| block.runs));
    pictures(column, &session.pictures, source, kind);
    column.gap(kind.gap(6.0));
    column.words(&one(source.words.say("cards-see-guide")), body, Seat::default());
    let either = vec![things, std::mem::take(&mut column.strips)];
    Said { front, either, best_on_front: 1, has_drawing: false }
}

/// Entries under a label, where there are any.
fn listed(
    column: &mut Column<'_, '_>,
    (source, label, kind): (&SheetSource<'_>, &str, CardType),
    entries: impl Iterator<Item = Vec<Run>>,
) {
    let mut entries = entries.peekable();
    if entries.peek().is_none() {
        return;
    }
    column.gap(kind.gap(8.0));
    column.label(&source.words.say(label), kind.label());
    for entry in entries {
        column.entry(&entry, kind.words());
    }
}

/// The card that comes last: how to make the session fit another home or child.
pub fn adaptation_said(
    column: &mut Column<'_, '_>,
    source: &SheetSource<'_>,
    kind: CardType,
) -> Said {
    other_slots(column, source, kind);
    let mut either = vec![std::mem::take(&mut column.strips)];
    for (key, text) in source.session.adaptations.each() {
        column.gap(kind.gap(7.0));
        column.label(&source.words.say(&format!("adapt-{key}")), kind.label());
        column.blocks(&read_blocks(text), kind.words(), Seat::default());
        either.push(std::mem::take(&mut column.strips));
    }
    either.retain(|strips| !strips.is_empty());
    let front = if either.is_empty() { Vec::new() } else { either.remove(0) };
    Said { front, either, best_on_front: 1, has_drawing: false }
}

/// What to leave out or shorten where there is another time.
fn other_slots(column: &mut Column<'_, '_>, source: &SheetSource<'_>, kind: CardType) {
    if source.plans.other_slots.is_empty() {
        return;
    }
    column.label(&source.words.say("slots"), kind.label());
    for other in &source.plans.other_slots {
        let slot = slot_name(other.slot, source.words);
        let slot = source.words.say_with("slot-in", &[("time", Filling::Text(&slot))]);
        let said = slot_sentence(other, source.session, source.words);
        column.gap(1.5);
        column.entry(
            &[Run::bold(format!("{slot}{}", colon(source.words))), Run::plain(said)],
            kind.words(),
        );
    }
}

/// The card for whoever watches: what may be seen at each step, and what to say.
pub fn helper_said(column: &mut Column<'_, '_>, source: &SheetSource<'_>, kind: CardType) -> Said {
    let body = kind.words();
    let see = source.words.say("cards-look-how");
    column.words(&one(see), body, Seat::default());
    for part in source.session.parts.iter().filter(|part| !part.faults.is_empty()) {
        column.gap(kind.gap(7.0));
        column.label(&plain_line(&part.title), kind.label());
        for fault in &part.faults {
            fault_entry(column, fault, body);
        }
    }
    Said { front: std::mem::take(&mut column.strips), ..Said::default() }
}
