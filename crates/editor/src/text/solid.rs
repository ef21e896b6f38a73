//! Words about the house in space, the sun over it, and the view for its owner.

use crate::Document;
use crate::commands::Command;
use chalkcourse_geometry::Units;
use chalkcourse_picture::Camera;
use chalkcourse_sunlight::{Date, Spot, Sun, SunDay};

pub(crate) const SOLID_VIEW: &str = "House";
pub(crate) const HOUSE_HINT: &str =
    "Drag to turn the house, with Shift to slide it; the wheel comes nearer. A click holds what is there.";
pub(crate) const SOLID_HELP: &str = "The house in space: drag to turn, wheel to come nearer  (3)";
pub(crate) const SAVE_PICTURE: &str = "Save picture…";
pub(crate) const CANT_SAVE_PICTURE: &str = "The picture could not be written";
pub(crate) const SHOW_HOME: &str = "Show to the homeowner";
pub(crate) const NO_HOUSE_YET: &str = "There is no house to show yet: draw a face of the roof first.";
pub(crate) const NO_PLACE_NO_SUN: &str =
    "Where the house stands is not known, so the light is even. Write its place under The job, The house.";
pub(crate) const TURN_LEFT: &str = "Turn left";
pub(crate) const TURN_RIGHT: &str = "Turn right";
pub(crate) const EYE_UP: &str = "Higher";
pub(crate) const EYE_DOWN: &str = "Lower";
pub(crate) const NEARER: &str = "Nearer";
pub(crate) const FARTHER: &str = "Farther";
pub(crate) const BEFORE: &str = "Before";
pub(crate) const AFTER: &str = "After";
pub(crate) const BEFORE_HELP: &str = "The house without the array, and with it";
pub(crate) const DAY: &str = "Day";
pub(crate) const DAY_HELP: &str = "The day that the sun is shown for";
pub(crate) const HOUR: &str = "Hour";
pub(crate) const HOUR_HELP: &str = "By the clock, 15:30; in summer set UTC to summer time";
pub(crate) const UTC: &str = "UTC";
pub(crate) const UTC_HELP: &str =
    "How many hours the clock is ahead of UTC: −5 for New York in winter, −4 in summer";
/// Keys of the view, for the sheet of keys.
pub(crate) const HOUSE_KEYS: [(&str, &str); 2] =
    [("House: turn", "Arrow keys or drag"), ("House: slide, come nearer", "Shift + arrow keys, + and −")];

// For the homeowner
pub(crate) const FROM_ABOVE: &str = "From above";
pub(crate) const LEAVE: &str = "Leave  (Esc)";
pub(crate) const HOME_COVERS: &str = "What it covers";
pub(crate) const HOME_COSTS: &str = "What it costs";
pub(crate) const TO_BE_QUOTED: &str = "To be quoted";
pub(crate) const PRICE_NOTE: &str =
    "As planned today; the written offer counts. What it yields and saves is not worked out here.";
pub(crate) const GOOD_TO_KNOW: &str = "Good to know";
pub(crate) const HOME_CAUTIONS: [&str; 3] = [
    "This is a plan, not an offer and not a permit. The layout is confirmed on your roof and by the local building office.",
    "A licensed engineer looks at the structure where that is required; a licensed electrician connects the array.",
    "Please stay off the roof. Modules are live whenever light falls on them.",
];

/// What a button of the view does.
pub(crate) fn solid_help(command: Command) -> &'static str {
    match command {
        Command::ShowHome => "Full screen, in large type, without anything that is only for the office",
        _ => "Write the picture as it is looked at to a PNG file",
    }
}

pub(crate) fn seen_from(camera: &Camera) -> String {
    format!("Seen from the {}", camera.from.word())
}

/// The whole picture in a sentence or two, for those who can't see it.
pub(crate) fn house_words(document: &Document, camera: &Camera, sun: &str, before: bool) -> String {
    let high = match camera.above {
        above if above > 70.0 => "from above",
        above if above > 40.0 => "from high up",
        above if above > 12.0 => "from a little above",
        _ => "from the ground",
    };
    let array = match (before, document.plan().summary.modules) {
        (true, _) => "without the array".to_owned(),
        (false, 0) => "no modules on it".to_owned(),
        (false, _) => with_modules(document),
    };
    format!("Roof seen from the {}, {high}, {array}. {sun}", camera.from.word())
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
            (count > 0).then(|| format!("{count} on {}", face.name))
        })
        .collect();
    match counts.len() {
        0..=6 => format!("modules: {}", counts.join(", ")),
        faces => format!("{} modules on {faces} faces", document.plan().summary.modules),
    }
}

