use super::Document;
use chalkcourse_geometry::EdgeKind;
use chalkcourse_job::FaceId;
use chalkcourse_plan::{Plan, RoofReport, roof_report};
use std::sync::{Arc, Weak};

/// A part of the roof for a row of the report: the drawing highlights it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum RoofPart {
    /// A face.
    Face(FaceId),
    /// All lines of a kind.
    Edges(EdgeKind),
    /// One line of a kind, by its index in the report.
    Line(EdgeKind, usize),
}

/// The last computed report, with its plan.
#[derive(Debug, Default)]
pub(crate) struct RoofReports(Option<(Weak<Plan>, RoofReport)>);

impl RoofReports {
    /// The report of a document's roof; only computed again for another plan.
    pub(crate) fn of(&mut self, document: &Document) -> &RoofReport {
        let plan = document.plan();
        let kept = self.0.take().filter(|(of, _)| of.upgrade().is_some_and(|of| Arc::ptr_eq(&of, plan)));
        let made = || (Arc::downgrade(plan), roof_report(document.job(), plan));
        &self.0.insert(kept.unwrap_or_else(made)).1
    }
}
