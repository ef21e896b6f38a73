//! Deferred messages.

use crate::told::{number, text};
use crate::{Count, Language, Say, data, spoken};
use fluent_bundle::{FluentArgs, FluentValue};
use serde::{Serialize, Serializer};
use std::borrow::Cow;
use std::fmt;
use std::path;

/// A message with its arguments, formatted when it is shown: code that computes numbers and facts keeps these, so that its
/// results are the same in every language.
#[derive(Clone, Debug, PartialEq)]
pub struct Said(What);

impl Default for Said {
    /// Empty text.
    fn default() -> Self {
        Self::own("")
    }
}

#[derive(Clone, Debug, PartialEq)]
enum What {
    /// A fixed message.
    Fixed(Say),
    /// A message with arguments.
    Message { nth: usize, values: Vec<(&'static str, Value)> },
    /// A text of a data file, translated if known.
    Data(String),
    /// A count of packages named by a data file.
    Packages(Count, String),
    /// Text that is not translated.
    Own(String),
    /// A concatenation.
    Joined(Vec<Said>),
    /// With an initial capital.
    Capital(Box<Said>),
    /// In lower case.
    Small(Box<Said>),
}

/// An argument of a message.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// A finished text: a name, a measure.
    Text(String),
    /// A number that selects the plural.
    Number(Count),
    /// Another message.
    Said(Said),
}

impl Said {
    /// Text that is not translated: a person's own, or that of another program.
    pub fn own(words: impl Into<String>) -> Self {
        Self(What::Own(words.into()))
    }

    /// A text of a data file, as by [`of_data`](crate::of_data).
    pub fn of_data(text: impl Into<String>) -> Self {
        Self(What::Data(text.into()))
    }

    /// A count of packages, by a data file's name for one: "3 boxes", and "3 × crate" for an unknown name.
    pub fn packages(count: impl Into<Count>, name: impl Into<String>) -> Self {
        Self(What::Packages(count.into(), name.into()))
    }

    /// Concatenates parts.
    pub fn joined(parts: impl IntoIterator<Item = Self>) -> Self {
        Self(What::Joined(parts.into_iter().collect()))
    }

    /// Joins parts with `between`.
    pub fn listed(parts: impl IntoIterator<Item = Self>, between: impl Into<Self>) -> Self {
        let between = between.into();
        let with = |(nth, part)| if nth == 0 { vec![part] } else { vec![between.clone(), part] };
        Self::joined(parts.into_iter().enumerate().flat_map(with))
    }

    /// Prefixed with untranslated text, such as a position in a file.
    #[must_use]
    pub fn after(self, place: impl Into<String>) -> Self {
        Self::joined([Self::own(place), self])
    }

    /// With an initial capital, as at the start of a sentence.
    #[must_use]
    pub fn with_capital(self) -> Self {
        Self(What::Capital(Box::new(self)))
    }

    /// In lower case, as in mid-sentence.
    #[must_use]
    pub fn in_small_letters(self) -> Self {
        Self(What::Small(Box::new(self)))
    }

    pub(crate) fn message<const N: usize>(nth: usize, values: [(&'static str, Value); N]) -> Self {
        Self(What::Message { nth, values: values.into() })
    }

    /// In the current language.
    pub fn now(&self) -> Cow<'_, str> {
        self.within(spoken())
    }

    /// In a given language.
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

/// Capitalizes the first letter.
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
    /// In the current language: a report is in its reader's language.
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
    /// Text that is not translated.
    fn from(words: String) -> Self {
        Self::own(words)
    }
}

impl From<&str> for Said {
    /// Text that is not translated.
    fn from(words: &str) -> Self {
        Self::own(words)
    }
}

impl From<Say> for Said {
    fn from(say: Say) -> Self {
        Self(What::Fixed(say))
    }
}

/// Types that can be arguments of a message.
pub trait Put {
    /// As an argument.
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
    /// `None` inserts nothing.
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
