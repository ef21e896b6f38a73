//! Where modules of a face may stand under the job's rules, as shapes for the fitting.

use chalkcourse_geometry::fit::{Allowed, Constraint, FINE};
use chalkcourse_geometry::{DVec2, EdgeKind, EdgeSpan, Polygon, Rect, RoofFace, dvec2};
use chalkcourse_job::{BlockId, Job, PenetrationId};
use chalkcourse_layout::{Layout, PlacedPenetration};
use chalkcourse_words::{pick, tell};
use serde::Serialize;

/// Sides of the polygon that stands for a circle, drawn around it: a clearance of 12 in is 0.4 mm more at most.
const ROUND: usize = 64;

/// What stands in the way on a face, by the names that [`barrier_words`] tells apart.
const SETBACK: &str = "setback";
const FIRE: &str = "fire-room";
const HIP: &str = "fire-hip";
const PATHWAY: &str = "pathway";
const COURSES: &str = "courses";
const PENETRATION: &str = "penetration";
const BLOCK: &str = "block";

/// Room that the fire service keeps on a face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Fire {
    /// Beside a ridge, metres in plan.
    pub(crate) ridge: f64,
    /// Where the pathway runs, if one is kept.
    pub(crate) path: Option<Strip>,
    /// Whether modules are to come on the faces beyond hips and valleys too.
    pub(crate) beyond: bool,
}

/// A strip up the slope that is kept as a pathway: where it begins along the eave and how wide it is, in the face's frame.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Strip {
    pub(crate) from: f64,
    pub(crate) wide: f64,
}

/// Strips of `wide` metres that a pathway may keep to: at both ends of the ridge, and beside what a person can't walk
/// over. None on a face without a ridge, where a pathway runs on the plane beside it.
fn strips(layout: &Layout, face: usize, wide: f64) -> Vec<Strip> {
    let Some((left, right)) = layout.roof.faces.get(face).and_then(ridge_span) else { return Vec::new() };
    let in_the_way = layout
        .penetrations
        .iter()
        .filter(|p| chalkcourse_rules::blocks_a_path(p.kind))
        .filter_map(|p| p.on_face(face))
        .map(|on| (on.bounds.min.x, on.bounds.max.x));
    let beside = in_the_way.flat_map(|(from, to)| [from - wide, to]);
    [left, right - wide]
        .into_iter()
        .chain(beside)
        .filter(|from| *from >= left - 1e-9 && from + wide <= right + 1e-9)
        .map(|from| Strip { from, wide })
        .collect()
}

/// Strips that a pathway may keep to, where the job's rules ask for one.
pub(crate) fn path_strips(job: &Job, layout: &Layout, face: usize) -> impl Iterator<Item = Strip> + use<> {
    let wide = job.rule_book.fire_access.as_ref().map_or(0.0, |book| book.path_width.value.metres());
    let asked = is_checked(job, "fire-paths");
    if asked { strips(layout, face, wide) } else { Vec::new() }.into_iter()
}

/// Where the ridges of a face begin and end along the eave.
fn ridge_span(face: &RoofFace) -> Option<(f64, f64)> {
    let ends = face
        .edges
        .iter()
        .filter(|edge| edge.kind == EdgeKind::Ridge)
        .flat_map(|edge| [edge.frame.0.x, edge.frame.1.x]);
    ends.fold(None, |span: Option<(f64, f64)>, u| Some(span.map_or((u, u), |(a, b)| (a.min(u), b.max(u)))))
}

/// Whether a rule is on in the job's book and applies to the job.
pub(crate) fn is_checked(job: &Job, code: &str) -> bool {
    chalkcourse_rules::RULES.iter().any(|rule| rule.code == code && rule.why_not(job).is_none())
}

