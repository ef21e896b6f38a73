//! The file of a job.

mod version_1;

use crate::data_file::{DataFile, file_schema, parse, version};
use crate::disk::{folder_of, read_text, write_atomically};
use crate::{EditError, Face, FileError, Job, Resolved, Underlay, check, circuits, resolved, underlay};
use chalkcourse_words::{Said, later as words};
use schemars::Schema;
use serde::Serialize;
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

/// The format name in a job file.
pub const JOB_FORMAT: &str = "chalkcourse-job";
/// The version of the job format that this program writes.
pub const JOB_VERSION: u32 = 2;

/// Reads a job file.
///
/// # Errors
/// [`FileError`] names the file, the line or field, and what was expected.
pub fn load(path: &Path) -> Result<Resolved, FileError> {
    let text = read_text(path, JOB_FORMAT)?;
    let mut job = job_from_text(&text, path)?;
    if let Some(underlay) = &mut job.underlay {
        underlay.path = underlay::resolved(&underlay.path, folder_of(path));
    }
    Ok(job)
}

/// The job as its file has it: a picture is named from the folder of the job, so that both can be moved together.
fn as_in(job: &Resolved, path: &Path) -> Job {
    let mut job = job.decided();
    if let Some(Underlay { path: picture, .. }) = &mut job.underlay {
        *picture = underlay::relative(Path::new(picture.as_str()), folder_of(path));
    }
    job
}

/// Reads a job from the text of a job file, of this version or an older one; `path` is for the words of an error alone.
///
/// # Errors
/// [`FileError`] names the line or field and what was expected.
pub fn job_from_text(text: &str, path: &Path) -> Result<Resolved, FileError> {
    let (job, by_place) = match version(text, path, JOB_FORMAT, JOB_VERSION)? {
        1 => {
            let (job, by_place) = parse::<DataFile<version_1::Job>>(text, path)?.data.split();
            (job, Some(by_place))
        }
        _ => (parse::<DataFile<Job>>(text, path)?.data, None),
    };
    let job = resolved::numbered(job);
    check_job(&job).map_err(|wrong| FileError::wrong(path, wrong))?;
    let mut job = resolved::raised(job).map_err(|error| FileError::wrong(path, error.to_string()))?;
    if let Some(by_place) = by_place {
        by_place.bring_over(&mut job);
    }
    Ok(job)
}

/// The text of a job file.
///
/// # Errors
/// [`FileError::Wrong`] for a job that JSON can't hold: a number in it is not finite.
pub fn job_to_text(job: &Resolved) -> Result<String, FileError> {
    text_of_job(&job.decided())
}

fn text_of_job(job: &Job) -> Result<String, FileError> {
    #[derive(Serialize)]
    struct Out<'a> {
        format: &'a str,
        version: u32,
        data: &'a Job,
    }
    let out = Out { format: JOB_FORMAT, version: JOB_VERSION, data: job };
    let mut text = serde_json::to_string_pretty(&out)
        .map_err(|error| FileError::wrong(Path::new(JOB_FORMAT), Said::own(error.to_string())))?;
    text.push('\n');
    Ok(text)
}

/// Writes a job file so that a crash at any moment leaves the old one or the new one, whole, and keeps the file
/// that was there as [`previous_path`].
///
/// # Errors
/// [`FileError::System`]; what was there is still there.
pub fn save(job: &Resolved, path: &Path) -> Result<(), FileError> {
    let text = text_of_job(&as_in(job, path))?;
    if path.exists() {
        let previous = previous_path(path);
        let old = fs::read(path).map_err(|error| FileError::system(path, words::job::READ, error))?;
        // A save that changes nothing must not push the real previous version out.
        if old == text.as_bytes() {
            return Ok(());
        }
        write_atomically(&previous, &old)?;
    }
    write_atomically(path, text.as_bytes())
}

/// Where [`save`] keeps the version before: `porch.chalk.json` → `porch.chalk.json.previous`.
pub fn previous_path(path: &Path) -> PathBuf {
    let mut name = path.file_name().unwrap_or_default().to_owned();
    name.push(".previous");
    path.with_file_name(name)
}

/// The JSON Schema (2020-12) of a job file.
pub fn job_schema() -> Schema {
    file_schema::<Job>(JOB_FORMAT)
}

