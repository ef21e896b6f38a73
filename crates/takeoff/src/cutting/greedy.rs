//! Heuristic plans without proof.

use super::knapsack::fill;
use super::{Shop, Way};

/// The best of several heuristics for cutting `demand`.
pub(super) fn best(shop: &Shop, demand: &[u32]) -> Way {
    let mut ways: Vec<Way> =
        (0..shop.room.len()).filter_map(|stock| first_fit(shop, demand, stock)).collect();
    ways.push(best_fill(shop, demand));
    ways.into_iter().min_by_key(|way| way.cost).unwrap_or_default()
}

/// First fit decreasing on one stock length; then each stick is replaced by the shortest that holds its pieces. `None` if a piece
/// is too long for the stock.
fn first_fit(shop: &Shop, demand: &[u32], stock: usize) -> Option<Way> {
    let mut open: Vec<(u64, Vec<usize>)> = Vec::new();
    for (index, &count) in demand.iter().enumerate() {
        let size = shop.size[index];
        if count > 0 && size > shop.room[stock] {
            return None;
        }
        let mut from = 0;
        for _ in 0..count {
            // Same size: sticks without room for the previous piece have none for this one.
            while open.get(from).is_some_and(|(left, _)| *left < size) {
                from += 1;
            }
            match open.get_mut(from) {
                Some((left, pieces)) => {
                    *left -= size;
                    pieces.push(index);
                }
                None => open.push((shop.room[stock] - size, vec![index])),
            }
        }
    }
    let mut way = Way::default();
    for (left, pieces) in open {
        way.push(shop, shortest(shop, shop.room[stock] - left).unwrap_or(stock), pieces);
    }
    Some(way)
}

/// The cheapest stock that holds the amount.
fn shortest(shop: &Shop, used: u64) -> Option<usize> {
    (0..shop.room.len()).filter(|&stock| shop.room[stock] >= used).min_by_key(|&stock| shop.cost[stock])
}

/// Best fill, stick by stick: the longest piece left goes into the stick that it fills best together with others.
fn best_fill(shop: &Shop, demand: &[u32]) -> Way {
    let mut left = demand.to_vec();
    let mut way = Way::default();
    let length: Vec<i64> = shop.size.iter().map(|&size| size as i64).collect();
    while let Some(longest) = left.iter().position(|&count| count > 0) {
        left[longest] -= 1;
        let mut chosen: Option<(u64, u64, usize, Vec<u32>)> = None;
        for stock in (0..shop.room.len()).filter(|&stock| shop.room[stock] >= shop.size[longest]) {
            let rest = fill(&shop.size, &length, &left, shop.room[stock] - shop.size[longest]);
            let used = shop.size[longest] + rest.value as u64;
            // Cost per length used, compared by cross-multiplication.
            let better = chosen.as_ref().is_none_or(|(cost, best, _, _)| {
                u128::from(shop.cost[stock]) * u128::from(*best) < u128::from(*cost) * u128::from(used)
            });
            if better {
                chosen = Some((shop.cost[stock], used, stock, rest.count));
            }
        }
        let Some((_, _, stock, count)) = chosen else { break };
        let mut pieces = vec![longest];
        for (index, &count) in count.iter().enumerate() {
            left[index] -= count;
            pieces.extend(std::iter::repeat_n(index, count as usize));
        }
        pieces.sort_unstable();
        way.push(shop, stock, pieces);
    }
    way
}
