//! From the cheap to the dear, until what was found is proved: a little search and a cheap bound, then more of both, last all that
//! could be better.

use super::bound::Bound;
use super::costs::Costs;
use super::exact::exact;
use super::forest::Forest;
use super::question::{Prices, Question};
use super::search::shaken;
use super::{Effort, MOST_SEARCHED, Problem, parts};

/// An answer with its bounds.
pub(super) struct Settled {
    pub(super) paths: Vec<Vec<usize>>,
    pub(super) cost: i64,
    pub(super) least_leads: i64,
    pub(super) least_length: i64,
}

/// How far one look goes.
struct Stage {
    /// Near points that a path of the bound remembers.
    memory: usize,
    /// Shakes before it, for each point.
    shakes: u32,
    /// Rounds of the bound.
    rounds: u32,
    /// Paths begun, at most, for each point.
    begun: usize,
}

/// From cheap to dear; the last is as dear as the effort allows.
const STAGES: [Stage; 3] = [
    Stage { memory: 3, shakes: 4, rounds: 20, begun: 200 },
    Stage { memory: 4, shakes: 4, rounds: 60, begun: 1_000 },
    Stage { memory: 6, shakes: 40, rounds: 150, begun: 10_000 },
];
/// Shakes for each point, at most.
const MOST_SHAKES: u32 = 700;
/// What a lead weighs in links where the search goes through answers with more of them.
const FEW_LINKS: i64 = 8;
/// Of more points than this, answers with unlike numbers of leads are too many to go through.
const MOST_BOTH: usize = 36;

struct Settling<'a> {
    problem: &'a Problem,
    /// An extension lead weighs more than all length.
    whole: &'a Costs,
    lead: i64,
    effort: Effort,
    of_leads: Costs,
    of_length: Costs,
    known: Settled,
}

impl Settled {
    /// Makes an answer better, and proves of it what the effort allows.
    pub(super) fn of(
        problem: &Problem,
        whole: &Costs,
        lead: i64,
        found: Vec<Vec<usize>>,
        effort: Effort,
    ) -> Self {
        let known = Self { cost: whole.of_all(&found), paths: found, least_leads: 0, least_length: 0 };
        if whole.points > MOST_SEARCHED {
            return known;
        }
        let of_leads = Costs::of(problem, 1, false, false);
        let of_length = Costs::of(problem, 0, true, false);
        let mut settling = Settling { problem, whole, lead, effort, of_leads, of_length, known };
        settling.shake(effort.shakes.min(4 * whole.points as u32));
        settling.prove_leads();
        if settling.known.least_leads < settling.leads() {
            settling.look_for_fewer_leads();
        }
        if settling.known.least_leads >= settling.leads() {
            settling.prove_length();
        } else {
            settling.prove_both();
        }
        settling.known
    }
}

