// The cautions: what hurts, and what to do about it. Shown with signs of our own.

export const CAUTIONS = {
  "caution.title": "Before you begin",
  "caution.before": "Next: {step}",
  "caution.beside.one": "Take care: {first}",
  "caution.beside.many": "Take care: {n} cautions",
  "caution.more": "More below",
  "caution.read": "I have read this",
  "caution.begin": "Read. Begin now",
  "caution.codes": "Local codes and your site's procedure come before these lines.",
  "line.cautions_seen": 'Read the cautions of "{step}": {what}',
  "line.cautions_seen_only": "Read the cautions: {what}",
  "kind.cautions_seen": "cautions read",

  "caution.scald": "SCALD",
  "caution.steam": "STEAM",
  "caution.hot_water": "HOT WATER",
  "caution.hot_drain": "HOT WATER RUNS OUT",
  "caution.stirrer": "TURNING STIRRER",
  "caution.blades": "BLADES",
  "caution.knife": "KNIFE",
  "caution.lock_out": "ELECTRIC DRIVE",
  "caution.electricity": "ELECTRICITY",
  "caution.compressed_air": "COMPRESSED AIR",
  "caution.pinch": "PINCHED HANDS",
  "caution.weights": "WEIGHTS",
  "caution.lifting": "HEAVY LIFTING",
  "caution.wet_floor": "WET FLOOR",
  "caution.chemical": "CHEMICAL",
  "caution.coating": "COATING",
  "caution.calcium_heat": "GETS HOT",
  "caution.frozen_culture": "COLD BURN",
  "caution.glycol": "GLYCOL LEAK",
  "caution.carbon_dioxide": "CARBON DIOXIDE",
  "caution.ammonia": "AMMONIA",
  "caution.lye": "LYE",
  "caution.silver_nitrate": "SILVER NITRATE",
  "caution.alone": "ALONE AT NIGHT",
  "caution.moving_parts": "MOVING PARTS",

  "caution_do.scald":
    "The vat, its milk and its pipes burn skin. Wear gloves and sleeves.",
  "caution_do.steam": "Open steam slowly. Keep face and hands away.",
  "caution_do.hot_water": "Hot water goes in. Tell those beside you first.",
  "caution_do.hot_drain":
    "Keep hands and feet clear of the jacket's outlet and its hose.",
  "caution_do.stirrer":
    "Stop it before you reach in. Close-fitting sleeves, hair tied back.",
  "caution_do.blades":
    "The knives cut, turning or still. Lock the drive before a hand goes in.",
  "caution_do.knife":
    "Cut away from your other hand. Wear a cut-resistant glove on it.",
  "caution_do.lock_out":
    "Switch off, lock it out and keep the key. Try the switch before you reach in.",
  "caution_do.electricity":
    "Dry hands at plugs and switches. Keep the hose off motors.",
  "caution_do.compressed_air":
    "Let the air off before you loosen a hose or reach in. Point it at nobody.",
  "caution_do.pinch": "Keep fingers out from under the press and the moulds.",
  "caution_do.weights": "One at a time, fingers out from under. Mind your feet.",
  "caution_do.lifting": "Lift with another person or a hoist.",
  "caution_do.wet_floor": "The floor is slippery. Clear the hoses first.",
  "caution_do.chemical": "Wear goggles and gloves. Never mix two cleaners.",
  "caution_do.coating": "Wear gloves, air the room and follow the label.",
  "caution_do.calcium_heat":
    "Calcium chloride heats the water it dissolves in. Stir it slowly into cold water.",
  "caution_do.frozen_culture":
    "Deep-frozen starter sticks to skin and burns it. Wear dry, insulated gloves.",
  "caution_do.glycol":
    "If glycol cools here, look for leaks: it is poisonous, none may reach the milk.",
  "caution_do.carbon_dioxide":
    "It gathers in a closed store. Air it first. Dizzy or short of breath: get out.",
  "caution_do.ammonia":
    "Stinging eyes or a sharp smell: get out, shut the door, call for help.",
  "caution_do.lye":
    "The titration's lye burns eyes and skin. Rinse a splash at once, and long.",
  "caution_do.silver_nitrate":
    "It burns eyes and blackens skin. Collect what is left; none down the drain.",
  "caution_do.alone":
    "Tell somebody when you will be done. Keep a phone on you. Lift nothing heavy.",
  "caution_do.moving_parts":
    "Stop what moves before you reach in. Wear close-fitting sleeves.",
};
