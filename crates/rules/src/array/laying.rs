//! Joints between rows and the height of the base rail over the course lines are as the kit allows.
//!
//! Source: the kit, its `laying`; the demo kit allows any joints and any height. Fills keep to the same limits.

use crate::by_limit::place_of;
use crate::finding::{Finding, Severity};
use crate::measure::length;
use crate::rule::{Rule, Run};
use crate::sketch::{SLOPE, Stroke};
use crate::view::{BlockView, LaidBlock};
use crate::{Authority, Facts, WhyNot};
use chalkcourse_geometry::Length;
use chalkcourse_job::{BaseRail, Block, Cell, Kit, Required, RowJoints, Subject};
use chalkcourse_layout::PlacedModule;
use chalkcourse_limits::TOLERANCE;

pub(crate) const RULE: Rule = Rule {
    code: "laying",
    sketch: &[
        SLOPE,
        Stroke::Module([16.0, 14.0, 24.0, 15.0]),
        Stroke::Module([40.0, 14.0, 24.0, 15.0]),
        Stroke::Wrong([23.0, 29.0, 24.0, 15.0]),
        Stroke::Wrong([47.0, 29.0, 24.0, 15.0]),
        Stroke::Measure([16.0, 48.0], [23.0, 48.0]),
    ],
    source: |_| Authority::Kit,
    missing: |job| {
        let laying = &job.kit.laying;
        let free = laying.joints.contains(&RowJoints::Free) && laying.base_rail.anywhere;
        free.then_some(WhyNot::LaidAnyhow)
    },
    run: Run::Block(run),
};

fn run(view: BlockView<'_>, findings: &mut Vec<Finding>) {
    findings.extend(joints(view.laid, view.kit()));
    findings.extend(rail(view.laid, view.kit().laying.base_rail));
}

/// The lowest row whose joints the kit does not allow. Each module is compared with those it overlaps below, since a row may be
/// shifted from any place on.
fn joints(laid: &LaidBlock<'_>, kit: &Kit) -> Option<Finding> {
    let block = laid.block;
    let spacing = block.spacing(kit).x;
    let allowed = kit.laying.shifts(spacing)?;
    let rows: Vec<&[PlacedModule]> = laid.placed.modules.chunk_by(|a, b| a.cell.row == b.cell.row).collect();
    rows.windows(2).find_map(|pair| {
        let [below, row] = pair else { return None };
        let number = row.first()?.cell.row;
        if below.first()?.cell.row + 1 != number {
            return None;
        }
        let asides: Vec<(Cell, Aside)> = row
            .iter()
            .filter_map(|it| Some((it.cell, aside(block, it, below, spacing, &allowed)?)))
            .collect();
        let wrong: Vec<&(Cell, Aside)> =
            asides.iter().filter(|(_, aside)| aside.by.abs() > TOLERANCE).collect();
        let Aside { within, by } = wrong.first()?.1;
        let whole = asides.iter().all(|(_, other)| (other.by - by).abs() <= TOLERANCE);
        let cells = if whole {
            row.iter().map(|module| module.cell).collect()
        } else {
            wrong.iter().map(|(cell, _)| *cell).collect()
        };
        let facts = Facts::Joints { aside: Length::from_metres(within) };
        Some(Finding {
            measured: length(by.abs()),
            required: Required::Joints(kit.laying.joints.clone()),
            source: Authority::Kit,
            place: place_of(laid, cells, Vec::new()),
            ..Finding::of(RULE.code, Severity::Stop, Subject::Row(block.id, number + 1), facts)
        })
    })
}

/// Offset of a module's joints from those of a module below, metres.
#[derive(Clone, Copy)]
struct Aside {
    /// To the right, modulo the joint spacing.
    within: f64,
    /// From there to the nearest offset that the kit allows.
    by: f64,
}

/// The worst offset among the modules it overlaps below; `None` if there are none.
fn aside(
    block: &Block,
    module: &PlacedModule,
    below: &[PlacedModule],
    spacing: f64,
    allowed: &[f64],
) -> Option<Aside> {
    let over = |other: &&PlacedModule| module.rect.overlap(&other.rect).x > TOLERANCE;
    let asides = below.iter().filter(over).filter_map(|other| {
        let within = (shifted(block, module.cell) - shifted(block, other.cell)).rem_euclid(spacing);
        let by = allowed.iter().map(|to| to - within).min_by(|a, b| a.abs().total_cmp(&b.abs()))?;
        Some(Aside { within, by })
    });
    asides.max_by(|a, b| a.by.abs().total_cmp(&b.by.abs()))
}

/// Total shift of a cell to the right, metres.
fn shifted(block: &Block, cell: Cell) -> f64 {
    let shifts = block.shifts.iter().filter(|shift| shift.row == cell.row && shift.from <= cell.column);
    shifts.map(|shift| shift.by.metres()).sum()
}

