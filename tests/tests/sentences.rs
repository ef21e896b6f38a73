//! The crates that compute numbers and facts contain no sentences: each sentence is in `assets/words/en.ftl`, once. Checked in
//! the sources.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    missing_docs,
    reason = "a test may stop at the first surprise"
)]

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

const QUIET: [&str; 7] = ["geometry", "job", "layout", "limits", "wiring", "rules", "takeoff"];

/// Literals that look like sentences but are not: positions in a data file, to which the error is appended.
const EXCEPTIONS: [&str; 8] = [
    // A quotation.
    "NEC {section} (",
    "field data.",
    "parts[{index}].needs[",
    "overrides.{number}",
    "prices.{number}",
    // Columns, the name of the program, and an example of an edit as in a file.
    "{:<34} {faces:>10}",
    "chalkcourse-cli: {error:#}",
    "the official agreed, 3 March",
];

/// Texts for readers of schemas, tags in data files and headings for other software: files are the same in every language.
const OF_DATA_FILES: [&str; 8] = [
    "geometry/src/length.rs",
    "geometry/src/pitch.rs",
    "job/src/finding_key.rs",
    "job/src/holds.rs",
    "job/src/script/",
    "job/src/rule_book/limits.rs",
    "job/src/source.rs",
    "job/src/torque.rs",
];

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            if path.file_name().is_none_or(|name| name != "tests") {
                sources(&path, found);
            }
        } else if path.extension().is_some_and(|end| end == "rs")
            && path.file_stem().is_none_or(|name| !name.to_string_lossy().contains("test"))
        {
            found.push(path);
        }
    }
}

/// The string literals of a source, without its comments and unit tests.
fn literals(source: &str) -> Vec<String> {
    let shipped = source.split("#[cfg(test)]\nmod tests {").next().unwrap_or_default();
    let mut found = Vec::new();
    for line in
        shipped.lines().filter(|line| !line.trim_start().starts_with("//") && !line.contains("reason = "))
    {
        let mut literal: Option<String> = None;
        let mut letters = line.chars();
        while let Some(letter) = letters.next() {
            match (&mut literal, letter) {
                (None, '"') => literal = Some(String::new()),
                (None, _) => {}
                (Some(text), '\\') => {
                    text.push(letter);
                    text.extend(letters.next());
                }
                (Some(text), '"') => {
                    found.push(std::mem::take(text));
                    literal = None;
                }
                (Some(text), letter) => text.push(letter),
            }
        }
    }
    found
}

fn is_sentence(literal: &str) -> bool {
    let words = literal.split(|c: char| !c.is_alphabetic()).filter(|word| word.chars().count() >= 2);
    words.count() >= 3 && literal.contains(' ')
}

#[test]
fn sentences_are_only_in_the_language_files() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("../crates");
    let mut told = BTreeSet::new();
    let mut read = 0;
    // Help and errors of the command line are sentences too.
    for name in QUIET.into_iter().chain(["cli"]) {
        let mut files = Vec::new();
        sources(&top.join(name).join("src"), &mut files);
        for file in files {
            let place = file.strip_prefix(&top).unwrap().to_string_lossy().replace('\\', "/");
            if OF_DATA_FILES.iter().any(|of| place.starts_with(of)) {
                continue;
            }
            read += 1;
            let source = std::fs::read_to_string(&file).unwrap();
            let sentences = literals(&source).into_iter().filter(|literal| is_sentence(literal));
            let known = |literal: &String| !EXCEPTIONS.iter().any(|exception| literal.contains(exception));
            told.extend(sentences.filter(known).map(|literal| format!("{place}: {literal}")));
        }
    }
    assert!(read > 200, "the sources are read: {read}");
    assert!(told.is_empty(), "write it in assets/words/en.ftl: {told:#?}");
}

/// Places that do format text: new faces, parts and penetrations get a name, an edit script says what it did in a language, and
/// an error names the clipboard in place of a file path.
const NAMERS: [&str; 6] = [
    "job/src/resolved/derive.rs",
    "job/src/pieces.rs",
    "job/src/script/faces.rs",
    "job/src/script/parts.rs",
    "job/src/script/penetrations.rs",
    "job/src/script/read.rs",
];

/// Code that formats messages at once, or asks for the current language.
const SPEAKING: [&str; 6] =
    [".now()", "spoken()", "speaking(", " of_data(", "chalkcourse_words as words", "self as words"];

#[test]
fn crates_of_facts_format_no_text() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("../crates");
    let mut told = BTreeSet::new();
    let mut namers = 0;
    for name in QUIET {
        let mut files = Vec::new();
        sources(&top.join(name).join("src"), &mut files);
        for file in files {
            let place = file.strip_prefix(&top).unwrap().to_string_lossy().replace('\\', "/");
            let source = std::fs::read_to_string(&file).unwrap();
            let shipped = source.split("#[cfg(test)]").next().unwrap_or_default();
            let speaks = shipped.lines().filter(|line| {
                !line.trim_start().starts_with("//") && SPEAKING.iter().any(|word| line.contains(word))
            });
            // The current step of a history (`self.now()`) is not a message.
            let speaks: Vec<&str> = speaks.filter(|line| !line.contains("self.now()")).collect();
            if NAMERS.contains(&place.as_str()) {
                namers += usize::from(!speaks.is_empty());
            } else {
                told.extend(speaks.into_iter().map(|line| format!("{place}: {}", line.trim())));
            }
        }
    }
    assert!(told.is_empty(), "give a message to be said later (`words::later`): {told:#?}");
    assert_eq!(namers, NAMERS.len(), "an exception that is none any more");
}

/// What the check must find, and what it must not.
#[test]
fn sentences_are_recognised() {
    let source = "// \"not a word of this counts\"\nlet a = \"the row is too long\"; let b = \"fire-plane-path\";\n\
        let c = \"{top}/{bottom} in\";\n#[cfg(test)]\nmod tests {\n let d = \"this one is fine here\"; }";
    let found: Vec<String> = literals(source).into_iter().filter(|literal| is_sentence(literal)).collect();
    assert_eq!(found, ["the row is too long", "{top}/{bottom} in"]);
}
