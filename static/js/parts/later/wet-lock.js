// What is seen under the wet lock, and the hold that leaves it.

const HOLD_MS = 1500;
// A finger lets go when it is told to; a drop stays, and is no finger.
const LONGEST_MS = 6000;
const ROWS_SHOWN = 4;
const ALERTS_SHOWN = 2;

/**
 * @param {object} kit what parts/later.js hands over
 * @returns {{Locked: function}} the locked screen
 */
export function make(kit) {
  const {
    alarms, alarmPlace, alarmText, alertText, clock, Countdown, html, lastAct, MainFigure,
    markOf, mayAs, own, ring, route, secondMs, silenceAlarm, StateMark, stepShown,
    stepState, stepTitle, t, touchMs, trouble, useEffect, useRef, useState, view,
  } = kit;

  function topAlarm() {
    return (alarms.value?.alarms ?? []).find((one) => one.state === 'unacknowledged');
  }

  /** A bar to hold: filled while held, done when let go; one contact alone counts. */
  function Hold({ words, hint, onDone }) {
    const [phase, setPhase] = useState('rest'); // rest, held, full, water
    const contacts = useRef(new Set());
    const sinceMs = useRef(null);
    const button = useRef(null);
    const clocks = useRef([]);
    const settle = (next) => {
      clocks.current.forEach(clearTimeout);
      clocks.current = [];
      sinceMs.current = null;
      setPhase(next);
    };
    const isInside = (event) => {
      const box = button.current.getBoundingClientRect();
      return event.clientX >= box.left && event.clientX <= box.right
        && event.clientY >= box.top && event.clientY <= box.bottom;
    };
    useEffect(() => {
      button.current.focus({ preventScroll: true });
      return () => clocks.current.forEach(clearTimeout);
    }, []);
    const onPointerDown = (event) => {
      if (event.button > 0) return;
      contacts.current.add(event.pointerId);
      if (contacts.current.size > 1) return settle('water');
      sinceMs.current = performance.now();
      setPhase('held');
      clocks.current = [
        setTimeout(() => setPhase('full'), HOLD_MS),
        setTimeout(() => settle('water'), LONGEST_MS),
      ];
      return undefined;
    };
    const onPointerMove = (event) => {
      if (sinceMs.current !== null && !isInside(event)) settle('rest');
    };
    const onPointerEnd = (event) => {
      contacts.current.delete(event.pointerId);
      const heldMs = sinceMs.current === null ? 0 : performance.now() - sinceMs.current;
      const isHeld = event.type === 'pointerup' && isInside(event);
      if (contacts.current.size === 0) settle('rest');
      if (isHeld && heldMs >= HOLD_MS) onDone();
    };
    // A click that no touch made: the Enter key, or a screen reader.
    const onClick = () => {
      if (performance.now() - touchMs() > 1000) onDone();
    };
    const onKeyDown = (event) => {
      if (event.repeat) event.preventDefault();
    };
    const shown = phase === 'full' ? t('lock.let_go') : phase === 'water' ? t('lock.water') : words;
    return html`<p class="lock-hint" id="lock-hint">${hint}</p>
      <button type="button" class=${`lock-hold is-${phase}`} ref=${button} aria-describedby="lock-hint"
        onPointerDown=${onPointerDown} onPointerMove=${onPointerMove} onPointerUp=${onPointerEnd}
        onPointerCancel=${onPointerEnd} onClick=${onClick} onKeyDown=${onKeyDown}>
        <span class="lock-fill"></span><span class="lock-words">${shown}</span></button>`;
  }

  function Alarm({ alarm }) {
    const mark = markOf(alarm.priority);
    const isRinging = ring.value.ids.length > 0;
    return html`<section class=${`alarm-bar alarm-${mark}`} data-ringing=${isRinging ? alarm.priority : undefined} role="alert">
      <div class="alarm-text"><p><${StateMark} state=${mark} /> <b>${alarmText(alarm)}</b></p>
        <p class="alarm-where">${alarmPlace(alarm)}</p></div></section>`;
  }

  // Everything that runs: the open make's steps and timers, then other makes'.
  function running(shown, step) {
    const steps = (shown?.steps ?? []).filter((one) => one.status === 'running' && one.due_ms && one.key !== step?.key)
      .map((one) => ({ key: one.key, title: stepTitle(one), dueMs: one.due_ms }));
    const timers = (shown?.timers ?? []).filter((one) => one.stopped_ms === null)
      .map((one) => ({ key: one.id, title: one.label, dueMs: one.due_ms }));
    const others = (alarms.value?.deadlines ?? []).filter((one) => one.make !== shown?.make.id)
      .map((one) => ({ key: one.id, title: `${one.title ? own(one.title) : one.numbers?.value ?? ''} · ${one.make_name}`, dueMs: one.due_ms }));
    return [...[...steps, ...timers].sort((a, b) => a.dueMs - b.dueMs), ...others].slice(0, ROWS_SHOWN);
  }

  function Shown() {
    const shown = view.value;
    const isMake = route.value[0] === 'make' && shown?.make.id === route.value[1];
    const step = isMake ? stepShown(shown) : null;
    const alarm = topAlarm();
    const alerts = isMake ? shown.alerts.filter((one) => !one.acknowledged && one.id !== alarm?.matter) : [];
    const last = lastAct.value;
    return html`<div class="lock-shown">
      ${alarm ? html`<${Alarm} alarm=${alarm} />` : null}
      ${trouble.value ? html`<p class="bar bar-act" role="alert">${trouble.value}</p>` : null}
      ${step ? html`<div class="lock-step">
        <p class="lock-title"><${StateMark} state=${stepState(step)} word=${t('step.' + step.status)} /> <b>${stepTitle(step)}</b></p>
        <${MainFigure} step=${step} alerts=${shown.alerts} />
        ${step.status === 'running' && step.due_ms && step.main?.kind !== 'countdown' ? html`<${Countdown} dueMs=${step.due_ms} />` : null}
      </div>` : null}
      ${running(shown, step).map((one) => html`<div class="lock-row" key=${one.key}>
        <p class="lock-title">${one.title}</p><${Countdown} dueMs=${one.dueMs} /></div>`)}
      ${alerts.slice(0, ALERTS_SHOWN).map((one) => html`<p class="lock-alert" key=${one.id}><${StateMark} state=${one.level} /> ${alertText(one, shown.steps)}</p>`)}
      ${last && secondMs.value < last.untilMs ? html`<p class="lock-said" role="status">${last.said}</p>` : null}
    </div>`;
  }

  function Locked({ onLeave }) {
    const alarm = mayAs('helper') ? topAlarm() : null;
    return html`<p class="lock-head"><b>${t('lock.title')}</b><span>${clock(secondMs.value)}</span></p>
      <${Shown} />
      <div class="lock-foot">${alarm
        ? html`<${Hold} key=${alarm.id} words=${t('lock.hold_alarm')} hint=${t('lock.hint_alarm')} onDone=${() => silenceAlarm(alarm)} />`
        : html`<${Hold} key="leave" words=${t('lock.hold')} hint=${t('lock.hint')} onDone=${onLeave} />`}</div>`;
  }

  return { Locked };
}
