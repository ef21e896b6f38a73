//! A face that carries a block is at least as steep as the kit asks.
//!
//! Source: the kit; the demo kit's 4:12 is common practice, no source. Water that runs slowly backs up under
//! flashing that is lapped like shingles.

use super::of_kit;
use crate::case::{Case, Laid};
use crate::finding::{Finding, Place, Severity};
use crate::registry::{Rule, Run, nothing_missing};
use crate::sketch::Stroke;
use crate::words::{block_name, sentence};
use chalkcourse_words::{say, tell};

pub(crate) const RULE: Rule = Rule {
    code: "pitch",
    title: say("Faces are steep enough for the kit", "Los faldones tienen pendiente suficiente para el kit"),
    reason: say(
        "Lapped flashing sheds water only where it runs off fast enough.",
        "Los tapajuntas solapados solo escurren donde el agua corre lo bastante rápido.",
    ),
    sketch: &[
        Stroke::Edge(&[[8.0, 10.0], [88.0, 24.0]]),
        Stroke::Limit(&[[8.0, 10.0], [88.0, 50.0]]),
        Stroke::Measure([88.0, 24.0], [88.0, 50.0]),
        Stroke::Edge(&[[8.0, 10.0], [88.0, 10.0]]),
    ],
    source: of_kit,
    missing: nothing_missing,
    run: Run::block(run),
};

/// Rise over run: a tenth of a millimetre over a rafter of 6 m is less than this.
const SLACK: f64 = 2e-5;

fn run(case: &Case<'_>, laid: &Laid<'_>, findings: &mut Vec<Finding>) {
    let least = case.job.kit.least_pitch;
    let pitch = laid.face.plane.pitch;
    if pitch.slope() < least.slope() - SLACK {
        let measured = format!("{:.1}:12 ({:.1}°)", pitch.rise_in_12(), pitch.degrees());
        let required = format!("{:.1}:12 ({:.1}°)", least.rise_in_12(), least.degrees());
        findings.push(Finding {
            message: tell!("{} lies on {}, which is {measured}; the kit asks {required} or more. This kit can't go on this face: choose a \
                 steeper face, or another kit that its maker allows here.", "{} está en {}, con pendiente {measured}; el kit pide {required} o más. Este kit no puede ir en \
        este faldón: elija un faldón más inclinado, u otro kit que su fabricante admita aquí.",
                sentence(&block_name(laid.block)),
                case.face_name(laid.placed.face),
            ),
            place: Place {
                face: Some(laid.on.id),
                block: Some(laid.block.id),
                shape: laid.face.plan.outer.clone(),
                ..Place::default()
            },
            measured,
            required: tell!("at least {required}", "al menos {required}"),
            source: RULE.source(case.job),
            ..Finding::of(RULE.code, Severity::Stop, format!("pitch/block-{}/face-{}", laid.block.id, laid.on.id))
        });
    }
}

#[cfg(test)]
mod tests {
    use crate::testing::{all, block, face, gable_job, of, one};

    #[test]
    fn below_at_and_above_the_least_pitch() {
        let mut job = gable_job();
        let mut with = |rise: f64| {
            job.faces =
                vec![face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (12.0, 6.0), (0.0, 6.0)], rise, 180.0, 3.0)];
            job.clone()
        };
        assert!(of(&with(5.0), "pitch").is_empty());
        assert!(of(&with(4.0), "pitch").is_empty());
        let low = one(&with(3.9), "pitch");
        assert!(low.message.contains("3.9:12 (18.0°); the kit asks 4.0:12 (18.4°)"), "{}", low.message);
    }

    /// A 2:12 roof with a block well inside its setbacks is refused for its pitch alone.
    #[test]
    fn a_low_barn_is_refused_for_its_pitch_alone() {
        let mut job = gable_job();
        job.faces = vec![
            face(1, "South", &[(0.0, 0.0), (12.0, 0.0), (12.0, 6.0), (0.0, 6.0)], 2.0, 180.0, 3.0),
            face(2, "North", &[(0.0, 6.0), (12.0, 6.0), (12.0, 12.0), (0.0, 12.0)], 2.0, 0.0, 3.0),
        ];
        job.blocks = vec![block(3, 1, (3.0, 1.0), 2, 3)];
        let stops: Vec<_> = all(&job).into_iter().filter(|f| f.severity == crate::Severity::Stop).collect();
        assert_eq!(stops.iter().map(|f| f.code).collect::<Vec<_>>(), ["pitch"]);
    }
}
