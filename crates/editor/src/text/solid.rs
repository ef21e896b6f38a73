//! Words about the 3-D view, its sun, and the homeowner's view.

use crate::Document;
use chalkcourse_geometry::Units;
use chalkcourse_picture::Camera;
use chalkcourse_sunlight::{Date, Spot, Sun, SunDay};
use chalkcourse_telling::order::show_round_sum;
use chalkcourse_words::{self as words, Say};

pub(crate) const SOLID_VIEW: Say = words::solid::HOUSE;
pub(crate) const HOUSE_HINT: Say = words::solid::DRAG_TO_TURN_THE_HOUSE;
pub(crate) const SOLID_HELP: Say = words::solid::THE_HOUSE_IN_SPACE_DRAG;
pub(crate) const SAVE_PICTURE: Say = words::solid::SAVE_PICTURE;
pub(crate) const CANT_SAVE_PICTURE: Say = words::solid::THE_PICTURE_COULD_NOT_BE;
pub(crate) const SHOW_HOME: Say = words::solid::SHOW_TO_THE_HOMEOWNER;
pub(crate) const NO_HOUSE_YET: Say = words::solid::THERE_IS_NO_HOUSE_TO;
pub(crate) const NO_PLACE_NO_SUN: Say = words::solid::WHERE_THE_HOUSE_STANDS_IS;
pub(crate) const TURN_LEFT: Say = words::solid::TURN_LEFT;
pub(crate) const TURN_RIGHT: Say = words::solid::TURN_RIGHT;
pub(crate) const EYE_UP: Say = words::solid::HIGHER;
pub(crate) const EYE_DOWN: Say = words::solid::LOWER;
pub(crate) const NEARER: Say = words::solid::NEARER;
pub(crate) const FARTHER: Say = words::solid::FARTHER;
pub(crate) const BEFORE: Say = words::solid::BEFORE;
pub(crate) const AFTER: Say = words::solid::AFTER;
pub(crate) const BEFORE_HELP: Say = words::solid::THE_HOUSE_WITHOUT_THE_ARRAY;
pub(crate) const DAY: Say = words::solid::DAY;
pub(crate) const DAY_HELP: Say = words::solid::THE_DAY_THAT_THE_SUN;
pub(crate) const HOUR: Say = words::solid::HOUR;
pub(crate) const HOUR_HELP: Say = words::solid::BY_THE_CLOCK_15_30;
pub(crate) const UTC: Say = words::solid::UTC;
pub(crate) const UTC_HELP: Say = words::solid::HOW_MANY_HOURS_THE_CLOCK;
/// Keys of the view, for the list of keys.
pub(crate) const HOUSE_KEYS: [(Say, Say); 2] = [
    (words::solid::HOUSE_TURN, words::solid::ARROW_KEYS_OR_DRAG),
    (words::solid::HOUSE_SLIDE_COME_NEARER, words::solid::SHIFT_ARROW_KEYS_AND),
];

// For the homeowner
pub(crate) const FROM_ABOVE: Say = words::solid::FROM_ABOVE;
pub(crate) const LEAVE: Say = words::solid::LEAVE_ESC;
pub(crate) const HOME_COVERS: Say = words::solid::WHAT_IT_COVERS;
pub(crate) const HOME_COSTS: Say = words::solid::WHAT_IT_COSTS;
pub(crate) const TO_BE_QUOTED: Say = words::solid::TO_BE_QUOTED;
pub(crate) const PRICE_NOTE: Say = words::solid::AS_PLANNED_TODAY_THE_WRITTEN;
pub(crate) const HOME_NOT_DONE: Say = words::solid::NOT_READY_TO_BUILD_THESE;
pub(crate) const HOME_WAIVED: Say = words::solid::WAIVED_ACCEPTED_ALL_THE_SAME;
pub(crate) const HOME_BARE_COST: Say = words::solid::BARE_COST_NO_OVERHEAD_AND;
pub(crate) const SHOW_BARE_COST: Say = words::solid::SHOW_THE_BARE_COST_ALL;
pub(crate) const GOOD_TO_KNOW: Say = words::solid::GOOD_TO_KNOW;
pub(crate) const HOME_CAUTIONS: [Say; 3] = [
    words::solid::THIS_IS_A_PLAN_NOT,
    words::solid::A_LICENSED_ENGINEER_LOOKS_AT,
    words::solid::PLEASE_STAY_OFF_THE_ROOF,
];

