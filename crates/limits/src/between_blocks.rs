//! Two blocks on one face leave room for the flashing of both.
//!
//! Source: the kit's own clearance between blocks.

use crate::keep_out::{KeepOut, RequiredBy};
use crate::limit::Limit;
use crate::off::OffReason;
use crate::overlap::around;
use crate::site::Site;
use chalkcourse_geometry::Length;
use chalkcourse_job::Resolved;

pub(crate) const LIMIT: Limit = Limit {
    code: "between-blocks",
    missing: |job| (job.kit.clearances.between_blocks <= Length::ZERO).then_some(OffReason::NoRoomBetween),
    gives,
};

fn gives(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    let apart = apart(site.job);
    found.extend(site.standing().map(|block| around(LIMIT.code, block).reaching(apart).by(RequiredBy::Kit)));
}

/// Clearance between two blocks of one face, metres: 0 if none is required.
pub fn apart(job: &Resolved) -> f64 {
    if LIMIT.off(job).is_none() { job.kit.clearances.between_blocks.metres() } else { 0.0 }
}

#[cfg(test)]
mod tests {
    use crate::testing::{INCH, block, gable, just, kit, of};
    use chalkcourse_geometry::{DVec2, Length};

    #[test]
    fn short_of_at_and_beyond_the_kits_clearance() {
        let mut job = gable();
        job.blocks = vec![block(3, 1, (3.0, 1.0), 1, 1)];
        assert!(of(&job, "between-blocks").iter().all(|keep_out| keep_out.reach > 0.0));
        kit(&mut job).clearances.between_blocks = Length::from_inches(10.0);
        just(&job, "between-blocks", (3.0 + 1.722 + 10.0 * INCH, 1.0), DVec2::NEG_X);
        // Corner to corner, offset by 6 and 8 in: 10 in.
        let corner = (3.0 + 1.722 + 6.0 * INCH, 1.0 + 1.134 + 8.0 * INCH);
        just(&job, "between-blocks", corner, -DVec2::new(6.0, 8.0).normalize());
        kit(&mut job).clearances.between_blocks = Length::ZERO;
        assert!(of(&job, "between-blocks").is_empty() && super::apart(&job) == 0.0);
    }
}
