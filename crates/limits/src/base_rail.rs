//! The base rail below the lowest row lies on the deck, far enough above the eave.
//!
//! Source: the kit; the demo kit's numbers are invented with it. The rail carries the whole block: it is screwed to the deck
//! on one snapped line, and the starter and the drip edge need the room below it.

use crate::keep_out::{Against, ConstrainedPart, KeepOut, RequiredBy, Shape};
use crate::limit::Limit;
use crate::off::OffReason;
use crate::site::Site;
use chalkcourse_geometry::EdgeKind;

pub(crate) const LIMIT: Limit = Limit {
    code: "base-rail",
    missing: |job| job.kit.base_rail.is_none().then_some(OffReason::KitWithoutRail),
    gives,
};

fn gives(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    let Some(limits) = site.job.kit.base_rail else { return };
    let held = ConstrainedPart::Rail { depth: site.job.kit.flashing.base.metres() };
    let least = limits.least_above_eave.metres();
    for side in site.sides_with(|span| span.kind == EdgeKind::Eave) {
        found.push(KeepOut { held, ..side.keep_out(LIMIT.code, least).by(RequiredBy::Kit) });
    }
    let deck = KeepOut::of(LIMIT.code, Against::Border, Shape::Outside(site.face.frame.clone()));
    found.push(KeepOut { held, ..deck.by(RequiredBy::Kit) });
}

#[cfg(test)]
mod tests {
    use crate::testing::{INCH, SLOPE, gable, just, kit, module, of};
    use chalkcourse_geometry::DVec2;
    use chalkcourse_geometry::fit::Part;

    /// The demo kit's rail extends 2 in below the modules and needs 2 in above the eave.
    #[test]
    fn short_of_at_and_beyond_the_room_above_the_eave() {
        just(&gable(), "base-rail", (3.0, 4.0 * INCH), DVec2::NEG_Y);
        let upper = Part { lowest: false, ..module(3.0, 0.0) };
        assert!(of(&gable(), "base-rail").iter().all(|keep_out| keep_out.clears(&upper)));
    }

    #[test]
    fn a_hole_has_no_deck_and_the_rake_no_limit() {
        let mut job = gable();
        let hole = [(4.0, 1.0), (4.5, 1.0), (4.5, 1.3), (4.0, 1.3)];
        job.faces[0].outline.holes.push(hole.map(Into::into).to_vec());
        just(&job, "base-rail", (3.5, 1.3 * SLOPE + 2.0 * INCH), DVec2::NEG_Y);
        assert!(of(&job, "base-rail").iter().all(|keep_out| keep_out.clears(&module(0.0, 2.0))));
    }

    #[test]
    fn a_kit_without_a_limit_gives_none() {
        let mut job = gable();
        kit(&mut job).base_rail = None;
        assert!(of(&job, "base-rail").is_empty());
    }
}
