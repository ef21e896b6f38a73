//! Pseudo-random numbers that are the same on every machine: SplitMix64 (Steele, Lea and Flood, 2014).

/// A seeded stream of numbers.
#[derive(Clone, Debug)]
pub struct Dice(u64);

impl Dice {
    /// A separate stream for each seed.
    pub fn new(seed: u64) -> Self {
        let mut dice = Self(seed);
        // Decorrelates the streams of consecutive seeds.
        dice.0 = dice.roll() ^ 0x5851_f42d_4c95_7f2d;
        dice
    }

    fn roll(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// From 0 to less than 1.
    pub fn unit(&mut self) -> f64 {
        (self.roll() >> 11) as f64 / (1u64 << 53) as f64
    }

    /// From `from` to less than `to`.
    pub fn within(&mut self, from: f64, to: f64) -> f64 {
        from + (to - from) * self.unit()
    }

    /// From 0 to less than `many`; 0 if `many` is 0.
    pub fn below(&mut self, many: usize) -> usize {
        ((self.unit() * many as f64) as usize).min(many.saturating_sub(1))
    }

    /// A multiple of `step` above `from`, up to and including `to`.
    pub fn stepped(&mut self, from: f64, to: f64, step: f64) -> f64 {
        from + step * self.below(((to - from) / step).round() as usize + 1) as f64
    }

    /// True with this probability.
    pub fn chance(&mut self, share: f64) -> bool {
        self.unit() < share
    }

    /// A random element.
    ///
    /// # Panics
    /// If the slice is empty.
    pub fn one<'a, T>(&mut self, of: &'a [T]) -> &'a T {
        &of[self.below(of.len())]
    }
}