/// The room on a face: its outline, less setbacks, clearances, the courses below the ridge, and the blocks that stay.
/// Shapes are in the face's frame. Rounded corners are drawn around, so that what fits here passes the rules.
pub(crate) fn room(
    job: &Job,
    layout: &Layout,
    face: usize,
    stays: &dyn Fn(BlockId) -> bool,
    fire: Fire,
) -> Allowed {
    let mut allowed = Allowed { tolerance: FINE, ..Allowed::default() };
    let Some(on) = layout.roof.faces.get(face).filter(|on| on.sound) else { return allowed };
    allowed.region.push(on.frame.clone());
    let mut block = |id: String, shape: Polygon| allowed.blocked.push(Constraint { id, shape });
    for (index, edge) in on.edges.iter().enumerate() {
        let setback = job.rule_book.setback(edge.kind).metres();
        if edge.kind == EdgeKind::Ridge && fire.ridge > 0.0 {
            let on_slope = fire.ridge * on.plane.pitch.slope_factor();
            block(format!("{FIRE}/{index}"), around_segment(edge.frame.0, edge.frame.1, on_slope));
        }
        if let Some(asked) = beside_hip(job, layout, edge, fire.beyond) {
            let squeeze = |p: DVec2, by: f64| dvec2(p.x, p.y * by);
            let factor = on.plane.pitch.slope_factor();
            let (a, b) = (squeeze(edge.frame.0, 1.0 / factor), squeeze(edge.frame.1, 1.0 / factor));
            block(
                format!("{HIP}/{}/{index}", edge.kind.code()),
                around_segment(a, b, asked).map(|p| squeeze(p, factor)),
            );
        }
        let mut reach = if is_checked(job, "setback") { setback } else { 0.0 };
        if is_checked(job, "valley-hip") {
            reach = reach.max(chalkcourse_rules::flashing_room(job, edge.kind));
        }
        if let Some(rail) = job.kit.base_rail.filter(|_| is_checked(job, "base-rail")) {
            // The rail reaches below the modules, and lies on the deck all along.
            let above_eave = if edge.kind == EdgeKind::Eave { rail.least_above_eave.metres() } else { 0.0 };
            reach = reach.max(job.kit.flashing.base.metres() + above_eave);
        }
        if reach > 0.0 {
            block(
                format!("{SETBACK}/{}/{index}", edge.kind.code()),
                around_segment(edge.frame.0, edge.frame.1, reach),
            );
        }
        if edge.kind == EdgeKind::Ridge && is_checked(job, "ridge-course") {
            let courses = f64::from(job.rule_book.courses_to_ridge.value);
            let exposure = layout.faces.get(face).map_or(0.0, |face| face.courses.exposure);
            let needs = job.kit.flashing.head.metres() + courses * exposure;
            if needs > 0.0 {
                let (a, b) = edge.frame;
                let down = dvec2(0.0, -needs);
                block(format!("{COURSES}/{index}"), Polygon::new(vec![a + down, b + down, b, a]).oriented());
            }
        }
    }
    if is_checked(job, "clearance") {
        for penetration in &layout.penetrations {
            for shape in cleared(penetration, face) {
                block(penetration_name(penetration), shape);
            }
            for strip in penetration.on_face(face).into_iter().flat_map(|on| penetration.strips(on)) {
                block(penetration_name(penetration), rectangle(strip));
            }
        }
    }
    if let Some(book) = job.rule_book.fire_access.as_ref().filter(|_| is_checked(job, "fire-escape")) {
        for penetration in &layout.penetrations {
            let strip = penetration
                .on_face(face)
                .and_then(|on_face| chalkcourse_rules::escape_strip(book, penetration, on_face, on));
            if let Some(strip) = strip {
                block(penetration_name(penetration), rectangle(strip));
            }
        }
    }
    if let Some(strip) = fire.path {
        let low = dvec2(strip.from, on.bounds.min.y - 1.0);
        block(PATHWAY.to_owned(), rectangle(Rect::at(low, dvec2(strip.wide, on.bounds.size().y + 2.0))));
    }
    let apart = job.kit.clearances.between_blocks.metres();
    for placed in layout.blocks.iter().filter(|placed| placed.face == face && stays(placed.id)) {
        for module in &placed.modules {
            block(format!("{BLOCK}/{}", placed.id), rectangle(module.rect.grown(apart)));
        }
    }
    allowed
}

/// What stands in the way of modules on a face.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum What {
    /// The setback from an edge of the face, by its place among the edges.
    Setback {
        /// Which edge.
        edge: usize,
    },
    /// The fire service's room beside a ridge.
    FireRidge {
        /// Which edge.
        edge: usize,
    },
    /// The fire service's room beside a hip or valley with modules beyond it.
    FireHip {
        /// Which edge.
        edge: usize,
    },
    /// The courses that are left below a ridge.
    RidgeCourses {
        /// Which edge.
        edge: usize,
    },
    /// The pathway of the fire service.
    Pathway,
    /// A penetration with its clearance.
    Penetration(PenetrationId),
    /// A block that stays, with the room around it.
    Block(BlockId),
    /// The edge of the face itself.
    Edge {
        /// 0 is the outline, the others are holes.
        ring: usize,
        /// The corner that it starts from.
        side: usize,
    },
}

