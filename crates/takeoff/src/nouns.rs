//! What is counted and measured, as people call it: one of it, and several.

use crate::words::plural;
use chalkcourse_geometry::EdgeKind;
use chalkcourse_job::{ChimneyPart, CricketPart, Measure};
use chalkcourse_words::pick;

/// What one of a measure is called. A length is told by its runs.
pub(crate) fn noun(measure: &Measure) -> &str {
    match measure {
        Measure::Module => pick("module", "módulo"),
        Measure::Block => pick("block", "bloque"),
        Measure::Row => pick("row", "fila"),
        Measure::Seam => pick("seam", "junta"),
        Measure::BaseRail => pick("run of base rail", "tramo de riel base"),
        Measure::Side => pick("side", "lado"),
        Measure::SideCourse => {
            pick("course up the sides, one more a side", "hilada a los lados, una más por lado")
        }
        Measure::Head => pick("run of head flashing", "tramo de tapajuntas superior"),
        Measure::HeadModule => pick("module under the head", "módulo bajo el tapajuntas superior"),
        Measure::HeadSupport => pick("head end and seam", "extremo o junta superior"),
        Measure::HeadCornerLeft => pick("left head corner", "esquina superior izquierda"),
        Measure::HeadCornerRight => pick("right head corner", "esquina superior derecha"),
        Measure::InsideCorner => pick("inside corner", "esquina interior"),
        Measure::BaseCornerLeft => pick("left base corner", "esquina inferior izquierda"),
        Measure::BaseCornerRight => pick("right base corner", "esquina inferior derecha"),
        Measure::Under => pick("area under the array", "área debajo del arreglo"),
        Measure::Around => pick("strip around the array", "franja alrededor del arreglo"),
        Measure::ArrayMembrane => {
            pick("array with the strip around it", "arreglo con la franja a su alrededor")
        }
        Measure::BondingPath => pick("bonding path", "trayecto de la unión eléctrica"),
        Measure::WindFastener => pick("extra fastener for wind", "fijación adicional por viento"),
        Measure::Part(number) => number,
        Measure::Sticks(_) => {
            pick("stick of this length in the cut list", "tramo de este largo en la lista de cortes")
        }
        Measure::Joints(_) => pick("joint between two pieces", "junta entre dos piezas"),
        Measure::Job => pick("job", "obra"),
        Measure::Person => pick("person", "persona"),
        Measure::PersonOnRoof => pick("person on the roof", "persona en el techo"),
        Measure::Deck => pick("face of deck", "faldón de entablado"),
        Measure::TearOff => pick(
            "face of old roofing, each layer counted",
            "faldón de recubrimiento viejo, contando cada capa",
        ),
        Measure::Shingled => pick("face of deck less the array", "faldón de entablado menos el arreglo"),
        Measure::SingleUnderlayment => pick(
            "face with one layer of underlayment, where no membrane lies",
            "faldón con una capa de membrana base, donde no hay membrana autoadherible",
        ),
        Measure::DoubleUnderlayment => pick(
            "face with two layers of underlayment, where no membrane lies",
            "faldón con dos capas de membrana base, donde no hay membrana autoadherible",
        ),
        Measure::LeakBarrier => pick("strip along the eaves", "franja a lo largo de los aleros"),
        Measure::AroundThrough => {
            pick("strip around what comes through", "franja alrededor de lo que atraviesa")
        }
        Measure::Edge(kind) => kind.name(),
        Measure::SideWall => pick("wall line up the slope", "encuentro con muro pendiente arriba"),
        Measure::SideWallCourse => pick(
            "course up the wall lines, one more a line",
            "hilada en los encuentros con muro, una más por línea",
        ),
        Measure::HeadWall => pick("wall line across the slope", "encuentro con muro a lo ancho"),
        Measure::KickOut => pick("wall at the end of an eave", "muro al final de un alero"),
        Measure::Chimney(part) => match part {
            ChimneyPart::Each => pick("chimney", "chimenea"),
            ChimneyPart::Apron => {
                pick("lower side of a chimney with its returns", "lado inferior de chimenea con sus retornos")
            }
            ChimneyPart::Course => {
                pick("course beside chimneys, one more a side", "hilada junto a chimeneas, una más por lado")
            }
            ChimneyPart::BackPan => {
                pick("upper side of a chimney with its returns", "lado superior de chimenea con sus retornos")
            }
            ChimneyPart::Counter => pick("stretch around a chimney", "tramo alrededor de una chimenea"),
        },
        Measure::Cricket(part) => match part {
            CricketPart::Each => pick("cricket", "desviador de agua"),
            CricketPart::Frame => pick("piece of a cricket's frame", "pieza del armazón de un desviador"),
            CricketPart::Area => pick("cricket, both faces", "desviador de agua, ambas caras"),
            CricketPart::Valley => pick("valley of a cricket", "limahoya de un desviador"),
            CricketPart::Wall => {
                pick("line of a cricket at its chimney", "línea de un desviador contra su chimenea")
            }
        },
        Measure::Through(kind) => kind.name(),
        Measure::Pipe { .. } => pick("pipe of this size", "tubo de este tamaño"),
        Measure::CurbCourse => pick(
            "course beside chimneys and skylights, one more a side",
            "hilada junto a chimeneas y tragaluces, una más por lado",
        ),
        Measure::CurbWidth => pick(
            "lower or upper side of a chimney or skylight",
            "lado inferior o superior de una chimenea o tragaluz",
        ),
    }
}

