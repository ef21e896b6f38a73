//! Labels that the electrical code asks for: a list with where each goes and by whose word, then each at full size, to cut out.

use crate::page::{Column, Part, Row, Sheet, StickOn};
use crate::wire_words::wires_sheet;
use chalkcourse_geometry::Length;
use chalkcourse_job::{
    CodeLabel, Connection, LabelGround, LabelOf, LabelPlace, LabelText, LiesIn, ModuleDevice, Resolved,
    builtin_labels,
};
use chalkcourse_plan::Plan;
use chalkcourse_wiring::{Kind, Wired, connection};
use chalkcourse_words as words;

/// Height of capital letters of the sheets' typeface, as a share of its size.
const CAPITALS: f64 = 0.729;
/// Labels of a dc raceway are no further apart, in metres: 10 ft (NEC 690.31(G)(3), 2017).
const RACEWAY_APART: f64 = 3.048;
/// What of a label's text the job does not state.
const BLANK: &str = "______";

/// A label of a job: what it says, and what is known of it.
pub(crate) struct JobLabel {
    label: &'static CodeLabel,
    says: LabelText,
    /// By whose word it is there.
    source: String,
    /// Whether the job has a text of its own.
    own: bool,
    /// How many are stuck on; `None` where the job does not state enough.
    count: Option<usize>,
}

/// The sheet.
pub(crate) fn labels_sheet(job: &Resolved, plan: &Plan) -> Sheet {
    let mut sheet = wires_sheet(words::labels::TITLE.now().to_owned(), job, plan, false);
    sheet.under.push(words::wires::edition(&job.wiring.edition.year()));
    for text in [words::labels::TEXTS_ARE_ENGLISH, words::labels::PRINT_AT_FULL_SIZE] {
        sheet.parts.push(Part::Text(text.now().to_owned()));
    }
    let labels = labels_of(job, plan);
    sheet.parts.push(labels_table(&labels));
    for label in labels {
        sheet.parts.push(Part::Heading(where_it_goes(label.label.place)));
        sheet.parts.push(Part::Label(label.stick_on()));
    }
    sheet
}

/// The labels that the edition of a job asks for, in the order of the way from the array to the service.
pub(crate) fn labels_of(job: &Resolved, plan: &Plan) -> Vec<JobLabel> {
    let edition = job.wiring.edition;
    let of_job = builtin_labels().labels.iter().filter(|label| is_asked(job, label.of));
    let with_values = |label: &'static CodeLabel| {
        let source = label.source(edition)?.text;
        let own = job.wiring.label_texts.get(&label.code);
        let says = match own {
            Some(text) => own_text(text),
            None => label.says(edition).clone(),
        };
        let says = LabelText { title: filled(&says.title, job, plan), text: filled(&says.text, job, plan) };
        let count = if label.place == LabelPlace::DcRaceway { raceway_count(job, plan) } else { Some(1) };
        Some(JobLabel { label, says, source, own: own.is_some(), count })
    };
    of_job.filter_map(with_values).collect()
}

/// Where each label goes, as a table.
pub(crate) fn labels_table(labels: &[JobLabel]) -> Part {
    let row = |label: &JobLabel| {
        let (code, own) = (label.label, label.own);
        let mut by = label.source.clone();
        if own {
            by = format!("{by}; {}", words::labels::OWN_TEXT.now());
        }
        let high = |length: Length| length.show_small(chalkcourse_geometry::Units::FeetInches);
        let letters = words::labels::letters_so_high(
            &high(code.letters),
            &high(code.small_letters),
            &colours(code.ground, code.reflective),
        );
        let count =
            label.count.map_or_else(|| words::diagram::NOT_STATED.now().to_owned(), |n| n.to_string());
        Row::Cells(vec![label.says.title.clone(), where_it_goes(code.place), by, letters, count])
    };
    Part::Table {
        columns: vec![
            Column::words(words::labels::LABEL.now(), 2.4),
            Column::words(words::labels::WHERE.now(), 2.6),
            Column::words(words::labels::BY.now(), 2.0),
            Column::words(words::labels::LETTERS.now(), 1.8),
            Column::numbers(words::labels::HOW_MANY.now(), 0.9),
        ],
        rows: labels.iter().map(row).collect(),
    }
}

fn is_asked(job: &Resolved, of: LabelOf) -> bool {
    let device = job.kit.wiring.as_ref().map(|wiring| &wiring.device);
    let connection = job.wiring.service.map(|service| service.connection);
    match of {
        LabelOf::Any => true,
        LabelOf::Dc => !matches!(device, Some(ModuleDevice::Ac(_))),
        LabelOf::Shutdown => !matches!(device, Some(ModuleDevice::None) | None),
        // Where nobody said how it is connected it is listed with where it would go.
        LabelOf::OppositeEnds => {
            connection.is_none_or(|way| matches!(way, Connection::OppositeEnds | Connection::CentreFed))
        }
        LabelOf::SumOfBreakers => connection == Some(Connection::SumOfBreakers),
    }
}

