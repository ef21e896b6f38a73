//! Manual changes of the order: packages, alternates, added lines, lines left out, waste, and prices in the job's own
//! list.

use crate::{Document, text};
use chalkcourse_job::{Edit, PriceList, builtin_prices};
use chalkcourse_takeoff::{Line, LineState};
use rust_decimal::Decimal;
use std::sync::Arc;

/// The order's manual changes, and the price list before it was changed in this job.
pub(super) struct ByHand {
    /// `None` if the list was not changed, or the original is unknown.
    list: Option<Arc<PriceList>>,
    own_waste: Vec<String>,
}

impl ByHand {
    /// Finds the list that the job's own is based on: one that was loaded since, the one that it was opened with, or
    /// the built-in one.
    pub(super) fn of(document: &Document) -> Self {
        let job = document.job();
        let own_waste = job.order.waste.keys().cloned().collect();
        let Some(name) = job.prices.name.strip_suffix(text::CHANGED_PRICES.now()) else {
            return Self { list: None, own_waste };
        };
        let history = document.history();
        let loaded = history.edits().filter_map(|edit| match edit {
            Edit::SetPrices(list) => Some(Arc::clone(list)),
            _ => None,
        });
        let known = [builtin_prices(), Arc::clone(&history.opened().prices)].into_iter().chain(loaded);
        let list = known.filter(|list| list.name == name && list.date == job.prices.date).last();
        Self { list, own_waste }
    }

    /// The price of a line before it was changed manually.
    pub(super) fn price_before(&self, line: &Line) -> Option<Option<Decimal>> {
        let was = self.list.as_ref()?.prices.get(&line.number);
        let was = match &line.alternate {
            None => was.map(|price| price.package),
            Some((number, _)) => was
                .and_then(|price| price.alternates.iter().find(|other| other.number == *number))
                .map(|other| other.package),
        };
        let own = matches!(line.state, LineState::Added { .. });
        (!own && was != line.price).then_some(was)
    }

    /// Whether anything of a line was changed manually.
    pub(super) fn changed(&self, line: &Line) -> bool {
        line.state != LineState::Counted
            || line.alternate.is_some()
            || self.own_waste.contains(&line.number)
            || self.price_before(line).is_some()
    }
}
