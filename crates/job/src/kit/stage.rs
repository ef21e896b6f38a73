use chalkcourse_words::pick;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A stage of the work, in the order in which a roof is built (common practice, no source). Names of earlier kits are read
/// as the first stage that what they named is needed at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Stage {
    /// The old roofing comes off.
    TearOff,
    /// Bad sheathing is replaced, proud nails are driven, crickets are framed.
    Deck,
    /// Rain stays out from here on.
    DryIn,
    /// Starter, and shingles up to the line of the base rail; what they reach is flashed.
    FirstCourses,
    /// What the ground crew bolts together meanwhile.
    Ground,
    /// Membrane, and the layer that fire asks for.
    UnderArray,
    /// The rail that everything hangs on.
    #[serde(alias = "flashing")]
    BaseRail,
    /// Row by row, each with its leads and lugs.
    #[serde(alias = "array")]
    Modules,
    /// Above the top row.
    Head,
    /// Step flashing woven with the courses beside the array, then counter flashing.
    Sides,
    /// Corners, membrane and starter that the shingles above and beside lie on.
    Around,
    /// The rest of the shingles, and the caps.
    #[serde(alias = "roofing")]
    Shingles,
    /// Into the box.
    #[serde(alias = "wiring")]
    Wires,
}

impl Stage {
    /// All stages, first to last.
    pub const ALL: [Self; 13] = [
        Self::TearOff,
        Self::Deck,
        Self::DryIn,
        Self::FirstCourses,
        Self::Ground,
        Self::UnderArray,
        Self::BaseRail,
        Self::Modules,
        Self::Head,
        Self::Sides,
        Self::Around,
        Self::Shingles,
        Self::Wires,
    ];

