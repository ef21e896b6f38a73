//! Edits from outside: a file of steps written by a person or a program.
//!
//! A step is an object with one field that names it. It is either a full [`Edit`], as in recorded sessions, or a short
//! form (`change.rs`) that refers to objects by id or name and gives only the fields to change:
//!
//! ```json
//! [
//!   { "add-penetration": { "kind": "vent", "face": "South", "at": ["12 ft 4 in", "6 ft"] } },
//!   { "change-side": { "part": "House", "side": 3, "overhang": "18 in" } },
//!   { "change-building": { "street_sides": [180.0], "wind_mph": 115.0 } }
//! ]
//! ```
//!
//! A short form is expanded when its turn comes, so that a step may refer to objects made by earlier steps.

mod blocks;
mod change;
mod corners;
mod differences;
mod faces;
mod fields;
mod find;
mod parts;
mod penetrations;
mod point;
mod read;
mod shelf;
#[cfg(test)]
mod tests;

use change::Change;
pub use differences::{DifferenceKind, FieldDifference, JobDifference, ObjectKind, differences};
use fields::Fields;
pub use point::Spot;
use point::{ObjectRef, Point};
pub use read::{EDITS_FORMAT, Script, StepError, edits_schema, edits_to_text, script_from_text};
pub use shelf::{Folder, NoFiles, Shelf};

use crate::{Edit, EditError, FileError, Resolved, apply};
use chalkcourse_words::{Said, Say, later as words};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde_json::Value;
use std::borrow::Cow;

/// A step of a script: an [`Edit`] or a short form.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    name: String,
    does: StepBody,
}

#[derive(Clone, Debug, PartialEq)]
enum StepBody {
    Edit(Box<Edit>),
    Change(Box<Change>),
}

/// Why a step failed. The job is left as before the step.
#[derive(Debug, thiserror::Error)]
pub enum StepErrorKind {
    /// A field has an invalid value.
    #[error("{}", words::job::field(&field, &wrong))]
    Field {
        /// The path of names and indices; "." for the whole.
        field: String,
        /// What is wrong and what was expected.
        wrong: Said,
    },
    /// The job has no object with that id or name.
    #[error("{}", words::job::the_job_has_no_there(&what, &asked, &if known.is_empty() { Said::from(words::common::NONE_2) } else { Said::own(known) }))]
    NoSuch {
        /// A part, face, penetration or block.
        what: Say,
        /// The requested id or name.
        asked: String,
        /// Ids and names of existing ones.
        known: String,
    },
    /// Several objects have that name.
    #[error("{}", words::job::several_have_the_name_of(&what, &asked, &numbers))]
    SameName {
        /// A part, face, penetration or block.
        what: Say,
        /// The requested name.
        asked: String,
        /// Their ids.
        numbers: String,
    },
    /// Exactly one of two fields must be given.
    #[error("{}", words::job::give_or_one_of_the(&one, &other))]
    OneOf {
        /// One field,
        one: &'static str,
        /// the other field.
        other: &'static str,
    },
    /// A block on a hidden face can't be measured from that face.
    #[error("{}", words::job::the_face_of_block_has(&block))]
    Rests {
        /// The block.
        block: String,
    },
    /// There is no picture under the plan.
    #[error("{}", words::job::NO_PICTURE_LIES_UNDER_THE)]
    NoUnderlay,
    /// A file named in the step can't be used.
    #[error(transparent)]
    File(#[from] FileError),
    /// Files can't be read in this context.
    #[error("{}", words::job::no_file_is_read_here(&_0))]
    NoFiles(String),
    /// The job rejects the edit.
    #[error(transparent)]
    Refused(#[from] EditError),
}

impl StepErrorKind {
    fn field(field: impl Into<String>, wrong: impl Into<Said>) -> Self {
        Self::Field { field: field.into(), wrong: wrong.into() }
    }
}

impl Step {
    /// The name of the step: `move-corner`.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The edit for a job. Pure, except for files named in the step, which are read from the shelf.
    ///
    /// # Errors
    /// [`StepErrorKind`]: what in the step does not fit the job, and what would.
    pub fn edit(&self, job: &Resolved, shelf: &dyn Shelf) -> Result<Edit, StepErrorKind> {
        let edit = match &self.does {
            StepBody::Edit(edit) => Edit::clone(edit),
            StepBody::Change(change) => change.edit(job, shelf)?,
        };
        Ok(shelf.placed(edit))
    }

    /// Applies the step to a job.
    ///
    /// # Errors
    /// [`StepErrorKind`], including edits that the job rejects.
    pub fn apply(&self, job: &Resolved, shelf: &dyn Shelf) -> Result<Resolved, StepErrorKind> {
        Ok(apply(job, &self.edit(job, shelf)?)?)
    }
}

impl Step {
    /// Parses a step; an error has the path of the field within the step, and what is wrong with it.
    fn from_value(value: Value) -> Result<Self, (String, Said)> {
        let told = |error: serde_path_to_error::Error<serde_json::Error>| {
            (error.path().to_string(), error.inner().to_string().into())
        };
        let begins =
            value.as_object().filter(|fields| fields.len() == 1).and_then(|fields| fields.keys().next());
        let Some(begins) = begins else {
            let wrong = words::job::a_step_is_an_object(&r#"{"remove-block": "A"}"#);
            return Err((".".to_owned(), wrong));
        };
        let name = begins.clone();
        let does = if Change::NAMES.contains(&name.as_str()) {
            StepBody::Change(serde_path_to_error::deserialize(value).map_err(told)?)
        } else if Edit::NAMES.contains(&name.as_str()) {
            StepBody::Edit(serde_path_to_error::deserialize(value).map_err(told)?)
        } else {
            let mut known: Vec<&str> = Change::NAMES.iter().chain(&Edit::NAMES).copied().collect();
            known.sort_unstable();
            known.dedup();
            let wrong = words::job::nothing_is_done_by_there(&format_args!("{name:?}"), &known.join(", "));
            return Err((".".to_owned(), wrong));
        };
        Ok(Self { name, does })
    }
}

impl JsonSchema for Step {
    fn schema_name() -> Cow<'static, str> {
        "Step".into()
    }
    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "description": "One step: a short change, or an edit that puts a whole thing.",
            "anyOf": [generator.subschema_for::<Change>(), generator.subschema_for::<Edit>()]
        })
    }
}
