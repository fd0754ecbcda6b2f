import { useEffect } from "preact/hooks";
import { html } from "../parts/html.js";
import { dayEndWords } from "../parts/day-end.js";
import { alertText } from "../parts/alert-line.js";
import { BrokenLines } from "../parts/broken-lines.js";
import { CountdownWords } from "../parts/countdown.js";
import { StateMark } from "../parts/state-mark.js";
import { Tap } from "../parts/tap.js";
import { TaskWords } from "../parts/task-line.js";
import { PracticeMark } from "../parts/practice-mark.js";
import { secondMs } from "../parts/ticker.js";
import {
  board,
  isBehind,
  lastWordMs,
  live,
  net,
  picture,
  waitedMs,
  watch,
} from "../parts/source.js";
import { age, clockDay, quantity, span } from "../format.js";
import { stepTitle } from "../parts/step-title.js";
import { t } from "../messages/index.js";
import { go } from "../router.js";
import { nameOf } from "../parts/people-names.js";

const STALE_MS = 45000; // the server says something at least each 15 s

/** @param {{step: StepSummary}} props */
function StepLine({ step }) {
  const main = step.main;
  return html`<div class="live-step">
    <b>${stepTitle(step)}</b>
    ${step.timing?.state === "late" ? html`<${StateMark} state="check" word=${t("step.late")} /> ${t("live.late", { by: span(step.timing.by_s) })}` : html`<span>${t("step." + step.status)}</span>`}
    <${TaskWords} task=${step.task} />
    ${step.due_ms ? html`<span class="live-time"><${CountdownWords} dueMs=${step.due_ms} /></span>` : null}
    ${main?.kind === "target" && main.quantity ? html`<span>${t("quantity." + main.quantity)} ${main.last ? quantity(main.quantity, main.last.value ?? main.last) : "–"} → ${quantity(main.quantity, main.value)}</span>` : null}
  </div>`;
}

/** @param {{make: MakeSummary, nowMs: number, isStale: boolean}} props */
function LiveCard({ make, nowMs, isStale }) {
  const steps = make.running?.length ? make.running : make.focus ? [make.focus] : [];
  const state = make.alerts[0]?.level ?? "ok";
  return html`<article class="card live-card">
    <header class="card-head"><b>${make.name}</b> <${PracticeMark} of=${make} /><span>${t("make.batch", { batch: make.batch })}${make.vat ? " · " + make.vat : ""}</span></header>
    ${isStale ? html`<p class="live-old">${t("live.as_of", { at: clockDay(nowMs, secondMs.value) })}</p>` : null}
    ${make.alerts.length === 0 ? html`<${StateMark} state="ok" />` : null}
    ${make.alerts.slice(0, 3).map((alert) => html`<p key=${alert.id} class="card-state"><${StateMark} state=${alert.level} /> ${alertText(alert, steps)}${alert.acknowledged ? " " + t("alert.seen_short") : ""}</p>`)}
    ${steps.map((step) => html`<${StepLine} key=${step.key} step=${step} />`)}
    <p>${dayEndWords(make.day, nowMs)}</p>
    ${make.whole.expected_end_ms > make.day.expected_end_ms ? html`<p>${t("live.whole_end", { at: clockDay(make.whole.expected_end_ms, nowMs) })}</p>` : null}
    <p class="quiet" data-state=${state}>${make.last_word_ms ? t("live.last_entry", { age: age(secondMs.value - make.last_word_ms) }) : t("live.no_entry")}</p>
    <${Tap} class="second" onTap=${() => go("make", make.id)}>${t("live.open")}</${Tap}>
  </article>`;
}

/**
 * When each phone of the room last spoke: a silent one may hold entries.
 *
 * @param {{phones?: {device: string, person: string, name: string, heard_ms: number}[]}} props
 */
function Phones({ phones }) {
  if (!phones?.length) return null;
  return html`<h2>${t("live.phones")}</h2><ul class="facts">${phones.map(
    (device) => html`<li key=${device.device}>
    <span>${nameOf(device.person)} · ${device.name}</span>
    <span>${t("live.phone_heard", { age: age(waitedMs(secondMs.value - device.heard_ms)) })}</span></li>`,
  )}</ul>`;
}

/** Every make as it moves, for who is elsewhere; what is old looks old. */
export function LiveScreen() {
  useEffect(() => watch(), []);
  // While this phone's log is behind, the server's own picture is the newer one.
  const isFirst = isBehind(picture.value, board.value);
  const shown = isFirst ? picture.value : board.value;
  const oldMs = lastWordMs.value
    ? waitedMs(secondMs.value - lastWordMs.value)
    : Infinity;
  const isStale = net.value !== "online" || oldMs > STALE_MS;
  const makes = (shown?.makes ?? []).filter((make) => make.is_open);
  const heard = Number.isFinite(oldMs)
    ? t("live.heard", { age: age(oldMs) })
    : t("live.never_heard");
  return html`<div class=${isStale ? "sheet is-stale" : "sheet"}><div class="scroll">
    <h1>${t("nav.live")}</h1>
    <p class="live-word"><${StateMark} state=${isStale ? "check" : "ok"} word=${t(isStale ? "live.stale" : isFirst ? "live.first" : "live." + live.value)} /> ${heard}</p>
    <${BrokenLines} rows=${shown?.broken} nowMs=${shown?.now_ms} onOpen=${(/** @type {string} */ make) => go("make", make)} />
    <div class="cards">${makes.map((make) => html`<${LiveCard} key=${make.id} make=${make} nowMs=${shown?.now_ms} isStale=${isStale} />`)}</div>
    <${Phones} phones=${picture.value?.phones} />
    ${makes.length ? null : html`<p class="lead">${t("now.no_makes")}</p>`}
  </div></div>`;
}
