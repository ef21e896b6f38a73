use chalkcourse_geometry::{DVec2, Rect, dvec2};
use chalkcourse_job::{Block, BlockId, Cell, Kit};

/// Corners within half a millimetre coincide, well below any cut on a roof.
const NEAR: f64 = 5e-4;

/// A placed block of modules, with the runs along which its parts go. All in the frame of its face, metres.
#[derive(Clone, Debug, PartialEq)]
pub struct PlacedBlock {
    /// Its id in the job.
    pub id: BlockId,
    /// Its name.
    pub name: String,
    /// Index of its face.
    pub face: usize,
    /// The gap between adjacent modules.
    pub reveal: f64,
    /// Modules, row by row from the eave, left to right.
    pub modules: Vec<PlacedModule>,
    /// Contiguous runs of modules within a row.
    pub strings: Vec<Run>,
    /// Segments of its border.
    pub runs: Vec<Run>,
    /// Seams between two modules of one row.
    pub seams: Vec<Seam>,
    /// Corners that get flashing.
    pub corners: Vec<Corner>,
    /// Bounding box of its modules; `None` if all are switched off.
    pub bounds: Option<Rect>,
}

/// One placed module.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlacedModule {
    /// Its cell in the block.
    pub cell: Cell,
    /// Its rectangle on the face.
    pub rect: Rect,
    /// The share of its lower edge that hooks into the base rail or the row below, 0 to 1.
    pub hooked: f64,
}

/// What a run along a block carries.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum RunKind {
    /// A contiguous run of modules: not a border, but the row itself.
    Row,
    /// The lower edge of the lowest row: base rail.
    BaseRail,
    /// A lower edge above the lowest row with no module below: it would need a rail of its own.
    OpenBottom,
    /// Left side, seen from the eave: step flashing.
    LeftSide,
    /// Right side.
    RightSide,
    /// An upper edge: head flashing.
    Head,
}

/// A segment, left to right or from the eave up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Run {
    /// What it carries.
    pub kind: RunKind,
    /// Its row; for a side, the lowest one.
    pub row: u32,
    /// Start.
    pub from: DVec2,
    /// End.
    pub to: DVec2,
}

impl Run {
    /// Its length in metres.
    pub fn length(&self) -> f64 {
        self.from.distance(self.to)
    }
}

/// A seam between two adjacent modules of a row.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Seam {
    /// The row.
    pub row: u32,
    /// The middle of the gap at the upper edge of the row.
    pub at: DVec2,
    /// Whether head flashing runs over it.
    pub under_head: bool,
}

/// Where two runs meet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum CornerKind {
    /// Head flashing and left side.
    HeadLeft,
    /// Head flashing and right side.
    HeadRight,
    /// Base rail and left side.
    BaseLeft,
    /// Base rail and right side.
    BaseRight,
    /// Head flashing that runs into the side of a higher row.
    Inside,
}

/// A placed corner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Corner {
    /// Its kind.
    pub kind: CornerKind,
    /// Its position.
    pub at: DVec2,
}

impl PlacedBlock {
    /// Places a block on a face, given by index.
    pub fn of(block: &Block, face: usize, kit: &Kit) -> Self {
        let size = block.module_size(kit);
        let reveal = block.reveal.metres();
        let mut modules: Vec<PlacedModule> = block
            .cells()
            .map(|cell| PlacedModule { cell, rect: Rect::at(block.corner_of(cell, kit), size), hooked: 1.0 })
            .collect();
        let rows = Rows::of(&modules, block.rows, reveal);
        for module in modules.iter_mut().filter(|m| m.cell.row > 0) {
            let below = &rows.spans[module.cell.row as usize - 1];
            module.hooked = covered((module.rect.min.x, module.rect.max.x), below) / size.x;
        }
        let runs = rows.runs(block.at.y, block.spacing(kit).y, size.y);
        let seams = seams_of(&modules, &runs, reveal);
        Self {
            id: block.id,
            name: block.name.clone(),
            face,
            reveal,
            bounds: Rect::around(modules.iter().flat_map(|m| [m.rect.min, m.rect.max])),
            strings: rows.strings(block.at.y, block.spacing(kit).y),
            corners: corners_of(&runs),
            modules,
            runs,
            seams,
        }
    }

    /// The runs of one kind.
    pub fn runs_of(&self, kind: RunKind) -> impl Iterator<Item = &Run> {
        self.runs.iter().filter(move |run| run.kind == kind)
    }

    /// Contiguous runs of modules within a row, each as a rectangle with its row, in the order of `strings`.
    pub fn stretches(&self) -> impl Iterator<Item = (u32, Rect)> {
        let high = self.modules.first().map_or(0.0, |module| module.rect.size().y);
        self.strings.iter().map(move |run| (run.row, Rect { min: run.from, max: run.to + dvec2(0.0, high) }))
    }

