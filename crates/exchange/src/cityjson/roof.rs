//! A 3D surface as a face: fits a plane, measures the deviation from it, and projects the outline to plan.

use crate::local::without_repeats;
use crate::{MOST_OFF, MOST_REACH, Reason, Surface};
use chalkcourse_geometry::{Azimuth, DVec3, Pitch, Plane, Polygon};

/// Corners closer than this are merged, metres.
const SAME: f64 = 1e-3;
/// Surfaces steeper than this are walls, degrees.
const STEEPEST: f64 = 85.0;
/// A normal that leans less than this is vertical: the surface is level.
const LEVEL: f64 = 1e-9;

/// Twice the vector area of a 3D ring (Newell's method).
fn newell(ring: &[DVec3]) -> DVec3 {
    let Some(&first) = ring.first() else { return DVec3::ZERO };
    ring.iter().zip(ring.iter().cycle().skip(1)).map(|(&p, &q)| (p - first).cross(q - first)).sum()
}

/// Area of a 3D polygon, m².
pub(super) fn area(rings: &[Vec<DVec3>]) -> f64 {
    let mut areas = rings.iter().map(|ring| newell(ring).length() / 2.0);
    let outer = areas.next().unwrap_or(0.0);
    (outer - areas.sum::<f64>()).max(0.0)
}

/// A 3D polygon, in local metres, as a face.
pub(super) fn face_of(number: usize, rings: &[Vec<DVec3>], looks_out: bool) -> Result<Surface, Reason> {
    let outer = rings.first().filter(|ring| ring.len() >= 3).ok_or(Reason::TooFewCorners)?;
    let reach = rings.iter().flatten().map(|p| p.truncate().length()).fold(0.0, f64::max);
    if reach > MOST_REACH {
        return Err(Reason::TooFar(reach));
    }
    let doubled = newell(outer);
    let border: f64 = outer.iter().zip(outer.iter().cycle().skip(1)).map(|(p, q)| p.distance(*q)).sum();
    if doubled.length() <= SAME * border {
        return Err(Reason::NoArea);
    }
    let normal = doubled.normalize();
    let tilt = normal.z.abs().clamp(0.0, 1.0).acos().to_degrees();
    if tilt > STEEPEST {
        return Err(Reason::Upright(tilt));
    }
    if looks_out && normal.z < 0.0 {
        return Err(Reason::Underside);
    }
    let normal = if normal.z < 0.0 { -normal } else { normal };
    let middle = outer.iter().sum::<DVec3>() / outer.len() as f64;
    let off = rings.iter().flatten().map(|p| (*p - middle).dot(normal).abs()).fold(0.0, f64::max);
    if off > MOST_OFF {
        return Err(Reason::OutOfPlane(off));
    }
    let lean = normal.truncate();
    let level = lean.length() <= LEVEL;
    let plane = Plane {
        datum: middle,
        pitch: Pitch::from_slope(lean.length() / normal.z).map_err(|_| Reason::Upright(tilt))?,
        downslope: if level { Azimuth::SOUTH } else { Azimuth::of(lean) },
    };
    let mut plans =
        rings.iter().map(|ring| without_repeats(ring.iter().map(|p| p.truncate()).collect(), SAME));
    let outline = Polygon { outer: plans.next().unwrap_or_default(), holes: plans.collect() };
    match outline.defects(SAME).into_iter().next() {
        Some(defect) => Err(Reason::Outline(defect)),
        None => Ok(Surface { number, outline, plane, off }),
    }
}
