import { useState } from 'preact/hooks';
import { html } from '../../parts/html.js';
import { Keypad } from '../../parts/keypad.js';
import { act, readField } from '../../parts/acts.js';
import { amount, asRead, quantity, typedValue, unitName, unitRead } from '../../format.js';
import { t } from '../../messages/index.js';

/** A kept mass as it is typed, without zeros that nobody weighed. */
export function typedMass(massKg) {
  return massKg === null ? '' : String(Number(asRead(massKg, 'kg').value.toFixed(3)));
}

/** Type a mass that an entry needs. */
export function MassPad({ kind, title, start = '', last, hint, onSave, saveWord, onBack }) {
  const [unit] = useState(unitRead('kg'));
  return html`<div class="sheet"><${Keypad} onBack=${onBack} title=${title} hint=${hint} unit=${unitName(unit)} decimals=${3} start=${start} last=${last}
    read=${(typed) => readField(kind, 'mass_kg', typed, { unit, kept: 'kg' })} save=${onSave} saveWord=${saveWord} /></div>`;
}

/** Type a whole count or a number of days of an entry. */
export function CountPad({ kind, field, title, unit, decimals = 0, onSave, onBack }) {
  return html`<div class="sheet"><${Keypad} onBack=${onBack} title=${title} unit=${unit} decimals=${decimals}
    read=${(typed) => readField(kind, field, typed, { whole: decimals === 0 })} save=${onSave} saveWord=${t('word.next')} /></div>`;
}

async function readPercent(typed) {
  const found = await readField('tank_opened', 'salt_frac', String(Number(typed) / 100));
  return found;
}

/** Type the strength of a brine in percent. */
export function StrengthPad({ start = '', onSave, onBack }) {
  const words = (problems, typed) => problems.map((one) => t('sum_problem.' + one.key, {
    field: t('quantity.brine_salt_frac'), value: typedValue(typed, '%'), limit: quantity('brine_salt_frac', one.limit),
  })).join(' ');
  return html`<div class="sheet"><${Keypad} onBack=${onBack} title=${t('store.salt')} unit="%" decimals=${2} start=${start}
    read=${readPercent} problemWords=${words} save=${onSave} saveWord=${t('word.next')} /></div>`;
}

/** Record that salt or water went into a tank. */
export function AddPad({ tank, kind, title, start, onBack }) {
  const save = async (value) => {
    const event = await act(kind, { make: tank, data: { mass_kg: value } }, t('said.' + kind, { mass: amount(value, 'kg') }));
    if (event) onBack();
    return Boolean(event);
  };
  return html`<${MassPad} kind=${kind} title=${title} hint=${start} onSave=${save} onBack=${onBack} />`;
}
