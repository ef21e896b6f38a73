//! The form for entering a face by measurements: what was typed so far, and the resulting face.

use crate::text;
use chalkcourse_geometry::taped::{Form, MOST_CORNERS, Reading, Taped, TapedLine, lay_out};
use chalkcourse_geometry::{Azimuth, DVec2, Length, Pitch, Polygon, Units, dvec2, signed_area};
use chalkcourse_job::{Face, FaceId, Resolved};
use chalkcourse_layout::Layout;

/// A line of the form: the measured quantity, and what was typed.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Line {
    pub(crate) of: TapedLine,
    pub(crate) typed: String,
    /// Whether it is required.
    pub(crate) needed: bool,
}

/// How the pitch was measured.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum PitchBy {
    /// Typed as a pitch, an angle or a slope.
    #[default]
    Typed,
    /// With a level and a rule.
    Level,
}

/// The form as typed.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Taping {
    pub(crate) form: Form,
    pub(crate) lines: Vec<Line>,
    pub(crate) pitch_by: PitchBy,
    pub(crate) pitch: String,
    pub(crate) rise: String,
    pub(crate) level: String,
    pub(crate) downslope: Azimuth,
    pub(crate) limit: Length,
    /// The side to be put against the side selected on the drawing; `None` puts the face beside the roof.
    pub(crate) against: Option<usize>,
}

impl Default for Taping {
    fn default() -> Self {
        let mut taping = Self {
            form: Form::Rectangle,
            lines: Vec::new(),
            pitch_by: PitchBy::Typed,
            pitch: "6:12".to_owned(),
            rise: String::new(),
            level: "24\"".to_owned(),
            downslope: Azimuth::SOUTH,
            limit: Length::from_inches(1.0),
            against: None,
        };
        taping.take(Form::Rectangle);
        taping
    }
}

/// The result of the form.
pub(crate) struct TapingResult {
    pub(crate) taped: Taped,
    pub(crate) pitch: Pitch,
    /// The line that each reading came from.
    pub(crate) lines: Vec<usize>,
}

impl Taping {
    /// Switches the form; what was typed for the same quantities is kept.
    pub(crate) fn take(&mut self, form: Form) {
        let before = std::mem::take(&mut self.lines);
        let wanted: Vec<(TapedLine, bool)> = match form {
            Form::Triangle => vec![
                (TapedLine::Between(0, 1), true),
                (TapedLine::Between(1, 2), true),
                (TapedLine::Between(2, 0), true),
                (TapedLine::Up(2), false),
            ],
            Form::Rectangle => {
                [(0, 1, true), (1, 2, true), (2, 3, false), (3, 0, false), (0, 2, false), (1, 3, false)]
                    .map(|(a, b, needed)| (TapedLine::Between(a, b), needed))
                    .to_vec()
            }
            Form::Parallelogram => {
                [(0, 1, true), (1, 2, true), (2, 3, false), (3, 0, false), (0, 2, true), (1, 3, false)]
                    .map(|(a, b, needed)| (TapedLine::Between(a, b), needed))
                    .to_vec()
            }
            Form::Trapezoid => {
                [(0, 1, true), (1, 2, true), (2, 3, true), (3, 0, true), (0, 2, false), (1, 3, false)]
                    .map(|(a, b, needed)| (TapedLine::Between(a, b), needed))
                    .into_iter()
                    .chain([(TapedLine::Up(3), false)])
                    .collect()
            }
            Form::Polygon(corners) => {
                let sides = (0..corners).map(|at| (TapedLine::Between(at, (at + 1) % corners), true));
                let fan = (2..corners.saturating_sub(1)).map(|to| (TapedLine::Between(0, to), true));
                sides.chain(fan).collect()
            }
        };
        self.form = form;
        self.lines = wanted
            .into_iter()
            .map(|(of, needed)| {
                let typed =
                    before.iter().find(|line| line.of == of).map_or_else(String::new, |l| l.typed.clone());
                Line { of, typed, needed }
            })
            .collect();
        self.against = self.against.filter(|side| *side < form.corners());
    }

    /// A polygon with this many corners; what was typed for sides that still exist is kept.
    pub(crate) fn with_corners(&mut self, corners: usize) {
        self.take(Form::Polygon(corners.clamp(3, MOST_CORNERS)));
    }

    /// Adds a diagonal between two corners that are not yet connected.
    pub(crate) fn add_diagonal(&mut self) {
        let corners = self.form.corners();
        let taken = |a: usize, b: usize| {
            self.lines
                .iter()
                .any(|line| line.of == TapedLine::Between(a, b) || line.of == TapedLine::Between(b, a))
        };
        let free =
            (0..corners).flat_map(|a| (a + 2..corners).map(move |b| (a, b))).find(|&(a, b)| !taken(a, b));
        if let Some((a, b)) = free {
            self.lines.push(Line { of: TapedLine::Between(a, b), typed: String::new(), needed: false });
        }
    }

