//! A label before placement: what it shows, what it is about, and where it may be.

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
    /// Text.
    Words(Arc<Galley>),
    /// Text, followed by an arrow in a direction.
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

/// The length of the arrow after text, and half the width of a sign, in points.
pub(super) const ARROW: f32 = 18.0;
pub(super) const SIGN: f32 = 8.0;

/// A label to be placed.
pub(super) struct Words {
    pub(super) rank: u8,
    pub(super) names: Option<u32>,
    pub(super) anchor: Anchor,
    pub(super) over: Over,
    pub(super) tries: Vec<(Show, How)>,
    pub(super) color: Color32,
    /// Whether it is framed in its colour.
    pub(super) framed: bool,
    pub(super) of: Of,
}

impl Words {
    /// A plain label that may be on any background.
    pub(super) fn of(rank: u8, anchor: Anchor, tries: Vec<(Show, How)>, color: Color32) -> Self {
        Self { rank, names: None, anchor, over: Over::Ground, tries, color, framed: false, of: Of::Other }
    }
}

/// What a label is about, for clicks on the drawing and for tests.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Of {
    /// Nothing in particular.
    Other,
    /// A dimension that can be edited.
    Dimension(Dimension),
    /// A roof line: face and span index.
    Edge(usize, usize),
    /// A finding, and others at the same object.
    Findings(Vec<FindingKey>),
    /// A penetration, by its index.
    Penetration(usize),
}
