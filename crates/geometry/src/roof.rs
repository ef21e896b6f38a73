use crate::{Defect, Plane, Polygon, Rect, SideId};
use chalkcourse_words::{Say, later as words};
use glam::{DVec2, DVec3};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// The kind of a segment of a face's border.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum EdgeKind {
    /// The low edge, where water leaves.
    Eave,
    /// A free edge that runs up the slope.
    Rake,
    /// The high edge, level: two faces fall away from it, or one does and the other side is open.
    Ridge,
    /// A sloped line that two faces fall away from.
    Hip,
    /// A line that two faces fall towards.
    Valley,
    /// The face dies into a wall.
    WallLine,
    /// A small vertical offset of the deck between two faces, too low for a wall.
    Step,
    /// A line where the pitch changes and water runs on over it.
    PitchChange,
}

impl EdgeKind {
    /// All kinds.
    pub const ALL: [Self; 8] = [
        Self::Eave,
        Self::Rake,
        Self::Ridge,
        Self::Hip,
        Self::Valley,
        Self::WallLine,
        Self::Step,
        Self::PitchChange,
    ];

    /// Its name in the trade.
    pub fn name(self) -> Say {
        match self {
            Self::Eave => words::common::EAVE,
            Self::Rake => words::common::RAKE,
            Self::Ridge => words::common::RIDGE,
            Self::Hip => words::common::HIP,
            Self::Valley => words::common::VALLEY,
            Self::WallLine => words::measures::WALL_LINE,
            Self::Step => words::measures::STEP,
            Self::PitchChange => words::measures::PITCH_CHANGE,
        }
    }

    /// Language-independent code, for files and keys.
    pub fn code(self) -> &'static str {
        match self {
            Self::Eave => "eave",
            Self::Rake => "rake",
            Self::Ridge => "ridge",
            Self::Hip => "hip",
            Self::Valley => "valley",
            Self::WallLine => "wall line",
            Self::Step => "step",
            Self::PitchChange => "pitch change",
        }
    }
}

/// Tolerances, in metres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tolerances {
    /// Corners of one face closer than this coincide.
    pub corner: f64,
    /// Sides of two faces within this distance of each other in plan are one shared edge.
    pub shared: f64,
    /// Sides farther apart than `shared` but within this distance look like a drawing error.
    pub near_miss: f64,
    /// Faces meet if their heights differ by no more than this.
    pub height: f64,
    /// A height difference up to this is a step; above it the lower face has a wall line.
    pub step: f64,
}

impl Default for Tolerances {
    /// 1 mm for corners, 10 mm for shared edges in plan and height, 150 mm for a near miss, 300 mm for a step.
    fn default() -> Self {
        Self { corner: 1e-3, shared: 0.010, near_miss: 0.150, height: 0.010, step: 0.300 }
    }
}

/// One face as drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct FaceInput {
    /// Outline and holes in plan.
    pub outline: Polygon,
    /// The id of each side, by ring and start corner. A side without one is numbered in the order of the outline.
    pub sides: Vec<Vec<SideId>>,
    /// Its plane.
    pub plane: Plane,
    /// Kinds overruled by a person, by ring and start corner.
    pub overruled: BTreeMap<(usize, usize), EdgeKind>,
}

/// The other side of a shared segment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Neighbour {
    /// Index of the other face.
    pub face: usize,
    /// How much higher the other face is, at the start and end of the segment, in metres.
    pub gap: (f64, f64),
}

/// A segment of a face's border with one kind and at most one neighbour, with the face on its left.
#[derive(Clone, Debug, PartialEq)]
pub struct EdgeSpan {
    /// Ring in the outline as drawn.
    pub ring: usize,
    /// Start corner of its side in the outline as drawn.
    pub side: usize,
    /// Id of its side.
    pub id: SideId,
    /// Its kind.
    pub kind: EdgeKind,
    /// Whether a person overruled the kind.
    pub overruled: bool,
    /// Start and end in plan.
    pub plan: (DVec2, DVec2),
    /// Start and end in the face's frame.
    pub frame: (DVec2, DVec2),
    /// True length on the slope, in metres.
    pub length: f64,
    /// What is on the other side.
    pub neighbour: Option<Neighbour>,
}

