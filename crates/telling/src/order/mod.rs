//! An order as text, CSV and JSON.
//!
//! - [`to_text`], [`to_csv`], [`to_json`]: the whole order
//! - [`count_words`], [`need_words`], [`packages_words`], [`state_words`], [`waste_words`]: a line
//! - [`comparison`], [`offers`]: two orders, and several suppliers, compared
//! - [`counted_words`], [`claim_text`], [`pallet_csv`]: the delivery
//!
//! Crate `takeoff` does the counting; nothing here counts.

mod compare;
mod csv_out;
mod cuts;
mod header;
mod json;
mod money;
mod nouns;
mod receive;
mod text;
mod words;

pub use compare::{comparison, offers};
pub use csv_out::{lines_for_spreadsheet, safe_cell, spreadsheet_unit, to_csv};
pub use cuts::cut_lists;
pub use header::{CAUTION, Header};
pub use json::{TAKEOFF_FORMAT, TAKEOFF_VERSION, TakeoffData, takeoff_schema, to_json};
pub use money::{show_money, show_round_sum, show_sum, show_sum_more, worth};
pub use receive::{claim_text, counted_words, pallet_csv};
pub use text::{By, money_rows, need_words, sections, to_text, to_text_by};
pub use words::{count_words, packages_words, state_words, term_words, waste_words};

/// Why a takeoff could not be written.
#[derive(Debug, thiserror::Error)]
pub enum OutputError {
    /// The CSV writer failed.
    #[error("{}", chalkcourse_words::takeoff::the_order_could_not_be(&_0))]
    Csv(String),
    /// Serialization failed, e.g. because of a non-finite number.
    #[error("{}", chalkcourse_words::takeoff::the_order_could_not_be_written(&_0))]
    Json(#[from] serde_json::Error),
}
