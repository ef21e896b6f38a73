//! The `tape` command: a face from tape measurements.

use crate::Outcome;
use anyhow::{Context, bail};
use chalkcourse_geometry::taped::{Form, Reading, Taped, TapedLine, lay_out};
use chalkcourse_geometry::{Azimuth, Length, Pitch, Plane, Units, dvec2};
use chalkcourse_job::{
    Edit, Face, FaceId, Resolved, apply, builtin_kit, builtin_prices, builtin_rule_book, load, save,
};
use chalkcourse_words as words;
use clap::Args;
use std::fmt::Write;
use std::path::PathBuf;

/// The readings, and where the face goes.
#[derive(Args)]
#[command(group = clap::ArgGroup::new("form").required(true))]
pub(crate) struct Tape {
    #[arg(help = words::commandline::HELP_A_TRIANGLE_BY_ITS_EAVE.now())]
    #[arg(long, group = "form", num_args = 3, value_names = ["EAVE", "RIGHT", "LEFT"])]
    triangle: Option<Vec<String>>,
    #[arg(help = words::commandline::HELP_A_RECTANGLE_BY_ITS_EAVE.now())]
    #[arg(long, group = "form", num_args = 2, value_names = ["EAVE", "SIDE"])]
    rectangle: Option<Vec<String>>,
    #[arg(help = words::commandline::HELP_A_PARALLELOGRAM_BY_ITS_EAVE.now())]
    #[arg(long, group = "form", num_args = 3, value_names = ["EAVE", "RIGHT", "DIAGONAL"])]
    parallelogram: Option<Vec<String>>,
    #[arg(help = words::commandline::HELP_A_TRAPEZOID_BY_ITS_SIDES.now())]
    #[arg(long, group = "form", num_args = 4, value_names = ["EAVE", "RIGHT", "TOP", "LEFT"])]
    trapezoid: Option<Vec<String>>,
    #[arg(help = words::commandline::HELP_ANY_OUTLINE_BY_ITS_SIDES.now())]
    #[arg(long, group = "form", num_args = 3.., value_name = "SIDE")]
    polygon: Option<Vec<String>>,
    #[arg(help = words::commandline::HELP_A_DIAGONAL_OR_ANOTHER_CHECK.now())]
    #[arg(long = "line", value_name = "LINE=LENGTH")]
    lines: Vec<String>,
    #[arg(help = words::commandline::HELP_THE_MOST_BY_WHICH_A.now())]
    #[arg(long, default_value = "1 in")]
    limit: String,
    #[arg(help = words::commandline::HELP_612_266_50_OR_A.now())]
    #[arg(long, default_value = "6:12")]
    pitch: String,
    #[arg(help = words::commandline::HELP_THE_WAY_THAT_WATER_RUNS.now())]
    #[arg(long, default_value_t = 180.0)]
    downslope: f64,
    #[arg(help = words::commandline::HELP_HEIGHT_OF_THE_EAVE.now())]
    #[arg(long, default_value = "9 ft")]
    eave: String,
    #[arg(help = words::commandline::HELP_WHAT_THE_FACE_IS_CALLED.now())]
    #[arg(long, default_value = "Face 1")]
    name: String,
    #[arg(help = words::commandline::HELP_A_JOB_THAT_GETS_THE.now())]
    #[arg(long, value_name = "JOB")]
    add_to: Option<PathBuf>,
    #[arg(help = words::commandline::HELP_WHERE_THE_JOB_IS_WRITTEN.now())]
    #[arg(long, value_name = "PATH")]
    out: PathBuf,
}

fn length(what: &str, typed: &str) -> anyhow::Result<Length> {
    Length::parse(typed, Units::FeetInches).with_context(|| what.to_owned())
}

fn line(typed: &str) -> anyhow::Result<Reading> {
    let shape = || words::commandline::write_a_line_as(&format_args!("{typed:?}"));
    let (of, long) = typed.split_once('=').with_context(shape)?;
    let (from, to) = of.trim().split_once('-').with_context(shape)?;
    let corner = |text: &str| -> anyhow::Result<usize> {
        let number: usize = text.trim().parse().with_context(shape)?;
        number.checked_sub(1).with_context(shape)
    };
    let of = if from.trim() == "up" {
        TapedLine::Up(corner(to)?)
    } else {
        TapedLine::Between(corner(from)?, corner(to)?)
    };
    Ok(Reading { of, length: length(&format!("--line {typed:?}"), long)? })
}

