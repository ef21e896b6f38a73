//! Sentences about the drawing: hints, snaps, names for screen readers.

use crate::canvas::{Dimension, Group, OutlineFor, Shaped, Toward};
use crate::commands::Tool;
use crate::view::View;
use crate::{Document, text};
use chalkcourse_geometry::{DVec2, EdgeKind, Length, LengthError, RoofFace, Units};
use chalkcourse_job::{Block, Cell, PenetrationKind, Resolved};
use chalkcourse_layout::PlacedPenetration;
use chalkcourse_words::{Say, pick, say, tell};

/// The word for a kind, as on a button.
pub(crate) fn kind(kind: PenetrationKind) -> &'static str {
    match kind {
        PenetrationKind::PipeBoot => pick("Pipe boot", "Bota de tubo"),
        PenetrationKind::Vent => pick("Vent", "Respiradero"),
        PenetrationKind::Chimney => pick("Chimney", "Chimenea"),
        PenetrationKind::Skylight => pick("Skylight", "Tragaluz"),
        PenetrationKind::EscapeWindow => pick("Escape window", "Ventana de escape"),
        PenetrationKind::Other => pick("Other", "Otra"),
    }
}

/// Why a side goes the way it does: as another one that is drawn, or as one of a face.
pub(crate) fn parallel_to(face: Option<&str>) -> String {
    match face {
        None => pick("parallel to a side drawn before", "paralelo a un lado ya dibujado").to_owned(),
        Some(name) => tell!("parallel to a side of {name}", "paralelo a un lado de {name}"),
    }
}
pub(crate) fn square_to(face: Option<&str>) -> String {
    match face {
        None => pick("square to a side drawn before", "a escuadra con un lado ya dibujado").to_owned(),
        Some(name) => tell!("square to a side of {name}", "a escuadra con un lado de {name}"),
    }
}

/// What happens to a dimension that is pressed.
pub(crate) fn type_over(of: Dimension) -> &'static str {
    match of {
        Dimension::Block(..) => pick(
            "Press to type another length: the block moves there",
            "Oprima para escribir otra longitud: el bloque se mueve ahí",
        ),
        Dimension::Side(..) => pick(
            "Press to type another length: the end of this side moves along it",
            "Oprima para escribir otra longitud: el extremo de este lado se mueve a lo largo de él",
        ),
    }
}

/// What a dimension measures.
pub(crate) fn dimension_of(of: Dimension) -> String {
    match of {
        Dimension::Block(_, Toward::Left) => {
            pick("From the left border to the block", "Del borde izquierdo al bloque").to_owned()
        }
        Dimension::Block(_, Toward::Right) => {
            pick("From the block to the right border", "Del bloque al borde derecho").to_owned()
        }
        Dimension::Block(_, Toward::Eave) => {
            pick("From the lower border to the block", "Del borde inferior al bloque").to_owned()
        }
        Dimension::Block(_, Toward::Top) => {
            pick("From the block to the upper border", "Del bloque al borde superior").to_owned()
        }
        Dimension::Side(_, _, side) => tell!("Length of side {}", "Longitud del lado {}", side + 1),
    }
}
pub(crate) fn dimension_words(of: Dimension, length: &str) -> String {
    format!("{}: {length}", dimension_of(of))
}

pub(crate) const HOLD_ALL: Say =
    say("Hold all blocks and penetrations", "Seleccionar todos los bloques y penetraciones");
pub(crate) const GROUP_HELP: Say = say(
    "Drag one of them and all move, or use the arrow keys. With Shift a click or a box takes more, and lets go.",
    "Arrastre uno y se mueven todos, o use las flechas. Con Mayús, un clic o un recuadro toma más, y suelta.",
);
pub(crate) const GROUP_ON: Say = say("Switch these modules on", "Volver a poner estos módulos");
pub(crate) const GROUP_OFF: Say = say("Switch these modules off", "Quitar estos módulos");
pub(crate) const GROUP_DELETE: Say = say("Delete all of these", "Borrar todo esto");

