// Spanish texts of the milk: how it is treated, what it is, what follows.

export const MILK = {
  "option.title": "¿Por qué vía sigue?",
  "option.detail": "Aquí la receta deja elegir",
  "option.usual": "Lo usual de la receta",
  "option.later": "Decidir en el paso",
  "option.later_means":
    "Las dos vías quedan abiertas; decide el paso que empiece primero.",
  "treat.choose": "¿Cómo se trata la leche?",
  "treat.usual": "{treatment} · lo usual aquí",
  "treat.other": "{treatment}",
  "treat.means.pasteurised":
    "Se retiene según la norma, con el gráfico. Solo cuenta si sus lecturas cumplen la norma.",
  "treat.means.heat_treated":
    "Se retiene según cifras propias, sin pretender pasteurizar. El queso cura sus días.",
  "treat.means.raw":
    "Se templa para cuajar, nunca se retiene caliente. El queso cura sus días.",
  "treat.change": "Cambiar el tratamiento",
  "treat.to": "Cambiar el tratamiento: {treatment}",
  "treat.to_do": "Cambiarlo",
  "treat.route":
    "Los pasos pasan a ser los del otro camino. Todo lo anotado queda en el registro. Una palabra cambia los pasos, nunca la leche.",
  "treat.after_hold":
    "La retención terminó: lo que la leche es lo dicen sus lecturas, no esta palabra.",
  "treat.refused.milk_was_heated":
    "La leche se retuvo caliente desde las {at} y ya no es cruda. Elija tratada con calor.",
  "milk.line": "Elegido: {treatment}. Por ahora: {is}.",
  "milk.is.pasteurised": "según sus lecturas cuenta como pasteurizada",
  "milk.is.heat_treated": "tratada con calor, sin pasteurizar",
  "milk.is.raw": "cruda",
  "milk.is.undecided": "sin decidir; trátela como sin pasteurizar",
  "milk.why.chosen_raw": "En este camino nunca se retiene caliente.",
  "milk.why.was_heated":
    "Se retuvo caliente antes de llamarla cruda: está tratada con calor.",
  "milk.why.no_hold":
    "La receta no tiene ningún paso que retenga la leche caliente: nada muestra lo que es.",
  "milk.why.chosen_heat_treated":
    "Las cifras propias no pasteurizan la leche, digan lo que digan las lecturas.",
  "milk.why.hold_skipped": "La retención se saltó: está como llegó.",
  "milk.why.hold_awaited": "La retención no ha empezado.",
  "milk.why.hold_running": "La retención está en marcha.",
  "milk.why.no_rule": "La norma de su retención no se conoce aquí.",
  "milk.why.hold_met": "Las lecturas de la retención cumplen la norma.",
  "milk.why.hold_not_met": "Las lecturas de la retención no cumplen la norma.",
  "milk.why.hold_not_assessed":
    "Las lecturas de la retención no se pueden evaluar: el paso dice por qué.",
  "milk.why.phosphatase_positive": "La prueba de fosfatasa es positiva.",
  "milk.why.own_hold_met":
    "Las lecturas cumplen las cifras propias de la receta, que no pasteurizan la leche.",
  "milk.why.own_hold_not_met":
    "Las lecturas quedan por debajo de las cifras propias de la receta.",
  "milk.why.own_hold_not_assessed":
    "Hay muy pocas lecturas para compararlas con las cifras de la receta.",
  "milk.chosen": "Lo eligió {name}, {at}.",
  "milk.changed": "Lo cambió {name}, {at}: {why}",
  "milk.follows": "Lo que se sigue",
  "milk.curing": "Curado: al menos {n} días a {f}\u00a0°F ({c}\u00a0°C) o más.",
  "milk.no_curing": "Curado: la leche no pide días; vale el tiempo de la receta.",
  "milk.by": "Según {section}.",
  "milk.from_memory": "{section}, sin confirmar: consúltelo.",
  "milk.own_word": "Palabra de esta casa, por acordar con su inspector.",
  "milk.test": "Análisis: {test}, {when}.",
  "milk.test.staph_counts": "estafilococos coagulasa positivos",
  "milk.test.listeria": "Listeria monocytogenes",
  "milk.test.salmonella": "Salmonella",
  "milk.test.cheese_phosphatase": "fosfatasa",
  "milk.when.when_counts_are_highest": "cuando se esperan los recuentos más altos",
  "milk.when.before_it_leaves_the_maker": "antes de que el queso salga de la quesería",
  "milk.when.in_the_cheese": "en el queso",
  "milk.label": "En la etiqueta: {words}.",
  "label.pasteurised": "puede decir leche pasteurizada",
  "label.heat_treated": "nunca la palabra pasteurizada; leche tratada con calor",
  "label.raw": "elaborado con leche cruda",
  "label.undecided": "aún ninguna; nunca la palabra pasteurizada mientras esté abierto",
  "milk.release": "Liberar: al menos {role}.",
  "milk.decides":
    "Deciden el gráfico, su plan y su inspector. Aquí está la norma como se leyó.",
  "record.other_route":
    "De otro modo de tratar la leche: no lleva a nada en esta elaboración",
  "record.no_route":
    "La receta no tiene ese camino: no lleva a nada en esta elaboración",
  "hold.meets_own": "CUMPLEN LAS CIFRAS PROPIAS",
  "hold.misses_own": "POR DEBAJO DE LAS CIFRAS PROPIAS",
  "hold.own": "Cifras propias de la receta, sin pretender pasteurizar",
  "hold.gap_of_own": "Dos lecturas cuentan juntas si las separan como mucho {span}.",
  "hold.own_decides":
    "La leche no cuenta como pasteurizada, digan lo que digan estas lecturas.",
  "of.own_hold": "cifras propias",
  "sum.store_time": "Tiempo en la cava",
  "in.store_own_days": "El tiempo de la receta",
  "in.milk_is": "La leche está",
  "pick.milk_is.pasteurised": "Pasteurizada",
  "pick.milk_is.heat_treated": "Tratada con calor, sin pasteurizar",
  "pick.milk_is.raw": "Cruda",
  "pick.milk_is.undecided": "Sin decidir",
  "out.store_s": "En la cava",
  "is.not_asked": "no se piden",
  "note.curing_not_asked": "De leche pasteurizada no se piden días de curado.",
  "note.store_by_recipe": "Decide el tiempo de la receta.",
  "note.store_by_curing":
    "No consta que la leche esté pasteurizada: deciden los días de curado. Cuentan desde los moldes.",
  "store.not_asked": "La leche no pide días de curado.",
  "figure_name.heat_treated": "Leche tratada con calor",
  "figure_name.pasteurised": "Leche pasteurizada",
  "figure_name.raw": "Leche cruda",
  "figure_name.temp": "Leche",
  "figure_name.air_rise": "Aire sobre la leche, más caliente en",
  "figure_name.F": "En °F",
  "figure_name.C": "En °C",
  "figure_name.gap_max_s": "Entre dos lecturas, como mucho",
};
