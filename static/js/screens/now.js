import { useState } from "preact/hooks";
import { html } from "../parts/html.js";
import { dayEndWords } from "../parts/day-end.js";
import { act } from "../parts/acts.js";
import { BrokenLines, UnreadLines } from "../parts/broken-lines.js";
import { ClashLines } from "../parts/clash-lines.js";
import { alertText } from "../parts/alert-line.js";
import { CountdownWords } from "../parts/countdown.js";
import { Row } from "../parts/sheet.js";
import { StateMark } from "../parts/state-mark.js";
import { stepTitle } from "../parts/step-title.js";
import { Tap } from "../parts/tap.js";
import { sizeTitle } from "../parts/size-title.js";
import { sharesWork, TaskButton, TaskWords } from "../parts/task-line.js";
import { PracticeMark } from "../parts/practice-mark.js";
import { board } from "../parts/source.js";
import { may } from "../parts/people-names.js";
import { clockDay, count } from "../format.js";
import { inside, own, t, tn } from "../messages/index.js";
import { go } from "../router.js";
import { chooseStep } from "../parts/chosen.js";

const LATER_SHOWN = 6;
/** @type {DueWhen[]} */
const GROUPS = ["late", "now", "hour", "today", "days"];

/** @param {Due} due */
function open(due) {
  if (due.tank) return go("store", "tank", due.tank);
  if (due.step) chooseStep(due.make, due.step);
  if (due.what === "reading" && due.step && due.quantity)
    return go("make", due.make, "reading", due.step, due.quantity);
  return go("make", due.make);
}

/** @param {Due} due */
function dueTitle(due) {
  if (due.what === "timer") return due.label ?? t("due.timer");
  if (due.what === "unload")
    return tn("due.unload", due.wheels ?? 0, {
      n: count(due.wheels ?? 0),
      tank: due.label,
      size: inside(sizeTitle(due.size ?? "")),
    });
  if (due.what === "reading")
    return t("due.reading", {
      what: t("quantity." + due.quantity),
      step: own(due.title),
    });
  return t("due." + due.what, { step: stepTitle(due) });
}

/** @param {Due} due */
function turned(due) {
  return act(
    "wheel_turned",
    { make: due.make, data: { step: due.step } },
    t("said.turned"),
  );
}

/** @param {{due: Due, hasTask: boolean}} props */
function DueTap({ due, hasTask }) {
  if (!may("work") || due.level === "later") return null;
  if (due.what === "turn")
    return html`<${Tap} class="second due-tap" onTap=${() => turned(due)}>${t("due.turned")}</${Tap}>`;
  if (!hasTask || !sharesWork()) return null;
  return html`<${TaskButton} class="second due-tap" make=${due.make} step=${due.step} task=${due.task} />`;
}

/** @param {{due: Due, nowMs: number, hasTask: boolean}} props */
function DueRow({ due, nowMs, hasTask }) {
  const isLater = due.level === "later";
  const side = isLater
    ? html`<${CountdownWords} dueMs=${due.due_ms} />`
    : html`<${StateMark} state=${due.level} word=${due.what === "step_begin" ? t("due.can_begin") : undefined} />`;
  const detail = html`${due.make_name ?? ""} <${PracticeMark} of=${due} />
    ${due.late_ms && !isLater && due.late_ms > nowMs ? html`<span class="task-words">${t("due.may_wait", { at: clockDay(due.late_ms, nowMs) })}</span>` : null}
    ${hasTask ? html`<${TaskWords} task=${due.task} />` : null}`;
  return html`<div class="due">
    <${Row} class=${isLater ? "" : "is-due"} title=${dueTitle(due)} detail=${detail} side=${side} onTap=${() => open(due)} />
    <${DueTap} due=${due} hasTask=${hasTask} />
  </div>`;
}

/** @param {Due} due */
const keyOf = (due) =>
  [due.make, due.step, due.what, due.quantity, due.timer, due.load].join();

/**
 * One group of what is due; the far ones only as many as fit, until asked for.
 *
 * @param {{name: string, rows: Due[], nowMs: number, withTask: Set<Due>}} props
 */
function Group({ name, rows, nowMs, withTask }) {
  const [isAll, setAll] = useState(false);
  if (!rows.length) return null;
  const shown =
    isAll || name === "late" || name === "now" ? rows : rows.slice(0, LATER_SHOWN);
  const left = rows.length - shown.length;
  return html`<section class="due-group"><h2>${t("now." + name)}</h2><div class="rows">
    ${shown.map((due) => html`<${DueRow} key=${keyOf(due)} due=${due} nowMs=${nowMs} hasTask=${withTask.has(due)} />`)}
    ${left > 0 ? html`<${Row} title=${tn("now.show_more", left)} onTap=${() => setAll(true)} />` : null}
  </div></section>`;
}

