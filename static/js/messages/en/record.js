// What the record says of each entry.

export const RECORD = {
  "line.make_opened": "Make opened: {name}, batch {batch}, {milk} of milk, {recipe}",
  "line.step_begun": "Began: {step}",
  "line.step_ended": "Finished: {step}",
  "line.step_skipped": "Skipped: {step}",
  "line.reading_taken": "{what} {value}",
  "line.ingredient_added": "Added {amount} {what}",
  "line.curd_judged": "Curd judged: {what}",
  "line.timer_started": "Timer started: {label}, {span}",
  "line.timer_stopped": "Timer stopped",
  "line.wheels_moulded": "Filled {n} moulds, {size}",
  "line.wheel_turned": "Wheels turned {n} {size}",
  "line.note_added": "Note: {text}",
  "line.entry_corrected": "Corrected an entry not known here: {why}",
  "line.entry_struck": "Struck an entry not known here: {why}",
  "line.duplicate_judged": "Judged a double entry",
  "line.alert_acknowledged": "Seen: {what}",
  "line.task_taken": "Took on: {step}",
  "line.task_released": "Left to another: {step}",
  "line.hold_placed": "Put on hold: {why}",
  "line.hold_lifted": "Hold lifted: {why}",
  "line.signed_off": "Signed: {text}",
  "line.make_closed": "Make closed {why}",
  "line.make_abandoned": "Make given up: {why}",

  "line.alarm_shelved": "Alarm put aside: {why}",

  "line.equipment_set": "Equipment: {what} {value}",
  "line.equipment_agreed": "Equipment: {what} {value}, agreed with {name}",

  "record.title": "Record",

  "practice.record": "This make was for practice. No cheese was made.",

  "time.earlier": "{n} minutes earlier",
  "time.later": "{n} minutes later",
};
