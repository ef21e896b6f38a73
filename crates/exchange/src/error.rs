use crate::GeoJsonError;
use chalkcourse_geometry::raise::RaiseError;
use chalkcourse_words as words;
use std::path::PathBuf;

/// Why an import or export failed: which file, where in it, and what to do.
#[derive(Debug, thiserror::Error)]
pub enum ImportError {
    /// An operating system error.
    #[error("{}", words::formats::check_that_the_path_is(&path.display(), &error))]
    System {
        /// The file.
        path: PathBuf,
        /// The error.
        error: std::io::Error,
    },
    /// A file is too large to be read at once.
    #[error("{}", words::formats::is_larger_than_mb_cut(&path.display(), &what, &most))]
    TooLarge {
        /// The file.
        path: PathBuf,
        /// "this file" or one of its lines.
        what: String,
        /// The limit, in megabytes.
        most: u64,
    },
    /// The contents are invalid.
    #[error("{path}: {wrong}", path = path.display())]
    Wrong {
        /// The file.
        path: PathBuf,
        /// What is wrong, where, and what was expected.
        wrong: String,
    },
    /// No building with that id.
    #[error("{}", words::formats::there_is_no_building_list(&path.display(), &format_args!("{id:?}")))]
    NoBuilding {
        /// The file or folder.
        path: PathBuf,
        /// The requested id.
        id: String,
    },
    /// A folder without any buildings.
    #[error("{}", words::formats::there_is_no_building_in(&path.display()))]
    Nothing {
        /// The file or folder.
        path: PathBuf,
    },
    /// No roof could be raised over a footprint.
    #[error("{name}: {error}")]
    Raise {
        /// The building.
        name: String,
        /// Which corner or side is the problem.
        error: RaiseError,
    },
    /// No surface of the roof can be a face.
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
