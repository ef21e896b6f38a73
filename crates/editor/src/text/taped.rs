//! Words about a face from measurements.

use chalkcourse_geometry::{Length, Units};
use chalkcourse_words::{Say, pick, say, tell};

pub(crate) const TAPED_FACE: Say = say("Face from measurements…", "Faldón según medidas…");
pub(crate) const FROM_MEASUREMENTS: Say = say("From measurements…", "Según medidas…");
pub(crate) const TAPED_FACE_HELP: Say = say(
    "Type what a tape said on the deck: sides, diagonals, pitch",
    "Escriba lo que dijo la cinta en el entablado: lados, diagonales, pendiente",
);
pub(crate) const FORM: Say = say("Form", "Forma");
pub(crate) const FORM_TRIANGLE: Say = say("Triangle", "Triángulo");
pub(crate) const FORM_RECTANGLE: Say = say("Rectangle", "Rectángulo");
pub(crate) const FORM_PARALLELOGRAM: Say = say("Parallelogram", "Paralelogramo");
pub(crate) const FORM_TRAPEZOID: Say = say("Trapezoid", "Trapecio");
pub(crate) const FORM_POLYGON: Say = say("Any, with diagonals", "Cualquiera, con diagonales");
pub(crate) const TAPED_EAVE: Say = say("Eave", "Alero");
pub(crate) const TAPED_RIGHT: Say = say("Right side", "Lado derecho");
pub(crate) const TAPED_LEFT: Say = say("Left side", "Lado izquierdo");
pub(crate) const TAPED_TOP: Say = say("Top", "Arriba");
pub(crate) const TAPED_HEIGHT: Say = say("Straight up", "En recto hacia arriba");
pub(crate) const A_CHECK: Say = say("if taped", "si se midió");
pub(crate) const TAPED_PITCH: Say = say("Pitch", "Pendiente");
pub(crate) const PITCH_TYPED: Say = say("as a pitch", "como pendiente");
pub(crate) const PITCH_BY_LEVEL: Say = say("by a level", "con un nivel");
pub(crate) const PITCH_AS_TYPED: Say = say("Pitch as typed", "Pendiente escrita");
pub(crate) const PITCH_TYPED_HELP: Say =
    say("6:12, 26.6°, 50%, or 12\" over 24\"", "6:12, 26.6°, 50%, o 12\" sobre 24\"");
pub(crate) const LEVEL_RISE: Say = say("Rise", "Caída");
pub(crate) const LEVEL_RISE_HELP: Say = say(
    "Hold the level level with one end on the deck: from its other end straight down to the deck.",
    "Ponga el nivel horizontal con un extremo en el entablado: del otro extremo directo hacia abajo \
        hasta el entablado.",
);
pub(crate) const LEVEL_LONG: Say = say("Length of the level", "Longitud del nivel");
pub(crate) const SPREAD_LIMIT: Say = say("Spread at most", "Reparto máximo");
pub(crate) const SPREAD_LIMIT_HELP: Say = say(
    "Readings that are corrected by more than this make no face; 1\" for a face of a house is common practice, no source.",
    "Lecturas que se corrigen más que esto no forman un faldón; 1\" en un faldón de casa es práctica \
        común, sin fuente.",
);
pub(crate) const WHERE_TO: Say = say("Lay it", "Ponerlo");
pub(crate) const BESIDE_THE_ROOF: Say = say("beside the roof", "junto al techo");
pub(crate) const SELECT_A_SIDE: Say = say(
    "To join it to a face, select a side of that face on the drawing; then choose here which side meets it.",
    "Para unirlo a un faldón, seleccione en el dibujo un lado de ese faldón; luego elija aquí qué lado \
        se junta con él.",
);
pub(crate) const ADD_FACE: Say = say("Add face", "Agregar faldón");
pub(crate) const ADD_CORNER_TAPED: Say = say("One corner more", "Una esquina más");
pub(crate) const LESS_CORNER_TAPED: Say = say("One corner less", "Una esquina menos");
pub(crate) const ADD_DIAGONAL: Say = say("Another diagonal", "Otra diagonal");
pub(crate) const TAKE_DIAGONAL: Say = say("Take this diagonal away", "Quitar esta diagonal");
pub(crate) const DIAGONAL_FROM: Say = say("Diagonal from corner", "Diagonal de la esquina");
pub(crate) const DIAGONAL_TO: Say = say("to corner", "a la esquina");
pub(crate) const LIVE_PICTURE: Say =
    say("Picture of the face as typed", "Dibujo del faldón como se escribió");

pub(crate) fn side_between(from: usize, to: usize) -> String {
    tell!("Side {}–{}", "Lado {}–{}", from + 1, to + 1)
}

pub(crate) fn diagonal_between(from: usize, to: usize) -> String {
    tell!("Diagonal {}–{}", "Diagonal {}–{}", from + 1, to + 1)
}

/// "a  Eave"
pub(crate) fn lettered(letter: char, words: &str) -> String {
    format!("{letter}   {words}")
}

pub(crate) const STILL_NEEDED: Say = say("Still needed: ", "Todavía se necesita: ");

/// Which reading is still needed.
pub(crate) fn still_needed(name: &str) -> String {
    format!("{STILL_NEEDED}{name}.")
}

/// What can't be read, and where.
pub(crate) fn wrong_in(name: &str, error: &impl std::fmt::Display) -> String {
    format!("{name}: {error}.")
}

/// "+ 1/2""
pub(crate) fn correction(by: Length, units: Units) -> String {
    let sign = if by < Length::ZERO { "−" } else { "+" };
    format!("{sign} {}", by.abs().show_small(units))
}

pub(crate) fn closes(closing_error: Length, spare: usize, units: Units) -> String {
    match spare {
        0 => pick(
            "Nothing checks these readings: one diagonal more would.",
            "Nada comprueba estas lecturas: una diagonal más lo haría.",
        )
        .to_owned(),
        _ if closing_error < Length::from_mm(0.5) => {
            pick("The readings agree.", "Las lecturas concuerdan.").to_owned()
        }
        _ => tell!(
            "The readings miss by {} at most. It is spread over all of them (least squares, each weighing the same).",
            "Las lecturas fallan en {} como máximo. Se reparte entre todas (mínimos cuadrados, con el mismo \
        peso cada una).",
            closing_error.show_small(units)
        ),
    }
}

pub(crate) fn suspect(name: &str) -> String {
    tell!("If one was misread, it is most likely: {name}.", "Si una se leyó mal, lo más probable es: {name}.")
}

/// "with its top on side 3 of South"
pub(crate) fn against(own: &str, side: usize, face: &str) -> String {
    tell!("{} on side {} of {face}", "{} en el lado {} de {face}", own.to_lowercase(), side + 1)
}
