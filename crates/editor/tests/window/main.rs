#![allow(clippy::unwrap_used, clippy::expect_used, reason = "a test may stop at the first surprise")]
//! The window, driven without a display through what a person sees: words, places, keys.

mod arrange;
mod block;
mod clipboard;
mod copies;
mod coursing;
mod desk;
mod dimensions;
mod draw;
mod escape;
mod files;
mod fill;
mod find;
mod findings;
mod formats;
mod group;
mod hand;
mod help;
mod house;
mod languages;
mod lesson;
mod looks;
mod order;
mod order_table;
mod painter;
mod palette;
mod parts;
mod picture;
mod read_out;
mod rules;
mod start;
mod start_page;
mod steps;
mod taped;
mod targets;
mod touch;
