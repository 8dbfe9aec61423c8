//! The arithmetic of the charts. It lies in the page's layer, which only a browser build compiles,
//! but knows no browser; here it is compiled and tested without one. The tests stand in the files.
#![allow(dead_code, missing_docs)]

#[path = "../src/view/chart/colour.rs"]
mod colour;
#[path = "../src/view/chart/days.rs"]
mod days;
#[path = "../src/view/chart/glyph.rs"]
mod glyph;
#[path = "../src/view/chart/river.rs"]
mod river;
#[path = "../src/view/chart/scale.rs"]
mod scale;
