//! Words for what keeps modules off.

use super::{at_edge, at_setback, clear_of, clear_of_block};
use chalkcourse_geometry::{EdgeKind, Length, Units};
use chalkcourse_layout::Layout;
use chalkcourse_limits::{Against, KeepOut};
use chalkcourse_words::{pick, tell};

/// Why a block stopped at a keep-out; `kind` is what the border of the face is there.
pub(crate) fn at_limit(keep_out: &KeepOut, kind: EdgeKind, layout: &Layout, units: Units) -> String {
    let asked = || Length::from_metres(keep_out.asked);
    let small = || asked().show_small(units);
    match (keep_out.rule, keep_out.against) {
        ("setback", _) => at_setback(kind, asked(), units),
        ("valley-hip", _) => tell!("flashing {} from the {}", "tapajuntas a {} de {}", small(), kind.name()),
        ("ridge-course", _) => {
            tell!("{} of courses left below the ridge", "quedan {} de hiladas bajo la cumbrera", small())
        }
        ("base-rail", Against::Border) => {
            pick("the base rail ends with the deck", "el riel base termina con el entablado").to_owned()
        }
        ("base-rail", _) => {
            tell!("the base rail {} above the {}", "el riel base {} arriba de {}", small(), kind.name())
        }
        ("fire-ridge" | "fire-hip-valley", _) => tell!(
            "{} in plan from the {}, for the fire service",
            "a {} en planta de {}, para los bomberos",
            small(),
            kind.name()
        ),
        ("fire-escape", Against::Penetration(id)) => tell!(
            "beside the strip below {}",
            "junto a la franja bajo {}",
            layout.penetration(id).map_or("", |through| through.name.as_str())
        ),
        (_, Against::Penetration(id)) => {
            clear_of(layout.penetration(id).map_or("", |through| through.name.as_str()))
        }
        ("off-face", _) => at_edge(kind),
        (_, Against::Side { .. } | Against::Hole { .. }) => {
            tell!("{} from the {}", "a {} de {}", small(), kind.name())
        }
        (_, Against::Block(id)) => clear_of_block(layout.block(id).map_or("", |block| block.name.as_str())),
        _ => at_edge(kind),
    }
}
