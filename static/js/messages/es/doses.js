// Spanish texts of doses and of wash water: what to measure out, and off which label.

export const DOSES = {
  "bottle.other":
    "El lote {lot} es otra botella que la de la etiqueta anotada, lote {label}. Anote la etiqueta de esta en Equipo.",
  "bottle.unread": "No se sabe nada de la etiqueta del lote {lot}. Anótela en Equipo.",
  "bottle.other_short": "Esta dosis es para el lote {label}",
  "bottle.no_label": "Dosis propia de la receta: sin etiqueta anotada",
  "bottle.enter": "anotar etiqueta",
  "label.rennet_dose":
    "La dosis propia de la receta, para cuajo de su fuerza habitual. Anote en Equipo la fuerza que dice la etiqueta.",
  "label.calcium_chloride":
    "La dosis propia de la receta, contada como anhidro. Anote en Equipo lo que dice el envase: anhidro, dihidrato o una disolución.",
  "label.starter_packs":
    "La dosis propia de la receta. Anote en Equipo las unidades del sobre y las que van por litro de leche: la etiqueta dice ambas.",
  "water.first": "Primera agua",
  "water.rest": "Agua que falta",
  "water.enough": "No más agua; echado hasta ahora",
  "water.at_read": "Tan caliente como se leyó el agua",
  "water.at_wanted": "Tan caliente como hace falta: léala primero",
  "water.then_read":
    "Remueva, anote lo echado y lea la cuajada: tocan unos {after}. Pare a {stop}.",
  "water.stop": "Échela despacio, remueva y lea la cuajada. Pare a {stop}.",
  "water.measure":
    "La cuajada está tan caliente como pide este lavado. Mida lo que se echó.",
  "water.whole": "En total {amount}.",
  "water.whole_of":
    "En total {amount}; según lo que pierda la cuba y falle el termómetro, de {low} a {high}.",
  "water.in": "Echado hasta ahora: {amount}.",
  "water.learnt": "El último lavado perdió {loss}: aquí se cuenta.",
  "water.refused":
    "La cuajada ya está bastante caliente, o el agua no lo está más. Lea las dos de nuevo. Tome agua no más caliente que la cuajada; pregunte a quien esté al cargo.",
  "range.recipe": "{range}, el margen de la receta",
  "range.estimate": "{range}, lo segura que es la cifra",
  "range.rule": "{range}, el límite de la norma",
  "range.nine_in_ten": "{range}, nueve de cada diez elaboraciones",
  "range.usual": "{range}, con dosis habituales",
};