impl EdgeSpan {
    /// Unit normal in the frame, from the edge into the face.
    pub fn inward(&self) -> DVec2 {
        (self.frame.1 - self.frame.0).perp().normalize_or_zero()
    }
}

/// A face assembled into its roof.
#[derive(Clone, Debug, PartialEq)]
pub struct RoofFace {
    /// Its plane and frame.
    pub plane: Plane,
    /// Outline in plan, counter-clockwise, holes clockwise.
    pub plan: Polygon,
    /// The same in the face's frame.
    pub frame: Polygon,
    /// Bounding box of `frame`.
    pub bounds: Rect,
    /// In m².
    pub plan_area: f64,
    /// In m², on the slope.
    pub slope_area: f64,
    /// All of its border. Empty for a face with defects.
    pub edges: Vec<EdgeSpan>,
    /// False for a face that intersects itself or has no area: nothing can be placed on it yet.
    pub sound: bool,
}

impl RoofFace {
    /// The id of a ring: the least of its sides. `None` for a face with defects.
    pub fn ring_id(&self, ring: usize) -> Option<SideId> {
        self.edges.iter().filter(|span| span.ring == ring).map(|span| span.id).min()
    }
}

/// An inconsistency of the roof.
#[derive(Clone, Debug, PartialEq)]
pub enum RoofProblem {
    /// The outline of a face is invalid.
    BadFace {
        /// Index of the face.
        face: usize,
        /// Its defect.
        defect: Defect,
    },
    /// Two faces meet in plan but not in height.
    HeightGap {
        /// The lower face.
        lower: usize,
        /// The upper face.
        upper: usize,
        /// The largest gap along the shared edge, in metres.
        gap: f64,
        /// The segment in plan.
        along: (DVec2, DVec2),
    },
    /// Two sides run alongside each other and nearly meet.
    NearMiss {
        /// One face.
        face: usize,
        /// The other.
        other: usize,
        /// Distance, in metres.
        gap: f64,
        /// The segment in plan.
        along: (DVec2, DVec2),
    },
    /// Two faces overlap in plan at the same height, so that the area counts twice.
    Overlap {
        /// One face.
        face: usize,
        /// The other.
        other: usize,
        /// Plan area, in m².
        area: f64,
        /// A point in it.
        at: DVec2,
    },
}

/// One line of the roof, counted once even if two faces share it.
#[derive(Clone, Debug, PartialEq)]
pub struct RoofLine {
    /// Its kind.
    pub kind: EdgeKind,
    /// True length, in metres.
    pub length: f64,
    /// Start and end in space.
    pub space: (DVec3, DVec3),
    /// The face it is listed for.
    pub face: usize,
    /// The face on the other side.
    pub other: Option<usize>,
}

/// The assembled roof.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Roof {
    /// In the order of the input.
    pub faces: Vec<RoofFace>,
    /// Inconsistencies.
    pub problems: Vec<RoofProblem>,
}

impl Roof {
    /// Assembles faces. Total: an invalid face is reported as a problem and kept as unsound, so that the others still work.
    pub fn assemble(inputs: &[FaceInput], tolerances: Tolerances) -> Self {
        let mut problems = Vec::new();
        let mut faces: Vec<RoofFace> = inputs
            .iter()
            .enumerate()
            .map(|(index, input)| {
                let defects = input.outline.defects(tolerances.corner);
                let sound = defects.is_empty();
                problems
                    .extend(defects.into_iter().map(|defect| RoofProblem::BadFace { face: index, defect }));
                let plan = input.outline.oriented();
                let frame = plan.map(|p| input.plane.to_frame(p));
                let plan_area = if sound { plan.area() } else { 0.0 };
                RoofFace {
                    plane: input.plane,
                    bounds: frame.bounds().unwrap_or(Rect { min: DVec2::ZERO, max: DVec2::ZERO }),
                    frame,
                    plan,
                    plan_area,
                    slope_area: plan_area * input.plane.pitch.slope_factor(),
                    edges: Vec::new(),
                    sound,
                }
            })
            .collect();
        let meetings = find_meetings(&faces, tolerances, &mut problems);
        for (index, input) in inputs.iter().enumerate() {
            if faces[index].sound {
                faces[index].edges = spans(index, input, &faces, &meetings[index], tolerances);
            }
        }
        find_height_gaps(&faces, tolerances, &mut problems);
        find_overlaps(&faces, tolerances, &mut problems);
        Self { faces, problems }
    }

