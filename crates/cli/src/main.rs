//! The pipeline without a screen: the same job, plan and numbers as in the window.

mod picture;
mod raise;

use anyhow::Context;
use chalkcourse_geometry::{Length, Pitch, Units};
use chalkcourse_job::{FaceId, Job, apply, load, load_rule_book, write_atomically};
use chalkcourse_plan::{Ends, Mode, Plan, RaiseAs, evaluate};
use clap::{Args, Parser, Subcommand, ValueEnum};
use std::io::Write;
use std::path::PathBuf;
use std::process::ExitCode;
use std::time::{Duration, Instant};

/// Checks, counts and reports a roof with deck-mounted solar.
///
/// Exit status: 0 when all is fine, 1 when a finding says stop that nobody waived, 2 for input that can't be used.
#[derive(Parser)]
#[command(version, about, after_help = chalkcourse_plan::CAUTION)]
struct Arguments {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Says what the rule book finds.
    Check {
        #[command(flatten)]
        on: On,
        #[arg(long, value_enum, default_value = "text")]
        format: Format,
    },
    /// Lists what to order, with where each quantity comes from in JSON.
    Takeoff {
        #[command(flatten)]
        on: On,
        #[arg(long, value_enum, default_value = "text")]
        format: OrderFormat,
    },
    /// Reports roof, blocks, findings and quantities.
    Plan {
        #[command(flatten)]
        on: On,
        #[arg(long, value_enum, default_value = "text")]
        format: Format,
    },
    /// Fills faces with the array that no layout under the same rules can beat, with the proof and what holds it back.
    Fit {
        #[command(flatten)]
        on: On,
        #[arg(long, value_enum, default_value = "text")]
        format: Format,
        /// How the array is laid.
        #[arg(long, value_enum, default_value = "sliding-rows")]
        mode: FitMode,
        /// The face by its name; all faces that the kit allows where none is named.
        #[arg(long)]
        face: Option<String>,
        /// With --mode whole-blocks: at most so many rectangles on a face.
        #[arg(long, default_value_t = 1)]
        most: usize,
        /// Gives up proving after so many seconds, and says what gap is left.
        #[arg(long, default_value_t = 30.0)]
        seconds: f64,
        /// Writes the job with the array in place.
        #[arg(long, value_name = "PATH")]
        save: Option<PathBuf>,
    },
    /// Draws the house with its array as a PNG picture, in the sun of a day or in an even light.
    Picture {
        /// The job file.
        file: PathBuf,
        #[command(flatten)]
        options: picture::Options,
    },
    /// Makes a job from a footprint: a part of a house that stays live, with a pitch, a gable or a wall on each side.
    Raise {
        /// A GeoJSON file (RFC 7946) with the outline of the walls.
        footprint: PathBuf,
        /// Where the job is written.
        #[arg(long, value_name = "PATH")]
        out: PathBuf,
        /// Pitch of all sloped sides.
        #[arg(long, default_value = "6:12")]
        pitch: String,
        /// Height of the roof over the walls.
        #[arg(long, default_value = "9 ft")]
        eave: String,
        /// How far the roof reaches beyond the walls, in plan.
        #[arg(long, default_value = "0 ft")]
        overhang: String,
        /// Gables at the short ends instead of hips.
        #[arg(long)]
        gables: bool,
        /// What stands on one side, where that is not what stands on all: `3=gable`, `3=wall`, `3=8:12`; with an eave height
        /// and an overhang of its own, `3=8:12,eave=10 ft,overhang=2 ft`. Sides count from 1 at the first corner of the
        /// outline, `2.1` is the first side of the first courtyard. May be given many times.
        #[arg(long, value_name = "SIDE=WHAT")]
        side: Vec<String>,
        /// Which outline of the file, by its name; the first one where none is named.
        #[arg(long)]
        name: Option<String>,
    },
    /// Lists the fields in which two rule books differ, with what each of them says.
    CompareBooks {
        /// A rule book file.
        one: PathBuf,
        /// Another one.
        other: PathBuf,
    },
    /// Prints the JSON Schema of a file format.
    Schema {
        /// Which one: job, kit, rule-book, price-list, findings, plan, takeoff.
        name: String,
    },
}

#[derive(Args)]
struct On {
    /// The job file.
    file: PathBuf,
    /// Writes there instead of to the screen.
    #[arg(long, value_name = "PATH")]
    out: Option<PathBuf>,
}

#[derive(Clone, Copy, ValueEnum)]
enum Format {
    Text,
    Json,
}

#[derive(Clone, Copy, ValueEnum)]
enum OrderFormat {
    Text,
    Csv,
    Json,
}

#[derive(Clone, Copy, ValueEnum)]
enum FitMode {
    /// Rows and columns in line; the grid may lie anywhere.
    OneGrid,
    /// Each row may slide along the eave by itself.
    SlidingRows,
    /// Every other row half a module aside.
    HalfLapped,
    /// Sliding rows, with the base rail on a course line.
    OnCourses,
    /// Rectangles alone.
    WholeBlocks,
}

/// What a command has to say, and whether a finding stops the job.
struct Outcome {
    text: String,
    out: Option<PathBuf>,
    stops: bool,
}

fn main() -> ExitCode {
    let done = run(Arguments::parse()).and_then(|outcome| {
        match &outcome.out {
            Some(path) => write_atomically(path, outcome.text.as_bytes())?,
            None => print(&outcome.text).context("can't write to the screen")?,
        }
        Ok(outcome.stops)
    });
    match done {
        Ok(false) => ExitCode::SUCCESS,
        Ok(true) => ExitCode::from(1),
        Err(error) => {
            let _ = writeln!(std::io::stderr(), "chalkcourse-cli: {error:#}");
            ExitCode::from(2)
        }
    }
}

