//! A fix in words, as on a button: `Move block A 3 1/4" up the slope`.

use super::{Change, Fix, Fixes};
use crate::Seen;
use chalkcourse_geometry::{Azimuth, DVec2, Length};
use chalkcourse_job::{BlockId, Cell, FaceId, Resolved};
use chalkcourse_telling::Names;
use chalkcourse_words::later::{self as words, common::modules};
use chalkcourse_words::{Said, Say};

/// The result for a finding in a sentence: the best fix, or that there is none.
pub(super) fn fixes_words(job: &Resolved, fixes: &Fixes, seen: Seen) -> Said {
    match fixes.best() {
        Some(fix) if fix.steps.len() > 1 => {
            let words = fix_words(job, fix, seen);
            if fixes.has_a_single_step() {
                words::fixes::no_single_step_keeps_as(&words)
            } else {
                words::fixes::no_single_step_clears_it(&words)
            }
        }
        Some(fix) => fix_words(job, fix, seen),
        None => words::fixes::NONE_WAS_FOUND_AMONG_MOVES.into(),
    }
}

/// A fix in words: one step, or `First …, then …`.
pub fn fix_words(job: &Resolved, fix: &Fix, seen: Seen) -> Said {
    let words: Vec<Said> = fix.steps.iter().map(|step| of_change(job, &step.change, seen)).collect();
    let words = match words.as_slice() {
        [] => Said::default(),
        [one] => one.clone(),
        [first, then @ ..] => {
            words::fixes::first_then(&first, &Said::listed(then.iter().cloned(), words::fixes::THEN))
        }
    };
    words.with_capital()
}

fn of_change(job: &Resolved, change: &Change, seen: Seen) -> Said {
    let names = Names { job };
    match change {
        Change::Move(block, by) => {
            let ways = ways(job, job.block(*block).map(|it| it.face), *by, seen);
            words::fixes::move_2(&names.block(*block), &ways)
        }
        Change::MoveThrough { penetration, face, by } => {
            let ways = ways(job, Some(*face), *by, seen);
            words::fixes::move_3(&names.penetration(Some(*penetration)), &ways)
        }
        Change::Take(block) => words::fixes::take_away(&names.block(*block)),
        Change::SwitchOff(block, cells) => switch_off(&names, &[(*block, cells.clone())]),
        Change::SwitchOn(block, row, count) => {
            words::fixes::switch_on_in_row_of(&modules(*count), &(row + 1), &names.block(*block))
        }
        Change::ShiftOver(block, row, _) => {
            words::fixes::shift_row_of_over_the(&(row + 1), &names.block(*block))
        }
        Change::Slide { block, row, above, by } => {
            let along = DVec2::new(by.metres(), 0.0);
            let ways = ways(job, job.block(*block).map(|it| it.face), along, seen);
            let (row, name) = (row + 1, names.block(*block));
            if *above {
                words::fixes::shift_row_of_and_those(&row, &name, &ways)
            } else {
                words::fixes::shift_row_of(&row, &name, &ways)
            }
        }
        Change::Reveal(block, to) => {
            words::fixes::set_the_reveal_of_to(&names.block(*block), &names.length(to.metres()))
        }
        Change::OpenPathway(blocks) => switch_off(&names, blocks),
        Change::Lift(face, by) => lift(&names, *face, *by),
        Change::RepeatedCorner => words::fixes::TAKE_THE_REPEATED_CORNER_AWAY.into(),
        Change::Hole(ring) => words::fixes::take_hole_away(&ring),
        Change::TakeBack(face) => words::fixes::take_back_what_was_said(&names.face(*face)),
        Change::DripEdge => words::fixes::PUT_DRIP_EDGE_ON_WITH.into(),
        Change::Unwaive => words::fixes::TAKE_THE_WAIVER_AWAY.into(),
    }
}

fn lift(names: &Names<'_>, face: FaceId, by: Length) -> Said {
    let verb = if by.metres() > 0.0 { words::fixes::RAISE } else { words::fixes::LOWER };
    let by = Said::own(names.length(by.metres().abs()));
    Said::listed([verb.into(), names.face(face), by], " ")
}

/// Distance and direction in a face's frame, as the user sees it: `3 1/4" to the left and 1" up the slope`.
pub(crate) fn ways(job: &Resolved, face: Option<FaceId>, by: DVec2, seen: Seen) -> Said {
    let names = Names { job };
    let Some(plane) = face.and_then(|id| job.face(id)).map(chalkcourse_job::Face::plane) else {
        return Said::default();
    };
    let slope = if by.y > 0.0 { words::fixes::UP_THE_SLOPE } else { words::fixes::DOWN_THE_SLOPE };
    let along = DVec2::new(by.x, 0.0);
    let up = DVec2::new(0.0, by.y);
    let along_words = match seen {
        Seen::Text => {
            let to = Azimuth::of(plane.along() * by.x.signum()).word();
            words::fixes::to_the(&to)
        }
        _ => on_screen(seen.on_screen(&plane, along)).into(),
    };
    let shown = seen.on_screen(&plane, up);
    // Where up on the screen is up the slope, one phrase says both.
    let up_words = match seen {
        Seen::Plan if shown != up => {
            Said::joined([on_screen(shown).into(), Said::own(" ("), slope.into(), Said::own(")")])
        }
        _ => slope.into(),
    };
    let told = [(by.x, along_words), (by.y, up_words)]
        .into_iter()
        .filter(|(by, _)| by.abs() > 1e-9)
        .map(|(by, way)| way.after(format!("{} ", names.length(by.abs()))));
    Said::listed(told, words::common::AND)
}

