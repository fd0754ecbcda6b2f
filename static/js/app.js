// The page's beginning. First what was shown last, from the database, so that a
// phone taken out of an apron shows the make at once; everything else follows.

import { lookFirst } from "./data/live.js";
import { begin, remember } from "./data/start.js";
import { startHands } from "./parts/hands.js";
import { startScreens } from "./screens/index.js";
import { loadLate } from "./screens/late.js";
import { stepShown } from "./parts/chosen.js";
import { buttonWords } from "./screens/make/primary.js";

const LOOK_FIRST_MS = 3000;

const isGuest = () => location.hash.startsWith("#/guest");

// Who watches from elsewhere waits for nothing else.
const first = location.hash.startsWith("#/live") ? lookFirst(LOOK_FIRST_MS) : null;
await remember();
startScreens(/** @type {HTMLElement} */ (document.getElementById("app")));
if (!isGuest()) startHands({ buttonWords, stepShown });
// After the painting, not before: the core takes half a second on an old phone.
// A guest's page needs neither core nor exchange, until it is left.
if (isGuest()) addEventListener("hashchange", () => isGuest() || location.reload());
else
  requestAnimationFrame(() =>
    setTimeout(async () => {
      await first;
      begin(loadLate);
    }),
  );
