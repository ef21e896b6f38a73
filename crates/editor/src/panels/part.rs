use super::{heading, quiet};
use crate::action::{Action, Actions};
use crate::edits::squaring;
use crate::state::{PartPlace, State};
use crate::widgets::{LittleButton, fields};
use crate::{Document, Selection, text, theme};
use chalkcourse_geometry::raise::{SideRef, Treatment};
use chalkcourse_geometry::{DVec2, Length, Pitch, Units, dvec2};
use chalkcourse_job::{Edit, Face, PartId, PartKind, PartSide, PartTrouble, PlanMove, Resolved, RoofPart};
use egui::{Button, RichText, Ui};

/// The form of a part of the house: kind, height, treatment of each side.
pub(super) fn part_form(ui: &mut Ui, document: &Document, state: &State, id: PartId, actions: &mut Actions) {
    let job = document.job();
    let Some(part) = job.part(id) else { return };
    let units = job.units;
    heading(ui, &text::part_heading(&part.name));
    told(ui, job, part);
    let mut put =
        |next: RoofPart| actions.push(Action::Edit(text::change_of(&part.name), Edit::PutPart(next)));
    if let Some(name) = fields::name(ui, text::NAME.now(), &part.name) {
        put(RoofPart { name, ..part.clone() });
    }
    let kinds = PartKind::ALL.map(|kind| (kind, text::part_kind(kind)));
    if let Some(kind) = fields::choice(ui, text::PART_KIND.now(), part.kind, &kinds) {
        put(RoofPart { kind, ..part.clone() });
    }
    if part.kind == PartKind::Chimney {
        chimney(ui, part, units, &mut put);
    } else {
        if let Some(eave_height) = fields::length(
            ui,
            text::EAVES_HIGH.now(),
            part.eave_height,
            units,
            false,
            text::EAVES_HIGH_HELP.now(),
        ) {
            put(RoofPart { eave_height, ..part.clone() });
        }
        all_sides(ui, part, units, &mut put);
    }
    super::square::square(ui, &part.outline, || squaring::of_part(part), actions);
    place(ui, job, state, part, actions);
    if part.kind != PartKind::Chimney {
        sides(ui, state, part, units, actions);
    }
    ui.add_space(theme::GAP);
    ui.horizontal_wrapped(|ui| {
        if ui.button(text::SET_FREE.now()).on_hover_text(text::SET_FREE_HELP.now()).clicked() {
            let label = text::change_of(&part.name);
            actions.push(Action::EditAndSelect(label, Edit::FreePart(id), Selection::Nothing));
        }
        if ui.button(text::DELETE_PART.now()).clicked() {
            let label = text::delete_of(&part.name);
            actions.push(Action::EditAndSelect(label, Edit::RemovePart(id), Selection::Nothing));
        }
    });
    list(ui, job, state.selection, actions);
}

/// Problems of the part, and blocks that it left without a face.
fn told(ui: &mut Ui, job: &Resolved, part: &RoofPart) {
    for problem in job.problems().iter().filter(|problem| problem.part == part.id) {
        match &problem.trouble {
            PartTrouble::NotRaised(error) => fields::wrong(ui, &error.to_string()),
            PartTrouble::Hidden => fields::wrong(ui, text::PART_HIDDEN.now()),
            PartTrouble::NoCricket => fields::wrong(ui, text::PART_NO_CRICKET.now()),
        }
    }
    let resting = |block: &&chalkcourse_job::Block| {
        let of_part = |face: &&chalkcourse_job::Face| face.from.is_some_and(|from| from.part == part.id);
        job.resting.iter().filter(of_part).any(|face| face.id == block.face)
    };
    let blocks: Vec<String> =
        job.blocks.iter().filter(resting).map(|block| text::block_heading(&block.name).into()).collect();
    if !blocks.is_empty() {
        ui.label(RichText::new(text::without_face(&blocks)).color(theme::of(ui).caution));
    }
}

fn chimney(ui: &mut Ui, part: &RoofPart, units: Units, put: &mut impl FnMut(RoofPart)) {
    if let Some(eave_height) = fields::length(
        ui,
        text::CHIMNEY_TOP.now(),
        part.eave_height,
        units,
        false,
        text::CHIMNEY_TOP_HELP.now(),
    ) {
        put(RoofPart { eave_height, ..part.clone() });
    }
    let mut with = part.cricket.is_some();
    if ui.checkbox(&mut with, text::CRICKET.now()).on_hover_text(text::CRICKET_HELP.now()).clicked() {
        let usual = Pitch::from_rise_in_12(6.0).unwrap_or(Pitch::FLAT);
        put(RoofPart { cricket: with.then_some(usual), ..part.clone() });
    }
    if let Some(pitch) = part.cricket
        && let Some(pitch) = fields::pitch(ui, text::CRICKET_PITCH.now(), pitch, text::PITCH_HELP.now())
    {
        put(RoofPart { cricket: Some(pitch), ..part.clone() });
    }
}

