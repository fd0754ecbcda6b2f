import { useEffect } from "preact/hooks";
import { html } from "../parts/html.js";
import { StateMark } from "../parts/state-mark.js";
import { Tap } from "../parts/tap.js";
import { secondMs } from "../parts/ticker.js";
import { silenceAlarm } from "../parts/alarm-bar.js";
import { alarmPlace, alarmText, markOf, sinceText } from "../parts/alarm-words.js";
import { may, nameOf } from "../parts/people-names.js";
import { shift, startShift } from "../parts/shift.js";
import { sound } from "../parts/sound.js";
import { keepAwake, watch } from "../parts/source.js";
import { alarms, beWall, ring, tellOfWall, wallWordMs } from "../data/alarm.js";
import { age, clock, clockDay, ticks } from "../format.js";
import { own, t, tn } from "../messages/index.js";
import { go } from "../router.js";

const STALE_MS = 15000; // it asks each 5 s
const ROWS = 5; // more could not be read from across the room

/**
 * @typedef {Partial<Omit<Deadline, "due_ms">> & {id: string, due_ms: number | null}}
 *   WallRow a deadline, or a make that has none
 */

/**
 * The next deadline of each make, then what else is next, by its instant.
 *
 * @param {{id: string, name: string, vat: string | null}[]} makes
 * @param {Deadline[]} deadlines
 * @param {number} most
 * @returns {WallRow[]}
 */
export function rowsOf(makes, deadlines, most = ROWS) {
  const first = makes.map(
    (make) =>
      deadlines.find((deadline) => deadline.make === make.id) ?? {
        id: make.id,
        make: make.id,
        make_name: make.name,
        vat: make.vat,
        due_ms: null,
      },
  );
  const rest = deadlines
    .filter((deadline) => !first.includes(deadline))
    .slice(0, Math.max(0, most - first.length));
  return [...first, ...rest]
    .sort((a, b) => (a.due_ms ?? Infinity) - (b.due_ms ?? Infinity))
    .slice(0, Math.max(most, first.length));
}

/** @param {{deadline: WallRow}} props */
function DeadlineRow({ deadline }) {
  const leftS =
    deadline.due_ms === null ? null : (deadline.due_ms - secondMs.value) / 1000;
  const what =
    deadline.due_ms === null
      ? t("wall.no_deadline")
      : deadline.kind === "timer"
        ? deadline.label
        : own(deadline.title);
  return html`<div class="wall-row">
    <span class="wall-name">${what}<small>${[deadline.make_name, deadline.vat].filter(Boolean).join(" · ")}${deadline.due_ms === null ? "" : " · " + clockDay(deadline.due_ms, secondMs.value)}</small></span>
    ${leftS === null ? null : html`<span class="wall-time" role="timer">${leftS < 0 ? "+" : ""}${ticks(Math.abs(leftS))}</span>`}
  </div>`;
}

/** @param {{alarm: Alarm}} props */
function WallAlarm({ alarm }) {
  const isOpen = alarm.state === "unacknowledged";
  const words = alarm.acknowledged
    ? t("alarm.silenced_by", {
        name: nameOf(alarm.acknowledged.by),
        at: clock(alarm.acknowledged.at_ms),
      })
    : alarm.shelved
      ? t("alarm.state_shelved")
      : sinceText(alarm);
  return html`<div class=${`wall-alarm alarm-${markOf(alarm.priority)} ${isOpen ? "" : "is-answered"}`} data-alarm=${alarm.state} role=${isOpen ? "alert" : "note"}>
    <span><${StateMark} state=${isOpen ? markOf(alarm.priority) : "ok"} /> ${alarmText(alarm)}<br />${alarmPlace(alarm)} · ${words}</span>
    ${isOpen && may("alert_acknowledged") ? html`<${Tap} class="second" onTap=${() => silenceAlarm(alarm)}>${t("alarm.silence")}</${Tap}>` : null}
  </div>`;
}

/** @param {{isStale: boolean}} props */
function Word({ isStale }) {
  const heard = wallWordMs.value
    ? t("live.heard", { age: age(secondMs.value - wallWordMs.value) })
    : t("live.never_heard");
  return html`<div class="wall-word"><${StateMark} state=${isStale ? "check" : "ok"} word=${t(isStale ? "wall.stale" : "wall.fresh")} /> ${heard}
    <br />${t("wall.sound_" + (shift.value ? sound.value : "off"))}</div>`;
}

function canRing() {
  return Boolean(shift.value) && sound.value === "ready";
}

/** The room's display: what falls due in every make, and the room's loudest bell. */
export function WallScreen() {
  useEffect(() => {
    keepAwake(true, "wall");
    const ending = [watch(), beWall(canRing)];
    return () => {
      keepAwake(false, "wall");
      ending.forEach((end) => end());
    };
  }, []);
  const shown = alarms.value;
  const isStale = !wallWordMs.value || secondMs.value - wallWordMs.value > STALE_MS;
  const isReady = canRing();
  useEffect(() => {
    tellOfWall(isReady);
  }, [isReady]);
  const standing = (shown?.alarms ?? []).filter((alarm) => alarm.state !== "returned");
  const open = standing.filter((alarm) => alarm.state === "unacknowledged");
  const most = Math.max(1, ROWS - standing.length);
  const rows = rowsOf(shown?.makes ?? [], shown?.deadlines ?? [], most);
  const isRinging = ring.value.ids.length > 0 && isReady;
  return html`<main class=${isStale ? "wall is-stale" : "wall"} data-ringing=${isRinging ? ring.value.priority : undefined}>
    <div class="wall-head"><div class="wall-clock">${clock(secondMs.value)}</div><${Word} isStale=${isStale} /></div>
    ${isReady ? null : html`<${Tap} class="primary wall-unlock" onTap=${startShift}>${t("wall.unlock")}</${Tap}>`}
    ${open.slice(0, 3).map((alarm) => html`<${WallAlarm} key=${alarm.id} alarm=${alarm} />`)}
    ${open.length > 3 ? html`<p class="wall-word">${tn("now.more_alerts", open.length - 3)}</p>` : null}
    <div class="wall-rows">
      ${rows.map((deadline) => html`<${DeadlineRow} key=${deadline.id} deadline=${deadline} />`)}
      ${shown && rows.length === 0 ? html`<p class="wall-name">${t("now.no_makes")}</p>` : null}
      ${standing
        .filter((alarm) => alarm.state !== "unacknowledged")
        .slice(0, 2)
        .map((alarm) => html`<${WallAlarm} key=${alarm.id} alarm=${alarm} />`)}
    </div>
    <${Tap} class="second" onTap=${() => go("menu")}>${t("nav.menu")}</${Tap}>
  </main>`;
}
