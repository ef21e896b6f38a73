//! What all fits speak of: the face, the tile, how rows lie, what comes out and what is refused.

use crate::{Polygon, Rect};
use chalkcourse_words::{Said, later as words};
use glam::DVec2;
use serde::{Deserialize, Serialize};

/// A good [`Allowed::tolerance`], in metres: far above rounding, far below anything that can be measured.
pub const FINE: f64 = 1e-9;

/// Where tiles may stand, in the face's frame.
#[derive(Clone, Debug, Default)]
pub struct Allowed {
    /// The face, or what is left of it: the union of these shapes. They may touch and overlap.
    pub region: Vec<Polygon>,
    /// Shapes that no tile may reach into; touching is allowed. They may overlap, and several may share a number.
    pub blocked: Vec<Constraint>,
    /// What the lowest row carries below it.
    pub foot: Option<Foot>,
    /// How far (metres) a tile may reach over a border and still count as touching. Use [`FINE`]; more than a
    /// millionth of a metre begins to be a rule of its own.
    pub tolerance: f64,
}

impl Allowed {
    /// The numbers of all shapes that stop something, each once.
    pub fn numbers(&self) -> Vec<usize> {
        let below = self.foot.iter();
        let below = below.flat_map(|foot| foot.blocked.iter().map(|c| c.id).chain(foot.within));
        let mut numbers: Vec<usize> = self.blocked.iter().map(|c| c.id).chain(below).collect();
        numbers.sort_unstable();
        numbers.dedup();
        numbers
    }

    /// The same without the shapes of a number.
    pub fn without(&self, number: usize) -> Self {
        let within = |within: &usize| *within != number;
        self.with_blocked(&within, &|c| (c.id != number).then(|| c.clone()))
    }

    /// The same with the shapes of a number elsewhere: `by` is the move, metres.
    pub fn moved(&self, number: usize, by: DVec2) -> Self {
        let moved = |c: &Constraint| Constraint { shape: c.shape.map(|p| p + by), ..*c };
        self.with_blocked(&|_| true, &|c| Some(if c.id == number { moved(c) } else { c.clone() }))
    }

    fn with_blocked(
        &self,
        within: &dyn Fn(&usize) -> bool,
        of: &dyn Fn(&Constraint) -> Option<Constraint>,
    ) -> Self {
        let all = |blocked: &[Constraint]| blocked.iter().filter_map(of).collect();
        let foot = self.foot.as_ref();
        let foot = foot.map(|foot| Foot {
            depth: foot.depth,
            within: foot.within.filter(within),
            blocked: all(&foot.blocked),
        });
        let (region, tolerance) = (self.region.clone(), self.tolerance);
        Self { region, blocked: all(&self.blocked), foot, tolerance }
    }
}

/// What each tile of the lowest row carries below it, such as a rail: a strip as wide as the tile. In a layout whose upper
/// tiles need not be carried, every tile counts as one of the lowest row.
#[derive(Clone, Debug, PartialEq)]
pub struct Foot {
    /// How far it reaches below the tile, metres.
    pub depth: f64,
    /// The number of what keeps it within the region; `None` where it may reach beyond.
    pub within: Option<usize>,
    /// Shapes that it may not reach into; touching is allowed.
    pub blocked: Vec<Constraint>,
}

/// A blocked shape with the number that the caller knows it by.
#[derive(Clone, Debug, PartialEq)]
pub struct Constraint {
    /// The caller's number for what it stands for: a setback, a clearance, a locked tile.
    pub id: usize,
    /// The shape.
    pub shape: Polygon,
}

/// The rectangle to lay, as it lies.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Tile {
    /// Width along u and height along v, in metres.
    pub size: DVec2,
    /// Joint between neighbours along u and along v, in metres.
    pub gap: DVec2,
}

impl Tile {
    /// From one tile to the next.
    pub fn pitch(&self) -> DVec2 {
        self.size + self.gap
    }
    /// The same tile turned by a quarter; the joints stay with their directions.
    pub fn turned(&self) -> Self {
        Self { size: DVec2::new(self.size.y, self.size.x), gap: self.gap }
    }
}

/// How the joints of a row stand to those of the row below.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Joints {
    /// Every row slides by itself, and within a row too there may be room between tiles.
    Free,
    /// One grid: the joints of all rows stand in line.
    Aligned,
    /// One grid with every other row half a pitch aside.
    Lapped,
}

/// Where the lower edge of the lowest row may fall.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Base {
    /// Anywhere.
    #[default]
    Anywhere,
    /// Only by the courses: at `first + n * exposure + x`, n = 0, 1, 2 … and x from `play.0` to `play.1`.
    Courses {
        /// v of the first course line, metres.
        first: f64,
        /// From one course to the next, metres.
        exposure: f64,
        /// How far from a course line the base may fall: from, to, in metres.
        play: (f64, f64),
    },
}

/// How rows are laid.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct RowRules {
    /// The joints from row to row.
    pub joints: Joints,
    /// The base line.
    pub base: Base,
    /// Whether every tile above the lowest row must be carried: tiles of the row below under the whole of its
    /// lower edge, but for joints of one gap.
    pub hooked: bool,
}

/// One tile as placed.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Placed {
    /// The row, from 0 upwards.
    pub row: usize,
    /// The place in the row, from 0: the column where columns stand in line, else just the order.
    pub column: usize,
    /// Where it lies.
    pub rect: Rect,
}

/// What a fit found and how much of that is proved.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Fit {
    /// The tiles, by rows from below and from the left.
    pub placed: Vec<Placed>,
    /// No layout in the space searched has more.
    pub bound: usize,
    /// What was searched.
    pub proof: Proof,
}

