use crate::Selection;
use crate::state::{
    Asked, Camera, Change, Courses, CrewSheet, Ghost, Group, List, Look, OrderFormat, OrderTable, OutlineFor,
    Pane, PartPreset, PlanFormat, Pointed, RoofPart, Shaped, Toggle, Tool, TypeSize,
};
use chalkcourse_geometry::{DVec2, Units};
use chalkcourse_job::{Edit, FaceId, FindingKey, PenetrationKind};
use chalkcourse_plan::{Align, RaiseAs, Spread};
use chalkcourse_words::{Language, Said};
use egui::Vec2;
use std::path::PathBuf;

/// What a part of the window asks for. The editor carries it out after the part was drawn.
#[derive(Clone, Debug)]
pub(crate) enum Action {
    /// Take a step.
    Edit(Said, Edit),
    /// Take a step and then hold something.
    EditAndSelect(Said, Edit, Selection),
    /// Show what a gesture would do.
    Preview(Said, Edit),
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
    /// The page that a window begins with.
    StartPage,
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
    /// Put what is held on the clipboard.
    Copy,
    /// Put what is held on the clipboard, and take it away.
    Cut,
    /// Ask for the text on the clipboard.
    Paste,
    /// Set down what a text from the clipboard holds.
    PasteText(String),
    /// Another one beside what is held.
    Duplicate,
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
    /// The drawing from so many times as near.
    Zoom(f64),
    /// Hold something and bring it into view.
    GoTo(Selection),
    Toggle(Toggle),
    /// The view for the homeowner, or out of it again.
    ShowHome,
    Show(Units),
    Speak(Language),
    /// All that is read so much larger, or as at first.
    TypeSize(TypeSize),
    /// From dark to light, or back.
    ChangeTheme,
    /// Open a pane beside the drawing; one that is open comes to the front.
    Open(Pane),
    OpenOrClose(Pane),
    /// Change what is beside the drawing otherwise.
    Panes(Change),
    /// Close the pane that has the keyboard.
    ClosePane,
    /// The pane that has the keyboard into a window of its own, or back.
    OwnWindow,
    /// The field that finds commands.
    FindCommand,
    /// The keyboard to the menus.
    GoToMenus,
    /// The menu of what is held, as a right click opens it.
    HeldMenu,
    /// Close a window that asks something.
    CloseTopWindow,
    ShowCautions,
    ShowKeys,
    ShowList(List),
    /// Show the terms of a part of the order, by its number.
    OpenLine(Option<String>),
    /// Show the lines of the order otherwise.
    OrderTable(OrderTable),
    /// Who accepts findings.
    Person(String),

    // What a tool makes next.
    PenetrationKind(PenetrationKind),
    PartPreset(PartPreset),
    OutlineFor(OutlineFor),
    Shape(Shaped),
    RaiseAs(RaiseAs),
    /// Mark where a roof can't be raised, in plan.
    Trouble(Option<DVec2>),

    // Work in the background.
    /// How faces are to be filled.
    FillAs(Asked),
    /// Take the best fill that was found so far.
    StopFill,
    /// End the search for what holds fills back.
    StopHoldBack,
    StopMakingRoom,
    /// Make all circuits anew.
    StringAutomatically,
    /// Keep the circuits as they are, and look for no better ones.
    StopStringing,
    /// Keep a finding looked at, so that what clears it is worked out.
    OpenFinding(FindingKey),
    /// Read the picture under the plan again.
    ReadPictureAgain,
    /// Go on to the next step of the lesson.
    SkipStep,

    // What the pointer is on, in each frame: these alone ask for no other frame.
    /// Where the drawing is looked at; with the room that it was fitted to, where it was.
    See(Camera, Option<Vec2>),
    /// What is under the pointer on the drawing, and where that is in plan.
    Hover(Selection, Option<DVec2>),
    /// The row of a list under the pointer.
    Point(Pointed),
    /// A person looks at a finding in this frame; `true` where the pointer or the focus is on it.
    LookAtFinding(FindingKey, bool),
    /// What a proposal under the pointer would make.
    Ghost(Option<Ghost>),
    /// The courses that the drawing marks.
    MarkCourses(Option<Courses>),
    /// The part of the roof that the drawing lights.
    LightRoof(Option<RoofPart>),
    /// The view was fitted.
    Fitted,
}

impl Action {
    /// Whether it says only what the pointer is on: a frame that shows it comes anyway.
    pub(crate) fn is_of_pointer(&self) -> bool {
        matches!(
            self,
            Self::See(..)
                | Self::Hover(..)
                | Self::Point(_)
                | Self::LookAtFinding(..)
                | Self::Ghost(_)
                | Self::MarkCourses(_)
                | Self::LightRoof(_)
                | Self::Fitted
        )
    }
}

/// What was asked for in one frame, in order.
pub(crate) type Actions = Vec<Action>;
