//! What a filled container weighs: its own mass and that of what is in it.
//!
//! Densities: water 0.998 kg a litre at 20 °C (from memory); uncooked rice 0.60–0.85 and dry sand
//! 1.28–1.60 kg a litre (published tables of bulk densities; they differ, so both ends are kept).
//! Where the container’s own mass is not said the whole has no upper end: weigh it.

use crate::quantity::{Mass, Range, Volume};
use crate::read::words::Filling;

/// Grams a litre, which is milligrams a millilitre: least and most.
const fn density(filling: Filling) -> (u32, u32) {
    match filling {
        Filling::Water => (998, 998),
        Filling::Rice => (600, 850),
        Filling::Sand => (1280, 1600),
    }
}

/// The mass of a container of `volume`, full of `filling`.
pub fn filled_mass(empty: Option<Range<Mass>>, volume: Volume, filling: Filling) -> Range<Mass> {
    let (least, most) = density(filling);
    let full = |density: u32| u64::from(density) * u64::from(volume.millilitres());
    let with = |own: Option<Mass>, density: u32| {
        let sum = u64::from(own.unwrap_or_default().milligrams()) + full(density);
        Mass::from_milligrams(u32::try_from(sum).unwrap_or(u32::MAX))
    };
    let empty = empty.unwrap_or(Range { least: None, most: None });
    Range {
        least: Some(with(empty.least, least)),
        most: empty.most.map(|own| with(Some(own), most)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn water_in_a_bottle_of_half_a_litre() {
        let empty = Range { least: Some(Mass::from_grams(10)), most: Some(Mass::from_grams(25)) };
        let whole = filled_mass(Some(empty), Volume::from_millilitres(500), Filling::Water);
        assert_eq!(whole.to_string(), "509–524 g");
        let open = filled_mass(None, Volume::from_millilitres(330), Filling::Rice);
        assert_eq!((open.least, open.most), (Some(Mass::from_grams(198)), None));
    }
}
