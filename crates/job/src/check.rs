//! Conditions that each object must meet to be in a job at all, whether it comes from an edit or a file.

use crate::{Block, EditError, Face, Kit, OrderChoices, Penetration, RoofPart, Shape, Site, Underlay};
use chalkcourse_geometry::{DVec2, Length};
use chalkcourse_words::{Said, later as words};
use std::collections::BTreeSet;

/// Whether a point in metres is a plausible position: finite, and within 100 km of the origin along each axis.
pub(crate) fn is_place(p: DVec2) -> bool {
    p.is_finite() && p.abs().max_element() <= 1e5
}

fn is_sensible(length: Length) -> bool {
    length.metres() > 0.0 && length.metres() < 1000.0
}

/// Conditions for a face. An unsound outline is allowed: it is reported as a finding.
pub(crate) fn check_face(face: &Face) -> Result<(), EditError> {
    // When a file is read, a part's face has no outline yet.
    if !face.sides.are_sound() || (face.from.is_none() && !face.sides.fit(&face.outline)) {
        return Err(EditError::FaceSides {
            face: face.name.clone(),
            numbered: face.sides.rings().iter().map(Vec::len).collect(),
            drawn: face.outline.rings().map(<[DVec2]>::len).collect(),
        });
    }
    let places = face.outline.rings().flatten().chain(std::iter::once(&face.datum));
    if !places.copied().all(is_place) || !is_place(DVec2::splat(face.height.metres())) {
        return Err(EditError::NotAPlace { what: words::common::face_3(&face.name) });
    }
    if !is_sensible(face.courses.exposure) || !(0.0..1000.0).contains(&face.courses.first.metres()) {
        return Err(EditError::BadLength { what: words::job::the_courses_of_face(&face.name) });
    }
    Ok(())
}

/// Conditions for a part.
pub(crate) fn check_part(part: &RoofPart) -> Result<(), EditError> {
    let heights = part.sides.iter().flatten().filter_map(|side| side.eave_height).chain([part.eave_height]);
    let places = part.outline.rings().flatten().copied();
    let all = places.chain(heights.map(|height| DVec2::splat(height.metres())));
    if !all.into_iter().all(is_place) {
        return Err(EditError::NotAPlace { what: words::job::part_2(&part.name) });
    }
    let described: Vec<usize> = part.sides.iter().map(Vec::len).collect();
    let drawn: Vec<usize> = part.outline.rings().map(<[DVec2]>::len).collect();
    if described != drawn {
        return Err(EditError::PartSides { part: part.name.clone(), described, drawn });
    }
    let mut seen = BTreeSet::new();
    match part.sides.iter().flatten().find(|side| !seen.insert(side.id)) {
        Some(side) => Err(EditError::SideTwice { part: part.name.clone(), side: side.id }),
        None => Ok(()),
    }
}

pub(crate) fn check_site(site: &Site) -> Result<(), EditError> {
    match site.place {
        Some(place) if !place.is_on_globe() => {
            Err(EditError::NotOnGlobe { latitude: place.latitude, longitude: place.longitude })
        }
        _ => Ok(()),
    }
}

pub(crate) fn check_underlay(underlay: Option<&Underlay>) -> Result<(), EditError> {
    if underlay.is_none_or(Underlay::is_sensible) { Ok(()) } else { Err(EditError::BadUnderlay) }
}

pub(crate) fn check_penetration(penetration: &Penetration) -> Result<(), EditError> {
    let what = || words::job::penetration_2(&penetration.name);
    if !is_place(penetration.at) {
        return Err(EditError::NotAPlace { what: what() });
    }
    let sizes_hold = match &penetration.shape {
        Shape::Circle { diameter } => is_sensible(*diameter),
        Shape::Rectangle { along, up } => is_sensible(*along) && is_sensible(*up),
        Shape::Polygon { corners } => corners.len() >= 3 && corners.iter().copied().all(is_place),
    };
    let clearance_holds = penetration.clearance.is_none_or(|c| (0.0..1000.0).contains(&c.metres()));
    if sizes_hold && clearance_holds { Ok(()) } else { Err(EditError::BadLength { what: what() }) }
}

/// Conditions for order choices with a given kit. A number that the kit no longer has is allowed, so that changing the
/// kit does not lose decisions.
pub(crate) fn check_order(order: &OrderChoices, kit: &Kit) -> Result<(), Said> {
    order.check()?;
    match order.added.iter().position(|line| kit.part(&line.number).is_some()) {
        Some(index) => {
            Err(words::job::added_number_is_a_part(&index, &format_args!("{:?}", order.added[index].number)))
        }
        None => Ok(()),
    }
}

pub(crate) fn check_block(block: &Block) -> Result<(), EditError> {
    if !is_place(block.at) || !block.shifts.iter().all(|s| is_place(DVec2::splat(s.by.metres()))) {
        return Err(EditError::NotAPlace { what: words::common::block_3(&block.name) });
    }
    let cells = u64::from(block.rows) * u64::from(block.columns);
    if !(1..=Block::MOST_CELLS).contains(&cells) {
        return Err(EditError::BlockSize {
            name: block.name.clone(),
            rows: block.rows,
            columns: block.columns,
        });
    }
    if (0.0..1000.0).contains(&block.reveal.metres()) {
        Ok(())
    } else {
        Err(EditError::BadLength { what: words::job::the_reveal_of_block(&block.name) })
    }
}
