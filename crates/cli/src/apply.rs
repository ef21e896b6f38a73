//! The `apply` command: runs an edit script on a job.

use crate::{Format, Outcome, json};
use anyhow::{Context, bail};
use chalkcourse_job::{
    Folder, Resolved, Script, builtin_kit, builtin_prices, builtin_rule_book, load, save, script_from_text,
};
use chalkcourse_plan::apply_script;
use chalkcourse_sheets::Output;
use chalkcourse_words as words;
use clap::Args;
use std::io::Read;
use std::path::{Path, PathBuf};

/// Arguments of `apply`.
#[derive(Args)]
#[command(after_help = examples())]
pub(crate) struct Apply {
    #[arg(help = words::commandline::HELP_THE_JOB_FILE_THE_WORD.now())]
    #[arg(required_unless_present = "print_schema")]
    job: Option<PathBuf>,
    #[arg(help = words::commandline::HELP_THE_EDITS_ONE_OR_A.now())]
    #[arg(required_unless_present = "print_schema")]
    edits: Option<PathBuf>,
    #[arg(help = words::commandline::HELP_WRITES_THE_JOB_AFTER_THEM.now())]
    #[arg(long, value_name = "PATH")]
    save: Option<PathBuf>,
    #[arg(help = words::commandline::HELP_LETS_SAVE_NAME_THE_JOB.now())]
    #[arg(long, requires = "save")]
    in_place: bool,
    #[arg(help = words::commandline::HELP_LEAVES_OUT_AN_EDIT_THAT.now())]
    #[arg(long)]
    keep_going: bool,
    #[arg(long, value_enum, default_value = "text")]
    format: Format,
    #[arg(help = words::commandline::HELP_WRITES_THE_ANSWER_THERE_INSTEAD.now())]
    #[arg(long, value_name = "PATH")]
    out: Option<PathBuf>,
    #[arg(help = words::commandline::HELP_PRINTS_THE_JSON_SCHEMA_OF.now())]
    #[arg(long)]
    print_schema: bool,
}

const EXAMPLES: &str = r#"
  {"add-penetration": {"kind": "vent", "face": "South", "at": ["12 ft 4 in", "6 ft"], "size": {"square": ["16 in", "16 in"]}}}
  {"move-corner": {"part": "House", "corner": 3, "by": ["2 ft", 0]}}
  {"change-side": {"part": "House", "side": 2, "treatment": "gable", "overhang": "18 in"}}
  {"change-part": {"part": "House", "eave_height": "10 ft"}}
  {"change-building": {"street_sides": [180], "wind_mph": 115, "sprinklers": true}}
  {"change-pricing": {"overhead_percent": "12", "profit": {"margin": {"percent": "20"}}}}
  {"waive": {"key": "setback/…", "reason": "the official agreed, 3 March"}}
  {"switch-modules": {"block": "A", "off": [{"row": 2, "place": 3}]}}
"#;

/// Examples of edits for the help text.
fn examples() -> String {
    format!(
        "{}{EXAMPLES}\n{}",
        words::commandline::EXAMPLES_OF_EDITS,
        words::commandline::HOW_EDITS_NAME_THINGS
    )
}

/// Maximum size of an edit script, bytes.
const MOST_BYTES: u64 = 64 << 20;

pub(crate) fn apply(arguments: &Apply) -> anyhow::Result<Outcome> {
    let (Some(on), Some(edits)) = (&arguments.job, &arguments.edits) else {
        return Ok(Outcome { text: json(&chalkcourse_job::edits_schema())?, out: None, stops: false });
    };
    if let Some(to) = &arguments.save {
        check_target(to, on, Some(edits), arguments.in_place)?;
    }
    let job = if is_new(on) { empty() } else { load(on)? };
    let (script, folder) = read(edits)?;
    let done = apply_script(&job, &script, &Folder(folder), arguments.keep_going);
    let whole = done.refused.is_empty();
    let saved = match &arguments.save {
        Some(to) if whole || arguments.keep_going => {
            save(&done.job, to)?;
            Some(to.display().to_string())
        }
        _ => None,
    };
    let text = match arguments.format {
        Format::Json => Output::AppliedJson(&done, saved.as_deref()).text(&done.job, &done.plan)?,
        Format::Text => {
            let mut text = Output::Applied(&done).text(&done.job, &done.plan)?;
            text += &match saved {
                Some(to) => words::commandline::saved_as(&to),
                None => words::commandline::NOTHING_WAS_SAVED.now().to_owned(),
            };
            text
        }
    };
    if let Some(first) = done.refused.first() {
        crate::deliver(&text, arguments.out.as_deref())?;
        bail!("{}: {first}", edits.display());
    }
    let stops = done.plan.worst() == Some(chalkcourse_rules::Severity::Stop);
    Ok(Outcome { text, out: arguments.out.clone(), stops })
}

fn is_new(job: &Path) -> bool {
    job == Path::new("new")
}

fn empty() -> Resolved {
    let name = words::commandline::NEW_ROOF.now().to_owned();
    Resolved::new(name, builtin_kit(), builtin_rule_book(), builtin_prices())
}

/// The steps, and the folder that relative file names in them start from.
fn read(edits: &Path) -> anyhow::Result<(Script, PathBuf)> {
    let mut text = String::new();
    if edits == Path::new("-") {
        std::io::stdin().lock().take(MOST_BYTES).read_to_string(&mut text).context("-")?;
        return Ok((script_from_text(&text, edits)?, std::env::current_dir()?));
    }
    let file = std::fs::File::open(edits).with_context(|| edits.display().to_string())?;
    file.take(MOST_BYTES).read_to_string(&mut text).with_context(|| edits.display().to_string())?;
    let folder = std::path::absolute(edits)?.parent().map(Path::to_owned).unwrap_or_default();
    Ok((script_from_text(&text, edits)?, folder))
}

/// Refuses to overwrite an input, except the job itself when that is requested.
pub(crate) fn check_target(
    to: &Path,
    job: &Path,
    edits: Option<&Path>,
    in_place: bool,
) -> anyhow::Result<()> {
    if edits.is_some_and(|edits| is_same_file(to, edits)) {
        bail!(words::commandline::save_would_write_over_the(&to.display()));
    }
    let same = !is_new(job) && is_same_file(to, job);
    if same && !in_place {
        bail!(words::commandline::save_would_write_over_the_job(&to.display()));
    }
    if in_place && !same {
        bail!(words::commandline::in_place_says_that_save(&to.display()));
    }
    Ok(())
}

fn is_same_file(one: &Path, other: &Path) -> bool {
    match (one.canonicalize(), other.canonicalize()) {
        (Ok(one), Ok(other)) => one == other || is_same_inode(&one, &other),
        _ => false,
    }
}

/// Whether two paths are the same file.
#[cfg(unix)]
fn is_same_inode(one: &Path, other: &Path) -> bool {
    use std::os::unix::fs::MetadataExt;
    let place = |path: &Path| path.metadata().ok().map(|file| (file.dev(), file.ino()));
    place(one).is_some_and(|at| place(other) == Some(at))
}

#[cfg(not(unix))]
fn is_same_inode(_: &Path, _: &Path) -> bool {
    false
}
