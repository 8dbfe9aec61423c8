# Told on any part of the page: setups, links, files and storage.
notice-close = Sluiten
notice-understood = Begrepen
adjusted = { $n ->
    [one] Eén waarde lag buiten de grenzen en is bijgesteld.
   *[other] { $n } waarden lagen buiten de grenzen en zijn bijgesteld.
}
misfits = { $n ->
    [one] Eén waarde kon niet worden gelezen. Die is weggelaten of vervangen door de gebruikelijke: { $where }. Controleer die even.
   *[other] { $n } waarden konden niet worden gelezen. Ze zijn weggelaten of vervangen door gebruikelijke: { $where }. Controleer ze even.
}
misfit-part = { $part ->
    [name] Naam
    [vehicle] Voertuig
    [loads] Apparaten
    [bank] Accu
    [inverter] Omvormer
    [solar] Zonnepanelen
    [driving] Laden tijdens het rijden
    [hook_up] Walstroom
    [other] Andere bronnen
    [trip] Reis
    [prices] Prijzen en gewichten
    [readings] Metingen onderweg
    [correction] Wat de metingen zeggen
    [cables] Kabels
   *[setup] Configuratie
}
preview-told = Je bekijkt een configuratie uit een link: { $name }.
preview-safe = Je eigen configuraties blijven ongewijzigd. Probeer wat je wilt; er wordt niets opgeslagen tot je het bewaart.
preview-keep = Bewaren bij mijn configuraties
preview-take = Delen overnemen
preview-back = Terug naar mijn configuratie
preview-back-example = Terug naar het voorbeeld
preview-kept = Bewaard bij je configuraties.
preview-left = Wijzigingen vervallen.
link-empty = Geen link gevonden in die tekst.
link-truncated = Het einde van deze link ontbreekt. Kopieer de link zelf nog eens, niet de ingekorte tekst met puntjes. Je eigen configuraties zijn ongewijzigd.
link-newer = Deze link is gemaakt met een nieuwere versie van de pagina. Laad de pagina opnieuw terwijl je online bent om bij te werken. Je eigen configuraties zijn ongewijzigd.
link-corrupt = Deze link is onderweg veranderd, of is geen Nightbank-link. Vraag hem opnieuw, of vraag om een bestand. Je eigen configuraties zijn ongewijzigd.
kept-blocked = Deze browser kan niets opslaan voor deze pagina. Wat je invult, ben je kwijt als je de pagina sluit.
kept-not-written = De laatste wijzigingen konden niet worden opgeslagen: de opslag van deze browser is vol of geblokkeerd. Je bent ze kwijt als je de pagina sluit.
kept-newer = Een nieuwere versie van de pagina heeft je configuraties hier opgeslagen; ze blijven zoals ze zijn. Laad de pagina opnieuw om bij te werken. Tot die tijd ben je wijzigingen kwijt als je de pagina sluit.
kept-take-along = Opslaan als link of bestand
kept-beside = Dezelfde configuratie is ook in een ander tabblad gewijzigd. Beide versies zijn bewaard; de oudere heet nu { $names }.
kept-none = Je lijst met configuraties in deze browser is leeg.
aside-told = Sommige opgeslagen gegevens konden niet worden gelezen. Ze zijn ongewijzigd apart gezet, niet gewist.
aside-download = Opslaan als bestand
ios-storage = Browsers op dit toestel wissen wat een pagina heeft opgeslagen als je die zeven gebruiksdagen lang niet bezoekt. Een pagina op het beginscherm heeft een eigen, aparte opslag. Sla bij ‘Meer’ een link of een bestand op: zo neem je je configuraties ook mee naar een ander toestel.
setups-deleted = Verwijderd: { $name }
setups-full = Er is plaats voor 16 configuraties. Verwijder er een die je niet meer nodig hebt, of sla die eerst op als bestand.
setups-gone = Die configuratie is er niet meer. Misschien is die in een ander tabblad verwijderd.
setup-nameless = Configuratie zonder naam
setup-example = Voorbeeld
setup-outline = { $n ->
    [one] { $n } apparaat
   *[other] { $n } apparaten
}, { $capacity }
setup-outline-sun = { $peak } aan panelen
file-added = { $n ->
    [one] Toegevoegd uit het bestand: { $names }.
   *[other] { $n } configuraties toegevoegd uit het bestand: { $names }.
}
file-no-room = { $n ->
    [one] Eén configuratie paste er niet meer bij: het maximum is { $limit }.
   *[other] { $n } configuraties pasten er niet meer bij: het maximum is { $limit }.
}
file-ignored = { $n ->
    [one] Eén veld is niet herkend en overgeslagen: { $fields }.
   *[other] { $n } velden zijn niet herkend en overgeslagen: { $fields }.
}
file-unread = Het bestand kon niet worden gelezen.
file-not-saved = De browser kon het bestand niet maken.
file-empty = Het bestand is leeg.
file-too-large = Het bestand is { $size } MiB; geen configuratie heeft meer dan { $limit } MiB nodig. Het is niet geopend.
file-not-json = Het bestand is beschadigd of geen Nightbank-bestand: het lezen stopte bij regel { $line }, teken { $column }. Er is niets overgenomen.
file-other-format = Dit is geen Nightbank-bestand. Er is niets overgenomen.
file-newer = Het bestand is gemaakt met een nieuwere versie van de pagina. Laad de pagina opnieuw terwijl je online bent om bij te werken.
file-no-setups = Er staat geen configuratie in het bestand.
file-too-many = Het bestand bevat { $n } configuraties; dat is te veel. Er is niets overgenomen.
undo = Ongedaan maken
toast-close = Melding sluiten
offline-ready = Werkt nu ook offline.
update-ready = Er staat een nieuwe versie klaar.
update-load = Nu bijwerken
