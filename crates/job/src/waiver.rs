use crate::{FindingKey, Quantity, Required};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// An accepted finding, with its values then. It is stored in the job and shown in every output.
///
/// It covers the finding with its key as long as that is no worse than what was accepted, against the same limit. A
/// waiver from a file that does not record the values covers nothing, since it is unknown what was accepted; it is
/// reported, with its reason, so that it can be granted again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Waiver {
    /// The finding.
    pub key: FindingKey,
    /// What was accepted; `None` in old files.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub accepted: Option<Accepted>,
    /// Why it was accepted; never empty.
    pub reason: String,
    /// Who accepted it.
    pub by: String,
    /// The date, as typed.
    pub date: String,
}

/// The values that were accepted, with the limit at that time.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Accepted {
    /// The measured value.
    pub measured: Quantity,
    /// The requirement.
    pub required: Required,
}

/// Why a waiver no longer covers its finding.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Lapse {
    /// It is from a file that does not record what was accepted.
    NoNumbers,
    /// The limit has changed.
    OtherLimit,
    /// It is worse than what was accepted.
    Worse,
}

impl Waiver {
    /// Why the waiver does not cover its finding as it is now; `None` if it does.
    pub fn lapse(&self, measured: Quantity, required: &Required) -> Option<Lapse> {
        let Some(accepted) = &self.accepted else { return Some(Lapse::NoNumbers) };
        if !accepted.required.is_same(required) {
            return Some(Lapse::OtherLimit);
        }
        (!required.is_no_worse(measured, accepted.measured)).then_some(Lapse::Worse)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Subject;
    use chalkcourse_geometry::Length;
    use proptest::prelude::*;

    fn inches(inches: f64) -> Quantity {
        Quantity::Length(Length::from_inches(inches))
    }

    fn waiver(accepted: Option<(f64, f64)>) -> Waiver {
        let accepted = accepted.map(|(measured, required)| Accepted {
            measured: inches(measured),
            required: Required::AtLeast(inches(required)),
        });
        let word = || "agreed".to_owned();
        Waiver {
            key: FindingKey::new("setback", Subject::Whole),
            accepted,
            reason: word(),
            by: word(),
            date: word(),
        }
    }

    #[test]
    fn a_waiver_covers_what_was_accepted_and_what_is_better() {
        let foot = Required::AtLeast(inches(12.0));
        let given = waiver(Some((11.6875, 12.0)));
        assert_eq!(given.lapse(inches(11.6875), &foot), None);
        assert_eq!(given.lapse(inches(11.9), &foot), None);
        assert_eq!(given.lapse(inches(0.4375), &foot), Some(Lapse::Worse));
        assert_eq!(given.lapse(inches(11.9), &Required::AtLeast(inches(18.0))), Some(Lapse::OtherLimit));
        assert_eq!(given.lapse(inches(11.9), &Required::AtLeast(inches(11.95))), Some(Lapse::OtherLimit));
        assert_eq!(waiver(None).lapse(inches(11.9), &foot), Some(Lapse::NoNumbers));
    }

    #[test]
    fn a_waiver_of_an_old_file_is_read_and_written_as_it_was() {
        let old = r#"{"key":"setback/roof","reason":"agreed","by":"agreed","date":"agreed"}"#;
        let read: Waiver = serde_json::from_str(old).unwrap();
        assert_eq!(read, waiver(None));
        assert_eq!(serde_json::to_string(&read).unwrap(), old);
    }

    proptest! {
        /// Whatever was accepted and whatever the limit is: what is covered is at most a tolerance worse.
        #[test]
        fn a_waiver_never_covers_something_worse(
            then in -1.0..2.0f64, now in -1.0..2.0f64, limit in 0.0..2.0f64, most in any::<bool>(), wide in 0.0..1.0f64, range in any::<bool>(),
        ) {
            let metres = |metres| Quantity::Length(Length::from_metres(metres));
            let required = match (range, most) {
                (true, _) => Required::Between(metres(limit), metres(limit + wide)),
                (_, true) => Required::AtMost(metres(limit)),
                _ => Required::AtLeast(metres(limit)),
            };
            let given = Waiver {
                accepted: Some(Accepted { measured: metres(then), required: required.clone() }),
                ..waiver(None)
            };
            // The excess over the limit, by independent arithmetic.
            let beyond = |at: f64| match (range, most) {
                (true, _) => (limit - at).max(at - limit - wide),
                (_, true) => at - limit,
                _ => limit - at,
            };
            let covered = given.lapse(metres(now), &required).is_none();
            // Within the limit there is no finding to cover.
            if beyond(now) > 0.0 && beyond(then) > 0.0 {
                prop_assert!(!covered || beyond(now) <= beyond(then) + 1.001e-4);
                let same_side = !range || (now < limit) == (then < limit);
                prop_assert_eq!(covered, same_side && beyond(now) <= beyond(then) + 1e-4);
            }
        }
    }
}
