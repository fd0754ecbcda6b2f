import { useEffect, useState } from "preact/hooks";
import { Facts } from "../parts/facts.js";
import { html } from "../parts/html.js";
import { Choices, Sheet } from "../parts/sheet.js";
import { CountdownWords } from "../parts/countdown.js";
import { StateMark } from "../parts/state-mark.js";
import { Tap } from "../parts/tap.js";
import { TextField } from "../parts/text-field.js";
import { act } from "../parts/acts.js";
import { silenceAlarm } from "../parts/alarm-bar.js";
import { alarmText } from "../parts/alarm-words.js";
import { may, nameOf } from "../parts/people-names.js";
import { shift } from "../parts/shift.js";
import { nowMs } from "../parts/source.js";
import { Table } from "../parts/table.js";
import { secondMs } from "../parts/ticker.js";
import { alarms, foundLate, lookAgain, ring } from "../data/alarm.js";
import { age, clockDay, span } from "../format.js";
import { own, t, whyWords } from "../messages/index.js";
import { swap } from "../router.js";
import { Rungs } from "./alarms/rungs.js";

const TIMER = "timer/"; // how the matter of a timer begins; its id follows
const SHELVES_S = [900, 3600, 7200, 14400, 28800]; // the last is the core's limit

/** @param {Alarm} alarm */
function stateWords(alarm) {
  const now = nowMs();
  if (alarm.shelved) {
    return t("alarm.shelved_by", {
      name: nameOf(alarm.shelved.by),
      until: clockDay(alarm.shelved.until_ms, now),
      why: whyWords(alarm.shelved.why),
    });
  }
  if (alarm.state === "returned")
    return t("alarm.returned", { at: clockDay(alarm.returned_ms, now) });
  if (alarm.acknowledged)
    return t("alarm.silenced_by", {
      name: nameOf(alarm.acknowledged.by),
      at: clockDay(alarm.acknowledged.at_ms, now),
    });
  return t(alarm.escalated ? "alarm.escalated" : "alarm.waits", {
    at: clockDay(alarm.escalates_ms, now),
  });
}

/** @param {Alarm} alarm */
async function unshelve(alarm) {
  await act("entry_struck", {
    make: alarm.make,
    ref: alarm.shelved?.id,
    data: { why: t("alarm.unshelve") },
  });
  lookAgain();
}

/** @param {Alarm} alarm */
async function stopTimer(alarm) {
  const ref = alarm.matter.slice(TIMER.length);
  await act(
    "timer_stopped",
    { make: alarm.make, ref },
    t("said.timer_stopped", { label: alarm.numbers.value }),
  );
  lookAgain();
}

/** @param {Alarm} alarm */
function alarmRows(alarm) {
  return [
    [t("fact.vat"), alarm.vat],
    [t("fact.make"), alarm.make_name],
    [t("fact.began"), t("fact.ago", { age: age(secondMs.value - alarm.rings_ms) })],
  ];
}

/** @param {{alarm: Alarm, onShelve: () => void}} props */
function AlarmRow({ alarm, onShelve }) {
  const isOpen = alarm.state !== "returned";
  const lateMs = foundLate.value[alarm.id];
  const isRinging = ring.value.ids.includes(alarm.id) && shift.value;
  return html`<div class="alarm-row" data-state=${alarm.state} data-ringing=${isRinging ? alarm.priority : undefined}>
    <div class="alarm-text">
      <p><${StateMark} state=${alarm.mark} word=${t("alarm.state_" + alarm.state)} /> <b>${alarmText(alarm)}</b></p>
      <${Facts} rows=${alarmRows(alarm)} />
      ${lateMs ? html`<p class="quiet">${t("alarm.found_late", { by: span(lateMs / 1000) })}</p>` : null}
      ${alarm.do ? html`<p><b>${t("alert.do")}</b> ${own(alarm.do)}</p>` : null}
      <p>${stateWords(alarm)}</p>
    </div>
    <div class="alarm-buttons">
      ${alarm.is_open && may("alert_acknowledged") ? html`<${Tap} class="second" onTap=${() => silenceAlarm(alarm)}>${t("alarm.silence")}</${Tap}>` : null}
      ${isOpen && alarm.kind === "timer" && may("timer_stopped") ? html`<${Tap} class="second" onTap=${() => stopTimer(alarm)}>${t("timer.stop")}</${Tap}>` : null}
      ${isOpen && !alarm.shelved && may("alarm_shelved") ? html`<${Tap} class="second" onTap=${onShelve}>${t("alarm.shelve")}</${Tap}>` : null}
      ${alarm.shelved && may("alarm_shelved") ? html`<${Tap} class="second" onTap=${() => unshelve(alarm)}>${t("alarm.unshelve")}</${Tap}>` : null}
    </div>
  </div>`;
}

