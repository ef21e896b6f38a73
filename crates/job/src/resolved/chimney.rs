//! A chimney: a box that makes a hole in the roof, and the cricket upslope of it.

use super::surface::{Edge, Surface};
use crate::{FromPart, RoofPart};
use chalkcourse_geometry::raise::RaiseError;
use chalkcourse_geometry::{DVec2, DVec3, Pitch, Plane, Polygon, signed_area};
use std::collections::BTreeMap;

/// The top of the box.
///
/// # Errors
/// [`RaiseError::Outline`] for an invalid outline.
pub(super) fn top(part: &RoofPart) -> Result<Vec<Surface>, RaiseError> {
    if let Some(&defect) = part.outline.defects(1e-3).first() {
        return Err(RaiseError::Outline(defect));
    }
    let datum = part.outline.outer.first().copied().unwrap_or_default().extend(part.eave_height.metres());
    Ok(vec![Surface {
        from: FromPart { part: part.id, side: 0, piece: 0 },
        sides: Vec::new(),
        outline: Polygon::new(part.outline.outer.clone()),
        plane: Plane { datum, pitch: Pitch::FLAT, downslope: Default::default() },
        borders: Vec::new(),
        deck: false,
        kinds: BTreeMap::new(),
    }])
}

/// Its walls.
pub(super) fn edges(part: &RoofPart) -> Vec<Edge> {
    let turned = signed_area(&part.outline.outer) < 0.0;
    let walls = part.outline.sides().filter(|&(ring, ..)| ring == 0);
    walls
        .zip(part.sides.iter().flatten())
        .map(|((.., a, b), side)| Edge { line: if turned { (b, a) } else { (a, b) }, side: side.id })
        .collect()
}

/// The two faces of a cricket: a level ridge from the middle of the side that faces up the slope, back to where it
/// meets the roof. Each face belongs to the side of the chimney that it drains past. `None` if there is no such side,
/// or no roof that rises there.
pub(super) fn cricket(part: &RoofPart, pitch: Pitch, roofs: &[&Surface]) -> Option<[Surface; 2]> {
    let ring = &part.outline.outer;
    let n = ring.len();
    let turn = signed_area(ring).signum();
    let middle = |i: usize| (ring[i] + ring[(i + 1) % n]) / 2.0;
    let out = |i: usize| (ring[i] - ring[(i + 1) % n]).perp().normalize_or_zero() * turn;
    // The topmost roof just beyond the middle of each side, and how far the side faces up its slope.
    let (side, below) = (0..n)
        .filter_map(|i| {
            let at = middle(i) + out(i) * 1e-3;
            let there = roofs.iter().filter(|surface| surface.outline.contains(at));
            let top = there.max_by(|a, b| a.plane.height_at(at).total_cmp(&b.plane.height_at(at)))?;
            Some((i, &top.plane, -top.plane.downslope.unit().dot(out(i))))
        })
        .filter(|&(.., up)| up > 0.7)
        .max_by(|a, b| a.2.total_cmp(&b.2))
        .map(|(i, plane, _)| (i, plane))?;
    let (before, after) = ((side + n - 1) % n, (side + 1) % n);
    let (start, end, mid) = (ring[side], ring[after], middle(side));
    let rise = start.distance(end) / 2.0 * pitch.slope();
    let climb = below.pitch.slope();
    if climb < 1e-3 || rise <= 0.0 {
        return None;
    }
    let level = below.height_at(mid) + rise;
    let back = mid - below.downslope.unit() * (rise / climb);
    let on_roof = |p: DVec2| p.extend(below.height_at(p));
    let face = |foot: DVec2, at: usize| -> Option<Surface> {
        let corners: [DVec3; 3] = [on_roof(foot), mid.extend(level), back.extend(level)];
        let plane = Plane::through(corners[0], corners[1], corners[2]).ok()?;
        let id = part.sides.first()?.get(at)?.id;
        let outline = Polygon::new(corners.iter().map(|corner| corner.truncate()).collect()).oriented();
        let from = FromPart { part: part.id, side: id, piece: 0 };
        Some(Surface {
            from,
            sides: vec![id],
            outline,
            plane,
            borders: Vec::new(),
            deck: true,
            kinds: BTreeMap::new(),
        })
    };
    Some([face(start, before)?, face(end, after)?])
}
