//! Findings about conductors, protection, boxes and what the house takes.

use crate::names::{Names, asked, at_least, at_most, length, measured, the_edge};
use crate::{RuleWords, Told};
use chalkcourse_job::{BoxId, Connection, Gauge, Quantity, Required};
use chalkcourse_rules::{Against, Finding, ReadingWrong, Thin};
use chalkcourse_wiring::runs::Part;
use chalkcourse_words::{self as words, Say, sentence};

const fn rule(code: &'static str, title: Say, reason: Say) -> RuleWords {
    RuleWords { code, title, reason, geometry: None }
}

pub(crate) const RULES: &[RuleWords] = &[
    rule("plugs-mate", words::wires::TITLE_PLUGS_MATE, words::wires::REASON_PLUGS_MATE),
    rule("arc-fault", words::wires::TITLE_ARC_FAULT, words::wires::REASON_ARC_FAULT),
    rule("ground-fault", words::wires::TITLE_GROUND_FAULT, words::wires::REASON_GROUND_FAULT),
    rule("overcurrent", words::wires::TITLE_OVERCURRENT, words::wires::REASON_OVERCURRENT),
    rule("conductor-size", words::wires::TITLE_CONDUCTOR_SIZE, words::wires::REASON_CONDUCTOR_SIZE),
    rule("voltage-drop", words::wires::TITLE_VOLTAGE_DROP, words::wires::REASON_VOLTAGE_DROP),
    rule(
        "grounding-conductor",
        words::wires::TITLE_GROUNDING_CONDUCTOR,
        words::wires::REASON_GROUNDING_CONDUCTOR,
    ),
    rule("bonding", words::wires::TITLE_BONDING, words::wires::REASON_BONDING),
    rule("box-fill", words::wires::TITLE_BOX_FILL, words::wires::REASON_BOX_FILL),
    rule("raceway-fill", words::wires::TITLE_RACEWAY_FILL, words::wires::REASON_RACEWAY_FILL),
    rule("dc-ac-apart", words::wires::TITLE_DC_AC_APART, words::wires::REASON_DC_AC_APART),
    rule("raceway-inside", words::wires::TITLE_RACEWAY_INSIDE, words::wires::REASON_RACEWAY_INSIDE),
    rule("rapid-shutdown", words::wires::TITLE_RAPID_SHUTDOWN, words::wires::REASON_RAPID_SHUTDOWN),
    rule("box-place", words::wires::TITLE_BOX_PLACE, words::wires::REASON_BOX_PLACE),
    rule(
        "point-of-connection",
        words::wires::TITLE_POINT_OF_CONNECTION,
        words::wires::REASON_POINT_OF_CONNECTION,
    ),
    rule("readings", words::wires::TITLE_READINGS, words::wires::REASON_READINGS),
];

/// A message with two fixed words for what is and what is to be.
fn plain(message: &str, is: Say, to_be: Say) -> Told {
    Told { message: sentence(message), measured: is.now().to_owned(), required: to_be.now().to_owned() }
}

/// Amperes without needless decimals: 25, 21.72.
fn amps(amps: f64) -> String {
    let text = format!("{amps:.2}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

fn percent(share: f64) -> String {
    format!("{:.1} %", 100.0 * share)
}

/// A size of conductor as it is written.
pub fn gauge(gauge: Gauge) -> String {
    format!("{} AWG", gauge.awg())
}

/// Which stretch of a circuit's way.
pub fn stretch(part: Part) -> String {
    match part {
        Part::Leads => words::wires::LEADS.now().to_owned(),
        Part::HomeRun => words::wires::HOME_RUN_STRETCH.now().to_owned(),
        Part::Leg(index) => words::wires::leg_stretch(&(index + 1)),
    }
}

/// How an output is connected to the house, as a line of its own.
pub fn connected(way: Connection) -> &'static str {
    match way {
        Connection::OppositeEnds => words::oneline::WAY_OPPOSITE_ENDS.now(),
        Connection::WholeBus => words::oneline::WAY_WHOLE_BUS.now(),
        Connection::SumOfBreakers => words::oneline::WAY_SUM.now(),
        Connection::CentreFed => words::oneline::WAY_CENTRE_FED.now(),
        Connection::Feeder => words::oneline::WAY_FEEDER.now(),
        Connection::SupplySide => words::oneline::WAY_SUPPLY_SIDE.now(),
    }
}

/// A way of connecting to the house, within a sentence.
pub fn connection_way(way: Connection) -> &'static str {
    match way {
        Connection::OppositeEnds => words::wires::WAY_OPPOSITE_ENDS.now(),
        Connection::WholeBus => words::wires::WAY_WHOLE_BUS.now(),
        Connection::SumOfBreakers => words::wires::WAY_SUM.now(),
        Connection::CentreFed => words::wires::WAY_CENTRE_FED.now(),
        Connection::Feeder => words::wires::WAY_FEEDER.now(),
        Connection::SupplySide => words::wires::WAY_SUPPLY_SIDE.now(),
    }
}

