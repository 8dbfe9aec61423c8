# Where and when.
trip-title = Where and when
place-title = Place
place-search = Another place
place-search-hint = Town, or 52.1, 5.2
place-found = { $n ->
    [one] One place found.
   *[other] { $n } places found.
}
place-none = No such place in the list. Try a larger town nearby, or coordinates such as 52.1, 5.2.
place-near = near { $town }
place-clock-set = The camp clock was set to { $offset } to suit the place.
place-figures = Coordinates and height
place-latitude = Latitude
place-latitude-hint = South of the equator negative.
place-longitude = Longitude
place-longitude-hint = West of Greenwich negative.
place-altitude = Height above the sea
place-altitude-hint = To the nearest { $height } is good enough.
short-north = N
short-south = S
short-east = E
short-west = W
coordinates-only-one = Latitude or longitude is missing. Give both, such as 52.1, 5.2.
coordinates-unclear = It is not clear which number is latitude and which longitude. Try 52.1, 5.2 or 52.1 N 5.2 E.
coordinates-letter-o = The letter O can mean east or west. Use E or W.
coordinates-sixtieths = Minutes and seconds go from 0 to 59.
coordinates-latitude = Latitude goes from -90 to 90.
coordinates-longitude = Longitude goes from -180 to 180.
locate = Where I am now
locate-asking = Asking the device…
locate-refused = The device’s position was refused. Type a place instead.
locate-failed = The device does not know where it is. Type a place instead.
locate-timed-out = Finding the device took too long. Try again under open sky, or type a place.
locate-hint = Asked only when you tap, rounded to about 10 km, and it stays on this device.
locate-missing = This browser gives no position to this page. Type a place instead.

dates-title = Dates
dates-arrival = Arrival
dates-nights = Nights
dates-hour = Arriving at
dates-offset = Clock ahead of UTC
dates-offset-hint = Central Europe: 1 in winter, 2 in summer time.
dates-clock-device = As this device on that day: { $utc }
dates-clock-longitude = By the longitude: { $utc }
dates-from-to = From { $from } to { $to }.

days-title = Day by day
days-hint = Leave a day "not known" and the odds play through the weather of the place. Driving and hook-up follow the plan of the Power part where nothing else is said.
days-more = { $n ->
    [one] Show { $n } more day
   *[other] Show { $n } more days
}
days-all = Sky on all days
day-sky = Sky
sky-unknown = Not known
sky-typical = Average for the month
sky-clear = Clear
sky-mixed = Sun and cloud
sky-dull = Dull
sky-sun = As forecast
day-sun = Sun that day
day-drive = Driving
day-hook-up = Hook-up
day-hook-up-yes = Yes
day-hook-up-no = No
as-planned = as planned

climate-title = Sun and air
climate-air-region = Air from typical values for { $name }, { $distance } km away, not measured, brought to the height here: within about 2 °C for a month’s mean, single days stray much farther.
climate-air-world = Air from the same table, brought to the height here: within about 2 °C for a month’s mean, single days stray much farther.
climate-coming = The climate table is on its way. Until it is here, typical values of the region count.
climate-not-fetched = The climate table could not be fetched. Typical values of the region count meanwhile; it is tried again when the trip changes.
climate-air-latitude = Air guessed from latitude and height alone: it may be off by 5 °C and more.
climate-impossible = No sky can give what was typed for { $months }. The nearest possible figure counts instead.
climate-months = Month by month
climate-months-caption = Sun on level ground a day, and mean of the air
climate-month = Month
climate-own-sun = My own figures for the sun
climate-own-sun-hint = Sun on level ground, from any source. Peak sun hours a day are the same as kWh/m² a day. Empty months keep the built-in figure.
own-sun-unit = My figures are
own-sun-daily = kWh/m² a day
own-sun-monthly = kWh/m² a month
climate-usual = Built in: { $amount }
climate-own-air = Air, mean of day and night
climate-ground = Light from the ground
climate-ground-kind = The ground is
ground-grass = Grass
ground-sand = Sand
ground-snow = Fresh snow
