//! What plain fields are for: those for words and choices, by the words beside them. Fields for numbers bring their help with
//! unit, range and source.

use super::*;
use chalkcourse_words::{Say, say};

const HELP: [(Say, Say); 27] = [
    (
        NAME,
        say(
            "What people call it: on the drawing, in findings and on every sheet.",
            "Cómo lo llama la gente: en el dibujo, en los hallazgos y en cada hoja.",
        ),
    ),
    (
        ADDRESS,
        say(
            "Where the house stands, as it is printed on sheets.",
            "Dónde está la casa, como se imprime en las hojas.",
        ),
    ),
    (
        NOTES,
        say(
            "What the crew must know before it drives there; it is printed on the plan to build from.",
            "Lo que la cuadrilla debe saber antes de ir; se imprime en el plano para construir.",
        ),
    ),
    (
        UNITS,
        say(
            "How lengths are shown. Any unit can be typed: 12' 6 1/2\", 3.82 m.",
            "Cómo se muestran las longitudes. Se puede escribir cualquier unidad: 12' 6 1/2\", 3.82 m.",
        ),
    ),
    (
        MODULES_LIE,
        say(
            "Which side of a module runs along the eave; the kit says what it allows.",
            "Qué lado del módulo va a lo largo del alero; el kit dice qué permite.",
        ),
    ),
    (
        FACE,
        say(
            "The face that the block lies on; another one takes it there.",
            "El faldón en que está el bloque; otro lo lleva ahí.",
        ),
    ),
    (
        KIND,
        say(
            "What comes through the roof: the rule book has a clearance for each kind.",
            "Qué atraviesa el techo: el libro de reglas tiene una holgura para cada clase.",
        ),
    ),
    (
        SHAPE,
        say(
            "Round for pipes, a rectangle for curbs and chimneys, or the outline as drawn.",
            "Redonda para tubos, rectángulo para marcos y chimeneas, o el contorno como se dibujó.",
        ),
    ),
    (
        WAY,
        say(
            "How rows lie to one another when faces are filled; the kit says which joints it allows.",
            "Cómo quedan las filas entre sí al llenar faldones; el kit dice qué juntas permite.",
        ),
    ),
    (
        SIZE_BY,
        say(
            "Whether the size of the array is told in modules or in kilowatts of rated power.",
            "Si el tamaño del arreglo se dice en módulos o en kilovatios nominales.",
        ),
    ),
    (
        LAID_TO_BE,
        say(
            "Of all arrays of this size: the one with the least flashing around it, or with the cheapest.",
            "De todos los arreglos de este tamaño: el de menos tapajuntas alrededor, o el más barato.",
        ),
    ),
    (
        PART_KIND,
        say("What it is, in a word that others understand.", "Qué es, en una palabra que otros entiendan."),
    ),
    (BLOCK, say("Which block is spoken of.", "De qué bloque se habla.")),
    (
        REASON,
        say(
            "Why the line differs from the count; every output shows it.",
            "Por qué el renglón difiere de lo contado; aparece en cada salida.",
        ),
    ),
    (
        TAKE_INSTEAD,
        say(
            "Another part of the price list that may stand in for this one.",
            "Otra pieza de la lista de precios que puede ir en lugar de esta.",
        ),
    ),
    (
        LINE_PACKAGE,
        say(
            "What one of it is called, such as box, roll or piece.",
            "Cómo se llama una unidad, por ejemplo caja, rollo o pieza.",
        ),
    ),
    (
        LINE_GROUP,
        say("Under which heading it stands in the order.", "Bajo qué encabezado está en el pedido."),
    ),
    (
        LINE_STAGE,
        say(
            "The stage of work that can't start without it.",
            "La etapa de trabajo que no puede empezar sin él.",
        ),
    ),
    (DELIVERY_DATE, say("Year, month, day: 2026-11-26.", "Año, mes, día: 2026-11-26.")),
    (DELIVERY_BY, say("Who counted, and can be asked.", "Quién contó, y a quién se puede preguntar.")),
    (DELIVERY_NOTE, say("What the supplier must know of it.", "Lo que el proveedor debe saber de ello.")),
    (
        LEVEL_WITH,
        say(
            "What the base line runs level with where eave and head are not parallel.",
            "Con qué va a nivel la línea base donde alero y borde superior no son paralelos.",
        ),
    ),
    (
        FACE_OF_WINDOW,
        say(
            "Which face is spoken of; it is selected on the drawing too.",
            "De qué faldón se habla; también se selecciona en el dibujo.",
        ),
    ),
    (
        FORM,
        say(
            "What shape the face has: it says which lengths are needed.",
            "Qué forma tiene el faldón: dice qué longitudes se necesitan.",
        ),
    ),
    (
        TAPED_PITCH,
        say(
            "How the pitch was found: said, or measured with a level and a rule.",
            "Cómo se halló la pendiente: dicha, o medida con nivel y regla.",
        ),
    ),
    (
        COVERED_ANEW,
        say(
            "How much of the roof gets new shingles: it sets tear-off, underlayment and shingles.",
            "Cuánto del techo recibe tejas nuevas: determina retiro, membrana y tejas.",
        ),
    ),
    (
        WASTE_AS,
        say(
            "Handbooks give shingles 10 % on a gable, 15 % on a hip roof, more on one with valleys. What the cuts of these faces make is shown beside the line.",
            "Los manuales dan a las tejas 10 % en un techo de dos aguas, 15 % en uno de cuatro aguas, más si hay limahoyas. Lo que dan los cortes de estos faldones se muestra junto al renglón.",
        ),
    ),
];

/// The help of a field by the words beside it; empty for one that brings its own.
pub(crate) fn help_of(label: &str) -> &'static str {
    HELP.iter().find(|(words, _)| words.now() == label).map_or("", |(_, help)| help.now())
}
