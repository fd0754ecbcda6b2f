import { html } from "../../parts/html.js";
import { lastAct } from "../../parts/acts.js";
import { sizeTitle } from "../../parts/size-title.js";
import { nowMs } from "../../parts/source.js";
import { inside, t } from "../../messages/index.js";
import { swap } from "../../router.js";
import { padOf, ReadingSheet } from "./reading-sheet.js";

// Who was called away between the two has read the second at another moment.
const SAME_MOMENT_MS = 60000;

/** @typedef {{quantity: string, size: string | null}} Read */

// What was read at one instant is one act: one undo takes both back.
/** @type {(make: string, at: number) => ?string} */
function readBefore(make, at) {
  const event = lastAct.value?.event;
  const isIt = event?.make === make && event.at_ms + event.off_ms === at;
  return isIt ? event.id : null;
}

/** @type {(one: Read) => string} */
const nameOf = ({ quantity, size }) =>
  size
    ? t("target.of_size", {
        what: t("quantity." + quantity),
        size: inside(sizeTitle(size)),
      })
    : t("quantity." + quantity);

/** @type {(step: Step, name: string) => boolean} */
const isOfHold = (step, name) => Boolean(step.hold?.together.includes(name));

/**
 * What is read in the same round, in order: of a hold milk and air space, else all
 * that is due now.
 *
 * @param {Step} step
 * @param {string} name
 * @returns {Read[]}
 */
function roundOf(step, name) {
  return isOfHold(step, name)
    ? (step.hold?.together ?? []).map((quantity) => ({ quantity, size: null }))
    : (step.pads ?? []).filter((pad) => pad.is_due);
}

/**
 * The address of what the large button of a step asks to read.
 *
 * @param {Step} step
 * @param {string} name
 */
export function padAt(step, name) {
  const size = step.pads?.find((pad) => pad.is_due && pad.quantity === name)?.size;
  return size ? [name, size] : [name];
}

/**
 * The sizes that a reading may be of, where the step wants another value of each.
 *
 * @param {Step | null} step
 * @param {string} name the quantity
 * @returns {WheelSize[]}
 */
export function sizesOf(step, name) {
  return step?.by_size?.find((one) => one.quantity === name)?.sizes ?? [];
}

/**
 * One reading of a round: what is saved leads to the next, the last one back.
 *
 * @param {{make: string, step: Step, name: string, size?: string, at?: string,
 *   onBack: () => void, children?: any}} props name: the quantity that is read now;
 *   at: when the one before was, in a hold, where all are of one instant
 */
export function RoundSheet({ make, step, name, size, at, onBack, children }) {
  const row = roundOf(step, name);
  const n = row.findIndex(
    (one) => one.quantity === name && (!one.size || one.size === size),
  );
  const next = n < 0 ? undefined : row[n + 1];
  const isSame = at && Math.abs(nowMs() - Number(at)) < SAME_MOMENT_MS;
  const onSaved = (/** @type {Entry} */ { at_ms: phoneMs, off_ms: offMs }) => {
    if (!next) return onBack();
    const more = isOfHold(step, name) ? String(phoneMs + offMs) : next.size;
    return swap(
      "make",
      make,
      "reading",
      step.key,
      next.quantity,
      ...(more ? [more] : []),
    );
  };
  return html`<${ReadingSheet} make=${make} step=${step.key} name=${name} place=${size} atMs=${isSame ? Number(at) : null} joins=${isSame ? readBefore(make, Number(at)) : null}
    title=${nameOf({ quantity: name, size: size ?? null })} pad=${padOf(step, name, size)}
    target=${step.targets.find((one) => one.quantity === name && (!size || one.size === size))}
    hint=${next && t("round.then", { what: inside(nameOf(next)) })}
    onSaved=${onSaved} onBack=${onBack}>${children}</${ReadingSheet}>`;
}
