import { useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Choices, Sheet } from "../../parts/sheet.js";
import { Tap } from "../../parts/tap.js";
import { TextField } from "../../parts/text-field.js";
import { inOwnUnit, readNumber } from "../../format.js";
import { sourceWords, t } from "../../messages/index.js";

const STATUSES = ["practice", "derived", "memory", "read"];

/** @param {number | null | undefined} value */
function typed(value) {
  return value === null || value === undefined ? "" : String(value);
}

/** @param {string} text */
function readOptional(text) {
  return text.trim() === "" ? null : readNumber(text.trim());
}

/**
 * Change one figure of a recipe: value, band, and where the new value is from.
 *
 * @param {object} props
 * @param {string} props.title
 * @param {Figure} props.figure
 * @param {Recipe["sources"]} props.sources
 * @param {(figure: Figure) => void} props.onKeep
 * @param {() => void} props.onBack
 */
export function FigureSheet({ title, figure, sources, onKeep, onBack }) {
  const [value, setValue] = useState(typed(figure.value));
  const [low, setLow] = useState(typed(figure.low));
  const [high, setHigh] = useState(typed(figure.high));
  const [note, setNote] = useState("");
  const [source, setSource] = useState(figure.source);
  const [status, setStatus] = useState(figure.status);
  const numbers = {
    value: readNumber(value.trim()),
    low: readOptional(low),
    high: readOptional(high),
  };
  const isBad =
    numbers.value === null ||
    (low.trim() !== "" && numbers.low === null) ||
    (high.trim() !== "" && numbers.high === null);
  const keep = () => {
    const { value: amount, ...ends } = numbers;
    if (amount === null) return;
    onKeep({ ...figure, ...ends, value: amount, source, status, note: note.trim() });
  };
  return html`<${Sheet} title=${title} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${isBad || note.trim() === ""} onTap=${keep}>${t("figure.keep")}</${Tap}>`}>
    <p class="quiet">${t("figure.lead", { value: inOwnUnit(figure.value, figure.unit) })}</p>
    <div class="columns"><div class="column">
      <${TextField} label=${t("figure.value", { unit: figure.unit })} value=${value} onInput=${setValue} longest=${12} />
      <${TextField} label=${t("figure.low")} value=${low} onInput=${setLow} longest=${12} />
      <${TextField} label=${t("figure.high")} value=${high} onInput=${setHigh} longest=${12} />
      ${isBad ? html`<p class="is-bad">${t("problem.not_a_number", { field: t("field.value") })}</p>` : null}
      <${TextField} label=${t("figure.note")} hint=${t("figure.note_hint")} value=${note} onInput=${setNote} longest=${300} />
    </div><div class="column">
      <h2>${t("figure.source")}</h2>
      <${Choices} label=${t("figure.source")} chosen=${source} onChoose=${setSource}
        options=${Object.entries(sources).map(([key, known]) => ({ key, title: sourceWords(known.title) }))} />
      <h2>${t("figure.status")}</h2>
      <${Choices} label=${t("figure.status")} chosen=${status} onChoose=${setStatus}
        options=${STATUSES.map((key) => ({ key, title: t("status." + key) }))} />
    </div></div>
  </${Sheet}>`;
}
