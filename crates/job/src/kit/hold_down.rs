use super::{Amount, Kit, Measure};
use crate::{Site, Source};
use chalkcourse_words::{Said, later as words};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What fastens the modules to the deck. How many there are follows from how the part is counted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct HoldDown {
    /// Part number of the fastener.
    pub part: String,
    /// Part number of the foot that it goes through.
    pub foot: String,
    /// Uplift capacity of one fastener in the thinnest deck that the kit allows, for allowable stress design, pounds.
    pub pounds: f64,
    /// The source of the capacity: a listing, a test.
    pub source: Source,
    /// The other links of the load path from a module to the deck, with their capacities by the same listing.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub path: Vec<OnPath>,
}

/// A link of the load path from a module to the deck.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OnPath {
    /// Its name for the crew.
    pub what: String,
    /// Whether the load of a foot goes through it.
    pub way: LoadWay,
    /// Its uplift capacity at one foot, for allowable stress design, pounds; left out if the listing does not give one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pounds: Option<f64>,
}

/// Whether a load goes through a link.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum LoadWay {
    /// The whole load of a foot: no foot holds more than this.
    Through,
    /// It is beside the feet, locates modules and may help, but is not counted.
    Beside,
}

/// One fastener of the array, as used in the wind check.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fastener {
    /// Uplift capacity, pounds, for allowable stress design.
    pub pounds: f64,
    /// Deck area that it holds alone, square feet.
    pub square_feet: f64,
    /// The most that one foot can hold, whatever the deck fasteners hold, pounds; `None` if the listing does not say.
    pub foot_pounds: Option<f64>,
}

impl Fastener {
    /// The capacity of each fastener, with `a_foot` of them at each foot, pounds.
    pub fn holds(&self, a_foot: f64) -> f64 {
        self.foot_pounds.map_or(self.pounds, |foot| self.pounds.min(foot / a_foot.max(1.0)))
    }
}

impl Kit {
    /// Fasteners per foot; `None` if the kit does not say.
    pub fn fasteners_a_foot(&self) -> Option<f64> {
        let hold = self.hold_down.as_ref()?;
        self.count_of(&hold.part, &Measure::Part(hold.foot.clone()))
    }

    /// Feet per module; `None` if the kit does not say.
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

    /// Deck area per fastener with the kit's feet and fasteners, square feet; `None` if the kit does not say.
    pub fn deck_a_fastener(&self) -> Option<f64> {
        let square_feet = self.module.length.feet() * self.module.width.feet();
        Some(square_feet / (self.feet_a_module()? * self.fasteners_a_foot()?))
    }

    /// One fastener: with the values given for this site, otherwise the kit's. `None` if neither has them.
    pub fn fastener(&self, site: &Site) -> Option<Fastener> {
        let said = &site.building;
        Some(Fastener {
            pounds: said.fastener_pounds.or(self.hold_down.as_ref().map(|hold| hold.pounds))?,
            square_feet: said.fastener_square_feet.or_else(|| self.deck_a_fastener())?,
            foot_pounds: self.foot_pounds(),
        })
    }

    /// The least capacity of the links that the whole load of a foot goes through.
    fn foot_pounds(&self) -> Option<f64> {
        let path = self.hold_down.as_ref()?.path.iter().filter(|it| it.way == LoadWay::Through);
        path.filter_map(|it| it.pounds).reduce(f64::min)
    }

    pub(super) fn check_hold_down(&self) -> Result<(), Said> {
        let Some(hold) = &self.hold_down else { return Ok(()) };
        for (field, number) in [("part", &hold.part), ("foot", &hold.foot)] {
            if self.part(number).is_none() {
                return Err(words::kit::hold_down_there_is_no(&field, &format_args!("{number:?}")));
            }
        }
        // At least one per foot: common practice, no source.
        if self.fasteners_a_foot().is_none_or(|count| count < 1.0) {
            return Err(words::kit::hold_down_part_must_count(
                &format_args!("{:?}", hold.part),
                &format_args!("{:?}", hold.foot),
            ));
        }
        let on_path = hold.path.iter().filter_map(|it| it.pounds);
        if let Some(pounds) = on_path.chain([hold.pounds]).find(|pounds| !(1.0..1e5).contains(pounds)) {
            return Err(words::kit::hold_down_pounds_must_be(&pounds));
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::{LoadWay, OnPath};
    use crate::{Building, Site, builtin_kit};

    /// 1722 × 1134 mm is 21.02 sq ft; five feet per module and one screw per foot (common practice, no source) hold
    /// 4.204 each.
    #[test]
    fn fastener_capacity_comes_from_the_site_or_the_kit() {
        let kit = builtin_kit();
        assert_eq!((kit.feet_a_module(), kit.fasteners_a_foot()), (Some(5.0), Some(1.0)));
        let fastener = kit.fastener(&Site::default()).unwrap();
        assert!((fastener.square_feet - 4.204).abs() < 1e-3, "{fastener:?}");
        assert_eq!(fastener.pounds, kit.hold_down.as_ref().unwrap().pounds);
        // A capacity tested on this deck takes precedence over the kit's.
        let building = Building { fastener_pounds: Some(61.0), ..Building::default() };
        let tested = kit.fastener(&Site { building, ..Site::default() }).unwrap();
        assert_eq!((tested.pounds, tested.square_feet), (61.0, fastener.square_feet));
    }

    /// A chain is as strong as its weakest link (statics): a foot screw of 120 lb leaves each of two deck screws 60,
    /// whatever they hold.
    #[test]
    fn no_foot_holds_more_than_its_load_path() {
        let mut kit = (*builtin_kit()).clone();
        let hold = kit.hold_down.as_mut().unwrap();
        hold.pounds = 75.0;
        hold.path = vec![
            OnPath { what: "screw".into(), way: LoadWay::Through, pounds: Some(120.0) },
            OnPath { what: "clip".into(), way: LoadWay::Through, pounds: None },
            OnPath { what: "rail".into(), way: LoadWay::Beside, pounds: Some(10.0) },
        ];
        kit.check().unwrap();
        let fastener = kit.fastener(&Site::default()).unwrap();
        assert_eq!([1.0, 2.0, 3.0].map(|a_foot| fastener.holds(a_foot)), [75.0, 60.0, 40.0]);
        kit.hold_down.as_mut().unwrap().path[2].pounds = Some(0.0);
        assert!(kit.check().unwrap_err().now().starts_with("hold_down"));
    }

    #[test]
    fn a_foot_without_a_fastener_is_refused() {
        let mut kit = (*builtin_kit()).clone();
        let screw = kit.hold_down.as_ref().unwrap().part.clone();
        let part = kit.parts.iter_mut().find(|part| part.number == screw).unwrap();
        part.needs.retain(|term| !matches!(term.of, crate::Measure::Part(_)));
        assert!(kit.check().unwrap_err().now().starts_with("hold_down.part"));
        kit.hold_down = None;
        kit.check().unwrap();
        assert_eq!(kit.fastener(&Site::default()), None);
    }
}