pub(crate) const SHOW_HOME_HELP: Say = words::solid::FULL_SCREEN_IN_LARGE_TYPE;
pub(crate) const SAVE_PICTURE_HELP: Say = words::solid::WRITE_THE_PICTURE_AS_IT;

pub(crate) fn seen_from(camera: &Camera) -> String {
    words::solid::seen_from_the(&camera.from.word())
}

/// The whole picture in a sentence or two, for screen readers.
pub(crate) fn house_words(document: &Document, camera: &Camera, sun: &str, before: bool) -> String {
    let high = match camera.above {
        above if above > 70.0 => words::solid::FROM_ABOVE_2.now(),
        above if above > 40.0 => words::solid::FROM_HIGH_UP.now(),
        above if above > 12.0 => words::solid::FROM_A_LITTLE_ABOVE.now(),
        _ => words::solid::FROM_THE_GROUND.now(),
    };
    let array = match (before, document.plan().summary.modules) {
        (true, _) => words::solid::WITHOUT_THE_ARRAY.now().to_owned(),
        (false, 0) => words::solid::NO_MODULES_ON_IT.now().to_owned(),
        (false, _) => with_modules(document),
    };
    words::solid::roof_seen_from_the(&camera.from.word(), &high, &array, &sun)
}

/// "with 12 modules on South, 8 on North"
fn with_modules(document: &Document) -> String {
    let layout = &document.plan().layout;
    let counts: Vec<String> = layout
        .faces
        .iter()
        .enumerate()
        .filter_map(|(index, face)| {
            let on = layout.blocks.iter().filter(|block| block.face == index);
            let count: usize = on.map(|block| block.modules.len()).sum();
            (count > 0).then(|| words::solid::on(&count, &face.name))
        })
        .collect();
    match counts.len() {
        0..=6 => words::solid::modules(&counts.join(", ")),
        faces => words::solid::modules_on_faces(document.plan().summary.modules, faces),
    }
}

/// Shown in place of a picture if none can be rendered.
pub(crate) fn cant_draw(document: &Document) -> String {
    let summary = &document.plan().summary;
    words::solid::this_machine_cant_draw_the(
        document.job().faces.len(),
        &with_modules_or_none(document, summary.modules),
    )
}

fn with_modules_or_none(document: &Document, modules: usize) -> String {
    if modules == 0 { words::solid::NO_MODULES.now().to_owned() } else { with_modules(document) }
}

/// "21 June"
pub(crate) fn day(date: Date) -> String {
    const MONTHS: [Say; 12] = [
        words::solid::JANUARY,
        words::solid::FEBRUARY,
        words::solid::MARCH,
        words::solid::APRIL,
        words::solid::MAY,
        words::solid::JUNE,
        words::solid::JULY,
        words::solid::AUGUST,
        words::solid::SEPTEMBER,
        words::solid::OCTOBER,
        words::solid::NOVEMBER,
        words::solid::DECEMBER,
    ];
    let month = MONTHS.get(date.month() as usize - 1).map_or("", |month| month.now());
    words::solid::day_month(&date.day(), &month)
}

/// "15:30"; hours outside of the day wrap around.
pub(crate) fn clock(hour: f64) -> String {
    let minutes = if hour.is_finite() { (hour * 60.0).round() as i64 } else { 0 };
    let (hours, rest) = (minutes.div_euclid(60), minutes.rem_euclid(60));
    // Midnight at the end of a day is 24:00, later hours are of the next day.
    let hours = if hours == 24 && rest == 0 { 24 } else { hours.rem_euclid(24) };
    format!("{hours}:{rest:02}")
}

