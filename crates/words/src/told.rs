//! Formatting of messages.

use crate::kept::kept;
use crate::{Count, IDS, Language, spoken};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::types::{FluentNumber, FluentNumberOptions};
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use std::cell::{Cell, RefCell};
use std::fmt::Display;
use std::sync::OnceLock;

/// The messages of one language.
pub(crate) struct Tongue {
    pub(crate) code: &'static str,
    pub(crate) name: &'static str,
    text: &'static str,
    ready: OnceLock<Ready>,
}

struct Ready {
    bundle: FluentBundle<FluentResource>,
    /// Cached texts of the messages without variables that the language has itself.
    fixed: Box<[&'static str]>,
}

pub(crate) type Values<'a, const N: usize> = [(&'static str, FluentValue<'a>); N];

pub(crate) fn text(value: &dyn Display) -> FluentValue<'static> {
    FluentValue::String(value.to_string().into())
}

pub(crate) fn number(value: impl Into<Count>) -> FluentValue<'static> {
    let Count { number, shown } = value.into();
    // Plural selection requires finite numbers.
    if !number.is_finite() {
        return FluentValue::String(shown.into());
    }
    // A Fluent number has one free text option, otherwise unused here: it carries the text form.
    FluentValue::Number(FluentNumber::new(
        number,
        FluentNumberOptions { currency: Some(shown), ..FluentNumberOptions::default() },
    ))
}

/// A number in the text form of its [`Count`].
fn as_shown<M>(value: &FluentValue<'_>, _: &M) -> Option<String> {
    match value {
        FluentValue::Number(number) => number.options.currency.clone(),
        _ => None,
    }
}

/// Spanish "de" or "a" before a phrase: contracted with the article "el", which is always contracted, but not with "él" nor with
/// the "El" of a name (Real Academia Española, Diccionario panhispánico de dudas, "el", from memory).
fn before<'a>(word: &str, drawn: &str, values: &[FluentValue<'a>]) -> FluentValue<'a> {
    match values {
        [FluentValue::String(phrase)] => match phrase.strip_prefix("el ") {
            Some(rest) => format!("{drawn} {rest}").into(),
            None => format!("{word} {phrase}").into(),
        },
        [FluentValue::Number(number)] => {
            let shown = as_shown(&FluentValue::Number(number.clone()), &()).unwrap_or_default();
            format!("{word} {shown}").into()
        }
        _ => FluentValue::Error,
    }
}

impl Tongue {
    pub(crate) const fn new(code: &'static str, name: &'static str, text: &'static str) -> Self {
        Self { code, name, text, ready: OnceLock::new() }
    }

    fn ready(&'static self) -> &'static Ready {
        self.ready.get_or_init(|| {
            // Built-in files are checked at build time; one read at run time is refused before it gets here.
            let resource = FluentResource::try_new(self.text.to_owned()).unwrap_or_else(|(some, _)| some);
            let mut bundle = FluentBundle::new_concurrent(vec![self.code.parse().unwrap_or_default()]);
            bundle.set_use_isolating(false);
            bundle.set_formatter(Some(as_shown));
            let _ = bundle.add_function("DE", |values, _| before("de", "del", values));
            let _ = bundle.add_function("A", |values, _| before("a", "al", values));
            bundle.add_resource_overriding(resource);
            let mut ready = Ready { bundle, fixed: Box::default() };
            let english = Language::ENGLISH.0;
            let whole = |nth: usize| -> &'static str {
                match ready.told(nth, None) {
                    Some(words) => words.leak(),
                    None if std::ptr::eq(self, english) => "",
                    None => english.fixed(nth),
                }
            };
            ready.fixed = (0..IDS.len()).map(whole).collect();
            ready
        })
    }

    /// A message without variables; falls back to English.
    pub(crate) fn fixed(&'static self, nth: usize) -> &'static str {
        heard(nth, None);
        self.ready().fixed.get(nth).copied().unwrap_or_default()
    }

    /// Whether the language has a message itself.
    pub(crate) fn has(&'static self, nth: usize) -> bool {
        IDS.get(nth).is_some_and(|id| self.ready().bundle.has_message(id))
    }

    /// A message with arguments, remembered; falls back to English if the language lacks it or formatting fails.
    pub(crate) fn told(&'static self, nth: usize, values: &FluentArgs<'_>) -> String {
        heard(nth, Some(values));
        kept(std::ptr::from_ref(self).cast(), nth, values, || {
            let own = self.ready().told(nth, Some(values));
            own.or_else(|| Language::ENGLISH.0.ready().told(nth, Some(values))).unwrap_or_default()
        })
    }
}

impl Ready {
    /// `None` if the language lacks the message, or part of it can't be formatted.
    fn told(&self, nth: usize, values: Option<&FluentArgs<'_>>) -> Option<String> {
        let pattern = self.bundle.get_message(IDS.get(nth)?)?.value()?;
        let mut faults = Vec::new();
        let words = self.bundle.format_pattern(pattern, values, &mut faults).into_owned();
        faults.is_empty().then_some(words)
    }
}

/// A message in the current language.
pub(crate) fn now<const N: usize>(nth: usize, values: Values<'_, N>) -> String {
    spoken().0.told(nth, &values.into_iter().collect())
}

thread_local! {
    /// The last message formatted.
    static HEARD: Cell<Option<usize>> = const { Cell::new(None) };
    /// Whether messages are noted, and which were.
    static NOTING: Cell<bool> = const { Cell::new(false) };
    static NOTED: RefCell<Vec<Message>> = const { RefCell::new(Vec::new()) };
}

fn heard(nth: usize, values: Option<&FluentArgs<'_>>) {
    HEARD.set(Some(nth));
    if NOTING.get() {
        let owned = |(key, value): (&str, &FluentValue<'_>)| (key.to_owned(), value.clone().into_owned());
        let values = values.map(|values| values.iter().map(owned).collect());
        NOTED.with_borrow_mut(|noted| noted.push((nth, values)));
    }
}

/// Messages that were told, so that the time they take can be measured by itself.
#[derive(Debug, Default)]
pub struct Noted(Vec<Message>);

type Message = (usize, Option<FluentArgs<'static>>);

impl Noted {
    /// How many, and how many of them have values.
    pub fn count(&self) -> (usize, usize) {
        (self.0.len(), self.0.iter().filter(|(_, values)| values.is_some()).count())
    }

    /// Tells all of them again; how many bytes that are together.
    pub fn again(&self) -> usize {
        let tongue = spoken().0;
        let tell = |(nth, values): &Message| match values {
            None => tongue.fixed(*nth).len(),
            Some(values) => tongue.told(*nth, values).len(),
        };
        self.0.iter().map(tell).sum()
    }
}

/// Runs `work`, and returns with its result the messages that this thread told meanwhile. For measurements.
pub fn noted<T>(work: impl FnOnce() -> T) -> (T, Noted) {
    NOTING.set(true);
    let done = work();
    NOTING.set(false);
    (done, Noted(NOTED.take()))
}

/// Runs `work`, and returns with its result the id of the last message it formatted: `None` if it returned facts alone. For
/// tests.
pub fn silent<T>(work: impl FnOnce() -> T) -> (T, Option<&'static str>) {
    HEARD.set(None);
    let done = work();
    (done, HEARD.take().and_then(|nth| IDS.get(nth).copied()))
}

#[cfg(test)]
#[path = "tests/told.rs"]
mod tests;
