//! Groups city objects into buildings and picks the geometry of each.

use super::Header;
use super::model::{Document, Geometry, Object};
use super::nested::Rings;
use super::roof::face_of;
use crate::{CityRoof, House, HouseShape, LeftOut, Reason};
use chalkcourse_geometry::{DVec2, DVec3};
use chalkcourse_words as words;
use std::collections::BTreeMap;

/// Maximum faces of one building; the roof of a whole city block has some hundreds.
const MOST_SURFACES: usize = 3_000;
/// Maximum depth of the parent chain that is followed.
const MOST_LEVELS: usize = 16;

/// The buildings of a document in id order: objects without a parent, together with all their parts. Each with the extent of its
/// roof in plan, in the file's own unit.
pub(super) fn houses(document: &Document, header: &Header) -> Vec<(House, f64)> {
    let mut parts: BTreeMap<&str, Vec<(&str, &Object)>> = BTreeMap::new();
    for (id, object) in &document.objects {
        parts.entry(root_of(document, id)).or_default().push((id, object));
    }
    let house = |(root, parts): (&str, Vec<(&str, &Object)>)| {
        let name = document.objects.get(root).and_then(|object| object.attributes.as_ref()?.name.0.clone());
        house(root, name, &parts, document, header)
    };
    parts.into_iter().filter_map(house).collect()
}

/// The topmost parent of an object. A cycle or a missing parent ends the chain.
fn root_of<'a>(document: &'a Document, id: &'a str) -> &'a str {
    let mut at = id;
    for _ in 0..MOST_LEVELS {
        let parent = document.objects.get(at).and_then(|object| object.parents.0.as_deref());
        match parent.and_then(|parent| document.objects.get_key_value(parent)) {
            // a group of buildings is not a building
            Some((parent, object)) if object.kind != "CityObjectGroup" => at = parent,
            _ => return at,
        }
    }
    id
}

/// A surface as in the file, with its identity there.
struct Raw {
    corners: Result<Vec<Vec<DVec3>>, Reason>,
    /// Whether its winding makes it face outwards.
    looks_out: bool,
}

fn house(
    root: &str,
    name: Option<String>,
    parts: &[(&str, &Object)],
    document: &Document,
    header: &Header,
) -> Option<(House, f64)> {
    let mut raw: Vec<Raw> = Vec::new();
    let mut notes = Vec::new();
    let mut lods: Vec<String> = Vec::new();
    let mut is_building = false;
    for (id, object) in parts {
        is_building |= object.kind.starts_with("Building");
        let geometries = object.geometry.as_deref().unwrap_or_default();
        match finest(geometries) {
            Some((geometry, surfaces)) => {
                let lod = geometry.lod.0.clone().unwrap_or_default();
                if !lods.contains(&lod) {
                    lods.push(lod);
                }
                let looks_out = geometry.kind.contains("Solid");
                raw.extend(
                    surfaces
                        .iter()
                        .map(|rings| Raw { corners: corners_of(rings, document, header), looks_out }),
                );
            }
            None if object.kind.starts_with("Building") && !geometries.is_empty() => {
                if let Some(why) = why_no_roof(geometries) {
                    notes.push(format!("{id}: {why}."));
                }
            }
            None => {}
        }
    }
    if raw.is_empty() && !is_building {
        return None;
    }
    let bounds = bounds_of(raw.iter().filter_map(|raw| raw.corners.as_ref().ok()).flatten().flatten());
    let origin = bounds.map_or(DVec2::ZERO, |(min, max)| (min.truncate() + max.truncate()) / 2.0);
    notes.extend(header.grid.note(origin).filter(|_| !raw.is_empty()));
    if raw.is_empty() && notes.is_empty() {
        notes.push(words::formats::IT_HAS_NO_ROOF_SURFACE.now().to_owned());
    }
    if raw.len() > MOST_SURFACES {
        notes.push(words::formats::it_has_roof_surfaces_a(&raw.len(), &MOST_SURFACES));
        raw.clear();
    }
    // Heights are relative to the building's lowest corner: the ground, if the geometry includes it.
    let ground = lowest(parts, document, header).or(bounds.map(|(min, _)| min.z)).unwrap_or(0.0);
    let mut roof = CityRoof { lod: lods.join(", "), ..CityRoof::default() };
    for (number, raw) in (1..).zip(raw) {
        let local = |p: &DVec3| {
            let metres = header.grid.metres(origin, *p);
            let level = header.grid.metres(origin, p.truncate().extend(ground)).z;
            metres.truncate().extend(metres.z - level)
        };
        let rings = raw.corners.map(|rings| {
            rings.iter().map(|ring| ring.iter().map(local).collect()).collect::<Vec<Vec<DVec3>>>()
        });
        let area = rings.as_ref().map_or(0.0, |rings| super::roof::area(rings));
        match rings.and_then(|rings| face_of(number, &rings, raw.looks_out)) {
            Ok(surface) => roof.surfaces.push(surface),
            Err(reason) => roof.left_out.push(LeftOut { number, area, reason }),
        }
    }
    let place = if roof.surfaces.is_empty() { None } else { header.grid.place(origin) };
    let id: String = root.chars().take(200).collect();
    let house =
        House { name: name.unwrap_or_else(|| id.clone()), id, shape: HouseShape::Roof(roof), place, notes };
    Some((house, bounds.map_or(0.0, |(min, max)| (max - min).truncate().max_element())))
}