/** @param {{alarm: Alarm, onBack: () => void}} props */
function Shelve({ alarm, onBack }) {
  const [seconds, setSeconds] = useState(SHELVES_S[1]);
  const [why, setWhy] = useState("");
  const send = async () => {
    const data = { alert: alarm.matter, for_s: seconds, why: why.trim() };
    const event = await act(
      "alarm_shelved",
      { make: alarm.make, data },
      t("said.alarm_shelved", { span: span(seconds) }),
    );
    lookAgain();
    if (event) onBack();
  };
  return html`<${Sheet} title=${t("alarm.shelve")} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${why.trim() === ""} onTap=${send}>${t("alarm.shelve_for", { span: span(seconds) })}</${Tap}>`}>
    <p class="lead">${alarmText(alarm)}</p>
    <p>${t("alarm.shelve_lead")}</p>
    <${Choices} label=${t("alarm.how_long")} chosen=${seconds} onChoose=${setSeconds}
      options=${SHELVES_S.map((key) => ({ key, title: span(key) }))} />
    <${TextField} label=${t("alarm.why")} value=${why} onInput=${setWhy} longest=${400} />
  </${Sheet}>`;
}

/** @param {{rows: Deadline[]}} props */
function Deadlines({ rows }) {
  if (!rows.length) return null;
  const columns = [
    { title: t("fact.what") },
    { title: t("fact.vat") },
    { title: t("fact.left"), isNumber: true },
  ];
  const lines = rows.map((deadline) => ({
    key: deadline.id,
    cells: [
      deadline.kind === "timer" ? deadline.label : own(deadline.title),
      deadline.vat ?? deadline.make_name,
      html`<b><${CountdownWords} dueMs=${deadline.due_ms} /></b>`,
    ],
  }));
  return html`<h2>${t("alarm.ahead")}</h2>
    <div class="told"><${Table} label=${t("alarm.ahead")} columns=${columns} rows=${lines} /></div>`;
}

/**
 * Every alarm with what became of it, and each way in which one can ring.
 *
 * @param {{rest: string[]}} props
 */
export function AlarmsScreen({ rest }) {
  const [shelving, setShelving] = useState(/** @type {Alarm | null} */ (null));
  useEffect(() => {
    lookAgain();
  }, []);
  if (shelving)
    return html`<${Shelve} alarm=${shelving} onBack=${() => setShelving(null)} />`;
  const rows = alarms.value?.alarms ?? [];
  return html`<div class="sheet"><div class="scroll"><h1>${t("nav.alarms")}</h1>
    ${
      rest[0] === "test"
        ? html`<div class="bar"><span class="bar-text">${t("push.arrived")}</span>
      <${Tap} class="bar-button" onTap=${() => swap("alarms")}>${t("word.done")}</${Tap}></div>`
        : null
    }
    <div class="columns"><div class="column">
      ${
        rows.length
          ? html`<div class="rows">${rows.map((alarm) => html`<${AlarmRow} key=${alarm.id} alarm=${alarm} onShelve=${() => setShelving(alarm)} />`)}</div>`
          : html`<p class="lead"><${StateMark} state="ok" word=${t("alarm.none")} /></p>`
      }
      <${Deadlines} rows=${alarms.value?.deadlines ?? []} />
    </div><div class="column"><${Rungs} /></div></div>
  </div></div>`;
}
