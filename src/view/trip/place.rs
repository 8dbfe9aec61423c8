//! The place: by name, by coordinates, or where the device is.

use super::clock::{keep_suggested, suggested, utc};
use super::locate;
use crate::i18n::{Arg, Lang};
use crate::model::limits::{ALTITUDE_M, LATITUDE_DEG, LONGITUDE_DEG, MAX_NAME_CHARS};
use crate::model::places::coordinates::{self, CoordinateError};
use crate::model::places::gazetteer::FoundPlace;
use crate::model::places::{nearest, search};
use crate::model::{Place, Setup};
use crate::units::{Degrees, Measure, Metres, UnitSystem};
use crate::view::climate_file;
use crate::view::focus;
use crate::view::icons::{Icon, icon};
use crate::view::lang::{key, lang, measured, number, t, t_args};
use crate::view::lens::Lens;
use crate::view::places_file;
use crate::view::reader;
use crate::view::state::AppState;
use crate::view::widgets::{NumberField, disclosure, fresh_id, quiet_button};
use leptos::ev::{Event, KeyboardEvent};
use leptos::prelude::*;

/// Towns listed while typing.
const LISTED: usize = 8;
/// A town farther than this [km] does not name a point.
const NAMES_WITHIN_KM: f64 = 60.0;
/// A town farther than this [km] says nothing of the height.
const HEIGHT_WITHIN_KM: f64 = 25.0;
/// A clock farther than this from the sun's own [min] is taken for another continent's.
const CLOCK_OFF_MIN: f64 = 180.0;

/// A place to choose.
#[derive(Clone, PartialEq)]
struct Candidate {
    place: Place,
    /// State and country, or the coordinates.
    about: String,
}

impl Candidate {
    fn by_position(place: Place) -> Self {
        Self { about: position(&place), place }
    }

    fn listed(found: FoundPlace) -> Self {
        let country = match lang() {
            Lang::En => 0,
            Lang::De => 1,
            Lang::Fr => 2,
            Lang::Nl => 3,
        };
        let country = found.countries.get(country).cloned().unwrap_or_default();
        let about = [found.division, country]
            .into_iter()
            .filter(|part| !part.is_empty() && *part != found.place.name)
            .collect::<Vec<_>>()
            .join(", ");
        if about.is_empty() {
            Self::by_position(found.place)
        } else {
            Self { place: found.place, about }
        }
    }
}

/// What the typed text leads to.
#[derive(Clone, PartialEq)]
enum PlaceSearch {
    Nothing,
    Places(Vec<Candidate>),
    Fault(String),
}

/// Place of the trip: shown, searched, located, and its figures.
#[must_use]
pub fn view(app: AppState) -> AnyView {
    view! {
        <p class="place-now" data-testid="place-now">{icon(Icon::Place)} <span>{move || app.setup.with(here)}</span></p>
        {finder(app)}
        {disclosure(t("place-figures"), false, figures(app))}
    }
    .into_any()
}

