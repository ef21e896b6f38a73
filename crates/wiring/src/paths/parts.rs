//! The fewest extension leads by what hangs together without any: parts of the array whose points can be joined without a lead. A path
//! goes from part to part by a link with a lead, and within a part that no path covers in one piece.
//!
//! Paths and parts that share pieces make groups: a group of `parts` parts on `paths` paths has at least `parts + paths - 1` pieces, since
//! it hangs together, and at least as many as its parts need. Pieces less paths are links with leads. The groups that need fewest are found
//! over all ways to group the parts, each group with as many paths as its points fit into.

use super::forest::Forest;
use super::question::Question;
use super::{Costs, Link, Problem};

/// Of more parts than this not all groups are gone through.
const MOST_PARTS: usize = 11;
/// Rounds of the bound on the pieces of one part.
const ROUNDS: u32 = 60;

/// Extension leads that no answer with so many paths has fewer of; `known` is an answer.
pub(super) fn least_leads(problem: &Problem, known: &[Vec<usize>]) -> i64 {
    let parts = parts(problem);
    if parts.len() > MOST_PARTS {
        return 0;
    }
    let sizes: Vec<usize> = parts.iter().map(Vec::len).collect();
    let pieces: Vec<usize> = parts.iter().map(|part| pieces(problem, part, known)).collect();
    fewest_links(problem, &sizes, &pieces, known.len()).map_or(0, |links| links as i64)
}

fn is_free(problem: &Problem, from: usize, to: usize) -> bool {
    problem.links[from][to].is_some_and(|link| link.leads == 0)
}

/// Points that hang together by links without leads.
fn parts(problem: &Problem) -> Vec<Vec<usize>> {
    let mut left: Vec<usize> = (0..problem.home.len()).collect();
    let mut parts = Vec::new();
    while let Some(first) = left.pop() {
        let mut part = vec![first];
        let mut next = 0;
        while let Some(at) = part.get(next).copied() {
            next += 1;
            let (joined, others) = left.into_iter().partition(|to| is_free(problem, at, *to));
            left = others;
            part.extend::<Vec<usize>>(joined);
        }
        parts.push(part);
    }
    parts
}

/// Pieces of paths without leads that a part needs at least, whatever their sizes.
fn pieces(problem: &Problem, part: &[usize], known: &[Vec<usize>]) -> usize {
    let of_part = |point: usize| part.contains(&point);
    let begun = |path: &[usize]| {
        let joins = path
            .windows(2)
            .filter(|pair| of_part(pair[0]) && of_part(pair[1]) && is_free(problem, pair[0], pair[1]));
        path.iter().filter(|point| of_part(**point)).count() - joins.count()
    };
    let of_known: usize = known.iter().map(|path| begun(path)).sum();
    let by_size = part.len().div_ceil(problem.most.max(1));
    if of_known <= by_size.max(1) {
        return of_known;
    }
    let link = |from: usize, to: usize| {
        let leads = u32::from(!is_free(problem, from, to));
        (from != to).then_some(Link { leads, length: 0 })
    };
    let one_path = Problem {
        links: part.iter().map(|from| part.iter().map(|to| link(*from, *to)).collect()).collect(),
        home: vec![0; part.len()],
        both_ends: true,
        least: part.len(),
        most: part.len(),
        orders: Vec::new(),
    };
    let costs = Costs::of(&one_path, 1, false, false);
    let mut question = Question::of(&one_path, 1, &costs, None, of_known as i64 - 1);
    let breaks = Forest::of(&mut question, ROUNDS).least.max(0);
    by_size.max(1 + usize::try_from(breaks).unwrap_or(0))
}

/// The fewest links with leads over all ways to group parts and to give each group paths; `None` where no group fits its paths.
fn fewest_links(problem: &Problem, sizes: &[usize], pieces: &[usize], count: usize) -> Option<usize> {
    let sets = 1_usize << sizes.len();
    let sum = |of: &[usize], set: usize| -> usize {
        of.iter().enumerate().filter(|(part, _)| set >> part & 1 == 1).map(|(_, number)| number).sum()
    };
    let points: Vec<usize> = (0..sets).map(|set| sum(sizes, set)).collect();
    let needed: Vec<usize> = (0..sets).map(|set| sum(pieces, set)).collect();
    // For each number of paths and each set of parts.
    let mut fewest: Vec<Vec<Option<usize>>> = vec![vec![None; sets]; count + 1];
    fewest[0][0] = Some(0);
    for set in 1..sets {
        let lowest = set & set.wrapping_neg();
        for group in subsets(set).filter(|group| group & lowest != 0) {
            let parts = group.count_ones() as usize;
            let from = points[group].div_ceil(problem.most.max(1)).max(1);
            let to = points[group] / problem.least.max(1);
            for paths in from..=to.min(count) {
                let links = (parts - 1).max(needed[group].saturating_sub(paths));
                for all in paths..=count {
                    if let Some(others) = fewest[all - paths][set & !group] {
                        let there = &mut fewest[all][set];
                        *there = Some(there.map_or(links + others, |best| best.min(links + others)));
                    }
                }
            }
        }
    }
    fewest.last().and_then(|of_all| of_all.last().copied().flatten())
}

fn subsets(set: usize) -> impl Iterator<Item = usize> {
    std::iter::successors(Some(set), move |part| {
        let next = part.wrapping_sub(1) & set;
        (*part != 0 && next != 0).then_some(next)
    })
}

#[cfg(test)]
mod tests;