    /// The label of a line.
    pub(crate) fn name(&self, of: TapedLine) -> String {
        let corners = self.form.corners();
        let named = match (self.form, of) {
            (_, TapedLine::Up(_)) => Some(text::TAPED_HEIGHT.now()),
            (_, TapedLine::Between(0, 1)) => Some(text::TAPED_EAVE.now()),
            (Form::Polygon(_), _) => None,
            (_, TapedLine::Between(1, 2)) => Some(text::TAPED_RIGHT.now()),
            (_, TapedLine::Between(2, 3)) => Some(text::TAPED_TOP.now()),
            (_, TapedLine::Between(2 | 3, 0)) => Some(text::TAPED_LEFT.now()),
            _ => None,
        };
        match (named, of) {
            (Some(name), _) => name.to_owned(),
            (None, TapedLine::Between(a, b)) if (a + 1) % corners == b => text::side_between(a, b),
            (None, TapedLine::Between(a, b)) => text::diagonal_between(a, b),
            (None, TapedLine::Up(_)) => text::TAPED_HEIGHT.now().to_owned(),
        }
    }

    /// The pitch as typed.
    ///
    /// # Errors
    /// A message for the user.
    pub(crate) fn pitch(&self, units: Units) -> Result<Pitch, String> {
        let length = |name: &str, typed: &str| {
            Length::parse(typed, units).map_err(|error| text::wrong_in(name, &error))
        };
        match self.pitch_by {
            PitchBy::Typed => {
                Pitch::parse(&self.pitch).map_err(|error| text::wrong_in(text::TAPED_PITCH.now(), &error))
            }
            PitchBy::Level => {
                let rise = length(text::LEVEL_RISE.now(), &self.rise)?;
                let level = length(text::LEVEL_LONG.now(), &self.level)?;
                Pitch::from_level(rise, level).map_err(|error| text::wrong_in(text::LEVEL_RISE.now(), &error))
            }
        }
    }

    /// The result of what was typed.
    ///
    /// # Errors
    /// A message for the user: what is missing, can't be read, or does not fit.
    pub(crate) fn worked(&self, units: Units) -> Result<TapingResult, String> {
        let mut readings = Vec::new();
        let mut lines = Vec::new();
        for (index, line) in self.lines.iter().enumerate() {
            let name = self.name(line.of);
            if line.typed.trim().is_empty() {
                if line.needed {
                    return Err(text::still_needed(&name));
                }
                continue;
            }
            let length = Length::parse(&line.typed, units).map_err(|error| text::wrong_in(&name, &error))?;
            readings.push(Reading { of: line.of, length });
            lines.push(index);
        }
        let taped =
            lay_out(self.form, &readings, self.limit).map_err(|error| text::sentence(&error.to_string()))?;
        Ok(TapingResult { taped, pitch: self.pitch(units)?, lines })
    }
}

/// A side of an existing face that the new face may be put against.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Ground {
    pub(crate) face: String,
    pub(crate) side: usize,
    /// In the direction with the face on its left.
    line: (DVec2, DVec2),
    /// Its height.
    height: f64,
}

impl Ground {
    /// The selected side, if it is one of a sound face's outline.
    pub(crate) fn of(layout: &Layout, job: &Resolved, selection: crate::Selection) -> Option<Self> {
        let crate::Selection::Side { face: id, ring: 0, side } = selection else { return None };
        let face = job.face(id)?;
        let (index, _) = layout.face(id)?;
        let on_roof = layout.roof.faces.get(index).filter(|face| face.sound)?;
        let (_, _, a, b) = face.outline.sides().find(|&(ring, at, _, _)| (ring, at) == (0, side))?;
        let line = if signed_area(&face.outline.outer) > 0.0 { (a, b) } else { (b, a) };
        let height = on_roof.plane.height_at((a + b) / 2.0);
        Some(Self { face: face.name.clone(), side, line, height })
    }
}

