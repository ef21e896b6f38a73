//! Below an emergency escape window the roof is free of modules, and a pathway leads to it.
//!
//! Source: IRC R324.6.3 / IFC 1205.2.3 (section numbers from memory): no module on the portion of a roof below an emergency
//! escape and rescue opening, and a pathway of at least 36 in to the opening. A strip straight down the slope is kept free, from
//! the window to the lower edge of its face, as wide as the window and no narrower than the pathway. Faces farther down are not
//! checked.

use super::{exempt, looked_at};
use crate::keep_out::{Against, KeepOut, RequiredBy, Shape};
use crate::limit::Limit;
use crate::off::OffReason;
use crate::site::Site;
use chalkcourse_geometry::{Convex, Rect, RoofFace, dvec2};
use chalkcourse_job::{FireAccess, PenetrationKind};
use chalkcourse_layout::{OnFace, PlacedPenetration};

pub(crate) const LIMIT: Limit = Limit {
    code: "fire-escape",
    missing: |job| {
        exempt(job).or_else(|| {
            let asked = job.rule_book.fire_access.as_ref().is_some_and(|fire| fire.below_escape.is_some());
            if !asked {
                return Some(OffReason::NotInEdition);
            }
            let any = job.penetrations.iter().any(|p| p.kind == PenetrationKind::EscapeWindow);
            (!any).then_some(OffReason::NoEscapeWindow)
        })
    },
    gives,
};

/// The strip below an escape window on a face, in its frame. `None` for other penetrations, on an exempt face, if the book does
/// not require it, and if none of the face is below.
fn escape_strip(
    fire: &FireAccess,
    penetration: &PlacedPenetration,
    on: &OnFace,
    face: &RoofFace,
) -> Option<Rect> {
    let least = fire.below_escape.as_ref()?.value.metres();
    if penetration.kind != PenetrationKind::EscapeWindow || !looked_at(fire, face) {
        return None;
    }
    let half = least.max(on.bounds.size().x) / 2.0;
    let middle = on.bounds.centre().x;
    let low = face.bounds.min.y.min(on.bounds.min.y);
    let strip = Rect { min: dvec2(middle - half, low), max: dvec2(middle + half, on.bounds.min.y) };
    (strip.size().y > 0.0).then_some(strip)
}

fn gives(site: &Site<'_>, found: &mut Vec<KeepOut>) {
    let Some(fire) = site.fire() else { return };
    let Some(limit) = &fire.below_escape else { return };
    for (window, on) in site.through() {
        let Some(strip) = escape_strip(fire, window, on, site.face) else { continue };
        let shape = Shape::Pieces(vec![Convex::rect(&strip)]);
        let below = KeepOut::of(LIMIT.code, Against::Penetration(window.id), shape);
        found.push(KeepOut { asked: strip.size().x, ..below.by(RequiredBy::Source(limit.source.clone())) });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{INCH, book, gable, just, module, of, through};
    use crate::{OffReason, off};
    use chalkcourse_geometry::{DVec2, Length};
    use chalkcourse_job::{PenetrationKind, Shape};

    /// IRC R324.6.3: 36 in, half on each side of the centre; a wide window has a wide strip.
    #[test]
    fn short_of_at_and_beyond_half_a_pathway() {
        let mut job = gable();
        job.penetrations = vec![through(PenetrationKind::EscapeWindow, 6.0, 4.5)];
        just(&job, "fire-escape", (6.0 + 18.0 * INCH, 1.0), DVec2::NEG_X);
        assert!(
            of(&job, "fire-escape").iter().all(|keep_out| keep_out.clears(&module(5.5, 5.25))),
            "above it"
        );
        let (along, up) = (Length::from_inches(60.0), Length::from_inches(30.0));
        job.penetrations[0].shape = Shape::Rectangle { along, up };
        just(&job, "fire-escape", (6.0 + 30.0 * INCH, 1.0), DVec2::NEG_X);
    }

    #[test]
    fn why_there_is_no_limit() {
        let mut job = gable();
        assert_eq!(off(&job, "fire-escape"), Some(OffReason::NoEscapeWindow));
        book(&mut job).fire_access.as_mut().unwrap().below_escape = None;
        assert_eq!(off(&job, "fire-escape"), Some(OffReason::NotInEdition));
        book(&mut job).fire_access = None;
        assert_eq!(off(&job, "fire-escape"), Some(OffReason::NoFireAccess));
    }
}
