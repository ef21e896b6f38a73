//! Steps one after the other, where no single one clears a finding: what a step breaks, the next one mends.

use super::judge::Trials;
use super::{Asked, Fix, Near, Search, kinds};

/// Steps in a sequence.
const MOST_STEPS: usize = 3;
/// Beginnings that are gone on from, the most promising ones.
const BEAM: usize = 5;
/// Things that a beginning broke that are looked at.
const MOST_BROKEN: usize = 2;
/// Candidates of one kind that are tried after a beginning.
const MOST_OF_A_KIND: usize = 5;

/// The best sequence that clears a finding, from steps that clear it and break something else.
pub(super) fn together(
    search: &Search<'_>,
    mut near: Vec<Near>,
    trials: &mut Trials<'_>,
    stop: &dyn Fn() -> bool,
) -> Option<Fix> {
    for _ in 1..MOST_STEPS {
        near.sort_by(|a, b| a.broken.len().cmp(&b.broken.len()).then_with(|| a.fix.rank(&b.fix)));
        near.truncate(BEAM);
        let mut found: Vec<Fix> = Vec::new();
        let mut next = Vec::new();
        for begun in &near {
            for key in begun.broken.iter().take(MOST_BROKEN) {
                let Some(finding) = begun.state.finding(key) else { continue };
                let asked = Asked { state: &begun.state, finding };
                for kind in kinds(&asked, trials, stop) {
                    let kind = kind.into_iter().take(MOST_OF_A_KIND);
                    let steps = &begun.fix.steps;
                    found.extend(search.first_after(&begun.state, steps, kind, trials, &mut next));
                }
            }
        }
        found.sort_by(Fix::rank);
        if !found.is_empty() {
            return found.into_iter().next();
        }
        near = next;
    }
    None
}
