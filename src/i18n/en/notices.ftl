# Told on any part of the page: setups, links, files and storage.
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
kept-not-written = The last changes could not be stored: this browser’s storage is full or refuses. They last until you close the page.
kept-newer = What is stored here was written by a newer version of the page and is left as it is. Load the page again to update it; until then changes last until you close the page.
kept-take-along = Take it along as a link or a file
kept-beside = The same setup was changed in another tab too. Both versions are kept; the earlier one is now called { $names }.
aside-told = Something stored here could not be read. It was set aside as it is, not erased.
aside-download = Save it as a file
ios-storage = Browsers on this device erase what a page stored after seven days of use without a visit, and a page on the home screen has a storage of its own. Save a link or a file under More: that is also the way to move your setups.
setups-deleted = { $name } is deleted.
setups-full = There is room for 16 setups. Delete one you no longer need, or save it as a file first.
setups-gone = That setup is gone; perhaps another tab deleted it.
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
file-too-large = The file has { $size } MiB; no setup needs more than { $limit }. It was not opened.
file-not-json = The file is damaged or of another kind: reading stopped at line { $line }, character { $column }. Nothing was taken from it.
file-other-format = This is not a file of Nightbank. Nothing was taken from it.
file-newer = The file was written by a newer version of the page. Load the page again while online to update it.
file-no-setups = There is no setup in the file.
file-too-many = The file has { $n } setups, more than one file may hold. Nothing was taken from it.
file-wrong-value = Setup { $n } of the file has a value of the wrong kind ({ $why }). Nothing was taken from it.
undo = Undo
toast-close = Dismiss the message
offline-ready = Stored on this device: the page now works without a network.
update-ready = A new version is ready.
update-load = Load it now
