mod watch;

use super::lines::{Line, PARALLEL, Setup};
use glam::DVec2;
use std::cmp::Ordering;
use std::collections::BinaryHeap;

/// Why the sweep failed.
#[derive(Clone, Copy, Debug)]
pub(super) enum Stuck {
    /// All planes are vertical.
    NoSlope { line: usize },
    /// The events at this point can't be told apart.
    Knot { at: DVec2 },
}

/// An event point of the water line.
#[derive(Clone, Copy, Debug)]
pub(super) struct Node {
    pub(super) plan: DVec2,
    pub(super) height: f64,
}

/// The trace of a corner of the water line. It is on the border of face `left` in this direction and of face `right` in the
/// opposite one; `None` if that line did not move.
#[derive(Clone, Copy, Debug)]
pub(super) struct Arc {
    pub(super) from: usize,
    pub(super) to: usize,
    pub(super) left: Option<usize>,
    pub(super) right: Option<usize>,
}

/// The segment of a line as it starts to move: the foot of its face.
#[derive(Clone, Copy, Debug)]
pub(super) struct Foot {
    pub(super) from: usize,
    pub(super) to: usize,
    pub(super) line: usize,
}

/// A corner of the water line. Any change to it makes a new one, so an event that refers to it is valid as long as it is alive
/// and has the same next corner.
#[derive(Clone, Copy, Debug)]
pub(super) struct Vertex {
    pub(super) prev: usize,
    pub(super) next: usize,
    /// The line from here to the next corner.
    pub(super) out: usize,
    pub(super) node: usize,
    born: f64,
    at: DVec2,
    velocity: DVec2,
    /// The interior angle of the roof exceeds 180° here: only such a corner can run into a line.
    reflex: bool,
    pub(super) alive: bool,
    pub(super) marked: bool,
    left: Option<usize>,
    right: Option<usize>,
    /// Height at which the segment to the next corner has shrunk to nothing.
    shrunk: f64,
    slot: usize,
    bend_slot: usize,
}

impl Vertex {
    pub(super) fn position(&self, height: f64) -> DVec2 {
        self.at + self.velocity * (height - self.born)
    }
}

/// The new corner where two lines meet, or the two with a step between them.
pub(super) enum Corner {
    /// Both are the same line: no corner.
    Straight,
    /// First and last new corner.
    Some(usize, usize),
    /// The lines coincide, or one overtakes the other: this corner runs along them at once.
    Closing(usize),
}

#[derive(Clone, Copy, Debug)]
enum What {
    Begin,
    Shrink,
    Hit { vertex: usize },
}

#[derive(Clone, Copy, Debug)]
struct Event {
    height: f64,
    from: usize,
    to: usize,
    what: What,
}

impl PartialEq for Event {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}
impl Eq for Event {}
impl PartialOrd for Event {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}
impl Ord for Event {
    /// Reversed, so that the heap pops the lowest first. Ties break by number, so that a roof is the same on every run.
    fn cmp(&self, other: &Self) -> Ordering {
        other.height.total_cmp(&self.height).then(other.from.cmp(&self.from)).then(other.to.cmp(&self.to))
    }
}

/// The water line and everything it left behind.
pub(super) struct Front {
    pub(super) lines: Vec<Line>,
    pub(super) vertices: Vec<Vertex>,
    pub(super) nodes: Vec<Node>,
    pub(super) arcs: Vec<Arc>,
    pub(super) feet: Vec<Foot>,
    pub(super) near: f64,
    pub(super) now: f64,
    /// Live corners, unordered.
    pub(super) active: Vec<usize>,
    /// The reflex ones among them.
    bends: Vec<usize>,
    /// Corners between coincident lines, to be closed at once.
    pub(super) closing: Vec<usize>,
    /// New corners whose events are not computed yet.
    pub(super) fresh: Vec<usize>,
    /// Corners with a number below this have their events.
    settled: usize,
    /// Old corners with a new outgoing segment.
    pub(super) stretched: Vec<usize>,
    events: BinaryHeap<Event>,
    budget: usize,
}

impl Front {
    /// Sweeps the water line from the lowest eave to the highest ridge.
    pub(super) fn sweep(setup: &Setup, near: f64) -> Result<Self, Stuck> {
        let corners: usize = setup.rings.iter().map(Vec::len).sum();
        let mut front = Self {
            lines: setup.lines.clone(),
            vertices: Vec::with_capacity(4 * corners),
            nodes: Vec::with_capacity(4 * corners),
            arcs: Vec::with_capacity(4 * corners),
            feet: Vec::with_capacity(corners),
            near,
            now: 0.0,
            active: Vec::with_capacity(corners + 8),
            bends: Vec::with_capacity(corners),
            closing: Vec::new(),
            fresh: Vec::new(),
            settled: 0,
            stretched: Vec::new(),
            events: BinaryHeap::new(),
            // Each event removes a corner or splits the water in two; this is far above the possible number.
            budget: 64 * corners + 1024,
        };
        front.begin(setup)?;
        while let Some(event) = front.events.pop() {
            match event.what {
                What::Begin => front.begin_lines(event.height)?,
                _ if front.holds(event) => front.handle(event)?,
                _ => {}
            }
        }
        front.finish()?;
        Ok(front)
    }

