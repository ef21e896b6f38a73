//! What a wire diagram shows, block by block, in the frame of the block's face: x along the eave to the right, y up the slope, metres.
//! Drawing, tables and tests read the same.

use super::route::Router;
use crate::wire_words::circuit_name;
use chalkcourse_geometry::{DVec2, Length, Rect, dvec2};
use chalkcourse_job::{BlockId, BoxId, Cell, ModuleAt, Resolved};
use chalkcourse_layout::PlacedBlock;
use chalkcourse_plan::Plan;
use chalkcourse_wiring::{Device, Joined, Kind, Wired, face_of_box, ground_path, ground_to_box};
use chalkcourse_words as words;
use std::collections::BTreeMap;

/// The wires of a job as its blocks show them.
#[derive(Clone, Debug, PartialEq)]
pub struct WireDiagram {
    /// Blocks with modules on sound faces, in the order of the job.
    pub blocks: Vec<BlockWires>,
}

/// A block face-on, as the crew stands before it.
#[derive(Clone, Debug, PartialEq)]
pub struct BlockWires {
    /// Its number in the job.
    pub block: BlockId,
    /// Its name.
    pub name: String,
    /// Index of its face.
    pub face: usize,
    /// Around its modules.
    pub bounds: Rect,
    /// Its modules, row by row from the eave.
    pub modules: Vec<DrawnModule>,
    /// Leads from module to module.
    pub links: Vec<DrawnLink>,
    /// Ends of circuits.
    pub ends: Vec<DrawnEnd>,
    /// The bare copper.
    pub ground: DrawnGround,
    /// Junction boxes on the face near the block.
    pub boxes: Vec<DrawnBox>,
}

/// A module.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnModule {
    /// Which.
    pub at: ModuleAt,
    /// Its rectangle.
    pub rect: Rect,
    /// Where its device, or the box at its back, is.
    pub device: DVec2,
    /// Where the drawing has its lug: beside the middle, so that the bare copper lies on no lead.
    pub lug: DVec2,
    /// Index of its circuit among [`chalkcourse_wiring::Wires::circuits`], and its place in the order of plugging, from 1.
    pub circuit: Option<(usize, usize)>,
}

/// Whether a link is whole on a block, or one half of one between two blocks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LinkPart {
    /// Both modules are on the block.
    Whole,
    /// It goes to a module of another block.
    Leaves,
    /// It comes from a module of another block.
    Arrives,
}

/// A lead from one module to the next.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnLink {
    /// Index of its circuit.
    pub circuit: usize,
    /// From this module …
    pub from: ModuleAt,
    /// … to this one.
    pub to: ModuleAt,
    /// Whether all of it is on the block.
    pub part: LinkPart,
    /// Its path on the drawing, in the direction of plugging.
    pub route: Vec<DVec2>,
    /// Its extension leads: places in the kit's list; `None` where none reach.
    pub leads: Option<Vec<usize>>,
    /// What those measure together.
    pub lengths: Length,
}

/// Which end of a circuit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum End {
    /// − of the first module of a string.
    Negative,
    /// + of the last module of a string.
    Positive,
    /// The end of a branch that goes to the box.
    Branch,
    /// The other end of a branch, which a cap closes.
    Closed,
}

/// An end of a circuit.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnEnd {
    /// Index of its circuit.
    pub circuit: usize,
    /// Which end.
    pub end: End,
    /// At this module.
    pub at: ModuleAt,
    /// Its path on the drawing: from the device to beyond the head.
    pub route: Vec<DVec2>,
    /// The box that it goes to, and the way there in metres where it is known.
    pub home: Option<(BoxId, Option<f64>)>,
}

/// The bare copper of a block.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnGround {
    /// Its path on the drawing, past each lug, to beyond the head.
    pub route: Vec<DVec2>,
    /// From the first lug to the head, in metres along the slope.
    pub along: f64,
    /// The box that it goes to, and how far that is from the head.
    pub home: Option<(BoxId, f64)>,
}

