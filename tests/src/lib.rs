//! The tests of the whole live in `tests/tests`.
