import { useState } from "preact/hooks";
import { html } from "./html.js";
import { Later } from "./later.js";
import { Sheet } from "./sheet.js";
import { Tap } from "./tap.js";
import { act } from "./acts.js";
import { ask, me } from "./source.js";
import { t } from "../messages/index.js";

// Which acts ask for a PIN is the core's word; the pad itself comes when needed.

/** @import { Given } from "./acts.js" */
/**
 * An act to record, and what stands on the pad that asks for its proof.
 *
 * @typedef {object} Wanted
 * @property {string} title
 * @property {string} doWord
 * @property {string} kind
 * @property {Given} given
 * @property {string} [said]
 * @property {?string} [about] kind of the entry that a correction or strike is about
 */

/** @typedef {"person" | "phone"} Proof whose word is asked for */
/**
 * @typedef {Wanted & {asked: Proof, onDone: () => unknown, onBack: () => unknown}} Asked
 *   onDone: when it is recorded
 */

/**
 * Ask the core what proof an act needs; one that does not answer holds up nobody.
 *
 * @param {string} kind
 * @param {?string} [about] kind of the entry that a correction or strike is about
 * @returns {Promise<?Proof>}
 */
function proofFor(kind, about = null) {
  return ask.proofFor({ kind, about }).catch(() => null);
}

/**
 * Under the pad, for an act that must not wait for a memory: done by whose phone this is.
 *
 * @param {{kind: string, given: Given, said?: string, onDone: () => unknown}} props
 */
export function Hurry({ kind, given, said, onDone }) {
  const prove = async () => ({ by: "phone" });
  const go = async () => {
    if (await act(kind, { ...given, by: me.value?.person.id, prove }, said)) onDone();
  };
  return html`<${Tap} class="second" onTap=${go}>${t("pin.hurry")}</${Tap}>`;
}

/**
 * Ask for the PIN of who taps and record an act with its proof.
 *
 * @param {Asked} props
 */
function Proved(props) {
  const [isMissing, setMissing] = useState(false);
  const { title, onBack, asked } = props;
  const hurry = asked === "phone" ? html`<${Hurry} ...${props} />` : null;
  return html`<${Later} part="pin" name="PinStep" ...${props} Hurry=${Hurry} onFail=${() => setMissing(true)}>
    <${Sheet} title=${title} onBack=${onBack} foot=${hurry}>
      <p class="lead" role="status">${t(isMissing ? "pin.missing" : "pin.opening")}</p>
    </${Sheet}>
  </${Later}>`;
}

/**
 * Record acts, those that ask for it with a PIN.
 *
 * @param {() => unknown} onDone when one is recorded
 * @returns {[(wanted: Wanted) => Promise<void>, (sheet: any) => any]} record, and over:
 *   the sheet, or the pad over it, which leaves it as it was filled in
 */
export function useProof(onDone) {
  const [asking, setAsking] = useState(
    /** @type {?(Wanted & {asked: Proof})} */ (null),
  );
  const close = () => setAsking(null);
  const record = async (/** @type {Wanted} */ wanted) => {
    const asked = await proofFor(wanted.kind, wanted.about);
    if (asked) setAsking({ ...wanted, asked });
    else if (await act(wanted.kind, wanted.given, wanted.said)) onDone();
  };
  const done = () => {
    close();
    onDone();
  };
  const over = (
    /** @type {any} */ sheet,
  ) => html`${asking ? html`<${Proved} ...${asking} onDone=${done} onBack=${close} />` : null}
    <div class="behind" hidden=${Boolean(asking)}>${sheet}</div>`;
  return [record, over];
}
