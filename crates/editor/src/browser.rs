//! An in-window file dialog, for desktops without one.

mod listing;
mod view;

pub(crate) use view::show;

use crate::state::Ask;
use crate::text;
use listing::{Entry, Filter, Listing};
use std::path::{MAIN_SEPARATOR, Path, PathBuf};
use std::rc::Rc;

/// An open file dialog.
#[derive(Clone, Debug)]
pub(crate) struct Browser {
    pub(crate) ask: Ask,
    /// The path, typed or chosen.
    typed: String,
    listing: Listing,
    /// The entry selected by keyboard, among those shown.
    at: Option<usize>,
    /// Text that names must contain to be shown.
    filter: String,
    /// Whether files with any extension are shown.
    all_kinds: bool,
    /// The name of a folder to be created.
    new_folder: Option<String>,
    /// The error for what was typed.
    wrong: String,
    /// Whether the user was warned that the file exists; confirming again replaces it.
    replace: bool,
    /// Frequently used folders, once looked up.
    places: Option<Rc<[Place]>>,
}

/// The result of confirming the typed path.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Next {
    /// The path can be used.
    Use(PathBuf),
    /// A folder was entered, or an error is shown.
    Stay,
}

impl Browser {
    /// Starts at a path: a folder, or a file whose name is proposed.
    pub(crate) fn new(ask: Ask, start: &Path) -> Self {
        let mut browser = Self {
            ask,
            typed: start.to_string_lossy().into_owned(),
            listing: Listing::default(),
            at: None,
            filter: String::new(),
            all_kinds: false,
            new_folder: None,
            wrong: String::new(),
            replace: false,
            places: None,
        };
        browser.list(&folder_of(start));
        browser
    }

    /// The listed folder.
    fn folder(&self) -> &Path {
        &self.listing.folder
    }

    fn shown(&self) -> Vec<&Entry> {
        self.listing.shown(self.filter())
    }

