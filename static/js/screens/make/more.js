import { html } from '../../parts/html.js';
import { Row } from '../../parts/sheet.js';
import { Tap } from '../../parts/tap.js';
import { act } from '../../parts/acts.js';
import { mayAs, nameOf, tapper } from '../../parts/people-names.js';
import { own, t } from '../../messages/index.js';
import { go } from '../../router.js';
import { begin, end } from './primary.js';

function Task({ make, step }) {
  if (!step.task) {
    return html`<${Row} title=${t('task.take')} onTap=${() => act('task_taken', { make, data: { step: step.key } }, t('said.task_taken'))} />`;
  }
  const isMine = step.task.by === tapper()?.id;
  return html`<${Row} title=${isMine ? t('task.release') : t('task.by', { name: nameOf(step.task.by) })}
    onTap=${() => act(isMine ? 'task_released' : 'task_taken', { make, data: { step: step.key } }, t(isMine ? 'said.task_released' : 'said.task_taken'))} />`;
}

/** Everything else that can be done here, below the one large button. */
export function More({ make, step }) {
  const at = step?.key;
  const act_ = step?.button?.act;
  return html`<section class="block"><h2>${t('block.more')}</h2>
    <div class="rows">
      <${Row} title=${t('more.note')} onTap=${() => go('make', make, 'note', ...(at ? [at] : []))} />
      <${Row} title=${t('more.reading')} onTap=${() => go('make', make, 'other', ...(at ? [at] : []))} />
      <${Row} title=${t('more.timer')} onTap=${() => go('make', make, 'timer', ...(at ? [at] : []))} />
      ${step ? html`<${Task} make=${make} step=${step} />` : null}
      <${Row} title=${t('more.steps')} detail=${t('more.steps_detail')} onTap=${() => go('make', make, 'steps')} />
      <${Row} title=${t('more.record')} detail=${t('more.record_detail')} onTap=${() => go('make', make, 'record')} />
    </div>
    ${step ? html`<div class="rows rows-apart">
      ${step.status === 'running' && act_ !== 'end' ? html`<${Row} title=${t('more.end')} onTap=${() => end(make, step)} />` : null}
      ${step.status !== 'running' && act_ !== 'begin' ? html`<${Row} title=${t('more.begin', { step: own(step.title) })} onTap=${() => begin(make, step)} />` : null}
      ${mayAs('maker') && step.status !== 'running' ? html`<${Row} title=${t('more.skip')} onTap=${() => go('make', make, 'skip', step.key)} />` : null}
      ${mayAs('maker') ? html`<${Row} title=${t('more.batch')} detail=${t('more.batch_detail')} onTap=${() => go('make', make, 'batch')} />` : null}
    </div>` : null}
    ${!step && mayAs('maker') ? html`<div class="rows rows-apart"><${Row} title=${t('more.batch')} detail=${t('more.batch_detail')} onTap=${() => go('make', make, 'batch')} /></div>` : null}
  </section>`;
}
