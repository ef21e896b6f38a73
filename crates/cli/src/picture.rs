//! The house as a picture.

use anyhow::{Context, bail};
use chalkcourse_geometry::Azimuth;
use chalkcourse_job::write_atomically;
use chalkcourse_picture::{Camera, Detail, Light, Look, Scene, Shot};
use chalkcourse_plan::Plan;
use chalkcourse_sheets::Output;
use chalkcourse_solid::{Show, solid};
use chalkcourse_sunlight::{Date, Moment, Spot, sun_at};
use clap::Args;
use std::path::PathBuf;

/// How the picture is taken.
#[derive(Args)]
pub(crate) struct Options {
    /// Where the PNG file is written.
    #[arg(long, value_name = "PATH")]
    out: PathBuf,
    /// The way from the house to the eye: degrees clockwise from north.
    #[arg(long, default_value_t = 215.0, value_name = "DEGREES")]
    from: f64,
    /// How far above level the eye stands, in degrees.
    #[arg(long, default_value_t = 30.0, value_name = "DEGREES", allow_negative_numbers = true)]
    above: f64,
    /// Wide and high, in pixels.
    #[arg(long, default_value = "1600x1000")]
    size: String,
    /// The house as it was before, without the array.
    #[arg(long)]
    before: bool,
    /// A day, with --hour and a place: the sun as it stands then. Without it the light comes over the left shoulder.
    #[arg(long, value_name = "YYYY-MM-DD", requires = "hour")]
    date: Option<String>,
    /// The hour by the clock, 14.5 for half past two.
    #[arg(long, requires = "date")]
    hour: Option<f64>,
    /// Degrees north of the equator, where the job does not say or it is another place.
    #[arg(long, allow_negative_numbers = true, requires = "longitude")]
    latitude: Option<f64>,
    /// Degrees east of Greenwich.
    #[arg(long, allow_negative_numbers = true, requires = "latitude")]
    longitude: Option<f64>,
    /// How many hours the clock is ahead of UTC; by the longitude where it is not said.
    #[arg(long, allow_negative_numbers = true)]
    utc_offset: Option<f64>,
}

/// The most pixels of a picture on a side.
const MOST: usize = 8192;

/// Writes the picture and says what it shows.
pub(crate) fn write(
    job: &chalkcourse_job::Resolved,
    plan: &Plan,
    options: &Options,
) -> anyhow::Result<String> {
    let size = size(&options.size)?;
    let scene = Scene::of(&solid(job, &plan.layout, Show { array: !options.before }));
    let corners = scene.corners();
    if corners.is_empty() {
        bail!("there is no roof to show: no face of the job has a sound outline");
    }
    let camera =
        Camera { from: Azimuth::from_degrees(options.from), above: options.above, ..Camera::default() }
            .fitted(&corners, size[0] as f64 / size[1] as f64);
    let (light, words) = light(job, options, camera)?;
    let shot = Shot { camera, size, light, look: Look::default(), detail: Detail::Fine, held: None };
    let picture = scene.draw(&shot);
    let output = if options.before { Output::PictureBefore(&picture) } else { Output::Picture(&picture) };
    let bytes = output.bytes(job, plan)?;
    write_atomically(&options.out, &bytes)?;
    Ok(format!(
        "{}: {} × {} pixels, from {} and {:.0}° above level\n{words}\n",
        options.out.display(),
        size[0],
        size[1],
        camera.from,
        options.above
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
            "no day was asked for: the light is not the sun's".into(),
        ));
    };
    let date = Date::parse(date).with_context(|| format!("{date} is no day: write it as 2026-06-21"))?;
    let asked = options.latitude.zip(options.longitude);
    let place = asked.or_else(|| job.site.place.map(|place| (place.latitude, place.longitude)));
    let Some((latitude, longitude)) = place else {
        bail!("where the house stands is not known: give --latitude and --longitude in degrees");
    };
    if !(0.0..=24.0).contains(&hour) {
        bail!("an hour is from 0 to 24, not {hour}");
    }
    let utc_offset = options.utc_offset.unwrap_or((longitude / 15.0).round());
    let sun = sun_at(Spot { latitude, longitude, height: 0.0 }, Moment { date, hour, utc_offset }, None)?;
    let words = if sun.is_up() {
        format!("sun at {}, {:.1}° above level", sun.azimuth, sun.elevation)
    } else {
        "the sun is down".to_owned()
    };
    Ok((Light::Sun(sun.direction()), words))
}

/// Reads `1600x1000`.
fn size(text: &str) -> anyhow::Result<[usize; 2]> {
    let number = |text: &str| text.trim().parse::<usize>().ok().filter(|n| (1..=MOST).contains(n));
    text.split_once(['x', 'X', '×'])
        .and_then(|(wide, high)| Some([number(wide)?, number(high)?]))
        .with_context(|| format!("{text} is no size: write it as 1600x1000, each from 1 to {MOST}"))
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
