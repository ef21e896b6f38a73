//! Whether the roof as drawn holds together.

use crate::names::{Names, length, measured, sentence};
use crate::{RuleWords, Told};
use chalkcourse_geometry::raise::RaiseError;
use chalkcourse_geometry::{Tolerances, Units};
use chalkcourse_job::{FaceId, Subject};
use chalkcourse_rules::{Fault, Finding};
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULES: &[RuleWords] = &[
    RuleWords {
        code: "part",
        title: say("Every part of the house carries a roof", "Cada parte de la casa lleva un techo"),
        reason: say(
            "A part that can't be raised has no faces: nothing on it is counted.",
            "Una parte que no se puede levantar no tiene faldones: nada de ella se cuenta.",
        ),
        geometry: Some(say(
            "geometry: no roof closes over this footprint",
            "geometría: ningún techo cierra sobre esta huella",
        )),
    },
    RuleWords {
        code: "outline",
        title: say(
            "Outlines of faces enclose one area once",
            "Los contornos de los faldones encierran un área una sola vez",
        ),
        reason: say(
            "Lengths, areas and edges of an outline that folds over itself mean nothing.",
            "Longitudes, áreas y bordes de un contorno que se cruza a sí mismo no significan nada.",
        ),
        geometry: Some(say(
            "geometry: such an outline has no area",
            "geometría: un contorno así no tiene área",
        )),
    },
    RuleWords {
        code: "height-gap",
        title: say(
            "Faces that meet in plan meet in height",
            "Los faldones que se juntan en planta se juntan en altura",
        ),
        reason: say(
            "A roof with a gap in it was measured or drawn wrong, and so are its ridges and areas.",
            "Un techo con un escalón se midió o se dibujó mal, y también sus cumbreras y áreas.",
        ),
        geometry: Some(say(
            "geometry: faces of one roof share their edges, within 10 mm",
            "geometría: los faldones de un techo comparten sus bordes, a menos de 10 mm",
        )),
    },
    RuleWords {
        code: "near-miss",
        title: say("Edges that all but meet, meet", "Los bordes que casi se juntan, se juntan"),
        reason: say(
            "Two edges a hand apart are counted as two, and the ridge or valley between them is lost.",
            "Dos bordes a un palmo cuentan como dos, y la cumbrera o limahoya entre ellos se pierde.",
        ),
        geometry: Some(say(
            "geometry: sides beside each other within 150 mm were meant to be one",
            "geometría: lados a menos de 150 mm uno de otro debían ser uno solo",
        )),
    },
    RuleWords {
        code: "counted-twice",
        title: say("No roof is counted twice", "Ningún techo se cuenta dos veces"),
        reason: say(
            "Where two faces lie over the same ground, their area and their shingles are ordered twice.",
            "Donde dos faldones están sobre el mismo suelo, su área y sus tejas se piden dos veces.",
        ),
        geometry: Some(say(
            "geometry: two decks can't have one place",
            "geometría: dos entablados no pueden tener un mismo lugar",
        )),
    },
    RuleWords {
        code: "no-home",
        title: say("Penetrations lie on a face", "Las penetraciones están sobre un faldón"),
        reason: say(
            "No module keeps clear of what lies beside the roof: it was put in the wrong place, or a face is missing.",
            "Ningún módulo se aparta de lo que está fuera del techo: se puso en mal lugar, o falta un faldón.",
        ),
        geometry: Some(say(
            "geometry: it is measured against nothing",
            "geometría: no hay contra qué medirla",
        )),
    },
    RuleWords {
        code: "lost-sides",
        title: say(
            "What was decided for a side has its side",
            "Lo que se decidió para un lado tiene su lado",
        ),
        reason: say(
            "A kind that was set by hand, or a tape's reading, is of one side of a face and never of another.",
            "Un tipo puesto a mano, o una lectura de cinta, es de un lado del faldón y nunca de otro.",
        ),
        geometry: Some(say(
            "geometry: the outline has no such side any more",
            "geometría: el contorno ya no tiene ese lado",
        )),
    },
];