    /// Every line once. A line between two faces is listed for the one with the lower index.
    pub fn lines(&self) -> Vec<RoofLine> {
        let mut lines = Vec::new();
        for (index, face) in self.faces.iter().enumerate() {
            for span in &face.edges {
                let shared = matches!(
                    span.kind,
                    EdgeKind::Ridge
                        | EdgeKind::Hip
                        | EdgeKind::Valley
                        | EdgeKind::Step
                        | EdgeKind::PitchChange
                );
                let other = span.neighbour.map(|n| n.face);
                if shared && other.is_some_and(|other| other < index) {
                    continue;
                }
                lines.push(RoofLine {
                    kind: span.kind,
                    length: span.length,
                    space: (face.plane.to_space(span.frame.0), face.plane.to_space(span.frame.1)),
                    face: index,
                    other,
                });
            }
        }
        lines
    }

    /// Total plan area of the sound faces, in m².
    pub fn plan_area(&self) -> f64 {
        self.faces.iter().map(|face| face.plan_area).sum()
    }

    /// Total area on the slope of the sound faces, in m².
    pub fn slope_area(&self) -> f64 {
        self.faces.iter().map(|face| face.slope_area).sum()
    }
}

/// Where a side of one face runs along a side of another.
#[derive(Clone, Copy)]
struct Meeting {
    ring: usize,
    side: usize,
    from: f64,
    to: f64,
    other: usize,
}

struct Side {
    face: usize,
    ring: usize,
    index: usize,
    a: DVec2,
    b: DVec2,
}

/// For each face, the segments it shares, as fractions of its (counter-clockwise) sides.
fn find_meetings(
    faces: &[RoofFace],
    tolerances: Tolerances,
    problems: &mut Vec<RoofProblem>,
) -> Vec<Vec<Meeting>> {
    let mut meetings = vec![Vec::new(); faces.len()];
    let mut sides: Vec<Side> = faces
        .iter()
        .enumerate()
        .filter(|(_, face)| face.sound)
        .flat_map(|(index, face)| {
            face.plan.sides().map(move |(ring, side, a, b)| Side { face: index, ring, index: side, a, b })
        })
        .collect();
    sides.sort_by(|p, q| p.a.x.min(p.b.x).total_cmp(&q.a.x.min(q.b.x)));
    for (i, one) in sides.iter().enumerate() {
        let right = one.a.x.max(one.b.x) + tolerances.near_miss;
        for two in sides[i + 1..].iter().take_while(|two| two.a.x.min(two.b.x) <= right) {
            let apart_in_y = one.a.y.min(one.b.y) > two.a.y.max(two.b.y) + tolerances.near_miss
                || two.a.y.min(two.b.y) > one.a.y.max(one.b.y) + tolerances.near_miss;
            if one.face == two.face || apart_in_y {
                continue;
            }
            let Some((along, apart)) = run_along(one, two, tolerances.near_miss) else { continue };
            if apart <= tolerances.shared {
                if let Some((from, to)) = long_enough(one, along, tolerances.shared) {
                    meetings[one.face].push(Meeting {
                        ring: one.ring,
                        side: one.index,
                        from,
                        to,
                        other: two.face,
                    });
                    if let Some((back, _)) = run_along(two, one, tolerances.near_miss) {
                        meetings[two.face].push(Meeting {
                            ring: two.ring,
                            side: two.index,
                            from: back.0,
                            to: back.1,
                            other: one.face,
                        });
                    }
                }
            } else if let Some((from, to)) = long_enough(one, along, tolerances.near_miss * 2.0) {
                problems.push(RoofProblem::NearMiss {
                    face: one.face.min(two.face),
                    other: one.face.max(two.face),
                    gap: apart,
                    along: (one.a.lerp(one.b, from), one.a.lerp(one.b, to)),
                });
            }
        }
    }
    meetings
}

