import { html } from "../../parts/html.js";
import { CountdownWords } from "../../parts/countdown.js";
import { Row } from "../../parts/sheet.js";
import { StateMark } from "../../parts/state-mark.js";
import { Tap } from "../../parts/tap.js";
import { secondMs } from "../../parts/ticker.js";
import { act } from "../../parts/acts.js";
import { readingText } from "../../parts/reading-text.js";
import { FlocFacts, lastJudgement } from "./curd.js";
import { amount, clock, count, span } from "../../format.js";
import { own, t } from "../../messages/index.js";
import { go } from "../../router.js";

/** @param {{make: string, step: Step, reading: ReadingWanted}} props */
function ReadingButton({ make, step, reading }) {
  const isDue = reading.due_ms !== null && reading.due_ms <= secondMs.value;
  const name = t("quantity." + reading.quantity);
  const last = reading.last
    ? t("reading.last", {
        value: readingText(reading.quantity, reading.last.value),
        at: clock(reading.last.at_ms),
      })
    : t("reading.none");
  const every = reading.every_s
    ? t("reading.every", { span: span(reading.every_s) })
    : t("reading.when_" + reading.when);
  return html`<${Tap} class=${"row reading " + (isDue ? "is-due" : "")}
    onTap=${() => go("make", make, "reading", step.key, reading.quantity)}>
    <span class="row-main"><span class="row-title">${name}</span>
      <span class="row-detail">${last} · ${every}${reading.required ? "" : " · " + t("reading.optional")}</span></span>
    <span class="row-side">${
      isDue
        ? html`<${StateMark} state=${reading.overdue_s > 0 ? "check" : "due"} word=${reading.overdue_s > 0 ? t("reading.late", { by: span(reading.overdue_s) }) : undefined} />`
        : reading.due_ms
          ? html`<${CountdownWords} dueMs=${reading.due_ms} />`
          : ""
    }</span>
  </${Tap}>`;
}

/**
 * The readings that this step wants, as large buttons.
 *
 * @param {{make: string, step: Step}} props
 */
export function Readings({ make, step }) {
  if (step.readings.length === 0) return null;
  return html`<section class="block"><h2>${t("block.readings")}</h2>
    <div class="rows">${step.readings.map((reading) => html`<${ReadingButton} key=${reading.quantity + reading.when} make=${make} step=${step} reading=${reading} />`)}</div>
  </section>`;
}

/**
 * What goes in during this step, with its dose.
 *
 * @param {{make: string, step: Step}} props
 */
export function Adds({ make, step }) {
  if (step.adds.length === 0) return null;
  return html`<section class="block"><h2>${t("block.adds")}</h2>
    <div class="rows">${step.adds.map((add) => {
      const put = add.added.map(
        (added) =>
          `${amount(added.amount, added.unit)} ${clock(added.at_ms)}${added.lot ? ", " + t("add.lot_short", { lot: added.lot }) : ""}`,
      );
      const plan = add.planned
        ? t("add.dose", { amount: amount(add.planned.value, add.planned.unit) })
        : t("add.no_plan");
      const off = add.added.some(
        (added) => added.verdict === "below" || added.verdict === "above",
      );
      return html`<${Row} key=${add.ingredient} title=${own(add.title)}
        detail=${put.length ? `${plan} · ${t("add.put", { list: put.join("; ") })}` : plan}
        side=${off ? html`<${StateMark} state="check" />` : add.done ? html`<${StateMark} state="ok" word=${t("add.done")} />` : html`<${StateMark} state="due" />`}
        onTap=${() => go("make", make, "add", step.key, add.ingredient)} />`;
    })}</div>
  </section>`;
}

/**
 * The curd's own clock and the judgements of it.
 *
 * @param {{make: string, step: Step}} props
 */
export function Curd({ make, step }) {
  return html`${step.floc ? html`<${FlocFacts} floc=${step.floc} />` : null}
    ${
      step.judge
        ? html`<section class="block"><h2>${t("block.judge")}</h2>
      <div class="rows"><${Row} title=${t("judge.row")} detail=${lastJudgement(step.judge)}
        side=${step.judge.from_ms ? t("judge.from", { at: clock(step.judge.from_ms) }) : ""}
        onTap=${() => go("make", make, "judge", step.key)} /></div>
    </section>`
        : null
    }`;
}

/** @param {{make: string, step: Step}} props */
export function Moulds({ make, step }) {
  if (!step.moulds?.length) return null;
  return html`<section class="block"><h2>${t("block.moulds")}</h2>
    <div class="rows">${step.moulds.map(
      (mould) => html`<${Row} key=${mould.size} title=${own(mould.title)}
      detail=${t("mould.counts", { done: count(mould.moulded), planned: count(mould.planned) })}
      onTap=${() => go("make", make, "mould", step.key, mould.size)} />`,
    )}</div>
  </section>`;
}

/**
 * Timers that belong to no step's own clock.
 *
 * @param {{make: string, timers: Timer[]}} props
 */
export function Timers({ make, timers }) {
  const running = timers.filter((timer) => timer.stopped_ms === null);
  if (running.length === 0) return null;
  return html`<section class="block"><h2>${t("block.timers")}</h2>
    <div class="rows">${running.map(
      (timer) => html`<div class="row row-still" key=${timer.id}>
      <span class="row-main"><span class="row-title">${timer.label}</span>
        <span class="row-detail"><${CountdownWords} dueMs=${timer.due_ms} /></span></span>
      <${Tap} class="second" onTap=${() => act("timer_stopped", { make, ref: timer.id }, t("said.timer_stopped", { label: timer.label }))}>${t("timer.stop")}</${Tap}>
    </div>`,
    )}</div>
  </section>`;
}
