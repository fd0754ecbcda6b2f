import { useState } from "preact/hooks";
import { html } from "../parts/html.js";
import { dayEndWords } from "../parts/day-end.js";
import { act } from "../parts/acts.js";
import { BrokenLines, UnreadLines } from "../parts/broken-lines.js";
import { alertText } from "../parts/alert-line.js";
import { matterText, openOf } from "../parts/matter-line.js";
import { dueTitle } from "../parts/due-title.js";
import { CountdownWords, Ticks } from "../parts/countdown.js";
import { Row } from "../parts/sheet.js";
import { StateMark } from "../parts/state-mark.js";
import { Tap } from "../parts/tap.js";
import { sharesWork, TaskButton, TaskWords } from "../parts/task-line.js";
import { PracticeMark } from "../parts/practice-mark.js";
import { board } from "../parts/source.js";
import { may } from "../parts/people-names.js";
import { clock, clockDay } from "../format.js";
import { own, t, tn } from "../messages/index.js";
import { go } from "../router.js";
import { chooseStep } from "../parts/chosen.js";
import { Late } from "./late.js";

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
function turned(due) {
  return act(
    "wheel_turned",
    { make: due.make, data: { step: due.step } },
    t("said.turned"),
  );
}

/** @param {{due: Due}} props */
function DueTap({ due }) {
  if (!may("work") || due.level === "later") return null;
  if (due.what === "turn")
    return html`<${Tap} class="second due-tap" onTap=${() => turned(due)}>${t("due.turned")}</${Tap}>`;
  if (!due.leads || !sharesWork()) return null;
  return html`<${TaskButton} class="second due-tap" make=${due.make} step=${due.step} task=${due.task} />`;
}

/** @param {{due: Due}} props what is far off is told in words, the rest in figures */
function DueTime({ due }) {
  if (due.when !== "late" && due.when !== "hour")
    return html`<${CountdownWords} dueMs=${due.due_ms} />`;
  return html`<b class="due-time"><${Ticks} dueMs=${due.due_ms} /></b><span>${clock(due.due_ms)}</span>`;
}

/** @param {{due: Due, nowMs: number}} props */
function DueRow({ due, nowMs }) {
  const isLater = due.level === "later";
  const word = due.what === "step_begin" ? t("due.can_begin") : undefined;
  const mark = isLater ? null : html`<${StateMark} state=${due.mark} word=${word} />`;
  const side = html`<span class="due-stands">${mark}${isLater || due.level === "check" ? html`<${DueTime} due=${due} />` : null}</span>`;
  const detail = html`${due.make_name ?? ""} <${PracticeMark} of=${due} />
    ${due.late_ms && !isLater && due.late_ms > nowMs ? html`<span class="task-words">${t("due.may_wait", { at: clockDay(due.late_ms, nowMs) })}</span>` : null}
    ${due.leads ? html`<${TaskWords} task=${due.task} />` : null}`;
  return html`<div class="due">
    <${Row} class=${isLater ? "" : "is-due"} title=${dueTitle(due)} detail=${detail} side=${side} onTap=${() => open(due)} />
    <${DueTap} due=${due} />
  </div>`;
}

/** @param {Due} due */
const keyOf = (due) =>
  [due.make, due.step, due.what, due.quantity, due.timer, due.load].join();

/**
 * One group of what is due; the far ones only as many as fit, until asked for.
 *
 * @param {{name: string, rows: Due[], nowMs: number}} props
 */
function Group({ name, rows, nowMs }) {
  const [isAll, setAll] = useState(false);
  if (!rows.length) return null;
  const shown =
    isAll || name === "late" || name === "now" ? rows : rows.slice(0, LATER_SHOWN);
  const left = rows.length - shown.length;
  return html`<section class="due-group"><h2>${t("now." + name)}</h2><div class="rows">
    ${shown.map((due) => html`<${DueRow} key=${keyOf(due)} due=${due} nowMs=${nowMs} />`)}
    ${left > 0 ? html`<${Row} title=${tn("now.show_more", left)} onTap=${() => setAll(true)} />` : null}
  </div></section>`;
}

// What is for practice, and what falls together later, waits below in one line.
/** @param {{title: string, children?: any, class?: string}} props */
function Quiet({ title, children }) {
  const [isOpen, setOpen] = useState(false);
  return html`<div class="rows rows-apart">
    <${Row} class="is-quiet" title=${title} side=${isOpen ? "−" : "+"} onTap=${() => setOpen(!isOpen)} />
    ${isOpen ? children : null}
  </div>`;
}

