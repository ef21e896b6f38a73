//! An outline being drawn: its corners so far, and the next one as aimed.

use crate::canvas::snap::{self, Guide, Scene};
use crate::state::Shaped;
use crate::text;
use chalkcourse_geometry::{Azimuth, DVec2, Length, Units, signed_area};
use chalkcourse_job::Resolved;

/// How to interpret the pointer.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct Aim {
    /// Without snapping.
    pub(crate) free: bool,
    /// At right angles to the previous side, and to the first one where possible.
    pub(crate) square: bool,
}

/// An undone step.
#[derive(Clone, Debug, PartialEq)]
enum Gone {
    Corner(DVec2),
    /// Length and angle as typed.
    Typed(String, String),
}

/// An outline being drawn.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Draft {
    /// The shape that the corners define.
    pub(crate) shaped: Shaped,
    /// Direction of the first side of a rectangle, in plan; `None` for east.
    along: Option<DVec2>,
    /// Corners so far, in plan.
    pub(crate) corners: Vec<DVec2>,
    /// Undone steps, for redo.
    gone: Vec<Gone>,
    /// The next corner as aimed.
    pub(crate) next: Option<DVec2>,
    /// The pointer position.
    pointer: Option<DVec2>,
    /// Whether keys have aimed since the last corner.
    pub(crate) by_keys: bool,
    /// The length to the next corner as typed; for a rectangle both lengths.
    pub(crate) typed: String,
    /// The angle to the previous side as typed, degrees; for the first side its bearing.
    pub(crate) angle: String,
    /// The error for what was typed or drawn.
    pub(crate) wrong: String,
}

impl Draft {
    /// A draft of a shape, aligned with the existing house.
    pub(crate) fn of(shaped: Shaped, job: &Resolved) -> Self {
        Self { shaped, along: way_of_house(job), ..Self::default() }
    }

    /// Aims the next corner with the pointer.
    pub(crate) fn aim(&mut self, scene: Scene, pointer: DVec2, how: Aim) -> Vec<Guide> {
        let (next, guides) = self.aimed(scene, pointer, how);
        (self.next, self.pointer) = (Some(next), Some(pointer));
        let typed = crate::state::size_typed(&self.typed, scene.job.units);
        if self.shaped != Shaped::Corners
            && let Ok(size) = typed
            && let Some(at) = self.shaped.sized(self.along(), &self.corners, pointer, size)
        {
            self.next = Some(at);
            return Vec::new();
        }
        guides
    }

    fn aimed(&self, scene: Scene, pointer: DVec2, how: Aim) -> (DVec2, Vec<Guide>) {
        if self.shaped == Shaped::Corners
            && let Some(way) = self.typed_way(pointer)
            && let Some(&last) = self.corners.last()
        {
            return (last + way * (pointer - last).dot(way).max(0.01), Vec::new());
        }
        if how.free {
            return (pointer, Vec::new());
        }
        if let Some(&first) = self.corners.first()
            && self.shaped == Shaped::Corners
            && self.corners.len() >= 3
            && first.distance(pointer) <= scene.reach
        {
            return (first, vec![Guide { line: (first, first), words: text::CLOSES.now().to_owned() }]);
        }
        if self.shaped != Shaped::Corners {
            return snap::point(scene, pointer, &[], &[], &[]);
        }
        if how.square
            && let Some(square) = self.squared(pointer, scene.reach)
        {
            return square;
        }
        let anchors: Vec<DVec2> = self.corners.last().copied().into_iter().collect();
        snap::point(scene, pointer, &anchors, &self.corners, &[])
    }

