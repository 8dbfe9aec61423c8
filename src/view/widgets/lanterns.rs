//! The lanterns: one for each night, lit, low or dark.
//!
//! A lit lantern has a full flame, rays and a filled glass; a low one a small flame in an empty
//! glass; a dark one no flame and a broken outline. The shape and the words carry the meaning,
//! colour only adds to it.

use crate::forecast::odds::{EVEN_FRAC, reaches};
use crate::view::certainty::sure_frac;
use crate::view::lang::{key, t};
use leptos::prelude::*;

/// How a night looks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LanternLevel {
    /// The battery very likely lasts: as surely as wanted.
    Lit,
    /// It may last.
    Low,
    /// It likely does not: less than an even chance.
    Dark,
    /// The night is over.
    Past,
}

impl LanternLevel {
    /// The level for a chance of lasting, 0..1.
    #[must_use]
    pub fn of_chance(chance_frac: f64) -> Self {
        if reaches(chance_frac, sure_frac()) {
            Self::Lit
        } else if reaches(chance_frac, EVEN_FRAC) {
            Self::Low
        } else {
            Self::Dark
        }
    }

    fn symbol(self) -> &'static str {
        match self {
            Self::Lit => "#lantern-lit",
            Self::Low => "#lantern-low",
            Self::Dark | Self::Past => "#lantern-dark",
        }
    }

    fn class(self) -> &'static str {
        match self {
            Self::Lit | Self::Low => "lantern",
            Self::Dark => "lantern lantern-is-dark",
            Self::Past => "lantern lantern-is-past",
        }
    }

    /// The level in a word.
    #[must_use]
    pub fn word(self) -> String {
        t(match self {
            Self::Lit => key!("lantern-lit"),
            Self::Low => key!("lantern-low"),
            Self::Dark => key!("lantern-dark"),
            Self::Past => key!("lantern-past"),
        })
    }
}

/// One night.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LanternNight {
    /// How likely the battery lasts through it.
    pub level: LanternLevel,
    /// Which night, short, such as the weekday and date.
    pub label: String,
    /// How likely, in words or figures; may be empty.
    pub chance: String,
}

/// The drawings, once in the page; [`lantern`] refers to them.
#[must_use]
pub fn lantern_sprite() -> AnyView {
    view! {
        <svg class="sprite" aria-hidden="true" focusable="false">
            <symbol id="lantern-lit" viewBox="0 0 32 44">
                <path class="l-rays" d="M2 24h3M27 24h3M4 14l2.4 1.6M28 14l-2.4 1.6M4 34l2.4-1.6M28 34l-2.4-1.6"></path>
                <path class="l-glass" d="M10 15h12l2 9-2 10H10L8 24z"></path>
                <path class="l-flame" d="M16 18c1 3.5 3.5 5 3.5 8.5a3.5 3.5 0 0 1-7 0C12.5 23.5 15 21.5 16 18z"></path>
                <path class="l-frame" d="M11 12a5 7 0 0 1 10 0M9 12h14v3H9zM10 15l-2 9 2 10M22 15l2 9-2 10M9 34h14l1 5H8z"></path>
            </symbol>
            <symbol id="lantern-low" viewBox="0 0 32 44">
                <path class="l-ember" d="M16 26.5c.6 1.8 1.8 2.5 1.8 4.2a1.8 1.8 0 0 1-3.6 0c0-1.7 1.2-2.4 1.8-4.200z"></path>
                <path class="l-frame" d="M11 12a5 7 0 0 1 10 0M9 12h14v3H9zM10 15l-2 9 2 10M22 15l2 9-2 10M9 34h14l1 5H8z"></path>
            </symbol>
            <symbol id="lantern-dark" viewBox="0 0 32 44">
                <path class="l-wick" d="M16 34v-3"></path>
                <path class="l-frame l-broken" d="M11 12a5 7 0 0 1 10 0M9 12h14v3H9zM10 15l-2 9 2 10M22 15l2 9-2 10M9 34h14l1 5H8z"></path>
            </symbol>
        </svg>
    }
    .into_any()
}

/// One lantern without words.
#[must_use]
pub fn lantern(level: LanternLevel) -> AnyView {
    view! {
        <svg class=level.class() viewBox="0 0 32 44" aria-hidden="true" focusable="false">
            <use href=level.symbol()></use>
        </svg>
    }
    .into_any()
}

/// A row of lanterns, one for each night, with its label, its level and its chance in words. A tap opens or
/// closes a night in `open`, where there is one.
#[must_use]
pub fn lantern_row(nights: Vec<LanternNight>, open: Option<RwSignal<Option<usize>>>) -> AnyView {
    let nights: Vec<AnyView> = nights
        .into_iter()
        .enumerate()
        .map(|(index, night)| {
            let inside = view! {
                {lantern(night.level)}
                <span class="lantern-label">{night.label}</span>
                <span class="unseen">{night.level.word()}</span>
                <span class="lantern-chance">{night.chance}</span>
            }
            .into_any();
            let inside = match open {
                Some(open) => opener(inside, open, index),
                None => view! { <div class="lantern-night">{inside}</div> }.into_any(),
            };
            view! { <li data-testid="lantern">{inside}</li> }.into_any()
        })
        .collect();
    view! { <ol class="lanterns">{nights}</ol> }.into_any()
}

fn opener(inside: AnyView, open: RwSignal<Option<usize>>, index: usize) -> AnyView {
    let is_open = move || open.get() == Some(index);
    let press =
        move |_| _ = open.try_update(|open| *open = (*open != Some(index)).then_some(index));
    view! {
        <button type="button" class="lantern-night" aria-expanded=move || is_open().to_string() on:click=press>
            {inside}
        </button>
    }
    .into_any()
}