    /// The stages whose work it stands on: it can't start before they are done. All of them come before it.
    pub fn stands_on(self) -> &'static [Self] {
        match self {
            Self::TearOff | Self::Ground => &[],
            Self::Deck => &[Self::TearOff],
            Self::DryIn => &[Self::Deck],
            Self::FirstCourses => &[Self::DryIn],
            Self::UnderArray => &[Self::FirstCourses],
            Self::BaseRail => &[Self::UnderArray],
            Self::Modules => &[Self::BaseRail, Self::Ground],
            Self::Head | Self::Sides => &[Self::Modules],
            Self::Around => &[Self::Head, Self::Sides],
            Self::Shingles => &[Self::Around],
            Self::Wires => &[Self::Modules, Self::Shingles],
        }
    }

    /// The heading on an order.
    pub fn name(self) -> &'static str {
        match self {
            Self::TearOff => pick("Tear-off", "Quitar el techo viejo"),
            Self::Deck => pick("Deck", "Entablado"),
            Self::DryIn => pick("Dry-in", "Impermeabilización"),
            Self::FirstCourses => pick("First courses", "Primeras hiladas"),
            Self::Ground => pick("On the ground", "En el suelo"),
            Self::UnderArray => pick("Under the array", "Debajo del arreglo"),
            Self::BaseRail => pick("Base rail", "Riel base"),
            Self::Modules => pick("Modules", "Módulos"),
            Self::Head => pick("Head flashing", "Tapajuntas superior"),
            Self::Sides => pick("Sides of the array", "Lados del arreglo"),
            Self::Around => pick("Around the array", "Alrededor del arreglo"),
            Self::Shingles => pick("Shingles to the ridge", "Tejas hasta la cumbrera"),
            Self::Wires => pick("Wires into the box", "Cables a la caja"),
        }
    }

    /// What is done in it, in its order.
    pub fn work(self) -> &'static str {
        match self {
            Self::TearOff => pick(
                "Old roofing off; anchors, ropes and tarpaulins first.",
                "Quitar el recubrimiento viejo; primero anclas, cuerdas y lonas.",
            ),
            Self::Deck => pick(
                "Replace bad sheathing, frame crickets, pull or drive every proud nail, sweep.",
                "Reemplazar tableros malos, armar desviadores de agua, sacar o hundir todo clavo salido, barrer.",
            ),
            Self::DryIn => pick(
                "Drip edge at the eaves, leak barrier full length, lining of valleys, underlayment, then drip edge at the rakes over it.",
                "Goterón en los aleros, barrera contra filtraciones a todo lo largo, forro de limahoyas, membrana base y, encima de ella, goterón en los bordes inclinados.",
            ),
            Self::FirstCourses => pick(
                "Starter at eaves and rakes, shingles up to the line of the base rail; boots, walls, chimneys and skylights are \
                 flashed as the courses reach them.",
                "Tira de arranque en aleros y bordes inclinados, tejas hasta la línea del riel base; tubos, muros, chimeneas y \
                 tragaluces se tapan conforme llegan las hiladas.",
            ),
            Self::Ground => pick(
                "Meanwhile: feet, brackets and devices onto the modules. Two people carry a module.",
                "Mientras tanto: patas, soportes y dispositivos en los módulos. Un módulo se carga entre dos personas.",
            ),
            Self::UnderArray => pick(
                "Self-adhered membrane in level strips from below up, then the fire-rated layer with cap nails.",
                "Membrana autoadherible en franjas a nivel de abajo hacia arriba, luego la capa resistente al fuego con clavos con arandela.",
            ),
            Self::BaseRail => pick(
                "Snap the line, screw the rail to the deck, splice it, cap its ends.",
                "Marcar la línea con tiza, atornillar el riel al entablado, empalmarlo, tapar sus extremos.",
            ),
            Self::Modules => pick(
                "Row by row from the rail: hook in, swing down, screw every foot to the deck; leads on to the next, home run aside, \
                 bare copper through every lug. Modules in light are energized.",
                "Fila por fila desde el riel: enganchar, bajar, atornillar cada pata al entablado; cables al siguiente, la bajada aparte, \
                 cobre desnudo por cada terminal. Los módulos con luz están energizados.",
            ),
            Self::Head => pick(
                "Supports at ends and seams, inserts, the bonding jumper before it closes, head flashing straight and nailed.",
                "Soportes en extremos y juntas, insertos, el puente de unión antes de cerrar, tapajuntas superior derecho y clavado.",
            ),
            Self::Sides => pick(
                "A piece of step flashing with each course up the sides, then the counter flashing snapped on.",
                "Una pieza de tapajuntas escalonado con cada hilada por los lados, luego la contratapajuntas a presión.",
            ),
            Self::Around => pick(
                "Corners interlocked, an L-piece of membrane over each, a strip of membrane, then the peel-and-stick starter.",
                "Esquinas trabadas, una pieza en L de membrana sobre cada una, una franja de membrana, luego la tira de arranque autoadhesiva.",
            ),
            Self::Shingles => pick(
                "Cut course over the head flashing, whole courses to the ridge, caps; the box is flashed in on the way.",
                "Hilada cortada sobre el tapajuntas superior, hiladas enteras hasta la cumbrera, tapas; de paso se tapa la caja.",
            ),
            Self::Wires => pick(
                "Both ends of the home run and the ground into the junction box, left for the electrician.",
                "Los dos extremos de la bajada y la tierra a la caja de empalme, para el electricista.",
            ),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stage_stands_on_stages_before_it_and_all_but_two_on_some() {
        for stage in Stage::ALL {
            assert!(stage.stands_on().iter().all(|before| *before < stage), "{stage:?}");
            let from_nothing = matches!(stage, Stage::TearOff | Stage::Ground);
            assert_eq!(stage.stands_on().is_empty(), from_nothing, "{stage:?}");
        }
        assert!(Stage::ALL.is_sorted());
    }

    #[test]
    fn stages_of_earlier_kits_are_read() {
        let read = |code: &str| serde_json::from_value::<Stage>(code.into()).unwrap();
        assert_eq!(
            ["array", "flashing", "roofing", "wiring"].map(read),
            [Stage::Modules, Stage::BaseRail, Stage::Shingles, Stage::Wires]
        );
    }
}
