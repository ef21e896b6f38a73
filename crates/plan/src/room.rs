//! Where modules of a face may stand under the job's limits, for the fitting, and words for what stands in the way.

use chalkcourse_geometry::fit::{Allowed, Barrier};
use chalkcourse_geometry::{EdgeKind, Rect, RoofFace, distance_to_segment, dvec2};
use chalkcourse_job::{BlockId, PenetrationId, Resolved};
use chalkcourse_layout::Layout;
use chalkcourse_limits::{Against, Given, KeepOut, Share, keep_outs};
use chalkcourse_words::{pick, tell};
use serde::Serialize;

/// Room that the fire service keeps on a face.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Fire {
    /// How much of the roof is covered in the end.
    pub(crate) share: Share,
    /// Where the pathway runs, if one is kept.
    pub(crate) path: Option<Strip>,
    /// Whether modules are to come on the faces beyond hips and valleys too.
    pub(crate) beyond: bool,
}

/// A strip up the slope that is kept as a pathway: where it begins along the eave and how wide it is, in the face's frame.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Strip {
    pub(crate) from: f64,
    pub(crate) wide: f64,
}

/// Strips of `wide` metres that a pathway may keep to: at both ends of the ridge, and beside what a person can't walk
/// over. None on a face without a ridge, where a pathway runs on the plane beside it.
fn strips(layout: &Layout, face: usize, wide: f64) -> Vec<Strip> {
    let Some((left, right)) = layout.roof.faces.get(face).and_then(ridge_span) else { return Vec::new() };
    let in_the_way = layout
        .penetrations
        .iter()
        .filter(|p| chalkcourse_rules::blocks_a_path(p.kind))
        .filter_map(|p| p.on_face(face))
        .map(|on| (on.bounds.min.x, on.bounds.max.x));
    let beside = in_the_way.flat_map(|(from, to)| [from - wide, to]);
    [left, right - wide]
        .into_iter()
        .chain(beside)
        .filter(|from| *from >= left - 1e-9 && from + wide <= right + 1e-9)
        .map(|from| Strip { from, wide })
        .collect()
}

/// Strips that a pathway may keep to, where the job's rules ask for one.
pub(crate) fn path_strips(
    job: &Resolved,
    layout: &Layout,
    face: usize,
) -> impl Iterator<Item = Strip> + use<> {
    let wide = job.rule_book.fire_access.as_ref().map_or(0.0, |book| book.path_width.value.metres());
    let asked = is_checked(job, "fire-paths");
    if asked { strips(layout, face, wide) } else { Vec::new() }.into_iter()
}

/// Where the ridges of a face begin and end along the eave.
fn ridge_span(face: &RoofFace) -> Option<(f64, f64)> {
    let ends = face
        .edges
        .iter()
        .filter(|edge| edge.kind == EdgeKind::Ridge)
        .flat_map(|edge| [edge.frame.0.x, edge.frame.1.x]);
    ends.fold(None, |span: Option<(f64, f64)>, u| Some(span.map_or((u, u), |(a, b)| (a.min(u), b.max(u)))))
}

/// Whether a rule is on in the job's book and applies to the job.
pub(crate) fn is_checked(job: &Resolved, code: &str) -> bool {
    chalkcourse_rules::RULES.iter().any(|rule| rule.code == code && rule.why_not(job).is_none())
}

/// Where modules of a face may stand, with the things in the way that the numbers of its shapes stand for.
#[derive(Clone, Debug)]
pub(crate) struct Room {
    pub(crate) allowed: Allowed,
    pub(crate) things: Vec<What>,
}

/// The room that the limits leave on a face, beside the blocks that stay.
pub(crate) fn room(
    job: &Resolved,
    layout: &Layout,
    face: usize,
    stays: &dyn Fn(BlockId) -> bool,
    fire: Fire,
) -> Room {
    let Some(on) = layout.roof.faces.get(face) else {
        return Room { allowed: Allowed::default(), things: Vec::new() };
    };
    let laid = Given::as_laid(job, layout);
    let (low, high) = (on.bounds.min.y - 1.0, on.bounds.max.y + 1.0);
    let kept = |strip: Strip| Rect { min: dvec2(strip.from, low), max: dvec2(strip.from + strip.wide, high) };
    let given = Given {
        share: fire.share,
        covered: if fire.beyond { vec![true; laid.covered.len()] } else { laid.covered },
        standing: laid.standing.into_iter().filter(|id| stays(*id)).collect(),
        kept: fire.path.map(kept).into_iter().collect(),
    };
    let mut things: Vec<What> = Vec::new();
    let mut number = |keep_out: &KeepOut| {
        let what = What::of(keep_out);
        things.iter().position(|thing| *thing == what).unwrap_or_else(|| {
            things.push(what);
            things.len() - 1
        })
    };
    let allowed = chalkcourse_limits::room(on, &keep_outs(job, layout, face, &given), &mut number);
    Room { allowed, things }
}

