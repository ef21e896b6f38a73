//! The languages of the program, and message lookup.
//!
//! A language is one file of Project Fluent, `assets/words/<code>.ftl`; `assets/words/README.md` is the guide for translators.
//! The build script generates an item for each message in `en.ftl`, in a module named by the first part of its id: a constant for
//! a fixed message, a function for one with variables. A wrong id or argument does not compile; a message that a language lacks
//! falls back to English.
//!
//! ```
//! use chalkcourse_words::{self as words, Language, speaking};
//!
//! let told = || words::common::modules(3_usize);
//! assert_eq!(told(), "3 modules");
//! assert_eq!(speaking(Language::SPANISH, told), "3 módulos");
//! ```
//!
//! ```compile_fail
//! chalkcourse_words::common::modules("three");
//! ```
//!
//! Code that computes numbers and facts does not format text: it returns a message with its arguments ([`Said`], by the same
//! names in [`later`]), which is formatted when it is shown.
//!
//! An inserted text stays as it is, whatever it contains. A `(number)` selects the plural and is shown as its [`Count`] says;
//! measures come as finished text.
//!
//! The language is per thread: background work is given it when it starts ([`speaking`]). Files are the same in every language:
//! keys, numbers and the keywords of their formats never pass through here.
//!
//! Numbers keep a decimal point in both languages: crews in the United States read the lengths and amounts of the trade that way,
//! as on the makers' sheets and on tapes (the "es-US" and "es-MX" data of the Unicode Common Locale Data Repository, from
//! memory).

mod count;
mod data;
mod kept;
mod language;
mod said;
mod say;
mod told;

pub use common::modules;
pub use count::Count;
pub use data::{block_heading, face_heading, of_data, plain};
pub use language::{Language, speak, speaking, spoken};
pub use said::{Put, Said, Value, sentence};
pub use say::Say;
pub use told::{Noted, noted, silent};

use told::Tongue;

include!(concat!(env!("OUT_DIR"), "/messages.rs"));

#[cfg(test)]
#[path = "tests/used.rs"]
mod tests;
