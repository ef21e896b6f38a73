//! Words for places on the globe, and for buildings that come in and go out in open formats.

use chalkcourse_exchange::{Entry, House};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_plan::{RoofFaceRow, area_text};
use chalkcourse_words::{Say, pick, say, tell};
use std::path::Path;

pub(crate) const PLACE: Say = say("Latitude, longitude", "Latitud, longitud");
pub(crate) const PLACE_HELP: Say = say(
    "Of the plan's origin, in degrees of WGS 84, as maps give them: 39.1, -84.5. Needed to write the plan as GeoJSON.",
    "Del origen de la planta, en grados de WGS 84, como las dan los mapas: 39.1, -84.5. Se necesita \
        para escribir la planta como GeoJSON.",
);
pub(crate) const BAD_PLACE: Say = say(
    "Latitude from -85 to 85, a comma, then longitude from -180 to 180, in degrees: 39.1, -84.5.",
    "Latitud de -85 a 85, una coma, luego longitud de -180 a 180, en grados: 39.1, -84.5.",
);

// Buildings that come in
pub(crate) const IMPORT: Say = say("Import a building…", "Importar un edificio…");
pub(crate) const IMPORT_FOLDER: Say = say("Import from a folder…", "Importar de una carpeta…");
pub(crate) const IMPORT_READING: Say = say("Reading the buildings…", "Leyendo los edificios…");
pub(crate) const IMPORT_BROKE: Say = say(
    "Reading broke off: try again, or cut the area of one street out of the file.",
    "La lectura se interrumpió: pruebe otra vez, o recorte del archivo el área de una calle.",
);
pub(crate) const IMPORT_SEARCH: Say = say("Find", "Buscar");
pub(crate) const IMPORT_SEARCH_HINT: Say = say("name or number", "nombre o número");
pub(crate) const IMPORT_TAKE: Say = say("Take this building", "Tomar este edificio");
pub(crate) const IMPORT_TAKE_HELP: Say = say(
    "Into this job where it has no roof yet, and undo takes it back; else into a new job with the same kit and rule book.",
    "En esta obra si aún no tiene techo, y deshacer lo revierte; si no, en una obra nueva con el mismo \
        kit y libro de reglas.",
);
pub(crate) const IMPORT_CHOOSE: Say = say(
    "Choose a building: what is to be known of it shows here.",
    "Elija un edificio: aquí se muestra lo que hay que saber de él.",
);
pub(crate) const IMPORT_WHOLE: Say =
    say("Every roof surface of it becomes a face.", "Cada superficie de su techo se vuelve un faldón.");
pub(crate) const IMPORT_RAISED: Say = say(
    "Outline of the walls alone: the roof is raised over it as said here.",
    "Solo el contorno de los muros: el techo se levanta sobre él como se dice aquí.",
);

// The plan that goes out
pub(crate) const EXPORT_GEOJSON: Say = say("Plan as GeoJSON…", "Planta como GeoJSON…");
pub(crate) const EXPORT_GLB: Say = say("House as glTF…", "Casa como glTF…");
pub(crate) const CANT_EXPORT_PLAN: Say =
    say("The plan could not be written", "No se pudo escribir la planta");

// The roof report
pub(crate) const ROOF_REPORT: Say = say("Roof report", "Informe del techo");
pub(crate) const ROOF_COPY_HELP: Say =
    say("Put the report on the clipboard as text", "Poner el informe en el portapapeles como texto");
pub(crate) const ROOF_COPIED: Say =
    say("The roof report is on the clipboard.", "El informe del techo está en el portapapeles.");
pub(crate) const ROOF_SLOPE: Say = say("On the slope", "En la pendiente");
pub(crate) const ROOF_SQUARES: Say =
    say("Squares of 100 ft², no waste", "Cuadros de 100 ft², sin desperdicio");
pub(crate) const ROOF_PLAN: Say = say("In plan", "En planta");
pub(crate) const ROOF_FOOTPRINT: Say = say("Footprint, each place once", "Huella, cada lugar una vez");
pub(crate) const ROOF_RIDGE: Say = say("Ridge height", "Altura de la cumbrera");
pub(crate) const ROOF_EAVE: Say = say("Eave height", "Altura del alero");
pub(crate) const ROOF_FACES: Say = say("Faces", "Faldones");
pub(crate) const ROOF_EDGES: Say = say("Edges, true length", "Bordes, longitud real");
pub(crate) const ROOF_UNFOLD: Say =
    say("Press to list each line of this kind", "Oprima para enumerar cada línea de esta clase");