    fn begin(&mut self, setup: &Setup) -> Result<(), Stuck> {
        let sloped = || self.lines.iter().filter(|line| line.run > 0.0);
        let lowest = sloped().map(|line| line.start).fold(f64::INFINITY, f64::min);
        if !lowest.is_finite() {
            return Err(Stuck::NoSlope { line: 0 });
        }
        let mut later: Vec<f64> = sloped().map(|line| line.start).filter(|&start| start > lowest).collect();
        later.sort_by(f64::total_cmp);
        later.dedup();
        self.now = lowest;
        for line in &mut self.lines {
            line.moving = line.run > 0.0 && line.start <= lowest;
        }
        for height in later {
            self.events.push(Event { height, from: 0, to: 0, what: What::Begin });
        }
        for ring in &setup.rings {
            let mut chain = Vec::with_capacity(ring.len() + 4);
            for (i, start) in ring.iter().enumerate() {
                let before = ring[(i + ring.len() - 1) % ring.len()].line;
                let node = self.add_node(start.at);
                match self.corner(before, start.line, node) {
                    Corner::Some(first, last) if first == last => chain.push(first),
                    Corner::Some(first, last) => chain.extend([first, last]),
                    Corner::Straight | Corner::Closing(_) => return Err(Stuck::Knot { at: start.at }),
                }
            }
            for (i, &vertex) in chain.iter().enumerate() {
                self.link(vertex, chain[(i + 1) % chain.len()]);
            }
            for (i, &vertex) in chain.iter().enumerate() {
                let line = self.vertices[vertex].out;
                if self.lines[line].moving {
                    let to = self.vertices[chain[(i + 1) % chain.len()]].node;
                    self.feet.push(Foot { from: self.vertices[vertex].node, to, line });
                }
            }
        }
        self.settle()
    }

    /// Starts the lines that begin at this height.
    fn begin_lines(&mut self, height: f64) -> Result<(), Stuck> {
        self.now = self.now.max(height);
        let starts = |line: &Line| line.run > 0.0 && !line.moving && line.start <= height;
        let begun: Vec<bool> = self.lines.iter().map(starts).collect();
        for (line, &begins) in self.lines.iter_mut().zip(&begun) {
            line.moving |= begins;
        }
        // A line that is made while this goes on moves already.
        let begins = |line: usize| begun.get(line).copied().unwrap_or(false);
        for vertex in self.active.clone() {
            let Vertex { prev, next, out, .. } = self.vertices[vertex];
            let before = self.vertices[prev].out;
            if !(begins(out) || begins(before)) {
                continue;
            }
            let node = self.add_node(self.vertices[vertex].position(self.now));
            self.kill(vertex, node);
            match self.corner(before, out, node) {
                Corner::Some(first, last) => {
                    self.link(prev, first);
                    if first != last {
                        self.link(first, last);
                    }
                    self.link(last, next);
                }
                Corner::Straight => {
                    self.link(prev, next);
                    self.stretched.push(prev);
                }
                Corner::Closing(closing) => {
                    self.link(prev, closing);
                    self.link(closing, next);
                    self.closing.push(closing);
                }
            }
        }
        for &vertex in &self.active {
            let Vertex { out, next, node, .. } = self.vertices[vertex];
            if begins(out) {
                self.feet.push(Foot { from: node, to: self.vertices[next].node, line: out });
            }
        }
        self.settle()
    }

    fn holds(&self, event: Event) -> bool {
        let stretch = self.vertices[event.from].alive && self.vertices[event.from].next == event.to;
        match event.what {
            What::Hit { vertex } => stretch && self.vertices[vertex].alive,
            _ => stretch,
        }
    }

    fn handle(&mut self, event: Event) -> Result<(), Stuck> {
        self.now = self.now.max(event.height);
        let Event { from, to, .. } = event;
        let at = self.vertices[from].position(self.now);
        self.budget = self.budget.checked_sub(1).ok_or(Stuck::Knot { at })?;
        match event.what {
            What::Hit { vertex } => {
                let before = self.vertices[self.vertices[vertex].prev].out;
                let lines = [before, self.vertices[vertex].out, self.vertices[from].out];
                let at = self.common_point(lines).unwrap_or(self.vertices[vertex].position(self.now));
                self.meet(at, &[vertex], Some(from));
            }
            _ => {
                let before = self.vertices[self.vertices[from].prev].out;
                let lines = [before, self.vertices[from].out, self.vertices[to].out];
                let at = self.common_point(lines).unwrap_or(at);
                self.meet(at, &[from, to], None);
            }
        }
        self.settle()
    }

