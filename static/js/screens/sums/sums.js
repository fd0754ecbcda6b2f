import { html } from "../../parts/html.js";
import { Row, Sheet } from "../../parts/sheet.js";
import { t } from "../../messages/index.js";
import { go, swap } from "../../router.js";
import { catalogueProblem, useAnswer, useSum, useTopics } from "./catalogue.js";
import { clearGiven, give, givenIn } from "./given.js";
import { SumSheet } from "./sheet.js";
import { UnitsSheet, unitsWords } from "./units-sheet.js";

/** @param {{onBack: () => void}} props */
function Loading({ onBack }) {
  const problem = catalogueProblem.value;
  return html`<${Sheet} title=${t("nav.sums")} onBack=${onBack}>
    <p class=${problem ? "is-bad" : "lead"} role="status">${problem ? t("sums.failed", { why: problem }) : t("sums.loading")}</p></${Sheet}>`;
}

/**
 * All sums: their topics, and the sums of one topic.
 *
 * @param {{topic?: string}} props
 */
export function SumsScreen({ topic }) {
  const topics = useTopics();
  if (!topics) return html`<${Loading} onBack=${() => go("menu")} />`;
  if (topic === "units") return html`<${UnitsSheet} onBack=${() => swap("sums")} />`;
  const chosen = topics.find((one) => one.key === topic);
  if (chosen) {
    return html`<${Sheet} title=${t("topic." + chosen.key)} onBack=${() => swap("sums")}>
      <div class="rows">${chosen.sums.map(
        (key) => html`<${Row} key=${key} title=${t("sum." + key)}
        onTap=${() => go("sum", key)} />`,
      )}
        ${chosen.key === "trends" ? html`<${Row} title=${t("nav.trends")} detail=${t("nav_detail.trends")} onTap=${() => go("trends")} />` : null}
      </div></${Sheet}>`;
  }
  return html`<div class="sheet"><div class="scroll"><h1>${t("nav.sums")}</h1>
    <p class="quiet">${t("sums.lead")}</p>
    <div class="rows topics">${topics.map(
      (listed) => html`<${Row} key=${listed.key} title=${t("topic." + listed.key)}
      detail=${listed.sums.map((key) => t("sum." + key)).join(" · ")} onTap=${() => go("sums", listed.key)} />`,
    )}</div>
    <div class="rows rows-apart"><${Row} title=${t("sums.units")} detail=${unitsWords()} onTap=${() => go("sums", "units")} /></div>
  </div></div>`;
}

/** @param {{sum: SumRow, input?: string}} props */
function OneSum({ sum, input }) {
  const given = givenIn(sum.key);
  const answer = useAnswer(sum.key, given);
  return html`<${SumSheet} sum=${sum} scope=${sum.key} answer=${answer} given=${given} input=${input}
    onInput=${(/** @type {string | null} */ name) => (name ? go("sum", sum.key, name) : swap("sum", sum.key))}
    onGive=${(/** @type {string} */ name, /** @type {SumGiven | null} */ value) => give(sum.key, name, value)} onClear=${() => clearGiven(sum.key)}
    onBack=${() => swap("sums", sum.topic)} />`;
}

/**
 * One sum on its own sheet; what was typed is kept while the app is open.
 *
 * @param {{name: string, input?: string}} props
 */
export function SumScreen({ name, input }) {
  const sum = useSum(name);
  if (!sum) return html`<${Loading} onBack=${() => swap("sums")} />`;
  return html`<${OneSum} key=${sum.key} sum=${sum} input=${input} />`;
}
