// French texts of the milk: how it is treated, what it is, what follows.

export const MILK = {
  "option.title": "Par quelle voie cela continue-t-il\u00a0?",
  "option.detail": "Ici la recette laisse le choix",
  "option.usual": "L’habitude de la recette",
  "option.later": "Décider à l’étape",
  "option.later_means":
    "Les deux voies restent ouvertes\u00a0; l’étape qui commence la première décide.",
  "treat.choose": "Comment le lait est-il traité\u00a0?",
  "treat.usual": "{treatment} · l’habitude ici",
  "treat.other": "{treatment}",
  "treat.means.pasteurised":
    "Tenu selon la règle, avec le diagramme. Ne compte que si ses mesures respectent la règle.",
  "treat.means.heat_treated":
    "Tenu selon ses propres chiffres, sans prétendre pasteuriser. Le fromage fait ses jours.",
  "treat.means.raw":
    "Tiédi pour l’emprésurage, jamais tenu chaud. Le fromage fait ses jours.",
  "treat.change": "Changer le traitement",
  "treat.to": "Changer le traitement\u00a0: {treatment}",
  "treat.to_do": "Changer",
  "treat.route":
    "Les étapes deviennent celles de l’autre parcours. Tout ce qui est saisi reste au registre. Un mot change les étapes, jamais le lait.",
  "treat.after_hold":
    "Le maintien est fini\u00a0: ce que le lait est découle de ses mesures, pas de ce mot.",
  "treat.refused.milk_was_heated":
    "Le lait est tenu chaud depuis {at}\u00a0: il n’est plus cru. Choisissez thermisé.",
  "milk.line": "Choisi\u00a0: {treatment}. À ce jour\u00a0: {is}.",
  "milk.is.pasteurised": "d’après ses mesures il compte comme pasteurisé",
  "milk.is.heat_treated": "thermisé, non pasteurisé",
  "milk.is.raw": "cru",
  "milk.is.undecided": "pas décidé\u00a0; à traiter comme non pasteurisé",
  "milk.why.chosen_raw": "Sur ce parcours il n’est jamais tenu chaud.",
  "milk.why.was_heated":
    "Il a été tenu chaud avant d’être dit cru\u00a0: il est thermisé.",
  "milk.why.no_hold":
    "La recette n’a aucune étape qui tient le lait chaud\u00a0: rien ne montre ce qu’il est.",
  "milk.why.chosen_heat_treated":
    "Des chiffres propres ne pasteurisent aucun lait, quoi que montrent les mesures.",
  "milk.why.hold_skipped": "Le maintien a été sauté\u00a0: il est comme il est venu.",
  "milk.why.hold_awaited": "Le maintien n’a pas commencé.",
  "milk.why.hold_running": "Le maintien est en cours.",
  "milk.why.no_rule": "La règle de son maintien n’est pas connue ici.",
  "milk.why.hold_met": "Les mesures du maintien respectent la règle.",
  "milk.why.hold_not_met": "Les mesures du maintien ne respectent pas la règle.",
  "milk.why.hold_not_assessed":
    "Les mesures du maintien ne peuvent pas être jugées\u00a0: l’étape dit pourquoi.",
  "milk.why.phosphatase_positive": "Le test de phosphatase est positif.",
  "milk.why.own_hold_met":
    "Les mesures respectent les chiffres de la recette, qui ne pasteurisent aucun lait.",
  "milk.why.own_hold_not_met": "Les mesures restent sous les chiffres de la recette.",
  "milk.why.own_hold_not_assessed":
    "Trop peu de mesures pour les comparer aux chiffres de la recette.",
  "milk.chosen": "Choisi par {name}, {at}.",
  "milk.changed": "Changé par {name}, {at}\u00a0: {why}",
  "milk.follows": "Ce qui s’ensuit",
  "milk.curing":
    "Affinage\u00a0: au moins {n} jours à {f}\u00a0°F ({c}\u00a0°C) ou plus.",
  "milk.no_curing":
    "Affinage\u00a0: le lait ne demande pas de jours\u00a0; le temps de la recette vaut.",
  "milk.by": "Selon {section}.",
  "milk.from_memory": "{section}, non confirmé\u00a0: vérifiez.",
  "milk.own_word": "Règle de la maison, à convenir avec votre inspecteur.",
  "milk.test": "Analyse\u00a0: {test}, {when}.",
  "milk.test.staph_counts": "staphylocoques à coagulase positive",
  "milk.test.listeria": "Listeria monocytogenes",
  "milk.test.salmonella": "Salmonelles",
  "milk.test.cheese_phosphatase": "taux de phosphatase",
  "milk.when.when_counts_are_highest": "quand les comptes sont attendus au plus haut",
  "milk.when.before_it_leaves_the_maker": "avant que le fromage quitte la fromagerie",
  "milk.when.in_the_cheese": "dans le fromage",
  "milk.label": "Sur l’étiquette\u00a0: {words}.",
  "label.pasteurised": "elle peut dire lait pasteurisé",
  "label.heat_treated": "jamais le mot pasteurisé\u00a0; lait thermisé",
  "label.raw": "au lait cru",
  "label.undecided":
    "aucune encore\u00a0; jamais le mot pasteurisé tant que c’est ouvert",
  "milk.release": "Libération\u00a0: au moins {role}.",
  "milk.decides":
    "Le diagramme, votre plan et votre inspecteur décident. Ici est la règle telle qu’elle fut lue.",
  "record.other_route":
    "D’un autre traitement du lait\u00a0: sans effet dans cette fabrication",
  "record.no_route":
    "La recette n’a pas ce parcours\u00a0: sans effet dans cette fabrication",
  "hold.meets_own": "CHIFFRES PROPRES RESPECTÉS",
  "hold.misses_own": "SOUS LES CHIFFRES PROPRES",
  "hold.own": "Chiffres propres de la recette, sans prétendre pasteuriser",
  "hold.gap_of_own": "Deux mesures comptent ensemble si au plus {span} les séparent.",
  "hold.own_decides":
    "Le lait ne compte pas comme pasteurisé, quoi que montrent ces mesures.",
  "of.own_hold": "chiffres propres",
  "sum.store_time": "Temps en cave",
  "in.store_own_days": "Le temps de la recette",
  "in.milk_is": "Le lait est",
  "pick.milk_is.pasteurised": "Pasteurisé",
  "pick.milk_is.heat_treated": "Thermisé, non pasteurisé",
  "pick.milk_is.raw": "Cru",
  "pick.milk_is.undecided": "Pas décidé",
  "out.store_s": "En cave",
  "is.not_asked": "ne sont pas demandés",
  "note.curing_not_asked": "Du lait pasteurisé on ne demande pas de jours d’affinage.",
  "note.store_by_recipe": "Le temps de la recette décide.",
  "note.store_by_curing":
    "Rien ne montre que le lait est pasteurisé\u00a0: les jours d’affinage décident. Ils comptent depuis les moules.",
  "store.not_asked": "Le lait ne demande pas de jours d’affinage.",
  "figure_name.heat_treated": "Lait thermisé",
  "figure_name.pasteurised": "Lait pasteurisé",
  "figure_name.raw": "Lait cru",
  "figure_name.temp": "Lait",
  "figure_name.air_rise": "Air au-dessus du lait, plus chaud de",
  "figure_name.F": "En °F",
  "figure_name.C": "En °C",
  "figure_name.gap_max_s": "Entre deux mesures, au plus",
};
