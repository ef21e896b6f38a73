//! A label before it has a place: what it shows, what it is of, and where it may stand.

use crate::state::Dimension;
use chalkcourse_geometry::{DVec2, dvec2};
use chalkcourse_job::FindingKey;
use chalkcourse_labels::{Anchor, How, Over};
use chalkcourse_rules::Severity;
use egui::{Color32, Galley, Vec2};
use std::sync::Arc;

/// What a label shows.
#[derive(Clone)]
pub(super) enum Show {
    /// Words.
    Words(Arc<Galley>),
    /// Words, and behind them an arrow this way.
    Arrow(Arc<Galley>, Vec2),
    /// The sign of a finding.
    Sign(Severity),
}

impl Show {
    pub(super) fn size(&self) -> DVec2 {
        let size = match self {
            Self::Words(galley) => galley.size() + Vec2::new(10.0, 4.0),
            Self::Arrow(galley, _) => {
                Vec2::new(galley.size().x + ARROW + 14.0, galley.size().y.max(ARROW) + 4.0)
            }
            Self::Sign(_) => Vec2::splat(SIGN * 2.5),
        };
        dvec2(f64::from(size.x), f64::from(size.y))
    }
}

/// The length of an arrow behind words, and half the width of a sign, in points.
pub(super) const ARROW: f32 = 18.0;
pub(super) const SIGN: f32 = 8.0;

/// A label that wants a place.
pub(super) struct Words {
    pub(super) rank: u8,
    pub(super) names: Option<u32>,
    pub(super) anchor: Anchor,
    pub(super) over: Over,
    pub(super) tries: Vec<(Show, How)>,
    pub(super) color: Color32,
    /// Framed in its colour.
    pub(super) framed: bool,
    pub(super) of: Of,
}

impl Words {
    /// Words of nothing that is asked for, which may stand on any ground.
    pub(super) fn of(rank: u8, anchor: Anchor, tries: Vec<(Show, How)>, color: Color32) -> Self {
        Self { rank, names: None, anchor, over: Over::Ground, tries, color, framed: false, of: Of::Other }
    }
}

/// What a label tells, for what is pressed on the drawing and for whoever looks whether all is told.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Of {
    /// Nothing that is asked for.
    Other,
    /// A length that can be typed over.
    Dimension(Dimension),
    /// A line of the roof: face and number of the span.
    Edge(usize, usize),
    /// A finding, and those at the same thing.
    Findings(Vec<FindingKey>),
    /// What comes through the roof, by its index.
    Penetration(usize),
}
