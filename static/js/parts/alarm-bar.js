import { html } from "./html.js";
import { StateMark } from "./state-mark.js";
import { Tap } from "./tap.js";
import { act } from "./acts.js";
import { alarmText, alarmWhose, sinceText } from "./alarm-words.js";
import { may } from "./people-names.js";
import { shift } from "./shift.js";
import { sound } from "./sound.js";
import { chooseStep, stepShown } from "./chosen.js";
import { view } from "./source.js";
import { alarms, lookAgain, notOnWall, ring } from "../data/alarm.js";
import { count } from "../format.js";
import { t, tn } from "../messages/index.js";
import { go, route } from "../router.js";

/**
 * Silence one alarm: recorded with who and when, and it stays listed.
 *
 * @param {Alarm} alarm
 */
export async function silenceAlarm(alarm) {
  await act("alert_acknowledged", { make: alarm.make, data: { alert: alarm.matter } });
  lookAgain();
}

function soundWords() {
  if (!shift.value) return t("alarm.no_shift");
  return sound.value === "ready" ? null : t("alarm.sound_" + sound.value);
}

/**
 * Open the very step that an alarm is about.
 *
 * @param {Alarm} alarm
 */
function showStep(alarm) {
  if (alarm.step) chooseStep(alarm.make, alarm.step);
  go("make", alarm.make);
}

// There already, without a pad or sheet before it: nothing would change.
/** @type {(alarm: Alarm, parts: string[]) => boolean} */
function isShown(alarm, [screen, make, ...rest]) {
  const shown = view.value;
  if (
    screen !== "make" ||
    make !== alarm.make ||
    rest.length ||
    shown?.make.id !== make
  )
    return false;
  return !alarm.step || stepShown(shown)?.key === alarm.step;
}

/** The most urgent alarm that nobody has answered: what the bar says. */
export function topAlarm() {
  return (alarms.value?.alarms ?? []).find((alarm) => alarm.is_open);
}

/**
 * The matters or alerts that the bar does not say: what it says stands once on a
 * screen.
 *
 * @template {Matter | Alert} T
 * @param {string} make
 * @param {T[]} rows those of the make
 * @returns {T[]}
 */
export function notInBar(make, rows) {
  const top = topAlarm();
  const nameOf = (/** @type {T} */ one) => ("alert" in one ? one.alert : one.id);
  return rows.filter((one) => top?.make !== make || top.matter !== nameOf(one));
}

// The screen of its make says no more of a matter that rings: the way to it is here.
/** @type {(alarm: Alarm) => Matter | undefined} */
function matterHere(alarm) {
  const shown = view.value;
  const isHere = isShown({ ...alarm, step: null }, route.value);
  return isHere ? shown?.matters.find((one) => one.alert === alarm.matter) : undefined;
}

/** @param {{alarm: Alarm}} props */
function WayThere({ alarm }) {
  const matter = matterHere(alarm);
  // There the large button leads to it already.
  if (matter && view.value && stepShown(view.value)?.stopped_by?.includes(matter.id))
    return null;
  if (matter)
    return html`<${Tap} key=${"stands" + alarm.id} class="bar-button alarm-show" onTap=${() => go("make", alarm.make, "matters", matter.id)}>${t("button.stands")}</${Tap}>`;
  if (isShown(alarm, route.value)) return null;
  return html`<${Tap} key=${"show" + alarm.id} class="bar-button alarm-show" onTap=${() => showStep(alarm)}>${t("word.show")}</${Tap}>`;
}

/** @param {{alarm: Alarm, more: number}} props */
function Buttons({ alarm, more }) {
  return html`<div class="alarm-buttons">
    ${may("alert_acknowledged") ? html`<${Tap} key=${alarm.id} class="bar-button alarm-silence" onTap=${() => silenceAlarm(alarm)}>${t("alarm.silence")}</${Tap}>` : null}
    <${WayThere} alarm=${alarm} />
    ${more ? html`<${Tap} key="more" class="bar-button alarm-more" label=${tn("alarm.more", more)} onTap=${() => go("alarms")}>+${count(more)}</${Tap}>` : null}
  </div>`;
}

/** On every screen while an alarm waits for an answer: the most urgent, and silence. */
export function AlarmBar() {
  const waiting = (alarms.value?.alarms ?? []).filter((alarm) => alarm.is_open);
  const top = topAlarm();
  const isRinging = ring.value.ids.length > 0 && Boolean(shift.value);
  const offWall = notOnWall.value
    ? html`<p class="alarm-note" role="status">${tn("alarm.not_on_wall", notOnWall.value)}</p>`
    : null;
  const [screen, openMake] = route.value;
  if (!top || screen === "alarms") return offWall; // listed there in full
  const muted = soundWords();
  // Whose it is stands above it already: in the status bar of the make's own screen.
  const isHere = screen === "make" && openMake === top.make;
  return html`<section class=${`alarm-bar alarm-${top.mark} ${isHere ? "is-here" : ""}`} data-ringing=${isRinging ? top.priority : undefined} aria-label=${t("nav.alarms")}>
    <div class="alarm-text" role="alert">
      <p class="alarm-head"><b class="alarm-whose">${alarmWhose(top, screen === "make" ? openMake : null)}</b> <${StateMark} state=${top.mark} /></p>
      <p class="alarm-says"><b>${alarmText(top)}</b></p>
      ${muted ? html`<p class="alarm-muted">${muted}</p>` : null}
      <p class="alarm-where">${top.vat ? top.make_name + " · " : ""}${sinceText(top)}</p>
    </div>
    <${Buttons} alarm=${top} more=${waiting.length - 1} />
  </section>${offWall}`;
}
