//! Findings of a limit on single modules: its keep-outs, measured against the modules of a block.
//!
//! Everything the keep-out alone determines is the same for all limits: which modules, how near, how much is required, the
//! source, the subject, the place. A rule adds its facts, and overrides the measurement where its message measures something
//! else.

use crate::finding::{Finding, Location, Severity};
use crate::measure::{self, in_plan, length};
use crate::rule::{Rule, Run, nothing_missing};
use crate::sketch::{SLOPE, Stroke};
use crate::view::{BlockView, LaidBlock};
use crate::{Authority, Facts};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{Cell, Quantity, Required, Subject};
use chalkcourse_limits::{Against, KeepOut, Limit, Metric, RequiredBy, Shape};

/// Modules of a block that are too near something.
pub(crate) struct TooNear<'s> {
    pub(crate) keep_out: &'s KeepOut,
    pub(crate) cells: Vec<Cell>,
    /// Distance of the nearest, metres in the metric of the keep-out; negative is the depth inside it.
    pub(crate) nearest: f64,
}

impl<'s> TooNear<'s> {
    /// The modules of a block that violate a keep-out; `None` if there are none.
    pub(crate) fn of(laid: &LaidBlock<'_>, keep_out: &'s KeepOut) -> Option<Self> {
        // If the bounding box clears, all modules do: most blocks end here.
        if keep_out.clears(&laid.whole()) {
            return None;
        }
        let mut it = Self { keep_out, cells: Vec::new(), nearest: f64::INFINITY };
        for (cell, module) in laid.modules().filter(|(_, module)| !keep_out.clears(module)) {
            it.cells.push(cell);
            it.nearest = it.nearest.min(keep_out.distance(&module));
        }
        (!it.cells.is_empty()).then_some(it)
    }

    /// Distance of the nearest, clamped at 0.
    pub(crate) fn away(&self) -> f64 {
        self.nearest.max(0.0)
    }

    /// The finding, as far as the keep-out determines it.
    pub(crate) fn finding(self, view: BlockView<'_>, severity: Severity, facts: Facts) -> Finding {
        let (laid, keep_out) = (view.laid, self.keep_out);
        let (measured, required) = self.measured();
        Finding {
            measured,
            required,
            source: authority(&keep_out.by),
            place: place_of(laid, self.cells, shape_in_plan(laid, keep_out)),
            ..Finding::of(keep_out.rule, severity, subject(laid, keep_out.against), facts)
        }
    }

    /// The room left and the room required; or, for what may be touched, the depth of the overlap.
    fn measured(&self) -> (Quantity, Required) {
        let KeepOut { reach, asked, against, metric, .. } = *self.keep_out;
        let amount = |metres| match metric {
            Metric::OnSlope => length(metres),
            Metric::InPlan { .. } => in_plan(metres),
        };
        if asked == 0.0 && matches!(against, Against::Border | Against::Block(_)) {
            return (amount(-self.nearest), Required::AtMost(amount(0.0)));
        }
        // A line has no depth; where the shape itself is the room, the depth of a module inside it is what is missing.
        let away = if reach > 0.0 { self.away() } else { self.nearest };
        let room = if reach >= asked { away - (reach - asked) } else { asked + away - reach };
        (amount(room), Required::AtLeast(amount(asked)))
    }
}

/// The source of a limit.
pub(crate) fn authority(by: &RequiredBy) -> Authority {
    match by {
        RequiredBy::Source(source) => Authority::of(source),
        RequiredBy::Book => Authority::EachItsOwn,
        RequiredBy::Kit => Authority::Kit,
        RequiredBy::Person => Authority::Person,
        RequiredBy::Geometry => Authority::Geometry,
    }
}

/// The subject: a block and what it is too near.
fn subject(laid: &LaidBlock<'_>, against: Against) -> Subject {
    let (block, face) = (laid.block.id, laid.on.id);
    match against {
        Against::Border | Against::Pathway => Subject::OnFace(block, face),
        Against::Side { side, kind } => Subject::Side(block, face, side, kind),
        Against::Hole { side, kind } => Subject::Hole(block, face, side, kind),
        Against::Penetration(id) => Subject::Through(block, id),
        Against::Block(other) => Subject::Blocks(block.min(other), block.max(other)),
    }
}

