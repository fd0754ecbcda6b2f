import { useEffect } from "preact/hooks";
import { html } from "../parts/html.js";
import { widthOf } from "../parts/countdown.js";
import { DayBand } from "../parts/day-band.js";
import { StateMark } from "../parts/state-mark.js";
import { Tap } from "../parts/tap.js";
import { secondMs } from "../parts/ticker.js";
import { silenceAlarm } from "../parts/alarm-bar.js";
import { matterText, openOf } from "../parts/matter-line.js";
import { alarmText, sinceText } from "../parts/alarm-words.js";
import { may, nameOf } from "../parts/people-names.js";
import { shift, startShift } from "../parts/shift.js";
import { sound } from "../parts/sound.js";
import { keepAwake, watch } from "../parts/source.js";
import { alarms, beWall, ring, tellOfWall, wallWordMs } from "../data/alarm.js";
import { age, clock, ticks } from "../format.js";
import { own, t, tn } from "../messages/index.js";
import { go } from "../router.js";

const STALE_MS = 15000; // it asks each 5 s
// More at once could not be read from across the room.
const ALARMS = 3;
const BANDS = 4;

/**
 * Time left, or since: as large as its part of the wall allows.
 *
 * @param {{dueMs: number}} props
 */
function Time({ dueMs }) {
  const leftS = (dueMs - secondMs.value) / 1000;
  const text = (leftS < 0 ? "+" : "") + ticks(leftS < 0 ? -leftS : Math.ceil(leftS));
  const letters = widthOf(text);
  return html`<span class="wall-time" role="timer" style=${{ "--letters": letters }}>${text}</span>`;
}

/**
 * Whose it is: the vat, or where there is none, the make.
 *
 * @param {{vat: string | null, make_name: string}} of
 */
const vatOf = (of) => of.vat || of.make_name;

/** @param {{deadline: WallRow}} props */
function DeadlineRow({ deadline }) {
  const { due_ms: dueMs } = deadline;
  const what =
    dueMs === null
      ? t("wall.no_deadline")
      : deadline.kind === "timer"
        ? deadline.label
        : own(deadline.title);
  return html`<div class="wall-row wall-item">
    <span class="wall-name"><b class="wall-vat"><${StateMark} bare state=${deadline.mark} /> ${vatOf(deadline)}</b>
      <span class="wall-what">${what}</span></span>
    ${dueMs === null ? null : html`<${Time} dueMs=${dueMs} />`}
  </div>`;
}

/** @param {Alarm} alarm */
function saidOf(alarm) {
  if (alarm.acknowledged)
    return t("alarm.silenced_by", {
      name: nameOf(alarm.acknowledged.by),
      at: clock(alarm.acknowledged.at_ms),
    });
  return alarm.shelved ? t("alarm.state_shelved") : sinceText(alarm);
}

/** @param {{alarm: Alarm, dueMs?: number | null}} props dueMs: of what is late */
function WallAlarm({ alarm, dueMs = null }) {
  // What was answered is quiet, not well: its mark's own word would say OK.
  const word = alarm.is_open ? undefined : t("alarm.state_" + alarm.state);
  const mark = !alarm.is_open && dueMs !== null ? "late" : alarm.mark;
  return html`<div class=${`wall-alarm wall-item alarm-${alarm.mark} ${alarm.is_open ? "" : "is-answered"}`} data-alarm=${alarm.state} role=${alarm.is_open ? "alert" : "note"}>
    <span class="wall-name"><b class="wall-vat"><${StateMark} state=${mark} word=${word} /> ${vatOf(alarm)}</b>
      <span class="wall-what">${alarmText(alarm)}</span>
      <span class="wall-said">${saidOf(alarm)}</span></span>
    ${dueMs === null ? null : html`<${Time} dueMs=${dueMs} />`}
    ${alarm.is_open && may("alert_acknowledged") ? html`<${Tap} class="second" onTap=${() => silenceAlarm(alarm)}>${t("alarm.silence")}</${Tap}>` : null}
  </div>`;
}

// What asks to act rings, and stands among the alarms.
/** @param {{makes: NonNullable<Alarms["makes"]>}} props */
function WallMatters({ makes }) {
  return makes.flatMap((make) =>
    openOf(make.matters)
      .filter((matter) => matter.level !== "act")
      .map(
        (
          matter,
        ) => html`<p class="wall-matter" key=${make.id + matter.id}><${StateMark} state=${matter.level} />
          ${matterText(matter)} ${[make.vat, make.name].filter(Boolean).join(" · ")}</p>`,
      ),
  );
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
  const open = standing.filter((alarm) => alarm.is_open);
  const rows = shown?.wall ?? [];
  const isRinging = ring.value.ids.length > 0 && isReady;
  const closed = standing.filter((alarm) => !alarm.is_open);
  const byId = Object.fromEntries(closed.map((alarm) => [alarm.id, alarm]));
  const told = rows.map((row) => row.id);
  // An alarm of time is told by the instant that it is about.
  const isOfTime = (/** @type {Alarm} */ alarm) =>
    ["timer", "step_due", "step_late"].includes(alarm.kind);
  return html`<main class=${isStale ? "wall is-stale" : "wall"} data-ringing=${isRinging ? ring.value.priority : undefined}>
    <div class="wall-head"><div class="wall-clock">${clock(secondMs.value)}</div><${Word} isStale=${isStale} />
      <${Tap} class="second wall-menu" onTap=${() => go("menu")}>${t("nav.menu")}</${Tap}></div>
    ${isReady ? null : html`<${Tap} class="primary wall-unlock" onTap=${startShift}>${t("wall.unlock")}</${Tap}>`}
    <${WallMatters} makes=${shown?.makes ?? []} />
    <div class="wall-rows">
      ${open.slice(0, ALARMS).map((alarm) => html`<${WallAlarm} key=${alarm.id} alarm=${alarm} dueMs=${isOfTime(alarm) ? alarm.due_ms : null} />`)}
      ${rows.map((row) => (byId[row.id] ? html`<${WallAlarm} key=${row.id} alarm=${byId[row.id]} dueMs=${row.due_ms} />` : html`<${DeadlineRow} key=${row.id} deadline=${row} />`))}
      ${closed
        .filter((alarm) => !told.includes(alarm.id))
        .slice(0, 2)
        .map((alarm) => html`<${WallAlarm} key=${alarm.id} alarm=${alarm} />`)}
      ${shown && rows.length + open.length === 0 ? html`<div class="wall-item"><span class="wall-name wall-what">${t("now.no_makes")}</span></div>` : null}
    </div>
    ${open.length > ALARMS ? html`<p class="wall-matter">${tn("now.more_alerts", open.length - ALARMS)}</p>` : null}
    <div class="wall-bands">${(shown?.makes ?? []).slice(0, BANDS).map(
      (
        make,
      ) => html`<div class="wall-band" key=${make.id}><b>${make.vat || make.name}</b>
        <${DayBand} band=${make.band} isThin /></div>`,
    )}</div>
  </main>`;
}
