//! Words about the picture under the plan.

use chalkcourse_exchange::PictureInError;
use chalkcourse_geometry::{DVec2, Length, Units};
use chalkcourse_words::{Say, pick, say, tell};
use std::path::Path;

pub(crate) const TOOL_PICTURE: Say = say("Picture", "Imagen");
pub(crate) const TOOL_PICTURE_HELP: Say = say(
    "Lay an aerial photo or a sketch under the plan, to draw over",
    "Poner una foto aérea o un croquis bajo la planta, para dibujar encima",
);
pub(crate) const PICTURE: Say = say("Picture under the plan", "Imagen bajo la planta");
pub(crate) const LAY_PICTURE: Say = say("Picture under the plan…", "Imagen bajo la planta…");
pub(crate) const CHOOSE_PICTURE: Say = say("Choose a picture…", "Elegir una imagen…");
pub(crate) const CHOOSE_ANOTHER: Say = say("Choose another…", "Elegir otra…");
pub(crate) const NO_PICTURE: Say = say(
    "An aerial photo or a sketch to draw over: a PNG or JPEG. Choose one, or drop it on the window.",
    "Una foto aérea o un croquis para dibujar encima: PNG o JPEG. Elija uno, o suéltelo en la ventana.",
);
pub(crate) const PICTURE_BROKE: Say = say(
    "Reading the picture broke off: choose it again.",
    "La lectura de la imagen se interrumpió: elíjala otra vez.",
);
pub(crate) const PICTURE_CHANGED: Say = say(
    "The file holds another picture than when it was laid here. Look whether it still lies right.",
    "El archivo tiene otra imagen que cuando se puso aquí. Vea si todavía queda bien.",
);
pub(crate) const PICTURE_OTHER_SHAPE: Say = say(
    "The file holds a picture of another shape than the one that was laid here, so it is not drawn.",
    "El archivo tiene una imagen de otra forma que la que se puso aquí, así que no se dibuja.",
);
pub(crate) const TAKE_AS_IT_IS: Say = say("Take it as it is now", "Tomarla como está ahora");
pub(crate) const LOOK_AGAIN: Say = say("Look again", "Volver a mirar");
pub(crate) const READING_PICTURE: Say = say("The picture is being read…", "Se está leyendo la imagen…");
pub(crate) const CANT_LAY: Say =
    say("This picture can't be laid under the plan", "Esta imagen no se puede poner bajo la planta");
pub(crate) const PICTURE_MODES: [Say; 4] =
    [say("Move", "Mover"), say("Turn", "Girar"), say("Scale", "Escala"), say("Crop", "Recortar")];
pub(crate) const PICTURE_MODES_HELP: [Say; 4] = [
    say("Drag the picture, or move it with the arrow keys", "Arrastre la imagen, o muévala con las flechas"),
    say(
        "Drag around the picture's middle; or click two points of a line that should run square",
        "Arrastre alrededor del centro de la imagen; o haga clic en dos puntos de una línea que deba \
        quedar a escuadra",
    ),
    say(
        "Click two points whose distance you know, then type it",
        "Haga clic en dos puntos cuya distancia conoce, y escríbala",
    ),
    say("Drag over the part that should show", "Arrastre sobre la parte que se debe ver"),
];
pub(crate) const GROUND_LENGTH: Say = say("Length on the ground", "Longitud en el terreno");
pub(crate) const MAKE_SQUARE: Say = say("Make the line square", "Poner la línea a escuadra");
pub(crate) const MAKE_SQUARE_HELP: Say = say(
    "Turn the picture so that the line runs due east–west or north–south",
    "Girar la imagen para que la línea corra exactamente este–oeste o norte–sur",
);
pub(crate) const WIDE_ON_GROUND: Say = say("Width", "Ancho");
pub(crate) const WIDE_HELP: Say = say(
    "How wide the whole picture is on the ground. It keeps its aspect.",
    "Qué ancho tiene la imagen entera en el terreno. Conserva su proporción.",
);
pub(crate) const PICTURE_TURN: Say = say("Turned by", "Girada");
pub(crate) const PICTURE_TURN_HELP: Say = say("Degrees clockwise.", "Grados en el sentido del reloj.");
pub(crate) const PICTURE_MIDDLE_HELP: Say =
    say("Where the middle of the whole picture lies.", "Dónde está el centro de la imagen entera.");
