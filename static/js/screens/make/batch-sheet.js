import { useState } from 'preact/hooks';
import { html } from '../../parts/html.js';
import { Row, Sheet } from '../../parts/sheet.js';
import { Tap } from '../../parts/tap.js';
import { TextField } from '../../parts/text-field.js';
import { WhyPad } from '../../parts/why-pad.js';
import { act } from '../../parts/acts.js';
import { nameOf } from '../../parts/people-names.js';
import { clock } from '../../format.js';
import { t, whyWords } from '../../messages/index.js';

const REASONS = {
  hold_placed: ['reading_missing', 'reading_off', 'looks_wrong'],
  hold_lifted: ['looked_again', 'test_back'],
  make_closed: ['all_done'],
  make_abandoned: ['milk_bad', 'set_failed', 'equipment_down'],
};

function SignOff({ make, onBack }) {
  const [text, setText] = useState(t('batch.statement'));
  const sign = async () => {
    const event = await act('signed_off', { make, data: { statement: text.trim() } }, t('said.signed'));
    if (event) onBack();
  };
  return html`<${Sheet} title=${t('batch.sign')} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${text.trim() === ''} onTap=${sign}>${t('batch.sign_do')}</${Tap}>`}>
    <${TextField} isLong label=${t('batch.sign_label')} value=${text} onInput=${setText} longest=${400} />
  </${Sheet}>`;
}

/** What concerns the whole make: hold, sign off, close, abandon. */
export function BatchSheet({ make, view, onBack }) {
  const [open, setOpen] = useState(null); // {kind, ref}
  const close = () => setOpen(null);
  if (open?.kind === 'signed_off') return html`<${SignOff} make=${make} onBack=${close} />`;
  if (open) {
    const done = async (why) => {
      const event = await act(open.kind, { make, ref: open.ref ?? null, data: { why } }, t('said.' + open.kind));
      if (event) close();
    };
    return html`<${WhyPad} title=${t('batch.' + open.kind)} lead=${t('batch.' + open.kind + '_lead')} reasons=${REASONS[open.kind]}
      isGrave=${open.kind === 'make_abandoned'} isHeld=${open.kind === 'make_abandoned' || open.kind === 'make_closed'} doWord=${t('batch.' + open.kind + '_do')} onDone=${done} onBack=${close} />`;
  }
  const state = view.make.state;
  const isOpen = state === 'running' || state === 'held';
  return html`<${Sheet} title=${t('batch.title', { name: view.make.name })} onBack=${onBack}>
    <p class="lead">${t('make_state.' + state)}</p>
    <div class="rows">
      ${view.make.holds.map((hold) => html`<${Row} key=${hold.id} title=${t('batch.hold_lifted')}
        detail=${t('batch.hold', { why: whyWords(hold.why), name: nameOf(hold.by), at: clock(hold.at_ms) })}
        onTap=${() => setOpen({ kind: 'hold_lifted', ref: hold.id })} />`)}
      ${isOpen ? html`<${Row} title=${t('batch.hold_placed')} detail=${t('batch.hold_placed_lead')} onTap=${() => setOpen({ kind: 'hold_placed' })} />` : null}
      <${Row} title=${t('batch.sign')} onTap=${() => setOpen({ kind: 'signed_off' })} />
      ${isOpen ? html`<${Row} title=${t('batch.make_closed')} onTap=${() => setOpen({ kind: 'make_closed' })} />` : null}
    </div>
    ${isOpen ? html`<div class="rows rows-apart"><${Row} class="is-destructive" title=${t('batch.make_abandoned')} onTap=${() => setOpen({ kind: 'make_abandoned' })} /></div>` : null}
  </${Sheet}>`;
}
