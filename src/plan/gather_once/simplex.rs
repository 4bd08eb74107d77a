//! A small linear program: least cost of values ≥ 0 such that every row is at least its right-hand side.
//!
//! All costs are ≥ 0, so the dual simplex method can begin with all values at nothing (Lemke 1954; the
//! dictionary form is that of Chvátal, “Linear Programming”, 1983). Floating-point numbers serve here only to
//! find good prices and good values to try: what is concluded from them is reckoned again in whole numbers.

use crate::plan::assign::Effort;

/// Below this a number is taken for nothing: all data are whole and small.
const NOTHING: f64 = 1e-9;

/// Cells are looked at many at a time.
const CELLS_A_STEP: usize = 8;

/// One row: the sum over its places, plus or minus, is at least `least`.
pub struct Row {
    pub places: Vec<usize>,
    pub sign: f64,
    pub least: f64,
}

/// What the program comes to.
pub struct Solution {
    pub values: Vec<f64>,
    /// The price of each row.
    pub prices: Vec<f64>,
}

/// Each basic variable in terms of the others; the last column is the constant.
struct Dictionary {
    width: usize,
    cells: Vec<f64>,
    costs: Vec<f64>,
    basic: Vec<usize>,
    others: Vec<usize>,
}

/// Solves a program; none if no values satisfy all rows.
pub fn solve(costs: &[f64], rows: &[Row], effort: &mut Effort) -> Option<Solution> {
    let mut dictionary = Dictionary::of(costs, rows);
    let most_pivots = 20 * (costs.len() + rows.len());
    for _ in 0..most_pivots {
        let Some(row) = dictionary.worst_row() else { break };
        effort.spend(dictionary.cells.len() / CELLS_A_STEP);
        let column = dictionary.cheapest_column(row)?;
        dictionary.pivot(row, column);
        if effort.is_spent() {
            break;
        }
    }
    Some(dictionary.solution(costs.len(), rows.len()))
}

impl Dictionary {
    fn of(costs: &[f64], rows: &[Row]) -> Self {
        let width = costs.len() + 1;
        let mut cells = vec![0.0; width * rows.len()];
        for (row, cells) in rows.iter().zip(cells.chunks_exact_mut(width)) {
            for place in &row.places {
                cells[*place] = row.sign;
            }
            cells[width - 1] = -row.least;
        }
        let basic = (costs.len()..costs.len() + rows.len()).collect();
        Self { width, cells, costs: costs.to_vec(), basic, others: (0..costs.len()).collect() }
    }

    fn row(&self, row: usize) -> &[f64] {
        &self.cells[row * self.width..(row + 1) * self.width]
    }

    fn constant(&self, row: usize) -> f64 {
        self.cells[(row + 1) * self.width - 1]
    }

    /// The row that is missed by most.
    fn worst_row(&self) -> Option<usize> {
        let missed = (0..self.basic.len()).filter(|row| self.constant(*row) < -NOTHING);
        missed.min_by(|one, other| self.constant(*one).total_cmp(&self.constant(*other)))
    }

    /// The variable that makes up for the row at the least cost.
    fn cheapest_column(&self, row: usize) -> Option<usize> {
        let cells = self.row(row);
        let helpful = (0..self.others.len()).filter(|column| cells[*column] > NOTHING);
        let ratio = |column: &usize| self.costs[*column] / cells[*column];
        helpful.min_by(|one, other| ratio(one).total_cmp(&ratio(other)))
    }

    fn pivot(&mut self, row: usize, column: usize) {
        let factor = self.cells[row * self.width + column];
        let mut solved: Vec<f64> = self.row(row).iter().map(|cell| -cell / factor).collect();
        solved[column] = 1.0 / factor;
        for cells in self.cells.chunks_exact_mut(self.width) {
            substitute(cells, column, &solved);
        }
        substitute(&mut self.costs, column, &solved);
        self.cells[row * self.width..(row + 1) * self.width].copy_from_slice(&solved);
        std::mem::swap(&mut self.basic[row], &mut self.others[column]);
    }

    fn solution(&self, values: usize, rows: usize) -> Solution {
        let mut solution = Solution { values: vec![0.0; values], prices: vec![0.0; rows] };
        for (row, name) in self.basic.iter().enumerate().filter(|(_, name)| **name < values) {
            solution.values[*name] = self.constant(row).max(0.0);
        }
        for (column, name) in self.others.iter().enumerate().filter(|(_, name)| **name >= values) {
            solution.prices[name - values] = self.costs[column].max(0.0);
        }
        solution
    }
}

/// Puts what a variable is equal to in its place.
fn substitute(cells: &mut [f64], column: usize, solved: &[f64]) {
    let factor = cells[column];
    if factor != 0.0 {
        cells[column] = 0.0;
        for (cell, solved) in cells.iter_mut().zip(solved) {
            *cell += factor * solved;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Three things of which every two must be one: half of each, at a cost of 1.5.
    #[test]
    fn a_triangle_takes_halves() {
        let row = |one, other| Row { places: vec![one, other], sign: 1.0, least: 1.0 };
        let rows = [row(0, 1), row(1, 2), row(0, 2)];
        let solution = solve(&[1.0; 3], &rows, &mut Effort::of(1000)).unwrap();
        for number in solution.values.iter().chain(&solution.prices) {
            assert!((number - 0.5).abs() < 1e-12, "{number}");
        }
    }

    #[test]
    fn says_when_nothing_satisfies_the_rows() {
        let rows = [
            Row { places: vec![0], sign: 1.0, least: 3.0 },
            Row { places: vec![0], sign: -1.0, least: -2.0 },
        ];
        assert!(solve(&[1.0], &rows, &mut Effort::of(1000)).is_none());
    }
}
