//! A one-line diagram as a drawing: rectangles with names in columns, a line for the circuit and a dashed one for its ground, and numbers
//! that stand for conductors in the table below. A unit of it is a point of paper.

use super::content::{Group, OneLine, Station};
use crate::drawing::{Drawing, Ink, Shape};
use crate::letters::Letters;
use chalkcourse_geometry::{DVec2, Rect, dvec2};
use chalkcourse_words as words;

/// Width of the drawing.
pub(super) const WIDE: f64 = 706.0;
/// Between columns, with a number on the line.
const GAP: f64 = 27.0;
const TITLE: f32 = 6.8;
const LINE: f32 = 6.0;
const LEAD: f64 = 1.25;
const PADDING: f64 = 5.0;
/// Between rows of groups.
const BETWEEN: f64 = 14.0;
/// How far the ground runs below the circuit.
const GROUND: f64 = 9.0;
/// Room below for the sign of earth, and its words.
const EARTH: f64 = 44.0;

/// A station with its text set to the width of a column.
struct Set {
    title: Vec<String>,
    lines: Vec<String>,
    height: f64,
}

fn set(station: &Station, letters: &[Letters; 2], wide: f64) -> Set {
    let room = (wide - 2.0 * PADDING) as f32;
    let title = letters[0].lines(&station.title.to_uppercase(), TITLE, room);
    let lines: Vec<String> =
        station.lines.iter().flat_map(|line| letters[0].lines(line, LINE, room)).collect();
    let text = title.len() as f64 * f64::from(TITLE) * LEAD + lines.len() as f64 * f64::from(LINE) * LEAD;
    Set { title, lines, height: text + 2.0 * PADDING + 2.0 }
}

/// The diagram as shapes.
struct Board<'a> {
    letters: &'a [Letters; 2],
    shapes: Vec<Shape>,
    column: f64,
}

/// Draws the diagram.
pub(super) fn drawing(title: String, all: &OneLine, letters: &[Letters; 2]) -> Drawing {
    let before = all.groups.iter().map(|group| group.stations.len()).max().unwrap_or(1);
    let columns = (before + all.common.len()) as f64;
    let column = (WIDE - GAP * (columns - 1.0)) / columns;
    let mut board = Board { letters, shapes: Vec::new(), column };
    let groups: Vec<Vec<Set>> = all.groups.iter().map(|group| board.sets(&group.stations)).collect();
    let common = board.sets(&all.common);
    let high = |sets: &[Set]| sets.iter().map(|set| set.height).fold(0.0, f64::max);
    let rows: Vec<f64> = groups.iter().map(|sets| high(sets) + BETWEEN).collect();
    let height = rows.iter().sum::<f64>().max(high(&common) + BETWEEN) + EARTH;
    // Rows from the top, evenly where what they lead to is higher.
    let spare = (height - EARTH - rows.iter().sum::<f64>()) / rows.len().max(1) as f64;
    let mut top = height;
    let mut levels = Vec::new();
    for ((group, sets), row) in all.groups.iter().zip(&groups).zip(&rows) {
        let level = top - (row + spare) / 2.0;
        board.group(group, sets, level);
        levels.push(level);
        top -= row + spare;
    }
    let level = (levels.first().copied().unwrap_or(height) + levels.last().copied().unwrap_or(0.0)) / 2.0;
    board.gather(before, &levels);
    board.common(&common, &all.common_tags, before, level);
    let bounds = Rect { min: DVec2::ZERO, max: dvec2(WIDE, height) };
    Drawing { title, bounds, shapes: board.shapes, beside: Vec::new() }
}

