//! Every word that the window says, in one place: so that it can be read through, and put into another language.
//!
//! - here: words that never change
//! - `formats`: places on the globe, buildings that come in and go out in open formats
//! - `rules`: the house, the rule book, the checklist, costs
//! - `arrange`, `coursing`, `fit_up`: filling and arranging, courses, a deck as measured
//! - `lesson`: a first job, step by step; the words of the trade
//! - `order`: the order's window
//! - `part`: parts of the house
//! - `picture`: the picture under the plan
//! - `taped`: a face from measurements
//! - `solid`: the house in space, the view for its owner
//! - `drawing`, `files`, `lists`, `steps`: sentences with names and numbers in them

use chalkcourse_words::{Say, say};
mod arrange;
mod coursing;
mod drawing;
mod files;
mod fit_up;
mod formats;
mod help;
mod lesson;
mod limits;
mod lists;
mod order;
mod part;
mod picture;
mod rules;
mod solid;
mod steps;
mod taped;

pub(crate) use arrange::*;
pub(crate) use coursing::*;
pub(crate) use drawing::*;
pub(crate) use files::*;
pub(crate) use fit_up::*;
pub(crate) use formats::*;
pub(crate) use help::help_of;
pub(crate) use lesson::*;
pub(crate) use limits::*;
pub(crate) use lists::*;
pub(crate) use order::*;
pub(crate) use part::*;
pub(crate) use picture::*;
pub(crate) use rules::*;
pub(crate) use solid::*;
pub(crate) use steps::*;
pub(crate) use taped::*;

// Commands
pub(crate) const MENU_FILE: Say = say("File", "Archivo");
pub(crate) const MENU_EDIT: Say = say("Edit", "Edición");
pub(crate) const MENU_VIEW: Say = say("View", "Ver");
pub(crate) const MENU_HELP: Say = say("Help", "Ayuda");
pub(crate) const NEW: Say = say("New job", "Obra nueva");
pub(crate) const OPEN: Say = say("Open job…", "Abrir obra…");
pub(crate) const OPEN_RECENT: Say = say("Open recent", "Abrir reciente");
pub(crate) const OPEN_SAMPLE: Say = say("Open the sample", "Abrir el ejemplo");
pub(crate) const SAVE: Say = say("Save", "Guardar");
pub(crate) const SAVE_AS: Say = say("Save as…", "Guardar como…");
pub(crate) const EXPORT: Say = say("Export", "Exportar");
pub(crate) const EXPORT_HELP: Say = say(
    "Write what to order: to print, for a spreadsheet, to read, or for another program; what the crew prints; or the plan for maps, the house for 3-D programs",
    "Escribir lo que se pide: para imprimir, para una hoja de cálculo, para leer o para otro programa; \
        lo que imprime la cuadrilla; o la planta para mapas, la casa para programas 3-D",
);
pub(crate) const EXPORT_WORKBOOK: Say = say("Order as XLSX…", "Pedido como XLSX…");
pub(crate) const EXPORT_BY_PART: Say = say("Order to print, by part…", "Pedido para imprimir, por pieza…");
pub(crate) const EXPORT_BY_STAGE: Say = say("Order to print, by stage…", "Pedido para imprimir, por etapa…");
pub(crate) const PRINT_BUILD: Say =
    say("Plan to build from, to print…", "Plano para construir, para imprimir…");
pub(crate) const EXPORT_SVG: Say = say("Plan as SVG…", "Planta como SVG…");
pub(crate) const COPY_PICTURE: Say = say("Copy the drawing as a picture", "Copiar el dibujo como imagen");
pub(crate) const COPY_SVG: Say = say("Copy the drawing as SVG", "Copiar el dibujo como SVG");
pub(crate) const COPY_STEPS: Say =
    say("Copy the steps since opening as edits", "Copiar los pasos desde que se abrió como ediciones");
pub(crate) const SAVE_STEPS: Say =
    say("Steps since opening as edits…", "Pasos desde que se abrió como ediciones…");
