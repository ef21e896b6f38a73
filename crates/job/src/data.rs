//! The built-in data files, and data files of the user.

use crate::data_file::{self, DATA_VERSION, DataFile};
use crate::disk::{self, FileError};
use crate::price_reading::PriceReading;
use crate::price_table::COLUMNS;
use crate::table::Table;
use crate::{
    CodeLabels, Kit, Leftover, OrderChoices, PriceList, Received, RuleBook, counts_from_csv, stock_from_csv,
};
use chalkcourse_words::later as words;
use schemars::Schema;
use serde::de::DeserializeOwned;
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::{Arc, LazyLock};

/// The first one is the default for a new job.
const KITS: [&str; 2] = [
    include_str!("../../../assets/kits/fernhollow-deck-mount-2026.json"),
    include_str!("../../../assets/kits/fernhollow-deck-mount-ac-2026.json"),
];
/// The first one is the default for a new job.
const RULE_BOOKS: [&str; 4] = [
    include_str!("../../../assets/rule-books/tamsin-bluff-2026.json"),
    include_str!("../../../assets/rule-books/tamsin-bluff-2021-codes.json"),
    include_str!("../../../assets/rule-books/tamsin-bluff-2024-codes.json"),
    include_str!("../../../assets/rule-books/tamsin-bluff-older-fire-access.json"),
];
const LABELS: &str = include_str!("../../../assets/labels/nec.json");
const LABELS_FORMAT: &str = "chalkcourse-labels";
const KIT_FORMAT: &str = "chalkcourse-kit";
const RULE_BOOK_FORMAT: &str = "chalkcourse-rule-book";
const PRICES_FORMAT: &str = "chalkcourse-price-list";
const PRICES: &str = include_str!("../../../assets/price-lists/fernhollow-2026.json");

/// The default kit of a new job.
pub fn builtin_kit() -> Arc<Kit> {
    Arc::clone(&builtin_kits()[0])
}

/// The built-in kits: one with dc devices at the modules, one with ac devices.
pub fn builtin_kits() -> &'static [Arc<Kit>; 2] {
    static THEM: LazyLock<[Arc<Kit>; 2]> = LazyLock::new(|| KITS.map(|text| builtin(text, KIT_FORMAT)));
    &THEM
}

/// The default rule book of a new job.
pub fn builtin_rule_book() -> Arc<RuleBook> {
    Arc::clone(&builtin_rule_books()[0])
}

/// The built-in rule books, with distinct names.
pub fn builtin_rule_books() -> &'static [Arc<RuleBook>; 4] {
    static THEM: LazyLock<[Arc<RuleBook>; 4]> =
        LazyLock::new(|| RULE_BOOKS.map(|text| builtin(text, RULE_BOOK_FORMAT)));
    &THEM
}

/// The labels of the electrical code that come with the program.
pub fn builtin_labels() -> &'static CodeLabels {
    static IT: LazyLock<Arc<CodeLabels>> = LazyLock::new(|| builtin(LABELS, LABELS_FORMAT));
    &IT
}

/// The built-in price list.
pub fn builtin_prices() -> Arc<PriceList> {
    static IT: LazyLock<Arc<PriceList>> = LazyLock::new(|| builtin(PRICES, PRICES_FORMAT));
    Arc::clone(&IT)
}

#[expect(clippy::panic, reason = "the text is part of the program, and a test reads it")]
fn builtin<T: DeserializeOwned>(text: &str, format: &str) -> Arc<T> {
    match data_file::data_from_text(text, Path::new(format), format) {
        Ok(data) => Arc::new(data),
        Err(error) => panic!("{error}"),
    }
}

/// Reads a kit file.
///
/// # Errors
/// [`FileError`] names the file, the line or field, and what was expected.
pub fn load_kit(path: &Path) -> Result<Kit, FileError> {
    kit_from_text(&disk::read_text(path, KIT_FORMAT)?, path)
}

/// Reads a kit from the text of its file; `path` is only used in error messages.
///
/// # Errors
/// Those of [`load_kit`].
pub fn kit_from_text(text: &str, path: &Path) -> Result<Kit, FileError> {
    let kit: Kit = data_file::data_from_text(text, path, KIT_FORMAT)?;
    kit.check().map_err(|wrong| FileError::wrong(path, wrong))?;
    Ok(kit)
}

/// Reads a rule book file.
///
/// # Errors
/// [`FileError`] names the file, the line or field, and what was expected.
pub fn load_rule_book(path: &Path) -> Result<RuleBook, FileError> {
    rule_book_from_text(&disk::read_text(path, RULE_BOOK_FORMAT)?, path)
}

/// Reads a rule book from the text of its file; `path` is only used in error messages.
///
/// # Errors
/// Those of [`load_rule_book`].
pub fn rule_book_from_text(text: &str, path: &Path) -> Result<RuleBook, FileError> {
    let book: RuleBook = data_file::data_from_text(text, path, RULE_BOOK_FORMAT)?;
    book.check().map_err(|wrong| FileError::wrong(path, wrong))?;
    Ok(book)
}