    /// Area of the deck under the modules and their reveals, in m².
    pub fn area_under(&self) -> f64 {
        let rows: f64 = self.strings.iter().map(Run::length).sum();
        let Some(first) = self.modules.first() else { return 0.0 };
        let height = first.rect.size().y;
        // The reveal between two rows belongs to the array where there is a module on both sides.
        let between: f64 = self
            .strings
            .iter()
            .filter(|run| run.row > 0)
            .map(|run| {
                let below: Vec<(f64, f64)> = self
                    .strings
                    .iter()
                    .filter(|r| r.row + 1 == run.row)
                    .map(|r| (r.from.x, r.to.x))
                    .collect();
                covered((run.from.x, run.to.x), &below)
            })
            .sum();
        rows * height + between * self.reveal
    }
}

/// The length of `span` covered by `others` (which do not overlap each other), in metres.
fn covered(span: (f64, f64), others: &[(f64, f64)]) -> f64 {
    others.iter().map(|o| (span.1.min(o.1) - span.0.max(o.0)).max(0.0)).sum()
}

/// For each row, from the eave, the spans of contiguous modules.
struct Rows {
    spans: Vec<Vec<(f64, f64)>>,
}

impl Rows {
    fn of(modules: &[PlacedModule], rows: u32, reveal: f64) -> Self {
        let mut spans: Vec<Vec<(f64, f64)>> = vec![Vec::new(); rows as usize];
        for module in modules {
            let Some(row) = spans.get_mut(module.cell.row as usize) else { continue };
            row.push((module.rect.min.x, module.rect.max.x));
        }
        for row in &mut spans {
            // A shift to the left may put a module on or past the one before it.
            row.sort_by(|a, b| a.0.total_cmp(&b.0));
            row.dedup_by(|next, last| {
                let joins = next.0 - last.1 <= reveal + NEAR;
                last.1 = if joins { last.1.max(next.1) } else { last.1 };
                joins
            });
        }
        Self { spans }
    }

    fn strings(&self, bottom: f64, spacing: f64) -> Vec<Run> {
        let mut strings = Vec::new();
        for (row, spans) in (0u32..).zip(&self.spans) {
            let v = bottom + spacing * f64::from(row);
            strings.extend(spans.iter().map(|&(from, to)| Run {
                kind: RunKind::Row,
                row,
                from: dvec2(from, v),
                to: dvec2(to, v),
            }));
        }
        strings
    }

    fn runs(&self, bottom: f64, spacing: f64, height: f64) -> Vec<Run> {
        let mut runs = Vec::new();
        let none = Vec::new();
        let mut sides: Vec<Run> = Vec::new();
        for (row, spans) in (0u32..).zip(&self.spans) {
            let v = bottom + spacing * f64::from(row);
            let index = row as usize;
            let below = index.checked_sub(1).map_or(&none, |below| &self.spans[below]);
            let above = self.spans.get(index + 1).unwrap_or(&none);
            let mut level = |kind, v: f64, from: f64, to: f64| {
                runs.push(Run { kind, row, from: dvec2(from, v), to: dvec2(to, v) });
            };
            for &span in spans {
                for (from, to) in without(span, below) {
                    level(if row == 0 { RunKind::BaseRail } else { RunKind::OpenBottom }, v, from, to);
                }
                for (from, to) in without(span, above) {
                    level(RunKind::Head, v + height, from, to);
                }
            }
            for &(from, to) in spans {
                for (kind, u) in [(RunKind::LeftSide, from), (RunKind::RightSide, to)] {
                    // Extend the side over rows that are flush with it.
                    let on = sides.iter_mut().find(|s| {
                        s.kind == kind
                            && (s.from.x - u).abs() <= NEAR
                            && (s.to.y - (v - spacing + height)).abs() <= NEAR
                    });
                    match on {
                        Some(side) if row > 0 => side.to = dvec2(side.to.x, v + height),
                        _ => sides.push(Run { kind, row, from: dvec2(u, v), to: dvec2(u, v + height) }),
                    }
                }
            }
        }
        runs.extend(sides);
        runs
    }
}

/// A span minus some others; slivers are left out.
fn without(span: (f64, f64), others: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let mut left = Vec::new();
    let mut from = span.0;
    for &(start, end) in others {
        if end <= from || start >= span.1 {
            continue;
        }
        if start - from > NEAR {
            left.push((from, start));
        }
        from = from.max(end);
    }
    if span.1 - from > NEAR {
        left.push((from, span.1));
    }
    left
}

fn seams_of(modules: &[PlacedModule], runs: &[Run], reveal: f64) -> Vec<Seam> {
    modules
        .windows(2)
        .filter(|pair| {
            pair[0].cell.row == pair[1].cell.row && pair[1].rect.min.x - pair[0].rect.max.x <= reveal + NEAR
        })
        .map(|pair| {
            let at = dvec2((pair[0].rect.max.x + pair[1].rect.min.x) / 2.0, pair[0].rect.max.y);
            let row = pair[0].cell.row;
            let under_head = runs.iter().any(|run| {
                run.kind == RunKind::Head && run.row == row && run.from.x < at.x && at.x < run.to.x
            });
            Seam { row, at, under_head }
        })
        .collect()
}