pub(crate) const STEPS_COPIED: Say = say(
    "The steps are on the clipboard as edits: done again on the job as it was opened, they make this one.",
    "Los pasos están en el portapapeles como ediciones: repetidos sobre la obra tal como se abrió, hacen esta.",
);
pub(crate) const CANT_COPY_STEPS: Say =
    say("The steps could not be written", "No se pudieron escribir los pasos");
pub(crate) const PICTURE_COPIED: Say =
    say("The drawing is on the clipboard.", "El dibujo está en el portapapeles.");
pub(crate) const SVG_COPIED: Say =
    say("The drawing is on the clipboard as SVG.", "El dibujo está en el portapapeles como SVG.");
pub(crate) const PRINT_CHECKLIST: Say = say("Checklist to print…", "Lista de verificación para imprimir…");
pub(crate) const PRINT_PALLET: Say = say("Pallet list to print…", "Lista de tarimas para imprimir…");
pub(crate) const PRINT_CLAIM: Say = say("Delivery claim to print…", "Reclamo de entrega para imprimir…");
pub(crate) const PRINT: Say = say("Print…", "Imprimir…");
pub(crate) const PRINT_HELP: Say = say(
    "Write a PDF of this list, with boxes to tick",
    "Escribir un PDF de esta lista, con casillas para marcar",
);
pub(crate) const EXPORT_TEXT: Say = say("Order as text…", "Pedido como texto…");
pub(crate) const EXPORT_CSV: Say = say("Order as CSV…", "Pedido como CSV…");
pub(crate) const EXPORT_JSON: Say = say("Order as JSON…", "Pedido como JSON…");
pub(crate) const LOAD_KIT: Say = say("Load a kit…", "Cargar un kit…");
pub(crate) const LOAD_RULE_BOOK: Say = say("Load a rule book…", "Cargar un libro de reglas…");
pub(crate) const LOAD_PRICES: Say = say("Load a price list…", "Cargar una lista de precios…");
pub(crate) const QUIT: Say = say("Quit", "Salir");
pub(crate) const UNDO: Say = say("Undo", "Deshacer");
pub(crate) const REDO: Say = say("Redo", "Rehacer");
pub(crate) const DELETE: Say = say("Delete what is selected", "Borrar lo seleccionado");
pub(crate) const FIT: Say = say("Fit", "Ajustar");
pub(crate) const FIT_HELP: Say = say("Show all of it", "Mostrar todo");
pub(crate) const PLAN_VIEW: Say = say("Plan", "Planta");
pub(crate) const PLAN_HELP: Say =
    say("The roof from above, north up  (1)", "El techo desde arriba, el norte hacia arriba  (1)");
pub(crate) const FACE_ON_VIEW: Say = say("Face-on", "De frente");
pub(crate) const FACE_ON_HELP: Say =
    say("One face true to size, its eave down  (2)", "Un faldón en tamaño real, su alero abajo  (2)");
pub(crate) const FACE_SHOWN: Say = say("Face shown", "Faldón mostrado");
pub(crate) const COURSES_IN_PLAN: Say = say("Course lines in plan", "Líneas de hilada en planta");
pub(crate) const THEME: Say = say("Dark or light", "Oscuro o claro");
pub(crate) const TO_LIGHT: Say = say("Light", "Claro");
pub(crate) const TO_DARK: Say = say("Dark", "Oscuro");
pub(crate) const FEET_INCHES: Say = say("Feet and inches", "Pies y pulgadas");
pub(crate) const METRIC: Say = say("Metric", "Métrico");
pub(crate) const CAUTIONS: Say = say("Before anyone climbs", "Antes de que nadie suba");
pub(crate) const KEYS: Say = say("Keys", "Teclas");
pub(crate) const FIND_COMMAND: Say = say("Find a command…", "Buscar una orden…");
pub(crate) const FIND_FIELD: Say = say("What to do", "Qué hacer");
pub(crate) const FIND_HINT: Say =
    say("Type a word of what you want to do", "Escriba una palabra de lo que quiere hacer");
