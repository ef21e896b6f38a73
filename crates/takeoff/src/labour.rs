//! Hours of work: calculated by line, rounded up by crew.

use crate::amount::{DUST, whole};
use crate::{CrewTime, Line, LineState, totals};
use chalkcourse_job::{Crew, Group, Kit, Unit};
use chalkcourse_words::Said;

/// Rounds up the hours of each crew once, over all its lines together, and distributes the whole hours over the lines: each gets
/// its own whole hours, and the rest go to the lines with the largest fractions. So the column adds up, and no task costs a
/// rounding hour of its own. Hours a person entered are kept.
pub(crate) fn in_whole_hours(lines: &mut [Line], kit: &Kit) {
    for crew in &kit.crews {
        // Hours and days are rounded separately.
        let mut sizes: Vec<f64> =
            lines.iter().filter(|line| is_counted(line, crew)).map(|l| l.holds).collect();
        sizes.sort_by(f64::total_cmp);
        sizes.dedup();
        for size in sizes {
            let of_crew = lines.iter_mut().filter(|line| is_counted(line, crew) && line.holds == size);
            give_out(of_crew.collect());
        }
    }
}

fn is_counted(line: &Line, crew: &Crew) -> bool {
    is_work_of(line, crew) && line.state == LineState::Counted
}

fn is_work_of(line: &Line, crew: &Crew) -> bool {
    line.group == Group::Labour && line.unit == Unit::Time && line.crew.as_ref() == Some(&crew.name)
}

fn give_out(mut lines: Vec<&mut Line>) {
    let exact = |line: &Line| (line.with_waste - line.from_stock).max(0.0) / line.holds;
    let own = |line: &Line| (exact(line) + DUST).floor();
    let all = whole(lines.iter().map(|line| exact(line)).sum());
    let left = all - lines.iter().map(|line| own(line)).sum::<f64>();
    // Largest fraction first; ties, to a millionth, in the order listed.
    lines.sort_by_key(|line| std::cmp::Reverse(((exact(line) - own(line)) / DUST).round() as i64));
    for (nth, line) in lines.into_iter().enumerate() {
        let hours = own(line) + f64::from(u8::from((nth as f64) < left - DUST));
        line.counted = hours as u64;
        line.packages = line.counted;
        line.ordered = hours * line.holds;
        line.cost = totals::cost(line.price, line.packages);
    }
}

/// The hours of each crew that has work.
pub(crate) fn crews(lines: &[Line], kit: &Kit) -> Vec<CrewTime> {
    let time = |crew: &Crew| {
        let of_crew = lines.iter().filter(|line| is_work_of(line, crew));
        let person_hours: f64 = of_crew.map(|line| line.ordered).sum();
        let hours = person_hours / f64::from(crew.people.max(1));
        CrewTime { crew: Said::of_data(&crew.name), people: crew.people, person_hours, hours }
    };
    kit.crews.iter().map(time).filter(|time| time.person_hours > 0.0).collect()
}

#[cfg(test)]
mod tests {
    use crate::tests::{block, job, line, takeoff};
    use crate::{Takeoff, amount};
    use chalkcourse_job::Edit;

    fn hours(takeoff: &Takeoff, crew: &str) -> (f64, f64) {
        let of_crew = || takeoff.lines.iter().filter(|line| line.crew.as_deref() == Some(crew));
        (of_crew().map(|line| line.need).sum(), of_crew().map(|line| line.packages as f64).sum())
    }

    /// Half an hour here and half an hour there are one hour: common practice, no source.
    #[test]
    fn hours_are_rounded_once_per_crew() {
        let takeoff = takeoff(&job(vec![block(3, 4)]));
        for crew in ["Roof crew", "Ground crew", "Electrician"] {
            let (need, whole) = hours(&takeoff, crew);
            assert_eq!(whole, amount::whole(need), "{crew}: {need} h");
            let told = takeoff.crews.iter().find(|time| time.crew.now() == crew).unwrap();
            assert_eq!(told.person_hours, whole);
        }
        // No line is off by an hour or more from its calculated hours.
        for line in takeoff.lines.iter().filter(|line| line.crew.is_some()) {
            assert!((line.packages as f64 - line.need).abs() < 1.0, "{line:?}");
        }
    }

    #[test]
    fn entered_hours_stay_and_the_rest_is_rounded() {
        let plain = job(vec![block(3, 4)]);
        let own = chalkcourse_job::Override { packages: 30, why: "steep".into() };
        let edit = Edit::order(&plain, |order| drop(order.overrides.insert("FH-401".into(), own)));
        let takeoff = takeoff(&chalkcourse_job::apply(&plain, &edit).unwrap());
        let strip = line(&takeoff, "FH-401");
        assert_eq!(strip.packages, 30);
        let (need, whole) = hours(&takeoff, "Roof crew");
        assert_eq!(whole, 30.0 + amount::whole(need - strip.need));
    }
}
