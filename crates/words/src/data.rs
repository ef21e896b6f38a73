//! Texts of data files.

use crate::say::Say;
use crate::told::number;
use crate::{Count, DATA, Language, PACKAGES, Said, later, spoken};
use std::collections::HashMap;
use std::sync::OnceLock;

/// A text of a data file, such as the name of a part, in the current language if the program knows it by its English (messages
/// `data-…`); otherwise unchanged. Sources are quoted unchanged.
pub fn of_data(text: &str) -> String {
    within(text, spoken()).to_owned()
}

/// [`of_data`] in a given language.
pub(crate) fn within(text: &str, language: Language) -> &str {
    static KNOWN: OnceLock<HashMap<&'static str, Say>> = OnceLock::new();
    let known = KNOWN.get_or_init(|| DATA.iter().map(|say| (say.within(Language::ENGLISH), *say)).collect());
    known.get(text).map_or(text, |say| say.within(language))
}

/// A count of packages that a data file names in English. An unknown name has no plural: "3 × crate".
pub(crate) fn packages(name: &str, count: &Count, language: Language) -> String {
    static KNOWN: OnceLock<HashMap<String, usize>> = OnceLock::new();
    let counted = |nth: usize, count: Count, language: Language| {
        language.0.told(nth, &[("count", number(count))].into_iter().collect())
    };
    let known = KNOWN.get_or_init(|| {
        let one = |nth: usize| counted(nth, Count::shown(1.0, ""), Language::ENGLISH).trim().to_owned();
        PACKAGES.iter().map(|nth| (one(*nth), *nth)).collect()
    });
    match known.get(name) {
        Some(nth) => counted(*nth, count.clone(), language),
        None => count.times(name),
    }
}

/// "Face South"; a name that already says so, in any language, is not prefixed again: "Face 1".
pub fn face_heading(name: &str) -> Said {
    heading(name, crate::common::FACE, || later::common::face_4(&name))
}

/// "Block A"; "Block 2" for a block named that.
pub fn block_heading(name: &str) -> Said {
    heading(name, crate::common::BLOCK, || later::canvas::block(&name))
}

fn heading(name: &str, kind: Say, with_kind: impl FnOnce() -> Said) -> Said {
    let first = name.split(|letter: char| !letter.is_alphabetic()).next().unwrap_or_default();
    let says = Language::ALL.iter().any(|language| plain(first) == plain(kind.within(*language)));
    if says { Said::own(name) } else { with_kind() }
}

/// The text folded for search: lower case, without the accents that keyboards may lack.
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
