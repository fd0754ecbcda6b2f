// The page's beginning. First what was shown last, from the database, so that a
// phone taken out of an apron shows the make at once; everything else follows.

import { begin, remember } from "./data/start.js";
import { startScreens } from "./screens/index.js";

await remember();
startScreens(document.getElementById("app"));
// After the painting, not before: the core takes half a second on an old phone.
requestAnimationFrame(() => setTimeout(begin));
