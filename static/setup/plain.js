// The set-up page itself: keeps what is known, and paints the screen that follows.

import { choice, el, languagePick, show } from "./dom.js";
import { askFacts, probe } from "./probe.js";
import { SCREENS } from "./screens.js";
import {
  deviceOf,
  isWrongBrowser,
  nextAddress,
  screenOf,
  stepsOf,
  trustedOf,
} from "./state.js";
import { language, languageOf, setLanguage, t } from "./texts.js";

/** @import { Device, Known } from "./state.js" */
/** @import { Acts, Told } from "./screens.js" */
/** @import { Fetcher } from "./probe.js" */

const WAIT_MS = 4000;
const GOING_MS = 1200;

/** @type {Known & {hasAsked: boolean}} */
const known = {
  facts: null,
  probes: null,
  offMs: 0,
  isClockSkipped: false,
  step: 0,
  hasAsked: false,
  device: deviceOf(navigator.userAgent, navigator.maxTouchPoints || 0),
};
let painted = "";
/** @type {Promise<void> | null} */
let asking = null;

/** @type {Fetcher} */
const fetcher = (address, options) => fetch(address, options);

/** @param {Partial<typeof known>} more */
function change(more) {
  Object.assign(known, more);
  paint();
}

// One look at a time; a phone that comes back asks anew.
function look() {
  if (!asking)
    asking = lookOnce().then(() => {
      asking = null;
    });
  return asking;
}

function lookOnce() {
  return askFacts(fetcher, WAIT_MS).then((facts) => {
    if (!facts) return change({ facts });
    const offMs = Date.now() - facts.now_ms;
    return Promise.all(
      facts.secure_urls.map((url) => probe(fetcher, url, location.port, WAIT_MS)),
    ).then((probes) => change({ facts, probes, offMs }));
  });
}

// Who comes back from the settings and is trusted now has nothing left to decide.
function goByItself() {
  const hasWorked = known.step > 0;
  if (!document.hidden && hasWorked)
    setTimeout(() => {
      location.href = next();
    }, GOING_MS);
}

function next() {
  return nextAddress(trustedOf(known.probes || []) || "", language(), location.hash);
}

function head() {
  const names = { iphone: t("page.iphone"), android: t("page.android") };
  return el(
    "header",
    { class: "head" },
    languagePick((code) => {
      setLanguage(code);
      change({});
    }),
    known.device &&
      choice(t("page.device"), names, known.device, (/** @type {Device} */ device) =>
        change({ device, step: 0, hasAsked: false }),
      ),
  );
}

/** @type {Acts} */
const acts = {
  pick: (device) => change({ device }),
  forward: () => change({ step: known.step + 1 }),
  back: () =>
    change({
      step: Math.max(0, Math.min(known.step, stepsOf(known.device).length - 1) - 1),
      hasAsked: false,
    }),
  skipClock: () => change({ isClockSkipped: true }),
  again: () => look().then(() => change({ hasAsked: true })),
};

function paint() {
  const name = screenOf(known);
  const isNew = painted !== name;
  painted = name;
  const agent = navigator.userAgent;
  const more = {
    isWrongBrowser: isWrongBrowser(agent, known.device),
    next: name === "open" ? next() : "",
  };
  const told = /** @type {Told} */ (Object.assign(more, known));
  const { title, body, foot } = SCREENS[name](told, acts);
  const heading = el("h1", { tabindex: "-1" }, title);
  show(/** @type {HTMLElement} */ (document.getElementById("app")), [
    head(),
    el("main", { class: "main", "data-screen": name }, heading, ...body),
    foot && el("footer", { class: "foot" }, ...foot),
  ]);
  if (!isNew) return;
  scrollTo(0, 0);
  heading.focus({ preventScroll: true }); // so that a screen reader begins there
  if (name === "open") goByItself();
}

setLanguage(languageOf(location.search, navigator.languages || [navigator.language]));
paint();
look();
document.addEventListener("visibilitychange", () => {
  if (!document.hidden) look();
});
addEventListener("pageshow", (event) => {
  if (event.persisted) look();
});