/// One pitch for all slopes, one overhang for all sides.
fn all_sides(ui: &mut Ui, part: &RoofPart, units: Units, put: &mut impl FnMut(RoofPart)) {
    let pitches: Vec<Pitch> = part
        .sides
        .iter()
        .flatten()
        .filter_map(|side| if let Treatment::Slope(pitch) = side.treatment { Some(pitch) } else { None })
        .collect();
    let shown = match pitches.as_slice() {
        [first, rest @ ..] if rest.iter().all(|other| other == first) => first.to_string(),
        _ => text::MIXED.now().to_owned(),
    };
    let typed = fields::parsed(ui, text::ALL_PITCHES.now(), &shown, text::PITCH_HELP.now(), |typed| {
        either(typed, Pitch::parse(typed))
    });
    if let Some(Some(pitch)) = typed {
        put(part.with_all_sides(|side| match side.treatment {
            Treatment::Slope(_) => PartSide { treatment: Treatment::Slope(pitch), ..side },
            _ => side,
        }));
    }
    let overhangs: Vec<Length> = part.sides.iter().flatten().map(|side| side.overhang).collect();
    let shown = text::same_or_mixed(&overhangs, |overhang| overhang.show_small(units));
    let typed =
        fields::parsed(ui, text::ALL_OVERHANGS.now(), &shown, text::PART_OVERHANG_HELP.now(), |typed| {
            either(typed, text::at_least_none(Length::parse(typed, units)))
        });
    if let Some(Some(overhang)) = typed {
        put(part.with_all_sides(|side| PartSide { overhang, ..side }));
    }
}

/// The placeholder for differing sides is neither an error nor a value.
fn either<T, E>(typed: &str, read: Result<T, E>) -> Result<Option<T>, E> {
    if typed.trim() == text::MIXED.now() { Ok(None) } else { read.map(Some) }
}

/// The position of the selected corner, or the first one; editing it moves the corner, or the whole part.
fn place(ui: &mut Ui, job: &Resolved, state: &State, part: &RoofPart, actions: &mut Actions) {
    let corner = match state.selection {
        Selection::Part(_, PartPlace::Corner { ring, corner }) => Some((ring, corner)),
        _ => None,
    };
    let (ring, at) = corner.unwrap_or((0, 0));
    let Some(&from) = part.outline.rings().nth(ring).and_then(|corners| corners.get(at)) else { return };
    ui.add_space(theme::GAP);
    ui.strong(text::corner_heading(at));
    let mut go = |to: DVec2| {
        let edit = match corner {
            Some((ring, corner)) => part.with_corner_moved(ring, corner, to).map(Edit::PutPart),
            None => Some(Edit::MoveParts {
                parts: crate::edits::part::moving(job, part.id),
                how: PlanMove::shift(to - from),
            }),
        };
        actions.extend(edit.map(|edit| Action::Edit(text::move_of(&part.name), edit)));
    };
    ui.push_id(("corner of part", ring, at), |ui| {
        let (east, north) = (Length::from_metres(from.x), Length::from_metres(from.y));
        if let Some(east) = fields::length(ui, text::EAST.now(), east, job.units, false, "") {
            go(dvec2(east.metres(), from.y));
        }
        if let Some(north) = fields::length(ui, text::NORTHWARD.now(), north, job.units, false, "") {
            go(dvec2(from.x, north.metres()));
        }
    });
}

fn sides(ui: &mut Ui, state: &State, part: &RoofPart, units: Units, actions: &mut Actions) {
    ui.add_space(theme::GAP);
    ui.strong(text::SIDES_OF_PART.now());
    for (ring, number, a, b) in part.outline.sides() {
        let at = SideRef { ring, side: number };
        let Some(side) = part.side(at).copied() else { continue };
        let this = Selection::Part(part.id, PartPlace::Side { ring, side: number });
        let held = state.selection == this;
        ui.push_id(("side of part", ring, number), |ui| {
            ui.horizontal(|ui| {
                let length = Length::from_metres(a.distance(b)).show(units);
                let row = Button::selectable(held, text::side_row(number, &length))
                    .min_size(egui::vec2(128.0, 0.0));
                if ui.add(row).clicked() {
                    actions.push(Action::Select(this));
                }
                let mut put = |treatment: Treatment| {
                    let next = part.with_side(at, |side| PartSide { treatment, ..side });
                    actions.extend(
                        next.map(|next| Action::Edit(text::change_of(&part.name), Edit::PutPart(next))),
                    );
                };
                stands(ui, part, number, side, &mut put);
            });
            if held {
                side_fields(ui, part, at, side, units, actions);
            }
        });
    }
}