/// Parses 15:30, 15.5 and 15.
pub(crate) fn parse_clock(text: &str) -> Option<f64> {
    let hour = match text.trim().split_once(':') {
        Some((hours, minutes)) => {
            hours.trim().parse::<f64>().ok()? + minutes.trim().parse::<f64>().ok()? / 60.0
        }
        None => text.trim().parse().ok()?,
    };
    (0.0..=24.0).contains(&hour).then_some(hour)
}

pub(crate) fn sun_words(date: Date, hour: f64, sun: &Sun) -> String {
    let when = format!("{}, {}", day(date), clock(hour));
    if sun.is_up() {
        words::solid::sun_in_the_high(&when, &sun.azimuth.word(), &format_args!("{:.0}", sun.elevation))
    } else {
        words::solid::the_sun_is_down(&when)
    }
}

pub(crate) fn sun_day(day: &SunDay) -> String {
    match day {
        SunDay::Rises { rise, noon, set } => {
            words::solid::sunrise_highest_sunset(&clock(*rise), &clock(*noon), &clock(*set))
        }
        SunDay::Up { noon } => words::solid::the_sun_stays_up_all(&clock(*noon)),
        SunDay::Down { noon } => words::solid::the_sun_stays_down_all(&clock(*noon)),
    }
}

pub(crate) fn spot(spot: &Spot) -> String {
    let side = |degrees: f64, plus: &str, minus: &str| {
        format!("{:.4}° {}", degrees.abs(), if degrees < 0.0 { minus } else { plus })
    };
    words::solid::at(
        &side(spot.latitude, words::common::NORTH.now(), words::common::SOUTH.now()),
        &side(spot.longitude, words::common::EAST.now(), words::common::WEST.now()),
    )
}

/// Rows of what the array covers: a number and its label.
pub(crate) fn home_facts(document: &Document) -> Vec<(String, String)> {
    let summary = &document.plan().summary;
    let share = if summary.slope_area > 0.0 { summary.array_area / summary.slope_area * 100.0 } else { 0.0 };
    let (scale, unit) = match document.job().units {
        Units::FeetInches => (1.0 / (0.3048 * 0.3048), words::solid::SQ_FT.now()),
        Units::Metric => (1.0, "m²"),
    };
    vec![
        (
            summary.modules.to_string(),
            if summary.modules == 1 { words::common::MODULE.now() } else { words::common::MODULES_2.now() }
                .to_owned(),
        ),
        (format!("{:.1} kW", summary.kilowatts), words::solid::RATED_POWER.now().to_owned()),
        (
            format!("{:.0} {unit}", summary.array_area * scale),
            words::solid::COVERED_BY_THE_ARRAY.now().to_owned(),
        ),
        (format!("{share:.0} %"), words::solid::OF_THE_ROOF.now().to_owned()),
    ]
}

/// The price, if everything has one.
pub(crate) fn home_price(document: &Document) -> Option<String> {
    let takeoff = &document.plan().takeoff;
    let complete = takeoff.unpriced.is_empty() && !takeoff.lines.is_empty();
    complete.then(|| show_round_sum(takeoff.totals.total, &takeoff.currency))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hours_are_read_back_as_they_are_shown() {
        for (hour, shown) in
            [(0.0, "0:00"), (15.5, "15:30"), (23.999, "24:00"), (24.0, "24:00"), (-1.5, "22:30")]
        {
            assert_eq!(clock(hour), shown);
        }
        assert_eq!(parse_clock("15:30"), Some(15.5));
        assert_eq!(parse_clock("6"), Some(6.0));
        for wrong in ["", "25:00", "x", "nan"] {
            assert_eq!(parse_clock(wrong), None, "{wrong}");
        }
    }
}
