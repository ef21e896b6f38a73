//! Joints of rows fall as the kit lets them, and the base rail lies among the courses where the kit lets it.
//!
//! Source: the kit, its `laying`; the demo kit allows all joints and any height. What fills a face keeps to the same.

use super::moves::place_of;
use super::of_kit;
use crate::case::{Case, Laid};
use crate::clear::moved;
use crate::finding::{Finding, Fix, Severity};
use crate::measure::TOLERANCE;
use crate::registry::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::words::{Way, block_name, length, sentence};
use chalkcourse_geometry::{Length, dvec2};
use chalkcourse_job::{Block, Cell, Edit, Kit, RowJoints};
use chalkcourse_words::{pick, say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "laying",
    title: say(
        "Rows and base rail are laid as the kit says",
        "Las filas y el riel base se colocan como dice el kit",
    ),
    reason: say(
        "Modules interlock only in the ways that they were made for, and a rail between courses can't be flashed.",
        "Los módulos se enlazan solo como fueron hechos para hacerlo, y un riel entre hiladas no se puede \
        impermeabilizar.",
    ),
    sketch: &[
        SLOPE,
        Stroke::Module([16.0, 14.0, 24.0, 15.0]),
        Stroke::Module([40.0, 14.0, 24.0, 15.0]),
        Stroke::Wrong([23.0, 29.0, 24.0, 15.0]),
        Stroke::Wrong([47.0, 29.0, 24.0, 15.0]),
        Stroke::Measure([16.0, 48.0], [23.0, 48.0]),
    ],
    source: of_kit,
    missing: |job| {
        let laying = &job.kit.laying;
        let free = laying.joints.contains(&RowJoints::Free) && laying.base_rail.anywhere;
        free.then(|| {
            pick(
                "the kit lets rows slide and the base rail lie anywhere",
                "el kit deja correr las filas y poner el riel base en cualquier lugar",
            )
            .into()
        })
    },
    run: Run::block(run),
};

fn run(case: &Case<'_>, laid: &Laid<'_>, findings: &mut Vec<Finding>) {
    findings.extend(joints(case, laid));
    findings.extend(rail(case, laid));
}

/// Shifts of a row against the one below that the kit allows, within one module; none where any is allowed.
fn allowed(kit: &Kit, spacing: f64) -> Option<Vec<f64>> {
    let mut shifts = Vec::new();
    for joints in &kit.laying.joints {
        match joints {
            RowJoints::Free => return None,
            RowJoints::Aligned => shifts.extend([0.0, spacing]),
            RowJoints::HalfLapped => shifts.push(spacing / 2.0),
        }
    }
    Some(shifts)
}

