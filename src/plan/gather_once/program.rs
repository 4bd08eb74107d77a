//! The linear program of a node: covers as rows, open things as columns, numbers counted above their least.

use super::bound::{Aim, Node};
use super::hall::Cover;
use super::simplex::{Row, solve};
use crate::plan::assign::Effort;

/// What the linear program of a node comes to.
pub struct Relaxed {
    /// How many of each thing, perhaps not whole.
    pub values: Vec<f64>,
    /// The price of each cover.
    pub cover_prices: Vec<f64>,
    /// The price of the limit on the whole number.
    pub limit_price: f64,
}

/// The program while it is put together.
struct Program {
    /// The column of each thing that is open.
    columns: Vec<Option<usize>>,
    costs: Vec<f64>,
    rows: Vec<Row>,
    /// The covers that the first rows stand for.
    covers: Vec<usize>,
}

/// Solves the program of a node; none if nothing can be below it.
pub fn relax(aim: &Aim, covers: &[Cover], node: &Node, effort: &mut Effort) -> Option<Relaxed> {
    let mut program = Program::of(aim, node);
    program.add_covers(covers, node);
    program.add_limits(aim, node);
    let solution = solve(&program.costs, &program.rows, effort)?;
    let mut cover_prices = vec![0.0; covers.len()];
    for (cover, price) in program.covers.iter().zip(&solution.prices) {
        cover_prices[*cover] = *price;
    }
    let limit = aim.most_in_all.and_then(|_| solution.prices.get(program.covers.len()));
    let value = |thing: usize| {
        let above = program.columns[thing].map_or(0.0, |column| solution.values[column]);
        f64::from(node.least[thing]) + above
    };
    let values = (0..node.least.len()).map(value).collect();
    Some(Relaxed { values, cover_prices, limit_price: limit.copied().unwrap_or(0.0) })
}

impl Program {
    fn of(aim: &Aim, node: &Node) -> Self {
        let mut costs = Vec::new();
        let columns = (0..node.least.len()).map(|thing| {
            (node.least[thing] < node.most[thing]).then(|| {
                costs.push(aim.slope(thing, node));
                costs.len() - 1
            })
        });
        let columns = columns.collect();
        Self { columns, costs, rows: Vec::new(), covers: Vec::new() }
    }

    fn add_covers(&mut self, covers: &[Cover], node: &Node) {
        for (at, cover) in covers.iter().enumerate() {
            let sure: u64 = cover.things.iter().map(|thing| u64::from(node.least[*thing])).sum();
            if let Some(least) = cover.least.checked_sub(sure).filter(|least| *least > 0) {
                let places = cover.things.iter().filter_map(|thing| self.columns[*thing]).collect();
                self.rows.push(Row { places, sign: 1.0, least: real(least) });
                self.covers.push(at);
            }
        }
    }

    /// The limit on the whole number, and those of things that a row might ask too many of.
    fn add_limits(&mut self, aim: &Aim, node: &Node) {
        let mut asked = vec![0.0_f64; self.costs.len()];
        for row in &self.rows {
            for place in &row.places {
                asked[*place] = asked[*place].max(row.least);
            }
        }
        if let Some(most) = aim.most_in_all {
            let sure: u64 = node.least.iter().map(|least| u64::from(*least)).sum();
            let places = (0..self.costs.len()).collect();
            self.rows.push(Row { places, sign: -1.0, least: real(sure) - real(most) });
        }
        for (thing, column) in self.columns.iter().enumerate() {
            let open = f64::from(node.most[thing] - node.least[thing]);
            if let Some(column) = column.filter(|column| open < asked[*column]) {
                self.rows.push(Row { places: vec![column], sign: -1.0, least: -open });
            }
        }
    }
}

#[expect(clippy::cast_precision_loss, reason = "numbers of things are far below 2⁵²")]
fn real(number: u64) -> f64 {
    number as f64
}
