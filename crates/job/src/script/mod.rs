//! Edits from outside: what a person or a program asks for in a file, one step after the other.
//!
//! A step is an object with one field that names what is done. It is an [`Edit`], whole, as a recorded session has them; or a short
//! change (`change.rs`) that names things by number or name and says only what is to be different:
//!
//! ```json
//! [
//!   { "add-penetration": { "kind": "vent", "face": "South", "at": ["12 ft 4 in", "6 ft"] } },
//!   { "change-side": { "part": "House", "side": 3, "overhang": "18 in" } },
//!   { "change-building": { "street_sides": [180.0], "wind_mph": 115.0 } }
//! ]
//! ```
//!
//! A short change is worked out on the job as it is when its turn comes, so that a step may name what one before it made.

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
pub use differences::{FieldDifference, How, JobDifference, Thing, differences};
use fields::Fields;
pub use point::Spot;
use point::{Point, Which};
pub use read::{EDITS_FORMAT, Script, StepError, edits_schema, edits_to_text, script_from_text};
pub use shelf::{Folder, NoFiles, Shelf};

use crate::{Edit, EditError, FileError, Resolved, apply};
use chalkcourse_words::{Said, Say, later as words};
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde_json::Value;
use std::borrow::Cow;

/// One step of a script: an [`Edit`] or a short change.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    name: String,
    does: Does,
}

#[derive(Clone, Debug, PartialEq)]
enum Does {
    Edit(Box<Edit>),
    Change(Box<Change>),
}

/// Why a step can't be done. The job stays as it was before it.
#[derive(Debug, thiserror::Error)]
pub enum Wrong {
    /// A field says something that can't be.
    #[error("{}", words::job::field(&field, &wrong))]
    Field {
        /// As a path of names and numbers; "." for the whole.
        field: String,
        /// What is wrong and what was expected.
        wrong: Said,
    },
    /// The job has nothing of that number or name.
    #[error("{}", words::job::the_job_has_no_there(&what, &asked, &if known.is_empty() { Said::from(words::common::NONE_2) } else { Said::own(known) }))]
    NoSuch {
        /// A part, face, penetration or block.
        what: Say,
        /// As it was asked for.
        asked: String,
        /// Numbers and names of those that there are.
        known: String,
    },
    /// Several have that name.
    #[error("{}", words::job::several_have_the_name_of(&what, &asked, &numbers))]
    SameName {
        /// A part, face, penetration or block.
        what: Say,
        /// As it was asked for.
        asked: String,
        /// Their numbers.
        numbers: String,
    },
    /// One of two fields is wanted, not none and not both.
    #[error("{}", words::job::give_or_one_of_the(&one, &other))]
    OneOf {
        /// This one,
        one: &'static str,
        /// or this one.
        other: &'static str,
    },
    /// A block whose face is hidden at present can't be measured from that face.
    #[error("{}", words::job::the_face_of_block_has(&block))]
    Rests {
        /// The block.
        block: String,
    },
    /// No picture lies under the plan.
    #[error("{}", words::job::NO_PICTURE_LIES_UNDER_THE)]
    NoUnderlay,
    /// A file that the step names can't be used.
    #[error(transparent)]
    File(#[from] FileError),
    /// Files are not to be read here.
    #[error("{}", words::job::no_file_is_read_here(&_0))]
    NoFiles(String),
    /// The edit makes no sense on this job.
    #[error(transparent)]
    Refused(#[from] EditError),
}

impl Wrong {
    fn field(field: impl Into<String>, wrong: impl Into<Said>) -> Self {
        Self::Field { field: field.into(), wrong: wrong.into() }
    }
}

impl Step {
    /// The word that it begins with: `move-corner`.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// The edit that it is on a job. Pure, but for files that the step names: those come from the shelf.
    ///
    /// # Errors
    /// [`Wrong`]: what of the step does not fit the job, and what does.
    pub fn edit(&self, job: &Resolved, shelf: &dyn Shelf) -> Result<Edit, Wrong> {
        let edit = match &self.does {
            Does::Edit(edit) => Edit::clone(edit),
            Does::Change(change) => change.edit(job, shelf)?,
        };
        Ok(shelf.placed(edit))
    }

    /// The job after it.
    ///
    /// # Errors
    /// [`Wrong`]; an edit that the job refuses among it.
    pub fn apply(&self, job: &Resolved, shelf: &dyn Shelf) -> Result<Resolved, Wrong> {
        Ok(apply(job, &self.edit(job, shelf)?)?)
    }
}

impl Step {
    /// Reads a step; else the field, as a path from the step, and what is wrong with it.
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
            Does::Change(serde_path_to_error::deserialize(value).map_err(told)?)
        } else if Edit::NAMES.contains(&name.as_str()) {
            Does::Edit(serde_path_to_error::deserialize(value).map_err(told)?)
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
