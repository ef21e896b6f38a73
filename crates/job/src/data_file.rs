//! The common layer of all file formats: JSON that names its format and version beside its data.

use crate::FileError;
use crate::disk::read_text;
use chalkcourse_words::Said;
use schemars::{JsonSchema, Schema};
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use std::path::Path;

/// The current version of the formats for kits, rule books, price lists and the like.
pub(crate) const DATA_VERSION: u32 = 1;

/// A data file: its format, its version, and its data.
#[derive(Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct DataFile<T> {
    /// The kind of file.
    pub(crate) format: String,
    /// Version of that kind.
    pub(crate) version: u32,
    /// The content.
    pub(crate) data: T,
}

/// The JSON Schema of files of a format.
pub(crate) fn file_schema<T: JsonSchema>(format: &str) -> Schema {
    let mut schema = schemars::schema_for!(DataFile<T>);
    schema.insert("title".to_owned(), format.into());
    schema
}

/// Reads a data file from disk.
pub(crate) fn load_data<T: DeserializeOwned>(path: &Path, format: &str) -> Result<T, FileError> {
    data_from_text(&read_text(path, format)?, path, format)
}

/// Reads the text of a data file in two passes: first its format and version, then its data.
pub(crate) fn data_from_text<T: DeserializeOwned>(
    text: &str,
    path: &Path,
    format: &str,
) -> Result<T, FileError> {
    version(text, path, format, DATA_VERSION)?;
    Ok(parse::<DataFile<T>>(text, path)?.data)
}

/// The version of a file of a format. A version newer than `known` is rejected before the data is read.
pub(crate) fn version(text: &str, path: &Path, format: &str, known: u32) -> Result<u32, FileError> {
    #[derive(Deserialize)]
    struct Label {
        format: String,
        version: u32,
    }
    let label: Label = parse(text, path)?;
    if label.format != format {
        return Err(FileError::OtherFormat {
            path: path.to_owned(),
            found: label.format,
            expected: format.to_owned(),
        });
    }
    if label.version > known || label.version == 0 {
        return Err(FileError::Newer { path: path.to_owned(), found: label.version, known });
    }
    Ok(label.version)
}

/// Parses JSON; an error names the position and the field.
pub(crate) fn parse<T: DeserializeOwned>(text: &str, path: &Path) -> Result<T, FileError> {
    let mut deserializer = serde_json::Deserializer::from_str(text);
    let malformed = |field: String, error: &serde_json::Error| FileError::Malformed {
        path: path.to_owned(),
        line: error.line(),
        column: error.column(),
        field,
        wrong: without_place(error),
    };
    let value = serde_path_to_error::deserialize(&mut deserializer)
        .map_err(|error| malformed(error.path().to_string(), error.inner()))?;
    deserializer.end().map_err(|error| malformed(".".to_owned(), &error))?;
    Ok(value)
}

/// The serde_json message without its position, which [`FileError`] puts in front.
fn without_place(error: &serde_json::Error) -> Said {
    let words = error.to_string();
    match words.rfind(" at line ") {
        Some(at) => Said::own(&words[..at]),
        None => Said::own(words),
    }
}