pub(crate) fn nouns(measure: &Measure, count: f64) -> String {
    if (count - 1.0).abs() < 1e-9 {
        return noun(measure).to_owned();
    }
    match measure {
        Measure::BaseRail => pick("runs of base rail", "tramos de riel base").to_owned(),
        Measure::Head => pick("runs of head flashing", "tramos de tapajuntas superior").to_owned(),
        Measure::HeadModule => {
            pick("modules under the head", "módulos bajo el tapajuntas superior").to_owned()
        }
        Measure::HeadSupport => pick("head ends and seams", "extremos y juntas superiores").to_owned(),
        Measure::SideCourse => {
            pick("courses up the sides, one more a side", "hiladas a los lados, una más por lado").to_owned()
        }
        Measure::Under => pick("areas under the array", "áreas debajo del arreglo").to_owned(),
        Measure::Around => pick("strips around the array", "franjas alrededor del arreglo").to_owned(),
        Measure::Sticks(_) => {
            pick("sticks of this length in the cut list", "tramos de este largo en la lista de cortes")
                .to_owned()
        }
        Measure::Joints(_) => pick("joints between two pieces", "juntas entre dos piezas").to_owned(),
        Measure::Person => pick("people", "personas").to_owned(),
        Measure::PersonOnRoof => pick("people on the roof", "personas en el techo").to_owned(),
        Measure::ArrayMembrane => {
            pick("arrays with the strip around them", "arreglos con la franja a su alrededor").to_owned()
        }
        Measure::Deck => pick("faces of deck", "faldones de entablado").to_owned(),
        Measure::TearOff => pick(
            "faces of old roofing, each layer counted",
            "faldones de recubrimiento viejo, contando cada capa",
        )
        .to_owned(),
        Measure::Shingled => {
            pick("faces of deck less the array", "faldones de entablado menos el arreglo").to_owned()
        }
        Measure::SingleUnderlayment => pick(
            "faces with one layer of underlayment, where no membrane lies",
            "faldones con una capa de membrana base, donde no hay membrana autoadherible",
        )
        .to_owned(),
        Measure::DoubleUnderlayment => pick(
            "faces with two layers of underlayment, where no membrane lies",
            "faldones con dos capas de membrana base, donde no hay membrana autoadherible",
        )
        .to_owned(),
        Measure::LeakBarrier => pick("strips along the eaves", "franjas a lo largo de los aleros").to_owned(),
        Measure::AroundThrough => {
            pick("strips around what comes through", "franjas alrededor de lo que atraviesa").to_owned()
        }
        Measure::SideWall => {
            pick("wall lines up the slope", "encuentros con muro pendiente arriba").to_owned()
        }
        Measure::SideWallCourse => pick(
            "courses up the wall lines, one more a line",
            "hiladas en los encuentros con muro, una más por línea",
        )
        .to_owned(),
        Measure::HeadWall => pick("wall lines across the slope", "encuentros con muro a lo ancho").to_owned(),
        Measure::KickOut => pick("walls at the end of an eave", "muros al final de un alero").to_owned(),
        Measure::Chimney(part) => match part {
            ChimneyPart::Each => pick("chimneys", "chimeneas"),
            ChimneyPart::Apron => pick(
                "lower sides of chimneys with their returns",
                "lados inferiores de chimenea con sus retornos",
            ),
            ChimneyPart::Course => pick(
                "courses beside chimneys, one more a side",
                "hiladas junto a chimeneas, una más por lado",
            ),
            ChimneyPart::BackPan => pick(
                "upper sides of chimneys with their returns",
                "lados superiores de chimenea con sus retornos",
            ),
            ChimneyPart::Counter => pick("stretches around chimneys", "tramos alrededor de chimeneas"),
        }
        .to_owned(),
        Measure::Cricket(part) => match part {
            CricketPart::Each => pick("crickets", "desviadores de agua"),
            CricketPart::Frame => pick("pieces of crickets' frames", "piezas del armazón de desviadores"),
            CricketPart::Area => pick("crickets, both faces", "desviadores de agua, ambas caras"),
            CricketPart::Valley => pick("valleys of crickets", "limahoyas de desviadores"),
            CricketPart::Wall => {
                pick("lines of crickets at their chimneys", "líneas de desviadores contra sus chimeneas")
            }
        }
        .to_owned(),
        Measure::Pipe { .. } => pick("pipes of this size", "tubos de este tamaño").to_owned(),
        Measure::CurbCourse => pick(
            "courses beside chimneys and skylights, one more a side",
            "hiladas junto a chimeneas y tragaluces, una más por lado",
        )
        .to_owned(),
        Measure::CurbWidth => pick(
            "lower and upper sides of chimneys and skylights",
            "lados inferiores y superiores de chimeneas y tragaluces",
        )
        .to_owned(),
        Measure::WindFastener => {
            pick("extra fasteners for wind", "fijaciones adicionales por viento").to_owned()
        }
        // What is said of the noun takes the plural too.
        Measure::Edge(EdgeKind::Rake) => pick("rakes", "bordes inclinados").to_owned(),
        // A part keeps its number as it is.
        Measure::Part(number) => number.clone(),
        _ => plural(noun(measure), count),
    }
}
