//! Words about a deck as a tape measures it.

use chalkcourse_geometry::fit_up::{Along, Deck, Snap};
use chalkcourse_geometry::{Length, Units};
use chalkcourse_words::{Say, pick, say, tell};

pub(crate) const FIT_UP: Say = say("Fit-up of a deck", "Replanteo de un entablado");
pub(crate) const FACE_OF_WINDOW: Say = say("Face", "Faldón");
pub(crate) const FIT_UP_WHY: Say = say(
    "Type what the tape reads on the deck; what is drawn stands there until then. It is kept with the job. Planning figures: snap from a straight control line, and check on the roof.",
    "Escriba lo que lee la cinta sobre el entablado; hasta entonces vale lo dibujado. Se guarda con la \
        obra. Son cifras de planeación: trace desde una línea de control recta y compruebe en el techo.",
);
pub(crate) const MEASURED: Say = say("Measured on the deck", "Medido en el entablado");
pub(crate) const MEASURED_EAVE: Say = say("Width at the eave", "Ancho en el alero");
pub(crate) const MEASURED_HEAD: Say = say("Width at the head", "Ancho arriba");
pub(crate) const MEASURED_LEFT: Say = say("Left rake", "Borde izquierdo");
pub(crate) const MEASURED_RIGHT: Say = say("Right rake", "Borde derecho");
pub(crate) const MEASURED_RISING: Say = say("Rising diagonal", "Diagonal que sube");
pub(crate) const MEASURED_FALLING: Say = say("Falling diagonal", "Diagonal que baja");
pub(crate) const RISING_HELP: Say = say(
    "From the left end of the eave up to the right end of the head.",
    "Del extremo izquierdo del alero al extremo derecho de arriba.",
);
pub(crate) const FALLING_HELP: Say = say(
    "From the right end of the eave up to the left end of the head.",
    "Del extremo derecho del alero al extremo izquierdo de arriba.",
);
pub(crate) const SIDE_HELP: Say =
    say("From corner to corner, on the deck.", "De esquina a esquina, sobre el entablado.");
pub(crate) const SIDE_EAVE: Say = say("eave", "alero");
pub(crate) const SIDE_HEAD: Say = say("head", "arriba");
pub(crate) const SIDE_LEFT: Say = say("left", "izquierdo");
pub(crate) const SIDE_RIGHT: Say = say("right", "derecho");
pub(crate) const BOWS: Say = say("Bows at the middle of each edge", "Flecha en el centro de cada borde");
pub(crate) const BOW_EAVE: Say = say("Bow of the eave", "Flecha del alero");
pub(crate) const BOW_HEAD: Say = say("Bow of the head", "Flecha del borde superior");
pub(crate) const BOW_LEFT: Say = say("Bow of the left rake", "Flecha del borde izquierdo");
pub(crate) const BOW_RIGHT: Say = say("Bow of the right rake", "Flecha del borde derecho");
pub(crate) const BOW_HELP: Say = say(
    "From the string between the corners to the edge: into the deck is more than 0, out of it (type −) less.",
    "Del cordel entre las esquinas al borde: hacia el entablado es mayor que 0, hacia afuera (escriba \
        −) menor.",
);
pub(crate) const AS_DRAWN: Say = say("As drawn", "Como se dibujó");
pub(crate) const AS_DRAWN_HELP: Say = say(
    "Forget what was measured and begin with the face as drawn; undo takes it back.",
    "Olvidar lo medido y empezar con el faldón como se dibujó; deshacer lo revierte.",
);
pub(crate) const NOT_FOUR: Say = say(
    "This face has not four corners: type the widths, rakes and diagonals of the part that carries the array.",
    "Este faldón no tiene cuatro esquinas: escriba los anchos, bordes y diagonales de la parte que \
        lleva el arreglo.",
);
pub(crate) const STILL_TO_MEASURE: Say = say(
    "Still to measure: both widths, both rakes and both diagonals.",
    "Falta medir: ambos anchos, ambos bordes y ambas diagonales.",
);
pub(crate) const OUT_OF_SQUARE: Say = say("Out of square", "Fuera de escuadra");
pub(crate) const BASE_LINE: Say = say("Base line", "Línea base");
pub(crate) const LINE_UP: Say = say("Up from the eave", "Subiendo desde el alero");
pub(crate) const LINE_UP_HELP: Say = say(
    "Where the base rail line is, at its lower end. As the block lies now until you type one.",
    "Dónde está la línea del riel base, en su extremo más bajo. Como está ahora el bloque, hasta que \
        escriba otra.",
);
pub(crate) const LEVEL_WITH: Say = say("Level with", "A nivel con");
pub(crate) const THE_ROW: Say = say("The row", "La fila");
pub(crate) const MODULE_VARIES: Say = say("A module varies by", "Un módulo varía en");
pub(crate) const MODULE_VARIES_HELP: Say = say(
    "How much one may be larger or smaller than its sheet says. 1/32\" is half of the sixteenth that a tape is read to.",
    "Cuánto puede ser uno más grande o más chico que en su ficha. 1/32\" es la mitad del dieciseisavo \
        que se lee en una cinta.",
);
pub(crate) const REVEAL_VARIES: Say = say("A reveal is set to", "Una separación se pone a");
pub(crate) const REVEAL_VARIES_HELP: Say = say(
    "How far one reveal can be set wrong, either way.",
    "Cuánto puede fallar una separación, hacia cualquier lado.",
);
pub(crate) const SET_REVEAL: Say = say("Set this reveal", "Poner esta separación");
pub(crate) const SET_REVEAL_HELP: Say = say(
    "Give the block this reveal; undo takes it back.",
    "Dar al bloque esta separación; deshacer lo revierte.",
);
pub(crate) const COPY_FIT_UP: Say = say("Copy as text", "Copiar como texto");
pub(crate) const FIT_UP_COPIED: Say =
    say("The fit-up is on the clipboard.", "El replanteo está en el portapapeles.");

