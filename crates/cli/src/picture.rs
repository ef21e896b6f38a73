//! The `picture` command: renders the house.

use anyhow::{Context, bail};
use chalkcourse_geometry::Azimuth;
use chalkcourse_job::write_atomically;
use chalkcourse_picture::{Camera, Detail, Light, Look, Scene, Shot};
use chalkcourse_plan::Plan;
use chalkcourse_sheets::Output;
use chalkcourse_solid::{Show, solid};
use chalkcourse_sunlight::{Date, Moment, Spot, sun_at};
use chalkcourse_words as words;
use clap::Args;
use std::path::PathBuf;

/// Options of the picture.
#[derive(Args)]
pub(crate) struct Options {
    #[arg(help = words::commandline::HELP_WHERE_THE_PNG_FILE_IS.now())]
    #[arg(long, value_name = "PATH")]
    out: PathBuf,
    #[arg(help = words::commandline::HELP_THE_WAY_FROM_THE_HOUSE.now())]
    #[arg(long, default_value_t = 215.0, value_name = "DEGREES")]
    from: f64,
    #[arg(help = words::commandline::HELP_HOW_FAR_ABOVE_LEVEL_THE.now())]
    #[arg(long, default_value_t = 30.0, value_name = "DEGREES", allow_negative_numbers = true)]
    above: f64,
    #[arg(help = words::commandline::HELP_WIDE_AND_HIGH_IN_PIXELS.now())]
    #[arg(long, default_value = "1600x1000")]
    size: String,
    #[arg(help = words::commandline::HELP_THE_HOUSE_AS_IT_WAS.now())]
    #[arg(long)]
    before: bool,
    #[arg(help = words::commandline::HELP_A_DAY_WITH_HOUR_AND.now())]
    #[arg(long, value_name = "YYYY-MM-DD", requires = "hour")]
    date: Option<String>,
    #[arg(help = words::commandline::HELP_THE_HOUR_BY_THE_CLOCK.now())]
    #[arg(long, requires = "date")]
    hour: Option<f64>,
    #[arg(help = words::commandline::HELP_DEGREES_NORTH_OF_THE_EQUATOR.now())]
    #[arg(long, allow_negative_numbers = true, requires = "longitude")]
    latitude: Option<f64>,
    #[arg(help = words::commandline::HELP_DEGREES_EAST_OF_GREENWICH.now())]
    #[arg(long, allow_negative_numbers = true, requires = "latitude")]
    longitude: Option<f64>,
    #[arg(help = words::commandline::HELP_HOW_MANY_HOURS_THE_CLOCK.now())]
    #[arg(long, allow_negative_numbers = true)]
    utc_offset: Option<f64>,
}

/// Maximum pixels per side.
const MOST: usize = 8192;

/// Writes the picture and returns a description of it.
pub(crate) fn write(
    job: &chalkcourse_job::Resolved,
    plan: &Plan,
    options: &Options,
) -> anyhow::Result<String> {
    let size = size(&options.size)?;
    let scene = Scene::of(&solid(job, &plan.layout, Show { array: !options.before }));
    let corners = scene.corners();
    if corners.is_empty() {
        bail!("{}", words::commandline::NO_ROOF_TO_SHOW);
    }
    let camera =
        Camera { from: Azimuth::from_degrees(options.from), above: options.above, ..Camera::default() }
            .fitted(&corners, size[0] as f64 / size[1] as f64);
    let (light, sun) = light(job, options, camera)?;
    let shot = Shot { camera, size, light, look: Look::default(), detail: Detail::Fine, held: None };
    let picture = scene.draw(&shot);
    let output = if options.before { Output::PictureBefore(&picture) } else { Output::Picture(&picture) };
    let bytes = output.bytes(job, plan)?;
    write_atomically(&options.out, &bytes)?;
    let above = format!("{:.0}", options.above);
    let written =
        words::commandline::picture_written(&options.out.display(), &size[0], &size[1], &camera.from, &above);
    Ok(format!(
        "{written}
{sun}
"
    ))
}

fn light(
    job: &chalkcourse_job::Resolved,
    options: &Options,
    camera: Camera,
) -> anyhow::Result<(Light, String)> {
    let (Some(date), Some(hour)) = (&options.date, options.hour) else {
        let over_the_shoulder = Azimuth::from_degrees(camera.from.degrees() + 40.0).unit() * 0.77;
        return Ok((
            Light::Sun(over_the_shoulder.extend(0.64)),
            words::commandline::NO_DAY_WAS_ASKED_FOR.into(),
        ));
    };
    let date = Date::parse(date).with_context(|| words::commandline::is_no_day(date))?;
    let asked = options.latitude.zip(options.longitude);
    let place = asked.or_else(|| job.site.place.map(|place| (place.latitude, place.longitude)));
    let Some((latitude, longitude)) = place else {
        bail!("{}", words::commandline::PLACE_IS_NOT_KNOWN);
    };
    if !(0.0..=24.0).contains(&hour) {
        bail!("{}", words::commandline::is_no_hour(&hour));
    }
    let utc_offset = options.utc_offset.unwrap_or((longitude / 15.0).round());
    let sun = sun_at(Spot { latitude, longitude, height: 0.0 }, Moment { date, hour, utc_offset }, None)?;
    let words = if sun.is_up() {
        words::commandline::sun_at(&sun.azimuth, &format_args!("{:.1}", sun.elevation))
    } else {
        words::commandline::THE_SUN_IS_DOWN.into()
    };
    Ok((Light::Sun(sun.direction()), words))
}

/// Parses `1600x1000`.
fn size(text: &str) -> anyhow::Result<[usize; 2]> {
    let number = |text: &str| text.trim().parse::<usize>().ok().filter(|n| (1..=MOST).contains(n));
    text.split_once(['x', 'X', '×'])
        .and_then(|(wide, high)| Some([number(wide)?, number(high)?]))
        .with_context(|| words::commandline::is_no_size(&text, &MOST))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_are_read_or_refused_with_an_example() {
        assert_eq!(size("1600x1000").unwrap(), [1600, 1000]);
        for wrong in ["", "1600", "0x5", "5x9999", "ax5", "-5x5"] {
            assert!(size(wrong).unwrap_err().to_string().contains("1600x1000"), "{wrong}");
        }
    }
}
