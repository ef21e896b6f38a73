//! Fasteners per module that wind calls for beyond the kit's own: the order takes them from the screening.

use super::screen::Lift;
use crate::view::Snapshot;
use crate::wind::Zone;
use chalkcourse_job::{BlockId, Cell, Resolved};
use chalkcourse_layout::Layout;

/// Maximum fasteners at a foot (common practice, no source); beyond it, adding fasteners is not the answer.
const MOST_A_FOOT: u32 = 4;

/// A module whose zone calls for more fasteners than the kit provides.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MoreFasteners {
    /// Its block.
    pub block: BlockId,
    /// Its cell in the block.
    pub cell: Cell,
    /// Its zone.
    pub zone: Zone,
    /// Total fasteners at each foot.
    pub a_foot: u32,
    /// Fasteners of the module beyond the kit's own.
    pub more: f64,
}

/// The modules where wind calls for more fasteners: enough at each foot to keep the demand on one within its capacity. The load
/// path: wind lifts the module, its feet are held down by their fasteners into the deck, and no foot holds more than the weakest
/// link of its load path; whatever helps beside the feet (base rail, hooks between rows) is ignored. Modules that even the
/// maximum would not hold are left out: the finding reports them. Empty if the screening is not available.
pub fn more_fasteners(job: &Resolved, layout: &Layout) -> Vec<MoreFasteners> {
    let snapshot = Snapshot::of(job, layout);
    let mut all = Vec::new();
    let (Some(conditions), Some(fastener)) = (snapshot.wind(), job.kit.fastener(&job.site)) else {
        return all;
    };
    let (Some(feet), Some(usual)) = (job.kit.feet_a_module(), job.kit.fasteners_a_foot()) else { return all };
    for view in snapshot.blocks() {
        let Some(Ok(lift)) = Lift::of(view, conditions) else { continue };
        for module in &view.laid.placed.modules {
            let zone = lift.zone(&module.rect);
            // Twice the fasteners share the same deck area.
            let holds = |a_foot: u32| {
                let square_feet = fastener.square_feet * usual / f64::from(a_foot);
                lift.on_fastener(zone, square_feet)
                    .is_some_and(|(_, pounds)| pounds <= fastener.holds(f64::from(a_foot)) + 1e-6)
            };
            let first = (usual.ceil() as u32).max(1);
            let asked = (first..=MOST_A_FOOT).find(|a_foot| holds(*a_foot));
            if let Some(a_foot) = asked.filter(|a_foot| f64::from(*a_foot) > usual) {
                let more = (f64::from(a_foot) - usual) * feet;
                all.push(MoreFasteners { block: view.laid.block.id, cell: module.cell, zone, a_foot, more });
            }
        }
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{book, gable_job, kit};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{Building, Exposure, LoadStandard};

    /// By hand, as beside the rule: 63.7 lb on a fastener with 4 sq ft in zone 1, and about 31.6 lb where two share them (the
    /// figure is flat below 10 sq ft, so half the deck is half the load).
    #[test]
    fn half_the_deck_is_half_the_load() {
        let mut job = gable_job();
        book(&mut job).loads.as_mut().unwrap().standard.value = LoadStandard::Asce722;
        job.site.building = Building {
            wind_mph: Some(115.0),
            exposure: Some(Exposure::B),
            eave_height: Some(Length::from_feet(12.0)),
            least_width: Some(Length::from_metres(12.0)),
            fastener_pounds: Some(64.0),
            fastener_square_feet: Some(4.0),
            ..Building::default()
        };
        let asked = |job: &Resolved| more_fasteners(job, &Layout::of(job));
        assert!(asked(&job).is_empty(), "63.7 lb are held by 64");
        job.site.building.fastener_pounds = Some(40.0);
        let more = asked(&job);
        let modules = Layout::of(&job).blocks[0].modules.len();
        assert_eq!(more.len(), modules);
        assert!(more.iter().all(|it| it.zone == Zone::One && it.a_foot == 2 && it.more == 5.0), "{more:?}");
        job.site.building.fastener_pounds = Some(22.0);
        assert!(asked(&job).iter().all(|it| it.a_foot == 3 && it.more == 10.0));
        // A quarter of the load is 15.9 lb: below that, more fasteners are not the answer.
        job.site.building.fastener_pounds = Some(15.0);
        assert!(asked(&job).is_empty());
        job.site.building.fastener_pounds = None;
        kit(&mut job).hold_down = None;
        assert!(asked(&job).is_empty());
    }
}
