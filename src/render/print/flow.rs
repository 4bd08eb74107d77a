//! Strips → frames: as many as they need, so that nothing is ever cut off.

use std::borrow::Borrow;

use super::page::Item;
use super::strip::Strip;

/// Strips placed in one frame, and how much of its height they take.
#[derive(Clone, Debug, Default)]
pub struct Frame {
    pub items: Vec<Item>,
    pub used: f32,
}

/// Where frames begin: the index of the first strip of each. `height_of` tells the height of each
/// frame by its number from 0. What must stay with the next strip moves on with it, unless that
/// would leave a frame empty.
pub fn break_frames<S: Borrow<Strip>>(
    strips: &[S],
    height_of: impl Fn(usize) -> f32,
) -> Vec<usize> {
    let mut starts = vec![0];
    let mut used = 0.0;
    for (index, strip) in strips.iter().map(Borrow::borrow).enumerate() {
        let start = starts[starts.len() - 1];
        let before = if index == start { 0.0 } else { strip.space_before };
        let limit = height_of(starts.len() - 1);
        if index > start && used + before + strip.height > limit {
            let mut next = start_of_carried(strips, start, index);
            // What is carried over must leave room for what it is carried to.
            let carried = height_of_strips(&strips[next..=index]);
            if carried > height_of(starts.len()) {
                next = index;
            }
            starts.push(next);
            used = height_of_strips(&strips[next..index]);
        }
        let is_first = starts[starts.len() - 1] == index;
        used += if is_first { 0.0 } else { strip.space_before } + strip.height;
    }
    starts
}

/// A frame that is left before it is full keeps at least this share of its height.
const LEAST_KEPT: f32 = 0.5;

/// Where frames begin, as many as [`break_frames`] needs: a section that would go on in the next frame begins there,
/// if that has room for all of it and the frame before is not left half empty.
pub fn break_between_sections<S: Borrow<Strip>>(
    strips: &[S],
    height_of: impl Fn(usize) -> f32,
) -> Vec<usize> {
    let mut starts = break_frames(strips, &height_of);
    let mut end = strips.len();
    for frame in (1..starts.len()).rev() {
        let (first, start) = (starts[frame - 1], starts[frame]);
        let is_inside = strips.get(start).is_some_and(|strip| !strip.borrow().opens);
        let opening = strips[first..start].iter().rposition(|strip| strip.borrow().opens);
        if let Some(at) = opening.map(|at| first + at).filter(|at| is_inside && *at > first) {
            let kept = height_of_strips(&strips[first..at]);
            let moved = height_of_strips(&strips[at..end]);
            if kept >= LEAST_KEPT * height_of(frame - 1) && moved <= height_of(frame) {
                starts[frame] = at;
            }
        }
        end = starts[frame];
    }
    starts
}

/// The first of the strips before `index` that must not end their frame; `index` itself where that
/// would leave the frame empty.
fn start_of_carried<S: Borrow<Strip>>(strips: &[S], start: usize, index: usize) -> usize {
    let kept = strips[start..index].iter().rposition(|strip| !strip.borrow().keeps_next);
    kept.map_or(index, |last| start + last + 1)
}

pub fn height_of_strips<S: Borrow<Strip>>(strips: &[S]) -> f32 {
    let inner: f32 = strips.iter().skip(1).map(|strip| strip.borrow().space_before).sum();
    inner + strips.iter().map(|strip| strip.borrow().height).sum::<f32>()
}

/// How many frames begin in the middle of a paragraph.
pub fn count_split<S: Borrow<Strip>>(strips: &[S], starts: &[usize]) -> usize {
    starts
        .iter()
        .filter(|start| strips.get(**start).is_some_and(|strip| strip.borrow().goes_on))
        .count()
}

/// Whether every frame holds no more than its height.
pub fn holds<S: Borrow<Strip>>(
    strips: &[S],
    starts: &[usize],
    height_of: impl Fn(usize) -> f32,
) -> bool {
    let ends = starts.iter().skip(1).copied().chain([strips.len()]);
    starts
        .iter()
        .zip(ends)
        .enumerate()
        .all(|(frame, (start, end))| height_of_strips(&strips[*start..end]) <= height_of(frame))
}

/// Places strips one below another in the frames that begin at `starts`.
pub fn place_frames(strips: Vec<Strip>, starts: &[usize]) -> Vec<Frame> {
    let mut frames: Vec<Frame> = Vec::with_capacity(starts.len());
    for (index, strip) in strips.into_iter().enumerate() {
        if starts.get(frames.len()) == Some(&index) {
            frames.push(Frame::default());
        } else if let Some(frame) = frames.last_mut() {
            frame.used += strip.space_before;
        }
        let Some(frame) = frames.last_mut() else { continue };
        let top = frame.used;
        frame.items.extend(strip.items.into_iter().map(|item| item.moved(0.0, top)));
        frame.used += strip.height;
    }
    frames
}

#[cfg(test)]
mod tests {
    use super::*;

    fn strip(height: f32, space_before: f32, keeps_next: bool) -> Strip {
        let items = vec![Item::line((0.0, 0.0), (1.0, 0.0), 1.0)];
        Strip { height, space_before, keeps_next, items, ..Strip::default() }
    }

    fn flow_strips(strips: Vec<Strip>, height: f32) -> Vec<Frame> {
        let starts = break_frames(&strips, |_| height);
        place_frames(strips, &starts)
    }

    #[test]
    fn nothing_is_lost_and_nothing_overflows() {
        let strips: Vec<Strip> =
            (0..57_u8).map(|i| strip(10.0 + f32::from(i % 4), 3.0, i % 5 == 0)).collect();
        let frames = flow_strips(strips, 60.0);
        assert_eq!(frames.iter().map(|frame| frame.items.len()).sum::<usize>(), 57);
        assert!(frames.iter().all(|frame| frame.used <= 60.0 && frame.used > 0.0));
    }

    #[test]
    fn a_heading_moves_on_with_what_it_heads() {
        let strips = vec![strip(40.0, 0.0, false), strip(15.0, 0.0, true), strip(15.0, 0.0, false)];
        let frames = flow_strips(strips, 60.0);
        assert_eq!(frames.iter().map(|frame| frame.items.len()).collect::<Vec<_>>(), [1, 2]);
    }

    #[test]
    fn a_strip_taller_than_any_frame_still_gets_one() {
        let frames = flow_strips(vec![strip(90.0, 0.0, true), strip(10.0, 0.0, false)], 60.0);
        assert_eq!(frames.len(), 2);
    }

    #[test]
    fn a_section_that_goes_on_begins_in_the_next_frame() {
        let mut strips = vec![strip(10.0, 0.0, false); 8];
        strips[4].opens = true;
        // The seventh strip has no room: the section from the fifth on moves over, if half a frame stays.
        assert_eq!(break_between_sections(&strips, |_| 60.0), [0, 4]);
        strips[4].opens = false;
        strips[2].opens = true;
        assert_eq!(break_between_sections(&strips, |_| 60.0), [0, 6]);
    }

    #[test]
    fn what_is_carried_leaves_room() {
        let strips = vec![strip(10.0, 0.0, false), strip(45.0, 0.0, true), strip(20.0, 0.0, false)];
        let frames = flow_strips(strips, 60.0);
        assert!(frames.iter().all(|frame| frame.used <= 60.0));
    }
}
