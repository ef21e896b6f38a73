//! Finds the next events: segments that shrink to nothing, corners that run into lines, and the end of the sweep.

use super::{Event, Front, Stuck, What};

impl Front {
    /// Closes what has to close now, then computes the events of everything new.
    pub(super) fn settle(&mut self) -> Result<(), Stuck> {
        while let Some(vertex) = self.closing.pop() {
            if self.vertices[vertex].alive {
                let at = self.vertices[vertex].position(self.now);
                self.budget = self.budget.checked_sub(1).ok_or(Stuck::Knot { at })?;
                self.close(vertex);
            }
        }
        let fresh = std::mem::take(&mut self.fresh);
        let mut stretches = std::mem::take(&mut self.stretched);
        for &vertex in fresh.iter().filter(|&&v| self.vertices[v].alive) {
            stretches.extend([self.vertices[vertex].prev, vertex]);
        }
        stretches.retain(|&v| self.vertices[v].alive);
        stretches.sort_unstable();
        stretches.dedup();
        for &from in &stretches {
            self.watch_stretch(from);
        }
        // New corners against all lines, then new segments against the existing corners.
        for &vertex in &fresh {
            if !(self.vertices[vertex].alive && self.vertices[vertex].reflex) {
                continue;
            }
            for i in 0..self.active.len() {
                self.watch_hit(vertex, self.active[i]);
            }
        }
        for &from in &stretches {
            for i in 0..self.bends.len() {
                let vertex = self.bends[i];
                if vertex < self.settled {
                    self.watch_hit(vertex, from);
                }
            }
        }
        self.settled = self.vertices.len();
        Ok(())
    }

    fn watch_stretch(&mut self, from: usize) {
        let to = self.vertices[from].next;
        let (a, b) = (&self.vertices[from], &self.vertices[to]);
        let dir = self.lines[a.out].dir;
        let length = (b.position(self.now) - a.position(self.now)).dot(dir);
        let rate = (b.velocity - a.velocity).dot(dir);
        let steady = 1e-12 * (1.0 + a.velocity.length() + b.velocity.length());
        let shrunk = if rate < -steady { self.now + length.max(0.0) / -rate } else { f64::INFINITY };
        self.vertices[from].shrunk = shrunk;
        if shrunk.is_finite() {
            self.events.push(Event { height: shrunk, from, to, what: What::Shrink });
        }
    }

    /// Whether and when a reflex corner runs into the segment that starts at `from`.
    fn watch_hit(&mut self, vertex: usize, from: usize) {
        let (v, a) = (&self.vertices[vertex], &self.vertices[from]);
        let line = &self.lines[a.out];
        let to = a.next;
        if vertex == from || vertex == to {
            return;
        }
        let rate = line.normal.dot(v.velocity) - line.speed();
        let gap = line.normal.dot(v.position(self.now)) - line.offset_at(self.now);
        if rate > -1e-12 || gap < -self.near {
            return;
        }
        let height = self.now + gap.max(0.0) / -rate;
        // Past this height the segment is gone. The corner may well outlive the segments beside it.
        if height > a.shrunk + 1e-9 * (1.0 + a.shrunk.abs()) {
            return;
        }
        let b = &self.vertices[to];
        // Both started at one point, into different parts of the roof: they never meet again.
        if v.node == a.node || v.node == b.node {
            return;
        }
        let at = v.position(height);
        let reach = -2.0 * self.near;
        if (at - a.position(height)).dot(line.dir) < reach || (b.position(height) - at).dot(line.dir) < reach
        {
            return;
        }
        self.events.push(Event { height, from, to, what: What::Hit { vertex } });
    }

    /// At the end, only parts without width may be left.
    pub(super) fn finish(&mut self) -> Result<(), Stuck> {
        let mut seen = vec![false; self.vertices.len()];
        for &first in &self.active {
            let (mut twice_area, mut length, mut vertex) = (0.0, 0.0, first);
            let origin = self.vertices[first].position(self.now);
            let mut moving = false;
            while !std::mem::replace(&mut seen[vertex], true) {
                let v = &self.vertices[vertex];
                let (a, b) = (v.position(self.now), self.vertices[v.next].position(self.now));
                twice_area += (a - origin).perp_dot(b - origin);
                length += a.distance(b);
                moving |= self.lines[v.out].moving;
                vertex = v.next;
            }
            if moving && length > 0.0 {
                return Err(Stuck::Knot { at: origin });
            }
            if twice_area.abs() > 4.0 * self.near * length {
                return Err(Stuck::NoSlope { line: self.named_line(first) });
            }
        }
        Ok(())
    }

    /// A line in the loop of `first` that is a side of the footprint, not a step.
    fn named_line(&self, first: usize) -> usize {
        let out = self.vertices[first].out;
        let owner = self.lines[out].owner;
        let named = self.lines.iter().position(|line| line.owner == owner);
        // A line has the owner that it has.
        debug_assert!(named.is_some());
        named.unwrap_or(out)
    }
}
