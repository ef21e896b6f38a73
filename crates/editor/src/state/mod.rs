//! What the window is about: the document, what is held, what is looked at, what is worked out beside it, and what is
//! remembered. Nothing of it but the document is saved with the job.
//!
//! Views read it and ask for changes by actions; only the editor carries those out. It knows no view, no words and no action.

mod ask;
pub(crate) mod coursing;
mod document;
mod drawing;
mod group;
mod lesson;
mod order_table;
mod outputs;
pub(crate) mod panes;
mod roof_report;
mod selection;
mod settings;
mod shaped;
mod tool;
mod view;
mod work;

pub(crate) use ask::Ask;
pub use document::Document;
pub(crate) use drawing::{Dimension, OutlineFor, PartPreset, Toward};
pub(crate) use group::Group;
pub(crate) use lesson::{Lesson, Step};
pub(crate) use order_table::{BETWEEN as ORDER_BETWEEN, OrderColumn, OrderTable};
pub(crate) use outputs::{CrewSheet, OrderFormat, PlanFormat};
pub(crate) use panes::{Change, OwnWindow, Pane, PaneTree};
pub(crate) use roof_report::{RoofPart, RoofReports};
pub use selection::{PartPlace, Selection};
pub(crate) use settings::{Settings, TypeSize};
pub(crate) use shaped::{Shaped, size_typed};
pub(crate) use tool::{PictureMode, Tool};
pub(crate) use view::{Camera, DRAWING, HOUSE, Look, Space, View};
pub(crate) use work::{
    Asked, Filling, Fixing, How, Importing, Laying, MakingRoom, Pictures, StringingUp, is_of_buildings,
    replaced, same_roof, same_wires,
};

use chalkcourse_geometry::{DVec2, Rect};
use chalkcourse_job::{BlockId, FaceId, FindingKey, PenetrationKind};
use chalkcourse_plan::RaiseAs;
use chalkcourse_words::Said;
use egui::Vec2;

/// Which list is open.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub(crate) enum List {
    #[default]
    Findings,
    Quantities,
    /// What a fill found.
    Fill,
}

/// The row of a list under the pointer: the drawing lights its place.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) enum Pointed {
    #[default]
    Nothing,
    /// The key of a finding.
    Finding(FindingKey),
    /// A button that would clear a finding, by its key, and which of those that are offered.
    Fix(FindingKey, usize),
    /// The number of a part.
    Line(String),
    /// One term of a part.
    Term(String, usize),
    /// A line of what holds a fill of a face back, by what it says.
    Near(FaceId, Said),
}

/// What a proposal that is pointed at would make, drawn on a face in its frame.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Ghost {
    pub(crate) face: FaceId,
    /// Where something would lie.
    pub(crate) rects: Vec<Rect>,
    /// Heights of level lines that would be there.
    pub(crate) lines: Vec<f64>,
}

/// What can be drawn or left out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Toggle {
    Courses,
    /// The pathways for the fire service.
    Pathways,
    /// What the lines of the drawing mean.
    Lines,
    /// Circuits, their ways home and the bare copper.
    Wires,
    /// The zones of wind suction.
    WindZones,
    /// The panel at the right of the window.
    SidePanel,
}

/// The courses that the drawing marks, while their window is open: of a face, and of a block on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Courses {
    pub(crate) face: Option<FaceId>,
    pub(crate) block: Option<BlockId>,
}

