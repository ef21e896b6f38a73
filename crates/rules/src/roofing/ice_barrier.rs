//! How far the ice barrier extends along the eaves: for the checklist, since it is no fault of the job.

use chalkcourse_geometry::{Length, Pitch};
use chalkcourse_job::{Resolved, Source};
use chalkcourse_layout::{Layout, known};
use std::collections::BTreeMap;

/// Extent of an ice barrier.
#[derive(Clone, Debug, PartialEq)]
pub enum IceBarrier {
    /// This far inside the outer wall, in plan; the length on the slope is unknown without the overhang.
    InsideWall(Length, Source),
    /// This far up the slope, on faces of one pitch.
    OnFaces {
        /// Indices of the faces.
        faces: Vec<usize>,
        /// Their pitch.
        pitch: Pitch,
        /// From the eave up the slope.
        reach: Length,
        /// Its source.
        source: Source,
    },
}

/// How far an ice barrier extends up the slope: to `inside` the wall line past the overhang, both in plan, and from a certain
/// pitch on at least a length along the slope.
pub fn ice_barrier_length(
    pitch: Pitch,
    overhang: Length,
    inside: Length,
    at_least: Option<Length>,
) -> Length {
    let reach = (overhang.metres() + inside.metres()) * pitch.slope_factor();
    Length::from_metres(at_least.map_or(reach, |least| reach.max(least.metres())))
}

/// The book's ice barrier on the faces of a job; empty if it requires none.
pub fn ice_barrier(job: &Resolved, layout: &Layout) -> Vec<IceBarrier> {
    let Some(ice) = job.rule_book.roofing.as_ref().and_then(|roofing| roofing.ice_barrier.as_ref()) else {
        return Vec::new();
    };
    let inside = &ice.inside_wall;
    // Faces with the same pitch and overhang need the same length; the overhang entered when raising the house is known.
    let mut alike: BTreeMap<(u64, u64), (Pitch, Length, Vec<usize>)> = BTreeMap::new();
    let mut unknown = false;
    for (index, face) in layout.roof.faces.iter().enumerate().filter(|(_, face)| face.sound) {
        let Some(overhang) = job.faces.get(index).and_then(|face| known::overhang(job, face.id)) else {
            unknown = true;
            continue;
        };
        let (pitch, overhang) = (face.plane.pitch, overhang.length);
        let key = ((pitch.rise_in_12() * 10.0).round() as u64, (overhang.metres() * 1e4).round() as u64);
        alike.entry(key).or_insert((pitch, overhang, Vec::new())).2.push(index);
    }
    let lines = alike.into_values().map(|(pitch, overhang, faces)| {
        let steep = pitch.slope() >= ice.steep_from.value.slope() - super::SLACK;
        let least = steep.then_some(ice.steep_length.value);
        IceBarrier::OnFaces {
            faces,
            pitch,
            reach: ice_barrier_length(pitch, overhang, inside.value, least),
            source: if steep { ice.steep_length.source.clone() } else { inside.source.clone() },
        }
    });
    let asked = (unknown || layout.roof.faces.iter().all(|face| !face.sound))
        .then(|| IceBarrier::InsideWall(inside.value, inside.source.clone()));
    asked.into_iter().chain(lines).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand: (12 + 24) in × 1.118 at 6:12 (IRC R905.1.2, 2018; slope factors of the trade's tables); at 8:12 no less than 36
    /// in along the slope.
    #[test]
    fn ice_barrier_on_the_slope() {
        let inches = Length::from_inches;
        let pitch = |rise| Pitch::from_rise_in_12(rise).unwrap();
        let at = |rise, overhang, least| {
            ice_barrier_length(pitch(rise), inches(overhang), inches(24.0), least).inches()
        };
        assert!((at(6.0, 12.0, None) - 40.249).abs() < 1e-3);
        assert!((at(8.0, 0.0, Some(inches(36.0))) - 36.0).abs() < 1e-9);
        assert!((at(8.0, 12.0, Some(inches(36.0))) - 36.0 * 1.2019).abs() < 1e-2);
    }
}
