//! Circuits made automatically: what is asked for, and what is done with the answers.

use super::Editor;
use crate::state::{Pane, same_wires};
use crate::text;
use chalkcourse_plan::unknown_wires;
use chalkcourse_wiring::{Stringing, Strung};
use egui::Context;
use std::sync::Arc;

impl Editor {
    /// Begins to string all modules of the job.
    pub(super) fn string_automatically(&mut self, ctx: &Context) {
        self.state.desk.change(crate::state::Change::Open(Pane::Circuits));
        let (job, plan) = (Arc::clone(self.document.settled()), Arc::clone(self.document.plan()));
        if job.blocks.is_empty() {
            self.state.stringing.said = text::NOTHING_TO_STRING.now().to_owned();
        } else {
            self.state.stringing.start(ctx, job, plan);
        }
    }

    /// Puts circuits that were made into the job: the first ones as a step, later ones only where they are better.
    pub(super) fn answer_stringing(&mut self) {
        // A drag that is going on ends first.
        if self.document.history().in_gesture() {
            return;
        }
        let Some(answer) = self.state.stringing.answer() else { return };
        let job = Arc::clone(self.document.settled());
        let made = match answer.made {
            Ok(made) => made,
            Err(unknown) => {
                self.state.stringing.said = text::sentence(&unknown_wires(&unknown));
                return;
            }
        };
        if !same_wires(&answer.job, &job) {
            self.state.stringing.stop();
            self.state.stringing.said = text::STRINGING_DROPPED.now().to_owned();
            return;
        }
        let before = self.state.stringing.proved();
        let first = before.is_empty() || answer.goes_on;
        if first || cost(&made.groups) < cost(before) {
            self.put_circuits(&made);
        } else if cost(&made.groups) == cost(before) {
            // The same circuits, and more that is proved of them.
            self.state.stringing.list(job, &made);
        }
    }

    fn put_circuits(&mut self, made: &Stringing) {
        let edit = made.edit(self.document.settled());
        if let Err(error) = self.document.edit(text::STRING_AUTOMATICALLY, &edit) {
            self.state.stringing.stop();
            self.state.stringing.said = text::sentence(&error.to_string());
            return;
        }
        self.state.said = text::circuits_made(made.circuits.len());
        self.state.stringing.list(Arc::clone(self.document.settled()), made);
        self.state.keep_in_step(&self.document);
    }
}

/// What counts: circuits before extension leads before cable, in tenths of a millimetre.
fn cost(groups: &[Strung]) -> (usize, u64, u64) {
    let sum = |of: &dyn Fn(&Strung) -> u64| groups.iter().map(of).sum::<u64>();
    let circuits = groups.iter().map(|group| group.circuits).sum();
    (circuits, sum(&|group| group.leads), sum(&|group| (group.way * 1e4).round() as u64))
}
