//! Every message is used somewhere.

use crate::IDS;
use std::collections::HashSet;
use std::fs;
use std::path::{Path, PathBuf};

fn sources(folder: &Path, into: &mut Vec<PathBuf>) {
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() && !path.ends_with("target") {
            sources(&path, into);
        } else if path.extension().is_some_and(|kind| kind == "rs") {
            into.push(path);
        }
    }
}

/// Pairs such as `takeoff::WASTE`.
fn paths(text: &str, into: &mut HashSet<(String, String)>) {
    let is_name = |c: char| c.is_alphanumeric() || c == '_';
    for (at, _) in text.match_indices("::") {
        let area = text[..at].rsplit(|c| !is_name(c)).next().unwrap_or_default();
        let name = text[at + 2..].split(|c| !is_name(c)).next().unwrap_or_default();
        into.insert((area.to_owned(), name.to_lowercase()));
    }
}

#[test]
fn every_message_is_used() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let (mut files, mut said) = (Vec::new(), HashSet::new());
    for folder in ["crates", "tests"] {
        sources(&top.join(folder), &mut files);
    }
    assert!(files.len() > 100);
    for file in files {
        paths(&fs::read_to_string(file).unwrap(), &mut said);
    }
    // Texts and packages of data files are looked up by their text.
    let by_text = |area: &str| ["data", "packages"].contains(&area);
    let ids = IDS.iter().filter_map(|id| id.split_once('-')).filter(|(area, _)| !by_text(area));
    let unused: Vec<_> = ids
        .filter(|(area, name)| !said.contains(&((*area).to_owned(), name.replace('-', "_").to_lowercase())))
        .collect();
    assert!(unused.is_empty(), "take these out of all languages: {unused:#?}");
}
