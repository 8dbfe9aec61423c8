# Waar de cijfers onder het antwoord vandaan komen, bij aantikken.
origins-hint = Tik op een cijfer om te zien waar het vandaan komt.
from-balance = Hier zijn het gemiddelden over het verblijf bij gemiddeld weer, van aankomst tot vertrek.
from-total = Hier is het wat alles wat hieronder aan staat op een hele dag van deze reis uit de accu neemt, de verliezen van de omvormer inbegrepen.
from-sun = { $peak } aan panelen; het licht erop zou volgens hun typeplaatje { $light } per dag geven. { $lost } daarvan gaat verloren aan schaduw, glas, warmte, vuil, draden en de regelaar; { $unused } vindt geen plaats in de accu.
from-driving = { $sum } van de motor tijdens het rijden, verdeeld over { $days_n ->
    [one] { $days } dag
   *[other] { $days } dagen
}. Wanneer je rijdt staat bij ‘Reis’ en ‘Stroom’.
from-hook-up = { $sum } van de netlader, verdeeld over { $days_n ->
    [one] { $days } dag
   *[other] { $days } dagen
}. Wanneer je aan de walstroom staat, staat bij ‘Reis’ en ‘Stroom’.
from-other = { $sum } uit de andere bronnen bij ‘Stroom’, verdeeld over { $days_n ->
    [one] { $days } dag
   *[other] { $days } dagen
}.
from-loads = Wat de apparaten die bij ‘Apparaten’ aan staan gebruiken, uur na uur, in de lucht van deze dagen.
from-loads-direct = Rechtstreeks uit de accu: { $amount } per dag.
from-loads-mains = Op de stopcontacten van de omvormer: { $amount } per dag.
from-inverter-idle = Omdat hij aan staat, wat er ook draait: { $amount } per dag.
from-inverter-conversion = Bij het omvormen voor wat draait: { $amount } per dag.
from-electronics = Zonneregelaars en accu-elektronica nemen { $power }, dag en nacht.
from-heating = Verwarming van de accu: { $amount } per dag.
from-charging = Bij het laden: { $amount } per dag.
from-charging-flooded = Over natte accu’s zijn de bronnen het oneens: van half tot bijna vol nemen ze 1,1 tot 1,5 Ah op voor elke 1 Ah die erin blijft. Hier telt 1,3 Ah.
from-resistance = In de weerstand van de accu: { $amount } per dag.
from-cables = In de kabels vanaf de accu: { $amount } per dag.
from-self-discharge = Door zelfontlading: { $amount } per dag.
from-stored = Van { $from } bij aankomst naar { $to } bij vertrek, bij gemiddeld weer: { $sum } in { $days_n ->
    [one] { $days } dag
   *[other] { $days } dagen
}. Onder nul geeft de accu meer dan hij krijgt.
from-unused-sun = Wat de panelen hadden kunnen geven als de accu het had genomen. Het hoort niet bij de som.
from-unmet = Toen was de accu leeg. Het is nooit geleverd en hoort niet bij de som.
from-idle = Wat de omvormer neemt terwijl hij aan staat en er niets draait, in de uren die bij ‘Stroom’ staan.
from-load = { $how }. Waar de waarde vandaan komt: { $known }.
from-load-air = Hoe warmer de lucht, hoe langer het draait: deze dagen { $share } van de tijd.
from-load-inverter = Wat de omvormer onderweg verliest, zit erin.
from-load-standby = Daarvan tussen het gebruik door: { $amount }.
from-load-corrected = Je aflezingen ter plaatse brengen je verbruik op { $share } van de lijst.
from-load-where = Je wijzigt het bij ‘Apparaten’.

# Gebruik van een apparaat en herkomst van de waarde, in een paar woorden.
summary-inverter = via omvormer
summary-always = altijd aan
summary-heating = naar de kou
summary-cooling = naar de warmte
summary-driving = tijdens het rijden
summary-duty = { $share } van de tijd
summary-charges = { $charge } { $days_n ->
    [one] eens per { $days } dag
   *[other] eens per { $days } dagen
}
summary-uses = { $times } keer { $each }
learned-meter = Gemeten
learned-spec = Gegevensblad
learned-label = Typeplaatje
learned-estimate = Geschat
