use super::form::{length_field, part_of_form};
use super::{deck, quiet};
use crate::action::{Action, Actions};
use crate::widgets::fields;
use crate::{Document, text};
use chalkcourse_geometry::{Azimuth, Units};
use chalkcourse_job::{Building, Edit, Exposure, GeoPoint, Resolved, Site};
use chalkcourse_layout::known::{self, KnownFrom};
use egui::{CollapsingHeader, Ui};

/// Facts about the building and the site that rules need. An empty field means unknown.
pub(super) fn site_form(ui: &mut Ui, document: &Document, actions: &mut Actions) {
    let job = document.job();
    let mut building = job.site.building.clone();
    let mut place = job.site.place;
    CollapsingHeader::new(text::HOUSE.now()).show(ui, |ui| {
        quiet(ui, text::HOUSE_WHY.now());
        globe(ui, &mut place);
        fire(ui, &mut building);
        house(ui, job, &mut building);
        deck::deck_fields(ui, &mut building, job.units);
        loads(ui, &mut building, job.units);
    });
    if building != job.site.building || place != job.site.place {
        let site = Site { building, place, ..job.site.clone() };
        actions.push(Action::Edit(text::CHANGE_SITE.into(), Edit::SetSite(site)));
    }
}

/// The geographic position of the origin of the plan.
fn globe(ui: &mut Ui, place: &mut Option<GeoPoint>) {
    let shown = place.map(|place| format!("{}, {}", place.latitude, place.longitude)).unwrap_or_default();
    if let Some(typed) = fields::parsed(ui, text::PLACE.now(), &shown, text::PLACE_HELP.now(), parse_place) {
        *place = typed;
    }
}

/// Parses "39.1, -84.5"; empty means unknown.
fn parse_place(typed: &str) -> Result<Option<GeoPoint>, String> {
    if typed.trim().is_empty() {
        return Ok(None);
    }
    let degrees = |words: &str| words.trim().trim_end_matches('°').trim().parse::<f64>();
    typed
        .split_once([',', ';'])
        .and_then(|(north, east)| Some((degrees(north).ok()?, degrees(east).ok()?)))
        .map(|(latitude, longitude)| GeoPoint { latitude, longitude })
        .filter(|place| place.is_on_globe())
        .map(Some)
        .ok_or_else(|| text::BAD_PLACE.now().to_owned())
}

fn fire(ui: &mut Ui, building: &mut Building) {
    part_of_form(ui, text::FIRE_PART.now());
    ui.checkbox(&mut building.sprinklers, text::SPRINKLERS.now()).on_hover_text(text::SPRINKLERS_HELP.now());
    ui.checkbox(&mut building.detached_uninhabited, text::UNINHABITED.now())
        .on_hover_text(text::UNINHABITED_HELP.now());
    let shown = building.street_sides.iter().map(ToString::to_string).collect::<Vec<_>>().join(", ");
    if let Some(sides) =
        fields::parsed(ui, text::STREETS.now(), &shown, text::STREETS_HELP.now(), street_sides)
    {
        building.street_sides = sides;
    }
    for (label, help, words) in [
        (text::NO_ROOF_WORK.now(), text::NO_ROOF_WORK_HELP.now(), &mut building.no_roof_operations),
        (text::LISTING_READ.now(), text::LISTING_READ_HELP.now(), &mut building.integrated_listing_read_by),
    ] {
        let typed = |typed: &str| Ok::<_, String>(typed.trim().to_owned());
        if let Some(typed) = fields::parsed(ui, label, words, help, typed) {
            *words = typed;
        }
    }
}

fn house(ui: &mut Ui, job: &Resolved, building: &mut Building) {
    part_of_form(ui, text::SIZE_PART.now());
    let units = job.units;
    let drawn_overhang = || {
        let known = job.faces.iter().filter_map(|face| known::overhang(job, face.id));
        known
            .filter(|known| known.from == KnownFrom::Drawn)
            .max_by(|a, b| a.length.metres().total_cmp(&b.length.metres()))
    };
    for (label, help, length, known) in [
        (
            text::EAVE_HEIGHT.now(),
            text::EAVE_HEIGHT_HELP.now(),
            &mut building.eave_height,
            known::eave_height(job),
        ),
        (
            text::LEAST_WIDTH.now(),
            text::LEAST_WIDTH_HELP.now(),
            &mut building.least_width,
            known::least_width(job),
        ),
        (text::OVERHANG.now(), text::OVERHANG_HELP.now(), &mut building.overhang, drawn_overhang()),
    ] {
        length_field(ui, label, help, length, units, 0.0);
        // What follows from the house as drawn is used, and not asked for.
        if length.is_none()
            && let Some(known) = known.filter(|known| known.from == KnownFrom::Drawn)
        {
            quiet(ui, &text::known_as_drawn(&known.length.show(units)));
        }
    }
}