/// The lowest row whose joints fall where the kit does not let them.
fn joints(case: &Case<'_>, laid: &Laid<'_>) -> Option<Finding> {
    let (block, kit) = (laid.block, &case.job.kit);
    let spacing = block.spacing(kit).x;
    let allowed = allowed(kit, spacing)?;
    let has_modules = |row: u32| laid.placed.modules.iter().any(|module| module.cell.row == row);
    (1..block.rows).filter(|&row| has_modules(row) && has_modules(row - 1)).find_map(|row| {
        let shift = (block.shift(row) - block.shift(row - 1)).metres();
        let within = shift.rem_euclid(spacing);
        let nearest = allowed.iter().copied().min_by(|a, b| (a - within).abs().total_cmp(&(b - within).abs()))?;
        if (nearest - within).abs() <= TOLERANCE {
            return None;
        }
        let by = nearest - within;
        let mut ways: Vec<&str> = Vec::new();
        for joints in &kit.laying.joints {
            ways.push(match joints {
                RowJoints::Free => pick("anywhere", "en cualquier lugar"),
                RowJoints::Aligned => pick("in line", "en línea"),
                RowJoints::HalfLapped => pick("half a module aside", "medio módulo corridas"),
            });
        }
        let (measured, required) = (length(within, case.units), ways.join(pick(" or ", " o ")));
        let way = if by > 0.0 { Way::Right } else { Way::Left };
        let label = tell!("shift row {} of {} {} {}", "correr la fila {} de {} {} {}",
            row + 1,
            block_name(block),
            length(by.abs(), case.units),
            way.name()
        );
        let cells: Vec<Cell> =
            laid.placed.modules.iter().map(|module| module.cell).filter(|cell| cell.row == row).collect();
        let key = format!("laying/block-{}/row-{}", block.id, row + 1);
        Some(Finding {
            message: tell!("The joints of row {} of {} are {measured} aside of those below; the kit lays them {required}. {}.", "Las juntas de la fila {} de {} están {measured} corridas de las de abajo; el kit las coloca \
        {required}. {}.",
                row + 1,
                block_name(block),
                sentence(&label)
            ),
            place: place_of(laid, cells, Vec::new()),
            measured: tell!("{measured} aside", "{measured} corridas"),
            required,
            source: RULE.source(case.job),
            fix: Some(Fix { label: sentence(&label), edit: Edit::PutBlock(slid(block, row, by)) }),
            ..Finding::of(RULE.code, Severity::Stop, key)
        })
    })
}

/// The block with a row and all above it slid, so that those above stay as they are to one another.
fn slid(block: &Block, row: u32, by: f64) -> Block {
    (row..block.rows)
        .fold(block.clone(), |slid, row| slid.with_shift(row, block.shift(row) + Length::from_metres(by)))
}

/// The base rail at a height over a course line that the kit does not allow.
fn rail(case: &Case<'_>, laid: &Laid<'_>) -> Option<Finding> {
    let rail = case.job.kit.laying.base_rail;
    let courses = laid.on.courses;
    if rail.anywhere || courses.exposure <= TOLERANCE {
        return None;
    }
    let (least, most) = (rail.above_course_from.metres(), rail.above_course_to.metres());
    let above = (laid.bounds.min.y - courses.first).rem_euclid(courses.exposure);
    // The allowed stretch as the courses repeat it, below and above.
    let by = [-courses.exposure, 0.0, courses.exposure]
        .into_iter()
        .map(|course| above.clamp(least + course, most + course) - above)
        .min_by(|a, b| a.abs().total_cmp(&b.abs()))?;
    if by.abs() <= TOLERANCE {
        return None;
    }
    let way = if by > 0.0 { Way::Up } else { Way::Down };
    let label = tell!(
        "Move {} {} {}",
        "Mover {} {} {}",
        block_name(laid.block),
        length(by.abs(), case.units),
        way.name()
    );
    let measured = length(above, case.units);
    let required = tell!("{} to {}", "de {} a {}", length(least, case.units), length(most, case.units));
    Some(Finding {
        message: tell!(
            "The base rail of {} is {measured} above a course line; the kit allows {required}. {label}.",
            "El riel base de {} está {measured} arriba de una línea de hilada; el kit permite {required}. {label}.",
            block_name(laid.block)
        ),
        place: place_of(laid, Vec::new(), Vec::new()),
        measured: tell!("{measured} above a course line", "{measured} arriba de una línea de hilada"),
        required,
        source: RULE.source(case.job),
        fix: Some(Fix { label, edit: moved(laid.block, dvec2(0.0, by)) }),
        ..Finding::of(RULE.code, Severity::Stop, format!("laying/block-{}/rail", laid.block.id))
    })
}

#[cfg(test)]
mod tests {
    use crate::testing::{fixed, gable_job, kit, of, one};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{BaseRail, Job, RowJoints};

    /// A module is 1.722 m long and the reveal 3 mm: joints repeat each 1.725 m.
    const SPACING: f64 = 1.725;

