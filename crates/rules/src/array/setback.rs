//! Modules keep the setback of each kind of edge, measured square to the edge on the slope.
//!
//! Source: the rule book, per kind: see its `setbacks`. The edges of holes count.

use crate::by_limit::TooNear;
use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::BlockView;
use crate::{Authority, Facts};
use chalkcourse_limits::KeepOut;

pub(crate) const RULE: Rule = Rule {
    code: "setback",
    sketch: &[
        SLOPE,
        Stroke::Limit(&[[17.0, 15.0], [83.0, 15.0], [83.0, 45.0], [17.0, 45.0], [17.0, 15.0]]),
        Stroke::Module([17.0, 15.0, 22.0, 15.0]),
        Stroke::Module([39.0, 15.0, 22.0, 15.0]),
        Stroke::Wrong([66.0, 15.0, 22.0, 15.0]),
        Stroke::Measure([83.0, 38.0], [92.0, 38.0]),
    ],
    source: |_| Authority::EachItsOwn,
    missing: nothing_missing,
    run: Run::KeptOff(run),
};

fn run(view: BlockView<'_>, keep_outs: &[KeepOut], findings: &mut Vec<Finding>) {
    findings.extend(keep_outs.iter().filter_map(|keep_out| {
        let kind = keep_out.against_kind()?;
        Some(TooNear::of(view.laid, keep_out)?.finding(view, Severity::Stop, Facts::Setback { kind }))
    }));
}

#[cfg(test)]
mod tests {
    use crate::Authority;
    use crate::testing::{block, book, face, gable_job, inches, measures, of, one};
    use chalkcourse_geometry::{EdgeKind, Length};
    use chalkcourse_job::Resolved;

    const INCH: f64 = 0.0254;

    fn at(u: f64, v: f64) -> Resolved {
        let mut job = gable_job();
        job.blocks[0].at = (u, v).into();
        job
    }

    #[test]
    fn short_of_at_and_beyond_the_rake_setback() {
        assert!(of(&at(13.0 * INCH, 1.0), "setback").is_empty());
        assert!(of(&at(12.0 * INCH, 1.0), "setback").is_empty());
        let short = one(&at(4.5 * INCH, 1.0), "setback");
        measures(&short, 4.5, 12.0);
        assert_eq!(short.key.to_string(), "setback/block-3/face-1/side-3/rake");
        assert_eq!(short.place.cells.len(), 2);
    }

    #[test]
    fn each_kind_has_its_own() {
        // eave 6 in: 5 in is too short; ridge 18 in: the block's upper edge is at 1 + 2.271 m
        let eave = one(&at(3.0, 5.0 * INCH), "setback");
        measures(&eave, 5.0, 6.0);
        let slope = 6.0 * 1.25f64.sqrt();
        let ridge_limit = slope - 2.271 - 18.0 * INCH;
        assert!(of(&at(3.0, ridge_limit), "setback").is_empty());
        let ridge = one(&at(3.0, ridge_limit + INCH), "setback");
        measures(&ridge, 17.0, 18.0);
        let Authority::Source(source) = &ridge.source else { panic!("{ridge:#?}") };
        assert!(source.text.contains("R324.6.2"));
        let mut job = at(3.0, 5.0 * INCH);
        book(&mut job).setbacks.remove(&EdgeKind::Eave);
        assert!(of(&job, "setback").is_empty());
    }

    #[test]
    fn a_hip_is_measured_square_to_it_on_the_slope() {
        // A triangle that falls south; its hips run at 45° in plan, steeper in the frame.
        let mut job = gable_job();
        job.faces = vec![
            face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (6.0, 6.0)], 6.0, 180.0, 3.0),
            face(2, "West", &[(0.0, 0.0), (6.0, 6.0), (0.0, 12.0)], 6.0, 270.0, 3.0),
        ];
        job.blocks = vec![block(3, 1, (2.0, 1.0), 1, 2)];
        let short = one(&job, "setback");
        // The corner at (2, 2.134) is (1.1180 * 2 - 2.134) / 1.5 m off the line that rises 1.1180 m per metre.
        assert!(short.key.to_string().ends_with("/hip"));
        let away = (1.25f64.sqrt() * 2.0 - 2.134) / 1.5;
        assert!((inches(short.measured) - away / 0.0254).abs() < 1e-6, "{short:#?}");
    }

    #[test]
    fn the_edge_of_a_hole_is_a_wall_line() {
        let mut job = at(3.0, 1.0);
        // the block's right side is at 8.172; the hole starts 5 in from it; the book requires 9 in
        let x = 8.172 + 5.0 * INCH;
        let hole = face(9, "", &[(x, 2.0), (x + 1.0, 2.0), (x + 1.0, 3.0), (x, 3.0)], 6.0, 180.0, 0.0);
        job.faces[0] = job.faces[0].with_hole(hole.outline.outer);
        let short = one(&job, "setback");
        measures(&short, 5.0, 9.0);
        assert_eq!(short.key.to_string(), "setback/block-3/face-1/hole-4/wall-line");
    }

    #[test]
    fn a_tenth_of_a_millimetre_passes() {
        let limit = Length::from_inches(12.0).metres();
        assert!(of(&at(limit - 0.9e-4, 1.0), "setback").is_empty());
        assert_eq!(of(&at(limit - 1.1e-4, 1.0), "setback").len(), 1);
    }
}
