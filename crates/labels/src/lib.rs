//! Label placement: text that overlaps neither other text, dimensions, penetrations nor lines that it does not name.
//!
//! The crate knows no screen, no paper and no typeface: the caller measures the text, says where it belongs ([`Anchor`]), what
//! forms it may take ([`Try`]) and what is in the way ([`Obstacle`]), and gets the position of each label ([`Placed`]) or that
//! there is no room. Lengths are those of the drawing, usually points; x to the right, y up or down, as the caller likes.
//!
//! [`place`] is a pure function: lower ranks are placed first, ties in the order given, each at its first free candidate.
//! Candidates depend on the thing and not on the view, so a drawing that is panned takes its labels along.
//!
//! - `spots`: the candidates of a label, in a fixed order
//! - `ground`: what is occupied, and what a candidate collides with
//! - `placing`: one label after another; one without a place asks one other to move
//! - `last`: a drawing that stands still is not placed again

mod ground;
mod last;
mod placing;
mod spots;

pub use last::Last;
pub use placing::place;
pub use spots::upright;

use chalkcourse_geometry::{DVec2, Rect};

/// A drawing's obstacles, and the labels to place on it.
#[derive(Clone, Debug, PartialEq)]
pub struct Scene {
    /// No corner of a label leaves this rectangle.
    pub clip: Rect,
    /// What labels avoid.
    pub obstacles: Vec<Obstacle>,
    /// The labels; ties are won by the earlier one.
    pub labels: Vec<Label>,
    /// Minimum clearance between labels, and between labels and obstacles.
    pub clear: f64,
}

/// A label to place.
#[derive(Clone, Debug, PartialEq)]
pub struct Label {
    /// Lower ranks are placed first; higher ones give way.
    pub rank: u8,
    /// The thing it names, whose obstacles it ignores.
    pub names: Option<u32>,
    /// Where it belongs.
    pub anchor: Anchor,
    /// Its forms, in order of preference.
    pub tries: Vec<Try>,
    /// What it may overlap if nothing better is free.
    pub over: Over,
}

/// One form of a label: longer text before shorter, at the thing before a leader.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Try {
    /// Width and height of the text with its background.
    pub size: DVec2,
    /// Distance from its thing.
    pub how: How,
}

/// How far from its thing a label may be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum How {
    /// At its thing; along a line, no longer than the line.
    Home,
    /// At its thing; beside a line, it may be longer.
    Overhanging,
    /// Further out, upright, with a leader no longer than this.
    Leader(f64),
}

/// Where a label belongs.
#[derive(Clone, Debug, PartialEq)]
pub enum Anchor {
    /// Centred at this point only, whatever is there.
    Fixed(DVec2),
    /// Close to a thing.
    Around {
        /// The thing, or a point.
        thing: Rect,
        /// Gap to it.
        gap: f64,
        /// Sides in order of preference: each −1, 0 or 1 along x and y.
        sides: &'static [(i8, i8)],
    },
    /// Along a line.
    Along {
        /// Start.
        from: DVec2,
        /// End.
        to: DVec2,
        /// 0 for on it, 1 and −1 for beside it (1 for the side a quarter turn from x towards y), in order of preference.
        beside: &'static [f64],
        /// Gap beside it.
        gap: f64,
        /// Whether the text is rotated along the line.
        turned: bool,
        /// Preferred position along it, as a fraction.
        home: f64,
    },
    /// Within a shape.
    Within {
        /// Its outline, and those of its holes.
        rings: Vec<Vec<DVec2>>,
        /// Preferred position.
        home: DVec2,
    },
}

/// What a label may overlap if nothing better is free.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Over {
    /// Nothing.
    Nothing,
    /// [`Weight::Faint`] obstacles.
    Faint,
    /// [`Weight::Ground`] obstacles too.
    Ground,
}

/// How much an obstacle must stay visible.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Weight {
    /// An auxiliary line, such as the border of a zone.
    Faint,
    /// An area that is better left free, such as modules.
    Ground,
    /// A line that no label may cover; a leader may cross it.
    Line,
    /// What nothing may cross.
    Solid,
}

/// What labels avoid.
#[derive(Clone, Debug, PartialEq)]
pub struct Obstacle {
    /// Its shape.
    pub body: Body,
    /// Its weight.
    pub weight: Weight,
    /// Number of the thing, for labels that name it.
    pub of: Option<u32>,
}

/// Shape of an obstacle.
#[derive(Clone, Debug, PartialEq)]
pub enum Body {
    /// A line and its half width.
    Line(DVec2, DVec2, f64),
    /// An axis-aligned rectangle.
    Rect(Rect),
    /// A convex shape.
    Convex(Vec<DVec2>),
}

/// The position of a label.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Placed {
    /// Its centre.
    pub at: DVec2,
    /// Rotation, radians from x towards y.
    pub turn: f64,
    /// Half its width and height before rotation.
    pub half: DVec2,
    /// Index of the form used.
    pub nth: usize,
    /// The leader, from its thing to its border.
    pub leader: Option<(DVec2, DVec2)>,
}

impl Placed {
    /// Its corners, in order.
    pub fn corners(&self) -> [DVec2; 4] {
        let along = DVec2::from_angle(self.turn);
        let (x, y) = (along * self.half.x, along.perp() * self.half.y);
        [self.at - x - y, self.at + x - y, self.at + x + y, self.at - x + y]
    }

    /// Its axis-aligned bounding box.
    pub fn bounds(&self) -> Rect {
        let (sin, cos) = (self.turn.sin().abs(), self.turn.cos().abs());
        let half = DVec2::new(cos * self.half.x + sin * self.half.y, sin * self.half.x + cos * self.half.y);
        Rect { min: self.at - half, max: self.at + half }
    }
}
