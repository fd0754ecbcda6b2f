import { html } from "./html.js";
import { Tap } from "./tap.js";
import { WhoseLine } from "./whose.js";
import { t } from "../messages/index.js";

/**
 * A screen opened over another: a title, a way back, its content and its foot.
 *
 * @param {{title: any, onBack: () => unknown, backWord?: string, foot?: any,
 *   children?: any, class?: string, isReadOnly?: boolean}} props
 */
export function Sheet({
  title,
  onBack,
  backWord,
  foot,
  children,
  class: name = "",
  isReadOnly = false,
}) {
  // Where nothing is to be tapped, the keys of a keyboard need a place to scroll from.
  return html`<div class=${"sheet " + name}>
    <div class="sheet-head">
      <${Tap} class="back" onTap=${onBack}>‹ ${backWord ?? t("word.back")}</${Tap}><${WhoseLine} />
      ${title ? html`<h1>${title}</h1>` : null}
    </div>
    <div class="scroll" tabindex=${isReadOnly ? 0 : undefined}>${children}</div>
    ${foot ? html`<div class="foot">${foot}</div>` : null}
  </div>`;
}

/**
 * A row of a list that opens something.
 *
 * @param {{onTap: () => unknown, title: any, detail?: any, side?: any, class?: string,
 *   disabled?: boolean}} props
 */
export function Row({ onTap, title, detail, side, class: name = "", disabled }) {
  return html`<${Tap} class=${"row " + name} onTap=${onTap} disabled=${disabled}>
    <span class="row-main"><span class="row-title">${title}</span>
      ${detail ? html`<span class="row-detail">${detail}</span>` : null}</span>
    ${side ? html`<span class="row-side">${side}</span>` : null}
  </${Tap}>`;
}

/**
 * One choice among several, as large rows.
 *
 * @template K
 * @param {{options: {key: K, title: any, detail?: any}[], chosen: K | null | undefined,
 *   onChoose: (key: K) => unknown, label: string}} props
 */
export function Choices({ options, chosen, onChoose, label }) {
  return html`<div class="choices" role="group" aria-label=${label}>
    ${options.map(
      (option) => html`<${Tap}
      key=${option.key} class=${"choice " + (option.key === chosen ? "is-chosen" : "")}
      pressed=${option.key === chosen} onTap=${() => onChoose(option.key)}>
      <span class="choice-title">${option.title}</span>
      ${option.detail ? html`<span class="row-detail">${option.detail}</span>` : null}
    </${Tap}>`,
    )}
  </div>`;
}
