// Spanish texts of what the creamery has: the keys of en/equipment.js, in its order.

export const EQUIPMENT = {
  "kind.equipment_set": "equipo",
  "line.equipment_set": "Equipo: {what} {value}",
  "line.equipment_agreed": "Equipo: {what} {value}, acordado con {name}",
  "field.key": "La fila",
  "field.agreed_with": "Con quién se acordó",
  "field.equipment": "El equipo",
  "from.equipment": "equipo",
  "problem.agreed_with_missing": "{field}: falta con quién se acordó.",

  "equip.title": "Equipo",
  "equip.row_detail": "Prensa, cuajada, gráfico: lo que piden los cálculos",
  "equip.none": "Aún nada anotado",
  "equip.none_detail":
    "Prensa, cuajada, gráfico: se pide una vez y luego solo se confirma",
  "equip.as_in": "Como en {name}, {day}",
  "equip.as_elsewhere": "Como en {name}, {day}, salvo lo que es de otra cuba",
  "equip.left_out": "No se toma: {why}",
  "equip.lead_new":
    "No hay que rellenar nada. Queda con la elaboración y se ofrece para la próxima.",
  "equip.lead_make":
    "Un cambio cuenta desde ahora en esta elaboración, y se ofrece para la próxima.",
  "equip.open": "anotar",
  "equip.vats": "Cubas de elaboraciones anteriores",
  "equip.has": "{what} {value}",
  "equip.more": "{n} más",
  "equip.gap": "hueco {value} acordado con {name}",
  "equip.agreed": "Acordado con {name}",
  "equip.agreed_with": "¿Con quién se acordó?",
  "equip.agreed_lead":
    "{value} entre dos lecturas solo cuenta si lo dice el inspector o la autoridad. El nombre queda en el registro.",
  "equip.keep": "Guardar desde ahora: {list}",
  "equip.keep_vat": "Guardar para esta cuba: {list}",
  "equip.say_who": "{what}: diga quién lo acordó",
  "equip.saved": "{what}: guardado",

  "equip_group.vat": "Cuba y calor",
  "equip_group.heat_record": "Registro del tratamiento térmico",
  "equip_group.instruments": "Termómetros y pruebas",
  "equip_group.rennet": "Cuajo y fermentos",
  "equip_group.press": "Prensa y moldes",
  "equip_group.bed": "Preprensado de la cuajada",
  "equip_group.brine": "Salmuera",
  "equip_group.store": "Cava",
  "equip.plant_name": "Nombre de la planta, para el gráfico",
  "equip.recorder_number": "Número del registrador",
  "equip.sweetened": "La leche lleva azúcar",
  "equip.sample_ml": "Leche para una titulación",
  "equip.plate_kg": "Plato entre piezas apiladas",
  "equip.dead_weight_kg": "Plato y tapa de la prensa",
  "equip.method": "Cómo se mide la salmuera",
  "equip.pack_units": "Unidades por sobre de fermento",
  "equip.bulb_error_k": "Error de cada bulbo",
  "quantity.milk_phosphatase_mu_l": "Fosfatasa de la leche",
  "quantity.cheese_phosphatase_ug": "Fosfatasa: fenol de 0,25\u00a0g de queso",
  "quantity.phosphatase_test": "Prueba de fosfatasa",
  "lab.row_detail": "Humedad, grasa, sal, pH, fosfatasa",
  "lab.lead":
    "Un resultado puede llegar días después, y a una elaboración cerrada. Queda en el registro con la hora en que se anotó.",

  "hold.gap_usual":
    "Lecturas cada {span} como mucho: cifra propia de esta app, por acordar con el inspector.",
  "hold.gap_own": "Lecturas cada {span} como mucho: un hueco propio más corto.",
  "hold.gap_agreed": "Lecturas cada {span} como mucho, según se acordó con {name}.",
  "hold.gap_refused": "El hueco anotado de {span} no cuenta: no dice quién lo acordó.",
  "note.gap_needs_name":
    "Un hueco de {value}\u00a0s solo cuenta si está anotado en Equipo con el nombre de quien lo acordó. Se tomaron {limit}\u00a0s.",
  "hold.enter": "Anotar lo que falta",
};