pub(crate) fn arc_fault(names: &Names<'_>, finding: &Finding) -> Told {
    let volts = format!("{:.1}", measured(finding));
    let message = words::wires::arc_fault(&names.circuit_of(finding), &volts);
    plain(&message, words::wires::NOT_PROVIDED, words::wires::PROVIDED)
}

pub(crate) fn ground_fault(names: &Names<'_>, finding: &Finding) -> Told {
    let message = words::wires::ground_fault(&names.circuit_of(finding));
    plain(&message, words::wires::NOT_PROVIDED, words::wires::PROVIDED)
}

/// With its measured and required amperes.
fn in_amps(finding: &Finding, message: &str) -> Told {
    let asked = format!("{} A", amps(asked(finding)));
    let required = match &finding.required {
        Required::AtLeast(_) => at_least(&asked),
        Required::AtMost(_) => at_most(&asked),
        _ => String::new(),
    };
    Told { message: sentence(message), measured: format!("{} A", amps(measured(finding))), required }
}

pub(crate) fn no_fuse(names: &Names<'_>, finding: &Finding) -> Told {
    let message = words::wires::no_fuse(&names.circuit_of(finding), &amps(measured(finding)));
    in_amps(finding, &message)
}

pub(crate) fn fuse_small(names: &Names<'_>, finding: &Finding) -> Told {
    let (fuse, least) = (amps(measured(finding)), amps(asked(finding)));
    in_amps(finding, &words::wires::fuse_small(&names.circuit_of(finding), &fuse, &least))
}

pub(crate) fn fuse_large(names: &Names<'_>, finding: &Finding) -> Told {
    let (fuse, most) = (amps(measured(finding)), amps(asked(finding)));
    in_amps(finding, &words::wires::fuse_large(&names.circuit_of(finding), &fuse, &most))
}

pub(crate) fn conductor_thin(
    names: &Names<'_>,
    finding: &Finding,
    (part, of, least): (Part, Gauge, Option<Gauge>),
    how: Thin,
) -> Told {
    let (circuit, part, of) = (names.circuit_of(finding), stretch(part), gauge(of));
    let (has, asked) = (amps(measured(finding)), amps(asked(finding)));
    let message = match how {
        Thin::Carried => words::wires::thin_carried(&circuit, &part, &of, &has, &asked),
        Thin::Terminals => words::wires::thin_terminals(&circuit, &part, &of, &has, &asked),
        Thin::Protected => words::wires::thin_protected(&circuit, &part, &of, &has, &asked),
    };
    let message = match least {
        Some(least) => words::wires::take_gauge(&message, &gauge(least)),
        None => words::wires::take_none(&message),
    };
    in_amps(finding, &message)
}

pub(crate) fn voltage_drop(names: &Names<'_>, finding: &Finding, volts: f64, whole: bool) -> Told {
    let (circuit, share) = (names.circuit_of(finding), percent(measured(finding)));
    let volts = format!("{volts:.2}");
    let message = if whole {
        words::wires::drop_whole(&circuit, &volts, &share)
    } else {
        words::wires::drop_part(&circuit, &volts, &share)
    };
    Told { message: sentence(&message), measured: share, required: at_most(&percent(asked(finding))) }
}

