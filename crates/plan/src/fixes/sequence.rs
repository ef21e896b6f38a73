//! Sequences of steps, where no single step clears a finding: each step repairs what the one before broke.

use super::judge::Trials;
use super::{Fix, FixRequest, Near, Search, kinds};

/// Most steps in a sequence.
const MOST_STEPS: usize = 3;
/// Beam width: how many of the most promising sequences to continue.
const BEAM: usize = 5;
/// How many of the broken findings to look at per sequence.
const MOST_BROKEN: usize = 2;
/// Most candidates of one kind to try after a sequence.
const MOST_OF_A_KIND: usize = 5;

/// The best sequence that clears a finding, starting from steps that clear it but break something else.
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
                let asked = FixRequest { state: &begun.state, finding };
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