impl Settling<'_> {
    fn leads(&self) -> i64 {
        self.known.cost / self.lead
    }

    fn length(&self) -> i64 {
        self.known.cost % self.lead
    }

    fn shake(&mut self, shakes: u32) {
        self.shake_until(shakes, self.known.least_leads * self.lead + self.known.least_length);
    }

    /// Until the leads are those that are proved; of few points the rest is gone through, which is sooner done.
    fn look_for_fewer_leads(&mut self) {
        let points = self.whole.points;
        let each = if points <= MOST_BOTH { 40 } else { MOST_SHAKES };
        let shakes = self.effort.shakes.min(each * points as u32);
        let enough = (self.known.least_leads + 1) * self.lead - 1;
        self.shake_until(shakes / 2, enough);
        if self.known.cost > enough {
            // With a lead that weighs as much as a few links, answers with more of them are gone through on the way to those with fewer.
            let links = (points + self.known.paths.len()) as i64;
            let soft = Costs::of(self.problem, FEW_LINKS * self.length() / links, true, false);
            let through = shaken(self.problem, &soft, self.known.paths.clone(), shakes / 2, 0);
            let mended = shaken(self.problem, self.whole, through, shakes / 4, enough);
            if self.whole.of_all(&mended) < self.known.cost {
                self.take(mended);
            }
        }
    }

    fn shake_until(&mut self, shakes: u32, enough: i64) {
        let paths = std::mem::take(&mut self.known.paths);
        self.take(shaken(self.problem, self.whole, paths, shakes, enough));
    }

    fn take(&mut self, paths: Vec<Vec<usize>>) {
        self.known.cost = self.whole.of_all(&paths);
        self.known.paths = paths;
    }

    fn prove_leads(&mut self) {
        let leads = self.leads();
        if leads == 0 {
            return;
        }
        let count = self.known.paths.len();
        let mut question = Question::of(self.problem, count, &self.of_leads, None, leads);
        let forest = Forest::of(&mut question, self.effort.rounds);
        self.known.least_leads = forest.least.max(0);
        if self.known.least_leads < leads {
            self.known.least_leads =
                self.known.least_leads.max(parts::least_leads(self.problem, &self.known.paths));
        }
        if self.known.least_leads < leads {
            let bound = Bound::of(&question, forest.prices, STAGES[0].memory, self.effort.rounds);
            self.known.least_leads = self.known.least_leads.max(bound.least);
        }
    }

    /// Of answers with as many leads, which are known to be the fewest.
    fn prove_length(&mut self) {
        let leads = self.leads();
        let free = (leads == 0).then(|| Costs::of(self.problem, 0, true, true));
        let length = free.as_ref().unwrap_or(&self.of_length).clone();
        let of_leads = self.of_leads.clone();
        let counted = (leads > 0).then_some((&of_leads, leads));
        let count = self.known.paths.len();
        let mut question = Question::of(self.problem, count, &length, counted, self.length());
        let forest = Forest::of(&mut question, self.effort.rounds);
        self.known.least_length = forest.least.max(0);
        if self.known.least_length >= self.length() {
            return;
        }
        if let Some(least) = self.go_through(&mut question, forest.prices) {
            self.known.least_length = self.known.least_length.max(least).min(self.length());
        }
    }

    /// Bounds from the cheap to the dear, each followed by a look through all that could be better; what they prove.
    fn go_through(&mut self, question: &mut Question, from: Prices) -> Option<i64> {
        let mut prices = from;
        let mut least = None;
        let (effort, points) = (self.effort, question.costs.points);
        let last = Stage { memory: effort.memory, shakes: MOST_SHAKES, rounds: u32::MAX, begun: usize::MAX };
        let stages = STAGES.into_iter().filter(|stage| stage.memory < effort.memory);
        for stage in stages.chain([last]) {
            let before = self.known.cost;
            self.shake(effort.shakes.min(stage.shakes.saturating_mul(points as u32)));
            question.good -= before - self.known.cost;
            let bound = Bound::of(question, prices, stage.memory, effort.rounds.min(stage.rounds));
            let begun = effort.begun.min(stage.begun.saturating_mul(points));
            least = least.max(Some(bound.least));
            if bound.least >= question.good {
                break;
            }
            bound.leave_out(question);
            if let Some(end) = exact(question, &bound, self.whole, self.known.cost, begun) {
                if let Some(paths) = end {
                    self.take(paths);
                }
                return Some(i64::MAX);
            }
            prices = bound.prices;
        }
        least
    }

    /// Where the fewest leads are not known: of all answers, leads weighed more than all length; or each by itself.
    fn prove_both(&mut self) {
        let count = self.known.paths.len();
        if self.effort.begun > 0 && self.whole.points <= MOST_BOTH {
            let whole = self.whole.clone();
            let mut question = Question::of(self.problem, count, &whole, None, self.known.cost);
            let forest = Forest::of(&mut question, self.effort.rounds);
            let through = if forest.least >= self.known.cost {
                Some(i64::MAX)
            } else {
                self.go_through(&mut question, forest.prices)
            };
            let least = through.unwrap_or(0).min(self.known.cost);
            self.known.least_leads = self.known.least_leads.max(least / self.lead);
            if self.known.least_leads >= self.leads() {
                self.known.least_length = least - self.known.least_leads * self.lead;
                return;
            }
        }
        let length = self.of_length.clone();
        let mut question = Question::of(self.problem, count, &length, None, self.length());
        let forest = Forest::of(&mut question, self.effort.rounds);
        let bound = Bound::of(&question, forest.prices, STAGES[0].memory, self.effort.rounds);
        self.known.least_length = forest.least.max(bound.least).max(0);
    }
}
