import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { hazardName } from "../../parts/hazard-name.js";
import { Tap } from "../../parts/tap.js";
import { WhoseLine } from "../../parts/whose.js";
import { act } from "../../parts/acts.js";
import { own, t, tFirst, tn } from "../../messages/index.js";
import { SignMark } from "./pictograms.js";
import { begin } from "./primary.js";

// What a person has still to see today is the core's answer; here it is
// shown, and written down as seen. Before a step it has the screen, until it was
// seen to its end; beside work that runs or is late it covers nothing.

const NEAR_PX = 8;

/** @param {{caution: Caution, high: number}} props */
function CautionLine({ caution, high }) {
  return html`<li>
    <span class="signs">${caution.signs.map((sign) => html`<${SignMark} key=${sign.pictogram} sign=${sign} high=${high} />`)}</span>
    <span><b>${hazardName(caution.id)}</b> ${caution.do ? own(caution.do) : tFirst(["caution_do." + caution.hazard, ""])}</span>
  </li>`;
}

/**
 * Write down that these were seen; null when it could not be saved.
 *
 * @param {string} make
 * @param {string | null} step
 * @param {Caution[]} cautions
 */
function see(make, step, cautions) {
  /** @type {Record<string, any>} */
  const data = { cautions: cautions.map((one) => one.id) };
  if (step) data.step = step;
  return act("cautions_seen", { make, data });
}

/** @param {Element} element */
const bottomOf = (element) => element.getBoundingClientRect().bottom;

/**
 * Whether the last caution of what scrolls has been in sight; true from then on.
 *
 * @param {{current: HTMLElement | null}} list
 * @param {unknown} of what it holds
 */
function useSeenToEnd(list, of) {
  const [isSeen, setSeen] = useState(false);
  // Before it is painted: a button that turns at once would take no touch.
  useLayoutEffect(() => {
    const at = list.current;
    if (!at) return undefined;
    const look = () => {
      const last = at.querySelector(".cautions > :last-child");
      if (!last || bottomOf(last) < bottomOf(at) + NEAR_PX) setSeen(true);
    };
    look();
    const size = new ResizeObserver(look);
    size.observe(at);
    at.addEventListener("scroll", look, { passive: true });
    return () => {
      size.disconnect();
      at.removeEventListener("scroll", look);
    };
  }, [of]);
  return isSeen;
}

/**
 * The cautions before a step that nobody waits for yet.
 *
 * @param {{make: string, step: Step, row: StepCautions}} props
 */
export function CautionSheet({ make, step, row }) {
  const list = useRef(/** @type {HTMLElement | null} */ (null));
  const isSeen = useSeenToEnd(list, row.owed.length);
  const accept = () => see(make, step.key, row.owed);
  // Who opened the step to begin it need not tap twice for that.
  const canBegin = step.button?.act === "begin";
  const acceptAndBegin = async () => {
    if (await accept()) await begin(make, step);
  };
  // Returns nothing: where a scroll is a promise it would be taken for an act, and a
  // reader's next press within a second left out.
  const further = () => {
    list.current?.scrollBy({ top: list.current.clientHeight * 0.8 });
  };
  /** @type {[string, () => unknown]} */
  const [word, does] = !isSeen
    ? ["caution.more", further]
    : canBegin
      ? ["caution.begin", acceptAndBegin]
      : ["caution.read", accept];
  const means = [make, step.key, word].join("/");
  return html`<div class="sheet">
    <div class="scroll" ref=${list}>
      <p class="quiet">${t("caution.before", { step: own(step.title) })}<${WhoseLine} /></p>
      <h1>${t("caution.title")}</h1>
      <ul class="cautions">${row.owed.map((caution) => html`<${CautionLine} key=${caution.id} caution=${caution} high=${56} />`)}</ul>
      <p class="quiet">${t("caution.codes")}</p>
      ${canBegin ? html`<${Tap} class="second wide" onTap=${accept}>${t("caution.read")}</${Tap}>` : null}
    </div>
    <div class="foot"><${Tap} class="primary" key=${means} means=${means} onTap=${does}>
      <span class="primary-does">${t(word)}</span><${WhoseLine} /></${Tap}></div>
  </div>`;
}

/** @param {{owed: Caution[]}} props */
function Signs({ owed }) {
  const all = owed.map((caution) => caution.signs[0]);
  const each = all.filter(
    (sign, at) => all.findIndex((one) => one.pictogram === sign.pictogram) === at,
  );
  return html`<span class="signs">${each.map((sign) => html`<${SignMark} key=${sign.pictogram} sign=${sign} high=${36} />`)}</span>`;
}

/**
 * The cautions beside work that goes on: a line above it, which opens to be read.
 *
 * @param {{make: string, row: StepCautions}} props
 */
export function CautionBand({ make, row: { step, owed } }) {
  const [isOpen, setOpen] = useState(false);
  const first = hazardName(owed[0].id);
  if (!isOpen)
    return html`<${Tap} class="row caution-band" onTap=${() => setOpen(true)}>
      <${Signs} owed=${owed} /><span>${tn("caution.beside", owed.length, { first })}</span></${Tap}>`;
  return html`<section class="caution-band">
    <ul class="cautions">${owed.map((caution) => html`<${CautionLine} key=${caution.id} caution=${caution} high=${40} />`)}</ul>
    <p class="quiet">${t("caution.codes")}</p>
    <${Tap} class="second wide" onTap=${() => see(make, step, owed)}>${t("caution.read")}</${Tap}>
  </section>`;
}
