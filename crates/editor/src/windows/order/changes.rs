//! Changes since the order was last viewed, or since a pinned moment.

use crate::Document;
use chalkcourse_plan::Plan;
use chalkcourse_takeoff::{Line, Takeoff};
use rust_decimal::Decimal;
use std::sync::Arc;

/// The earlier order to compare with.
#[derive(Debug, Default)]
pub(crate) struct Since {
    base: Option<Arc<Plan>>,
    /// The order in the last frame in which it was shown.
    seen: Option<Arc<Plan>>,
    pub(crate) pinned: bool,
    /// Whether it was shown in the previous frame.
    looked: bool,
}

impl Since {
    /// The order is shown in this frame. A drag in progress counts as a change.
    pub(crate) fn look(&mut self, document: &Document) {
        let now = document.plan_before().unwrap_or_else(|| document.plan());
        if !self.looked && !self.pinned {
            self.base = self.seen.take().or_else(|| self.base.take());
        }
        self.base.get_or_insert_with(|| Arc::clone(now));
        if self.seen.as_ref().is_none_or(|seen| !Arc::ptr_eq(seen, now)) {
            self.seen = Some(Arc::clone(now));
        }
        self.looked = true;
    }

    /// The order is not shown in this frame.
    pub(crate) fn look_away(&mut self) {
        self.looked = false;
    }

    /// Counts changes from now on; if pinned, until unpinned.
    pub(crate) fn begin(&mut self, document: &Document, pinned: bool) {
        self.base = Some(Arc::clone(document.plan_before().unwrap_or_else(|| document.plan())));
        self.pinned = pinned;
    }

    /// The earlier order.
    pub(crate) fn before(&self) -> Option<&Takeoff> {
        self.base.as_ref().map(|plan| &plan.takeoff)
    }
}

/// The increase of a line: in packages, and in what is needed.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct More {
    pub(crate) packages: i64,
    pub(crate) need: f64,
}

impl More {
    pub(crate) fn is_none(self) -> bool {
        self.packages == 0 && self.need.abs() < 1e-6
    }
}

/// The changes from one order to another.
#[derive(Debug, Default)]
pub(crate) struct Changes<'a> {
    before: Option<&'a Takeoff>,
    /// Lines that no longer exist.
    pub(crate) gone: Vec<&'a Line>,
    /// How many lines were changed, added or removed.
    pub(crate) count: usize,
    /// The increase of the total cost; `None` if nothing changed.
    pub(crate) total: Option<Decimal>,
}

impl<'a> Changes<'a> {
    pub(crate) fn between(before: Option<&'a Takeoff>, now: &Takeoff) -> Self {
        let Some(then) = before else { return Self::default() };
        let gone: Vec<&Line> = then
            .lines
            .iter()
            .filter(|line| !now.lines.iter().chain(&now.off).any(|other| other.number == line.number))
            .collect();
        let mut changes = Self { before, gone, count: 0, total: None };
        let moved = now.lines.iter().filter(|line| !changes.of(line).is_none()).count();
        let left_out = then.lines.iter().filter(|line| now.off.iter().any(|off| off.number == line.number));
        changes.count = moved + changes.gone.len() + left_out.count();
        let more = now.totals.total - then.totals.total;
        changes.total = (!more.is_zero() && then.currency == now.currency).then_some(more);
        changes
    }

    /// The increase of a line.
    pub(crate) fn of(&self, line: &Line) -> More {
        let Some(before) = self.before else { return More::default() };
        let was = before.lines.iter().find(|other| other.number == line.number);
        let packages = was.map_or(0, |was| was.packages);
        More {
            packages: i64::try_from(line.packages).unwrap_or(i64::MAX)
                - i64::try_from(packages).unwrap_or(i64::MAX),
            need: line.need - was.map_or(0.0, |was| was.need),
        }
    }
}
