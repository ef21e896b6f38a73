//! Types that all fits share: the face, the tile, the rules for rows, results and errors.

use crate::{Polygon, Rect};
use chalkcourse_words::{Said, later as words};
use glam::DVec2;
use serde::{Deserialize, Serialize};

/// A good [`Allowed::tolerance`], in metres: far above rounding, far below anything that can be measured.
pub const FINE: f64 = 1e-9;

/// Where tiles may be, in the face's frame.
#[derive(Clone, Debug, Default)]
pub struct Allowed {
    /// The face, or what is left of it: the union of these shapes. They may touch and overlap.
    pub region: Vec<Polygon>,
    /// Shapes that no tile may overlap; touching is allowed. They may overlap each other, and several may have the same
    /// number.
    pub blocked: Vec<Constraint>,
    /// What the lowest row has below it.
    pub foot: Option<Foot>,
    /// How far (metres) a tile may extend over a border and still count as touching. Use [`FINE`]; more than a
    /// millionth of a metre would be a rule of its own.
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

    /// The same with the shapes of a number moved by `by`, metres.
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

/// What each tile of the lowest row has below it, such as a rail: a strip as wide as the tile. In a layout whose upper
/// tiles need not be carried, every tile counts as one of the lowest row.
#[derive(Clone, Debug, PartialEq)]
pub struct Foot {
    /// How far it extends below the tile, metres.
    pub depth: f64,
    /// The number of the constraint that keeps it within the region; `None` if it may extend beyond.
    pub within: Option<usize>,
    /// Shapes that it may not overlap; touching is allowed.
    pub blocked: Vec<Constraint>,
}

/// A blocked shape with the number by which the caller knows it.
#[derive(Clone, Debug, PartialEq)]
pub struct Constraint {
    /// The caller's number for what it represents: a setback, a clearance, a locked tile.
    pub id: usize,
    /// The shape.
    pub shape: Polygon,
}

/// The rectangle to lay, in its orientation on the face.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Tile {
    /// Width along u and height along v, in metres.
    pub size: DVec2,
    /// Joint between neighbours along u and along v, in metres.
    pub gap: DVec2,
}

impl Tile {
    /// The distance from one tile to the next.
    pub fn pitch(&self) -> DVec2 {
        self.size + self.gap
    }
    /// The same tile rotated by a quarter turn; the joints keep their directions.
    pub fn turned(&self) -> Self {
        Self { size: DVec2::new(self.size.y, self.size.x), gap: self.gap }
    }
}

/// How the joints of a row relate to those of the row below.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Joints {
    /// Every row slides on its own, and tiles in a row may be farther apart than the joint.
    Free,
    /// One grid: the joints of all rows are aligned.
    Aligned,
    /// One grid with every other row offset by half a pitch.
    Lapped,
}

/// Where the lower edge of the lowest row may be.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Base {
    /// Anywhere.
    #[default]
    Anywhere,
    /// Only relative to the courses: at `first + n * exposure + x`, n = 0, 1, 2 … and x from `play.0` to `play.1`.
    Courses {
        /// v of the first course line, metres.
        first: f64,
        /// The distance between courses, metres.
        exposure: f64,
        /// How far from a course line the base may be: from, to, in metres.
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
    /// Whether every tile above the lowest row must be carried: tiles of the row below under its whole lower edge,
    /// except for joints of one gap.
    pub hooked: bool,
}

/// A placed tile.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Placed {
    /// The row, from 0 upwards.
    pub row: usize,
    /// The place in the row, from 0: the column if columns are aligned, otherwise just the order.
    pub column: usize,
    /// Its rectangle.
    pub rect: Rect,
}

/// What a fit found, and how much of that is proved.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Fit {
    /// The tiles, by rows from below and from the left.
    pub placed: Vec<Placed>,
    /// Upper bound on any layout in the space that was searched.
    pub bound: usize,
    /// What was searched.
    pub proof: Proof,
}

impl Fit {
    /// The number of tiles.
    pub fn count(&self) -> usize {
        self.placed.len()
    }
    /// How many more tiles the bound leaves open: 0 if proved.
    pub fn gap(&self) -> usize {
        self.bound.saturating_sub(self.placed.len())
    }
}

/// The space that a search covered.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Proof {
    /// The tile as laid: the claim is only for this orientation.
    pub tile: Tile,
    /// The rules of the claim.
    pub rules: RowRules,
    /// Pieces of the space of positions.
    pub pieces: usize,
    /// Cells of offsets between critical ones that were searched.
    pub cells: usize,
    /// Cells that a bound ruled out without a search.
    pub ruled_out: usize,
    /// Whether the search finished; otherwise the bound includes what was left open.
    pub finished: bool,
}

impl Proof {
    /// The claim.
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
    /// The tolerance is not a usable number.
    #[error("{}", words::fill::a_tolerance_of_m_will(&_0))]
    Tolerance(f64),
    /// The depth of the foot of the lowest row is not a length.
    #[error("{}", words::fill::the_lowest_row_carries_something(&_0))]
    Foot(f64),
    /// A corner is not a finite number, or beyond 100 km.
    #[error("{}", words::fill::corner_of_is_no_finite(&corner, &shape))]
    Corner {
        /// The shape.
        shape: Said,
        /// The corner, counted over all rings.
        corner: usize,
    },
    /// The courses are invalid.
    #[error("{}", words::fill::courses_of_m_with_a(&exposure, &from, &to))]
    Courses {
        /// The distance between courses.
        exposure: f64,
        /// Start of the play.
        from: f64,
        /// End of the play.
        to: f64,
    },
    /// More tiles could fit than this code is made for.
    #[error("{}", words::fill::this_face_could_hold_tiles(&_0))]
    TooMany(f64),
    /// A number that can't be used for a choice.
    #[error("{0}")]
    Choice(Said),
}

/// A place for a tile.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TilePlace {
    /// Its lower left corner.
    pub at: DVec2,
    /// Whether it is in the lowest row, and has the [`Foot`].
    pub lowest: bool,
}

/// Checks that a tile and a face are valid input.
///
/// # Errors
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
