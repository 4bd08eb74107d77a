//! The smallest convex outline round a set of points (Andrew, 1979: the monotone chain).

use super::footprint::Point;

/// The hull against the clock, without the points on its edges. Fewer than three points stay as they are.
pub fn convex_hull(mut points: Vec<Point>) -> Vec<Point> {
    points.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    points.dedup();
    if points.len() < 3 {
        return points;
    }
    let mut hull = half_hull(points.iter().copied());
    let mut upper = half_hull(points.iter().rev().copied());
    hull.pop();
    upper.pop();
    hull.append(&mut upper);
    hull
}

fn half_hull(points: impl Iterator<Item = Point>) -> Vec<Point> {
    let mut chain: Vec<Point> = Vec::new();
    for point in points {
        while let [.., before, last] = chain[..]
            && turn(before, last, point) <= 1e-9
        {
            chain.pop();
        }
        chain.push(point);
    }
    chain
}

/// Above nought where a, b, c turn against the clock.
fn turn(a: Point, b: Point, c: Point) -> f64 {
    (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_square_stays_a_square() {
        let p = Point::new;
        let points =
            vec![p(0.0, 0.0), p(1.0, 0.0), p(1.0, 1.0), p(0.0, 1.0), p(0.5, 0.5), p(0.5, 0.0)];
        let hull = convex_hull(points);
        assert_eq!(hull, [p(0.0, 0.0), p(1.0, 0.0), p(1.0, 1.0), p(0.0, 1.0)]);
    }
}