/// A junction box on the face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DrawnBox {
    /// Which.
    pub id: BoxId,
    /// Where it is.
    pub at: DVec2,
}

/// A box farther than this from a block, in metres, is told and not drawn.
const NEAR: f64 = 2.0;
/// How far what leaves a block is drawn beyond its head, in metres.
pub(super) const BEYOND: f64 = 0.32;
/// How far the lug of the drawing is from the middle of its module, as a share of it; up the slope only where the device is there too.
const LUG_ASIDE: f64 = -0.22;
const LUG_DOWN: f64 = -0.2;
/// How far below the lugs of a row bare copper is drawn that only goes to where the row begins, as a share of a module's height.
const UNDER_LUGS: f64 = 0.2;

impl WireDiagram {
    /// The wires of a job as laid out.
    pub fn of(job: &Resolved, plan: &Plan) -> Self {
        let sound = |block: &PlacedBlock| {
            plan.layout.roof.faces.get(block.face).is_some_and(|face| face.sound) && block.bounds.is_some()
        };
        let blocks = plan.layout.blocks.iter().filter(|block| sound(block));
        Self { blocks: blocks.filter_map(|block| block_wires(job, plan, block)).collect() }
    }
}

fn block_wires(job: &Resolved, plan: &Plan, block: &PlacedBlock) -> Option<BlockWires> {
    let bounds = block.bounds?;
    let circuits = &plan.wires.circuits;
    let mut in_circuit: BTreeMap<Cell, (usize, usize)> = BTreeMap::new();
    for (nth, circuit) in circuits.iter().enumerate() {
        let here = (1..).zip(&circuit.devices).filter(|(_, device)| device.at.block == block.id);
        in_circuit.extend(here.map(|(place, device)| (device.at.cell, (nth, place))));
    }
    let (along, up) =
        job.kit.wiring.as_ref().map_or((0.5, 0.5), |wiring| (wiring.leads.along, wiring.leads.up));
    let lug_up = if (up - 0.5).abs() < 0.15 { LUG_DOWN } else { 0.0 };
    let modules: Vec<DrawnModule> = block
        .modules
        .iter()
        .map(|module| DrawnModule {
            at: ModuleAt { block: block.id, cell: module.cell },
            rect: module.rect,
            device: module.rect.min + module.rect.size() * dvec2(along, up),
            lug: module.rect.centre() + module.rect.size() * dvec2(LUG_ASIDE, lug_up),
            circuit: in_circuit.get(&module.cell).copied(),
        })
        .collect();
    let size = block.modules.first()?.rect.size();
    let ground = drawn_ground(job, plan, block, size * dvec2(LUG_ASIDE, lug_up), bounds.max.y + BEYOND);
    let mut router = Router::new(&modules, bounds.max.y + BEYOND, up);
    router.keep_off(&ground.route);
    let mut links = Vec::new();
    for (nth, circuit) in circuits.iter().enumerate() {
        links.extend(links_on(block.id, nth, circuit, &router));
    }
    links.iter().for_each(|link| router.keep_off(&link.route));
    let mut ends = Vec::new();
    for (nth, circuit) in circuits.iter().enumerate() {
        ends.extend(ends_on(block.id, nth, circuit, &mut router));
    }
    let on_face = job.boxes.iter().filter_map(|junction| {
        let (face, at) = face_of_box(&plan.layout.roof, junction)?;
        let near = face == block.face && bounds.grown(NEAR).contains(at);
        near.then_some(DrawnBox { id: junction.id, at })
    });
    let boxes = on_face.collect();
    let name = block.name.clone();
    Some(BlockWires { block: block.id, name, face: block.face, bounds, modules, links, ends, ground, boxes })
}

