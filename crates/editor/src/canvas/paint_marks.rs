//! Overlays on the roof: highlights, handles, dimensions, guides, the outline being drawn, and the frame.

use super::Canvas;
use super::brush::Brush;
use super::gesture::Gesture;
use super::hit::{HANDLES, block_rect, corners, handle_at, row_end_at, row_rect};
use super::labelling::{LEFT, ON_IT, OVER_IT, Of, RIGHT_BELOW, Show, Words, around, point, rank, thing};
use super::measure::measure;
use super::paint_roof::home;
use super::paint_zones::inside;
use crate::state::{Dimension, Pointed, State, View};
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::{DVec2, Length, RoofFace, Units};
use chalkcourse_job::{BlockId, Cell, FaceId, FindingKey, PenetrationId};
use chalkcourse_labels::{Anchor, How, Weight};
use chalkcourse_layout::Layout;
use chalkcourse_rules::Severity;
use chalkcourse_takeoff::MeasuredShape;
use egui::{Align2, CornerRadius, Pos2, Rect, Shape, Stroke, StrokeKind, Vec2};

/// Highlights the place of the list row under the pointer.
pub(super) fn lights(brush: &Brush, document: &Document, state: &State) {
    let plan = document.plan();
    match &state.pointed {
        Pointed::Nothing | Pointed::Near(..) => {}
        Pointed::Finding(key) | Pointed::Fix(key, _) => {
            if let Some(finding) = plan.findings.iter().find(|f| f.key == *key) {
                light_finding(brush, document, &finding.place);
            }
        }
        Pointed::Line(number) | Pointed::Term(number, _) => {
            let Some(line) = plan.takeoff.lines.iter().find(|l| l.number == *number) else { return };
            let only = if let Pointed::Term(_, index) = &state.pointed { Some(*index) } else { None };
            for (_, term) in line.terms.iter().enumerate().filter(|(i, _)| only.is_none_or(|only| only == *i))
            {
                for place in term.places.iter() {
                    light_place(brush, document, place);
                }
            }
        }
    }
}

fn light_finding(brush: &Brush, document: &Document, place: &chalkcourse_rules::Location) {
    let layout = &document.plan().layout;
    let stroke = Stroke::new(4.0, brush.palette.light);
    let block = place.block.and_then(|id| layout.block(id));
    if let Some(placed) = block
        && let Some(face) = layout.roof.faces.get(placed.face).filter(|_| brush.space.shows(placed.face))
    {
        for module in placed.modules.iter().filter(|m| place.cells.contains(&m.cell)) {
            let points = module.rect.corners().map(|c| brush.space.screen_from_frame(&face.plane, c));
            brush.painter.add(Shape::closed_line(points.to_vec(), stroke));
        }
    }
    if let Some(penetration) = place.penetration.and_then(|id| layout.penetration(id)) {
        brush.outline(&penetration.plan, stroke, None);
    }
    match place.shape.as_slice() {
        [] => {
            if let Some((_, face)) = place.face.and_then(|id| layout.face(id))
                && place.block.is_none()
                && place.penetration.is_none()
            {
                brush.outline(&face.plan, stroke, None);
            }
        }
        [point] => {
            brush.painter.circle_stroke(brush.space.screen_from_plan(*point), 10.0, stroke);
        }
        points => {
            let mut points: Vec<Pos2> = points.iter().map(|&p| brush.space.screen_from_plan(p)).collect();
            if points.len() > 2 {
                points.extend(points.first().copied());
            }
            brush.painter.add(Shape::line(points, stroke));
        }
    }
}