/// "2 blocks, 1 penetration, 3 modules"
pub(crate) fn group_words(group: &Group) -> String {
    let count = |count: usize, one: Say, many: Say| match count {
        0 => None,
        1 => Some(format!("1 {one}")),
        count => Some(format!("{count} {many}")),
    };
    let blocks = count(group.blocks.len(), say("block", "bloque"), say("blocks", "bloques"));
    let penetrations = (say("penetration", "penetración"), say("penetrations", "penetraciones"));
    let penetrations = count(group.penetrations.len(), penetrations.0, penetrations.1);
    let modules = count(group.modules.len(), say("module", "módulo"), say("modules", "módulos"));
    [blocks, penetrations, modules].into_iter().flatten().collect::<Vec<_>>().join(", ")
}

/// What a tool is for.
pub(crate) fn tool_help(tool: Tool) -> &'static str {
    match tool {
        Tool::Select => pick("Select, drag, switch modules", "Seleccionar, arrastrar, conmutar módulos"),
        Tool::DrawFace => pick(
            "Draw a face of the roof corner by corner",
            "Dibujar un faldón del techo esquina por esquina",
        ),
        Tool::Penetration => pick("Mark what comes through the roof", "Marcar lo que atraviesa el techo"),
        Tool::Block => {
            pick("Place a block of modules on a face", "Colocar un bloque de módulos en un faldón")
        }
        Tool::Tape => pick("Measure", "Medir"),
        Tool::Picture => text::TOOL_PICTURE_HELP.now(),
    }
}

/// What an outline is drawn for.
pub(crate) fn outline_for(what: OutlineFor) -> &'static str {
    match what {
        OutlineFor::Face => pick("Face", "Faldón"),
        OutlineFor::Roof => pick("Whole roof", "Techo entero"),
        OutlineFor::Part => pick("Part", "Parte"),
        OutlineFor::Hole => pick("Hole", "Hueco"),
        OutlineFor::Penetration => pick("Penetration outline", "Contorno de penetración"),
    }
}
pub(crate) fn outline_help(what: OutlineFor) -> &'static str {
    match what {
        OutlineFor::Face => {
            pick("A face of the roof, corner by corner", "Un faldón del techo, esquina por esquina")
        }
        OutlineFor::Roof => pick(
            "Draw the walls: the roof is raised over them, all of one pitch",
            "Dibuje los muros: el techo se levanta sobre ellos, todo con una pendiente",
        ),
        OutlineFor::Part => text::PART_HELP.now(),
        OutlineFor::Hole => pick(
            "A courtyard, a shaft or a dormer's foot: its rim counts as a wall line",
            "Un patio, un ducto o el pie de una buhardilla: su orilla cuenta como muro",
        ),
        OutlineFor::Penetration => pick(
            "A penetration that is neither round nor square, by its own outline",
            "Una penetración que no es redonda ni cuadrada, por su propio contorno",
        ),
    }
}
pub(crate) const RAISE_ROOF: Say = say("raise a roof", "levantar un techo");
pub(crate) const RAISE_GABLES: Say = say("Gables", "Hastiales");
pub(crate) const RAISE_HIPS: Say = say("Hips", "Cuatro aguas");
pub(crate) const RAISE_OVERHANG: Say = say("Overhang", "Voladizo");
pub(crate) const RAISE_WALLS: Say = say("Walls", "Muros");
pub(crate) const RAISE_OVERHANG_HELP: Say = say(
    "How far the roof reaches beyond the walls, in plan; 1' is usual",
    "Cuánto sobresale el techo de los muros, en planta; 1' es lo usual",
);
pub(crate) const RAISE_WALLS_HELP: Say = say(
    "Height of the roof over the walls; 9' is usual for one storey",
    "Altura del techo sobre los muros; 9' es lo usual en un piso",
);

/// A length that is not below nothing.
///
/// # Errors
/// What was wrong with the text, or that it is below nothing.
pub(crate) fn at_least_none(length: Result<Length, LengthError>) -> Result<Length, String> {
    match length {
        Ok(length) if length < Length::ZERO => Err(pick(
            "This can't be less than nothing: type 0 or more.",
            "Esto no puede ser menos que nada: escriba 0 o más.",
        )
        .to_owned()),
        Ok(length) => Ok(length),
        Err(error) => Err(error.to_string()),
    }
}