/// The search field with what it finds, and the device's position.
#[must_use]
pub fn finder(app: AppState) -> AnyView {
    let query = RwSignal::new(String::new());
    let trouble = RwSignal::new(None::<String>);
    let found = Memo::new(move |_| query.with(|query| find(query)));
    let take = move |place: Place| {
        query.try_set(String::new());
        trouble.try_set(None);
        put(app, place);
    };
    let locate = move || {
        trouble.try_set(Some(t("locate-asking")));
        locate::ask(move |answer| match answer {
            Ok((latitude, longitude)) => take(at(latitude, longitude)),
            Err(words) => {
                trouble.try_set(Some(words));
            }
        });
    };
    let first = move || {
        if let PlaceSearch::Places(places) = found.get_untracked()
            && let Some(first) = places.into_iter().next()
        {
            take(first.place);
        }
    };
    let faulty = move || matches!(found.get(), PlaceSearch::Fault(_));
    let id = fresh_id("place");
    let note = format!("{id}-n");
    let field = id.clone();
    let choose = move |place: Place| {
        // The list that was pressed goes.
        focus::to(&field);
        take(place);
    };
    view! {
        <div class="field" class:field-faulty=faulty>
            <div class="field-head"><label for=id.clone()>{t("place-search")}</label></div>
            <div class="field-box">
                <input
                    id=id
                    type="text"
                    autocomplete="off"
                    enterkeyhint="search"
                    aria-describedby=note.clone()
                    aria-invalid=move || if faulty() { "true" } else { "false" }
                    placeholder=t("place-search-hint")
                    prop:value=move || query.get()
                    on:input=move |event: Event| {
                        query.try_set(event_target_value(&event));
                    }
                    on:keydown=move |event: KeyboardEvent| {
                        if event.key() == "Enter" {
                            event.prevent_default();
                            first();
                        }
                    }
                />
            </div>
            <p
                class=move || if faulty() { "field-fault" } else { "field-hint" }
                id=note
                role="status"
            >
                {move || match found.get() {
                    PlaceSearch::Nothing => trouble.get().unwrap_or_default(),
                    PlaceSearch::Fault(words) => words,
                    PlaceSearch::Places(places) => {
                        t_args("place-found", &[("n", Arg::Count(places.len() as i32))])
                    }
                }}
            </p>
            {move || query.with(|query| list_state(query))}
            {move || match found.get() {
                PlaceSearch::Places(places) => {
                    let rows: Vec<AnyView> =
                        places.into_iter().map(|place| choice(place, choose.clone())).collect();
                    view! { <ul class="find-list">{rows}</ul> }.into_any()
                }
                _ => ().into_any(),
            }}
        </div>
        <div class="field">
            <div class="button-row">{quiet_button(Some(Icon::Place), t("locate"), locate)}</div>
            <p class="field-hint">{t("locate-hint")}</p>
        </div>
    }
    .into_any()
}

/// How far the list of the world's places is, while something is searched for and it is not here.
fn list_state(query: &str) -> Option<AnyView> {
    let by_name = coordinates::parse(query) == Err(CoordinateError::NotCoordinates);
    if query.trim().is_empty() || !by_name {
        return None;
    }
    let text = places_file::state().lacking(key!("places-coming"), key!("places-not-fetched"))?;
    Some(view! { <p class="field-hint" role="status">{text}</p> }.into_any())
}

fn choice(candidate: Candidate, take: impl Fn(Place) + 'static) -> AnyView {
    let Candidate { place, about } = candidate;
    let name = place.name.clone();
    view! {
        <li>
            <button type="button" class="find-entry" on:click=move |_| take(place.clone())>
                <span class="find-name">{name}</span>
                <small>{about}</small>
            </button>
        </li>
    }
    .into_any()
}

fn find(query: &str) -> PlaceSearch {
    if query.trim().is_empty() {
        return PlaceSearch::Nothing;
    }
    match coordinates::parse(query) {
        Ok((latitude, longitude)) => {
            PlaceSearch::Places(vec![Candidate::by_position(at(latitude, longitude))])
        }
        Err(CoordinateError::NotCoordinates) => {
            let places: Vec<Candidate> = match places_file::list() {
                Some(list) => {
                    list.search(query, LISTED).into_iter().map(Candidate::listed).collect()
                }
                None => search(query, LISTED)
                    .into_iter()
                    .map(|town| Candidate::by_position(town.to_place()))
                    .collect(),
            };
            if places.is_empty() {
                PlaceSearch::Fault(t("place-none"))
            } else {
                PlaceSearch::Places(places)
            }
        }
        Err(fault) => PlaceSearch::Fault(fault_words(fault)),
    }
}

