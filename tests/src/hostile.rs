//! Everything that files from strangers pass through: the importers, and what is done at once with their results. None
//! of it may panic, hang or use unbounded memory, whatever the bytes are. Called by the fuzz targets (`tests/fuzz/`)
//! and by a plain test.

use chalkcourse_exchange::{
    House, HouseShape, houses_from_cityjson, outlines_from_geojson, picture_from_bytes,
};
use chalkcourse_geometry::{Length, Pitch};
use chalkcourse_job::{
    NoFiles, Resolved, apply, builtin_kit, builtin_prices, builtin_rule_book, job_from_text, job_to_text,
    kit_from_text, pieces_from_text, pieces_to_text, prices_from_bytes, rule_book_from_text,
    script_from_text, stock_from_csv,
};
use chalkcourse_plan::{Ends, RaiseAs, evaluate};
use std::path::Path;

/// An importer of the bytes of a file.
pub type Importer = fn(&[u8]);

/// All importers, by the name of their fuzz target.
pub const ALL: [(&str, Importer); 10] = [
    ("job", job),
    ("edits", edits),
    ("pieces", pieces),
    ("kit", kit),
    ("rule_book", rule_book),
    ("prices", prices),
    ("geojson", geojson),
    ("city_json", city_json),
    ("stock", stock),
    ("picture", picture),
];

fn text(bytes: &[u8]) -> Option<&str> {
    std::str::from_utf8(bytes).ok()
}

/// A job file: a job that can be read survives a round trip, and a small one is evaluated.
pub fn job(bytes: &[u8]) {
    let path = Path::new("hostile.chalk.json");
    let Some(Ok(job)) = text(bytes).map(|text| job_from_text(text, path)) else { return };
    if let Ok(again) = job_to_text(&job) {
        let back = job_from_text(&again, path).ok();
        assert!(back.as_ref() == Some(&job), "a job is not read back as it was written");
    }
    let corners: usize = job.faces.iter().flat_map(|face| face.outline.rings()).map(<[_]>::len).sum();
    let places: u64 = job.blocks.iter().map(|b| u64::from(b.rows) * u64::from(b.columns)).sum();
    if job.faces.len() <= 12 && corners <= 120 && places <= 60 && job.penetrations.len() <= 12 {
        let _ = evaluate(&job);
    }
}

/// A file of edits: each edit that applies makes a job that survives a round trip.
pub fn edits(bytes: &[u8]) {
    let path = Path::new("edits.json");
    let Some(Ok(script)) = text(bytes).map(|text| script_from_text(text, path)) else { return };
    let mut job = Resolved::new("new".to_owned(), builtin_kit(), builtin_rule_book(), builtin_prices());
    for step in script.steps.iter().take(12) {
        let Ok(next) = step.apply(&job, &NoFiles) else { continue };
        let back = job_to_text(&next).ok().and_then(|text| job_from_text(&text, path).ok());
        assert!(back.as_ref() == Some(&next), "{} makes a job that is not opened as it was", step.name());
        job = next;
    }
}

/// Clipboard text: pieces that can be read survive a round trip.
pub fn pieces(bytes: &[u8]) {
    let Some(Ok(pieces)) = text(bytes).map(pieces_from_text) else { return };
    let again = pieces_to_text(&pieces).ok().and_then(|text| pieces_from_text(&text).ok());
    assert!(again.as_ref() == Some(&pieces), "pieces are not read back as they were written");
}

/// A kit file.
pub fn kit(bytes: &[u8]) {
    let _ = text(bytes).map(|text| kit_from_text(text, Path::new("kit.json")));
}

/// A rule book file.
pub fn rule_book(bytes: &[u8]) {
    let _ = text(bytes).map(|text| rule_book_from_text(text, Path::new("book.json")));
}

/// A price list file: as JSON, and the same bytes as a table.
pub fn prices(bytes: &[u8]) {
    let kit = builtin_kit();
    for name in ["prices.json", "prices.csv", "prices.xlsx"] {
        let _ = prices_from_bytes(bytes.to_vec(), Path::new(name), &kit);
    }
}

/// Footprints: small ones are raised to a roof.
pub fn geojson(bytes: &[u8]) {
    let Some(Ok(outlines)) = text(bytes).map(outlines_from_geojson) else { return };
    for outline in outlines.into_iter().take(4) {
        let Ok(polygon) = outline.outline else { continue };
        if polygon.rings().map(<[_]>::len).sum::<usize>() <= 40 {
            let shape = HouseShape::Footprint(polygon);
            take(&House {
                id: "1".into(),
                name: outline.name,
                shape,
                place: Some(outline.place),
                notes: Vec::new(),
            });
        }
    }
}

/// A city model: small roofs become jobs.
pub fn city_json(bytes: &[u8]) {
    let Some(Ok(houses)) = text(bytes).map(houses_from_cityjson) else { return };
    for house in houses.iter().filter(|house| house.faces() <= 12).take(4) {
        take(house);
    }
}

fn take(house: &House) {
    let _ = house.told(chalkcourse_geometry::Units::FeetInches);
    let job = Resolved::new(String::new(), builtin_kit(), builtin_rule_book(), builtin_prices());
    let pitch = Pitch::from_rise_in_12(6.0).unwrap_or(Pitch::FLAT);
    let how =
        RaiseAs { pitch, eave: Length::from_feet(9.0), overhang: Length::from_feet(1.0), ends: Ends::Gable };
    if let Ok(edit) = house.edit(&job, &how)
        && let Ok(job) = apply(&job, &edit)
    {
        let _ = evaluate(&job);
    }
}

/// A warehouse list.
pub fn stock(bytes: &[u8]) {
    let _ = text(bytes).map(stock_from_csv);
}

/// A picture to trace. The size in its header is checked against the limits before anything is decoded.
pub fn picture(bytes: &[u8]) {
    let _ = picture_from_bytes(bytes);
}