/// What a person sees and holds.
#[derive(Debug, Default)]
pub(crate) struct State {
    pub(crate) tool: Tool,
    pub(crate) selection: Selection,
    /// Several things that are held, while nothing else is.
    pub(crate) group: Group,
    /// What is open beside the drawing, and where.
    pub(crate) desk: PaneTree,
    /// How the lines of the order are shown.
    pub(crate) order_table: OrderTable,
    /// The panel at the right is put away.
    pub(crate) no_side: bool,
    pub(crate) view: View,
    pub(crate) camera: Camera,
    /// The next frame fits the view to what there is.
    pub(crate) fit: bool,
    /// The room that the view was fitted to; none once the person moved it.
    pub(crate) fitted_to: Option<Vec2>,
    pub(crate) courses_in_plan: bool,
    /// Draw the pathways for the fire service.
    pub(crate) show_pathways: bool,
    /// Draw circuits, their ways home and the bare copper.
    pub(crate) show_wires: bool,
    /// Draw the zones of wind suction.
    pub(crate) show_zones: bool,
    /// Tell what the lines mean.
    pub(crate) show_lines: bool,
    /// The kind that the penetration tool places; a vent until a person chose.
    pub(crate) penetration_kind: Option<PenetrationKind>,
    /// What part of the house is drawn next.
    pub(crate) part: PartPreset,
    /// What the outline that is being drawn becomes.
    pub(crate) outline_for: OutlineFor,
    /// What the corners of the next outline make.
    pub(crate) shaped: Shaped,
    /// How a whole roof is raised; none until a person looked at it.
    pub(crate) raise_as: Option<RaiseAs>,
    /// Where a roof could not be raised, in plan.
    pub(crate) trouble: Option<DVec2>,
    /// What is under the pointer on the drawing.
    pub(crate) hover: Selection,
    /// Where the pointer is on the drawing, in plan.
    pub(crate) pointer: Option<DVec2>,
    pub(crate) pointed: Pointed,
    /// What a proposal under the pointer would make.
    pub(crate) ghost: Option<Ghost>,
    /// The courses whose window is open.
    pub(crate) courses: Option<Courses>,
    /// The part of the roof that a row of the roof report speaks of.
    pub(crate) lit_roof: Option<RoofPart>,
    pub(crate) list: List,
    /// The part of the order whose terms are shown.
    pub(crate) opened_line: Option<String>,
    /// A first job, step by step.
    pub(crate) lesson: Option<Lesson>,
    /// Filling faces.
    pub(crate) fill: Filling,
    /// What clears the findings that are looked at.
    pub(crate) fixing: Fixing,
    /// Circuits that are being made, and what is proved of those that were.
    pub(crate) stringing: StringingUp,
    /// The search for room that is going on.
    pub(crate) making_room: Option<MakingRoom>,
    /// The picture under the plan.
    pub(crate) pictures: Pictures,
    /// The page that a window begins with is open; the job is empty.
    pub(crate) starting: bool,
    /// The view for the homeowner is open.
    pub(crate) showing: bool,
    /// The last thing that the program had to say.
    pub(crate) said: String,
}

impl State {
    /// As for a job that was opened just now.
    pub(crate) fn fresh(document: &Document) -> Self {
        let empty = document.job().faces.is_empty() && document.job().underlay.is_none();
        Self { fit: !empty, ..Self::default() }
    }

    /// The kind that the penetration tool places.
    pub(crate) fn kind(&self) -> PenetrationKind {
        self.penetration_kind.unwrap_or(PenetrationKind::Vent)
    }

    /// Takes a tool up.
    pub(crate) fn take(&mut self, tool: Tool) {
        self.trouble = None;
        self.tool = tool;
        if matches!(tool, Tool::DrawFace | Tool::Picture) && self.view != View::Plan {
            self.view = View::Plan;
            self.fit = true;
        }
    }

    /// Takes up the drawing of walls that a whole roof is raised over: a rectangle, which most houses are.
    pub(crate) fn draw_walls(&mut self) {
        self.take(Tool::DrawFace);
        self.draw(OutlineFor::Roof);
    }

    /// The next outline is drawn for something.
    pub(crate) fn draw(&mut self, what: OutlineFor) {
        (self.outline_for, self.shaped) = (what, what.usual_shape());
    }

    /// After the job changed: what is gone can't be held or shown.
    pub(crate) fn keep_in_step(&mut self, document: &Document) {
        let job = document.job();
        self.selection = self.selection.still_there(job);
        self.group.still_there(job);
        if self.selection != Selection::Nothing {
            self.group = Group::default();
        }
        self.fill.keep_in_step(document.settled());
        self.stringing.keep_in_step(document.settled());
        if let View::FaceOn(face) = self.view
            && job.face(face).is_none()
        {
            self.view = View::Plan;
            self.fit = true;
        }
    }

    /// The camera that shows all.
    pub(crate) fn fitted(&self, document: &Document, size: Vec2) -> Camera {
        let layout = &document.plan().layout;
        let bounds = match self.view {
            View::FaceOn(face) => layout.face(face).map(|(_, face)| face.bounds),
            View::Plan => {
                let faces = layout.roof.faces.iter().filter_map(|face| face.plan.bounds());
                let penetrations = layout.penetrations.iter().filter_map(|p| p.plan.bounds());
                // Without a roof the picture is all there is; while it is handled it is looked at too.
                let job = document.job();
                let underlay =
                    job.underlay.as_ref().filter(|_| job.faces.is_empty() || self.tool == Tool::Picture);
                let picture = underlay.and_then(|underlay| Rect::around(underlay.corners()));
                faces.chain(penetrations).chain(picture).reduce(|a: Rect, b| a.union(&b))
            }
        };
        bounds.map_or_else(Camera::default, |bounds| Camera::fitted(bounds, size))
    }
}
