//! Whether the roof as drawn holds together.

pub(crate) mod counted_twice;
pub(crate) mod height_gap;
pub(crate) mod near_miss;
pub(crate) mod no_home;
pub(crate) mod outline;
pub(crate) mod part;

use crate::case::Case;

/// `face-1/face-2`, the lower number first, by indices of two faces.
fn pair(case: &Case<'_>, one: usize, two: usize) -> String {
    let mut ids = [one, two].map(|index| case.face_id(index).map_or(0, |id| id.0));
    ids.sort_unstable();
    format!("face-{}/face-{}", ids[0], ids[1])
}

/// Groups by a key, in the order of first sight.
fn grouped<T>(items: Vec<(String, T)>) -> Vec<(String, Vec<T>)> {
    let mut groups: Vec<(String, Vec<T>)> = Vec::new();
    let mut place = std::collections::HashMap::new();
    for (key, item) in items {
        let index = *place.entry(key.clone()).or_insert(groups.len());
        match groups.get_mut(index) {
            Some((_, list)) => list.push(item),
            None => groups.push((key, vec![item])),
        }
    }
    groups
}
