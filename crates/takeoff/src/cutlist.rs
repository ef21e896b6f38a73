//! Runs of a roof as pieces to cut, and the cut list for them.

use crate::MeasuredPlace;
use crate::cutting::{self, Cutting, USUAL_STEPS};
use chalkcourse_geometry::Length;
use chalkcourse_job::Sticks;

/// Cutting units per metre: tenths of a millimetre, finer than any saw.
const FINE: f64 = 1e4;

/// A cutting problem. Runs of the same length are the same problem wherever they lie.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct CutProblem {
    runs: Vec<u32>,
    stocks: Vec<u32>,
    lap: u32,
    kerf: u32,
    least_piece: u32,
}

/// The cut list of one part, over all its runs.
///
/// A run longer than the longest stick is made of whole sticks of that length and a last piece for the rest, each lapping the one
/// before; no last piece is shorter than the kit allows. For these pieces, no cutting plan buys less than [`least`](Self::least).
#[derive(Clone, Debug, Default, PartialEq)]
pub struct CutList {
    /// All sticks.
    pub sticks: Vec<CutStick>,
    /// Total length of the sticks, in metres.
    pub bought: f64,
    /// Lower bound on the length that any cutting plan has to buy, in metres.
    pub least: f64,
    /// Whether the plan is proved optimal.
    pub proved: bool,
    /// Indices of runs that are longer than a stick although they may not be spliced.
    pub too_long: Vec<usize>,
    pub(crate) shares: Vec<f64>,
    pieces_by_run: Vec<u32>,
}

/// One stick and the pieces cut from it.
#[derive(Clone, Debug, PartialEq)]
pub struct CutStick {
    /// Index of the stock length: 0 is the part's own, n the n-th other one.
    pub stock: usize,
    /// In metres.
    pub length: f64,
    /// Pieces, longest first.
    pub pieces: Vec<CutPiece>,
    /// The offcut, in metres, after saw cuts.
    pub left: f64,
}

/// One piece.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutPiece {
    /// The run it is for: index of its place.
    pub run: usize,
    /// In metres.
    pub length: f64,
}

impl CutProblem {
    pub(crate) fn of(sticks: &Sticks, places: &[MeasuredPlace]) -> Self {
        // Round pieces up and sticks down, by a hair: never the other way.
        let up = |length: f64| (length * FINE - 1e-3).ceil().clamp(0.0, 1e9) as u32;
        let down = |length: Length| (length.metres() * FINE + 1e-3).floor().clamp(0.0, 1e9) as u32;
        let stocks = std::iter::once(sticks.length).chain(sticks.also.iter().map(|other| other.length));
        Self {
            runs: places.iter().map(|place| up(place.amount)).collect(),
            stocks: stocks.map(down).collect(),
            lap: up(sticks.lap.metres()),
            kerf: up(sticks.kerf.metres()),
            least_piece: up(sticks.least_piece.metres()),
        }
    }

    /// Pieces of a run.
    fn pieces(&self, run: u32, longest: u32) -> Vec<u32> {
        let step = longest.saturating_sub(self.lap).max(1);
        if run == 0 {
            return Vec::new();
        }
        if run <= longest {
            return vec![run];
        }
        let count = (run - self.lap).div_ceil(step);
        let mut pieces = vec![longest; count as usize - 1];
        let mut last = run - step * (count - 1);
        if last < self.least_piece
            && let Some(before) = pieces.last_mut()
        {
            *before = before.saturating_sub(self.least_piece - last);
            last = self.least_piece;
        }
        pieces.push(last);
        pieces
    }