/// Prints all of it; a reader that has seen enough (`| head`) is no error.
fn print(text: &str) -> std::io::Result<()> {
    let mut out = std::io::stdout().lock();
    match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Err(error) if error.kind() == std::io::ErrorKind::BrokenPipe => Ok(()),
        done => done,
    }
}

fn run(arguments: Arguments) -> anyhow::Result<Outcome> {
    match arguments.command {
        Command::Check { on, format } => on_job(on, |job, plan| {
            Ok(match format {
                Format::Text => chalkcourse_plan::findings_text(job, plan),
                Format::Json => json(&chalkcourse_plan::findings_report(job, plan))?,
            })
        }),
        Command::Takeoff { on, format } => on_job(on, |job, plan| {
            Ok(match format {
                OrderFormat::Text => chalkcourse_plan::order_text(job, plan),
                OrderFormat::Csv => chalkcourse_plan::order_csv(job, plan)?,
                OrderFormat::Json => chalkcourse_plan::order_json(job, plan)?,
            })
        }),
        Command::Plan { on, format } => on_job(on, |job, plan| {
            Ok(match format {
                Format::Text => chalkcourse_plan::plan_text(job, plan),
                Format::Json => json(&chalkcourse_plan::plan_report(job, plan))?,
            })
        }),
        Command::Fit { on, format, mode, face, most, seconds, save } => {
            let mode = match mode {
                FitMode::OneGrid => Mode::OneGrid,
                FitMode::SlidingRows => Mode::SlidingRows,
                FitMode::HalfLapped => Mode::HalfLapped,
                FitMode::OnCourses => Mode::OnCourses,
                FitMode::WholeBlocks => Mode::WholeBlocks(most),
            };
            fit(on, format, mode, face.as_deref(), seconds, save)
        }
        Command::Picture { file, options } => {
            let job = load(&file)?;
            let text = picture::write(&job, &evaluate(&job), &options)
                .with_context(|| file.display().to_string())?;
            Ok(Outcome { text, out: None, stops: false })
        }
        Command::Raise { footprint, out, pitch, eave, overhang, gables, side, name } => {
            let length = |text: &str| Length::parse(text, Units::FeetInches);
            let ends = if gables { Ends::Gable } else { Ends::Hip };
            let how = RaiseAs {
                pitch: Pitch::parse(&pitch)?,
                eave: length(&eave)?,
                overhang: length(&overhang)?,
                ends,
            };
            raise::raise(&footprint, &out, &how, &side, name.as_deref())
        }
        Command::CompareBooks { one, other } => {
            let (one, other) = (load_rule_book(&one)?, load_rule_book(&other)?);
            Ok(Outcome { text: chalkcourse_plan::books_text(&one, &other), out: None, stops: false })
        }
        Command::Schema { name } => {
            let schemas = chalkcourse_plan::schemas();
            let Some((_, schema)) = schemas.iter().find(|(known, _)| *known == name) else {
                let known: Vec<_> = schemas.iter().map(|(known, _)| *known).collect();
                anyhow::bail!("there is no format {name:?}; choose one of {}", known.join(", "));
            };
            Ok(Outcome { text: json(schema)?, out: None, stops: false })
        }
    }
}

fn fit(
    on: On,
    format: Format,
    mode: Mode,
    face: Option<&str>,
    seconds: f64,
    save: Option<PathBuf>,
) -> anyhow::Result<Outcome> {
    let mut job = load(&on.file)?;
    let faces: Vec<FaceId> = match face {
        None => job.faces.iter().filter(|f| f.pitch >= job.kit.least_pitch).map(|f| f.id).collect(),
        Some(name) => job.faces.iter().filter(|f| f.name == name).map(|f| f.id).collect(),
    };
    if faces.is_empty() {
        let known: Vec<&str> = job.faces.iter().map(|f| f.name.as_str()).collect();
        match face {
            Some(name) => anyhow::bail!(
                "{}: no face is named {name:?}; there are {}",
                on.file.display(),
                known.join(", ")
            ),
            None => anyhow::bail!(
                "{}: no face is as steep as the kit asks, {}; the faces are {}",
                on.file.display(),
                job.kit.least_pitch,
                known.join(", ")
            ),
        }
    }
    let end = Instant::now() + Duration::from_secs_f64(seconds.clamp(0.0, 1e6));
    let fills = chalkcourse_plan::fill(&job, &faces, mode, &|| Instant::now() >= end)?;
    for fill in &fills {
        job = apply(&job, &chalkcourse_plan::fill_edit(&job, fill))?;
    }
    if let Some(path) = save {
        chalkcourse_job::save(&job, &path)?;
    }
    let plan = evaluate(&job);
    let text = match format {
        Format::Text => chalkcourse_plan::fills_text(&job, &fills, &plan),
        Format::Json => json(&chalkcourse_plan::fills_report(&job, &fills, &plan))?,
    };
    Ok(Outcome { text, out: on.out, stops: plan.worst() == Some(chalkcourse_rules::Severity::Stop) })
}

fn on_job(on: On, report: impl FnOnce(&Job, &Plan) -> anyhow::Result<String>) -> anyhow::Result<Outcome> {
    let job = load(&on.file)?;
    let plan = evaluate(&job);
    let text = report(&job, &plan)?;
    Ok(Outcome { text, out: on.out, stops: plan.worst() == Some(chalkcourse_rules::Severity::Stop) })
}

fn json(value: &impl serde::Serialize) -> anyhow::Result<String> {
    let mut text = serde_json::to_string_pretty(value)?;
    text.push('\n');
    Ok(text)
}
