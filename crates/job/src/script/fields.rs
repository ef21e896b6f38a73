//! Changing some fields of an object.

use super::StepErrorKind;
use chalkcourse_words::later as words;
use schemars::{JsonSchema, Schema, SchemaGenerator};
use serde::de::{Deserialize, DeserializeOwned, Deserializer};
use serde::ser::Serialize;
use serde_json::{Map, Value};
use std::borrow::Cow;
use std::marker::PhantomData;

/// Some fields of a `T`. Each given field replaces the old value as a whole; `null` resets it to the default. Others
/// are unchanged.
///
/// The fields and their types come from `T` alone: new fields need no change here.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Fields<T> {
    given: Map<String, Value>,
    of: PhantomData<fn() -> T>,
}

/// Fields that identify the object and can't be changed.
const FIXED: [&str; 2] = ["id", "from"];

impl<T: Serialize + DeserializeOwned> Fields<T> {
    /// An object with these fields replaced.
    pub(super) fn over(&self, there: &T) -> Result<T, StepErrorKind> {
        let unfit = |error: serde_json::Error| StepErrorKind::field(".", error.to_string());
        if let Some(field) = FIXED.iter().find(|field| self.given.contains_key(**field)) {
            let wrong = words::job::IT_SAYS_WHICH_THING_THIS;
            return Err(StepErrorKind::field(*field, wrong));
        }
        let mut whole = serde_json::to_value(there).map_err(unfit)?;
        let Value::Object(fields) = &mut whole else { return serde_json::from_value(whole).map_err(unfit) };
        for (field, value) in &self.given {
            match value {
                Value::Null => drop(fields.remove(field)),
                value => drop(fields.insert(field.clone(), value.clone())),
            }
        }
        serde_path_to_error::deserialize(whole)
            .map_err(|error| StepErrorKind::field(error.path().to_string(), error.inner().to_string()))
    }
}

impl<'de, T> Deserialize<'de> for Fields<T> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        Ok(Self { given: Map::deserialize(deserializer)?, of: PhantomData })
    }
}

impl<T: JsonSchema> JsonSchema for Fields<T> {
    fn inline_schema() -> bool {
        true
    }
    fn schema_name() -> Cow<'static, str> {
        format!("FieldsOf{}", T::schema_name()).into()
    }
    fn json_schema(generator: &mut SchemaGenerator) -> Schema {
        let mut schema = T::json_schema(generator);
        // Drop the keywords of the object that don't apply to an edit; the outer schema is closed.
        for key in ["required", "description", "additionalProperties"] {
            schema.remove(key);
        }
        if let Some(Value::Object(fields)) = schema.get_mut("properties") {
            fields.retain(|field, _| !FIXED.contains(&field.as_str()));
            for of_field in fields.values_mut() {
                let kept = of_field.take();
                *of_field = serde_json::json!({ "anyOf": [kept, { "type": "null" }] });
            }
        }
        schema
    }
}

/// [`Fields`] as an object of their own.
#[derive(Clone, Debug, PartialEq, serde::Deserialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub(super) struct Whole<T: JsonSchema> {
    #[serde(flatten)]
    fields: Fields<T>,
}

impl<T: JsonSchema + Serialize + DeserializeOwned> Whole<T> {
    pub(super) fn over(&self, there: &T) -> Result<T, StepErrorKind> {
        self.fields.over(there)
    }
}
