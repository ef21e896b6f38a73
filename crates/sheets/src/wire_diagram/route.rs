//! Where lines of a wire diagram run, so that none lies on another: neighbours are joined straight, what goes farther has lanes of its
//! own beside the devices, and what goes home has uprights that nothing else uses.

use super::content::DrawnModule;
use chalkcourse_geometry::{DVec2, dvec2};
use chalkcourse_job::Cell;
use std::collections::BTreeMap;

/// Uprights to try for what goes home, as shares of a module's width from its device.
const UPRIGHTS: [f64; 8] = [0.1, 0.2, 0.3, 0.4, -0.34, -0.42, 0.15, 0.25];
/// Uprights nearer than this share of a module's width are one line to the eye.
const APART: f64 = 0.045;

/// The modules of a block, and what stands upright between them.
pub(super) struct Router<'a> {
    modules: BTreeMap<Cell, &'a DrawnModule>,
    /// A module's width and height.
    size: DVec2,
    /// Where what leaves the block ends.
    head: f64,
    /// Lanes beside the devices go up or down, where there is room.
    way: f64,
    /// Upright lines: where, from, to.
    uprights: Vec<(f64, f64, f64)>,
}

impl<'a> Router<'a> {
    pub(super) fn new(modules: &'a [DrawnModule], head: f64, up: f64) -> Self {
        let size = modules.first().map_or(DVec2::ONE, |module| module.rect.size());
        let way = if up > 0.76 { -1.0 } else { 1.0 };
        let modules = modules.iter().map(|module| (module.at.cell, module)).collect();
        Self { modules, size, head, way, uprights: Vec::new() }
    }

    /// Keeps uprights off a line.
    pub(super) fn keep_off(&mut self, route: &[DVec2]) {
        for pair in route.windows(2) {
            if (pair[0].x - pair[1].x).abs() < 1e-6 {
                self.uprights.push((pair[0].x, pair[0].y.min(pair[1].y), pair[0].y.max(pair[1].y)));
            }
        }
    }

    fn device(&self, cell: Cell) -> DVec2 {
        self.modules.get(&cell).map_or(DVec2::ZERO, |module| module.device)
    }

    /// From one module to another of the block.
    pub(super) fn link(&self, from: Cell, to: Cell, circuit: usize) -> Vec<DVec2> {
        let (a, b, size) = (self.device(from), self.device(to), self.size);
        let apart = (b - a).abs();
        if apart.y < 0.3 * size.y && apart.x < 1.6 * size.x || apart.x < 1e-6 && apart.y < 1.6 * size.y {
            return vec![a, b];
        }
        if apart.y < 1.6 * size.y && apart.y > 0.3 * size.y && apart.x < 0.8 * size.x {
            // Rows that are shifted: aside between the rows.
            let upper = if a.y > b.y { from } else { to };
            let between = self.modules.get(&upper).map_or((a.y + b.y) / 2.0, |module| module.rect.min.y);
            return vec![a, dvec2(a.x, between), dvec2(b.x, between), b];
        }
        let lane = (circuit % 3) as f64;
        let level = a.y + self.way * (0.07 + 0.06 * lane) * size.y;
        if apart.y < 0.3 * size.y {
            return vec![a, dvec2(a.x, level), dvec2(b.x, level), b];
        }
        let upright = b.x - (0.06 + 0.05 * lane) * size.x;
        let near = b.y - (b.y - a.y).signum() * 0.1 * size.y;
        vec![a, dvec2(a.x, level), dvec2(upright, level), dvec2(upright, near), b]
    }

    /// Out of a module towards one of another block.
    pub(super) fn leaves(&self, from: Cell, towards: DVec2) -> Vec<DVec2> {
        let a = self.device(from);
        let aside = if towards.x.abs() < 1e-6 { 0.3 } else { 0.3 * towards.x.signum() };
        vec![a, a + self.size * dvec2(aside, 0.19 * self.way)]
    }

    /// Into a module from one of another block.
    pub(super) fn arrives(&self, to: Cell, towards: DVec2) -> Vec<DVec2> {
        let mut route = self.leaves(to, towards);
        route.reverse();
        route
    }

    /// The end of a branch that a cap closes.
    pub(super) fn closed(&self, at: Cell) -> Vec<DVec2> {
        let a = self.device(at);
        vec![a, a + self.size * dvec2(-0.12, 0.15 * self.way)]
    }

    /// From a module to beyond the head.
    pub(super) fn home(&mut self, at: Cell) -> Vec<DVec2> {
        let a = self.device(at);
        let bend = a.y + 0.1 * self.size.y;
        let free = |share: &f64| {
            let x = a.x + share * self.size.x;
            let off = |other: f64| (x - other).abs() > APART * self.size.x;
            let lines = self.uprights.iter().filter(|(_, _, to)| *to > bend);
            let above = self.modules.values().filter(|module| module.device.y > bend);
            lines.map(|(at, ..)| *at).chain(above.map(|module| module.device.x)).all(off)
        };
        let share = UPRIGHTS.iter().copied().find(free).unwrap_or(UPRIGHTS[0]);
        let x = a.x + share * self.size.x;
        self.uprights.push((x, bend, self.head));
        vec![a, dvec2(x, bend), dvec2(x, self.head)]
    }
}