    fn filter(&self) -> Filter<'_> {
        Filter {
            typed: &self.filter,
            endings: if self.all_kinds { &[] } else { self.ask.extensions() },
            folders_only: self.ask == Ask::ImportFolder,
        }
    }

    fn list(&mut self, folder: &Path) {
        self.listing = Listing::read(folder);
        self.show_all();
        self.new_folder = None;
    }

    /// Clears the filter and the keyboard selection, whose index would now mean another entry.
    fn show_all(&mut self) {
        self.filter.clear();
        self.at = None;
    }

    /// Goes to a folder, keeping the name typed for a file to write.
    fn go_to(&mut self, folder: &Path) {
        let name = Path::new(&self.typed).file_name().filter(|_| self.ask.writes() && !self.names_folder());
        let path = name.map_or_else(|| folder.join(""), |name| folder.join(name));
        self.typed = path.to_string_lossy().into_owned();
        self.wrong.clear();
        self.replace = false;
        self.list(folder);
    }

    fn names_folder(&self) -> bool {
        self.typed.ends_with(['/', MAIN_SEPARATOR]) || Path::new(self.typed.trim()).is_dir()
    }

    /// Goes to the parent folder, and selects this one in it.
    fn up(&mut self) {
        let here = self.folder().to_owned();
        let Some(above) = here.parent() else { return };
        self.go_to(above);
        self.at = self.shown().iter().position(|entry| entry.path == here);
    }

    /// Selects an entry by keyboard, which puts its path into the field.
    fn select_entry(&mut self, index: usize) {
        let chosen = self.shown().get(index).map(|entry| (entry.path.clone(), entry.is_folder));
        let Some((path, is_folder)) = chosen else { return };
        self.at = Some(index);
        self.wrong.clear();
        self.replace = false;
        if !is_folder || self.ask.takes_folder() {
            self.typed = path.to_string_lossy().into_owned();
        }
    }

    /// Activates an entry by double click or Enter: enters a folder, takes a file.
    fn enter(&mut self, index: usize) -> Next {
        let chosen = self.shown().get(index).map(|entry| (entry.path.clone(), entry.is_folder));
        match chosen {
            Some((folder, true)) => {
                self.go_to(&folder);
                Next::Stay
            }
            Some((_, false)) => {
                self.select_entry(index);
                self.done()
            }
            None => Next::Stay,
        }
    }

    /// After the path was edited: the list follows to its folder.
    fn path_edited(&mut self) {
        self.wrong.clear();
        self.replace = false;
        let folder = folder_of(Path::new(self.typed.trim()));
        if folder != self.folder() && folder.is_dir() {
            self.list(&folder);
        }
    }

    /// Completes the last name of the path as far as it is unambiguous. Returns false if it is not.
    fn complete(&mut self) -> bool {
        let begin = match self.typed.rfind(['/', MAIN_SEPARATOR]) {
            Some(at) => self.typed.get(at + 1..).unwrap_or_default(),
            None => &self.typed,
        };
        let Some(whole) = self.listing.completed(begin, self.filter()) else { return false };
        let before = self.typed.len() - begin.len();
        self.typed.truncate(before);
        self.typed.push_str(&whole);
        self.path_edited();
        true
    }

    /// Confirms the typed path.
    fn done(&mut self) -> Next {
        let typed = PathBuf::from(self.typed.trim());
        let folder = folder_of(&typed);
        self.wrong = if self.typed.trim().is_empty() {
            text::NO_PATH.now().to_owned()
        } else if typed.is_dir() && !self.ask.takes_folder() {
            self.go_to(&typed);
            if self.ask.writes() { text::IS_FOLDER.now().to_owned() } else { String::new() }
        } else if !typed.is_dir() && !folder.is_dir() {
            text::no_folder(&folder)
        } else if !self.ask.writes() && !typed.exists() {
            text::no_file(&typed)
        } else if self.ask.writes() && typed.exists() && !self.replace {
            self.replace = true;
            text::IS_THERE.now().to_owned()
        } else {
            return Next::Use(typed);
        };
        Next::Stay
    }

    /// Creates the folder with the typed name, and enters it.
    fn make_folder(&mut self) {
        let name = self.new_folder.clone().unwrap_or_default();
        let name = name.trim();
        if name.is_empty() || name.contains(['/', MAIN_SEPARATOR]) || matches!(name, "." | "..") {
            text::BAD_FOLDER_NAME.now().clone_into(&mut self.wrong);
            return;
        }
        let folder = self.folder().join(name);
        match std::fs::create_dir(&folder) {
            Ok(()) => self.go_to(&folder),
            Err(error) => self.wrong = text::cant_make_folder(&error),
        }
    }
}

/// The folder of a path, or the folder that the path names.
fn folder_of(path: &Path) -> PathBuf {
    let absolute = std::path::absolute(path).unwrap_or_else(|_| path.to_owned());
    if absolute.is_dir() {
        return absolute;
    }
    absolute.parent().map_or_else(|| absolute.clone(), Path::to_owned)
}

/// A frequently used folder.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Place {
    folder: PathBuf,
    /// Whether it is the home folder.
    is_home: bool,
}

/// Frequently used folders without duplicates: the home folder, then those of recent jobs.
fn places(recent: &[PathBuf]) -> Rc<[Place]> {
    const MOST: usize = 7;
    let home = std::env::home_dir().filter(|home| home.is_dir());
    let of_jobs = recent.iter().filter_map(|path| path.parent().map(Path::to_owned));
    let mut places: Vec<Place> = Vec::new();
    for (folder, is_home) in
        home.into_iter().map(|home| (home, true)).chain(of_jobs.map(|folder| (folder, false)))
    {
        if places.len() < MOST && places.iter().all(|place| place.folder != folder) {
            places.push(Place { folder, is_home });
        }
    }
    places.into()
}

#[cfg(test)]
mod tests;
