import { html } from "./html.js";
import { Tap } from "./tap.js";
import { changeReads, reads } from "./source.js";
import { LANGUAGES, t } from "../messages/index.js";

/** The languages in a row, for screens that come before there is a person. */
export function LanguagePick() {
  return html`<div class="units" role="group" aria-label=${t("words.language")}>${Object.entries(
    LANGUAGES,
  ).map(
    ([code, name]) => html`<${Tap}
    key=${code} class=${"tab unit-tab " + (code === reads.value.language ? "is-chosen" : "")} pressed=${code === reads.value.language}
    onTap=${() => changeReads({ language: code })}><span lang=${code}>${name}</span></${Tap}>`,
  )}</div>`;
}
