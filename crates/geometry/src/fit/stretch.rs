//! Intervals on a line: sorted, without overlap, ends included.

/// From and to.
pub(super) type Stretch = (f64, f64);

/// Sorts intervals and joins those that touch or are at most `bridge` apart.
pub(super) fn joined(mut found: Vec<Stretch>, bridge: f64) -> Vec<Stretch> {
    found.sort_unstable_by(|p, q| p.0.total_cmp(&q.0));
    let mut joined: Vec<Stretch> = Vec::with_capacity(found.len());
    for (a, b) in found {
        match joined.last_mut() {
            Some(last) if a <= last.1 + bridge => last.1 = last.1.max(b),
            _ => joined.push((a, b)),
        }
    }
    joined
}

/// The intersection.
pub(super) fn both(p: &[Stretch], q: &[Stretch]) -> Vec<Stretch> {
    let (mut i, mut j) = (0, 0);
    let mut shared = Vec::with_capacity(p.len().max(q.len()));
    while let (Some(a), Some(b)) = (p.get(i), q.get(j)) {
        let (from, to) = (a.0.max(b.0), a.1.min(b.1));
        if from <= to {
            shared.push((from, to));
        }
        if a.1 < b.1 { i += 1 } else { j += 1 }
    }
    shared
}

/// What is left outside some zones, which must be sorted and joined; the ends of a zone are left.
pub(super) fn without(of: &[Stretch], zones: &[Stretch]) -> Vec<Stretch> {
    let mut left = Vec::with_capacity(of.len() + zones.len());
    for &(a, b) in of {
        let mut from = a;
        for &(lo, hi) in zones.iter().filter(|zone| zone.1 > a && zone.0 < b) {
            if lo >= from {
                left.push((from, lo));
            }
            from = from.max(hi);
        }
        if from <= b {
            left.push((from, b));
        }
    }
    left
}

/// Where an interval of the given width may begin so that at least `least` of it is over some others.
pub(super) fn enough(under: &[Stretch], width: f64, least: f64) -> Vec<Stretch> {
    let over = |u: f64| -> f64 { under.iter().map(|&(a, b)| ((u + width).min(b) - u.max(a)).max(0.0)).sum() };
    let mut bends: Vec<f64> = under.iter().flat_map(|&(a, b)| [a - width, a, b - width, b]).collect();
    bends.sort_unstable_by(f64::total_cmp);
    let mut found = Vec::new();
    for pair in bends.windows(2) {
        let (from, to) = (over(pair[0]) - least, over(pair[1]) - least);
        let cross = || pair[0] + (pair[1] - pair[0]) * (from / (from - to)).clamp(0.0, 1.0);
        match (from >= 0.0, to >= 0.0) {
            (true, true) => found.push((pair[0], pair[1])),
            (true, false) => found.push((pair[0], cross())),
            (false, true) => found.push((cross(), pair[1])),
            (false, false) => {}
        }
    }
    joined(found, 0.0)
}

/// The first point of some intervals at or after `from`.
pub(super) fn first(of: &[Stretch], from: f64) -> Option<f64> {
    of.get(of.partition_point(|s| s.1 < from)).map(|s| s.0.max(from))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn by_hand() {
        assert_eq!(joined(vec![(2.0, 3.0), (0.0, 1.0), (0.5, 1.5)], 0.0), [(0.0, 1.5), (2.0, 3.0)]);
        assert_eq!(joined(vec![(2.0, 3.0), (0.0, 1.5)], 0.5), [(0.0, 3.0)]);
        assert_eq!(both(&[(0.0, 2.0), (3.0, 5.0)], &[(1.0, 4.0)]), [(1.0, 2.0), (3.0, 4.0)]);
        assert_eq!(both(&[(0.0, 1.0)], &[(1.0, 4.0)]), [(1.0, 1.0)]);
        assert_eq!(without(&[(0.0, 5.0)], &[(1.0, 2.0), (4.0, 9.0)]), [(0.0, 1.0), (2.0, 4.0)]);
        assert_eq!(without(&[(0.0, 5.0)], &[(-1.0, 6.0)]), []);
        assert_eq!(first(&[(0.0, 1.0), (3.0, 4.0)], 2.0), Some(3.0));
        assert_eq!(first(&[(0.0, 1.0), (3.0, 4.0)], 3.5), Some(3.5));
        assert_eq!(first(&[(0.0, 1.0)], 3.5), None);
    }

    #[test]
    fn half_of_a_module_over_a_gap() {
        // Two modules of 2 with a gap of 1.5 between them; at most half of a module of 2 may be over the gap.
        let under = [(0.0, 2.0), (3.5, 5.5)];
        assert_eq!(enough(&under, 2.0, 1.0), [(-1.0, 1.0), (2.5, 4.5)]);
        // A gap of 1: over the gap, the two carry half.
        assert_eq!(enough(&[(0.0, 2.0), (3.0, 5.0)], 2.0, 1.0), [(-1.0, 4.0)]);
        assert_eq!(enough(&[(0.0, 2.0)], 2.0, 2.0), [(0.0, 0.0)]);
    }
}
