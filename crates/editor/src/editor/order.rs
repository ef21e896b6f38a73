//! File operations of the order's pane: leftovers, counts, other orders and prices.

use super::Editor;
use crate::dialogs::Dialog;
use crate::text;
use crate::windows::{OrderPart, OtherOrder};
use chalkcourse_job::{Edit, PriceReading, PriceSummary, load, load_counts, load_prices, load_stock};
use chalkcourse_plan::evaluate;
use std::path::Path;
use std::sync::Arc;

impl Editor {
    pub(super) fn load_stock(&mut self, path: &Path) {
        match load_stock(path) {
            Ok(stock) => {
                let edit = Edit::order(self.document.job(), |order| order.stock = stock);
                self.edit(text::LOAD_STOCK.now(), &edit);
                self.state.said = text::taken(text::LOAD_STOCK.now());
            }
            Err(error) => self.wrong(text::CANT_OPEN.now(), text::job_untouched(&error)),
        }
    }

    /// Counts of a list are added to existing ones, and replace those for the same part.
    pub(super) fn load_counts(&mut self, path: &Path) {
        match load_counts(path) {
            Ok(counts) => {
                let lines = counts.len();
                let edit = Edit::order(self.document.job(), |order| order.delivery.counts.extend(counts));
                self.edit(text::LOAD_COUNTS.now(), &edit);
                self.windows.order.part = OrderPart::Delivery;
                self.state.said = text::counts_taken(lines);
            }
            Err(error) => self.wrong(text::CANT_OPEN.now(), text::job_untouched(&error)),
        }
    }

    pub(super) fn compare_job(&mut self, path: &Path) {
        match load(path) {
            Ok(job) => {
                let takeoff = evaluate(&job).takeoff;
                self.windows.order.other = Some(OtherOrder { name: job.name.clone(), takeoff });
                self.windows.order.part = OrderPart::Compare;
            }
            Err(error) => self.wrong(text::CANT_OPEN.now(), text::job_untouched(&error)),
        }
    }

    pub(super) fn load_prices(&mut self, path: &Path) {
        match load_prices(path, &self.document.job().kit) {
            Ok(PriceReading { list, summary }) => {
                self.edit(text::LOAD_PRICES.now(), &Edit::SetPrices(Arc::new(list)));
                self.state.said = text::taken(text::LOAD_PRICES.now());
                self.tell_prices(&summary);
            }
            Err(error) => self.wrong(text::CANT_OPEN.now(), text::job_untouched(&error)),
        }
    }

    /// Reports what happened to the lines of a list, so that its prices can be checked.
    fn tell_prices(&mut self, summary: &PriceSummary) {
        if !summary.is_plain() {
            let title = text::PRICES_READ.now().to_owned();
            self.dialog = Some(Dialog::Told { title, words: summary.said().into() });
        }
    }

    pub(super) fn add_offer(&mut self, path: &Path) {
        match load_prices(path, &self.document.job().kit) {
            Ok(PriceReading { list, summary }) => {
                self.windows.order.offers.push(Arc::new(list));
                self.windows.order.part = OrderPart::Compare;
                self.tell_prices(&summary);
            }
            Err(error) => self.wrong(text::CANT_OPEN.now(), text::job_untouched(&error)),
        }
    }
}
