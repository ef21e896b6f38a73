//! Areas made of axis-aligned rectangles, sliced into horizontal bands. Exact, and fast enough for every mouse move.

use chalkcourse_geometry::{Rect, dvec2};

/// Bands and stretches narrower than this, in metres, are float dust.
const CRUMB: f64 = 1e-9;

/// `outer` minus `inner`, as non-overlapping rectangles.
pub(crate) fn without(outer: &[Rect], inner: &[Rect]) -> Vec<Rect> {
    let mut levels: Vec<f64> = outer.iter().chain(inner).flat_map(|rect| [rect.min.y, rect.max.y]).collect();
    levels.sort_by(f64::total_cmp);
    levels.dedup_by(|a, b| *a - *b <= CRUMB);
    let mut pieces: Vec<Rect> = Vec::new();
    // Rectangles that end at the current level, so that equal stretches extend upwards instead of piling up.
    let mut open: Vec<usize> = Vec::new();
    for (from, to) in levels.iter().zip(levels.iter().skip(1)) {
        let middle = (from + to) / 2.0;
        let left = difference(&spans_at(outer, middle), &spans_at(inner, middle));
        let mut now = Vec::with_capacity(left.len());
        for (start, end) in left {
            let below = open.iter().copied().find(|&index| {
                pieces.get(index).is_some_and(|p| {
                    (p.min.x - start).abs() <= CRUMB && (p.max.x - end).abs() <= CRUMB && p.max.y == *from
                })
            });
            match below.and_then(|index| Some((index, pieces.get_mut(index)?))) {
                Some((index, piece)) => {
                    piece.max.y = *to;
                    now.push(index);
                }
                None => {
                    now.push(pieces.len());
                    pieces.push(Rect { min: dvec2(start, *from), max: dvec2(end, *to) });
                }
            }
        }
        open = now;
    }
    pieces
}

/// The merged stretches that some rectangles cover at a height, left to right.
fn spans_at(rects: &[Rect], height: f64) -> Vec<(f64, f64)> {
    let mut spans: Vec<(f64, f64)> = rects
        .iter()
        .filter(|rect| rect.min.y < height && height < rect.max.y)
        .map(|rect| (rect.min.x, rect.max.x))
        .collect();
    spans.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut merged: Vec<(f64, f64)> = Vec::with_capacity(spans.len());
    for (start, end) in spans {
        match merged.last_mut() {
            Some(last) if start <= last.1 + CRUMB => last.1 = last.1.max(end),
            _ => merged.push((start, end)),
        }
    }
    merged
}

fn difference(spans: &[(f64, f64)], others: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let mut left = Vec::new();
    for &(start, to) in spans {
        let mut from = start;
        for &(other_start, other_end) in others.iter().filter(|other| other.1 > start && other.0 < to) {
            if other_start - from > CRUMB {
                left.push((from, other_start));
            }
            from = from.max(other_end);
        }
        if to - from > CRUMB {
            left.push((from, to));
        }
    }
    left
}

#[cfg(test)]
mod tests {
    use super::*;
    use chalkcourse_geometry::Polygon;

    fn rect(x: f64, y: f64, w: f64, h: f64) -> Rect {
        Rect::at(dvec2(x, y), dvec2(w, h))
    }

    fn area(rects: &[Rect]) -> f64 {
        rects.iter().map(Rect::area).sum()
    }

    #[test]
    fn a_frame_around_a_rectangle_is_four_pieces() {
        let inner = rect(0.0, 0.0, 6.0, 3.0);
        let frame = without(&[inner.grown(0.5)], &[inner]);
        assert_eq!(frame.len(), 4);
        assert!((area(&frame) - (7.0 * 4.0 - 18.0)).abs() < 1e-12);
    }

    #[test]
    fn stacked_rectangles_become_one() {
        assert_eq!(without(&[rect(0.0, 0.0, 2.0, 1.0), rect(0.0, 1.0, 2.0, 1.0)], &[]).len(), 1);
        assert!(without(&[], &[rect(0.0, 0.0, 1.0, 1.0)]).is_empty());
    }

    /// Against the general polygon operations, on shapes that overlap, touch and nest.
    #[test]
    fn agrees_with_polygon_union_and_difference() {
        let steps = [rect(0.0, 0.0, 5.0, 1.2), rect(1.0, 1.2, 5.0, 1.2), rect(2.5, 2.4, 1.5, 1.2)];
        let grown: Vec<Rect> = steps.iter().map(|r| r.grown(0.45)).collect();
        let polygon = |r: &Rect| Polygon::new(r.corners().to_vec());
        let union = Polygon::union(&grown.iter().map(polygon).collect::<Vec<_>>());
        let inner: Vec<Polygon> = steps.iter().map(polygon).collect();
        let expect: f64 = union.iter().flat_map(|u| u.difference(&inner)).map(|p| p.area()).sum();
        let got = area(&without(&grown, &steps));
        assert!((got - expect).abs() < 1e-6, "{got} against {expect}");
    }
}
