# Setups, links, files, storage.
notice-close = Dismiss
notice-understood = Understood
adjusted = { $n ->
    [one] One value was out of bounds and was pulled in.
   *[other] { $n } values were out of bounds and were pulled in.
}

preview-told = You are looking at a setup from a link: { $name }.
preview-safe = Your own setups are untouched. Try what you like; nothing of it is stored until you keep it.
preview-keep = Keep this as one of mine
preview-back = Back to mine
preview-back-example = Back to the example
preview-kept = Kept among your setups.
preview-left = The setup from the link was left, with your changes to it.
link-empty = There is no link in that.
link-truncated = The end of this link is missing. Copy the link itself once more, not its shortened text with dots. Nothing of yours was touched.
link-newer = This link was made by a newer version of the page. Load the page again while online to update it. Nothing of yours was touched.
link-corrupt = This link was changed on its way, or is none of this page. Ask for it again, or for the file. Nothing of yours was touched.

kept-blocked = This browser keeps nothing for this page. What you enter lasts until you close it.
kept-not-written = The last changes could not be stored: this browser's storage is full or refuses. They last until you close the page.
kept-newer = What is stored here was written by a newer version of the page and is left as it is. Load the page again to update it; until then changes last until you close the page.
kept-take-along = Take it along as a link or a file
kept-beside = The same setup was changed in another tab too. Both versions are kept; the earlier one is now called { $names }.
aside-told = Something stored here could not be read. It was set aside as it is, not erased.
aside-download = Save it as a file
ios-storage = Browsers on this device erase what a page stored after seven days of use without a visit, and a page on the home screen has a storage of its own. Save a link or a file under More: that is also the way to move your setups.

setups-title = Your setups
setups-none = None yet. The example becomes yours with the first change, and is then kept in this browser.
setups-new = New, empty
setups-new-example = New from the example
setups-duplicate = Copy of this one
setups-delete = Delete { $name }
setups-deleted = { $name } is deleted.
setups-full = There is room for 16 setups. Delete one you no longer need, or save it as a file first.
setups-gone = That setup is gone; perhaps another tab deleted it.
setup-name = Name of the setup on screen
setup-new-name = New setup
setup-nameless = Setup without a name
setup-example = Example
setup-outline = { $n ->
    [one] { $n } appliance
   *[other] { $n } appliances
}, { $capacity }
setup-outline-sun = { $peak } of panels

file-added = { $n ->
    [one] Added from the file: { $names }.
   *[other] Added { $n } setups from the file: { $names }.
}
file-no-room = { $n ->
    [one] One more found no room: { $limit } setups is the limit.
   *[other] { $n } more found no room: { $limit } setups is the limit.
}
file-ignored = { $n ->
    [one] One field is unknown here and was left out: { $fields }.
   *[other] { $n } fields are unknown here and were left out: { $fields }.
}
file-unread = The file could not be read from the device.
file-not-saved = The browser would not make a file of it.
file-empty = The file is empty.
file-too-large = The file has { $size } MiB; no setup needs more than { $limit }. It was not opened.
file-not-json = The file is damaged or of another kind: reading stopped at line { $line }, character { $column }. Nothing was taken from it.
file-other-format = This is not a file of Nightbank. Nothing was taken from it.
file-newer = The file was written by a newer version of the page. Load the page again while online to update it.
file-no-setups = There is no setup in the file.
file-too-many = The file has { $n } setups, more than one file may hold. Nothing was taken from it.
file-wrong-value = Setup { $n } of the file has a value of the wrong kind ({ $why }). Nothing was taken from it.

recovery-title = Nightbank has stopped
recovery-text = Something went wrong in the page itself. Your setups are safe: load the page again, or take them along first.
recovery-reload = Load the page again
recovery-file = Save my setups as a file
recovery-link = The setup on screen, as a link:
recovery-empty = Load it with an empty setup, if it stops again

