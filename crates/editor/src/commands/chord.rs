use egui::{Key, KeyboardShortcut, Modifiers};

/// When the key of a command is heard while a field is typed in. With no field, each is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum InField {
    Heard,
    /// It is the field's own: a letter, an arrow, all of the text.
    Fields,
    /// It is for the drawing, and for nothing else that has the keyboard.
    Drawing,
    /// The field takes back its own words, but for the length of a side that is being drawn.
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

    /// A key that no field knows: F1.
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

    /// Fields have a use of their own for it.
    pub(super) const fn also_of_fields(self) -> Self {
        Self { in_field: InField::Fields, ..self }
    }

    /// For what is held on the drawing: not while anything beside it has the keyboard.
    pub(super) const fn of_drawing(self) -> Self {
        Self { in_field: InField::Drawing, ..self }
    }

    /// Fields take back their own words by it.
    pub(super) const fn also_undo_of_fields(self) -> Self {
        Self { in_field: InField::HeardWhileDrawing, ..self }
    }

    /// Whether it is heard: `typing` while a field has the keyboard, `elsewhere` while anything but the drawing has it, `drawing` while
    /// a side is drawn.
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
