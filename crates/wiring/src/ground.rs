//! The path of the bare copper: one conductor without a splice, from the lowest row past the lug of every module to the junction box.

use crate::place::{face_of_box, way};
use chalkcourse_geometry::{DVec2, dvec2};
use chalkcourse_job::{JunctionBox, Resolved};
use chalkcourse_layout::{Layout, PlacedBlock};

/// The shortest route of the bare conductor: from an end of the lowest row past every device, row by row, back and forth, then
/// straight up to the upper edge of the highest row. A device sits at the centre of its module; the conductor runs along the eave
/// and up the slope, not diagonally.
pub fn ground_path(block: &PlacedBlock) -> Vec<DVec2> {
    let rows: Vec<(DVec2, DVec2)> = block
        .modules
        .chunk_by(|a, b| a.cell.row == b.cell.row)
        .filter_map(|row| Some((row.first()?.rect.centre(), row.last()?.rect.centre())))
        .collect();
    // For each row, the shortest route so far that leaves it at its right end and at its left end, and whether it left the row
    // below at the right. Always taking the nearer end would depend on float dust where both are equally near.
    let mut ways: Vec<[(f64, bool); 2]> = Vec::new();
    for (index, &(left, right)) in rows.iter().enumerate() {
        let to = |enter: f64| match index.checked_sub(1) {
            None => (0.0, true),
            Some(below) => {
                let from_right = ways[below][0].0 + (rows[below].1.x - enter).abs();
                let from_left = ways[below][1].0 + (rows[below].0.x - enter).abs();
                if from_right <= from_left { (from_right, true) } else { (from_left, false) }
            }
        };
        ways.push([to(left.x), to(right.x)]);
    }
    let mut at_right = ways.last().is_none_or(|way| way[0].0 <= way[1].0);
    let mut path: Vec<DVec2> = Vec::new();
    // Trace back from the top, then reverse: each row is left at one end and entered at the other.
    for (&(left, right), way) in rows.iter().zip(&ways).rev() {
        let (leave, enter) = if at_right { (right, left) } else { (left, right) };
        if let Some(&above) = path.last() {
            path.push(dvec2(leave.x, above.y));
        }
        path.extend([leave, enter]);
        at_right = way[usize::from(!at_right)].1;
    }
    path.reverse();
    if let (Some(&at), Some(module)) = (path.last(), block.modules.last()) {
        path.push(dvec2(at.x, module.rect.max.y));
    }
    path.dedup();
    path
}

/// The box that the bare copper of a block goes to, the upper end of the path in the frame of its face, and how far that is from the
/// box, in metres: the box of a circuit that has a module of the block. `None` where there is none, or the way is not known.
pub fn ground_to_box<'j>(
    job: &'j Resolved,
    layout: &Layout,
    block: &PlacedBlock,
) -> Option<(&'j JunctionBox, DVec2, f64)> {
    let of_block =
        |circuit: &&chalkcourse_job::Circuit| circuit.modules.iter().any(|module| module.block == block.id);
    let to = job.circuits.iter().filter(of_block).find_map(|circuit| circuit.to)?;
    let junction = job.junction_box(to)?;
    let end = ground_path(block).last().copied()?;
    let spot = face_of_box(&layout.roof, junction)?;
    Some((junction, end, way(&layout.roof, (block.face, end), spot)?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::testing::{block, circuit, gable, junction};
    use chalkcourse_job::{BoxId, Cell};

    fn placed(job: &Resolved) -> (Layout, PlacedBlock) {
        let layout = Layout::of(job);
        let block = PlacedBlock::clone(&layout.blocks[0]);
        (layout, block)
    }

    /// Whether a point is on a stretch that runs along the eave or up the slope.
    fn on(a: DVec2, b: DVec2, p: DVec2) -> bool {
        let near = |x: f64, y: f64| (x - y).abs() < 1e-9;
        let between = |x: f64, y: f64, z: f64| x.min(y) - 1e-9 <= z && z <= x.max(y) + 1e-9;
        (near(a.x, b.x) && near(p.x, a.x) && between(a.y, b.y, p.y))
            || (near(a.y, b.y) && near(p.y, a.y) && between(a.x, b.x, p.x))
    }

    /// Each stretch runs along the eave or up the slope and begins where the one before ends; each module's middle is on it; it never
    /// goes down. Two rows of three: 2 × 1.725 m twice, 1.137 m between the rows, and half a module up to the head.
    #[test]
    fn past_every_module_and_whole() {
        let mut job = gable();
        for off in [
            vec![],
            vec![Cell { row: 1, column: 1 }],
            vec![Cell { row: 0, column: 0 }, Cell { row: 1, column: 2 }],
        ] {
            job.blocks[0].off = off.iter().copied().collect();
            let (_, block) = placed(&job);
            let path = ground_path(&block);
            for pair in path.windows(2) {
                assert!(pair[0].x == pair[1].x || pair[0].y == pair[1].y, "{path:?}");
                assert!(pair[1].y >= pair[0].y, "it goes up: {path:?}");
            }
            for module in &block.modules {
                let middle = module.rect.centre();
                assert!(path.windows(2).any(|pair| on(pair[0], pair[1], middle)), "{middle}: {path:?}");
            }
        }
        job.blocks[0].off.clear();
        let length: f64 = ground_path(&placed(&job).1).windows(2).map(|pair| pair[0].distance(pair[1])).sum();
        assert!((length - (4.0 * 1.725 + 1.137 + 0.567)).abs() < 1e-9, "{length}");
    }

    #[test]
    fn to_the_box_of_its_circuit() {
        let mut job = gable();
        job.blocks.push(block(4, 2, (-8.0, 2.0), 1, 1));
        job.boxes = vec![junction(9, 6.0, 5.0)];
        let (layout, placed_block) = placed(&job);
        assert_eq!(ground_to_box(&job, &layout, &placed_block), None, "no circuit goes to it yet");
        let mut wired = circuit(20, &[(0, 0)]);
        wired.to = Some(BoxId(9));
        job.circuits = vec![wired];
        let (to, end, way) = ground_to_box(&job, &layout, &placed_block).unwrap();
        assert_eq!(Some(&end), ground_path(&placed_block).last());
        let expected = (6.0 - end.x).abs() + 5.0 * 1.25_f64.sqrt() - end.y;
        assert_eq!(to.id, BoxId(9));
        assert!((way - expected).abs() < 1e-9, "{way}");
        assert_eq!(ground_to_box(&job, &layout, &layout.blocks[1]), None);
    }
}
