//! A face from what a tape said on the roof.

use crate::Outcome;
use anyhow::{Context, bail};
use chalkcourse_geometry::taped::{Form, Of, Reading, Taped, lay_out};
use chalkcourse_geometry::{Azimuth, Length, Pitch, Plane, Units, dvec2};
use chalkcourse_job::{
    Edit, Face, FaceId, Resolved, apply, builtin_kit, builtin_prices, builtin_rule_book, load, save,
};
use clap::Args;
use std::fmt::Write;
use std::path::PathBuf;

/// What a tape said, and where the face goes.
#[derive(Args)]
#[command(group = clap::ArgGroup::new("form").required(true))]
pub(crate) struct Tape {
    /// A triangle by its eave and the sides right and left of it.
    #[arg(long, group = "form", num_args = 3, value_names = ["EAVE", "RIGHT", "LEFT"])]
    triangle: Option<Vec<String>>,
    /// A rectangle by its eave and how far it reaches up the slope.
    #[arg(long, group = "form", num_args = 2, value_names = ["EAVE", "SIDE"])]
    rectangle: Option<Vec<String>>,
    /// A parallelogram by its eave, its right side, and the diagonal from the eave's left end.
    #[arg(long, group = "form", num_args = 3, value_names = ["EAVE", "RIGHT", "DIAGONAL"])]
    parallelogram: Option<Vec<String>>,
    /// A trapezoid by its sides, counter-clockwise from the eave.
    #[arg(long, group = "form", num_args = 4, value_names = ["EAVE", "RIGHT", "TOP", "LEFT"])]
    trapezoid: Option<Vec<String>>,
    /// Any outline by its sides, counter-clockwise from the eave; with --line for its diagonals.
    #[arg(long, group = "form", num_args = 3.., value_name = "SIDE")]
    polygon: Option<Vec<String>>,
    /// A diagonal or another check: "1-3=25 ft" between two corners (corner 1 is the eave's left end, and so on
    /// counter-clockwise), "up-3=12 ft" from the eave straight up the slope to a corner.
    #[arg(long = "line", value_name = "LINE=LENGTH")]
    lines: Vec<String>,
    /// The most by which a reading may be corrected when they don't quite close.
    #[arg(long, default_value = "1 in")]
    limit: String,
    /// 6:12, 26.6°, 50%, or a level reading: "12 in over 24 in".
    #[arg(long, default_value = "6:12")]
    pitch: String,
    /// The way that water runs, degrees clockwise from north.
    #[arg(long, default_value_t = 180.0)]
    downslope: f64,
    /// Height of the eave.
    #[arg(long, default_value = "9 ft")]
    eave: String,
    /// What the face is called.
    #[arg(long, default_value = "Face 1")]
    name: String,
    /// A job that gets the face, laid beside what it has; a new job where none is named.
    #[arg(long, value_name = "JOB")]
    add_to: Option<PathBuf>,
    /// Where the job is written.
    #[arg(long, value_name = "PATH")]
    out: PathBuf,
}

fn length(what: &str, typed: &str) -> anyhow::Result<Length> {
    Length::parse(typed, Units::FeetInches).with_context(|| what.to_owned())
}

fn line(typed: &str) -> anyhow::Result<Reading> {
    let shape = || format!("--line {typed:?}: write it as \"1-3=25 ft\" or \"up-3=12 ft\"");
    let (of, long) = typed.split_once('=').with_context(shape)?;
    let (from, to) = of.trim().split_once('-').with_context(shape)?;
    let corner = |text: &str| -> anyhow::Result<usize> {
        let number: usize = text.trim().parse().with_context(shape)?;
        number.checked_sub(1).with_context(shape)
    };
    let of = if from.trim() == "up" { Of::Up(corner(to)?) } else { Of::Between(corner(from)?, corner(to)?) };
    Ok(Reading { of, length: length(&format!("--line {typed:?}"), long)? })
}

impl Tape {
    /// The form, and what was read of it.
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
            _ => bail!("name a form: --triangle, --rectangle, --parallelogram, --trapezoid or --polygon"),
        };
        let mut readings = Vec::new();
        for (typed, (from, to)) in typed.iter().zip(lines) {
            let of = Of::Between(from, to);
            readings.push(Reading { of, length: length(&of.to_string(), typed)? });
        }
        for typed in &self.lines {
            readings.push(line(typed)?);
        }
        Ok((form, readings))
    }
}

/// Writes a job with the face and says what came of the readings.
pub(crate) fn run(tape: &Tape) -> anyhow::Result<Outcome> {
    let (form, readings) = tape.readings()?;
    let taped = lay_out(form, &readings, length("--limit", &tape.limit)?)?;
    let pitch = Pitch::parse(&tape.pitch)?;
    if !tape.downslope.is_finite() {
        bail!("--downslope: give degrees clockwise from north, such as 180");
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
        writeln!(text, "{}: {}{by}", reading.of, reading.length.show(units))?;
    }
    match (taped.spare, taped.closing_error) {
        (0, _) => writeln!(text, "Nothing checks these readings: one diagonal more would.")?,
        (spare, error) => writeln!(
            text,
            "Closing error {} with {spare} spare, spread over all readings by least squares.",
            error.show_small(units)
        )?,
    }
    if let Some(reading) = taped.suspect.and_then(|index| readings.get(index)) {
        writeln!(text, "If one was misread, it is most likely {}.", reading.of)?;
    }
    let square_feet = taped.area() / Length::from_feet(1.0).metres().powi(2);
    writeln!(
        text,
        "{square_feet:.1} ft² on the slope, {:.1} ft² in plan at {pitch}",
        square_feet / pitch.slope_factor()
    )?;
    Ok(text)
}
