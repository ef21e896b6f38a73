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

    #[test]
    fn what_changed_is_placed_anew_and_the_rest_is_the_same() {
        let mut before: Placed<u32, u32> = Vec::new();
        let mut lay = |now: &[u32]| {
            let anew = std::cell::RefCell::new(Vec::new());
            let placed = again(
                &mut before,
                now.iter(),
                |old, new| old == *new,
                |new| {
                    anew.borrow_mut().push(**new);
                    (**new, **new * 2)
                },
            );
            (placed, anew.into_inner())
        };
        let (first, anew) = lay(&[1, 2, 3]);
        assert_eq!((first.iter().map(|it| **it).collect::<Vec<_>>(), anew), (vec![2, 4, 6], vec![1, 2, 3]));
        let (second, anew) = lay(&[1, 5, 3]);
        assert_eq!((second.iter().map(|it| **it).collect::<Vec<_>>(), anew), (vec![2, 10, 6], vec![5]));
        assert!(Arc::ptr_eq(&first[0], &second[0]) && Arc::ptr_eq(&first[2], &second[2]));
        // Removed objects are dropped from the cache, and placed again if they come back.
        assert!(lay(&[1]).1.is_empty());
        assert_eq!(lay(&[1, 5]).1, [5]);
    }
}
