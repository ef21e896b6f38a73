//! Reads cases `[{"a": polygon, "b": polygon, "offset": metres}, …]` on standard input and writes this crate's results, for
//! `tests/peers/polygons_against_geos.py`.

use chalkcourse_geometry::Polygon;
use serde_json::{Value, json};
use std::io::{self, Read, Write};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut text = String::new();
    io::stdin().read_to_string(&mut text)?;
    let cases: Vec<Value> = serde_json::from_str(&text)?;
    let mut answers = Vec::new();
    for case in cases {
        let a: Polygon = serde_json::from_value(case["a"].clone())?;
        let b: Polygon = serde_json::from_value(case["b"].clone())?;
        let offset = case["offset"].as_f64().unwrap_or(0.0);
        answers.push(json!({
            "sound": a.defects(1e-9).is_empty(),
            "area": a.area(),
            "difference": a.difference(std::slice::from_ref(&b)).iter().map(Polygon::area).sum::<f64>(),
            "intersection": a.intersection(&b).iter().map(Polygon::area).sum::<f64>(),
            "inset": a.offset(-offset).iter().map(Polygon::area).sum::<f64>(),
        }));
    }
    writeln!(io::stdout(), "{}", serde_json::to_string(&answers)?)?;
    Ok(())
}
