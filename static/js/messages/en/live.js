// English texts of the curve, the live view and read-only links.

import { FIRST } from "./first.js";

export const LIVE = {
  ...FIRST,
  "curve.row": "Curve",
  "curve.row_detail": "Temperature and acid against the recipe",

  "live.first": "AS THE SERVER SEES IT",
  "live.as_of": "As it stood at {at}",
  "live.late": "by {by}",
  "live.phones": "Phones of the room",
  "live.phone_heard": "heard {age} ago",

  "error.no_guest": "Open the link that you were given once more.",
  "error.link_unknown": "This link is not known here. Ask the creamery for a new one.",
  "error.link_revoked": "The creamery took this link back. It shows nothing any more.",
  "error.link_ended": "This link has ended. Ask the creamery for a new one.",
  "error.unknown_link": "There is no such link.",
  "error.too_many_makes": "A link shows at most 50 makes.",
};
