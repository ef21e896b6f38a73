//! The share of the roof that the array covers, which the ridge setback depends on.

use chalkcourse_geometry::Length;
use chalkcourse_job::{Building, FireAccess, Resolved};
use chalkcourse_layout::Layout;

/// How much of the roof the array covers, in the classes of the ridge setback.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Share {
    /// Up to the share for the smaller setback.
    Within,
    /// More than that.
    Beyond,
}

impl Share {
    /// Classifies a share from 0 to 1; `Within` if the book has no fire access.
    pub fn of(job: &Resolved, share: f64) -> Self {
        let fire = job.rule_book.fire_access.as_ref();
        fire.map_or(Self::Within, |fire| Self::by(fire, &job.site.building, share))
    }

    /// Classifies a share from 0 to 1 by a book's threshold for a building.
    pub fn by(fire: &FireAccess, building: &Building, share: f64) -> Self {
        let ridge = &fire.ridge;
        let most = if building.sprinklers { &ridge.share_with_sprinklers } else { &ridge.share };
        if share <= most.value + 1e-9 { Self::Within } else { Self::Beyond }
    }

    /// The book's ridge setback for this class.
    pub fn room(self, fire: &FireAccess) -> &chalkcourse_job::Limit<Length> {
        match self {
            Self::Within => &fire.ridge.up_to_share,
            Self::Beyond => &fire.ridge.beyond,
        }
    }
}

/// The plan area of the array divided by that of the whole roof; 0 without a roof.
pub fn array_share(layout: &Layout) -> f64 {
    let array: f64 = layout
        .blocks
        .iter()
        .filter_map(|block| {
            let face = layout.roof.faces.get(block.face).filter(|face| face.sound)?;
            Some(block.area_under() / face.plane.pitch.slope_factor())
        })
        .sum();
    let roof = layout.roof.plan_area();
    if roof > 0.0 { array / roof } else { 0.0 }
}
