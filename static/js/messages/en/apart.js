// What cannot be shown, and since when. It follows once the page is painted.

export const APART = {
  "broken.mark": "Not shown",
  "broken.name": "{name}, batch {batch}",
  "broken.tank_name": "Brine tank {name}",
  "broken.no_name": "All makes together",
  "broken.opening":
    "Its opening cannot be read: its steps, timers and alarms are missing.",
  "broken.view": "It cannot be shown: its steps, timers and alarms are missing.",
  "broken.alarms": "Its alarms cannot be worked out: nothing rings for it.",
  "broken.due": "What is due in it is missing from this list.",
  "broken.acts": "What comes at the same time as it is not told.",
  "broken.clashes": "What comes at the same time is not told.",
  "broken.tank": "Its account cannot be worked out.",
  "broken.tank_due": "When its wheels come out is missing from this list.",
  "broken.start": "Its equipment cannot be offered to a new make.",
  "broken.learnt": "Nothing can be learnt from it for other makes.",
  "broken.trends": "It is missing from the trends.",
  "broken.since": "Since {at}.",
  "broken.newer":
    "It was opened with a newer version of the app. Take the new version here too.",
  "broken.unsound": "Why: {problems}",
  "broken.fault":
    "The program has a fault ({fault}). Every entry is kept. Tell whoever looks after the server.",
  "broken.open": "Open it",
  "broken.what_now":
    "Work on by hand and by a timer of your own. The other makes go on. A maker can close or abandon this one.",
  "unread.newer.one":
    "1 entry of a newer version of the app is kept but cannot be shown. Take the new version to see it.",
  "unread.newer.many":
    "{n} entries of a newer version of the app are kept but cannot be shown. Take the new version to see them.",
  "unread.unsound.one":
    "1 entry is kept but cannot be read. The record shows when and by whom.",
  "unread.unsound.many":
    "{n} entries are kept but cannot be read. The record shows when and by whom.",
  "line.unread_newer":
    "Entry of a newer version of the app ({kind}): kept, but it cannot be shown here",
  "line.unread_unsound": "Entry that cannot be read ({kind}): kept as it came",
};
