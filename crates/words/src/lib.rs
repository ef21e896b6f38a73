//! The languages that the program speaks, and how a sentence is looked up in them.
//!
//! A language is one file of Project Fluent, `assets/words/<code>.ftl`; `assets/words/README.md` is the guide of those who
//! translate. The build script makes an item of each message in `en.ftl`, in a module by the first part of its id: a
//! constant of a fixed message, a function of one with variables. A wrong id or argument does not compile; a message
//! that a language lacks is told in English.
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
//! What works numbers and facts out makes no words: it gives a message with what is in it ([`Said`], by the same names in
//! [`later`]), and whoever shows it has it told.
//!
//! A text that is put in stays as it is, whatever it holds. A `(number)` picks the plural and is shown as its [`Count`]
//! says; measures come as finished text.
//!
//! The language belongs to a thread: what works in the background is told it when it starts ([`speaking`]). Files are
//! the same in every language: keys, numbers and the words of their formats never pass through here.
//!
//! Numbers keep a decimal point in both languages: lengths and amounts of the trade are read that way by crews in the
//! United States, where the maker's sheets and tapes have it (the "es-US" and "es-MX" data of the Unicode Common Locale
//! Data Repository, from memory).

mod count;
mod data;
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
pub use told::silent;

use told::Tongue;

include!(concat!(env!("OUT_DIR"), "/messages.rs"));

#[cfg(test)]
#[path = "tests/used.rs"]
mod tests;
