use super::front::{Corner, Front};
use super::lines::PARALLEL;
use glam::DVec2;

/// A pass of the water line through a meeting point: it comes in from corner `from` along line `in_line`, and goes out along
/// `out_line` to corner `to`.
#[derive(Clone, Copy, Debug)]
struct Pass {
    from: usize,
    in_line: usize,
    out_line: usize,
    to: usize,
}

impl Front {
    /// Resolves everything that meets at one point now: any number of corners, and lines that pass through it. `corners` and the
    /// segment that starts at `stretch` are assumed to be there whatever rounding says.
    pub(super) fn meet(&mut self, at: DVec2, corners: &[usize], stretch: Option<usize>) {
        let (members, touched) = self.gather(at, corners, stretch);
        let passes = self.passes(&members, &touched);
        for &vertex in &members {
            self.vertices[vertex].marked = false;
        }
        if members.len() + touched.len() < 2 {
            return;
        }
        let node = self.add_node(at);
        for &vertex in &members {
            self.kill(vertex, node);
        }
        for (incoming, outgoing) in self.pair(&passes) {
            let Pass { from, in_line, .. } = passes[incoming];
            let Pass { to, out_line, .. } = passes[outgoing];
            self.join(from, in_line, out_line, to, node);
        }
    }

    /// Runs a corner along at once: two segments face to face close up for the length of the shorter one, to a ridge; of two
    /// collinear ones the faster overtakes all of the slower one.
    pub(super) fn close(&mut self, vertex: usize) {
        let (prev, next) = (self.vertices[vertex].prev, self.vertices[vertex].next);
        let at = self.vertices[vertex].position(self.now);
        let (a, b) = (self.vertices[prev].position(self.now), self.vertices[next].position(self.now));
        let lines = [self.vertices[prev].out, self.vertices[vertex].out];
        let [first, second] = lines.map(|line| self.lines[line]);
        let back = if first.dir.dot(second.dir) > 0.0 && prev != next {
            first.speed() < second.speed()
        } else {
            a.distance_squared(at) <= b.distance_squared(at)
        };
        let (end, point) = if back { (prev, a) } else { (next, b) };
        // Lines that count as parallel are slightly apart at their far ends. The gap goes to the face that moved.
        let upright = [first, second].into_iter().find(|line| !line.moving);
        let off = upright.map_or(DVec2::ZERO, |line| line.normal * (line.normal.dot(point) - line.offset));
        self.meet(point - off, &[vertex, end], None);
    }

    /// The corners at a point, and the segments that pass through it.
    fn gather(&mut self, at: DVec2, corners: &[usize], stretch: Option<usize>) -> (Vec<usize>, Vec<usize>) {
        let (now, near) = (self.now, self.near);
        let mut members = Vec::new();
        for &id in &self.active {
            let there = self.vertices[id].position(now).distance_squared(at) <= near * near;
            if there || corners.contains(&id) {
                members.push(id);
            }
        }
        for &id in &members {
            self.vertices[id].marked = true;
        }
        let mut touched = Vec::new();
        for &id in &self.active {
            let vertex = &self.vertices[id];
            let line = &self.lines[vertex.out];
            let forced = stretch == Some(id);
            if !forced && (line.normal.dot(at) - line.offset_at(now)).abs() > near {
                continue;
            }
            let next = &self.vertices[vertex.next];
            if vertex.marked || next.marked {
                continue;
            }
            let inside = (at - vertex.position(now)).dot(line.dir) > 0.0
                && (next.position(now) - at).dot(line.dir) > 0.0;
            if inside || forced {
                touched.push(id);
            }
        }
        (members, touched)
    }

    fn passes(&self, members: &[usize], touched: &[usize]) -> Vec<Pass> {
        let mut passes = Vec::new();
        for &first in members {
            let from = self.vertices[first].prev;
            if self.vertices[from].marked {
                continue;
            }
            let mut last = first;
            while self.vertices[self.vertices[last].next].marked {
                last = self.vertices[last].next;
            }
            let (out_line, to) = (self.vertices[last].out, self.vertices[last].next);
            passes.push(Pass { from, in_line: self.vertices[from].out, out_line, to });
        }
        for &from in touched {
            let (line, to) = (self.vertices[from].out, self.vertices[from].next);
            passes.push(Pass { from, in_line: line, out_line: line, to });
        }
        passes
    }

    /// Pairs incoming with outgoing directions: the water splits around the point into wedges, each from an outgoing direction
    /// counter-clockwise to the next incoming one.
    fn pair(&self, passes: &[Pass]) -> Vec<(usize, usize)> {
        if passes.len() < 2 {
            return passes.iter().map(|_| (0, 0)).collect();
        }
        let angle = |dir: DVec2| dir.y.atan2(dir.x);
        // angle, whether it is incoming, pass
        let mut rays: Vec<(f64, bool, usize)> = passes
            .iter()
            .enumerate()
            .flat_map(|(i, pass)| {
                let back = -self.lines[pass.in_line].dir;
                [(angle(self.lines[pass.out_line].dir), false, i), (angle(back), true, i)]
            })
            .collect();
        rays.sort_by(|a, b| a.0.total_cmp(&b.0));
        // Where two coincide, the wedge between them closes: outgoing first, then incoming. Rotated so that a tie across the seam
        // of the circle stays together.
        let gap = |a: f64, b: f64| (b - a).rem_euclid(std::f64::consts::TAU);
        let seam = (0..rays.len())
            .find(|&i| gap(rays[(i + rays.len() - 1) % rays.len()].0, rays[i].0) > PARALLEL)
            .unwrap_or(0);
        rays.rotate_left(seam);
        let mut from = 0;
        while from < rays.len() {
            let mut to = from + 1;
            while to < rays.len() && gap(rays[to - 1].0, rays[to].0) <= PARALLEL {
                to += 1;
            }
            rays[from..to].sort_by_key(|ray| ray.1);
            from = to;
        }
        // Like matching brackets, twice around: the pairing is always complete, and the wedges never cross.
        let mut open = Vec::new();
        let mut pairs = Vec::new();
        let mut taken = vec![false; passes.len()];
        for &(_, is_in, pass) in rays.iter().chain(&rays) {
            if !is_in {
                if !pairs.iter().any(|&(_, out)| out == pass) && !open.contains(&pass) {
                    open.push(pass);
                }
            } else if !taken[pass]
                && let Some(out) = open.pop()
            {
                taken[pass] = true;
                pairs.push((pass, out));
            }
        }
        pairs
    }

    fn join(&mut self, from: usize, in_line: usize, out_line: usize, to: usize, node: usize) {
        let corner = if from == to {
            // Two corners enclose nothing.
            let plan = self.nodes[node].plan;
            Corner::Closing(self.add_vertex(in_line, out_line, node, plan, DVec2::ZERO, false))
        } else {
            self.corner(in_line, out_line, node)
        };
        match corner {
            Corner::Straight => {
                self.link(from, to);
                self.stretched.push(from);
            }
            Corner::Some(first, last) => {
                self.link(from, first);
                self.link(last, to);
            }
            Corner::Closing(vertex) => {
                self.link(from, vertex);
                self.link(vertex, to);
                self.closing.push(vertex);
            }
        }
    }
}
