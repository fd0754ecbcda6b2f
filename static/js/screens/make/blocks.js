import { mouldCounts } from "../../parts/mould-counts.js";
import { html } from "../../parts/html.js";
import { CountdownWords } from "../../parts/countdown.js";
import { Row } from "../../parts/sheet.js";
import { StateMark } from "../../parts/state-mark.js";
import { Tap } from "../../parts/tap.js";
import { secondMs } from "../../parts/ticker.js";
import { act } from "../../parts/acts.js";
import { readingText, roundName } from "../../parts/reading-text.js";
import { FlocFacts, lastJudgement } from "./curd.js";
import { amount, clock, measured, span } from "../../format.js";
import { own, t, tn } from "../../messages/index.js";
import { go } from "../../router.js";

/** @param {{make: string, step: Step, reading: ReadingWanted}} props */
function ReadingButton({ make, step, reading }) {
  const isDue = reading.due_ms !== null && reading.due_ms <= secondMs.value;
  const name = roundName(step, reading.quantity);
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
        ? html`<${StateMark} state=${reading.overdue_s > 0 ? "late" : "due"} word=${reading.overdue_s > 0 ? t("reading.late", { by: span(reading.overdue_s) }) : undefined} />`
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
    <div class="rows">${step.readings.filter((reading) => !reading.goes_with).map((reading) => html`<${ReadingButton} key=${reading.quantity + reading.when} make=${make} step=${step} reading=${reading} />`)}</div>
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
        ? t("add.dose", { amount: measured(add.planned.value, add.planned.unit) })
        : t("add.no_plan");
      const off = add.added.some(
        (added) => added.verdict === "below" || added.verdict === "above",
      );
      return html`<${Row} key=${add.ingredient} title=${own(add.title)}
        detail=${put.length ? `${plan} · ${t("add.put", { list: put.join("; ") })}` : plan}
        side=${off ? html`<${StateMark} state="check" />` : add.done ? html`<${StateMark} state="done" word=${t("add.done")} />` : html`<${StateMark} state="due" />`}
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
      detail=${mouldCounts(mould)}
      onTap=${() => go("make", make, "mould", step.key, mould.size)} />`,
    )}</div>
  </section>`;
}

/**
 * That all wheels were turned: one tap, recorded with how many there are.
 *
 * @param {{make: string, step: Step}} props
 */
export function Turns({ make, step }) {
  if (!step.can_turn) return null;
  const { turn, turn_wheels: wheels } = step;
  const data = wheels ? { step: step.key, count: wheels } : { step: step.key };
  const title = wheels ? tn("turn.all", wheels) : t("more.turned");
  const isDue = turn && turn.due_ms <= secondMs.value;
  return html`<section class="block"><div class="rows"><${Row} class=${isDue ? "is-due" : ""} title=${title}
    detail=${turn ? t("reading.every", { span: span(turn.every_s) }) : ""}
    side=${isDue ? html`<${StateMark} state="due" />` : turn ? html`<${CountdownWords} dueMs=${turn.due_ms} />` : ""}
    onTap=${() => act("wheel_turned", { make, data }, t("said.turned"))} /></div></section>`;
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