pub(crate) fn lost_sides(names: &Names<'_>, finding: &Finding, overrules: usize, taped: bool) -> Told {
    let kinds = if overrules == 1 {
        pick("the kind of a side that was set by hand", "el tipo de un lado, puesto a mano").to_owned()
    } else {
        tell!(
            "the kinds of {overrules} sides that were set by hand",
            "los tipos de {overrules} lados, puestos a mano"
        )
    };
    let tape = pick("what the tape read", "lo que leyó la cinta");
    let lost = match (overrules, taped) {
        (0, _) => tape.to_owned(),
        (_, false) => kinds,
        (_, true) => tell!("{kinds}, and {tape}", "{kinds}, y {tape}"),
    };
    Told {
        message: tell!(
            "{}: {lost} counts for nothing, since the outline has no such side any more. Set it again where it belongs.",
            "{}: {lost} no cuenta, porque el contorno ya no tiene ese lado. Póngalo de nuevo donde corresponda.",
            sentence(&names.face_of(finding))
        ),
        measured: pick("sides that are gone", "lados que ya no están").to_owned(),
        required: pick("sides of the outline", "lados del contorno").to_owned(),
    }
}

fn part_name(names: &Names<'_>, finding: &Finding) -> String {
    let Subject::Part(id, _) = &finding.key.subject else { return String::new() };
    match names.job.part(*id) {
        Some(part) if !part.name.trim().is_empty() => {
            tell!("Part \u{201c}{}\u{201d}", "La parte \u{201c}{}\u{201d}", part.name)
        }
        _ => tell!("Part {}", "La parte {}", id),
    }
}

fn of_part(message: String, measured: &str) -> Told {
    let required = pick("a roof over all of its ground", "un techo sobre todo su suelo").to_owned();
    Told { message, measured: measured.to_owned(), required }
}

pub(crate) fn not_raised(names: &Names<'_>, finding: &Finding, why: &RaiseError) -> Told {
    let name = part_name(names, finding);
    let message = tell!(
        "{name} carries no roof: {why}. Nothing on it is counted until then.",
        "{name} no lleva techo: {why}. Hasta entonces nada de ella se cuenta."
    );
    of_part(message, pick("no roof", "sin techo"))
}

pub(crate) fn hidden(names: &Names<'_>, finding: &Finding) -> Told {
    let name = part_name(names, finding);
    let message = tell!(
        "{name} lies under other parts, so nothing of it is seen. Raise its eaves, or take it away.",
        "{name} queda debajo de otras partes, así que no se ve nada de ella. Suba sus aleros, o quítela."
    );
    of_part(message, pick("no roof that is seen", "ningún techo visible"))
}

pub(crate) fn no_cricket(names: &Names<'_>, finding: &Finding) -> Told {
    let name = part_name(names, finding);
    let message = tell!(
        "{name} has no side that looks up a slope, so no cricket stands there. Move it off the ridge, or do without \
         a cricket.",
        "{name} no tiene ningún lado que mire pendiente arriba, así que ahí no cabe un desviador. Quítela \
         de la cumbrera, o prescinda del desviador."
    );
    of_part(message, pick("no cricket", "sin desviador"))
}

pub(crate) fn outline(
    names: &Names<'_>,
    finding: &Finding,
    fault: Fault,
    ring: usize,
    corner: usize,
) -> Told {
    let ring_name = if ring == 0 {
        pick("the outline", "el contorno").to_owned()
    } else {
        tell!("hole {ring}", "el hueco {ring}")
    };
    let wrong = match fault {
        Fault::NoNumber => tell!(
            "corner {} of {} is at no place within 100 km. Set it again",
            "la esquina {} de {} no está en ningún lugar a menos de 100 km. Póngala otra vez",
            corner + 1,
            ring_name
        ),
        Fault::TooFewCorners => tell!(
            "{} has less than three corners. Draw the rest",
            "{} tiene menos de tres esquinas. Dibuje las demás",
            ring_name
        ),
        Fault::RepeatedCorner => tell!(
            "corner {} of {} lies on the one before it. Take one of the two away",
            "la esquina {} de {} está sobre la anterior. Quite una de las dos",
            corner + 1,
            ring_name
        ),
        Fault::NoArea => {
            tell!(
                "{} encloses nothing. Pull its corners apart",
                "{} no encierra nada. Separe sus esquinas",
                ring_name
            )
        }
        Fault::FoldsOver => pick(
            "the outline folds over itself. Move a corner so that no sides cross",
            "el contorno se cruza a sí mismo. Mueva una esquina para que ningún lado se cruce",
        )
        .into(),
        Fault::HoleOutside => tell!(
            "{} does not lie inside the face. Move it in or take it away",
            "{} no está dentro del faldón. Métalo o quítelo",
            ring_name
        ),
    };
    let measured = match fault {
        Fault::NoNumber => pick("a corner at no place", "una esquina en ningún lugar"),
        Fault::TooFewCorners => pick("too few corners", "muy pocas esquinas"),
        Fault::RepeatedCorner => pick("a repeated corner", "una esquina repetida"),
        Fault::NoArea => pick("no area", "ningún área"),
        Fault::FoldsOver => pick("folds over", "se cruza"),
        Fault::HoleOutside => pick("a hole outside", "un hueco afuera"),
    };
    Told {
        message: format!("{}: {wrong}.", sentence(&names.face_of(finding))),
        measured: measured.to_owned(),
        required: pick(
            "an outline that encloses one area once",
            "un contorno que encierra un área una sola vez",
        )
        .into(),
    }
}

