use crate::GeoJsonError;
use chalkcourse_geometry::raise::RaiseError;
use chalkcourse_words::tell;
use std::path::PathBuf;

/// Why nothing came out of a file, or nothing went into one: which, where in it, and what to do.
#[derive(Debug, thiserror::Error)]
pub enum ImportError {
    /// The system would not read it.
    #[error("{}", tell!("{path}: {error}; check that the path is right and that you may read it", "{path}: {error}; revise que la ruta sea correcta y que pueda leerlo", path = path.display()))]
    System {
        /// The file.
        path: PathBuf,
        /// What the system said.
        error: std::io::Error,
    },
    /// A file is too large to be read at once.
    #[error("{}", tell!("{path}: {what} is larger than {most} MB; cut the area of one street out of it first", "{path}: {what} mide más de {most} MB; recorte primero el área de una calle", path = path.display()))]
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
    #[error("{}", tell!("{path}: there is no building {id:?}; list what is there with --list", "{path}: no hay edificio {id:?}; enumere lo que hay con --list", path = path.display()))]
    NoBuilding {
        /// The file or folder.
        path: PathBuf,
        /// The id asked for.
        id: String,
    },
    /// Nothing in a folder.
    #[error("{}", tell!("{path}: there is no building in it; GeoJSON (.geojson, .json) and CityJSON (.city.json, .city.jsonl, .json, .jsonl) are read", "{path}: no contiene ningún edificio; se leen GeoJSON (.geojson, .json) y CityJSON (.city.json, \
        .city.jsonl, .json, .jsonl)", path = path.display()))]
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
    #[error("{}", tell!("{name}: no roof surface of it can be a face. {told}", "{name}: ninguna superficie de su techo puede ser un faldón. {told}"))]
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
