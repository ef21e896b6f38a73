//! Each plane with modules has a pathway: on it, on a plane beside it, or straddling both.
//!
//! Source: IRC R324.6.1 / IFC 1205.2.1 (2018 on). IFC 605.11 (2012, 2015) asks for it on the slope itself: one on a hip
//! roof, two under a single ridge. Planes beside are those over a hip, a valley or a change of pitch.

use super::opening::{Opening, openings};
use super::pathway::{Away, Pathway, alone, beside, has_ridge, of_block, straddling};
use super::{exempt, looked_at, source};
use crate::case::Case;
use crate::finding::{Finding, Fix, Place, Severity};
use crate::measure::TOLERANCE;
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{length, modules, sentence};
use chalkcourse_geometry::EdgeKind;
use chalkcourse_job::{Block, Cell, Edit, FireAccess, PathScheme};
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "fire-plane-path",
    title: say("Each plane with modules has a pathway", "Cada plano con módulos tiene un paso"),
    reason: say(
        "Whoever must reach the array or the ridge above it needs a way up beside it.",
        "Quien debe llegar al arreglo o a la cumbrera de arriba necesita un camino junto a él.",
    ),
    sketch: &[
        SLOPE,
        Stroke::Free(&[[8.0, 8.0], [24.0, 8.0], [24.0, 52.0], [8.0, 52.0]]),
        Stroke::Way([16.0, 10.0], [16.0, 48.0]),
        Stroke::Module([30.0, 14.0, 26.0, 14.0]),
        Stroke::Module([56.0, 14.0, 26.0, 14.0]),
        Stroke::Module([30.0, 28.0, 26.0, 14.0]),
        Stroke::Measure([8.0, 30.0], [24.0, 30.0]),
    ],
    source: |job| source(job, |fire| &fire.scheme.source),
    missing: exempt,
    run: Run::Face(run, |case, face| case.numbers_beside(face)),
};

fn run(case: &Case<'_>, index: usize, findings: &mut Vec<Finding>) {
    let Some(fire) = &case.book.fire_access else { return };
    let Some(face) = case.layout.roof.faces.get(index).filter(|face| looked_at(fire, face)) else { return };
    let Some(first) = case.laid_on(index).next() else { return };
    let width = length(fire.path_width.value.metres(), case.units);
    let on = sentence(&case.face_name(index));
    let key = format!("fire-plane-path/face-{}", case.face_id(index).map_or(0, |id| id.0));
    let place = Place {
        face: case.face_id(index),
        block: Some(first.block.id),
        shape: face.plan.outer.clone(),
        ..Place::default()
    };
    if !has_ridge(case, index) {
        findings.push(Finding {
            message: tell!("{on} has no ridge, and no plane beside it has one: the code asks for a pathway from the lowest edge to the ridge and \
                 does not say what holds here. It is not judged: ask the fire official.", "{on} no tiene cumbrera, y ningún plano junto a él la tiene: el código pide un paso del borde más \
        bajo a la cumbrera y no dice qué vale aquí. No se juzga: pregunte al oficial de bomberos."
            ),
            place,
            measured: pick("no ridge to go to", "no hay cumbrera a la cual ir").into(),
            required: tell!("a pathway {width} wide from the lowest edge to the ridge", "un paso de {width} de ancho del borde más bajo a la cumbrera"),
            source: RULE.source(case.job),
            ..Finding::of(RULE.code, Severity::Note, key)
        });
        return;
    }
    let asked = match fire.scheme.value {
        PathScheme::EachSlope if face.edges.iter().all(|span| span.kind != EdgeKind::Hip) => 2,
        _ => 1,
    };
    let found = found(case, fire, index, &Away::new());
    if found >= asked {
        return;
    }
    // One opening is worked out: two that are missing on one slope must be laid out by hand.
    let opening = (found + 1 == asked)
        .then(|| opening_of(case, fire, index).first())
        .flatten()
        .filter(|opening| self::found(case, fire, index, &opening.away) >= asked);
    let fix = opening.map(|opening| removal(case, opening));
    let what = match &fix {
        Some(fix) => tell!(
            "{} to open one at the least loss found",
            "{} para abrir uno con la menor pérdida hallada",
            fix.label
        ),
        None => pick(
            "No removal of modules along one strip opens it: leave room beside the array",
            "Quitar módulos en una sola franja no lo abre: deje lugar junto al arreglo",
        )
        .to_owned(),
    };
    findings.push(Finding {
        message: tell!(
            "{on} has {found} of {asked} pathways of {width} from its lowest edge to the ridge. {what}.",
            "{on} tiene {found} de {asked} pasos de {width} de su borde más bajo a la cumbrera. {what}.",
        ),
        place: Place { shape: opening.map_or_else(|| place.shape.clone(), |it| it.strip.clone()), ..place },
        measured: tell!("{found} found", "hallados: {found}"),
        required: tell!("{asked}, {width} wide in plan", "{asked}, de {width} de ancho en planta"),
        source: RULE.source(case.job),
        fix,
        ..Finding::of(RULE.code, Severity::Stop, key)
    });
}

