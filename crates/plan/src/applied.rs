//! Running an edit script step by step, with what each step changed in the job and in its plan.

use crate::{CAUTION, Evaluator, Plan, Standing, standing};
use chalkcourse_job::{
    DifferenceKind, FieldDifference, JobDifference, Resolved, Script, Shelf, StepError, StepErrorKind,
    Waiver, differences,
};
use chalkcourse_rules::Severity;
use chalkcourse_words::{self as words, speaking, spoken};
use schemars::JsonSchema;
use serde::Serialize;
use serde_json::Value;
use std::collections::BTreeSet;
use std::fmt::Write;

/// The result of running a script on a job.
#[derive(Debug)]
pub struct Application {
    /// The job after the steps that succeeded.
    pub job: Resolved,
    /// Its plan.
    pub plan: Plan,
    /// The steps.
    pub steps: Vec<AppliedStep>,
    /// Errors of the steps that failed.
    pub refused: Vec<StepError>,
}

/// One step and its effect.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct AppliedStep {
    /// Its position in the script, from 1.
    pub number: usize,
    /// The name of the edit.
    pub edit: String,
    /// Why it failed, if it did; the job is then unchanged.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refused: Option<String>,
    /// What it changed in the job, including the faces derived from its parts.
    pub changes: Vec<JobDifference>,
    /// Modules on the roof.
    pub modules: BeforeAfter,
    /// Open stops.
    pub stops: BeforeAfter,
    /// Keys of new stops.
    pub new_stops: Vec<String>,
    /// Keys of stops that are gone.
    pub gone_stops: Vec<String>,
}

/// A number before and after a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct BeforeAfter {
    /// Before.
    pub before: usize,
    /// After.
    pub after: usize,
}

/// The result of a script as data.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct AppliedReport {
    /// The kind of file.
    pub format: &'static str,
    /// Version of the format.
    pub version: u32,
    /// Name of the job.
    pub job: String,
    /// The file that the resulting job was written to, if any.
    pub saved: Option<String>,
    /// The steps.
    pub edits: Vec<AppliedStep>,
    /// Where the job stands after the script.
    #[serde(flatten)]
    pub standing: Standing,
    /// The caution that a planning aid is no permit.
    pub caution: &'static str,
}

/// Runs the steps of a script in order. It ends at the first step that fails, or skips failing steps if `keep_going`.
/// New faces get names in the language of the script.
pub fn apply_script(job: &Resolved, script: &Script, shelf: &dyn Shelf, keep_going: bool) -> Application {
    let mut evaluator = Evaluator::default();
    let (mut job, mut plan) = (job.clone(), evaluator.evaluate(job));
    let (mut steps, mut refused) = (Vec::new(), Vec::new());
    let named_in = script.language.unwrap_or(spoken());
    for (step, number) in script.steps.iter().zip(1..) {
        let before = (plan.summary.modules, stops(&plan));
        let told = |refused, changes, modules, after: &BTreeSet<String>| AppliedStep {
            number,
            edit: step.name().to_owned(),
            refused,
            changes,
            modules: BeforeAfter { before: before.0, after: modules },
            stops: BeforeAfter { before: before.1.len(), after: after.len() },
            new_stops: after.difference(&before.1).cloned().collect(),
            gone_stops: before.1.difference(after).cloned().collect(),
        };
        // Errors are reported in the reader's language.
        let next = speaking(named_in, || step.apply(&job, shelf)).or_else(|_| step.apply(&job, shelf));
        match next.and_then(|next| with_what_was_accepted(&job, next, &plan)) {
            Ok(next) => {
                let changes = differences(&job, &next);
                plan = evaluator.evaluate(&next);
                job = next;
                steps.push(told(None, changes, plan.summary.modules, &stops(&plan)));
            }
            Err(wrong) => {
                steps.push(told(Some(wrong.to_string()), Vec::new(), before.0, &before.1));
                refused.push(StepError { number, name: step.name().to_owned(), wrong });
                if !keep_going {
                    break;
                }
            }
        }
    }
    Application { job, plan, steps, refused }
}