/// Slope, gable or wall.
fn stands(ui: &mut Ui, part: &RoofPart, number: usize, side: PartSide, put: &mut impl FnMut(Treatment)) {
    let pitch = match side.treatment {
        Treatment::Slope(pitch) => pitch,
        _ => usual_pitch(part),
    };
    egui::ComboBox::from_id_salt("stands")
        .selected_text(text::treatment_words(side.treatment))
        .width((ui.available_width() - 2.0).max(80.0))
        .show_ui(ui, |ui| {
            let choices = [Treatment::Slope(pitch), Treatment::Gable, Treatment::Wall];
            for (choice, words) in choices.into_iter().zip(text::TREATMENTS) {
                if ui.selectable_label(side.treatment == choice, words.now()).clicked()
                    && side.treatment != choice
                {
                    put(choice);
                }
            }
        })
        .response
        .accessible_name(text::stands_on_side(number));
}

/// The pitch of the part's first slope, for a side that becomes one.
fn usual_pitch(part: &RoofPart) -> Pitch {
    let mut slopes = part.sides.iter().flatten().filter_map(|side| match side.treatment {
        Treatment::Slope(pitch) => Some(pitch),
        _ => None,
    });
    slopes.next().or_else(|| Pitch::from_rise_in_12(6.0).ok()).unwrap_or(Pitch::FLAT)
}

fn side_fields(
    ui: &mut Ui,
    part: &RoofPart,
    at: SideRef,
    side: PartSide,
    units: Units,
    actions: &mut Actions,
) {
    let mut put = |next: PartSide| {
        let next = part.with_side(at, |_| next);
        actions.extend(next.map(|next| Action::Edit(text::change_of(&part.name), Edit::PutPart(next))));
    };
    if let Treatment::Slope(pitch) = side.treatment
        && let Some(pitch) = fields::pitch(ui, text::PITCH.now(), pitch, text::PITCH_HELP.now())
    {
        put(PartSide { treatment: Treatment::Slope(pitch), ..side });
    }
    let shown = side.overhang.show_small(units);
    let overhang =
        fields::parsed(ui, text::RAISE_OVERHANG.now(), &shown, text::PART_OVERHANG_HELP.now(), |typed| {
            text::at_least_none(Length::parse(typed, units))
        });
    if let Some(overhang) = overhang {
        put(PartSide { overhang, ..side });
    }
    if matches!(side.treatment, Treatment::Slope(_)) {
        let shown = side.eave_height.map_or_else(String::new, |height| height.show(units));
        let typed = fields::parsed(ui, text::OWN_EAVE.now(), &shown, text::OWN_EAVE_HELP.now(), |typed| {
            if typed.trim().is_empty() { Ok(None) } else { Length::parse(typed, units).map(Some) }
        });
        if let Some(eave_height) = typed {
            put(PartSide { eave_height, ..side });
        }
    }
}

/// The fields of a part's face: the pitch of its side, and a link to the part.
pub(super) fn of_face(ui: &mut Ui, job: &Resolved, face: &Face, actions: &mut Actions) {
    let Some((part, at)) = job.side_of(face.id) else { return };
    ui.horizontal_wrapped(|ui| {
        quiet(ui, text::FOLLOWS_PART.now());
        if ui.little_button(text::SHOW_PART.now()).clicked() {
            let place = PartPlace::Side { ring: at.ring, side: at.side };
            actions.push(Action::Select(Selection::Part(part.id, place)));
        }
    });
    if let Some(pitch) = fields::pitch(ui, text::PITCH.now(), face.pitch, text::PITCH_HELP.now()) {
        let next = part.with_side(at, |side| PartSide { treatment: Treatment::Slope(pitch), ..side });
        actions.extend(next.map(|next| Action::Edit(text::change_of(&part.name), Edit::PutPart(next))));
    }
}

/// All parts of the job, to select.
pub(super) fn list(ui: &mut Ui, job: &Resolved, selection: Selection, actions: &mut Actions) {
    if job.parts.is_empty() {
        return;
    }
    ui.add_space(theme::GAP * 1.5);
    ui.strong(text::PARTS.now());
    for part in &job.parts {
        let held = matches!(selection, Selection::Part(id, _) if id == part.id);
        ui.push_id(("part", part.id), |ui| {
            ui.horizontal(|ui| {
                if ui.add(Button::selectable(held, &part.name).min_size(egui::vec2(128.0, 0.0))).clicked() {
                    actions.push(Action::Select(Selection::Part(part.id, PartPlace::Whole)));
                }
                quiet(ui, part.kind.name().now());
            });
        });
    }
}