pub(crate) fn height_gap(
    names: &Names<'_>,
    finding: &Finding,
    lower: FaceId,
    upper: FaceId,
    even: bool,
) -> Told {
    let apart = names.length(measured(finding));
    let uneven = if even {
        String::new()
    } else {
        sentence(pick(
            "the gap is not the same all along, so no lift closes it: check the pitch, the way of fall and the eave heights. ",
            "el escalón no es igual en toda su longitud, así que subir uno no lo cierra: revise la pendiente, \
             la caída y las alturas de alero. ",
        ))
    };
    Told {
        message: tell!(
            "{} does not meet {}: where they share an edge it lies {apart} lower. {uneven}If the step is meant, decide the \
             edge's kind.",
            "{} no se junta con {}: donde comparten un borde está {apart} más abajo. {uneven}Si el escalón es a \
             propósito, decida la clase del borde.",
            sentence(&names.face(lower)),
            names.face(upper)
        ),
        measured: tell!("{apart} apart", "{apart} de diferencia"),
        required: tell!("within {}", "a menos de {}", length(Tolerances::default().height, names.units())),
    }
}

pub(crate) fn near_miss(names: &Names<'_>, finding: &Finding, face: FaceId, other: FaceId) -> Told {
    let apart = names.length(measured(finding));
    Told {
        message: tell!(
            "An edge of {} runs {apart} beside an edge of {} and does not meet it. Move the corners of one onto the \
             other; if the gap is meant, waive this.",
            "Un borde de {} corre a {apart} de un borde de {} y no se junta con él. Mueva las esquinas de \
             uno sobre el otro; si el espacio es a propósito, dispense esto.",
            names.face(face),
            names.face(other)
        ),
        measured: sentence(&tell!("{apart} apart", "{apart} de separación")),
        required: pick("one edge, or two that lie well apart", "un solo borde, o dos bien separados").into(),
    }
}

pub(crate) fn counted_twice(names: &Names<'_>, finding: &Finding, face: FaceId, other: FaceId) -> Told {
    let area = measured(finding);
    let area = match names.units() {
        Units::FeetInches => format!("{:.1} ft²", area / 0.3048f64.powi(2)),
        Units::Metric => format!("{area:.2} m²"),
    };
    Told {
        message: tell!(
            "{area} of plan lie under both {} and {}, and are counted twice. Pull one face back to where they meet.",
            "{area} de planta están bajo {} y también bajo {}, y se cuentan dos veces. Retire un faldón \
             hasta donde se juntan.",
            names.face(face),
            names.face(other)
        ),
        measured: area,
        required: pick("no ground under two faces", "ningún suelo bajo dos faldones").into(),
    }
}

pub(crate) fn no_home(names: &Names<'_>, finding: &Finding) -> Told {
    let what = match finding.place.penetration.and_then(|id| names.job.penetration(id)) {
        Some(it) if it.name.trim().is_empty() => format!("{} {}", it.kind.name(), it.id),
        _ => names.penetration(finding.place.penetration),
    };
    Told {
        message: tell!(
            "{} has its middle on no sound face, so nothing keeps clear of it. Move it onto a face, or draw the face that it \
             comes through.",
            "El centro de {} no está en ningún faldón válido, así que nada se aparta de ella. Muévala a un \
             faldón, o dibuje el faldón que atraviesa.",
            sentence(&what)
        ),
        measured: pick("on no face", "en ningún faldón").into(),
        required: pick("on a face", "en un faldón").into(),
    }
}