pub(crate) const FIND_NOTHING: Say = say(
    "No command has these words. Try one of them alone.",
    "Ninguna orden tiene estas palabras. Pruebe una sola de ellas.",
);
pub(crate) const FIND_NOT_NOW: Say = say(
    "There is nothing that this could be done to at present.",
    "Por ahora no hay nada a lo que esto se pueda hacer.",
);
pub(crate) const OK: Say = say("OK", "Aceptar");
pub(crate) const CLOSE: Say = say("Close", "Cerrar");
pub(crate) const CANCEL: Say = say("Cancel", "Cancelar");

/// Keys that are no commands.
pub(crate) const OTHER_KEYS: [(Say, Say); 10] = [
    (say("Nudge by 1 in", "Mover 1 in"), say("Arrow keys", "Flechas")),
    (say("Nudge by 1 ft", "Mover 1 ft"), say("Shift + arrow keys", "Mayús + flechas")),
    (say("Nudge by 1/16 in", "Mover 1/16 in"), say("Alt + arrow keys", "Alt + flechas")),
    (
        say("Switch the selected module", "Conmutar el módulo seleccionado"),
        say("X or double-click", "X o doble clic"),
    ),
    (
        say("Hold several things", "Seleccionar varias cosas"),
        say("Drag a box, or Shift + click", "Arrastre un recuadro, o Mayús + clic"),
    ),
    (
        say("Add a corner to a side", "Agregar una esquina a un lado"),
        say("Double-click the side", "Doble clic en el lado"),
    ),
    (say("Drag without snapping", "Arrastrar sin ajuste"), say("Ctrl or Alt", "Ctrl o Alt")),
    (say("Drag one face's corner alone", "Arrastrar la esquina de un solo faldón"), say("Shift", "Mayús")),
    (
        say(
            "Let go, give up a drag, or close a window",
            "Soltar, abandonar un arrastre o cerrar una ventana",
        ),
        say("Esc", "Esc"),
    ),
    (
        say("Pan", "Desplazar"),
        say("Space, middle or right drag", "Espacio, arrastre con botón central o derecho"),
    ),
];

/// A key with what is held beside it, as it stands on the keyboards of the language.
pub(crate) fn key_words(ctx: &egui::Context, key: &egui::KeyboardShortcut) -> String {
    let words = ctx.format_shortcut(key);
    let spanish = [
        ("Shift", "Mayús"),
        ("Right", "Derecha"),
        ("Left", "Izquierda"),
        ("Down", "Abajo"),
        ("Up", "Arriba"),
        ("Delete", "Supr"),
    ];
    if chalkcourse_words::spoken() != chalkcourse_words::Language::SPANISH {
        return words;
    }
    let named = |part| spanish.iter().find(|(name, _)| *name == part).map_or(part, |(_, own)| *own);
    words.split('+').map(named).collect::<Vec<_>>().join("+")
}

// Tools
pub(crate) const TOOL_SELECT: Say = say("Select", "Seleccionar");
pub(crate) const TOOL_FACE: Say = say("Draw face", "Dibujar faldón");
pub(crate) const TOOL_PENETRATION: Say = say("Penetration", "Penetración");
pub(crate) const TOOL_BLOCK: Say = say("Block", "Bloque");
pub(crate) const TOOL_TAPE: Say = say("Tape", "Cinta");
pub(crate) const NEXT_LENGTH: Say = say("Length of this side", "Longitud de este lado");
pub(crate) const ANGLE: Say = say("Angle", "Ángulo");
pub(crate) const ANGLE_HELP: Say = say(
    "To the side before, on the side where you point: 90 is square, 135 a bay. Empty: as you point.",
    "Con el lado anterior, hacia donde apunta: 90 es a escuadra, 135 un mirador. Vacío: como apunte.",
);
pub(crate) const BEARING: Say = say("Bearing", "Rumbo");
pub(crate) const BEARING_HELP: Say = say(
    "Of the first side by the compass: 0 is north, 90 east. Empty: as you point.",
    "Del primer lado según la brújula: 0 es norte, 90 este. Vacío: como apunte.",
);
pub(crate) const SIZE: Say = say("Size", "Medida");
pub(crate) const CUT_SIZE: Say = say("Size of the notch", "Medida del recorte");
pub(crate) const TWO_LENGTHS: Say = say(
    "Type both lengths, across and up: 30' x 48'.",
    "Escriba las dos longitudes, a lo ancho y hacia arriba: 30' x 48'.",
);
pub(crate) const NO_ANGLE: Say =
    say("Type the angle in degrees, such as 90 or 22.5.", "Escriba el ángulo en grados, como 90 o 22.5.");
