//! A junction box on the roof stands on a face, clear of edges, valleys and what comes through, and under no module.
//!
//! Source: the limits that keep modules off the same things, each by its own word: setbacks of the rule book, clearances, room beside
//! ridges, hips and valleys and below escape windows for firefighters. Whether a box stands in a pathway up the slope is not measured.

use crate::by_limit::authority;
use crate::finding::{Finding, Severity};
use crate::measure::length;
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::WholeView;
use crate::wires::{boxes, kit_silent, no_box, of_box};
use crate::{Authority, Facts, KitGap, WhyNot};
use chalkcourse_geometry::fit::Part;
use chalkcourse_geometry::{DVec2, Rect};
use chalkcourse_job::{BoxStands, JunctionBox, Required, Resolved};
use chalkcourse_limits::{KeepOut, TOLERANCE};
use chalkcourse_wiring::face_of_box;

/// The limits that a box on the roof keeps to.
const KEPT: [&str; 6] = ["off-face", "setback", "clearance", "fire-ridge", "fire-hip-valley", "fire-escape"];

pub(crate) const RULE: Rule = Rule {
    code: "box-place",
    sketch: &[
        SLOPE,
        Stroke::Limit(&[[16.0, 8.0], [16.0, 52.0]]),
        Stroke::Wrong([10.0, 24.0, 12.0, 12.0]),
        Stroke::Measure([8.0, 20.0], [16.0, 20.0]),
    ],
    source: |_| Authority::EachItsOwn,
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    no_box(job).or_else(|| kit_silent(job, [(KitGap::BoxFlashing, |wiring| wiring.box_flashing.is_some())]))
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    let Some(side) = job.kit.wiring.as_ref().and_then(|wiring| wiring.box_flashing) else { return };
    let half = DVec2::splat(side.metres() / 2.0);
    for junction in boxes(job).filter(|junction| junction.stands == BoxStands::OnRoof) {
        let of = |facts| of_box(RULE.code, Severity::Stop, view.layout(), junction, facts);
        let Some((face, at)) = face_of_box(&view.layout().roof, junction) else {
            findings.push(of(Facts::BoxNowhere { junction: junction.id }));
            continue;
        };
        let flashing = Rect { min: at - half, max: at + half };
        let on = view.layout().blocks.iter().filter(|block| block.face == face);
        let deepest = on.flat_map(|block| &block.modules).map(|module| depth(flashing, module.rect));
        if let Some(depth) = deepest.filter(|depth| *depth > TOLERANCE).max_by(f64::total_cmp) {
            findings.push(Finding {
                measured: length(depth),
                required: Required::AtMost(length(0.0)),
                ..of(Facts::BoxUnderModules { junction: junction.id })
            });
        }
        findings.extend(nearest(view, face, flashing, junction));
    }
}

/// How far one rectangle reaches into another; 0 or less where it does not.
fn depth(one: Rect, other: Rect) -> f64 {
    (one.max.min(other.max) - one.min.max(other.min)).min_element()
}

/// The limit that a box comes nearest to, or deepest into; `None` where it keeps to all.
fn nearest(view: WholeView<'_>, face: usize, flashing: Rect, junction: &JunctionBox) -> Option<Finding> {
    let part = Part { rect: flashing, lowest: false };
    let all: Vec<KeepOut> = KEPT.iter().flat_map(|code| view.keep_outs(code, face)).collect();
    let broken = all.iter().filter(|keep_out| !keep_out.clears(&part));
    let lacking = |keep_out: &KeepOut| keep_out.reach - keep_out.distance(&part);
    let worst = broken.max_by(|a, b| lacking(a).total_cmp(&lacking(b)))?;
    let facts = Facts::BoxNear { junction: junction.id, against: worst.against };
    Some(Finding {
        measured: length(worst.distance(&part).max(0.0)),
        required: Required::AtLeast(length(worst.reach)),
        source: authority(&worst.by),
        ..of_box(RULE.code, Severity::Stop, view.layout(), junction, facts)
    })
}

#[cfg(test)]
mod tests {
    use crate::testing::{book, boxed, inches, kit, of, one, vent, why_not};
    use crate::{Against, Facts, KitGap, WhyNot};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{BoxId, BoxStands};

    /// A flashing of 16 in, 0.2032 m to each side, on a face of 12 × 6.708 m whose book asks nothing: it reaches over the rake from
    /// 0.2032 m on. The block ends 8.172 m along.
    #[test]
    fn beside_the_edge_over_it_and_under_modules() {
        let at = |x: f64, y: f64| {
            let mut job = boxed();
            book(&mut job).setbacks.clear();
            book(&mut job).fire_access = None;
            job.boxes[0].at = (x, y).into();
            job
        };
        let id = BoxId(9);
        assert!(of(&at(11.79, 2.0), "box-place").is_empty());
        let found = one(&at(11.81, 2.0), "box-place");
        assert_eq!(found.facts, Facts::BoxNear { junction: id, against: Against::Border });
        assert!(of(&at(8.376, 2.0), "box-place").is_empty());
        let found = one(&at(8.365, 2.0), "box-place");
        assert_eq!(found.facts, Facts::BoxUnderModules { junction: id });
        assert!((inches(found.measured) * 0.0254 - 0.0102).abs() < 1e-6);
        assert_eq!(one(&at(40.0, 2.0), "box-place").facts, Facts::BoxNowhere { junction: id });
        let mut under = at(40.0, 2.0);
        under.boxes[0].stands = BoxStands::UnderDeck;
        assert!(of(&under, "box-place").is_empty());
    }

    /// It keeps the clearance of a vent as modules do.
    #[test]
    fn beside_a_vent() {
        let mut job = boxed();
        job.penetrations = vec![vent(5, 10.0, 2.0)];
        job.penetrations[0].clearance = Some(Length::from_metres(0.3));
        // The vent reaches to 10.2 m, its clearance to 10.5 m.
        let mut at = |x: f64| {
            job.boxes[0].at = (x, 2.0).into();
            of(&job, "box-place")
        };
        assert!(at(10.71).is_empty());
        let found = at(10.69);
        assert!((inches(found[0].measured) * 0.0254 - (10.69 - 0.2032 - 10.2)).abs() < 1e-6, "{found:#?}");
        kit(&mut job).wiring.as_mut().unwrap().box_flashing = None;
        assert_eq!(why_not(&job, "box-place"), Some(WhyNot::KitSilent(vec![KitGap::BoxFlashing])));
    }
}
