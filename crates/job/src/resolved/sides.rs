//! Carrying side ids of a face over when its part changes.

use crate::{Border, Face, PartId, SideBorders};
use chalkcourse_geometry::sides::again::{After, Before, FormerPosition, found_again};
use chalkcourse_geometry::{DVec2, Polygon, SideId};
use std::collections::BTreeSet;

/// Gives the sides of a new outline the ids of the sides that they correspond to. `borders` is what they border, by
/// ring and corner; `there` are the existing sides of parts.
///
/// A side that is hidden keeps its id as long as what it bordered is in the job, and gets it back when it reappears; a
/// side that was replaced by others is gone for good.
pub(super) fn carry(
    face: &mut Face,
    outline: &Polygon,
    borders: &[Vec<Vec<Border>>],
    there: &BTreeSet<(PartId, u32)>,
) {
    let now: Vec<&Vec<Border>> = borders.iter().flatten().collect();
    let same = face.sides.fit(outline) && {
        let known = face.sides.all().zip(&face.borders);
        face.borders.len() >= now.len()
            && known.zip(&now).all(|((id, was), now)| was.side == id && was.along == **now)
    };
    // From a current file: the ids are already those of the new outline.
    let from_file = face.outline.outer.is_empty();
    if same && (from_file || face.outline == *outline) {
        return;
    }
    if from_file && face.borders.is_empty() && face.sides.fit(outline) {
        face.borders = in_order(face.sides.all(), &now);
        return;
    }
    let before = sides_before(face);
    let after = sides_after(outline, borders);
    let found = found_again(&before, &after);
    let mut found = found.into_iter();
    let rings = outline.rings().map(|ring| found.by_ref().take(ring.len()).collect()).collect();
    let sides = face.sides.with_found(rings);
    let mut kept = in_order(sides.all(), &now);
    let shown: BTreeSet<SideId> = sides.all().collect();
    let mut hidden: Vec<SideBorders> = std::mem::take(&mut face.borders);
    hidden.retain(|was| {
        let place_is_free = !kept.iter().any(|side| side.along == was.along);
        let may_come_back =
            !was.along.is_empty() && was.along.iter().all(|border| there.contains(&border.of()));
        !shown.contains(&was.side) && place_is_free && may_come_back
    });
    hidden.sort_by_key(|was| was.side);
    kept.extend(hidden);
    (face.sides, face.borders) = (sides, kept);
}

fn in_order(ids: impl Iterator<Item = SideId>, now: &[&Vec<Border>]) -> Vec<SideBorders> {
    ids.zip(now).map(|(side, along)| SideBorders { side, along: (*along).clone() }).collect()
}

fn sides_before(face: &Face) -> Vec<Before<'_, Border>> {
    let bordered = |id: SideId| -> &[Border] {
        face.borders.iter().find(|side| side.side == id).map_or(&[], |side| &side.along)
    };
    let lines: Vec<(DVec2, DVec2)> = if face.sides.fit(&face.outline) {
        face.outline.sides().map(|(.., a, b)| (a, b)).collect()
    } else {
        Vec::new()
    };
    let mut lines = lines.into_iter();
    let mut before = Vec::new();
    for ring in face.sides.rings() {
        let n = ring.len();
        for (at, &id) in ring.iter().enumerate() {
            let was = lines.next().map_or(FormerPosition::InOrder, |(a, b)| FormerPosition::Along(a, b));
            let beside = [bordered(ring[(at + n - 1) % n]), bordered(ring[(at + 1) % n])];
            before.push(Before { id, was, borders: bordered(id), beside });
        }
    }
    let shown: BTreeSet<SideId> = face.sides.all().collect();
    let hidden = face.borders.iter().filter(|side| !shown.contains(&side.side));
    before.extend(hidden.map(|side| Before {
        id: side.side,
        was: FormerPosition::Hidden,
        borders: &side.along,
        beside: [&[], &[]],
    }));
    before
}

fn sides_after<'a>(outline: &Polygon, borders: &'a [Vec<Vec<Border>>]) -> Vec<After<'a, Border>> {
    let of = |ring: usize, side: usize| -> &'a [Border] {
        borders.get(ring).and_then(|ring| ring.get(side)).map_or(&[], Vec::as_slice)
    };
    let lengths: Vec<usize> = outline.rings().map(<[DVec2]>::len).collect();
    outline
        .sides()
        .map(|(ring, side, a, b)| {
            let n = lengths.get(ring).copied().unwrap_or(1);
            let beside = [of(ring, (side + n - 1) % n), of(ring, (side + 1) % n)];
            After { line: (a, b), borders: of(ring, side), beside }
        })
        .collect()
}