fn long_enough(side: &Side, along: (f64, f64), least: f64) -> Option<(f64, f64)> {
    ((along.1 - along.0) * side.a.distance(side.b) > least).then_some(along)
}

/// Where `two` runs along `one` in the opposite direction within `reach`: fractions of `one`, and the largest distance there.
fn run_along(one: &Side, two: &Side, reach: f64) -> Option<((f64, f64), f64)> {
    let along = one.b - one.a;
    let length = along.length();
    let unit = along / length;
    // Faces are to the left of their sides, so the two run along a shared edge in opposite directions.
    let against = (two.b - two.a).normalize();
    if unit.dot(against) > -0.9 {
        return None;
    }
    let fraction = |p: DVec2| (p - one.a).dot(unit) / length;
    let away = |p: DVec2| (p - one.a).perp_dot(unit);
    let (end, start) = (fraction(two.a), fraction(two.b));
    let (from, to) = (start.max(0.0), end.min(1.0));
    if to <= from || end <= start {
        return None;
    }
    let (away_end, away_start) = (away(two.a), away(two.b));
    let at = |f: f64| away_start + (away_end - away_start) * (f - start) / (end - start);
    let apart = at(from).abs().max(at(to).abs());
    (apart <= reach).then_some(((from, to), apart))
}

fn spans(
    index: usize,
    input: &FaceInput,
    faces: &[RoofFace],
    meetings: &[Meeting],
    tolerances: Tolerances,
) -> Vec<EdgeSpan> {
    let face = &faces[index];
    let mut spans = Vec::new();
    for (ring, side, a, b) in face.plan.sides() {
        let length = a.distance(b);
        let drawn_side = side_as_drawn(&input.outline, &face.plan, ring, side);
        let mut shared: Vec<Meeting> =
            meetings.iter().filter(|m| m.ring == ring && m.side == side).copied().collect();
        shared.sort_by(|p, q| p.from.total_cmp(&q.from).then(p.other.cmp(&q.other)));
        let mut push = |from: f64, to: f64, other: Option<usize>| {
            let plan = (a.lerp(b, from), a.lerp(b, to));
            let neighbour = other.map(|other| {
                let gap = |p| faces[other].plane.height_at(p) - face.plane.height_at(p);
                Neighbour { face: other, gap: (gap(plan.0), gap(plan.1)) }
            });
            let frame = (face.plane.to_frame(plan.0), face.plane.to_frame(plan.1));
            let overruled = input.overruled.get(&(ring, drawn_side)).copied();
            let worked_out = || match neighbour {
                Some(neighbour) => shared_kind(face, faces, plan, neighbour, ring > 0, tolerances),
                None => free_kind(&face.plane, plan, ring > 0),
            };
            spans.push(EdgeSpan {
                ring,
                side: drawn_side,
                id: side_id(input, ring, drawn_side),
                kind: overruled.unwrap_or_else(worked_out),
                overruled: overruled.is_some(),
                plan,
                frame,
                length: frame.0.distance(frame.1),
                neighbour,
            });
        };
        let mut done = 0.0;
        for meeting in shared {
            let from = meeting.from.max(done);
            if (meeting.to - from) * length <= tolerances.shared {
                continue;
            }
            // Snap to the side's own ends within the tolerance.
            let from = if from * length <= tolerances.shared { 0.0 } else { from };
            let to = if (1.0 - meeting.to) * length <= tolerances.shared { 1.0 } else { meeting.to };
            if (from - done) * length > tolerances.shared {
                push(done, from, None);
                push(from, to, Some(meeting.other));
            } else {
                push(done, to, Some(meeting.other));
            }
            done = to;
        }
        if done < 1.0 {
            push(done, 1.0, None);
        }
    }
    spans
}

fn side_id(input: &FaceInput, ring: usize, side: usize) -> SideId {
    let before: usize = input.outline.rings().take(ring).map(<[DVec2]>::len).sum();
    let numbered = u32::try_from(before + side).map_or(SideId(u32::MAX), SideId);
    input.sides.get(ring).and_then(|sides| sides.get(side)).copied().unwrap_or(numbered)
}

