use chalkcourse_geometry::{DVec2, EdgeKind, Polygon, Rect};
use chalkcourse_job::{BlockId, Cell, FaceId};
use chalkcourse_layout::CornerKind;
use chalkcourse_words::{Said, later as words};
use std::sync::Arc;

/// One place where a quantity arises.
#[derive(Clone, Debug, PartialEq)]
pub struct MeasuredPlace {
    /// The face; `None` for a quantity of the job as a whole.
    pub face: Option<FaceId>,
    /// The block, if the quantity comes from one.
    pub block: Option<BlockId>,
    /// Name of the circuit; of the face or penetration, if there is no block.
    pub name: Option<Arc<str>>,
    /// Which of its kind.
    pub spot: Spot,
    /// Amount measured here: pieces, metres or square metres. [`LineTerm::shares`](crate::LineTerm::shares) says how much of the
    /// part that makes.
    pub amount: f64,
    /// Where on the face, in its frame, metres.
    pub shape: MeasuredShape,
}

/// What a place is, on a block or the roof. Rows and columns are 0-based.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Spot {
    /// A module.
    Module(Cell),
    /// The block.
    Block,
    /// A contiguous run of modules in a row.
    Row(u32),
    /// A seam: its row, and its index in that row.
    Seam(u32, u32),
    /// The base rail under a row.
    BaseRail(u32),
    /// The left side from this row up.
    LeftSide(u32),
    /// The right side from this row up.
    RightSide(u32),
    /// The head flashing over a row.
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
    /// The route of the bonding conductor.
    BondingPath,
    /// A face.
    Face,
    /// A roof line.
    Edge(EdgeKind),
    /// A wall line up the slope.
    SideWall,
    /// A wall line across the slope.
    HeadWall,
    /// A strip along an eave.
    LeakBarrier,
    /// A penetration.
    Through,
    /// Its left side.
    ThroughLeft,
    /// Its right side.
    ThroughRight,
    /// Its lower side.
    ThroughLow,
    /// Its upper side.
    ThroughHigh,
    /// The deck around a penetration.
    AroundThrough,
    /// The cricket behind a penetration.
    Cricket,
    /// The lower end of a wall line at an eave.
    KickOut,
    /// A circuit: where it begins or ends, or a link of it.
    Circuit,
    /// A junction box.
    JunctionBox,
    /// The whole job.
    Job,
}

/// Geometry of a place, in the frame of the face, metres.
#[derive(Clone, Debug, PartialEq)]
pub enum MeasuredShape {
    /// A point.
    Point(DVec2),
    /// A polyline.
    Path(Vec<DVec2>),
    /// A rectangle.
    Rect(Rect),
    /// An area, as non-overlapping rectangles.
    Area(Vec<Rect>),
    /// Non-overlapping areas of arbitrary outline.
    Outlines(Vec<Polygon>),
    /// The whole job, no particular place.
    Whole,
}

impl MeasuredPlace {
    /// Which of its kind, as a label: "row 2, column 3", "head of row 3". Rows count from the eave, columns from the left, both
    /// from 1.
    pub fn label(&self) -> Said {
        match (&self.name, self.spot) {
            (Some(name), Spot::Circuit) => words::wires::circuit(&&**name),
            (Some(name), Spot::Face | Spot::Through) => Said::own(&**name),
            (Some(name), spot) => spot.label().after(format!("{name}, ")),
            (None, spot) => spot.label(),
        }
    }
}

impl Spot {
    fn label(self) -> Said {
        match self {
            Self::Module(cell) => words::takeoff::row_column(&(cell.row + 1), &(cell.column + 1)),
            Self::Block => words::takeoff::THE_BLOCK.into(),
            Self::Row(row) => words::takeoff::row(&(row + 1)),
            Self::Seam(row, seam) => words::takeoff::row_seam(&(row + 1), &(seam + 1)),
            Self::BaseRail(row) => words::takeoff::base_rail_of_row(&(row + 1)),
            Self::LeftSide(row) => words::takeoff::left_side_from_row_up(&(row + 1)),
            Self::RightSide(row) => words::takeoff::right_side_from_row_up(&(row + 1)),
            Self::Head(row) => words::takeoff::head_of_row(&(row + 1)),
            Self::HeadLeftEnd(row) => words::takeoff::head_of_row_left_end(&(row + 1)),
            Self::HeadRightEnd(row) => words::takeoff::head_of_row_right_end(&(row + 1)),
            Self::Corner(kind) => match kind {
                CornerKind::HeadLeft => words::takeoff::LEFT_HEAD_CORNER,
                CornerKind::HeadRight => words::takeoff::RIGHT_HEAD_CORNER,
                CornerKind::BaseLeft => words::takeoff::LEFT_BASE_CORNER,
                CornerKind::BaseRight => words::takeoff::RIGHT_BASE_CORNER,
                CornerKind::Inside => words::common::INSIDE_CORNER,
            }
            .into(),
            Self::Under => words::takeoff::UNDER_THE_ARRAY.into(),
            Self::Around => words::takeoff::AROUND_THE_ARRAY.into(),
            Self::UnderAndAround => words::takeoff::UNDER_AND_AROUND_THE_ARRAY.into(),
            Self::BondingPath => words::takeoff::BONDING_PATH.into(),
            Self::Face => words::common::THE_FACE.into(),
            Self::Edge(kind) => kind.name().into(),
            Self::SideWall => words::takeoff::WALL_LINE_UP_THE_SLOPE.into(),
            Self::HeadWall => words::takeoff::WALL_LINE_ACROSS_THE_SLOPE.into(),
            Self::LeakBarrier => words::takeoff::ALONG_THE_EAVE.into(),
            Self::Through => words::common::PENETRATION.into(),
            Self::ThroughLeft => words::takeoff::LEFT_SIDE.into(),
            Self::ThroughRight => words::takeoff::RIGHT_SIDE.into(),
            Self::ThroughLow => words::takeoff::LOWER_SIDE.into(),
            Self::ThroughHigh => words::takeoff::UPPER_SIDE.into(),
            Self::AroundThrough => words::takeoff::DECK_AROUND_IT.into(),
            Self::Cricket => words::takeoff::CRICKET.into(),
            Self::KickOut => words::takeoff::WALL_AT_THE_END_OF.into(),
            Self::Circuit => words::job::CIRCUIT.into(),
            Self::JunctionBox => words::job::JUNCTION_BOX.into(),
            Self::Job => words::common::THE_JOB.into(),
        }
    }
}

#[cfg(test)]
impl MeasuredPlace {
    /// A run of the given length, for tests.
    pub(crate) fn test_run(length: f64) -> Self {
        Self {
            face: None,
            block: None,
            name: None,
            spot: Spot::Job,
            amount: length,
            shape: MeasuredShape::Path(vec![DVec2::ZERO, DVec2::X * length]),
        }
    }
}
