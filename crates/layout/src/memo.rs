use crate::{PlacedBlock, PlacedPenetration};
use chalkcourse_geometry::Roof;
use chalkcourse_job::{Block, Kit, Penetration, Resolved, RuleBook};
use std::sync::Arc;

/// Cache of what stays in place from one layout to the next while something is dragged. It does not change the result.
#[derive(Debug, Default)]
pub struct Memo {
    /// Everything else that placed objects depend on.
    on: Option<(Arc<Roof>, Arc<RuleBook>, Arc<Kit>)>,
    penetrations: Placed<Penetration, PlacedPenetration>,
    blocks: Placed<(Block, usize), PlacedBlock>,
}

/// Objects by index, as authored and as placed.
type Placed<T, P> = Vec<(T, Arc<P>)>;

impl Memo {
    /// The penetrations and blocks of a job in place, on the roof of its faces.
    pub(crate) fn placed(
        &mut self,
        job: &Resolved,
        roof: &Arc<Roof>,
    ) -> (Vec<Arc<PlacedPenetration>>, Vec<Arc<PlacedBlock>>) {
        let same = self.on.as_ref().is_some_and(|(of, book, kit)| {
            Arc::ptr_eq(of, roof) && Arc::ptr_eq(book, &job.rule_book) && Arc::ptr_eq(kit, &job.kit)
        });
        if !same {
            *self = Self {
                on: Some((Arc::clone(roof), Arc::clone(&job.rule_book), Arc::clone(&job.kit))),
                ..Self::default()
            };
        }
        let penetrations = again(
            &mut self.penetrations,
            job.penetrations.iter(),
            |old, new| old == &**new,
            |new| ((*new).clone(), PlacedPenetration::of(new, &job.rule_book, roof)),
        );
        let face_of = |block: &Block| job.faces.iter().position(|face| face.id == block.face);
        let blocks = again(
            &mut self.blocks,
            job.blocks.iter().filter_map(|block| Some((block, face_of(block)?))),
            |(block, face), (now, on)| block == *now && face == on,
            |(block, face)| (((*block).clone(), *face), PlacedBlock::of(block, *face, &job.kit)),
        );
        (penetrations, blocks)
    }
}

/// Each object as placed before if it is unchanged, otherwise placed again.
fn again<N, T, P>(
    before: &mut Placed<T, P>,
    now: impl Iterator<Item = N>,
    same: impl Fn(&T, &N) -> bool,
    place: impl Fn(&N) -> (T, P),
) -> Vec<Arc<P>> {
    let mut placed = Vec::with_capacity(before.len());
    for (index, thing) in now.enumerate() {
        let kept =
            before.get(index).filter(|(old, _)| same(old, &thing)).map(|(_, placed)| Arc::clone(placed));
        let one = kept.unwrap_or_else(|| {
            let (of, one) = place(&thing);
            let one = Arc::new(one);
            let entry = (of, Arc::clone(&one));
            match before.get_mut(index) {
                Some(slot) => *slot = entry,
                None => before.push(entry),
            }
            one
        });
        placed.push(one);
    }
    before.truncate(placed.len());
    placed
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Layout;
    use crate::testing::block;
    use chalkcourse_geometry::{Azimuth, Length, Pitch, Polygon, Rect, dvec2};
    use chalkcourse_job::{
        BlockId, Face, FaceId, PenetrationId, PenetrationKind, Shape, builtin_kit, builtin_prices,
        builtin_rule_book,
    };

    /// Two faces of 10 m in a row, three blocks and two vents on the first.
    fn job() -> Resolved {
        let mut job = Resolved::new("Two".into(), builtin_kit(), builtin_rule_book(), builtin_prices());
        job.faces = [(1, 0.0), (2, 20.0)]
            .map(|(id, x)| {
                let outline = Polygon::new(Rect::at(dvec2(x, 0.0), dvec2(10.0, 10.0)).corners().to_vec());
                let pitch = Pitch::from_rise_in_12(6.0).unwrap();
                Face::new(
                    FaceId(id),
                    id.to_string(),
                    outline,
                    pitch,
                    Azimuth::from_degrees(180.0),
                    Length::ZERO,
                )
            })
            .to_vec();
        job.blocks = (3..6).map(|id| Block { id: BlockId(id), ..block(1, 2) }).collect();
        job.penetrations = [6, 7]
            .map(|id| Penetration {
                id: PenetrationId(id),
                name: "vent".into(),
                kind: PenetrationKind::Vent,
                at: dvec2(5.0, 5.0),
                shape: Shape::Circle { diameter: Length::from_inches(4.0) },
                clearance: None,
            })
            .to_vec();
        job
    }

    /// How many penetrations and blocks are the very same as in the layout before, and whether all is as without a memory.
    fn again(memo: &mut Memo, before: &mut Layout, job: &Resolved, roof: &Arc<Roof>) -> (usize, usize) {
        let layout = Layout::on_roof_with(job, Arc::clone(roof), memo);
        assert_eq!(layout, Layout::on_roof(job, Arc::clone(roof)));
        let penetrations = before.penetrations.iter().zip(&layout.penetrations);
        let blocks = before.blocks.iter().zip(&layout.blocks);
        let same = (
            penetrations.filter(|(a, b)| Arc::ptr_eq(a, b)).count(),
            blocks.filter(|(a, b)| Arc::ptr_eq(a, b)).count(),
        );
        *before = layout;
        same
    }

    #[test]
    fn what_changed_is_placed_anew_and_the_rest_is_the_same() {
        let (mut job, mut memo) = (job(), Memo::default());
        let mut roof = Arc::new(crate::assemble(&job));
        let mut before = Layout::on_roof(&job, Arc::clone(&roof));
        let mut same = |job: &Resolved, roof: &Arc<Roof>| again(&mut memo, &mut before, job, roof);
        assert_eq!(same(&job, &roof), (0, 0), "nothing is remembered yet");
        assert_eq!(same(&job, &roof), (2, 3));
        job.blocks[1].at.x += 0.1;
        assert_eq!(same(&job, &roof), (2, 2));
        job.penetrations[0].at.x += 0.1;
        assert_eq!(same(&job, &roof), (1, 3));
        job.blocks[2].face = FaceId(2);
        assert_eq!(same(&job, &roof), (2, 2));
        // The block is as it was, and its face is another one by place.
        job.faces.swap(0, 1);
        roof = Arc::new(crate::assemble(&job));
        assert_eq!(same(&job, &roof), (0, 0));
        job.blocks.remove(0);
        assert_eq!(same(&job, &roof), (2, 0), "each is in another's place");
        assert_eq!(same(&job, &roof), (2, 2));
        // What all depends on: another kit, another book.
        job.kit = Arc::new(Kit::clone(&job.kit));
        assert_eq!(same(&job, &roof), (0, 0));
        job.rule_book = Arc::new(RuleBook::clone(&job.rule_book));
        assert_eq!(same(&job, &roof), (0, 0));
        assert_eq!(same(&job, &roof), (2, 2));
    }

    /// Faces of one roof that change places, as names alone tell them apart.
    #[test]
    fn a_block_follows_its_face() {
        let (mut job, mut memo) = (job(), Memo::default());
        let roof = Arc::new(crate::assemble(&job));
        let mut before = Layout::on_roof_with(&job, Arc::clone(&roof), &mut memo);
        job.faces.swap(0, 1);
        assert_eq!(again(&mut memo, &mut before, &job, &roof), (2, 0));
    }
}
