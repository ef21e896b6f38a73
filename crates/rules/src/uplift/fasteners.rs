//! Fasteners that wind asks of each module beyond those that the kit sets anyhow: what the order takes from the screening.

use super::screen::Lift;
use crate::view::Snapshot;
use crate::wind::Zone;
use chalkcourse_job::{BlockId, Cell, Resolved};
use chalkcourse_layout::Layout;

/// A foot takes no more fasteners than this (common practice, no source); what asks more is no matter of fasteners.
const MOST_A_FOOT: u32 = 4;

/// A module whose zone asks for more fasteners than the kit sets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MoreFasteners {
    /// Its block.
    pub block: BlockId,
    /// Where in the block.
    pub cell: Cell,
    /// The zone that it is in.
    pub zone: Zone,
    /// Fasteners at each foot, all of them.
    pub a_foot: u32,
    /// Fasteners of the module beyond the kit's own.
    pub more: f64,
}

/// The modules that wind asks more fasteners of: as many at each foot as keep the demand on one within what one holds. The load path
/// behind it: wind lifts the module, its feet go down by their fasteners into the deck, and no foot holds more than what its load goes
/// through; what stands beside the feet (base rail, hooks between rows) is counted for nothing. Modules that so many fasteners would not hold are not here: the finding
/// tells them. Empty where the screening is not worked out.
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
            // Twice as many fasteners share the same deck.
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

    /// As worked by hand beside the rule: 63.7 lb on a fastener with 4 sq ft in zone 1, and 31.6 lb or so where two share them (the
    /// figure is flat below 10 sq ft, so that half of the deck is half of the load).
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
        // A quarter of the load is 15.9 lb: what holds less is no matter of more fasteners.
        job.site.building.fastener_pounds = Some(15.0);
        assert!(asked(&job).is_empty());
        job.site.building.fastener_pounds = None;
        kit(&mut job).hold_down = None;
        assert!(asked(&job).is_empty());
    }
}
