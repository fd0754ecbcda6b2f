// The cautions in Spanish.

export const CAUTIONS = {
  "caution.title": "Antes de empezar",
  "caution.before": "Después: {step}",
  "caution.beside.one": "Cuidado: {first}",
  "caution.beside.many": "Cuidado: {n} precauciones",
  "caution.more": "Hay más abajo",
  "caution.read": "Lo he leído",
  "caution.begin": "Leído. Empezar ya",
  "caution.codes":
    "Las normas locales y el procedimiento de su planta están por encima de estas líneas.",
  "line.cautions_seen": "Leídas las precauciones de «{step}»: {what}",
  "line.cautions_seen_only": "Leídas las precauciones: {what}",
  "kind.cautions_seen": "precauciones leídas",

  "caution.scald": "QUEMADURAS",
  "caution.steam": "VAPOR",
  "caution.hot_water": "AGUA CALIENTE",
  "caution.hot_drain": "SALE AGUA CALIENTE",
  "caution.stirrer": "AGITADOR EN MARCHA",
  "caution.blades": "LIRAS CORTANTES",
  "caution.knife": "CUCHILLO",
  "caution.lock_out": "MOTOR ELÉCTRICO",
  "caution.electricity": "ELECTRICIDAD",
  "caution.compressed_air": "AIRE COMPRIMIDO",
  "caution.pinch": "ATRAPAMIENTO",
  "caution.weights": "PESAS",
  "caution.lifting": "CARGA PESADA",
  "caution.wet_floor": "SUELO MOJADO",
  "caution.chemical": "PRODUCTOS QUÍMICOS",
  "caution.coating": "RECUBRIMIENTO",
  "caution.calcium_heat": "SE CALIENTA",
  "caution.frozen_culture": "QUEMADURA POR FRÍO",
  "caution.glycol": "FUGA DE GLICOL",
  "caution.carbon_dioxide": "DIÓXIDO DE CARBONO",
  "caution.ammonia": "AMONÍACO",
  "caution.lye": "SOSA",
  "caution.silver_nitrate": "NITRATO DE PLATA",
  "caution.alone": "A SOLAS DE NOCHE",
  "caution.moving_parts": "PARTES MÓVILES",

  "caution_do.scald":
    "La cuba, su leche y sus tubos queman la piel. Póngase guantes y manguitos.",
  "caution_do.steam": "Abra el vapor despacio. Aparte la cara y las manos.",
  "caution_do.hot_water":
    "Va a entrar agua caliente. Avise antes a quien esté al lado.",
  "caution_do.hot_drain":
    "Aparte manos y pies de la salida de la camisa y de su manguera.",
  "caution_do.stirrer": "Párelo antes de meter la mano. Mangas ceñidas, pelo recogido.",
  "caution_do.blades":
    "Las liras cortan, en marcha o paradas. Bloquee el motor antes de meter la mano.",
  "caution_do.knife":
    "Corte alejándose de la otra mano. Lleve en ella un guante anticorte.",
  "caution_do.lock_out":
    "Apague, bloquee y guarde la llave. Pruebe el mando antes de meter la mano.",
  "caution_do.electricity":
    "Manos secas en enchufes e interruptores. No moje los motores con la manguera.",
  "caution_do.compressed_air":
    "Quite la presión antes de soltar una manguera o meter la mano. No apunte a nadie.",
  "caution_do.pinch": "No ponga los dedos bajo la prensa ni bajo los moldes.",
  "caution_do.weights": "De una en una, sin los dedos debajo. Cuidado con los pies.",
  "caution_do.lifting": "Levante con otra persona o con un polipasto.",
  "caution_do.wet_floor": "El suelo resbala. Quite antes las mangueras.",
  "caution_do.chemical":
    "Póngase gafas y guantes. No mezcle nunca dos productos de limpieza.",
  "caution_do.coating": "Póngase guantes, ventile la sala y siga la etiqueta.",
  "caution_do.calcium_heat":
    "El cloruro de calcio calienta el agua en que se disuelve. Échelo despacio en agua fría, removiendo.",
  "caution_do.frozen_culture":
    "El fermento ultracongelado se pega a la piel y la quema. Use guantes aislantes secos.",
  "caution_do.glycol":
    "Si aquí enfría el glicol, busque fugas: es tóxico y no debe llegar a la leche.",
  "caution_do.carbon_dioxide":
    "Se acumula en una cava cerrada. Ventílela antes. Con mareo o ahogo, salga.",
  "caution_do.ammonia":
    "Si pican los ojos o huele fuerte: salga, cierre la puerta y pida ayuda.",
  "caution_do.lye":
    "La sosa de la titulación quema ojos y piel. Ante una salpicadura, aclare enseguida y largo rato.",
  "caution_do.silver_nitrate":
    "Quema los ojos y ennegrece la piel. Recoja los restos: nada al desagüe.",
  "caution_do.alone":
    "Diga a alguien a qué hora acabará. Lleve un teléfono encima. No levante peso.",
  "caution_do.moving_parts":
    "Pare lo que se mueve antes de meter la mano. Lleve mangas ceñidas.",
};
