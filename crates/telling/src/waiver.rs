//! What became of waivers.

use crate::{Told, told};
use chalkcourse_job::{Accepted, Lapse, Missing, Quantity, Resolved, Waiver};
use chalkcourse_rules::Finding;
use chalkcourse_words as words;

/// What became of the waiver of a finding; `None` where none was given for it.
pub fn waiver_words(job: &Resolved, finding: &Finding) -> Option<String> {
    let waived = finding.waived.as_ref().map(waived_words);
    waived.or_else(|| lapse_words(job, finding))
}

/// Who accepted a finding, when and why.
pub fn waived_words(waiver: &Waiver) -> String {
    words::rules::waived_by_on(&waiver.by, &waiver.date, &waiver.reason)
}

/// Why the waiver that was given for a finding no longer covers it, with what was accepted and what is now.
pub fn lapse_words(job: &Resolved, finding: &Finding) -> Option<String> {
    let (waiver, lapse) = finding.lapsed.as_ref()?;
    let by = words::rules::the_waiver_by_on(&waiver.by, &waiver.date, &waiver.reason);
    let accepted = waiver.accepted.as_ref().filter(|_| *lapse != Lapse::NoNumbers);
    let Some(accepted) = accepted else {
        return Some(words::rules::was_given_before_numbers_were(&by));
    };
    let (then, now) = both(job, finding, accepted);
    Some(match lapse {
        Lapse::OtherLimit => words::rules::was_given_where_was_asked(&by, &then.required, &now.required),
        _ => words::rules::was_for_and_now_it(&by, &then.measured, &now.measured),
    })
}

/// A finding as it was accepted and as it is now; where both read alike, to a tenth of a millimetre.
fn both(job: &Resolved, finding: &Finding, accepted: &Accepted) -> (Told, Told) {
    let then =
        Finding { measured: accepted.measured, required: accepted.required.clone(), ..finding.clone() };
    let (mut one, mut other) = (told(job, &then), told(job, finding));
    if one.measured == other.measured {
        let exact = |quantity: Quantity| match quantity {
            Quantity::Length(length) | Quantity::InPlan(length) => {
                Some(format!("{:.1} mm", length.metres() * 1000.0))
            }
            _ => None,
        };
        if let (Some(a), Some(b)) = (exact(accepted.measured), exact(finding.measured)) {
            (one.measured, other.measured) = (a, b);
        }
    }
    (one, other)
}

/// A waiver whose finding is not there.
pub(crate) fn idle(waiver: &Waiver, missing: Option<Missing>) -> Told {
    let (by, date, reason) = (&waiver.by, &waiver.date, &waiver.reason);
    let message = match missing {
        None => words::rules::a_waiver_by_is_for(&by, &date, &reason),
        Some(Missing::Unread) => words::rules::a_waiver_by_names_what(&by, &date, &waiver.key, &reason),
        Some(missing) => words::rules::a_waiver_by_names_which(&by, &date, &missing_words(missing), &reason),
    };
    Told { message, measured: words::rules::NO_SUCH_FINDING.now().into(), required: waiver.key.to_string() }
}

fn missing_words(missing: Missing) -> String {
    match missing {
        Missing::Part(id) => words::rules::part_3(&id),
        Missing::Face(id) => words::rules::face(&id),
        Missing::Side(face, side) => words::rules::side_of_face(&side, &face),
        Missing::Penetration(id) => words::rules::penetration(&id),
        Missing::Block(id) => words::rules::block(&id),
        Missing::Unread => String::new(),
    }
}
