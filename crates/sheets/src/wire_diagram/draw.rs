//! A block of a wire diagram as a drawing.

use super::content::end_name;
use super::content::{BEYOND, BlockWires, DrawnEnd, DrawnLink, DrawnModule, End, LinkPart};
use super::strokes::{around, arrow, bar, bare_copper, device, extension, junction, lead, lead_piece, lug};
use crate::drawing::{Drawing, Ink, Shape};
use crate::labels::{BELOW, Labels, Wanted};
use crate::wire_words::{box_name, circuit_name, lead_names, long, module_name};
use chalkcourse_geometry::{DVec2, Rect, dvec2};
use chalkcourse_job::{BoxId, Resolved};
use chalkcourse_labels::{Anchor, Weight};
use chalkcourse_plan::Plan;
use chalkcourse_words as words;

/// Room for a block on the sheet, points wide and high.
pub(super) const ROOM: (f32, f32) = (706.0, 285.0);
/// Margins around a block for what is said of its ends, points: beside, below, above.
const BESIDE: f64 = 30.0;
const UNDER: f64 = 20.0;
const OVER: f64 = 40.0;
/// Sides to try for what leaves at the head, above first.
const ABOVE: &[(i8, i8)] = &[(0, 1), (1, 1), (-1, 1), (1, 0), (-1, 0)];
const UNDER_IT: &[(i8, i8)] = &[(0, -1)];
const SMALL: f32 = 6.4;

/// A drawing as far as it is made.
struct Board<'a> {
    job: &'a Resolved,
    plan: &'a Plan,
    wires: &'a BlockWires,
    shapes: Vec<Shape>,
    labels: Labels,
    /// Metres of a point.
    point: f64,
    /// Type for the numbers of modules.
    letter: f32,
}

/// The block face-on: modules with numbers, devices and lugs, leads with arrows, ends, bare copper.
pub(super) fn drawing(job: &Resolved, plan: &Plan, wires: &BlockWires) -> Drawing {
    let mut shown = wires.bounds;
    for near in &wires.boxes {
        shown = shown.union(&Rect { min: near.at - DVec2::splat(0.2), max: near.at + DVec2::splat(0.2) });
    }
    shown.max.y = shown.max.y.max(wires.bounds.max.y + BEYOND);
    let size = shown.size();
    let wide = size.x / (f64::from(ROOM.0) - 2.0 * BESIDE);
    let point = wide.max(size.y / (f64::from(ROOM.1) - UNDER - OVER));
    let bounds =
        Rect { min: shown.min - dvec2(BESIDE, UNDER) * point, max: shown.max + dvec2(BESIDE, OVER) * point };
    let labels = Labels::new(bounds, ROOM);
    let module = wires.modules.first().map_or(1.0, |module| module.rect.size().x / point);
    let letter = (module / 6.5).clamp(4.6, 8.0) as f32;
    let mut board = Board { job, plan, wires, shapes: Vec::new(), labels, point, letter };
    board.modules();
    board.ground();
    wires.links.iter().for_each(|link| board.link(link));
    wires.ends.iter().for_each(|end| board.end(end));
    board.signs();
    board.words();
    let (mut words, beside) = board.labels.placed();
    board.shapes.append(&mut words);
    let title = words::diagram::block_face_on(&words::block_heading(&wires.name));
    Drawing { title, bounds, shapes: board.shapes, beside }
}

