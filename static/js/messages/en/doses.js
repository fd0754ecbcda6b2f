// English texts of doses and of wash water: what to measure out, and off which label.

export const DOSES = {
  "bottle.other":
    "Lot {lot} is another bottle than the one whose label was entered, lot {label}. Enter the label of this one under Equipment.",
  "bottle.unread":
    "Nothing is known of the label of lot {lot}. Enter it under Equipment.",
  "bottle.other_short": "This dose is for lot {label}",
  "bottle.no_label": "The recipe’s own dose: no label entered",
  "bottle.enter": "enter label",
  "label.rennet_dose":
    "The recipe’s own dose, for rennet of its usual strength. Enter the strength that the label names under Equipment.",
  "label.calcium_chloride":
    "The recipe’s own dose, counted as anhydrous. Enter under Equipment what the pack says: anhydrous, dihydrate or a solution.",
  "label.starter_packs":
    "The recipe’s own dose. Enter the units in the pack, and for a litre of milk, under Equipment: the label has both.",
  "water.first": "Water first",
  "water.rest": "Water still to go in",
  "water.enough": "No more water; in so far",
  "water.at_read": "As hot as the water was read",
  "water.at_wanted": "As hot as it is wanted: read it first",
  "water.then_read":
    "Stir, enter what went in and read the curd: about {after} is due. Stop at {stop}.",
  "water.stop": "Add it slowly, stir and read the curd. Stop at {stop}.",
  "water.measure": "The curd is as warm as this wash wants it. Measure what went in.",
  "water.whole": "In all {amount}.",
  "water.whole_of":
    "In all {amount}; by what the vat may lose and the thermometer be off, {low} to {high}.",
  "water.in": "In so far: {amount}.",
  "water.learnt": "The last wash lost {loss}: counted here.",
  "water.refused":
    "The curd is warm enough already, or the water no warmer. Read both again. Take water no warmer than the curd; ask who is in charge.",
  "range.recipe": "{range}, the recipe’s band",
  "range.estimate": "{range}, how sure the figure is",
  "range.rule": "{range}, the rule’s limit",
  "range.nine_in_ten": "{range}, nine makes in ten",
  "range.usual": "{range}, by usual doses",
};
