//! What became of waivers.

use crate::{Told, told};
use chalkcourse_job::{Accepted, Lapse, Missing, Quantity, Resolved, Waiver};
use chalkcourse_rules::Finding;
use chalkcourse_words::{pick, tell};

/// What became of the waiver of a finding; `None` where none was given for it.
pub fn waiver_words(job: &Resolved, finding: &Finding) -> Option<String> {
    let waived = finding.waived.as_ref().map(waived_words);
    waived.or_else(|| lapse_words(job, finding))
}

/// Who accepted a finding, when and why.
pub fn waived_words(waiver: &Waiver) -> String {
    tell!("waived by {} on {}: {}", "dispensado por {} el {}: {}", waiver.by, waiver.date, waiver.reason)
}

/// Why the waiver that was given for a finding no longer covers it, with what was accepted and what is now.
pub fn lapse_words(job: &Resolved, finding: &Finding) -> Option<String> {
    let (waiver, lapse) = finding.lapsed.as_ref()?;
    let by = tell!(
        "the waiver by {} on {} (“{}”)",
        "la dispensa de {} el {} (“{}”)",
        waiver.by,
        waiver.date,
        waiver.reason
    );
    let accepted = waiver.accepted.as_ref().filter(|_| *lapse != Lapse::NoNumbers);
    let Some(accepted) = accepted else {
        return Some(tell!(
            "{by} was given before numbers were kept: look at it, and accept it again",
            "{by} se dio antes de que se guardaran los números: revíselo, y acéptelo de nuevo"
        ));
    };
    let (then, now) = both(job, finding, accepted);
    Some(match lapse {
        Lapse::OtherLimit => tell!(
            "{by} was given where {} was asked, and now it is {}: accept it again, or clear it",
            "{by} se dio cuando se pedía {}, y ahora es {}: acéptelo de nuevo, o resuélvalo",
            then.required,
            now.required
        ),
        _ => tell!(
            "{by} was for {}, and now it is {}: accept it again, or clear it",
            "{by} era para {}, y ahora es {}: acéptelo de nuevo, o resuélvalo",
            then.measured,
            now.measured
        ),
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
        None => tell!(
            "A waiver by {by} ({date}) is for a finding that is no longer there: “{reason}”. Take it away, or keep it if the trouble may \
             come back.",
            "Una dispensa de {by} ({date}) es de un hallazgo que ya no existe: “{reason}”. Quítela, o consérvela si el \
             problema puede volver."
        ),
        Some(Missing::Unread) => tell!(
            "A waiver by {by} ({date}) names what this program can't read, {}: “{reason}”. It covers nothing: take it away.",
            "Una dispensa de {by} ({date}) nombra algo que este programa no puede leer, {}: “{reason}”. No cubre nada: quítela.",
            waiver.key
        ),
        Some(missing) => tell!(
            "A waiver by {by} ({date}) names {}, which the job no longer has: “{reason}”. It covers nothing and never will: take it away.",
            "Una dispensa de {by} ({date}) nombra {}, que la obra ya no tiene: “{reason}”. No cubre nada ni lo hará: quítela.",
            missing_words(missing)
        ),
    };
    Told {
        message,
        measured: pick("no such finding", "ese hallazgo no existe").into(),
        required: waiver.key.to_string(),
    }
}

fn missing_words(missing: Missing) -> String {
    match missing {
        Missing::Part(id) => tell!("part {id}", "la parte {id}"),
        Missing::Face(id) => tell!("face {id}", "el faldón {id}"),
        Missing::Side(face, side) => tell!("side {side} of face {face}", "el lado {side} del faldón {face}"),
        Missing::Penetration(id) => tell!("penetration {id}", "la penetración {id}"),
        Missing::Block(id) => tell!("block {id}", "el bloque {id}"),
        Missing::Unread => String::new(),
    }
}
