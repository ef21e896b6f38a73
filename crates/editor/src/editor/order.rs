//! Files that the order's window asks for: leftovers, counts, other orders and prices.

use super::Editor;
use crate::text;
use crate::windows::{OrderPart, OtherOrder};
use chalkcourse_job::{Edit, OrderChoices, counts_from_csv, load, load_prices, load_stock};
use chalkcourse_plan::evaluate;
use std::path::Path;
use std::sync::Arc;

impl Editor {
    /// One step that changes decisions about the order.
    fn decide(&mut self, label: &str, how: impl FnOnce(&mut OrderChoices)) {
        let mut order = (*self.document.job().order).clone();
        how(&mut order);
        self.edit(label, &Edit::SetOrder(Arc::new(order)));
    }

    pub(super) fn load_stock(&mut self, path: &Path) {
        match load_stock(path) {
            Ok(stock) => {
                self.decide(text::LOAD_STOCK, |order| order.stock = stock);
                self.desk.said = text::taken(text::LOAD_STOCK);
            }
            Err(error) => self.wrong(text::CANT_OPEN, text::job_untouched(&error)),
        }
    }

    /// Counts of a list stand beside those that are there, and in their place where both have a part.
    pub(super) fn load_counts(&mut self, path: &Path) {
        let told = |words: String| format!("{}: {words}", path.display());
        let counts = std::fs::read_to_string(path)
            .map_err(|error| told(error.to_string()))
            .and_then(|text| counts_from_csv(&text).map_err(told));
        match counts {
            Ok(counts) => {
                let lines = counts.len();
                self.decide(text::LOAD_COUNTS, |order| order.delivery.counts.extend(counts));
                self.desk.windows.order.part = OrderPart::Delivery;
                self.desk.said = text::counts_taken(lines);
            }
            Err(words) => self.wrong(text::CANT_OPEN, words),
        }
    }

    pub(super) fn compare_job(&mut self, path: &Path) {
        match load(path) {
            Ok(job) => {
                let takeoff = evaluate(&job).takeoff;
                self.desk.windows.order.other = Some(OtherOrder { name: job.name, takeoff });
                self.desk.windows.order.part = OrderPart::Compare;
            }
            Err(error) => self.wrong(text::CANT_OPEN, text::job_untouched(&error)),
        }
    }

    pub(super) fn add_offer(&mut self, path: &Path) {
        match load_prices(path) {
            Ok(list) => {
                self.desk.windows.order.offers.push(Arc::new(list));
                self.desk.windows.order.part = OrderPart::Compare;
            }
            Err(error) => self.wrong(text::CANT_OPEN, text::job_untouched(&error)),
        }
    }
}
