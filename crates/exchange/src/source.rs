//! Files and folders of buildings: a listing to choose from, and one building read in full. Sizes are bounded, since files may
//! come from anywhere.

use crate::cityjson::{CityReader, is_whole};
use crate::geojson_in::outlines_from_geojson;
use crate::{House, HouseShape, ImportError};
use chalkcourse_geometry::Units;
use chalkcourse_words as words;
use serde::Serialize;
use std::fs::File;
use std::io::{BufRead, BufReader, Read};
use std::path::{Path, PathBuf};

/// Maximum bytes of a JSON text that is read at once: a whole file, or a line of a sequence.
const MOST_BYTES: u64 = 64 << 20;
/// Maximum bytes of a GeoJSON text: parsing takes about ten times its size in memory.
const MOST_GEOJSON: u64 = 32 << 20;
/// Maximum buildings and files in a listing.
const MOST_ENTRIES: usize = 100_000;
const MOST_FILES: usize = 10_000;

/// A building in a listing.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Entry {
    /// Its id, by which it is requested together with its file.
    pub id: String,
    /// Its name.
    pub name: String,
    /// The file it is in.
    pub file: PathBuf,
    /// "roof" or "footprint".
    pub kind: &'static str,
    /// Area in plan, m².
    pub plan_area_m2: f64,
    /// Number of faces it yields; 0 for a footprint.
    pub faces: usize,
    /// Roof surfaces that can't be faces.
    pub left_out: usize,
    /// What was left out and what to check, in sentences.
    pub told: Vec<String>,
}

/// The buildings of a file or folder.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Listing {
    /// In order of files, and of buildings within each.
    pub buildings: Vec<Entry>,
    /// Files of a folder that could not be read, with the reason.
    pub troubles: Vec<String>,
}

/// Lists the buildings of a file, or of all files directly in a folder.
///
/// # Errors
/// [`ImportError`] for a file that can't be read, or a folder without any building.
pub fn list(path: &Path) -> Result<Listing, ImportError> {
    list_until(path, &|| false)
}

/// [`list`], ending early with a partial result once `stop` returns true.
///
/// # Errors
/// As [`list`].
pub fn list_until(path: &Path, stop: &dyn Fn() -> bool) -> Result<Listing, ImportError> {
    let mut listing = Listing::default();
    if path.is_dir() {
        for file in files_of(path)? {
            if let Err(error) = list_file(&file, &mut listing, stop) {
                listing.troubles.push(error.to_string());
            }
        }
        if listing.buildings.is_empty() && listing.troubles.is_empty() {
            return Err(ImportError::Nothing { path: path.to_owned() });
        }
    } else {
        list_file(path, &mut listing, stop)?;
    }
    Ok(listing)
}

fn list_file(file: &Path, listing: &mut Listing, stop: &dyn Fn() -> bool) -> Result<(), ImportError> {
    let mut crowded = false;
    visit(file, &mut |house| {
        if listing.buildings.len() < MOST_ENTRIES {
            listing.buildings.push(entry(file, &house));
        } else {
            crowded = true;
        }
        !crowded && !stop()
    })?;
    if crowded {
        listing.troubles.push(words::formats::more_than_buildings_the_rest(&file.display(), &MOST_ENTRIES));
    }
    Ok(())
}

fn entry(file: &Path, house: &House) -> Entry {
    let (kind, left_out) = match &house.shape {
        HouseShape::Footprint(_) => ("footprint", 0),
        HouseShape::Roof(roof) => ("roof", roof.left_out.len()),
    };
    Entry {
        id: house.id.clone(),
        name: house.name.clone(),
        file: file.to_owned(),
        kind,
        plan_area_m2: house.plan_area(),
        faces: house.faces(),
        left_out,
        told: house.told(Units::Metric),
    }
}

