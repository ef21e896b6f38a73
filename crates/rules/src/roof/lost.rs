//! Decisions and measurements for a side of a face stay with that side: none are left for a side that no longer exists.
//!
//! Source: geometry; an overruled kind, or a tape reading, applies to no other side than the one it was given for.

use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::view::DrawnView;
use crate::{Authority, Facts};
use chalkcourse_job::Subject;

pub(crate) const RULE: Rule = Rule {
    code: "lost-sides",
    sketch: &[
        Stroke::Roof(&[[12.0, 8.0], [88.0, 8.0], [88.0, 36.0], [68.0, 52.0], [12.0, 52.0]]),
        Stroke::Limit(&[[68.0, 52.0], [88.0, 52.0], [88.0, 36.0]]),
        Stroke::Measure([72.0, 56.0], [88.0, 56.0]),
    ],
    source: |_| Authority::Geometry,
    missing: nothing_missing,
    run: Run::Drawn(run),
};

fn run(view: DrawnView<'_>, findings: &mut Vec<Finding>) {
    for face in view.faces() {
        let (overrules, taped) = (face.lost_overrules().count(), face.has_lost_tape());
        if overrules > 0 || taped {
            let facts = Facts::LostSides { overrules, taped };
            findings.push(Finding {
                place: Location {
                    face: Some(face.id),
                    shape: face.outline.outer.clone(),
                    ..Location::default()
                },
                ..Finding::of(RULE.code, Severity::Note, Subject::Face(face.id), facts)
            });
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::Facts;
    use crate::testing::{gable_job, of, one};
    use chalkcourse_geometry::{EdgeKind, Length, SideId};
    use chalkcourse_job::{Overrule, TapedDeck};

    #[test]
    fn existing_sides_pass_and_lost_ones_are_found() {
        let mut job = gable_job();
        job.faces[0].overruled = vec![Overrule { side: SideId(2), kind: EdgeKind::WallLine }];
        assert_eq!(of(&job, "lost-sides"), vec![]);
        job.faces[0].overruled.push(Overrule { side: SideId(99), kind: EdgeKind::Eave });
        assert_eq!(one(&job, "lost-sides").facts, Facts::LostSides { overrules: 1, taped: false });
        let taped = TapedDeck { eave: Some(Length::from_metres(12.0)), ..TapedDeck::default() };
        job.faces[0] = job.faces[0].with_taped(taped);
        assert_eq!(one(&job, "lost-sides").facts, Facts::LostSides { overrules: 1, taped: false });
        job.faces[0].taped.of = job.faces[0].taped.of.map(|[a, b, c, _]| [a, b, c, SideId(98)]);
        assert_eq!(one(&job, "lost-sides").facts, Facts::LostSides { overrules: 1, taped: true });
        job.faces[0] = job.faces[0].without_lost();
        assert_eq!(of(&job, "lost-sides"), vec![]);
    }
}
