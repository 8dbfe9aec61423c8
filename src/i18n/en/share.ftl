# Setups, links, files, storage.

setups-title = Your setups
setups-none = None yet. The example becomes yours as soon as you change something, and is then stored in this browser.
setups-new = New, empty
setups-new-example = New from the example
setups-duplicate = Copy this one
setups-delete = Delete { $name }
setup-name = Name of this setup
setup-new-name = New setup

link-title = Link
link-out = This setup as a link
link-length = { $n } characters.
link-long = That is long for a chat: some apps cut it off. A file is safer.
link-too-long = This setup would make a link of { $n } characters. Chats and older programs cut links longer than { $limit }. Share it as a file instead.
link-copy = Copy the link
link-hand-on = Share…
link-privacy = The link holds the whole setup after its # sign; browsers never send that part to the server. The place is rounded to 0.1 degrees (up to { $km_6 } off). Its name, the dates and all other names are included as written. Anyone who has the link can read them.
link-in = Paste a link, or a text with one in it
link-in-open = Open the link
copied = Copied.
copy-by-hand = The browser does not let the page copy. The text is selected: copy it by hand.
hand-on-failed = The device could not share it. Copy the link instead.
qr-title = QR code for another phone
qr-name = QR code of the link
qr-none = This link is too long for a QR code.
qr-dense = A long link makes a dense code. Hold the phone close, or turn up the brightness.

file-title = File
file-about = A file holds everything exactly, however much there is.
file-save = Save this setup as a file
file-save-all = Save all setups as one file
file-open = Open a file
file-drop = Or drop it anywhere on the page. Its setups are added to yours; nothing is replaced.
aside-there = Data that could not be read is set aside in this browser.
aside-drop-title = Remove it from this browser
aside-drop-about = Save it as a file first. Once removed here it is gone.
aside-drop = Remove it for good

post-card = Share the answer
post-text = As text for a forum or a message
post-pictures = As a picture
post-tables = As tables for a spreadsheet
post-markup = Format
post-plain = Plain text
post-markdown = Markdown
post-bbcode = BBCode
post-loads-title = List of appliances
post-loads-field = List to post
post-loads-picture = As a picture
post-which = Which appliances?
post-measured = Measured ones
post-all = All of them
post-field = The text
post-copy = Copy the text
post-title = { $name }: how long will the battery last?
post-nights = Nights on battery
post-nights-value = { $n }, { $often } ({ $asked } wanted)
post-nights-open = { $n } or more, { $often } ({ $asked } wanted)
post-chance = Chance of lasting the whole stay
post-first-low = Above your limit until ({ $often })
post-lowest = Charge stays above ({ $often })
post-where = Where
post-when = When
post-when-value = { $n ->
    [one] from { $date }, { $n } night
   *[other] from { $date }, { $n } nights
}
post-loads = Appliances
post-loads-count = { $n }
post-loads-need = { $n ->
    [one] { $n } appliance; { $need } from the battery
   *[other] { $n } appliances; { $need } from the battery
}
post-battery = Battery
post-battery-value = { $capacity }, { $volts } V, { $kind }; from { $from } down to { $to }
post-solar = Solar
post-helps = What would help most
post-note = An estimate by Nightbank, not a promise.
post-link = Open it in Nightbank
picture-outlook = The outlook
picture-ranking = What uses most
picture-about = Both show the names you gave, and the place and dates of the trip.
picture-outlook-file = outlook
picture-ranking-file = what uses most
csv-loads = Appliances (CSV)
csv-days = Days (CSV)
csv-about = With the decimal and list separators of your language; common spreadsheets open them with a double click. The days are for average weather.
csv-loads-file = appliances
csv-days-file = days
csv-name = Appliance
csv-group = Group
csv-quantity = Number
csv-draw = Draw of each (W)
csv-current = Current of each (A)
csv-feed = Runs from
csv-usage = Use
csv-per-day = Energy a day from the battery (Wh)
csv-standby = Of which between uses (Wh)
csv-of-need = Share of the day’s energy (%)
csv-enabled = Included (1) or not (0)
csv-feed-battery = battery
csv-feed-inverter = inverter
csv-mean = mean over the day
csv-code = For Nightbank to read back
csv-date = Date
csv-weather = Weather
csv-air = Mean air temperature ({ $unit })
csv-used = Used (Wh)
csv-sun = From solar (Wh)
csv-driving = From driving (Wh)
csv-hook-up = From hook-up (Wh)
csv-other = From other sources (Wh)
csv-soc-low = Lowest state of charge (%)
csv-soc-end = State of charge at the end (%)
print-button = Print on one page
print-failed = The browser could not print.
print-setup = Based on
print-note = An estimate by Nightbank, not a promise. Not included: shade and anything else not entered. Manufacturers’ instructions and local rules come first. The code opens this setup on a phone, with its names and dates.

units-legend = Units
units-device = As my device says
units-metric = Metric
units-us = US (°F, gal, ft, lb)