    /// The next corner at a right angle to the previous side, or straight on; nearby positions snap so that the closing
    /// side is perpendicular to the first side.
    fn squared(&self, pointer: DVec2, reach: f64) -> Option<(DVec2, Vec<Guide>)> {
        let &last = self.corners.last()?;
        let before = match self.corners.as_slice() {
            [.., a, b] => (*b - *a).try_normalize()?,
            _ => self.along(),
        };
        let to = pointer - last;
        let along = if to.dot(before).abs() > to.perp_dot(before).abs() { before } else { before.perp() };
        let foot = last + along * to.dot(along);
        let mut guides = vec![Guide { line: (last, foot), words: text::square_to(None) }];
        if let [first, second, _, ..] = self.corners.as_slice() {
            let side = (*second - *first).normalize_or_zero();
            let ways = [side, side.perp()].into_iter().filter(|way| way.dot(along).abs() > 0.1);
            let level = ways.map(|way| foot - along * ((foot - *first).dot(way) / along.dot(way)));
            let near = level.filter(|at| at.distance(foot) <= reach * 1.5 && at.distance(last) > 1e-6);
            if let Some(at) = near.min_by(|a, b| a.distance(foot).total_cmp(&b.distance(foot))) {
                guides = vec![
                    Guide { line: (last, at), words: text::square_to(None) },
                    Guide { line: (*first, at), words: text::SQUARE_TO_FIRST.now().to_owned() },
                ];
                return Some((at, guides));
            }
        }
        Some((foot, guides))
    }

    /// Direction of the next side by the typed angle: for the first side a bearing, for others the angle to the
    /// previous side, on the side of the pointer. `None` if no angle was typed.
    fn typed_way(&self, pointer: DVec2) -> Option<DVec2> {
        let angle = read_angle(&self.angle).filter(|angle| angle.is_finite())?;
        match self.corners.as_slice() {
            [] => None,
            [_] => Some(Azimuth::from_degrees(angle).unit()),
            [.., a, b] => {
                let back = (*a - *b).try_normalize()?;
                let left = back.perp_dot(pointer - *b) >= 0.0;
                let turn = if left { angle } else { -angle };
                Some(DVec2::from_angle(turn.to_radians()).rotate(back))
            }
        }
    }

    /// Direction of the first side of a rectangle.
    fn along(&self) -> DVec2 {
        self.along.unwrap_or(DVec2::X)
    }

    /// The corners including the one aimed at: for a shape all of its corners.
    pub(crate) fn shown(&self) -> Vec<DVec2> {
        let mut corners = self.corners.clone();
        corners.extend(self.next);
        self.shaped.outline(self.along(), &corners, self.pointer)
    }

    /// Whether the next corner would close the outline.
    fn closes(&self) -> bool {
        self.shaped == Shaped::Corners
            && self.corners.len() >= 3
            && self.next.is_some()
            && self.next == self.corners.first().copied()
    }

    /// Sets the next corner where it is aimed. Returns true if that closes the outline.
    pub(crate) fn set(&mut self) -> bool {
        self.wrong.clear();
        if self.closes() {
            return true;
        }
        if let Some(next) = self.next
            && self.corners.last().is_none_or(|last| last.distance(next) > 1e-3)
        {
            self.push(next);
        }
        self.shaped.is_whole(self.corners.len())
    }

    fn push(&mut self, corner: DVec2) {
        self.corners.push(corner);
        self.gone.clear();
        self.typed.clear();
        self.angle.clear();
    }

    /// Sets the next corner as typed: at a length in the aimed direction, or so that a shape has the typed size.
    /// Returns true if that closes the outline.
    pub(crate) fn set_typed(&mut self, units: Units) -> bool {
        let wrong = |words: &str| words.to_owned();
        if self.shaped != Shaped::Corners {
            match crate::state::size_typed(&self.typed, units) {
                Ok(size) if size.min_element() > 0.0 => {
                    let to = self.pointer.unwrap_or(DVec2::ZERO);
                    self.next = self.shaped.sized(self.along(), &self.corners, to, size);
                    return self.set();
                }
                Ok(_) => self.wrong = wrong(text::LENGTH_NOT_POSITIVE.now()),
                Err(Some(error)) => self.wrong = error.to_string(),
                Err(None) => self.wrong = wrong(text::TWO_LENGTHS.now()),
            }
            return false;
        }
        if !self.angle.trim().is_empty() && read_angle(&self.angle).is_none() {
            self.wrong = wrong(text::NO_ANGLE.now());
            return false;
        }
        let length = match Length::parse(&self.typed, units) {
            Ok(length) => length,
            Err(error) => {
                self.wrong = error.to_string();
                return false;
            }
        };
        let way = self.corners.last().zip(self.next).and_then(|(&last, next)| (next - last).try_normalize());
        match (self.corners.last(), way) {
            (Some(_), Some(_)) if length <= Length::ZERO => {
                self.wrong = wrong(text::LENGTH_NOT_POSITIVE.now());
            }
            (Some(&last), Some(way)) => {
                self.push(last + way * length.metres());
                self.next = None;
                self.wrong.clear();
            }
            _ => self.wrong = wrong(text::NO_DIRECTION.now()),
        }
        false
    }

