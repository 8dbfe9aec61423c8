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
places-coming = The list of the world’s places is loading. Until then, only larger towns are found.
places-not-fetched = The list of the world’s places could not be loaded: only larger towns are found. Go on typing to try again.
place-near = near { $town }
place-clock-set = Local time: { $offset }
place-figures = Coordinates and altitude
place-latitude = Latitude
place-latitude-hint = Negative south of the equator.
place-longitude = Longitude
place-longitude-hint = Negative west of Greenwich.
place-altitude = Altitude above sea level
place-altitude-hint = To the nearest { $height } is good enough.
short-north = N
short-south = S
short-east = E
short-west = W
coordinates-only-one = Latitude or longitude is missing. Give both, such as 52.1, 5.2.
coordinates-unclear = It is not clear which number is latitude and which longitude. Try 52.1, 5.2 or 52.1 N 5.2 E.
coordinates-letter-o = The letter O can mean east or west. Use E or W.
coordinates-sixtieths = Minutes and seconds go from 0 to 59.
coordinates-latitude = Latitude goes from −90 to 90.
coordinates-longitude = Longitude goes from −180 to 180.
locate = Use current location
locate-asking = Finding your location…
locate-refused = Location access was refused. Type a place instead.
locate-failed = Your location could not be found. Type a place instead.
locate-timed-out = Finding your location took too long. Try again under open sky, or type a place.
locate-hint = Only when you tap; to about { $km_10 }; stays on this device.
locate-missing = This browser does not share its location with this page. Type a place instead.

dates-title = Dates
dates-arrival = Arrival
dates-nights = Nights
dates-hour = Arrival time
dates-offset = Hours ahead of UTC
dates-offset-hint = Central Europe: 1 in winter, 2 in summer time.
dates-clock-device = Same as this device on that day: { $utc }
dates-clock-longitude = By longitude: { $utc }
dates-from-to = From { $from } to { $to }.

days-title = Day by day
days-hint = Leave a day on “Not known” and the chances cover all the usual weather of the place. Driving and hook-up follow Power unless you set them here.
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
sky-sun = From a forecast
day-sun = Sun that day
day-drive = Driving
day-hook-up = Hook-up
day-hook-up-yes = Yes
day-hook-up-no = No
as-planned = As planned

climate-title = Sun and temperature
climate-air-region = Air temperature from typical values for a region { $distance } away (not measured), adjusted for altitude. Monthly averages are right to about { $warmer_2 }; single days vary much more.
climate-air-world = Air temperature from the same climate table, adjusted for altitude. Monthly averages are right to about { $warmer_2 }; single days vary much more.
climate-coming = The climate table is loading. Until then, typical values of the region are used.
climate-not-fetched = The climate table could not be loaded, so typical values of the region are used. Change the trip to try again.
climate-air-latitude = Air temperature estimated from latitude and altitude alone. It may be { $warmer_5 } out or more.
climate-impossible = The figures for { $months } are not physically possible. The nearest possible figure is used instead.
climate-months = Month by month
climate-months-caption = Daily sun on level ground, and mean air temperature
climate-month = Month
climate-own-sun = Your own sun figures
climate-own-sun-hint = Sun on level ground, from any source. Peak sun hours a day are the same as kWh/m² a day. Empty months keep the built-in figure.
own-sun-unit = Unit of your figures
own-sun-daily = kWh/m² a day
own-sun-monthly = kWh/m² a month
climate-usual = Built in: { $amount }
climate-own-air = Mean air temperature, day and night
climate-ground = Ground reflection (albedo)
climate-vehicle = Vehicle
climate-vehicle-loss = For each degree warmer inside than outside, the vehicle loses about { $watts } of heat (common practice). Sun and people add about { $warmer_3 } for free.
climate-inside = Temperature inside, average of day and night
climate-inside-hint = Heaters run to keep this temperature, and a fridge inside stands in it. Leave empty if not heated.
climate-ground-kind = Ground
ground-grass = Grass
ground-sand = Sand
ground-snow = Fresh snow
days-each = Each day by itself
climate-from = Where these figures come from
