// The few English texts of the first picture, apart from the catalogue: they come
// over a thin link before anything else.

export const FIRST = {
  "first.title": "Live",
  "first.as_of": "As the server sees it at {at}. The rest is on its way.",
  "first.batch": "Batch {batch}",
  "first.act": "ACT NOW",
  "first.check": "CHECK",
  "first.ok": "OK",
  "first.late": "{step}: LATE by {by}",
  "first.end": "Day ends about {at}",
  "first.ended": "Day ended {at}",
  "first.end_late": "{end}, {by} late",
  "first.word": "Last entry from the room {age} ago",
  "first.not_open":
    "The app has not opened yet. What was entered on this phone is still on it.",
  "first.again": "Load the app again",
};