pub(crate) fn courtyard_in(part: &str) -> String {
    tell!("draw a courtyard in {part}", "dibujar un patio en {part}")
}
pub(crate) fn hole_in(face: &str) -> String {
    tell!("draw a hole in {face}", "dibujar un hueco en {face}")
}

/// What to do with the tool now.
pub(crate) fn hint(tool: Tool, corners: usize, job: &Resolved) -> &'static str {
    match (tool, corners) {
        (Tool::Select, _) if job.faces.is_empty() => {
            pick("Choose “Draw face” to begin.", "Elija “Dibujar faldón” para empezar.")
        }
        (Tool::Select, _) if job.blocks.is_empty() => pick(
            "Next: choose “Block” and press on a face. Penetrations first, if you know them.",
            "Siguiente: elija “Bloque” y oprima sobre un faldón. Primero las penetraciones, si las conoce.",
        ),
        (Tool::Select, _) => pick(
            "Drag blocks, vents and corners. Double-click switches a module. Ctrl or Alt drags without snapping.",
            "Arrastre bloques, respiraderos y esquinas. El doble clic conmuta un módulo. Ctrl o Alt arrastra \
        sin ajuste.",
        ),
        (Tool::DrawFace, 0) => pick(
            "Click the first corner. For a face begin at the eave if you can.",
            "Haga clic en la primera esquina. En un faldón empiece por el alero si puede.",
        ),
        (Tool::DrawFace, 1..3) => {
            pick("Click, or type a length and Enter.", "Haga clic, o escriba una longitud y Entrar.")
        }
        (Tool::DrawFace, _) => {
            pick("Click the first corner to close.", "Haga clic en la primera esquina para cerrar.")
        }
        (Tool::Penetration, _) => pick(
            "Choose a kind and click its middle on the roof, or press Enter and move it with the arrow keys.",
            "Elija una clase y haga clic en su centro sobre el techo, u oprima Entrar y muévala con las flechas.",
        ),
        (Tool::Block, _) => pick(
            "Click a face for 3 rows of 4, or drag out the room that it may fill. Enter places one too.",
            "Haga clic en un faldón para 3 filas de 4, o arrastre el espacio que puede llenar. Entrar también coloca uno.",
        ),
        (Tool::Tape, _) => pick("Drag from one place to another.", "Arrastre de un lugar a otro."),
        (Tool::Picture, _) => text::NO_PICTURE.now(),
    }
}

/// What to do next for a rectangle, an L or a T with so many corners.
pub(crate) fn shape_hint(corners: usize) -> &'static str {
    match corners {
        0 => pick(
            "Click one corner, or press and pull the rectangle open.",
            "Haga clic en una esquina, u oprima y jale el rectángulo.",
        ),
        1 => pick(
            "Click the corner across, or type the size and Enter.",
            "Haga clic en la esquina opuesta, o escriba la medida y Entrar.",
        ),
        _ => pick(
            "Click the inner corner, or type the size of the notch and Enter.",
            "Haga clic en la esquina interior, o escriba la medida del recorte y Entrar.",
        ),
    }
}

/// How far an outline is out of square.
pub(crate) fn out_of_square(degrees: f64) -> String {
    tell!("{degrees:.1}° out of square", "{degrees:.1}° fuera de escuadra")
}

pub(crate) fn square_of(name: &str) -> String {
    tell!("Square {name}", "Escuadrar {name}")
}

/// The button of a shape.
pub(crate) fn shaped(shaped: Shaped) -> &'static str {
    match shaped {
        Shaped::Corners => pick("Corner by corner", "Esquina por esquina"),
        Shaped::Rectangle => pick("Rectangle", "Rectángulo"),
        Shaped::Ell => pick("L", "L"),
        Shaped::Tee => pick("T", "T"),
    }
}

