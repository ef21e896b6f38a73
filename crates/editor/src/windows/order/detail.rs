//! Details of the open line: how it was counted, why it was changed, alternates, and the fields of an added line.

use super::cells::{parse_waste, percent, set_waste};
use super::{change, set_packages};
use crate::action::{Action, Actions};
use crate::widgets::{fields, quiet};
use crate::{text, theme};
use chalkcourse_job::{AddedLine, Group, Resolved, Stage};
use chalkcourse_takeoff::{Line, LineState};
use chalkcourse_telling::order::{count_words, show_money, state_words};
use chalkcourse_words::of_data;
use egui::{RichText, ScrollArea, Ui};

/// Its height under the table, points: an added line has more fields.
pub(super) fn high(line: &Line) -> f32 {
    if matches!(line.state, LineState::Added { .. }) { 250.0 } else { 150.0 }
}

pub(super) fn line_detail(ui: &mut Ui, job: &Resolved, line: &Line, actions: &mut Actions) {
    ui.horizontal(|ui| {
        ui.with_layout(egui::Layout::right_to_left(egui::Align::Center), |ui| {
            if ui.small_button(text::CLOSE.now()).clicked() {
                actions.push(Action::OpenLine(None));
            }
            if matches!(line.state, LineState::Overridden { .. })
                && ui.small_button(text::as_counted(line.counted)).clicked()
            {
                set_packages(actions, job, line, None);
            }
            ui.with_layout(egui::Layout::left_to_right(egui::Align::Center), |ui| {
                let name = RichText::new(format!("{}  {}", line.number, line.name)).strong();
                ui.add(egui::Label::new(name).truncate());
            });
        });
    });
    ScrollArea::vertical().id_salt("line").auto_shrink([false, false]).show(ui, |ui| {
        ui.push_id(&line.number, |ui| contents(ui, job, line, actions));
    });
}

fn contents(ui: &mut Ui, job: &Resolved, line: &Line, actions: &mut Actions) {
    let number = line.number.as_str();
    if let Some(own) = job.order.added.iter().find(|own| own.number == number) {
        added(ui, job, own, actions);
        return;
    }
    let why = match &line.state {
        LineState::Off { why } | LineState::Overridden { why } => Some(why),
        LineState::Counted | LineState::Added { .. } => None,
    };
    if let Some(why) = why
        && let Some(why) = fields::words(ui, text::REASON.now(), why)
    {
        change(actions, job, text::give_reason(number), |order| {
            if let Some(off) = order.off.get_mut(number) {
                off.clone_from(&why);
            }
            if let Some(own) = order.overrides.get_mut(number) {
                own.why.clone_from(&why);
            }
        });
    }
    alternates(ui, job, line, actions);
    gear(ui, job, number, actions);
    waste(ui, job, number, actions);
    let count = count_words(line, job.units);
    if !count.is_empty() {
        ui.label(count);
    }
    quiet(ui, &text::waste_words(line, job.units));
    quiet(ui, &of_data(&line.source.now()));
    if let Some(state) = state_words(line, job.units) {
        ui.label(RichText::new(state).color(theme::of(ui).accent));
    }
}

/// Parts that are returned after a job may be owned by the office.
fn gear(ui: &mut Ui, job: &Resolved, number: &str, actions: &mut Actions) {
    if !job.kit.part(number).is_some_and(|part| part.comes_back) {
        return;
    }
    let own = job.order.own.contains(number);
    ui.horizontal(|ui| {
        if fields::tick(ui, own, true, &text::own_gear_of(number).now(), text::OWN_GEAR_HELP.now()) {
            change(actions, job, text::own_gear_of(number), |order| {
                if !order.own.remove(number) {
                    order.own.insert(number.to_owned());
                }
            });
        }
        ui.label(text::OWN_GEAR.now()).on_hover_text(text::OWN_GEAR_HELP.now());
    });
}

/// The office's own waste, with its source.
fn waste(ui: &mut Ui, job: &Resolved, number: &str, actions: &mut Actions) {
    let own = job.order.waste.get(number);
    let shown = own.map(|own| percent(own.share)).unwrap_or_default();
    if let Some(typed) =
        fields::parsed(ui, text::OWN_WASTE.now(), &shown, text::OWN_WASTE_HELP.now(), parse_waste)
    {
        set_waste(actions, job, number, typed);
    }
    if let Some(own) = own
        && let Some(why) = fields::words(ui, text::OWN_WASTE_WHY.now(), &own.why)
    {
        change(actions, job, text::waste_of(number), |order| {
            if let Some(own) = order.waste.get_mut(number) {
                own.why = why;
            }
        });
    }
}

/// The supplier's alternates.
fn alternates(ui: &mut Ui, job: &Resolved, line: &Line, actions: &mut Actions) {
    let Some(price) = job.prices.prices.get(&line.number).filter(|price| !price.alternates.is_empty()) else {
        return;
    };
    let now = job.order.alternates.get(&line.number).map(String::as_str);
    let names: Vec<String> = price
        .alternates
        .iter()
        .map(|other| format!("{}  {}, {}", other.number, other.name, show_money(other.package)))
        .collect();
    let own = text::no_alternate(price.package);
    let mut choices = vec![(None, own.as_str())];
    choices.extend(
        price.alternates.iter().zip(&names).map(|(other, name)| (Some(other.number.as_str()), name.as_str())),
    );
    if let Some(chosen) = fields::choice(ui, text::TAKE_INSTEAD.now(), now, &choices) {
        change(actions, job, text::take_alternate(&line.number), |order| match chosen {
            Some(other) => {
                order.alternates.insert(line.number.clone(), other.to_owned());
            }
            None => {
                order.alternates.remove(&line.number);
            }
        });
    }
}

/// The fields of an added line.
fn added(ui: &mut Ui, job: &Resolved, own: &AddedLine, actions: &mut Actions) {
    let mut set = |how: &dyn Fn(&mut AddedLine)| {
        change(actions, job, text::change_line(&own.number), |order| {
            for line in order.added.iter_mut().filter(|line| line.number == own.number) {
                how(line);
            }
        });
    };
    if let Some(name) = fields::name(ui, text::LINE_WHAT.now(), &own.name) {
        set(&|line| line.name.clone_from(&name));
    }
    if let Some(package) = fields::name(ui, text::LINE_PACKAGE.now(), &own.package) {
        set(&|line| line.package.clone_from(&package));
    }
    let groups: Vec<(Group, &str)> =
        Group::ALL.into_iter().map(|group| (group, group.name().now())).collect();
    if let Some(group) = fields::choice(ui, text::LINE_GROUP.now(), own.group, &groups) {
        set(&|line| line.group = group);
    }
    let stages: Vec<(Stage, &str)> =
        Stage::ALL.into_iter().map(|stage| (stage, stage.name().now())).collect();
    if let Some(stage) = fields::choice(ui, text::LINE_STAGE.now(), own.stage, &stages) {
        set(&|line| line.stage = stage);
    }
    if let Some(why) = fields::words(ui, text::REASON.now(), &own.why) {
        set(&|line| line.why.clone_from(&why));
    }
    if ui.button(text::REMOVE_LINE.now()).clicked() {
        change(actions, job, text::remove_line(&own.number), |order| {
            order.added.retain(|line| line.number != own.number);
        });
    }
}