/// The face from measurements: beside the roof, or with a side against a side of the roof at the same height.
pub(crate) fn face_of(
    taping: &Taping,
    worked: &TapingResult,
    ground: Option<&Ground>,
    job: &Resolved,
    layout: &Layout,
) -> Face {
    let id = FaceId(job.next_id);
    let name = text::new_face_name(job);
    let eave = job.faces.first().map_or(Length::from_feet(9.0), |face| face.height);
    let plan = |downslope: Azimuth| {
        let plane =
            chalkcourse_geometry::Plane { datum: DVec2::ZERO.extend(0.0), pitch: worked.pitch, downslope };
        worked.taped.plan(&plane)
    };
    let joined = taping.against.zip(ground).and_then(|(own, ground)| {
        let here = plan(Azimuth::SOUTH);
        let (_, _, a, b) = here.sides().nth(own)?;
        let (from, to) = ground.line;
        // The new face is on the other side of the line, so its own side runs in the opposite direction.
        let turn = (b - a).angle_to(from - to);
        let downslope = clean(Azimuth::of(DVec2::from_angle(turn).rotate(DVec2::NEG_Y)));
        let turned = plan(downslope);
        let (_, _, start, _) = turned.sides().nth(own)?;
        let outline = turned.map(|p| p - start + to);
        let mut face = Face::new(id, name.clone(), outline, worked.pitch, downslope, eave);
        let gap = ground.height - face.plane().height_at((from + to) / 2.0);
        face.height = Length::from_metres(face.height.metres() + gap);
        Some(face)
    });
    joined.unwrap_or_else(|| {
        let outline = plan(taping.downslope);
        let free = free_place(layout, &outline);
        Face::new(id, name, outline.map(|p| p + free), worked.pitch, taping.downslope, eave)
    })
}

/// A direction without rounding errors.
fn clean(azimuth: Azimuth) -> Azimuth {
    let whole = (azimuth.degrees() * 1e9).round() / 1e9;
    Azimuth::from_degrees(whole)
}

/// The displacement of an outline that puts it beside everything there is.
fn free_place(layout: &Layout, outline: &Polygon) -> DVec2 {
    let Some(own) = outline.bounds() else { return DVec2::ZERO };
    let roof = layout.roof.faces.iter().filter_map(|face| face.plan.bounds()).reduce(|a, b| a.union(&b));
    match roof {
        Some(roof) => dvec2(roof.max.x + 1.0, roof.min.y) - own.min,
        None => -own.min,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Selection, sample};
    use chalkcourse_geometry::EdgeKind;

    fn typed(taping: &mut Taping, lengths: &[&str]) {
        for (line, typed) in taping.lines.iter_mut().zip(lengths) {
            line.typed = (*typed).to_owned();
        }
    }

    #[test]
    fn a_gable_from_two_taped_rectangles_meets_at_its_ridge() {
        let mut job = sample::empty();
        let mut taping = Taping::default();
        typed(&mut taping, &["60'", "16' 9 1/4\""]);
        let layout = Layout::of(&job);
        let south = face_of(&taping, &taping.worked(Units::FeetInches).unwrap(), None, &job, &layout);
        assert_eq!(south.downslope, Azimuth::SOUTH);
        job.faces.push(south);
        job.next_id = 2;
        let layout = Layout::of(&job);
        let top = Selection::Side { face: FaceId(1), ring: 0, side: 2 };
        let ground = Ground::of(&layout, &job, top).unwrap();
        taping.against = Some(2);
        let worked = taping.worked(Units::FeetInches).unwrap();
        let face = face_of(&taping, &worked, Some(&ground), &job, &layout);
        job.faces.push(face);
        assert_eq!(job.faces[1].downslope, Azimuth::NORTH);
        let layout = Layout::of(&job);
        assert!(layout.roof.problems.is_empty(), "{:?}", layout.roof.problems);
        let ridge: f64 =
            layout.roof.lines().iter().filter(|l| l.kind == EdgeKind::Ridge).map(|l| l.length).sum();
        assert!((Length::from_metres(ridge).feet() - 60.0).abs() < 1e-6);
    }

    #[test]
    fn missing_and_wrong_measurements_are_reported() {
        let told = |taping: &Taping| taping.worked(Units::FeetInches).err().unwrap_or_default();
        let mut taping = Taping::default();
        assert!(told(&taping).contains("Still needed: Eave"));
        typed(&mut taping, &["sixty", "16'"]);
        assert!(told(&taping).contains("Eave: can't read \"sixty\""));
        typed(&mut taping, &["60'", "16'"]);
        taping.pitch = "steep".to_owned();
        assert!(told(&taping).contains("can't read \"steep\" as a pitch"));
        taping.pitch_by = PitchBy::Level;
        assert!(told(&taping).contains("Rise: no length"));
        taping.rise = "12\"".to_owned();
        let worked = taping.worked(Units::FeetInches).unwrap();
        assert_eq!(worked.pitch.rise_in_12(), 6.0);
        typed(&mut taping, &["60'", "16'", "61'"]);
        assert!(told(&taping).contains("miss by 6\""), "{}", told(&taping));
    }

    #[test]
    fn switching_the_form_keeps_typed_values() {
        let mut taping = Taping::default();
        typed(&mut taping, &["60'", "16'"]);
        taping.take(Form::Trapezoid);
        assert_eq!(taping.lines[0].typed, "60'");
        taping.with_corners(6);
        assert_eq!((taping.lines.len(), taping.lines[1].typed.as_str()), (9, "16'"));
        taping.add_diagonal();
        assert_eq!(taping.lines.len(), 10);
        taping.with_corners(1000);
        assert_eq!(taping.form, Form::Polygon(MOST_CORNERS));
    }
}
