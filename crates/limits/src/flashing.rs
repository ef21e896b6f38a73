//! Side flashing keeps clear of valleys and hips.
//!
//! Source: the rule book. A valley's lining extends to both sides of its line (IRC R905.2.8.2, 2018: an open metal valley is at
//! least 24 in wide) and takes no nail near it; a hip's caps lap over the faces on both sides. The clearance of flashing and its
//! nails is common practice, no source. Measured on the slope, square to the line, from the modules, with the width of the kit's
//! side flashing added.

use crate::keep_out::{KeepOut, RequiredBy};
use crate::limit::Limit;
use crate::off::OffReason;
use crate::site::Site;
use chalkcourse_geometry::{EdgeKind, Length};
use chalkcourse_job::RuleBook;

pub(crate) const LIMIT: Limit = Limit {
    code: "valley-hip",
    missing: |job| {
        let any = [EdgeKind::Valley, EdgeKind::Hip]
            .into_iter()
            .any(|kind| flashing_asked(&job.rule_book, kind).is_some());
        (!any).then_some(OffReason::NoRoomBesideLines)
    },
    gives,
};

/// The book's clearance from an edge to the side flashing; `None` for kinds of edges that have none.
pub fn flashing_asked(book: &RuleBook, kind: EdgeKind) -> Option<&chalkcourse_job::Limit<Length>> {
    let roofing = book.roofing.as_ref()?;
    match kind {
        EdgeKind::Valley => roofing.valley_clear.as_ref(),
        EdgeKind::Hip => roofing.hip_clear.as_ref(),
        _ => None,
    }
}

fn gives(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    for side in site.sides() {
        let Some(limit) = flashing_asked(&site.job.rule_book, side.kind) else { continue };
        let asked = limit.value.metres();
        let by = RequiredBy::Source(limit.source.clone());
        let reach = asked + site.job.kit.flashing.side.metres();
        found.push(KeepOut { asked, ..side.keep_out(LIMIT.code, reach).by(by) });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{INCH, SLOPE, book, hip, just, kit, of};
    use chalkcourse_geometry::{DVec2, Length};
    use chalkcourse_job::Limit;

    /// The kit's side flashing is 4 in wide and the book requires 5 in beside a hip: 9 in, square to it on the slope.
    #[test]
    fn short_of_at_and_beyond_the_limit() {
        let mut job = hip();
        let source =
            chalkcourse_job::Source::new("common practice", chalkcourse_job::Standing::CommonPractice);
        let roofing = book(&mut job).roofing.as_mut().unwrap();
        roofing.hip_clear = Some(Limit { value: Length::from_inches(5.0), source });
        kit(&mut job).flashing.side = Length::from_inches(4.0);
        let line = DVec2::new(1.0, SLOPE).normalize();
        let corner = line * 2.5 + DVec2::new(line.y, -line.x) * 9.0 * INCH;
        just(&job, "valley-hip", (corner.x, corner.y - 1.134), DVec2::new(-line.y, line.x));
        assert!((of(&job, "valley-hip")[0].asked - 5.0 * INCH).abs() < 1e-12);
        book(&mut job).roofing.as_mut().unwrap().hip_clear = None;
        assert!(of(&job, "valley-hip").is_empty());
    }
}
