use crate::counted::Counted;
use crate::cutlist::CutList;
use crate::memo::Memo;
use crate::{LineTerm, MeasuredPlace, MeasuredShape, Spot};
use chalkcourse_geometry::{DVec2, Rect, dvec2};
use chalkcourse_job::{Amount, FaceId, Kit, Measure, Part, Resolved, Unit};
use chalkcourse_layout::{CornerKind, Layout, PlacedBlock, Run, RunKind};
use chalkcourse_rules::uplift::{MoreFasteners, more_fasteners};
use chalkcourse_wiring::{Wires, ground_path};
use std::cell::OnceCell;
use std::collections::BTreeMap;
use std::sync::Arc;

mod chimney;
mod membrane;
mod roof;
mod wires;

/// Head flashing that overlaps a module by less than this, in metres, does not count for it.
const CRUMB: f64 = 5e-4;
/// Ends of roof lines within this distance, in metres, are one corner; anything this near a chimney's walls is on them.
const NEAR: f64 = 0.01;

/// The measures of a job as laid out. Each is taken once, when a part first needs it, and then shared.
pub(crate) struct Measures<'a> {
    pub(crate) job: &'a Resolved,
    pub(crate) layout: &'a Layout,
    kit: &'a Kit,
    /// Which faces are re-roofed.
    pub(crate) covered: Vec<bool>,
    /// Which faces belong to a cricket, which is covered in metal.
    crickets: Vec<bool>,
    known: BTreeMap<Measure, Counted>,
    parts: BTreeMap<&'a str, Counted>,
    cuts: BTreeMap<&'a str, (Arc<Vec<MeasuredPlace>>, Arc<CutList>)>,
    wind: OnceCell<Vec<MoreFasteners>>,
    wires: &'a Wires,
}

/// A block with the index of its face.
struct On<'a> {
    block: &'a PlacedBlock,
    face: Option<FaceId>,
}

impl On<'_> {
    fn place(&self, spot: Spot, amount: f64, shape: MeasuredShape) -> MeasuredPlace {
        MeasuredPlace { face: self.face, block: Some(self.block.id), name: None, spot, amount, shape }
    }

    fn one(&self, spot: Spot, shape: MeasuredShape) -> MeasuredPlace {
        self.place(spot, 1.0, shape)
    }
}

impl<'a> Measures<'a> {
    pub(crate) fn of(job: &'a Resolved, layout: &'a Layout, wires: &'a Wires) -> Self {
        Self {
            job,
            layout,
            kit: &job.kit,
            covered: roof::covered(job, layout),
            crickets: chimney::cricket_faces(job),
            known: BTreeMap::new(),
            parts: BTreeMap::new(),
            cuts: BTreeMap::new(),
            wind: OnceCell::new(),
            wires,
        }
    }

    pub(crate) fn counted(&mut self, measure: &Measure, memo: &mut Memo) -> Counted {
        let none = || Counted::new(measure.unit(self.kit), Vec::new());
        match measure {
            // A part listed later or unknown gives none: kit files with such a reference are refused, and nothing is counted
            // twice.
            Measure::Part(number) => return self.parts.get(number.as_str()).cloned().unwrap_or_else(none),
            Measure::Joints(number) => {
                return self
                    .cuts
                    .get(number.as_str())
                    .map_or_else(none, |(runs, list)| Counted::new(Unit::Each, list.joints(runs)));
            }
            // A part's own sticks; `take_off` asks for those of other parts through `sticks`.
            Measure::Sticks(_) => return none(),
            _ => {}
        }
        if let Some(known) = self.known.get(measure) {
            return known.clone();
        }
        let of_roof = roof::is_of_roof(measure);
        let counted = match memo.roof_measure(measure).filter(|_| of_roof) {
            Some(known) => known,
            None => {
                let mut places = Vec::new();
                if of_roof || roof::is_of_deck(measure) {
                    self.measure_roof(measure, &mut places);
                } else if wires::is_of_wires(measure) {
                    self.measure_wires(measure, &mut places);
                } else if matches!(measure, Measure::Around | Measure::ArrayMembrane) {
                    self.array_membrane(*measure == Measure::ArrayMembrane, &mut places);
                } else {
                    for block in self.layout.blocks.iter().filter(|block| !block.modules.is_empty()) {
                        self.measure(measure, block, &mut places);
                    }
                }
                let counted = Counted::new(measure.unit(self.kit), places);
                if of_roof {
                    memo.keep_roof_measure(measure, &counted);
                }
                counted
            }
        };
        self.known.insert(measure.clone(), counted.clone());
        counted
    }

    /// The modules where wind calls for more fasteners; calculated on first use.
    pub(crate) fn more_fasteners(&self) -> &[MoreFasteners] {
        self.wind.get_or_init(|| more_fasteners(self.job, self.layout))
    }

