// Ce qui guide un maintien en cours, et ce qu’on sait pour son diagramme.

export const HOLD = {
  "hold.lead": "Le maintien en cours",
  "hold.of.milk_temp_c": "Lait",
  "hold.of.air_space_temp_c": "Air sous couvercle",
  "hold.at_least": "au moins {temp}",
  "hold.other_unit": "Lu dans une autre unité\u00a0: ne compte pas ici.",
  "hold.next": "Prochain relevé",
  "hold.counts_for": "Il compte s’il est fait d’ici {time}.",
  "hold.says.meets_so_far": "Règle respectée, jusqu’à {end}",
  "hold.says.whole": "Tenu jusqu’au bout. On peut terminer.",
  "hold.says.waiting":
    "Relevez les deux. Le maintien compte dès le premier relevé assez chaud.",
  "hold.says.last_round":
    "Le temps est écoulé. Relevez les deux une dernière fois pour le compléter.",
  "hold.says.milk_cold":
    "Lait trop froid\u00a0: {value}, au moins {limit}. Le maintien recommence\u00a0; fin à {end} au plus tôt.",
  "hold.says.air_cold":
    "Air sous couvercle trop froid\u00a0: {value}, au moins {limit}. Le maintien recommence\u00a0; fin à {end} au plus tôt.",
  "hold.says.lost":
    "Rien n’a été relevé depuis plus de {span}. Le maintien recommence au prochain relevé.",
  "hold.says.again_milk_cold":
    "Recommencé à {start}\u00a0: le lait était à {value} à {at}. Nouvelle fin\u00a0: {end}.",
  "hold.says.again_air_cold":
    "Recommencé à {start}\u00a0: l’air sous couvercle était à {value} à {at}. Nouvelle fin\u00a0: {end}.",
  "hold.says.again_gap":
    "Recommencé à {start}\u00a0: rien n’a été relevé pendant {span} à partir de {at}\u00a0; {gap} comptent. Nouvelle fin\u00a0: {end}. Si le diagramme est complet, le fromager peut décider autrement.",
  "hold.says.fat_decides":
    "Saisissez la matière grasse\u00a0: dès {fat}, au moins {raised} sont exigés du lait.",
  "hold.says.chart_lacks":
    "Pas encore saisi, et le diagramme le demande\u00a0: {fields}.",
  "hold.chart": "Pour le diagramme",
  "hold.not_known": "non saisi",
  "hold.product": "{title}, lot {batch}",
  "hold.extent": "de {from} à {until}",
  "hold.at": "{temp} à {at}",
  "chart.date": "date",
  "chart.plant_name": "nom de l’atelier",
  "chart.product_name": "nom du produit",
  "chart.product_amount": "quantité",
  "chart.hold_extent": "étendue du maintien",
  "chart.indicating_reading": "thermomètre indicateur",
  "chart.airspace_reading": "air sous couvercle",
  "chart.operator_initials": "initiales",
  "chart.recorder_number": "numéro de l’enregistreur",
  "in.chart_recorder_number": "Sur le diagramme\u00a0: numéro de l’enregistreur",
  "blocker.hold_not_whole":
    "Les deux thermomètres n’ont pas été relevés à la fin du maintien.",
};
