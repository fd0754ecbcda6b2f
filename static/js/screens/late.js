import { signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { html } from "../parts/html.js";
import { Sheet } from "../parts/sheet.js";
import { styleSheet } from "../parts/style-sheet.js";
import { Tap } from "../parts/tap.js";
import { loadRest, t } from "../messages/index.js";

/** @import { Signal } from "@preact/signals" */
/** @typedef {typeof import("./later.js")} Screens */

// What `later.js` holds is fetched when it is first asked for, or in quiet time. The
// packer makes it a file that shares the modules of the page; its name changes with
// what is in it, so that a page never takes the screens of another version. Their rules
// come with them, and none is painted before.

const AGAIN_MS = 5000;
// Phones load it packed; a checkout has the plain sheets.
const STYLE = import.meta.url.includes("/lib/") ? "/lib/later.css" : "/css/later.css";
/** @type {Signal<Screens | null>} */
const screens = signal(null);
const isMissing = signal(false);
/** @type {Promise<void> | null} */
let coming = null;

/** Fetch the later screens, unless they are here; never rejects. */
export function loadLate() {
  // Its English texts come apart from the page, too.
  coming ??= Promise.all([import("./later.js"), loadRest(), styleSheet(STYLE)]).then(
    ([loaded]) => {
      screens.value = loaded;
      loaded.beginPush();
    },
    () => {
      coming = null;
      isMissing.value = true;
    },
  );
  return coming;
}

/** @param {{onBack?: () => unknown}} props */
function Waiting({ onBack }) {
  const words = isMissing.value
    ? html`<p class="lead" role="status">${t("late.missing")}</p>
      <${Tap} class="second" onTap=${() => location.reload()}>${t("late.again")}</${Tap}>`
    : html`<p class="lead">${t("late.coming")}</p>`;
  if (!onBack) return html`<div class="scroll narrow">${words}</div>`;
  return html`<${Sheet} title="" onBack=${onBack}>${words}</${Sheet}>`;
}

/** Tell whether the later screens are here; a step never waits for them. */
export function hasLate() {
  return Boolean(screens.value);
}

/** Tell whether they are still on their way: not here, and not known to be missing. */
export function isLateComing() {
  return !screens.value && !isMissing.value;
}

/**
 * One of the later screens by its name, with its own properties.
 *
 * @param {{screen: keyof Screens, isPart?: boolean, missing?: string, instead?: any}
 *   & Record<string, any>} props
 *   isPart: it stands within another screen, which shows nothing while it is on its
 *   way, or what it is given `instead`; missing: the key of what stands there once it
 *   was not to be had
 */
export function Late({ screen, isPart = false, missing, instead = null, ...rest }) {
  useEffect(() => {
    loadLate();
    // A wall that nobody touches comes to life once its server answers.
    const again = setInterval(() => screens.peek() || loadLate(), AGAIN_MS);
    return () => clearInterval(again);
  }, []);
  const loaded = screens.value;
  if (loaded) return html`<${loaded[screen]} ...${rest} />`;
  if (!isPart) return html`<${Waiting} onBack=${rest.onBack} />`;
  return missing && isMissing.value
    ? html`<p class="quiet">${t(missing)}</p>`
    : instead;
}
