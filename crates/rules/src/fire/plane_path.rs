//! Each plane with modules has a pathway: on it, on a plane beside it, or straddling both.
//!
//! Source: IRC R324.6.1 / IFC 1205.2.1 (2018 on). IFC 605.11 (2012, 2015) asks for it on the slope itself: one on a hip
//! roof, two under a single ridge. Planes beside are those over a hip, a valley or a change of pitch.

use super::free::without;
use super::pathway::{Away, Pathway, beside, clear_to_ridge, obstructed, of_plane, winding};
use super::{exempt, looked_at, source};
use crate::case::Case;
use crate::finding::{Finding, Fix, Place, Severity};
use crate::measure::{TOLERANCE, to_segment};
use crate::registry::Rule;
use crate::words::{length, modules, sentence};
use chalkcourse_geometry::{DVec2, EdgeKind, dvec2};
use chalkcourse_job::{Block, Cell, Edit, FireAccess, PathScheme};

pub(crate) const RULE: Rule = Rule {
    code: "fire-plane-path",
    title: "Each plane with modules has a pathway",
    reason: "Whoever must reach the array or the ridge above it needs a way up beside it.",
    source: |job| source(job, |fire| &fire.scheme.source),
    missing: exempt,
    run,
};

fn run(case: &Case<'_>, findings: &mut Vec<Finding>) {
    let Some(fire) = &case.book.fire_access else { return };
    for (index, blocks) in case.on_face.iter().enumerate() {
        let Some(face) = case.layout.roof.faces.get(index).filter(|face| looked_at(fire, face)) else {
            continue;
        };
        if blocks.is_empty() {
            continue;
        }
        let asked = match fire.scheme.value {
            PathScheme::EachSlope if face.edges.iter().all(|span| span.kind != EdgeKind::Hip) => 2,
            _ => 1,
        };
        let found = found(case, fire, index, &Away::new());
        if found >= asked {
            continue;
        }
        // One opening is worked out: two that are missing on one slope must be laid out by hand.
        let opening = (found + 1 == asked)
            .then(|| cheapest(case, fire, &[index]))
            .flatten()
            .filter(|opening| self::found(case, fire, index, &opening.away) >= asked);
        let fix = opening.as_ref().map(|opening| removal(case, opening));
        let width = length(fire.path_width.value.metres(), case.units);
        let what = match &fix {
            Some(fix) => format!("{} to open one at the least loss found", fix.label),
            None => "No removal of modules along one strip opens it: leave room beside the array".to_owned(),
        };
        findings.push(Finding {
            message: format!(
                "{} has {found} of {asked} pathways of {width} from its lowest edge to the ridge. {what}.",
                sentence(&case.face_name(index)),
            ),
            place: Place {
                face: case.face_id(index),
                block: blocks.first().and_then(|&at| case.blocks.get(at)).map(|laid| laid.block.id),
                shape: opening.map_or_else(|| face.plan.outer.clone(), |opening| opening.strip),
                ..Place::default()
            },
            measured: format!("{found} found"),
            required: format!("{asked}, {width} wide in plan"),
            source: RULE.source(case.job),
            fix,
            ..Finding::of(
                RULE.code,
                Severity::Stop,
                format!("fire-plane-path/face-{}", case.face_id(index).map_or(0, |id| id.0)),
            )
        });
    }
}

/// How many pathways serve a plane, without some modules.
fn found(case: &Case<'_>, fire: &FireAccess, index: usize, away: &Away) -> usize {
    let width = fire.path_width.value.metres();
    let fit =
        |path: &Pathway| if path.straight { ((path.width + TOLERANCE) / width).floor() as usize } else { 1 };
    let own = of_plane(case, fire, index, away);
    match fire.scheme.value {
        PathScheme::EachSlope => own.iter().filter(|path| path.faces.len() == 1).map(fit).sum(),
        PathScheme::WholeRoof if !own.is_empty() => 1,
        PathScheme::WholeRoof => {
            let face = case.layout.roof.faces.get(index);
            let other = face.is_some_and(|f| beside(f).any(|o| !of_plane(case, fire, o, away).is_empty()));
            usize::from(other)
        }
    }
}

