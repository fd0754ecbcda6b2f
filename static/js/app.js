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

/** @type {(work: Promise<unknown>, mostMs: number) => Promise<unknown>} */
const soon = (work, mostMs) =>
  Promise.race([work, new Promise((done) => setTimeout(done, mostMs))]);
const isGuest = () => location.hash.startsWith("#/guest");

// Who watches from elsewhere waits for nothing else.
const isLive = location.hash.startsWith("#/live");
const first = isLive ? lookFirst(LOOK_FIRST_MS) : null;
// Painted already is what ./first.js has; it stands until its screen can take over.
await Promise.all([remember(), isLive && soon(loadLate(), LOOK_FIRST_MS)]);
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
