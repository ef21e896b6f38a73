//! Module arrays given by numbers only, in the form that `tests/peers/strings_against_highs.py` writes.

use chalkcourse_wiring::paths::{Link, Problem};
use serde::Deserialize;

/// Module positions in tenths of a millimetre, the reach of leads, the length of extension leads, the box, and the
/// allowed number of modules per circuit.
#[derive(Debug, Deserialize)]
pub struct Array {
    /// Where the leads of each module start.
    pub places: Vec<(i64, i64)>,
    /// Largest distance between two modules that needs no extension lead.
    pub reach: u32,
    /// Length of one extension lead.
    pub extension: u32,
    /// Position of the box.
    pub home: (i64, i64),
    /// Fewest modules per circuit.
    pub least: usize,
    /// Most modules per circuit.
    pub most: usize,
}

impl Array {
    /// The problem of dividing the array into circuits, with home runs from both ends of each.
    pub fn problem(&self) -> Problem {
        let way = |a: (i64, i64), b: (i64, i64)| (a.0.abs_diff(b.0) + a.1.abs_diff(b.1)) as u32;
        let link = |a: (i64, i64), b: (i64, i64)| {
            let length = way(a, b);
            let leads = length.saturating_sub(self.reach).div_ceil(self.extension);
            (a != b).then_some(Link { leads, length })
        };
        Problem {
            links: self.places.iter().map(|a| self.places.iter().map(|b| link(*a, *b)).collect()).collect(),
            home: self.places.iter().map(|a| way(*a, self.home)).collect(),
            both_ends: true,
            least: self.least,
            most: self.most,
            orders: vec![(0..self.places.len()).collect()],
        }
    }
}