/// Modules whose removal opens pathways, and where they then run.
pub(super) struct Opening {
    pub(super) away: Away,
    /// In plan.
    pub(super) strip: Vec<DVec2>,
}

/// The fewest modules whose removal opens a pathway on one of some planes: of all strips straight up the slope, and
/// of those along a hip or valley.
pub(super) fn cheapest(case: &Case<'_>, fire: &FireAccess, planes: &[usize]) -> Option<Opening> {
    let strips = planes.iter().flat_map(|&index| straight_openings(case, fire, index));
    let straight = strips.min_by_key(|opening| opening.away.len());
    if straight.is_some() {
        return straight;
    }
    planes
        .iter()
        .flat_map(|&index| openings_along(case, fire, index))
        .min_by_key(|opening| opening.away.len())
}

fn straight_openings(case: &Case<'_>, fire: &FireAccess, index: usize) -> Vec<Opening> {
    let Some(face) = case.layout.roof.faces.get(index).filter(|face| looked_at(fire, face)) else {
        return Vec::new();
    };
    let width = fire.path_width.value.metres();
    let on: Vec<usize> = case.on_face.get(index).cloned().unwrap_or_default();
    let rects: Vec<(usize, Cell, f64, f64)> = on
        .iter()
        .filter_map(|&at| Some((at, case.blocks.get(at)?)))
        .flat_map(|(at, laid)| {
            laid.placed.modules.iter().map(move |m| (at, m.cell, m.rect.min.x, m.rect.max.x))
        })
        .collect();
    let mut openings: Vec<Opening> = Vec::new();
    // Where two are asked, the one that is there is not opened again.
    let mut taken_up = obstructed(case, index);
    if fire.scheme.value == PathScheme::EachSlope {
        taken_up.extend(of_plane(case, fire, index, &Away::new()).iter().filter(|p| p.straight).filter_map(
            |path| {
                let along = path.outline.iter().map(|&p| face.plane.to_frame(p).x);
                Some((along.clone().reduce(f64::min)?, along.reduce(f64::max)?))
            },
        ));
    }
    for (from, to) in without(&clear_to_ridge(face), taken_up) {
        if to - from < width - TOLERANCE {
            continue;
        }
        // The best strip begins at an end of the room or at the side of a module.
        let mut starts: Vec<f64> =
            rects.iter().flat_map(|r| [r.3, r.2 - width]).chain([from, to - width]).collect();
        starts.retain(|&start| start >= from - TOLERANCE && start + width <= to + TOLERANCE);
        starts.sort_by(f64::total_cmp);
        starts.dedup_by(|a, b| (*a - *b).abs() < TOLERANCE);
        let taken = |start: f64| {
            let over = move |r: &&(usize, Cell, f64, f64)| {
                r.3 > start + TOLERANCE && r.2 < start + width - TOLERANCE
            };
            rects.iter().filter(over)
        };
        let loss = |start: &f64| taken(*start).count();
        let Some(start) = starts.into_iter().filter(|start| loss(start) > 0).min_by_key(loss) else {
            continue;
        };
        let (low, high) = (face.bounds.min.y, face.bounds.max.y);
        let corners = [(start, low), (start + width, low), (start + width, high), (start, high)];
        openings.push(Opening {
            away: taken(start).map(|r| (r.0, r.1)).collect(),
            strip: corners.map(|(u, v)| face.plane.to_plan(dvec2(u, v))).to_vec(),
        });
    }
    openings
}

/// What must go for a pathway that straddles a hip or valley of a plane.
fn openings_along(case: &Case<'_>, fire: &FireAccess, index: usize) -> Vec<Opening> {
    let Some(face) = case.layout.roof.faces.get(index).filter(|face| looked_at(fire, face)) else {
        return Vec::new();
    };
    let width = fire.path_width.value.metres();
    let lines = face.edges.iter().filter(|span| matches!(span.kind, EdgeKind::Hip | EdgeKind::Valley));
    lines
        .filter_map(|span| {
            let faces = [index, span.neighbour?.face];
            let mut away = Away::new();
            for face in faces {
                for &at in case.on_face.get(face).into_iter().flatten() {
                    let laid = case.blocks.get(at)?;
                    let ends = [span.plan.0, span.plan.1].map(|p| laid.face.plane.to_frame(p));
                    // On the slope nothing is nearer than in plan: what is a width away is clear of half a width.
                    let near =
                        laid.placed.modules.iter().filter(|m| to_segment(&m.rect, ends[0], ends[1]) < width);
                    away.extend(near.map(|m| (at, m.cell)));
                }
            }
            let path = winding(case, fire, &faces, &away)?;
            Some(Opening { away, strip: path.outline })
        })
        .collect()
}