/// A text of the job: its first line is the title.
fn own_text(text: &str) -> LabelText {
    let (title, text) = text.split_once('\n').unwrap_or((text, ""));
    LabelText { title: title.trim().to_owned(), text: text.trim().to_owned() }
}

/// A label's text with the values of the job.
fn filled(text: &str, job: &Resolved, plan: &Plan) -> String {
    let value = |value: Option<f64>| value.map_or_else(|| BLANK.to_owned(), |value| format!("{value:.1}"));
    let strings = || plan.wires.circuits.iter().filter(|circuit| circuit.kind != Kind::AcDevices);
    let dc_volts = strings().map(|circuit| circuit.volts.highest).reduce(|a, b| Some(a?.max(b?))).flatten();
    let dc_amps = strings().map(|circuit| of_inverter(plan, circuit)).reduce(f64::max);
    let (ac_volts, ac_amps) = output(job, plan).unzip();
    text.replace("{dc-volts}", &value(dc_volts))
        .replace("{dc-amps}", &value(dc_amps))
        .replace("{ac-volts}", &value(ac_volts))
        .replace("{ac-amps}", &value(ac_amps))
}

/// The largest dc current at the inverter of a circuit: that of all strings led to it.
fn of_inverter(plan: &Plan, circuit: &Wired) -> f64 {
    let at = |other: &&Wired| match (other.input, circuit.input) {
        (Some(a), Some(b)) => a.inverter == b.inverter,
        _ => other.id == circuit.id,
    };
    plan.wires.circuits.iter().filter(at).map(|circuit| circuit.currents.most).sum()
}

/// Volts and amperes of the whole ac output: of all inverters, or of all branches.
pub(crate) fn output(job: &Resolved, plan: &Plan) -> Option<(f64, f64)> {
    let known = connection::output(job, &plan.wires).filter(|(amps, _)| *amps > 0.0);
    known.map(|(amps, volts)| (volts, amps))
}

/// Labels along dc raceways: one at each end of a leg, and none farther from the next than 10 ft.
fn raceway_count(job: &Resolved, plan: &Plan) -> Option<usize> {
    let mut boxes: Vec<_> =
        plan.wires.circuits.iter().filter_map(|circuit| circuit.home).map(|home| home.to).collect();
    boxes.sort();
    boxes.dedup();
    let legs = boxes.iter().filter_map(|id| job.junction_box(*id)).flat_map(|junction| &junction.legs);
    let in_raceway = legs.filter(|leg| leg.lies != LiesIn::FreeAir);
    let counts: Vec<usize> =
        in_raceway.map(|leg| (leg.length.metres() / RACEWAY_APART).ceil() as usize + 1).collect();
    (!counts.is_empty()).then(|| counts.iter().sum())
}

fn where_it_goes(place: LabelPlace) -> String {
    let place = match place {
        LabelPlace::SystemDisconnect => words::labels::AT_SYSTEM_DISCONNECT,
        LabelPlace::DcDisconnect => words::labels::AT_DC_DISCONNECT,
        LabelPlace::DcRaceway => words::labels::AT_DC_RACEWAY,
        LabelPlace::ShutdownSwitch => words::labels::AT_SHUTDOWN_SWITCH,
        LabelPlace::Connection => words::labels::AT_CONNECTION,
        LabelPlace::ConnectionBreaker => words::labels::AT_CONNECTION_BREAKER,
        LabelPlace::Service => words::labels::AT_SERVICE,
    };
    place.now().to_owned()
}

fn colours(ground: LabelGround, reflective: bool) -> &'static str {
    match ground {
        LabelGround::Red if reflective => words::labels::WHITE_ON_RED_REFLECTING.now(),
        LabelGround::Red => words::labels::WHITE_ON_RED.now(),
        LabelGround::Orange => words::labels::BLACK_ON_ORANGE.now(),
        LabelGround::Yellow => words::labels::BLACK_ON_YELLOW.now(),
    }
}

impl JobLabel {
    fn stick_on(self) -> StickOn {
        let (ground, ink) = match self.label.ground {
            LabelGround::Red => ([190, 20, 28], [255, 255, 255]),
            LabelGround::Orange => ([240, 130, 30], [0, 0, 0]),
            LabelGround::Yellow => ([250, 215, 40], [0, 0, 0]),
        };
        let points = |letters: Length| (letters.inches() * 72.0 / CAPITALS) as f32;
        let sizes = (points(self.label.letters), points(self.label.small_letters));
        StickOn { title: self.says.title, text: self.says.text, sizes, ground, ink }
    }
}
