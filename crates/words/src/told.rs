//! How a message becomes words.

use crate::{Count, IDS, Language, spoken};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::types::{FluentNumber, FluentNumberOptions};
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use std::cell::Cell;
use std::fmt::Display;
use std::sync::OnceLock;

/// The words of one language.
pub(crate) struct Tongue {
    pub(crate) code: &'static str,
    pub(crate) name: &'static str,
    text: &'static str,
    ready: OnceLock<Ready>,
}

struct Ready {
    bundle: FluentBundle<FluentResource>,
    /// Of each message that the language has itself: whole, where nothing is put in.
    fixed: Box<[&'static str]>,
}

pub(crate) type Values<'a, const N: usize> = [(&'static str, FluentValue<'a>); N];

pub(crate) fn text(value: &dyn Display) -> FluentValue<'static> {
    FluentValue::String(value.to_string().into())
}

pub(crate) fn number(value: impl Into<Count>) -> FluentValue<'static> {
    let Count { number, shown } = value.into();
    // The choice of a plural takes finite numbers only.
    if !number.is_finite() {
        return FluentValue::String(shown.into());
    }
    // A number of Fluent has room for one text, which nothing here uses otherwise: how it is shown.
    FluentValue::Number(FluentNumber::new(
        number,
        FluentNumberOptions { currency: Some(shown), ..FluentNumberOptions::default() },
    ))
}

/// A number as its [`Count`] shows it.
fn as_shown<M>(value: &FluentValue<'_>, _: &M) -> Option<String> {
    match value {
        FluentValue::Number(number) => number.options.currency.clone(),
        _ => None,
    }
}

/// Spanish "de" or "a" before a phrase: drawn together with the article "el" as it always is, but not with "él" nor with
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
            // Files that are built in have been read once already; one of run time is refused before it comes here.
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

    /// A message without variables; English where this language does not have it.
    pub(crate) fn fixed(&'static self, nth: usize) -> &'static str {
        heard(nth);
        self.ready().fixed.get(nth).copied().unwrap_or_default()
    }

    /// Whether the language has a message itself.
    pub(crate) fn has(&'static self, nth: usize) -> bool {
        IDS.get(nth).is_some_and(|id| self.ready().bundle.has_message(id))
    }

    /// A message with values in it; English where this language does not have it or stumbles over it.
    pub(crate) fn told(&'static self, nth: usize, values: &FluentArgs<'_>) -> String {
        heard(nth);
        let own = self.ready().told(nth, Some(values));
        own.or_else(|| Language::ENGLISH.0.ready().told(nth, Some(values))).unwrap_or_default()
    }
}

impl Ready {
    /// `None` where the language does not have the message, or something in it can't be said.
    fn told(&self, nth: usize, values: Option<&FluentArgs<'_>>) -> Option<String> {
        let pattern = self.bundle.get_message(IDS.get(nth)?)?.value()?;
        let mut faults = Vec::new();
        let words = self.bundle.format_pattern(pattern, values, &mut faults).into_owned();
        faults.is_empty().then_some(words)
    }
}

/// A message in the language that is spoken now.
pub(crate) fn now<const N: usize>(nth: usize, values: Values<'_, N>) -> String {
    spoken().0.told(nth, &values.into_iter().collect())
}

thread_local! {
    /// The last message that was put into words.
    static HEARD: Cell<Option<usize>> = const { Cell::new(None) };
}

fn heard(nth: usize) {
    HEARD.set(Some(nth));
}

/// Does `work`, and tells with what it gives the id of the last message that it put into words: none, where it gives facts
/// alone. For tests.
pub fn silent<T>(work: impl FnOnce() -> T) -> (T, Option<&'static str>) {
    HEARD.set(None);
    let done = work();
    (done, HEARD.take().and_then(|nth| IDS.get(nth).copied()))
}

#[cfg(test)]
#[path = "tests/told.rs"]
mod tests;