    /// Where three lines that meet now do so: from the two that cross at the largest angle, but preferably on a vertical one,
    /// because no face beside it could absorb the error.
    fn common_point(&self, lines: [usize; 3]) -> Option<DVec2> {
        let cross = |i: usize, j: usize| {
            let (a, b) = (&self.lines[lines[i]], &self.lines[lines[j]]);
            let upright = f64::from(u8::from(!a.moving)) + f64::from(u8::from(!b.moving));
            a.dir.perp_dot(b.dir).abs() * (1.0 + upright)
        };
        let (i, j) = [(0, 1), (1, 2), (2, 0)]
            .into_iter()
            .max_by(|a, b| cross(a.0, a.1).total_cmp(&cross(b.0, b.1)))
            .filter(|&(i, j)| cross(i, j) > PARALLEL)?;
        Some(self.crossing(lines[i], lines[j]))
    }

    fn crossing(&self, a: usize, b: usize) -> DVec2 {
        let (a, b) = (&self.lines[a], &self.lines[b]);
        (b.dir * a.offset_at(self.now) - a.dir * b.offset_at(self.now)) / a.dir.perp_dot(b.dir)
    }

    pub(super) fn add_node(&mut self, plan: DVec2) -> usize {
        self.nodes.push(Node { plan, height: self.now });
        self.nodes.len() - 1
    }

    pub(super) fn link(&mut self, from: usize, to: usize) {
        self.vertices[from].next = to;
        self.vertices[to].prev = from;
    }

    /// The corner from line `a` to line `b` at a node, not yet linked.
    pub(super) fn corner(&mut self, a: usize, b: usize, node: usize) -> Corner {
        let (la, lb) = (self.lines[a], self.lines[b]);
        let (speed_a, speed_b) = (la.speed(), lb.speed());
        let (cross, dot) = (la.dir.perp_dot(lb.dir), la.dir.dot(lb.dir));
        let even = (speed_a - speed_b).abs() <= 1e-12 * speed_a.max(speed_b);
        let plan = self.nodes[node].plan;
        if cross.abs() > PARALLEL {
            let velocity = if even && dot > 0.0 {
                (la.normal + lb.normal) * (speed_a / (1.0 + dot))
            } else {
                (lb.dir * speed_a - la.dir * speed_b) / cross
            };
            // The intersection of the lines is the most accurate, unless they are nearly parallel.
            let crossing = self.crossing(a, b);
            let trusted = cross.abs() > 1e-3 && crossing.distance(plan) <= 16.0 * self.near;
            let at = if trusted { crossing } else { plan };
            let vertex = self.add_vertex(a, b, node, at, velocity, cross < 0.0);
            return Corner::Some(vertex, vertex);
        }
        if dot < 0.0 {
            return Corner::Closing(self.add_vertex(a, b, node, plan, DVec2::ZERO, false));
        }
        if a == b {
            return Corner::Straight;
        }
        if even {
            let vertex = self.add_vertex(a, b, node, plan, la.normal * speed_a, false);
            return Corner::Some(vertex, vertex);
        }
        if la.follower != Some(b) {
            // They have just become collinear, and one runs ahead: it continues from where both are, over the top of the slower
            // one's face, which ends here.
            return Corner::Closing(self.add_vertex(a, b, node, plan, DVec2::ZERO, false));
        }
        // Collinear from the start, but one runs ahead: a step at right angles, with its face to the slower one.
        let ahead = speed_a > speed_b;
        let dir = if ahead { -la.normal } else { la.normal };
        self.lines.push(Line::upright(plan, dir, la.owner));
        let step = self.lines.len() - 1;
        let first = self.add_vertex(a, step, node, plan, la.normal * speed_a, ahead);
        let last = self.add_vertex(step, b, node, plan, la.normal * speed_b, !ahead);
        self.link(first, last);
        Corner::Some(first, last)
    }

    pub(super) fn add_vertex(
        &mut self,
        a: usize,
        b: usize,
        node: usize,
        at: DVec2,
        velocity: DVec2,
        reflex: bool,
    ) -> usize {
        let id = self.vertices.len();
        let moves = |line: usize| self.lines[line].moving.then_some(line);
        self.vertices.push(Vertex {
            prev: id,
            next: id,
            out: b,
            node,
            born: self.now,
            at,
            velocity,
            reflex,
            alive: true,
            marked: false,
            left: moves(a),
            right: moves(b),
            shrunk: f64::INFINITY,
            slot: self.active.len(),
            bend_slot: self.bends.len(),
        });
        self.active.push(id);
        if reflex {
            self.bends.push(id);
        }
        self.fresh.push(id);
        id
    }

    /// Ends a corner at a node, recording its trace.
    pub(super) fn kill(&mut self, vertex: usize, node: usize) {
        let dead = self.vertices[vertex];
        self.vertices[vertex].alive = false;
        self.arcs.push(Arc { from: dead.node, to: node, left: dead.left, right: dead.right });
        self.active.swap_remove(dead.slot);
        if let Some(&moved) = self.active.get(dead.slot) {
            self.vertices[moved].slot = dead.slot;
        }
        if dead.reflex {
            self.bends.swap_remove(dead.bend_slot);
            if let Some(&moved) = self.bends.get(dead.bend_slot) {
                self.vertices[moved].bend_slot = dead.bend_slot;
            }
        }
    }
}