pub(crate) const ROOF_LEVEL: Say = say(
    "Heights are above the level from which the job measures them.",
    "Las alturas se cuentan desde el nivel que mide la obra.",
);

/// What a building gives, in a line.
pub(crate) fn building_gives(entry: &Entry, units: Units) -> String {
    let area = area_text(entry.plan_area_m2, units);
    let mut words = match (entry.kind, entry.faces) {
        ("footprint", _) => tell!("footprint  ·  {area}", "huella  ·  {area}"),
        (_, 1) => tell!("1 face  ·  {area} in plan", "1 faldón  ·  {area} en planta"),
        (_, faces) => tell!("{faces} faces  ·  {area} in plan", "{faces} faldones  ·  {area} en planta"),
    };
    if entry.left_out > 0 {
        words += &tell!("  ·  {} left out", "  ·  {} omitidos", entry.left_out);
    } else if !entry.told.is_empty() {
        words += pick("  ·  look at it", "  ·  revíselo");
    }
    words
}

pub(crate) fn building_words(entry: &Entry, gives: &str) -> String {
    tell!("Building {}: {gives}", "Edificio {}: {gives}", entry.name)
}

pub(crate) fn import_count(found: usize, all: usize) -> String {
    if found == all {
        tell!("{all} buildings", "{all} edificios")
    } else {
        tell!("{found} of {all}", "{found} de {all}")
    }
}

pub(crate) fn import_not_read(trouble: &str) -> String {
    tell!("Not read: {trouble}", "Sin leer: {trouble}")
}

pub(crate) fn import_of(house: &House) -> String {
    tell!("Import {}", "Importar {}", house.name)
}

pub(crate) fn imported(house: &House) -> String {
    let told = house.told(Units::Metric).len();
    let more = match told {
        0 => String::new(),
        1 => pick(
            " One thing to look at was told in the list.",
            " En la lista se indicó una cosa por revisar.",
        )
        .to_owned(),
        told => tell!(
            " {told} things to look at were told in the list.",
            " En la lista se indicaron {told} cosas por revisar."
        ),
    };
    tell!(
        "{} was imported. It is not saved yet.{more}",
        "Se importó {}. Todavía no está guardado.{more}",
        house.name
    )
}

pub(crate) fn plan_exported_to(path: &Path) -> String {
    tell!("Written to {}", "Escrito en {}", path.display())
}

pub(crate) fn face_areas(face: &RoofFaceRow, units: Units) -> String {
    format!("{}  ·  {:.2} sq", area_text(face.slope_area_m2, units), face.squares)
}

pub(crate) fn face_pitch(pitch: &str, falls: &str, degrees: f64) -> String {
    tell!("{pitch} ({degrees:.1}°), falls {falls}", "{pitch} ({degrees:.1}°), cae hacia el {falls}")
}

/// One line of a kind: its number and where it starts and ends in height.
pub(crate) fn roof_line(number: usize, from: f64, to: f64, units: Units) -> String {
    let height = |metres: f64| Length::from_metres(metres).show(units);
    let (from, to) = (height(from.min(to)), height(from.max(to)));
    if from == to {
        tell!("    {number}, level at {from}", "    {number}, a nivel en {from}")
    } else {
        tell!("    {number}, {from} up to {to}", "    {number}, sube de {from} a {to}")
    }
}

pub(crate) fn roof_row(words: &str, said: &str, more: &str) -> String {
    let words = words.trim();
    if more.is_empty() { format!("{words}: {said}") } else { format!("{words}: {said}, {more}") }
}

pub(crate) fn roof_problems(count: usize) -> String {
    match count {
        1 => pick(
            "The roof does not hold together in one place: see the findings.",
            "El techo no cuadra en un lugar: vea los hallazgos.",
        )
        .to_owned(),
        count => tell!(
            "The roof does not hold together in {count} places: see the findings.",
            "El techo no cuadra en {count} lugares: vea los hallazgos."
        ),
    }
}
