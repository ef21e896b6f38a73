use chalkcourse_geometry::RoofFace;
use chalkcourse_geometry::coursing::READ;
use chalkcourse_job::Courses;

/// The course lines of a face, as heights `v` in its frame, metres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CourseLines {
    /// The lowest point of the face: the eave.
    pub eave: f64,
    /// The highest point of the face.
    pub top: f64,
    /// The first course line: the butts of the second course.
    pub first: f64,
    /// Distance between course lines.
    pub exposure: f64,
}

/// The course lines of a face.
pub fn courses_of(courses: Courses, face: &RoofFace) -> CourseLines {
    CourseLines {
        eave: face.bounds.min.y,
        top: face.bounds.max.y,
        first: face.bounds.min.y + courses.first.metres(),
        exposure: courses.exposure.metres(),
    }
}

impl CourseLines {
    /// Maximum lines to list; a tiny exposure must not exhaust memory.
    const MOST: f64 = 2_000.0;

    /// Number of lines, including the first.
    pub fn count(&self) -> usize {
        if self.exposure.is_nan() || self.exposure <= 0.0 || self.top <= self.first {
            return 0;
        }
        (((self.top - self.first) / self.exposure).floor() + 1.0).min(Self::MOST) as usize
    }

    /// All lines from the eave up, as heights in the frame.
    pub fn lines(&self) -> impl Iterator<Item = f64> + use<> {
        let Self { first, exposure, .. } = *self;
        (0..self.count()).map(move |line| first + exposure * line as f64)
    }

    /// The line nearest to a height.
    pub fn nearest(&self, v: f64) -> Option<f64> {
        let last = self.count().checked_sub(1)?;
        let line = ((v - self.first) / self.exposure).round().clamp(0.0, last as f64);
        Some(self.first + self.exposure * line)
    }

    /// How far below a height, such as the ridge, shingles must start so that `whole` full courses fit on the lines between,
    /// metres. Includes the remainder above the last line; 0 for no courses, or without lines.
    pub fn room_for(&self, whole: u32, below: f64) -> f64 {
        if whole == 0 || self.exposure.is_nan() || self.exposure <= 0.0 {
            return 0.0;
        }
        let turns = ((below - self.first + READ) / self.exposure).floor();
        let over = (below - self.first - turns * self.exposure).max(0.0);
        over + f64::from(whole) * self.exposure
    }

    /// How many courses lie wholly or partly between two heights.
    pub fn crossed(&self, from: f64, to: f64) -> usize {
        if self.exposure.is_nan() || self.exposure <= 0.0 || to <= from {
            return 0;
        }
        // A tenth of a millimetre past a line is not another course.
        let slack = 1e-4;
        let below = |v: f64| (v - self.first) / self.exposure;
        let first = (below(from + slack)).floor();
        let last = (below(to - slack)).floor();
        (last - first + 1.0).clamp(0.0, Self::MOST) as usize
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn lines() -> CourseLines {
        CourseLines { eave: 0.0, top: 2.0, first: 0.3, exposure: 0.5 }
    }

    #[test]
    fn lines_run_from_the_first_to_the_top() {
        assert_eq!(lines().lines().collect::<Vec<_>>(), vec![0.3, 0.8, 1.3, 1.8]);
        assert_eq!(lines().nearest(1.0), Some(0.8));
        assert_eq!(lines().nearest(99.0), Some(1.8));
    }

    #[test]
    fn room_for_whole_courses_begins_at_the_last_line() {
        // By hand: lines at 0.3, 0.8, 1.3, 1.8; below 2.0 the last is 1.8. One course: from 1.3, 0.7 below; two: 1.2.
        let near = |room: f64, by_hand: f64| assert!((room - by_hand).abs() < 1e-12, "{room}");
        near(lines().room_for(1, 2.0), 0.7);
        near(lines().room_for(2, 2.0), 1.2);
        near(lines().room_for(0, 2.0), 0.0);
        // On a line there is no remainder; and a line that a tape can't tell from the ridge is the ridge.
        near(lines().room_for(1, 1.8), 0.5);
        near(lines().room_for(1, 1.7999), 0.5);
        near(CourseLines { exposure: 0.0, ..lines() }.room_for(1, 2.0), 0.0);
    }

    #[test]
    fn courses_that_a_side_crosses() {
        assert_eq!(lines().crossed(0.3, 1.3), 2);
        assert_eq!(lines().crossed(0.4, 1.3), 2);
        assert_eq!(lines().crossed(0.4, 1.31), 3);
        assert_eq!(lines().crossed(0.0, 0.3), 1);
        assert_eq!(lines().crossed(1.0, 1.0), 0);
    }

    #[test]
    fn a_tiny_exposure_is_bounded() {
        let hair = CourseLines { exposure: 1e-9, ..lines() };
        assert_eq!(hair.count(), 2_000);
        assert_eq!(CourseLines { exposure: 0.0, ..lines() }.count(), 0);
    }
}