pub(crate) const SHAPE_NOT_WHOLE: Say = say(
    "Set the corner across, or type the size and Enter.",
    "Marque la esquina opuesta, o escriba la medida y Entrar.",
);
pub(crate) const SQUARE_TO_FIRST: Say = say("square to the first side", "a escuadra con el primer lado");
pub(crate) const SQUARE_IT: Say = say("Square it", "Escuadrarlo");
pub(crate) const SQUARE_IT_HELP: Say = say(
    "Turns sides that are nearly square onto the two directions of the house. Slanted sides stay as they are.",
    "Gira los lados casi a escuadra hasta las dos direcciones de la casa. Los lados inclinados se quedan como están.",
);
pub(crate) const CLOSE_FACE: Say = say("Close the outline", "Cerrar el contorno");
pub(crate) const TAKE_BACK_CORNER: Say = say("Take back a corner", "Quitar una esquina");

// The drawing
pub(crate) const NORTH: &str = "N";
pub(crate) const EAST_WEST: Say = say("due east–west", "exactamente este–oeste");
pub(crate) const NORTH_SOUTH: Say = say("due north–south", "exactamente norte–sur");
pub(crate) const DIAGONAL: Say = say("at 45°", "a 45°");
pub(crate) const LEVEL_WITH_START: Say = say("in line with a corner", "en línea con una esquina");
pub(crate) const CLOSES: Say = say("closes the face", "cierra el faldón");
pub(crate) const CENTRED: Say = say("in the middle of the face", "en el centro del faldón");
pub(crate) const NO_DIRECTION: Say = say(
    "Point where the side should go, then press Enter.",
    "Apunte hacia donde debe ir el lado y oprima Entrar.",
);
pub(crate) const LENGTH_NOT_POSITIVE: Say = say("A side is longer than 0.", "Un lado mide más de 0.");
pub(crate) const THREE_CORNERS: Say = say(
    "An outline has at least three corners: click another one.",
    "Un contorno tiene al menos tres esquinas: haga clic en otra.",
);
pub(crate) const NO_AREA: Say = say(
    "These corners lie on one line and make no outline: take one back.",
    "Estas esquinas están sobre una recta y no forman contorno: quite una.",
);
pub(crate) const HOLE_IN_NO_FACE: Say = say(
    "A hole lies inside one face, a courtyard inside the walls of one part: take corners back until all are.",
    "Un hueco está dentro de un faldón, un patio dentro de los muros de una parte: quite esquinas \
        hasta que todas lo estén.",
);
pub(crate) const NO_FACE_HERE: Say = say(
    "There is no face here: press on one to place a block.",
    "Aquí no hay faldón: oprima sobre uno para colocar un bloque.",
);
pub(crate) const NO_FACE_YET: Say = say(
    "There is no face to show yet: draw one first.",
    "Todavía no hay faldón que mostrar: dibuje uno primero.",
);
pub(crate) const LAST_CORNERS: Say = say(
    "A face keeps its last three corners: delete the face instead.",
    "Un faldón conserva sus últimas tres esquinas: borre mejor el faldón.",
);
pub(crate) const DELETE_ON_DRAWING: Say = say(
    "Delete is for what is held on the drawing: press there first.",
    "Suprimir es para lo seleccionado en el dibujo: pulse ahí primero.",
);
pub(crate) const SWITCH_ON: Say = say("Switch this module on", "Volver a poner este módulo");
pub(crate) const SWITCH_OFF: Say = say("Switch this module off", "Quitar este módulo");
pub(crate) const SWITCH_ALL_ON: Say = say("Switch all modules on", "Volver a poner todos los módulos");
pub(crate) const ADD_CORNER: Say = say("Add a corner here", "Agregar aquí una esquina");
pub(crate) const DELETE_CORNER: Say = say("Delete this corner", "Borrar esta esquina");
pub(crate) const DELETE_BLOCK: Say = say("Delete the block", "Borrar el bloque");
pub(crate) const DELETE_PENETRATION: Say = say("Delete the penetration", "Borrar la penetración");
pub(crate) const DELETE_FACE: Say = say("Delete the face", "Borrar el faldón");
pub(crate) const SHOW_FACE_ON: Say = say("Show face-on", "Mostrar de frente");
pub(crate) const PLACE_BLOCK: Say = say("Place a block", "Colocar un bloque");

