# Appliances.
