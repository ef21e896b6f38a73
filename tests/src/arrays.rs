//! Arrays of modules by numbers alone, as `tests/peers/strings_against_highs.py` makes them.

use chalkcourse_wiring::paths::{Link, Problem};
use serde::Deserialize;

/// Places of modules in tenths of a millimetre, how far leads reach, the one length of extension leads, the box, and how many modules
/// a circuit may hold.
#[derive(Debug, Deserialize)]
pub struct Array {
    /// Where each module's leads begin.
    pub places: Vec<(i64, i64)>,
    /// How far two modules may be apart without an extension lead.
    pub reach: u32,
    /// How long each extension lead is.
    pub extension: u32,
    /// The box.
    pub home: (i64, i64),
    /// Not fewer modules.
    pub least: usize,
    /// Not more.
    pub most: usize,
}

impl Array {
    /// To be divided into circuits that both ends are led home from.
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
