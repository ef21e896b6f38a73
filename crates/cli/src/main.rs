//! The command line: the same pipeline as the window, with the same job, plan and numbers.

mod apply;
mod coursing;
mod fit;
mod fix;
mod formats;
mod orders;
mod picture;
mod raise;
mod tape;
mod wires;

use anyhow::Context;
use chalkcourse_job::{Resolved, load, load_rule_book, write_atomically};
use chalkcourse_plan::{Offers, Plan, evaluate};
use chalkcourse_sheets::Output;
use chalkcourse_words::{self as words, Language, speak};
use clap::builder::{PossibleValue, PossibleValuesParser, TypedValueParser};
use clap::{Args, Parser, Subcommand, ValueEnum};
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

#[derive(Parser)]
#[command(version, about = words::commandline::ABOUT.now(), after_help = after_help())]
struct Arguments {
    #[arg(help = words::commandline::HELP_THE_LANGUAGE_OF_REPORTS_ORDERS.now())]
    #[arg(long, global = true, value_parser = languages(), default_value = "en")]
    language: Language,
    #[command(subcommand)]
    command: Command,
}

/// Exit statuses and cautions, for the end of the help text.
fn after_help() -> String {
    format!("{}\n\n{}", words::commandline::EXIT_STATUS, chalkcourse_plan::CAUTION)
}

/// The requested language, parsed before the other arguments so that help and errors are in it.
fn asked_language() -> Language {
    let mut arguments = std::env::args().skip(1);
    let mut code = None;
    while let Some(argument) = arguments.next() {
        if argument == "--language" {
            code = arguments.next();
        } else if let Some(named) = argument.strip_prefix("--language=") {
            code = Some(named.to_owned());
        }
    }
    code.and_then(|code| Language::from_tag(&code)).unwrap_or_default()
}

/// Parser for the codes of the available languages.
fn languages() -> impl TypedValueParser<Value = Language> {
    let all = Language::ALL.map(|language| PossibleValue::new(language.code()).help(language.name()));
    PossibleValuesParser::new(all).map(|code| Language::from_tag(&code).unwrap_or_default())
}

#[derive(Subcommand)]
enum Command {
    #[command(about = words::commandline::HELP_SAYS_WHAT_THE_RULE_BOOK.now())]
    Check {
        #[command(flatten)]
        on: On,
        #[arg(help = words::commandline::HELP_SAYS_OF_EACH_FINDING_WHAT.now())]
        #[arg(long)]
        fixes: bool,
        #[arg(long, value_enum, default_value = "text")]
        format: Format,
    },
    #[command(about = words::commandline::HELP_CLEARS_A_FINDING_BY_THE.now())]
    Fix(fix::FixArguments),
    #[command(about = words::commandline::HELP_LISTS_WHAT_TO_ORDER_WITH.now())]
    Takeoff(orders::TakeoffArguments),
    #[command(about = words::commandline::HELP_TELLS_WHAT_ONE_ORDER_HAS.now())]
    CompareOrders(orders::CompareArguments),
    #[command(about = words::commandline::HELP_PRICES_ONE_ORDER_AT_SEVERAL.now())]
    Suppliers(orders::SuppliersArguments),
    #[command(about = words::commandline::HELP_PRINTS_THE_PALLET_LIST_TO.now())]
    Receive(orders::ReceiveArguments),
    #[command(about = words::commandline::HELP_REPORTS_ROOF_BLOCKS_FINDINGS_AND.now())]
    Plan {
        #[command(flatten)]
        on: On,
        #[arg(long, value_enum, default_value = "text")]
        format: Format,
    },
    #[command(about = words::commandline::HELP_FILLS_FACES_WITH_THE_ARRAY.now())]
    Fit(Box<fit::FitArgs>),
    #[command(about = words::commandline::HELP_DOES_EDITS_OF_A_FILE.now())]
    Apply(Box<apply::Apply>),
    #[command(about = words::commandline::HELP_TELLS_THE_COURSES_OF_FACES.now())]
    Coursing(coursing::CoursingArgs),
    #[command(about = words::commandline::HELP_FROM_FIELD_MEASUREMENTS_HOW_FAR.now())]
    FitUp(Box<coursing::FitUpArgs>),
    #[command(about = words::commandline::HELP_DRAWS_THE_HOUSE_WITH_ITS.now())]
    Picture {
        #[arg(help = words::commandline::HELP_THE_JOB_FILE.now())]
        file: PathBuf,
        #[command(flatten)]
        options: picture::Options,
    },
    #[command(about = words::commandline::HELP_MAKES_A_JOB_FROM_A.now())]
    Raise {
        #[arg(help = words::commandline::HELP_A_GEOJSON_FILE_RFC_7946.now())]
        footprint: PathBuf,
        #[arg(help = words::commandline::HELP_WHERE_THE_JOB_IS_WRITTEN.now())]
        #[arg(long, value_name = "PATH")]
        out: PathBuf,
        #[command(flatten)]
        sides: raise::AllSides,
        #[arg(help = words::commandline::HELP_WHAT_STANDS_ON_ONE_SIDE.now())]
        #[arg(long, value_name = "SIDE=WHAT")]
        side: Vec<String>,
        #[arg(help = words::commandline::HELP_WHICH_OUTLINE_OF_THE_FILE.now())]
        #[arg(long)]
        name: Option<String>,
    },
    #[command(about = words::commandline::HELP_REPORTS_THE_ROOF_FACES_EDGES.now())]
    Roof {
        #[command(flatten)]
        on: On,
        #[arg(long, value_enum, default_value = "text")]
        format: Format,
    },
    #[command(about = words::commandline::HELP_LISTS_THE_BUILDINGS_OF_A.now())]
    Import(formats::Import),
    #[command(about = words::commandline::HELP_WRITES_THE_PLAN_AS_GEOJSON.now())]
    Export(formats::Export),
    #[command(about = words::commandline::HELP_MAKES_A_JOB_OR_ADDS.now())]
    Tape(tape::Tape),
    #[command(about = words::commandline::HELP_WIRES.now())]
    Wires(wires::WiresArguments),
    #[command(about = words::commandline::HELP_PRINTS_THE_CREWS_CHECKLIST_WORK.now())]
    Checklist {
        #[command(flatten)]
        on: On,
        #[arg(help = words::commandline::HELP_PDF_IS_TO_PRINT_AND.now())]
        #[arg(long, value_enum, default_value = "text")]
        format: ChecklistFormat,
    },
    #[command(about = words::commandline::HELP_LISTS_THE_FIELDS_IN_WHICH.now())]
    CompareBooks {
        #[arg(help = words::commandline::HELP_A_RULE_BOOK_FILE.now())]
        one: PathBuf,
        #[arg(help = words::commandline::HELP_ANOTHER_ONE.now())]
        other: PathBuf,
    },
    #[command(about = words::commandline::HELP_PRINTS_THE_JSON_SCHEMA_OF_2.now())]
    Schema {
        #[arg(help = words::commandline::HELP_WHICH_ONE_JOB_KIT_RULE.now())]
        name: String,
    },
}

