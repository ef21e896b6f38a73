//! The share of the roof that the array covers, by which the room beside a ridge is asked.

use chalkcourse_geometry::Length;
use chalkcourse_job::{Building, FireAccess, Resolved};
use chalkcourse_layout::Layout;

/// How much of the roof the array covers, by what the book asks beside a ridge.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Share {
    /// Up to the share for which the lesser room is asked.
    Within,
    /// More than that.
    Beyond,
}

impl Share {
    /// Of a share from 0 to 1; without fire access in the book it is within.
    pub fn of(job: &Resolved, share: f64) -> Self {
        let fire = job.rule_book.fire_access.as_ref();
        fire.map_or(Self::Within, |fire| Self::by(fire, &job.site.building, share))
    }

    /// Of a share from 0 to 1, as a book asks of a building.
    pub fn by(fire: &FireAccess, building: &Building, share: f64) -> Self {
        let ridge = &fire.ridge;
        let most = if building.sprinklers { &ridge.share_with_sprinklers } else { &ridge.share };
        if share <= most.value + 1e-9 { Self::Within } else { Self::Beyond }
    }

    /// The clear room beside a ridge that the book asks for it.
    pub fn room(self, fire: &FireAccess) -> &chalkcourse_job::Limit<Length> {
        match self {
            Self::Within => &fire.ridge.up_to_share,
            Self::Beyond => &fire.ridge.beyond,
        }
    }
}

/// The plan area of the array by the plan area of the whole roof; 0 without a roof.
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