pub(crate) fn along(along: Along) -> &'static str {
    match along {
        Along::Eave => pick("the eave", "el alero"),
        Along::Head => pick("the head", "el borde superior"),
        Along::Between => pick("halfway between", "a media distancia"),
    }
}
pub(crate) fn measure_deck_of(face: &str) -> String {
    tell!("measure the deck of {face}", "medir el entablado de {face}")
}
pub(crate) fn set_reveal_of(block: &str) -> String {
    tell!("set the reveal of {block}", "poner la separación de {block}")
}

fn small(metres: f64, units: Units) -> String {
    Length::from_metres(metres.abs()).show_small(units)
}

/// How a deck is out of square, in sentences.
pub(crate) fn deck(deck: &Deck, square: f64, units: Units) -> Vec<String> {
    let lean = |name: &str, by: f64| {
        if by.abs() < 0.5 / 1000.0 {
            tell!("The {name} rake is square to the eave.", "El borde {name} está a escuadra con el alero.")
        } else {
            let way = if by > 0.0 { pick("right", "derecha") } else { pick("left", "izquierda") };
            tell!(
                "The {name} rake leans {} to the {way} at the head.",
                "El borde {name} se inclina {} hacia la {way} en la parte superior.",
                small(by, units)
            )
        }
    };
    let mut said = vec![
        lean(pick("left", "izquierdo"), deck.racked_left),
        lean(pick("right", "derecho"), deck.racked_right),
    ];
    said.push(if deck.head_out_of_parallel.abs() < 0.5 / 1000.0 {
        pick("Head and eave are parallel.", "El borde superior y el alero son paralelos.").to_owned()
    } else {
        let end = if deck.head_out_of_parallel > 0.0 {
            pick("right", "derecho")
        } else {
            pick("left", "izquierdo")
        };
        tell!(
            "The head is {} farther from the eave at the {end} end.",
            "El borde superior está {} más lejos del alero en el extremo {end}.",
            small(deck.head_out_of_parallel, units)
        )
    });
    said.push(tell!(
        "Square, with this eave and left rake, both diagonals would read {}.",
        "A escuadra, con este alero y borde izquierdo, ambas diagonales medirían {}.",
        Length::from_metres(square).show(units)
    ));
    if deck.closing.abs() > 0.5 / 1000.0 {
        said.push(tell!(
            "The measures disagree by {}; spread over the six, none was changed by more than {}.",
            "Las medidas discrepan en {}; repartido entre las seis, ninguna cambió más de {}.",
            small(deck.closing, units),
            small(deck.adjusted, units)
        ));
    }
    said
}

pub(crate) fn snap(snap: &Snap, units: Units) -> String {
    let show = |metres: f64| Length::from_metres(metres).show(units);
    tell!(
        "Snap it {} up at the left rake, {} at the right; at the middle that is {} from the edge itself.",
        "Trácela a {} en el borde izquierdo y a {} en el derecho; en el centro eso es {} desde el borde mismo.",
        show(snap.at_left),
        show(snap.at_right),
        show(snap.at_middle)
    )
}

/// "6" kept free at the left and 6" at the right."
pub(crate) fn kept_beside((left, right): (f64, f64), units: Units) -> String {
    tell!(
        "{} kept free at the left and {} at the right.",
        "{} libres a la izquierda y {} a la derecha.",
        small(left, units),
        small(right, units)
    )
}
pub(crate) fn picture(times: f64) -> String {
    if times > 1.0 {
        tell!(
            "Solid: as measured, what is out of square drawn {times:.0} times. Dashed: square.",
            "Continua: como se midió, lo que está fuera de escuadra dibujado {times:.0} veces. Punteada: a \
        escuadra."
        )
    } else {
        pick("Solid: as measured. Dashed: square.", "Continua: como se midió. Punteada: a escuadra.")
            .to_owned()
    }
}
