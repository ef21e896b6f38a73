//! Two pathways lead from the lowest edge to the ridge, on separate planes.
//!
//! Source: IRC R324.6.1 / IFC 1205.2.1.1 (2018 on): at least two, at least 36 in wide, on separate roof planes, on all
//! buildings. Where there are fewer, the finding names the modules whose removal opens one at the least loss.

use super::pathway::{Away, Pathway, of_plane};
use super::plane_path::{Opening, cheapest, removal};
use super::{exempt, has_array, looked_at, source};
use crate::case::Case;
use crate::finding::{Finding, Place, Severity};
use crate::registry::Rule;
use crate::words::length;
use chalkcourse_job::{FireAccess, PathScheme};
use std::collections::BTreeSet;

pub(crate) const RULE: Rule = Rule {
    code: "fire-paths",
    title: "Two pathways lead to the ridge, on separate planes",
    reason: "Who works on a roof needs a way up, and another way down.",
    source: |job| source(job, |fire| &fire.scheme.source),
    missing: |job| {
        exempt(job).or_else(|| {
            let each =
                job.rule_book.fire_access.as_ref().is_some_and(|f| f.scheme.value == PathScheme::EachSlope);
            each.then(|| "this edition asks for pathways on each slope with modules instead".into())
        })
    },
    run,
};

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    let Some(fire) = &case.book.fire_access else { return };
    if !has_array(case, fire) {
        return;
    }
    let planes = planes_with_a_path(case, fire, &Away::new());
    if planes.len() >= ASKED {
        return;
    }
    let opening = open(case, fire, planes.clone());
    let fix = opening.as_ref().map(|opening| removal(case, opening));
    let missing = if planes.len() + 1 == ASKED { "the other" } else { "both" };
    let what = match &fix {
        Some(fix) => format!("{} to open {missing} at the least loss found", fix.label),
        None => "No removal of modules opens them: ask the fire official".to_owned(),
    };
    findings.push(Finding {
        message: format!(
            "{} of 2 pathways of {} lead from the lowest edge to the ridge on separate planes. {what}.",
            planes.len(),
            length(fire.path_width.value.metres(), case.units),
        ),
        place: Place { shape: opening.map_or_else(Vec::new, |opening| opening.strip), ..Place::default() },
        measured: format!("{} found", planes.len()),
        required: format!("2, each {} wide in plan", length(fire.path_width.value.metres(), case.units)),
        source: RULE.source(case.job),
        fix,
        ..Finding::of(RULE.code, Severity::Stop, "fire-paths/roof".into())
    });
}

/// So many pathways.
const ASKED: usize = 2;

/// The modules whose removal opens what is missing, one plane after the other.
fn open(case: &Case<'_>, fire: &FireAccess, mut planes: BTreeSet<usize>) -> Option<Opening> {
    let mut all = Opening { away: Away::new(), strip: Vec::new() };
    while planes.len() < ASKED {
        let shut: Vec<usize> =
            (0..case.layout.roof.faces.len()).filter(|face| !planes.contains(face)).collect();
        let next = cheapest(case, fire, &shut)?;
        all.away.extend(next.away);
        all.strip.extend(next.strip);
        let open = planes_with_a_path(case, fire, &all.away);
        if open.len() <= planes.len() {
            return None;
        }
        planes = open;
    }
    Some(all)
}

/// Planes that have a pathway without some modules, each counted once, until there are enough. One that straddles
/// two planes counts for one of them.
fn planes_with_a_path(case: &Case<'_>, fire: &FireAccess, away: &Away) -> BTreeSet<usize> {
    let mut planes = BTreeSet::new();
    let all = || 0..case.layout.roof.faces.len();
    // Planes without modules first: they are the likeliest, and the cheapest to look at.
    let empty = |index: &usize| case.on_face.get(*index).is_none_or(Vec::is_empty);
    for index in all().filter(empty).chain(all().filter(|index| !empty(index))) {
        if planes.len() >= ASKED {
            return planes;
        }
        if case.layout.roof.faces.get(index).is_some_and(|face| looked_at(fire, face)) {
            let found: Vec<Pathway> = of_plane(case, fire, index, away);
            if let Some(path) = found.first() {
                planes.extend(path.faces.iter().copied().find(|face| !planes.contains(face)));
            }
        }
    }
    planes
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, face, fixed, gable_job, of, one};
    use chalkcourse_job::Job;

    const PATH: f64 = 36.0 * 0.0254;

    /// A roof of one plane and another, both full but for a strip so wide on each side.
    fn with_room(strip: f64) -> Job {
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
        assert!(short.message.starts_with("0 of 2 pathways"), "{}", short.message);
        // one column of 2 modules on each plane
        assert!(short.message.contains("Switch off 4 modules"), "{}", short.message);
        fixed(&job, &short);
    }

    #[test]
    fn one_is_not_enough_and_the_least_loss_opens_another() {
        let mut job = with_room(PATH - 0.1);
        job.blocks[1].columns = 2;
        let short = one(&job, "fire-paths");
        assert!(short.message.starts_with("1 of 2"), "{}", short.message);
        fixed(&job, &short);
    }

    #[test]
    fn no_array_no_path() {
        let mut job = with_room(0.0);
        job.blocks.clear();
        assert!(of(&job, "fire-paths").is_empty());
    }
}
