//! The languages, and which of them a thread speaks.

use crate::told::Tongue;
use crate::{CODES, IDS, TONGUES};
use fluent_bundle::FluentResource;
use std::cell::Cell;
use std::fmt;

/// A language that the program speaks: one file in `assets/words`.
#[derive(Clone, Copy)]
pub struct Language(pub(crate) &'static Tongue);

impl Language {
    /// The first language of the program, and of all its files.
    pub const ENGLISH: Self = Self::built_in("en");
    /// As crews speak it in the United States.
    pub const SPANISH: Self = Self::built_in("es");

    /// All that are built in, as a menu lists them.
    pub const ALL: [Self; CODES.len()] = {
        let mut all = [Self(&TONGUES[0]); CODES.len()];
        let mut nth = 0;
        while nth < all.len() {
            all[nth] = Self(&TONGUES[nth]);
            nth += 1;
        }
        all
    };

    /// Does not compile for a code that no file has.
    const fn built_in(code: &str) -> Self {
        let mut nth = 0;
        while !same(CODES[nth].as_bytes(), code.as_bytes()) {
            nth += 1;
        }
        Self(&TONGUES[nth])
    }

    /// A language of a text as its file would hold it, such as a translator's while it grows.
    ///
    /// # Errors
    ///
    /// The first thing that is wrong with the text, in English.
    pub fn read(text: &str) -> Result<Self, String> {
        let resource = FluentResource::try_new(text.to_owned()).map_err(|(_, faults)| {
            faults.first().map_or_else(String::new, |fault| {
                let line = text.get(..fault.pos.start).map_or(1, |before| before.matches('\n').count() + 1);
                format!("line {line}: {}", fault.kind)
            })
        })?;
        drop(resource);
        let own = |id: &str| {
            let line = text.lines().find_map(|line| line.strip_prefix(id)?.trim_start().strip_prefix('='));
            line.map(|words| words.trim().to_owned()).ok_or_else(|| format!("say `{id} = …`"))
        };
        let (code, name) = (own("language-code")?, own("language-name")?);
        Ok(Self(Box::leak(Box::new(Tongue::new(code.leak(), name.leak(), text.to_owned().leak())))))
    }

    /// What it calls itself.
    pub fn name(self) -> &'static str {
        self.0.name
    }

    /// Its two letters by ISO 639.
    pub fn code(self) -> &'static str {
        self.0.code
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

    /// Ids of the messages that it does not have, and that are told in English.
    pub fn missing(self) -> impl Iterator<Item = &'static str> {
        IDS.iter().copied().enumerate().filter(move |(nth, _)| !self.0.has(*nth)).map(|(_, id)| id)
    }
}

const fn same(one: &[u8], other: &[u8]) -> bool {
    if one.len() != other.len() {
        return false;
    }
    let mut nth = 0;
    while nth < one.len() {
        if one[nth] != other[nth] {
            return false;
        }
        nth += 1;
    }
    true
}

impl Default for Language {
    fn default() -> Self {
        Self::ENGLISH
    }
}

impl PartialEq for Language {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self.0, other.0)
    }
}

impl Eq for Language {}

impl fmt::Debug for Language {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.code())
    }
}

thread_local! {
    static SPOKEN: Cell<Language> = const { Cell::new(Language::ENGLISH) };
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

#[cfg(test)]
#[path = "tests/language.rs"]
mod tests;
