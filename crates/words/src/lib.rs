//! The languages that the program speaks, and how a sentence is written in each.
//!
//! A sentence stands in the source once, in all languages side by side, so that the compiler keeps them complete:
//!
//! ```
//! use chalkcourse_words::{Language, Say, say, speaking, tell};
//!
//! const SAVE: Say = say("Save", "Guardar");
//! let faces = 3;
//! let told = || tell!("{faces} faces", "{faces} faldones");
//! assert_eq!((SAVE.now(), told().as_str()), ("Save", "3 faces"));
//! speaking(Language::Spanish, || assert_eq!((SAVE.now(), told().as_str()), ("Guardar", "3 faldones")));
//! ```
//!
//! The language belongs to a thread: what works in the background is told it when it starts ([`speaking`]). Files are
//! the same in every language: keys, numbers and the words of their formats never pass through here.
//!
//! Numbers keep a decimal point in both languages: lengths and amounts of the trade are read that way by crews in the
//! United States, where the maker's sheets and tapes have it (the "es-US" and "es-MX" data of the Unicode Common Locale
//! Data Repository, from memory).

use std::cell::Cell;
use std::collections::HashMap;
use std::fmt;
use std::sync::OnceLock;

/// A language that the program speaks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Language {
    /// The first language of the program, and of all its files.
    #[default]
    English,
    /// As crews speak it in the United States.
    Spanish,
}

impl Language {
    /// All of them, as a menu lists them.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// What it calls itself.
    pub fn name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "Español",
        }
    }

    /// Its two letters by ISO 639.
    pub fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }

    /// The language of a tag such as "es", "es-MX" or "es_US.UTF-8"; none where the program does not speak it.
    pub fn from_tag(tag: &str) -> Option<Self> {
        let letters = tag.split(['-', '_', '.', '@']).next().unwrap_or_default();
        Self::ALL.into_iter().find(|language| language.code().eq_ignore_ascii_case(letters))
    }

    /// The language that the desk asks for: the first of LC_ALL, LC_MESSAGES and LANG that is set and not empty, by
    /// POSIX (IEEE Std 1003.1, "Internationalization variables"); English where that is none that is spoken.
    pub fn of_desk(variable: impl Fn(&str) -> Option<String>) -> Self {
        ["LC_ALL", "LC_MESSAGES", "LANG"]
            .into_iter()
            .find_map(|name| variable(name).filter(|value| !value.is_empty()))
            .and_then(|tag| Self::from_tag(&tag))
            .unwrap_or_default()
    }
}

thread_local! {
    static SPOKEN: Cell<Language> = const { Cell::new(Language::English) };
}

/// What this thread speaks.
pub fn spoken() -> Language {
    SPOKEN.get()
}

/// From here on this thread speaks `language`.
pub fn speak(language: Language) {
    SPOKEN.set(language);
}

/// Does `work` in `language`, and speaks what was spoken before afterwards.
pub fn speaking<T>(language: Language, work: impl FnOnce() -> T) -> T {
    struct Back(Language);
    impl Drop for Back {
        fn drop(&mut self) {
            speak(self.0);
        }
    }
    let _back = Back(spoken());
    speak(language);
    work()
}

/// Words in all languages.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Say {
    english: &'static str,
    spanish: &'static str,
}

/// Words in all languages, for a constant.
pub const fn say(english: &'static str, spanish: &'static str) -> Say {
    Say { english, spanish }
}

impl Say {
    /// In the language that is spoken now.
    pub fn now(self) -> &'static str {
        self.within(spoken())
    }

    /// In a language.
    pub const fn within(self, language: Language) -> &'static str {
        match language {
            Language::English => self.english,
            Language::Spanish => self.spanish,
        }
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

/// "1 module", "3 modules".
pub fn modules(count: usize) -> String {
    if count == 1 {
        pick("1 module", "1 módulo").to_owned()
    } else {
        tell!("{count} modules", "{count} módulos")
    }
}

