//! Generates typed items from the messages in `assets/words/en.ftl`: a constant for each fixed one, a function for each with
//! variables. Checks every other language's file against it; an error stops the build with file, line and what to do.

#[path = "build/read.rs"]
mod read;
#[path = "build/write.rs"]
mod write;

use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::{env, fs};

/// The languages' folder, relative to this crate.
const FOLDER: &str = "../../assets/words";

fn main() -> ExitCode {
    match made() {
        Ok(()) => ExitCode::SUCCESS,
        Err(faults) => {
            for fault in faults {
                println!("cargo::error={fault}");
            }
            ExitCode::FAILURE
        }
    }
}

fn made() -> Result<(), Vec<String>> {
    let one = |fault: String| vec![fault];
    let folder = Path::new(FOLDER);
    println!("cargo::rerun-if-changed={FOLDER}");
    let list = fs::read_dir(folder).map_err(|fault| one(format!("{FOLDER}: {fault}")))?;
    let mut paths: Vec<PathBuf> = list.filter_map(|entry| entry.ok().map(|entry| entry.path())).collect();
    paths.retain(|path| path.extension().is_some_and(|kind| kind == "ftl"));
    // English first, the others by code.
    paths.sort_by_key(|path| (!path.ends_with("en.ftl"), path.clone()));

    let (mut languages, mut faults) = (Vec::new(), Vec::new());
    for path in &paths {
        println!("cargo::rerun-if-changed={}", path.display());
        match read::language(path) {
            Ok(language) => languages.push(language),
            Err(found) => faults.extend(found),
        }
    }
    let Some((english, others)) = languages.split_first().filter(|(first, _)| first.code == "en") else {
        faults.push(format!(
            "{FOLDER}/en.ftl is missing or can't be read: every message is looked up there first"
        ));
        return Err(faults);
    };
    faults.extend(english.faults_of_first());
    faults.extend(others.iter().flat_map(|other| other.faults_beside(english)));
    if !faults.is_empty() {
        return Err(faults);
    }
    let code = write::code(&languages, english);
    let out = env::var("OUT_DIR").map_err(|fault| one(fault.to_string()))?;
    fs::write(Path::new(&out).join("messages.rs"), code).map_err(|fault| one(fault.to_string()))
}