/// The start corner, in the drawn outline, of a side of the oriented outline, which may run the other way.
fn side_as_drawn(drawn: &Polygon, oriented: &Polygon, ring: usize, side: usize) -> usize {
    let pick =
        |polygon: &Polygon| polygon.rings().nth(ring).map_or((0, None), |r| (r.len(), r.first().copied()));
    let ((corners, first_drawn), (_, first_oriented)) = (pick(drawn), pick(oriented));
    if first_drawn == first_oriented { side } else { (2 * corners - 2 - side) % corners }
}

/// Direction of fall at an edge, looking from the edge into the face: 1 falls away, −1 rises, 0 level.
fn fall(plane: &Plane, inward: DVec2) -> f64 {
    let fall = inward.dot(plane.downslope.unit());
    // sin 5°: hand-drawn sides are seldom level to the degree
    if plane.pitch.slope() < 1e-6 || fall.abs() < 0.087 { 0.0 } else { fall.signum() }
}

/// The kind of a side with no neighbour at its height.
pub(crate) fn free_kind(plane: &Plane, plan: (DVec2, DVec2), of_hole: bool) -> EdgeKind {
    if of_hole {
        return EdgeKind::WallLine;
    }
    let inward = (plan.1 - plan.0).perp().normalize_or_zero();
    let down = inward.dot(plane.downslope.unit());
    if plane.pitch.slope() < 1e-6 {
        return EdgeKind::Eave;
    }
    // Within 45° of level at the low side, water drips there; within 10° of level at the high side, it is the top.
    if down < -std::f64::consts::FRAC_1_SQRT_2 {
        EdgeKind::Eave
    } else if down > 0.985 {
        EdgeKind::Ridge
    } else {
        EdgeKind::Rake
    }
}

fn shared_kind(
    face: &RoofFace,
    faces: &[RoofFace],
    plan: (DVec2, DVec2),
    neighbour: Neighbour,
    of_hole: bool,
    tolerances: Tolerances,
) -> EdgeKind {
    let (start, end) = neighbour.gap;
    let greatest = start.abs().max(end.abs());
    if greatest > tolerances.step {
        // The middle decides which is higher if the gap starts at zero.
        return if start + end > 0.0 { EdgeKind::WallLine } else { free_kind(&face.plane, plan, of_hole) };
    }
    if greatest > tolerances.height {
        return EdgeKind::Step;
    }
    let inward = (plan.1 - plan.0).perp().normalize_or_zero();
    let level = |plane: &Plane| {
        let rise = plane.height_at(plan.1) - plane.height_at(plan.0);
        rise.abs() <= plan.0.distance(plan.1) * 0.0175 + tolerances.height
    };
    match (fall(&face.plane, inward), fall(&faces[neighbour.face].plane, -inward)) {
        (here, there) if here > 0.0 && there > 0.0 || here + there > 0.0 => {
            if level(&face.plane) {
                EdgeKind::Ridge
            } else {
                EdgeKind::Hip
            }
        }
        (here, there) if here < 0.0 && there < 0.0 || here + there < 0.0 => EdgeKind::Valley,
        _ => EdgeKind::PitchChange,
    }
}

fn find_height_gaps(faces: &[RoofFace], tolerances: Tolerances, problems: &mut Vec<RoofProblem>) {
    for (index, face) in faces.iter().enumerate() {
        for span in &face.edges {
            let Some(neighbour) = span.neighbour else { continue };
            let (start, end) = neighbour.gap;
            let gap = if start.abs() > end.abs() { start } else { end };
            let crosses =
                start.abs() > tolerances.height && end.abs() > tolerances.height && start * end < 0.0;
            let small = gap.abs() > tolerances.height && gap.abs() <= tolerances.step;
            if neighbour.face > index && (crosses || small) && !span.overruled {
                let (lower, upper) =
                    if gap > 0.0 { (index, neighbour.face) } else { (neighbour.face, index) };
                problems.push(RoofProblem::HeightGap { lower, upper, gap: gap.abs(), along: span.plan });
            }
        }
    }
}

