//! Case distinctions where no weights on cliques suffice. In a window of positions as wide and high as the reach, a
//! layout has no module, or one, and that one begins in one of several bands. In each case some positions are excluded:
//! all of the window except the band, and those where nothing can be beside any module of the band. A bound that holds
//! in every case holds for all layouts; cases are split into cases of another window if necessary.
//!
//! **What a module excludes.** Let one module begin between v = a and v = b, and another at v = q, with intervals along
//! u closer to each other than the distance of two blocks. They can be of one block only if they are whole rows apart:
//! level, or at least a row and a joint. So they exclude each other if q is above b and less than the lowest possible
//! row above a; also if it is more than the highest possible row above b, and so little more than a height above a that
//! both are too near from corner to corner; and the same below. Two rows are farther apart than two blocks need to be:
//! [`Rows`] is only made where that holds. Excluded regions are a [`FINE`] smaller on all sides than they could be, so
//! that no position at a border is lost.

use super::super::kernel::FINE;
use super::clique::Clique;
use super::cover::Cover;
use super::field::{Field, Rows, SHAVED};
use super::shadow::level_shadow;
use crate::Rect;
use glam::{DVec2, dvec2};

/// Bands that a box is cut into.
const BANDS: u32 = 10;

/// Depth of nested cases.
const MOST_DEPTH: usize = 24;

/// Steps that one case may take before it is split further.
const STEPS_OF_A_CASE: usize = 20_000_000;

/// Where in the box of a position the upper right corners of windows are tried.
const POINTS: [DVec2; 5] =
    [dvec2(0.5, 0.5), dvec2(0.02, 0.02), dvec2(0.98, 0.02), dvec2(0.02, 0.98), dvec2(0.98, 0.98)];

/// The straight-line distance between blocks is handled in steps: fractions of it up the slope.
const UP: [f64; 3] = [0.6, 0.8, 0.95];

/// A rectangle without its borders.
fn less(rect: Rect) -> Rect {
    Rect { min: rect.min + FINE, max: rect.max - FINE }
}

/// A search through cases.
pub(super) struct Cases<'a> {
    /// Cliques that contain every position.
    pub(super) base: Vec<Clique>,
    /// A layout must have fewer modules than this.
    pub(super) enough: f64,
    pub(super) most_steps: usize,
    /// Steps so far.
    pub(super) steps: usize,
    pub(super) stop: &'a dyn Fn() -> bool,
}

impl Cases<'_> {
    /// Whether no layout of a field has this many modules, as far as the search went; with cliques to begin with.
    pub(super) fn none(&mut self, field: &Field, cliques: Vec<Clique>, depth: usize) -> bool {
        let mut cover = Cover::new(field, [self.base.clone(), cliques].concat());
        let steps = self.most_steps.saturating_sub(self.steps).min(STEPS_OF_A_CASE);
        let found = cover.is_below(self.enough, steps, self.stop);
        self.steps += cover.steps();
        if found || depth >= MOST_DEPTH || self.steps >= self.most_steps || (self.stop)() {
            return found;
        }
        let places = cover.places();
        let cases = field.rows.and_then(|rows| rows.strongest(field, &places));
        self.steps += places.len().pow(2) * 400;
        let cliques = cover.used();
        cases.is_some_and(|cases| {
            cases.iter().all(|away| self.none(&field.without(away), cliques.clone(), depth + 1))
        })
    }
}

impl Rows {
    /// Two modules of different blocks with `above` metres between them up the slope exclude each other if they are
    /// closer than this along u.
    pub(super) fn aside(&self, above: f64) -> f64 {
        self.size.x + (self.apart * self.apart - above.max(0.0).powi(2)).max(0.0).sqrt() - SHAVED
    }

    /// The cases of the window that excludes most of some weighted positions in its weakest case; the weakest case
    /// first, since if one fails, the others need not be tested.
    fn strongest(&self, field: &Field, places: &[(DVec2, f64)]) -> Option<Vec<Vec<Rect>>> {
        let gone = |away: &[Rect]| -> f64 {
            let has = |r: &Rect, p: &DVec2| r.min.cmple(*p).all() && p.cmplt(r.max).all();
            places.iter().filter(|(p, _)| away.iter().any(|r| has(r, p))).map(|(_, weight)| weight).sum()
        };
        let mut best: Option<(f64, DVec2)> = None;
        for (place, share) in places.iter().flat_map(|(place, _)| POINTS.map(|share| (place, share))) {
            let point = *place + self.reach * share;
            let least =
                self.of_window(field, point).iter().map(|away| gone(away)).fold(f64::INFINITY, f64::min);
            if best.is_none_or(|(most, _)| least > most + 1e-9) {
                best = Some((least, point));
            }
        }
        let mut cases = self.of_window(field, best?.1);
        cases.sort_by(|p, q| gone(p).total_cmp(&gone(q)));
        Some(cases)
    }

    /// The positions that each case of a window excludes, by its upper right corner.
    pub(super) fn of_window(&self, field: &Field, point: DVec2) -> Vec<Vec<Rect>> {
        let whole = Rect { min: point - self.reach, max: point };
        let edge = |n: u32| whole.min.y + (whole.max.y - whole.min.y) * f64::from(n) / f64::from(BANDS);
        let bands = (0..BANDS).map(|n| Rect {
            min: dvec2(whole.min.x, if n == 0 { whole.min.y } else { edge(n) }),
            max: dvec2(whole.max.x, if n + 1 == BANDS { whole.max.y } else { edge(n + 1) }),
        });
        let is_there = |band: &Rect| {
            let across = |(a, b): &(f64, f64)| *a <= band.max.x && band.min.x <= *b;
            let mut shadows =
                field.kinds.iter().map(|kind| level_shadow(&kind.slabs, band.min.y, band.max.y));
            shadows.any(|shadow| shadow.iter().any(across))
        };
        let with = bands.filter(is_there).map(|band| self.beside(&whole, &band));
        std::iter::once(vec![less(whole)]).chain(with).collect()
    }

    /// Positions that are excluded if one module begins in a band and no other in the whole window.
    fn beside(&self, whole: &Rect, band: &Rect) -> Vec<Rect> {
        let mut away = Vec::new();
        let mut add = |wide: f64, lo: f64, hi: f64| {
            let rect = less(Rect { min: dvec2(band.max.x - wide, lo), max: dvec2(band.min.x + wide, hi) });
            if rect.size().min_element() > 0.0 {
                away.push(rect);
            }
        };
        let (low, high) = (band.min.y, band.max.y);
        let reach = self.reach.x;
        add(reach, whole.min.y, low);
        add(reach, high, whole.max.y);
        // Less than a row up or down.
        let wide = self.aside(self.reach.y - self.size.y);
        add(wide, high, low + self.reach.y);
        add(wide, high - self.reach.y, low);
        // More than a row.
        let least = self.size.y + self.joint + SHAVED;
        for share in UP {
            let most = self.size.y + self.apart * share - SHAVED;
            let wide = self.aside(self.apart * share);
            add(wide, high + least, low + most);
            add(wide, high - most, low - least);
        }
        away
    }
}
