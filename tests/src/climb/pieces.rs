//! Several blocks on one face: the best block is found, then the rest of the room is filled with more; then parts are
//! removed and laid again, repeatedly.

use super::limits::MET;
use super::room::Room;
use super::rows::{Effort, Laying, Piece, best_block, hooked};
use super::shape::Thing;
use crate::dice::Dice;
use chalkcourse_geometry::{DVec2, Rect, dvec2};
use chalkcourse_job::Orientation;

/// The room on a face and the allowed ways of laying.
pub(super) struct Field {
    /// The room for modules, by orientation.
    pub(super) rooms: Vec<(Orientation, Room)>,
    pub(super) layings: Vec<Laying>,
    /// Clearance between two blocks, metres; 0 where they may touch.
    pub(super) apart: f64,
}

impl Field {
    pub(super) fn without(&self, things: &[Thing]) -> Self {
        let rooms =
            self.rooms.iter().map(|(way, room)| (*way, room.without(things.iter().cloned()))).collect();
        Self { rooms, layings: self.layings.clone(), apart: self.apart }
    }

    fn size(&self, orientation: Orientation) -> DVec2 {
        let room = self.rooms.iter().find(|(way, _)| *way == orientation);
        room.map_or(DVec2::ZERO, |(_, room)| room.size)
    }

    /// The modules of a block.
    pub(super) fn rects(&self, piece: &Piece) -> Vec<Rect> {
        let size = self.size(piece.orientation);
        let rise = size.y + piece.reveal;
        let rows = piece.rows.iter().enumerate();
        rows.flat_map(|(row, starts)| {
            starts.iter().map(move |&u| Rect::at(dvec2(u, piece.foot + rise * row as f64), size))
        })
        .collect()
    }

    /// The area that a block keeps other blocks out of.
    fn around(&self, piece: &Piece) -> Vec<Thing> {
        // Merge adjacent modules of a row, to have fewer obstacles.
        let mut runs: Vec<Rect> = Vec::new();
        for rect in self.rects(piece) {
            match runs.last_mut() {
                Some(run) if run.min.y == rect.min.y && rect.min.x - run.max.x < 0.01 => run.max = rect.max,
                _ => runs.push(rect),
            }
        }
        let thing = |rect: Rect| {
            if self.apart > MET {
                Thing::Convex {
                    corners: rect.corners().to_vec(),
                    reach: self.apart - MET,
                    squeeze: 1.0,
                    less: 0.0,
                }
            } else {
                Thing::Ground { rect, by: MET * 0.99 }
            }
        };
        runs.into_iter().map(thing).collect()
    }

    /// The best block that fits, in either orientation.
    fn best(&self, effort: Effort, dice: &mut Dice) -> Option<Piece> {
        let mut best: Option<Piece> = None;
        for (way, room) in &self.rooms {
            let laying = dice.one(&self.layings).clone();
            if let Some(piece) = best_block(room, *way, &laying, effort, dice)
                && best.as_ref().is_none_or(|best| piece.count() > best.count())
            {
                best = Some(piece);
            }
        }
        best
    }

    /// Adds blocks in the remaining room until none fits.
    fn fill_up(&self, pieces: &mut Vec<Piece>, effort: Effort, dice: &mut Dice) {
        let taken: Vec<Thing> = pieces.iter().flat_map(|piece| self.around(piece)).collect();
        let mut left = self.without(&taken);
        while let Some(piece) = left.best(effort, dice) {
            left = left.without(&self.around(&piece));
            pieces.push(piece);
            if pieces.len() > 12 {
                break;
            }
        }
    }
}

/// Search effort.
#[derive(Clone, Copy, Debug)]
pub(super) struct Search {
    pub(super) effort: Effort,
    /// How often a part is laid again.
    pub(super) rounds: usize,
    /// Stop when more modules than this are found.
    pub(super) enough: usize,
}

/// The best layout found on a field.
pub(super) fn lay(field: &Field, search: Search, dice: &mut Dice) -> Vec<Piece> {
    let mut best: Vec<Piece> = Vec::new();
    field.fill_up(&mut best, search.effort, dice);
    if best.is_empty() {
        return best;
    }
    let mut now = best.clone();
    for round in 0..search.rounds {
        if total(&best) > search.enough {
            break;
        }
        // Go back to the best from time to time.
        if round % 16 == 15 {
            now.clone_from(&best);
        }
        let next = anew(field, &now, search.effort, dice);
        if total(&next) + usize::from(dice.chance(0.15)) >= total(&now) {
            now = next;
        }
        if total(&now) > total(&best) {
            best.clone_from(&now);
        }
    }
    best
}

