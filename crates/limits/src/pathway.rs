//! A region reserved as a fire-service pathway stays free.
//!
//! Source: IRC R324.6.1 / IFC 1205.2.1 (2018 on), or IFC 605.11 (2012, 2015), as the rule book says. Where a pathway runs is
//! decided for a whole layout; once chosen, it keeps modules off like any other limit.

use crate::fire::exempt;
use crate::keep_out::{Against, KeepOut, RequiredBy, Shape};
use crate::limit::Limit;
use crate::site::Site;

pub(crate) const LIMIT: Limit = Limit { code: "fire-plane-path", missing: exempt, gives };

fn gives(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    let Some(fire) = site.job.rule_book.fire_access.as_ref() else { return };
    found.extend(site.given.kept.iter().map(|kept| {
        let shape = Shape::Pieces(vec![kept.clone()]);
        let by = RequiredBy::Source(fire.path_width.source.clone());
        KeepOut { asked: kept.bounds().size().x, ..KeepOut::of(LIMIT.code, Against::Pathway, shape).by(by) }
    }));
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable, module};
    use crate::{KeepOut, KeepOutContext, keep_outs};
    use chalkcourse_geometry::{Convex, Rect, dvec2};
    use chalkcourse_job::Resolved;
    use chalkcourse_layout::Layout;

    #[test]
    fn reserved_pathways_stay_free_unless_the_site_is_exempt() {
        let mut job = gable();
        let layout = Layout::of(&job);
        let kept = vec![Convex::rect(&Rect::at(dvec2(0.0, -1.0), dvec2(0.9, 9.0)))];
        let given = KeepOutContext { kept, ..KeepOutContext::as_laid(&job, &layout) };
        let of = |job: &Resolved| -> Vec<KeepOut> {
            let all = keep_outs(job, &layout, 0, &given);
            all.into_iter().filter(|keep_out| keep_out.rule == "fire-plane-path").collect()
        };
        let found = of(&job);
        assert!(found[0].clears(&module(0.9, 2.0)) && !found[0].clears(&module(0.89, 2.0)));
        job.site.building.detached_uninhabited = true;
        assert!(of(&job).is_empty());
    }
}
