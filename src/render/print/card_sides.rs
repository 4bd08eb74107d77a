//! What was fitted on cards → their sides: the head, what is said below it, and lines to write on where nothing is.

use super::card_columns::{GUTTER, side_by_side};
use super::card_fit::{Card, CardForm, CardSide, Fit, Flow, count_cards};
use super::card_head::{CardHead, LaidHead};
use super::card_type::CardType;
use super::flow::{Frame, place_frames};
use super::page::Item;
use super::record::ruled_line;
use super::shaper::Shaper;
use super::sheets::SheetSource;
use super::strip::Column;

/// From what a back says to the lines to write on.
const NOTES_BELOW: f32 = 22.0;

/// Room for about five lines.
const LEAST_NOTES: f32 = 140.0;

/// A card for each front, with its back.
pub fn make_cards(
    shaper: &mut Shaper<'_>,
    form: CardForm,
    heads: &[LaidHead; 2],
    head: &CardHead,
    fit: Fit<'_>,
    source: &SheetSource<'_>,
) -> Vec<Card> {
    let (count, _) = count_cards(&fit);
    let kind = fit.kind;
    let (fronts, backs) = frames_of(fit, form);
    let mut sides = |mut frames: Vec<Frame>, is_back: bool| -> Vec<CardSide> {
        while frames.len() < count {
            let top = heads[usize::from(!frames.is_empty())].height;
            frames.push(notes(shaper, form, top, source, kind));
        }
        let turns = frames.into_iter().enumerate();
        let laid = turns.map(|(turn, frame)| {
            let head = &heads[usize::from(turn > 0)];
            let frame =
                if is_back { with_notes(shaper, form, head, frame, source, kind) } else { frame };
            side_of(head, frame, kind, is_back)
        });
        laid.collect()
    };
    let fronts = sides(fronts, false);
    let mut backs = if form.has_back { sides(backs, true) } else { Vec::new() }.into_iter();
    let cards = fronts.into_iter().enumerate().map(|(turn, front)| Card {
        front,
        back: backs.next(),
        head: head.clone(),
        turn,
    });
    cards.collect()
}

/// What is on each front and on each back.
fn frames_of(fit: Fit<'_>, form: CardForm) -> (Vec<Frame>, Vec<Frame>) {
    let frames = place_flow(&fit.front, form);
    if !fit.goes_through {
        let back = fit.back.unwrap_or_default();
        return (frames, place_flow(&back, form));
    }
    let (mut fronts, mut backs) = (Vec::new(), Vec::new());
    for (index, frame) in frames.into_iter().enumerate() {
        if index % 2 == 0 { fronts.push(frame) } else { backs.push(frame) }
    }
    (fronts, backs)
}

fn place_flow(flow: &Flow<'_>, form: CardForm) -> Vec<Frame> {
    let frames = place_frames(flow.strips.iter().copied().cloned().collect(), &flow.starts);
    if form.is_wide { side_by_side(frames, form.column_width() + GUTTER) } else { frames }
}

/// A back has the head of its front, which has been read out there.
fn side_of(head: &LaidHead, frame: Frame, kind: CardType, is_back: bool) -> CardSide {
    let mut items = head.items.clone();
    if is_back {
        items = vec![Item::decoration(items)];
    }
    let used = head.height + frame.used;
    items.extend(frame.items.into_iter().map(|item| item.moved(0.0, head.height)));
    CardSide { items, kind, used }
}

/// A back that is left half empty has lines to write on below what it says.
fn with_notes(
    shaper: &mut Shaper<'_>,
    form: CardForm,
    head: &LaidHead,
    mut frame: Frame,
    source: &SheetSource<'_>,
    kind: CardType,
) -> Frame {
    let room = form.cell.height - head.height - form.foot(kind);
    let below = frame.used + NOTES_BELOW * kind.scale();
    if room - below < LEAST_NOTES.max(room / 2.0) {
        return frame;
    }
    let notes = notes(shaper, form, head.height + below, source, kind);
    frame.used = below + notes.used;
    frame.items.extend(notes.items.into_iter().map(|item| item.moved(0.0, below)));
    frame
}

/// A side that nothing is left for has lines to write on.
fn notes(
    shaper: &mut Shaper<'_>,
    form: CardForm,
    top: f32,
    source: &SheetSource<'_>,
    kind: CardType,
) -> Frame {
    let cell = form.cell;
    let mut column = Column::new(shaper, cell.width);
    column.label(&source.words.say("notes"), kind.label());
    let room = cell.height - top - form.foot(kind) - kind.label().leading - 8.0;
    let mut left = room;
    while left >= 26.0 {
        ruled_line(&mut column);
        left -= 24.0;
    }
    place_frames(column.strips, &[0]).pop().unwrap_or_default()
}
