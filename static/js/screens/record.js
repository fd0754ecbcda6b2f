import { useEffect, useState } from "preact/hooks";
import { Facts } from "../parts/facts.js";
import { html } from "../parts/html.js";
import { Sheet } from "../parts/sheet.js";
import { Tap } from "../parts/tap.js";
import { ask, view } from "../parts/source.js";
import { matterText, toldOf } from "../parts/matter-line.js";
import { nameOf } from "../parts/people-names.js";
import { amount, clock, clockDay, count, day } from "../format.js";
import { own, t, words } from "../messages/index.js";
import { swap } from "../router.js";
import { milkLine } from "./make/milk-sheet.js";
import { DecidedLine, MatterMark, RuleLine } from "./make/matters-sheet.js";
import { lineParts, lineRows } from "./record/line-text.js";
import { correctionWords, markWords, struckWords } from "./record/line-words.js";
import { EntrySheet } from "./record/entry-sheet.js";

/**
 * @param {string} make
 * @param {View} shown
 * @returns {LogLine[] | null}
 */
function useLines(make, shown) {
  const [lines, setLines] = useState(/** @type {LogLine[] | null} */ (null));
  useEffect(() => {
    let isCurrent = true;
    ask
      .record({ make })
      .then((all) => isCurrent && setLines([...all].reverse()))
      .catch(() => isCurrent && setLines(view.value?.log ?? []));
    return () => {
      isCurrent = false;
    };
  }, [make, shown.log]);
  return lines;
}

/** @param {{line: LogLine, steps: Step[], make: string}} props */
function Line({ line, steps, make }) {
  const title =
    line.leads_nowhere?.title ?? steps.find((step) => step.key === line.step)?.title;
  const [what, value] = lineParts(line, steps);
  const name = line.struck ? "row record-line is-struck" : "row record-line";
  const struck = line.struck ? "struck" : "";
  // What is about a step as a whole has named it already.
  const isOfStep = /^(step|task)_/.test(line.kind);
  return html`<${Tap} class=${name} onTap=${() => swap("make", make, "record", line.id)}>
    <span class="record-time">${clock(line.at_ms)}</span>
    <span class="record-what"><span class=${`row-title ${struck}`}>${what}</span> ${value === null ? null : html`<b class=${`record-value ${struck}`}>${value}</b>`}
      <${Facts} isInKey rows=${lineRows(line)} />
      ${[...correctionWords(line), ...struckWords(line), ...markWords(line)].map((text) => html`<span class="row-detail" key=${text}>${text}</span>`)}</span>
    <span class="record-by">${nameOf(line.by)}</span>
    <span class="record-step">${line.step && !isOfStep ? own(title) || words(line.step) : ""}</span></${Tap}>`;
}

/** @param {{make: Make, nowMs: number}} props */
function Head({ make, nowMs }) {
  const milkL = make.milk_measured_l;
  const rows = [
    [t("fact.make"), make.name],
    [t("fact.batch"), make.batch],
    [t("fact.recipe"), own(make.recipe_title)],
    [t("fact.opened"), clockDay(make.opened_ms, nowMs)],
    [t("fact.vat"), make.vat],
    [t("fact.milk"), amount(make.milk_l, "L")],
    [t("fact.milk_in"), milkL !== null && amount(milkL, "L")],
    ...make.moulds
      .filter((mould) => mould.moulded > 0)
      .map((mould) => [
        own(mould.title),
        mould.planned
          ? t("fact.of_all", { n: count(mould.moulded), all: count(mould.planned) })
          : count(mould.moulded),
      ]),
  ];
  return html`<section class="told"><${Facts} rows=${rows} />
    ${make.milk ? html`<p>${milkLine(make.milk)}</p>` : null}</section>`;
}

/** @param {{shown: View}} props */
function MattersOf({ shown }) {
  const told = toldOf(shown.matters);
  if (!told.length) return null;
  return html`<section><h2>${t("more.matters")}</h2>
    ${told.map(
      (
        matter,
      ) => html`<div class="told" key=${matter.id}><p><${MatterMark} matter=${matter} /> ${matterText(matter)}</p>
      <${DecidedLine} matter=${matter} nowMs=${shown.now_ms} /><${RuleLine} matter=${matter} /></div>`,
    )}</section>`;
}

/**
 * Every entry of the make, corrections in sight, each correctable with a reason.
 *
 * @param {{make: string, view: View, entry?: string, onBack: () => void}} props
 */
export function RecordScreen({ make, view: shown, entry, onBack }) {
  const lines = useLines(make, shown);
  if (lines === null)
    return html`<${Sheet} title=${t("record.title")} onBack=${onBack}><p class="lead">${t("record.loading")}</p></${Sheet}>`;
  const open = entry ? lines.find((line) => line.id === entry) : null;
  const toList = () => swap("make", make, "record");
  if (open)
    return html`<${EntrySheet} key=${open.id} make=${make} line=${open} steps=${shown.steps} onBack=${toList} />`;
  const days = [...new Set(lines.map((line) => new Date(line.at_ms).toDateString()))];
  return html`<${Sheet} title=${t("record.title")} onBack=${onBack}>
    ${shown.make.practice ? html`<p class="lead"><span class="practice">${t("practice.record")}</span></p>` : null}
    <${Head} make=${shown.make} nowMs=${shown.now_ms} />
    <${MattersOf} shown=${shown} />
    <p class="quiet record-lead">${t("record.lead")}</p>
    ${days.map((name) => {
      const of = lines.filter((line) => new Date(line.at_ms).toDateString() === name);
      return html`<section key=${name}><h2>${day(of[0].at_ms)}</h2>
        <div class="rows">${of.map((line) => html`<${Line} key=${line.id} line=${line} steps=${shown.steps} make=${make} />`)}</div></section>`;
    })}
  </${Sheet}>`;
}