link-title = Link
link-out = Everything on screen, as a link
link-length = { $n } characters.
link-long = That is long for a chat: some cut it. A file is surer.
link-too-long = This setup would make a link of { $n } characters; beyond { $limit } chats and old programs cut it. Give it on as a file.
link-copy = Copy the link
link-hand-on = Share…
link-privacy = The link carries the whole setup behind its # sign; that part stays in browsers and is never sent to the server. The place is rounded to 0.1 degrees (up to 6 km off), but its name, the dates and all other names go along as written. Who has the link can read them.
link-in = Paste a link, or a text with one in it
link-in-open = Open the link
copied = Copied.
copy-by-hand = The browser does not let the page copy. The text is selected: copy it by hand.
hand-on-failed = The device would not share it. Copy the link instead.
qr-title = For the phone next to you: QR code
qr-name = QR code of the link
qr-none = This link is too long for a QR code.
qr-dense = A long link makes a dense code: hold the phone close, or turn the screen bright.

file-title = File
file-about = A file carries everything, exactly and of any length.
file-save = Save this setup as a file
file-save-all = Save all setups as one file
file-open = Open a file
file-drop = Or drop it anywhere on the page. Its setups are added to yours; nothing is replaced.
aside-there = Something that could not be read is set aside in this browser.
aside-drop-title = Take it out of this browser
aside-drop-about = Save it as a file first. Taken out here, it is gone.
aside-drop = Take it out for good

post-card = Pass the answer on
post-text = As text for a forum or a message
post-pictures = As a picture
post-tables = As tables for a spreadsheet
post-markup = What the forum understands
post-plain = Plain text
post-markdown = Markdown
post-bbcode = BBCode
post-field = The text
post-copy = Copy the text
post-title = { $name }: how long will the battery last?
post-nights = Nights on battery
post-nights-value = { $n } in nine cases of ten; { $asked } asked for
post-nights-open = { $n } or more in nine cases of ten; { $asked } asked for
post-chance = Chance of lasting them all
post-first-low = Reaches its lowest allowed level
post-lowest = Lowest state of charge, average weather
post-where = Where
post-when = When
post-when-value = { $n ->
    [one] from { $date }, { $n } night
   *[other] from { $date }, { $n } nights
}
post-loads = Appliances
post-loads-count = { $n }
post-loads-need = { $n }, { $need } at the battery
post-battery = Battery
post-battery-value = { $capacity }, { $volts } V, { $kind }; from { $from } down to { $to }
post-solar = Panels
post-note = An estimate by Nightbank, not a promise.
post-link = Open it in Nightbank
picture-outlook = The outlook (PNG)
picture-ranking = What takes most (SVG)
picture-about = Both show the names you gave, and place and date of the trip.
picture-outlook-file = outlook
picture-ranking-file = what takes most
csv-loads = Appliances (CSV)
csv-days = Days (CSV)
csv-about = In the marks of your language; common spreadsheets open them by a double click. The days are those of average weather.
csv-loads-file = appliances
csv-days-file = days
csv-name = Appliance
csv-group = Group
csv-quantity = Number
csv-draw = Draw of one (W)
csv-current = Current of one (A)
csv-feed = Fed from
csv-usage = Use
csv-per-day = Energy a day at the battery (Wh)
csv-standby = Of which between uses (Wh)
csv-of-need = Share of the day's need (%)
csv-enabled = Counts (1) or not (0)
csv-feed-battery = battery
csv-feed-inverter = inverter
csv-mean = mean over the day
csv-date = Date
csv-weather = Weather
csv-air = Mean air temperature (°C)
csv-used = Used (Wh)
csv-sun = From the sun (Wh)
csv-driving = From driving (Wh)
csv-hook-up = From hook-up (Wh)
csv-other = From other machines (Wh)
csv-soc-low = Lowest state of charge (%)
csv-soc-end = State of charge at the end (%)
print-button = Print on one page
print-failed = The browser would not print.
print-setup = What it is worked out from
print-note = An estimate by Nightbank, not a promise: shade, snow and anything not entered are not in it. Makers' manuals and local rules come first. The code opens this setup on a phone; names and dates go along in it.
