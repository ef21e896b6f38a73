//! The `wires` command: circuits with their volts, amperes and ways, and automatic stringing.

use crate::apply::check_target;
use crate::{Format, On, Outcome, text_of};
use anyhow::bail;
use chalkcourse_job::{apply, load, save};
use chalkcourse_plan::{evaluate, unknown_wires};
use chalkcourse_sheets::Output;
use chalkcourse_wiring::paths::Effort;
use chalkcourse_wiring::{held_back, string_up};
use chalkcourse_words as words;
use clap::Args;
use std::path::PathBuf;

/// Arguments of `wires`.
#[derive(Args)]
pub(crate) struct WiresArguments {
    #[command(flatten)]
    on: On,
    #[arg(help = words::commandline::HELP_WIRES_AUTOMATICALLY.now())]
    #[arg(long)]
    string_automatically: bool,
    #[arg(help = words::commandline::HELP_WRITES_THE_JOB_AFTER_IT.now())]
    #[arg(long, value_name = "PATH", requires = "string_automatically")]
    save: Option<PathBuf>,
    #[arg(help = words::commandline::HELP_LETS_SAVE_NAME_THE_JOB.now())]
    #[arg(long, requires = "save")]
    in_place: bool,
    #[arg(long, value_enum, default_value = "text")]
    format: Format,
}

pub(crate) fn wires(arguments: &WiresArguments) -> anyhow::Result<Outcome> {
    let on = &arguments.on;
    if let Some(to) = &arguments.save {
        check_target(to, &on.file, None, arguments.in_place)?;
    }
    let mut job = load(&on.file)?;
    let mut plan = evaluate(&job);
    let mut strung = None;
    if arguments.string_automatically {
        let made = match string_up(&job, &plan.layout, None, Effort::WHOLE) {
            Ok(mut made) => {
                made.held = held_back(&job, &plan.layout, &made, None);
                made
            }
            Err(unknown) => bail!("{}: {}", on.file.display(), unknown_wires(&unknown)),
        };
        job = apply(&job, &made.edit(&job))?;
        plan = evaluate(&job);
        strung = Some(made);
    }
    if let Some(to) = &arguments.save {
        save(&job, to)?;
    }
    let (text, json) = (Output::Wires(strung.as_ref()), Output::WiresJson(strung.as_ref()));
    let text = text_of(arguments.format, text, json, &job, &plan)?;
    let stops = plan.worst() == Some(chalkcourse_rules::Severity::Stop);
    Ok(Outcome { text, out: on.out.clone(), stops })
}
