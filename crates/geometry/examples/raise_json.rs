//! Raises footprints: one JSON footprint per line on standard input, one JSON roof per line on standard output.
//!
//! A footprint is what [`chalkcourse_geometry::raise::Footprint`] reads; a roof has its faces (`sides` as ring and side, `rings`
//! as x, y, z on the face's plane, plan `area`, `slope`) or an `error`, and the `seconds` that the work took, the shortest of as
//! many runs as the first argument says (1 without one).

use chalkcourse_geometry::raise::{Footprint, Raised, raise};
use serde_json::{Value, json};
use std::io::{BufRead, Write};
use std::time::Instant;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let runs: usize = std::env::args().nth(1).map_or(Ok(1), |text| text.parse())?;
    let mut out = std::io::BufWriter::new(std::io::stdout().lock());
    for line in std::io::stdin().lock().lines() {
        let footprint: Footprint = serde_json::from_str(&line?)?;
        let mut seconds = f64::INFINITY;
        let mut result = raise(&footprint);
        for _ in 0..runs {
            let start = Instant::now();
            result = raise(&footprint);
            seconds = seconds.min(start.elapsed().as_secs_f64());
        }
        let mut roof = match result {
            Ok(raised) => json!({ "faces": faces(&raised), "area": raised.outline.area() }),
            Err(error) => json!({ "error": error.to_string() }),
        };
        roof["seconds"] = json!(seconds);
        writeln!(out, "{roof}")?;
    }
    Ok(())
}

fn faces(raised: &Raised) -> Vec<Value> {
    raised
        .faces
        .iter()
        .map(|face| {
            let rings: Vec<Vec<[f64; 3]>> = face
                .outline
                .rings()
                .map(|ring| ring.iter().map(|&p| [p.x, p.y, face.plane.height_at(p)]).collect())
                .collect();
            let sides: Vec<[usize; 2]> = face.sides.iter().map(|at| [at.ring, at.side]).collect();
            json!({
                "sides": sides,
                "rings": rings,
                "area": face.outline.area(),
                "slope": face.plane.pitch.slope(),
            })
        })
        .collect()
}