fn light_place(brush: &Brush, document: &Document, place: &chalkcourse_takeoff::MeasuredPlace) {
    let layout = &document.plan().layout;
    // A quantity for the whole job has no place of its own.
    let Some((index, face)) = place.face.and_then(|id| layout.face(id)) else { return };
    if !brush.space.shows(index) {
        return;
    }
    let on_screen = |p: DVec2| brush.space.screen_from_frame(&face.plane, p);
    let stroke = Stroke::new(3.5, brush.palette.light);
    let area = |rects: &[chalkcourse_geometry::Rect], width: f32| {
        for rect in rects {
            let points = rect.corners().map(on_screen).to_vec();
            let fill = theme::faint(brush.palette.light, if width > 0.0 { 40 } else { 110 });
            brush.painter.add(Shape::convex_polygon(points, fill, Stroke::new(width, brush.palette.light)));
        }
    };
    match &place.shape {
        MeasuredShape::Point(p) => {
            brush.painter.circle(
                on_screen(*p),
                4.5,
                brush.palette.light,
                Stroke::new(1.5, brush.palette.ground),
            );
        }
        MeasuredShape::Path(points) => {
            brush.painter.add(Shape::line(points.iter().map(|&p| on_screen(p)).collect(), stroke));
        }
        MeasuredShape::Rect(rect) => area(std::slice::from_ref(rect), 2.0),
        MeasuredShape::Area(rects) => area(rects, 0.0),
        MeasuredShape::Outlines(outlines) => {
            for outline in outlines {
                for triangle in outline.triangles() {
                    let points = triangle.map(on_screen).to_vec();
                    let fill = theme::faint(brush.palette.light, 70);
                    brush.painter.add(Shape::convex_polygon(points, fill, Stroke::NONE));
                }
                brush.outline(&outline.map(|p| face.plane.to_plan(p)), stroke, None);
            }
        }
        MeasuredShape::Whole => {}
    }
}

/// Handles and dimensions of the selection.
pub(super) fn held(brush: &Brush, document: &Document, state: &State) {
    let job = document.job();
    let layout = &document.plan().layout;
    if let Some(block) = state.selection.block().and_then(|id| job.block(id))
        && let Some((index, face)) = layout.face(block.face)
        && brush.space.shows(index)
    {
        let bounds = block_rect(job, block);
        dimensions(brush, block.id, face, bounds, job.units);
        for side in HANDLES {
            let at = handle_at(&brush.space, &face.plane, bounds, side);
            handle(brush, at, false);
        }
        for row in (0..block.rows.min(200)).filter(|_| block.rows > 1) {
            let at = row_end_at(&brush.space, &face.plane, row_rect(job, block, row));
            let grip = Rect::from_center_size(at, Vec2::new(6.0, 14.0) * brush.space.grown());
            brush.keep_off_rect(grip, Weight::Solid);
            brush.painter.rect(
                grip,
                CornerRadius::same(3),
                brush.palette.panel,
                Stroke::new(1.5, brush.palette.accent),
                StrokeKind::Middle,
            );
        }
    }
    let on_face =
        matches!(state.selection, Selection::Face(_) | Selection::Side { .. } | Selection::Corner { .. });
    if let Some(face) = state.selection.face(job).filter(|_| on_face && state.view == View::Plan) {
        for (ring, corner, p) in corners(job, face) {
            let this = state.selection == Selection::Corner { face, ring, corner };
            handle(brush, brush.space.screen_from_plan(p), this);
        }
    }
}

pub(super) fn handle(brush: &Brush, at: Pos2, held: bool) {
    let p = brush.palette;
    let (fill, radius) = if held { (p.accent, theme::HANDLE + 1.5) } else { (p.panel, theme::HANDLE) };
    let radius = radius * brush.space.grown();
    brush.keep_off_rect(Rect::from_center_size(at, Vec2::splat(radius * 2.0)), Weight::Solid);
    brush.painter.circle(at, radius, fill, Stroke::new(1.6, p.accent));
}

/// Dimensions from a block to the border of its face: eave, top, and both sides.
fn dimensions(
    brush: &Brush,
    block: BlockId,
    face: &RoofFace,
    bounds: chalkcourse_geometry::Rect,
    units: Units,
) {
    let color = brush.palette.accent;
    for (nth, (toward, from, to)) in super::dimensions::of_block(face, bounds).into_iter().enumerate() {
        let ends = [from, to].map(|end| brush.space.screen_from_frame(&face.plane, end));
        if !measure(brush, ends, color, Some(thing::dimension(nth))) {
            continue;
        }
        let show = brush.small(&Length::from_metres(from.distance(to)).show(units), color);
        let [from, to] = ends.map(point);
        brush.say(Words {
            names: Some(thing::dimension(nth)),
            of: Of::Dimension(Dimension::Block(block, toward)),
            ..Words::of(
                rank::DIMENSION,
                Anchor::Along { from, to, beside: &[0.0, 1.0, -1.0], gap: 3.0, turned: false, home: 0.5 },
                vec![(show.clone(), How::Home), (show.clone(), How::Overhanging), (show, How::Leader(60.0))],
                color,
            )
        });
    }
}