fn loads(ui: &mut Ui, building: &mut Building, units: Units) {
    part_of_form(ui, text::LOADS_PART.now());
    number(ui, text::WIND.now(), text::WIND_HELP.now(), &mut building.wind_mph, 50.0, 300.0);
    let choices = [
        (None, text::NOT_KNOWN.now()),
        (Some(Exposure::B), text::EXPOSURE_B.now()),
        (Some(Exposure::C), text::EXPOSURE_C.now()),
        (Some(Exposure::D), text::EXPOSURE_D.now()),
    ];
    let exposure = ui.scope(|ui| fields::choice(ui, text::WIND_EXPOSURE.now(), building.exposure, &choices));
    exposure.response.on_hover_text(text::WIND_EXPOSURE_HELP.now());
    if let Some(exposure) = exposure.inner {
        building.exposure = exposure;
    }
    // Some towns are below sea level.
    length_field(
        ui,
        text::ELEVATION.now(),
        text::ELEVATION_HELP.now(),
        &mut building.elevation,
        units,
        -500.0,
    );
    number(ui, text::SNOW.now(), text::SNOW_HELP.now(), &mut building.ground_snow_psf, 0.0, 500.0);
    part_of_form(ui, text::HOLD_PART.now());
    number(ui, text::FASTENER.now(), text::FASTENER_HELP.now(), &mut building.fastener_pounds, 1.0, 10_000.0);
    number(
        ui,
        text::FASTENER_DECK.now(),
        text::FASTENER_DECK_HELP.now(),
        &mut building.fastener_square_feet,
        0.05,
        200.0,
    );
}

fn number(ui: &mut Ui, label: &str, help: &str, value: &mut Option<f64>, least: f64, most: f64) {
    let shown = value.map(|value| value.to_string()).unwrap_or_default();
    if let Some(typed) = fields::parsed(ui, label, &shown, help, |typed| optional_number(typed, least, most))
    {
        *value = typed;
    }
}

fn optional_number(typed: &str, least: f64, most: f64) -> Result<Option<f64>, String> {
    if typed.trim().is_empty() {
        return Ok(None);
    }
    let number: f64 = typed.trim().parse().map_err(|_| text::BAD_NUMBER.now().to_owned())?;
    if (least..=most).contains(&number) { Ok(Some(number)) } else { Err(text::out_of_range(least, most)) }
}

/// Parses "S, 90° E" as directions.
fn street_sides(typed: &str) -> Result<Vec<Azimuth>, String> {
    typed.split(',').map(str::trim).filter(|side| !side.is_empty()).map(fields::parse_azimuth).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sides_are_read_back_as_they_are_shown() {
        let sides = street_sides("S, 97.5,nw").unwrap();
        assert_eq!(sides.iter().map(|side| side.degrees()).collect::<Vec<_>>(), [180.0, 97.5, 315.0]);
        let shown = sides.iter().map(ToString::to_string).collect::<Vec<_>>().join(", ");
        assert_eq!(street_sides(&shown).unwrap(), sides, "{shown}");
        assert!(street_sides("").unwrap().is_empty());
        assert!(street_sides("S, up").is_err());
    }

    #[test]
    fn places_are_read_back_as_they_are_shown() {
        let place = GeoPoint { latitude: 39.1, longitude: -84.5 };
        assert_eq!(parse_place("39.1, -84.5"), Ok(Some(place)));
        assert_eq!(parse_place(" 39.1° ; -84.5°"), Ok(Some(place)));
        assert_eq!(parse_place(" "), Ok(None));
        for wrong in ["39.1", "91, 0", "0, 181", "nan, 0", "up, down"] {
            assert!(parse_place(wrong).is_err(), "{wrong}");
        }
    }

    #[test]
    fn unknown_values_stay_unknown_and_invalid_ones_are_refused() {
        assert_eq!(optional_number(" ", 0.0, 9.0), Ok(None));
        assert_eq!(optional_number("9", 0.0, 9.0), Ok(Some(9.0)));
        for wrong in ["9.1", "-1", "nan", "inf", "many"] {
            assert!(optional_number(wrong, 0.0, 9.0).is_err(), "{wrong}");
        }
    }
}
