// What is seen under the wet lock, and the hold that leaves it.

const HOLD_MS = 1500;
const ROWS_SHOWN = 4;
const ALERTS_SHOWN = 2;

/** @param {import("../later.js").Kit} kit */
export function make(kit) {
  const {
    alarms,
    alarmText,
    alarmWhose,
    alertText,
    clock,
    Countdown,
    HoldBar,
    html,
    lastAct,
    MainFigure,
    may,
    own,
    ring,
    route,
    secondMs,
    silenceAlarm,
    StateMark,
    stepShown,
    stepTitle,
    t,
    trouble,
    view,
    whoseOf,
  } = kit;

  function topAlarm() {
    return (alarms.value?.alarms ?? []).find((alarm) => alarm.is_open);
  }

  /** @param {{alarm: Alarm}} props */
  function AlarmShown({ alarm }) {
    const isRinging = ring.value.ids.length > 0;
    return html`<section class=${`alarm-bar alarm-${alarm.mark}`} data-ringing=${isRinging ? alarm.priority : undefined} role="alert">
      <div class="alarm-text"><p class="alarm-head"><b class="alarm-whose">${alarmWhose(alarm, openMake())}</b> <${StateMark} state=${alarm.mark} /></p>
        <p><b>${alarmText(alarm)}</b></p></div></section>`;
  }

  const openMake = () => (route.value[0] === "make" ? route.value[1] : null);

  // Everything that runs: the open make's steps and timers, then other makes'.
  /** @type {(shown: ?View, step: ?Step) => {key: string, title: string, dueMs: number}[]} */
  function running(shown, step) {
    const ofMake = (shown?.countdowns ?? []).flatMap((each) => {
      const of = shown?.steps.find((other) => other.key === each.step);
      if (each.step && (!of || of.key === step?.key)) return [];
      const title = of ? stepTitle(of) : (each.label ?? "");
      return [{ key: each.timer ?? each.step ?? "", title, dueMs: each.due_ms }];
    });
    const others = (alarms.value?.deadlines ?? [])
      .filter((deadline) => deadline.make !== shown?.make.id)
      .map((deadline) => ({
        key: deadline.id,
        title: `${deadline.title ? own(deadline.title) : (deadline.label ?? "")} · ${whoseOf({ id: deadline.make, name: deadline.make_name, vat: deadline.vat })}`,
        dueMs: deadline.due_ms,
      }));
    return [...ofMake, ...others].slice(0, ROWS_SHOWN);
  }

  function Shown() {
    const shown = view.value;
    const isMake = route.value[0] === "make" && shown?.make.id === route.value[1];
    const open = isMake ? shown : null;
    const step = open ? stepShown(open) : null;
    const alarm = topAlarm();
    const alerts = (open?.alerts ?? []).filter(
      (alert) => !alert.acknowledged && alert.id !== alarm?.matter,
    );
    const last = lastAct.value;
    return html`<div class="lock-shown">
      ${alarm ? html`<${AlarmShown} alarm=${alarm} />` : null}
      ${trouble.value ? html`<p class="bar bar-act" role="alert">${trouble.value}</p>` : null}
      ${
        open && step
          ? html`<div class="lock-step">
        <p class="lock-title"><${StateMark} state=${step.mark} /> <b>${stepTitle(step)}</b> <b class="whose">${whoseOf(open.make)}</b></p>
        <${MainFigure} step=${step} alerts=${open.alerts} />
        ${step.status === "running" && step.due_ms && step.main?.kind !== "countdown" ? html`<${Countdown} dueMs=${step.due_ms} />` : null}
      </div>`
          : null
      }
      ${running(shown, step).map(
        (countdown) => html`<div class="lock-row" key=${countdown.key}>
        <p class="lock-title">${countdown.title}</p><${Countdown} dueMs=${countdown.dueMs} /></div>`,
      )}
      ${alerts.slice(0, ALERTS_SHOWN).map((alert) => html`<p class="lock-alert" key=${alert.id}><${StateMark} state=${alert.level} /> ${alertText(alert, open?.steps)}</p>`)}
      ${last && secondMs.value < last.untilMs ? html`<p class="lock-said" role="status">${last.said}</p>` : null}
    </div>`;
  }

  /** @param {{onLeave: () => unknown}} props */
  function Locked({ onLeave }) {
    const alarm = may("alert_acknowledged") ? topAlarm() : null;
    return html`<p class="lock-head"><b>${t("lock.title")}</b><span>${clock(secondMs.value)}</span></p>
      <${Shown} />
      <div class="lock-foot">${
        alarm
          ? html`<${HoldBar} key=${alarm.id} isFocused class="lock-hold" holdMs=${HOLD_MS} words=${t("lock.hold_alarm")} hint=${t("lock.hint_alarm")} onDone=${() => silenceAlarm(alarm)} />`
          : html`<${HoldBar} key="leave" isFocused class="lock-hold" holdMs=${HOLD_MS} words=${t("lock.hold")} hint=${t("lock.hint")} onDone=${onLeave} />`
      }</div>`;
  }

  return { Locked };
}
