//! Findings about circuits.

use crate::names::{Names, asked, at_least, at_most, length, measured};
use crate::{RuleWords, Told};
use chalkcourse_job::{CircuitId, Quantity, Required};
use chalkcourse_rules::Finding;
use chalkcourse_wiring::LimitedBy;
use chalkcourse_words::{self as words, modules, sentence};

pub(crate) const RULES: &[RuleWords] = &[
    RuleWords {
        code: "string-voltage",
        title: words::wires::TITLE_STRING_VOLTAGE,
        reason: words::wires::REASON_STRING_VOLTAGE,
        geometry: None,
    },
    RuleWords {
        code: "string-start",
        title: words::wires::TITLE_STRING_START,
        reason: words::wires::REASON_STRING_START,
        geometry: None,
    },
    RuleWords {
        code: "circuit-size",
        title: words::wires::TITLE_CIRCUIT_SIZE,
        reason: words::wires::REASON_CIRCUIT_SIZE,
        geometry: None,
    },
    RuleWords {
        code: "inverter-input",
        title: words::wires::TITLE_INVERTER_INPUT,
        reason: words::wires::REASON_INVERTER_INPUT,
        geometry: None,
    },
    RuleWords {
        code: "parallel-strings",
        title: words::wires::TITLE_PARALLEL_STRINGS,
        reason: words::wires::REASON_PARALLEL_STRINGS,
        geometry: None,
    },
    RuleWords {
        code: "string-faces",
        title: words::wires::TITLE_STRING_FACES,
        reason: words::wires::REASON_STRING_FACES,
        geometry: None,
    },
    RuleWords {
        code: "leads-reach",
        title: words::wires::TITLE_LEADS_REACH,
        reason: words::wires::REASON_LEADS_REACH,
        geometry: None,
    },
    RuleWords {
        code: "device-input",
        title: words::wires::TITLE_DEVICE_INPUT,
        reason: words::wires::REASON_DEVICE_INPUT,
        geometry: None,
    },
    RuleWords {
        code: "modules-wired",
        title: words::wires::TITLE_MODULES_WIRED,
        reason: words::wires::REASON_MODULES_WIRED,
        geometry: Some(words::wires::GEOMETRY_MODULES_WIRED),
    },
];

/// What limits the number of modules or the voltage of a circuit.
pub fn limited_by(by: LimitedBy) -> &'static str {
    match by {
        LimitedBy::InverterVolts => words::wires::BY_INVERTER_VOLTS.now(),
        LimitedBy::ModuleVolts => words::wires::BY_MODULE_VOLTS.now(),
        LimitedBy::DwellingVolts => words::wires::BY_DWELLING_VOLTS.now(),
        LimitedBy::LeastVolts => words::wires::BY_LEAST_VOLTS.now(),
        LimitedBy::DeviceCount => words::wires::BY_DEVICE_COUNT.now(),
        LimitedBy::DeviceWatts => words::wires::BY_DEVICE_WATTS.now(),
        LimitedBy::StringCurrent => words::wires::BY_STRING_CURRENT.now(),
        LimitedBy::Breaker => words::wires::BY_BREAKER.now(),
        LimitedBy::One => words::wires::BY_ONE.now(),
    }
}

/// An electrical amount with its unit.
fn shown(quantity: Quantity) -> String {
    match quantity {
        Quantity::Volts(volts) => format!("{volts:.1} V"),
        Quantity::Amps(amps) => format!("{amps:.2} A"),
        Quantity::Watts(watts) => format!("{watts:.0} W"),
        _ => String::new(),
    }
}

fn of_amounts(finding: &Finding, message: &str) -> Told {
    let required = match &finding.required {
        Required::AtLeast(least) => at_least(&shown(*least)),
        Required::AtMost(most) => at_most(&shown(*most)),
        _ => String::new(),
    };
    Told { message: sentence(message), measured: shown(finding.measured), required }
}

pub(crate) fn string_voltage(names: &Names<'_>, finding: &Finding, count: usize, by: LimitedBy) -> Told {
    let message = words::wires::string_voltage(
        &names.circuit_of(finding),
        &modules(count),
        &format_args!("{:.1}", measured(finding)),
        &format_args!("{:.1}", asked(finding)),
        &limited_by(by),
    );
    of_amounts(finding, &message)
}