/** @param {{board: Board}} props */
function Clashes({ board: { clashes, clash_count: count, now_ms: nowMs } }) {
  const lines = html`<${Late} screen="ClashLines" isPart clashes=${clashes} count=${count} nowMs=${nowMs} />`;
  // What an older page kept does not say how near they are.
  const isNear = clashes?.some((clash) => clash.is_soon ?? true);
  return isNear || !clashes?.length
    ? lines
    : html`<${Quiet} title=${t("now.clashes", { at: clockDay(clashes[0].at_ms, nowMs) })}>${lines}</${Quiet}>`;
}

/** @param {{rows: Due[], nowMs: number}} props */
function Practice({ rows, nowMs }) {
  if (!rows.length) return null;
  return html`<${Quiet} title=${tn("now.practice", rows.length)}>${rows.map((due) => html`<${DueRow} key=${keyOf(due)} due=${due} nowMs=${nowMs} />`)}</${Quiet}>`;
}

/** @param {{make: MakeSummary, nowMs: number}} props */
function MakeCard({ make, nowMs }) {
  const matters = openOf(make.matters);
  const alerts = make.alerts.filter((one) => !one.acknowledged);
  const worst = matters[0] ?? alerts[0];
  const words = matters.length
    ? matterText(matters[0])
    : alerts.length && alertText(alerts[0], make.focus ? [make.focus] : []);
  const count = matters.length + alerts.length;
  return html`<${Tap} class="card" onTap=${() => go("make", make.id)}>
    <span class="card-head"><b>${make.name}</b> <${PracticeMark} of=${make} /><span>${t("make.batch", { batch: make.batch })}${make.vat ? " · " + make.vat : ""}</span></span>
    ${make.band?.length ? html`<span class="card-band"><${Late} screen="DayBand" isPart isThin band=${make.band} /></span>` : null}
    <span class="card-step">${make.is_open && make.focus ? own(make.focus.title) : t("make_state." + (make.state === "running" ? "no_step" : make.state))}</span>
    ${make.is_open && make.focus?.due_ms ? html`<span class="card-time"><${CountdownWords} dueMs=${make.focus.due_ms} /></span>` : null}
    ${
      make.state === "discarded"
        ? html`<span class="card-state"><${StateMark} state="act" word=${t("make_state.short_discarded")} /></span>`
        : worst
          ? html`<span class="card-state"><${StateMark} state=${worst.level} /> ${words}</span>`
          : html`<span class="card-state"><${StateMark} state="ok" /></span>`
    }
    ${count > 1 ? html`<span>${tn("now.more_alerts", count - 1)}</span>` : null}
    ${make.is_open ? html`<span class="quiet">${dayEndWords(make.day, nowMs)}</span>` : null}
  </${Tap}>`;
}

/** All that is due, across makes, and each make as a card. */
export function NowScreen() {
  const shown = board.value;
  if (!shown)
    return html`<div class="sheet"><div class="scroll"><p class="lead">${t("now.loading")}</p></div></div>`;
  const nowMs = shown.now_ms;
  // What an older page kept tells no group: it hides nothing until the core answers.
  // What an older page kept does not say which it lists.
  const open_ = shown.makes.filter((one) => one.on_now ?? one.is_open);
  const isReal = open_.some((one) => one.is_open && !one.practice);
  const practice = isReal ? shown.due.filter((due) => due.practice) : [];
  const real = shown.due.filter((due) => !practice.includes(due));
  const cards = [...open_].sort((a, b) => Number(a.practice) - Number(b.practice));
  const group = (/** @type {string} */ name) =>
    real.filter((due) => (due.when ?? "now") === name);
  const groups = (/** @type {string[]} */ names) =>
    names.map(
      (name) =>
        html`<${Group} key=${name} name=${name} rows=${group(name)} nowMs=${nowMs} />`,
    );
  const isAnyDue = real.some((due) => due.level !== "later");
  return html`<div class="sheet">
    <div class="scroll"><div class="columns">
      <div class="column">
        <h1>${t("now.title")}</h1>
        <${BrokenLines} rows=${shown.broken} nowMs=${nowMs} onOpen=${(/** @type {string} */ make) => go("make", make)} />
        ${isAnyDue ? groups(GROUPS.slice(0, 2)) : html`<p class="lead"><${StateMark} state="ok" word=${t("now.nothing")} /></p>`}
        ${groups(GROUPS.slice(2))}
        <${Clashes} board=${shown} />
        <${Practice} rows=${practice} nowMs=${nowMs} />
        <${UnreadLines} unread=${shown.unread} />
      </div>
      <div class="column">
        <h2>${t("now.makes")}</h2>
        ${
          open_.length
            ? html`<div class="rows">${cards.map((make) => html`<${MakeCard} key=${make.id} make=${make} nowMs=${shown.now_ms} />`)}</div>`
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