    /// Removes the last corner.
    pub(crate) fn back(&mut self) {
        self.gone.extend(self.corners.pop().map(Gone::Corner));
        self.wrong.clear();
    }

    /// Undoes one step: clears what is typed, or else removes the last corner.
    pub(crate) fn step_back(&mut self) {
        if self.typed.is_empty() && self.angle.is_empty() {
            self.back();
            return;
        }
        let (length, angle) = (std::mem::take(&mut self.typed), std::mem::take(&mut self.angle));
        self.gone.push(Gone::Typed(length, angle));
        self.wrong.clear();
    }

    /// Redoes the last undone step. Returns false if there is none.
    pub(crate) fn again(&mut self) -> bool {
        match self.gone.pop() {
            Some(Gone::Corner(corner)) => self.corners.push(corner),
            Some(Gone::Typed(length, angle)) => (self.typed, self.angle) = (length, angle),
            None => return false,
        }
        true
    }

    /// The outline defined by the corners.
    ///
    /// # Errors
    /// A message for the user if they define none.
    pub(crate) fn outline(&self) -> Result<Vec<DVec2>, String> {
        let corners = match self.shaped {
            Shaped::Corners => self.corners.clone(),
            shaped if shaped.is_whole(self.corners.len()) => {
                shaped.outline(self.along(), &self.corners, self.pointer)
            }
            _ => return Err(text::SHAPE_NOT_WHOLE.now().to_owned()),
        };
        if corners.len() < 3 {
            return Err(text::THREE_CORNERS.now().to_owned());
        }
        if signed_area(&corners).abs() < 1e-4 {
            return Err(text::NO_AREA.now().to_owned());
        }
        Ok(corners)
    }
}

/// Parses an angle: "90", "90°", "22.5 deg"; degrees.
fn read_angle(typed: &str) -> Option<f64> {
    typed
        .trim()
        .trim_end_matches("deg")
        .trim_end_matches(['°', ' '])
        .parse()
        .ok()
        .filter(|a: &f64| a.is_finite())
}

/// The orientation of the house: along the longest side of what was drawn first. `None` without a roof.
fn way_of_house(job: &Resolved) -> Option<DVec2> {
    let outline =
        job.parts.first().map(|part| &part.outline).or(job.faces.first().map(|face| &face.outline))?;
    let longest =
        outline.sides().map(|(_, _, a, b)| b - a).max_by(|a, b| a.length().total_cmp(&b.length()))?;
    let way = longest.try_normalize()?;
    // Pointing to the right of the screen, so that the first of two lengths is the horizontal one.
    Some([way, way.perp(), -way, -way.perp()].into_iter().fold(way, |a, b| if b.x > a.x { b } else { a }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::dvec2;

    fn draft(corners: &[(f64, f64)]) -> Draft {
        Draft { corners: corners.iter().map(|&(x, y)| dvec2(x, y)).collect(), ..Draft::default() }
    }

    #[test]
    fn an_outline_without_a_face_is_reported() {
        assert!(draft(&[(0.0, 0.0), (1.0, 0.0)]).outline().is_err());
        assert!(draft(&[(0.0, 0.0), (1.0, 0.0), (2.0, 0.0)]).outline().is_err());
    }
}
