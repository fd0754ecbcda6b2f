// Why something was done: the ready reasons, and the pad that asks for one.

export const REASONS = {
  "why.title": "Why?",
  "why.more": "More words, if needed",
  "why.words": "In your words",

  "reason.curd_ready": "The curd was ready",
  "reason.instrument_missing": "The instrument does not work",
  "reason.done_not_written": "It was done, but not entered",
  "reason.maker_decides": "The maker decided so",
  "reason.order_changed": "We work in another order today",
  "reason.not_this_time": "Not needed this time",
  "reason.mistyped": "Typed wrong",
  "reason.looked_again": "Looked again",
  "reason.wrong_step": "Wrong step",
  "reason.entered_late": "Entered later than it happened",
  "reason.not_done": "It did not happen",
  "reason.twice": "Entered twice",
  "reason.reading_missing": "A reading is missing",
  "reason.reading_off": "A reading is out of its band",
  "reason.looks_wrong": "It looks or smells wrong",
  "reason.test_back": "The test result is back",
  "reason.all_done": "All steps are done",
  "reason.milk_bad": "The milk was refused",
  "reason.set_failed": "The milk did not set",
  "reason.equipment_down": "Equipment broke down",

  "hold.hint": "Hold for 1 second, then let go.",
};
