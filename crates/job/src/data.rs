//! The data files that come with the program, and a person's own.

use crate::file::{self, FileError};
use crate::{Kit, PriceList, RuleBook};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize, de::DeserializeOwned};
use std::path::Path;
use std::sync::{Arc, LazyLock};

const KIT: &str = include_str!("../../../assets/kits/fernhollow-deck-mount-2026.json");
const RULE_BOOK: &str = include_str!("../../../assets/rule-books/tamsin-bluff-2026.json");
const PRICES: &str = include_str!("../../../assets/price-lists/fernhollow-2026.json");

/// A data file: its format, its version, and what it holds.
#[derive(Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct DataFile<T> {
    /// Which kind of file this is.
    pub(crate) format: String,
    /// Version of that kind.
    pub(crate) version: u32,
    /// What it holds.
    pub(crate) data: T,
}

/// The kit that comes with the program.
pub fn builtin_kit() -> Arc<Kit> {
    static IT: LazyLock<Arc<Kit>> = LazyLock::new(|| builtin(KIT, "chalkcourse-kit"));
    Arc::clone(&IT)
}

/// The rule book that comes with the program.
pub fn builtin_rule_book() -> Arc<RuleBook> {
    static IT: LazyLock<Arc<RuleBook>> = LazyLock::new(|| builtin(RULE_BOOK, "chalkcourse-rule-book"));
    Arc::clone(&IT)
}

/// The price list that comes with the program.
pub fn builtin_prices() -> Arc<PriceList> {
    static IT: LazyLock<Arc<PriceList>> = LazyLock::new(|| builtin(PRICES, "chalkcourse-price-list"));
    Arc::clone(&IT)
}

#[expect(clippy::panic, reason = "the text is part of the program, and a test reads it")]
fn builtin<T: DeserializeOwned>(text: &str, format: &str) -> Arc<T> {
    match file::data_from_text(text, Path::new("built-in"), format) {
        Ok(data) => Arc::new(data),
        Err(error) => panic!("{error}"),
    }
}

/// Reads a kit of a person's own.
///
/// # Errors
/// [`FileError`] names the file, the line or field, and what was expected.
pub fn load_kit(path: &Path) -> Result<Kit, FileError> {
    let kit: Kit = file::load_data(path, "chalkcourse-kit")?;
    kit.check().map_err(|wrong| FileError::wrong(path, wrong))?;
    Ok(kit)
}

/// Reads a rule book of a person's own.
///
/// # Errors
/// [`FileError`] names the file, the line or field, and what was expected.
pub fn load_rule_book(path: &Path) -> Result<RuleBook, FileError> {
    let book: RuleBook = file::load_data(path, "chalkcourse-rule-book")?;
    book.check().map_err(|wrong| FileError::wrong(path, wrong))?;
    Ok(book)
}

/// Reads a price list of a person's own.
///
/// # Errors
/// [`FileError`] names the file, the line or field, and what was expected.
pub fn load_prices(path: &Path) -> Result<PriceList, FileError> {
    let prices: PriceList = file::load_data(path, "chalkcourse-price-list")?;
    prices.check().map_err(|wrong| FileError::wrong(path, wrong))?;
    Ok(prices)
}
