//! Where the leads of each module begin, and how long the way of a cable is from one to the next.

use chalkcourse_geometry::{DVec2, Neighbour, Roof, Tolerances, dvec2};
use chalkcourse_job::{JunctionBox, ModuleAt, Resolved};
use chalkcourse_layout::Layout;

/// A module's device, or the box at its back: where its leads begin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Device {
    /// Which module.
    pub at: ModuleAt,
    /// Index of its face.
    pub face: usize,
    /// Where, in the face's frame, metres.
    pub point: DVec2,
}

/// The devices of all modules on sound faces, block by block, row by row from the eave.
pub fn devices(job: &Resolved, layout: &Layout) -> Vec<Device> {
    let (along, up) =
        job.kit.wiring.as_ref().map_or((0.5, 0.5), |wiring| (wiring.leads.along, wiring.leads.up));
    let sound = |face: usize| layout.roof.faces.get(face).is_some_and(|face| face.sound);
    let on_roof = layout.blocks.iter().filter(|block| sound(block.face));
    on_roof
        .flat_map(|block| {
            block.modules.iter().map(move |module| Device {
                at: ModuleAt { block: block.id, cell: module.cell },
                face: block.face,
                point: module.rect.min + module.rect.size() * dvec2(along, up),
            })
        })
        .collect()
}

/// The face under a junction box and where it is on it; the highest of several. `None` where it is on none.
pub fn face_of_box(roof: &Roof, junction: &JunctionBox) -> Option<(usize, DVec2)> {
    let under =
        roof.faces.iter().enumerate().filter(|(_, face)| face.sound && face.plan.contains(junction.at));
    let top = under.max_by(|a, b| {
        let height = |face: &chalkcourse_geometry::RoofFace| face.plane.height_at(junction.at);
        height(a.1).total_cmp(&height(b.1))
    });
    top.map(|(index, face)| (index, face.plane.to_frame(junction.at)))
}

/// How long the way of a cable is between two places on the roof, in metres: along the eave and up the slope, never aslant, on
/// one face or over a line that two faces share. `None` where they share none, or a wall.
pub(crate) fn way(roof: &Roof, from: (usize, DVec2), to: (usize, DVec2)) -> Option<f64> {
    let aside = |a: DVec2, b: DVec2| (a - b).abs().element_sum();
    if from.0 == to.0 {
        return Some(aside(from.1, to.1));
    }
    let (one, other) = (roof.faces.get(from.0)?, roof.faces.get(to.0)?);
    // A cable goes over a step, not up a wall.
    let step = Tolerances::default().step;
    let goes_over =
        |beyond: Neighbour| beyond.face == to.0 && beyond.gap.0.abs() <= step && beyond.gap.1.abs() <= step;
    let shared = one.edges.iter().filter(|span| span.neighbour.is_some_and(goes_over));
    let over = shared.map(|span| {
        let (start, end) = span.frame;
        let (other_start, other_end) = (other.plane.to_frame(span.plan.0), other.plane.to_frame(span.plan.1));
        let at = |share: f64| {
            aside(from.1, start.lerp(end, share)) + aside(to.1, other_start.lerp(other_end, share))
        };
        // Each coordinate's part falls and rises again: the sum is least where one of them turns, or at an end.
        let turns = [
            share_at(from.1.x, start.x, end.x),
            share_at(from.1.y, start.y, end.y),
            share_at(to.1.x, other_start.x, other_end.x),
            share_at(to.1.y, other_start.y, other_end.y),
            0.0,
            1.0,
        ];
        turns.into_iter().map(at).fold(f64::INFINITY, f64::min)
    });
    over.min_by(f64::total_cmp)
}

/// The share of the way from `start` to `end` at which a coordinate is reached, 0 to 1.
fn share_at(coordinate: f64, start: f64, end: f64) -> f64 {
    let share = (coordinate - start) / (end - start);
    if share.is_finite() { share.clamp(0.0, 1.0) } else { 0.0 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{gable, junction};
    use chalkcourse_layout::Layout;

    /// Leads begin at half of 1.722 m and three quarters of 1.134 m; neighbours are 1.725 m apart, rows 1.137 m.
    #[test]
    fn where_devices_are() {
        let job = gable();
        let layout = Layout::of(&job);
        let devices = devices(&job, &layout);
        assert_eq!(devices.len(), 6);
        assert!((devices[0].point - dvec2(3.0 + 0.861, 1.0 + 0.8505)).length() < 1e-9, "{:?}", devices[0]);
        let apart = |a: usize, b: usize| {
            let of = |at: usize| (devices[at].face, devices[at].point);
            way(&layout.roof, of(a), of(b)).unwrap()
        };
        assert!((apart(0, 1) - 1.725).abs() < 1e-9 && (apart(0, 3) - 1.137).abs() < 1e-9);
        assert!((apart(0, 4) - 2.862).abs() < 1e-9, "along and up, not aslant");
    }

    /// Over the ridge of a gable 12 m deep at 6:12: from 1 m in plan before it to 2 m behind it and 3 m aside. (1 + 2) √1.25 + 3 = 6.354.
    #[test]
    fn over_a_ridge() {
        let job = gable();
        let roof = Layout::of(&job).roof;
        let place = |x: f64, y: f64| face_of_box(&roof, &junction(1, x, y)).unwrap();
        let (a, b) = (place(4.0, 5.0), place(7.0, 8.0));
        assert_ne!(a.0, b.0);
        let expected = 3.0 * 1.25_f64.sqrt() + 3.0;
        assert!((way(&roof, a, b).unwrap() - expected).abs() < 1e-9);
        assert!((way(&roof, b, a).unwrap() - expected).abs() < 1e-9);
        assert_eq!(face_of_box(&roof, &junction(1, 40.0, 5.0)), None);
    }

    /// No other place of the shared line makes the way shorter, on faces whose frames begin anywhere: 3,000 are tried.
    #[test]
    fn over_the_best_place_of_the_line() {
        let mut job = gable();
        job.faces[0].datum = dvec2(5.0, 2.0);
        job.faces[0].height = chalkcourse_geometry::Length::from_metres(4.0);
        job.faces[1].datum = dvec2(9.0, 12.0);
        let roof = Layout::of(&job).roof;
        for (x, y, x2, y2) in
            [(4.0, 5.0, 7.0, 8.0), (9.0, 1.0, 2.0, 11.0), (0.5, 0.5, 11.5, 7.0), (6.0, 3.0, 6.0, 9.0)]
        {
            let place = |x: f64, y: f64| face_of_box(&roof, &junction(1, x, y)).unwrap();
            let (a, b) = (place(x, y), place(x2, y2));
            let aside = |a: DVec2, b: DVec2| (a - b).abs().element_sum();
            let over = |share: f64| {
                let at = dvec2(12.0 * share, 6.0);
                let frame = |face: usize| roof.faces[face].plane.to_frame(at);
                aside(a.1, frame(a.0)) + aside(frame(b.0), b.1)
            };
            let best = (0..=3000).map(|at| over(f64::from(at) / 3000.0)).fold(f64::INFINITY, f64::min);
            let told = way(&roof, a, b).unwrap();
            assert!(told <= best + 1e-9 && told >= best - 0.01, "{told}, tried {best}");
        }
    }
}