impl Board<'_> {
    fn sets(&self, stations: &[Station]) -> Vec<Set> {
        stations.iter().map(|station| set(station, self.letters, self.column)).collect()
    }

    /// Left side of a column.
    fn left(&self, column: usize) -> f64 {
        column as f64 * (self.column + GAP)
    }

    fn line(&mut self, from: DVec2, to: DVec2) {
        let points = vec![from, to];
        self.shapes.push(Shape::Line { points, width: 1.3, dashes: Vec::new(), ink: Ink::Dark });
        let down = dvec2(0.0, GROUND);
        if (from.y - to.y).abs() < 1e-9 {
            self.ground(vec![from - down, to - down]);
        }
    }

    fn ground(&mut self, points: Vec<DVec2>) {
        self.shapes.push(Shape::Line { points, width: 0.7, dashes: vec![3.0, 2.0], ink: Ink::Dark });
    }

    /// The circuit from one column to the next, with its number.
    fn wire(&mut self, behind: usize, level: f64, tag: Option<usize>) {
        let from = dvec2(self.left(behind) + self.column, level);
        let to = dvec2(self.left(behind + 1), level);
        self.line(from, to);
        if let Some(tag) = tag {
            self.tag(from.midpoint(to), tag);
        }
    }

    fn tag(&mut self, at: DVec2, tag: usize) {
        let turn = |step: u32| DVec2::from_angle(f64::from(step) * std::f64::consts::TAU / 24.0);
        let ring = (0..24).map(|step| at + turn(step) * 6.2).collect();
        self.shapes.push(Shape::Area { ring, ink: Ink::Paper });
        self.shapes.push(Shape::Words { at, turn: 0.0, size: LINE, text: tag.to_string() });
    }

    fn station(&mut self, set: &Set, column: usize, level: f64) {
        let left = self.left(column);
        let rect = Rect {
            min: dvec2(left, level - set.height / 2.0),
            max: dvec2(left + self.column, level + set.height / 2.0),
        };
        self.shapes.push(Shape::Area { ring: rect.corners().to_vec(), ink: Ink::Paper });
        let mut y = rect.max.y - PADDING;
        let middle = rect.centre().x;
        let titles = set.title.iter().map(|text| (text, TITLE));
        let lines = set.lines.iter().map(|text| (text, LINE));
        for (nth, (text, size)) in titles.chain(lines).enumerate() {
            if nth == set.title.len() {
                y -= 2.0;
            }
            let high = f64::from(size) * LEAD;
            let at = dvec2(middle, y - high / 2.0);
            self.shapes.push(Shape::Words { at, turn: 0.0, size, text: text.clone() });
            y -= high;
        }
    }

    fn group(&mut self, group: &Group, sets: &[Set], level: f64) {
        for (column, set) in sets.iter().enumerate() {
            if column + 1 < sets.len() {
                self.wire(column, level, group.tags.get(column).copied());
            }
            self.station(set, column, level);
        }
    }

    /// Joins the groups to what they lead to.
    fn gather(&mut self, before: usize, levels: &[f64]) {
        if levels.len() < 2 {
            return;
        }
        let x = self.left(before) - GAP * 0.62;
        let edge = self.left(before) - GAP;
        for row in levels {
            self.line(dvec2(edge, *row), dvec2(x, *row));
        }
        let (Some(top), Some(bottom)) = (levels.first(), levels.last()) else { return };
        self.shapes.push(Shape::Line {
            points: vec![dvec2(x, *top), dvec2(x, *bottom)],
            width: 1.3,
            dashes: Vec::new(),
            ink: Ink::Dark,
        });
        let down = dvec2(4.0, GROUND);
        self.ground(vec![
            dvec2(x, *top) + down * dvec2(1.0, -1.0),
            dvec2(x, *bottom) + down * dvec2(1.0, -1.0),
        ]);
    }

    fn common(&mut self, sets: &[Set], tags: &[usize], before: usize, level: f64) {
        for (nth, set) in sets.iter().enumerate() {
            let column = before + nth;
            self.wire(column - 1, level, tags.get(nth).copied());
            self.station(set, column, level);
        }
        // The service, before the meter, is where all is grounded.
        let Some(service) = sets.len().checked_sub(2) else { return };
        let foot = dvec2(
            self.left(before + service) + self.column / 2.0,
            level - sets.get(service).map_or(0.0, |set| set.height / 2.0),
        );
        let earth = dvec2(foot.x, 22.0);
        self.ground(vec![foot, earth]);
        for (nth, half) in [9.0, 6.0, 3.0].into_iter().enumerate() {
            let at = earth - dvec2(0.0, 3.0 * nth as f64);
            self.shapes.push(Shape::Line {
                points: vec![at - dvec2(half, 0.0), at + dvec2(half, 0.0)],
                width: 1.0,
                dashes: Vec::new(),
                ink: Ink::Dark,
            });
        }
        let at = earth - dvec2(0.0, 14.0);
        let text = words::oneline::EARTH.now().to_owned();
        self.shapes.push(Shape::Words { at, turn: 0.0, size: LINE, text });
    }
}