fn links_on(block: BlockId, nth: usize, circuit: &Wired, router: &Router<'_>) -> Vec<DrawnLink> {
    let pairs = circuit.devices.iter().zip(circuit.devices.iter().skip(1));
    let link = |((from, to), joined): ((&Device, &Device), &Joined)| {
        let (part, route) = match (from.at.block == block, to.at.block == block) {
            (true, true) => (LinkPart::Whole, router.link(from.at.cell, to.at.cell, nth)),
            (true, false) => (LinkPart::Leaves, router.leaves(from.at.cell, towards(from, to))),
            (false, true) => (LinkPart::Arrives, router.arrives(to.at.cell, towards(to, from))),
            (false, false) => return None,
        };
        let (leads, lengths) = (joined.leads.clone(), joined.lengths);
        Some(DrawnLink { circuit: nth, from: from.at, to: to.at, part, route, leads, lengths })
    };
    pairs.zip(&circuit.links).filter_map(link).collect()
}

/// Where another module lies: on the same face its direction, else up over the ridge.
fn towards(from: &Device, to: &Device) -> DVec2 {
    if from.face == to.face { to.point - from.point } else { DVec2::Y }
}

fn ends_on(block: BlockId, nth: usize, circuit: &Wired, router: &mut Router<'_>) -> Vec<DrawnEnd> {
    let branch = circuit.kind == Kind::AcDevices;
    let (first, last) = if branch { (End::Closed, End::Branch) } else { (End::Negative, End::Positive) };
    let ways = [circuit.devices.first(), circuit.devices.last()];
    let mut ends = Vec::new();
    for (device, end) in ways.into_iter().zip([first, last]) {
        let Some(device) = device.filter(|device| device.at.block == block) else { continue };
        let (route, home) = match end {
            End::Closed => (router.closed(device.at.cell), None),
            End::Negative => (router.home(device.at.cell), circuit.home.map(|home| (home.to, home.first))),
            End::Positive | End::Branch => {
                (router.home(device.at.cell), circuit.home.map(|home| (home.to, home.last)))
            }
        };
        ends.push(DrawnEnd { circuit: nth, end, at: device.at, route, home });
    }
    ends
}

fn drawn_ground(job: &Resolved, plan: &Plan, block: &PlacedBlock, shift: DVec2, head: f64) -> DrawnGround {
    let path = ground_path(block);
    let along = path.windows(2).map(|pair| pair[0].distance(pair[1])).sum();
    let high = block.modules.first().map_or(0.0, |module| module.rect.size().y);
    let mut route: Vec<DVec2> = once_past_each(&path, UNDER_LUGS * high);
    route.iter_mut().for_each(|point| *point += shift);
    if let Some(last) = route.last_mut() {
        last.y = head;
    }
    let home = ground_to_box(job, &plan.layout, block).map(|(junction, _, way)| (junction.id, way));
    DrawnGround { route, along, home }
}

/// The path with what goes along a row only to begin at its other end led below the lugs of that row, so that each lug is passed once.
fn once_past_each(path: &[DVec2], below: f64) -> Vec<DVec2> {
    let mut route = Vec::new();
    for (nth, point) in path.iter().enumerate() {
        let turns_back = |nth: usize| {
            let Some([before, at, after]) = nth.checked_sub(1).and_then(|from| path.get(from..from + 3))
            else {
                return false;
            };
            (at.x - before.x) * (after.x - at.x) < 0.0
        };
        if turns_back(nth + 1) {
            route.push(*point - dvec2(0.0, below));
            continue;
        }
        if turns_back(nth) {
            route.push(*point - dvec2(0.0, below));
        }
        route.push(*point);
    }
    route
}

/// An end of a circuit as it is labelled: "string 2 +".
pub(crate) fn end_name(circuit: &Wired, end: End) -> String {
    let name = circuit_name(circuit);
    match end {
        End::Negative => format!("{name} \u{2212}"),
        End::Positive => format!("{name} +"),
        End::Branch => name,
        End::Closed => words::diagram::closed_end(&name),
    }
}
