// Textes français de ce qui est en suspens : points, que faire, qui décide.

export const MATTERS = {
  "matter.drug_test_wait": "Le test d’antibiotiques vient d’abord.",
  "matter.drug_test_missing":
    "Aucun test d’antibiotiques n’est saisi, et le lait a quitté son étape.",
  "matter.drug_test_positive": "Le test d’antibiotiques est positif.",
  "matter.hold_wait": "Le maintien vient d’abord.",
  "matter.hold_not_met": "Le maintien ne respecte pas ses valeurs.",
  "matter.hold_not_assessed": "Le maintien n’est pas évalué.",
  "matter.recorder_wait": "L’indicateur et l’enregistreur se lisent d’abord.",
  "matter.recorder_above": "L’enregistreur lit plus haut que l’indicateur.",
  "matter.thermometer_out": "Le thermomètre indicateur ne passe pas le contrôle.",
  "matter.acid_wait": "L’acidité se lit d’abord à son heure.",
  "matter.acid_too_slow": "Le pH n’a pas été atteint à son heure.",
  "matter.acid_missed": "Ni le pH ni l’acidité n’ont été lus à leur heure.",
  "matter.acid_not_assessed":
    "L’acidité a été titrée\u00a0; aucune limite n’est connue ici.",
  "matter.check_overdue": "Le contrôle du thermomètre est en retard.",
  "matter.curing_wait": "Les jours d’affinage ne sont pas passés.",
  "matter.curing_days_left": "Les jours d’affinage ne sont pas passés.",
  "matter.curing_not_shown":
    "Les jours d’affinage sont passés et les mesures ne les montrent pas.",
  "matter.lab_wait": "Des résultats du laboratoire sont attendus.",
  "matter.lab_awaited": "Des résultats du laboratoire sont attendus.",
  "matter.lab_failed": "Un résultat du laboratoire ne respecte pas sa limite.",
  "matter_do.drug_test_wait": "Faites le test et saisissez le résultat.",
  "matter_do.drug_test_missing":
    "Faites le test et saisissez le résultat. D’ici là, laissez le lait où il est.",
  "matter_do.drug_test_positive":
    "Laissez le lait où il est, mettez-le à part et marquez-le. Suivez la procédure du site et prévenez votre autorité comme elle le demande.",
  "matter_do.hold_wait":
    "Terminez d’abord le maintien ; ses mesures sont alors jugées.",
  "matter_do.hold_not_met":
    "Gardez le lait dans la cuve, brassé et chaud, et demandez à un fromager. Le diagramme et votre autorité décident.",
  "matter_do.hold_not_assessed":
    "Gardez le lait dans la cuve et demandez à un fromager. Le diagramme et votre autorité décident.",
  "matter_do.recorder_wait": "Lisez les deux au repère et saisissez-les.",
  "matter_do.recorder_above":
    "Réglez l’enregistreur sur l’indicateur, jamais l’inverse, et relisez les deux. Notez-le sur le diagramme.",
  "matter_do.thermometer_out":
    "Réglez ou changez le thermomètre selon votre procédure et relisez les deux. Ses mesures de ce maintien sont douteuses.",
  "matter_do.check_overdue":
    "Contrôlez-le au point de glace ou avec la référence, et saisissez la lecture du thermomètre de contrôle, avant le maintien.",
  "matter_do.acid_wait": "Lisez le pH du caillé à son heure, ou titrez son petit-lait.",
  "matter_do.acid_too_slow":
    "Mettez le fromage à part et marquez-le. Ne le salez pas avant qu’un fromager ait décidé ; faites-le analyser selon votre plan.",
  "matter_do.acid_missed":
    "Lisez le pH ou titrez le petit-lait maintenant et notez pourquoi c’est en retard. Un fromager décide de la suite.",
  "matter_do.acid_not_assessed":
    "Faites compter les staphylocoques quand ils sont au plus haut, ou lisez le pH. Un fromager décide de la suite.",
  "matter_do.curing_wait":
    "Laissez les meules en cave et lisez sa température chaque jour.",
  "matter_do.curing_days_left":
    "Laissez les meules en cave et lisez sa température chaque jour.",
  "matter_do.curing_not_shown":
    "Cherchez le relevé de la cave pour ces jours, ou continuez à lire jusqu’à montrer assez de jours.",
  "matter_do.lab_wait":
    "Envoyez les échantillons et saisissez les résultats quand ils arrivent.",
  "matter_do.lab_awaited":
    "Saisissez les résultats quand ils arrivent. Rien ne sort avant.",
  "matter_do.lab_failed":
    "Mettez à part toutes les meules de la fabrication et marquez-les. Suivez la procédure du site et votre autorité.",
  "more.matters": "Ce qui est en suspens",
  "more.matters.one": "1 point",
  "more.matters.many": "{n} points",
  "button.stands": "Voir ce point",
  "button.stopped": "Arrêté : que faire",
  "problem.stopped": "Non noté. {matter}",
  "problem.stopped_role": "Non noté. {matter} Le rôle {role} peut décider.",
  "problem.way_not_open": "Cette voie n’est pas ouverte pour ce point.",
  "problem.matter_is_gone": "Ce point n’est plus en suspens : regardez de nouveau.",
  "problem.was_discarded":
    "Non noté\u00a0: cette fabrication a été jetée. Qui raye cette décision dit que non.",
  "kind.matter_decided": "décision d’un point",
  "line.matter_decided": "Décidé. {way}. {why}",
  "said.matter_decided": "Décidé. {way}",
  "quantity.check_temp_c": "Thermomètre de contrôle",
  "quantity.staph_per_g": "Staphylocoques par gramme",
  "quantity.listeria_test": "Test de Listeria",
  "quantity.salmonella_test": "Test de salmonelles",
};
