use egui::{Key, KeyboardShortcut, Modifiers};

/// Whether the key of a command is handled while a text field is edited. Without one, each is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum InField {
    Heard,
    /// Reserved for the field: a letter, an arrow, select all.
    Fields,
    /// Only for the drawing, not when anything else has the focus.
    Drawing,
    /// Fields use it for their own undo, except the length field of a side being drawn.
    HeardWhileDrawing,
}

/// A key of a command.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Chord {
    pub(crate) shortcut: KeyboardShortcut,
    in_field: InField,
}

impl Chord {
    const fn new(modifiers: Modifiers, key: Key, in_field: InField) -> Self {
        Self { shortcut: KeyboardShortcut::new(modifiers, key), in_field }
    }

    pub(super) const fn plain(key: Key) -> Self {
        Self::new(Modifiers::NONE, key, InField::Fields)
    }

    pub(super) const fn shift(key: Key) -> Self {
        Self::new(Modifiers::SHIFT, key, InField::Fields)
    }

    /// A key that no field uses: F1.
    pub(super) const fn function(key: Key) -> Self {
        Self::new(Modifiers::NONE, key, InField::Heard)
    }

    pub(super) const fn function_shift(key: Key) -> Self {
        Self::new(Modifiers::SHIFT, key, InField::Heard)
    }

    pub(super) const fn ctrl(key: Key) -> Self {
        Self::new(Modifiers::COMMAND, key, InField::Heard)
    }

    pub(super) const fn ctrl_shift(key: Key) -> Self {
        Self::new(Modifiers::COMMAND.plus(Modifiers::SHIFT), key, InField::Heard)
    }

    /// Text fields have their own use for it.
    pub(super) const fn also_of_fields(self) -> Self {
        Self { in_field: InField::Fields, ..self }
    }

    /// For the selection on the drawing: not while anything else has the focus.
    pub(super) const fn of_drawing(self) -> Self {
        Self { in_field: InField::Drawing, ..self }
    }

    /// Text fields use it for their own undo.
    pub(super) const fn also_undo_of_fields(self) -> Self {
        Self { in_field: InField::HeardWhileDrawing, ..self }
    }

    /// Whether it is handled: `typing` while a text field has the focus, `elsewhere` while anything but the drawing has
    /// it, `drawing` while a side is drawn.
    pub(super) fn heard(self, typing: bool, elsewhere: bool, drawing: bool) -> bool {
        if self.in_field == InField::Drawing {
            return !elsewhere;
        }
        !typing
            || match self.in_field {
                InField::Heard => true,
                InField::Fields | InField::Drawing => false,
                InField::HeardWhileDrawing => drawing,
            }
    }
}
