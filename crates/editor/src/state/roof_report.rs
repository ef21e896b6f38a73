use super::Document;
use chalkcourse_geometry::EdgeKind;
use chalkcourse_job::FaceId;
use chalkcourse_plan::{Plan, RoofReport, roof_report};
use std::sync::{Arc, Weak};

/// A part of the roof that a row of the report speaks of: the drawing lights it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum RoofPart {
    /// A face.
    Face(FaceId),
    /// All lines of a kind.
    Edges(EdgeKind),
    /// One line of a kind, by its place in the report.
    Line(EdgeKind, usize),
}

/// The report as it was worked out last, for the plan that it is of.
#[derive(Debug, Default)]
pub(crate) struct RoofReports(Option<(Weak<Plan>, RoofReport)>);

impl RoofReports {
    /// The report of a document's roof; worked out again only for another plan.
    pub(crate) fn of(&mut self, document: &Document) -> &RoofReport {
        let plan = document.plan();
        let kept = self.0.take().filter(|(of, _)| of.upgrade().is_some_and(|of| Arc::ptr_eq(&of, plan)));
        let made = || (Arc::downgrade(plan), roof_report(document.job(), plan));
        &self.0.insert(kept.unwrap_or_else(made)).1
    }
}
