//! An ell: its ridge runs into the roof of the house, whatever depth it was drawn with.

use super::lean::{away, to_house};
use super::{outward_sides, slope_at};
use chalkcourse_geometry::raise::{SideRef, Treatment};
use chalkcourse_geometry::{DVec2, Length};
use chalkcourse_job::{PartKind, PartSide, Resolved, RoofPart};
use chalkcourse_layout::Layout;
use chalkcourse_plan::{Ends, RaiseAs};

/// A side drawn within this distance of the house's wall touches it, metres.
const TOUCHES: f64 = 0.3;
/// Sampling distance along the middle of an ell, metres.
const STEP: f64 = 0.05;

/// Where an ell meets the house.
struct Meeting {
    /// The side inside the house, and the opposite one.
    back: SideRef,
    front: SideRef,
    /// Unit vector into the house.
    into: DVec2,
    /// Where the middle of the ell crosses the house's wall, in plan.
    at: DVec2,
}

/// Extends an ell into the house: its end there is hidden, its ridge continues to where it meets the slope, but not
/// beyond the ridge of the house. Unchanged if it meets no house, or no slope that falls towards it.
pub(super) fn run_into(part: &mut RoofPart, job: &Resolved, layout: &Layout, how: &RaiseAs) {
    let Some(meeting) = meeting(part, job) else { return };
    let Meeting { back, front, into, at } = meeting;
    let rectangle = part.outline.outer.len() == 4;
    for (ring, sides) in part.sides.iter_mut().enumerate() {
        for (side, there) in sides.iter_mut().enumerate() {
            let this = SideRef { ring, side };
            if this == back {
                *there = PartSide { treatment: Treatment::Gable, overhang: Length::ZERO, ..*there };
            } else if rectangle {
                let gable = this == front && how.ends == Ends::Gable;
                let treatment = if gable { Treatment::Gable } else { Treatment::Slope(how.pitch) };
                *there = PartSide { treatment, ..*there };
            }
        }
    }
    let Some((a, b)) = part.wall_line(back) else { return };
    // A little inside the wall, where there is the roof of the house and nothing that leans on it.
    let Some((plane, top)) = slope_at(layout, at + into * STEP * 2.0) else { return };
    if plane.downslope.unit().dot(into) > -0.7 || plane.pitch.slope() <= 0.0 {
        return;
    }
    let ridge = part.eave_height.metres() + a.distance(b) / 2.0 * how.pitch.slope();
    let rise = ridge.min(top) - plane.height_at(at);
    let run = (rise / (plane.pitch.slope() * -plane.downslope.unit().dot(into))).max(0.0);
    let goes_on = run - ((a + b) / 2.0 - at).dot(into);
    reach(part, back, into * goes_on);
}

/// Moves the ends of a side if both adjacent sides run in that direction, so that it keeps its length.
fn reach(part: &mut RoofPart, side: SideRef, by: DVec2) {
    let corners = &part.outline.outer;
    let count = corners.len();
    let (one, other) = (side.side, (side.side + 1) % count);
    let corner = |at: usize| corners.get(at % count).copied().unwrap_or_default();
    let along =
        |from: usize, to: usize| (corner(to) - corner(from)).normalize_or_zero().dot(by.normalize_or_zero());
    let before = along(side.side + count - 1, one);
    let after = along(other + 1, other);
    if before.abs() < 0.999 || after.abs() < 0.999 {
        return;
    }
    for at in [one, other] {
        if let Some(p) = part.outline.outer.get_mut(at) {
            *p += by;
        }
    }
}

/// Where an ell meets the nearest house.
fn meeting(part: &RoofPart, job: &Resolved) -> Option<Meeting> {
    let roofed = job
        .parts
        .iter()
        .filter(|other| matches!(other.kind, PartKind::Main | PartKind::Ell | PartKind::Other));
    let house = roofed.min_by(|a, b| away(a, part).total_cmp(&away(b, part)))?;
    let outs = outward_sides(part);
    let inside = |p: DVec2| house.outline.contains(p);
    // The end in the house is inside it or at its wall, and faces into it; among several the one opposite an end that
    // is outside.
    let far = |front: &(SideRef, DVec2, DVec2)| to_house(house, front.1);
    let ends = outs.iter().filter(|(_, middle, out)| {
        to_house(house, *middle) <= TOUCHES && inside(*middle + *out * (TOUCHES + STEP)) || inside(*middle)
    });
    let facing = |way: DVec2| {
        outs.iter().filter(move |(.., out)| out.dot(way) < -0.99).max_by(|a, b| far(a).total_cmp(&far(b)))
    };
    let (back, front) = ends
        .filter_map(|back| Some((back, facing(back.2)?)))
        .filter(|(_, front)| !inside(front.1))
        .max_by(|a, b| far(a.1).total_cmp(&far(b.1)))?;
    let into = back.2;
    let depth = (back.1 - front.1).dot(into) + TOUCHES + STEP;
    let across = back.1 - front.1;
    let middle = |far: f64| front.1 + (across - into * across.dot(into)) + into * far;
    let steps = (depth / STEP).clamp(0.0, 10_000.0) as usize;
    let first = (0..=steps).map(|step| step as f64 * STEP).find(|&far| inside(middle(far)))?;
    // Locate the wall within the last step by bisection.
    let (mut outside, mut within) = (first - STEP, first);
    for _ in 0..40 {
        let half = (outside + within) / 2.0;
        *if inside(middle(half)) { &mut within } else { &mut outside } = half;
    }
    let at = middle(within);
    Some(Meeting { back: back.0, front: front.0, into, at })
}