pub(crate) fn box_fill(names: &Names<'_>, junction: BoxId, taken: f64, holds: f64) -> Told {
    let inches = |volume: f64| amps(volume);
    let message = words::wires::box_full(&names.junction(junction), &inches(taken), &inches(holds));
    let cubic = |volume: f64| format!("{} in³", inches(volume));
    Told { message: sentence(&message), measured: cubic(taken), required: at_most(&cubic(holds)) }
}

pub(crate) fn raceway_fill(names: &Names<'_>, finding: &Finding, junction: BoxId, conductors: u32) -> Told {
    let (share, most) = (percent(measured(finding)), percent(asked(finding)));
    let message = words::wires::raceway_full(&names.junction(junction), &conductors, &share, &most);
    Told { message: sentence(&message), measured: share, required: at_most(&most) }
}

pub(crate) fn ground_thin(
    names: &Names<'_>,
    finding: &Finding,
    (of, least): (Gauge, Gauge),
    device: u32,
) -> Told {
    let (of, least) = (gauge(of), gauge(least));
    let message = words::wires::ground_thin(&names.circuit_of(finding), &of, &device, &least);
    Told { message: sentence(&message), measured: of, required: at_least(&least) }
}

pub(crate) fn ground_bare(of: Gauge) -> Told {
    let message = words::wires::ground_bare(&gauge(of));
    Told { message: sentence(&message), measured: gauge(of), required: at_least(&gauge(Gauge::Awg6)) }
}

pub(crate) fn connection(finding: &Finding, way: Connection, volts: f64) -> Told {
    let (output, most) = (measured(finding), asked(finding));
    let kilowatts = |amps: f64| format!("{:.2}", amps * volts / 1000.0);
    let way = connection_way(way);
    let message = if most > 0.0 {
        words::wires::connection(&way, &amps(output), &kilowatts(output), &amps(most), &kilowatts(most))
    } else {
        words::wires::connection_nothing(&way, &amps(output), &kilowatts(output))
    };
    in_amps(finding, &message)
}

pub(crate) fn not_apart(names: &Names<'_>, junction: BoxId) -> Told {
    let message = words::wires::not_apart(&names.junction(junction));
    plain(&message, words::wires::TOGETHER, words::wires::APART)
}

pub(crate) fn no_module_shutdown() -> Told {
    let message = words::wires::NO_MODULE_SHUTDOWN.now();
    plain(message, words::wires::NOT_PROVIDED, words::wires::PROVIDED)
}

pub(crate) fn shutdown_boundary(names: &Names<'_>, finding: &Finding, junction: BoxId) -> Told {
    let required = at_most(&names.length(asked(finding)));
    let junction = names.junction(junction);
    match finding.measured {
        Quantity::Length(away) => {
            let away = names.too_much(away.metres());
            let message = words::wires::shutdown_boundary(&junction, &away);
            Told { message: sentence(&message), measured: away, required }
        }
        _ => Told {
            message: sentence(&words::wires::shutdown_boundary_off(&junction)),
            measured: words::wires::ON_ANOTHER_FACE.now().to_owned(),
            required,
        },
    }
}

pub(crate) fn standby_volts(names: &Names<'_>, finding: &Finding) -> Told {
    let volts = format!("{:.1}", measured(finding));
    let message = words::wires::standby_volts(&names.circuit_of(finding), &volts);
    let most = format!("{:.0} V", asked(finding));
    Told { message: sentence(&message), measured: format!("{volts} V"), required: at_most(&most) }
}

pub(crate) fn inside_not_metal(names: &Names<'_>, junction: BoxId) -> Told {
    let message = words::wires::inside_not_metal(&names.junction(junction));
    plain(&message, words::wires::NO_METAL, words::wires::METAL)
}

pub(crate) fn inside_free(names: &Names<'_>, junction: BoxId) -> Told {
    let message = words::wires::inside_free(&names.junction(junction));
    plain(&message, words::wires::NO_METAL, words::wires::METAL)
}

