//! A minimum cut by maximum flow (Dinic's algorithm): which nodes stay with the source.

/// A network of nodes plus two more, the source and the sink.
pub(super) struct Network {
    nodes: usize,
    /// Target and remaining capacity; edge `e ^ 1` is the reverse edge.
    edges: Vec<(usize, i64)>,
    from: Vec<Vec<usize>>,
}

impl Network {
    pub(super) fn new(nodes: usize) -> Self {
        Self { nodes, edges: Vec::new(), from: vec![Vec::new(); nodes + 2] }
    }
    pub(super) fn source(&self) -> usize {
        self.nodes
    }
    pub(super) fn sink(&self) -> usize {
        self.nodes + 1
    }

    /// Sets the cost of a cut with `a` on the source's side and `b` not, and the other way round.
    pub(super) fn join(&mut self, a: usize, b: usize, forth: i64, back: i64) {
        for (node, to, capacity) in [(a, b, forth), (b, a, back)] {
            if let Some(list) = self.from.get_mut(node) {
                list.push(self.edges.len());
            }
            self.edges.push((to, capacity));
        }
    }

    /// The nodes on the source's side of a minimum cut, and its cost.
    pub(super) fn smallest_cut(mut self) -> (Vec<bool>, i64) {
        let mut flow = 0;
        loop {
            let levels = self.levels();
            if levels[self.sink()] == usize::MAX {
                let mine = levels[..self.nodes].iter().map(|&level| level != usize::MAX).collect();
                return (mine, flow);
            }
            let mut next = vec![0; self.nodes + 2];
            while let Some(more) = self.path(&levels, &mut next) {
                flow += more;
            }
        }
    }

    fn levels(&self) -> Vec<usize> {
        let mut levels = vec![usize::MAX; self.nodes + 2];
        let mut queue = vec![self.source()];
        levels[self.source()] = 0;
        let mut at = 0;
        while let Some(&node) = queue.get(at) {
            at += 1;
            for &edge in &self.from[node] {
                let (to, left) = self.edges[edge];
                if left > 0 && levels[to] == usize::MAX {
                    levels[to] = levels[node] + 1;
                    queue.push(to);
                }
            }
        }
        levels
    }

    /// Sends as much flow as one more path of the level graph can take.
    fn path(&mut self, levels: &[usize], next: &mut [usize]) -> Option<i64> {
        let mut path: Vec<usize> = Vec::new();
        let mut node = self.source();
        while node != self.sink() {
            if let Some(&edge) = self.from[node].get(next[node]) {
                let (to, left) = self.edges[edge];
                if left > 0 && levels[to] == levels[node] + 1 {
                    path.push(edge);
                    node = to;
                } else {
                    next[node] += 1;
                }
            } else {
                let back = path.pop()?;
                node = self.edges[back ^ 1].0;
                next[node] += 1;
            }
        }
        let more = path.iter().map(|&edge| self.edges[edge].1).min()?;
        for edge in path {
            self.edges[edge].1 -= more;
            self.edges[edge ^ 1].1 += more;
        }
        Some(more)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_textbook_network_carries_its_flow() {
        // Cormen, Leiserson, Rivest, Stein, "Introduction to Algorithms", the flow network of the chapter on maximum
        // flow (s, v1..v4, t; from memory): 23.
        let mut net = Network::new(4);
        let (s, t) = (net.source(), net.sink());
        for (a, b, c) in [
            (s, 0, 16),
            (s, 1, 13),
            (1, 0, 4),
            (0, 2, 12),
            (2, 1, 9),
            (1, 3, 14),
            (3, 2, 7),
            (2, t, 20),
            (3, t, 4),
        ] {
            net.join(a, b, c, 0);
        }
        let (mine, flow) = net.smallest_cut();
        assert_eq!((mine, flow), (vec![true, true, false, true], 23));
    }
}
