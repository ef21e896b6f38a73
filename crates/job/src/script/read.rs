//! Reading scripts from a file with one step, a list, or a list with a format header; and writing edits as one.

use super::{Step, StepErrorKind};
use crate::data_file::{parse, version};
use crate::{Edit, FileError, JOB_VERSION};
use chalkcourse_words::{Language, later as words, spoken};
use schemars::{Schema, SchemaGenerator, generate::SchemaSettings, json_schema};
use serde::de::IgnoredAny;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use std::path::Path;

/// The format name in an edit script.
pub const EDITS_FORMAT: &str = "chalkcourse-edits";

/// The steps of a script.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Script {
    /// The language for names of new faces, if the file gives one.
    pub language: Option<Language>,
    /// The steps in order.
    pub steps: Vec<Step>,
}

/// A step that failed, and why.
#[derive(Debug, thiserror::Error)]
#[error("{}", words::job::edit(&number, &name, &format_args!("{wrong}")))]
pub struct StepError {
    /// Its position in the list, from 1.
    pub number: usize,
    /// The name of the step.
    pub name: String,
    /// The error.
    pub wrong: StepErrorKind,
}

/// Reads a script: a single step, a list of steps, or a list with format name and version around it. `path` is only
/// used in error messages.
///
/// # Errors
/// [`FileError`] names the line or the step, its field, and what was expected.
pub fn script_from_text(text: &str, path: &Path) -> Result<Script, FileError> {
    /// A list with a format header.
    #[derive(Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Labelled {
        #[serde(rename = "format")]
        _format: IgnoredAny,
        #[serde(rename = "version")]
        _version: IgnoredAny,
        language: Option<String>,
        data: Value,
    }
    let value: Value = parse(text, path)?;
    let (language, steps) = if value.get("format").is_some() {
        version(text, path, EDITS_FORMAT, JOB_VERSION)?;
        let file: Labelled = parse(text, path)?;
        let language = file.language.as_deref().map(|code| language_of(code, path)).transpose()?;
        (language, file.data)
    } else {
        (None, value)
    };
    let steps = match steps {
        Value::Array(steps) => steps,
        one => vec![one],
    };
    let of = steps.len();
    let read = steps.into_iter().zip(1..).map(|(value, number)| {
        Step::from_value(value).map_err(|(field, wrong)| {
            FileError::wrong(path, words::job::edit_of_field(&number, &of, &field, &wrong))
        })
    });
    Ok(Script { language, steps: read.collect::<Result<_, _>>()? })
}

fn language_of(code: &str, path: &Path) -> Result<Language, FileError> {
    Language::from_tag(code).ok_or_else(|| {
        let known = Language::ALL.map(Language::code).join(", ");
        let wrong = words::job::field_language_is_none_that(&format_args!("{code:?}"), &known);
        FileError::wrong(path, wrong)
    })
}

/// Edits as a script, with the current language: replayed on the job that they were made on, they give the same result.
///
/// # Errors
/// [`FileError::Wrong`] for an edit that JSON can't express.
pub fn edits_to_text<'a>(edits: impl IntoIterator<Item = &'a Edit>) -> Result<String, FileError> {
    #[derive(Serialize)]
    struct Out<'a> {
        format: &'a str,
        version: u32,
        language: &'a str,
        data: Vec<&'a Edit>,
    }
    let data = edits.into_iter().collect();
    let out = Out { format: EDITS_FORMAT, version: JOB_VERSION, language: spoken().code(), data };
    let path = Path::new(EDITS_FORMAT);
    let mut text =
        serde_json::to_string_pretty(&out).map_err(|error| FileError::wrong(path, error.to_string()))?;
    text.push('\n');
    Ok(text)
}

/// The JSON Schema (2020-12) of a script.
pub fn edits_schema() -> Schema {
    let mut generator = SchemaGenerator::new(SchemaSettings::draft2020_12());
    let step = generator.subschema_for::<Step>();
    let list = json_schema!({ "type": "array", "items": step });
    let labelled = json_schema!({
        "type": "object",
        "properties": {
            "format": { "const": EDITS_FORMAT },
            "version": { "type": "integer", "minimum": 1 },
            "language": {
                "enum": Language::ALL.map(Language::code),
                "description": "In which new faces get their names."
            },
            "data": list
        },
        "required": ["format", "version", "data"],
        "additionalProperties": false
    });
    let mut schema = json_schema!({
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": EDITS_FORMAT,
        "description": "One step, a list of steps, or a list with its label.",
        "anyOf": [labelled, list, step]
    });
    schema.insert("$defs".to_owned(), Value::Object(generator.take_definitions(true)));
    schema
}
