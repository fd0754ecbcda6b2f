import { useState } from "preact/hooks";
import { HoldBar } from "./hold-bar.js";
import { html } from "./html.js";
import { Tap } from "./tap.js";
import { Choices, Sheet } from "./sheet.js";
import { TextField } from "./text-field.js";
import { WhoseLine } from "./whose.js";
import { t } from "../messages/index.js";

const HOLD_MS = 900;

/**
 * Ask for a reason: a ready one or own words. Nothing is done without one.
 *
 * @param {{title: any, lead?: any, reasons?: string[], doWord: string,
 *   onDone: (why: string) => unknown, onBack: () => unknown, isGrave?: boolean,
 *   isHeld?: boolean, children?: any}} props
 *   reasons: keys of "reason.*"; isGrave: shown in red; isHeld: held rather than
 *   tapped, for what ends a make
 */
export function WhyPad({
  title,
  lead,
  reasons = [],
  doWord,
  onDone,
  onBack,
  isGrave = false,
  isHeld = false,
  children,
}) {
  const [key, setKey] = useState(/** @type {?string} */ (null));
  const [text, setText] = useState("");
  const [isBusy, setBusy] = useState(false);
  const ready = key ? t("reason." + key) : "";
  const why = [ready, text.trim()].filter(Boolean).join(": ");
  const done = async () => {
    setBusy(true);
    await onDone(why);
    setBusy(false);
  };
  const isOff = why === "" || isBusy;
  return html`<${Sheet} title=${title} onBack=${onBack}
    foot=${
      isHeld
        ? html`<${HoldBar} class=${isGrave ? "is-act" : ""} holdMs=${HOLD_MS} isTwice words=${doWord} hint=${t("hold.hint")} disabled=${isOff} onDone=${done} />`
        : html`<${Tap} class=${isGrave ? "primary is-act" : "primary"} disabled=${isOff} onTap=${done}>${doWord}<${WhoseLine} /></${Tap}>`
    }>
    ${lead ? html`<p class="lead">${lead}</p>` : null}
    ${children}
    <h2>${t("why.title")}</h2>
    ${
      reasons.length
        ? html`<${Choices} label=${t("why.title")} chosen=${key} onChoose=${(/** @type {string} */ next) => setKey(next === key ? null : next)}
          options=${reasons.map((name) => ({ key: name, title: t("reason." + name) }))} />`
        : null
    }
    <${TextField} label=${reasons.length ? t("why.more") : t("why.words")} value=${text} onInput=${setText} longest=${300} />
  </${Sheet}>`;
}
