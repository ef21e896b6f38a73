use crate::Selection;
use crate::canvas::Group;
use crate::commands::Command;
use chalkcourse_job::{Edit, FaceId};
use std::path::PathBuf;

/// What a part of the window asks for. The editor carries it out after the part was drawn.
#[derive(Clone, Debug)]
pub(crate) enum Action {
    /// Take a step.
    Edit(String, Edit),
    /// Take a step and then hold something.
    EditAndSelect(String, Edit, Selection),
    /// Show what a gesture would do.
    Preview(String, Edit),
    /// End the gesture as one step.
    Commit,
    /// End the gesture as if it had not been.
    Abort,
    /// Go to the job as it was after a step.
    Jump(usize),
    /// Hold something.
    Select(Selection),
    /// Hold several things.
    Hold(Group),
    /// Carry out a command.
    Run(Command),
    /// Fill faces with modules; all that may carry them where none is named.
    Fill(Vec<FaceId>),
    /// Open a job, after asking about unsaved changes.
    Open(PathBuf),
    /// Lay a picture under the plan.
    LayPicture(PathBuf),
    /// Open the sample, after asking about unsaved changes.
    OpenSample,
    /// Put the building that is chosen in the list into the job.
    TakeBuilding,
    /// Say something in the status bar.
    Say(String),
}

/// What was asked for in one frame, in order.
pub(crate) type Actions = Vec<Action>;