/// The base rail at a height over a course line that the kit does not allow.
fn rail(laid: &LaidBlock<'_>, rail: BaseRail) -> Option<Finding> {
    let courses = laid.on.courses;
    let (by, above) = rail.off(laid.bounds.min.y, courses.first, courses.exposure)?;
    if by.abs() <= TOLERANCE {
        return None;
    }
    let subject = Subject::OfBlock(laid.block.id, laid.on.id, "rail".into());
    let facts = Facts::RailAmongCourses { exposure: Length::from_metres(courses.exposure) };
    Some(Finding {
        measured: length(above),
        required: Required::Between(
            length(rail.above_course_from.metres()),
            length(rail.above_course_to.metres()),
        ),
        source: Authority::Kit,
        place: place_of(laid, Vec::new(), Vec::new()),
        ..Finding::of(RULE.code, Severity::Stop, subject, facts)
    })
}

#[cfg(test)]
mod tests {
    use crate::testing::{gable_job, inches, kit, of, one, why_not};
    use crate::{Facts, WhyNot};
    use chalkcourse_geometry::Length;
    use chalkcourse_job::{BaseRail, Cell, Required, Resolved, RowJoints, RowShift};

    /// A module is 1.722 m long and the reveal 3 mm: joints repeat each 1.725 m.
    const SPACING: f64 = 1.725;

    fn shifted(joints: &[RowJoints], metres: f64) -> Resolved {
        let mut job = gable_job();
        kit(&mut job).laying.joints = joints.to_vec();
        job.blocks[0] = job.blocks[0].with_shift(1, Length::from_metres(metres));
        job
    }

    #[test]
    fn joints_in_line() {
        let aligned = [RowJoints::Aligned];
        assert_eq!(of(&shifted(&aligned, 0.0), "laying"), vec![]);
        // Shifted by a whole module, the joints line up again.
        assert_eq!(of(&shifted(&aligned, SPACING), "laying"), vec![]);
        // Equidistant from the joints on both sides.
        for by in [0.1, SPACING - 0.1] {
            let found = one(&shifted(&aligned, by), "laying");
            assert_eq!(found.required, Required::Joints(aligned.to_vec()));
            assert!((inches(found.measured) - 0.1 / 0.0254).abs() < 1e-9, "{by}");
        }
    }

    #[test]
    fn joints_half_a_module_aside() {
        let lapped = [RowJoints::HalfLapped];
        assert_eq!(of(&shifted(&lapped, SPACING / 2.0), "laying"), vec![]);
        let found = one(&shifted(&lapped, 0.0), "laying");
        assert!((inches(found.measured) - SPACING / 2.0 / 0.0254).abs() < 1e-9);
        assert_eq!(of(&shifted(&[RowJoints::HalfLapped, RowJoints::Aligned], 0.0), "laying"), vec![]);
        assert_eq!(of(&shifted(&[RowJoints::HalfLapped, RowJoints::Free], 0.3), "laying"), vec![]);
    }

    /// Only the first module of the upper row is off, and the rest are shifted; or all but the last line up.
    #[test]
    fn joints_of_a_row_that_is_shifted_from_one_of_its_places_on() {
        let mut job = shifted(&[RowJoints::Aligned], 0.0);
        job.blocks[0].shifts = vec![RowShift { row: 1, from: 1, by: Length::from_metres(0.5) }];
        assert_eq!(one(&job, "laying").place.cells.len(), 2);
        job.blocks[0].off.insert(Cell { row: 1, column: 0 });
        assert_eq!(one(&job, "laying").place.cells.len(), 2);
        job.blocks[0].shifts[0].by = Length::from_metres(SPACING);
        assert_eq!(of(&job, "laying"), vec![], "a whole module aside");
        job.blocks[0].shifts[0] = RowShift { row: 1, from: 2, by: Length::from_metres(0.1) };
        assert_eq!(one(&job, "laying").place.cells, [Cell { row: 1, column: 2 }]);
    }

    /// Courses of 5 in from 5 in up the slope: a course line each 0.127 m. The block lies at 1 m: 0.111 m above one.
    fn on_courses(from: f64, to: f64, at: f64) -> Resolved {
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
        // Measured from the course line whose allowed range is nearest: 0.12 m above one is 7 mm below the next.
        for (above, told) in [(0.0, 0.0), (0.03, 0.03), (0.12, -0.007)] {
            let found = one(&on_courses(0.01, 0.02, line + above), "laying");
            assert!(matches!(found.facts, Facts::RailAmongCourses { .. }));
            assert!((inches(found.measured) * 0.0254 - told).abs() < 1e-9, "{above}: {found:#?}");
        }
    }

    #[test]
    fn a_kit_that_allows_all_is_not_checked() {
        assert_eq!(why_not(&gable_job(), "laying"), Some(WhyNot::LaidAnyhow));
        assert_eq!(why_not(&on_courses(0.0, 0.0, 1.016), "laying"), None);
    }
}
