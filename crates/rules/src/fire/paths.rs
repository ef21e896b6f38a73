//! Two pathways lead from the lowest edge to the ridge, on separate planes.
//!
//! Source: IRC R324.6.1 / IFC 1205.2.1.1 (2018 on): at least two, at least 36 in wide, on separate roof planes, on all buildings.
//! If there are fewer, the finding names the modules to remove to open one at the least loss.

use super::pathway::{alone, every_module, has_ridge, straddling};
use super::plane_path::opening_of;
use super::{exempt, has_array, pathways, source};
use crate::finding::{Finding, Location, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::Stroke;
use crate::view::{BesideView, Snapshot, WholeView};
use crate::way::{Opening, RemovedModules};
use crate::{Facts, WhyNot};
use chalkcourse_geometry::DVec2;
use chalkcourse_job::{FindingKey, FireAccess, PathScheme, Required, Resolved, Subject};
use chalkcourse_layout::Layout;
use chalkcourse_limits::looked_at;
use std::collections::BTreeSet;

pub(crate) const RULE: Rule = Rule {
    code: "fire-paths",
    sketch: &[
        Stroke::Roof(&[[8.0, 6.0], [92.0, 6.0], [92.0, 30.0], [8.0, 30.0]]),
        Stroke::Roof(&[[8.0, 30.0], [92.0, 30.0], [92.0, 54.0], [8.0, 54.0]]),
        Stroke::Free(&[[8.0, 6.0], [22.0, 6.0], [22.0, 30.0], [8.0, 30.0]]),
        Stroke::Free(&[[78.0, 30.0], [92.0, 30.0], [92.0, 54.0], [78.0, 54.0]]),
        Stroke::Way([15.0, 8.0], [15.0, 28.0]),
        Stroke::Way([85.0, 52.0], [85.0, 32.0]),
        Stroke::Module([36.0, 10.0, 28.0, 14.0]),
    ],
    source: |job| source(job, |fire| &fire.scheme.source),
    missing: |job| {
        exempt(job).or_else(|| {
            let each =
                job.rule_book.fire_access.as_ref().is_some_and(|f| f.scheme.value == PathScheme::EachSlope);
            each.then_some(WhyNot::EachSlopeInstead)
        })
    },
    run: Run::Whole(run),
};

/// Pathways required.
const ASKED: usize = 2;

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let Some(fire) = &view.book().fire_access else { return };
    if !has_array(view, fire) {
        return;
    }
    let asked = || Finding {
        required: Required::AtLeast(pathways(fire, ASKED)),
        source: RULE.source(view.job()),
        ..Finding::of(RULE.code, Severity::Note, Subject::Whole, Facts::NoRidge)
    };
    let steep: Vec<BesideView<'_>> = view.faces().filter(|plane| looked_at(fire, plane.own.face)).collect();
    if !steep.iter().any(|plane| has_ridge(*plane)) {
        findings.push(asked());
        return;
    }
    let there = pathways_by_planes(fire, &steep, &RemovedModules::new());
    let found = most_separate(&there);
    if found >= ASKED {
        return;
    }
    let opening = open(fire, &steep, &there);
    let room_for = u32::try_from(most_on_bare_roof(view, fire, &steep)).unwrap_or(u32::MAX);
    findings.push(Finding {
        severity: Severity::Stop,
        measured: pathways(fire, found),
        facts: Facts::FirePaths { opening: opening.as_ref().map(Opening::by_blocks), room_for },
        place: Location {
            shape: opening.map_or_else(Vec::new, |opening| opening.strip),
            ..Location::default()
        },
        ..asked()
    });
}

/// How many pathways on separate planes the bare roof has room for, up to the number required. Modules only take room away, so it
/// is an upper bound for any layout.
fn most_on_bare_roof(view: WholeView<'_>, fire: &FireAccess, steep: &[BesideView<'_>]) -> usize {
    most_separate(&pathways_by_planes(fire, steep, &every_module(view)))
}

