use crate::MeasuredPlace;
use crate::counted::Counted;
use crate::cutlist::{CutList, CutProblem};
use crate::rolls::{LaidOut, lay};
use chalkcourse_geometry::{Length, Roof};
use chalkcourse_job::{Kit, Measure, Penetration, Resolved, Roll, RoofPart, RoofWork, RuleBook, Sticks};
use chalkcourse_layout::{Layout, PlacedFace};
use std::collections::BTreeMap;
use std::sync::Arc;

/// Cache of what stays the same from one order to the next while a block is dragged: measures of the roof itself, rolls laid on
/// it, and cut lists. It does not change the result.
#[derive(Debug, Default)]
pub struct Memo {
    roof: Option<OfRoof>,
    laid: Vec<(Arc<Vec<MeasuredPlace>>, Roll, Arc<LaidOut>)>,
    cuts: BTreeMap<CutProblem, Arc<CutList>>,
    problems_solved: u64,
}

/// More than the cut lists of a kit times the drag steps worth caching.
const MOST_CUTS: usize = 256;
/// More than the roll goods of a kit, and how many lists of one roll are looked through for a place as it was.
const MOST_LAID: usize = 32;
const MOST_LIKE: usize = 4;

/// Measures of a roof, with everything they depend on.
#[derive(Debug)]
struct OfRoof {
    roof: Arc<Roof>,
    faces: Vec<PlacedFace>,
    covered: Vec<bool>,
    work: RoofWork,
    overhang: Option<Length>,
    parts: Vec<RoofPart>,
    penetrations: Vec<Penetration>,
    book: Arc<RuleBook>,
    kit: Arc<Kit>,
    known: BTreeMap<Measure, Counted>,
    shingles_cut_off: Option<f64>,
}

impl OfRoof {
    fn is_of(&self, job: &Resolved, layout: &Layout, covered: &[bool]) -> bool {
        Arc::ptr_eq(&self.roof, &layout.roof)
            && Arc::ptr_eq(&self.book, &job.rule_book)
            && Arc::ptr_eq(&self.kit, &job.kit)
            && self.work == job.order.roof
            && self.overhang == job.site.building.overhang
            && self.covered == covered
            && self.faces == layout.faces
            && self.parts == job.parts
            && self.penetrations == job.penetrations
    }
}

impl Memo {
    /// Invalidates what is cached for another roof; `covered` says which faces are re-roofed.
    pub(crate) fn look_at(&mut self, job: &Resolved, layout: &Layout, covered: &[bool]) {
        if self.roof.as_ref().is_some_and(|kept| kept.is_of(job, layout, covered)) {
            return;
        }
        self.laid.clear();
        self.roof = Some(OfRoof {
            roof: Arc::clone(&layout.roof),
            faces: layout.faces.clone(),
            covered: covered.to_vec(),
            work: job.order.roof.clone(),
            overhang: job.site.building.overhang,
            parts: job.parts.clone(),
            penetrations: job.penetrations.clone(),
            book: Arc::clone(&job.rule_book),
            kit: Arc::clone(&job.kit),
            known: BTreeMap::new(),
            shingles_cut_off: None,
        });
    }

    pub(crate) fn roof_measure(&self, measure: &Measure) -> Option<Counted> {
        self.roof.as_ref()?.known.get(measure).cloned()
    }

    pub(crate) fn keep_roof_measure(&mut self, measure: &Measure, counted: &Counted) {
        if let Some(roof) = &mut self.roof {
            roof.known.insert(measure.clone(), counted.clone());
        }
    }

    /// Share of shingles lost to the faces' own cuts, cached.
    pub(crate) fn shingles_cut_off(&mut self, work_out: impl FnOnce() -> f64) -> f64 {
        match &mut self.roof {
            Some(roof) => *roof.shingles_cut_off.get_or_insert_with(work_out),
            None => work_out(),
        }
    }

    /// The rolls laid on these places, cached.
    pub(crate) fn laid(&mut self, places: &Arc<Vec<MeasuredPlace>>, roll: &Roll) -> Arc<LaidOut> {
        // The cache keeps the places alive, so that equal addresses mean the same list.
        let known = self.laid.iter().find(|(kept, of, _)| Arc::ptr_eq(kept, places) && of == roll);
        if let Some((_, _, laid)) = known {
            return Arc::clone(laid);
        }
        let of_roll = self.laid.iter().rev().filter(|(_, of, _)| of == roll).take(MOST_LIKE);
        let like: Vec<_> = of_roll.map(|(places, _, laid)| (places.as_slice(), laid.as_ref())).collect();
        let laid = Arc::new(lay(roll, places, &like));
        if self.laid.len() >= MOST_LAID {
            self.laid.remove(0);
        }
        self.laid.push((Arc::clone(places), roll.clone(), Arc::clone(&laid)));
        laid
    }

    /// The cut list of sticks for some runs, cached.
    pub(crate) fn cut(&mut self, sticks: &Sticks, places: &[MeasuredPlace]) -> Arc<CutList> {
        let list = self.solved(CutProblem::of(sticks, places));
        if sticks.splice {
            return list;
        }
        list.with_too_long().map_or(list, Arc::new)
    }

    fn solved(&mut self, problem: CutProblem) -> Arc<CutList> {
        if let Some(known) = self.cuts.get(&problem) {
            return Arc::clone(known);
        }
        if self.cuts.len() >= MOST_CUTS {
            self.cuts.clear();
        }
        let list = Arc::new(problem.solve());
        self.problems_solved += 1;
        self.cuts.insert(problem, Arc::clone(&list));
        list
    }

    /// How many cutting problems were solved, so that tests can check the cache.
    pub fn problems_solved(&self) -> u64 {
        self.problems_solved
    }
}