/// What opens a pathway on a plane, fewest modules first; worked out once.
pub(super) fn opening_of<'c>(case: &'c Case<'_>, fire: &FireAccess, index: usize) -> &'c [Opening] {
    case.planes.get(index).map_or(&[], |planes| planes.openings.get_or_init(|| openings(case, fire, index)))
}

/// How many pathways serve a plane, without some modules. One beside it counts when it lies on the plane beside it
/// alone, or on the two: one that straddles that plane and a third does not.
fn found(case: &Case<'_>, fire: &FireAccess, index: usize, away: &Away) -> usize {
    let width = fire.path_width.value.metres();
    let fit =
        |path: &Pathway| if path.straight { ((path.width + TOLERANCE) / width).floor() as usize } else { 1 };
    let own = alone(case, fire, index, away);
    match fire.scheme.value {
        PathScheme::EachSlope => own.iter().map(fit).sum(),
        PathScheme::WholeRoof if !own.is_empty() => 1,
        PathScheme::WholeRoof => {
            let face = case.layout.roof.faces.get(index);
            let other = face.is_some_and(|f| beside(f).any(|o| !alone(case, fire, o, away).is_empty()));
            usize::from(other || !straddling(case, fire, index, away).is_empty())
        }
    }
}

/// The edit that takes modules away.
pub(super) fn removal(case: &Case<'_>, opening: &Opening) -> Fix {
    let mut edits: Vec<Edit> = Vec::new();
    let mut names: Vec<String> = Vec::new();
    for laid in opening.faces.iter().flat_map(|&face| case.laid_on(face)) {
        let cells: Vec<Cell> = of_block(&opening.away, laid.block.id).collect();
        if cells.is_empty() {
            continue;
        }
        let mut less: Block = laid.block.clone();
        less.off.extend(cells.iter().copied());
        let places: Vec<String> = cells
            .iter()
            .take(12)
            .map(|cell| tell!("row {} place {}", "fila {} lugar {}", cell.row + 1, cell.column + 1))
            .collect();
        let more = if cells.len() > places.len() { ", …" } else { "" };
        names.push(format!("{} ({}{more})", crate::words::block_name(laid.block), places.join(", ")));
        edits.push(if laid.placed.modules.len() == cells.len() {
            Edit::RemoveBlock(laid.block.id)
        } else {
            Edit::PutBlock(less)
        });
    }
    let label = tell!(
        "Switch off {} of {}",
        "Apagar {} de {}",
        modules(opening.away.len()),
        names.join(pick(" and ", " y "))
    );
    Fix { label, edit: Edit::Several(edits) }
}

#[cfg(test)]
mod tests {
    use crate::Severity;
    use crate::testing::{block, book, face, fixed, gable_job, of, one};
    use chalkcourse_geometry::{EdgeKind, SideId};
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

    /// The codes say nothing of a porch whose roof ends at a wall (common practice, no source: ask the fire official).
    #[test]
    fn a_plane_without_a_ridge_is_not_judged() {
        let mut job = gable_job();
        let porch = face(1, "Porch", &[(0.0, 0.0), (6.0, 0.0), (6.0, 3.0), (0.0, 3.0)], 4.0, 180.0, 3.0);
        job.faces = vec![porch.with_side_overruled(SideId(2), Some(EdgeKind::WallLine))];
        job.blocks = vec![block(3, 1, (0.1, 0.4), 1, 3)];
        let note = one(&job, "fire-plane-path");
        assert_eq!(note.severity, Severity::Note);
        assert!(note.message.contains("not judged: ask the fire official"), "{}", note.message);
        // With a ridge, the same block leaves too little room.
        job.faces[0] = job.faces[0].with_side_overruled(SideId(2), Some(EdgeKind::Ridge));
        assert_eq!(one(&job, "fire-plane-path").severity, Severity::Stop);
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
