import { html } from './html.js';
import { StateMark } from './state-mark.js';
import { Tap } from './tap.js';
import { act } from './acts.js';
import { alarmPlace, alarmText, markOf, sinceText } from './alarm-words.js';
import { mayAs } from './people-names.js';
import { shift } from './shift.js';
import { sound } from './sound.js';
import { alarms, lookAgain, notOnWall, ring } from '../data/alarm.js';
import { t, tn } from '../messages/index.js';
import { go, route } from '../router.js';

/** Silence one alarm: recorded with who and when, and it stays listed. */
export async function silenceAlarm(alarm) {
  await act('alert_acknowledged', { make: alarm.make, data: { alert: alarm.matter } });
  lookAgain();
}

function soundWords() {
  if (!shift.value) return t('alarm.no_shift');
  return sound.value === 'ready' ? null : t('alarm.sound_' + sound.value);
}

/** On every screen while an alarm waits for an answer: the most urgent, and silence. */
export function AlarmBar() {
  const waiting = (alarms.value?.alarms ?? []).filter((one) => one.state === 'unacknowledged');
  const top = waiting[0];
  const isRinging = ring.value.ids.length > 0 && Boolean(shift.value);
  const offWall = notOnWall.value
    ? html`<p class="alarm-note" role="status">${tn('alarm.not_on_wall', notOnWall.value)}</p>` : null;
  if (!top || route.value[0] === 'alarms') return offWall; // listed there in full
  const muted = soundWords();
  return html`<section class=${`alarm-bar alarm-${markOf(top.priority)}`} data-ringing=${isRinging ? top.priority : undefined} aria-label=${t('nav.alarms')}>
    <div class="alarm-text" role="alert">
      <p><${StateMark} state=${markOf(top.priority)} /> <b>${alarmText(top)}</b></p>
      <p class="alarm-where">${alarmPlace(top)} · ${sinceText(top)}${muted ? ' · ' + muted : ''}</p>
    </div>
    <div class="alarm-buttons">
      ${mayAs('helper') ? html`<${Tap} key=${top.id} class="bar-button alarm-silence" onTap=${() => silenceAlarm(top)}>${t('alarm.silence')}</${Tap}>` : null}
      <${Tap} class="bar-button" onTap=${() => go('alarms')}>${waiting.length > 1 ? tn('alarm.more', waiting.length - 1) : t('word.show')}</${Tap}>
    </div>
  </section>${offWall}`;
}
