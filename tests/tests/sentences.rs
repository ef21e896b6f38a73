//! No sentence stands in the crates that give numbers and facts: each stands once in `assets/words/en.ftl`. Read from the sources.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::panic,
    missing_docs,
    reason = "a test may stop at the first surprise"
)]

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

const QUIET: [&str; 6] = ["geometry", "job", "layout", "limits", "rules", "takeoff"];

/// What looks like a sentence and is none: places in a data file, with what is wrong there put after them.
const EXCEPTIONS: [&str; 7] = [
    "field data.",
    "parts[{index}].needs[",
    "overrides.{number}",
    "prices.{number}",
    // Columns, the name of the program, and an example of an edit as it stands in a file.
    "{:<34} {faces:>10}",
    "chalkcourse-cli: {error:#}",
    "the official agreed, 3 March",
];

/// Texts for readers of schemas, marks in data files and headings for other programs: files are the same in every language.
const OF_DATA_FILES: [&str; 7] = [
    "geometry/src/length.rs",
    "geometry/src/pitch.rs",
    "job/src/finding_key.rs",
    "job/src/holds.rs",
    "job/src/script/",
    "job/src/rule_book/limits.rs",
    "job/src/source.rs",
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

/// The literals of a source without its comments and unit tests.
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
fn each_sentence_stands_in_the_files_of_the_languages() {
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

/// Where something is put into words all the same: new faces, parts and penetrations get a name, a file of edits says in which
/// language it did, and an error names the clipboard where the path of a file would stand.
const NAMERS: [&str; 6] = [
    "job/src/resolved/follow.rs",
    "job/src/pieces.rs",
    "job/src/script/faces.rs",
    "job/src/script/parts.rs",
    "job/src/script/penetrations.rs",
    "job/src/script/read.rs",
];

/// What puts a message into words at once, or asks which language is spoken.
const SPEAKING: [&str; 6] =
    [".now()", "spoken()", "speaking(", " of_data(", "chalkcourse_words as words", "self as words"];

#[test]
fn crates_that_give_facts_leave_the_words_to_others() {
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
            // The step of a history that one stands at is no word.
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
fn a_sentence_is_known() {
    let source = "// \"not a word of this counts\"\nlet a = \"the row is too long\"; let b = \"fire-plane-path\";\n\
        let c = \"{top}/{bottom} in\";\n#[cfg(test)]\nmod tests {\n let d = \"this one is fine here\"; }";
    let found: Vec<String> = literals(source).into_iter().filter(|literal| is_sentence(literal)).collect();
    assert_eq!(found, ["the row is too long", "{top}/{bottom} in"]);
}
