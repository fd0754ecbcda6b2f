// Why a formula refuses, after the field and its value, in French: keyed by the core's
// words with {} for each figure. {1} is the first figure, {u1} the same in the field's unit.

export const REASONS = {
  "all on one day, {}": "toutes du même jour, {1}",
  "and moisture_frac {} are more than the whole cheese":
    "avec l’humidité, {u1}, c’est plus que tout le fromage",
  "and on do not move to {}": "à partir d’ici rien ne va vers {u1}",
  "are fewer than {}": "moins de {1} au total",
  "are not between {} and {}": "aucun entre {u1} et {u2}",
  "between {} and {}: {} and {}": "sans solution entre {1} et {2}\u00a0: {3} et {4}",
  "cannot be reached by adding {}": "hors d’atteinte en ajoutant {u1}",
  "cannot be reached with what is added": "hors d’atteinte avec ce qui est ajouté",
  "do not fall with dose": "ne baisse pas avec la dose",
  "do not pair {} times": "ne forment pas de paires avec {1} heures",
  "equals the first": "égal au premier",
  "found between {} and {}": "sans solution entre {1} et {2}",
  "gives more than 1000 blocks": "donne plus de 1000 blocs",
  "gives more than 2000 plans": "donne plus de 2000 répartitions",
  "has no make": "sans aucune fabrication",
  "is above saturation {} at {} C": "au-dessus de la saturation, {u1}, à {2} °C",
  "is above {}": "au plus {u1}",
  "is above {} before it": "remonte depuis {u1}, la valeur d’avant",
  "is above {}, that of saturated brine at {} C":
    "au-dessus de {u1}, la saumure saturée à {2} °C",
  "is at or beyond the jacket, {}": "atteint ou dépasse la double enveloppe, {u1}",
  "is before start_ms {}": "avant le début",
  "is before the one above it": "avant la ligne précédente",
  "is before {}": "avant {u1}",
  "is below 0": "en dessous de 0",
  "is below absolute zero, -273.15 C": "sous le zéro absolu, −273,15 °C",
  "is below {}": "au moins {u1}",
  "is below {}, that of water at {} C": "en dessous de {u1}, l’eau à {2} °C",
  "is below {}, which the dead weight gives by itself":
    "en dessous de {1}, que donne déjà le poids mort",
  "is beyond the jacket, {}": "au-delà de la double enveloppe, {u1}",
  "is no input of {}": "pas demandé par ce calcul",
  "is none of the sums'": "aucun calcul ne le demande",
  "is not F or C": "il faut °F ou °C",
  "is not a figure of the yield": "pas un chiffre du rendement",
  "is not a finite number": "pas un nombre fini",
  "is not a known unit": "unité inconnue",
  "is not a number": "pas un nombre",
  "is not a whole number": "il faut un nombre entier",
  "is not above {}": "il faut plus de {u1}",
  "is not after {}": "il faut que ce soit après {u1}",
  "is not anhydrous or dihydrate": "il faut anhydre ou dihydraté",
  "is not below the water phase, {}": "il faut moins que la phase aqueuse, {u1}",
  "is not below the water, {}": "il faut moins que l’eau, {u1}",
  "is not below {}": "il faut moins de {u1}",
  "is not below {}, all that this brine can give":
    "il faut moins de {u1}, tout ce que donne cette saumure",
  "is not between the vat, {}, and the water, {}":
    "il faut une valeur entre la cuve, {u1}, et l’eau, {u2}",
  "is not between {} and {}, which the curve only nears":
    "il faut une valeur entre {u1} et {u2}, dont la courbe ne fait que s’approcher",
  "is not vat or flow": "il faut cuve ou flux",
  "is too far below dry_c {} for any air": "trop en dessous du thermomètre sec, {u1}",
  "is where this starter does not grow": "à cette température le ferment ne pousse pas",
  "is {}, not {}": "cette unité ne va pas ici",
  "leaves nothing dry beside the moisture, {}":
    "ne laisse rien de sec à côté de l’humidité, {u1}",
  "lies away from the jacket, {}": "à l’opposé de la double enveloppe, {u1}",
  "missing from the figures": "manque",
  "moisture_frac 1 leaves no cheese": "ne laisse pas de fromage",
  "never falls from {}": "ne descend jamais de {u1}",
  "takes {} kg, more than the whey left, {}":
    "retire {1} kg, plus que le lactosérum qui reste, {2} kg",
  "would take water of {} C, not liquid":
    "il faudrait de l’eau à {1} °C, qui n’est pas liquide",
};