impl Fit {
    /// How many tiles.
    pub fn count(&self) -> usize {
        self.placed.len()
    }
    /// How many more the bound leaves open: 0 when proved.
    pub fn gap(&self) -> usize {
        self.bound.saturating_sub(self.placed.len())
    }
}

/// The space that a search covered.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Proof {
    /// The tile as laid: the claim is for this orientation alone.
    pub tile: Tile,
    /// The rules of the claim.
    pub rules: RowRules,
    /// Pieces of the space of positions.
    pub pieces: usize,
    /// Cells of offsets between critical ones that were looked into.
    pub cells: usize,
    /// Cells that a bound ruled out without looking into them.
    pub ruled_out: usize,
    /// Whether the search ran to its end; else the bound is what was left open.
    pub finished: bool,
}

impl Proof {
    /// What is claimed.
    pub fn claim(&self) -> Said {
        let joints = match self.rules.joints {
            Joints::Free => words::fill::EACH_ROW_SLID_BY_ITSELF,
            Joints::Aligned => words::fill::ONE_GRID_AT_EVERY_OFFSET,
            Joints::Lapped => words::fill::HALF_LAPPED_ROWS_AT_EVERY,
        };
        let base = match self.rules.base {
            Base::Anywhere => words::fill::BASE_ANYWHERE.into(),
            Base::Courses { first, exposure, play } => words::fill::base_by_courses_of_m(
                &format_args!("{exposure:.4}"),
                &format_args!("{first:.4}"),
                &format_args!("{:.4}", play.0),
                &format_args!("{:.4}", play.1),
            ),
        };
        let size = self.tile.size;
        let hooked = self.rules.hooked.then_some(words::fill::EVERY_UPPER_TILE_CARRIED);
        let end = (!self.finished).then_some(words::fill::STOPPED_BEFORE_THE_END_2);
        words::fill::tiles_x_m_as_laid(
            &format_args!("{:.4}", size.x),
            &format_args!("{:.4}", size.y),
            &format_args!("{:.4}", self.tile.pitch().y),
            &joints,
            &base,
            &hooked,
            &self.cells,
            &self.ruled_out,
            &end,
        )
    }
}

/// Why there is no fit.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum FitError {
    /// The tile has no size, or a negative joint.
    #[error("{}", words::fill::a_tile_of_x_m(&width, &height, &gap_u, &gap_v))]
    Tile {
        /// Along u.
        width: f64,
        /// Along v.
        height: f64,
        /// Along u.
        gap_u: f64,
        /// Along v.
        gap_v: f64,
    },
    /// The tolerance is no number that can serve.
    #[error("{}", words::fill::a_tolerance_of_m_will(&_0))]
    Tolerance(f64),
    /// What the lowest row carries reaches below it by no length.
    #[error("{}", words::fill::the_lowest_row_carries_something(&_0))]
    Foot(f64),
    /// A corner is no finite number, or beyond 100 km.
    #[error("{}", words::fill::corner_of_is_no_finite(&corner, &shape))]
    Corner {
        /// Which shape.
        shape: Said,
        /// Which corner, over all rings.
        corner: usize,
    },
    /// The courses go nowhere.
    #[error("{}", words::fill::courses_of_m_with_a(&exposure, &from, &to))]
    Courses {
        /// Course to course.
        exposure: f64,
        /// Play from.
        from: f64,
        /// Play to.
        to: f64,
    },
    /// More tiles could fit than this is made for.
    #[error("{}", words::fill::this_face_could_hold_tiles(&_0))]
    TooMany(f64),
    /// A number that a choice cannot use.
    #[error("{0}")]
    Choice(Said),
}

/// A place for a tile.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TilePlace {
    /// Its lower left corner.
    pub at: DVec2,
    /// Whether it belongs to the lowest row, and carries the [`Foot`].
    pub lowest: bool,
}

/// Whether a fit can work with a tile on a face.
///
/// # Errors
/// A tile, a tolerance or a corner that can't be worked with.
pub(super) fn check(allowed: &Allowed, tile: &Tile) -> Result<(), FitError> {
    let (size, gap) = (tile.size, tile.gap);
    let good = size.is_finite() && gap.is_finite() && size.min_element() > 0.0 && gap.min_element() >= 0.0;
    if !good {
        return Err(FitError::Tile { width: size.x, height: size.y, gap_u: gap.x, gap_v: gap.y });
    }
    let t = allowed.tolerance;
    if !(t > 0.0 && t < size.min_element() / 100.0) {
        return Err(FitError::Tolerance(t));
    }
    if let Some(foot) = &allowed.foot
        && !(0.0..1e5).contains(&foot.depth)
    {
        return Err(FitError::Foot(foot.depth));
    }
    let named = allowed.region.iter().map(|shape| (None, shape));
    let below = allowed.foot.iter().flat_map(|foot| &foot.blocked);
    for (id, shape) in named.chain(allowed.blocked.iter().chain(below).map(|c| (Some(c.id), &c.shape))) {
        if let Some(corner) =
            shape.rings().flatten().position(|p| !p.is_finite() || p.abs().max_element() > 1e5)
        {
            let shape = id.map_or(words::common::THE_FACE.into(), |id| words::fill::blocked_shape(&id));
            return Err(FitError::Corner { shape, corner });
        }
    }
    let bounds = Rect::around(allowed.region.iter().flat_map(|shape| shape.outer.iter().copied()));
    let most =
        bounds.map_or(0.0, |b| (b.size() / size).max_element().powi(2).min(b.area() / (size.x * size.y)));
    if most > 1e6 {
        return Err(FitError::TooMany(most.floor()));
    }
    Ok(())
}
