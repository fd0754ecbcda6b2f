// English texts of what the creamery has. Labels of single rows are those of the
// sums ("in."), but where those say too little ("equip.").

export const EN_EQUIPMENT = {
  "kind.equipment_set": "equipment",
  "line.equipment_set": "Equipment: {what} {value}",
  "line.equipment_agreed": "Equipment: {what} {value}, agreed with {name}",
  "field.key": "The row",
  "field.agreed_with": "Whom it was agreed with",
  "field.equipment": "The equipment",
  "from.equipment": "equipment",
  "problem.agreed_with_missing": "{field}: whom it was agreed with is missing.",

  "equip.title": "Equipment",
  "equip.row_detail": "Press, bed, chart: what the sums ask for",
  "equip.none": "Nothing entered yet",
  "equip.none_detail": "Press, bed, chart: asked once, then only confirmed",
  "equip.as_in": "As in {name}, {day}",
  "equip.as_elsewhere": "As in {name}, {day}, but for what belongs to another vat",
  "equip.left_out": "Not taken over: {why}",
  "equip.lead_new":
    "Nothing here must be filled in. It is kept with the make and offered for the next one.",
  "equip.lead_make":
    "A change counts from now on in this make, and is offered for the next one.",
  "equip.open": "enter",
  "equip.vats": "Vats of earlier makes",
  "equip.has": "{what} {value}",
  "equip.more": "{n} more",
  "equip.gap": "gap {value} agreed with {name}",
  "equip.agreed": "Agreed with {name}",
  "equip.agreed_with": "With whom was it agreed?",
  "equip.agreed_lead":
    "{value} between two readings counts only on the word of the inspector or authority. The name is kept in the record.",
  "equip.keep": "Keep from now on: {list}",
  "equip.keep_vat": "Keep for this vat: {list}",
  "equip.say_who": "{what}: say who agreed",
  "equip.saved": "{what} saved",

  "equip_group.vat": "Vat and heating",
  "equip_group.heat_record": "Heat-treatment record",
  "equip_group.instruments": "Thermometers and tests",
  "equip_group.rennet": "Rennet and cultures",
  "equip_group.press": "Press and moulds",
  "equip_group.bed": "Pressing bed",
  "equip_group.brine": "Brine",
  "equip_group.store": "Store",
  "equip.plant_name": "Name of the plant, for the chart",
  "equip.recorder_number": "Number of the recorder",
  "equip.sweetened": "Milk is sweetened",
  "equip.sample_ml": "Milk for one titration",
  "equip.plate_kg": "Plate between stacked wheels",
  "equip.dead_weight_kg": "Plate and follower of the press",
  "equip.method": "How brine is measured",
  "equip.pack_units": "Units in one pack of culture",
  "equip.bulb_error_k": "Error of each bulb",

  // Results that come days later.
  "quantity.milk_phosphatase_mu_l": "Phosphatase of the milk",
  "quantity.cheese_phosphatase_ug": "Phosphatase: phenol of 0.25 g cheese",
  "quantity.phosphatase_test": "Phosphatase test",
  "lab.row_detail": "Moisture, fat, salt, pH, phosphatase",
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
