//! The code that is made of the messages.

use crate::read::{Kind, Language, Message};
use std::collections::BTreeMap;
use std::fmt::Write;

/// The texts of data files, looked up by their English: these have no items of their own.
const DATA: &str = "data";

fn named(id: &str) -> (&str, String) {
    let (area, rest) = id.split_once('-').unwrap_or(("", id));
    (area, rest.replace('-', "_"))
}

/// A function of a message with variables.
fn function(out: &mut String, message: &Message, name: &str, nth: usize) {
    let (mut taken, mut given) = (Vec::new(), Vec::new());
    for (variable, kind) in &message.noted {
        let argument = variable.replace('-', "_");
        let (of, as_value) = match kind {
            Kind::Text | Kind::Phrase => ("&dyn ::std::fmt::Display", "text"),
            Kind::Number => ("impl Into<crate::Count>", "number"),
        };
        taken.push(format!("{argument}: {of}"));
        given.push(format!("({variable:?}, crate::told::{as_value}({argument}))"));
    }
    let _ = writeln!(
        out,
        "#[doc = {:?}]\n#[must_use]\npub fn {name}({}) -> String {{ crate::told::now({nth}, [{}]) }}",
        doc(message),
        taken.join(", "),
        given.join(", ")
    );
}

/// The message as it stands in the file.
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

    let mut areas: BTreeMap<&str, String> = BTreeMap::new();
    for (nth, message) in english.messages.iter().enumerate() {
        let (area, name) = named(&message.id);
        let code = areas.entry(area).or_default();
        if area == DATA {
            let _ = write!(code, "crate::say::Say({nth}), ");
        } else if message.noted.is_empty() {
            let _ = writeln!(
                code,
                "#[doc = {:?}]\npub const {}: crate::say::Say = crate::say::Say({nth});",
                doc(message),
                name.to_uppercase()
            );
        } else {
            function(code, message, &name, nth);
        }
    }
    let of_data = areas.remove(DATA).unwrap_or_default();
    let _ =
        writeln!(out, "/// Texts of data files.\npub(crate) const DATA: &[crate::say::Say] = &[{of_data}];");
    for (area, code) in areas {
        let _ = writeln!(
            out,
            "/// Messages of this area.\n\
             #[allow(clippy::too_many_arguments, reason = \"a sentence has as many as it needs\")]\n\
             pub mod {area} {{\n{code}}}"
        );
    }
    out
}
