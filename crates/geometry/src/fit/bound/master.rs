//! A small linear programme, solved by the simplex method: the maximum weight on points such that no clique holds more
//! than 1; and its dual, the minimum weight on cliques such that every point has a total of at least 1. Points and
//! cliques may be added, and the solution continues from where it was.
//!
//! Nothing from here is trusted: whoever uses the weights of the cliques checks what they cover.

/// Numbers below this are rounding.
const TINY: f64 = 1e-9;

pub(super) struct Master {
    /// The tableau: one row per clique, one entry per column (a point, or the slack of a clique).
    rows: Vec<Vec<f64>>,
    right: Vec<f64>,
    /// The column that each row has in the basis.
    basic: Vec<usize>,
    /// The gain per unit of each column.
    gain: Vec<f64>,
    /// The columns of points and of slacks, in the order in which they were added.
    points: Vec<usize>,
    slacks: Vec<usize>,
    /// Numbers processed so far: a measure of the time.
    pub(super) steps: usize,
    /// How often the basis changed.
    pub(super) pivots: usize,
}

impl Master {
    pub(super) fn new() -> Self {
        Self {
            rows: Vec::new(),
            right: Vec::new(),
            basic: Vec::new(),
            gain: Vec::new(),
            points: Vec::new(),
            slacks: Vec::new(),
            steps: 0,
            pivots: 0,
        }
    }

    /// Adds a point that is in some cliques.
    pub(super) fn add_point(&mut self, cliques: impl Iterator<Item = usize> + Clone) {
        let column = self.gain.len();
        let slacks = cliques.filter_map(|clique| self.slacks.get(clique).copied());
        for row in &mut self.rows {
            let entry = slacks.clone().filter_map(|slack| row.get(slack)).sum();
            row.push(entry);
        }
        self.gain.push(1.0 + slacks.filter_map(|slack| self.gain.get(slack)).sum::<f64>());
        self.points.push(column);
    }

    /// Adds a clique that contains some of the points and can hold a weight of `most`.
    pub(super) fn add_clique(&mut self, points: impl Iterator<Item = usize>, most: usize) {
        let column = self.gain.len();
        for row in &mut self.rows {
            row.push(0.0);
        }
        self.gain.push(0.0);
        let mut new = vec![0.0; column + 1];
        new[column] = 1.0;
        for point in points {
            if let Some(entry) = self.points.get(point).and_then(|&at| new.get_mut(at)) {
                *entry = 1.0;
            }
        }
        // Make no two cliques exactly alike, so that the method can't cycle.
        let count = self.slacks.len();
        let mut right = most as f64 + 1e-6 * ((count as f64 * 0.618_033_988_75) % 1.0);
        for (i, row) in self.rows.iter().enumerate() {
            let times = new[self.basic[i]];
            if times != 0.0 {
                for (entry, other) in new.iter_mut().zip(row) {
                    *entry -= times * other;
                }
                right -= times * self.right[i];
            }
        }
        self.rows.push(new);
        self.right.push(right);
        self.basic.push(column);
        self.slacks.push(column);
    }

    /// The number of entries of the tableau.
    pub(super) fn size(&self) -> usize {
        self.rows.len() * self.gain.len()
    }

    /// Drops the cliques that are far from full and the points that have far more than enough weight. Returns which
    /// points and which cliques stay.
    pub(super) fn forget(&mut self) -> (Vec<bool>, Vec<bool>) {
        let mut in_row = vec![usize::MAX; self.gain.len()];
        for (row, &column) in self.basic.iter().enumerate() {
            in_row[column] = row;
        }
        let loose = |&column: &usize| in_row[column] != usize::MAX && self.right[in_row[column]] > 0.3;
        let cliques: Vec<bool> = self.slacks.iter().map(|column| !loose(column)).collect();
        let points: Vec<bool> = self
            .points
            .iter()
            .map(|&column| in_row[column] != usize::MAX || self.gain[column] > -0.3)
            .collect();
        let mut stays = vec![true; self.gain.len()];
        let mut row_stays = vec![true; self.rows.len()];
        for (&column, &kept) in self.slacks.iter().zip(&cliques) {
            stays[column] = kept;
            if !kept {
                row_stays[in_row[column]] = false;
            }
        }
        for (&column, &kept) in self.points.iter().zip(&points) {
            stays[column] = kept;
        }
        let mut new = vec![0; stays.len()];
        let mut count = 0;
        for (at, &kept) in stays.iter().enumerate() {
            new[at] = count;
            count += usize::from(kept);
        }
        let mut kept = row_stays.iter().copied();
        self.rows.retain(|_| kept.next() == Some(true));
        let mut kept = row_stays.iter().copied();
        self.right.retain(|_| kept.next() == Some(true));
        let mut kept = row_stays.iter().copied();
        self.basic.retain(|_| kept.next() == Some(true));
        for list in self.rows.iter_mut().chain([&mut self.gain]) {
            let mut kept = stays.iter().copied();
            list.retain(|_| kept.next() == Some(true));
        }
        for list in [&mut self.basic, &mut self.slacks, &mut self.points] {
            list.retain(|&column| stays[column]);
            list.iter_mut().for_each(|column| *column = new[*column]);
        }
        (points, cliques)
    }