/// What a job must hold beyond the shape of its file.
fn check_job(job: &Job<Face>) -> Result<(), Said> {
    job.kit.check().map_err(|wrong| wrong.after("field data.kit: "))?;
    job.rule_book.check().map_err(|wrong| wrong.after("field data.rule_book: "))?;
    job.prices.check().map_err(|wrong| wrong.after("field data.prices: "))?;
    check::check_order(&job.order, &job.kit).map_err(|wrong| wrong.after("field data.order."))?;
    let mut seen = BTreeSet::new();
    let mut number = |field: &str, index: usize, id: u32| {
        if id >= job.next_id {
            Err(words::job::field_data_id_the_number(&field, &index, &id, &job.next_id))
        } else if !seen.insert((if field == "resting" { "faces" } else { field }.to_owned(), id)) {
            Err(words::job::field_data_id_the_number_is(&field, &index, &id))
        } else {
            Ok(())
        }
    };
    check::check_site(&job.site).map_err(|error| Said::own(format!("field data.site.place: {error}")))?;
    for (index, part) in job.parts.iter().enumerate() {
        number("parts", index, part.id.0)?;
        check::check_part(part).map_err(|error| Said::own(format!("field data.parts[{index}]: {error}")))?;
    }
    let mut sides = BTreeSet::new();
    for (field, faces) in [("faces", &job.faces), ("resting", &job.resting)] {
        for (index, face) in faces.iter().enumerate() {
            // Both lists are faces: one number, one face.
            number(field, index, face.id.0)?;
            check::check_face(face)
                .map_err(|error| Said::own(format!("field data.{field}[{index}]: {error}")))?;
            if let Some(from) = face.from.filter(|from| !sides.insert(*from)) {
                return Err(words::job::field_data_from_piece_of(
                    &field,
                    &index,
                    &from.piece,
                    &from.side,
                    &from.part.0,
                ));
            }
        }
    }
    for (index, penetration) in job.penetrations.iter().enumerate() {
        number("penetrations", index, penetration.id.0)?;
        check::check_penetration(penetration)
            .map_err(|error| Said::own(format!("field data.penetrations[{index}]: {error}")))?;
    }
    for (index, block) in job.blocks.iter().enumerate() {
        number("blocks", index, block.id.0)?;
        check::check_block(block)
            .map_err(|error| Said::own(format!("field data.blocks[{index}]: {error}")))?;
        if job.face(block.face).is_none() && !job.resting.iter().any(|face| face.id == block.face) {
            return Err(words::job::field_data_blocks_face_the(&index, &block.face.0));
        }
    }
    for (index, junction) in job.boxes.iter().enumerate() {
        number("boxes", index, junction.id.0)?;
        circuits::check_box(junction)
            .map_err(|error| Said::own(format!("field data.boxes[{index}]: {error}")))?;
    }
    let mut wired = BTreeSet::new();
    for (index, circuit) in job.circuits.iter().enumerate() {
        number("circuits", index, circuit.id.0)?;
        let told = |error| Said::own(format!("field data.circuits[{index}]: {error}"));
        circuits::check_circuit(job, circuit).map_err(told)?;
        if !circuit.modules.iter().all(|module| wired.insert(*module)) {
            return Err(told(EditError::ModuleTwice { name: circuit.name.clone() }));
        }
    }
    let mut read = BTreeSet::new();
    for (index, reading) in job.readings.iter().enumerate() {
        let told = |error| Said::own(format!("field data.readings[{index}]: {error}"));
        circuits::check_reading(job, reading).map_err(told)?;
        if !read.insert(reading.circuit) {
            return Err(told(EditError::ReadTwice));
        }
    }
    circuits::check_choices(&job.wiring).map_err(|error| Said::own(format!("field data.wiring: {error}")))?;
    check::check_underlay(job.underlay.as_ref())
        .map_err(|error| Said::own(format!("field data.underlay: {error}")))?;
    for (index, waiver) in job.waivers.iter().enumerate() {
        if waiver.reason.trim().is_empty() {
            let wrong = words::job::A_WAIVER_NEEDS_A_REASON;
            return Err(Said::from(wrong).after(format!("field data.waivers[{index}].reason: ")));
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{builtin_kit, builtin_prices, builtin_rule_book};

    fn job() -> Resolved {
        Resolved::new("Alder Court".into(), builtin_kit(), builtin_rule_book(), builtin_prices())
    }

    fn refused(text: &str, words: &[&str]) {
        let error = job_from_text(text, Path::new("a.chalk.json")).unwrap_err().to_string();
        for word in words {
            assert!(error.contains(word), "{error:?} does not say {word:?}");
        }
    }

    #[test]
    fn save_and_load_is_identity_and_the_previous_version_stays() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.chalk.json");
        let first = job();
        save(&first, &path).unwrap();
        assert_eq!(load(&path).unwrap(), first);
        let mut second = first.clone();
        second.name = "Quarry Lane".into();
        save(&second, &path).unwrap();
        save(&second, &path).unwrap();
        assert_eq!(load(&path).unwrap(), second);
        assert_eq!(load(&previous_path(&path)).unwrap(), first);
        assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 2, "temporary files are left");
    }

    #[test]
    fn a_folder_that_is_not_there_is_told() {
        let error = save(&job(), Path::new("/no/such/folder/a.chalk.json")).unwrap_err().to_string();
        assert!(error.contains("/no/such/folder") && error.contains("write"), "{error}");
    }

    #[test]
    fn wrong_files_are_refused_with_the_place() {
        let good = job_to_text(&job()).unwrap();
        refused("", &["a.chalk.json", "line 1"]);
        refused("{\"format\": \"chalkcourse-job\"", &["line 1"]);
        refused("{\"format\": \"shopping\", \"version\": 1}", &["shopping", "chalkcourse-job"]);
        refused(&good.replace("\"version\": 2", "\"version\": 3"), &["version 3", "newer"]);
        refused(&good.replace("\"version\": 2", "\"version\": 0"), &["version 0"]);
        refused(&good.replace("\"name\": \"Alder Court\"", "\"nane\": \"x\""), &["nane", "data"]);
        refused(&good.replace("\"faces\": []", "\"faces\": 7"), &["data.faces", "line"]);
        refused(&format!("{good} x"), &["trailing"]);
    }

    #[test]
    fn what_makes_no_sense_is_refused() {
        let mut wrong = job();
        wrong.waivers.push(crate::Waiver {
            key: crate::FindingKey::new("k", crate::Subject::Whole),
            accepted: None,
            reason: " ".into(),
            by: String::new(),
            date: String::new(),
        });
        refused(&job_to_text(&wrong).unwrap(), &["waivers[0].reason", "reason"]);
        let mut nowhere = job();
        nowhere.site.place = Some(crate::GeoPoint { latitude: 39.1, longitude: 275.5 });
        refused(&job_to_text(&nowhere).unwrap(), &["site.place", "275.5", "-180 to 180"]);
    }
}
