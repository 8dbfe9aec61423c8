# Told on any part of the page: setups, links, files and storage.
notice-close = Sluiten
notice-understood = Begrepen
adjusted = { $n ->
    [one] Eén waarde lag buiten de grenzen en is bijgesteld.
   *[other] { $n } waarden lagen buiten de grenzen en zijn bijgesteld.
}
preview-told = Je bekijkt een configuratie uit een link: { $name }.
preview-safe = Je eigen configuraties blijven ongemoeid. Probeer wat je wilt; er wordt niets van opgeslagen tot je het bewaart.
preview-keep = Bewaren bij die van mij
preview-back = Terug naar die van mij
preview-back-example = Terug naar het voorbeeld
preview-kept = Bewaard bij je configuraties.
preview-left = Je hebt de configuratie uit de link verlaten, met je wijzigingen erin.
link-empty = Daar zit geen link in.
link-truncated = Het einde van deze link ontbreekt. Kopieer de link zelf nog eens, niet de ingekorte tekst met puntjes. Aan je eigen gegevens is niets veranderd.
link-newer = Deze link is gemaakt met een nieuwere versie van de pagina. Laad de pagina opnieuw terwijl je online bent om bij te werken. Aan je eigen gegevens is niets veranderd.
link-corrupt = Deze link is onderweg veranderd, of hoort niet bij deze pagina. Vraag hem nog eens, of vraag om het bestand. Aan je eigen gegevens is niets veranderd.
kept-blocked = Deze browser bewaart niets voor deze pagina. Wat je invult, blijft alleen staan tot je de pagina sluit.
kept-not-written = De laatste wijzigingen konden niet worden opgeslagen: de opslag van deze browser is vol of weigert. Ze blijven staan tot je de pagina sluit.
kept-newer = Wat hier is opgeslagen, komt van een nieuwere versie van de pagina en blijft zoals het is. Laad de pagina opnieuw om bij te werken; tot dan blijven wijzigingen alleen staan tot je de pagina sluit.
kept-take-along = Meenemen als link of bestand
kept-beside = Dezelfde configuratie is ook in een ander tabblad gewijzigd. Beide versies zijn bewaard; de eerdere heet nu { $names }.
aside-told = Iets wat hier was opgeslagen, kon niet worden gelezen. Het is ongewijzigd apart gezet, niet gewist.
aside-download = Opslaan als bestand
ios-storage = Browsers op dit toestel wissen wat een pagina heeft opgeslagen na zeven dagen gebruik zonder bezoek, en een pagina op het beginscherm heeft een eigen opslag. Sla bij Meer een link of een bestand op: zo neem je je configuraties ook mee naar elders.
setups-deleted = { $name } is verwijderd.
setups-full = Er is plaats voor 16 configuraties. Verwijder er een die je niet meer nodig hebt, of bewaar hem eerst als bestand.
setups-gone = Die configuratie is weg; misschien is hij in een ander tabblad verwijderd.
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
    [one] Voor nog een was geen plaats: { $limit } configuraties is het maximum.
   *[other] Voor nog { $n } was geen plaats: { $limit } configuraties is het maximum.
}
file-ignored = { $n ->
    [one] Eén veld is hier onbekend en is weggelaten: { $fields }.
   *[other] { $n } velden zijn hier onbekend en zijn weggelaten: { $fields }.
}
file-unread = Het bestand kon niet van het toestel worden gelezen.
file-not-saved = De browser wilde er geen bestand van maken.
file-empty = Het bestand is leeg.
file-too-large = Het bestand is { $size } MiB groot; geen configuratie heeft meer dan { $limit } nodig. Het is niet geopend.
file-not-json = Het bestand is beschadigd of van een andere soort: het lezen stopte bij regel { $line }, teken { $column }. Er is niets uit overgenomen.
file-other-format = Dit is geen bestand van Nightbank. Er is niets uit overgenomen.
file-newer = Het bestand komt van een nieuwere versie van de pagina. Laad de pagina opnieuw terwijl je online bent om bij te werken.
file-no-setups = Er zit geen configuratie in het bestand.
file-too-many = Het bestand bevat { $n } configuraties, meer dan er in één bestand mogen zitten. Er is niets uit overgenomen.
file-wrong-value = Configuratie { $n } in het bestand bevat een waarde van de verkeerde soort. Er is niets uit overgenomen.
undo = Terugdraaien
toast-close = Melding sluiten
offline-ready = Opgeslagen op dit toestel: de pagina werkt nu ook zonder internet.
update-ready = Er staat een nieuwe versie klaar.
update-load = Nu laden
