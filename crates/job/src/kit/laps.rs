//! Which part overlaps which: what overlaps another part is installed after it.

use super::{Kit, Part, Stage};
use chalkcourse_words::{Said, later as words};

impl Part {
    /// The first and the last stage at which some of it is installed.
    pub fn laid(&self) -> (Stage, Stage) {
        let stages = || self.needs.iter().map(|term| self.stage_of(term)).chain([self.stage()]);
        let (first, last) =
            stages().fold((self.stage(), self.stage()), |(a, b), stage| (a.min(stage), b.max(stage)));
        (first, last.max(self.until.unwrap_or(last)))
    }
}

impl Kit {
    /// Whether a part can overlap another: some of it is installed after the first of the other. Parts of the same
    /// stage are installed in the order of the kit. `None` if the kit lacks one of them.
    pub fn laid_after(&self, over: &str, under: &str) -> Option<bool> {
        let place = |number: &str| self.parts.iter().position(|part| part.number == number);
        let (over, under) = (place(over)?, place(under)?);
        Some((self.parts[over].laid().1, over) > (self.parts[under].laid().0, under))
    }

    pub(super) fn check_laps(&self) -> Result<(), Said> {
        for (index, part) in self.parts.iter().enumerate() {
            if part.until.is_some_and(|until| until < part.stage()) {
                return Err(words::kit::parts_until_must_not_come(&index));
            }
            for under in &part.laps {
                match self.laid_after(&part.number, under) {
                    Some(true) => {}
                    Some(false) => {
                        return Err(words::kit::parts_laps_lies_over_but(
                            &index,
                            &part.number,
                            &format_args!("{under:?}"),
                        ));
                    }
                    None => {
                        return Err(words::kit::parts_laps_there_is_no(&index, &format_args!("{under:?}")));
                    }
                }
            }
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use crate::builtin_kit;

    /// Upper over lower, common practice, no source. Drip edge: IRC R905.2.8.5 (2018), underlayment over it at eaves,
    /// under it at rakes.
    #[test]
    fn upper_always_laps_lower() {
        let kit = builtin_kit();
        let over = |upper: &str, lower: &str| {
            let part = kit.part(upper).unwrap();
            assert!(part.laps.iter().any(|under| under == lower), "{upper} is not said to lap {lower}");
            assert_eq!(kit.laid_after(upper, lower), Some(true), "{upper} is laid before {lower}");
            let other = kit.part(lower).unwrap();
            assert!(!other.laps.iter().any(|under| under == upper) || other.until.is_some());
        };
        for (upper, lower) in [
            ("FH-210", "FH-203"), // leak barrier over the drip edge at the eave
            ("FH-217", "FH-210"), // valley metal over the lining of the valley
            ("FH-211", "FH-210"), // underlayment over the leak barrier, which lies lower
            ("FH-204", "FH-211"), // drip edge at the rake over the underlayment
            ("FH-213", "FH-203"), // starter over the drip edge
            ("FH-214", "FH-213"), // shingles over the starter
            ("FH-214", "FH-217"), // and over the metal of a valley
            ("FH-221", "FH-214"), // an apron over the shingles below the wall
            ("FH-222", "FH-214"), // a boot over the shingles below the pipe
            ("FH-230", "FH-121"), // a back pan over the topmost step flashing
            ("FH-231", "FH-221"), // counter flashing over the apron
            ("FH-231", "FH-121"), // and over the step flashing
            ("FH-231", "FH-230"), // and over the back pan
            ("FH-121", "FH-233"), // the lowest step flashing drains into the kick-out
            ("FH-152", "FH-211"), // membrane under the array over the felt beside it
            ("FH-150", "FH-152"), // fire-rated layer over the membrane
            ("FH-110", "FH-214"), // the rail over the course below
            ("FH-101", "FH-110"), // modules over the rail
            ("FH-130", "FH-101"), // head flashing over the top row
            ("FH-122", "FH-121"), // counter flashing over the steps
            ("FH-133", "FH-130"), // corners over head and sides
            ("FH-133", "FH-122"),
            ("FH-134", "FH-130"),
            ("FH-134", "FH-122"),
            ("FH-135", "FH-130"),
            ("FH-153", "FH-133"), // an L-piece over each corner
            ("FH-153", "FH-134"),
            ("FH-155", "FH-153"), // a strip over L-pieces and the flange
            ("FH-155", "FH-130"),
            ("FH-154", "FH-155"), // starter over the strip
            ("FH-214", "FH-154"), // shingles over the starter
            ("FH-228", "FH-214"), // ridge vent over the last course
            ("FH-216", "FH-214"), // caps over all
            ("FH-216", "FH-228"),
        ] {
            over(upper, lower);
        }
    }

    #[test]
    fn overlapping_a_part_installed_later_is_refused() {
        let wrong = |change: &dyn Fn(&mut crate::Part)| {
            let mut kit = (*builtin_kit()).clone();
            change(kit.parts.iter_mut().find(|part| part.number == "FH-210").unwrap());
            kit.check().unwrap_err()
        };
        assert!(wrong(&|part| part.laps = vec!["FH-211".into()]).now().contains("before it"));
        assert!(wrong(&|part| part.laps = vec!["FH-210".into()]).now().contains("before it"));
        assert!(wrong(&|part| part.laps = vec!["FH-999".into()]).now().contains("FH-999"));
        assert!(wrong(&|part| part.until = Some(crate::Stage::TearOff)).now().contains("until"));
    }
}
