// French texts of what the creamery has.

export const EQUIPMENT = {
  "kind.equipment_set": "matériel",
  "line.equipment_set": "Matériel\u00a0: {what} {value}",
  "line.equipment_agreed": "Matériel\u00a0: {what} {value}, convenu avec {name}",
  "field.key": "Ligne",
  "field.agreed_with": "Convenu avec",
  "field.equipment": "Matériel",
  "from.equipment": "matériel",
  "problem.agreed_with_missing": "{field}\u00a0: il faut dire avec qui c’est convenu.",

  "equip.title": "Matériel",
  "equip.row_detail": "Presse, gâteau, diagramme\u00a0: ce que demandent les calculs",
  "equip.none": "Rien de saisi",
  "equip.none_detail":
    "Presse, gâteau, diagramme\u00a0: demandés une fois, puis juste confirmés",
  "equip.as_in": "Comme dans {name}, {day}",
  "equip.as_elsewhere": "Comme dans {name}, {day}, sauf ce qui tient à une autre cuve",
  "equip.left_out": "Pas repris\u00a0: {why}",
  "equip.lead_new":
    "Rien n’est obligatoire ici. C’est gardé avec la fabrication et proposé pour la suivante.",
  "equip.lead_make":
    "Un changement compte dès maintenant dans cette fabrication, et est proposé pour la suivante.",
  "equip.open": "saisir",
  "equip.vats": "Cuves des fabrications d’avant",
  "equip.has": "{what} {value}",
  "equip.more": "{n} de plus",
  "equip.gap": "écart {value} convenu avec {name}",
  "equip.agreed": "Convenu avec {name}",
  "equip.agreed_with": "Avec qui est-ce convenu\u00a0?",
  "equip.agreed_lead":
    "{value} entre deux mesures ne compte qu’avec l’accord de l’inspecteur ou de l’autorité. Le nom est gardé au registre.",
  "equip.keep": "Garder désormais\u00a0: {list}",
  "equip.keep_vat": "Garder pour cette cuve\u00a0: {list}",
  "equip.say_who": "{what}\u00a0: dire avec qui",
  "equip.saved": "Enregistré\u00a0: {what}",

  "equip_group.vat": "Cuve et chauffe",
  "equip_group.heat_record": "Suivi du traitement thermique",
  "equip_group.instruments": "Thermomètres et tests",
  "equip_group.rennet": "Présure et ferments",
  "equip_group.press": "Presse et moules",
  "equip_group.bed": "Gâteau pressé",
  "equip_group.brine": "Saumure",
  "equip_group.store": "Cave",
  "equip.plant_name": "Nom de l’atelier, pour le diagramme",
  "equip.recorder_number": "Numéro de l’enregistreur",
  "equip.sweetened": "Le lait est sucré",
  "equip.ph_meter": "pH-mètre",
  "equip.check_every_days": "Jours entre deux contrôles du thermomètre",
  "equip.titration": "Matériel de titrage de l’acidité",
  "pick.ph_meter.yes": "Il y en a un",
  "pick.ph_meter.no": "Il n’y en a pas, ou il ne marche pas",
  "pick.titration.yes": "Il y en a un",
  "pick.titration.no": "Il n’y en a pas",
  "equip.sample_ml": "Lait pour un titrage",
  "equip.plate_kg": "Plateau entre meules empilées",
  "equip.dead_weight_kg": "Plateau et foncet de la presse",
  "equip.method": "Façon de mesurer la saumure",
  "equip.pack_units": "Unités dans un sachet de ferment",
  "equip.starter_lot": "Lot du ferment",
  "equip.calcium_lot": "Lot du chlorure de calcium",
  "equip.rennet_lot": "Lot de la présure",
  "equip.bulb_error_k": "Erreur de chaque thermomètre",

  // Results that come days later.
  "quantity.milk_phosphatase_mu_l": "Phosphatase du lait",
  "quantity.cheese_phosphatase_ug":
    "Phosphatase\u00a0: phénol de 0,25\u00a0g de fromage",
  "quantity.phosphatase_test": "Test de phosphatase",
  "lab.row_detail": "Eau, gras, sel, pH, phosphatase",
  "lab.lead":
    "Un résultat peut venir des jours plus tard, même dans une fabrication clôturée. Il est au registre avec l’heure de sa saisie.",

  "hold.gap_usual":
    "Mesures à {span} d’écart au plus\u00a0: chiffre de cet outil, à convenir avec l’inspecteur.",
  "hold.gap_own":
    "Mesures à {span} d’écart au plus\u00a0: un écart plus court, le vôtre.",
  "hold.gap_agreed": "Mesures à {span} d’écart au plus, comme convenu avec {name}.",
  "hold.gap_refused":
    "L’écart saisi de {span} ne compte pas\u00a0: personne n’est nommé pour l’accord.",
  "note.gap_needs_name":
    "Un écart de {value}\u00a0s ne compte que s’il est saisi sous Matériel, avec le nom de qui l’a accordé. {limit}\u00a0s est pris.",
  "hold.enter": "Saisir ce qui manque",
};
