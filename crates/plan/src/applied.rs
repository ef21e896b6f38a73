//! A script done step by step, and what each step changed: in the job, and in what follows from it.

use crate::{CAUTION, Evaluator, Plan, Standing, standing};
use chalkcourse_job::{
    FieldDifference, How, JobDifference, Resolved, Script, Shelf, StepError, Waiver, Wrong, differences,
};
use chalkcourse_rules::Severity;
use chalkcourse_words::{self as words, speaking, spoken};
use schemars::JsonSchema;
use serde::Serialize;
use serde_json::Value;
use std::collections::BTreeSet;
use std::fmt::Write;

/// A script as it was done on a job.
#[derive(Debug)]
pub struct Application {
    /// The job after the steps that were done.
    pub job: Resolved,
    /// What follows from it.
    pub plan: Plan,
    /// Step by step.
    pub steps: Vec<AppliedStep>,
    /// Steps that can't be done.
    pub refused: Vec<StepError>,
}

/// One step and what came of it.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct AppliedStep {
    /// Its place in the script, from 1.
    pub number: usize,
    /// The word that it begins with.
    pub edit: String,
    /// Why it can't be done, where it can't; then the job stayed as it was.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refused: Option<String>,
    /// What it changed in the job, and in the faces that follow from its parts.
    pub changes: Vec<JobDifference>,
    /// Modules on the roof.
    pub modules: BeforeAfter,
    /// Findings to stop for that nobody waived.
    pub stops: BeforeAfter,
    /// Keys of those that are new.
    pub new_stops: Vec<String>,
    /// Keys of those that are no more.
    pub gone_stops: Vec<String>,
}

/// A number before and after a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub struct BeforeAfter {
    /// Before it.
    pub before: usize,
    /// After it.
    pub after: usize,
}

/// What a script did, for a program.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct AppliedReport {
    /// Which kind of file this is.
    pub format: &'static str,
    /// Its version.
    pub version: u32,
    /// What people call the job.
    pub job: String,
    /// The file that the job after it was written to; none where nothing was.
    pub saved: Option<String>,
    /// Step by step.
    pub edits: Vec<AppliedStep>,
    /// Where the job stands after it.
    #[serde(flatten)]
    pub standing: Standing,
    /// A planning aid is no permit.
    pub caution: &'static str,
}

/// Does the steps of a script one after the other. At the first that can't be done it ends, or, where asked to go on, leaves that
/// one out. New faces get their names in the script's language.
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
        // What can't be done is told in the reader's language.
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

/// A waiver that a step gives by its key alone accepts the finding as it stands before the step.
fn with_what_was_accepted(job: &Resolved, mut next: Resolved, plan: &Plan) -> Result<Resolved, Wrong> {
    let given = |waiver: &&mut Waiver| waiver.accepted.is_none() && !job.waivers.contains(waiver);
    for waiver in next.waivers.iter_mut().filter(given) {
        let Some(finding) = plan.findings.iter().find(|finding| finding.key == waiver.key) else {
            return Err(Wrong::Field {
                field: "key".to_owned(),
                wrong: words::later::report::nothing_is_found_by_the(&format_args!("{}", waiver.key)),
            });
        };
        *waiver = finding.waiver(waiver.reason.clone(), waiver.by.clone(), waiver.date.clone());
    }
    Ok(next)
}

/// Keys of findings to stop for that nobody waived.
fn stops(plan: &Plan) -> BTreeSet<String> {
    let open = plan.findings.iter().filter(|finding| finding.severity == Severity::Stop);
    open.filter(|finding| finding.waived.is_none()).map(|finding| finding.key.to_string()).collect()
}

/// What was done, for a program. `saved` is the file that the job went to.
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

/// What was done, for a person.
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
    if *how == How::Changed {
        let fields: Vec<String> = fields.iter().map(field_text).collect();
        words += &format!(": {}", fields.join(", "));
    }
    words + "\n"
}

/// `rows 2 → 3`, or the name alone of what is too long for a line.
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
