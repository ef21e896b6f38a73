//! An order put into words: to read, for a spreadsheet, for another program.
//!
//! - [`to_text`], [`to_csv`], [`to_json`]: the order whole
//! - [`count_words`], [`need_words`], [`packages_words`], [`state_words`], [`waste_words`]: a line
//! - [`comparison`], [`offers`]: two orders, and two suppliers, beside each other
//! - [`counted_words`], [`claim_text`], [`pallet_csv`]: what arrived
//!
//! Crate `takeoff` counts; nothing here does.

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
    /// The CSV writer gave up.
    #[error("{}", chalkcourse_words::takeoff::the_order_could_not_be(&_0))]
    Csv(String),
    /// A number in it is not finite, or the like.
    #[error("{}", chalkcourse_words::takeoff::the_order_could_not_be_written(&_0))]
    Json(#[from] serde_json::Error),
}
