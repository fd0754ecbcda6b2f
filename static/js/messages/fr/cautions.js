// The cautions in French.

export const CAUTIONS = {
  "caution.title": "Avant de commencer",
  "caution.before": "Ensuite\u00a0: {step}",
  "caution.beside.one": "Attention\u00a0: {first}",
  "caution.beside.many": "Attention\u00a0: {n} mises en garde",
  "caution.more": "La suite plus bas",
  "caution.read": "J’ai lu",
  "caution.begin": "Lu. Commencer",
  "caution.codes":
    "Les règles locales et la procédure de votre atelier passent avant ces lignes.",
  "line.cautions_seen": "Mises en garde de «\u00a0{step}\u00a0» lues\u00a0: {what}",
  "line.cautions_seen_only": "Mises en garde lues\u00a0: {what}",
  "kind.cautions_seen": "mises en garde lues",

  "caution.scald": "BRÛLURE",
  "caution.steam": "VAPEUR",
  "caution.hot_water": "EAU CHAUDE",
  "caution.hot_drain": "L’EAU CHAUDE SORT",
  "caution.stirrer": "BRASSEUR EN MARCHE",
  "caution.blades": "LAMES",
  "caution.knife": "COUTEAU",
  "caution.lock_out": "MOTEUR ÉLECTRIQUE",
  "caution.electricity": "ÉLECTRICITÉ",
  "caution.compressed_air": "AIR COMPRIMÉ",
  "caution.pinch": "ÉCRASEMENT",
  "caution.weights": "POIDS",
  "caution.lifting": "CHARGE LOURDE",
  "caution.wet_floor": "SOL MOUILLÉ",
  "caution.chemical": "DANGER CHIMIQUE",
  "caution.coating": "ENDUIT",
  "caution.calcium_heat": "ÇA CHAUFFE",
  "caution.frozen_culture": "BRÛLURE PAR LE FROID",
  "caution.glycol": "FUITE DE GLYCOL",
  "caution.carbon_dioxide": "GAZ CARBONIQUE",
  "caution.ammonia": "AMMONIAC",
  "caution.lye": "SOUDE",
  "caution.silver_nitrate": "NITRATE D’ARGENT",
  "caution.alone": "SEUL LA NUIT",
  "caution.moving_parts": "PIÈCES MOBILES",

  "caution_do.scald":
    "La cuve, le lait et les tuyaux brûlent la peau. Mettez gants et manches longues.",
  "caution_do.steam": "Ouvrez la vapeur lentement. Éloignez visage et mains.",
  "caution_do.hot_water": "L’eau chaude arrive. Prévenez d’abord les autres.",
  "caution_do.hot_drain":
    "Éloignez mains et pieds de la sortie de la double enveloppe et de son tuyau.",
  "caution_do.stirrer":
    "Arrêtez-le avant d’y mettre les mains. Manches ajustées, cheveux attachés.",
  "caution_do.blades":
    "Les couteaux coupent, en marche ou à l’arrêt. Consignez le moteur avant d’y mettre les mains.",
  "caution_do.knife":
    "Coupez en vous éloignant de l’autre main. Portez-y un gant anticoupure.",
  "caution_do.lock_out":
    "Coupez, consignez et gardez la clé. Essayez la commande avant d’y mettre les mains.",
  "caution_do.electricity":
    "Mains sèches aux prises et aux interrupteurs. Pas de jet d’eau sur les moteurs.",
  "caution_do.compressed_air":
    "Lâchez la pression avant de défaire un tuyau ou d’y mettre les mains. Ne visez personne.",
  "caution_do.pinch": "Ne mettez pas les doigts sous la presse ni sous les moules.",
  "caution_do.weights": "Un à la fois, sans les doigts dessous. Attention aux pieds.",
  "caution_do.lifting": "Levez à deux ou avec un palan.",
  "caution_do.wet_floor": "Le sol glisse. Rangez d’abord les tuyaux.",
  "caution_do.chemical":
    "Mettez lunettes et gants. Ne mélangez jamais deux produits de nettoyage.",
  "caution_do.coating": "Mettez des gants, aérez la salle et suivez l’étiquette.",
  "caution_do.calcium_heat":
    "Le chlorure de calcium chauffe l’eau où il se dissout. Versez-le lentement dans l’eau froide, en remuant.",
  "caution_do.frozen_culture":
    "Le ferment surgelé colle à la peau et la brûle. Mettez des gants isolants secs.",
  "caution_do.glycol":
    "Si du glycol refroidit ici, cherchez les fuites\u00a0: il est toxique et ne doit pas toucher le lait.",
  "caution_do.carbon_dioxide":
    "Il s’amasse dans une cave fermée. Aérez d’abord. Vertige ou souffle court\u00a0: sortez.",
  "caution_do.ammonia":
    "Les yeux piquent, l’odeur est vive\u00a0: sortez, fermez la porte, appelez à l’aide.",
  "caution_do.lye":
    "La soude du titrage brûle les yeux et la peau. Rincez tout de suite et longtemps.",
  "caution_do.silver_nitrate":
    "Il brûle les yeux et noircit la peau. Récupérez les restes\u00a0: rien à l’évier.",
  "caution_do.alone":
    "Dites à quelqu’un à quelle heure vous aurez fini. Gardez un téléphone sur vous. Rien de lourd.",
  "caution_do.moving_parts":
    "Arrêtez ce qui bouge avant d’y mettre les mains. Manches ajustées.",
};
