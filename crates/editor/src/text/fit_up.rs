//! Words about a deck as a tape measures it.

use chalkcourse_geometry::fit_up::{Along, Closed, Deck, Snap};
use chalkcourse_geometry::{Length, Units};

pub(crate) const FIT_UP: &str = "Fit-up of a deck";
pub(crate) const FACE_OF_WINDOW: &str = "Face";
pub(crate) const FIT_UP_WHY: &str = "Type what the tape reads on the deck; what is drawn stands there until then. It is kept with the job. Planning figures: snap from a straight control line, and check on the roof.";
pub(crate) const MEASURED: &str = "Measured on the deck";
pub(crate) const MEASURED_EAVE: &str = "Width at the eave";
pub(crate) const MEASURED_HEAD: &str = "Width at the head";
pub(crate) const MEASURED_LEFT: &str = "Left rake";
pub(crate) const MEASURED_RIGHT: &str = "Right rake";
pub(crate) const MEASURED_RISING: &str = "Rising diagonal";
pub(crate) const MEASURED_FALLING: &str = "Falling diagonal";
pub(crate) const RISING_HELP: &str = "From the left end of the eave up to the right end of the head.";
pub(crate) const FALLING_HELP: &str = "From the right end of the eave up to the left end of the head.";
pub(crate) const SIDE_HELP: &str = "From corner to corner, on the deck.";
pub(crate) const SIDE_EAVE: &str = "eave";
pub(crate) const SIDE_HEAD: &str = "head";
pub(crate) const SIDE_LEFT: &str = "left";
pub(crate) const SIDE_RIGHT: &str = "right";
pub(crate) const BOWS: &str = "Bows at the middle of each edge";
pub(crate) const BOW_EAVE: &str = "Bow of the eave";
pub(crate) const BOW_HEAD: &str = "Bow of the head";
pub(crate) const BOW_LEFT: &str = "Bow of the left rake";
pub(crate) const BOW_RIGHT: &str = "Bow of the right rake";
pub(crate) const BOW_HELP: &str =
    "From the string between the corners to the edge: into the deck is more than 0, out of it (type −) less.";
pub(crate) const AS_DRAWN: &str = "As drawn";
pub(crate) const AS_DRAWN_HELP: &str =
    "Forget what was measured and begin with the face as drawn; undo takes it back.";
pub(crate) const NOT_FOUR: &str = "This face has not four corners: type the widths, rakes and diagonals of the part that carries the array.";
pub(crate) const STILL_TO_MEASURE: &str = "Still to measure: both widths, both rakes and both diagonals.";
pub(crate) const OUT_OF_SQUARE: &str = "Out of square";
pub(crate) const BASE_LINE: &str = "Base line";
pub(crate) const LINE_UP: &str = "Up from the eave";
pub(crate) const LINE_UP_HELP: &str =
    "Where the base rail line is, at its lower end. As the block lies now until you type one.";
pub(crate) const LEVEL_WITH: &str = "Level with";
pub(crate) const THE_ROW: &str = "The row";
pub(crate) const MODULE_VARIES: &str = "A module varies by";
pub(crate) const MODULE_VARIES_HELP: &str = "How much one may be larger or smaller than its sheet says. 1/32\" is half of the sixteenth that a tape is read to.";
pub(crate) const REVEAL_VARIES: &str = "A reveal is set to";
pub(crate) const REVEAL_VARIES_HELP: &str = "How far one reveal can be set wrong, either way.";
pub(crate) const SET_REVEAL: &str = "Set this reveal";
pub(crate) const SET_REVEAL_HELP: &str = "Give the block this reveal; undo takes it back.";
pub(crate) const COPY_FIT_UP: &str = "Copy as text";
pub(crate) const FIT_UP_COPIED: &str = "The fit-up is on the clipboard.";

pub(crate) fn along(along: Along) -> &'static str {
    match along {
        Along::Eave => "the eave",
        Along::Head => "the head",
        Along::Between => "halfway between",
    }
}
pub(crate) fn measure_deck_of(face: &str) -> String {
    format!("measure the deck of {face}")
}
pub(crate) fn set_reveal_of(block: &str) -> String {
    format!("set the reveal of {block}")
}

fn small(metres: f64, units: Units) -> String {
    Length::from_metres(metres.abs()).show_small(units)
}

/// How a deck is out of square, in sentences.
pub(crate) fn deck(deck: &Deck, square: f64, units: Units) -> Vec<String> {
    let lean = |name: &str, by: f64| {
        if by.abs() < 0.5 / 1000.0 {
            format!("The {name} rake is square to the eave.")
        } else {
            let way = if by > 0.0 { "right" } else { "left" };
            format!("The {name} rake leans {} to the {way} at the head.", small(by, units))
        }
    };
    let mut said = vec![lean("left", deck.racked_left), lean("right", deck.racked_right)];
    said.push(if deck.head_out_of_parallel.abs() < 0.5 / 1000.0 {
        "Head and eave are parallel.".to_owned()
    } else {
        let end = if deck.head_out_of_parallel > 0.0 { "right" } else { "left" };
        format!(
            "The head is {} farther from the eave at the {end} end.",
            small(deck.head_out_of_parallel, units)
        )
    });
    said.push(format!(
        "Square, with this eave and left rake, both diagonals would read {}.",
        Length::from_metres(square).show(units)
    ));
    if deck.closing.abs() > 0.5 / 1000.0 {
        said.push(format!(
            "The measures disagree by {}; spread over the six, none was changed by more than {}.",
            small(deck.closing, units),
            small(deck.adjusted, units)
        ));
    }
    said
}

pub(crate) fn snap(snap: &Snap, units: Units) -> String {
    let show = |metres: f64| Length::from_metres(metres).show(units);
    format!(
        "Snap it {} up at the left rake, {} at the right; at the middle that is {} from the edge itself.",
        show(snap.at_left),
        show(snap.at_right),
        show(snap.at_middle)
    )
}

/// "59' to fill, 6" kept free beside each rake"
pub(crate) fn opening(opening: f64, beside: f64, units: Units) -> String {
    let open = Length::from_metres(opening).show(units);
    format!("{open} to fill, with {} kept free beside each rake.", small(beside, units))
}

/// Whether and how a row closes, in sentences.
pub(crate) fn closed(closed: &Closed, modules: u32, units: Units) -> Vec<String> {
    let reveal = small(closed.reveal, units);
    let mut said = Vec::new();
    if closed.closes {
        said.push(format!(
            "{modules} modules close with a reveal of {reveal}; {} is over at the sides.",
            small(closed.spare.max(0.0), units)
        ));
    } else {
        said.push(format!(
            "{modules} modules do not close: even with the least reveal of {reveal} they are {} too long.",
            small(closed.spare, units)
        ));
    }
    let yes = |closes: bool| if closes { "closes" } else { "does not close" };
    said.push(format!(
        "Worst case ± {}: {}. Root-sum-square ± {}: {}.",
        small(closed.worst, units),
        yes(closed.closes_at_worst),
        small(closed.likely, units),
        yes(closed.closes_likely)
    ));
    said
}
pub(crate) fn picture(times: f64) -> String {
    if times > 1.0 {
        format!("Solid: as measured, what is out of square drawn {times:.0} times. Dashed: square.")
    } else {
        "Solid: as measured. Dashed: square.".to_owned()
    }
}