pub(crate) fn string_start(names: &Names<'_>, finding: &Finding, count: usize) -> Told {
    let message = words::wires::string_start(
        &names.circuit_of(finding),
        &modules(count),
        &format_args!("{:.1}", measured(finding)),
        &format_args!("{:.1}", asked(finding)),
    );
    of_amounts(finding, &message)
}

pub(crate) fn circuit_size(names: &Names<'_>, finding: &Finding, by: LimitedBy) -> Told {
    let count = measured(finding) as usize;
    let (least, most) = match finding.required {
        Required::Between(Quantity::Count(least), Quantity::Count(most)) => (least, most),
        _ => (0, 0),
    };
    let message = words::wires::circuit_size(
        &names.circuit_of(finding),
        &modules(count),
        &least,
        &most,
        &limited_by(by),
    );
    Told {
        message: sentence(&message),
        measured: modules(count),
        required: words::wires::from_to(&least, &modules(most as usize)),
    }
}

pub(crate) fn no_input(names: &Names<'_>, finding: &Finding) -> Told {
    Told {
        message: sentence(&words::wires::no_input(&names.circuit_of(finding))),
        measured: words::wires::NO_INPUT_MEASURED.now().to_owned(),
        required: words::wires::NO_INPUT_REQUIRED.now().to_owned(),
    }
}

pub(crate) fn input_strings(names: &Names<'_>, finding: &Finding) -> Told {
    let (has, most) = (measured(finding) as usize, asked(finding) as usize);
    Told {
        message: sentence(&words::wires::input_strings(&names.circuit_of(finding), &has, &most)),
        measured: has.to_string(),
        required: at_most(&most.to_string()),
    }
}

pub(crate) fn input_current(names: &Names<'_>, finding: &Finding) -> Told {
    let message = words::wires::input_current(
        &names.circuit_of(finding),
        &format_args!("{:.2}", measured(finding)),
        &format_args!("{:.2}", asked(finding)),
    );
    of_amounts(finding, &message)
}

pub(crate) fn parallel(names: &Names<'_>, finding: &Finding, other: CircuitId, faces: bool) -> Told {
    let (own, other) = (names.circuit_of(finding), names.circuit(other));
    let (has, same) = (measured(finding) as usize, asked(finding) as usize);
    let message = if faces {
        words::wires::parallel_faces(&own, &other)
    } else {
        words::wires::parallel_counts(&own, &modules(has), &other, &same)
    };
    Told { message: sentence(&message), measured: modules(has), required: modules(same) }
}

pub(crate) fn string_faces(names: &Names<'_>, finding: &Finding) -> Told {
    Told {
        message: sentence(&words::wires::string_faces(&names.circuit_of(finding))),
        measured: words::wires::TWO_WAYS.now().to_owned(),
        required: words::wires::ONE_WAY.now().to_owned(),
    }
}

pub(crate) fn leads_short(names: &Names<'_>, finding: &Finding, links: usize) -> Told {
    let reach = length(asked(finding), names.units());
    let (message, measured) = match finding.measured {
        Quantity::Length(apart) => {
            let apart = names.too_much(apart.metres());
            (words::wires::leads_short(&names.circuit_of(finding), links, &apart, &reach), apart)
        }
        _ => {
            let none = words::wires::NO_WAY.now().to_owned();
            (words::wires::leads_nowhere(&names.circuit_of(finding), links), none)
        }
    };
    Told { message: sentence(&message), measured, required: at_most(&reach) }
}

pub(crate) fn device_input(finding: &Finding) -> Told {
    let Told { measured, required, .. } = of_amounts(finding, "");
    Told { message: sentence(&words::wires::device_input(&measured, &required)), measured, required }
}

pub(crate) fn not_wired(names: &Names<'_>, finding: &Finding) -> Told {
    let count = measured(finding) as usize;
    Told {
        message: sentence(&words::wires::not_wired(&names.block_of(finding), count)),
        measured: modules(count),
        required: at_most("0"),
    }
}

pub(crate) fn circuit_gone(names: &Names<'_>, finding: &Finding) -> Told {
    let count = measured(finding) as usize;
    Told {
        message: sentence(&words::wires::circuit_gone(&names.circuit_of(finding), count)),
        measured: modules(count),
        required: at_most("0"),
    }
}
