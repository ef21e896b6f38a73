use super::{Amount, Kit, Measure, Term};
use crate::Unit;
use chalkcourse_geometry::Length;
use chalkcourse_words::{Said, later as words};

impl Kit {
    /// Checks the limits of rail, deck and fire listing.
    fn check_limits(&self) -> Result<(), Said> {
        let lengths = [
            ("base_rail.least_above_eave", self.base_rail.map(|rail| rail.least_above_eave)),
            ("base_rail.longest", self.base_rail.map(|rail| rail.longest)),
            ("deck.least_thickness", self.deck.as_ref().map(|deck| deck.least_thickness)),
            ("deck.most_span", self.deck.as_ref().map(|deck| deck.most_span)),
        ];
        let wrong = |length: &Option<Length>| length.is_some_and(|l| !(0.0..1000.0).contains(&l.metres()));
        if let Some((field, _)) = lengths.iter().find(|(_, length)| wrong(length)) {
            return Err(words::kit::must_be_0_or_more(&field));
        }
        if self.deck.as_ref().is_some_and(|deck| deck.kinds.is_empty()) {
            return Err(words::kit::DECK_KINDS_MUST_NAME_AT.into());
        }
        match &self.fire {
            Some(fire) if self.part(&fire.underlayment).is_none() => {
                Err(words::kit::fire_underlayment_there_is_no(&format_args!("{:?}", fire.underlayment)))
            }
            _ => Ok(()),
        }
    }

    /// Checks a kit beyond the shape of its file: messages name the field.
    ///
    /// # Errors
    /// What is wrong and what was expected.
    pub fn check(&self) -> Result<(), Said> {
        let positive = |field: &str, value: f64| {
            if value > 0.0 && value.is_finite() && value < 1e6 {
                Ok(())
            } else {
                Err(words::kit::must_be_more_than_0(&field, &value))
            }
        };
        positive("module.length", self.module.length.metres())?;
        positive("module.width", self.module.width.metres())?;
        positive("module.watts", self.module.watts)?;
        positive("module.mass_kg", self.module.mass_kg)?;
        if self.module.width > self.module.length {
            return Err(words::kit::MODULE_LENGTH_IS_THE_LONG.into());
        }
        if self.orientations.is_empty() {
            return Err(words::kit::ORIENTATIONS_MUST_NAME_AT_LEAST.into());
        }
        let reveal = self.reveal;
        if !(Length::ZERO <= reveal.least && reveal.least <= reveal.usual && reveal.usual <= reveal.most) {
            return Err(words::kit::REVEAL_LEAST_USUAL_AND_MOST.into());
        }
        let flashing = self.flashing;
        for (field, length) in [
            ("flashing.head", flashing.head),
            ("flashing.head_lap", flashing.head_lap),
            ("flashing.side", flashing.side),
            ("flashing.base", flashing.base),
            ("flashing.membrane", flashing.membrane),
            ("flashing.through", flashing.through),
            ("clearances.between_blocks", self.clearances.between_blocks),
        ] {
            if !(0.0..100.0).contains(&length.metres()) {
                return Err(words::kit::must_be_0_or_more_2(&field));
            }
        }
        for (field, length) in [
            ("flashing.underlayment_lap", flashing.underlayment_lap),
            ("flashing.chimney_return", flashing.chimney_return),
        ] {
            if !(0.0..1.0).contains(&length.metres()) {
                return Err(words::kit::must_be_0_or_more_and(&field));
            }
        }
        self.laying.check()?;
        self.check_limits()?;
        self.check_choices()?;
        self.check_wiring()?;
        if self.part(&self.module.part).is_none() {
            return Err(words::kit::module_part_there_is_no(&format_args!("{:?}", self.module.part)));
        }
        for (index, part) in self.parts.iter().enumerate() {
            if self.parts[..index].iter().any(|other| other.number == part.number) {
                return Err(words::kit::parts_number_is_taken_twice(
                    &index,
                    &format_args!("{:?}", part.number),
                ));
            }
            if part.number.trim().is_empty() {
                return Err(words::kit::parts_number_a_part_needs(&index));
            }
            let holds = part.package.holds;
            if holds.unit() != part.unit {
                return Err(words::kit::parts_package_holds_must_be(&index));
            }
            if let Some(crew) = &part.crew
                && !self.crews.iter().any(|known| known.name == *crew)
            {
                return Err(words::kit::parts_crew_there_is_no(&index, &format_args!("{crew:?}")));
            }
            if !(1e-3..1e6).contains(&holds.amount())
                || part.unit == Unit::Each && holds.amount().fract() != 0.0
            {
                return Err(words::kit::parts_package_holds_must_be_more(&index, &holds.amount()));
            }
            part.waste.check().map_err(|wrong| wrong.after(format!("parts[{index}].")))?;
            for (term_index, term) in part.needs.iter().enumerate() {
                term.check(self, index)
                    .map_err(|wrong| wrong.after(format!("parts[{index}].needs[{term_index}]: ")))?;
            }
        }
        self.check_hold_down()?;
        self.check_laps()
    }

