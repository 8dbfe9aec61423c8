//! All native tests in one program: one link instead of fifty, so a changed line is tested in seconds.
//!
//! Run one file with `cargo nextest run trip::`, one test by a part of its name.

mod advice_common;
mod common;
mod debilt;
mod reference;
mod text_common;
mod trip_common;

mod advice_compare;
mod advice_helps;
mod advice_on_site;
mod advice_sizing;
mod advice_ways;
mod battery_reasons;
mod battery_vectors;
mod calibration;
mod catalogue;
mod charging;
mod chart_geometry;
mod climate;
mod climate_of_trip;
mod climate_world;
mod hostile_input;
mod inverter_advice;
mod inverter_vectors;
mod layers;
mod licences;
mod link_golden;
mod link_mangled;
mod link_roundtrip;
mod load_energy;
mod measuring;
mod places;
mod places_gazetteer;
mod public_items;
mod setup_fields;
mod sizing_side_by_side;
mod solar_handbook;
mod solar_properties;
mod solar_reference;
mod solar_yield;
mod standalone_sizing;
mod start;
mod storage_roundtrip;
mod survival_engine;
mod text_counts;
mod text_words;
mod texts;
mod trade_facts;
mod trip;
mod two_tabs;
mod weather_debilt;
mod whole_setups;
mod wiring_advice;
mod wiring_vectors;
