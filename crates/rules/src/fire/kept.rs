//! What a plane must leave free for a pathway in any layout: for laying modules, and for upper bounds on how many fit.

use super::free::without;
use super::pathway::{blocks_a_path, clear_to_ridge, has_ridge, obstructed};
use super::plane_path;
use crate::view::{BesideView, FaceView, Snapshot};
use chalkcourse_geometry::EdgeKind;
use chalkcourse_geometry::fit::{Allowed, Constraint, Passage};
use chalkcourse_job::{FireAccess, PathScheme, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_limits::{TOLERANCE, looked_at};

/// Where a straight pathway may run along the eave of a face, ignoring modules: intervals in metres of its frame. Chimneys and
/// skylights are excluded.
pub fn ways_up(job: &Resolved, layout: &Layout, face: usize) -> Vec<(f64, f64)> {
    let snapshot = Snapshot::of(job, layout);
    let plane = snapshot.face(face).filter(|plane| plane.face.sound);
    plane.map_or_else(Vec::new, |plane| without(&clear_to_ridge(plane.face), obstructed(plane)))
}

/// What every layout that passes `check` leaves free on a plane with modules: if a pathway can neither be on another plane nor
/// straddle two, it is on the plane itself. `None` if none is required, or a pathway may be elsewhere.
///
/// A straight pathway is a strip; a winding one is a disc whose centre starts within its half width, plus a little, of an eave
/// and ends as near a ridge. Between the highest eave and the lowest ridge, less those margins, either crosses every level with
/// its full width free; over the height that is examined above and below its centre, a disc is slightly narrower.
pub fn passage(job: &Resolved, layout: &Layout, face: usize) -> Option<Passage> {
    let fire = job.rule_book.fire_access.as_ref()?;
    if plane_path::RULE.why_not(job).is_some() {
        return None;
    }
    let snapshot = Snapshot::of(job, layout);
    let plane = snapshot.whole().faces().find(|plane| plane.own.index == face)?;
    if !looked_at(fire, plane.own.face) || !has_ridge(plane) || may_be_elsewhere(plane, fire) {
        return None;
    }
    Some(across(plane.own, fire))
}

/// Whether a pathway on an adjacent plane, or straddling both, would do.
fn may_be_elsewhere(plane: BesideView<'_>, fire: &FireAccess) -> bool {
    fire.scheme.value == PathScheme::WholeRoof && plane.beside().any(|other| looked_at(fire, other.face))
}

fn across(plane: FaceView<'_>, fire: &FireAccess) -> Passage {
    let face = plane.face;
    let factor = face.plane.pitch.slope_factor();
    let half = (fire.path_width.value.metres() / 2.0 - TOLERANCE).max(0.0);
    let heights = |kind: EdgeKind| {
        let spans = face.edges.iter().filter(move |span| span.kind == kind);
        spans.flat_map(|span| [span.frame.0.y, span.frame.1.y])
    };
    let above = heights(EdgeKind::Eave).fold(f64::NEG_INFINITY, f64::max);
    let below = heights(EdgeKind::Ridge).fold(f64::INFINITY, f64::min);
    let near = (half + super::pathway::NEAR_END + 1e-3) * factor;
    let solid = plane.through().iter().filter(|it| blocks_a_path(it.placed.kind));
    let blocked = (0..).zip(solid).map(|(id, it)| Constraint { id, shape: it.on.outline.clone() }).collect();
    let ways = Allowed {
        region: vec![face.frame.clone()],
        blocked,
        foot: None,
        tolerance: 2.0 * TOLERANCE * factor,
    };
    let rise = Passage::HEIGHT / 2.0;
    let width = 2.0 * (half * half - rise * rise).max(0.0).sqrt();
    Passage { ways, width, levels: [above + near, below - near] }
}

#[cfg(test)]
mod tests {
    use super::{passage, ways_up};
    use crate::testing::{face, gable_job};
    use chalkcourse_job::Resolved;
    use chalkcourse_layout::Layout;

    fn of(job: &Resolved) -> (Vec<(f64, f64)>, Option<f64>) {
        let layout = Layout::of(job);
        (ways_up(job, &layout, 0), passage(job, &layout, 0).map(|way| way.width))
    }

    /// On a gable, each plane needs its own; where an adjacent plane meets it over a hip, the pathway may be there. A slanted
    /// rake leaves less room for a strip.
    #[test]
    fn a_plane_without_neighbours_needs_its_own() {
        let mut job = gable_job();
        job.faces = vec![
            face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (11.998, 4.0), (0.002, 4.0)], 6.0, 180.0, 3.0),
            face(2, "North", &[(12.0, 8.0), (0.0, 8.0), (0.002, 4.0), (11.998, 4.0)], 6.0, 0.0, 3.0),
        ];
        let (ways, width) = of(&job);
        assert!(ways.len() == 1 && (ways[0].0 - 0.002).abs() < 1e-6 && (ways[0].1 - 11.998).abs() < 1e-6);
        // Half of 36 in less a tolerance is 0.4571 m; 0.025 m above and below its centre a disc is 2 √(0.4571² - 0.025²) wide.
        assert!(width.is_some_and(|width| (width - 0.91283).abs() < 1e-5), "{width:?}");
        job.faces = vec![
            face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (8.0, 4.0), (4.0, 4.0)], 6.0, 180.0, 3.0),
            face(2, "East", &[(12.0, 0.0), (12.0, 8.0), (8.0, 4.0)], 6.0, 90.0, 3.0),
            face(4, "North", &[(12.0, 8.0), (0.0, 8.0), (4.0, 4.0), (8.0, 4.0)], 6.0, 0.0, 3.0),
            face(5, "West", &[(0.0, 8.0), (0.0, 0.0), (4.0, 4.0)], 6.0, 270.0, 3.0),
        ];
        let (ways, width) = of(&job);
        assert_eq!((ways, width), (vec![(4.0, 8.0)], None));
        job.site.building.detached_uninhabited = true;
        assert_eq!(of(&job).1, None);
    }
}
