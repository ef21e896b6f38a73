//! Cutting runs from sticks by random search: any split that a kit's splice rule allows. Its results are checked, so
//! each is an upper bound on the least that can be bought.

use crate::dice::Dice;
use chalkcourse_job::Sticks;

/// What was bought, and the pieces of each run.
#[derive(Clone, Debug, PartialEq)]
pub struct Split {
    /// Total length of all sticks, metres.
    pub bought: f64,
    /// For each stick its length, and its pieces with the run that each belongs to, metres.
    pub sticks: Vec<(f64, Vec<(usize, f64)>)>,
}

/// Tolerance for rounding of summed lengths, metres.
const DUST: f64 = 1e-7;

/// The least length bought that was found, for runs in metres; `None` if a run can't be made at all.
pub fn split(runs: &[f64], sticks: &Sticks, throws: usize, dice: &mut Dice) -> Option<Split> {
    let stocks: Vec<f64> = std::iter::once(sticks.length)
        .chain(sticks.also.iter().map(|other| other.length))
        .map(chalkcourse_geometry::Length::metres)
        .collect();
    let mut best: Option<Split> = None;
    for _ in 0..throws {
        let Some(found) = throw(runs, sticks, &stocks, dice) else { continue };
        if best.as_ref().is_none_or(|best| found.bought < best.bought - DUST) && holds(&found, runs, sticks) {
            best = Some(found);
        }
    }
    best
}

/// Sticks being cut.
struct Bench<'a> {
    rule: &'a Sticks,
    split: Split,
    /// Remaining length of each stick.
    left: Vec<f64>,
}

/// A run being made.
struct Made {
    run: usize,
    /// Still to be covered, metres.
    rest: f64,
    pieces: usize,
}

impl Bench<'_> {
    /// The length of a piece that would cover the rest.
    fn need(&self, made: &Made) -> f64 {
        let (lap, least) = (self.rule.lap.metres(), self.rule.least_piece.metres());
        if made.pieces > 0 { (made.rest + lap).max(least) } else { made.rest }
    }

    /// The longest piece of a stick that leaves a rest no shorter than the least piece; `None` if the piece itself
    /// would be too short.
    fn part(&self, made: &Made, at: usize) -> Option<f64> {
        let (lap, least) = (self.rule.lap.metres(), self.rule.least_piece.metres());
        let lapped = if made.pieces > 0 { lap } else { 0.0 };
        let length = self.left[at].min(made.rest + lapped - (least - lap).max(2.0 * DUST));
        (self.rule.splice && length >= least && length > lap + DUST).then_some(length)
    }

    fn cut(&mut self, made: &mut Made, at: usize, length: f64) {
        self.split.sticks[at].1.push((made.run, length));
        self.left[at] = (self.left[at] - length - self.rule.kerf.metres()).max(0.0);
        made.rest -= length - if made.pieces > 0 { self.rule.lap.metres() } else { 0.0 };
        made.pieces += 1;
    }

    fn open(&mut self, stock: f64) -> usize {
        self.split.sticks.push((stock, Vec::new()));
        self.split.bought += stock;
        self.left.push(stock);
        self.left.len() - 1
    }
}