/// One building of a file or folder by its id; without an id, the only one.
///
/// # Errors
/// [`ImportError`] if it is not there, or if there are several and no id is given.
pub fn find(path: &Path, id: Option<&str>) -> Result<House, ImportError> {
    let files = if path.is_dir() { files_of(path)? } else { vec![path.to_owned()] };
    let mut found: Option<House> = None;
    let mut several = false;
    for file in files {
        let looked = visit(&file, &mut |house| {
            if id.is_none() {
                several = found.is_some();
                found.get_or_insert(house);
                return !several;
            }
            if id == Some(house.id.as_str()) {
                found = Some(house);
            }
            found.is_none()
        });
        match looked {
            // a folder may hold other files too
            Err(_) if path.is_dir() => {}
            looked => looked?,
        }
        if several || id.is_some() && found.is_some() {
            break;
        }
    }
    if several {
        let wrong = words::formats::THERE_ARE_SEVERAL_BUILDINGS_IN.now().to_owned();
        return Err(ImportError::Wrong { path: path.to_owned(), wrong });
    }
    found.ok_or_else(|| match id {
        Some(id) => ImportError::NoBuilding { path: path.to_owned(), id: id.to_owned() },
        None => ImportError::Nothing { path: path.to_owned() },
    })
}

fn files_of(folder: &Path) -> Result<Vec<PathBuf>, ImportError> {
    let system = |error| ImportError::System { path: folder.to_owned(), error };
    let mut files = Vec::new();
    for entry in std::fs::read_dir(folder).map_err(system)?.take(MOST_FILES) {
        let path = entry.map_err(system)?.path();
        let extension = path.extension().and_then(|e| e.to_str()).map(str::to_ascii_lowercase);
        let name = path.file_name().and_then(|n| n.to_str()).unwrap_or_default();
        let read = matches!(extension.as_deref(), Some("json" | "jsonl" | "geojson"));
        if read && !name.ends_with(".chalk.json") && path.is_file() {
            files.push(path);
        }
    }
    files.sort();
    Ok(files)
}

/// Passes the buildings of a file to `take` one by one, until it returns that it has enough.
fn visit(path: &Path, take: &mut dyn FnMut(House) -> bool) -> Result<(), ImportError> {
    let system = |error| ImportError::System { path: path.to_owned(), error };
    let wrong = |wrong: String| ImportError::Wrong { path: path.to_owned(), wrong };
    let mut reader = BufReader::new(File::open(path).map_err(system)?);
    let first =
        next_line(&mut reader, path)?.ok_or_else(|| wrong(words::formats::IT_IS_EMPTY.now().to_owned()))?;
    let whole = is_whole(&first);
    let text = if whole { first } else { first + &rest_of(&mut reader, path)? };
    if !is_city_model(&text) {
        return geojson(path, &text, take);
    }
    let mut city = CityReader::default();
    let mut line = Some(text);
    while let Some(text) = line {
        for house in city.next(&text).map_err(|error| wrong(error.to_string()))? {
            if !take(house) {
                return Ok(());
            }
        }
        line = if whole { next_line(&mut reader, path)? } else { None };
    }
    city.done().map_err(|error| wrong(error.to_string()))
}

fn geojson(path: &Path, text: &str, take: &mut dyn FnMut(House) -> bool) -> Result<(), ImportError> {
    if text.len() as u64 > MOST_GEOJSON {
        return Err(too_large(path, words::formats::THIS_FILE.now(), MOST_GEOJSON));
    }
    let outlines = outlines_from_geojson(text).map_err(|error| ImportError::geojson(path, &error))?;
    for outline in outlines {
        let (shape, place, notes) = match outline.outline {
            Ok(polygon) => (HouseShape::Footprint(polygon), Some(outline.place), Vec::new()),
            Err(error) => (HouseShape::Footprint(Default::default()), None, vec![format!("{error}.")]),
        };
        let house = House { id: outline.name.clone(), name: outline.name, shape, place, notes };
        if !take(house) {
            return Ok(());
        }
    }
    Ok(())
}

/// Whether a text is CityJSON, judging by its `type` alone.
fn is_city_model(text: &str) -> bool {
    #[derive(serde::Deserialize)]
    struct Label {
        #[serde(rename = "type")]
        kind: String,
    }
    serde_json::from_str::<Label>(text).is_ok_and(|label| label.kind.starts_with("CityJSON"))
}

