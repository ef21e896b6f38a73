//! The first job, step by step, and the words of the trade.

use crate::lesson::Step;
use chalkcourse_words::{Say, pick, say, tell};

pub(crate) const LESSON: Say = say("A first job, step by step", "Una primera obra, paso a paso");
pub(crate) const LESSON_SHOW: Say = say("Show me, step by step", "Muéstreme, paso a paso");
pub(crate) const LESSON_SKIP: Say = say("Skip this step", "Saltar este paso");
pub(crate) const LESSON_LEAVE: Say = say("Leave the steps", "Dejar los pasos");
pub(crate) const LESSON_END: Say = say("Close", "Cerrar");

pub(crate) fn lesson_place(number: usize, of: usize) -> String {
    if number >= of {
        pick("All done", "Todo hecho").to_owned()
    } else {
        tell!("Step {} of {of}", "Paso {} de {of}", number + 1)
    }
}

/// The heading and the words of a step.
pub(crate) fn lesson_step(step: Step) -> (&'static str, &'static str) {
    let (title, words) = match step {
        Step::Roof => (
            say("Raise a roof over the walls", "Levante un techo sobre los muros"),
            say(
                "Press W. Click where the lower left corner of the walls is, point up to the right, type 48' x 30' and Enter. \
                 Gables or hips, pitch and overhang are chosen above the drawing. (D draws a roof face by face.)",
                "Oprima W. Haga clic donde está la esquina inferior izquierda de los muros, apunte arriba a la derecha, escriba \
                 48' x 30' y Entrar. Hastiales o limatesas, pendiente y voladizo se eligen sobre el dibujo. (D dibuja un techo \
                 faldón por faldón.)",
            ),
        ),
        Step::Pitch => (
            say("Say how steep it is", "Diga qué tan inclinado es"),
            say(
                "The house is held: on the right, type the pitch of all its slopes, such as 5:12, and Enter. Skip this step if 6:12 \
                 is right.",
                "La casa está seleccionada: a la derecha escriba la pendiente de todas sus aguas, por ejemplo 5:12, y Entrar. Salte \
                 este paso si 6:12 es correcta.",
            ),
        ),
        Step::Vent => (
            say("Mark what comes through", "Marque lo que lo atraviesa"),
            say(
                "Press P and click where a vent stands. It keeps modules away, as far as the rule book says.",
                "Oprima P y haga clic donde hay un respiradero. Aparta los módulos tanto como dice el libro de reglas.",
            ),
        ),
        Step::Fill => (
            say("Fill it", "Llénelo"),
            say(
                "Press L. The most modules that the rules allow are laid, and the list says what holds them back.",
                "Oprima L. Se coloca el mayor número de módulos que permiten las reglas, y la lista dice qué lo limita.",
            ),
        ),
        Step::Finding => (
            say("Break a rule, and mend it", "Rompa una regla, y corríjala"),
            say(
                "Drag the block over the vent: what is wrong turns red and is listed. Let go, and press the move that the finding \
                 offers, or undo (Ctrl+Z).",
                "Arrastre el bloque sobre el respiradero: lo que está mal se pone rojo y se enumera. Suelte, y oprima el \
                 movimiento que ofrece el hallazgo, o deshaga (Ctrl+Z).",
            ),
        ),
        Step::Order => (
            say("See the order", "Vea el pedido"),
            say(
                "Press O: every part, with how many and why. Export, at the top right, writes it to print or for a spreadsheet.",
                "Oprima O: cada pieza, cuántas y por qué. Exportar, arriba a la derecha, lo escribe para imprimir o para una hoja \
                 de cálculo.",
            ),
        ),
        Step::Done => (
            say("That is the whole way", "Ese es todo el camino"),
            say(
                "From a bare roof to an order. F11 shows it to the homeowner; Ctrl+F finds any command; Ctrl+S saves. Planning aid \
                 only: read the cautions before anyone climbs.",
                "De un techo vacío a un pedido. F11 lo muestra al dueño de la casa; Ctrl+F busca cualquier orden; Ctrl+S guarda. \
                 Solo ayuda para planear: lea las precauciones antes de que nadie suba.",
            ),
        ),
    };
    (title.now(), words.now())
}

