//! Folder contents.

use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

/// Most entries to read: nobody looks through a longer list.
const MOST: usize = 20_000;

/// A folder or file in a folder.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Entry {
    pub(super) name: String,
    /// The name in lower case, for searching.
    small: String,
    pub(super) path: PathBuf,
    pub(super) is_folder: bool,
    /// Size in bytes; `None` for a folder, or if unknown.
    pub(super) size: Option<u64>,
    pub(super) changed: Option<SystemTime>,
}

/// A folder with its contents: folders first, sorted by name. Hidden entries, with a name starting with a dot, are left
/// out.
#[derive(Clone, Debug, Default)]
pub(super) struct Listing {
    pub(super) folder: PathBuf,
    entries: Vec<Entry>,
    /// Why it can't be read, if it can't.
    pub(super) trouble: Option<String>,
}

/// Which entries of a folder are shown.
#[derive(Clone, Copy, Debug)]
pub(super) struct Filter<'a> {
    /// Part of the name, ignoring case; empty for any.
    pub(super) typed: &'a str,
    /// File extensions; any if empty.
    pub(super) endings: &'a [&'a str],
    /// Only folders.
    pub(super) folders_only: bool,
}

impl Entry {
    /// Whether its name starts with a prefix given in lower case.
    pub(super) fn begins_with(&self, small: &str) -> bool {
        self.small.starts_with(small)
    }
}

impl Listing {
    /// Reads a folder.
    pub(super) fn read(folder: &Path) -> Self {
        let folder = std::path::absolute(folder).unwrap_or_else(|_| folder.to_owned());
        let read = match fs::read_dir(&folder) {
            Ok(read) => read,
            Err(error) => return Self { folder, entries: Vec::new(), trouble: Some(error.to_string()) },
        };
        let mut entries: Vec<Entry> =
            read.flatten().take(MOST).filter_map(|entry| of(&entry.path())).collect();
        entries.sort_by_cached_key(|entry| (!entry.is_folder, entry.small.clone(), entry.name.clone()));
        Self { folder, entries, trouble: None }
    }

    /// The entries that pass a filter, in order.
    pub(super) fn shown(&self, filter: Filter) -> Vec<&Entry> {
        let typed = filter.typed.trim().to_lowercase();
        let kind =
            |entry: &Entry| entry.is_folder || !filter.folders_only && ends(&entry.small, filter.endings);
        let named = |entry: &Entry| typed.is_empty() || entry.small.contains(&typed);
        self.entries.iter().filter(|entry| kind(entry) && named(entry)).collect()
    }

    /// The longest common completion of a prefix among all names that start with it; for a folder followed by a path
    /// separator. `None` if that adds nothing.
    pub(super) fn completed(&self, begin: &str, filter: Filter) -> Option<String> {
        let shown = self.shown(Filter { typed: "", ..filter });
        let mut with = shown.into_iter().filter(|entry| entry.name.starts_with(begin));
        let first = with.next()?;
        let mut shared = first.name.clone();
        let mut alone = true;
        for other in with {
            alone = false;
            let same = shared.chars().zip(other.name.chars()).take_while(|(a, b)| a == b).count();
            shared = shared.chars().take(same).collect();
        }
        if alone && first.is_folder {
            shared.push(std::path::MAIN_SEPARATOR);
        }
        (shared.len() > begin.len()).then_some(shared)
    }
}

fn of(path: &Path) -> Option<Entry> {
    let name = path.file_name().map(OsStr::to_string_lossy)?.into_owned();
    if name.starts_with('.') {
        return None;
    }
    // Metadata of a link's target. A broken link is not a file to open.
    let told = fs::metadata(path).ok()?;
    let is_folder = told.is_dir();
    Some(Entry {
        small: name.to_lowercase(),
        name,
        path: path.to_owned(),
        is_folder,
        size: (!is_folder).then_some(told.len()),
        changed: told.modified().ok(),
    })
}

fn ends(name: &str, endings: &[&str]) -> bool {
    let has = |ending: &&str| name.strip_suffix(*ending).is_some_and(|rest| rest.ends_with('.'));
    endings.is_empty() || endings.iter().any(has)
}

#[cfg(test)]
mod tests {
    use super::*;

    const JOBS: Filter = Filter { typed: "", endings: &["chalk.json"], folders_only: false };

    fn folder() -> (tempfile::TempDir, Listing) {
        let folder = tempfile::tempdir().unwrap();
        for name in ["Zeta", "alder", "alder-old"] {
            fs::create_dir(folder.path().join(name)).unwrap();
        }
        for name in ["b.chalk.json", "Able.CHALK.json", "notes.txt", ".hidden.chalk.json"] {
            fs::write(folder.path().join(name), "12345").unwrap();
        }
        let listing = Listing::read(folder.path());
        (folder, listing)
    }

    fn names(listing: &Listing, filter: Filter) -> Vec<String> {
        listing.shown(filter).into_iter().map(|entry| entry.name.clone()).collect()
    }

    #[test]
    fn folders_come_first_and_only_files_of_the_kind() {
        let (_folder, listing) = folder();
        assert_eq!(names(&listing, JOBS), ["alder", "alder-old", "Zeta", "Able.CHALK.json", "b.chalk.json"]);
        assert_eq!(names(&listing, Filter { endings: &[], ..JOBS }).len(), 6);
        assert_eq!(names(&listing, Filter { folders_only: true, ..JOBS }), ["alder", "alder-old", "Zeta"]);
        assert_eq!(names(&listing, Filter { typed: " ABL", ..JOBS }), ["Able.CHALK.json"]);
        let file = listing.shown(JOBS)[3];
        assert_eq!((file.size, file.is_folder), (Some(5), false));
        assert!(file.changed.is_some());
    }

    #[test]
    fn a_name_is_completed_to_the_common_prefix() {
        let (_folder, listing) = folder();
        let to = |begin| listing.completed(begin, JOBS);
        assert_eq!(to("al").as_deref(), Some("alder"));
        assert_eq!(to("alder"), None, "two go on in two ways");
        let ended = |name: &str| Some(format!("{name}{}", std::path::MAIN_SEPARATOR));
        assert_eq!(to("alder-"), ended("alder-old"));
        assert_eq!(to("Z"), ended("Zeta"));
        assert_eq!(to("b").as_deref(), Some("b.chalk.json"));
        assert_eq!((to("x"), to("notes")), (None, None));
    }

    #[test]
    fn a_folder_that_cannot_be_read_says_why() {
        let (folder, _) = folder();
        let gone = Listing::read(&folder.path().join("gone"));
        assert!(gone.trouble.is_some() && gone.shown(JOBS).is_empty());
        assert!(Listing::read(&folder.path().join("notes.txt")).trouble.is_some());
    }
}
