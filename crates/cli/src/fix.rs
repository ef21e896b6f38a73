//! The `fix` command: applies the fix of a finding.

use crate::apply::check_target;
use crate::{Format, Outcome};
use anyhow::bail;
use chalkcourse_job::{FindingKey, NoFiles, Resolved, edits_to_text, load, save, script_from_text};
use chalkcourse_plan::{Evaluator, Fix, Seen, apply_script, fix_words, fixes};
use chalkcourse_rules::Severity;
use chalkcourse_sheets::Output;
use chalkcourse_words as words;
use clap::Args;
use std::fmt::Write;
use std::path::PathBuf;

/// Arguments of `fix`.
#[derive(Args)]
pub(crate) struct FixArguments {
    #[arg(help = words::commandline::HELP_THE_JOB_FILE.now())]
    job: PathBuf,
    #[arg(help = words::commandline::HELP_THE_KEY_OF_THE_FINDING.now())]
    #[arg(long, value_name = "KEY", required_unless_present = "all")]
    finding: Option<String>,
    #[arg(help = words::commandline::HELP_DOES_FIX_AFTER_FIX_STOPS.now())]
    #[arg(long, conflicts_with = "finding")]
    all: bool,
    #[arg(help = words::commandline::HELP_WRITES_THE_JOB_AFTER_IT.now())]
    #[arg(long, value_name = "PATH")]
    save: Option<PathBuf>,
    #[arg(help = words::commandline::HELP_LETS_SAVE_NAME_THE_JOB.now())]
    #[arg(long, requires = "save")]
    in_place: bool,
    #[arg(long, value_enum, default_value = "text")]
    format: Format,
    #[arg(help = words::commandline::HELP_WRITES_THE_ANSWER_THERE_INSTEAD.now())]
    #[arg(long, value_name = "PATH")]
    out: Option<PathBuf>,
}

pub(crate) fn fix(arguments: &FixArguments) -> anyhow::Result<Outcome> {
    if let Some(to) = &arguments.save {
        check_target(to, &arguments.job, None, arguments.in_place)?;
    }
    let job = load(&arguments.job)?;
    let key = arguments.finding.as_deref().map(str::parse::<FindingKey>).transpose()?;
    let mut said = String::new();
    let mut edits = Vec::new();
    let mut now = job.clone();
    let mut evaluator = Evaluator::default();
    while let Some(found) = next(&mut evaluator, &now, key.as_ref())? {
        let _ = writeln!(said, "{}", fix_words(&now, &found, Seen::Text));
        let edit = found.edit();
        now = chalkcourse_job::apply(&now, &edit)?;
        edits.push(edit);
        if key.is_some() {
            break;
        }
    }
    if edits.is_empty() {
        said += words::commandline::NO_FIX_IS_OFFERED.now();
    }
    let script = script_from_text(&edits_to_text(&edits)?, &arguments.job)?;
    let done = apply_script(&job, &script, &NoFiles, false);
    let saved = match &arguments.save {
        Some(to) => {
            save(&done.job, to)?;
            Some(to.display().to_string())
        }
        None => None,
    };
    let text = match arguments.format {
        Format::Json => Output::AppliedJson(&done, saved.as_deref()).text(&done.job, &done.plan)?,
        Format::Text => {
            let last = match &saved {
                Some(to) => words::commandline::saved_as(&to),
                None => words::commandline::NOTHING_WAS_SAVED.now().to_owned(),
            };
            format!("{said}\n{}{last}", Output::Applied(&done).text(&done.job, &done.plan)?)
        }
    };
    let stops = done.plan.worst() == Some(Severity::Stop);
    Ok(Outcome { text, out: arguments.out.clone(), stops })
}

/// The best fix of a finding, or of the first that has one.
fn next(evaluator: &mut Evaluator, job: &Resolved, key: Option<&FindingKey>) -> anyhow::Result<Option<Fix>> {
    let plan = evaluator.evaluate(job);
    if let Some(key) = key
        && !plan.findings.iter().any(|finding| finding.key == *key)
    {
        bail!(words::commandline::nothing_is_found_by_the(&key));
    }
    let asked = plan.findings.iter().filter(|finding| key.is_none_or(|key| finding.key == *key));
    let mut best = asked.map(|finding| fixes(job, &plan, &finding.key, &|| false).best().cloned());
    Ok(best.find_map(|fix| fix))
}
