//! The deck and the covering as found on site: input of rules about fasteners, water and fire.

use super::form::{length_field, part_of_form};
use crate::text;
use crate::widgets::fields;
use chalkcourse_geometry::Units;
use chalkcourse_job::{Building, DeckCondition, DeckKind, DripEdge, FireClass};
use egui::Ui;

/// Fields for the deck and the roof covering.
pub(super) fn deck_fields(ui: &mut Ui, building: &mut Building, units: Units) {
    part_of_form(ui, text::DECK_PART.now());
    let deck = &mut building.deck;
    length_field(
        ui,
        text::DECK_THICKNESS.now(),
        text::DECK_THICKNESS_HELP.now(),
        &mut deck.thickness,
        units,
        0.0,
    );
    choose(
        ui,
        text::DECK_KIND.now(),
        text::DECK_KIND_HELP.now(),
        &mut deck.kind,
        &DeckKind::ALL.map(|k| (k, k.name().now())),
    );
    length_field(ui, text::RAFTERS.now(), text::RAFTERS_HELP.now(), &mut deck.rafter_spacing, units, 0.0);
    let conditions =
        [(DeckCondition::Sound, text::DECK_SOUND.now()), (DeckCondition::Repair, text::DECK_REPAIR.now())];
    choose(ui, text::DECK_CONDITION.now(), text::DECK_CONDITION_HELP.now(), &mut deck.condition, &conditions);
    part_of_form(ui, text::COVERING_PART.now());
    let edges = [
        (DripEdge::InPlace, text::DRIP_IN_PLACE.now()),
        (DripEdge::WithThisJob, text::DRIP_WITH_JOB.now()),
        (DripEdge::Absent, text::DRIP_ABSENT.now()),
    ];
    choose(ui, text::DRIP_EDGE.now(), text::DRIP_EDGE_HELP.now(), &mut building.drip_edge, &edges);
    let classes = [FireClass::A, FireClass::B, FireClass::C, FireClass::Unrated]
        .map(|class| (class, class.name().now()));
    choose(
        ui,
        text::COVERING_CLASS.now(),
        text::COVERING_CLASS_HELP.now(),
        &mut building.covering_class,
        &classes,
    );
    choose(ui, text::CLASS_BY_LAW.now(), text::CLASS_BY_LAW_HELP.now(), &mut building.class_by_law, &classes);
    length_field(ui, text::LOT_LINE.now(), text::LOT_LINE_HELP.now(), &mut building.lot_line, units, 0.0);
}

/// A choice with "not known" as an option.
fn choose<T: Copy + PartialEq>(
    ui: &mut Ui,
    label: &str,
    help: &str,
    value: &mut Option<T>,
    kinds: &[(T, &'static str)],
) {
    let mut choices = vec![(None, text::NOT_KNOWN.now())];
    choices.extend(kinds.iter().map(|&(kind, name)| (Some(kind), name)));
    let chosen = ui.scope(|ui| fields::choice(ui, label, *value, &choices));
    chosen.response.on_hover_text(help);
    if let Some(chosen) = chosen.inner {
        *value = chosen;
    }
}
