// What the screens of alarms say beyond the alarm itself.

export const ALARMS = {
  "said.alarm_shelved": "Alarm put aside for {span}",
  "alarm.none": "No alarms.",
  "alarm.ahead": "What rings next",
  "alarm.state_unacknowledged": "RINGS",
  "alarm.state_acknowledged": "SILENCED",
  "alarm.state_shelved": "PUT ASIDE",
  "alarm.state_returned": "OVER",
  "alarm.waits": "Nobody has answered. From {at} on it is for the owner.",
  "alarm.escalated": "Nobody has answered: since {at} it is for the owner.",
  "alarm.silenced_by": "Silenced by {name} at {at}",
  "alarm.shelved_by": "Put aside by {name} until {until}: {why}",
  "alarm.returned": "It ended at {at} and nobody had silenced it.",
  "alarm.shelve": "Put aside",
  "alarm.shelve_for": "Put aside for {span}",
  "alarm.shelve_lead":
    "It stays listed without a sound, and comes back by itself. One shift at most.",
  "alarm.unshelve": "Take back",
  "alarm.how_long": "For how long?",
  "alarm.why": "Why?",

  "error.not_a_push_service": "This browser's push service is not known to the server.",
  "error.not_a_push_key": "This browser's push key was refused.",
  "error.no_contact": "The server has no contact address for pushes.",
  "error.contact_unusable": "The server's contact address for pushes cannot be real.",
  "error.no_subscription": "This phone takes no pushes.",
};