#[cfg(test)]
mod tests {
    use crate::edits::parting::new_part;
    use crate::edits::usual_roof;
    use crate::sample;
    use crate::state::PartPreset;
    use chalkcourse_geometry::{DVec2, EdgeKind, Length, Polygon, dvec2};
    use chalkcourse_job::{Edit, Resolved, apply};
    use chalkcourse_layout::Layout;
    use chalkcourse_plan::{Ends, RaiseAs, part_over};

    const FOOT: f64 = 0.3048;

    fn rectangle(x: (f64, f64), y: (f64, f64), turned: f64) -> Polygon {
        let at = |x: f64, y: f64| DVec2::from_angle(turned).rotate(dvec2(x, y) * FOOT);
        Polygon::new(vec![at(x.0, y.0), at(x.1, y.0), at(x.1, y.1), at(x.0, y.1)])
    }

    /// A house of 48 by 30 ft, 6:12, with its ridge along the long side, 15 ft from the south wall.
    fn with_ell(ends: Ends, ell: (f64, f64), deep: f64, turned: f64) -> (Resolved, Layout) {
        let how = RaiseAs { ends, ..usual_roof() };
        let job = sample::empty();
        let house = part_over(&job, &rectangle((0.0, 48.0), (0.0, 30.0), turned), &how);
        let job = apply(&job, &Edit::PutPart(house)).unwrap();
        let outline = rectangle(ell, (-12.0, deep), turned);
        let part = new_part(&job, &Layout::of(&job), PartPreset::Ell, &outline, &how);
        let job = apply(&job, &Edit::PutPart(part)).unwrap();
        let layout = Layout::of(&job);
        (job, layout)
    }

    fn kinds(layout: &Layout, kind: EdgeKind) -> usize {
        layout.roof.lines().iter().filter(|line| line.kind == kind).count()
    }

    /// By hand: an ell 16 ft wide with the same pitch and eaves has its ridge 8 ft / 2 above the eaves and meets the
    /// slope 8 ft in, with a valley on either side; wherever its end was drawn, and however the house is oriented.
    #[test]
    fn the_ridge_runs_into_the_slope_from_any_depth() {
        for turned in [0.0, 0.5, 2.0] {
            for deep in [0.0, -0.5, 3.0, 12.0, 26.0] {
                let (job, layout) = with_ell(Ends::Gable, (10.0, 26.0), deep, turned);
                let ell = &job.parts[1];
                let south = DVec2::from_angle(turned).rotate(dvec2(0.0, 1.0));
                let reach =
                    ell.outline.outer.iter().map(|p| p.dot(south) / FOOT).fold(f64::NEG_INFINITY, f64::max);
                assert!((reach - 8.0).abs() < 1e-6, "{turned} {deep}: {reach}");
                assert_eq!(kinds(&layout, EdgeKind::Valley), 2, "{turned} {deep}");
                assert_eq!(kinds(&layout, EdgeKind::Hip), 0, "{turned} {deep}");
                assert_eq!(kinds(&layout, EdgeKind::Ridge), 2, "{turned} {deep}");
            }
        }
    }

    #[test]
    fn a_hipped_ell_hips_at_its_free_end_alone() {
        for deep in [0.0, 12.0, 26.0] {
            let (_, layout) = with_ell(Ends::Hip, (12.0, 28.0), deep, 0.0);
            assert_eq!(kinds(&layout, EdgeKind::Valley), 2, "{deep}");
            assert_eq!(kinds(&layout, EdgeKind::Hip), 4 + 2, "{deep}: four of the house, two of the ell");
        }
    }

    /// If it is as wide as the house is deep, its ridge meets that of the house; if wider, it goes no farther.
    #[test]
    fn no_ell_goes_beyond_the_ridge() {
        for (wide, goes) in [(30.0, 15.0), (40.0, 15.0)] {
            let (job, _) = with_ell(Ends::Gable, (4.0, 4.0 + wide), 5.0, 0.0);
            let reach = job.parts[1].outline.outer.iter().map(|p| p.y / FOOT).fold(0.0, f64::max);
            assert!((reach - goes).abs() < 1e-6, "{wide}: {reach}");
        }
    }

    #[test]
    fn an_ell_that_meets_no_slope_stays_as_drawn() {
        let how = usual_roof();
        let job = sample::empty();
        let house = part_over(&job, &rectangle((0.0, 48.0), (0.0, 30.0), 0.0), &how);
        let job = apply(&job, &Edit::PutPart(house)).unwrap();
        let drawn = rectangle((60.0, 80.0), (0.0, 12.0), 0.0);
        let apart = new_part(&job, &Layout::of(&job), PartPreset::Ell, &drawn, &how);
        assert_eq!(apart.outline, drawn);
        // Against the gable wall there is no slope to run into: it ends at the wall.
        let drawn = rectangle((48.0, 60.0), (5.0, 25.0), 0.0);
        let aside = new_part(&job, &Layout::of(&job), PartPreset::Ell, &drawn, &how);
        assert_eq!(aside.outline, drawn);
        assert!(aside.sides.iter().flatten().any(|side| side.overhang == Length::ZERO));
    }
}
