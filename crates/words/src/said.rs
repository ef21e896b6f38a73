//! Something to be said, before it is put into a language.

use crate::told::{number, text};
use crate::{Count, Language, Say, data, spoken};
use fluent_bundle::{FluentArgs, FluentValue};
use serde::{Serialize, Serializer};
use std::borrow::Cow;
use std::fmt;
use std::path;

/// Which message is to be said, and with what in it. It is put into a language when it is shown: what works numbers and
/// facts out keeps these, so that it is the same in every language.
#[derive(Clone, Debug, PartialEq)]
pub struct Said(What);

impl Default for Said {
    /// No words at all.
    fn default() -> Self {
        Self::own("")
    }
}

#[derive(Clone, Debug, PartialEq)]
enum What {
    /// A fixed message.
    Fixed(Say),
    /// A message with values in it.
    Message { nth: usize, values: Vec<(&'static str, Value)> },
    /// A text of a data file, which the languages may know.
    Data(String),
    /// So many packages that a data file names.
    Packages(Count, String),
    /// Words that are nobody's to translate.
    Own(String),
    /// One after the other.
    Joined(Vec<Said>),
    /// With a large first letter.
    Capital(Box<Said>),
    /// In small letters.
    Small(Box<Said>),
}

/// What is put into a message.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// A finished text: a name, a measure.
    Text(String),
    /// A number that picks the plural.
    Number(Count),
    /// Another message.
    Said(Said),
}

impl Said {
    /// Words that are nobody's to translate: what a person wrote, what another program says.
    pub fn own(words: impl Into<String>) -> Self {
        Self(What::Own(words.into()))
    }

    /// A text of a data file, as [`of_data`](crate::of_data) tells it.
    pub fn of_data(text: impl Into<String>) -> Self {
        Self(What::Data(text.into()))
    }

    /// So many packages, by the name that a data file has for one: "3 boxes", and "3 × crate" for what no language knows.
    pub fn packages(count: impl Into<Count>, name: impl Into<String>) -> Self {
        Self(What::Packages(count.into(), name.into()))
    }

    /// Several, one right after the other.
    pub fn joined(parts: impl IntoIterator<Item = Self>) -> Self {
        Self(What::Joined(parts.into_iter().collect()))
    }

    /// Several, with `between` between them.
    pub fn listed(parts: impl IntoIterator<Item = Self>, between: impl Into<Self>) -> Self {
        let between = between.into();
        let with = |(nth, part)| if nth == 0 { vec![part] } else { vec![between.clone(), part] };
        Self::joined(parts.into_iter().enumerate().flat_map(with))
    }

    /// Behind words that are nobody's to translate, such as a place in a file.
    #[must_use]
    pub fn after(self, place: impl Into<String>) -> Self {
        Self::joined([Self::own(place), self])
    }

    /// With its first letter large, as at the head of a sentence.
    #[must_use]
    pub fn with_capital(self) -> Self {
        Self(What::Capital(Box::new(self)))
    }

    /// In small letters, as in the middle of a sentence.
    #[must_use]
    pub fn in_small_letters(self) -> Self {
        Self(What::Small(Box::new(self)))
    }

    pub(crate) fn message<const N: usize>(nth: usize, values: [(&'static str, Value); N]) -> Self {
        Self(What::Message { nth, values: values.into() })
    }

    /// In the language that is spoken now.
    pub fn now(&self) -> Cow<'_, str> {
        self.within(spoken())
    }

    /// In a language.
    pub fn within(&self, language: Language) -> Cow<'_, str> {
        match &self.0 {
            What::Fixed(say) => say.within(language).into(),
            What::Message { nth, values } => {
                let values: FluentArgs<'_> =
                    values.iter().map(|(name, value)| (*name, value.within(language))).collect();
                language.0.told(*nth, &values).into()
            }
            What::Data(text) => data::within(text, language).into(),
            What::Packages(count, name) => data::packages(name, count, language).into(),
            What::Own(words) => words.into(),
            What::Joined(parts) => parts.iter().map(|part| part.within(language)).collect::<String>().into(),
            What::Capital(said) => sentence(&said.within(language)).into(),
            What::Small(said) => said.within(language).to_lowercase().into(),
        }
    }
}

/// The first letter large.
pub fn sentence(text: &(impl fmt::Display + ?Sized)) -> String {
    let text = text.to_string();
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

impl Value {
    fn within(&self, language: Language) -> FluentValue<'static> {
        match self {
            Self::Text(words) => text(words),
            Self::Number(count) => number(count.clone()),
            Self::Said(said) => text(&said.within(language)),
        }
    }
}

impl fmt::Display for Said {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&self.now())
    }
}

impl Serialize for Said {
    /// In the language that is spoken now: a report is told to its reader.
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_str(&self.now())
    }
}

impl From<Said> for String {
    fn from(said: Said) -> Self {
        said.now().into_owned()
    }
}

impl From<String> for Said {
    /// Words that are nobody's to translate.
    fn from(words: String) -> Self {
        Self::own(words)
    }
}

impl From<&str> for Said {
    /// Words that are nobody's to translate.
    fn from(words: &str) -> Self {
        Self::own(words)
    }
}

impl From<Say> for Said {
    fn from(say: Say) -> Self {
        Self(What::Fixed(say))
    }
}

/// What can be put into a message.
pub trait Put {
    /// As a value of it.
    fn put(&self) -> Value;
}

impl Put for Said {
    fn put(&self) -> Value {
        Value::Said(self.clone())
    }
}

impl Put for Say {
    fn put(&self) -> Value {
        Value::Said((*self).into())
    }
}

impl<T: Put + ?Sized> Put for &T {
    fn put(&self) -> Value {
        (**self).put()
    }
}

impl<T: Put> Put for Option<T> {
    /// Nothing leaves its place empty.
    fn put(&self) -> Value {
        self.as_ref().map_or(Value::Text(String::new()), Put::put)
    }
}

macro_rules! text {
    ($($kind:ty)+) => {$(
        impl Put for $kind {
            fn put(&self) -> Value {
                Value::Text(self.to_string())
            }
        }
    )+};
}

text!(str String Cow<'_, str> fmt::Arguments<'_> path::Display<'_> char u8 u16 u32 u64 usize i32 i64 f64);

#[cfg(test)]
#[path = "tests/said.rs"]
mod tests;