/// The place of a finding about modules of a block.
pub(crate) fn place_of(laid: &LaidBlock<'_>, cells: Vec<Cell>, shape: Vec<DVec2>) -> Location {
    Location { face: Some(laid.on.id), block: Some(laid.block.id), cells, shape, ..Location::default() }
}

/// The geometry of a keep-out to highlight: the ends of its border stretches, or its shape.
fn shape_in_plan(laid: &LaidBlock<'_>, keep_out: &KeepOut) -> Vec<DVec2> {
    let plan = |p: DVec2| laid.face.plane.to_plan(p);
    match &keep_out.shape {
        _ if !keep_out.edges.is_empty() => ends(laid, keep_out),
        Shape::Outside(_) => laid.face.plan.outer.clone(),
        Shape::Pieces(pieces) => pieces.iter().flat_map(|piece| piece.corners()).map(|p| plan(*p)).collect(),
    }
}

/// The end points, in plan, of each border stretch that a keep-out is about.
pub(crate) fn ends(laid: &LaidBlock<'_>, keep_out: &KeepOut) -> Vec<DVec2> {
    measure::ends(keep_out.edges.iter().filter_map(|edge| laid.face.edges.get(*edge)))
}

/// The default rule of a limit that has no file of its own: its findings follow from the keep-outs alone.
pub(crate) fn rule(limit: &'static Limit) -> Rule {
    Rule {
        code: limit.code,
        sketch: &[SLOPE, Stroke::Module([20.0, 20.0, 24.0, 16.0]), Stroke::Wrong([56.0, 20.0, 24.0, 16.0])],
        source: |_| Authority::EachItsOwn,
        missing: nothing_missing,
        run: Run::KeptOff(run),
    }
}

fn run(view: BlockView<'_>, keep_outs: &[KeepOut], findings: &mut Vec<Finding>) {
    findings.extend(keep_outs.iter().filter_map(|keep_out| {
        let it = TooNear::of(view.laid, keep_out)?;
        Some(it.finding(view, Severity::Stop, Facts::TooNear { against: keep_out.against }))
    }));
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{block, gable_job, of, vent};
    use crate::view::Snapshot;
    use chalkcourse_job::{PenetrationKind, Resolved};
    use chalkcourse_layout::Layout;
    use chalkcourse_limits::limit;

    /// The findings of a limit's default rule.
    fn plain(job: &Resolved, code: &str) -> Vec<Finding> {
        let layout = Layout::of(job);
        let snapshot = Snapshot::of(job, &layout);
        let rule = rule(limit(code).unwrap());
        assert_eq!(rule.code, code);
        let mut found = Vec::new();
        for view in snapshot.blocks() {
            run(view, &snapshot.kept_off(code, view.laid.placed.face).0, &mut found);
        }
        found
    }

    /// Modules over the rake, too near the ridge, on a vent and below a window.
    fn crowded() -> Resolved {
        let mut job = gable_job();
        job.blocks = vec![block(3, 1, (8.0, 4.2), 2, 3), block(4, 1, (0.1, 0.1), 1, 1)];
        job.penetrations = vec![vent(5, 9.0, 4.0), vent(6, 10.0, 5.6)];
        job.penetrations[1].kind = PenetrationKind::EscapeWindow;
        job
    }

    /// Key, amounts, source and modules are those of the rule with its own file; facts and other inputs of its message differ.
    #[test]
    fn the_rule_of_a_limit_without_a_file_finds_the_same() {
        let job = crowded();
        for code in ["off-face", "setback", "fire-ridge", "ridge-course"] {
            let (plain, own) = (plain(&job, code), of(&job, code));
            assert!(!own.is_empty() && plain.len() == own.len(), "{code}: {plain:#?}");
            for (plain, own) in plain.into_iter().zip(own) {
                assert_eq!((plain.key, plain.source), (own.key, own.source), "{code}");
                assert_eq!((plain.required, plain.place.cells), (own.required, own.place.cells), "{code}");
                let Some((one, two)) = crate::testing::lengths(plain.measured, own.measured) else {
                    panic!()
                };
                assert!((one - two).abs() < 1e-6, "{code}: {one} for {two}");
            }
        }
        // The default rule finds each limit, whatever it keeps modules off.
        for code in ["clearance", "fire-escape"] {
            assert_eq!(plain(&job, code).is_empty(), of(&job, code).is_empty(), "{code}");
            assert!(!plain(&job, code).is_empty(), "{code}");
        }
    }
}
