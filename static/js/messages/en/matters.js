// English texts of what stands of a make: matters, what to do, who decides how.

export const MATTERS = {
  "matter.drug_test_wait": "The drug residue test comes first.",
  "matter.drug_test_missing":
    "No drug residue test has been entered, and the milk has left its step.",
  "matter.drug_test_positive": "The drug residue test is positive.",
  "matter.hold_wait": "The hold comes first.",
  "matter.hold_not_met": "The hold does not meet its figures.",
  "matter.hold_not_assessed": "The hold is not assessed.",
  "matter.recorder_wait": "Indicator and recorder are read first.",
  "matter.recorder_above": "The recorder reads above the indicator.",
  "matter.thermometer_out": "The indicating thermometer is out of check.",
  "matter.acid_wait": "The acid is read at its time first.",
  "matter.acid_too_slow": "The pH was not reached by its time.",
  "matter.acid_missed": "Neither pH nor acidity was read at its time.",
  "matter.acid_not_assessed": "The acid was titrated; no limit is known for that here.",
  "matter.check_overdue": "The check of the thermometer is overdue.",
  "matter.curing_wait": "The days of curing are not over.",
  "matter.curing_days_left": "The days of curing are not over.",
  "matter.curing_not_shown":
    "The days of curing have passed and are not shown by readings.",
  "matter.lab_wait": "Results of the laboratory are awaited.",
  "matter.lab_awaited": "Results of the laboratory are awaited.",
  "matter.lab_failed": "A result of the laboratory does not meet its limit.",
  "matter_do.drug_test_wait": "Test the milk and enter the result.",
  "matter_do.drug_test_missing":
    "Test the milk and enter the result. Leave it where it is until then.",
  "matter_do.drug_test_positive":
    "Leave the milk where it is, keep it apart and mark it. Follow your site procedure and tell your licensing authority as it asks.",
  "matter_do.hold_wait": "End the hold first; then its readings are judged.",
  "matter_do.hold_not_met":
    "Keep the milk in the vat, stirred and hot, and ask a maker. The chart and your licensing authority decide.",
  "matter_do.hold_not_assessed":
    "Keep the milk in the vat and ask a maker. The chart and your licensing authority decide.",
  "matter_do.recorder_wait": "Read both at the mark and enter them.",
  "matter_do.recorder_above":
    "Set the recorder to the indicator, never the other way, and read both again. Note it on the chart.",
  "matter_do.thermometer_out":
    "Set or change the thermometer by your procedure and read both again. Its readings of this hold are in doubt.",
  "matter_do.check_overdue":
    "Check it at the ice point or against the reference, and enter the check thermometer’s reading, before the hold.",
  "matter_do.acid_wait": "Read the pH of the curd at its time, or titrate its whey.",
  "matter_do.acid_too_slow":
    "Keep the cheese apart and mark it. Do not salt it before a maker has decided; have it tested by your plan.",
  "matter_do.acid_missed":
    "Read the pH or titrate the whey now and write down why it is late. A maker decides how it goes on.",
  "matter_do.acid_not_assessed":
    "Have staphylococci counted when they are highest, or read the pH. A maker decides how it goes on.",
  "matter_do.curing_wait":
    "Leave the wheels in the store and read its temperature each day.",
  "matter_do.curing_days_left":
    "Leave the wheels in the store and read its temperature each day.",
  "matter_do.curing_not_shown":
    "Look for the store’s own log of those days, or go on reading until enough days are shown.",
  "matter_do.lab_wait": "Send the samples and enter the results when they come.",
  "matter_do.lab_awaited":
    "Enter the results when they come. Nothing is released before.",
  "matter_do.lab_failed":
    "Keep all wheels of the make apart and mark them. Follow your site procedure and licensing authority.",
  "more.matters": "What stands",
  "more.matters.one": "1 matter",
  "more.matters.many": "{n} matters",
  "button.stands": "See what stands",
  "button.stopped": "Stopped: what to do",
  "problem.stopped": "Not recorded. {matter}",
  "problem.stopped_role": "Not recorded. {matter} The role {role} may decide.",
  "problem.way_not_open": "This way is not open in this matter.",
  "problem.matter_is_gone": "This matter does not stand any more: look again.",
  "problem.was_discarded":
    "Not recorded: this make was discarded. Who strikes that decision out says that it was not.",
  "kind.matter_decided": "decision of a matter",
  "line.matter_decided": "Decided. {way}. {why}",
  "said.matter_decided": "Decided. {way}",
  "quantity.check_temp_c": "Check thermometer",
  "quantity.staph_per_g": "Staphylococci per gram",
  "quantity.listeria_test": "Listeria test",
  "quantity.salmonella_test": "Salmonella test",
};
