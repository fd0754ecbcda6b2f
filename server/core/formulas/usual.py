"""Figures that stand in until a make is measured; each has one home, here."""

# Mass of whey in milk. Source: practice, 89 kg of 100 kg.
WHEY_FRAC = 0.89
# Water with its lactose in milk. Source: derived, 94 kg of 100 kg.
AQUEOUS_FRAC = 0.94
# Moisture of a washed-curd wheel out of the press. Source: practice, 0.42 to 0.46.
PRESSED_MOISTURE_FRAC = 0.44
PRESSED_MOISTURE_LOW_FRAC, PRESSED_MOISTURE_HIGH_FRAC = 0.42, 0.46