    fn shifted(joints: &[RowJoints], metres: f64) -> Job {
        let mut job = gable_job();
        kit(&mut job).laying.joints = joints.to_vec();
        job.blocks[0] = job.blocks[0].with_shift(1, Length::from_metres(metres));
        job
    }

    #[test]
    fn joints_in_line() {
        let aligned = [RowJoints::Aligned];
        assert_eq!(of(&shifted(&aligned, 0.0), "laying"), vec![]);
        // A whole module aside the joints are in line again.
        assert_eq!(of(&shifted(&aligned, SPACING), "laying"), vec![]);
        let job = shifted(&aligned, 0.1);
        let found = one(&job, "laying");
        assert!(found.message.contains("lays them in line. Shift row 2 of block 3"), "{}", found.message);
        assert_eq!(fixed(&job, &found).blocks[0].shift(1), Length::ZERO);
        // Nearer to the next joint it goes on to that one.
        let job = shifted(&aligned, SPACING - 0.1);
        let next = fixed(&job, &one(&job, "laying"));
        assert!((next.blocks[0].shift(1).metres() - SPACING).abs() < 1e-9);
    }

    #[test]
    fn joints_half_a_module_aside() {
        let lapped = [RowJoints::HalfLapped];
        assert_eq!(of(&shifted(&lapped, SPACING / 2.0), "laying"), vec![]);
        let job = shifted(&lapped, 0.0);
        let next = fixed(&job, &one(&job, "laying"));
        assert!((next.blocks[0].shift(1).metres() - SPACING / 2.0).abs() < 1e-9);
        assert_eq!(of(&shifted(&[RowJoints::HalfLapped, RowJoints::Aligned], 0.0), "laying"), vec![]);
        assert_eq!(of(&shifted(&[RowJoints::HalfLapped, RowJoints::Free], 0.3), "laying"), vec![]);
    }

    #[test]
    fn rows_above_go_with_a_row_that_is_slid() {
        let mut job = shifted(&[RowJoints::Aligned], 0.1);
        job.blocks[0].rows = 3;
        job.blocks[0] = job.blocks[0].with_shift(2, Length::from_metres(0.1));
        let next = fixed(&job, &one(&job, "laying"));
        assert_eq!(of(&next, "laying"), vec![], "the third row was in line with the second, and is");
    }

    /// Courses of 5 in from 5 in up the slope: a course line each 0.127 m. The block lies at 1 m: 0.111 m above one.
    fn on_courses(from: f64, to: f64, at: f64) -> Job {
        let mut job = gable_job();
        kit(&mut job).laying.base_rail = BaseRail {
            anywhere: false,
            above_course_from: Length::from_metres(from),
            above_course_to: Length::from_metres(to),
        };
        job.blocks[0].at.y = at;
        job
    }

    #[test]
    fn the_rail_among_the_courses() {
        let line = 8.0 * 0.127;
        for fine in [line + 0.01, line + 0.015, line + 0.02] {
            assert_eq!(of(&on_courses(0.01, 0.02, fine), "laying"), vec![], "{fine}");
        }
        // The least way: up to the stretch over it, or down to the one under it.
        for (at, goes_to) in
            [(line, line + 0.01), (line + 0.03, line + 0.02), (line + 0.12, line + 0.127 + 0.01)]
        {
            let job = on_courses(0.01, 0.02, at);
            let found = one(&job, "laying");
            assert!(found.message.contains("above a course line"), "{}", found.message);
            let next = fixed(&job, &found);
            assert!((next.blocks[0].at.y - goes_to).abs() < 1e-9, "{at}: {}", next.blocks[0].at.y);
        }
    }

    #[test]
    fn a_kit_that_allows_all_is_not_checked() {
        let rule = crate::RULES.iter().find(|rule| rule.code == "laying").unwrap();
        assert!(rule.why_not(&gable_job()).unwrap().contains("anywhere"));
        assert_eq!(rule.why_not(&on_courses(0.0, 0.0, 1.016)), None);
    }
}
