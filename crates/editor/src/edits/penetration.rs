use crate::text;
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{Penetration, PenetrationId, PenetrationKind, Resolved, Shape};

/// A penetration at a point in plan, with the next id and a unique name.
pub(crate) fn new_penetration(job: &Resolved, kind: PenetrationKind, at: DVec2, shape: Shape) -> Penetration {
    let (id, name) = (PenetrationId(job.next_id), text::new_penetration_name(job, kind));
    Penetration { id, name, kind, at, shape, clearance: None }
}
