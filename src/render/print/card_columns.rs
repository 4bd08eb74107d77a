//! Where the second column of a wide card begins: both end at about the same height, and a section begins the second
//! rather than a line of a paragraph.

use std::borrow::Borrow;

use super::flow::{Frame, height_of_strips};
use super::page::MM;
use super::strip::Strip;

/// Between two columns of a card.
pub const GUTTER: f32 = 8.0 * MM;

/// As much worse as a second column that ends so much higher or lower: one that begins within a paragraph, within a list,
/// or with another paragraph of its section.
const WITHIN: [f32; 3] = [90.0, 50.0, 30.0];

/// Entries of a list have less air between them.
const LIST_AIR: f32 = 4.0;

/// Frames that were filled one after the other, two to a side → the same sides, with columns of about one height. What
/// stays with the next is not parted from it, and no column holds more than its side has room for.
pub fn even_columns<S: Borrow<Strip>>(
    strips: &[S],
    starts: &[usize],
    room_of_side: impl Fn(usize) -> f32,
) -> Vec<usize> {
    let mut evened = Vec::with_capacity(starts.len() + 1);
    for (side, columns) in starts.chunks(2).enumerate() {
        let start = columns[0];
        let end = starts.get(2 * side + 2).copied().unwrap_or(strips.len());
        evened.push(start);
        let second = second_column(&strips[start..end], room_of_side(side)).map(|at| start + at);
        evened.extend(second.or_else(|| columns.get(1).copied()));
    }
    evened
}

/// The best place for the second column to begin.
fn second_column<S: Borrow<Strip>>(strips: &[S], room: f32) -> Option<usize> {
    let cost = |at: &usize| {
        let (left, right) = strips.split_at(*at);
        let (left, right) = (height_of_strips(left), height_of_strips(right));
        let apart = match strips[*at].borrow() {
            first if first.goes_on => WITHIN[0],
            first if begins_section(first) => 0.0,
            first if first.space_before < LIST_AIR => WITHIN[1],
            _ => WITHIN[2],
        };
        (left <= room && right <= room).then_some((left - right).abs() + apart)
    };
    let places = (1..strips.len()).filter(|at| !strips[at - 1].borrow().keeps_next);
    let places = places.filter_map(|at| Some((at, cost(&at)?)));
    places.min_by(|a, b| a.1.total_cmp(&b.1)).map(|(at, _)| at)
}

/// A label, a drawing, or texts side by side.
const fn begins_section(strip: &Strip) -> bool {
    strip.opens || strip.filled == 0.0
}

/// The columns of each side beside each other.
pub fn side_by_side(frames: Vec<Frame>, step: f32) -> Vec<Frame> {
    let mut sides: Vec<Frame> = Vec::with_capacity(frames.len().div_ceil(2));
    for (index, frame) in frames.into_iter().enumerate() {
        match sides.last_mut().filter(|_| index % 2 == 1) {
            Some(side) => {
                side.used = side.used.max(frame.used);
                side.items.extend(frame.items.into_iter().map(|item| item.moved(step, 0.0)));
            }
            None => sides.push(frame),
        }
    }
    sides
}

#[cfg(test)]
mod tests {
    use super::*;

    fn strip(height: f32) -> Strip {
        Strip { height, filled: 50.0, ..Strip::default() }
    }

    #[test]
    fn columns_of_a_side_end_at_about_one_height() {
        let strips = vec![strip(10.0); 9];
        assert_eq!(even_columns(&strips, &[0], |_| 100.0), [0, 4]);
        assert_eq!(even_columns(&strips, &[0, 3, 6], |_| 30.0), [0, 3, 6, 7]);
    }

    #[test]
    fn a_section_begins_the_second_column() {
        let mut strips = vec![strip(10.0); 8];
        strips[5].opens = true;
        assert_eq!(even_columns(&strips, &[0], |_| 100.0), [0, 5]);
        // Not one so far down that the columns would be very uneven.
        (strips[5].opens, strips[7].opens) = (false, true);
        assert_eq!(even_columns(&strips, &[0], |_| 100.0), [0, 4]);
        // What it would leave no room for stays where it was.
        assert_eq!(even_columns(&strips, &[0, 4], |_| 40.0), [0, 4]);
    }

    #[test]
    fn what_stays_with_the_next_is_not_parted_from_it() {
        let mut strips = vec![strip(10.0); 4];
        strips[1].keeps_next = true;
        assert_eq!(even_columns(&strips, &[0], |_| 100.0), [0, 1]);
        strips[0].keeps_next = true;
        strips[2].keeps_next = true;
        assert_eq!(even_columns(&strips, &[0], |_| 100.0), [0]);
    }
}
