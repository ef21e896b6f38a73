//! The window, driven without a display through what a person sees: words, places, keys.

mod block;
mod draw;
mod files;
mod hand;