    /// The sticks of a part in another part's cut list.
    pub(crate) fn sticks(&self, of: &str, part: &str) -> Option<Counted> {
        let (runs, list) = self.cuts.get(of)?;
        let other = self.kit.part(of)?.needs.iter().find_map(|term| match &term.each {
            Amount::Cut(sticks) => sticks.also.iter().position(|other| other.part == part),
            _ => None,
        })?;
        Some(Counted::new(Unit::Each, list.sticks_by_run(other + 1, runs)))
    }

    /// Stores the need of a part, with its places, if a later part counts it.
    pub(crate) fn remember(&mut self, part: &'a Part, terms: &[LineTerm]) {
        for term in terms {
            if let Some(cuts) = &term.cuts {
                self.cuts.insert(&part.number, (Arc::clone(&term.places), Arc::clone(cuts)));
            }
        }
        let counted_below = |term: &chalkcourse_job::Term| matches!(&term.of, Measure::Part(number) if *number == part.number);
        if !self.kit.parts.iter().any(|other| other.needs.iter().any(counted_below)) {
            return;
        }
        let same = |term: &LineTerm| matches!(term.each, Amount::Count(count) if count == 1.0);
        let counted = match terms {
            // Most parts map one to one to what they count: no need to copy the places.
            [term] if same(term) => {
                Counted { unit: part.unit, places: Arc::clone(&term.places), total: term.need }
            }
            _ => {
                let shared = |term: &LineTerm| -> Vec<MeasuredPlace> {
                    term.places
                        .iter()
                        .zip(term.shares())
                        .map(|(place, amount)| MeasuredPlace { amount, ..place.clone() })
                        .collect()
                };
                let mut places: Vec<MeasuredPlace> = terms.iter().flat_map(shared).collect();
                // Half a sheet in each of two places makes one sheet, with the nails of a whole one.
                let all: f64 = places.iter().map(|place| place.amount).sum();
                if part.unit == Unit::Each && all > 0.0 {
                    let up = crate::amount::whole(all) / all;
                    places.iter_mut().for_each(|place| place.amount *= up);
                }
                Counted::new(part.unit, places)
            }
        };
        self.parts.insert(&part.number, counted);
    }

    fn measure(&self, measure: &Measure, block: &PlacedBlock, places: &mut Vec<MeasuredPlace>) {
        let on = On { block, face: self.layout.faces.get(block.face).map(|face| face.id) };
        let on = &on;
        let one = |spot, shape| on.one(spot, shape);
        match measure {
            Measure::Module => places.extend(
                block
                    .modules
                    .iter()
                    .map(|module| one(Spot::Module(module.cell), MeasuredShape::Rect(module.rect))),
            ),
            Measure::Block => places.extend(block.bounds.map(|b| one(Spot::Block, MeasuredShape::Rect(b)))),
            Measure::Row => {
                places
                    .extend(block.strings.iter().map(|run| MeasuredPlace { amount: 1.0, ..along(on, run) }));
            }
            Measure::Seam => places.extend(seams(on, false).map(|(_, place)| place)),
            Measure::BaseRail => {
                for kind in [RunKind::BaseRail, RunKind::OpenBottom] {
                    places.extend(block.runs_of(kind).map(|run| along(on, run)));
                }
            }
            Measure::Side => places.extend(sides(block).map(|run| along(on, run))),
            Measure::SideCourse => {
                let Some(face) = self.layout.faces.get(block.face) else { return };
                places.extend(sides(block).map(|run| {
                    let crossed = face.courses.crossed(run.from.y, run.to.y);
                    MeasuredPlace { amount: crossed as f64 + 1.0, ..along(on, run) }
                }));
            }
            Measure::Head => places.extend(block.runs_of(RunKind::Head).map(|run| along(on, run))),
            Measure::HeadModule => places.extend(
                under_head(block).map(|(cell, rect)| one(Spot::Module(cell), MeasuredShape::Rect(rect))),
            ),
            Measure::HeadSupport => {
                for run in block.runs_of(RunKind::Head) {
                    places.push(one(Spot::HeadLeftEnd(run.row), MeasuredShape::Point(run.from)));
                    places.push(one(Spot::HeadRightEnd(run.row), MeasuredShape::Point(run.to)));
                }
                // A run that ends at a seam already has its support there.
                let ends = |at: DVec2| {
                    block.runs_of(RunKind::Head).any(|run| {
                        run.from.distance(at) <= block.reveal + CRUMB
                            || run.to.distance(at) <= block.reveal + CRUMB
                    })
                };
                places.extend(seams(on, true).filter(|(at, _)| !ends(*at)).map(|(_, place)| place));
            }
            Measure::HeadCornerLeft => places.extend(corners(on, CornerKind::HeadLeft)),
            Measure::HeadCornerRight => places.extend(corners(on, CornerKind::HeadRight)),
            Measure::InsideCorner => places.extend(corners(on, CornerKind::Inside)),
            Measure::BaseCornerLeft => places.extend(corners(on, CornerKind::BaseLeft)),
            Measure::BaseCornerRight => places.extend(corners(on, CornerKind::BaseRight)),
            Measure::WindFastener => {
                for more in self.more_fasteners().iter().filter(|more| more.block == block.id) {
                    let module = block.modules.iter().find(|module| module.cell == more.cell);
                    places.extend(module.map(|module| {
                        on.place(Spot::Module(more.cell), more.more, MeasuredShape::Rect(module.rect))
                    }));
                }
            }
            Measure::Under => places.push(area(on, Spot::Under, deck_under(block))),
            Measure::BondingPath => {
                let path = ground_path(block);
                let amount = path.iter().zip(path.iter().skip(1)).map(|(a, b)| a.distance(*b)).sum();
                places.push(on.place(Spot::BondingPath, amount, MeasuredShape::Path(path)));
            }
            // Measures of the roof or of another part: not per block.
            _ => {}
        }
    }
}

