import { html } from "../parts/html.js";
import { Choices, Sheet } from "../parts/sheet.js";
import { Tap } from "../parts/tap.js";
import { tapper } from "../parts/people-names.js";
import { changeReads, hasLanguage, reads, waiting } from "../parts/source.js";
import { unitName } from "../format.js";
import { CHOICES } from "../units/table.js";
import { LANGUAGES, t } from "../messages/index.js";

/** @typedef {keyof typeof CHOICES} Kind of unit */
/** @param {{name: Kind}} props */
function Unit({ name }) {
  const chosen = reads.value[name];
  return html`<h3>${t("words." + name)}</h3>
    <div class="units" role="group" aria-label=${t("words." + name)}>${CHOICES[
      name
    ].map(
      (/** @type {string} */ unit) => html`<${Tap} key=${unit}
      class=${"tab unit-tab " + (unit === chosen ? "is-chosen" : "")} pressed=${unit === chosen}
      onTap=${() => changeReads({ [name]: unit })}>${unitName(unit)}</${Tap}>`,
    )}</div>`;
}

const KINDS = /** @type {Kind[]} */ (Object.keys(CHOICES));

/** How the person who taps reads: language and units. */
export function WordsScreen() {
  return html`<${Sheet} title=${t("nav.words")} onBack=${() => history.back()}>
    <p class="lead">${t("words.lead", { name: tapper()?.name ?? "" })}</p>
    ${hasLanguage.value ? null : html`<p class="is-bad" role="alert">${t("words.missing")}</p>`}
    ${waiting.value ? html`<p role="status">${t("words." + waiting.value)}</p>` : null}
    <div class="columns"><div class="column"><h2>${t("words.language")}</h2>
      <${Choices} label=${t("words.language")} chosen=${reads.value.language} onChoose=${(/** @type {string} */ language) => changeReads({ language })}
        options=${Object.entries(LANGUAGES).map(([key, title]) => ({ key, title: html`<span lang=${key}>${title}</span>` }))} />
    </div><div class="column">${KINDS.map((name) => html`<${Unit} key=${name} name=${name} />`)}</div></div>
  </${Sheet}>`;
}