#[derive(Args)]
struct On {
    #[arg(help = words::commandline::HELP_THE_JOB_FILE.now())]
    file: PathBuf,
    #[arg(help = words::commandline::HELP_WRITES_THERE_INSTEAD_OF_TO.now())]
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

/// The output of a command, and whether a finding stops the job.
struct Outcome {
    text: String,
    out: Option<PathBuf>,
    stops: bool,
}

fn main() -> ExitCode {
    speak(asked_language());
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

/// Writes output to a file, or to standard output if none is given.
fn deliver(text: &str, out: Option<&Path>) -> anyhow::Result<()> {
    match out {
        Some(path) => Ok(write_atomically(path, text.as_bytes())?),
        None => print(text).context(words::commandline::CANT_WRITE_TO_THE_SCREEN),
    }
}

/// Prints to standard error what is not part of the output.
pub(crate) fn aside(words: &str) {
    let _ = writeln!(std::io::stderr(), "{words}");
}

/// Prints all of it; a closed pipe (`| head`) is not an error.
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
                // reports what is there; judging it by the rule book is the job of `check`
                .map(|outcome| Outcome { stops: false, ..outcome })
        }
        Command::Import(import) => import.run(),
        Command::Export(export) => export.run(),
        Command::Tape(tape) => tape::run(&tape),
        Command::Wires(arguments) => wires::wires(&arguments),
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
                anyhow::bail!(
                    "{}",
                    words::commandline::no_format(&format_args!("{name:?}"), &known.join(", "))
                );
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

/// An output as text or as JSON.
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

/// Writes a binary output to the file that `--out` names, and returns a message about it.
fn write_file(out: Option<PathBuf>, bytes: &[u8]) -> anyhow::Result<String> {
    let path = out.context(words::commandline::SAY_WHERE_THE_FILE_GOES)?;
    write_atomically(&path, bytes)?;
    Ok(format!("{}\n", words::commandline::is_written(&path.display())))
}

fn json(value: &impl serde::Serialize) -> anyhow::Result<String> {
    let mut text = serde_json::to_string_pretty(value)?;
    text.push('\n');
    Ok(text)
}
