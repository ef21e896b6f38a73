use chalkcourse_geometry::{DVec2, EdgeKind, Polygon, Rect};
use chalkcourse_job::{BlockId, Cell, FaceId};
use chalkcourse_layout::CornerKind;
use chalkcourse_words::{pick, tell};
use std::sync::Arc;

/// One place that a quantity comes from.
#[derive(Clone, Debug, PartialEq)]
pub struct Place {
    /// The face; `None` where a quantity is for the job as a whole.
    pub face: Option<FaceId>,
    /// The block, where it is one that a quantity comes from.
    pub block: Option<BlockId>,
    /// What the face or the penetration is called, where no block is.
    pub name: Option<Arc<str>>,
    /// Which of its kind.
    pub spot: Spot,
    /// How much is measured here: pieces, metres or square metres. What a part takes of it is told by
    /// [`LineTerm::shares`](crate::LineTerm::shares).
    pub amount: f64,
    /// Where on the face, in its frame, metres.
    pub shape: PlaceShape,
}

/// Which thing on a block a place is. Rows and columns count from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Spot {
    /// A module.
    Module(Cell),
    /// The block.
    Block,
    /// Modules of a row without a break.
    Row(u32),
    /// A seam: its row, and which of that row's seams.
    Seam(u32, u32),
    /// Base rail under a row.
    BaseRail(u32),
    /// Left side from this row up.
    LeftSide(u32),
    /// Right side from this row up.
    RightSide(u32),
    /// Head flashing over a row.
    Head(u32),
    /// The left end of the head flashing over a row.
    HeadLeftEnd(u32),
    /// The right end of the head flashing over a row.
    HeadRightEnd(u32),
    /// A corner.
    Corner(CornerKind),
    /// The deck under the block.
    Under,
    /// The strip around the block.
    Around,
    /// The deck under the block and the strip around it.
    UnderAndAround,
    /// The way of the bonding conductor.
    BondingPath,
    /// A face.
    Face,
    /// A line of the roof.
    Edge(EdgeKind),
    /// A wall line up the slope.
    SideWall,
    /// A wall line across the slope.
    HeadWall,
    /// A strip along an eave.
    LeakBarrier,
    /// Something that comes through the roof.
    Through,
    /// Its left side.
    ThroughLeft,
    /// Its right side.
    ThroughRight,
    /// Its lower side.
    ThroughLow,
    /// Its upper side.
    ThroughHigh,
    /// The deck around it.
    AroundThrough,
    /// The cricket behind it.
    Cricket,
    /// The lower end of a wall line at an eave.
    KickOut,
    /// The job as a whole.
    Job,
}

/// Where a place is, in the frame of the block's face, metres.
#[derive(Clone, Debug, PartialEq)]
pub enum PlaceShape {
    /// A spot.
    Point(DVec2),
    /// A way.
    Path(Vec<DVec2>),
    /// A rectangle.
    Rect(Rect),
    /// An area, as rectangles that do not overlap one another.
    Area(Vec<Rect>),
    /// Areas of any outline that do not overlap one another.
    Outlines(Vec<Polygon>),
    /// No one place: the job as a whole.
    Whole,
}

impl Place {
    /// Which of its kind, for people: "row 2, column 3", "head of row 3". Rows count from the eave, columns from the
    /// left, both from 1.
    pub fn label(&self) -> String {
        match (&self.name, self.spot) {
            (Some(name), Spot::Face | Spot::Through) => name.to_string(),
            (Some(name), spot) => format!("{name}, {}", spot.label()),
            (None, spot) => spot.label(),
        }
    }
}

impl Spot {
    fn label(self) -> String {
        match self {
            Self::Module(cell) => {
                tell!("row {}, column {}", "fila {}, columna {}", cell.row + 1, cell.column + 1)
            }
            Self::Block => pick("the block", "el bloque").to_owned(),
            Self::Row(row) => tell!("row {}", "fila {}", row + 1),
            Self::Seam(row, seam) => tell!("row {}, seam {}", "fila {}, junta {}", row + 1, seam + 1),
            Self::BaseRail(row) => tell!("base rail of row {}", "riel base de la fila {}", row + 1),
            Self::LeftSide(row) => {
                tell!("left side from row {} up", "lado izquierdo desde la fila {}", row + 1)
            }
            Self::RightSide(row) => {
                tell!("right side from row {} up", "lado derecho desde la fila {}", row + 1)
            }
            Self::Head(row) => tell!("head of row {}", "parte superior de la fila {}", row + 1),
            Self::HeadLeftEnd(row) => {
                tell!("head of row {}, left end", "parte superior de la fila {}, extremo izquierdo", row + 1)
            }
            Self::HeadRightEnd(row) => {
                tell!("head of row {}, right end", "parte superior de la fila {}, extremo derecho", row + 1)
            }
            Self::Corner(kind) => match kind {
                CornerKind::HeadLeft => pick("left head corner", "esquina superior izquierda"),
                CornerKind::HeadRight => pick("right head corner", "esquina superior derecha"),
                CornerKind::BaseLeft => pick("left base corner", "esquina inferior izquierda"),
                CornerKind::BaseRight => pick("right base corner", "esquina inferior derecha"),
                CornerKind::Inside => pick("inside corner", "esquina interior"),
            }
            .to_owned(),
            Self::Under => pick("under the array", "debajo del arreglo").to_owned(),
            Self::Around => pick("around the array", "alrededor del arreglo").to_owned(),
            Self::UnderAndAround => {
                pick("under and around the array", "debajo del arreglo y alrededor").to_owned()
            }
            Self::BondingPath => pick("bonding path", "trayecto de la unión eléctrica").to_owned(),
            Self::Face => pick("the face", "el faldón").to_owned(),
            Self::Edge(kind) => kind.name().to_owned(),
            Self::SideWall => {
                pick("wall line up the slope", "encuentro con muro pendiente arriba").to_owned()
            }
            Self::HeadWall => pick("wall line across the slope", "encuentro con muro a lo ancho").to_owned(),
            Self::LeakBarrier => pick("along the eave", "a lo largo del alero").to_owned(),
            Self::Through => pick("penetration", "penetración").to_owned(),
            Self::ThroughLeft => pick("left side", "lado izquierdo").to_owned(),
            Self::ThroughRight => pick("right side", "lado derecho").to_owned(),
            Self::ThroughLow => pick("lower side", "lado inferior").to_owned(),
            Self::ThroughHigh => pick("upper side", "lado superior").to_owned(),
            Self::AroundThrough => pick("deck around it", "entablado alrededor").to_owned(),
            Self::Cricket => pick("cricket", "desviador de agua").to_owned(),
            Self::KickOut => pick("wall at the end of an eave", "muro al final de un alero").to_owned(),
            Self::Job => pick("the job", "la obra").to_owned(),
        }
    }
}

#[cfg(test)]
impl Place {
    /// A run of some length, for tests.
    pub(crate) fn test_run(length: f64) -> Self {
        Self {
            face: None,
            block: None,
            name: None,
            spot: Spot::Job,
            amount: length,
            shape: PlaceShape::Path(vec![DVec2::ZERO, DVec2::X * length]),
        }
    }
}
