//! Names of things, and lengths as people on the roof say them.

use chalkcourse_geometry::{EdgeKind, Length, Units};
use chalkcourse_job::{BlockId, BoxId, CircuitId, FaceId, PenetrationId, Quantity, Required, Resolved};
use chalkcourse_rules::Finding;
use chalkcourse_words::{self as words, Said, later};

/// Names the things of a job, and formats lengths in its units.
pub struct Names<'j> {
    /// The job.
    pub job: &'j Resolved,
}

impl Names<'_> {
    pub(crate) fn units(&self) -> Units {
        self.job.units
    }

    /// `block A`, or `block 3` for one without a name.
    pub fn block(&self, id: BlockId) -> Said {
        let name = self.job.block(id).map(|block| block.name.trim()).filter(|name| !name.is_empty());
        match name.and(self.job.block(id)) {
            Some(block) => later::common::block_3(&block.name),
            None => later::rules::block(&id.0),
        }
    }

    /// The block that a finding is about.
    pub(crate) fn block_of(&self, finding: &Finding) -> Said {
        finding.place.block.map_or_else(|| words::rules::A_BLOCK.into(), |id| self.block(id))
    }

    /// `face South`, or its number if it has no name.
    pub fn face(&self, id: FaceId) -> Said {
        match self.job.face(id) {
            Some(face) if !face.name.trim().is_empty() => later::common::face_3(&face.name),
            _ => later::rules::face(&id.0),
        }
    }

    /// `circuit 2`, by its name, or by its number for one that is gone.
    pub fn circuit(&self, id: CircuitId) -> Said {
        match self.job.circuit(id) {
            Some(circuit) => later::wires::circuit(&circuit.name),
            None => later::wires::circuit(&id.0),
        }
    }

    /// `box Ridge`, by its name, or by its number for one that is gone.
    pub fn junction(&self, id: BoxId) -> Said {
        match self.job.junction_box(id) {
            Some(junction) => later::wires::junction(&junction.name),
            None => later::wires::junction(&id.0),
        }
    }

    /// The circuit that a finding is about.
    pub(crate) fn circuit_of(&self, finding: &Finding) -> Said {
        finding.place.circuit.map_or_else(|| words::wires::A_CIRCUIT.into(), |id| self.circuit(id))
    }

    /// The face that a finding is on.
    pub(crate) fn face_of(&self, finding: &Finding) -> Said {
        finding.place.face.map_or_else(|| words::common::A_FACE.into(), |id| self.face(id))
    }

    /// A penetration in the middle of a sentence: `the vent “Kitchen”`.
    pub fn penetration(&self, id: Option<PenetrationId>) -> Said {
        match id.and_then(|id| self.job.penetration(id)) {
            Some(it) if it.name.trim().is_empty() => it.kind.with_article().into(),
            Some(it) => Said::joined([it.kind.with_article().into(), Said::own(format!(" “{}”", it.name))]),
            None => words::common::A_PENETRATION.into(),
        }
    }

    /// A length to the nearest sixteenth or millimetre: inches alone up to a yard.
    pub fn length(&self, metres: f64) -> String {
        length(metres, self.units())
    }

    /// A measurement below its minimum: rounded down, so that it never reads the same as the requirement.
    pub(crate) fn too_short(&self, metres: f64) -> String {
        self.length(self.units().down(metres).max(0.0))
    }

    /// A measurement above its maximum: rounded up.
    pub(crate) fn too_much(&self, metres: f64) -> String {
        self.length(self.units().up(metres))
    }
}

/// A length to the nearest sixteenth or millimetre: inches alone up to a yard.
pub(crate) fn length(metres: f64, units: Units) -> String {
    let length = Length::from_metres(metres);
    if metres.abs() < 0.915 { length.show_small(units) } else { length.show(units) }
}

/// The bare number of a quantity: metres, a ratio, a count, pounds, square metres, volts, amperes, watts, megohms; 0 if it has none.
pub(crate) fn number(quantity: Quantity) -> f64 {
    match quantity {
        Quantity::Length(length) | Quantity::InPlan(length) => length.metres(),
        Quantity::Area(number)
        | Quantity::Share(number)
        | Quantity::Pounds(number)
        | Quantity::Volts(number)
        | Quantity::Amps(number)
        | Quantity::Watts(number)
        | Quantity::Megohms(number) => number,
        Quantity::Count(count) | Quantity::Pathways { count, .. } => f64::from(count),
        Quantity::Pitch(pitch) => pitch.slope(),
        Quantity::Nothing | Quantity::Unknown | Quantity::Class(_) | Quantity::Deck(_) => 0.0,
    }
}

/// The quantity of a limit; of a range, the lower end.
pub(crate) fn limit(required: &Required) -> Quantity {
    match required {
        Required::AtLeast(it) | Required::AtMost(it) | Required::Between(it, _) | Required::Free(it) => *it,
        Required::So | Required::Deck(_) | Required::Joints(_) => Quantity::Nothing,
    }
}

/// What a finding measured, as a number.
pub(crate) fn measured(finding: &Finding) -> f64 {
    number(finding.measured)
}

/// What a finding requires, as a number.
pub(crate) fn asked(finding: &Finding) -> f64 {
    number(limit(&finding.required))
}

pub(crate) fn at_least(required: &str) -> String {
    words::rules::at_least(&required)
}

pub(crate) fn at_most(required: &str) -> String {
    words::rules::at_most(&required)
}

/// An edge in mid-sentence: with its article in Spanish, without one in English.
pub(crate) fn the_edge(kind: EdgeKind) -> &'static str {
    match kind {
        EdgeKind::Eave => words::rules::EAVE.now(),
        EdgeKind::Rake => words::rules::RAKE.now(),
        EdgeKind::Ridge => words::rules::RIDGE.now(),
        EdgeKind::Hip => words::rules::HIP.now(),
        EdgeKind::Valley => words::rules::VALLEY.now(),
        EdgeKind::WallLine => words::rules::WALL_LINE.now(),
        EdgeKind::Step => words::rules::STEP.now(),
        EdgeKind::PitchChange => words::rules::PITCH_CHANGE.now(),
    }
}