/// Lays the runs in a random order from stick to stick: offcuts start the next run.
fn throw(runs: &[f64], sticks: &Sticks, stocks: &[f64], dice: &mut Dice) -> Option<Split> {
    let mut order: Vec<usize> = (0..runs.len()).filter(|&run| runs[run] > 0.0).collect();
    for at in (1..order.len()).rev() {
        order.swap(at, dice.below(at + 1));
    }
    let split = Split { bought: 0.0, sticks: Vec::new() };
    let mut bench = Bench { rule: sticks, split, left: Vec::new() };
    for run in order {
        let mut made = Made { run, rest: runs[run], pieces: 0 };
        while made.rest > DUST {
            let need = bench.need(&made);
            // Take all of it from the shortest offcut that is long enough; else a part from an offcut, or from a new
            // stick.
            let holds = (0..bench.left.len()).filter(|&at| bench.left[at] + DUST >= need);
            if let Some(at) = holds.min_by(|&a, &b| bench.left[a].total_cmp(&bench.left[b])) {
                bench.cut(&mut made, at, need);
                continue;
            }
            let parts: Vec<usize> =
                (0..bench.left.len()).filter(|&at| bench.part(&made, at).is_some()).collect();
            let at = if !parts.is_empty() && dice.chance(0.8) {
                *dice.one(&parts)
            } else {
                bench.open(*dice.one(stocks))
            };
            let length =
                if bench.left[at] + DUST >= need { need } else { bench.part(&made, at).unwrap_or(0.0) };
            if length > 0.0 {
                bench.cut(&mut made, at, length);
            } else if bench.split.sticks.len() > 500 || !sticks.splice {
                return None;
            }
        }
    }
    Some(bench.split)
}

/// Whether a split covers all runs and obeys the splice rule.
pub fn holds(split: &Split, runs: &[f64], sticks: &Sticks) -> bool {
    let (lap, kerf, least) = (sticks.lap.metres(), sticks.kerf.metres(), sticks.least_piece.metres());
    let fits = |(stock, pieces): &(f64, Vec<(usize, f64)>)| {
        let cut: f64 = pieces.iter().map(|(_, length)| length + kerf).sum();
        // The last cut of a stick may need no kerf.
        cut <= stock + kerf + DUST
    };
    let covered = |run: usize| {
        let pieces: Vec<f64> = split
            .sticks
            .iter()
            .flat_map(|(_, pieces)| pieces.iter().filter(|(of, _)| *of == run).map(|(_, length)| *length))
            .collect();
        let laps = pieces.len().saturating_sub(1) as f64 * lap;
        let enough = pieces.iter().sum::<f64>() - laps >= runs[run] - DUST * pieces.len() as f64;
        let spliced = pieces.len() > 1;
        enough && (!spliced || sticks.splice && pieces.iter().all(|&piece| piece >= least - DUST))
    };
    split.sticks.iter().all(fits) && (0..runs.len()).all(covered)
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::Length;

    fn sticks(length: f64, lap: f64, least: f64) -> Sticks {
        let inches = Length::from_inches;
        Sticks {
            length: inches(length),
            lap: inches(lap),
            kerf: Length::ZERO,
            splice: true,
            least_piece: inches(least),
            also: Vec::new(),
        }
    }

    /// Two runs of 15 ft from sticks of 10 ft: 10 + 5 + 5 + 10 without laps.
    #[test]
    fn an_offcut_begins_the_next_run() {
        let runs = [180.0 * 0.0254; 2];
        let found = split(&runs, &sticks(120.0, 0.0, 12.0), 50, &mut Dice::new(1)).unwrap();
        assert!((found.bought / 0.0254 - 360.0).abs() < 1e-6, "{found:?}");
        // With laps of 2 in, each run needs two more inches than three sticks have.
        let found = split(&runs, &sticks(120.0, 2.0, 12.0), 50, &mut Dice::new(1)).unwrap();
        assert!((found.bought / 0.0254 - 480.0).abs() < 1e-6, "{found:?}");
    }

    #[test]
    fn short_pieces_and_gaps_are_rejected() {
        let (runs, sticks) = ([130.0 * 0.0254], sticks(120.0, 0.0, 12.0));
        let inch = 0.0254;
        let of = |a: f64, b: f64| Split {
            bought: 240.0 * inch,
            sticks: vec![(120.0 * inch, vec![(0, a * inch)]), (120.0 * inch, vec![(0, b * inch)])],
        };
        assert!(holds(&of(118.0, 12.0), &runs, &sticks));
        assert!(!holds(&of(120.0, 10.0), &runs, &sticks) && !holds(&of(117.0, 12.0), &runs, &sticks));
    }
}
