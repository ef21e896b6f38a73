//! Both sides of a level ridge are clear, depending on the share of the plan roof area that the array covers.
//!
//! Source: IRC R324.6.2 / IFC 1205.2.2: 18 in for up to 33 % (66 % with sprinklers), 36 in beyond. The share is of the whole
//! roof, and exactly 33 % counts as not more; the distance is measured in plan, the safe reading of a code that specifies
//! neither.

use super::exempt;
use crate::keep_out::{KeepOut, RequiredBy};
use crate::limit::Limit;
use crate::share::Share;
use crate::site::Site;
use chalkcourse_geometry::EdgeKind;
use chalkcourse_job::Resolved;

pub(crate) const LIMIT: Limit = Limit { code: "fire-ridge", missing: exempt, gives };

impl Share {
    /// The ridge setback required in a job, metres in plan; 0 if none is.
    pub fn asked(self, job: &Resolved) -> f64 {
        let fire = job.rule_book.fire_access.as_ref().filter(|_| LIMIT.off(job).is_none());
        fire.map_or(0.0, |fire| self.room(fire).value.metres())
    }
}

fn gives(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    let Some(fire) = site.fire() else { return };
    let room = site.given.share.room(fire);
    for side in site.sides_with(|span| span.kind == EdgeKind::Ridge) {
        let by = RequiredBy::Source(room.source.clone());
        let beside = side.keep_out(LIMIT.code, room.value.metres()).by(by);
        found.push(KeepOut { metric: site.in_plan(), ..beside });
    }
}

#[cfg(test)]
mod tests {
    use crate::share::Share;
    use crate::testing::{INCH, SLOPE, book, gable, just, of};
    use crate::{Exemption, OffReason, off};
    use chalkcourse_geometry::{DVec2, Pitch};
    use chalkcourse_job::Building;

    /// 18 in of plan.
    #[test]
    fn short_of_at_and_beyond_18_in_in_plan() {
        just(&gable(), "fire-ridge", (3.0, (6.0 - 18.0 * INCH) * SLOPE - 1.134), DVec2::Y);
    }

    /// IRC R324.6.2 (2018): 18 in up to 33 %, 36 in beyond; with sprinklers 66 % (from memory).
    #[test]
    fn the_share_decides() {
        let mut job = gable();
        let inches = |share: Share, job: &_| (share.asked(job) / INCH).round();
        for (share, expect) in [(0.0, 18.0), (0.33, 18.0), (0.331, 36.0), (0.9, 36.0)] {
            assert_eq!(inches(Share::of(&job, share), &job), expect, "{share}");
        }
        job.site.building = Building { sprinklers: true, ..Building::default() };
        for (share, expect) in [(0.331, 18.0), (0.66, 18.0), (0.661, 36.0)] {
            assert_eq!(inches(Share::of(&job, share), &job), expect, "{share} with sprinklers");
        }
        book(&mut job).off.insert("fire-ridge".into());
        assert_eq!(Share::Beyond.asked(&job), 0.0);
    }

    #[test]
    fn exempt_sites_have_no_limit() {
        let with = |building: Building| {
            let mut job = gable();
            job.site.building = building;
            (off(&job, "fire-ridge"), of(&job, "fire-ridge").len())
        };
        assert_eq!(with(Building::default()), (None, 1));
        let detached = Building { detached_uninhabited: true, ..Building::default() };
        assert_eq!(with(detached), (Some(OffReason::Exempt(Exemption::Detached)), 0));
        let found = Building { no_roof_operations: " Chief Ashdown ".into(), ..Building::default() };
        assert_eq!(with(found), (Some(OffReason::Exempt(Exemption::NoRoofOperations)), 0));
        // The integrated exemption is off in the book, whoever read the listing.
        let integrated = Building { integrated_listing_read_by: "R. Vale".into(), ..Building::default() };
        assert_eq!(with(integrated), (None, 1));
        let mut flat = gable();
        flat.faces[0].pitch = Pitch::from_rise_in_12(2.0).unwrap();
        assert!(of(&flat, "fire-ridge").is_empty(), "a plane of 2:12 is not looked at");
    }
}