    /// Continues to the optimum, or until the total steps are used up. False if it had to stop.
    pub(super) fn solve(&mut self, most_steps: usize) -> bool {
        // New cliques first: the solution stays optimal, but may be infeasible.
        loop {
            let worst = (0..self.rows.len()).min_by(|&p, &q| self.right[p].total_cmp(&self.right[q]));
            let Some(row) = worst.filter(|&row| self.right[row] < -TINY) else { break };
            let entering = (0..self.gain.len())
                .filter(|&j| self.rows[row][j] < -TINY && self.gain[j] <= TINY)
                .min_by(|&p, &q| {
                    let cost = |j: usize| self.gain[j] / self.rows[row][j];
                    cost(p).total_cmp(&cost(q)).then(self.rows[row][p].total_cmp(&self.rows[row][q]))
                });
            let Some(column) = entering else { return false };
            if self.steps >= most_steps {
                return false;
            }
            self.pivot(row, column);
        }
        loop {
            let entering = (0..self.gain.len()).max_by(|&p, &q| self.gain[p].total_cmp(&self.gain[q]));
            let Some(column) = entering.filter(|&column| self.gain[column] > TINY) else { return true };
            let leaving =
                (0..self.rows.len()).filter(|&row| self.rows[row][column] > TINY).min_by(|&p, &q| {
                    let room = |row: usize| self.right[row].max(0.0) / self.rows[row][column];
                    room(p).total_cmp(&room(q)).then(self.rows[q][column].total_cmp(&self.rows[p][column]))
                });
            let Some(row) = leaving else { return false };
            if self.steps >= most_steps {
                return false;
            }
            self.pivot(row, column);
        }
    }

    fn pivot(&mut self, row: usize, column: usize) {
        self.steps += self.rows.len() * self.gain.len();
        self.pivots += 1;
        let mut head = std::mem::take(&mut self.rows[row]);
        let by = 1.0 / head[column];
        head.iter_mut().for_each(|entry| *entry *= by);
        head[column] = 1.0;
        self.right[row] *= by;
        let right = self.right[row];
        for (i, other) in self.rows.iter_mut().enumerate().filter(|(i, _)| *i != row) {
            let times = other[column];
            if times != 0.0 {
                for (entry, head) in other.iter_mut().zip(&head) {
                    *entry -= times * head;
                }
                other[column] = 0.0;
                self.right[i] -= times * right;
            }
        }
        let times = self.gain[column];
        for (entry, head) in self.gain.iter_mut().zip(&head) {
            *entry -= times * head;
        }
        self.gain[column] = 0.0;
        self.rows[row] = head;
        self.basic[row] = column;
    }

    /// The weight of each clique, in the order in which they were added; none is negative.
    pub(super) fn cliques(&self) -> Vec<f64> {
        self.slacks.iter().map(|&slack| (-self.gain[slack]).max(0.0)).collect()
    }

    /// The weight of each point that has any.
    pub(super) fn points(&self) -> Vec<(usize, f64)> {
        let mut of = vec![usize::MAX; self.gain.len()];
        for (point, &column) in self.points.iter().enumerate() {
            of[column] = point;
        }
        let weights = self.basic.iter().zip(&self.right);
        let mut found: Vec<(usize, f64)> = weights
            .filter(|(column, weight)| of[**column] != usize::MAX && **weight > TINY)
            .map(|(column, weight)| (of[*column], *weight))
            .collect();
        found.sort_unstable_by_key(|(point, _)| *point);
        found
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn five_in_a_ring_weigh_two_and_a_half() {
        // Neighbours in a ring of five exclude each other: half of each is best, by hand.
        let mut master = Master::new();
        for _ in 0..5 {
            master.add_point(std::iter::empty());
        }
        for i in 0..5 {
            master.add_clique([i, (i + 1) % 5].into_iter(), 1);
        }
        assert!(master.solve(usize::MAX));
        let total: f64 = master.points().iter().map(|p| p.1).sum();
        let dual: f64 = master.cliques().iter().sum();
        assert!((total - 2.5).abs() < 1e-4 && (dual - 2.5).abs() < 1e-9, "{total} {dual}");
        // One more clique over three of them, then a sixth point in only one clique.
        master.add_clique([0, 1, 2].into_iter(), 1);
        assert!(master.solve(usize::MAX));
        let dual: f64 = master.cliques().iter().sum();
        assert!((dual - 2.0).abs() < 1e-9, "{dual}");
        master.add_point([0].into_iter());
        assert!(master.solve(usize::MAX));
        let dual: f64 = master.cliques().iter().sum();
        // The sixth beside 2 and 4: by hand.
        assert!((dual - 3.0).abs() < 1e-9, "{dual}");
    }
}
