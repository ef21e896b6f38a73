use crate::GeoJsonError;
use chalkcourse_geometry::raise::RaiseError;
use chalkcourse_words as words;
use std::path::PathBuf;

/// Why nothing came out of a file, or nothing went into one: which, where in it, and what to do.
#[derive(Debug, thiserror::Error)]
pub enum ImportError {
    /// The system would not read it.
    #[error("{}", words::formats::check_that_the_path_is(&path.display(), &error))]
    System {
        /// The file.
        path: PathBuf,
        /// What the system said.
        error: std::io::Error,
    },
    /// A file is too large to be read at once.
    #[error("{}", words::formats::is_larger_than_mb_cut(&path.display(), &what, &most))]
    TooLarge {
        /// The file.
        path: PathBuf,
        /// "this file" or a line of it.
        what: String,
        /// The most that is read, in megabytes.
        most: u64,
    },
    /// It is not what it should be.
    #[error("{path}: {wrong}", path = path.display())]
    Wrong {
        /// The file.
        path: PathBuf,
        /// What, where, and what was expected.
        wrong: String,
    },
    /// There is no such building.
    #[error("{}", words::formats::there_is_no_building_list(&path.display(), &format_args!("{id:?}")))]
    NoBuilding {
        /// The file or folder.
        path: PathBuf,
        /// The id asked for.
        id: String,
    },
    /// Nothing in a folder.
    #[error("{}", words::formats::there_is_no_building_in(&path.display()))]
    Nothing {
        /// The file or folder.
        path: PathBuf,
    },
    /// The roof over a footprint.
    #[error("{name}: {error}")]
    Raise {
        /// The building.
        name: String,
        /// Which corner or side is the trouble.
        error: RaiseError,
    },
    /// No surface of a roof can be a face.
    #[error("{}", words::formats::no_roof_surface_of_it(&name, &told))]
    NoFaces {
        /// The building.
        name: String,
        /// Each surface with its reason.
        told: String,
    },
}

impl ImportError {
    pub(crate) fn geojson(path: &std::path::Path, error: &GeoJsonError) -> Self {
        Self::Wrong { path: path.to_owned(), wrong: error.to_string() }
    }
}
