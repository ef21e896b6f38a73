//! The introductory lesson: each step checks the job itself to see whether it was done. It never blocks anything.

use super::Document;
use chalkcourse_rules::Severity;

/// Progress in the lesson.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Lesson {
    step: usize,
    /// In the step about findings: the number of stops when it started, and whether there were more since.
    stops: Option<usize>,
    stopped: bool,
}

/// The steps, in order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Step {
    /// A roof is raised, or a face drawn.
    Roof,
    /// Its pitch is typed.
    Pitch,
    /// A penetration is placed.
    Vent,
    /// The roof is filled.
    Fill,
    /// A block is dragged onto something, and its finding cleared.
    Finding,
    /// The order is opened.
    Order,
    /// The lesson is complete.
    Done,
}

impl Step {
    pub(crate) const ALL: [Self; 7] =
        [Self::Roof, Self::Pitch, Self::Vent, Self::Fill, Self::Finding, Self::Order, Self::Done];
}

impl Lesson {
    /// The index of the step, from 0.
    pub(crate) fn number(self) -> usize {
        self.step
    }

    pub(crate) fn step(self) -> Step {
        Step::ALL.get(self.step).copied().unwrap_or(Step::Done)
    }

    /// Goes to the next step.
    pub(crate) fn skip(&mut self) {
        *self = Self { step: (self.step + 1).min(Step::ALL.len() - 1), stops: None, stopped: false };
    }

    /// Checks whether the step was done. Not during a drag.
    pub(crate) fn watch(&mut self, document: &Document, order_is_open: bool) {
        if document.history().in_gesture() && self.step() != Step::Finding {
            return;
        }
        let (job, plan) = (document.job(), document.plan());
        let stops =
            plan.findings.iter().filter(|f| f.severity == Severity::Stop && f.waived.is_none()).count();
        let done = match self.step() {
            Step::Roof => !job.faces.is_empty(),
            // A roof is raised at 6:12 unless the last one was different: another pitch was typed.
            Step::Pitch => job.faces.iter().any(|face| (face.pitch.rise_in_12() - 6.0).abs() > 1e-6),
            Step::Vent => !job.penetrations.is_empty(),
            Step::Fill => plan.summary.modules > 0,
            Step::Finding => {
                let before = *self.stops.get_or_insert(stops);
                self.stopped |= stops > before;
                self.stopped && stops <= before && !document.history().in_gesture()
            }
            Step::Order => order_is_open,
            Step::Done => false,
        };
        if done {
            self.skip();
        }
    }
}
