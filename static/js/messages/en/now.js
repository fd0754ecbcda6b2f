// What is due, what falls together, and who has which task.

export const NOW = {
  "now.late": "Late",
  "now.now": "Now",
  "now.hour": "Within the hour",
  "now.today": "Later today",
  "now.days": "After today",
  "now.show_more.one": "Show 1 more",
  "now.show_more.many": "Show {n} more",
  "due.turn": "Turn the wheels ({step})",
  "due.unload.one": "Take 1 wheel out of {tank} ({size})",
  "due.unload.many": "Take {n} wheels out of {tank} ({size})",
  "due.turned": "Turned",
  "due.may_wait": "It may wait until {at}",
  "task.you": "You",
  "task.mine": "You have it",
  "task.both": "{names} have it: talk to each other",
  "task.stale": "{name} took it at {at}. Is that still so?",
  "task.over": "Take over",
  "task.from_you": "{name} took this over from you at {at}",
  "practice.mark": "PRACTICE",
  "alarm.unshown": "This make cannot be shown and its timers do not ring. Look at it",
};
