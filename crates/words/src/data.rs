//! The words of data files.

use crate::say::Say;
use crate::{DATA, Language};
use std::collections::HashMap;
use std::sync::OnceLock;

/// A text of a data file, such as the name of a part, in the language that is spoken now, where the program knows it by its
/// English (messages `data-…`); else as it stands in the file. Sources are quoted as they are.
pub fn of_data(text: &str) -> String {
    static KNOWN: OnceLock<HashMap<&'static str, Say>> = OnceLock::new();
    let known = KNOWN.get_or_init(|| DATA.iter().map(|say| (say.within(Language::ENGLISH), *say)).collect());
    known.get(text).map_or(text, |say| say.now()).to_owned()
}

/// "Face South"; a name that says so itself is not told twice: "Face 1".
pub fn face_heading(name: &str) -> String {
    let says = ["Face ", "Faldón "].iter().any(|word| name.starts_with(word));
    if says { name.to_owned() } else { crate::common::face_4(&name) }
}

/// The text as one looks for it: small letters, and without the accents that keyboards may lack.
pub fn plain(text: &str) -> String {
    let bare = |c: char| match c {
        'á' => 'a',
        'é' => 'e',
        'í' => 'i',
        'ó' => 'o',
        'ú' | 'ü' => 'u',
        'ñ' => 'n',
        other => other,
    };
    text.to_lowercase().chars().map(bare).collect()
}

#[cfg(test)]
#[path = "tests/data.rs"]
mod tests;
