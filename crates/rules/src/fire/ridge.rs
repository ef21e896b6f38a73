//! Both sides of a level ridge are clear, by the share of the plan roof area that the array covers.
//!
//! Source: IRC R324.6.2 / IFC 1205.2.2: 18 in for up to 33 % (66 % with sprinklers), 36 in beyond. The share is taken of
//! the whole roof and exactly 33 % counts as not more; the room is measured in plan, the safe reading of a code
//! that says neither.

use super::{exempt, looked_at, source};
use crate::array::moves::{MustMove, ends, place_of};
use crate::case::{Case, Laid};
use crate::clear::{Move, first_free, hull_around, stretch};
use crate::finding::{Finding, Severity};
use crate::measure::{TOLERANCE, to_segment};
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{Way, block_name, length, sentence, too_short};
use chalkcourse_geometry::{DVec2, EdgeKind, Rect, SideId, dvec2};
use chalkcourse_job::{Cell, FireAccess, Job, Limit};
use chalkcourse_layout::Layout;
use chalkcourse_words::{say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "fire-ridge",
    title: say("The ridge is clear for the fire service", "La cumbrera está libre para los bomberos"),
    reason: say(
        "Fire fighters open the roof along the ridge to let heat and smoke out.",
        "Los bomberos abren el techo a lo largo de la cumbrera para dejar salir calor y humo.",
    ),
    sketch: &[
        SLOPE,
        Stroke::Free(&[[8.0, 41.0], [92.0, 41.0], [92.0, 52.0], [8.0, 52.0]]),
        Stroke::Module([26.0, 12.0, 24.0, 14.0]),
        Stroke::Module([50.0, 12.0, 24.0, 14.0]),
        Stroke::Module([26.0, 26.0, 24.0, 15.0]),
        Stroke::Wrong([50.0, 32.0, 24.0, 15.0]),
        Stroke::Measure([86.0, 41.0], [86.0, 52.0]),
    ],
    source: |job| source(job, |fire| &fire.ridge.up_to_share.source),
    missing: exempt,
    run: Run::Block(run, |case, _| vec![case.share().to_bits()]),
};

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

/// The clear room beside a ridge that the book asks for a share, with its source.
pub fn ridge_room<'a>(
    fire: &'a FireAccess,
    job: &Job,
    share: f64,
) -> &'a Limit<chalkcourse_geometry::Length> {
    let ridge = &fire.ridge;
    let most = if job.site.building.sprinklers { &ridge.share_with_sprinklers } else { &ridge.share };
    if share <= most.value + 1e-9 { &ridge.up_to_share } else { &ridge.beyond }
}

fn run(case: &Case<'_>, laid: &Laid<'_>, findings: &mut Vec<Finding>) {
    let Some(fire) = &case.book.fire_access else { return };
    let share = case.share();
    let room = ridge_room(fire, case.job, share);
    if looked_at(fire, laid.face) {
        let mut sides: Vec<SideId> = Vec::new();
        for span in laid.face.edges.iter().filter(|span| span.kind == EdgeKind::Ridge) {
            if !sides.contains(&span.id) {
                sides.push(span.id);
                findings.extend(finding(case, laid, span.id, share, room));
            }
        }
    }
}