impl Tape {
    /// The shape of the face, and the parsed readings.
    fn readings(&self) -> anyhow::Result<(Form, Vec<Reading>)> {
        let sides = |count: usize| (0..count).map(|at| (at, (at + 1) % count)).collect::<Vec<_>>();
        let (form, typed, lines) = match self {
            Self { triangle: Some(typed), .. } => (Form::Triangle, typed, sides(3)),
            Self { rectangle: Some(typed), .. } => (Form::Rectangle, typed, sides(4)),
            Self { parallelogram: Some(typed), .. } => {
                (Form::Parallelogram, typed, vec![(0, 1), (1, 2), (0, 2)])
            }
            Self { trapezoid: Some(typed), .. } => (Form::Trapezoid, typed, sides(4)),
            Self { polygon: Some(typed), .. } => (Form::Polygon(typed.len()), typed, sides(typed.len())),
            _ => bail!("{}", words::commandline::NAME_A_FORM),
        };
        let mut readings = Vec::new();
        for (typed, (from, to)) in typed.iter().zip(lines) {
            let of = TapedLine::Between(from, to);
            readings.push(Reading { of, length: length(&of.name().now(), typed)? });
        }
        for typed in &self.lines {
            readings.push(line(typed)?);
        }
        Ok((form, readings))
    }
}

/// Writes a job with the face and reports how the readings fit.
pub(crate) fn run(tape: &Tape) -> anyhow::Result<Outcome> {
    let (form, readings) = tape.readings()?;
    let taped = lay_out(form, &readings, length("--limit", &tape.limit)?)?;
    let pitch = Pitch::parse(&tape.pitch)?;
    if !tape.downslope.is_finite() {
        bail!("{}", words::commandline::DOWNSLOPE_DEGREES);
    }
    let job = match &tape.add_to {
        Some(path) => load(path)?,
        None => Resolved::new(tape.name.clone(), builtin_kit(), builtin_rule_book(), builtin_prices()),
    };
    let downslope = Azimuth::from_degrees(tape.downslope);
    let plan = taped.plan(&Plane { datum: dvec2(0.0, 0.0).extend(0.0), pitch, downslope });
    let there = job.faces.iter().filter_map(|face| face.outline.bounds()).reduce(|a, b| a.union(&b));
    let by = match (there, plan.bounds()) {
        (Some(there), Some(own)) => dvec2(there.max.x + 1.0, there.min.y) - own.min,
        _ => dvec2(0.0, 0.0),
    };
    let outline = plan.map(|p| p + by);
    let eave = length("--eave", &tape.eave)?;
    let face = Face::new(FaceId(job.next_id), tape.name.clone(), outline, pitch, downslope, eave);
    let job = apply(&job, &Edit::PutFace(face))?;
    save(&job, &tape.out)?;
    Ok(Outcome { text: words(&readings, &taped, pitch)?, out: None, stops: false })
}

fn words(readings: &[Reading], taped: &Taped, pitch: Pitch) -> Result<String, std::fmt::Error> {
    let mut text = String::new();
    let units = Units::FeetInches;
    for (reading, by) in readings.iter().zip(&taped.corrections) {
        let sign = if by.metres() < 0.0 { "-" } else { "+" };
        let by = by.abs();
        let by = if by < Length::from_mm(0.5) {
            String::new()
        } else {
            format!("  {sign} {}", by.show_small(units))
        };
        writeln!(text, "{}: {}{by}", reading.of.name(), reading.length.show(units))?;
    }
    match (taped.spare, taped.closing_error) {
        (0, _) => writeln!(text, "{}", words::commandline::NOTHING_CHECKS)?,
        (spare, error) => {
            writeln!(text, "{}", words::commandline::closing_error(&error.show_small(units), &spare))?;
        }
    }
    if let Some(reading) = taped.suspect.and_then(|index| readings.get(index)) {
        writeln!(text, "{}", words::commandline::if_one_was_misread(&reading.of.name()))?;
    }
    let square_feet = taped.area() / Length::from_feet(1.0).metres().powi(2);
    writeln!(
        text,
        "{}",
        words::commandline::area_of_the_face(
            &format_args!("{square_feet:.1}"),
            &format_args!("{:.1}", square_feet / pitch.slope_factor()),
            &pitch
        )
    )?;
    Ok(text)
}