// First steps
pub(crate) const EMPTY_TITLE: Say = say("Start with the roof", "Empiece por el techo");
pub(crate) const EMPTY_STEPS: [Say; 3] = [
    say(
        "1.  Draw the walls: one corner, and the size, such as 48' x 30'. The roof is raised over them, with gables or hips. \
        Or draw it face by face.",
        "1.  Dibuje los muros: una esquina y la medida, como 48' x 30'. El techo se levanta sobre ellos, con hastiales o \
        limatesas. O dibújelo faldón por faldón.",
    ),
    say(
        "2.  Mark what comes through the roof: vents, pipes, chimneys.",
        "2.  Marque lo que atraviesa el techo: respiraderos, tubos, chimeneas.",
    ),
    say(
        "3.  Place a block of modules and drag it. Findings and quantities follow as you move.",
        "3.  Coloque un bloque de módulos y arrástrelo. Los hallazgos y las cantidades siguen su movimiento.",
    ),
];
pub(crate) const RAISE_OVER_WALLS: Say =
    say("Raise a roof over the walls", "Levantar un techo sobre los muros");
pub(crate) const EMPTY_DRAW: Say = say("Draw a face", "Dibujar un faldón");
pub(crate) const EMPTY_OPEN: Say = say("Open a job…", "Abrir una obra…");

// Fields
pub(crate) const NEW_JOB: Say = say("New job", "Obra nueva");
pub(crate) const THE_JOB: Say = say("The job", "La obra");
pub(crate) const NAME: Say = say("Name", "Nombre");
pub(crate) const ADDRESS: Say = say("Address", "Dirección");
pub(crate) const NOTES: Say = say("Crew notes", "Notas");
pub(crate) const UNITS: Say = say("Units", "Unidades");
pub(crate) const KIT: Say = say("Kit", "Kit");
pub(crate) const RULE_BOOK: Say = say("Rule book", "Libro de reglas");
pub(crate) const PRICES: Say = say("Price list", "Lista de precios");
pub(crate) const LOAD: Say = say("Load…", "Cargar…");
pub(crate) const NO_NAME: Say = say("A name is needed.", "Se necesita un nombre.");
pub(crate) const BAD_COUNT: Say =
    say("Type a whole number from 1 to 1000.", "Escriba un número entero de 1 a 1000.");
pub(crate) const PITCH: Say = say("Pitch", "Pendiente");
pub(crate) const PITCH_HELP: Say = say(
    "Rise in 12 of run: 6:12. An angle (26.6°) or a slope (50%) will do too.",
    "Lo que sube en 12 de avance: 6:12. También vale un ángulo (26.6°) o un porcentaje (50%).",
);
pub(crate) const DOWNSLOPE: Say = say("Downslope", "Cae hacia");
pub(crate) const DOWNSLOPE_HELP: Say = say(
    "The way that water runs: degrees clockwise from north, or N, NE, E …",
    "Hacia donde corre el agua: grados desde el norte en el sentido del reloj, o N, NE, E …",
);
pub(crate) const HEIGHT: Say = say("Eave height", "Altura del alero");
pub(crate) const HEIGHT_HELP: Say = say(
    "Height of the face at its lower left corner, above any level that is the same for the whole job.",
    "Altura del faldón en su esquina inferior izquierda, sobre cualquier nivel que sea el mismo en \
        toda la obra.",
);
pub(crate) const EXPOSURE: Say = say("Exposure", "Exposición");
pub(crate) const EXPOSURE_HELP: Say = say(
    "How much of each course is to the weather, up the slope. Usually 5\" or 5 5/8\" (common practice, no source).",
    "Cuánto de cada hilada queda a la intemperie, pendiente arriba. De 5\" o 5 5/8\" es lo usual \
        (práctica común, sin fuente).",
);
pub(crate) const FIRST_COURSE: Say = say("First course line", "Primera línea de hilada");
pub(crate) const FIRST_COURSE_HELP: Say =
    say("From the eave up to the first course line.", "Del alero a la primera línea de hilada.");
