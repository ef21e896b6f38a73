//! The point of connection takes the output.
//!
//! Source: NEC 705.12(B)(2)(3)(b) (2017) for breakers at opposite ends (1.25 times the output and the main add up to no more than 120 % of the
//! bus), (c) for the sum of all breakers; others from memory. Which way is taken is a licensed person's choice.

use crate::finding::{Finding, Severity};
use crate::rule::{Rule, Run};
use crate::sketch::Stroke;
use crate::view::WholeView;
use crate::wires::{not_dc, not_stated, not_wired};
use crate::{Authority, Facts, Unknown, WhyNot};
use chalkcourse_job::{Quantity, Required, Resolved, Subject};
use chalkcourse_wiring::cite::OPPOSITE_ENDS;
use chalkcourse_wiring::connection::{most_output_amps, output, section};

pub(crate) const RULE: Rule = Rule {
    code: "point-of-connection",
    sketch: &[
        Stroke::Edge(&[[30.0, 6.0], [70.0, 6.0], [70.0, 54.0], [30.0, 54.0], [30.0, 6.0]]),
        Stroke::Thing([40.0, 46.0, 20.0, 6.0]),
        Stroke::Edge(&[[50.0, 46.0], [50.0, 14.0]]),
        Stroke::Wrong([40.0, 8.0, 20.0, 6.0]),
    ],
    source: |job| {
        let chosen = job.wiring.service.map_or(OPPOSITE_ENDS, |service| section(service.connection));
        Authority::Source(chosen.of(job.wiring.edition))
    },
    missing,
    run: Run::Whole(run),
};

fn missing(job: &Resolved) -> Option<WhyNot> {
    let dc = not_dc(job).is_none();
    not_wired(job)
        .or_else(|| not_stated(job, &[Unknown::Inverter]).filter(|_| dc))
        .or_else(|| not_stated(job, &[Unknown::Service]))
        .or_else(|| {
            let most = job.wiring.service.and_then(|service| most_output_amps(&service, job.wiring.edition));
            most.is_none().then(|| WhyNot::NotKnown(vec![Unknown::OtherBreakers]))
        })
}

fn run(view: WholeView<'_>, findings: &mut Vec<Finding>) {
    let job = view.job();
    let Some(service) = &job.wiring.service else { return };
    let (Some(most), Some((amps, volts))) =
        (most_output_amps(service, job.wiring.edition), output(job, view.wires()))
    else {
        return;
    };
    if amps > most + 1e-6 {
        let facts = Facts::Connection { way: service.connection, volts };
        findings.push(Finding {
            measured: Quantity::Amps(amps),
            required: Required::AtMost(Quantity::Amps(most)),
            source: RULE.source(job),
            ..Finding::of(RULE.code, Severity::Stop, Subject::Whole, facts)
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{kit, of, one, why_not, wired};
    use crate::{Unknown, WhyNot};
    use chalkcourse_job::{Connection, Quantity, Required, Resolved, Service, builtin_kits};
    use std::sync::Arc;

    fn with(main: f64, connection: Connection) -> Resolved {
        let mut job = wired();
        Arc::make_mut(&mut job.wiring).service =
            Some(Service { bus_amps: 200.0, main_breaker_amps: main, other_breakers_amps: None, connection });
        job
    }

    /// 200 A of bus and main: 40 A of room are 32 A of output, 7.68 kW at 240 V; the inverter has 32 A.
    #[test]
    fn at_the_limit_and_above() {
        let mut job = with(200.0, Connection::OppositeEnds);
        assert!(of(&job, "point-of-connection").is_empty());
        kit(&mut job).wiring.as_mut().unwrap().inverters[0].output_amps = 32.1;
        let found = one(&job, "point-of-connection");
        assert_eq!(found.measured, Quantity::Amps(32.1));
        let Required::AtMost(Quantity::Amps(most)) = found.required else { panic!() };
        assert!((most - 32.0).abs() < 1e-9 && (most * 240.0 - 7680.0).abs() < 1e-6);
        assert!(
            matches!(&found.source, crate::Authority::Source(source) if source.text == "NEC 705.12(B)(2)(3)(b) (2017)")
        );
        assert_eq!(
            one(&with(200.0, Connection::WholeBus), "point-of-connection").required,
            Required::AtMost(Quantity::Amps(0.0))
        );
        assert!(of(&with(160.0, Connection::WholeBus), "point-of-connection").is_empty());
    }

    /// Six ac devices are 7.26 A: 1.25 × 7.26 = 9.1 A beside a main of 191 A on 200 A do not fit, beside 190 A they do.
    #[test]
    fn ac_devices_and_what_is_not_known() {
        let mut job = with(191.0, Connection::WholeBus);
        job.kit = builtin_kits()[1].clone();
        assert_eq!(of(&job, "point-of-connection").len(), 1);
        Arc::make_mut(&mut job.wiring).service.as_mut().unwrap().main_breaker_amps = 190.0;
        assert!(of(&job, "point-of-connection").is_empty());
        let unknown = |what| Some(WhyNot::NotKnown(vec![what]));
        assert_eq!(why_not(&wired(), "point-of-connection"), unknown(Unknown::Service));
        let sum = with(200.0, Connection::SumOfBreakers);
        assert_eq!(why_not(&sum, "point-of-connection"), unknown(Unknown::OtherBreakers));
    }
}
