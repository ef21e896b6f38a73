//! A hip or valley with modules on both sides is clear on both.
//!
//! Source: IFC 605.11 (2012, 2015): 18 in. Editions from 2018 on have no such number, and books on them leave it out. A distance
//! on the slope is never less than in plan; the room is required in plan, as at the ridge.

use super::exempt;
use crate::keep_out::{KeepOut, RequiredBy};
use crate::limit::Limit;
use crate::off::OffReason;
use crate::site::Site;
use chalkcourse_geometry::{EdgeKind, EdgeSpan};

pub(crate) const LIMIT: Limit = Limit {
    code: "fire-hip-valley",
    missing: |job| {
        exempt(job).or_else(|| {
            let asked = job.rule_book.fire_access.as_ref().is_some_and(|fire| fire.hip_or_valley.is_some());
            (!asked).then_some(OffReason::NoNumberInEdition)
        })
    },
    gives,
};

fn gives(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    let Some(limit) = site.fire().and_then(|fire| fire.hip_or_valley.as_ref()) else { return };
    let between =
        |span: &EdgeSpan| matches!(span.kind, EdgeKind::Hip | EdgeKind::Valley) && site.covered_beyond(span);
    for side in site.sides_with(between) {
        let by = RequiredBy::Source(limit.source.clone());
        let beside = side.keep_out(LIMIT.code, limit.value.metres()).by(by);
        found.push(KeepOut { metric: site.in_plan(), ..beside });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{INCH, SLOPE, block, book, hip, just, of};
    use chalkcourse_geometry::{DVec2, Length};
    use chalkcourse_job::Limit;

    #[test]
    fn short_of_at_and_beyond_18_in_in_plan_with_modules_beyond() {
        let mut job = hip();
        let limit = Limit {
            value: Length::from_inches(18.0),
            source: chalkcourse_job::Source::new("IFC 605.11", chalkcourse_job::Standing::Confirmed),
        };
        book(&mut job).fire_access.as_mut().unwrap().hip_or_valley = Some(limit);
        assert!(of(&job, "fire-hip-valley").is_empty(), "modules on one side alone");
        job.blocks = vec![block(4, 2, (6.0, 0.5), 1, 1)];
        // Its corner is at plan height (0.5 + 1.134) / SLOPE; square to the 45° hip, the distance is 1/√2 of the horizontal one.
        let beside = 18.0 * INCH * std::f64::consts::SQRT_2;
        just(&job, "fire-hip-valley", ((0.5 + 1.134) / SLOPE + beside, 0.5), DVec2::NEG_X);
    }
}
