//! A second implementation of the limits from the words of book and kit, edge by edge and without keep-outs: it catches a limit
//! that all users get wrong from the same place.

use chalkcourse_geometry::{DVec2, EdgeKind, EdgeSpan, Polygon, Rect, RoofFace, dvec2};
use chalkcourse_job::{BlockId, PenetrationKind, Resolved};
use chalkcourse_layout::{Layout, OnFace, PlacedPenetration};
use chalkcourse_limits::TOLERANCE;

/// One module on a face, in the lowest row of its block.
pub(crate) struct Tried<'a> {
    pub(crate) job: &'a Resolved,
    pub(crate) layout: &'a Layout,
    /// Index of the face.
    pub(crate) index: usize,
    pub(crate) face: &'a RoofFace,
    pub(crate) module: Rect,
    /// Its block.
    pub(crate) own: BlockId,
}

/// The value for an overlap beyond the tolerance, where the depth says little.
const ON_IT: f64 = 1.0;

impl Tried<'_> {
    /// The shortfall against each limit, metres, with the code of its rule; negative is room left.
    pub(crate) fn missing(&self) -> Vec<(&'static str, f64)> {
        let mut all = vec![("off-face", over(&self.module, &self.face.frame))];
        all.extend(self.face.edges.iter().flat_map(|span| self.beside(span)));
        let through = self.layout.penetrations.iter();
        all.extend(through.filter_map(|it| Some(self.around(it, it.on_face(self.index)?))).flatten());
        all.extend(self.other_blocks());
        if self.job.kit.base_rail.is_some() {
            all.push(("base-rail", over(&self.rail(), &self.face.frame)));
        }
        all.retain(|(code, _)| !self.job.rule_book.off.contains(*code));
        all
    }

    fn rail(&self) -> Rect {
        let Rect { min, max } = self.module;
        Rect { min: dvec2(min.x, min.y - self.job.kit.flashing.base.metres()), max: dvec2(max.x, min.y) }
    }

    fn beside(&self, span: &EdgeSpan) -> Vec<(&'static str, f64)> {
        let (book, kit) = (&self.job.rule_book, &self.job.kit);
        let ((a, b), kind) = (span.frame, span.kind);
        let away = self.module.distance_to_segment(a, b);
        let mut all = Vec::new();
        if let Some(limit) = book.setbacks.get(&kind).filter(|limit| limit.value.metres() > 0.0) {
            all.push(("setback", limit.value.metres() - away));
        }
        let roofing = book.roofing.as_ref();
        let line = match kind {
            EdgeKind::Valley => roofing.and_then(|roofing| roofing.valley_clear.as_ref()),
            EdgeKind::Hip => roofing.and_then(|roofing| roofing.hip_clear.as_ref()),
            _ => None,
        };
        if let Some(limit) = line {
            all.push(("valley-hip", limit.value.metres() + kit.flashing.side.metres() - away));
        }
        if let Some(limits) = kit.base_rail.filter(|_| kind == EdgeKind::Eave) {
            let least = limits.least_above_eave.metres();
            all.push(("base-rail", least - self.rail().distance_to_segment(a, b)));
        }
        if kind == EdgeKind::Ridge {
            all.extend(self.courses(span).map(|missing| ("ridge-course", missing)));
        }
        all.extend(self.fire_beside(span));
        all
    }

    /// Straight up the slope from the end of the head flashing to the lowest point of a ridge over the module, with full courses
    /// on the lines between.
    fn courses(&self, span: &EdgeSpan) -> Option<f64> {
        let (a, b) = span.frame;
        let Rect { min, max } = self.module;
        let (from, to) = (a.x.min(b.x).max(min.x), a.x.max(b.x).min(max.x));
        let courses = self.layout.faces[self.index].courses;
        let exposure = courses.exposure;
        if to - from <= TOLERANCE || exposure <= 0.0 {
            return None;
        }
        let at = |u: f64| a.y + (b.y - a.y) * (u - a.x) / (b.x - a.x);
        let (low, high) = (at(from).min(at(to)), at(from).max(at(to)));
        // Lines are a course apart from the first on, downwards too; one within 1/32 in of the ridge counts as on it. The
        // remainder above the last line is not part of a full course.
        let (mut line, ridge) = (courses.first, a.y.min(b.y));
        while line > ridge + 0.000_79 {
            line -= exposure;
        }
        while line + exposure <= ridge + 0.000_79 {
            line += exposure;
        }
        let whole = self.job.rule_book.courses_to_ridge.value;
        let over = if whole > 0 { (ridge - line).max(0.0) } else { 0.0 };
        let asked = over + f64::from(whole) * exposure;
        let room = low - max.y - self.job.kit.flashing.head.metres();
        // Past the ridge there is no deck, and no courses.
        Some((asked - room).min(high - min.y))
    }

    /// The book's fire access, on a face where it applies.
    fn fire(&self) -> Option<&chalkcourse_job::FireAccess> {
        let fire = self.job.rule_book.fire_access.as_ref()?;
        (self.face.plane.pitch.slope() > fire.exempt_to.value.slope() + 2e-5).then_some(fire)
    }

    fn fire_beside(&self, span: &EdgeSpan) -> Option<(&'static str, f64)> {
        let fire = self.fire()?;
        let level = |p: DVec2| dvec2(p.x, p.y / self.face.plane.pitch.slope_factor());
        let module = Rect { min: level(self.module.min), max: level(self.module.max) };
        let away = module.distance_to_segment(level(span.frame.0), level(span.frame.1));
        match span.kind {
            EdgeKind::Ridge => {
                let share = &fire.ridge;
                let sprinklers = self.job.site.building.sprinklers;
                let most = if sprinklers { &share.share_with_sprinklers } else { &share.share };
                let room = if self.share() <= most.value + 1e-9 { &share.up_to_share } else { &share.beyond };
                Some(("fire-ridge", room.value.metres() - away))
            }
            EdgeKind::Hip | EdgeKind::Valley => {
                let limit = fire.hip_or_valley.as_ref()?;
                let beyond = span.neighbour?.face;
                let sound = self.layout.roof.faces[beyond].sound;
                let mut blocks = self.layout.blocks.iter();
                let covered = blocks.any(|block| block.face == beyond && !block.modules.is_empty());
                (sound && covered).then(|| ("fire-hip-valley", limit.value.metres() - away))
            }
            _ => None,
        }
    }

    fn share(&self) -> f64 {
        let faces = &self.layout.roof.faces;
        let in_plan = |block: &chalkcourse_layout::PlacedBlock| {
            let face = faces.get(block.face).filter(|face| face.sound)?;
            Some(block.area_under() / face.plane.pitch.slope_factor())
        };
        self.layout.blocks.iter().filter_map(|block| in_plan(block)).sum::<f64>()
            / self.layout.roof.plan_area()
    }

    fn around(&self, through: &PlacedPenetration, on: &OnFace) -> Vec<(&'static str, f64)> {
        let module = &self.module;
        let mut all = vec![("clearance", through.clearance - to_shape(module, &on.outline))];
        // The depth of an overlap is how much the module can shrink and still overlap.
        let on_it = |smaller: f64| to_shape(&module.grown(-smaller), &on.outline) == 0.0;
        for (smaller, missing) in [(TOLERANCE / 2.0, 2.0 * TOLERANCE), (3.0 * TOLERANCE, ON_IT)] {
            if on_it(smaller) {
                all.push(("clearance", missing));
            }
        }
        let Rect { min, max } = on.bounds;
        let high = |height: f64, from: f64, to: f64| (height > through.clearance).then_some((from, to));
        let strips = [
            high(through.above, max.y, max.y + through.above),
            high(through.below, min.y - through.below, min.y),
        ];
        for (from, to) in strips.into_iter().flatten() {
            let strip = Rect { min: dvec2(min.x, from), max: dvec2(max.x, to) };
            all.push(("clearance", strip.overlap(module).min_element()));
        }
        let below = self.fire().and_then(|fire| fire.below_escape.as_ref());
        if let Some(limit) = below.filter(|_| through.kind == PenetrationKind::EscapeWindow) {
            let half = limit.value.metres().max(max.x - min.x) / 2.0;
            let (middle, low) = ((min.x + max.x) / 2.0, self.face.bounds.min.y.min(min.y));
            let strip = Rect { min: dvec2(middle - half, low), max: dvec2(middle + half, min.y) };
            all.push(("fire-escape", strip.overlap(module).min_element()));
        }
        all
    }

    fn other_blocks(&self) -> Vec<(&'static str, f64)> {
        let apart = self.job.kit.clearances.between_blocks.metres();
        let others = self.layout.blocks.iter();
        let others = others.filter(|block| block.face == self.index && block.id != self.own);
        // Modules of a row are separated by a reveal, narrower than any module.
        let rows = others.flat_map(|block| block.stretches()).map(|(_, row)| row);
        let mut all = Vec::new();
        for row in rows {
            all.push(("overlap", row.overlap(&self.module).min_element()));
            if apart > 0.0 {
                all.push(("between-blocks", apart - row.distance(&self.module)));
            }
        }
        all
    }
}

/// How far a rectangle extends beyond a shape.
fn over(rect: &Rect, shape: &Polygon) -> f64 {
    if rect.overhang(shape, TOLERANCE) > TOLERANCE { ON_IT } else { -ON_IT }
}

/// Distance to a shape; 0 if they overlap.
fn to_shape(rect: &Rect, shape: &Polygon) -> f64 {
    if shape.contains(rect.centre()) {
        return 0.0;
    }
    shape.sides().map(|(_, _, a, b)| rect.distance_to_segment(a, b)).fold(f64::INFINITY, f64::min)
}