/// Overlapping faces count twice unless one is a storey above the other.
fn find_overlaps(faces: &[RoofFace], tolerances: Tolerances, problems: &mut Vec<RoofProblem>) {
    let bounds: Vec<Option<Rect>> =
        faces.iter().map(|f| if f.sound { f.plan.bounds() } else { None }).collect();
    let mut order: Vec<usize> = (0..faces.len()).filter(|&i| bounds[i].is_some()).collect();
    let left = |i: usize| bounds[i].map_or(0.0, |b| b.min.x);
    order.sort_by(|&i, &j| left(i).total_cmp(&left(j)));
    for (at, &i) in order.iter().enumerate() {
        let Some(one) = bounds[i] else { continue };
        for &j in order[at + 1..].iter().take_while(|&&j| left(j) < one.max.x - tolerances.shared) {
            let Some(two) = bounds[j] else { continue };
            if one.overlap(&two).min_element() <= tolerances.shared * 2.0 {
                continue;
            }
            for common in faces[i].plan.intersection(&faces[j].plan) {
                // A sliver along a shared edge is drawing tolerance, not an overlap.
                let length: f64 = common.sides().map(|(_, _, a, b)| a.distance(b)).sum();
                let middle = common.triangles().first().map(|t| (t[0] + t[1] + t[2]) / 3.0);
                let (Some(middle), true) = (middle, common.area() > tolerances.shared * length) else {
                    continue;
                };
                let apart = (faces[i].plane.height_at(middle) - faces[j].plane.height_at(middle)).abs();
                if apart < 2.0 {
                    let (face, other) = (i.min(j), i.max(j));
                    problems.push(RoofProblem::Overlap { face, other, area: common.area(), at: middle });
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Azimuth, Pitch};
    use glam::{dvec2, dvec3};

    fn face(points: &[(f64, f64)], rise: f64, downslope: f64, datum: (f64, f64, f64)) -> FaceInput {
        FaceInput {
            outline: Polygon::new(points.iter().map(|&(x, y)| dvec2(x, y)).collect()),
            plane: Plane {
                datum: dvec3(datum.0, datum.1, datum.2),
                pitch: Pitch::from_rise_in_12(rise).unwrap(),
                downslope: Azimuth::from_degrees(downslope),
            },
            sides: Vec::new(),
            overruled: BTreeMap::new(),
        }
    }

    fn kinds(roof: &Roof, face: usize) -> Vec<EdgeKind> {
        roof.faces[face].edges.iter().map(|e| e.kind).collect()
    }

    fn gable() -> Vec<FaceInput> {
        vec![
            face(&[(0.0, 0.0), (10.0, 0.0), (10.0, 4.0), (0.0, 4.0)], 6.0, 180.0, (0.0, 0.0, 3.0)),
            face(&[(0.0, 8.0), (10.0, 8.0), (10.0, 4.0), (0.0, 4.0)], 6.0, 0.0, (10.0, 8.0, 3.0)),
        ]
    }

    #[test]
    fn a_gable() {
        let roof = Roof::assemble(&gable(), Tolerances::default());
        assert_eq!(roof.problems, vec![]);
        use EdgeKind::{Eave, Rake, Ridge};
        assert_eq!(kinds(&roof, 0), vec![Eave, Rake, Ridge, Rake]);
        let mut other = kinds(&roof, 1);
        other.sort();
        assert_eq!(other, vec![Eave, Rake, Rake, Ridge]);
        let ridge: f64 = roof.lines().iter().filter(|l| l.kind == Ridge).map(|l| l.length).sum();
        assert!((ridge - 10.0).abs() < 1e-9);
    }

    #[test]
    fn a_clockwise_face_keeps_its_sides() {
        // The second face of the gable is drawn clockwise; side 2 is (10,4)→(0,4), its ridge.
        let mut inputs = gable();
        inputs[1].overruled.insert((0, 2), EdgeKind::WallLine);
        let roof = Roof::assemble(&inputs, Tolerances::default());
        let wall = roof.faces[1].edges.iter().find(|e| e.kind == EdgeKind::WallLine).unwrap();
        assert!((wall.plan.0.y - 4.0).abs() < 1e-12 && (wall.plan.1.y - 4.0).abs() < 1e-12);
        assert_eq!(wall.side, 2);
    }

    #[test]
    fn hip_and_valley() {
        // Two faces that meet along x = y, falling away from it, then towards it.
        let away = [
            face(&[(0.0, 0.0), (8.0, 0.0), (4.0, 4.0)], 6.0, 180.0, (0.0, 0.0, 3.0)),
            face(&[(0.0, 0.0), (4.0, 4.0), (0.0, 8.0)], 6.0, 270.0, (0.0, 0.0, 3.0)),
        ];
        let roof = Roof::assemble(&away, Tolerances::default());
        assert!(kinds(&roof, 0).contains(&EdgeKind::Hip), "{:?}", kinds(&roof, 0));
        let towards = [
            face(&[(0.0, 0.0), (8.0, 0.0), (4.0, 4.0)], 6.0, 0.0, (0.0, 0.0, 5.0)),
            face(&[(0.0, 0.0), (4.0, 4.0), (0.0, 8.0)], 6.0, 90.0, (0.0, 0.0, 5.0)),
        ];
        let roof = Roof::assemble(&towards, Tolerances::default());
        assert!(kinds(&roof, 0).contains(&EdgeKind::Valley), "{:?}", kinds(&roof, 0));
    }

    #[test]
    fn near_misses_are_reported_with_the_gap() {
        let mut inputs = gable();
        inputs[1].plane.datum.z += 0.08;
        let roof = Roof::assemble(&inputs, Tolerances::default());
        assert!(matches!(
            roof.problems[..],
            [RoofProblem::HeightGap { lower: 0, upper: 1, gap, .. }] if (gap - 0.08).abs() < 1e-9
        ));
        assert!(kinds(&roof, 0).contains(&EdgeKind::Step));

        let mut inputs = gable();
        for p in &mut inputs[1].outline.outer {
            p.y += 0.06;
        }
        let roof = Roof::assemble(&inputs, Tolerances::default());
        assert!(
            matches!(roof.problems[..], [RoofProblem::NearMiss { gap, .. }] if (gap - 0.06).abs() < 1e-9)
        );
    }

    #[test]
    fn a_wall_and_an_overlap() {
        let mut inputs = gable();
        inputs[1].plane.datum.z += 2.5;
        let roof = Roof::assemble(&inputs, Tolerances::default());
        assert_eq!(roof.problems, vec![]);
        assert_eq!(kinds(&roof, 0)[2], EdgeKind::WallLine);
        assert!(kinds(&roof, 1).contains(&EdgeKind::Ridge));

        let mut inputs = gable();
        for p in &mut inputs[1].outline.outer {
            p.y -= 1.0;
        }
        let roof = Roof::assemble(&inputs, Tolerances::default());
        assert!(
            roof.problems
                .iter()
                .any(|p| matches!(p, RoofProblem::Overlap { area, .. } if (area - 10.0).abs() < 1e-6))
        );
    }

    #[test]
    fn part_of_a_side_is_shared() {
        let inputs = [
            face(&[(0.0, 0.0), (10.0, 0.0), (10.0, 4.0), (0.0, 4.0)], 6.0, 180.0, (0.0, 0.0, 3.0)),
            face(&[(3.0, 4.0), (6.0, 4.0), (6.0, 8.0), (3.0, 8.0)], 6.0, 0.0, (3.0, 8.0, 3.0)),
        ];
        let roof = Roof::assemble(&inputs, Tolerances::default());
        let top: Vec<_> = roof.faces[0]
            .edges
            .iter()
            .filter(|e| e.side == 2)
            .map(|e| (e.length, e.neighbour.is_some()))
            .collect();
        assert_eq!(top.len(), 3, "{top:?}");
        assert!((top[1].0 - 3.0).abs() < 1e-9 && top[1].1 && !top[0].1 && !top[2].1);
    }

    #[test]
    fn an_invalid_face_leaves_the_others_intact() {
        let mut inputs = gable();
        inputs[0].outline.outer.swap(1, 2);
        let roof = Roof::assemble(&inputs, Tolerances::default());
        assert!(!roof.faces[0].sound && roof.faces[1].sound);
        assert!(matches!(
            roof.problems[..],
            [RoofProblem::BadFace { face: 0, defect: Defect::Crosses { .. } }]
        ));
        assert!(roof.slope_area() > 0.0);
    }
}
