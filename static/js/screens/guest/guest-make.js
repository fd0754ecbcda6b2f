import { Facts } from "../../parts/facts.js";
import { html } from "../../parts/html.js";
import { alertText } from "../../parts/alert-line.js";
import { matterText, toldOf } from "../../parts/matter-line.js";
import { StateMark } from "../../parts/state-mark.js";
import { clock, clockDay, day, span } from "../../format.js";
import { own, t, tFirst, whyWords } from "../../messages/index.js";
import { MatterMark } from "../make/matters-sheet.js";
import { Course } from "../curve/course.js";
import { milkLine } from "../make/milk-sheet.js";
import { lineParts, lineRows, setText } from "../record/line-text.js";

/** @param {string} key */
function roleOf(key) {
  return tFirst(["role." + key, "guest.no_role"]);
}

/** @param {{line: LogLine, steps: Step[]}} props */
function Line({ line, steps }) {
  const marks = [
    ...line.corrections.map((correction) =>
      t("record.corrected", {
        what: setText(correction, line),
        why: whyWords(correction.why),
        name: roleOf(correction.by),
        at: clock(correction.at_ms),
      }),
    ),
    line.struck
      ? t("record.struck", {
          why: whyWords(line.struck.why),
          name: roleOf(line.struck.by),
          at: clock(line.struck.at_ms),
        })
      : null,
    line.late_entry_s ? t("record.late_entry", { by: span(line.late_entry_s) }) : null,
    line.clock_off_s ? t("record.clock_off", { by: span(line.clock_off_s) }) : null,
    line.leads_nowhere ? t("record." + line.leads_nowhere.key) : null,
  ].filter(Boolean);
  const [what, value] = lineParts(line, steps);
  return html`<tr><td>${clock(line.at_ms)}</td>
    <td><span class=${line.struck ? "struck" : ""}>${what}${value === null ? "" : html` <b>${value}</b>`}</span>
      <${Facts} rows=${lineRows(line)} />
      ${marks.map((text) => html`<span class="row-detail" key=${text}>${text}</span>`)}</td>
    <td>${roleOf(line.by)}</td></tr>`;
}

/** @param {{record: LogLine[], steps: Step[]}} props */
function Record({ record, steps }) {
  const days = [...new Set(record.map((line) => new Date(line.at_ms).toDateString()))];
  return html`<table class="curve-table guest-record"><caption>${t("record.title")}</caption>
    <thead><tr><th scope="col">${t("curve.time")}</th><th scope="col">${t("guest.entry")}</th><th scope="col">${t("guest.by")}</th></tr></thead>
    ${days.map((name) => {
      const of = record.filter((line) => new Date(line.at_ms).toDateString() === name);
      return html`<tbody key=${name}><tr><th scope="rowgroup" colspan="3" class="curve-day">${day(of[0].at_ms)}</th></tr>
        ${of.map((line) => html`<${Line} key=${line.id} line=${line} steps=${steps} />`)}</tbody>`;
    })}</table>`;
}

/**
 * One make for a guest: how it stands, its curve, and the whole record.
 *
 * @param {{view: View, record: LogLine[], curve: Curve}} props
 */
export function GuestMake({ view, record, curve }) {
  const { make, steps } = view;
  const isOver = !make.is_open;
  return html`
    <h1>${make.name}</h1>
    ${make.practice ? html`<p class="lead"><span class="practice">${t("practice.record")}</span></p>` : null}
    <section class="told"><${Facts} rows=${[
      [t("fact.batch"), make.batch],
      [t("fact.recipe"), own(make.recipe_title)],
      [t("fact.opened"), clockDay(make.opened_ms, view.now_ms)],
      [t("fact.state"), t("make_state.short_" + make.state)],
    ]} />${make.milk ? html`<p>${milkLine(make.milk)}</p>` : null}</section>
    ${toldOf(view.matters).map((matter) => html`<p key=${matter.id}><${MatterMark} matter=${matter} /> ${matterText(matter)} ${matter.decided ? t("line.matter_decided", { way: t("way." + matter.decided.way), why: whyWords(matter.decided.why ?? "") }) : ""}</p>`)}
    ${view.alerts.map((alert) => html`<p key=${alert.id}><${StateMark} state=${alert.level} /> ${alertText(alert, steps)}</p>`)}
    <${Course} curve=${curve} isOver=${isOver} />
    <${Record} record=${record} steps=${steps} />`;
}