pub(crate) const SIDES: Say = say("Sides, true length", "Lados, longitud real");
pub(crate) const WORKED_OUT: Say = say("worked out from the roof", "calculado según el techo");
pub(crate) const KIND_HELP: Say = say(
    "The kind follows from the faces. Choose one here only where the roof is otherwise.",
    "La clase resulta de los faldones. Elija una aquí solo donde el techo es distinto.",
);
pub(crate) const FACE_NOT_SOUND: Say = say(
    "The outline folds over itself or has no area: drag its corners apart, or undo.",
    "El contorno se cruza a sí mismo o no tiene área: separe sus esquinas, o deshaga.",
);
pub(crate) const EAST: Say = say("East", "Este");
pub(crate) const NORTHWARD: Say = say("North", "Norte");
pub(crate) const CORNER_HELP: Say = say(
    "In plan, from the corner where the face's own frame begins.",
    "En planta, desde la esquina donde empieza el marco propio del faldón.",
);
pub(crate) const KIND: Say = say("Kind", "Clase");
pub(crate) const SHAPE: Say = say("Shape", "Forma");
pub(crate) const ROUND: Say = say("round", "redonda");
pub(crate) const RECTANGLE: Say = say("rectangle", "rectángulo");
pub(crate) const ANY_OUTLINE: Say = say("any outline", "cualquier contorno");
pub(crate) const DIAMETER: Say = say("Across", "Diámetro");
pub(crate) const ALONG: Say = say("Along the eave", "A lo largo del alero");
pub(crate) const UP_SLOPE: Say = say("Up the slope", "Pendiente arriba");
pub(crate) const TAPED_HELP: Say = say("As taped on the deck.", "Como se midió con cinta en el entablado.");
pub(crate) const CLEARANCE: Say = say("Clearance", "Holgura");
pub(crate) const CLEARANCE_HELP: Say = say(
    "How far modules stay away, measured on the slope.",
    "Qué tan lejos quedan los módulos, medido en la pendiente.",
);
pub(crate) const AS_THE_BOOK: Say = say("As the book says", "Como dice el libro");
pub(crate) const MIDDLE_HELP: Say = say(
    "From the lower left of the face to the middle of it, on the slope.",
    "De la esquina inferior izquierda del faldón a su centro, en la pendiente.",
);
pub(crate) const BESIDE_FACES: Say =
    say("It lies beside all faces: drag it onto one.", "Está fuera de todos los faldones: arrástrela a uno.");