pub(crate) const PICTURE_DIM: Say = say("Dimmed by", "Atenuada");
pub(crate) const PICTURE_DIM_BY_HAND: Say = say("Dim the picture", "Atenuar la imagen");
pub(crate) const PICTURE_CROP: Say =
    say("Cropped, in percent of the picture", "Recorte, en por ciento de la imagen");
pub(crate) const CROP_SIDES: [Say; 4] = [
    say("From the left", "Desde la izquierda"),
    say("From the top", "Desde arriba"),
    say("From the right", "Desde la derecha"),
    say("From the bottom", "Desde abajo"),
];
pub(crate) const SHOW_WHOLE: Say = say("Show all of it", "Mostrarla toda");
pub(crate) const TAKE_AWAY: Say = say("Take it away", "Quitarla");
pub(crate) const CROP_TOO_MUCH: Say =
    say("Something of the picture must be left: type less.", "Algo de la imagen debe quedar: escriba menos.");
pub(crate) const NO_SUCH_SCALE: Say = say(
    "The picture would be of no sensible size: click two points farther apart.",
    "La imagen no tendría un tamaño razonable: haga clic en dos puntos más separados.",
);
pub(crate) const BAD_PERCENT: Say = say("Type a number from 0 to 100.", "Escriba un número de 0 a 100.");
pub(crate) const BAD_TURN: Say = say("Type degrees, such as 12.5.", "Escriba grados, por ejemplo 12.5.");

// Steps
pub(crate) const LAY_A_PICTURE: Say = say("lay a picture under the plan", "poner una imagen bajo la planta");
pub(crate) const MOVE_PICTURE: Say = say("move the picture", "mover la imagen");
pub(crate) const TURN_PICTURE: Say = say("turn the picture", "girar la imagen");
pub(crate) const SCALE_PICTURE: Say = say("scale the picture", "escalar la imagen");
pub(crate) const CROP_PICTURE: Say = say("crop the picture", "recortar la imagen");
pub(crate) const DIM_PICTURE: Say = say("dim the picture", "atenuar la imagen");
pub(crate) const CHANGE_PICTURE: Say = say("take the changed picture", "tomar la imagen cambiada");
pub(crate) const REMOVE_PICTURE: Say = say("take the picture away", "quitar la imagen");

pub(crate) fn not_decoded(path: &Path, wrong: &PictureInError) -> String {
    format!("{}: {wrong}", path.display())
}

/// The name of the file alone.
pub(crate) fn picture_name(path: &str) -> String {
    Path::new(path).file_name().map_or_else(|| path.to_owned(), |name| name.to_string_lossy().into_owned())
}

pub(crate) fn picture_words(path: &str) -> String {
    format!("{PICTURE}: {}", picture_name(path))
}

pub(crate) fn picture_laid(path: &str) -> String {
    tell!(
        "{} lies under the plan. Set its scale: click two points whose distance you know.",
        "{} está bajo la planta. Ponga su escala: haga clic en dos puntos cuya distancia conoce.",
        picture_name(path)
    )
}

/// "20' × 15' on the ground, 400 × 300 pixels"
pub(crate) fn picture_size(size: DVec2, pixels: [u32; 2], units: Units) -> String {
    let show = |metres: f64| Length::from_metres(metres).show(units);
    tell!(
        "{} × {} on the ground, {} × {} pixels",
        "{} × {} en el terreno, {} × {} pixeles",
        show(size.x),
        show(size.y),
        pixels[0],
        pixels[1]
    )
}

pub(crate) fn not_shown(path: &str) -> String {
    tell!("{} can't be shown", "No se puede mostrar {}", picture_name(path))
}

/// What to do with the picture now.
pub(crate) fn picture_hint(mode: usize, points: usize) -> &'static str {
    match (mode, points) {
        (2, 0) => pick(
            "Click a point, then another one whose distance from it you know.",
            "Haga clic en un punto, y luego en otro cuya distancia conoce.",
        ),
        (2, 1) => pick("Click the other point.", "Haga clic en el otro punto."),
        (2, _) => pick(
            "Type how far apart they are on the ground.",
            "Escriba qué tan separados están en el terreno.",
        ),
        (mode, _) => PICTURE_MODES_HELP.get(mode).map_or("", |help| help.now()),
    }
}