/// The finding that any module on a plane causes, wherever it lies: even bare, the roof has no room for the required pathways,
/// e.g. a sketch of one plane has none for a second. `None` if some layout may pass the rule.
pub fn missing_pathways(job: &Resolved, layout: &Layout, face: usize) -> Option<FindingKey> {
    let fire = job.rule_book.fire_access.as_ref()?;
    if RULE.why_not(job).is_some() {
        return None;
    }
    let snapshot = Snapshot::of(job, layout);
    let view = snapshot.whole();
    let steep: Vec<BesideView<'_>> = view.faces().filter(|plane| looked_at(fire, plane.own.face)).collect();
    let here = steep.iter().any(|plane| plane.own.index == face);
    let judged = here && steep.iter().any(|plane| has_ridge(*plane));
    let missing = judged && most_on_bare_roof(view, fire, &steep) < ASKED;
    missing.then(|| FindingKey::new(RULE.code, Subject::Whole))
}

/// The sets of planes that pathways use once the modules of `away` are removed: one, or two for one that straddles. One that
/// straddles uses up both, the safe reading of "on separate roof planes". Stops when there are enough.
fn pathways_by_planes(
    fire: &FireAccess,
    steep: &[BesideView<'_>],
    away: &RemovedModules,
) -> BTreeSet<Vec<usize>> {
    let mut sets: BTreeSet<Vec<usize>> = BTreeSet::new();
    // Planes without modules first: the likeliest, and the cheapest to check.
    let empty = |plane: &&BesideView<'_>| plane.own.laid().next().is_none();
    for plane in steep.iter().filter(empty).chain(steep.iter().filter(|plane| !empty(plane))) {
        if !alone(plane.own, fire, away).is_empty() {
            sets.insert(vec![plane.own.index]);
            if sets.len() >= ASKED {
                return sets;
            }
        }
    }
    // One that straddles a plane with a pathway of its own uses up no less than that.
    let own = |plane: &&BesideView<'_>| sets.contains(&vec![plane.own.index]);
    let without: Vec<&BesideView<'_>> = steep.iter().filter(|plane| !own(plane)).collect();
    for &plane in without {
        for path in straddling(plane, fire, away).iter() {
            let mut faces = path.faces.clone();
            faces.sort_unstable();
            sets.insert(faces);
        }
    }
    sets
}

/// The largest number of pairwise disjoint sets of planes, up to the number required.
fn most_separate(sets: &BTreeSet<Vec<usize>>) -> usize {
    let apart = |a: &Vec<usize>, b: &Vec<usize>| a.iter().all(|face| !b.contains(face));
    let two = sets.iter().any(|a| sets.iter().any(|b| apart(a, b)));
    if two { ASKED } else { usize::from(!sets.is_empty()) }
}

/// A pathway that exists, or would exist once some modules are removed.
struct Possible<'c> {
    faces: Vec<usize>,
    loss: usize,
    opening: Option<&'c Opening>,
}