pub(crate) const ROWS: Say = say("Rows", "Filas");
pub(crate) const ROWS_HELP: Say = say("From the eave up.", "Contando desde el alero.");
pub(crate) const COLUMNS: Say = say("Modules in a row", "Módulos por fila");
pub(crate) const COLUMNS_HELP: Say = say("Along the eave.", "A lo largo del alero.");
pub(crate) const MODULES_LIE: Say = say("Modules lie", "Módulos con el");
pub(crate) const LANDSCAPE: Say = say("long side along the eave", "lado largo a lo largo del alero");
pub(crate) const PORTRAIT: Say = say("long side up the slope", "lado largo pendiente arriba");
pub(crate) const REVEAL: Say = say("Reveal", "Separación");
pub(crate) const REVEAL_HELP: Say = say(
    "The gap between neighbouring modules; the kit gives its range.",
    "El espacio entre módulos vecinos; el kit da su rango.",
);
pub(crate) const FACE: Say = say("On face", "En el faldón");
pub(crate) const FROM_LEFT: Say = say("From the left", "Desde la izquierda");
pub(crate) const FROM_LEFT_HELP: Say = say(
    "From the left end of the face to the block's left edge, on the slope.",
    "Del extremo izquierdo del faldón al borde izquierdo del bloque, en la pendiente.",
);
pub(crate) const FROM_EAVE: Say = say("Up from the eave", "Desde el alero");
pub(crate) const FROM_EAVE_HELP: Say = say(
    "From the lowest point of the face up the slope. For a block: where the base rail line is snapped.",
    "Del punto más bajo del faldón, pendiente arriba. En un bloque: donde se traza la línea del riel base.",
);
pub(crate) const ROW_SHIFTS: Say = say("Shift rows", "Correr filas");
pub(crate) const SHIFT_HELP: Say = say(
    "To the right against the block's corner. Or drag the grip at a row's end.",
    "Hacia la derecha respecto a la esquina del bloque. O arrastre el asa al final de una fila.",
);
pub(crate) const LOCKED: Say = say("Locked", "Fijado");
pub(crate) const LOCKED_HELP: Say = say(
    "A locked block stays where it is when an array is fitted.",
    "Un bloque fijado se queda donde está cuando se acomoda un arreglo.",
);

// Lists
pub(crate) const QUANTITIES: Say = say("Quantities", "Cantidades");
pub(crate) const NO_QUANTITIES: Say = say(
    "Nothing to order yet: place a block, and its parts are counted here.",
    "Todavía nada que pedir: coloque un bloque, y aquí se cuentan sus piezas.",
);
pub(crate) const NO_PRICE: Say = say("no price", "sin precio");
pub(crate) const ACCEPTED: Say = say("Accepted by a person", "Aceptados por una persona");
pub(crate) const WAIVED: Say = say("Waived", "Dispensado");
pub(crate) const FIX_HELP: Say = say(
    "Do this; undo takes it back. It was tried: fewer findings of this weight, and no new one.",
    "Hacer esto; deshacer lo revierte. Se probó: menos hallazgos de este peso, y ninguno nuevo.",
);
pub(crate) const FIX_IS_SOUGHT: Say = say("Looking for a fix…", "Buscando un arreglo…");
pub(crate) const NO_FIX: Say = say(
    "No fix was found among moves, rows, modules and pathways.",
    "No se halló arreglo entre movimientos, filas, módulos y pasos.",
);
pub(crate) const FEWER_MODULES: Say = say(
    "No single step clears it and keeps as many modules; together these do:",
    "Ningún paso solo lo resuelve y conserva tantos módulos; juntos sí:",
);
pub(crate) const NO_SINGLE_FIX: Say =
    say("No single step clears it; these together do:", "Ningún paso solo lo resuelve; estos juntos sí:");
pub(crate) const WAIVE: Say = say("Waive…", "Dispensar…");
pub(crate) const WAIVE_AGAIN: Say = say("Accept it again…", "Aceptar de nuevo…");
pub(crate) const WAIVE_HELP: Say = say(
    "Accept this finding, with a reason that shows in every output.",
    "Aceptar este hallazgo, con una razón que aparece en cada salida.",
);
pub(crate) const WAIVE_REASON: Say = say("Why may it be built so?", "¿Por qué se puede construir así?");
pub(crate) const WAIVE_BY: Say = say("Who says so?", "¿Quién lo dice?");
pub(crate) const WAIVE_DO: Say = say("Waive it", "Dispensarlo");
pub(crate) const WAIVE_NEEDS: Say =
    say("Write a reason and a name first.", "Escriba primero una razón y un nombre.");
pub(crate) const UNWAIVE: Say = say("Take the waiver back", "Retirar la dispensa");
pub(crate) const SUMMARY_HELP: Say = say(
    "Modules on the roof, their rated power, and what the job is sold for: lines, tax, delivery, overhead, profit.",
    "Módulos en el techo, su potencia nominal y en cuánto se vende la obra: renglones, impuesto, \
        entrega, gastos generales, ganancia.",
);

