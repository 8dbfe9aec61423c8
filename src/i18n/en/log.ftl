# A log of readings: brought, read, and what it shows.
part-log = A log of readings
tool-log-told = A table from a battery monitor shows what you use at night, what switches on and off, and how much capacity is left.

log-told = Bring a table of times and readings, as battery monitors and solar controllers save it. It never leaves this device: it is forgotten when you close the page, and no link or file carries it.
log-bring = Bring the log
log-file = Choose a file
log-drop = Or drop a file here: CSV or plain text.
log-paste = Or paste its rows
log-read = Read these rows
log-clear = Put the log away
log-working = Working through the log …
log-fault-empty = There is nothing in it.
log-fault-large = This is more than 32 MB. Save a shorter time.
log-fault-not-text = This is not a table in plain text. Save the log as CSV.
log-fault-wide = This table has more than 64 columns. Save fewer.

log-columns = What the columns are
log-columns-told = Check each column; change what is wrong.
log-rows = { $n ->
    [one] { $n } row.
   *[other] { $n } rows.
}
log-above = { $n ->
    [one] { $n } line above the headings is not part of the table.
   *[other] { $n } lines above the headings are not part of the table.
}
log-preview = The first rows
log-line = Line
log-column = Column { $n }
log-column-named = Column { $n }: { $name }
log-by-figures = Told by its figures alone. Please check.
log-role-unused = Not used
log-role-time = Time
log-role-date = Date
log-role-soc = State of charge
log-role-volts = Battery voltage
log-role-amps = Battery current
log-role-watts = Battery power
log-role-charging = Power coming in
log-role-used = Power used
log-ask-time = Which column is the time?
log-ask-figure = Which column is a reading? Choose at least one.
log-ask-order = Day or month first? These dates can be read either way.
log-ask-mark = Comma or point? Some of these numbers can be read either way.
log-ask-plus = Does plus mean charging or use? This log does not show it.
log-order = First in the date
log-order-day = Day
log-order-month = Month
log-mark = Decimal mark
log-mark-point = Point
log-mark-comma = Comma
log-plus = A reading above zero means
log-plus-charging = Charging
log-plus-using = Use
log-clock = Times without a time zone are
log-clock-camp = Local time
log-clock-utc = UTC
log-left-out = { $n ->
    [one] { $n } entry left out
   *[other] { $n } entries left out
}
log-left-first = The first of them
log-left-why = Why
log-left-cell = It says
log-left-no-time = No time
log-left-time-unread = Time not understood
log-left-same-time = Same time as an earlier row
log-left-no-figure = No reading
log-left-unread = { $name }: not a number
log-left-range = { $name }: not possible

log-found = What the log shows
log-span = { $n ->
    [one] { $n } row from { $span }, { $covered } of it without gaps.
   *[other] { $n } rows from { $span }, { $covered } of it without gaps.
}
log-take = Take over: { $what }
toast-log-taken = Taken over: { $what }
log-known = As you have it.
log-lacks-time = Only { $time } of readings. A day and a night or more tell far more.
log-lacks-gaps = { $share } of the time is missing. What follows is less sure.
log-lacks-power = Neither current nor power in it: it cannot show use, appliances or capacity.
log-lacks-soc = No state of charge in it: the forecast cannot be compared with it.
log-lacks-rows = One row every { $time } is too far apart to see appliances switch. One every minute shows them.
log-lacks-night = Something was charging all the time, so use does not show. Log a night as well.
log-standby = Measured standby
log-floor = At night { $power } never stops (±{ $error }).
log-floor-most = At night at most { $power } never stops. The rows are too far apart to say more.
log-floor-listed = Your list explains { $power } of it.
log-hours = { $n ->
    [one] On average { $power } is used, seen in { $n } hour of the day.
   *[other] On average { $power } is used, seen in { $n } hours of the day.
}
log-hours-title = Use by hour of the day
log-hours-from = From
log-hours-mean = On average
log-hours-watched = Seen for
log-in = { $n ->
    [one] { $energy } came in on { $n } whole day, { $peak } at most.
   *[other] { $energy } came in on { $n } whole days, { $peak } at most.
}
log-in-least = { $n ->
    [one] At least { $energy } came in on { $n } whole day, { $peak } at most. What the appliances used meanwhile does not show.
   *[other] At least { $energy } came in on { $n } whole days, { $peak } at most. What the appliances used meanwhile does not show.
}
log-capacity = Capacity in use: { $capacity } (±{ $error }), { $share } of the { $label } on the label.
log-capacity-counted = From the charge counted while the state of charge fell. If somebody typed a capacity into the monitor, it may only show that one.
log-capacity-rested = From full down to a rested voltage. Do not run a battery flat to find out: it harms lead, and everything on it goes off.
log-capacity-no-current = Capacity: needs current or power of the battery.
log-capacity-no-state = Capacity: needs the state of charge, or a voltage after hours of rest on a battery that was full before.
log-capacity-swing = Capacity: the charge only moved by { $swing }. It takes 30 % or more.
log-capacity-contradicts = Capacity: the current and the state of charge do not fit together. Check the columns.
log-cycles = { $n ->
    [one] Something of { $power } (±{ $error }) comes and goes by itself: { $duty } of the time, { $run } each, { $n } run.
   *[other] Something of { $power } (±{ $error }) comes and goes by itself: { $duty } of the time, { $run } each, { $n } runs.
}
log-uses = { $n ->
    [one] Something of { $power } (±{ $error }) runs { $time } a day, mostly { $times }, { $n } run.
   *[other] Something of { $power } (±{ $error }) runs { $time } a day, mostly { $times }, { $n } runs.
}
log-by-night = Seen in the dark only. For an appliance in your list the draw is taken over, its hours stay.
log-is = What draws { $power }
log-appliance = Found in the log, { $power }
log-held-high = Compared over { $time }, the forecast is { $mean } of charge too high on average and { $rms } off by the hour.
log-held-low = Compared over { $time }, the forecast is { $mean } of charge too low on average and { $rms } off by the hour.
log-correction = use and sun
log-how = Every ± holds 9 times out of 10. Each finding is taken over on its own and can be undone.
