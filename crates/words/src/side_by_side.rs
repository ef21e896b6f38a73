//! Sentences that still stand in the source, in English and Spanish side by side.

use crate::{Language, data, spoken};
use std::collections::HashMap;
use std::fmt;
use std::sync::OnceLock;

/// Words in both languages.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Say {
    english: &'static str,
    spanish: &'static str,
}

/// Words in both languages, for a constant.
pub const fn say(english: &'static str, spanish: &'static str) -> Say {
    Say { english, spanish }
}

impl Say {
    /// In the language that is spoken now.
    pub fn now(self) -> &'static str {
        self.within(spoken())
    }

    /// In a language.
    pub fn within(self, language: Language) -> &'static str {
        if language == Language::ENGLISH { self.english } else { self.spanish }
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

impl fmt::Display for Say {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.now())
    }
}

/// The words of the language that is spoken now.
pub fn pick(english: &'static str, spanish: &'static str) -> &'static str {
    say(english, spanish).now()
}

/// Draws "de el" and "a el" together where a name with its article was put after them, as Spanish always does; "él" and
/// names such as "El Paso" stay (Real Academia Española, Diccionario panhispánico de dudas, "el", from memory).
pub fn drawn_together(words: String) -> String {
    if words.contains("e el ") || words.contains("a el ") {
        words
            .replace(" de el ", " del ")
            .replace(" a el ", " al ")
            .replace("De el ", "Del ")
            .replace("A el ", "Al ")
    } else {
        words
    }
}

/// A text of a data file, such as the name of a part, in the language that is spoken now, where the program knows it; else
/// as it stands in the file. Sources are quoted as they are.
pub fn of_data(text: &str) -> String {
    static KNOWN: OnceLock<HashMap<String, String>> = OnceLock::new();
    if spoken() == Language::ENGLISH {
        return text.to_owned();
    }
    let known = KNOWN.get_or_init(|| {
        serde_json::from_str(include_str!("../../../assets/words/spanish.json")).unwrap_or_default()
    });
    known.get(text).cloned().unwrap_or_else(|| data::of_data(text))
}

/// A sentence with values in it, in the language that is spoken now: a template for each language, then the values, as
/// for [`format!`].
#[macro_export]
macro_rules! tell {
    ($english:literal, $spanish:literal $(, $($value:tt)*)?) => {
        if $crate::spoken() == $crate::Language::ENGLISH {
            format!($english $(, $($value)*)?)
        } else {
            $crate::drawn_together(format!($spanish $(, $($value)*)?))
        }
    };
}

/// As [`tell!`], written to a formatter: see [`write!`].
#[macro_export]
macro_rules! put {
    ($to:expr, $($sentence:tt)*) => {
        write!($to, "{}", $crate::tell!($($sentence)*))
    };
}

/// As [`tell!`], written to a formatter as a line: see [`writeln!`].
#[macro_export]
macro_rules! putln {
    ($to:expr, $($sentence:tt)*) => {
        writeln!($to, "{}", $crate::tell!($($sentence)*))
    };
}
