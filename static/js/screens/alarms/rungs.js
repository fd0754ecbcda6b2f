import { useEffect, useState } from "preact/hooks";
import { html } from "../../parts/html.js";
import { Row } from "../../parts/sheet.js";
import { StateMark } from "../../parts/state-mark.js";
import { Tap } from "../../parts/tap.js";
import { whyOf } from "../../parts/acts.js";
import { may } from "../../parts/people-names.js";
import {
  endShift,
  endTest,
  isArmed,
  shift,
  startShift,
  startTest,
  testing,
} from "../../parts/shift.js";
import { sound } from "../../parts/sound.js";
import { board, net } from "../../parts/source.js";
import {
  askServer,
  escalateMin,
  openCalendar,
  setEscalation,
} from "../../data/alarm.js";
import {
  lookAtPush,
  push,
  testPush,
  turnOffPush,
  turnOnPush,
} from "../../data/push.js";
import { isKeptAwake } from "../../data/wake.js";
import { clockDay, span } from "../../format.js";
import { t } from "../../messages/index.js";
import { go } from "../../router.js";

const MINUTES = [3, 5, 10, 15, 30];

/**
 * One way to ring: armed or not, and why, in words.
 *
 * @param {{name: string, isOn: boolean, why: string, children?: any}} props
 */
function Rung({ name, isOn, why, children }) {
  return html`<li data-rung=${name} data-armed=${isOn ? "yes" : "no"}>
    <div><${StateMark} state=${isOn ? "ok" : "check"} word=${t(isOn ? "rung.armed" : "rung.not_armed")} /> <b>${t("rung." + name)}</b></div>
    <p>${why}</p>
    ${children}
  </li>`;
}

function phoneWhy() {
  if (!shift.value) return t("rung.phone_off");
  if (sound.value !== "ready") return t("alarm.sound_" + sound.value);
  if (!shift.value.heardMs) return t("rung.phone_unheard");
  const awake = t(isKeptAwake() ? "rung.phone_awake" : "rung.phone_sleeps");
  return `${t("rung.phone_on", { at: clockDay(shift.value.heardMs, shift.value.heardMs) })} ${awake}`;
}

function PhoneRung() {
  const start = async () => {
    if ((await startShift()) === "ready") startTest();
  };
  return html`<${Rung} name="phone" isOn=${isArmed()} why=${phoneWhy()}>
    ${
      testing.value
        ? html`<p class="lead">${t("rung.do_you_hear")}</p><div class="alarm-buttons">
        <${Tap} class="second" onTap=${() => endTest(true)}>${t("rung.heard")}</${Tap}>
        <${Tap} class="second" onTap=${() => endTest(false)}>${t("rung.not_heard")}</${Tap}></div>`
        : html`<div class="alarm-buttons">
        <${Tap} class="second" onTap=${start}>${t(shift.value ? "rung.test" : "rung.start")}</${Tap}>
        ${shift.value ? html`<${Tap} class="second" onTap=${endShift}>${t("rung.end")}</${Tap}>` : null}</div>`
    }
  </${Rung}>`;
}

/** @param {{walls: Wall[] | null}} props */
function WallRung({ walls }) {
  const living = (walls ?? []).filter((wall) => wall.lives);
  const ringing = living.find((wall) => wall.sound);
  const why =
    walls === null
      ? t("rung.unknown")
      : ringing
        ? t("rung.wall_on", { name: ringing.name, age: span(ringing.age_s) })
        : living.length
          ? t("rung.wall_mute", { name: living[0].name })
          : walls.length
            ? t("rung.wall_silent", { name: walls[0].name, age: span(walls[0].age_s) })
            : t("rung.wall_none");
  return html`<${Rung} name="wall" isOn=${Boolean(ringing)} why=${why}>
    <div class="alarm-buttons"><${Tap} class="second" onTap=${() => go("wall")}>${t("rung.wall_here")}</${Tap}></div>
  </${Rung}>`;
}

/**
 * What the server knows of the pushes to phones; `mine` are those to this one.
 *
 * @typedef {{
 *   why_not: string | null, sends: boolean, owner_live: boolean,
 *   subscriptions: {
 *     mine: boolean, lives: boolean, wants: string,
 *     status: number | null, ok_s: number | null,
 *   }[],
 * }} Pushes
 */

/**
 * @param {{here: string, server: Pushes | null}} known
 * @returns {[boolean, string]} whether it is armed, and why
 */
