//! Upper envelopes: one JSON list of footprints per line on standard input, one JSON answer per line on standard output.
//!
//! A footprint is what [`chalkcourse_geometry::raise::Footprint`] reads. An answer has the `surfaces` of all parts before hiding
//! and the visible `pieces`, each with its `part` (a piece also its `surface`), `rings` as x, y, and the plane as `gradient` and
//! height `at_origin`; or an `error`.

use chalkcourse_geometry::envelope::{Surface, envelope};
use chalkcourse_geometry::raise::{Footprint, raise};
use chalkcourse_geometry::{DVec2, Polygon, Tolerances};
use serde_json::{Value, json};
use std::io::{BufRead, Write};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let mut out = std::io::BufWriter::new(std::io::stdout().lock());
    for line in std::io::stdin().lock().lines() {
        let parts: Vec<Footprint> = serde_json::from_str(&line?)?;
        let answer = answer(&parts).unwrap_or_else(|error| json!({ "error": error.to_string() }));
        writeln!(out, "{answer}")?;
    }
    Ok(())
}

fn answer(parts: &[Footprint]) -> Result<Value, Box<dyn std::error::Error>> {
    let mut surfaces = Vec::new();
    for (part, footprint) in parts.iter().enumerate() {
        let faces = raise(footprint)?.faces.into_iter();
        surfaces.extend(faces.map(|face| Surface {
            part,
            outline: face.outline,
            plane: face.plane,
            deck: true,
        }));
    }
    let rings = |outline: &Polygon| -> Vec<Vec<[f64; 2]>> {
        outline.rings().map(|ring| ring.iter().map(|p| [p.x, p.y]).collect()).collect()
    };
    let before: Vec<Value> = surfaces
        .iter()
        .map(|surface| {
            let gradient = -surface.plane.downslope.unit() * surface.plane.pitch.slope();
            json!({
                "part": surface.part,
                "rings": rings(&surface.outline),
                "gradient": [gradient.x, gradient.y],
                "at_origin": surface.plane.height_at(DVec2::ZERO),
            })
        })
        .collect();
    let pieces: Vec<Value> = envelope(&surfaces, Tolerances::default())?
        .iter()
        .map(|piece| json!({ "surface": piece.surfaces[0], "surfaces": piece.surfaces, "rings": rings(&piece.outline) }))
        .collect();
    Ok(json!({ "surfaces": before, "pieces": pieces }))
}
