use chalkcourse_geometry::{DVec2, EdgeSpan, Length, Plane, Polygon, Rect, Roof, RoofFace, dvec2};
use chalkcourse_job::{Limit, Penetration, PenetrationId, PenetrationKind, RuleBook, Shape};
use std::collections::BTreeMap;

/// A placed penetration.
#[derive(Clone, Debug, PartialEq)]
pub struct PlacedPenetration {
    /// Its id in the job.
    pub id: PenetrationId,
    /// Its name.
    pub name: String,
    /// Its kind.
    pub kind: PenetrationKind,
    /// Index of the face that its centre is on; `None` if it is off all faces.
    pub home: Option<usize>,
    /// Its outline in plan.
    pub plan: Polygon,
    /// Clearance to modules, in metres on the slope.
    pub clearance: f64,
    /// Clearance above it, straight up the slope from its upper end.
    pub above: f64,
    /// Clearance below it, straight down the slope from its lower end.
    pub below: f64,
    /// The faces it intersects, with its outline in each one's frame; the home face first.
    pub on: Vec<OnFace>,
}

/// A penetration in the frame of one face.
#[derive(Clone, Debug, PartialEq)]
pub struct OnFace {
    /// Index of the face.
    pub face: usize,
    /// Outline in the face's frame.
    pub outline: Polygon,
    /// Bounding box of the outline.
    pub bounds: Rect,
}

/// Corners of a circle, as drawn and measured.
const CIRCLE_CORNERS: usize = 24;

/// A shape on the deck of a face, relative to its centre: u along the eave, v up the slope, metres.
pub fn outline_on_deck(shape: &Shape) -> Polygon {
    match shape {
        Shape::Circle { diameter } => Polygon::circle(DVec2::ZERO, diameter.metres() / 2.0, CIRCLE_CORNERS),
        Shape::Rectangle { along, up } => {
            let size = dvec2(along.metres(), up.metres());
            Polygon::new(Rect::at(-size / 2.0, size).corners().to_vec())
        }
        Shape::Polygon { corners } => Polygon::new(corners.clone()),
    }
}

impl PlacedPenetration {
    pub(crate) fn of(penetration: &Penetration, book: &RuleBook, roof: &Roof) -> Self {
        let at = penetration.at;
        // Of stacked faces, the top one: that is where a person stands.
        let home = (0..roof.faces.len())
            .filter(|&index| roof.faces[index].sound && roof.faces[index].plan.contains(at))
            .max_by(|&a, &b| {
                let height = |index: usize| roof.faces[index].plane.height_at(at);
                height(a).total_cmp(&height(b))
            });
        let deck = outline_on_deck(&penetration.shape);
        let plan = match home.and_then(|index| roof.faces.get(index)) {
            Some(face) => on_plan(&deck, &face.plane, at),
            None => deck.map(|p| at + p),
        };
        let bounds = plan.bounds();
        let own = penetration.clearance.map(Length::metres);
        let clearance = own.unwrap_or_else(|| book.clearance(penetration.kind).metres());
        let by_side = |limits: &BTreeMap<PenetrationKind, Limit<Length>>| {
            // A clearance set by a person applies on all sides.
            let limit = limits.get(&penetration.kind).filter(|_| own.is_none());
            limit.map_or(clearance, |limit| limit.value.metres().max(clearance))
        };
        let mut on: Vec<OnFace> = roof
            .faces
            .iter()
            .enumerate()
            .filter(|(_, face)| face.sound)
            .filter(|(index, face)| {
                let near = match (bounds, face.plan.bounds()) {
                    (Some(a), Some(b)) => a.overlap(&b).min_element() > 0.0,
                    _ => false,
                };
                Some(*index) == home || near && overlaps(&plan, &face.plan)
            })
            .filter_map(|(index, face)| {
                let outline = plan.map(|p| face.plane.to_frame(p)).oriented();
                Some(OnFace { face: index, bounds: outline.bounds()?, outline })
            })
            .collect();
        on.sort_by_key(|on| Some(on.face) != home);
        Self {
            id: penetration.id,
            name: penetration.name.clone(),
            kind: penetration.kind,
            home,
            plan,
            clearance,
            above: by_side(&book.clearances_above),
            below: by_side(&book.clearances_below),
            on,
        }
    }

    /// The strips straight above and below it that are kept free of modules on a face, where they exceed the all-round clearance:
    /// rectangles in the face's frame, as wide as it is along the eave.
    pub fn strips(&self, on: &OnFace) -> impl Iterator<Item = Rect> {
        let Rect { min, max } = on.bounds;
        let above = Rect { min: dvec2(min.x, max.y), max: dvec2(max.x, max.y + self.above) };
        let below = Rect { min: dvec2(min.x, min.y - self.below), max: dvec2(max.x, min.y) };
        let more = [(self.above, above), (self.below, below)];
        let clearance = self.clearance;
        more.into_iter().filter(move |(reach, _)| *reach > clearance).map(|(_, strip)| strip)
    }

    /// Its outline in the frame of a face, if it intersects that face.
    pub fn on_face(&self, face: usize) -> Option<&OnFace> {
        self.on.iter().find(|on| on.face == face)
    }
}

/// Where an outline crosses the border of its face.
#[derive(Clone, Copy, Debug)]
pub struct EdgeOverlap<'r> {
    /// The border span.
    pub span: &'r EdgeSpan,
    /// How far beyond it, metres on the slope.
    pub by: f64,
}

/// The border span that an outline in the frame of a face crosses farthest, by more than `met` metres; `None` if it is inside the
/// face, or entirely off it.
pub fn reaches_over<'r>(face: &'r RoofFace, outline: &Polygon, met: f64) -> Option<EdgeOverlap<'r>> {
    let crosses = |span: &&EdgeSpan| {
        let (a, b) = span.frame;
        outline.contains(a)
            || outline.contains(b)
            || outline.sides().any(|(_, _, c, d)| cross((a, b), (c, d)))
    };
    let over = face.edges.iter().filter(crosses).map(|span| {
        let beyond = outline.outer.iter().map(|&p| (span.frame.0 - p).dot(span.inward()));
        EdgeOverlap { span, by: beyond.fold(0.0, f64::max) }
    });
    over.filter(|over| over.by > met).max_by(|a, b| a.by.total_cmp(&b.by))
}

/// Whether two segments properly cross, each from strictly one side of the other to the other side.
fn cross((a, b): (DVec2, DVec2), (c, d): (DVec2, DVec2)) -> bool {
    let side = |p: DVec2, q: DVec2, r: DVec2| (q - p).perp_dot(r - p);
    side(a, b, c) * side(a, b, d) < 0.0 && side(c, d, a) * side(c, d, b) < 0.0
}

fn on_plan(deck: &Polygon, plane: &Plane, at: DVec2) -> Polygon {
    let middle = plane.to_frame(at);
    deck.map(|p| plane.to_plan(middle + p))
}

/// Whether a small shape and a face overlap: a vertex of one inside the other, or crossing sides.
fn overlaps(shape: &Polygon, face: &Polygon) -> bool {
    if shape.outer.iter().any(|&p| face.contains(p)) || face.outer.iter().any(|&p| shape.contains(p)) {
        return true;
    }
    shape.sides().any(|(_, _, a, b)| face.sides().any(|(_, _, c, d)| cross((a, b), (c, d))))
}
