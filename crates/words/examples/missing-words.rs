//! Lists for each language the messages it lacks, which fall back to English; with a path, those of that file as it is now.

use chalkcourse_words::Language;
use std::io::{self, Write};
use std::process::ExitCode;

fn listed(languages: &[Language]) -> io::Result<()> {
    let mut out = io::stdout().lock();
    for language in languages {
        let missing: Vec<_> = language.missing().collect();
        writeln!(out, "{} ({}): {} missing", language.name(), language.code(), missing.len())?;
        for id in missing {
            writeln!(out, "  {id}")?;
        }
    }
    Ok(())
}

fn read(path: &str) -> Result<Language, String> {
    let text = std::fs::read_to_string(path).map_err(|fault| fault.to_string())?;
    Language::read(&text)
}

fn main() -> ExitCode {
    let paths: Vec<String> = std::env::args().skip(1).collect();
    let mut languages = Vec::new();
    for path in &paths {
        match read(path) {
            Ok(language) => languages.push(language),
            Err(fault) => {
                let _ = writeln!(io::stderr(), "{path}: {fault}");
                return ExitCode::FAILURE;
            }
        }
    }
    let all = if paths.is_empty() { Language::ALL.to_vec() } else { languages };
    if listed(&all).is_ok() { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
