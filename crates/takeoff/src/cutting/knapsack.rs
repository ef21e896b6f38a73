//! The most valuable filling of one stick (bounded knapsack).

/// The best filling: its value and the count of each size.
pub(super) struct Filling {
    pub(super) value: i64,
    pub(super) count: Vec<u32>,
    /// Steps taken, by search and table.
    pub(super) steps: u64,
}

/// Step limit of the search before the table takes over, whose running time is known beforehand.
const STEPS: u32 = 20_000;

/// The most valuable filling of `room` with at most `demand` of each size; exact. Sizes without value are left out.
pub(super) fn fill(size: &[u64], value: &[i64], demand: &[u32], room: u64) -> Filling {
    let mut order: Vec<usize> =
        (0..size.len()).filter(|&i| value[i] > 0 && size[i] <= room && demand[i] > 0).collect();
    order.sort_by(|&a, &b| {
        let (left, right) =
            (i128::from(value[a]) * i128::from(size[b]), i128::from(value[b]) * i128::from(size[a]));
        right.cmp(&left).then(a.cmp(&b))
    });
    let mut search = Search {
        size: order.iter().map(|&i| size[i]).collect(),
        value: order.iter().map(|&i| value[i]).collect(),
        demand: order.iter().map(|&i| demand[i]).collect(),
        now: vec![0; order.len()],
        best: 0,
        best_count: vec![0; order.len()],
        steps: 0,
    };
    let mut steps = 0;
    if !search.branch(0, room, 0) {
        steps = search.table(room);
    }
    steps += u64::from(search.steps);
    let mut count = vec![0; size.len()];
    for (place, &index) in order.iter().enumerate() {
        count[index] = search.best_count[place];
    }
    Filling { value: search.best, count, steps }
}

struct Search {
    size: Vec<u64>,
    value: Vec<i64>,
    demand: Vec<u32>,
    now: Vec<u32>,
    best: i64,
    best_count: Vec<u32>,
    steps: u32,
}

impl Search {
    /// Depth first by value per length, pruned where filling up at the next ratio would be no better. False: out of steps.
    fn branch(&mut self, at: usize, room: u64, value: i64) -> bool {
        if value > self.best {
            self.best = value;
            self.best_count.clone_from(&self.now);
        }
        if at == self.size.len() {
            return true;
        }
        let bound = i128::from(room) * i128::from(self.value[at]) / i128::from(self.size[at]);
        if i128::from(value) + bound <= i128::from(self.best) {
            return true;
        }
        self.steps += 1;
        if self.steps > STEPS {
            return false;
        }
        let most = (room / self.size[at]).min(u64::from(self.demand[at])) as u32;
        for count in (0..=most).rev() {
            self.now[at] = count;
            let taken = self.size[at] * u64::from(count);
            if !self.branch(at + 1, room - taken, value + self.value[at] * i64::from(count)) {
                return false;
            }
        }
        self.now[at] = 0;
        true
    }

    /// The same by dynamic programming over all lengths: slower where few pieces fit in a stick, but never slow. Returns the
    /// steps taken.
    fn table(&mut self, room: u64) -> u64 {
        let room = room as usize;
        let mut best = vec![0i64; room + 1];
        // Split each demand into packs of 1, 2, 4 … pieces, so that any count up to it is a subset of the packs.
        let mut packs: Vec<(usize, u32, Vec<bool>)> = Vec::new();
        for item in 0..self.size.len() {
            let mut left = (room as u64 / self.size[item]).min(u64::from(self.demand[item])) as u32;
            let mut pack = 1;
            while left > 0 {
                let count = pack.min(left);
                let (size, value) =
                    (self.size[item] as usize * count as usize, self.value[item] * i64::from(count));
                let mut taken = vec![false; room + 1];
                for at in (size..=room).rev() {
                    let with = best[at - size] + value;
                    if with > best[at] {
                        best[at] = with;
                        taken[at] = true;
                    }
                }
                packs.push((item, count, taken));
                left -= count;
                pack *= 2;
            }
        }
        self.best = best[room];
        self.best_count.fill(0);
        let mut at = room;
        for (item, count, taken) in packs.iter().rev() {
            if taken[at] {
                self.best_count[*item] += count;
                at -= self.size[*item] as usize * *count as usize;
            }
        }
        // A table step takes a tenth of the time of a search step.
        packs.len() as u64 * room as u64 / 10
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// Search and table agree.
        #[test]
        fn search_and_table_agree(
            items in proptest::collection::vec((1u64..60, 0i64..100, 1u32..4), 1..9),
            room in 1u64..150,
        ) {
            let size: Vec<u64> = items.iter().map(|item| item.0).collect();
            let value: Vec<i64> = items.iter().map(|item| item.1).collect();
            let demand: Vec<u32> = items.iter().map(|item| item.2).collect();
            let got = fill(&size, &value, &demand, room);
            let mut table = Search {
                now: vec![0; size.len()],
                best_count: vec![0; size.len()],
                size: size.clone(),
                value: value.clone(),
                demand: demand.clone(),
                best: 0,
                steps: 0,
            };
            table.table(room);
            prop_assert_eq!(got.value, table.best);
            for count in [&got.count, &table.best_count] {
                let used: u64 = size.iter().zip(count).map(|(s, &c)| s * u64::from(c)).sum();
                let worth: i64 = value.iter().zip(count).map(|(v, &c)| v * i64::from(c)).sum();
                prop_assert!(used <= room && worth == got.value);
                prop_assert!(count.iter().zip(&demand).all(|(c, d)| c <= d));
            }
        }
    }
}