impl Board<'_> {
    fn modules(&mut self) {
        for module in &self.wires.modules {
            let ring = module.rect.corners().to_vec();
            let sides = ring.iter().zip(ring.iter().cycle().skip(1));
            sides.for_each(|(a, b)| self.labels.take_line(*a, *b, 0.5, Weight::Ground, None));
            self.shapes.push(Shape::Area { ring, ink: Ink::Paper });
        }
    }

    fn take(&mut self, route: &[DVec2], width: f32) {
        for pair in route.windows(2) {
            self.labels.take_line(pair[0], pair[1], width, Weight::Line, None);
        }
    }

    fn ground(&mut self) {
        let route = &self.wires.ground.route;
        self.shapes.extend(bare_copper(route));
        self.shapes.extend(arrow(route, 0.0, self.point));
        self.take(route, 4.0);
        let home = self.wires.ground.home.map(|(to, way)| (to, Some(way)));
        self.leaving(route, words::diagram::BARE_COPPER.now().to_owned(), home);
    }

    fn link(&mut self, link: &DrawnLink) {
        self.shapes.push(lead(&link.route, link.circuit));
        let back = if link.part == LinkPart::Leaves { 0.0 } else { 3.0 };
        self.shapes.extend(arrow(&link.route, back, self.point));
        self.take(&link.route, 4.0);
        let leads = link.leads.as_ref().map(|leads| lead_names(self.job, leads));
        let said = match leads {
            None => words::diagram::NO_LEAD_REACHES.now().to_owned(),
            Some(names) => names.join(" + "),
        };
        let beyond = match link.part {
            LinkPart::Whole => None,
            LinkPart::Leaves => Some(words::diagram::on_to(&module_name(self.job, link.to, None))),
            LinkPart::Arrives => Some(words::diagram::from(&module_name(self.job, link.from, None))),
        };
        // A lead between two blocks is counted where it leaves.
        let told_here = link.part != LinkPart::Arrives;
        let piece = lead_piece(&link.route, self.point).filter(|_| !said.is_empty() && told_here);
        if let Some(piece) = piece {
            self.shapes.push(extension(piece));
            let grown =
                Rect { min: piece[0].min(piece[1]), max: piece[0].max(piece[1]) }.grown(2.0 * self.point);
            self.labels.take_rect(grown);
        }
        let Some(at) = piece.map(|[a, b]| a.midpoint(b)).or(link.route.last().copied()) else { return };
        let mut texts: Vec<String> = beyond.into_iter().collect();
        if told_here && !said.is_empty() {
            texts.push(said);
        }
        if texts.is_empty() {
            return;
        }
        let whole = texts.join(", ");
        let name = module_name(self.job, link.from, Some(self.wires.block));
        let told = words::diagram::lead_of(&whole, &name);
        self.want(1, around(at, 5.0, self.point), BELOW, vec![whole], told);
    }

    fn end(&mut self, end: &DrawnEnd) {
        let Some(circuit) = self.plan.wires.circuits.get(end.circuit) else { return };
        self.shapes.push(lead(&end.route, end.circuit));
        self.take(&end.route, 4.0);
        let name = end_name(circuit, end.end);
        if end.end == End::Closed {
            self.shapes.extend(bar(&end.route, self.point));
            let Some(at) = end.route.last() else { return };
            let told = format!("{name}: {}", module_name(self.job, end.at, Some(self.wires.block)));
            self.want(2, around(*at, 6.0, self.point), ABOVE, vec![name], told);
            return;
        }
        self.shapes.extend(arrow(&end.route, 0.0, self.point));
        self.leaving(&end.route, name, end.home);
    }

    /// What leaves at the head: its name, and where it goes.
    fn leaving(&mut self, route: &[DVec2], name: String, home: Option<(BoxId, Option<f64>)>) {
        let Some(tip) = route.last() else { return };
        let to = match home {
            None => words::diagram::BOX_NOT_STATED.now().to_owned(),
            Some((to, None)) => words::diagram::to_box(&box_name(self.job, to)),
            Some((to, Some(way))) => {
                words::diagram::to_box_so_far(&box_name(self.job, to), &long(self.job, way))
            }
        };
        let whole = format!("{name} {to}");
        let tip = around(*tip, 6.0, self.point);
        self.want(0, tip, ABOVE, vec![whole.clone(), name], whole);
    }

    fn want(&mut self, rank: u8, thing: Rect, sides: &'static [(i8, i8)], texts: Vec<String>, told: String) {
        let anchor = Anchor::Around { thing, gap: 1.5 * self.point, sides };
        self.labels.want(Wanted { rank, names: None, anchor, texts, size: SMALL, told });
    }

    /// Devices, lugs and boxes, over the lines.
    fn signs(&mut self) {
        for module in &self.wires.modules {
            self.shapes.push(device(module.device, self.point));
            self.shapes.push(lug(module.lug, self.point));
            self.labels.take_rect(around(module.device, 6.0, self.point));
            self.labels.take_rect(around(module.lug, 5.0, self.point));
        }
        for near in &self.wires.boxes {
            self.shapes.extend(junction(near.at, self.point));
            let thing = around(near.at, 12.0, self.point);
            self.labels.take_rect(thing);
            let name = box_name(self.job, near.id).to_owned();
            self.want(0, thing, BELOW, vec![name.clone()], name);
        }
    }

    fn words(&mut self) {
        for module in &self.wires.modules {
            self.module_words(module);
        }
        let bounds = self.wires.bounds;
        let lower = Rect { min: bounds.min, max: dvec2(bounds.max.x, bounds.min.y) };
        let eave = words::diagram::EAVE_SIDE.now().to_owned();
        self.want(3, lower, UNDER_IT, vec![eave.clone()], eave);
    }

    /// Its number at the lower left, its circuit and place in that at the lower right.
    fn module_words(&mut self, module: &DrawnModule) {
        let number = module.at.cell.number();
        let rect = module.rect;
        let mut within = |texts: Vec<String>, at: DVec2, told: String| {
            self.labels.want(Wanted {
                rank: 0,
                names: None,
                anchor: Anchor::Within { rings: vec![rect.corners().to_vec()], home: at },
                texts,
                size: self.letter,
                told,
            });
        };
        let told = module_name(self.job, module.at, None);
        within(vec![number], rect.min, told.clone());
        let lower_right = dvec2(rect.max.x, rect.min.y);
        match module.circuit.and_then(|(nth, place)| Some((self.plan.wires.circuits.get(nth)?, place))) {
            Some((circuit, place)) => {
                let told = words::diagram::module_in(&told, &circuit_name(circuit), &place);
                within(vec![format!("{}\u{b7}{place}", circuit.name)], lower_right, told);
            }
            None if self.plan.wires.circuits.is_empty() => {}
            None => {
                let none = words::diagram::NO_CIRCUIT.now();
                within(vec![none.to_owned()], lower_right, format!("{told}: {none}"));
            }
        }
    }
}
