//! File access, and its errors.

use chalkcourse_words::{Said, Say, later as words};
use std::fs;
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};

/// No job comes near this size; a larger file is something else.
const MOST_BYTES: u64 = 64 << 20;

/// A file error: which file, where in it, and what to do.
#[derive(Debug, thiserror::Error)]
pub enum FileError {
    /// The system can't read or write it.
    #[error("{}", words::job::check_that_the_path_is(&path.display(), &format_args!("{error}"), &doing))]
    System {
        /// The file.
        path: PathBuf,
        /// "read" or "write".
        doing: Say,
        /// The system's error.
        error: io::Error,
    },
    /// It is too large for a job.
    #[error("{}", words::job::this_file_is_larger_than(&path.display(), &(MOST_BYTES >> 20), &format))]
    TooLarge {
        /// The file.
        path: PathBuf,
        /// What was expected.
        format: Said,
    },
    /// It is not JSON, or not of the expected shape.
    #[error("{}", words::job::line_column_field(&path.display(), &line, &column, &field, &wrong))]
    Malformed {
        /// The file.
        path: PathBuf,
        /// From 1.
        line: usize,
        /// From 1.
        column: usize,
        /// The field, as a path of names and indices; "." for the whole.
        field: String,
        /// What is wrong and what was expected.
        wrong: Said,
    },
    /// It is JSON of another format.
    #[error("{}", words::job::this_is_a_file_expected(&path.display(), &format_args!("{found:?}"), &format_args!("{expected:?}")))]
    OtherFormat {
        /// The file.
        path: PathBuf,
        /// The format that it names.
        found: String,
        /// The expected format.
        expected: String,
    },
    /// It was written by a newer version of the program.
    #[error("{}", words::job::this_file_is_version_of(&path.display(), &found, &known))]
    Newer {
        /// The file.
        path: PathBuf,
        /// Its version.
        found: u32,
        /// The newest version that can be read.
        known: u32,
    },
    /// The shape is right, but the content is inconsistent.
    #[error("{path}: {wrong}", path = path.display())]
    Wrong {
        /// The file.
        path: PathBuf,
        /// What is wrong, where, and what was expected.
        wrong: Said,
    },
}

impl FileError {
    pub(crate) fn wrong(path: &Path, wrong: impl Into<Said>) -> Self {
        Self::Wrong { path: path.to_owned(), wrong: wrong.into() }
    }

    pub(crate) fn system(path: &Path, doing: Say, error: io::Error) -> Self {
        Self::System { path: path.to_owned(), doing, error }
    }
}

/// Reads a whole text file; `format` is the expected format for error messages.
pub(crate) fn read_text(path: &Path, format: impl Into<Said>) -> Result<String, FileError> {
    text_of(read_bytes(path, format)?, path)
}

/// The bytes of a file as text.
pub(crate) fn text_of(bytes: Vec<u8>, path: &Path) -> Result<String, FileError> {
    String::from_utf8(bytes).map_err(|error| {
        FileError::system(
            path,
            words::job::READ,
            io::Error::new(io::ErrorKind::InvalidData, error.to_string()),
        )
    })
}

/// Reads a whole file, unless it is too large for a job.
pub(crate) fn read_bytes(path: &Path, format: impl Into<Said>) -> Result<Vec<u8>, FileError> {
    let read = |path: &Path| -> io::Result<Option<Vec<u8>>> {
        let mut bytes = Vec::new();
        // The length that the system reports may be wrong (a pipe, a device), so bound the reader.
        fs::File::open(path)?.take(MOST_BYTES + 1).read_to_end(&mut bytes)?;
        Ok((bytes.len() as u64 <= MOST_BYTES).then_some(bytes))
    };
    match read(path) {
        Ok(Some(bytes)) => Ok(bytes),
        Ok(None) => Err(FileError::TooLarge { path: path.to_owned(), format: format.into() }),
        Err(error) => Err(FileError::system(path, words::job::READ, error)),
    }
}

/// Writes a file atomically: to a temporary file beside it, synced to disk, then renamed over it.
///
/// # Errors
/// [`FileError::System`]; the old file is then unchanged.
pub fn write_atomically(path: &Path, bytes: &[u8]) -> Result<(), FileError> {
    let attempt = || -> io::Result<()> {
        let folder = folder_of(path);
        let mut file = tempfile::Builder::new().prefix(".saving-").tempfile_in(folder)?;
        file.write_all(bytes)?;
        file.as_file().sync_all()?;
        #[cfg(unix)]
        {
            use std::os::unix::fs::PermissionsExt;
            // A temporary file is private; give it the permissions of the file that it replaces, or the usual ones.
            let mode = fs::metadata(path).map_or(0o644, |there| there.permissions().mode());
            file.as_file().set_permissions(fs::Permissions::from_mode(mode))?;
        }
        file.persist(path).map_err(|error| error.error)?;
        #[cfg(unix)]
        fs::File::open(folder)?.sync_all()?;
        Ok(())
    };
    attempt().map_err(|error| FileError::system(path, words::job::WRITE, error))
}

/// The folder of a file: `.` for a bare name.
pub(crate) fn folder_of(path: &Path) -> &Path {
    match path.parent() {
        Some(parent) if !parent.as_os_str().is_empty() => parent,
        _ => Path::new("."),
    }
}
