# Where the figures below the answer come from, on tap.
origins-hint = Tippe auf eine Zahl, um zu sehen, woher sie kommt.
from-balance = Das sind Mittelwerte über den ganzen Aufenthalt bei durchschnittlichem Wetter, von der Ankunft bis zur Abfahrt.
from-total = So viel nehmen alle unten eingeschalteten Geräte an einem ganzen Tag dieser Reise aus der Batterie, Verluste des Wechselrichters eingeschlossen.
from-sun = Laut Typenschild brächten deine Module ({ $peak }) bei diesem Licht { $light } pro Tag. { $lost } davon gehen durch Schatten, Glas, Hitze, Schmutz, Leitungen und Regler verloren; { $unused } finden in der Batterie keinen Platz.
from-sun-snow = { $amount } des Verlusts kommen vom Schnee auf den Modulen. Das ist nach Temperatur und Neigung geschätzt, wenn niemand sie abkehrt. Kehre sie nur vom Boden aus ab: Steig nie auf ein vereistes Dach.
from-driving = { $sum } vom Motor während der Fahrt, verteilt auf { $days_n ->
    [one] { $days } Tag
   *[other] { $days } Tage
}. Wann du fährst, steht unter „Reise“ und „Batterie“.
from-hook-up = { $sum } vom 230-V-Ladegerät, verteilt auf { $days_n ->
    [one] { $days } Tag
   *[other] { $days } Tage
}. Wann du am Landstrom hängst, steht unter „Reise“ und „Batterie“.
from-other = { $sum } aus den anderen Quellen unter „Batterie“, verteilt auf { $days_n ->
    [one] { $days } Tag
   *[other] { $days } Tage
}.
from-loads = Was die unter „Geräte“ eingeschalteten Geräte brauchen, Stunde für Stunde, bei den Temperaturen dieser Tage.
from-loads-direct = Direkt aus der Batterie: { $amount } pro Tag.
from-loads-mains = An den Steckdosen des Wechselrichters: { $amount } pro Tag.
from-inverter-idle = Allein dafür, dass er eingeschaltet ist: { $amount } pro Tag.
from-inverter-conversion = Verlust beim Umwandeln: { $amount } pro Tag.
from-electronics = Solarladeregler und Batterie-Elektronik nehmen Tag und Nacht { $power } auf.
from-heating = Heizung der Batterie: { $amount } pro Tag.
from-charging = Ladeverluste: { $amount } pro Tag.
from-charging-flooded = Zu nassen Bleibatterien widersprechen sich die Quellen: Von halb bis fast voll brauchen sie 1,1 bis 1,5 Ah für jede gespeicherte Ah. Hier zählen 1,3 Ah.
from-resistance = Verlust im Widerstand der Batterie: { $amount } pro Tag.
from-cables = Verlust in den Kabeln von der Batterie: { $amount } pro Tag.
from-self-discharge = Selbstentladung: { $amount } pro Tag.
from-stored = Von { $from } bei der Ankunft auf { $to } bei der Abfahrt, bei durchschnittlichem Wetter: { $sum } in { $days_n ->
    [one] { $days } Tag
   *[other] { $days } Tagen
}. Ein Minus heißt: Die Batterie gibt mehr ab, als sie bekommt.
from-unused-sun = Was die Module noch hätten liefern können, wenn in der Batterie Platz gewesen wäre. Es gehört nicht zur Summe.
from-unmet = Da war die Batterie leer. Diese Energie wurde nie geliefert und gehört nicht zur Summe.
from-idle = Was der Wechselrichter verbraucht, während er eingeschaltet ist und nichts läuft, in den Stunden, die unter „Batterie“ stehen.
from-load = { $how }. Herkunft des Werts: { $known }.
from-load-air = Je wärmer die Luft, desto länger läuft es: in diesen Tagen { $share } der Zeit.
from-load-inverter = Was der Wechselrichter dafür verbraucht, ist enthalten.
from-load-standby = Davon zwischen den Einsätzen: { $amount }.
from-load-corrected = Nach deinen Messwerten vor Ort verbrauchst du { $share } von dem, was in der Liste steht.
from-load-where = Ändern kannst du das unter „Geräte“.

# How a load is used and known, in a few words.
summary-inverter = über Wechselrichter
summary-always = immer an
summary-heating = je nach Kälte
summary-cooling = je nach Wärme
summary-driving = während der Fahrt
summary-arrival = { $time } bei Ankunft
summary-leaving = { $time } bei Abfahrt
summary-duty = { $share } der Zeit
summary-charges = { $charge } { $days_n ->
    [one] jeden Tag
   *[other] alle { $days } Tage
}
summary-uses = { $times } × { $each }
learned-meter = Gemessen
learned-spec = Datenblatt
learned-label = Typenschild
learned-estimate = Geschätzt
