use super::{Amount, Kit, Measure};
use crate::{Site, Source};
use chalkcourse_words::tell;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What holds the modules down to the deck. How many there are follows from how its part is counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct HoldDown {
    /// The number of the fastener's part.
    pub part: String,
    /// What it goes through: the number of the foot's part.
    pub foot: String,
    /// What one holds against uplift in the thinnest deck that the kit allows, for allowable stress design, pounds.
    pub pounds: f64,
    /// Whose word that is: a listing, a test.
    pub source: Source,
}

/// One fastener of the array, as wind asks it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fastener {
    /// What it holds against uplift, pounds, for allowable stress design.
    pub pounds: f64,
    /// Deck that it holds alone, square feet.
    pub square_feet: f64,
}

impl Kit {
    /// Fasteners that hold one foot down; `None` where the kit does not say.
    pub fn fasteners_a_foot(&self) -> Option<f64> {
        let hold = self.hold_down.as_ref()?;
        self.count_of(&hold.part, &Measure::Part(hold.foot.clone()))
    }

    /// Feet of a module; `None` where the kit does not say.
    pub fn feet_a_module(&self) -> Option<f64> {
        self.count_of(&self.hold_down.as_ref()?.foot, &Measure::Module)
    }

    fn count_of(&self, number: &str, of: &Measure) -> Option<f64> {
        let needs = &self.part(number)?.needs;
        let count = needs.iter().filter(|term| term.of == *of).filter_map(|term| match term.each {
            Amount::Count(count) => Some(count),
            _ => None,
        });
        Some(count.sum()).filter(|count: &f64| *count > 0.0)
    }

    /// Deck that one fastener holds where the kit's feet and fasteners are set, square feet; `None` where the kit does not say.
    pub fn deck_a_fastener(&self) -> Option<f64> {
        let square_feet = self.module.length.feet() * self.module.width.feet();
        Some(square_feet / (self.feet_a_module()? * self.fasteners_a_foot()?))
    }

    /// One fastener: what a person said of this site, else the kit's own. `None` where neither does.
    pub fn fastener(&self, site: &Site) -> Option<Fastener> {
        let said = &site.building;
        Some(Fastener {
            pounds: said.fastener_pounds.or(self.hold_down.as_ref().map(|hold| hold.pounds))?,
            square_feet: said.fastener_square_feet.or_else(|| self.deck_a_fastener())?,
        })
    }

    pub(super) fn check_hold_down(&self) -> Result<(), String> {
        let Some(hold) = &self.hold_down else { return Ok(()) };
        for (field, number) in [("part", &hold.part), ("foot", &hold.foot)] {
            if self.part(number).is_none() {
                return Err(tell!(
                    "hold_down.{field}: there is no part {number:?} among the parts",
                    "hold_down.{field}: no hay pieza {number:?} entre las piezas"
                ));
            }
        }
        // One a foot at least: common practice, no source.
        if self.fasteners_a_foot().is_none_or(|count| count < 1.0) {
            return Err(tell!(
                "hold_down.part: {:?} must count at least one for each {:?}",
                "hold_down.part: {:?} debe contar al menos uno por cada {:?}",
                hold.part,
                hold.foot
            ));
        }
        if !(1.0..1e5).contains(&hold.pounds) {
            return Err(tell!(
                "hold_down.pounds must be 1 to 100000, not {}",
                "hold_down.pounds debe ser de 1 a 100000, no {}",
                hold.pounds
            ));
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use crate::{Building, Site, builtin_kit};

    /// 1722 × 1134 mm is 21.02 sq ft; five feet a module and one screw a foot (common practice, no source) hold 4.204 each.
    #[test]
    fn one_fastener_has_one_home() {
        let kit = builtin_kit();
        assert_eq!((kit.feet_a_module(), kit.fasteners_a_foot()), (Some(5.0), Some(1.0)));
        let fastener = kit.fastener(&Site::default()).unwrap();
        assert!((fastener.square_feet - 4.204).abs() < 1e-3, "{fastener:?}");
        assert_eq!(fastener.pounds, kit.hold_down.as_ref().unwrap().pounds);
        // What somebody had tested on this deck goes before the kit's.
        let building = Building { fastener_pounds: Some(61.0), ..Building::default() };
        let tested = kit.fastener(&Site { building, ..Site::default() }).unwrap();
        assert_eq!((tested.pounds, tested.square_feet), (61.0, fastener.square_feet));
    }

    #[test]
    fn a_foot_without_a_fastener_is_refused() {
        let mut kit = (*builtin_kit()).clone();
        let screw = kit.hold_down.as_ref().unwrap().part.clone();
        let part = kit.parts.iter_mut().find(|part| part.number == screw).unwrap();
        part.needs.retain(|term| !matches!(term.of, crate::Measure::Part(_)));
        assert!(kit.check().unwrap_err().starts_with("hold_down.part"));
        kit.hold_down = None;
        kit.check().unwrap();
        assert_eq!(kit.fastener(&Site::default()), None);
    }
}
