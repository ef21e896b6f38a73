//! Generates code from the messages.

use crate::read::{Kind, Language, Message};
use std::collections::BTreeMap;
use std::fmt::Write;

/// Texts of data files, looked up by their English: they have no items of their own.
const DATA: &str = "data";
/// Package names of data files, counted: looked up by their English singular.
const PACKAGES: &str = "packages";

fn named(id: &str) -> (&str, String) {
    let (area, rest) = id.split_once('-').unwrap_or(("", id));
    (area, rest.replace('-', "_"))
}

/// The function of a message with variables: formatted at once, or deferred.
fn function(out: &mut String, message: &Message, name: &str, nth: usize, at_once: bool) {
    let (mut taken, mut given) = (Vec::new(), Vec::new());
    for (variable, kind) in &message.noted {
        let argument = variable.replace('-', "_");
        let (of, value) = match (kind, at_once) {
            (Kind::Text | Kind::Phrase, true) => {
                ("&dyn ::std::fmt::Display", format!("crate::told::text({argument})"))
            }
            (Kind::Text | Kind::Phrase, false) => ("&dyn crate::said::Put", format!("{argument}.put()")),
            (Kind::Number, true) => ("impl Into<crate::Count>", format!("crate::told::number({argument})")),
            (Kind::Number, false) => {
                ("impl Into<crate::Count>", format!("crate::said::Value::Number({argument}.into())"))
            }
        };
        taken.push(format!("{argument}: {of}"));
        given.push(format!("({variable:?}, {value})"));
    }
    let (gives, made) = if at_once {
        ("String", "crate::told::now")
    } else {
        ("crate::said::Said", "crate::said::Said::message")
    };
    let _ = writeln!(
        out,
        "#[doc = {:?}]\n#[must_use]\npub fn {name}({}) -> {gives} {{ {made}({nth}, [{}]) }}",
        doc(message),
        taken.join(", "),
        given.join(", ")
    );
}

/// The message source as a doc comment.
fn doc(message: &Message) -> String {
    format!("```text\n{}\n```", message.text)
}

pub(crate) fn code(languages: &[Language], english: &Language) -> String {
    let mut out = String::new();
    let _ = writeln!(
        out,
        "/// Ids of all messages.\npub(crate) static IDS: [&str; {}] = [",
        english.messages.len()
    );
    for message in &english.messages {
        let _ = writeln!(out, "{:?},", message.id);
    }
    let _ = writeln!(
        out,
        "];\n/// Codes of the languages that are built in.\npub(crate) const CODES: [&str; {}] = [",
        languages.len()
    );
    for language in languages {
        let _ = writeln!(out, "{:?},", language.code);
    }
    let _ = writeln!(out, "];\npub(crate) static TONGUES: [Tongue; {}] = [", languages.len());
    for language in languages {
        let _ = writeln!(
            out,
            "Tongue::new({:?}, {:?}, include_str!(concat!(env!(\"CARGO_MANIFEST_DIR\"), \"/{}/{}.ftl\"))),",
            language.code,
            language.name,
            crate::FOLDER,
            language.code
        );
    }
    out += "];\n";

    let _ = writeln!(
        out,
        "/// What each message takes, and of what kind it is.\n#[cfg(test)]\npub(crate) static TAKEN: [&[(&str, &str)]; {}] = [",
        english.messages.len()
    );
    for message in &english.messages {
        let kind = |kind| match kind {
            Kind::Text => "text",
            Kind::Phrase => "phrase",
            Kind::Number => "number",
        };
        let taken: Vec<_> = message.noted.iter().map(|(name, of)| (name, kind(*of))).collect();
        let _ = writeln!(out, "&{taken:?},");
    }
    out += "];\n";

    let (mut areas, mut later): (BTreeMap<&str, String>, BTreeMap<&str, String>) = Default::default();
    for (nth, message) in english.messages.iter().enumerate() {
        let (area, name) = named(&message.id);
        let code = areas.entry(area).or_default();
        if area == DATA {
            let _ = write!(code, "crate::say::Say({nth}), ");
        } else if area == PACKAGES {
            let _ = write!(code, "{nth}, ");
        } else if message.noted.is_empty() {
            let name = name.to_uppercase();
            let _ = writeln!(
                code,
                "#[doc = {:?}]\npub const {name}: crate::say::Say = crate::say::Say({nth});",
                doc(message),
            );
            let _ = writeln!(later.entry(area).or_default(), "pub use super::super::{area}::{name};");
        } else {
            function(code, message, &name, nth, true);
            function(later.entry(area).or_default(), message, &name, nth, false);
        }
    }
    let of_data = areas.remove(DATA).unwrap_or_default();
    let _ =
        writeln!(out, "/// Texts of data files.\npub(crate) const DATA: &[crate::say::Say] = &[{of_data}];");
    let packages = areas.remove(PACKAGES).unwrap_or_default();
    let _ = writeln!(
        out,
        "/// What data files call packages.\npub(crate) const PACKAGES: &[usize] = &[{packages}];"
    );
    for (area, code) in areas {
        module(&mut out, area, &code);
    }
    out += "/// All messages, to be said later: what works numbers and facts out gives these.\npub mod later {\n";
    for (area, code) in later {
        module(&mut out, area, &format!("use crate::said::Put as _;\n{code}"));
    }
    out += "}\n";
    out
}

fn module(out: &mut String, area: &str, code: &str) {
    let _ = writeln!(
        out,
        "/// Messages of this area.\n\
         #[allow(unused_imports, clippy::too_many_arguments, reason = \"a sentence has as many as it needs\")]\n\
         pub mod {area} {{\n{code}}}"
    );
}