/// What a name of a shape in the way stands for.
pub(crate) fn what(id: &str) -> What {
    let mut pieces = id.split('/');
    let kind = pieces.next().unwrap_or_default();
    let last = pieces.next_back().unwrap_or_default();
    let edge = last.parse().unwrap_or_default();
    match kind {
        SETBACK => What::Setback { edge },
        FIRE => What::FireRidge { edge },
        HIP => What::FireHip { edge },
        COURSES => What::RidgeCourses { edge },
        PENETRATION => What::Penetration(PenetrationId(last.parse().unwrap_or_default())),
        BLOCK => What::Block(BlockId(last.parse().unwrap_or_default())),
        _ => What::Pathway,
    }
}

/// The room that the fire service asks beside a hip or valley with modules beyond it, metres in plan.
fn beside_hip(job: &Job, layout: &Layout, edge: &EdgeSpan, filled: bool) -> Option<f64> {
    let limit = job.rule_book.fire_access.as_ref()?.hip_or_valley.as_ref()?;
    let beyond = edge.neighbour.filter(|_| matches!(edge.kind, EdgeKind::Hip | EdgeKind::Valley))?;
    let covered =
        filled || layout.blocks.iter().any(|block| block.face == beyond.face && !block.modules.is_empty());
    (covered && is_checked(job, "fire-hip-valley")).then(|| limit.value.metres())
}

/// The name of a penetration among the shapes in the way.
pub(crate) fn penetration_name(penetration: &PlacedPenetration) -> String {
    format!("{PENETRATION}/{}", penetration.id)
}

/// What a name of a shape in the way says to a person.
pub(crate) fn barrier_words(id: &str, layout: &Layout) -> String {
    let mut pieces = id.split('/');
    let (kind, which) = (pieces.next().unwrap_or_default(), pieces.next().unwrap_or_default());
    let named = EdgeKind::ALL.into_iter().find(|edge| edge.code() == which);
    let edge = named.map_or(which, |edge| edge.name());
    match kind {
        SETBACK => tell!("the setback from the {edge}", "el retiro de {edge}"),
        FIRE => {
            pick("the fire service's room beside the ridge", "el espacio de los bomberos junto a la cumbrera")
                .to_owned()
        }
        HIP => {
            tell!("the fire service's room beside the {edge}", "el espacio de los bomberos junto a {edge}")
        }
        PATHWAY => pick("the pathway for the fire service", "el paso para los bomberos").to_owned(),
        COURSES => pick("the courses below the ridge", "las hiladas bajo la cumbrera").to_owned(),
        PENETRATION => {
            let named = layout.penetrations.iter().find(|p| p.id.to_string() == which);
            named.map_or_else(
                || pick("a penetration", "una penetración").to_owned(),
                |p| format!("{} ({})", p.name, p.kind.name()),
            )
        }
        BLOCK => {
            let named = layout.blocks.iter().find(|b| b.id.to_string() == which);
            named.map_or_else(
                || pick("another block", "otro bloque").to_owned(),
                |b| tell!("block {}", "el bloque {}", b.name),
            )
        }
        _ => id.to_owned(),
    }
}

fn rectangle(rect: Rect) -> Polygon {
    Polygon::new(rect.corners().to_vec())
}

/// A penetration with its clearance, as shapes that may overlap: the hull of its outline swept by a disc; for an outline that
/// is not convex the outline itself and all that is near one of its sides.
fn cleared(penetration: &PlacedPenetration, face: usize) -> Vec<Polygon> {
    let Some(on) = penetration.on_face(face) else { return Vec::new() };
    let outline = &on.outline.outer;
    let hull = Polygon::hull(outline);
    if hull.area() - on.outline.area() > 1e-9 {
        let sides = on.outline.sides().map(|(_, _, a, b)| around_segment(a, b, penetration.clearance));
        return sides.chain([Polygon::new(outline.clone())]).collect();
    }
    let disc = disc(penetration.clearance);
    let points: Vec<DVec2> = outline.iter().flat_map(|&p| disc.iter().map(move |&d| p + d)).collect();
    vec![Polygon::hull(&points)]
}

/// All that is nearer than `distance` to a segment: along it exactly, around its ends drawn around.
fn around_segment(a: DVec2, b: DVec2, distance: f64) -> Polygon {
    let along = (b - a).normalize_or(DVec2::X);
    let points: Vec<DVec2> =
        disc(distance).into_iter().map(|d| along.rotate(d)).flat_map(|d| [a + d, b + d]).collect();
    Polygon::hull(&points)
}

/// A polygon around a disc that touches it at the axes.
fn disc(radius: f64) -> Vec<DVec2> {
    let turn = std::f64::consts::TAU / ROUND as f64;
    let out = radius / (turn / 2.0).cos();
    (0..ROUND).map(|i| DVec2::from_angle(turn * (i as f64 + 0.5)) * out).collect()
}
