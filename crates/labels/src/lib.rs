//! Where words stand on a drawing: not on one another, on dimensions, on what comes through the roof, or on lines that they don't name.
//!
//! The crate knows no screen, no paper and no type: who draws measures the words, says where they belong ([`Anchor`]), what they may
//! look like ([`Try`]) and what is in the way ([`Obstacle`]), and is told where each stands ([`Placed`]) or that it has no room. Lengths are
//! those of the drawing, points mostly; x to the right, y up or down, as it likes.
//!
//! [`place`] is a pure function: what matters more is placed first, of equals the one that was named first, each at the first of its
//! places that is free. Places hang on the thing and not on the view, so that a drawing that is moved takes its words along.
//!
//! - `spots`: the places that a label could take, in a fixed order
//! - `ground`: what is taken, and what a rectangle would lie on
//! - `placing`: one label after another; who has no place asks one other to move

mod ground;
mod placing;
mod spots;

pub use placing::place;
pub use spots::upright;

use chalkcourse_geometry::{DVec2, Rect};

/// A drawing with what lies on it, and the words that want to.
#[derive(Clone, Debug)]
pub struct Scene {
    /// No words stand beyond it, not by a corner.
    pub clip: Rect,
    /// What words keep off.
    pub obstacles: Vec<Obstacle>,
    /// The words, those first that shall win among equals.
    pub labels: Vec<Label>,
    /// The least gap between words, and between words and what they keep off.
    pub clear: f64,
}

/// Words that belong somewhere.
#[derive(Clone, Debug)]
pub struct Label {
    /// Lower ranks are placed first; a higher one gives way.
    pub rank: u8,
    /// The thing that it names, whose obstacles are none to it.
    pub names: Option<u32>,
    /// Where it belongs.
    pub anchor: Anchor,
    /// What it may look like, in this order.
    pub tries: Vec<Try>,
    /// What it may lie on where nothing better is free.
    pub over: Over,
}

/// One look of a label: shorter words are tried after longer ones, a leader after the place at the thing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Try {
    /// Width and height of the words, with the ground around them.
    pub size: DVec2,
    /// How far from its thing.
    pub how: How,
}

/// How far from its thing a label may stand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum How {
    /// At its thing; along a line it is no longer than the line.
    Home,
    /// At its thing; beside a line it may be longer.
    Overhanging,
    /// Out, upright, with a line to its thing; not farther than this.
    Leader(f64),
}

/// Where a label belongs.
#[derive(Clone, Debug)]
pub enum Anchor {
    /// Its middle is here and nowhere else, whatever lies there.
    Fixed(DVec2),
    /// Close to a thing.
    Around {
        /// The thing, or a point.
        thing: Rect,
        /// How far from it.
        gap: f64,
        /// On which sides, in this order: each −1, 0 or 1 along x and y.
        sides: &'static [(i8, i8)],
    },
    /// Along a line.
    Along {
        /// From here
        from: DVec2,
        /// to there.
        to: DVec2,
        /// 0 for on it, 1 and −1 for beside it (1 for the side a quarter turn from x toward y), in this order.
        beside: &'static [f64],
        /// How far beside.
        gap: f64,
        /// Turned as the line is.
        turned: bool,
        /// At which share of it best.
        home: f64,
    },
    /// Within a shape.
    Within {
        /// Its border, and those of its holes.
        rings: Vec<Vec<DVec2>>,
        /// Where best.
        home: DVec2,
    },
}

/// What words may lie on where nothing better is free.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Over {
    /// Nothing.
    Nothing,
    /// What is [`Weight::Faint`].
    Faint,
    /// What is [`Weight::Ground`] too.
    Ground,
}

/// How much it matters that a thing is seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Weight {
    /// A help line, such as the border of a zone.
    Faint,
    /// An area that is better left free, such as modules.
    Ground,
    /// A line that no words lie on; a leader may cross it.
    Line,
    /// What nothing crosses.
    Solid,
}

/// What words keep off.
#[derive(Clone, Debug)]
pub struct Obstacle {
    /// Where it is.
    pub body: Body,
    /// How much it matters.
    pub weight: Weight,
    /// The number of the thing, for labels that name it.
    pub of: Option<u32>,
}

/// Where an obstacle is.
#[derive(Clone, Debug)]
pub enum Body {
    /// A line and half its width.
    Line(DVec2, DVec2, f64),
    /// An upright rectangle.
    Rect(Rect),
    /// A convex shape.
    Convex(Vec<DVec2>),
}

/// Where a label stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Placed {
    /// Its middle.
    pub at: DVec2,
    /// How far it is turned, radians from x toward y.
    pub turn: f64,
    /// Half its width and height before it is turned.
    pub half: DVec2,
    /// Which of its tries it is.
    pub nth: usize,
    /// From its thing to its border.
    pub leader: Option<(DVec2, DVec2)>,
}

impl Placed {
    /// Its corners, in order.
    pub fn corners(&self) -> [DVec2; 4] {
        let along = DVec2::from_angle(self.turn);
        let (x, y) = (along * self.half.x, along.perp() * self.half.y);
        [self.at - x - y, self.at + x - y, self.at + x + y, self.at - x + y]
    }

    /// The upright rectangle around it.
    pub fn bounds(&self) -> Rect {
        let (sin, cos) = (self.turn.sin().abs(), self.turn.cos().abs());
        let half = DVec2::new(cos * self.half.x + sin * self.half.y, sin * self.half.x + cos * self.half.y);
        Rect { min: self.at - half, max: self.at + half }
    }
}