/// The edit that takes modules away.
pub(super) fn removal(case: &Case<'_>, opening: &Opening) -> Fix {
    let mut edits: Vec<Edit> = Vec::new();
    let mut names: Vec<String> = Vec::new();
    for (at, laid) in case.blocks.iter().enumerate() {
        let cells: Vec<Cell> =
            opening.away.iter().filter(|(block, _)| *block == at).map(|(_, cell)| *cell).collect();
        if cells.is_empty() {
            continue;
        }
        let mut less: Block = laid.block.clone();
        less.off.extend(cells.iter().copied());
        let places: Vec<String> = cells
            .iter()
            .take(12)
            .map(|cell| format!("row {} place {}", cell.row + 1, cell.column + 1))
            .collect();
        let more = if cells.len() > places.len() { ", …" } else { "" };
        names.push(format!("{} ({}{more})", crate::words::block_name(laid.block), places.join(", ")));
        edits.push(if laid.placed.modules.len() == cells.len() {
            Edit::RemoveBlock(laid.block.id)
        } else {
            Edit::PutBlock(less)
        });
    }
    let label = format!("Switch off {} of {}", modules(opening.away.len()), names.join(" and "));
    Fix { label, edit: Edit::Several(edits) }
}

#[cfg(test)]
mod tests {
    use crate::testing::{block, book, face, fixed, gable_job, of, one};
    use chalkcourse_job::{Job, PathScheme};

    /// A hip roof of 12 × 8 m: the south trapezoid carries the block.
    fn hip(at: (f64, f64), rows: u32, columns: u32) -> Job {
        let mut job = gable_job();
        job.faces = vec![
            face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (8.0, 4.0), (4.0, 4.0)], 6.0, 180.0, 3.0),
            face(2, "East", &[(12.0, 0.0), (12.0, 8.0), (8.0, 4.0)], 6.0, 90.0, 3.0),
            face(4, "North", &[(12.0, 8.0), (0.0, 8.0), (4.0, 4.0), (8.0, 4.0)], 6.0, 0.0, 3.0),
            face(5, "West", &[(0.0, 8.0), (0.0, 0.0), (4.0, 4.0)], 6.0, 270.0, 3.0),
        ];
        job.blocks = vec![block(3, 1, at, rows, columns)];
        job
    }

    #[test]
    fn beside_the_block_or_over_the_hip() {
        // The ridge is over u 4 to 8: a block at 5 to 8.445 leaves 1 m beside it.
        assert!(of(&hip((5.0, 0.3), 2, 2), "fire-plane-path").is_empty());
        // Nothing straight is left; the hip to the plane beside it is free.
        assert!(of(&hip((3.5, 0.3), 2, 3), "fire-plane-path").is_empty());
    }

    #[test]
    fn the_old_edition_asks_two_on_each_slope() {
        let mut job = gable_job();
        let fire = book(&mut job).fire_access.as_mut().unwrap();
        fire.scheme.value = PathScheme::EachSlope;
        assert!(of(&job, "fire-plane-path").is_empty());
        job.blocks = vec![block(3, 1, (0.4, 1.0), 1, 6)];
        let short = one(&job, "fire-plane-path");
        assert!(short.message.contains("1 of 2 pathways"), "{}", short.message);
        fixed(&job, &short);
    }

    #[test]
    fn a_plane_with_a_full_row_has_none() {
        let mut job = gable_job();
        for blocks in [1, 2] {
            job.blocks = vec![block(3, 1, (0.5, 1.0), blocks, 6)];
            job.faces[0].outline.outer[1].x = 11.2;
            job.faces[0].outline.outer[2].x = 11.2;
            let short = one(&job, "fire-plane-path");
            // 36 in take one column of modules at the end: one a row
            assert_eq!(short.message.matches("place").count(), blocks as usize, "{}", short.message);
            fixed(&job, &short);
        }
    }
}
