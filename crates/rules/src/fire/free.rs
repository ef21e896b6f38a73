//! One-dimensional intervals: union, intersection, difference.

/// Union: intervals merged where they touch or overlap, in order.
pub(super) fn joined(mut stretches: Vec<(f64, f64)>, slack: f64) -> Vec<(f64, f64)> {
    stretches.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut out: Vec<(f64, f64)> = Vec::new();
    for (from, to) in stretches.into_iter().filter(|s| s.1 > s.0) {
        match out.last_mut() {
            Some(last) if from <= last.1 + slack => last.1 = last.1.max(to),
            _ => out.push((from, to)),
        }
    }
    out
}

/// The intersection of two lists of intervals.
pub(super) fn common(one: &[(f64, f64)], two: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let pairs = one.iter().flat_map(|a| two.iter().map(move |b| (a.0.max(b.0), a.1.min(b.1))));
    pairs.filter(|(from, to)| to > from).collect()
}

/// The difference of two lists of intervals.
pub(super) fn without(stretches: &[(f64, f64)], others: Vec<(f64, f64)>) -> Vec<(f64, f64)> {
    let others = joined(others, 0.0);
    let mut left = Vec::new();
    for &(mut from, to) in stretches {
        for &(start, end) in &others {
            if end <= from {
                continue;
            }
            if start >= to {
                break;
            }
            if start > from {
                left.push((from, start));
            }
            from = from.max(end);
        }
        if to > from {
            left.push((from, to));
        }
    }
    left
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn of_lists() {
        assert_eq!(joined(vec![(3.0, 4.0), (0.0, 1.0), (1.0, 2.0)], 0.0), vec![(0.0, 2.0), (3.0, 4.0)]);
        assert_eq!(common(&[(0.0, 5.0)], &[(4.0, 9.0), (5.0, 6.0)]), vec![(4.0, 5.0)]);
        assert_eq!(
            without(&[(0.0, 9.0)], vec![(4.0, 5.0), (1.0, 2.0)]),
            vec![(0.0, 1.0), (2.0, 4.0), (5.0, 9.0)]
        );
        assert_eq!(without(&[(1.0, 2.0)], vec![(0.0, 3.0)]), vec![]);
    }
}
