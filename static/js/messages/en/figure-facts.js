// English texts of what is known of a step's figures: bands, sources, how it ends.

export const FIGURE_FACTS = {
  "label.rennet_dose":
    "The recipe’s own dose, for rennet of its usual strength. Enter the strength that the label names under Equipment.",
  "label.calcium_chloride":
    "The recipe’s own dose, counted as anhydrous. Enter under Equipment what the pack says: anhydrous, dihydrate or a solution.",
  "label.starter_packs":
    "The recipe’s own dose. Enter the units in the pack, and for a litre of milk, under Equipment: the label has both.",
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
  "range.recipe": "{range}, the recipe’s band",
  "range.estimate": "{range}, how sure the figure is",
  "range.rule": "{range}, the rule’s limit",
  "range.nine_in_ten": "{range}, nine makes in ten",
  "range.usual": "{range}, by usual doses",
  "origin.sum": "Worked out for this make. The recipe alone says {own}.",
  "origin.sum_alone": "Worked out for this make.",
  "origin.missing":
    "The recipe’s own figure. It is worked out for this make once this is known: {list}.",
  "origin.open": "Worked out once this is known: {list}.",
  "origin.fell_back": "The recipe’s own figure: no other can be worked out here.",
  "origin.person": "As said in this make.",
  "end.person": "This step is over when you say so.",
  "end.time": "Takes {span} (recipe: {band}).",
  "end.at_least": "Over when {what} is at least {value}.",
  "end.at_most": "Over when {what} is at most {value}.",
  "end.judged": "Over when the curd is judged ready.",
  "end.floc": "Cut at {factor} times the time to flocculation.",
};