/// The sign of the worst finding at each object that has one: at the first affected module of a block, at a
/// penetration, a point, a face. Objects close together on the screen share one sign.
pub(super) fn signs(brush: &Brush, document: &Document) {
    let layout = &document.plan().layout;
    let still = document.plan_before().unwrap_or(document.plan());
    let mut signs: Vec<Sign> = Vec::new();
    for finding in document.plan().findings.iter().filter(|it| it.waived.is_none()) {
        let Some(thing) = thing_of(&finding.place) else { continue };
        let Some(anchor) = place_of_sign(brush, layout, &still.layout, thing) else { continue };
        let at = match &anchor {
            Anchor::Around { thing, .. } => thing.centre(),
            Anchor::Within { home, .. } | Anchor::Fixed(home) => *home,
            Anchor::Along { from, .. } => *from,
        };
        match signs.iter_mut().find(|sign| sign.thing == thing || sign.at.distance(at) < ONE_PLACE) {
            Some(sign) => {
                sign.severity = sign.severity.min(finding.severity);
                sign.keys.push(finding.key.clone());
            }
            None => {
                signs.push(Sign {
                    thing,
                    at,
                    anchor,
                    severity: finding.severity,
                    keys: vec![finding.key.clone()],
                });
            }
        }
    }
    for Sign { anchor, severity, keys, .. } in signs {
        let show = Show::Sign(severity);
        let tries = [0.0, 24.0, 60.0, 140.0]
            .map(|far| (show.clone(), if far == 0.0 { How::Home } else { How::Leader(far) }));
        brush.say(Words {
            of: Of::Findings(keys),
            ..Words::of(rank::FINDING, anchor, tries.to_vec(), theme::severity(brush.palette, severity))
        });
    }
}

/// Objects closer than this on the screen share one sign, in points.
const ONE_PLACE: f64 = 20.0;

/// The sign for the findings at one place.
struct Sign {
    thing: Thing,
    at: DVec2,
    anchor: Anchor,
    severity: Severity,
    keys: Vec<FindingKey>,
}

/// The object of a finding.
#[derive(Clone, Copy, PartialEq)]
enum Thing {
    Penetration(PenetrationId),
    Module(BlockId, Option<Cell>),
    Spot(DVec2),
    Face(FaceId),
}

fn thing_of(place: &chalkcourse_rules::Location) -> Option<Thing> {
    let middle = place.shape.iter().sum::<DVec2>() / place.shape.len().max(1) as f64;
    place
        .penetration
        .map(Thing::Penetration)
        .or_else(|| place.block.map(|block| Thing::Module(block, place.cells.first().copied())))
        .or_else(|| (!place.shape.is_empty()).then_some(Thing::Spot(middle)))
        .or_else(|| place.face.map(Thing::Face))
}

/// The position of an object's sign; `None` if it is not shown.
fn place_of_sign(brush: &Brush, layout: &Layout, still: &Layout, thing: Thing) -> Option<Anchor> {
    let space = &brush.space;
    let seen = |at: Rect| space.area.intersects(at);
    let at_point = |at: Pos2| seen(Rect::from_pos(at)).then(|| around(Rect::from_pos(at), -9.0, ON_IT));
    match thing {
        Thing::Penetration(id) => {
            let it = layout.penetration(id)?;
            if space.face_on.is_some_and(|(face, _)| it.on_face(face).is_none()) {
                return None;
            }
            let corners = it.plan.bounds()?.corners().map(|corner| space.screen_from_plan(corner));
            let there = Rect::from_points(&corners);
            seen(there).then(|| around(there, 2.0, LEFT))
        }
        Thing::Module(id, cell) => {
            let block = layout.block(id).filter(|block| space.shows(block.face))?;
            let plane = &layout.roof.faces.get(block.face)?.plane;
            let module = block.modules.iter().find(|it| Some(it.cell) == cell).or(block.modules.first())?;
            at_point(space.screen_from_frame(plane, module.rect.centre()))
        }
        Thing::Spot(at) => match space.face_on {
            Some((face, _)) if !layout.roof.faces.get(face)?.plan.contains(at) => None,
            _ => at_point(space.screen_from_plan(at)),
        },
        Thing::Face(id) => {
            let (index, face) = layout.face(id).filter(|(index, _)| space.shows(*index))?;
            let at = home(face, index, still).map_or_else(|| inside(&face.plan), |at| face.plane.to_plan(at));
            let on_screen = |ring: &[DVec2]| ring.iter().map(|&p| point(space.screen_from_plan(p))).collect();
            let rings: Vec<Vec<DVec2>> = face.plan.rings().map(on_screen).collect();
            let corners: Vec<Pos2> = face.plan.outer.iter().map(|&p| space.screen_from_plan(p)).collect();
            let home = point(space.screen_from_plan(at));
            seen(Rect::from_points(&corners)).then_some(Anchor::Within { rings, home })
        }
    }
}

