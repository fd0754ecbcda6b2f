// English texts of doses and of wash water: what to measure out, and off which label.

export const DOSES = {
  "bottle.other":
    "Lot {lot} is another bottle than the one whose label was entered, lot {label}. Enter the label of this one under Equipment.",
  "bottle.unread":
    "Nothing is known of the label of lot {lot}. Enter it under Equipment.",
  "bottle.other_short": "This dose is for lot {label}",
  "bottle.no_label": "The recipe’s own dose: no label entered",
  "bottle.enter": "enter label",
  "water.first": "Water first",
  "water.rest": "Water still to go in",
  "water.enough": "No more water; in so far",
  "water.refused":
    "The curd is warm enough already, or the water no warmer. Read both again. Take water no warmer than the curd; ask who is in charge.",
};
