// Why a formula refuses, after the field and its value, in Spanish: keyed by the core's
// words with {} for each figure. {1} is the first figure, {u1} the same in the field's unit.

export const REASONS = {
  "all on one day, {}": "todas del mismo día, {1}",
  "and moisture_frac {} are more than the whole cheese":
    "con la humedad, {u1}, es más que el queso entero",
  "and on do not move to {}": "desde aquí no va hacia {u1}",
  "are fewer than {}": "son menos de {1}",
  "are not between {} and {}": "ninguno entre {u1} y {u2}",
  "between {} and {}: {} and {}": "sin solución entre {1} y {2}: {3} y {4}",
  "cannot be reached by adding {}": "no se alcanza añadiendo {u1}",
  "cannot be reached with what is added": "no se alcanza con lo que se añade",
  "do not fall with dose": "no bajan con la dosis",
  "do not pair {} times": "no se emparejan con {1} horas",
  "equals the first": "igual al primero",
  "found between {} and {}": "sin solución entre {1} y {2}",
  "gives more than 1000 blocks": "da más de 1000 bloques",
  "gives more than 2000 plans": "da más de 2000 repartos",
  "has no make": "sin ninguna elaboración",
  "is above saturation {} at {} C": "pasa de la saturación, {u1}, a {2} °C",
  "is above {}": "como mucho {u1}",
  "is above {} before it": "sube desde {u1}, el valor anterior",
  "is above {}, that of saturated brine at {} C":
    "por encima de {u1}, la salmuera saturada a {2} °C",
  "is at or beyond the jacket, {}": "llega a la camisa o la pasa, {u1}",
  "is before start_ms {}": "antes del comienzo",
  "is before the one above it": "antes que la fila anterior",
  "is before {}": "antes de {u1}",
  "is below 0": "por debajo de 0",
  "is below absolute zero, -273.15 C": "por debajo del cero absoluto, −273,15 °C",
  "is below {}": "al menos {u1}",
  "is below {}, that of water at {} C": "por debajo de {u1}, el agua a {2} °C",
  "is below {}, which the dead weight gives by itself":
    "por debajo de {1}, que ya da el peso muerto",
  "is beyond the jacket, {}": "más allá de la camisa, {u1}",
  "is no input of {}": "no se pide en este cálculo",
  "is none of the sums'": "no se pide en ningún cálculo",
  "is not F or C": "tiene que ser °F o °C",
  "is not a figure of the yield": "no es una cifra del rendimiento",
  "is not a finite number": "no es un número finito",
  "is not a known unit": "unidad desconocida",
  "is not a number": "no es un número",
  "is not a whole number": "tiene que ser un número entero",
  "is not above {}": "tiene que ser más de {u1}",
  "is not after {}": "tiene que ir después de {u1}",
  "is not anhydrous or dihydrate": "tiene que ser anhidro o dihidrato",
  "is not below the water phase, {}": "tiene que ser menos que la fase acuosa, {u1}",
  "is not below the water, {}": "tiene que estar por debajo del agua, {u1}",
  "is not below {}": "tiene que ser menos de {u1}",
  "is not below {}, all that this brine can give":
    "tiene que ser menos de {u1}, todo lo que da esta salmuera",
  "is not between the vat, {}, and the water, {}":
    "tiene que estar entre la cuba, {u1}, y el agua, {u2}",
  "is not between {} and {}, which the curve only nears":
    "tiene que estar entre {u1} y {u2}, a los que la curva solo se acerca",
  "is not vat or flow": "tiene que ser cuba o flujo",
  "is too far below dry_c {} for any air":
    "demasiado por debajo del termómetro seco, {u1}",
  "is where this starter does not grow": "a esta temperatura el fermento no crece",
  "is {}, not {}": "esta unidad no vale aquí",
  "leaves nothing dry beside the moisture, {}":
    "no deja nada seco junto a la humedad, {u1}",
  "lies away from the jacket, {}": "queda del lado contrario a la camisa, {u1}",
  "missing from the figures": "falta",
  "moisture_frac 1 leaves no cheese": "no deja queso",
  "never falls from {}": "nunca baja de {u1}",
  "takes {} kg, more than the whey left, {}":
    "saca {1} kg, más que el suero que queda, {2} kg",
  "would take water of {} C, not liquid":
    "haría falta agua a {1} °C, que no es líquida",
};