/// The fewest modules to remove so that two pathways run on separate planes, from those that exist and those that can be opened.
fn open(fire: &FireAccess, steep: &[BesideView<'_>], there: &BTreeSet<Vec<usize>>) -> Option<Opening> {
    let mut possible: Vec<Possible<'_>> =
        there.iter().map(|faces| Possible { faces: faces.clone(), loss: 0, opening: None }).collect();
    // Where there is a pathway, none need be opened.
    let without = steep.iter().filter(|plane| !there.contains(&vec![plane.own.index]));
    for opening in without.flat_map(|&plane| opening_of(plane, fire)) {
        possible.push(Possible {
            faces: opening.faces.clone(),
            loss: opening.away.len(),
            opening: Some(opening),
        });
    }
    possible.sort_by_key(|one| one.loss);
    let mut best: Option<(usize, [&Possible<'_>; 2])> = None;
    for (at, one) in possible.iter().enumerate() {
        if best.as_ref().is_some_and(|(loss, _)| 2 * one.loss >= *loss) {
            break;
        }
        let apart = |two: &&Possible<'_>| one.faces.iter().all(|face| !two.faces.contains(face));
        let Some(two) = possible.iter().skip(at + 1).find(apart) else { continue };
        let loss = one.loss + two.loss;
        if best.as_ref().is_none_or(|(least, _)| loss < *least) {
            best = Some((loss, [one, two]));
        }
    }
    let (_, pair) = best?;
    let mut all = Opening { away: RemovedModules::new(), faces: Vec::new(), strip: Vec::<DVec2>::new() };
    for opening in pair.into_iter().filter_map(|one| one.opening) {
        all.away.extend(opening.away.iter().copied());
        all.faces.extend(opening.faces.iter().copied());
        all.strip.extend(opening.strip.iter().copied());
    }
    Some(all)
}

#[cfg(test)]
mod tests {
    use super::missing_pathways;
    use crate::Facts;
    use crate::testing::{block, face, found, gable_job, of, one, opened, taken};
    use chalkcourse_geometry::dvec2;
    use chalkcourse_job::Resolved;
    use chalkcourse_layout::Layout;

    const PATH: f64 = 36.0 * 0.0254;

    /// A roof of two planes, both full except for a strip of the given width on each side.
    fn with_room(strip: f64) -> Resolved {
        let mut job = gable_job();
        // 4 modules and 3 reveals are 6.897 m
        let width = strip + 6.897 + 0.3;
        job.faces = vec![
            face(1, "South", &[(0.0, 0.0), (width, 0.0), (width, 6.0), (0.0, 6.0)], 6.0, 180.0, 3.0),
            face(2, "North", &[(0.0, 6.0), (width, 6.0), (width, 12.0), (0.0, 12.0)], 6.0, 0.0, 3.0),
        ];
        job.blocks = vec![block(3, 1, (0.3, 1.0), 2, 4), block(4, 2, (0.3, 1.0), 2, 4)];
        job
    }

    #[test]
    fn wider_than_just_and_narrower_than_a_path() {
        assert!(of(&with_room(PATH + 0.1), "fire-paths").is_empty());
        assert!(of(&with_room(PATH), "fire-paths").is_empty());
        let job = with_room(PATH - 0.1);
        let short = one(&job, "fire-paths");
        assert_eq!(found(&short), 0);
        // one column of 2 modules on each plane
        assert_eq!(taken(&short), 4);
        opened(&job, &short);
    }

    #[test]
    fn one_is_not_enough_and_the_least_loss_opens_another() {
        let mut job = with_room(PATH - 0.1);
        job.blocks[1].columns = 2;
        let short = one(&job, "fire-paths");
        assert_eq!(found(&short), 1);
        opened(&job, &short);
    }

    /// A sketch of one plane has no other plane for a second pathway, whatever lies on it; with the other plane drawn it has, by
    /// hand: nothing is there.
    #[test]
    fn a_roof_of_one_plane_never_has_two() {
        let room_for = |job: &Resolved| match one(job, "fire-paths").facts {
            Facts::FirePaths { room_for, .. } => room_for,
            other => panic!("{other:?}"),
        };
        let never = |job: &Resolved| missing_pathways(job, &Layout::of(job), 0).map(|key| key.to_string());
        let mut job = with_room(0.1);
        assert_eq!((room_for(&job), never(&job)), (2, None));
        job.blocks.truncate(1);
        job.faces.truncate(1);
        assert_eq!((room_for(&job), never(&job).as_deref()), (1, Some("fire-paths/roof")));
        // The same when bare, and on a plane too narrow for any.
        job.blocks.clear();
        assert_eq!(never(&job).as_deref(), Some("fire-paths/roof"));
        job.faces[0].outline = chalkcourse_geometry::Polygon::new(
            [(0.0, 0.0), (0.8, 0.0), (0.8, 6.0), (0.0, 6.0)].map(|(x, y)| dvec2(x, y)).to_vec(),
        );
        assert_eq!(never(&job).as_deref(), Some("fire-paths/roof"));
        job.site.building.detached_uninhabited = true;
        assert_eq!(never(&job), None);
    }

    #[test]
    fn no_array_no_path() {
        let mut job = with_room(0.0);
        job.blocks.clear();
        assert!(of(&job, "fire-paths").is_empty());
    }
}