/// "Face South"; a name that says so itself is not told twice: "Face 1".
pub fn face_heading(name: &str) -> String {
    let says = ["Face ", "Faldón "].iter().any(|word| name.starts_with(word));
    if says { name.to_owned() } else { tell!("Face {name}", "Faldón {name}") }
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

const DATA_IN_SPANISH: &str = include_str!("../../../assets/words/spanish.json");

/// A text of a data file, such as the name of a part, in the language that is spoken now, where the program knows it; else
/// as it stands in the file. Sources are quoted as they are.
pub fn of_data(text: &str) -> String {
    static KNOWN: OnceLock<HashMap<String, String>> = OnceLock::new();
    match spoken() {
        Language::English => text.to_owned(),
        Language::Spanish => {
            let known = KNOWN.get_or_init(|| serde_json::from_str(DATA_IN_SPANISH).unwrap_or_default());
            known.get(text).map_or(text, String::as_str).to_owned()
        }
    }
}

/// The words of the language that is spoken now.
pub fn pick(english: &'static str, spanish: &'static str) -> &'static str {
    say(english, spanish).now()
}

/// A sentence with values in it, in the language that is spoken now: a template for each language, then the values, as
/// for [`format!`].
#[macro_export]
macro_rules! tell {
    ($english:literal, $spanish:literal $(, $($value:tt)*)?) => {
        match $crate::spoken() {
            $crate::Language::English => format!($english $(, $($value)*)?),
            $crate::Language::Spanish => $crate::drawn_together(format!($spanish $(, $($value)*)?)),
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tags_of_languages() {
        assert_eq!(Language::from_tag("es"), Some(Language::Spanish));
        assert_eq!(Language::from_tag("es-MX"), Some(Language::Spanish));
        assert_eq!(Language::from_tag("ES_us.UTF-8"), Some(Language::Spanish));
        assert_eq!(Language::from_tag("en_US@latin"), Some(Language::English));
        assert_eq!(Language::from_tag("est"), None);
        assert_eq!(Language::from_tag(""), None);
    }

    /// The order of the variables is that of IEEE Std 1003.1, 8.2: LC_ALL, then LC_MESSAGES, then LANG; an empty one
    /// counts as not set.
    #[test]
    fn the_desk_says_which() {
        let desk = |set: &[(&str, &str)]| {
            Language::of_desk(|name| {
                set.iter().find(|(known, _)| *known == name).map(|(_, value)| (*value).to_owned())
            })
        };
        assert_eq!(desk(&[]), Language::English);
        assert_eq!(desk(&[("LANG", "es_MX.UTF-8")]), Language::Spanish);
        assert_eq!(desk(&[("LANG", "es_MX.UTF-8"), ("LC_MESSAGES", "en_US")]), Language::English);
        assert_eq!(desk(&[("LANG", "es"), ("LC_MESSAGES", "en"), ("LC_ALL", "es")]), Language::Spanish);
        assert_eq!(desk(&[("LANG", "es"), ("LC_ALL", "")]), Language::Spanish);
        assert_eq!(desk(&[("LANG", "C.UTF-8")]), Language::English);
    }

    #[test]
    fn speaking_ends_with_the_work_even_when_it_breaks_off() {
        let broken = std::panic::catch_unwind(|| speaking(Language::Spanish, || std::panic::panic_any(())));
        assert!(broken.is_err());
        assert_eq!(spoken(), Language::English);
    }

    #[test]
    fn threads_speak_for_themselves() {
        speaking(Language::Spanish, || {
            let other = std::thread::spawn(spoken).join();
            assert_eq!(other.ok(), Some(Language::English));
            assert_eq!(spoken(), Language::Spanish);
        });
    }

    #[test]
    fn articles_are_drawn_together() {
        let who = "el bloque A";
        let inside = || tell!("rail of {who}", "riel de {who}, de El Paso, a él");
        assert_eq!(speaking(Language::Spanish, inside), "riel del bloque A, de El Paso, a él");
    }

    #[test]
    fn texts_of_data_files() {
        assert_eq!(of_data("box"), "box");
        speaking(Language::Spanish, || {
            assert_eq!(of_data("box"), "caja");
            assert_eq!(of_data("A part of some other kit"), "A part of some other kit");
        });
    }

    #[test]
    fn words_are_found_without_accents() {
        assert_eq!(plain("Lista de VERIFICACIÓN"), "lista de verificacion");
    }

    #[test]
    fn words_pad_as_text_does() {
        assert_eq!(format!("{:>5}|", say("ab", "abc")), "   ab|");
    }
}
