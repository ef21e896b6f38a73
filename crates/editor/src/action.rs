use crate::Selection;
use crate::canvas::Group;
use crate::outputs::{CrewSheet, OrderFormat, PlanFormat};
use crate::tool::Tool;
use crate::view::Look;
use chalkcourse_geometry::Units;
use chalkcourse_job::{Edit, FaceId};
use chalkcourse_plan::{Align, Spread};
use chalkcourse_words::Language;
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
    /// Fill faces with modules; all that may carry them where none is named.
    Fill(Vec<FaceId>),
    /// Fill the face that is held, or all.
    FillHeld,
    /// Open a job, after asking about unsaved changes.
    OpenFile(PathBuf),
    /// Lay a picture under the plan.
    LayPicture(PathBuf),
    /// Open the sample, after asking about unsaved changes.
    OpenSample,
    /// Put the building that is chosen in the list into the job.
    TakeBuilding,
    /// Say something in the status bar.
    Say(String),

    // Files. What lets the job go asks about unsaved changes first.
    New,
    /// Begin the lesson, with a job of its own.
    BeginLesson,
    LeaveLesson,
    /// Ask which job to open.
    AskOpen,
    Save,
    SaveAs,
    Quit,
    Export(OrderFormat),
    Print(CrewSheet),
    ExportPlan(PlanFormat),
    SaveSteps,
    SavePicture,
    AskImport,
    AskImportFolder,
    AskPicture,
    LoadKit,
    LoadRuleBook,
    LoadPrices,
    /// Leftovers from a warehouse list.
    LoadStock,
    /// What was counted of a delivery.
    LoadCounts,
    /// Compare the order with that of another job.
    CompareJob,
    /// The price list of another supplier.
    AddOffer,
    SaveRuleBook,
    CompareRuleBook,
    /// The drawing on the clipboard, as it is seen.
    CopyPicture,
    /// The drawing on the clipboard, as lines.
    CopySvg,
    /// The steps since the job was opened on the clipboard, as edits.
    CopySteps,

    // Steps back and on, and what is done to what is held.
    Undo,
    Redo,
    Delete,
    HoldAll,
    MakeRoom,
    Mirror,
    CopyToFace,
    Split,
    Join,
    AlignTo(Align),
    Spread(Spread),
    /// Take up a tool.
    Use(Tool),
    /// Draw walls, to raise a whole roof over.
    DrawWalls,

    // What is seen.
    Look(Look),
    /// Fit the view to what there is.
    Fit,
    Toggle(Toggle),
    /// The view for the homeowner, or out of it again.
    ShowHome,
    Show(Units),
    Speak(Language),
    /// From dark to light, or back.
    ChangeTheme,
    Open(Window),
    OpenOrClose(Window),
    ShowCautions,
    ShowKeys,
}

/// A window beside the drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Window {
    RuleBook,
    RoofReport,
    Order,
    Coursing,
    FitUp,
    Taped,
    Checklist,
    History,
    Glossary,
    /// The field that finds commands.
    Palette,
}

/// What can be drawn or left out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Toggle {
    Courses,
    /// The pathways for the fire service.
    Pathways,
    /// The zones of wind suction.
    WindZones,
}

/// What was asked for in one frame, in order.
pub(crate) type Actions = Vec<Action>;