/// The next line that is not blank.
fn next_line(reader: &mut BufReader<File>, path: &Path) -> Result<Option<String>, ImportError> {
    let system = |error| ImportError::System { path: path.to_owned(), error };
    loop {
        let mut line = String::new();
        let read = reader.by_ref().take(MOST_BYTES + 1).read_line(&mut line).map_err(system)?;
        if line.len() as u64 > MOST_BYTES {
            return Err(too_large(path, words::formats::A_LINE_OF_IT.now(), MOST_BYTES));
        }
        if read == 0 {
            return Ok(None);
        }
        if !line.trim().is_empty() {
            return Ok(Some(line));
        }
    }
}

fn rest_of(reader: &mut BufReader<File>, path: &Path) -> Result<String, ImportError> {
    let system = |error| ImportError::System { path: path.to_owned(), error };
    let mut rest = String::new();
    reader.by_ref().take(MOST_BYTES + 1).read_to_string(&mut rest).map_err(system)?;
    if rest.len() as u64 > MOST_BYTES {
        Err(too_large(path, words::formats::THIS_FILE.now(), MOST_BYTES))
    } else {
        Ok(rest)
    }
}

fn too_large(path: &Path, what: &str, most: u64) -> ImportError {
    ImportError::TooLarge { path: path.to_owned(), what: what.to_owned(), most: most >> 20 }
}

#[cfg(test)]
mod tests {
    use super::*;

    const TWO: &str = r#"{"type":"FeatureCollection","features":[
        {"type":"Feature","properties":{"name":"Mill"},"geometry":{"type":"Polygon","coordinates":[[[-84.5,39],[-84.4999,39],[-84.4999,39.0001],[-84.5,39.0001],[-84.5,39]]]}},
        {"type":"Feature","properties":{"name":"Bow"},"geometry":{"type":"Polygon","coordinates":[[[-84.5,39],[-84.4999,39.0001],[-84.4999,39],[-84.5,39.0001],[-84.5,39]]]}}]}"#;

    #[test]
    fn a_folder_lists_what_it_has_and_what_it_could_not_read() {
        let folder = tempfile::tempdir().unwrap();
        assert!(list(folder.path()).unwrap_err().to_string().contains("no building"));
        std::fs::write(folder.path().join("a.geojson"), TWO).unwrap();
        std::fs::write(folder.path().join("b.json"), "{\"type\":\"Song\"}").unwrap();
        std::fs::write(folder.path().join("c.chalk.json"), "{}").unwrap();
        std::fs::write(folder.path().join("d.txt"), "words").unwrap();
        let listing = list(folder.path()).unwrap();
        let names: Vec<&str> = listing.buildings.iter().map(|b| b.name.as_str()).collect();
        assert_eq!(names, ["Mill", "Bow"]);
        assert!(listing.buildings[0].plan_area_m2 > 90.0 && listing.buildings[0].told.is_empty());
        assert!(listing.buildings[1].told[0].contains("cross"), "{:?}", listing.buildings[1].told);
        assert_eq!(listing.troubles.len(), 1);
        assert!(listing.troubles[0].contains("b.json"), "{:?}", listing.troubles);
        assert_eq!(find(folder.path(), Some("Mill")).unwrap().name, "Mill");
        let told = |id| find(folder.path(), id).unwrap_err().to_string();
        assert!(told(Some("Moon")).contains("--list") && told(None).contains("several"));
    }

    #[test]
    fn files_without_buildings_are_reported() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("x.json");
        let told = |content: &[u8]| {
            std::fs::write(&path, content).unwrap();
            list(&path).unwrap_err().to_string()
        };
        assert!(told(b"").contains("empty"));
        assert!(told(b"\xff\xfe\x00").contains("x.json"));
        assert!(told(b"words").contains("GeoJSON"));
        assert!(told(b"{\"type\":\"CityJSON\",\"version\":\"2.0\"").contains("GeoJSON"));
        assert!(told(b"{\"type\":\"CityJSON\",\"version\":\"1.0\",\"vertices\":[]}").contains("1.0"));
        assert!(list(Path::new("/no/such/file.json")).unwrap_err().to_string().contains("/no/such"));
    }
}
