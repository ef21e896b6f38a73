//! Words about parts of the house.

use chalkcourse_geometry::Length;
use chalkcourse_geometry::raise::Treatment;
use chalkcourse_job::{PartKind, RoofPart};
use chalkcourse_words::{Say, pick, say, tell};

pub(crate) const PARTS: Say = say("Parts of the house", "Partes de la casa");
pub(crate) const PART_HELP: Say = say(
    "A dormer, porch, ell or chimney: draw its footprint over the roof",
    "Una buhardilla, un porche, un ala o una chimenea: dibuje su huella sobre el techo",
);
pub(crate) const PART_KIND: Say = say("What it is", "Qué es");
pub(crate) const EAVES_HIGH: Say = say("Eaves", "Aleros");
pub(crate) const EAVES_HIGH_HELP: Say = say(
    "How high the roof is over the wall lines, above the level of the job.",
    "A qué altura está el techo sobre las líneas de los muros, desde el nivel de la obra.",
);
pub(crate) const CHIMNEY_TOP: Say = say("Top", "Remate");
pub(crate) const CHIMNEY_TOP_HELP: Say =
    say("Height of its top above the level of the job.", "Altura de su remate desde el nivel de la obra.");
pub(crate) const CRICKET: Say = say("With a cricket", "Con un desviador de agua");
pub(crate) const CRICKET_HELP: Say = say(
    "Two small faces upslope of it that part the water.",
    "Dos faldones pequeños pendiente arriba que apartan el agua.",
);
pub(crate) const CRICKET_PITCH: Say = say("Cricket", "Desviador");
pub(crate) const ALL_PITCHES: Say = say("Pitch, all slopes", "Pendiente, todas");
pub(crate) const ALL_OVERHANGS: Say = say("Overhang, all", "Voladizo, todos");
pub(crate) const MIXED: Say = say("various", "varios");
pub(crate) const PART_OVERHANG_HELP: Say = say(
    "How far the roof reaches beyond the wall, in plan.",
    "Cuánto sobresale el techo del muro, en planta.",
);
pub(crate) const OWN_EAVE: Say = say("Own eave", "Alero propio");
pub(crate) const OWN_EAVE_HELP: Say = say(
    "Height of this side's plane over its wall. Empty: as the part's.",
    "Altura del plano de este lado sobre su muro. Vacío: como el de la parte.",
);
pub(crate) const TREATMENTS: [Say; 3] =
    [say("slope", "vertiente"), say("gable", "hastial"), say("wall", "muro")];
pub(crate) const SIDES_OF_PART: Say = say("Sides, wall to wall", "Lados, de muro a muro");
pub(crate) const SET_FREE: Say = say("Set free", "Liberar");
pub(crate) const SET_FREE_HELP: Say = say(
    "Turn its faces, and those of the parts that it meets, into drawn ones that no part changes any more",
    "Convertir sus faldones, y los de las partes que toca, en faldones dibujados que ninguna parte \
        cambia más",
);
pub(crate) const DELETE_PART: Say = say("Delete the part", "Borrar la parte");
pub(crate) fn kinds_lost(count: usize) -> String {
    match count {
        1 => pick(
            "The kind of an edge that was set by hand went with its side. Undo brings it back.",
            "La clase de un borde puesta a mano se fue con su lado. Deshacer la recupera.",
        )
        .to_owned(),
        _ => tell!(
            "The kinds of {count} edges that were set by hand went with their sides. Undo brings them back.",
            "Las clases de {count} bordes puestas a mano se fueron con sus lados. Deshacer las recupera."
        ),
    }
}
pub(crate) const SHOW_PART: Say = say("Its part…", "Su parte…");
pub(crate) const FOLLOWS_PART: Say = say(
    "This face follows from a part of the house: change its side here.",
    "Este faldón resulta de una parte de la casa: cambie aquí su lado.",
);
pub(crate) const LAST_CORNERS_OF_PART: Say = say(
    "A part keeps its last three corners: delete the part instead.",
    "Una parte conserva sus últimas tres esquinas: borre mejor la parte.",
);
pub(crate) const TROUBLE_HERE: Say = say("here", "aquí");

/// The word for a kind, as on a button.
pub(crate) fn part_kind(kind: PartKind) -> &'static str {
    match kind {
        PartKind::Main => pick("Main", "Principal"),
        PartKind::Ell => pick("Ell", "Ala"),
        PartKind::Dormer => pick("Dormer", "Buhardilla"),
        PartKind::Porch => pick("Porch", "Porche"),
        PartKind::Chimney => pick("Chimney", "Chimenea"),
        PartKind::Other => pick("Other", "Otra"),
    }
}

pub(crate) fn part_heading(name: &str) -> String {
    tell!("Part {name}", "Parte {name}")
}

/// For screen readers: "Part Dormer, dormer, 4 sides".
pub(crate) fn part_words(part: &RoofPart) -> String {
    tell!(
        "Part {}, {}, {} sides",
        "Parte {}, {}, {} lados",
        part.name,
        part.kind.name(),
        part.sides.iter().map(Vec::len).sum::<usize>()
    )
}

pub(crate) fn part_corner_words(part: &str, corner: usize) -> String {
    tell!("Corner {} of part {part}", "Esquina {} de la parte {part}", corner + 1)
}

/// "slope 6:12", "gable", "wall".
pub(crate) fn treatment_words(treatment: Treatment) -> String {
    match treatment {
        Treatment::Slope(pitch) => format!("{} {pitch}", TREATMENTS[0]),
        Treatment::Gable => TREATMENTS[1].now().to_owned(),
        Treatment::Wall => TREATMENTS[2].now().to_owned(),
    }
}

/// What stands on a side, for a screen reader.
pub(crate) fn stands_on_side(side: usize) -> String {
    tell!("Stands on side {}", "Está sobre el lado {}", side + 1)
}

/// "Block A and Block B have no face under them now."
pub(crate) fn without_face(blocks: &[String]) -> String {
    let verb = if blocks.len() == 1 { pick("has", "tiene") } else { pick("have", "tienen") };
    tell!(
        "{} {verb} no face under {} now: it waits for the face to come back, or drag it to another one.",
        "{} ya no {verb} faldón debajo de {}: espera que el faldón vuelva, o arrástrelo a otro.",
        blocks.join(", "),
        if blocks.len() == 1 { pick("it", "sí") } else { pick("them", "sí") }
    )
}

/// "12' 6"" or that sides differ.
pub(crate) fn same_or_mixed(lengths: &[Length], show: impl Fn(Length) -> String) -> String {
    match lengths {
        [first, rest @ ..] if rest.iter().all(|other| other == first) => show(*first),
        _ => MIXED.now().to_owned(),
    }
}
pub(crate) const PART_HIDDEN: Say = say(
    "Nothing of it is seen: it lies under other parts. Raise its eaves, or move it.",
    "No se ve nada de ella: queda debajo de otras partes. Suba sus aleros, o muévala.",
);
pub(crate) const PART_NO_CRICKET: Say = say(
    "No cricket stands there: the chimney has no side that looks up a slope. Move it off the ridge.",
    "Ahí no cabe un desviador: la chimenea no tiene ningún lado que mire pendiente arriba. Quítela de \
        la cumbrera.",
);
