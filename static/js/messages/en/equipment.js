// English texts of what the creamery has. Labels of single rows are those of the
// sums ("in."), but where those say too little ("equip.").

export const EQUIPMENT = {
  "field.key": "The row",
  "field.agreed_with": "Whom it was agreed with",
  "field.equipment": "The equipment",
  "from.equipment": "equipment",
  "problem.agreed_with_missing": "{field}: whom it was agreed with is missing.",

  // Results that come days later.
  "quantity.milk_phosphatase_mu_l": "Phosphatase of the milk",
  "quantity.cheese_phosphatase_ug": "Phosphatase: phenol of 0.25 g cheese",
  "quantity.phosphatase_test": "Phosphatase test",
  "lab.lead":
    "A result may come days later, and into a closed make. It stands in the record with the time of its entry.",

  "hold.gap_usual":
    "Readings at most {span} apart: the figure of this tool, to be agreed with the inspector.",
  "hold.gap_own": "Readings at most {span} apart: a shorter gap of your own.",
  "hold.gap_agreed": "Readings at most {span} apart, as agreed with {name}.",
  "hold.gap_refused":
    "The gap of {span} entered does not count: nobody is named who agreed.",
  "note.gap_needs_name":
    "A gap of {value} s counts only when it is entered under Equipment with the name of who agreed. {limit} s was taken.",
  "hold.enter": "Enter what is missing",
};
