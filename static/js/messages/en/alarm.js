// What alarms say, and how each way of ringing stands.

export const ALARM = {
  "nav.alarms": "Alarms",
  "nav.wall": "Wall",
  "nav_detail.alarms": "What rings, and whether it can ring here",
  "nav_detail.wall": "The room's display, with the room's bell",

  "kind.alarm_shelved": "alarm put aside",
  "field.for_s": "The time",
  "field.escalate_min": "The minutes",

  "alarm.timer": 'Timer "{label}": the time is up.',
  "alarm.step_due": '"{step}": the time is up.',
  "alarm.step_late": '"{step}" is late.',
  "alarm.reading_overdue": '{what} is overdue in "{step}".',
  "alarm.readings_overdue": '{n} readings are overdue in "{step}".',
  "alarm.since": "began {age} ago",
  "alarm.found_late": "(found {by} after it began: this screen was asleep)",
  "alarm.silence": "Silence",
  "alarm.more.one": "1 more",
  "alarm.more.many": "{n} more",
  "alarm.other_vat": "Other vat: {whose}",
  "alarm.other_make": "Other make: {whose}",
  "alarm.no_shift": "silent here: no shift started",
  "alarm.sound_off": "The sound is not unlocked yet.",
  "alarm.sound_interrupted": "The phone cut the sound off. Tap the screen.",
  "alarm.sound_none": "This browser can make no sound.",
  "alarm.not_on_wall.one":
    "1 deadline is not on the wall yet: the server has not heard of it.",
  "alarm.not_on_wall.many":
    "{n} deadlines are not on the wall yet: the server has not heard of them.",

  "rung.calendar_offline": "The file comes from the server, which does not answer now.",
  "rung.calendar_step": "This step into the calendar",
  "rung.calendar_make": "Long deadlines into the calendar",
  "rung.calendar_detail": "Rings on a locked phone with no network",

  "error.no_deadline": "No such deadline lies ahead.",
};
