// Textes français de la page de ce qui est en suspens et des voies pour décider.

export const WAYS = {
  "figure_name.window_s": "Le pH à 6 h, lu au plus à cet écart de son heure",
  "matters.title": "Ce qui est en suspens",
  "matters.none": "Rien n’est en suspens dans cette fabrication.",
  "matters.rule": "D’après : {rule}",
  "matters.rule_secondary": "D’après\u00a0: {rule}, lu là où un autre le cite",
  "matters.decided": "Décidé par {name} à {at}. {way}. {why}",
  "matters.who": "Il faut le rôle {role} pour décider.",
  "matters.nobody": "Personne n’en décide ici : cela cesse quand le fait change.",
  "matters.stops": "Arrête :",
  "matters.stop.begin": "le début de « {step} » et ce qui suit",
  "matters.stop.end": "la fin de « {step} »",
  "matters.stop.close": "la clôture de la fabrication",
  "matters.stop.release": "la sortie du fromage",
  "matters.mark": "DÉCIDÉ",
  "matters.way": "Que fait-on ?",
  "matters.decide": "Décider",
  "way.hold_again": "Refaire le maintien",
  "way.handle_as_heat_treated": "Traiter comme lait thermisé",
  "way.handle_as_raw": "Traiter comme lait cru",
  "way.discard": "Jeter",
  "way.chart_shows": "Continuer : le diagramme montre le maintien",
  "way.tested_elsewhere": "Continuer : le résultat est sur un autre registre",
  "way.confirmed_negative": "Continuer : le test confirmé était négatif",
  "way.recorder_set": "Continuer : l’enregistreur a été réglé et noté",
  "way.authority_agreed": "Continuer : l’autorité est d’accord",
  "way.keep_apart": "Mettre à part et analyser",
  "way.tests_met": "Continuer\u00a0: les analyses respectent leurs limites",
  "way.goes_by_time": "Continuer au temps : pas de pH possible",
  "way.days_shown_elsewhere": "Continuer : le relevé de la cave montre les jours",
  "way.not_in_our_plan": "Continuer : cette analyse n’est pas dans notre plan",
  "way_means.hold_again":
    "Le maintien s’ouvre de nouveau et son horloge repart à la prochaine mesure assez chaude.",
  "way_means.handle_as_heat_treated":
    "Les étapes deviennent celles du lait thermisé ; les jours d’affinage comptent.",
  "way_means.handle_as_raw":
    "Les étapes deviennent celles du lait cru ; les jours d’affinage comptent.",
  "way_means.discard":
    "La fabrication est finie\u00a0: aucune étape ne continue, rien n’est stocké ni libéré. Dites où c’est parti.",
  "way_means.chart_shows":
    "La fabrication continue. Le lait reste indécis : il est traité comme non pasteurisé.",
  "way_means.tested_elsewhere": "Dites sur quel registre, et son numéro.",
  "way_means.confirmed_negative":
    "Dites qui l’a confirmé et comment, selon votre procédure et votre autorité.",
  "way_means.recorder_set": "Dites qui l’a réglé, et de combien.",
  "way_means.authority_agreed": "Dites qui est d’accord, et avec quoi.",
  "way_means.keep_apart":
    "Le travail continue ; la fabrication n’est pas close et rien ne sort avant les analyses.",
  "way_means.tests_met": "Dites quelles analyses, et où leurs résultats sont gardés.",
  "way_means.goes_by_time":
    "Le travail continue ; pour cela seul, le fromage ne sort pas.",
  "way_means.days_shown_elsewhere": "Dites où le relevé est gardé.",
  "way_means.not_in_our_plan": "Dites où votre plan le dit.",
  "field.matter": "Point",
  "field.way": "Voie",
  "note.hold_rule_unknown": "la règle du maintien n’est pas connue ici",
  "note.hold_skipped": "le maintien a été sauté",
  "note.ph_not_reached": "pH {value} après {after_s} ; au plus {limit} est demandé",
  "note.mark_missed": "ni pH ni acidité lus autour de {value} après le début",
  "note.acidity_without_limit":
    "acidité {value} après {after_s}\u00a0; aucune source ne fixe de limite pour ce fromage",
  "note.acidity_not_reached":
    "acidité {value} après {after_s}\u00a0; au moins {limit} est demandé",
  "note.curing_days": "{value} jours sur {limit} sont montrés",
  "note.curing_start_unknown":
    "aucune fin de moulage n’est saisie, aucun jour n’est donc le premier",
  "note.lab_failed": "ne respecte pas sa limite\u00a0: {test}",
  "note.lab_awaited": "attendu : {test}",
  "note.lab_samples": "{value} échantillons sur {limit} sont là\u00a0: {test}",
  "note.lab_above":
    "{value} sur {samples} dans la série du {at_ms} au-dessus de {limit} par gramme, où aucun n’est permis",
  "note.lab_between":
    "{value} sur {samples} dans la série du {at_ms} entre {low} et {high} par gramme, où {limit} au plus sont permis",
  "note.check_overdue":
    "contrôle du thermomètre en retard depuis {since_ms}\u00a0; il est fixé tous les {limit} jours",
  "note.check_not_on_record":
    "aucun contrôle du thermomètre n’est noté jusqu’au {since_ms}\u00a0; il est fixé tous les {limit} jours",
  "note.thermometer_off": "écart de {value} ; au plus {limit} est admis",
  "of.cheese_phosphatase": "phosphatase du fromage",
  "of.staph_counts": "staphylocoques",
  "of.listeria": "Listeria monocytogenes",
  "of.salmonella": "salmonelles",
};
