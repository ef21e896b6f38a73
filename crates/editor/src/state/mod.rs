//! State of the window: the document, the selection, the view, background work, and settings. Only the document is
//! saved with the job.
//!
//! Views read it and request changes by actions; only the editor carries those out. It knows no view, no words and no
//! action.

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

/// The open list.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub(crate) enum List {
    #[default]
    Findings,
    Quantities,
    /// The result of a fill.
    Fill,
}

/// The list row under the pointer: the drawing highlights its place.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) enum Pointed {
    #[default]
    Nothing,
    /// The key of a finding.
    Finding(FindingKey),
    /// The button of a fix, by the key of the finding and the index of the fix.
    Fix(FindingKey, usize),
    /// The number of a part.
    Line(String),
    /// A term of a part.
    Term(String, usize),
    /// A line of what limits a fill of a face, by its text.
    Near(FaceId, Said),
}

/// Preview of a proposal under the pointer, on a face in its frame.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Ghost {
    pub(crate) face: FaceId,
    /// Rectangles of objects.
    pub(crate) rects: Vec<Rect>,
    /// Heights of level lines.
    pub(crate) lines: Vec<f64>,
}

/// Optional items of the display.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Toggle {
    Courses,
    /// The fire service pathways.
    Pathways,
    /// The legend of line styles.
    Lines,
    /// Circuits, their ways home and the bare copper.
    Wires,
    /// The zones of wind suction.
    WindZones,
    /// The side panel.
    SidePanel,
}

/// The courses marked on the drawing while their pane is open: of a face, and of a block on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Courses {
    pub(crate) face: Option<FaceId>,
    pub(crate) block: Option<BlockId>,
}

/// State of the view and the selection.
#[derive(Debug, Default)]
pub(crate) struct State {
    pub(crate) tool: Tool,
    pub(crate) selection: Selection,
    /// The multiple selection, if nothing else is selected.
    pub(crate) group: Group,
    /// The open panes, and where they are.
    pub(crate) desk: PaneTree,
    /// Display settings of the order's table.
    pub(crate) order_table: OrderTable,
    /// Whether the side panel is hidden.
    pub(crate) no_side: bool,
    pub(crate) view: View,
    pub(crate) camera: Camera,
    /// Whether the next frame fits the view to the job.
    pub(crate) fit: bool,
    /// The size that the view was fitted to; `None` after the user moved it.
    pub(crate) fitted_to: Option<Vec2>,
    pub(crate) courses_in_plan: bool,
    /// Whether fire service pathways are drawn.
    pub(crate) show_pathways: bool,
    /// Draw circuits, their ways home and the bare copper.
    pub(crate) show_wires: bool,
    /// Whether zones of wind suction are drawn.
    pub(crate) show_zones: bool,
    /// Whether the legend is shown.
    pub(crate) show_lines: bool,
    /// The kind for the penetration tool; a vent by default.
    pub(crate) penetration_kind: Option<PenetrationKind>,
    /// The part of the house to draw next.
    pub(crate) part: PartPreset,
    /// What the outline being drawn becomes.
    pub(crate) outline_for: OutlineFor,
    /// The shape of the next outline.
    pub(crate) shaped: Shaped,
    /// Settings for raising a whole roof; `None` until the user opens them.
    pub(crate) raise_as: Option<RaiseAs>,
    /// Where a roof could not be raised, in plan.
    pub(crate) trouble: Option<DVec2>,
    /// What is under the pointer on the drawing.
    pub(crate) hover: Selection,
    /// The pointer on the drawing, in plan.
    pub(crate) pointer: Option<DVec2>,
    pub(crate) pointed: Pointed,
    /// Preview of the proposal under the pointer.
    pub(crate) ghost: Option<Ghost>,
    /// The courses of the open pane.
    pub(crate) courses: Option<Courses>,
    /// The part of the roof highlighted by a row of the roof report.
    pub(crate) lit_roof: Option<RoofPart>,
    pub(crate) list: List,
    /// The part of the order whose terms are shown.
    pub(crate) opened_line: Option<String>,
    /// The introductory lesson.
    pub(crate) lesson: Option<Lesson>,
    /// Filling faces.
    pub(crate) fill: Filling,
    /// Fixes of findings.
    pub(crate) fixing: Fixing,
    /// Circuits that are being made, and what is proved of those that were.
    pub(crate) stringing: StringingUp,
    /// The search for room in progress.
    pub(crate) making_room: Option<MakingRoom>,
    /// The picture under the plan.
    pub(crate) pictures: Pictures,
    /// Whether the start page is open; the job is then empty.
    pub(crate) starting: bool,
    /// Whether the homeowner's view is open.
    pub(crate) showing: bool,
    /// The last message.
    pub(crate) said: String,
}

impl State {
    /// The state for a newly opened job.
    pub(crate) fn fresh(document: &Document) -> Self {
        let empty = document.job().faces.is_empty() && document.job().underlay.is_none();
        Self { fit: !empty, ..Self::default() }
    }

    /// The kind for the penetration tool.
    pub(crate) fn kind(&self) -> PenetrationKind {
        self.penetration_kind.unwrap_or(PenetrationKind::Vent)
    }

    /// Switches to a tool.
    pub(crate) fn take(&mut self, tool: Tool) {
        self.trouble = None;
        self.tool = tool;
        if matches!(tool, Tool::DrawFace | Tool::Picture) && self.view != View::Plan {
            self.view = View::Plan;
            self.fit = true;
        }
    }

    /// Starts drawing the walls for a whole roof: by default as a rectangle.
    pub(crate) fn draw_walls(&mut self) {
        self.take(Tool::DrawFace);
        self.draw(OutlineFor::Roof);
    }

    /// Sets what the next outline becomes.
    pub(crate) fn draw(&mut self, what: OutlineFor) {
        (self.outline_for, self.shaped) = (what, what.usual_shape());
    }

    /// After the job changed: drops what no longer exists from selection and display.
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

    /// The camera that shows everything.
    pub(crate) fn fitted(&self, document: &Document, size: Vec2) -> Camera {
        let layout = &document.plan().layout;
        let bounds = match self.view {
            View::FaceOn(face) => layout.face(face).map(|(_, face)| face.bounds),
            View::Plan => {
                let faces = layout.roof.faces.iter().filter_map(|face| face.plan.bounds());
                let penetrations = layout.penetrations.iter().filter_map(|p| p.plan.bounds());
                // Without a roof the picture is all there is; with the picture tool it is included too.
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
