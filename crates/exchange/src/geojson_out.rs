//! The plan as GeoJSON (RFC 7946): faces, penetrations and modules for a map.

use crate::LocalPlan;
use chalkcourse_geometry::{DVec2, Polygon};
use chalkcourse_job::{GeoPoint, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_plan::{CAUTION, Standing};
use chalkcourse_words as words;
use geojson::{Feature, FeatureCollection, Geometry, GeometryValue, JsonObject, Position};
use serde_json::json;

/// Why no GeoJSON was made.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum GeoJsonOutError {
    /// The plan is not georeferenced.
    #[error("{}", words::formats::GEOJSON_IS_LONGITUDE_AND_LATITUDE.now().to_owned())]
    NoPlace,
    /// It crosses the antimeridian, where RFC 7946 wants shapes cut in two.
    #[error("{}", words::formats::THE_PLAN_LIES_OVER_THE.now().to_owned())]
    DateLine,
    /// It extends beyond where a local plane holds.
    #[error("{}", words::formats::the_plan_reaches_beyond_85(&format_args!("{:.0}", crate::MOST_REACH)))]
    TooFar,
}

/// The plan as GeoJSON: one feature per face, penetration and module, outlines counter-clockwise and holes clockwise, degrees to
/// nine decimals (a tenth of a millimetre). See [`LocalPlan`] for the accuracy. Faces with invalid outlines are left out. Foreign
/// members carry stop findings, waivers and the caution (RFC 7946, section 6.1).
///
/// # Errors
/// [`GeoJsonOutError`] if the plan is not at a position that GeoJSON can express.
pub fn plan_to_geojson(
    job: &Resolved,
    layout: &Layout,
    standing: &Standing,
) -> Result<String, GeoJsonOutError> {
    let plan = LocalPlan::around(job.site.place.ok_or(GeoJsonOutError::NoPlace)?);
    let mut features = Vec::new();
    for ((face, placed), on_roof) in job.faces.iter().zip(&layout.faces).zip(&layout.roof.faces) {
        if on_roof.sound {
            let properties = json!({
                "kind": "face", "id": placed.id.0, "name": placed.name,
                "rise_in_12": face.pitch.rise_in_12(), "downslope_degrees": face.downslope.degrees(),
                "plan_area_m2": on_roof.plan_area, "slope_area_m2": on_roof.slope_area,
                "lowest_m": heights(on_roof).0, "highest_m": heights(on_roof).1,
            });
            features.push(feature(&plan, &on_roof.plan, properties)?);
        }
    }
    for penetration in &layout.penetrations {
        let properties = json!({
            "kind": "penetration", "id": penetration.id.0, "name": penetration.name,
            "is": penetration.kind.code(),
            "face": penetration.home.and_then(|home| layout.faces.get(home)).map(|face| &face.name),
        });
        features.push(feature(&plan, &penetration.plan, properties)?);
    }
    for block in &layout.blocks {
        let Some(face) = layout.roof.faces.get(block.face) else { continue };
        for module in &block.modules {
            let outline = module.rect.corners().map(|corner| face.plane.to_plan(corner)).to_vec();
            let properties = json!({
                "kind": "module", "block": block.name,
                "face": layout.faces.get(block.face).map(|face| &face.name),
                "row": module.cell.row + 1, "column": module.cell.column + 1,
                "watts": job.kit.module.watts,
            });
            features.push(feature(&plan, &Polygon::new(outline), properties)?);
        }
    }
    let mut foreign = JsonObject::new();
    foreign.insert("name".to_owned(), job.name.clone().into());
    foreign.insert("caution".to_owned(), CAUTION.now().into());
    foreign.insert("stops".to_owned(), standing.stops.clone().into());
    foreign.insert("waived".to_owned(), standing.waived.clone().into());
    let collection = FeatureCollection { bbox: None, features, foreign_members: Some(foreign) };
    let mut text = geojson::GeoJson::FeatureCollection(collection).to_string();
    text.push('\n');
    Ok(text)
}

fn heights(face: &chalkcourse_geometry::RoofFace) -> (f64, f64) {
    let heights = face.plan.outer.iter().map(|&p| face.plane.height_at(p));
    heights.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), h| (low.min(h), high.max(h)))
}

fn feature(
    plan: &LocalPlan,
    outline: &Polygon,
    properties: serde_json::Value,
) -> Result<Feature, GeoJsonOutError> {
    let oriented = outline.oriented();
    let rings: Result<Vec<Vec<Position>>, _> = oriented.rings().map(|ring| ring_of(plan, ring)).collect();
    let properties = match properties {
        serde_json::Value::Object(members) => Some(members),
        _ => None,
    };
    let geometry = Geometry::new(GeometryValue::Polygon { coordinates: rings? });
    Ok(Feature { bbox: None, geometry: Some(geometry), id: None, properties, foreign_members: None })
}

fn ring_of(plan: &LocalPlan, ring: &[DVec2]) -> Result<Vec<Position>, GeoJsonOutError> {
    let round = |degrees: f64| (degrees * 1e9).round() / 1e9;
    let position = |&corner: &DVec2| {
        if corner.length() > crate::MOST_REACH {
            return Err(GeoJsonOutError::TooFar);
        }
        let GeoPoint { latitude, longitude } = plan.place(corner);
        // plan.place() wraps: a jump to the other side of the globe means it crosses the antimeridian
        if (longitude - plan.origin.longitude).abs() > 180.0 {
            return Err(GeoJsonOutError::DateLine);
        }
        if latitude.abs() > 85.0 {
            return Err(GeoJsonOutError::TooFar);
        }
        Ok(Position::from(vec![round(longitude), round(latitude)]))
    };
    let mut positions: Vec<Position> = ring.iter().map(position).collect::<Result<_, _>>()?;
    positions.extend(positions.first().cloned());
    Ok(positions)
}
