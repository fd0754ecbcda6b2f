import { useEffect, useState } from "preact/hooks";
import { html } from "../parts/html.js";
import { Row, Sheet } from "../parts/sheet.js";
import { ask, view } from "../parts/source.js";
import { matterText, toldOf } from "../parts/matter-line.js";
import { nameOf } from "../parts/people-names.js";
import { clock, clockDay, day, span } from "../format.js";
import { own, t, words, whyWords } from "../messages/index.js";
import { swap } from "../router.js";
import { milkLine } from "./make/milk-sheet.js";
import { DecidedLine, MatterMark, RuleLine } from "./make/matters-sheet.js";
import { lineText, setText } from "./record/line-text.js";
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

/** @param {{line: LogLine}} props */
function Marks({ line }) {
  const marks = [
    line.proved ? t("proved." + line.proved) : null,
    line.late_entry_s ? t("record.late_entry", { by: span(line.late_entry_s) }) : null,
    line.clock_off_s ? t("record.clock_off", { by: span(line.clock_off_s) }) : null,
    line.later_of ? t("record.later_of") : null,
    line.leads_nowhere ? t("record." + line.leads_nowhere.key) : null,
  ].filter(Boolean);
  return marks.map((text) => html`<span class="row-detail" key=${text}>${text}</span>`);
}

/** @param {{line: LogLine, steps: Step[], make: string}} props */
function Line({ line, steps, make }) {
  const title =
    line.leads_nowhere?.title ?? steps.find((step) => step.key === line.step)?.title;
  const detail = `${nameOf(line.by)}${line.step ? " · " + (own(title) || words(line.step)) : ""}`;
  return html`<${Row} class=${line.struck ? "is-struck" : ""} onTap=${() => swap("make", make, "record", line.id)}
    title=${html`<span class="record-time">${clock(line.at_ms)}</span> <span class=${line.struck ? "struck" : ""}>${lineText(line, steps)}</span>`}
    detail=${html`<span>${detail}</span>
      ${line.corrections.map(
        (correction) =>
          html`<span class="row-detail" key=${correction.id}>${t("record.corrected", {
            what: setText(correction, line),
            why: whyWords(correction.why),
            name: nameOf(correction.by),
            at: clock(correction.at_ms),
          })}</span>`,
      )}
      ${line.struck ? html`<span class="row-detail">${t("record.struck", { why: whyWords(line.struck.why), name: nameOf(line.struck.by), at: clock(line.struck.at_ms) })}</span>` : null}
      <${Marks} line=${line} />`} />`;
}

/** @param {{shown: View}} props */
function MattersOf({ shown }) {
  const told = toldOf(shown.matters);
  if (!told.length) return null;
  return html`<section><h2>${t("more.matters")}</h2>
    ${told.map(
      (
        matter,
      ) => html`<div key=${matter.id}><p><${MatterMark} matter=${matter} /> ${matterText(matter)}</p>
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
    <p class="quiet">${t("record.lead", { name: shown.make.name, batch: shown.make.batch, at: clockDay(shown.make.opened_ms, shown.now_ms) })}</p>
    ${shown.make.milk ? html`<p>${milkLine(shown.make.milk)}</p>` : null}
    <${MattersOf} shown=${shown} />
    ${days.map((name) => {
      const of = lines.filter((line) => new Date(line.at_ms).toDateString() === name);
      return html`<section key=${name}><h2>${day(of[0].at_ms)}</h2>
        <div class="rows">${of.map((line) => html`<${Line} key=${line.id} line=${line} steps=${shown.steps} make=${make} />`)}</div></section>`;
    })}
  </${Sheet}>`;
}