pub(crate) fn shaped_help(shaped: Shaped) -> &'static str {
    match shaped {
        Shaped::Corners => pick(
            "Any outline. Shift holds right angles; type a length and an angle.",
            "Cualquier contorno. Mayús mantiene los ángulos rectos; escriba longitud y ángulo.",
        ),
        Shaped::Rectangle => pick(
            "Two corners, or one and a size such as 30' x 48'. Pressing and pulling makes one too.",
            "Dos esquinas, o una y la medida, como 30' x 48'. También al oprimir y jalar.",
        ),
        Shaped::Ell => pick(
            "A rectangle, then the inner corner of what is not there.",
            "Un rectángulo y luego la esquina interior de lo que falta.",
        ),
        Shaped::Tee => pick(
            "A rectangle, then one of its two inner corners; the other is its mirror image.",
            "Un rectángulo y luego una de las dos esquinas interiores; la otra es su reflejo.",
        ),
    }
}

pub(crate) fn size_hint(units: Units) -> &'static str {
    match units {
        Units::FeetInches => "30' x 48'",
        Units::Metric => "9 m x 14 m",
    }
}

pub(crate) fn length_hint(units: Units) -> &'static str {
    match units {
        Units::FeetInches => "12' 6 1/2\"",
        Units::Metric => "3.82 m",
    }
}

// Why something snapped
pub(crate) fn at_edge(kind: EdgeKind) -> String {
    tell!("at the {}", "en {}", kind.name())
}
pub(crate) fn at_setback(kind: EdgeKind, setback: Length, units: Units) -> String {
    tell!("{} from the {}: its setback", "a {} de {}: su retiro", setback.show_small(units), kind.name())
}
pub(crate) fn on_course(number: usize) -> String {
    tell!("on course line {number}", "en la línea de hilada {number}")
}
pub(crate) fn clear_of(name: &str) -> String {
    tell!("just clear of {name}", "justo libre de {name}")
}
pub(crate) fn flush_with(name: &str) -> String {
    tell!("flush with {name}", "al ras de {name}")
}
pub(crate) fn clear_of_block(name: &str) -> String {
    tell!("just clear of {}", "justo libre de {}", block_name(name))
}
pub(crate) fn reveal_to(name: &str, reveal: Length, units: Units) -> String {
    tell!("{} reveal to {}", "{} de separación con {}", reveal.show_small(units), block_name(name))
}
pub(crate) const SAME_GAPS: Say = say("the same gap on both sides", "el mismo espacio a ambos lados");
pub(crate) fn middle_on_course(number: usize) -> String {
    tell!("its middle on course line {number}", "su centro en la línea de hilada {number}")
}
pub(crate) fn middle_in_line(name: &str) -> String {
    tell!("in line with the middle of {name}", "en línea con el centro de {name}")
}
pub(crate) const ROW_STILL_HOOKS: Say =
    say("as far as the rows still hook", "hasta donde las filas aún enganchan");
/// Why a row that is shifted stopped: so many half modules against the row below.
pub(crate) fn row_steps(row: u32, halves: u64) -> String {
    let below = if row == 0 {
        pick("the block's corner", "la esquina del bloque")
    } else {
        pick("the row below", "la fila de abajo")
    };
    match halves {
        0 => tell!("in line with {below}", "en línea con {below}"),
        1 => tell!("half a module against {below}", "medio módulo respecto a {below}"),
        2 => tell!("1 module against {below}", "1 módulo respecto a {below}"),
        n if n % 2 == 0 => tell!("{} modules against {below}", "{} módulos respecto a {below}", n / 2),
        n => tell!("{} 1/2 modules against {below}", "{} 1/2 módulos respecto a {below}", n / 2),
    }
}
pub(crate) fn corner_of(name: &str) -> String {
    tell!("corner of {name}", "esquina de {name}")
}
pub(crate) fn on_side_of(name: &str) -> String {
    tell!("on a side of {name}", "en un lado de {name}")
}
pub(crate) fn level_with(name: &str) -> String {
    tell!("in line with a corner of {name}", "en línea con una esquina de {name}")
}

/// "eave 60'"
pub(crate) fn edge(kind: EdgeKind, length: Length, units: Units) -> String {
    format!("{} {}", kind.name(), length.show(units))
}

pub(crate) fn face_on(name: &str) -> String {
    tell!("{name}, face-on: true size, eave down", "{name}, de frente: tamaño real, alero abajo")
}

/// "Block A" for a block that is called "A".
pub(crate) fn block_name(name: &str) -> String {
    if name.to_lowercase().starts_with(pick("block", "bloque")) {
        name.to_owned()
    } else {
        tell!("Block {name}", "Bloque {name}")
    }
}

