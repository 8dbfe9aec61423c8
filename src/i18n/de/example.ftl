# Names of the appliances of the example: the rest of the catalogue follows.
app-fridge-compressor-small = Kompressorkühlschrank, 40–60 L
app-heater-diesel = Diesel- oder Benzin-Luftheizung: Gebläse
app-roof-fan = Dachlüfter
app-pump-submersible = Tauchpumpe (Wasser)
app-toilet-flush = Toilettenspülpumpe
app-led-spot = LED-Lampe
app-awning-light = Vorzelt- oder Markisenlicht, LED
app-laptop = Laptop
app-phone = Handy, laden
app-radio = Radio
app-mobile-router = Mobilfunkrouter, 4G/5G
app-control-panel = Bedienpanel, Elektroblock
app-gas-alarm = Gas-, CO- oder Rauchmelder, 12 V
app-alarm-tracker = Alarmanlage und Ortungsgerät
app-usb-socket = USB-Steckdose, nichts eingesteckt