fn on_screen(way: DVec2) -> Say {
    if way.x.abs() > way.y.abs() {
        if way.x > 0.0 { words::common::TO_THE_RIGHT } else { words::common::TO_THE_LEFT }
    } else if way.y > 0.0 {
        words::fixes::UP_THE_PLAN
    } else {
        words::fixes::DOWN_THE_PLAN
    }
}

/// Most cells to list by name.
const MOST_PLACES: usize = 12;

fn switch_off(names: &Names<'_>, blocks: &[(BlockId, Vec<Cell>)]) -> Said {
    let of_block = |(block, cells): &(BlockId, Vec<Cell>)| {
        let place = |cell: &Cell| words::fixes::row_place(&(cell.row + 1), &(cell.column + 1));
        let places = Said::listed(cells.iter().take(MOST_PLACES).map(place), ", ");
        let more = if cells.len() > MOST_PLACES { ", …)" } else { ")" };
        Said::joined([names.block(*block), " (".into(), places, more.into()])
    };
    words::fixes::switch_off_of(
        &modules(blocks.iter().map(|(_, cells)| cells.len()).sum::<usize>()),
        &Said::listed(blocks.iter().map(of_block), words::common::AND),
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fixes::Step;
    use chalkcourse_geometry::{Pitch, Polygon, Units, dvec2};
    use chalkcourse_job::{Block, Edit, Face, Orientation, builtin_kit, builtin_prices, builtin_rule_book};

    /// A block on a face whose downslope has this azimuth.
    fn falling_to(degrees: f64) -> Resolved {
        let mut job = Resolved::new("A".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        let outline = [(0.0, 0.0), (9.0, 0.0), (9.0, 9.0), (0.0, 9.0)].map(Into::into).to_vec();
        let pitch = Pitch::from_rise_in_12(6.0).unwrap();
        let height = Length::from_metres(3.0);
        job.faces =
            vec![Face::new(FaceId(1), "A".into(), Polygon::new(outline), pitch, degrees.into(), height)];
        job.blocks = vec![Block {
            id: BlockId(2),
            name: "A".into(),
            face: FaceId(1),
            at: DVec2::ONE,
            rows: 2,
            columns: 2,
            orientation: Orientation::Landscape,
            reveal: Length::from_inches(0.125),
            shifts: Vec::new(),
            off: Default::default(),
            locked: false,
        }];
        job.units = Units::FeetInches;
        job
    }

    fn check(degrees: f64, (u, v): (f64, f64), seen: Seen, expected: &str) {
        let change = Change::Move(BlockId(2), dvec2(u, v) * 0.0254);
        let step = Step { change, edit: Edit::SetName(String::new()) };
        let words = fix_words(&falling_to(degrees), &Fix::of(vec![step], 4, 4), seen);
        assert_eq!(words.now(), format!("Move block A {expected}"), "{degrees}");
    }

    #[test]
    fn directions_match_the_view() {
        check(180.0, (2.0, 1.0), Seen::Plan, "2\" to the right and 1\" up the slope");
        check(0.0, (2.0, 1.0), Seen::Plan, "2\" to the left and 1\" down the plan (up the slope)");
        check(90.0, (0.0, 1.0), Seen::Plan, "1\" to the left (up the slope)");
        check(90.0, (2.0, 0.0), Seen::Plan, "2\" up the plan");
        check(0.0, (-2.0, -1.0), Seen::FaceOn, "2\" to the left and 1\" down the slope");
        check(0.0, (2.0, 0.0), Seen::Text, "2\" to the west");
        check(180.0, (2.0, 0.0), Seen::Text, "2\" to the east");
        check(90.0, (2.0, -1.0), Seen::Text, "2\" to the north and 1\" down the slope");
    }

    #[test]
    fn steps_are_listed_in_order() {
        let step = |change| Step { change, edit: Edit::SetName(String::new()) };
        let steps = vec![
            step(Change::Slide { block: BlockId(2), row: 1, above: false, by: Length::from_inches(-3.0) }),
            step(Change::Take(BlockId(2))),
        ];
        let words = fix_words(&falling_to(0.0), &Fix::of(steps, 4, 0), Seen::Plan);
        assert_eq!(words.now(), "First shift row 2 of block A 3\" to the right, then take block A away");
    }
}