    pub(crate) fn solve(&self) -> CutList {
        let longest = self.stocks.iter().copied().max().unwrap_or(0);
        let metres = |length: u32| f64::from(length) / FINE;
        let whole_stock = self.stocks.iter().position(|&stock| stock == longest).unwrap_or(0);
        let mut list = CutList { pieces_by_run: vec![0; self.runs.len()], ..CutList::default() };
        // The lengths to cut, each with the runs that need one.
        let mut cut: Vec<(u32, Vec<usize>)> = Vec::new();
        for (run, &length) in self.runs.iter().enumerate() {
            for piece in self.pieces(length, longest) {
                list.pieces_by_run[run] += 1;
                if piece == longest {
                    // A whole stick: nothing to optimise.
                    let pieces = vec![CutPiece { run, length: metres(piece) }];
                    let length = metres(longest);
                    list.sticks.push(CutStick { stock: whole_stock, length, pieces, left: 0.0 });
                    continue;
                }
                match cut.iter_mut().find(|(known, _)| *known == piece) {
                    Some((_, runs)) => runs.push(run),
                    None => cut.push((piece, vec![run])),
                }
            }
        }
        cut.sort_by_key(|&(stick, _)| std::cmp::Reverse(stick));
        // Merge duplicate stock lengths.
        let mut stocks: Vec<u32> = Vec::new();
        stocks.extend(self.stocks.iter().filter(|stock| **stock > 0));
        let first_of: Vec<usize> =
            stocks.iter().map(|s| stocks.iter().position(|o| o == s).unwrap_or(0)).collect();
        let distinct: Vec<usize> = (0..stocks.len()).filter(|&at| first_of[at] == at).collect();
        let problem = Cutting {
            pieces: cut.iter().map(|(length, runs)| (*length, runs.len() as u32)).collect(),
            stocks: distinct.iter().map(|&at| stocks[at]).collect(),
            kerf: self.kerf,
        };
        let answer = cutting::cut(&problem, USUAL_STEPS);
        let whole = list.sticks.len() as f64 * metres(longest);
        list.bought = whole + answer.bought as f64 / FINE;
        list.least = whole + answer.least as f64 / FINE;
        list.proved = answer.is_proved();
        for (stock, pieces) in &answer.sticks {
            let stock_length = problem.stocks[*stock];
            let mut left = stock_length;
            let pieces = pieces
                .iter()
                .filter_map(|&size| {
                    let (length, runs) = &mut cut[size];
                    left = left.saturating_sub(*length).saturating_sub(self.kerf);
                    Some(CutPiece { run: runs.pop()?, length: metres(*length) })
                })
                .collect();
            let (stock, length) = (distinct[*stock], metres(stock_length));
            list.sticks.push(CutStick { stock, length, pieces, left: metres(left) });
        }
        list.shares = list.shares_of(0, self.runs.len());
        list
    }
}

impl CutList {
    /// The cut list of sticks that may not be spliced, with the runs that are too long for one; `None` if there are none.
    pub(crate) fn with_too_long(&self) -> Option<Self> {
        let pieces = self.pieces_by_run.iter().enumerate();
        let too_long: Vec<usize> = pieces.filter(|(_, pieces)| **pieces > 1).map(|(run, _)| run).collect();
        (!too_long.is_empty()).then(|| Self { too_long, ..self.clone() })
    }

    /// How much of the sticks of one stock length goes to each run: a stick is divided in proportion to its pieces.
    fn shares_of(&self, stock: usize, runs: usize) -> Vec<f64> {
        let mut shares = vec![0.0; runs];
        for stick in self.sticks.iter().filter(|stick| stick.stock == stock) {
            let all: f64 = stick.pieces.iter().map(|piece| piece.length).sum();
            for piece in &stick.pieces {
                shares[piece.run] += piece.length / all;
            }
        }
        shares
    }

    /// Sticks of one stock length, as places on the runs.
    pub(crate) fn sticks_by_run(&self, stock: usize, runs: &[MeasuredPlace]) -> Vec<MeasuredPlace> {
        let shares = self.shares_of(stock, runs.len());
        let used = runs.iter().zip(shares).filter(|(_, share)| *share > 0.0);
        used.map(|(place, amount)| MeasuredPlace { amount, ..place.clone() }).collect()
    }

