//! Prints every roof surface of every building read from a city model, for `tests/peers/city_models.py`.

use chalkcourse_exchange::{HouseShape, houses_from_cityjson};
use serde_json::json;
use std::error::Error;
use std::io::Write;

fn main() -> Result<(), Box<dyn Error>> {
    let path = std::env::args().nth(1).ok_or("name a CityJSON file")?;
    let houses = houses_from_cityjson(&std::fs::read_to_string(path)?)?;
    let shown = houses.iter().map(|house| {
        let HouseShape::Roof(roof) = &house.shape else { return json!(null) };
        let surfaces: Vec<_> = roof
            .surfaces
            .iter()
            .map(|surface| {
                let plan_area = surface.outline.area();
                json!({
                    "number": surface.number, "plan_area": plan_area,
                    "slope_area": plan_area * surface.plane.pitch.slope_factor(),
                    "pitch": surface.plane.pitch.degrees(), "azimuth": surface.plane.downslope.degrees(),
                    "off": surface.off, "holes": surface.outline.holes.len(),
                    "low": surface.outline.outer.iter().map(|&p| surface.plane.height_at(p)).fold(f64::INFINITY, f64::min),
                })
            })
            .collect();
        let left_out: Vec<_> = roof
            .left_out
            .iter()
            .map(|left| json!({"number": left.number, "area": left.area, "reason": left.reason.to_string()}))
            .collect();
        json!({"id": house.id, "lod": roof.lod, "surfaces": surfaces, "left_out": left_out, "notes": house.notes})
    });
    writeln!(std::io::stdout(), "{}", serde_json::Value::Array(shown.collect()))?;
    Ok(())
}