fn corners_of(runs: &[Run]) -> Vec<Corner> {
    let side_at = |kind: RunKind, at: DVec2, head: bool| {
        runs.iter().any(|run| {
            let end = if head { run.to } else { run.from };
            run.kind == kind && end.distance(at) <= NEAR
        })
    };
    let mut corners = Vec::new();
    for run in runs {
        match run.kind {
            RunKind::Head => {
                let left = side_at(RunKind::LeftSide, run.from, true);
                let right = side_at(RunKind::RightSide, run.to, true);
                corners.push(Corner {
                    kind: if left { CornerKind::HeadLeft } else { CornerKind::Inside },
                    at: run.from,
                });
                corners.push(Corner {
                    kind: if right { CornerKind::HeadRight } else { CornerKind::Inside },
                    at: run.to,
                });
            }
            RunKind::BaseRail => {
                corners.push(Corner { kind: CornerKind::BaseLeft, at: run.from });
                corners.push(Corner { kind: CornerKind::BaseRight, at: run.to });
            }
            _ => {}
        }
    }
    corners
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::block;
    use chalkcourse_geometry::Length;
    use chalkcourse_job::builtin_kit;

    fn placed(block: &Block) -> PlacedBlock {
        PlacedBlock::of(block, 0, &builtin_kit())
    }

    fn count(block: &PlacedBlock, kind: RunKind) -> (usize, f64) {
        (block.runs_of(kind).count(), block.runs_of(kind).map(Run::length).sum())
    }

    fn near(got: (usize, f64), expect: (usize, f64)) {
        assert!(got.0 == expect.0 && (got.1 - expect.1).abs() < 1e-9, "{got:?}, expected {expect:?}");
    }

    /// 3 rows of 4: 4 × 1.722 + 3 × 0.003 wide, 3 × 1.134 + 2 × 0.003 high.
    const WIDE: f64 = 6.897;
    const HIGH: f64 = 3.408;

    #[test]
    fn a_full_block_has_four_runs_and_four_corners() {
        let placed = placed(&block(3, 4));
        assert_eq!(placed.modules.len(), 12);
        near(count(&placed, RunKind::BaseRail), (1, WIDE));
        near(count(&placed, RunKind::Head), (1, WIDE));
        near(count(&placed, RunKind::LeftSide), (1, HIGH));
        near(count(&placed, RunKind::RightSide), (1, HIGH));
        near(count(&placed, RunKind::OpenBottom), (0, 0.0));
        assert_eq!(placed.seams.len(), 9);
        assert_eq!(placed.seams.iter().filter(|s| s.under_head).count(), 3);
        assert_eq!(placed.corners.len(), 4);
        assert!((placed.area_under() - WIDE * HIGH).abs() < 1e-9);
        assert!(placed.modules.iter().all(|m| (m.hooked - 1.0).abs() < 0.01));
    }

    #[test]
    fn a_module_switched_off_at_the_top_makes_an_inside_corner() {
        let block = block(3, 4).with_switched(Cell { row: 2, column: 0 });
        let placed = placed(&block);
        assert_eq!(placed.modules.len(), 11);
        // the head breaks into the top row's 3 modules and the stretch over the module below the gap
        near(count(&placed, RunKind::Head), (2, WIDE));
        assert_eq!(count(&placed, RunKind::LeftSide).0, 2);
        let kinds: Vec<_> = placed.corners.iter().map(|c| c.kind).collect();
        assert_eq!(kinds.iter().filter(|k| **k == CornerKind::HeadLeft).count(), 2);
        assert_eq!(kinds.iter().filter(|k| **k == CornerKind::Inside).count(), 1);
        near(count(&placed, RunKind::OpenBottom), (0, 0.0));
    }

    #[test]
    fn a_hole_in_the_lowest_row_leaves_the_row_above_open() {
        let block = block(2, 3).with_switched(Cell { row: 0, column: 1 });
        let placed = placed(&block);
        let (runs, length) = count(&placed, RunKind::OpenBottom);
        assert_eq!(runs, 1);
        assert!((length - 1.728).abs() < 1e-9);
        let hooked: Vec<bool> = placed.modules.iter().map(|m| m.hooked > 0.5).collect();
        assert_eq!(hooked, vec![true, true, true, false, true]);
    }

    #[test]
    fn a_shifted_row_hooks_over_less() {
        let block = block(2, 2).with_shift(1, Length::from_metres(1.0));
        let placed = placed(&block);
        let top: Vec<f64> = placed.modules.iter().filter(|m| m.cell.row == 1).map(|m| m.hooked).collect();
        assert!(top[0] > 0.99 && (top[1] - 0.722 / 1.722).abs() < 1e-3, "{top:?}");
        assert_eq!(count(&placed, RunKind::LeftSide).0, 2);
    }

    #[test]
    fn a_block_without_modules_is_nothing() {
        let block = block(1, 1).with_switched(Cell { row: 0, column: 0 });
        let placed = placed(&block);
        assert!(placed.runs.is_empty() && placed.corners.is_empty() && placed.bounds.is_none());
        assert_eq!(placed.area_under(), 0.0);
    }
}
