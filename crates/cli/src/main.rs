//! The pipeline without a screen: the same job, plan and numbers as in the window.

mod apply;
mod coursing;
mod fit;
mod fix;
mod formats;
mod orders;
mod picture;
mod raise;
mod tape;

use anyhow::Context;
use chalkcourse_job::{Resolved, load, load_rule_book, write_atomically};
use chalkcourse_plan::{Offers, Plan, evaluate};
use chalkcourse_sheets::Output;
use chalkcourse_words::{Language, speak};
use clap::builder::{PossibleValue, PossibleValuesParser, TypedValueParser};
use clap::{Args, Parser, Subcommand, ValueEnum};
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

/// Checks, counts and reports a roof with deck-mounted solar.
///
/// Exit status: 0 when all is fine, 1 when a finding says stop that nobody waived, 2 for input that can't be used.
#[derive(Parser)]
#[command(version, about, after_help = chalkcourse_plan::CAUTION.within(Language::ENGLISH))]
struct Arguments {
    /// The language of reports, orders and sheets. What a program reads (keys, codes, column names) is the same in each.
    #[arg(long, global = true, value_parser = languages(), default_value = "en")]
    language: Language,
    #[command(subcommand)]
    command: Command,
}

/// The languages that reports can be in, by their codes.
fn languages() -> impl TypedValueParser<Value = Language> {
    let all = Language::ALL.map(|language| PossibleValue::new(language.code()).help(language.name()));
    PossibleValuesParser::new(all).map(|code| Language::from_tag(&code).unwrap_or_default())
}

