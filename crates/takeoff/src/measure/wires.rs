//! Measures of the circuits as wired. Until a circuit is drawn there are none: terms that count them say so by `wired`.

use super::Measures;
use crate::{MeasuredPlace, MeasuredShape, Spot};
use chalkcourse_geometry::dvec2;
use chalkcourse_job::{BoxStands, HomeRun, Measure};
use chalkcourse_wiring::{Device, Kind, Wired, face_of_box, ground_to_box};

/// Whether a measure is one of the circuits.
pub(crate) fn is_of_wires(measure: &Measure) -> bool {
    matches!(
        measure,
        Measure::Circuit
            | Measure::ExtensionLead(_)
            | Measure::HomeRun(_)
            | Measure::GroundToBox
            | Measure::HomeRunEnd
            | Measure::JunctionBox(_)
            | Measure::Inverter(_)
    )
}

impl Measures<'_> {
    pub(super) fn measure_wires(&self, measure: &Measure, places: &mut Vec<MeasuredPlace>) {
        match measure {
            Measure::Circuit => {
                for circuit in &self.wires.circuits {
                    places.extend(circuit.devices.first().map(|first| self.at_device(circuit, first, 1.0)));
                }
            }
            Measure::ExtensionLead(number) => {
                for circuit in &self.wires.circuits {
                    self.extension_leads(circuit, number, places);
                }
            }
            Measure::HomeRun(which) => {
                for circuit in &self.wires.circuits {
                    self.home_run(circuit, *which, places);
                }
            }
            Measure::GroundToBox => {
                for block in self.layout.blocks.iter().filter(|block| !block.modules.is_empty()) {
                    let Some((junction, end, way)) = ground_to_box(self.job, self.layout, block) else {
                        continue;
                    };
                    places.push(MeasuredPlace {
                        face: self.layout.faces.get(block.face).map(|face| face.id),
                        block: Some(block.id),
                        name: Some(junction.name.as_str().into()),
                        spot: Spot::JunctionBox,
                        amount: way,
                        shape: MeasuredShape::Point(end),
                    });
                }
            }
            Measure::HomeRunEnd => {
                for circuit in self.wires.circuits.iter().filter(|circuit| circuit.home.is_some()) {
                    let first = circuit.devices.first().filter(|_| circuit.kind != Kind::AcDevices);
                    let ends = first.into_iter().chain(circuit.devices.last());
                    places.extend(ends.map(|device| self.at_device(circuit, device, 1.0)));
                }
            }
            Measure::JunctionBox(stands) => self.boxes(*stands, places),
            Measure::Inverter(number) => {
                let count = self.job.wiring.inverters.iter().filter(|own| *own == number).count();
                if count > 0 && !self.job.circuits.is_empty() {
                    let whole = MeasuredShape::Whole;
                    places.push(MeasuredPlace {
                        face: None,
                        block: None,
                        name: None,
                        spot: Spot::Job,
                        amount: count as f64,
                        shape: whole,
                    });
                }
            }
            _ => {}
        }
    }

    /// What arises at a module of a circuit.
    fn at_device(&self, circuit: &Wired, device: &Device, amount: f64) -> MeasuredPlace {
        let face = self.layout.faces.get(device.face).map(|face| face.id);
        let (name, shape) = (Some(circuit.name.as_str().into()), MeasuredShape::Point(device.point));
        MeasuredPlace { face, block: Some(device.at.block), name, spot: Spot::Circuit, amount, shape }
    }

    fn extension_leads(&self, circuit: &Wired, number: &str, places: &mut Vec<MeasuredPlace>) {
        let stock = self.kit.wiring.as_ref().map(|wiring| wiring.leads.extensions.as_slice());
        let Some(which) = stock.and_then(|stock| stock.iter().position(|lead| lead.number == number)) else {
            return;
        };
        for (link, pair) in circuit.links.iter().zip(circuit.devices.windows(2)) {
            let count = link.leads.iter().flatten().filter(|lead| **lead == which).count();
            let [from, to] = pair else { continue };
            if count > 0 {
                let mut place = self.at_device(circuit, from, count as f64);
                if from.face == to.face {
                    // Along the eave, then up the slope, as the way is measured.
                    let corner = dvec2(to.point.x, from.point.y);
                    place.shape = MeasuredShape::Path(vec![from.point, corner, to.point]);
                }
                places.push(place);
            }
        }
    }

    /// The way home of one end of a circuit.
    fn home_run(&self, circuit: &Wired, which: HomeRun, places: &mut Vec<MeasuredPlace>) {
        let Some(home) = circuit.home else { return };
        let branch = circuit.kind == Kind::AcDevices;
        let (way, device) = match which {
            HomeRun::Negative if !branch => (home.first, circuit.devices.first()),
            HomeRun::Positive if !branch => (home.last, circuit.devices.last()),
            HomeRun::Branch if branch => (home.last, circuit.devices.last()),
            _ => return,
        };
        let (Some(way), Some(device)) = (way, device) else { return };
        places.push(self.at_device(circuit, device, way));
    }

    fn boxes(&self, stands: BoxStands, places: &mut Vec<MeasuredPlace>) {
        if self.job.circuits.is_empty() {
            return;
        }
        for junction in self.job.boxes.iter().filter(|junction| junction.stands == stands) {
            let on = face_of_box(&self.layout.roof, junction);
            places.push(MeasuredPlace {
                face: on.and_then(|(face, _)| self.layout.faces.get(face)).map(|face| face.id),
                block: None,
                name: Some(junction.name.as_str().into()),
                spot: Spot::JunctionBox,
                amount: 1.0,
                shape: on.map_or(MeasuredShape::Whole, |(_, at)| MeasuredShape::Point(at)),
            });
        }
    }
}