/// A run as a place whose amount is its length.
fn along(on: &On, run: &Run) -> MeasuredPlace {
    let spot = match run.kind {
        RunKind::Row => Spot::Row(run.row),
        RunKind::BaseRail | RunKind::OpenBottom => Spot::BaseRail(run.row),
        RunKind::LeftSide => Spot::LeftSide(run.row),
        RunKind::RightSide => Spot::RightSide(run.row),
        RunKind::Head => Spot::Head(run.row),
    };
    on.place(spot, run.length(), MeasuredShape::Path(vec![run.from, run.to]))
}

fn sides(block: &PlacedBlock) -> impl Iterator<Item = &Run> {
    block.runs.iter().filter(|run| matches!(run.kind, RunKind::LeftSide | RunKind::RightSide))
}

fn area(on: &On, spot: Spot, rects: Vec<Rect>) -> MeasuredPlace {
    on.place(spot, rects.iter().map(Rect::area).sum(), MeasuredShape::Area(rects))
}

fn corners<'a>(on: &'a On, kind: CornerKind) -> impl Iterator<Item = MeasuredPlace> + use<'a> {
    let of_kind = on.block.corners.iter().filter(move |corner| corner.kind == kind);
    of_kind.map(move |corner| on.one(Spot::Corner(kind), MeasuredShape::Point(corner.at)))
}

/// The seams of a block, or only those with head flashing over them, with their positions.
fn seams<'a>(on: &'a On, under_head: bool) -> impl Iterator<Item = (DVec2, MeasuredPlace)> + use<'a> {
    let mut last = (u32::MAX, 0);
    on.block.seams.iter().filter_map(move |seam| {
        last = if last.0 == seam.row { (seam.row, last.1 + 1) } else { (seam.row, 0) };
        let spot = Spot::Seam(seam.row, last.1);
        (!under_head || seam.under_head).then(|| (seam.at, on.one(spot, MeasuredShape::Point(seam.at))))
    })
}

/// Modules with a head run above them, over their full width or part of it.
fn under_head(block: &PlacedBlock) -> impl Iterator<Item = (chalkcourse_job::Cell, Rect)> + use<'_> {
    let heads: Vec<&Run> = block.runs_of(RunKind::Head).collect();
    block.modules.iter().filter_map(move |module| {
        let covered = heads.iter().any(|run| {
            let overlap = run.to.x.min(module.rect.max.x) - run.from.x.max(module.rect.min.x);
            run.row == module.cell.row && overlap > CRUMB
        });
        covered.then_some((module.cell, module.rect))
    })
}

/// The deck under the modules and their reveals, as rectangles. The reveal between two rows belongs to the array where there is a
/// module on both sides.
fn deck_under(block: &PlacedBlock) -> Vec<Rect> {
    let Some(height) = block.modules.first().map(|module| module.rect.size().y) else { return Vec::new() };
    let mut rects: Vec<Rect> = Vec::new();
    let mut add = |rect: Rect| match rects.last_mut() {
        // Merge flush rows into one rectangle: less to draw, and less to compute around it.
        Some(last) if last.max.y == rect.min.y && last.min.x == rect.min.x && last.max.x == rect.max.x => {
            last.max.y = rect.max.y;
        }
        _ => rects.push(rect),
    };
    let mut lower: &[Run] = &[];
    for row in block.strings.chunk_by(|a, b| a.row == b.row) {
        for run in row {
            for below in lower.iter().filter(|below| below.row + 1 == run.row) {
                let (from, to) = (run.from.x.max(below.from.x), run.to.x.min(below.to.x));
                if to > from {
                    add(Rect { min: dvec2(from, below.from.y + height), max: dvec2(to, run.from.y) });
                }
            }
            add(Rect { min: run.from, max: run.to + dvec2(0.0, height) });
        }
        lower = row;
    }
    rects
}