pub(crate) fn box_near(names: &Names<'_>, finding: &Finding, junction: BoxId, against: Against) -> Told {
    let (near, asked) = (measured(finding), asked(finding));
    let junction = names.junction(junction);
    let thing = match against {
        Against::Side { kind, .. } | Against::Hole { kind, .. } => {
            words::rules::the_of(&the_edge(kind), &names.face_of(finding))
        }
        Against::Border => words::rules::the_border_of(&names.face_of(finding)),
        Against::Penetration(id) => names.penetration(Some(id)).into(),
        Against::Block(id) => names.block(id).into(),
        Against::Pathway => words::rules::A_PATHWAY.now().to_owned(),
    };
    if asked <= 0.0 {
        let message = words::wires::box_over(&junction, &thing);
        let none = names.length(0.0);
        return Told { message: sentence(&message), measured: none.clone(), required: at_least(&none) };
    }
    let (near, asked) = (names.too_short(near), names.length(asked));
    let message = words::wires::box_near(&junction, &thing, &near, &asked);
    Told { message: sentence(&message), measured: near, required: at_least(&asked) }
}

pub(crate) fn box_nowhere(names: &Names<'_>, junction: BoxId) -> Told {
    let message = words::wires::box_nowhere(&names.junction(junction));
    plain(&message, words::wires::NO_FACE, words::wires::ON_A_FACE)
}

pub(crate) fn box_under_modules(names: &Names<'_>, finding: &Finding, junction: BoxId) -> Told {
    let depth = names.too_much(measured(finding));
    let message = words::wires::box_under_modules(&names.junction(junction), &depth);
    let required = at_most(&length(0.0, names.units()));
    Told { message: sentence(&message), measured: depth, required }
}

pub(crate) fn reading(names: &Names<'_>, finding: &Finding, celsius: f64, what: ReadingWrong) -> Told {
    let circuit = names.circuit_of(finding);
    let (has, least) = (measured(finding), asked(finding));
    match what {
        ReadingWrong::Volts => {
            let most = match finding.required {
                Required::Between(_, Quantity::Volts(most)) => most,
                _ => least,
            };
            let (has, least) = (format!("{has:.1}"), format!("{least:.1}"));
            let (most, celsius) = (format!("{most:.1}"), format!("{celsius:.0}"));
            let message = words::wires::reading_volts(&circuit, &has, &celsius, &least, &most);
            let required = words::wires::from_to(&least, &format_args!("{most} V"));
            Told { message: sentence(&message), measured: format!("{has} V"), required }
        }
        ReadingWrong::Polarity => {
            let message = words::wires::reading_polarity(&circuit);
            plain(&message, words::wires::REVERSED, words::wires::AS_MARKED)
        }
        ReadingWrong::Insulation => {
            let (has, least) = (amps(has), amps(least));
            let message = words::wires::reading_insulation(&circuit, &has, &least);
            let required = at_least(&format!("{least} MΩ"));
            Told { message: sentence(&message), measured: format!("{has} MΩ"), required }
        }
        ReadingWrong::TestVolts => {
            let (has, least) = (format!("{has:.0}"), format!("{least:.0}"));
            let message = words::wires::reading_test(&circuit, &has, &least);
            let required = at_least(&format!("{least} V"));
            Told { message: sentence(&message), measured: format!("{has} V"), required }
        }
        ReadingWrong::TestConnected => {
            let message = words::wires::reading_connected(&circuit);
            plain(&message, words::wires::TESTED_CONNECTED, words::wires::TESTED_ALONE)
        }
    }
}

pub(crate) fn not_listed() -> Told {
    let message = words::wires::NOT_LISTED.now();
    plain(message, words::wires::NO_LISTING, words::wires::A_LISTING)
}

pub(crate) fn path_opens() -> Told {
    plain(words::wires::PATH_OPENS.now(), words::wires::OPENS, words::wires::STAYS_WHOLE)
}

pub(crate) fn plugs_differ(names: &Names<'_>, finding: &Finding, plug: &str, other: &str) -> Told {
    let message = words::wires::plugs_differ(&names.circuit_of(finding), &plug, &other);
    Told { message: sentence(&message), measured: other.to_owned(), required: plug.to_owned() }
}
