"""How heavy a litre is of what is run off and let in at the vat."""

WATER_KG_L = 0.98320  # kg/L at 60 °C, water. Source: steam tables (IAPWS).
WHEY_KG_L = 1.025  # kg/L, from memory; a litre more or less moves 0.1 K
