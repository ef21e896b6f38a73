//! How far leads reach, and which extension leads make up for the rest.

use chalkcourse_geometry::Length;
use chalkcourse_job::{ExtensionLead, Leads};

/// More extension leads than this between two modules are no plan.
const MOST_IN_A_ROW: usize = 8;
/// What leads are short of by less than this, in metres, they reach.
const NEAR: f64 = 1e-6;

/// How far two modules may be apart, in metres along the way of the cable, without an extension lead.
pub fn reach(leads: &Leads) -> f64 {
    (leads.positive + leads.negative - leads.slack).metres().max(0.0)
}

/// The fewest extension leads that make up what two modules are too far apart, of these the shortest together: places in the list,
/// the longest first. Empty where none is needed; `None` where no eight are enough.
pub fn fewest_leads(apart: f64, leads: &Leads) -> Option<Vec<usize>> {
    let short = apart - reach(leads);
    if short <= NEAR {
        return Some(Vec::new());
    }
    let mut by_length: Vec<usize> = (0..leads.extensions.len()).collect();
    let length = |lead: &ExtensionLead| lead.length.metres();
    by_length.sort_by(|a, b| length(&leads.extensions[*b]).total_cmp(&length(&leads.extensions[*a])));
    let longest = by_length.first().map(|lead| length(&leads.extensions[*lead]))?;
    let count = (1..=MOST_IN_A_ROW).find(|count| *count as f64 * longest + NEAR >= short)?;
    let lengths: Vec<f64> = by_length.iter().map(|lead| length(&leads.extensions[*lead])).collect();
    let mut best = (f64::INFINITY, Vec::new());
    shortest(&lengths, 0, count, short - NEAR, &mut Vec::new(), &mut best);
    Some(best.1.into_iter().map(|at| by_length[at]).collect())
}

/// Tries all choices of so many leads, none longer than the one before it.
fn shortest(
    lengths: &[f64],
    from: usize,
    count: usize,
    short: f64,
    chosen: &mut Vec<usize>,
    best: &mut (f64, Vec<usize>),
) {
    if count == 0 {
        let sum: f64 = chosen.iter().map(|at| lengths[*at]).sum();
        if sum >= short && sum < best.0 - NEAR {
            *best = (sum, chosen.clone());
        }
        return;
    }
    for at in from..lengths.len() {
        chosen.push(at);
        shortest(lengths, at, count - 1, short, chosen, best);
        chosen.pop();
    }
}

/// What a list of extension leads measures together.
pub(crate) fn together(chosen: &[usize], leads: &Leads) -> Length {
    let lengths = chosen.iter().filter_map(|at| leads.extensions.get(*at)).map(|lead| lead.length);
    lengths.fold(Length::ZERO, |sum, length| sum + length)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::kit;

    fn leads(metres: &[f64]) -> Leads {
        let mut leads = kit(0).wiring.unwrap().leads;
        let lead = |metres: &f64| ExtensionLead {
            number: metres.to_string(),
            length: Length::from_metres(*metres),
            plug: None,
        };
        leads.extensions = metres.iter().map(lead).collect();
        leads
    }

    /// Leads of 1 m and 1 m less 0.15 m reach 1.85 m; stock of 1, 2 and 5 m. By hand.
    #[test]
    fn fewest_then_shortest() {
        let stock = leads(&[1.0, 2.0, 5.0]);
        assert!((reach(&stock) - 1.85).abs() < 1e-12);
        for (apart, chosen) in [
            (1.725, vec![]),
            (1.85, vec![]),
            (1.86, vec![0]),
            (2.85, vec![0]),
            (2.86, vec![1]),
            (3.90, vec![2]),
            (6.85, vec![2]),
            // 5.1 m short: 5 + 1; 7.2: 5 + 5, not 5 + 2 + 1.
            (6.95, vec![2, 0]),
            (8.80, vec![2, 1]),
            (9.05, vec![2, 2]),
        ] {
            assert_eq!(fewest_leads(apart, &stock), Some(chosen.clone()), "{apart}");
            let sum: f64 = chosen.iter().map(|at| stock.extensions[*at].length.metres()).sum();
            assert!((together(&chosen, &stock).metres() - sum).abs() < 1e-12);
        }
        assert_eq!(fewest_leads(41.85, &stock).map(|chosen| chosen.len()), Some(8));
        assert_eq!(fewest_leads(41.86, &stock), None);
        assert_eq!(fewest_leads(1.9, &leads(&[])), None);
        assert_eq!(fewest_leads(1.8, &leads(&[])), Some(vec![]));
    }
}
