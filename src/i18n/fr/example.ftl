# Names of the appliances of the example: the rest of the catalogue follows.
app-fridge-compressor-small = Frigo à compression, 40–60 L
app-heater-diesel = Chauffage à air (gazole ou essence) : ventilateur
app-roof-fan = Ventilateur de toit
app-pump-submersible = Pompe à eau immergée
app-toilet-flush = Pompe de chasse d’eau
app-led-spot = Lampe LED
app-awning-light = Éclairage d’auvent, LED
app-laptop = Ordinateur portable
app-phone = Téléphone, recharge
app-radio = Autoradio
app-mobile-router = Routeur mobile, 4G/5G
app-control-panel = Panneau de commande, bloc d’alimentation
app-gas-alarm = Détecteur de gaz, CO ou fumée, 12 V
app-alarm-tracker = Alarme antivol et traceur
app-usb-socket = Prise USB, rien de branché