pub(crate) const GLOSSARY: Say = say("Words of the trade", "Palabras del oficio");
pub(crate) const GLOSSARY_FIND: Say = say("Find a word", "Buscar una palabra");
pub(crate) const GLOSSARY_NONE: Say = say("No word is like that.", "Ninguna palabra es así.");
pub(crate) const GLOSSARY_WHY: Say = say(
    "As roofers and installers use them; common practice, no source. Where a code defines a word, the code counts.",
    "Como las usan los techadores e instaladores; práctica común, sin fuente. Donde un código define una palabra, vale el código.",
);

/// A word, and what it means.
pub(crate) type Entry = (Say, Say);

pub(crate) const WORDS_OF_THE_TRADE: [Entry; 36] = [
    (say("array", "arreglo"), say("All modules of a job together.", "Todos los módulos de una obra juntos.")),
    (
        say("base rail", "riel base"),
        say(
            "The rail under the lowest row of a block, screwed to the deck on a snapped line: everything is measured from it.",
            "El riel bajo la fila más baja de un bloque, atornillado al entablado sobre una línea trazada: todo se mide desde él.",
        ),
    ),
    (
        say("block", "bloque"),
        say(
            "Rows of modules that interlock and are flashed as one.",
            "Filas de módulos que se enlazan y llevan tapajuntas como una sola pieza.",
        ),
    ),
    (
        say("bonding", "unión eléctrica"),
        say(
            "Joining all metal so that it has one voltage, and a way to ground. Work for a qualified electrician.",
            "Unir todo el metal para que tenga un solo voltaje, y un camino a tierra. Trabajo de un electricista calificado.",
        ),
    ),
    (
        say("chalk line", "línea de gis"),
        say(
            "A straight line snapped on the deck with a chalked string.",
            "Una línea recta marcada en el entablado con un cordel con gis.",
        ),
    ),
    (
        say("clearance", "holgura"),
        say(
            "How far modules stay away from what comes through the roof.",
            "Qué tan lejos quedan los módulos de lo que atraviesa el techo.",
        ),
    ),
    (
        say("counter flashing", "contratapajuntas"),
        say(
            "Flashing that covers the upper edge of other flashing.",
            "Tapajuntas que cubre el borde superior de otro tapajuntas.",
        ),
    ),
    (
        say("course", "hilada"),
        say(
            "One row of shingles; its exposure is what is to the weather.",
            "Una fila de tejas; su exposición es lo que queda a la intemperie.",
        ),
    ),
    (
        say("cricket", "desviador"),
        say(
            "A small ridge behind a chimney that parts the water.",
            "Una pequeña cumbrera detrás de una chimenea que aparta el agua.",
        ),
    ),
    (
        say("deck", "entablado"),
        say(
            "The sheathing of the roof, on which everything lies.",
            "Los tableros del techo, sobre los que está todo.",
        ),
    ),
    (
        say("deck-mounted", "sobre entablado"),
        say(
            "Modules screwed straight to the deck and flashed into the shingles, without racks over them.",
            "Módulos atornillados directo al entablado y con tapajuntas entre las tejas, sin estructura encima de ellas.",
        ),
    ),
    (
        say("downslope", "caída"),
        say("The way in which water runs off a face.", "Hacia donde corre el agua de un faldón."),
    ),
    (
        say("drip edge", "goterón"),
        say(
            "Metal along eaves and rakes that leads water off the deck.",
            "Metal a lo largo de aleros y bordes inclinados que aparta el agua del entablado.",
        ),
    ),
    (
        say("eave", "alero"),
        say("The lower, level edge of a face.", "El borde inferior, a nivel, de un faldón."),
    ),
    (
        say("exposure", "exposición"),
        say("How much of each course shows, up the slope.", "Cuánto de cada hilada se ve, pendiente arriba."),
    ),
    (say("face", "faldón"), say("One plane of the roof.", "Un plano del techo.")),
    (
        say("finding", "hallazgo"),
        say(
            "What a rule has to say about the job: to stop for, to look at, or to know.",
            "Lo que una regla dice de la obra: por lo que parar, por revisar o por saber.",
        ),
    ),
    (
        say("fit-up", "replanteo"),
        say(
            "Setting out the array on the deck as it really is, out of square and all.",
            "Trazar el arreglo sobre el entablado como es en realidad, aun fuera de escuadra.",
        ),
    ),
    (
        say("flashing", "tapajuntas"),
        say(
            "Sheet metal that laps into the shingles so that water runs over it.",
            "Lámina que se solapa con las tejas para que el agua corra por encima.",
        ),
    ),
    (
        say("gable", "hastial"),
        say("The upright end of a roof with two slopes.", "El extremo vertical de un techo de dos aguas."),
    ),
    (
        say("head flashing", "tapajuntas superior"),
        say(
            "Flashing along the upper edge of a block, under the course above it.",
            "Tapajuntas a lo largo del borde superior de un bloque, bajo la hilada de arriba.",
        ),
    ),
    (
        say("hip", "limatesa"),
        say(
            "Where two faces meet outward, up a corner of the house.",
            "Donde dos faldones se juntan hacia afuera, subiendo por una esquina de la casa.",
        ),
    ),
    (
        say("ice barrier", "barrera contra hielo"),
        say(
            "Self-adhered membrane along eaves where ice dams water up.",
            "Membrana autoadherible a lo largo de aleros donde el hielo represa el agua.",
        ),
    ),
    (
        say("module", "módulo"),
        say(
            "One solar panel. It is live whenever light falls on it.",
            "Un panel solar. Está energizado siempre que le da la luz.",
        ),
    ),
    (
        say("overhang", "voladizo"),
        say(
            "How far the roof reaches beyond the wall, in plan.",
            "Cuánto sobresale el techo del muro, en planta.",
        ),
    ),
    (
        say("pathway", "paso"),
        say(
            "A strip without modules on which fire fighters climb to the ridge.",
            "Una franja sin módulos por la que los bomberos suben a la cumbrera.",
        ),
    ),
    (
        say("penetration", "penetración"),
        say(
            "What comes through the roof: pipes, vents, chimneys, skylights.",
            "Lo que atraviesa el techo: tubos, respiraderos, chimeneas, tragaluces.",
        ),
    ),
    (
        say("pitch", "pendiente"),
        say(
            "Rise in 12 of run: at 6:12 a roof rises 6 in over 12 in of plan.",
            "Lo que sube en 12 de avance: a 6:12 un techo sube 6 in en 12 in de planta.",
        ),
    ),
    (
        say("rake", "borde inclinado"),
        say("The sloping edge of a face at a gable.", "El borde que sube de un faldón en un hastial."),
    ),
    (
        say("reveal", "separación"),
        say("The gap between neighbouring modules.", "El espacio entre módulos vecinos."),
    ),
    (
        say("ridge", "cumbrera"),
        say(
            "The level line at the top where two faces meet.",
            "La línea a nivel de arriba donde se juntan dos faldones.",
        ),
    ),
    (
        say("setback", "retiro"),
        say("How far modules stay away from an edge.", "Qué tan lejos quedan los módulos de un borde."),
    ),
    (say("square", "cuadro"), say("100 square feet of roof.", "100 pies cuadrados de techo.")),
    (
        say("takeoff", "cuantificación"),
        say(
            "Counting from a drawing what has to be ordered.",
            "Contar a partir de un dibujo lo que hay que pedir.",
        ),
    ),
    (
        say("underlayment", "membrana base"),
        say(
            "The layer on the deck below shingles and array.",
            "La capa sobre el entablado debajo de tejas y arreglo.",
        ),
    ),
    (
        say("valley", "limahoya"),
        say(
            "Where two faces meet inward, and their water runs together.",
            "Donde dos faldones se juntan hacia adentro, y corre junta su agua.",
        ),
    ),
];
