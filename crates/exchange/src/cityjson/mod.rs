//! Roofs from CityJSON 1.1 and 2.0, whole files and sequences (CityJSONSeq: one JSON text per line, RFC 8142 without record
//! separators).
//!
//! - `model`: the parts of the format that are read, in bounded memory
//! - `nested`: nested arrays of numbers, stored flat
//! - `building`: grouping of objects into buildings, and the geometry to use
//! - `roof`: a 3D surface as a face: plane, deviation from it, outline

mod building;
mod model;
mod nested;
mod roof;

use crate::House;
use crate::grid::{Grid, GridError};
use chalkcourse_geometry::{DVec3, dvec3};
use chalkcourse_words as words;
use model::{Document, Transform};

/// Why a city model can't be used.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum CityJsonError {
    /// It is not JSON, or not structured like CityJSON.
    #[error("{}", words::formats::text_in_it_line_column(&nth, &line, &column, &wrong))]
    Malformed {
        /// Which JSON text of the sequence, from 1.
        nth: usize,
        /// Line in that text, from 1.
        line: usize,
        /// From 1.
        column: usize,
        /// What is wrong.
        wrong: String,
    },
    /// It is another type of JSON.
    #[error("{}", words::formats::text_in_it_is_of(&nth, &format_args!("{found:?}")))]
    OtherType {
        /// Which JSON text of the sequence, from 1.
        nth: usize,
        /// Its type.
        found: String,
    },
    /// An unsupported version.
    #[error("{}", words::formats::it_is_cityjson_versions_1(&_0))]
    Version(String),
    /// The vertex transform is missing or not numeric.
    #[error("{}", words::formats::IT_HAS_NO_USABLE_TRANSFORM.now().to_owned())]
    Transform,
    /// The coordinate reference system can't be used.
    #[error("{0}")]
    Grid(#[from] GridError),
}

/// What applies to all texts of a file.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Header {
    grid: Grid,
    transform: Transform,
}

impl Header {
    /// A vertex in the file's coordinate system.
    fn vertex(&self, vertex: [f64; 3]) -> DVec3 {
        let [x, y, z] = vertex;
        let (scale, translate) = (self.transform.scale, self.transform.translate);
        dvec3(x, y, z) * DVec3::from_array(scale) + DVec3::from_array(translate)
    }
}

/// Reads the JSON texts of one file in order.
#[derive(Debug, Default)]
pub(crate) struct CityReader {
    header: Option<Header>,
    read: usize,
    /// Extent of the largest building without a named reference system, in its own unit.
    largest: f64,
}

impl CityReader {
    /// Reads the next text (a whole file, the header of a sequence, or a feature) and returns its buildings.
    pub(crate) fn next(&mut self, text: &str) -> Result<Vec<House>, CityJsonError> {
        self.read += 1;
        let nth = self.read;
        let document: Document = serde_json::from_str(text).map_err(|error| CityJsonError::Malformed {
            nth,
            line: error.line(),
            column: error.column(),
            wrong: error.to_string().split(" at line ").next().unwrap_or_default().to_owned(),
        })?;
        let header = match (self.header, document.kind.as_str()) {
            (None, "CityJSON") => {
                let header = header_of(&document)?;
                self.header = Some(header);
                header
            }
            (Some(header), "CityJSONFeature") => header,
            (_, kind) => {
                return Err(CityJsonError::OtherType { nth, found: kind.chars().take(60).collect() });
            }
        };
        let houses = building::houses(&document, &header);
        if header.grid == Grid::Unnamed {
            self.largest = houses.iter().map(|(_, reach)| *reach).fold(self.largest, f64::max);
        }
        Ok(houses.into_iter().map(|(house, _)| house).collect())
    }

    /// Checks, after the last text, what only all of the file can tell.
    pub(crate) fn done(&self) -> Result<(), CityJsonError> {
        // No building is 0.5 m across, and no house 0.5° of longitude either.
        if self.largest > 0.0 && self.largest < 0.5 {
            return Err(GridError::TooSmall(self.largest).into());
        }
        Ok(())
    }
}

fn header_of(document: &Document) -> Result<Header, CityJsonError> {
    let version = document.version.as_deref().unwrap_or_default();
    let series: Vec<&str> = version.split('.').take(2).collect();
    if !matches!(series.as_slice(), ["1", "1"] | ["2", "0"]) {
        let shown = if version.is_empty() { words::formats::OF_NO_VERSION.now() } else { version };
        return Err(CityJsonError::Version(shown.chars().take(20).collect()));
    }
    let transform = document.transform.filter(|t| {
        t.scale.iter().all(|s| s.is_finite() && *s > 0.0) && t.translate.iter().all(|t| t.is_finite())
    });
    let system = document.metadata.as_ref().and_then(|metadata| metadata.system.as_deref());
    let grid = Grid::named(system)?;
    Ok(Header { grid, transform: transform.ok_or(CityJsonError::Transform)? })
}

/// Reads the buildings of a CityJSON text, or of the lines of a CityJSONSeq text.
///
/// Of each building and its parts, takes the roof surfaces of the finest geometry below LoD 3; without one, of the coarsest
/// above. Web Mercator is scaled back to true lengths; degrees, a system that distorts lengths by more than 2 in 1,000, and an
/// unknown system are refused.
///
/// # Errors
/// [`CityJsonError`] if the text as a whole is unusable; what is unusable about one building is reported with it.
pub fn houses_from_cityjson(text: &str) -> Result<Vec<House>, CityJsonError> {
    let mut reader = CityReader::default();
    let mut houses = Vec::new();
    let mut lines = text.lines().filter(|line| !line.trim().is_empty());
    let first = lines.next().unwrap_or_default();
    if lines.next().is_some() && !is_whole(first) {
        houses = reader.next(text)?;
    } else {
        for line in text.lines().filter(|line| !line.trim().is_empty()) {
            houses.extend(reader.next(line)?);
        }
    }
    reader.done()?;
    Ok(houses)
}

/// Whether a line is a complete JSON text, as in a sequence, and not just the start of one.
pub(crate) fn is_whole(line: &str) -> bool {
    match serde_json::from_str::<serde::de::IgnoredAny>(line) {
        Ok(_) => true,
        Err(error) => !error.is_eof(),
    }
}

#[cfg(test)]
mod tests;
