//! Charts on a canvas: plotters draws, everything that needs words stands beside it in the page.
//!
//! Each chart is a function from a signal of plain figures to a view: a picture with a summary for
//! screen readers, a slider that reads single values, a legend, and a table of all figures.
//! [`scale`], [`days`], [`river`], [`glyph`] and [`colour`] are arithmetic without a browser;
//! [`canvas`] draws, [`picture`] is the frame around every chart, `watch` says when to draw again.

pub mod canvas;
pub mod colour;
pub mod course;
pub mod course_data;
mod course_draw;
mod course_labels;
pub mod curve;
pub mod days;
pub mod flow;
pub mod glyph;
pub mod picture;
pub mod river;
pub mod scale;
pub mod strip;
mod watch;

pub use course::{course_canvas, soc_chart};
pub use course_data::{
    ChartEvent, ChartMark, ChartReading, MiddleLine, SocBand, SocChart, SocHour, moment,
};
pub use curve::{Axis, CurveChart, CurveMark, CurvePoint, curve_chart};
pub use days::{Span, days_on_axis};
pub use flow::{FlowChart, FlowPart, flow_chart};
pub use glyph::EventKind;
pub use river::FlowKind;
pub use strip::{MonthNights, MonthsChart, months_chart};
