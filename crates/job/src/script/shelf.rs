//! Access to files that a step names.

use super::StepErrorKind;
use crate::{
    Edit, Kit, PriceList, RuleBook, Underlay, builtin_rule_books, load_kit, load_prices, load_rule_book,
    underlay,
};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Where to look for files that a step names.
pub trait Shelf {
    /// A kit.
    ///
    /// # Errors
    /// [`StepErrorKind::File`], or [`StepErrorKind::NoFiles`].
    fn kit(&self, file: &str) -> Result<Kit, StepErrorKind>;
    /// A built-in rule book by name, or one from a file.
    ///
    /// # Errors
    /// Those of [`Self::kit`].
    fn rule_book(&self, name: &str) -> Result<Arc<RuleBook>, StepErrorKind>;
    /// A price list, its part numbers spelled as in a kit.
    ///
    /// # Errors
    /// Those of [`Self::kit`].
    fn prices(&self, file: &str, kit: &Kit) -> Result<PriceList, StepErrorKind>;
    /// An edit with paths relative to the script made absolute.
    fn placed(&self, edit: Edit) -> Edit;
}

/// No files: the script must be self-contained.
#[derive(Clone, Copy, Debug)]
pub struct NoFiles;

/// Files relative to a folder.
#[derive(Clone, Debug)]
pub struct Folder(pub PathBuf);

fn of_program(name: &str) -> Option<Arc<RuleBook>> {
    builtin_rule_books().iter().find(|book| book.name == name).map(Arc::clone)
}

impl Shelf for NoFiles {
    fn kit(&self, file: &str) -> Result<Kit, StepErrorKind> {
        Err(StepErrorKind::NoFiles(file.to_owned()))
    }
    fn rule_book(&self, name: &str) -> Result<Arc<RuleBook>, StepErrorKind> {
        of_program(name).ok_or_else(|| StepErrorKind::NoFiles(name.to_owned()))
    }
    fn prices(&self, file: &str, _: &Kit) -> Result<PriceList, StepErrorKind> {
        Err(StepErrorKind::NoFiles(file.to_owned()))
    }
    fn placed(&self, edit: Edit) -> Edit {
        edit
    }
}

impl Folder {
    fn path(&self, file: &str) -> PathBuf {
        self.0.join(Path::new(file))
    }
}

impl Shelf for Folder {
    fn kit(&self, file: &str) -> Result<Kit, StepErrorKind> {
        Ok(load_kit(&self.path(file))?)
    }
    fn rule_book(&self, name: &str) -> Result<Arc<RuleBook>, StepErrorKind> {
        match of_program(name) {
            Some(book) => Ok(book),
            None => Ok(Arc::new(load_rule_book(&self.path(name))?)),
        }
    }
    fn prices(&self, file: &str, kit: &Kit) -> Result<PriceList, StepErrorKind> {
        Ok(load_prices(&self.path(file), kit)?.list)
    }
    fn placed(&self, edit: Edit) -> Edit {
        match edit {
            Edit::SetUnderlay(Some(picture)) => {
                let path = underlay::resolved(&picture.path, &self.0);
                Edit::SetUnderlay(Some(Underlay { path, ..picture }))
            }
            Edit::Several(edits) => Edit::Several(edits.into_iter().map(|edit| self.placed(edit)).collect()),
            edit => edit,
        }
    }
}
