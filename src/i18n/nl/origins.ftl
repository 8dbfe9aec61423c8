# Waar de cijfers onder het antwoord vandaan komen, bij aantikken.
origins-hint = Tik op een cijfer om te zien hoe het is berekend.
from-balance = Dit zijn gemiddelden over het hele verblijf, van aankomst tot vertrek, bij gemiddeld weer.
from-total = Zoveel nemen alle apparaten die hieronder aanstaan op een hele dag van deze reis uit de accu, verliezen van de omvormer inbegrepen.
from-sun = Bij nominaal vermogen zouden je panelen ({ $peak }) in dit licht { $light } per dag geven. { $lost } daarvan gaat verloren aan schaduw, glas, warmte, vuil, kabels en de laadregelaar. Nog eens { $unused } komt op momenten dat de accu het niet kan opnemen.
from-sun-snow = Sneeuw op de panelen neemt { $amount } van wat verloren gaat. Dat is geschat naar temperatuur en hellingshoek, als niemand ze veegt. Veeg ze alleen vanaf de grond: klim nooit op een bevroren dak.
from-driving = { $sum } van de motor tijdens het rijden, verdeeld over { $days_n ->
    [one] { $days } dag
   *[other] { $days } dagen
}. Rijtijden stel je in bij ‘Reis’ en ‘Accu’.
from-hook-up = { $sum } van de 230 V-acculader, verdeeld over { $days_n ->
    [one] { $days } dag
   *[other] { $days } dagen
}. Tijden met walstroom stel je in bij ‘Reis’ en ‘Accu’.
from-other = { $sum } uit de andere bronnen bij ‘Accu’, verdeeld over { $days_n ->
    [one] { $days } dag
   *[other] { $days } dagen
}.
from-loads = Wat de apparaten die bij ‘Apparaten’ aanstaan gebruiken, uur voor uur, bij de temperaturen van deze dagen.
from-loads-direct = Rechtstreeks uit de accu: { $amount } per dag.
from-loads-mains = Aan de stopcontacten van de omvormer: { $amount } per dag.
from-inverter-idle = Doordat hij aanstaat: { $amount } per dag.
from-inverter-conversion = Verlies bij het omvormen: { $amount } per dag.
from-electronics = Laadregelaars en accu-elektronica verbruiken { $power }, dag en nacht.
from-heating = Verwarming van de accu: { $amount } per dag.
from-charging = Laadverlies: { $amount } per dag.
from-charging-flooded = Over natte accu’s zijn de bronnen het oneens. Van half tot bijna vol nemen ze 1,1 tot 1,5 Ah op voor elke 1 Ah die erin blijft. Hier geldt 1,3 Ah.
from-resistance = Verlies in de weerstand van de accu: { $amount } per dag.
from-cables = Verlies in de accukabels: { $amount } per dag.
from-self-discharge = Zelfontlading: { $amount } per dag.
from-stored = Bij gemiddeld weer gaat de accu van { $from } bij aankomst naar { $to } bij vertrek: { $sum } in { $days_n ->
    [one] { $days } dag
   *[other] { $days } dagen
}. Een minteken betekent dat de accu meer geeft dan hij krijgt.
from-unused-sun = Wat de panelen hadden kunnen geven als de accu plaats had gehad. Telt niet mee in het totaal.
from-unmet = De accu was toen leeg. Deze energie is nooit geleverd en telt dus niet mee in het totaal.
from-idle = Wat de omvormer verbruikt terwijl hij aanstaat en er niets draait, in de uren die bij ‘Accu’ zijn ingesteld.
from-load = { $how }. Herkomst van het cijfer: { $known }.
from-load-air = Hoe warmer de lucht, hoe langer het draait: { $share } van de tijd op deze dagen.
from-load-inverter = Wat de omvormer daarvoor verbruikt, is inbegrepen.
from-load-standby = Daarvan tussen het gebruik door: { $amount }.
from-load-corrected = Volgens je metingen onderweg verbruik je { $share } van wat er in de lijst staat.
from-load-where = Wijzigen doe je bij ‘Apparaten’.

# Gebruik van een apparaat en herkomst van de waarde, in een paar woorden.
summary-inverter = via omvormer
summary-always = altijd aan
summary-heating = volgt de kou
summary-cooling = volgt de warmte
summary-driving = tijdens het rijden
summary-arrival = { $time } bij aankomst
summary-leaving = { $time } bij vertrek
summary-duty = { $share } van de tijd
summary-charges = { $charge } { $days_n ->
    [one] elke dag
   *[other] eens per { $days } dagen
}
summary-uses = { $times } × { $each }
learned-meter = Gemeten
learned-spec = Gegevensblad
learned-label = Typeplaatje
learned-estimate = Schatting