    fn check_choices(&self) -> Result<(), Said> {
        for (index, choice) in self.choices.iter().enumerate() {
            if choice.code.trim().is_empty() || self.choices[..index].iter().any(|c| c.code == choice.code) {
                return Err(words::kit::choices_code_each_choice_needs(
                    &index,
                    &format_args!("{:?}", choice.code),
                ));
            }
        }
        Ok(())
    }
}

impl Term {
    fn check(&self, kit: &Kit, index: usize) -> Result<(), Said> {
        if let Measure::Part(number) | Measure::Sticks(number) | Measure::Joints(number) = &self.of {
            // Parts may only count parts above them, so that there are no cycles.
            if !kit.parts[..index].iter().any(|part| part.number == *number) {
                return Err(words::kit::of_the_part_must_stand(&format_args!("{number:?}")));
            }
        }
        if let Some(when) = &self.when
            && !kit.choices.iter().any(|choice| choice.code == *when)
        {
            return Err(words::kit::when_there_is_no_choice(&format_args!("{when:?}")));
        }
        let sound = match self.each {
            Amount::Count(count) => (0.0..1e6).contains(&count),
            Amount::Length(length) => (0.0..1e3).contains(&length.metres()),
            Amount::Pieces { length, lap } => {
                lap >= Length::ZERO && lap < length && (1e-3..1e3).contains(&(length - lap).metres())
            }
            Amount::Spaced(length) => (1e-3..1e3).contains(&length.metres()),
            Amount::Rate { take, of } => {
                (0.0..1e6).contains(&take.amount()) && (1e-6..1e6).contains(&of.amount())
            }
            Amount::Width(width) => (0.0..1e3).contains(&width.metres()),
            Amount::Cut(ref sticks) => sticks.makes_sense(),
            Amount::Laid(ref roll) => roll.makes_sense(),
        };
        if !sound {
            return Err(words::kit::EACH_THE_AMOUNT_MUST_BE.into());
        }
        let of = self.of.unit(kit);
        let unit = kit.parts.get(index).map_or(Unit::Each, |part| part.unit);
        let fits = match self.each {
            Amount::Count(_) => unit == Unit::Each || unit == of,
            Amount::Length(_) => unit == Unit::Length && of != Unit::Area,
            Amount::Pieces { .. } => unit == Unit::Each && of == Unit::Length,
            Amount::Spaced(_) => unit == Unit::Each && matches!(of, Unit::Length | Unit::Area),
            Amount::Rate { take, of: per } => unit == take.unit() && of == per.unit(),
            Amount::Width(_) => unit == Unit::Area && of == Unit::Length,
            Amount::Cut(_) => unit == Unit::Each && of == Unit::Length,
            Amount::Laid(_) => unit == Unit::Area && of == Unit::Area,
        };
        if fits { Ok(()) } else { Err(words::kit::EACH_COUNT_GIVES_PIECES_OR.into()) }
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Part, Waste};
    use super::*;
    use crate::Holds;
    use crate::{builtin_kit, builtin_prices};

    fn refused(change: impl Fn(&mut Part), words: &str) {
        let mut kit = (*builtin_kit()).clone();
        change(&mut kit.parts[1]);
        let error = kit.check().unwrap_err();
        assert!(error.now().contains(words), "{error:?} does not say {words:?}");
    }

    #[test]
    fn the_built_in_kit_is_valid_and_every_part_has_a_price() {
        let (kit, prices) = (builtin_kit(), builtin_prices());
        kit.check().unwrap();
        prices.check().unwrap();
        for part in &kit.parts {
            assert!(prices.prices.contains_key(&part.number), "{} has no price", part.number);
            assert!(!part.source.text.is_empty(), "{} names no source", part.number);
        }
        assert!(prices.prices.keys().all(|number| kit.part(number).is_some()));
    }

    #[test]
    fn a_term_must_have_the_unit_of_its_part() {
        refused(
            |part| part.needs[0].each = Amount::Length(Length::from_feet(1.0)),
            "parts[1].needs[0]: each:",
        );
        refused(
            |part| part.needs[0].each = Amount::Spaced(Length::from_feet(1.0)),
            "parts[1].needs[0]: each:",
        );
        refused(|part| part.unit = Unit::Area, "parts[1].package.holds");
        refused(|part| part.package.holds = Holds::Pieces(2.5), "parts[1].package.holds");
        refused(|part| part.package.holds = Holds::Pieces(0.0), "parts[1].package.holds");
        refused(|part| part.number = " ".into(), "parts[1].number");
        refused(|part| part.waste = Waste::Share(1.5), "parts[1].waste");
        refused(|part| part.needs[0].when = Some("sunday".into()), "sunday");
        refused(|part| part.needs[0].of = Measure::Part("FH-999".into()), "FH-999");
        let laps = Amount::Pieces { length: Length::from_feet(1.0), lap: Length::from_feet(1.0) };
        refused(|part| part.needs[0].each = laps.clone(), "lap");
    }
}