fn finding(
    case: &Case<'_>,
    laid: &Laid<'_>,
    side: SideId,
    share: f64,
    room: &Limit<chalkcourse_geometry::Length>,
) -> Option<Finding> {
    let factor = laid.face.plane.pitch.slope_factor();
    let level = |p: DVec2| dvec2(p.x, p.y / factor);
    let flat = |rect: &Rect| Rect { min: level(rect.min), max: level(rect.max) };
    let asked = room.value.metres();
    let spans: Vec<_> =
        laid.face.edges.iter().filter(|s| s.id == side && s.kind == EdgeKind::Ridge).collect();
    let away = |rect: &Rect| {
        let distances = spans.iter().map(|s| to_segment(&flat(rect), level(s.frame.0), level(s.frame.1)));
        distances.fold(f64::INFINITY, f64::min)
    };
    if away(&laid.bounds) >= asked - TOLERANCE {
        return None;
    }
    let near: Vec<(Cell, f64)> = laid
        .placed
        .modules
        .iter()
        .map(|module| (module.cell, away(&module.rect)))
        .filter(|(_, away)| *away < asked - TOLERANCE)
        .collect();
    let nearest = near.iter().map(|(_, away)| *away).reduce(f64::min)?;
    let stretches = laid.rows.iter().flat_map(|row| {
        spans.iter().filter_map(move |span| {
            let row = flat(row);
            let hull = hull_around(&[level(span.frame.0), level(span.frame.1)], &row);
            let (low, high) = stretch(&hull, asked, row.centre(), Way::Down.unit())?;
            Some((low * factor, high * factor))
        })
    });
    let units = case.units;
    let by = Move { way: Way::Down, by: first_free(stretches.collect(), units) };
    let (measured, required) = (too_short(nearest, units), length(asked, units));
    let found = MustMove {
        code: RULE.code,
        severity: Severity::Stop,
        key: format!("fire-ridge/block-{}/face-{}/side-{side}", laid.block.id, laid.on.id),
        says: tell!(
            "{} leaves {measured} beside the ridge of {}, in plan; the array covers {:.1} % of the plan roof area, for which the \
             code asks {required}",
            "{} deja {measured} junto a la cumbrera de {}, en planta; el arreglo cubre {:.1} % del área del \
        techo en planta, para lo cual el código pide {required}",
            sentence(&block_name(laid.block)),
            case.face_name(laid.placed.face),
            share * 100.0,
        ),
        named: false,
        measured: tell!("{measured} in plan", "{measured} en planta"),
        required: tell!("at least {required} in plan", "al menos {required} en planta"),
        source: room.source.clone(),
        place: place_of(laid, near.iter().map(|(cell, _)| *cell).collect(), ends(spans)),
        moving: laid,
        by,
    };
    Some(found.finding(case))
}

#[cfg(test)]
mod tests {
    use super::ridge_room;
    use crate::testing::{book, fixed, gable_job, of, one};
    use chalkcourse_job::{Building, Job};

    const INCH: f64 = 0.0254;

    /// The block with so many inches of plan from its head to the ridge.
    fn below(inches: f64) -> Job {
        let mut job = gable_job();
        book(&mut job).setbacks.clear();
        job.blocks[0].at.y = (6.0 - inches * INCH) * 1.25f64.sqrt() - 2.271;
        job
    }

    #[test]
    fn short_of_at_and_beyond_18_in() {
        assert!(of(&below(19.0), "fire-ridge").is_empty());
        assert!(of(&below(18.0), "fire-ridge").is_empty());
        let job = below(16.0);
        let short = one(&job, "fire-ridge");
        assert!(short.message.contains("leaves 16\" beside the ridge"), "{}", short.message);
        // 2 in of plan are 2.236 in on a 6:12 slope, 2 1/4 in in sixteenths
        assert!(short.message.contains("Move the block 2 1/4\" down the slope"), "{}", short.message);
        fixed(&job, &short);
    }

    /// IRC R324.6.2 (2018): 18 in up to 33 %, 36 in beyond; with sprinklers 66 % (from memory).
    #[test]
    fn the_share_decides() {
        let mut job = gable_job();
        let fire = job.rule_book.fire_access.clone().unwrap();
        let asks = |job: &Job, share: f64| ridge_room(&fire, job, share).value.inches().round();
        for (share, expect) in [(0.0, 18.0), (0.33, 18.0), (0.331, 36.0), (0.9, 36.0)] {
            assert_eq!(asks(&job, share), expect, "{share}");
        }
        job.site.building = Building { sprinklers: true, ..Building::default() };
        for (share, expect) in [(0.331, 18.0), (0.66, 18.0), (0.661, 36.0)] {
            assert_eq!(asks(&job, share), expect, "{share} with sprinklers");
        }
    }

    #[test]
    fn exemptions() {
        let job = below(10.0);
        let with = |building: Building| {
            let mut job = job.clone();
            job.site.building = building;
            of(&job, "fire-ridge").len()
        };
        assert_eq!(with(Building::default()), 1);
        assert_eq!(with(Building { detached_uninhabited: true, ..Building::default() }), 0);
        assert_eq!(with(Building { no_roof_operations: "Chief Ashdown".into(), ..Building::default() }), 0);
        // the integrated exemption is off in the book, whoever read the listing
        assert_eq!(with(Building { integrated_listing_read_by: "R. Vale".into(), ..Building::default() }), 1);
    }
}
