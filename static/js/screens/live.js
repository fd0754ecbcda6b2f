import { useEffect } from "preact/hooks";
import { html } from "../parts/html.js";
import { dayEndWords } from "../parts/day-end.js";
import { alertText } from "../parts/alert-line.js";
import { matterText, openOf } from "../parts/matter-line.js";
import { BrokenLines } from "../parts/broken-lines.js";
import { dueTitle } from "../parts/due-title.js";
import { DayBand } from "../parts/day-band.js";
import { SmallCurve } from "../parts/small-curve.js";
import { Ticks } from "../parts/countdown.js";
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
import { age, clock, clockDay, measured, quantity, span } from "../format.js";
import { stepTitle } from "../parts/step-title.js";
import { t, tn } from "../messages/index.js";
import { go } from "../router.js";
import { nameOf } from "../parts/people-names.js";

const STALE_MS = 45000; // the server says something at least each 15 s
const HOUR_SHOWN = 6;
const IN_HOUR = ["late", "now", "hour"];

/** @param {{main: StepSummary["main"]}} props */
function Figure({ main }) {
  if (main?.kind === "water")
    return html`<span class="live-fact"><span class="label">${t("water." + main.part)}</span>
      <b>${measured(main.value, "L")} ${quantity("water_temp_c", main.temp_c)}</b></span>`;
  if (main?.kind !== "target" || !main.quantity) return null;
  const last = main.last
    ? quantity(main.quantity, main.last.value ?? main.last)
    : t("live.not_read");
  return html`<span class="live-fact"><span class="label">${t("quantity." + main.quantity)}</span> <b>${last}</b></span>
    <span class="live-fact"><span class="label">${t("live.aim")}</span> <b>${quantity(main.quantity, main.value)}</b></span>`;
}

/** @param {{step: StepSummary}} props */
function StepLine({ step }) {
  const by = step.timing?.state === "late" ? span(step.timing.by_s) : null;
  return html`<div class="live-step">
    <b class="live-title"><${StateMark} bare state=${step.mark} /> ${stepTitle(step)}</b>
    ${step.due_ms ? html`<span class="live-time"><${Ticks} dueMs=${step.due_ms} /></span>` : null}
    ${by ? html`<span class="live-fact"><${StateMark} state="late" word=${t("make.late", { by })} /></span>` : null}
    <${Figure} main=${step.main} />
    <${TaskWords} task=${step.task} />
  </div>`;
}

/**
 * What is late and what the next hour holds of one make, as the core groups it.
 *
 * @param {{due: Due[] | undefined}} props none while the server's picture stands in
 */
function NextHour({ due }) {
  if (!due) return null;
  return html`<section class="live-next"><h3 class="label">${t("live.next_hour")}</h3>
    ${due.length ? null : html`<span>${t("live.nothing_hour")}</span>`}
    <ul>${due.slice(0, HOUR_SHOWN).map(
      (one) => html`<li key=${[one.step, one.what, one.quantity, one.timer].join()}>
      <span>${dueTitle(one)}</span>
      ${one.level === "later" ? html`<b>${clock(one.due_ms)}</b>` : html`<${StateMark} state=${one.mark} />`}</li>`,
    )}</ul>
    ${due.length > HOUR_SHOWN ? html`<span class="quiet">${tn("now.more_alerts", due.length - HOUR_SHOWN)}</span>` : null}
  </section>`;
}

/** @param {{make: MakeSummary, nowMs: number, isStale: boolean, due?: Due[]}} props */
function LiveCard({ make, nowMs, isStale, due }) {
  const steps = make.running?.length ? make.running : make.focus ? [make.focus] : [];
  const matters = openOf(make.matters);
  const state = matters[0]?.level ?? make.alerts[0]?.level ?? "ok";
  return html`<article class="card live-card">
    <header class="card-head"><b class="live-vat">${make.vat || make.name}</b> <${PracticeMark} of=${make} /><span>${make.vat ? make.name + " · " : ""}${t("make.batch", { batch: make.batch })}</span></header>
    ${isStale ? html`<p class="live-old">${t("live.as_of", { at: clockDay(nowMs, secondMs.value) })}</p>` : null}
    <${DayBand} band=${make.band} />
    ${matters.map((matter) => html`<p key=${matter.id} class="card-state"><${StateMark} state=${matter.level} /> ${matterText(matter)}</p>`)}
    ${make.alerts.slice(0, 3).map((alert) => html`<p key=${alert.id} class="card-state"><${StateMark} state=${alert.level} /> ${alertText(alert, steps)}${alert.acknowledged ? " " + t("alert.seen_short") : ""}</p>`)}
    <div class="live-parts">
      <div>${steps.map((step) => html`<${StepLine} key=${step.key} step=${step} />`)}</div>
      <${SmallCurve} make=${make.id} changedMs=${nowMs} />
      <${NextHour} due=${due} />
    </div>
    <footer class="live-foot">
      <span>${dayEndWords(make.day, nowMs)}</span>
      ${make.whole.expected_end_ms > make.day.expected_end_ms ? html`<span>${t("live.whole_end", { at: clockDay(make.whole.expected_end_ms, nowMs) })}</span>` : null}
      <span class="quiet" data-state=${state}>${make.last_word_ms ? t("live.last_entry", { age: age(secondMs.value - make.last_word_ms) }) : t("live.no_entry")}</span>
      <${Tap} class="second" onTap=${() => go("make", make.id)}>${t("live.open")}</${Tap}>
    </footer>
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
  const due = isFirst ? undefined : board.value?.due;
  const dueOf = (/** @type {string} */ make) =>
    due?.filter((one) => one.make === make && IN_HOUR.includes(one.when ?? "now"));
  const heard = Number.isFinite(oldMs)
    ? t("live.heard", { age: age(oldMs) })
    : t("live.never_heard");
  return html`<div class=${isStale ? "sheet is-stale" : "sheet"}><div class="scroll">
    <h1>${t("nav.live")}</h1>
    <p class="live-word"><${StateMark} state=${isStale ? "check" : "ok"} word=${t(isStale ? "live.stale" : isFirst ? "live.first" : "live." + live.value)} /> ${heard}</p>
    <${BrokenLines} rows=${shown?.broken} nowMs=${shown?.now_ms} onOpen=${(/** @type {string} */ make) => go("make", make)} />
    <div class="cards live-cards">${makes.map((make) => html`<${LiveCard} key=${make.id} make=${make} nowMs=${shown?.now_ms} isStale=${isStale} due=${dueOf(make.id)} />`)}</div>
    <${Phones} phones=${picture.value?.phones} />
    ${makes.length ? null : html`<p class="lead">${t("live.no_makes")}</p>`}
  </div></div>`;
}
