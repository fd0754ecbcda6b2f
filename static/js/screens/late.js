import { signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { html } from "../parts/html.js";
import { Sheet } from "../parts/sheet.js";
import { Tap } from "../parts/tap.js";
import { loadRest, t } from "../messages/index.js";

/** @import { Signal } from "@preact/signals" */
/** @typedef {typeof import("./later.js")} Screens */

// What `later.js` holds is fetched when it is first asked for, or in quiet time. The
// packer makes it a file that shares the modules of the page; its name changes with
// what is in it, so that a page never takes the screens of another version.

const AGAIN_MS = 5000;
/** @type {Signal<Screens | null>} */
const screens = signal(null);
const isMissing = signal(false);
/** @type {Promise<void> | null} */
let coming = null;

/** Fetch the later screens, unless they are here; never rejects. */
export function loadLate() {
  // Its English texts come apart from the page, too.
  coming ??= Promise.all([import("./later.js"), loadRest()]).then(
    ([loaded]) => {
      screens.value = loaded;
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
  if (!isMissing.value) return null;
  const words = html`<p class="lead" role="status">${t("late.missing")}</p>
    <${Tap} class="second" onTap=${() => location.reload()}>${t("late.again")}</${Tap}>`;
  if (!onBack) return html`<div class="scroll narrow">${words}</div>`;
  return html`<${Sheet} title="" onBack=${onBack}>${words}</${Sheet}>`;
}

/**
 * One of the later screens by its name, with its own properties.
 *
 * @param {{screen: keyof Screens, isPart?: boolean} & Record<string, any>} props isPart of
 *     what stands within another screen, which needs no words while it is missing
 */
export function Late({ screen, isPart = false, ...rest }) {
  useEffect(() => {
    loadLate();
    // A wall that nobody touches comes to life once its server answers.
    const again = setInterval(() => screens.peek() || loadLate(), AGAIN_MS);
    return () => clearInterval(again);
  }, []);
  const loaded = screens.value;
  if (loaded) return html`<${loaded[screen]} ...${rest} />`;
  return isPart ? null : html`<${Waiting} onBack=${rest.onBack} />`;
}
