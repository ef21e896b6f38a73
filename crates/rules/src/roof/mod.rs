//! Rules about the roof as drawn.

pub(crate) mod counted_twice;
pub(crate) mod height_gap;
pub(crate) mod lost;
pub(crate) mod near_miss;
pub(crate) mod no_home;
pub(crate) mod one_plane;
pub(crate) mod outline;
pub(crate) mod part;

use crate::view::DrawnView;
use chalkcourse_job::{FaceId, Subject};

/// Problems of face pairs, with the ids of the faces.
type OfPair<T> = Vec<(FaceId, FaceId, T)>;

/// Problems given by the indices of two faces, grouped by pair in order of first occurrence.
fn pairs<T>(
    view: DrawnView<'_>,
    problems: impl Iterator<Item = (usize, usize, T)>,
) -> Vec<(Subject, OfPair<T>)> {
    let named = problems.filter_map(|(one, two, it)| {
        let (one, two) = (view.id(one)?, view.id(two)?);
        Some((Subject::Faces(one.min(two), one.max(two)), (one, two, it)))
    });
    grouped(named)
}

/// Groups by subject, in order of first occurrence.
fn grouped<T>(items: impl Iterator<Item = (Subject, T)>) -> Vec<(Subject, Vec<T>)> {
    let mut groups: Vec<(Subject, Vec<T>)> = Vec::new();
    let mut place = std::collections::HashMap::new();
    for (subject, item) in items {
        let index = *place.entry(subject.clone()).or_insert(groups.len());
        match groups.get_mut(index) {
            Some((_, list)) => list.push(item),
            None => groups.push((subject, vec![item])),
        }
    }
    groups
}