/// What stands in place of a picture where none can be drawn.
pub(crate) fn cant_draw(document: &Document) -> String {
    let summary = &document.plan().summary;
    format!(
        "This machine can't draw the house just now. It has {} faces and {}; plan and face-on view show them.",
        document.job().faces.len(),
        with_modules_or_none(document, summary.modules)
    )
}

fn with_modules_or_none(document: &Document, modules: usize) -> String {
    if modules == 0 { "no modules".to_owned() } else { with_modules(document) }
}

/// "21 June"
pub(crate) fn day(date: Date) -> String {
    const MONTHS: [&str; 12] = [
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ];
    let month = MONTHS.get(date.month() as usize - 1).copied().unwrap_or_default();
    format!("{} {month}", date.day())
}

/// "15:30"; an hour before midnight of the day before and after that of the day wraps.
pub(crate) fn clock(hour: f64) -> String {
    let minutes = if hour.is_finite() { (hour * 60.0).round() as i64 } else { 0 };
    let (hours, rest) = (minutes.div_euclid(60), minutes.rem_euclid(60));
    // midnight at the end of a day is 24:00, later hours are of the next day
    let hours = if hours == 24 && rest == 0 { 24 } else { hours.rem_euclid(24) };
    format!("{hours}:{rest:02}")
}

/// Reads 15:30, 15.5 and 15.
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
        format!("{when}: sun in the {}, {:.0}° high.", sun.azimuth.word(), sun.elevation)
    } else {
        format!("{when}: the sun is down.")
    }
}

pub(crate) fn sun_day(day: &SunDay) -> String {
    match day {
        SunDay::Rises { rise, noon, set } => {
            format!("Sunrise {}, highest {}, sunset {}", clock(*rise), clock(*noon), clock(*set))
        }
        SunDay::Up { noon } => format!("The sun stays up all day; highest {}", clock(*noon)),
        SunDay::Down { noon } => format!("The sun stays down all day; nearest to rising {}", clock(*noon)),
    }
}

pub(crate) fn spot(spot: &Spot) -> String {
    let side = |degrees: f64, plus: &str, minus: &str| {
        format!("{:.4}° {}", degrees.abs(), if degrees < 0.0 { minus } else { plus })
    };
    format!("At {}, {}", side(spot.latitude, "north", "south"), side(spot.longitude, "east", "west"))
}

/// Rows of what the array covers: a number and what it is.
pub(crate) fn home_facts(document: &Document) -> Vec<(String, String)> {
    let summary = &document.plan().summary;
    let share = if summary.slope_area > 0.0 { summary.array_area / summary.slope_area * 100.0 } else { 0.0 };
    let (scale, unit) = match document.job().units {
        Units::FeetInches => (1.0 / (0.3048 * 0.3048), "sq ft"),
        Units::Metric => (1.0, "m²"),
    };
    vec![
        (summary.modules.to_string(), if summary.modules == 1 { "module" } else { "modules" }.to_owned()),
        (format!("{:.1} kW", summary.kilowatts), "rated power".to_owned()),
        (format!("{:.0} {unit}", summary.array_area * scale), "covered by the array".to_owned()),
        (format!("{share:.0} %"), "of the roof".to_owned()),
    ]
}

/// The price, where all of it has one.
pub(crate) fn home_price(document: &Document) -> Option<String> {
    let takeoff = &document.plan().takeoff;
    let complete = takeoff.unpriced.is_empty() && !takeoff.lines.is_empty();
    complete.then(|| {
        format!("{} {}", takeoff.currency, thousands(&format!("{:.0}", takeoff.totals.total.round())))
    })
}

/// Digits in groups of three.
fn thousands(digits: &str) -> String {
    let mut out = String::new();
    for (index, digit) in digits.chars().enumerate() {
        let left = digits.len() - index;
        if index > 0 && left.is_multiple_of(3) && digit.is_ascii_digit() {
            out.push(',');
        }
        out.push(digit);
    }
    out
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

    #[test]
    fn large_numbers_are_grouped() {
        assert_eq!(thousands("987"), "987");
        assert_eq!(thousands("12345678"), "12,345,678");
    }
}
