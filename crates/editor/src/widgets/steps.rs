//! Keyboard navigation in lists.

use egui::{Key, Modifiers, Ui};

/// By how many entries the arrow and Page keys, Home and End of this frame move; negative is up.
pub(crate) fn list_steps(ui: &Ui, page: isize) -> isize {
    let keys = [
        (Key::ArrowDown, 1),
        (Key::ArrowUp, -1),
        (Key::PageDown, page),
        (Key::PageUp, -page),
        (Key::Home, isize::MIN / 2),
        (Key::End, isize::MAX / 2),
    ];
    let pressed = |key| ui.input_mut(|input| input.count_and_consume_key(Modifiers::NONE, key)) as isize;
    let steps = keys.into_iter().map(|(key, step)| pressed(key).min(1000).saturating_mul(step));
    steps.fold(0, isize::saturating_add)
}

/// The entry after a number of steps, from an entry or from before the end where the steps start.
pub(crate) fn stepped(at: Option<usize>, by: isize, last: usize) -> usize {
    let from = at.map_or(if by > 0 { -1 } else { last as isize + 1 }, |at| at as isize);
    from.saturating_add(by).clamp(0, last as isize) as usize
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn steps_stay_in_the_list_and_enter_it_at_either_end() {
        for (at, by, to) in [
            (None, 1, 0),
            (None, -1, 4),
            (None, 3, 2),
            (Some(2), 1, 3),
            (Some(2), -9, 0),
            (Some(4), 1, 4),
            (Some(1), isize::MAX / 2, 4),
            (Some(3), isize::MIN / 2, 0),
            (None, isize::MIN, 0),
        ] {
            assert_eq!(stepped(at, by, 4), to, "{at:?} {by}");
        }
        assert_eq!(stepped(None, 1, 0), 0);
    }
}