/// A waiver that a step gives by key only accepts the finding as it is before the step.
fn with_what_was_accepted(
    job: &Resolved,
    mut next: Resolved,
    plan: &Plan,
) -> Result<Resolved, StepErrorKind> {
    let given = |waiver: &&mut Waiver| waiver.accepted.is_none() && !job.waivers.contains(waiver);
    for waiver in next.waivers.iter_mut().filter(given) {
        let Some(finding) = plan.findings.iter().find(|finding| finding.key == waiver.key) else {
            return Err(StepErrorKind::Field {
                field: "key".to_owned(),
                wrong: words::later::report::nothing_is_found_by_the(&format_args!("{}", waiver.key)),
            });
        };
        *waiver = finding.waiver(waiver.reason.clone(), waiver.by.clone(), waiver.date.clone());
    }
    Ok(next)
}

/// Keys of open stops.
fn stops(plan: &Plan) -> BTreeSet<String> {
    let open = plan.findings.iter().filter(|finding| finding.severity == Severity::Stop);
    open.filter(|finding| finding.waived.is_none()).map(|finding| finding.key.to_string()).collect()
}

/// The result as data. `saved` is the file that the job was written to.
pub fn applied_report(done: &Application, saved: Option<String>) -> AppliedReport {
    AppliedReport {
        format: "chalkcourse-applied",
        version: 1,
        job: done.job.name.clone(),
        saved,
        edits: done.steps.clone(),
        standing: standing(&done.job, &done.plan),
        caution: CAUTION.now(),
    }
}

/// The result as text.
pub fn applied_text(done: &Application) -> String {
    let mut text = format!("{}\n{}\n", done.job.name, standing(&done.job, &done.plan).head());
    for step in &done.steps {
        let _ = writeln!(text, "{}. {}", step.number, step.edit);
        if let Some(wrong) = &step.refused {
            let _ = writeln!(text, "{}", words::report::not_done(&wrong));
            continue;
        }
        if step.changes.is_empty() {
            let _ = writeln!(text, "{}", words::report::CHANGES_NOTHING);
        }
        for change in &step.changes {
            text.push_str(&change_text(change));
        }
        let AppliedStep { modules, stops, .. } = step;
        if modules.before != modules.after {
            let _ = writeln!(text, "{}", words::report::modules(&modules.before, &modules.after));
        }
        if !step.new_stops.is_empty() || !step.gone_stops.is_empty() {
            let _ = writeln!(text, "{}", words::report::findings_to_stop_for(&stops.before, &stops.after));
        }
        for key in &step.new_stops {
            let _ = writeln!(text, "{}", words::report::new(&key));
        }
        for key in &step.gone_stops {
            let _ = writeln!(text, "{}", words::report::no_more(&key));
        }
    }
    let _ = writeln!(
        text,
        "{}",
        words::report::modules_findings_to_stop_for(done.plan.summary.modules, stops(&done.plan).len())
    );
    let _ = writeln!(text, "\n{}\n", CAUTION.now());
    text
}

fn change_text(change: &JobDifference) -> String {
    let JobDifference { what, id, name, how, fields } = change;
    let mut words = format!("   {}", what.name());
    if let Some(id) = id {
        words += &format!(" {id}");
    }
    if !name.is_empty() {
        words += &format!(" “{name}”");
    }
    words += " ";
    words += how.name().now();
    if *how == DifferenceKind::Changed {
        let fields: Vec<String> = fields.iter().map(field_text).collect();
        words += &format!(": {}", fields.join(", "));
    }
    words + "\n"
}

/// `rows 2 → 3`, or only the name if the values are too long for a line.
fn field_text(field: &FieldDifference) -> String {
    let FieldDifference { field, before, after } = field;
    let show = |value: &Option<Value>| match value {
        None => words::report::NONE.now().to_owned(),
        Some(Value::String(text)) => text.clone(),
        Some(value) => value.to_string(),
    };
    match (before, after) {
        (None, None) => field.clone(),
        _ => format!("{field} {} → {}", show(before), show(after)),
    }
}