/**
 * The rows that speak for their step: the first one of each.
 *
 * @param {Due[]} rows
 */
function firstOfSteps(rows) {
  const seen = new Set();
  return new Set(
    rows.filter((due) => {
      const key = due.make + due.step;
      // Beside a turn stands the tap that says it was done.
      if (!due.step || due.what === "turn" || seen.has(key)) return false;
      seen.add(key);
      return true;
    }),
  );
}

/** @param {{make: MakeSummary, nowMs: number}} props */
function MakeCard({ make, nowMs }) {
  const waiting = make.alerts.filter((one) => !one.acknowledged);
  const worst = waiting[0];
  return html`<${Tap} class="card" onTap=${() => go("make", make.id)}>
    <span class="card-head"><b>${make.name}</b> <${PracticeMark} of=${make} /><span>${t("make.batch", { batch: make.batch })}${make.vat ? " · " + make.vat : ""}</span></span>
    <span class="card-step">${make.focus ? own(make.focus.title) : t("make_state." + (make.state === "running" ? "no_step" : make.state))}</span>
    ${make.focus?.due_ms ? html`<span class="card-time"><${CountdownWords} dueMs=${make.focus.due_ms} /></span>` : null}
    ${
      worst
        ? html`<span class="card-state"><${StateMark} state=${worst.level} /> ${alertText(worst, make.focus ? [make.focus] : [])}</span>`
        : html`<span class="card-state"><${StateMark} state="ok" /></span>`
    }
    ${waiting.length > 1 ? html`<span>${tn("now.more_alerts", waiting.length - 1)}</span>` : null}
    <span class="quiet">${dayEndWords(make.day, nowMs)}</span>
  </${Tap}>`;
}

/** All that is due, across makes, and each make as a card. */
export function NowScreen() {
  const shown = board.value;
  if (!shown)
    return html`<div class="sheet"><div class="scroll"><p class="lead">${t("now.loading")}</p></div></div>`;
  const nowMs = shown.now_ms;
  // What an older page kept tells no group: it hides nothing until the core answers.
  const group = (/** @type {string} */ name) =>
    shown.due.filter((due) => (due.when ?? "now") === name);
  const withTask = firstOfSteps(shown.due);
  const groups = (/** @type {string[]} */ names) =>
    names.map(
      (name) =>
        html`<${Group} key=${name} name=${name} rows=${group(name)} nowMs=${nowMs} withTask=${withTask} />`,
    );
  const isAnyDue = shown.due.some((due) => due.level !== "later");
  const open_ = shown.makes.filter((one) => one.is_open);
  return html`<div class="sheet">
    <div class="scroll"><div class="columns">
      <div class="column">
        <h1>${t("now.title")}</h1>
        <${BrokenLines} rows=${shown.broken} nowMs=${nowMs} onOpen=${(/** @type {string} */ make) => go("make", make)} />
        ${isAnyDue ? groups(GROUPS.slice(0, 2)) : html`<p class="lead"><${StateMark} state="ok" word=${t("now.nothing")} /></p>`}
        <${ClashLines} clashes=${shown.clashes} count=${shown.clash_count} nowMs=${nowMs} />
        ${groups(GROUPS.slice(2))}
        <${UnreadLines} unread=${shown.unread} />
      </div>
      <div class="column">
        <h2>${t("now.makes")}</h2>
        ${
          open_.length
            ? html`<div class="rows">${open_.map((make) => html`<${MakeCard} key=${make.id} make=${make} nowMs=${shown.now_ms} />`)}</div>`
            : html`<p class="lead">${t("now.no_makes")}</p>`
        }
        <div class="rows rows-apart">
          <${Row} title=${t("now.past")} onTap=${() => go("makes")} />
        </div>
      </div>
    </div></div>
    ${may("make_opened") ? html`<div class="foot foot-quiet"><${Tap} class=${open_.length ? "second wide" : "primary"} onTap=${() => go("new")}>${t("new.title")}</${Tap}></div>` : null}
  </div>`;
}

/** Every make known on this phone, newest first, with its record. */
export function MakesScreen() {
  const { makes, now_ms: nowMs } = board.value ?? { makes: [], now_ms: 0 };
  return html`<div class="sheet"><div class="scroll"><h1>${t("now.past")}</h1>
    <div class="rows">${makes.map(
      (make) => html`<${Row} key=${make.id} title=${`${make.name} · ${make.batch}`}
      detail=${`${own(make.recipe_title)} · ${clockDay(make.opened_ms, nowMs)}`}
      side=${t("make_state.short_" + make.state)} onTap=${() => go("make", make.id, "record")} />`,
    )}</div>
    ${makes.length ? null : html`<p class="lead">${t("now.no_makes")}</p>`}
  </div></div>`;
}
