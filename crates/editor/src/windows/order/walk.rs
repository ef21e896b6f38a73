//! Keyboard navigation in the lines of the order.

use super::rows::{Row, is_off};
use super::{OrderWindow, change};
use crate::action::{Action, Actions};
use crate::state::State;
use crate::state::panes::Pane;
use crate::text;
use crate::widgets::{list_steps, stepped};
use chalkcourse_job::Resolved;
use chalkcourse_takeoff::{Line, LineState};
use egui::{EventFilter, Key, Modifiers, Ui};

/// Arrow and Page keys, Home and End select lines while the order has the keyboard; Enter opens the line, the space bar
/// leaves it out or orders it again. Returns the row to show.
pub(super) fn walk(
    ui: &Ui,
    job: &Resolved,
    state: &State,
    own: &mut OrderWindow,
    rows: &[Row<'_>],
    page: usize,
    actions: &mut Actions,
) -> Option<usize> {
    let node = crate::windows::node(Pane::Order);
    let filter = EventFilter { tab: false, horizontal_arrows: false, vertical_arrows: true, escape: false };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(node, filter));
    let mine = ui.memory(|memory| memory.focused().is_none_or(|focused| focused == node));
    if state.desk.keys() != Pane::Order || !mine || egui::Popup::is_any_open(ui.ctx()) {
        return None;
    }
    let lines: Vec<(usize, &Line)> = rows
        .iter()
        .enumerate()
        .filter_map(|(at, row)| if let Row::Line(line) = row { Some((at, *line)) } else { None })
        .collect();
    let last = lines.len().checked_sub(1)?;
    let at = own.at.as_ref().and_then(|number| lines.iter().position(|(_, line)| line.number == *number));
    let steps = page.saturating_sub(2).max(1) as isize;
    let pressed = |key| ui.input_mut(|input| input.count_and_consume_key(Modifiers::NONE, key)) as isize;
    let by = list_steps(ui, steps);
    let entered = pressed(Key::Enter) > 0;
    if by != 0 {
        let next = stepped(at, by, last);
        let (row, line) = lines.get(next)?;
        own.at = Some(line.number.clone());
        // Open details follow the selection.
        if state.opened_line.is_some() {
            actions.push(Action::OpenLine(Some(line.number.clone())));
        }
        // With the heading above it, if it is the first of a group.
        return Some(if by < 0 && *row > 0 { row - 1 } else { *row });
    }
    if pressed(Key::Space) > 0
        && let Some((_, line)) = at.and_then(|at| lines.get(at))
        && !matches!(line.state, LineState::Added { .. })
    {
        switch(actions, job, line);
    }
    if entered && let Some((_, line)) = at.and_then(|at| lines.get(at)) {
        let open = state.opened_line.as_deref() == Some(line.number.as_str());
        actions.push(Action::OpenLine((!open).then(|| line.number.clone())));
    }
    None
}

/// Leaves a line out, or orders it again.
pub(super) fn switch(actions: &mut Actions, job: &Resolved, line: &Line) {
    let (number, off) = (line.number.clone(), is_off(line));
    change(actions, job, text::switch_line(&line.number, off), |order| {
        if off {
            order.off.remove(&number);
        } else {
            order.off.insert(number, String::new());
        }
    });
}
