use crate::arranging::MakingRoom;
use crate::canvas::{
    Draft, Gesture, Group, Guide, Handling, OutlineFor, Paths, Preview, Shaped, Shown, Typing, WindZones,
    Zones,
};
use crate::commands::Tool;
use crate::filling::Filling;
use crate::fixing::Fixing;
use crate::lesson::Lesson;
use crate::panels::{Costs, Filter};
use crate::pictures::Pictures;
use crate::solid_view::SolidView;
use crate::view::{Camera, View};
use crate::windows::Windows;
use crate::{Document, Selection};
use chalkcourse_geometry::{DVec2, Rect};
use chalkcourse_job::{FaceId, FindingKey, PartKind, PenetrationKind};
use chalkcourse_plan::RaiseAs;
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
#[derive(Clone, Debug, Default, PartialEq, Eq)]
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
    /// A line of what holds a fill of a face back, by its words.
    Near(FaceId, String),
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

/// A waiver that is being written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Waiving {
    pub(crate) key: FindingKey,
    pub(crate) reason: String,
    /// Its form came into sight once.
    pub(crate) shown: bool,
}

/// What a person sees and holds. Nothing of it is saved with the job.
#[derive(Debug, Default)]
pub(crate) struct Desk {
    pub(crate) tool: Tool,
    pub(crate) selection: Selection,
    /// Several things that are held, while nothing else is.
    pub(crate) group: Group,
    pub(crate) view: View,
    pub(crate) camera: Camera,
    /// The next frame fits the view to what there is.
    pub(crate) fit: bool,
    /// The room that the view was fitted to; none once the person moved it.
    pub(crate) fitted_to: Option<Vec2>,
    pub(crate) courses_in_plan: bool,
    pub(crate) penetration_kind: Option<PenetrationKind>,
    /// What part of the house is drawn.
    pub(crate) part_kind: Option<PartKind>,
    /// Where a roof could not be raised, in plan.
    pub(crate) trouble: Option<DVec2>,
    /// What the outline that is being drawn becomes.
    pub(crate) outline_for: OutlineFor,
    /// What the corners of the next outline make.
    pub(crate) shaped: Shaped,
    /// How a whole roof is raised; none until a person looked at it.
    pub(crate) raise_as: Option<RaiseAs>,
    /// The outline that is being drawn.
    pub(crate) draft: Option<Draft>,
    /// What is being dragged.
    pub(crate) gesture: Option<Gesture>,
    /// Why the pointer is where it is.
    pub(crate) guides: Vec<Guide>,
    /// The zones where modules may not stand, kept for the next frame.
    pub(crate) zones: Option<Zones>,
    /// The labels of the drawing as they stand in this frame.
    pub(crate) shown: Vec<Shown>,
    /// The dimension that is being typed over.
    pub(crate) typing: Option<Typing>,
    /// The measuring tape, in plan.
    pub(crate) tape: Option<(DVec2, DVec2)>,
    /// The picture under the plan.
    pub(crate) pictures: Pictures,
    /// What is half done with it.
    pub(crate) handling: Handling,
    /// What is under the pointer on the drawing.
    pub(crate) hover: Selection,
    /// Where the pointer is on the drawing, in plan.
    pub(crate) pointer: Option<DVec2>,
    pub(crate) pointed: Pointed,
    /// What a proposal under the pointer would make.
    pub(crate) ghost: Option<Ghost>,
    pub(crate) list: List,
    /// The part whose terms are shown.
    pub(crate) opened_line: Option<String>,
    pub(crate) waiving: Option<Waiving>,
    /// A first job, step by step.
    pub(crate) lesson: Option<Lesson>,
    /// Filling faces.
    pub(crate) fill: Filling,
    /// What clears the findings that are looked at.
    pub(crate) fixing: Fixing,
    /// The search for room that is going on.
    pub(crate) making_room: Option<MakingRoom>,
    /// Which findings are listed.
    pub(crate) filter: Filter,
    /// Draw the pathways for the fire service.
    pub(crate) show_pathways: bool,
    /// The pathways, kept for the next frame.
    pub(crate) paths: Option<Paths>,
    /// Tell what the lines mean.
    pub(crate) show_lines: bool,
    /// Draw the zones of wind suction.
    pub(crate) show_zones: bool,
    /// Those zones, kept for the next frame.
    pub(crate) wind_zones: Option<WindZones>,
    /// What a fix would do, kept while its button is pointed at.
    pub(crate) preview: Option<Preview>,
    /// Totals by number of modules, kept for the next frame.
    pub(crate) costs: Option<Costs>,
    /// The house in space.
    pub(crate) solid: SolidView,
    /// The view for the homeowner is open.
    pub(crate) showing: bool,
    pub(crate) windows: Windows,
    /// The last thing that the program had to say.
    pub(crate) said: String,
}

impl Desk {
    /// As for a job that was opened just now.
    pub(crate) fn fresh(document: &Document) -> Self {
        let empty = document.job().faces.is_empty() && document.job().underlay.is_none();
        Self { fit: !empty, ..Self::default() }
    }

    /// The kind that the penetration tool places.
    pub(crate) fn kind(&self) -> PenetrationKind {
        self.penetration_kind.unwrap_or(PenetrationKind::Vent)
    }

    /// The part of the house that is drawn next.
    pub(crate) fn part_kind(&self) -> PartKind {
        self.part_kind.unwrap_or(PartKind::Dormer)
    }

    /// Drops what is half done: a drag, a face that is being drawn, the tape.
    pub(crate) fn let_go(&mut self) {
        self.draft = None;
        self.trouble = None;
        self.gesture = None;
        self.guides.clear();
        self.tape = None;
        self.handling.points.clear();
        self.handling.wrong.clear();
    }

    /// Takes a tool up.
    pub(crate) fn take(&mut self, tool: Tool) {
        self.let_go();
        self.tool = tool;
        let not_here = tool != Tool::Select && self.view == View::Solid;
        if matches!(tool, Tool::DrawFace | Tool::Picture) && self.view != View::Plan || not_here {
            self.view = View::Plan;
            self.fit = true;
        }
    }

    /// Takes up the drawing of walls that a whole roof is raised over: a rectangle, which most houses are.
    pub(crate) fn draw_walls(&mut self) {
        self.take(Tool::DrawFace);
        self.outline_for = OutlineFor::Roof;
        self.shaped = Shaped::Rectangle;
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
            View::Plan | View::Solid => {
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
