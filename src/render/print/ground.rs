//! What is painted under what: a page or drawing as a grid of cells. Fills are painted or covered cell by cell, row
//! after row, and each place can be asked how dark it is.

use super::page::At;

/// How dark the fills painted so far have made each cell of a page.
pub struct Ground {
    /// The side of a cell.
    pub cell: f32,
    columns: usize,
    /// 255 is black.
    pub cells: Vec<u8>,
    /// Where rows of cells cross an outline, kept as room.
    crossings: Vec<(usize, f32)>,
}

impl Ground {
    pub fn new((width, height): At, cell: f32, mut cells: Vec<u8>) -> Self {
        cells.clear();
        let mut ground = Self { cell, columns: 0, cells, crossings: Vec::new() };
        ground.columns = ground.index(width) + 1;
        let count = ground.columns * (ground.index(height) + 1);
        ground.cells.resize(count, 0);
        ground
    }

    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "paper is small")]
    fn index(&self, at: f32) -> usize {
        (at / self.cell).max(0.0) as usize
    }

    pub fn darkness(&self, at: At) -> f32 {
        let place = self.index(at.1) * self.columns + self.index(at.0).min(self.columns - 1);
        self.cells.get(place).map_or(0.0, |cell| f32::from(*cell) / 255.0)
    }

    /// Paints the cells whose middle lies inside an outline with straight sides.
    pub fn paint(&mut self, corners: &[At], darkness: f32) {
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a share of 255"
        )]
        let painted = (darkness * 255.0).round() as u8;
        self.within(corners, |cells| cells.fill(painted));
    }

    /// Covers the cells whose middle lies inside an outline, and gives the area of those that were not covered.
    pub fn cover(&mut self, corners: &[At]) -> f32 {
        let mut count = 0.0;
        self.within(corners, |cells| {
            for cell in cells.iter_mut().filter(|cell| **cell == 0) {
                (*cell, count) = (1, count + 1.0);
            }
        });
        count * self.cell * self.cell
    }

    /// Does something with the cells whose middle lies inside an outline, a piece of a row at a time.
    fn within(&mut self, corners: &[At], mut change: impl FnMut(&mut [u8])) {
        let mut crossed = std::mem::take(&mut self.crossings);
        self.cross_outline(corners, &mut crossed);
        for pair in crossed.chunks_exact(2) {
            let columns = pair.iter().map(|(_, at)| self.index(at + self.cell / 2.0));
            let mut places =
                columns.map(|column| pair[0].0 * self.columns + column.min(self.columns));
            let (Some(start), Some(end)) = (places.next(), places.next()) else { continue };
            if let Some(cells) = self.cells.get_mut(start..end) {
                change(cells);
            }
        }
        self.crossings = crossed;
    }

    /// Where the middles of the rows cross an outline: row by row, from the left. A side from one row’s middle to
    /// another’s crosses the first of them and not the last, so that each row is crossed an even number of times.
    fn cross_outline(&self, corners: &[At], crossed: &mut Vec<(usize, f32)>) {
        crossed.clear();
        let Some(mut a) = corners.last() else { return };
        for b in corners {
            let (low, high) = if a.1 < b.1 { (a.1, b.1) } else { (b.1, a.1) };
            let slope = (b.0 - a.0) / (b.1 - a.1);
            for row in self.first_row(low)..self.first_row(high) {
                #[allow(clippy::cast_precision_loss, reason = "paper has a few hundred rows")]
                let y = (row as f32 + 0.5) * self.cell;
                crossed.push((row, a.0 + slope * (y - a.1)));
            }
            a = b;
        }
        crossed.sort_unstable_by(|a, b| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)));
    }

    /// The first row whose middle lies at a height or below it.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "paper is small")]
    fn first_row(&self, y: f32) -> usize {
        let row = (y / self.cell - 0.5).max(0.0);
        let whole = row as usize;
        #[allow(clippy::cast_precision_loss, reason = "paper has a few hundred rows")]
        let is_whole = whole as f32 >= row;
        if is_whole { whole } else { whole + 1 }
    }
}
