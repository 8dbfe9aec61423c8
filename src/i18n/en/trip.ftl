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
locate-refused = The device's position was refused. Type a place instead.
locate-failed = The device does not know where it is. Type a place instead.
locate-missing = This browser gives no position to this page. Type a place instead.

dates-title = Dates
dates-arrival = Arrival
dates-nights = Nights
dates-hour = Arriving at
dates-offset = Clock ahead of UTC
dates-offset-hint = Central Europe: 1 in winter, 2 in summer time.

days-title = Day by day
days-hint = Leave a day "not known" and the odds play through the weather of the place.
days-more = { $n ->
    [one] Show { $n } more day
   *[other] Show { $n } more days
}
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
climate-own = Own figures
climate-own-sun = Own sun, kWh/m² a day
climate-own-sun-hint = From any source, month by month. Empty months keep the built-in figure.
climate-usual = Built in: { $amount }
climate-own-air = Air, mean of day and night
climate-ground = Light from the ground
climate-ground-hint = Grass 20, sand 40, fresh snow 60 and more.
