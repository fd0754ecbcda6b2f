// The wet lock, a pedal or clicker, and the voice.

export const HANDS = {
  "lock.button_label": "Lock the screen against water",
  "lock.title": "Locked: touches do nothing",
  "lock.hint": "To unlock: hold the bar for 2 seconds, then let go.",
  "lock.hint_alarm": "To silence: hold the bar for 2 seconds, then let go.",
  "lock.hold": "Hold to unlock",
  "lock.hold_alarm": "Hold to silence the alarm",
  "lock.let_go": "Now let go",
  "lock.water": "Wipe the bar, then try again",
  "hold.again": "Press once more",
  "lock.opening": "Opening the lock.",
  "make.left_open": "Still open: {step}",
  "make.left_open_detail": "It could begin, and a later step runs",

  "keypad.ask_jump": "From {last} to {value}: a large step. Keep it?",
  "keypad.ask_far": "{value} is far from the {limit} wanted. Keep it?",
  "keypad.one_point": "It has a point already.",
  "keypad.decimals": "Decimals here: {n} at most.",
  "keypad.full": "It is too long for one more digit.",

  "voice.next": "Next: {what}.",
  "voice.minus": "minus {figure}",
};
