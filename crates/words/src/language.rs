//! The languages, and the current one of a thread.

use crate::told::Tongue;
use crate::{CODES, IDS, TONGUES};
use fluent_bundle::FluentResource;
use std::cell::Cell;
use std::fmt;

/// A language of the program: one file in `assets/words`.
#[derive(Clone, Copy)]
pub struct Language(pub(crate) &'static Tongue);

impl Language {
    /// The default language of the program, and of all its files.
    pub const ENGLISH: Self = Self::built_in("en");
    /// As spoken by crews in the United States.
    pub const SPANISH: Self = Self::built_in("es");

    /// All built-in languages, in menu order.
    pub const ALL: [Self; CODES.len()] = {
        let mut all = [Self(&TONGUES[0]); CODES.len()];
        let mut nth = 0;
        while nth < all.len() {
            all[nth] = Self(&TONGUES[nth]);
            nth += 1;
        }
        all
    };

    /// Fails to compile for a code without a file.
    const fn built_in(code: &str) -> Self {
        let mut nth = 0;
        while !same(CODES[nth].as_bytes(), code.as_bytes()) {
            nth += 1;
        }
        Self(&TONGUES[nth])
    }

    /// A language from the text of its file, such as a translator's work in progress.
    ///
    /// # Errors
    ///
    /// The first error in the text, in English.
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

    /// Its name in the language itself.
    pub fn name(self) -> &'static str {
        self.0.name
    }

    /// Its two-letter code (ISO 639).
    pub fn code(self) -> &'static str {
        self.0.code
    }

    /// The language of a tag such as "es", "es-MX" or "es_US.UTF-8"; `None` if the program does not have it.
    pub fn from_tag(tag: &str) -> Option<Self> {
        let letters = tag.split(['-', '_', '.', '@']).next().unwrap_or_default();
        Self::ALL.into_iter().find(|language| language.code().eq_ignore_ascii_case(letters))
    }

    /// The language of the desktop: the first of LC_ALL, LC_MESSAGES and LANG that is set and not empty, by POSIX (IEEE Std
    /// 1003.1, "Internationalization variables"); English if the program does not have it.
    pub fn of_desk(variable: impl Fn(&str) -> Option<String>) -> Self {
        ["LC_ALL", "LC_MESSAGES", "LANG"]
            .into_iter()
            .find_map(|name| variable(name).filter(|value| !value.is_empty()))
            .and_then(|tag| Self::from_tag(&tag))
            .unwrap_or_default()
    }

    /// Ids of the messages it lacks, which fall back to English.
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

/// The current language of this thread.
pub fn spoken() -> Language {
    SPOKEN.get()
}

/// Sets the current language of this thread.
pub fn speak(language: Language) {
    SPOKEN.set(language);
}

/// Runs `work` in `language`, then restores the current language.
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
