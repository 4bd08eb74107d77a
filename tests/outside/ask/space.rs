//! Questions about floors: whether an outline fits, footprints by kind, setting out.

use homeground::plan::{Floor, Placement, Point, chord, convex_hull, fit_on_floor};
use homeground::quantity::{Angle, Length};
use serde_json::{Value, json};

/// `fit`: an outline in millimetres and a floor; `chord`: millimetres along the line and hundredths of
/// a degree; `hull`: points.
pub fn answer(question: &Value) -> Value {
    match question["of"].as_str() {
        Some("fit") => fit(question),
        Some("chord") => {
            let apart = chord(length(&question["along"]), angle(&question["sector"]));
            json!({ "apart": apart.millimetres() })
        }
        Some("hull") => json!({ "hull": pairs(&convex_hull(points(&question["points"]))) }),
        _ => json!({ "fault": "fit, chord or hull" }),
    }
}

fn fit(question: &Value) -> Value {
    let floor = &question["floor"];
    let notch = floor.get(2).map(|notch| (length(&notch[0]), length(&notch[1])));
    let floor = Floor { length: length(&floor[0]), width: length(&floor[1]), notch };
    let outline = points(&question["outline"]);
    match fit_on_floor(&outline, &floor) {
        Some(placement) => json!({
            "fits": true,
            "turned": placement.turned,
            "askew": placement.is_askew(),
            "placed": pairs(&placed(&outline, placement)),
        }),
        None => json!({ "fits": false }),
    }
}

fn placed(outline: &[Point], placement: Placement) -> Vec<Point> {
    outline.iter().map(|point| placement.place(*point)).collect()
}

fn length(value: &Value) -> Length {
    let millimetres = value.as_u64().and_then(|number| u32::try_from(number).ok());
    Length::from_millimetres(millimetres.unwrap_or(0))
}

fn angle(value: &Value) -> Angle {
    let hundredths = value.as_u64().and_then(|number| u32::try_from(number).ok());
    Angle::from_hundredths(hundredths.unwrap_or(0))
}

fn points(value: &Value) -> Vec<Point> {
    let list = value.as_array().map(Vec::as_slice).unwrap_or_default();
    let number = |value: &Value| value.as_f64().unwrap_or(f64::NAN);
    list.iter().map(|pair| Point::new(number(&pair[0]), number(&pair[1]))).collect()
}

fn pairs(points: &[Point]) -> Vec<[f64; 2]> {
    points.iter().map(|point| [point.x, point.y]).collect()
}