// Files
pub(crate) const CANT_BE: Say = say("That can't be done", "Eso no se puede hacer");
pub(crate) const CANT_OPEN: Say = say("This file can't be opened", "Este archivo no se puede abrir");
pub(crate) const CANT_SAVE: Say = say("The job could not be saved", "No se pudo guardar la obra");
pub(crate) const CANT_EXPORT: Say = say("The order could not be written", "No se pudo escribir el pedido");
pub(crate) const CANT_PRINT: Say = say("The sheet could not be written", "No se pudo escribir la hoja");
pub(crate) const UNSAVED: Say = say(
    "The changes since it was last saved are lost unless you save them now.",
    "Los cambios desde la última vez que se guardó se pierden si no los guarda ahora.",
);
pub(crate) const SAVE_NOW: Say = say("Save", "Guardar");
pub(crate) const DISCARD: Say = say("Don't save", "No guardar");
pub(crate) const PATH: Say = say("Path of the file", "Ruta del archivo");
pub(crate) const REPLACE: Say = say("Replace it", "Reemplazarlo");
pub(crate) const NO_PATH: Say = say(
    "Type where the file is, such as /home/me/jobs/alder-court.chalk.json.",
    "Escriba dónde está el archivo, por ejemplo /home/me/jobs/alder-court.chalk.json.",
);
pub(crate) const IS_FOLDER: Say =
    say("This is a folder: add a file name.", "Esto es una carpeta: agregue un nombre de archivo.");
pub(crate) const IS_THERE: Say = say(
    "There is a file of this name. Press “Replace it” to write over it.",
    "Ya hay un archivo con este nombre. Oprima “Reemplazarlo” para escribir encima.",
);
pub(crate) const RECOVERED_TITLE: Say = say("Unsaved work was kept", "Se conservó trabajo sin guardar");
pub(crate) const RECOVERED: Say = say(
    "The program did not end well last time. It kept a copy of what was not saved; the job files themselves are as they were.",
    "El programa no terminó bien la última vez. Conservó una copia de lo que no estaba guardado; los \
        archivos de las obras están como estaban.",
);
pub(crate) const OPEN_COPY: Say = say("Open this copy", "Abrir esta copia");
pub(crate) const DELETE_COPY: Say = say("Delete it", "Borrarla");
pub(crate) const LATER: Say = say("Ask again next time", "Preguntar la próxima vez");
pub(crate) const RECOVERED_SAID: Say = say(
    "Opened from the kept copy. It is not saved yet.",
    "Abierto desde la copia conservada. Todavía no está guardado.",
);

// Cautions
pub(crate) const CAUTIONS_SHORT: Say =
    say("Planning aid only: read the cautions", "Solo ayuda para planear: lea las precauciones");
pub(crate) const CAUTION: Say = chalkcourse_takeoff::CAUTION;
pub(crate) const CAUTIONS_LONG: [Say; 4] = [
    say(
        "Chalkcourse is a planning aid. It proves nothing about your building. Confirm every limit against the codes adopted \
     locally, the product's listing and the maker's instructions.",
        "Chalkcourse es una ayuda para planear. No demuestra nada sobre su edificio. Confirme cada límite \
        con los códigos adoptados localmente, la certificación del producto y las instrucciones del \
        fabricante.",
    ),
    say(
        "Structural design belongs to a licensed engineer. Electrical work belongs to a qualified electrician, licensed where \
     that is required.",
        "El diseño estructural corresponde a un ingeniero con licencia. El trabajo eléctrico corresponde a \
        un electricista calificado, con licencia donde se exige.",
    ),
    say(
        "Falls kill. Keep off the roof without fall protection, on wet or icy decks, and in wind.",
        "Las caídas matan. No suba al techo sin protección contra caídas, con el entablado mojado o con \
        hielo, ni con viento.",
    ),
    say(
        "Direct current kills, and it can't be switched off at the module: a module is live whenever light falls on it.",
        "La corriente directa mata, y no se puede apagar en el módulo: un módulo está energizado siempre que le \
        da la luz.",
    ),
];