pub(crate) fn block_label(name: &str, modules: usize) -> String {
    tell!("{} · {modules} modules", "{} · {modules} módulos", block_name(name))
}

pub(crate) fn taped(length: Length, units: Units) -> String {
    tell!("{} in plan", "{} en planta", length.show(units))
}

pub(crate) fn taped_on_face(on_slope: Length, along: DVec2, in_plan: Length, units: Units) -> String {
    let part = |metres: f64| Length::from_metres(metres.abs()).show(units);
    tell!(
        "{} on the slope ({} along, {} up), {} in plan",
        "{} en la pendiente ({} a lo largo, {} arriba), {} en planta",
        on_slope.show(units),
        part(along.x),
        part(along.y),
        in_plan.show(units)
    )
}

/// Where the pointer is: on its face where there is one, else in plan.
pub(crate) fn pointer(document: &Document, view: View, at: DVec2) -> String {
    let units = document.job().units;
    let show = |metres: f64| Length::from_metres(metres).show(units);
    if let View::FaceOn(id) = view
        && let Some((_, face)) = document.plan().layout.face(id)
    {
        let from = face.plane.to_frame(at) - face.bounds.min;
        return tell!(
            "{} from the left, {} up",
            "{} desde la izquierda, {} arriba",
            show(from.x),
            show(from.y)
        );
    }
    tell!("{} east, {} north", "{} al este, {} al norte", show(at.x), show(at.y))
}

// For screen readers
pub(crate) fn drawing(job: &Resolved, view: View) -> String {
    match view {
        View::Plan | View::Solid => tell!("Drawing of {}, plan", "Dibujo de {}, planta", job.name),
        View::FaceOn(id) => {
            let name = job.face(id).map_or(pick("a face", "un faldón"), |face| face.name.as_str());
            tell!("Drawing of {}, face {name} face-on", "Dibujo de {}, faldón {name} de frente", job.name)
        }
    }
}

pub(crate) fn face_words(name: &str, face: &RoofFace, units: Units) -> String {
    let area = text::area(face.slope_area, units);
    tell!(
        "Face {name}, pitch {}, {area} on the slope",
        "Faldón {name}, pendiente {}, {area} en la pendiente",
        face.plane.pitch
    )
}

pub(crate) fn penetration_words(penetration: &PlacedPenetration) -> String {
    format!("{}, {}", penetration.name, penetration.kind.name())
}

pub(crate) fn block_words(block: &Block, modules: usize) -> String {
    tell!(
        "{}, {} rows of {}, {modules} modules",
        "{}, {} filas de {}, {modules} módulos",
        block_name(&block.name),
        block.rows,
        block.columns
    )
}

pub(crate) fn module_words(cell: Cell, off: bool) -> String {
    let state = if off { pick(", switched off", ", quitado") } else { "" };
    tell!(
        "Module row {}, column {}{state}",
        "Módulo fila {}, columna {}{state}",
        cell.row + 1,
        cell.column + 1
    )
}

// The side panel
pub(crate) use chalkcourse_words::face_heading;
pub(crate) fn corner_heading(corner: usize) -> String {
    tell!("Corner {}", "Esquina {}", corner + 1)
}
pub(crate) fn side_row(side: usize, length: &str) -> String {
    format!("{}.  {length}", side + 1)
}
pub(crate) fn overruled(kind: EdgeKind) -> String {
    tell!("{} (chosen)", "{} (elegido)", kind.name())
}
pub(crate) fn kind_of_side(side: usize) -> String {
    tell!("Kind of side {}", "Clase del lado {}", side + 1)
}
pub(crate) fn row_name(row: u32) -> String {
    tell!("Row {}", "Fila {}", row + 1)
}
pub(crate) fn own_clearance(usual: &str) -> String {
    tell!("The rule book says {usual}.", "El libro de reglas dice {usual}.")
}
pub(crate) fn bad_direction(text: &str) -> String {
    tell!(
        "can't read {text:?} as a direction: type degrees clockwise from north, such as 180, or S",
        "no se puede leer {text:?} como dirección: escriba grados desde el norte en el sentido del reloj, \
        por ejemplo 180, o S"
    )
}
