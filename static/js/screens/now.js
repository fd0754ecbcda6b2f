import { html } from '../parts/html.js';
import { alertText } from '../parts/alert-line.js';
import { CountdownWords } from '../parts/countdown.js';
import { Row } from '../parts/sheet.js';
import { StateMark } from '../parts/state-mark.js';
import { stepTitle } from '../parts/step-title.js';
import { Tap } from '../parts/tap.js';
import { board } from '../parts/source.js';
import { mayAs } from '../parts/people-names.js';
import { clockDay, span } from '../format.js';
import { own, t, tn } from '../messages/index.js';
import { go } from '../router.js';
import { chooseStep } from './make/chosen.js';

const LATER_SHOWN = 6;

function open(due) {
  if (due.step) chooseStep(due.make, due.step);
  if (due.what === 'reading') go('make', due.make, 'reading', due.step, due.quantity);
  else go('make', due.make);
}

function dueTitle(due) {
  if (due.what === 'timer') return due.label ?? t('due.timer');
  if (due.what === 'reading') return t('due.reading', { what: t('quantity.' + due.quantity), step: own(due.title) });
  return t('due.' + due.what, { step: stepTitle(due) });
}

function DueRow({ due }) {
  const side = due.level === 'later'
    ? html`<${CountdownWords} dueMs=${due.due_ms} />`
    : html`<${StateMark} state=${due.level} word=${due.what === 'step_begin' ? t('due.can_begin') : undefined} />`;
  return html`<${Row} class=${due.level === 'later' ? '' : 'is-due'} title=${dueTitle(due)} detail=${due.make_name} side=${side} onTap=${() => open(due)} />`;
}

function MakeCard({ make, nowMs }) {
  const waiting = make.alerts.filter((one) => !one.acknowledged);
  const worst = waiting[0];
  const late = make.day.late_s;
  return html`<${Tap} class="card" onTap=${() => go('make', make.id)}>
    <span class="card-head"><b>${make.name}</b><span>${t('make.batch', { batch: make.batch })}${make.vat ? ' · ' + make.vat : ''}</span></span>
    <span class="card-step">${make.focus ? own(make.focus.title) : t('make_state.' + (make.state === 'running' ? 'no_step' : make.state))}</span>
    ${make.focus?.due_ms ? html`<span class="card-time"><${CountdownWords} dueMs=${make.focus.due_ms} /></span>` : null}
    ${worst
      ? html`<span class="card-state"><${StateMark} state=${worst.level} /> ${alertText(worst, make.focus ? [make.focus] : [])}</span>`
      : html`<span class="card-state"><${StateMark} state="ok" /></span>`}
    ${waiting.length > 1 ? html`<span>${tn('now.more_alerts', waiting.length - 1)}</span>` : null}
    <span class="quiet">${t(make.day.expected_end_ms > nowMs ? 'make.day_end' : 'make.day_ended', { at: clockDay(make.day.expected_end_ms, nowMs) })}${late > 60 ? ', ' + t('make.late', { by: span(late) }) : ''}</span>
  </${Tap}>`;
}

/** All that is due, across makes, and each make as a card. */
export function NowScreen() {
  const shown = board.value;
  if (!shown) return html`<div class="sheet"><div class="scroll"><p class="lead">${t('now.loading')}</p></div></div>`;
  const now = shown.due.filter((one) => one.level !== 'later');
  const later = shown.due.filter((one) => one.level === 'later').slice(0, LATER_SHOWN);
  const open_ = shown.makes.filter((one) => one.state === 'running' || one.state === 'held');
  const key = (due) => [due.make, due.step, due.what, due.quantity, due.timer].join();
  return html`<div class="sheet">
    <div class="scroll"><div class="columns">
      <div class="column">
        <h1>${t('now.title')}</h1>
        ${now.length ? html`<div class="rows">${now.map((due) => html`<${DueRow} key=${key(due)} due=${due} />`)}</div>`
          : html`<p class="lead"><${StateMark} state="ok" word=${t('now.nothing')} /></p>`}
        ${later.length ? html`<h2>${t('now.later')}</h2><div class="rows">${later.map((due) => html`<${DueRow} key=${key(due)} due=${due} />`)}</div>` : null}
      </div>
      <div class="column">
        <h2>${t('now.makes')}</h2>
        ${open_.length ? html`<div class="rows">${open_.map((make) => html`<${MakeCard} key=${make.id} make=${make} nowMs=${shown.now_ms} />`)}</div>`
          : html`<p class="lead">${t('now.no_makes')}</p>`}
        <div class="rows rows-apart">
          <${Row} title=${t('now.past')} onTap=${() => go('makes')} />
        </div>
      </div>
    </div></div>
    ${mayAs('maker') ? html`<div class="foot foot-quiet"><${Tap} class=${open_.length ? 'second wide' : 'primary'} onTap=${() => go('new')}>${t('new.title')}</${Tap}></div>` : null}
  </div>`;
}

/** Every make known on this phone, newest first, with its record. */
export function MakesScreen() {
  const makes = board.value?.makes ?? [];
  return html`<div class="sheet"><div class="scroll"><h1>${t('now.past')}</h1>
    <div class="rows">${makes.map((make) => html`<${Row} key=${make.id} title=${`${make.name} · ${make.batch}`}
      detail=${`${own(make.recipe_title)} · ${clockDay(make.opened_ms, board.value.now_ms)}`}
      side=${t('make_state.short_' + make.state)} onTap=${() => go('make', make.id, 'record')} />`)}</div>
    ${makes.length ? null : html`<p class="lead">${t('now.no_makes')}</p>`}
  </div></div>`;
}
