//! Waivers in words.

use crate::{Names, Told, told};
use chalkcourse_geometry::SideId;
use chalkcourse_job::{Accepted, FaceId, FindingKey, Lapse, Missing, Quantity, Resolved, Subject, Waiver};
use chalkcourse_rules::{Finding, RULES};
use chalkcourse_words::{self as words, Said, later};

/// The state of a finding's waiver; `None` if it has none.
pub fn waiver_words(job: &Resolved, finding: &Finding) -> Option<String> {
    let waived = finding.waived.as_ref().map(waived_words);
    waived.or_else(|| lapse_words(job, finding))
}

/// Who accepted a finding, when and why.
pub fn waived_words(waiver: &Waiver) -> String {
    words::rules::waived_by_on(&waiver.by, &waiver.date, &waiver.reason)
}

/// Why a finding's waiver no longer covers it, with what was accepted and what is the case now.
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

/// A finding as it was accepted and as it is now; to a tenth of a millimetre if both would read alike.
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

/// A waiver whose finding no longer exists.
pub(crate) fn idle(names: &Names, waiver: &Waiver, missing: Option<Missing>) -> Told {
    let (by, date, reason) = (&waiver.by, &waiver.date, &waiver.reason);
    let what = key_words(names, &waiver.key);
    let message = match missing {
        None => words::rules::a_waiver_by_is_for(&by, &date, &what, &reason),
        Some(Missing::Unread) => words::rules::a_waiver_by_names_what(&by, &date, &waiver.key, &reason),
        Some(missing) => words::rules::a_waiver_by_names_which(&by, &date, &missing_words(missing), &reason),
    };
    Told { message, measured: words::rules::NO_SUCH_FINDING.now().into(), required: what }
}

/// What a finding was about: the rule in a few words and the things it names. An unreadable key is shown as written.
fn key_words(names: &Names, key: &FindingKey) -> String {
    if let Subject::Unread(text) = &key.subject {
        return text.clone();
    }
    let rule = RULES.iter().find(|rule| rule.code == key.rule).map_or(&*key.rule, |rule| crate::title(rule));
    match subject_words(names, &key.subject) {
        things if things.is_empty() => rule.to_owned(),
        things => format!("{rule}: {}", Said::listed(things, ", ")),
    }
}

/// The things that a key names; none for the whole roof.
fn subject_words(names: &Names, subject: &Subject) -> Vec<Said> {
    let (face, block) = (|id| names.face(id), |id| names.block(id));
    let side = |face: FaceId, side: SideId| later::rules::side_of(&side.0, &names.face(face));
    match subject {
        Subject::Whole | Subject::Matter(_) | Subject::Unread(_) => Vec::new(),
        Subject::Part(id, _) => {
            let named = names.job.part(*id).map(|part| part.name.clone());
            vec![named.map_or_else(|| later::rules::part_3(&id.0), Said::own)]
        }
        Subject::Face(id) | Subject::Outline(id, _) | Subject::HoleOutline(id, ..) => vec![face(*id)],
        Subject::Faces(one, two) => vec![face(*one), face(*two)],
        Subject::Penetration(id) => vec![names.penetration(Some(*id))],
        Subject::Block(id) => vec![block(*id)],
        Subject::Row(id, row) => vec![later::rules::row_of_block(row, &block(*id))],
        Subject::Blocks(one, two) => vec![block(*one), block(*two)],
        Subject::OnFace(id, on) | Subject::OfBlock(id, on, _) => vec![block(*id), face(*on)],
        Subject::Side(id, on, at, _) => vec![block(*id), side(*on, *at)],
        Subject::Hole(id, on, ..) => vec![block(*id), face(*on)],
        Subject::Through(id, through) | Subject::BesideOf(id, through, _) => {
            vec![block(*id), names.penetration(Some(*through))]
        }
        Subject::Circuit(id) | Subject::OfCircuit(id, _) => vec![names.circuit(*id)],
        Subject::Box(id) => vec![names.junction(*id)],
        Subject::Waiver(key) => subject_words(names, &key.subject),
    }
}

fn missing_words(missing: Missing) -> String {
    match missing {
        Missing::Part(id) => words::rules::part_3(&id),
        Missing::Face(id) => words::rules::face(&id),
        Missing::Side(face, side) => words::rules::side_of_face(&side, &face),
        Missing::Penetration(id) => words::rules::penetration(&id),
        Missing::Block(id) => words::rules::block(&id),
        Missing::Circuit(id) => words::wires::circuit(&id),
        Missing::Box(id) => words::wires::junction(&id),
        Missing::Unread => String::new(),
    }
}
