//! Two pathways lead from the lowest edge to the ridge, on separate planes.
//!
//! Source: IRC R324.6.1 / IFC 1205.2.1.1 (2018 on): at least two, at least 36 in wide, on separate roof planes, on all
//! buildings. Where there are fewer, the finding names the modules whose removal opens one at the least loss.

use super::pathway::{Away, Pathway, of_plane};
use super::plane_path::{cheapest, removal};
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
    let planes = planes_with_a_path(case, fire, 2);
    if planes.len() >= 2 {
        return;
    }
    let faces = 0..case.layout.roof.faces.len();
    let without: Vec<usize> = faces.filter(|face| !planes.contains(face)).collect();
    let opening = cheapest(case, fire, &without);
    let fix = opening.as_ref().map(|away| removal(case, away));
    let what = match &fix {
        Some(fix) => format!("{} to open one at the least loss", fix.label),
        None => "no removal of modules opens one: ask the fire official".to_owned(),
    };
    findings.push(Finding {
        message: format!(
            "{} of 2 pathways of {} lead from the lowest edge to the ridge on separate planes. {what}.",
            planes.len(),
            length(fire.path_width.value.metres(), case.units),
        ),
        place: Place { shape: opening.map_or_else(Vec::new, |away| away.strip), ..Place::default() },
        measured: format!("{} found", planes.len()),
        required: format!("2, each {} wide in plan", length(fire.path_width.value.metres(), case.units)),
        source: RULE.source(case.job),
        fix,
        ..Finding::of(RULE.code, Severity::Stop, "fire-paths/roof".into())
    });
}

/// Planes that have a pathway, each counted once, until there are enough. One that straddles two planes counts
/// for one of them.
fn planes_with_a_path(case: &Case<'_>, fire: &FireAccess, enough: usize) -> BTreeSet<usize> {
    let mut planes = BTreeSet::new();
    let all = || 0..case.layout.roof.faces.len();
    // Planes without modules first: they are the likeliest, and the cheapest to look at.
    let empty = |index: &usize| case.on_face.get(*index).is_none_or(Vec::is_empty);
    for index in all().filter(empty).chain(all().filter(|index| !empty(index))) {
        if planes.len() >= enough {
            return planes;
        }
        if case.layout.roof.faces.get(index).is_some_and(|face| looked_at(fire, face)) {
            let found: Vec<Pathway> = of_plane(case, fire, index, &Away::new());
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
        // one column of 2 modules opens a plane, which leaves the other one: still the same finding, so no `fixed`
        assert!(short.message.contains("Switch off 2 modules"), "{}", short.message);
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