pub(super) fn total(pieces: &[Piece]) -> usize {
    pieces.iter().map(Piece::count).sum()
}

/// Removes part of a layout and lays it again.
fn anew(field: &Field, now: &[Piece], effort: Effort, dice: &mut Dice) -> Vec<Piece> {
    let mut pieces = now.to_vec();
    let Some((_, room)) = field.rooms.first() else { return pieces };
    let (left, right) = room.width();
    let (low, high) = room.heights();
    match dice.below(6) {
        // Remove one block.
        0 if pieces.len() > 1 => {
            pieces.remove(dice.below(pieces.len()));
        }
        // Remove rows from some row up.
        1 => {
            let at = dice.below(pieces.len().max(1));
            if let Some(piece) = pieces.get_mut(at) {
                let keep = dice.below(piece.rows.len());
                piece.rows.truncate(keep);
            }
        }
        // Remove rows below some row.
        2 => {
            let at = dice.below(pieces.len().max(1));
            if let Some(piece) = pieces.get_mut(at) {
                let cut = dice.below(piece.rows.len() + 1);
                let rise = field.size(piece.orientation).y + piece.reveal;
                piece.rows.drain(..cut);
                piece.foot += rise * cut as f64;
            }
        }
        // Keep only one side of a line up the slope.
        3 => {
            let (line, to_right) = (dice.within(left, right), dice.chance(0.5));
            for piece in &mut pieces {
                let wide = field.size(piece.orientation).x;
                for row in &mut piece.rows {
                    row.retain(|&u| if to_right { u + wide <= line } else { u >= line });
                }
            }
        }
        // Remove all; the first new block stays on one side of a line.
        side => {
            let far = 1e3;
            let rect = if side == 4 {
                let line = dice.within(left, right);
                let (from, to) = if dice.chance(0.5) { (line, far) } else { (-far, line) };
                Rect { min: dvec2(from, -far), max: dvec2(to, far) }
            } else {
                let line = dice.within(low, high.max(low));
                let (from, to) = if dice.chance(0.5) { (line, far) } else { (-far, line) };
                Rect { min: dvec2(-far, from), max: dvec2(far, to) }
            };
            pieces.clear();
            pieces.extend(field.without(&[Thing::Ground { rect, by: 0.0 }]).best(effort, dice));
        }
    }
    for piece in &mut pieces {
        settle(field, piece);
    }
    pieces.retain(|piece| piece.count() > 0);
    field.fill_up(&mut pieces, effort, dice);
    pieces
}

/// Removes modules that no longer hook, and rows that no base rail can support.
fn settle(field: &Field, piece: &mut Piece) {
    let Some((_, room)) = field.rooms.iter().find(|(way, _)| *way == piece.orientation) else { return };
    let Some(laying) = field.layings.first() else { return };
    let rise = room.size.y + piece.reveal;
    while piece.rows.first().is_some_and(Vec::is_empty) {
        piece.rows.remove(0);
        piece.foot += rise;
    }
    // A block cannot start at a height that the kit does not allow.
    if laying.courses.is_some() && laying.foot_from(piece.foot) > piece.foot + 1e-9 {
        piece.rows.clear();
        return;
    }
    let free = room.starts(piece.foot, true);
    let stands = |u: f64, list: &[(f64, f64)]| list.iter().any(|(a, b)| *a <= u + 1e-9 && u - 1e-9 <= *b);
    let mut below: Vec<f64> = Vec::new();
    for (level, row) in piece.rows.iter_mut().enumerate() {
        if level == 0 {
            row.retain(|&u| stands(u, &free));
        } else {
            let held = hooked(&below, room.size.x, &Laying { reveal: piece.reveal, ..laying.clone() });
            row.retain(|&u| stands(u, &held));
        }
        below.clone_from(row);
    }
    if let Some(end) = piece.rows.iter().position(Vec::is_empty) {
        piece.rows.truncate(end);
    }
}