fn fault_words(fault: CoordinateError) -> String {
    match fault {
        CoordinateError::NotCoordinates => t("place-none"),
        CoordinateError::OnlyOne => t("coordinates-only-one"),
        CoordinateError::Unclear | CoordinateError::TwoAlike => t("coordinates-unclear"),
        CoordinateError::LetterO => t("coordinates-letter-o"),
        CoordinateError::SixtiethsOutOfRange { .. } => t("coordinates-sixtieths"),
        CoordinateError::LatitudeOutOfRange { .. } => t("coordinates-latitude"),
        CoordinateError::LongitudeOutOfRange { .. } => t("coordinates-longitude"),
    }
}

/// A point on the map, named after the nearest town.
fn at(latitude: Degrees, longitude: Degrees) -> Place {
    let mut place = Place { name: String::new(), latitude, longitude, ..Place::default() };
    if let Some((town, distance_km)) = nearest(latitude, longitude) {
        if distance_km <= NAMES_WITHIN_KM {
            let name = t_args("place-near", &[("town", Arg::Text(town.name()))]);
            place.name = name.chars().take(MAX_NAME_CHARS).collect();
        }
        if distance_km <= HEIGHT_WITHIN_KM {
            place.altitude = town.altitude();
        } else if let Some(height) = climate_file::height(&place) {
            place.altitude = height;
        }
    }
    if place.name.is_empty() {
        place.name = position(&place).chars().take(MAX_NAME_CHARS).collect();
    }
    place
}

/// Makes `place` the place of the trip. A clock that was the suggested one stays that, and one of
/// another continent follows the place.
fn put(app: AppState, place: Place) {
    let mut changed = None;
    app.edit_apart(|setup| {
        setup.turn_panels(&place);
        let trip = &mut setup.trip;
        let before = trip.utc_offset_min;
        keep_suggested(trip, |trip| trip.place = place);
        let sun_min = trip.place.longitude.0 * 4.0;
        if (f64::from(trip.utc_offset_min) - sun_min).abs() > CLOCK_OFF_MIN {
            trip.utc_offset_min = suggested(trip);
        }
        changed = (trip.utc_offset_min != before).then_some(trip.utc_offset_min);
    });
    if let Some(minutes) = changed {
        app.tell(t_args("place-clock-set", &[("offset", Arg::Text(&utc(minutes)))]), true);
    }
}

fn here(setup: &Setup) -> String {
    let place = &setup.trip.place;
    if place.name.trim().is_empty() { position(place) } else { place.name.clone() }
}

/// Coordinates in words of the language.
fn position(place: &Place) -> String {
    let (lat, lon) = (place.latitude.0, place.longitude.0);
    let north = if lat < 0.0 { t("short-south") } else { t("short-north") };
    let east = if lon < 0.0 { t("short-west") } else { t("short-east") };
    format!("{}° {north}, {}° {east}", number(lat.abs(), 2), number(lon.abs(), 2))
}

fn figures(app: AppState) -> AnyView {
    // A round figure in either unit [m].
    let roughly = match reader::system() {
        UnitSystem::Metric => 100.0,
        UnitSystem::Us => 91.44,
    };
    let altitude = measured(Measure::Length, roughly, 0);
    view! {
        <div class="fields">
            {NumberField::new(
                    t("place-latitude"),
                    "°",
                    LATITUDE_DEG,
                    Lens::of(
                        |s| s.trip.place.latitude.0,
                        |s, v| s.trip.place.latitude = Degrees(v),
                    ),
                )
                .hint(t("place-latitude-hint"))
                .view(app)}
            {NumberField::new(
                    t("place-longitude"),
                    "°",
                    LONGITUDE_DEG,
                    Lens::of(
                        |s| s.trip.place.longitude.0,
                        |s, v| s.trip.place.longitude = Degrees(v),
                    ),
                )
                .hint(t("place-longitude-hint"))
                .view(app)}
            {NumberField::of(
                    Measure::Length,
                    t("place-altitude"),
                    ALTITUDE_M,
                    Lens::of(|s| s.trip.place.altitude.0, |s, v| s.trip.place.altitude = Metres(v)),
                )
                .hint(t_args("place-altitude-hint", &[("height", Arg::Text(&altitude))]))
                .view(app)}
        </div>
    }
    .into_any()
}