#[derive(Subcommand)]
enum Command {
    /// Says what the rule book finds.
    Check {
        #[command(flatten)]
        on: On,
        /// Says of each finding what would clear it: each fix was tried, and leaves fewer findings of its weight and no new one.
        #[arg(long)]
        fixes: bool,
        #[arg(long, value_enum, default_value = "text")]
        format: Format,
    },
    /// Clears a finding by the best fix that was found for it, or all that have one.
    Fix(fix::FixArguments),
    /// Lists what to order, with where each quantity comes from in JSON.
    Takeoff(orders::TakeoffArguments),
    /// Tells what one order has more or less than another, and what that costs.
    CompareOrders(orders::CompareArguments),
    /// Prices one order at several suppliers.
    Suppliers(orders::SuppliersArguments),
    /// Prints the pallet list to count on, or takes counts and says what is short and what can start.
    Receive(orders::ReceiveArguments),
    /// Reports roof, blocks, findings and quantities.
    Plan {
        #[command(flatten)]
        on: On,
        #[arg(long, value_enum, default_value = "text")]
        format: Format,
    },
    /// Fills faces with the array that no layout under the same rules can beat, with the proof and what holds it back.
    Fit(Box<fit::FitArgs>),
    /// Does edits of a file on a job: all that the window can do, each answered by what it changed.
    Apply(Box<apply::Apply>),
    /// Tells the courses of faces: where base rails fall, what is left at the ends, and exposures or places that leave whole
    /// courses.
    Coursing(coursing::CoursingArgs),
    /// From field measurements: how far out of square a deck is, whether a row closes, the reveal to set, where to snap the line.
    FitUp(Box<coursing::FitUpArgs>),
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
        #[command(flatten)]
        sides: raise::AllSides,
        /// What stands on one side, where that is not what stands on all: `3=gable`, `3=wall`, `3=8:12`; with an eave height
        /// and an overhang of its own, `3=8:12,eave=10 ft,overhang=2 ft`. Sides count from 1 at the first corner of the
        /// outline, `2.1` is the first side of the first courtyard. May be given many times.
        #[arg(long, value_name = "SIDE=WHAT")]
        side: Vec<String>,
        /// Which outline of the file, by its name; the first one where none is named.
        #[arg(long)]
        name: Option<String>,
    },
    /// Reports the roof: faces, edges by kind, squares, footprint, heights.
    Roof {
        #[command(flatten)]
        on: On,
        #[arg(long, value_enum, default_value = "text")]
        format: Format,
    },
    /// Lists the buildings of a GeoJSON or CityJSON file or folder, or makes a job from one of them.
    Import(formats::Import),
    /// Writes the plan as GeoJSON for a map, or the house as glTF for a 3-D program.
    Export(formats::Export),
    /// Makes a job, or adds to one, with a face from side lengths, diagonals and pitch as taped on the deck.
    Tape(tape::Tape),
    /// Prints the crew's checklist: work safety, and what the roof as drawn asks for.
    Checklist {
        #[command(flatten)]
        on: On,
        /// pdf is to print, and written to the file that --out names.
        #[arg(long, value_enum, default_value = "text")]
        format: ChecklistFormat,
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
        /// Which one: job, kit, rule-book, price-list, edits, applied, findings, plan, takeoff, roof.
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
enum ChecklistFormat {
    Text,
    Pdf,
}

/// What a command has to say, and whether a finding stops the job.
struct Outcome {
    text: String,
    out: Option<PathBuf>,
    stops: bool,
}

fn main() -> ExitCode {
    let arguments = Arguments::parse();
    speak(arguments.language);
    let done = run(arguments).and_then(|outcome| {
        deliver(&outcome.text, outcome.out.as_deref())?;
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

/// Writes what a command has to say to a file, or to the screen where none is named.
fn deliver(text: &str, out: Option<&Path>) -> anyhow::Result<()> {
    match out {
        Some(path) => Ok(write_atomically(path, text.as_bytes())?),
        None => print(text).context("can't write to the screen"),
    }
}

/// What is to be known of the work and is not its output.
pub(crate) fn aside(words: &str) {
    let _ = writeln!(std::io::stderr(), "{words}");
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
        Command::Check { on, fixes, format } => on_job(on, |job, plan| {
            let offers = if fixes { Offers::of(job, plan) } else { Offers::default() };
            text_of(format, Output::Findings(&offers), Output::FindingsJson(&offers), job, plan)
        }),
        Command::Fix(arguments) => fix::fix(&arguments),
        Command::Takeoff(arguments) => orders::takeoff(arguments),
        Command::CompareOrders(arguments) => orders::compare(&arguments),
        Command::Suppliers(arguments) => orders::suppliers(&arguments),
        Command::Receive(arguments) => orders::receive(arguments),
        Command::Plan { on, format } => {
            on_job(on, |job, plan| text_of(format, Output::Plan, Output::PlanJson, job, plan))
        }
        Command::Fit(args) => fit::fit(*args),
        Command::Apply(args) => apply::apply(&args),
        Command::Coursing(args) => coursing::courses(args),
        Command::FitUp(args) => coursing::deck(*args),
        Command::Picture { file, options } => {
            let job = load(&file)?;
            let text = picture::write(&job, &evaluate(&job), &options)
                .with_context(|| file.display().to_string())?;
            Ok(Outcome { text, out: None, stops: false })
        }
        Command::Raise { footprint, out, sides, side, name } => {
            raise::raise(&footprint, &out, &sides.how()?, &side, name.as_deref())
        }
        Command::Roof { on, format } => {
            on_job(on, |job, plan| text_of(format, Output::Roof, Output::RoofJson, job, plan))
                // a report of what is there: what the rule book thinks of it is for `check`
                .map(|outcome| Outcome { stops: false, ..outcome })
        }
        Command::Import(import) => import.run(),
        Command::Export(export) => export.run(),
        Command::Tape(tape) => tape::run(&tape),
        Command::Checklist { mut on, format } => {
            let out = on.out.clone();
            if matches!(format, ChecklistFormat::Pdf) {
                on.out = None;
            }
            on_job(on, |job, plan| match format {
                ChecklistFormat::Text => Ok(Output::Checklist.text(job, plan)?),
                ChecklistFormat::Pdf => write_file(out, &Output::ChecklistSheet.bytes(job, plan)?),
            })
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

fn on_job(
    on: On,
    report: impl FnOnce(&Resolved, &Plan) -> anyhow::Result<String>,
) -> anyhow::Result<Outcome> {
    let job = load(&on.file)?;
    let plan = evaluate(&job);
    let text = report(&job, &plan)?;
    Ok(Outcome { text, out: on.out, stops: plan.worst() == Some(chalkcourse_rules::Severity::Stop) })
}

/// An output to read, or the same for other programs.
fn text_of(
    format: Format,
    text: Output<'_>,
    json: Output<'_>,
    job: &Resolved,
    plan: &Plan,
) -> anyhow::Result<String> {
    let asked = match format {
        Format::Text => text,
        Format::Json => json,
    };
    Ok(asked.text(job, plan)?)
}

/// Writes what no screen shows to the file that `--out` names, and says so.
fn write_file(out: Option<PathBuf>, bytes: &[u8]) -> anyhow::Result<String> {
    let path = out.context("this format is no text: say with --out where the file goes")?;
    write_atomically(&path, bytes)?;
    Ok(format!("{} is written\n", path.display()))
}

fn json(value: &impl serde::Serialize) -> anyhow::Result<String> {
    let mut text = serde_json::to_string_pretty(value)?;
    text.push('\n');
    Ok(text)
}
