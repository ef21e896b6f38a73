//! Modules keep the setback of each kind of edge, measured square to the edge on the slope.
//!
//! Source: the rule book, per kind: see its `setbacks`. The edges of holes count.

use crate::keep_out::{KeepOut, RequiredBy};
use crate::limit::Limit;
use crate::off::OffReason;
use crate::site::Site;
use chalkcourse_geometry::Length;

pub(crate) const LIMIT: Limit = Limit {
    code: "setback",
    missing: |job| job.rule_book.setbacks.is_empty().then_some(OffReason::NoSetbacks),
    gives,
};

fn gives(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    for side in site.sides() {
        let Some(limit) = site.job.rule_book.setbacks.get(&side.kind) else { continue };
        if limit.value > Length::ZERO {
            let by = RequiredBy::Source(limit.source.clone());
            found.push(side.keep_out(LIMIT.code, limit.value.metres()).by(by));
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{INCH, SLOPE, book, gable, hip, just, module, of};
    use crate::{Against, OffReason, off};
    use chalkcourse_geometry::{DVec2, EdgeKind};

    #[test]
    fn each_kind_has_its_own() {
        // The demo book: rake 12 in, eave 6 in, ridge 18 in.
        just(&gable(), "setback", (12.0 * INCH, 2.0), DVec2::NEG_X);
        just(&gable(), "setback", (3.0, 6.0 * INCH), DVec2::NEG_Y);
        just(&gable(), "setback", (3.0, 6.0 * SLOPE - 1.134 - 18.0 * INCH), DVec2::Y);
    }

    #[test]
    fn a_side_is_one_keep_out_and_so_is_a_hole() {
        let mut job = gable();
        let hole = [(4.0, 2.0), (4.5, 2.0), (4.5, 2.5), (4.0, 2.5)];
        job.faces[0].outline.holes.push(hole.map(Into::into).to_vec());
        let found = of(&job, "setback");
        assert_eq!(found.len(), 5, "{found:#?}");
        let holes: Vec<_> = found.iter().filter(|k| matches!(k.against, Against::Hole { .. })).collect();
        assert!(holes.len() == 1 && holes[0].edges.len() == 4);
        book(&mut job).setbacks.remove(&EdgeKind::WallLine);
        assert_eq!(of(&job, "setback").len(), 4);
    }

    #[test]
    fn beside_a_hip_it_is_square_to_it_on_the_slope() {
        let job = hip();
        let keep_out =
            of(&job, "setback").into_iter().find(|k| k.against_kind() == Some(EdgeKind::Hip)).unwrap();
        // The upper left corner of the module at (u, v) on the line u : v = 1 : SLOPE is 2 m off it along the eave.
        let away = keep_out.distance(&module(4.0, 2.0 * SLOPE - 1.134));
        assert!((away - 2.0 * SLOPE / (1.0 + SLOPE * SLOPE).sqrt()).abs() < 1e-9, "{away}");
    }

    #[test]
    fn switched_off_or_not_in_the_book() {
        let mut job = gable();
        book(&mut job).off.insert("setback".into());
        assert_eq!((off(&job, "setback"), of(&job, "setback")), (Some(OffReason::Switched), Vec::new()));
        let mut job = gable();
        book(&mut job).setbacks.clear();
        assert_eq!(off(&job, "setback"), Some(OffReason::NoSetbacks));
    }
}