    /// Splices, as places on the runs that have any.
    pub(crate) fn joints(&self, runs: &[MeasuredPlace]) -> Vec<MeasuredPlace> {
        let joined = runs.iter().zip(&self.pieces_by_run).filter(|(_, pieces)| **pieces > 1);
        joined
            .map(|(place, &pieces)| MeasuredPlace { amount: f64::from(pieces - 1), ..place.clone() })
            .collect()
    }

    /// Groups of identical sticks: how many, and one of them.
    pub fn alike(&self) -> Vec<(usize, &CutStick)> {
        let same = |a: &CutStick, b: &CutStick| {
            a.stock == b.stock
                && a.pieces.len() == b.pieces.len()
                && a.pieces.iter().zip(&b.pieces).all(|(a, b)| a.length == b.length)
        };
        let mut alike: Vec<(usize, &CutStick)> = Vec::new();
        for stick in &self.sticks {
            match alike.iter_mut().find(|(_, known)| same(known, stick)) {
                Some((count, _)) => *count += 1,
                None => alike.push((1, stick)),
            }
        }
        alike
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sticks(length_in: f64, lap_in: f64, kerf_in: f64, least_in: f64) -> Sticks {
        let inches = Length::from_inches;
        Sticks {
            length: inches(length_in),
            lap: inches(lap_in),
            kerf: inches(kerf_in),
            splice: true,
            least_piece: inches(least_in),
            also: Vec::new(),
        }
    }

    fn solve(sticks: &Sticks, runs_in: &[f64]) -> CutList {
        let places: Vec<MeasuredPlace> =
            runs_in.iter().map(|&run| MeasuredPlace::test_run(run * 0.0254)).collect();
        CutProblem::of(sticks, &places).solve()
    }

    /// Drip edge of 10 ft lapped 2 in covers 118 in a further piece (IRC R905.2.8.5 (2018): laps of at least 2 in). A run
    /// of 60 ft is 720 in: 5 sticks of 120, and 720 − 5 × 118 = 130 is more than a stick, so 6 of them and a last piece of
    /// 720 − 6 × 118 = 12 in. Four such runs: 24 whole sticks, and the four pieces of 12 in come from one more.
    #[test]
    fn drip_edge_of_a_gable() {
        let list = solve(&sticks(120.0, 2.0, 0.0, 0.0), &[720.0; 4]);
        assert_eq!(list.sticks.len(), 25);
        assert!(list.proved && list.too_long.is_empty());
        let last = list.sticks.last().unwrap();
        assert_eq!(last.pieces.len(), 4);
        assert!((last.left / 0.0254 - 72.0).abs() < 0.01);
        assert_eq!(list.alike().iter().map(|(count, _)| *count).collect::<Vec<_>>(), [24, 1]);
        assert!((list.shares.iter().sum::<f64>() - 25.0).abs() < 1e-9);
        assert_eq!(
            list.joints(&vec![MeasuredPlace::test_run(1.0); 4]).iter().map(|p| p.amount).sum::<f64>(),
            24.0
        );
    }

    /// 97 in from sticks of 96: a last piece of 1 in is too short, so 85 and 12.
    #[test]
    fn last_pieces_have_a_minimum_length() {
        let list = solve(&sticks(96.0, 0.0, 0.0, 12.0), &[97.0]);
        let mut pieces: Vec<f64> =
            list.sticks.iter().flat_map(|s| &s.pieces).map(|p| (p.length / 0.0254).round()).collect();
        pieces.sort_by(f64::total_cmp);
        assert_eq!(pieces, [12.0, 85.0]);
        // both would fit one stick but for the kerf: 97 of 96
        assert_eq!(list.sticks.len(), 2);
    }

    #[test]
    fn the_saw_takes_its_share() {
        assert_eq!(solve(&sticks(96.0, 0.0, 0.0, 0.0), &[48.0, 48.0]).sticks.len(), 1);
        // 48 + 1/8 + 48 is more than 96
        assert_eq!(solve(&sticks(96.0, 0.0, 0.125, 0.0), &[48.0, 48.0]).sticks.len(), 2);
    }
}
