# Names of the appliances of the example: the rest of the catalogue follows.
app-fridge-compressor-small = Compressorkoelkast, 40–60 L
app-heater-diesel = Diesel- of benzinekachel: ventilator
app-roof-fan = Dakventilator
app-pump-submersible = Dompelpomp (water)
app-toilet-flush = Spoelpomp toilet
app-led-spot = Ledlamp
app-awning-light = Luifelverlichting, led
app-laptop = Laptop
app-phone = Telefoon, laden
app-radio = Autoradio
app-mobile-router = Mobiele router, 4G/5G
app-control-panel = Bedieningspaneel, elektroblok
app-gas-alarm = Gas-, CO- of rookmelder, 12 V
app-alarm-tracker = Inbraakalarm en tracker
app-usb-socket = Usb-aansluiting, niets erin