/// Writes a rule book as a file that [`load_rule_book`] reads, atomically.
///
/// # Errors
/// [`FileError::Wrong`] for an inconsistent book, or [`FileError::System`]; the old file is then unchanged.
pub fn save_rule_book(book: &RuleBook, path: &Path) -> Result<(), FileError> {
    book.check().map_err(|wrong| FileError::wrong(path, wrong))?;
    let file = DataFile { format: RULE_BOOK_FORMAT.to_owned(), version: DATA_VERSION, data: book };
    let mut text =
        serde_json::to_string_pretty(&file).map_err(|error| FileError::wrong(path, error.to_string()))?;
    text.push('\n');
    disk::write_atomically(path, text.as_bytes())
}

/// Reads a price list file: JSON, CSV, or a workbook by the file extension (`.xlsx`, `.xls`, `.ods`), and reports which
/// of its prices the kit knows.
///
/// A table has the columns `number` and `price`, and optionally `name`, `untaxed` and `alternate for`; rows without a
/// number give the `currency`, `date`, `tax %`, `delivery` and `list` (its name, by default the file's).
///
/// # Errors
/// [`FileError`] names the file, the line or field, and what was expected: an ambiguous number is rejected.
pub fn load_prices(path: &Path, kit: &Kit) -> Result<PriceReading, FileError> {
    prices_from_bytes(disk::read_bytes(path, words::job::PRICE_LIST)?, path, kit)
}

/// Reads a price list from the bytes of its file: JSON, or a table, depending on the extension of its path.
///
/// # Errors
/// Those of [`load_prices`].
pub fn prices_from_bytes(bytes: Vec<u8>, path: &Path, kit: &Kit) -> Result<PriceReading, FileError> {
    let name = path.file_stem().map_or_else(String::new, |stem| stem.to_string_lossy().into_owned());
    let table = match ending(path).as_str() {
        "csv" | "tsv" | "txt" => Table::from_csv(&disk::text_of(bytes, path)?, &COLUMNS),
        "xlsx" | "xlsm" | "xls" | "ods" => Table::from_workbook(&bytes, &COLUMNS),
        _ => {
            let prices: PriceList =
                data_file::data_from_text(&disk::text_of(bytes, path)?, path, PRICES_FORMAT)?;
            prices.check().map_err(|wrong| FileError::wrong(path, wrong))?;
            return Ok(PriceReading::of(prices, kit));
        }
    };
    table
        .and_then(|table| crate::price_table::price_list(&table, &name, kit))
        .map_err(|wrong| FileError::wrong(path, wrong))
}

/// Reads a warehouse list: CSV as described at [`stock_from_csv`], or JSON, a list of leftovers.
///
/// # Errors
/// [`FileError`] names the file, the line or field, and what was expected.
pub fn load_stock(path: &Path) -> Result<Vec<Leftover>, FileError> {
    if ending(path) == "json" {
        let stock: Vec<Leftover> = data_file::load_data(path, "chalkcourse-stock")?;
        let choices = OrderChoices { stock, ..OrderChoices::default() };
        choices.check().map_err(|wrong| FileError::wrong(path, wrong))?;
        return Ok(choices.stock);
    }
    stock_from_csv(&disk::read_text(path, words::job::WAREHOUSE_LIST)?)
        .map_err(|wrong| FileError::wrong(path, wrong))
}

/// Reads a pallet list with counts filled in, as described at [`counts_from_csv`].
///
/// # Errors
/// [`FileError`] names the file, the line and what was expected.
pub fn load_counts(path: &Path) -> Result<BTreeMap<String, Received>, FileError> {
    counts_from_csv(&disk::read_text(path, words::job::PALLET_LIST)?)
        .map_err(|wrong| FileError::wrong(path, wrong))
}

/// The JSON Schema of a kit file.
pub fn kit_schema() -> Schema {
    data_file::file_schema::<Kit>(KIT_FORMAT)
}

/// The JSON Schema of a rule book file.
pub fn rule_book_schema() -> Schema {
    data_file::file_schema::<RuleBook>(RULE_BOOK_FORMAT)
}

/// The JSON Schema of a price list file.
pub fn price_list_schema() -> Schema {
    data_file::file_schema::<PriceList>(PRICES_FORMAT)
}

fn ending(path: &Path) -> String {
    path.extension().map_or_else(String::new, |ending| ending.to_string_lossy().to_lowercase())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_saved_book_is_read_back_as_it_was() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("book.json");
        for book in builtin_rule_books() {
            save_rule_book(book, &path).unwrap();
            assert_eq!(load_rule_book(&path).unwrap(), **book);
        }
        let mut wrong = (*builtin_rule_book()).clone();
        wrong.hooked_share.value = 7.0;
        assert!(save_rule_book(&wrong, &path).is_err());
        assert_eq!(load_rule_book(&path).unwrap(), **builtin_rule_books().last().unwrap());
    }

    #[test]
    fn built_in_books_are_valid_and_have_distinct_names() {
        let books = builtin_rule_books();
        for (index, book) in books.iter().enumerate() {
            book.check().unwrap();
            assert!(books[..index].iter().all(|other| other.name != book.name), "{}", book.name);
        }
    }
}
