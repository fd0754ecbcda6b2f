import { useState } from 'preact/hooks';
import { html } from '../../parts/html.js';
import { Row, Sheet } from '../../parts/sheet.js';
import { Tap } from '../../parts/tap.js';
import { TextField } from '../../parts/text-field.js';
import { act } from '../../parts/acts.js';
import { nowMs, uuid7 } from '../../parts/source.js';
import { amount, quantity } from '../../format.js';
import { t } from '../../messages/index.js';
import { swap } from '../../router.js';
import { MassPad, StrengthPad, typedMass } from './pads.js';

/** Open a brine tank: its name, what is in it, how strong it is. */
export function NewTank({ onBack }) {
  const [name, setName] = useState('');
  const [massKg, setMass] = useState(null);
  const [saltFrac, setSalt] = useState(null);
  const [pad, setPad] = useState(null);
  const close = () => setPad(null);
  if (pad === 'mass') {
    return html`<${MassPad} kind="tank_opened" title=${t('store.mass')} start=${typedMass(massKg)}
      saveWord=${t('word.done')} onBack=${close} onSave=${async (value) => { setMass(value); close(); return true; }} />`;
  }
  if (pad === 'salt') return html`<${StrengthPad} onBack=${close} onSave=${async (value) => { setSalt(value); close(); return true; }} />`;
  const open = async () => {
    const data = { name: name.trim(), mass_kg: massKg, salt_frac: saltFrac };
    const event = await act('tank_opened', { make: uuid7(nowMs()), data }, t('said.tank_opened', { name: data.name }));
    if (event) swap('store', 'tank', event.make);
  };
  const isReady = name.trim() !== '' && massKg !== null && saltFrac !== null;
  return html`<${Sheet} title=${t('store.new_title')} onBack=${onBack}
    foot=${html`<${Tap} class="primary" disabled=${!isReady} onTap=${open}>${t('store.open_do')}</${Tap}>`}>
    <${TextField} label=${t('store.name')} hint=${t('store.name_hint')} value=${name} onInput=${setName} longest=${80} />
    <div class="rows">
      <${Row} title=${t('store.mass')} side=${massKg === null ? t('sums.needed') : amount(massKg, 'kg')} onTap=${() => setPad('mass')} />
      <${Row} title=${t('store.salt')} side=${saltFrac === null ? t('sums.needed') : quantity('brine_salt_frac', saltFrac)} onTap=${() => setPad('salt')} />
    </div></${Sheet}>`;
}