/// The geometry to use among those with roof surfaces: the finest below LoD 3, else the coarsest above.
fn finest(geometries: &[Geometry]) -> Option<(&Geometry, Vec<Rings>)> {
    let rank = |geometry: &Geometry| {
        let lod: f64 = geometry.lod.0.as_deref().and_then(|lod| lod.parse().ok()).unwrap_or(0.0);
        if lod < 3.0 { lod } else { -lod }
    };
    geometries
        .iter()
        .filter_map(|geometry| Some((geometry, roof_surfaces(geometry).ok().filter(|s| !s.is_empty())?)))
        .max_by(|(a, _), (b, _)| rank(a).total_cmp(&rank(b)))
}

/// The surfaces that a geometry marks as roof.
fn roof_surfaces(geometry: &Geometry) -> Result<Vec<Rings>, &'static str> {
    let depth = match geometry.kind.as_str() {
        "MultiSurface" | "CompositeSurface" => 3,
        "Solid" => 4,
        "MultiSolid" | "CompositeSolid" => 5,
        "GeometryInstance" => {
            return Err(words::formats::IT_IS_A_TEMPLATE_WHICH.now());
        }
        _ => return Err(words::formats::IT_HAS_NO_SURFACES.now()),
    };
    let semantics = geometry.semantics.as_ref().ok_or(words::formats::IT_DOES_NOT_SAY_WHICH.now())?;
    let polygons =
        geometry.boundaries.polygons(depth).ok_or(words::formats::ITS_BOUNDARIES_ARE_NOT_AS.now())?;
    let values = semantics.values.leaves();
    if values.len() != polygons.len() {
        return Err(words::formats::IT_DOES_NOT_SAY_OF.now());
    }
    let is_roof = |value: &Option<u32>| {
        let surface = value.and_then(|value| semantics.surfaces.get(value as usize));
        surface.is_some_and(|surface| surface.kind == "RoofSurface")
    };
    Ok(polygons
        .into_iter()
        .zip(&values)
        .filter(|(_, value)| is_roof(value))
        .map(|(rings, _)| rings)
        .collect())
}

/// Why none of the geometries has a roof surface: the reason of the most promising one.
fn why_no_roof(geometries: &[Geometry]) -> Option<String> {
    let mut finer = geometries.iter().filter(|geometry| geometry.lod.0.as_deref() != Some("0"));
    finer.next_back().map(|geometry| {
        let lod = geometry.lod.0.as_deref().unwrap_or("?");
        let why = roof_surfaces(geometry).err().unwrap_or(words::formats::NO_SURFACE_OF_IT_IS.now());
        words::formats::of_its_geometry_of_lod(&lod, &why)
    })
}

fn corners_of(rings: &Rings, document: &Document, header: &Header) -> Result<Vec<Vec<DVec3>>, Reason> {
    let corners = rings.iter().map(Vec::len).sum();
    if corners > crate::MOST_CORNERS {
        return Err(Reason::TooManyCorners(corners));
    }
    let corner = |index: &u32| {
        let vertex = header.vertex(*document.vertices.get(*index as usize).ok_or(Reason::NoVertex)?);
        if vertex.is_finite() { Ok(vertex) } else { Err(Reason::NoVertex) }
    };
    rings.iter().map(|ring| ring.iter().map(corner).collect()).collect()
}

fn bounds_of<'a>(corners: impl Iterator<Item = &'a DVec3>) -> Option<(DVec3, DVec3)> {
    corners.map(|&p| (p, p)).reduce(|a, b| (a.0.min(b.0), a.1.max(b.1)))
}

/// The lowest corner of all geometries examined, in the file's own unit.
fn lowest(parts: &[(&str, &Object)], document: &Document, header: &Header) -> Option<f64> {
    parts
        .iter()
        .flat_map(|(_, object)| object.geometry.as_deref().unwrap_or_default())
        .filter(|geometry| geometry.semantics.is_some())
        .flat_map(|geometry| geometry.boundaries.leaves())
        .filter_map(|index| Some(header.vertex(*document.vertices.get(index? as usize)?).z))
        .filter(|z| z.is_finite())
        .reduce(f64::min)
}
