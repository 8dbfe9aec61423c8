# Told on any part of the page: setups, links, files and storage.
notice-close = Close
notice-understood = Understood
adjusted = { $n ->
    [one] One value was out of range and has been adjusted.
   *[other] { $n } values were out of range and have been adjusted.
}
misfits = { $n ->
    [one] One value could not be read. It was left out or set to the usual value: { $where }. Please check it.
   *[other] { $n } values could not be read. They were left out or set to usual values: { $where }. Please check them.
}
misfit-part = { $part ->
    [name] Name
    [vehicle] Vehicle
    [loads] Appliances
    [bank] Battery
    [inverter] Inverter
    [solar] Solar
    [driving] Charging while driving
    [hook_up] Hook-up
    [other] Other sources
    [trip] Trip
    [prices] Prices and weights
    [readings] Readings on site
    [correction] What the readings say
    [cables] Cable runs
   *[setup] Setup
}
preview-told = You are looking at a setup from a link: { $name }.
preview-safe = Your own setups are untouched. Try whatever you like; nothing is saved until you keep it.
preview-keep = Keep in your setups
preview-take = Take parts of it
preview-back = Back to your setup
preview-back-example = Back to the example
preview-kept = Kept in your setups.
preview-left = Your changes were dropped.
link-empty = No link found in that text.
link-truncated = The end of this link is missing. Copy the link itself again, not its shortened text with dots. Your own setups are untouched.
link-newer = This link was made by a newer version of the page. Reload the page while online to update it. Your own setups are untouched.
link-corrupt = This link was altered on the way, or is not a Nightbank link. Ask for it again, or ask for a file. Your own setups are untouched.
kept-blocked = This browser cannot store anything for this page. What you enter is lost when you close it.
kept-not-written = The last changes could not be saved: this browser’s storage is full or blocked. They are lost when you close the page.
kept-newer = A newer version of the page stored your setups here; they are left as they are. Reload the page to update it. Until then, changes are lost when you close the page.
kept-take-along = Save it as a link or a file
kept-beside = The same setup was changed in another tab too. Both versions are kept; the earlier one is now called { $names }.
kept-none = Your list of setups in this browser is empty.
aside-told = Some saved data could not be read. It was set aside unchanged, not deleted.
aside-download = Save it as a file
ios-storage = Browsers on this device delete what a page has stored if you use them for seven days without visiting it. A page on the home screen has its own separate storage. Save a link or a file under More; that is also how you move your setups.
setups-deleted = Deleted: { $name }
setups-full = There is room for 16 setups. Delete one you no longer need, or save it as a file first.
setups-gone = That setup is gone. Another tab may have deleted it.
setup-nameless = Setup without a name
setup-example = Example
setup-outline = { $n ->
    [one] { $n } appliance
   *[other] { $n } appliances
}, { $capacity }
setup-outline-sun = { $peak } of solar
file-added = { $n ->
    [one] Added from the file: { $names }.
   *[other] Added { $n } setups from the file: { $names }.
}
file-no-room = { $n ->
    [one] One more did not fit: { $limit } setups is the limit.
   *[other] { $n } more did not fit: { $limit } setups is the limit.
}
file-ignored = { $n ->
    [one] One field was not recognised and was skipped: { $fields }.
   *[other] { $n } fields were not recognised and were skipped: { $fields }.
}
file-unread = The file could not be read.
file-not-saved = The browser could not create the file.
file-empty = The file is empty.
file-too-large = The file is { $size } MiB; no setup needs more than { $limit } MiB. It was not opened.
file-not-json = The file is damaged or not a Nightbank file: reading stopped at line { $line }, character { $column }. Nothing was imported.
file-other-format = This is not a Nightbank file. Nothing was imported.
file-newer = The file was written by a newer version of the page. Reload the page while online to update it.
file-no-setups = There is no setup in the file.
file-too-many = The file has { $n } setups, which is too many. Nothing was imported.
undo = Undo
toast-close = Dismiss the message
offline-ready = Works offline from now on.
update-ready = A new version is ready.
update-load = Update now
