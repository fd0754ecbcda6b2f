// French texts of doses and of wash water: what to measure out, and off which label.

export const DOSES = {
  "bottle.other":
    "Le lot {lot} est un autre flacon que celui de l’étiquette saisie, lot {label}. Saisissez l’étiquette de celui-ci sous Matériel.",
  "bottle.unread":
    "On ne sait rien de l’étiquette du lot {lot}. Saisissez-la sous Matériel.",
  "bottle.other_short": "Cette dose est pour le lot {label}",
  "bottle.no_label": "Dose de la recette seule\u00a0: pas d’étiquette saisie",
  "bottle.enter": "saisir l’étiquette",
  "label.rennet_dose":
    "La dose de la recette seule, pour une présure de sa force habituelle. Saisissez sous Matériel la force que dit l’étiquette.",
  "label.calcium_chloride":
    "La dose de la recette seule, comptée en anhydre. Saisissez sous Matériel ce que dit l’emballage\u00a0: anhydre, dihydraté ou une solution.",
  "label.starter_packs":
    "La dose de la recette seule. Saisissez sous Matériel les unités du sachet et celles par litre de lait\u00a0: l’étiquette dit les deux.",
  "water.first": "Eau d’abord",
  "water.rest": "Eau encore à verser",
  "water.enough": "Pas davantage d’eau\u00a0; versé jusqu’ici",
  "water.at_read": "Aussi chaude que l’eau a été lue",
  "water.at_wanted": "Aussi chaude qu’il la faut\u00a0: lisez-la d’abord",
  "water.then_read":
    "Brassez, saisissez ce qui est versé et lisez le caillé\u00a0: environ {after} attendus. Arrêtez à {stop}.",
  "water.stop": "Versez lentement, brassez et lisez le caillé. Arrêtez à {stop}.",
  "water.measure":
    "Le caillé est aussi chaud que ce lavage le veut. Mesurez ce qui est versé.",
  "water.whole": "En tout {amount}.",
  "water.whole_of":
    "En tout {amount}\u00a0; selon ce que perd la cuve et l’erreur du thermomètre, de {low} à {high}.",
  "water.in": "Versé jusqu’ici\u00a0: {amount}.",
  "water.learnt": "Le dernier lavage a perdu {loss}\u00a0: compté ici.",
  "water.refused":
    "Le caillé est déjà assez chaud, ou l’eau ne l’est pas plus. Relisez les deux. Prenez de l’eau pas plus chaude que le caillé\u00a0; demandez à la personne responsable.",
  "range.recipe": "{range}, la plage de la recette",
  "range.estimate": "{range}, ce que vaut le chiffre",
  "range.rule": "{range}, la limite de la règle",
  "range.nine_in_ten": "{range}, neuf fabrications sur dix",
  "range.usual": "{range}, avec les doses usuelles",
};