/// The guide lines that show why something stopped where it did.
pub(super) fn guides(brush: &Brush, state: &State, own: &Canvas) {
    let color = brush.palette.guide;
    for guide in &own.drag.guides {
        let (a, b) = (brush.space.screen_from_plan(guide.line.0), brush.space.screen_from_plan(guide.line.1));
        brush.styled(a, b, color, (1.2, &[6.0], &[3.0]));
        if (a - b).length() < 1.0 {
            brush.painter.circle_stroke(a, 8.0, Stroke::new(1.5, color));
        }
        let next = own.tools.of(state.tool).next_point();
        let corner = matches!(own.drag.gesture, Some(Gesture::MoveCorner { .. }));
        let anchor = if let Some(next) = next.or(state.pointer.filter(|_| corner)) {
            around(Rect::from_pos(brush.space.screen_from_plan(next)), 12.0, RIGHT_BELOW)
        } else if (b - a).x.abs() > (b - a).y.abs() {
            around(Rect::from_pos(seen_end(brush, a, b, |at| at.x)), 6.0, LEFT)
        } else {
            around(Rect::from_pos(seen_end(brush, a, b, |at| at.y)), 6.0, OVER_IT)
        };
        brush.say_at(rank::TYPED, anchor, &guide.words, color);
    }
}

/// The end of a line that is first by some measure, clamped to the drawing.
fn seen_end(brush: &Brush, a: Pos2, b: Pos2, by: impl Fn(Pos2) -> f32) -> Pos2 {
    let seen = brush.space.area.shrink(16.0);
    (if by(a) < by(b) { a } else { b }).clamp(seen.min, seen.max)
}

/// Scale bar, north arrow, and view name.
pub(super) fn frame(brush: &Brush, document: &Document, state: &State) {
    let area = brush.space.area.shrink(14.0);
    let p = brush.palette;
    let units = document.job().units;
    if let Some(length) = scale_length(brush.space.camera.scale, units) {
        let width = (length.metres() * brush.space.camera.scale) as f32;
        let at = area.left_bottom() + Vec2::new(2.0, -4.0);
        let stroke = Stroke::new(2.0, p.quiet);
        let end = at + Vec2::new(width, 0.0);
        brush.painter.line_segment([at, end], stroke);
        for tick in [at, end] {
            brush.painter.line_segment([tick, tick - Vec2::new(0.0, 7.0)], stroke);
        }
        brush.label(
            at + Vec2::new(width / 2.0, -8.0),
            Align2::CENTER_BOTTOM,
            &length.show(units),
            theme::size::SMALL,
            p.quiet,
        );
    }
    match state.view {
        View::Plan => {
            let centre = area.right_top() + Vec2::new(-12.0, 22.0);
            let points = [
                centre + Vec2::new(0.0, -16.0),
                centre + Vec2::new(7.0, 10.0),
                centre + Vec2::new(0.0, 5.0),
                centre + Vec2::new(-7.0, 10.0),
            ];
            // A dart is not convex, but its two halves are.
            for half in [[0, 1, 2], [0, 2, 3]] {
                brush.painter.add(Shape::convex_polygon(
                    half.map(|i| points[i]).to_vec(),
                    p.quiet,
                    Stroke::NONE,
                ));
            }
            brush.label(
                centre + Vec2::new(0.0, 14.0),
                Align2::CENTER_TOP,
                text::NORTH,
                theme::size::SMALL,
                p.quiet,
            );
        }
        View::FaceOn(face) => {
            if let Some(face) = document.job().face(face) {
                brush.label(
                    area.left_top(),
                    Align2::LEFT_TOP,
                    &text::face_on(&face.name),
                    theme::size::SMALL,
                    p.text,
                );
            }
        }
    }
}

/// A round length that is 60 to 150 points long on the screen.
fn scale_length(scale: f64, units: Units) -> Option<Length> {
    let steps = [1.0, 2.0, 5.0];
    let unit = match units {
        Units::FeetInches if scale > 400.0 => Length::from_inches(1.0).metres(),
        Units::FeetInches => Length::from_feet(1.0).metres(),
        Units::Metric => 0.001,
    };
    (0..7)
        .flat_map(|power| steps.map(|step| step * 10f64.powi(power) * unit))
        .find(|length| length * scale >= 60.0)
        .map(Length::from_metres)
}