/// What stands in the way of modules on a face: a limit against something there.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct What {
    /// The code of the limit and its rule.
    pub rule: &'static str,
    /// What it keeps modules off.
    pub against: Against,
}

impl What {
    /// All that is kept free around one thing that comes through the roof goes with it, and so does a block with its room.
    fn of(keep_out: &KeepOut) -> Self {
        let rule = match keep_out.against {
            Against::Penetration(_) => "clearance",
            Against::Block(_) => "between-blocks",
            _ => keep_out.rule,
        };
        Self { rule, against: keep_out.against }
    }

    /// The penetration, if it is one.
    pub(crate) fn penetration(&self) -> Option<PenetrationId> {
        match self.against {
            Against::Penetration(id) => Some(id),
            _ => None,
        }
    }

    /// What a barrier of the fitting on a face stands for.
    pub(crate) fn of_barrier(barrier: &Barrier, things: &[Self], allowed: &Allowed, face: &RoofFace) -> Self {
        let border = Self { rule: "off-face", against: Against::Border };
        match *barrier {
            Barrier::Constraint(number) => things.get(number).copied().unwrap_or(border),
            Barrier::Side { shape, ring, side } => {
                let sides = allowed.region.get(shape).into_iter().flat_map(|shape| shape.sides());
                let drawn = sides.filter(|s| (s.0, s.1) == (ring, side)).map(|(_, _, a, b)| (a + b) / 2.0);
                let nearest = drawn.last().and_then(|middle| {
                    let away = |span: &chalkcourse_geometry::EdgeSpan| {
                        distance_to_segment(middle, span.frame.0, span.frame.1)
                    };
                    face.edges.iter().min_by(|a, b| away(a).total_cmp(&away(b)))
                });
                nearest.map_or(border, |span| Self {
                    against: Against::Side { side: span.id, kind: span.kind },
                    ..border
                })
            }
        }
    }

    /// What it says to a person.
    pub(crate) fn words(&self, layout: &Layout) -> String {
        let kind = match self.against {
            Against::Side { kind, .. } | Against::Hole { kind, .. } => kind.name(),
            Against::Border => pick("border", "contorno"),
            Against::Pathway => {
                return pick("the pathway for the fire service", "el paso para los bomberos").to_owned();
            }
            Against::Penetration(id) => {
                return layout.penetration(id).map_or_else(
                    || pick("a penetration", "una penetración").to_owned(),
                    |p| format!("{} ({})", p.name, p.kind.name()),
                );
            }
            Against::Block(id) => {
                return layout.block(id).map_or_else(
                    || pick("another block", "otro bloque").to_owned(),
                    |b| tell!("block {}", "el bloque {}", b.name),
                );
            }
        };
        match self.rule {
            "setback" => tell!("the setback from the {kind}", "el retiro de {kind}"),
            "valley-hip" => {
                tell!("the room for flashing beside the {kind}", "el espacio del tapajuntas junto a {kind}")
            }
            "ridge-course" => pick("the courses below the ridge", "las hiladas bajo la cumbrera").to_owned(),
            "base-rail" if self.against == Against::Border => {
                pick("the deck that the base rail needs", "el entablado que necesita el riel base").to_owned()
            }
            "base-rail" => tell!(
                "the room below the base rail at the {kind}",
                "el espacio debajo del riel base en {kind}"
            ),
            "fire-ridge" | "fire-hip-valley" => tell!(
                "the fire service's room beside the {kind}",
                "el espacio de los bomberos junto a {kind}"
            ),
            "off-face" => pick("the edge of the face", "el borde del faldón").to_owned(),
            _ => tell!("the room beside the {kind}", "el espacio junto a {kind}"),
        }
    }
}
