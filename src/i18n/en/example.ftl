# Names of the appliances of the example: the rest of the catalogue follows.
app-fridge-compressor-small = Compressor fridge, 40–60 L
app-heater-diesel = Diesel or petrol air heater: fan
app-roof-fan = Roof fan
app-pump-submersible = Water pump, submersible
app-toilet-flush = Toilet flush pump
app-led-spot = LED lamp
app-awning-light = Awning light, LED
app-laptop = Laptop
app-phone = Phone, charging
app-radio = Radio, head unit
app-mobile-router = Mobile router, 4G/5G
app-control-panel = Control panel, power unit
app-gas-alarm = Gas, CO or smoke alarm, 12 V
app-alarm-tracker = Burglar alarm and tracker
app-usb-socket = USB socket, nothing plugged in