function pushState({ here, server }) {
  const mine = server?.subscriptions.find((subscription) => subscription.mine);
  if (!server) return [false, t("rung.unknown")];
  if (server.why_not) return [false, t("push." + server.why_not)];
  if (here !== "subscribed") return [false, t("push." + here)];
  if (!mine) return [false, t("push.not_posted")];
  if (!mine.lives) return [false, t("push.dropped", { status: mine.status })];
  if (!server.sends) return [false, t("push.no_sender")];
  if (mine.ok_s === null)
    return [
      false,
      mine.status === null
        ? t("push.never")
        : t("push.failed", { status: mine.status }),
    ];
  const words = t(mine.wants === "all" ? "push.on_all" : "push.on_unanswered", {
    age: span(mine.ok_s),
  });
  const isFailing = mine.status !== null && ![200, 201, 202].includes(mine.status);
  return [!isFailing, isFailing ? t("push.failed", { status: mine.status }) : words];
}

function PushRung() {
  const [said, setSaid] = useState("");
  const [isOn, why] = pushState(push.value);
  const { here, server } = push.value;
  const mayAsk =
    ["not_asked", "no_subscription", "subscribed"].includes(here) &&
    server &&
    !server.why_not;
  const run = (/** @type {() => any} */ work) => async () => {
    setSaid("");
    try {
      await work();
    } catch (failure) {
      setSaid(whyOf(failure));
    }
  };
  const test = run(async () => {
    const status = await testPush();
    setSaid(status === 201 ? t("push.test_sent") : t("push.failed", { status }));
  });
  return html`<${Rung} name="push" isOn=${isOn} why=${why}>
    ${said ? html`<p role="status">${said}</p>` : null}
    ${
      mayAsk
        ? html`<div class="alarm-buttons">
      <${Tap} class="second" onTap=${run(() => turnOnPush("all"))}>${t("push.turn_on")}</${Tap}>
      <${Tap} class="second" onTap=${run(() => turnOnPush("unanswered"))}>${t("push.turn_on_unanswered")}</${Tap}>
      ${
        here === "subscribed"
          ? html`<${Tap} class="second" onTap=${test}>${t("push.test")}</${Tap}>
        <${Tap} class="second" onTap=${run(turnOffPush)}>${t("push.turn_off")}</${Tap}>`
          : null
      }
    </div>`
        : null
    }
  </${Rung}>`;
}

function CalendarRung() {
  const makes = (board.value?.makes ?? []).filter((make) => make.is_open);
  const can = net.value === "online";
  return html`<${Rung} name="calendar" isOn=${false} why=${t(can ? "rung.calendar_how" : "rung.calendar_offline")}>
    ${can ? html`<div class="rows">${makes.map((make) => html`<${Row} key=${make.id} title=${t("rung.calendar_open", { name: make.name })} onTap=${() => openCalendar(make.id)} />`)}</div>` : null}
  </${Rung}>`;
}

function OwnerRung() {
  const [said, setSaid] = useState("");
  const live = Boolean(push.value.server?.owner_live) && !push.value.server?.why_not;
  const set = (/** @type {number} */ minutes) =>
    setEscalation(minutes).then(
      () => setSaid(""),
      (failure) => setSaid(whyOf(failure)),
    );
  const why =
    t("rung.owner_after", { min: escalateMin.value }) +
    " " +
    t(live ? "rung.owner_on" : push.value.server ? "rung.owner_off" : "rung.unknown");
  return html`<${Rung} name="owner" isOn=${live} why=${why}>
    ${said ? html`<p class="is-bad" role="alert">${said}</p>` : null}
    ${
      may("escalation")
        ? html`<div class="alarm-buttons" role="group" aria-label=${t("rung.owner_set")}>${MINUTES.map(
            (minutes) => html`<${Tap}
      key=${minutes} class="second" pressed=${minutes === escalateMin.value} onTap=${() => set(minutes)}>${t("rung.minutes", { min: minutes })}</${Tap}>`,
          )}</div>`
        : null
    }
  </${Rung}>`;
}

/** Every way in which an alarm can ring, each one armed or not. */
export function Rungs() {
  const [walls, setWalls] = useState(/** @type {Wall[] | null} */ (null));
  useEffect(() => {
    const ask = () => {
      askServer().then(
        (answer) => setWalls(answer.walls),
        () => setWalls(null),
      );
      lookAtPush();
    };
    ask();
    const asking = setInterval(ask, 20000);
    return () => clearInterval(asking);
  }, []);
  return html`<section><h2>${t("rung.title")}</h2><p>${t("rung.lead")}</p>
    <ul class="rungs"><${PhoneRung} /><${WallRung} walls=${walls} /><${PushRung} /><${CalendarRung} /><${OwnerRung} /></ul>
  </section>`;
}
