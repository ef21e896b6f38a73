//! Fixed messages.

use crate::{Language, spoken};
use serde::{Serialize, Serializer};
use std::fmt;

/// A message without variables, in all languages: see the modules of this crate.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Say(pub(crate) usize);

impl Say {
    /// In the current language; resolved once per language and cached.
    pub fn now(self) -> &'static str {
        self.within(spoken())
    }

    /// In a given language.
    pub fn within(self, language: Language) -> &'static str {
        language.0.fixed(self.0)
    }
}

impl From<Say> for &'static str {
    fn from(say: Say) -> Self {
        say.now()
    }
}

impl From<Say> for String {
    fn from(say: Say) -> Self {
        say.now().to_owned()
    }
}

impl Serialize for Say {
    /// In the current language: a report is in its reader's language.
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_str(self.now())
    }
}

impl fmt::Display for Say {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.now())
    }
}
