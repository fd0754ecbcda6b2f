import { useEffect, useState } from 'preact/hooks';
import { html } from '../../parts/html.js';
import { Row, Sheet } from '../../parts/sheet.js';
import { Tap } from '../../parts/tap.js';
import { act } from '../../parts/acts.js';
import { board, call, nowMs } from '../../parts/source.js';
import { amount, clockDay, count, plain, unitName } from '../../format.js';
import { inside, own, t } from '../../messages/index.js';
import { CountPad, MassPad } from './pads.js';

function useMoulds(make) {
  const [moulds, setMoulds] = useState(null);
  useEffect(() => {
    if (!make) return;
    call('desk', 'view', [make.id, nowMs()], { desk: true }).then((view) => setMoulds(view?.make.moulds ?? []), () => setMoulds([]));
  }, [make?.id]);
  return moulds;
}

function Which({ onChoose, onBack }) {
  const makes = (board.value?.makes ?? []).filter((one) => one.state !== 'abandoned' && !one.practice);
  return html`<${Sheet} title=${t('store.load_which')} onBack=${onBack}>
    <div class="rows">${makes.map((make) => html`<${Row} key=${make.id} title=${`${make.name} · ${make.batch}`}
      detail=${clockDay(make.opened_ms, nowMs())} onTap=${() => onChoose(make)} />`)}</div>
    ${makes.length ? null : html`<p class="lead">${t('store.load_no_makes')}</p>`}</${Sheet}>`;
}

/** Put wheels of one size of a make into a tank: how many, how heavy, how long. */
export function LoadSheet({ tank, onBack }) {
  const [make, setMake] = useState(null);
  const [mould, setMould] = useState(null);
  const [told, setTold] = useState({});
  const moulds = useMoulds(make);
  const keep = (name) => async (value) => { setTold({ ...told, [name]: value }); return true; };
  const back = (name) => () => { const next = { ...told }; delete next[name]; setTold(next); };
  if (!make) return html`<${Which} onChoose=${setMake} onBack=${onBack} />`;
  if (!mould) {
    return html`<${Sheet} title=${t('store.load_size')} onBack=${() => setMake(null)}>
      <div class="rows">${(moulds ?? []).map((one) => html`<${Row} key=${one.size} title=${own(one.title)} onTap=${() => setMould(one)} />`)}</div></${Sheet}>`;
  }
  const size = own(mould.title);
  if (told.wheels === undefined) {
    return html`<${CountPad} key="wheels" kind="tank_loaded" field="wheels" title=${t('store.load_count', { size: inside(size) })} unit=${t('mould.wheels')}
      onSave=${keep('wheels')} onBack=${() => setMould(null)} />`;
  }
  if (told.mass_kg === undefined) {
    return html`<${MassPad} key="mass" kind="tank_loaded" title=${t('store.load_mass')} onSave=${keep('mass_kg')} saveWord=${t('word.next')} onBack=${back('wheels')} />`;
  }
  if (told.days === undefined) {
    return html`<${CountPad} key="days" kind="tank_loaded" field="days" title=${t('store.load_days')} unit=${unitName('d')} decimals=${1} onSave=${keep('days')} onBack=${back('mass_kg')} />`;
  }
  const save = async () => {
    const data = { load_make: make.id, size: mould.size, ...told };
    const event = await act('tank_loaded', { make: tank, data }, t('said.tank_loaded', { n: count(told.wheels) }));
    if (event) onBack();
  };
  return html`<${Sheet} title=${t('store.load_wheels')} onBack=${back('days')}
    foot=${html`<${Tap} class="primary" onTap=${save}>${t('store.load_do')}</${Tap}>`}>
    <ul class="facts"><li><span>${t('nav.make')}</span><b>${make.name} · ${make.batch}</b></li>
      <li><span>${size}</span><b>${count(told.wheels)} ${t('mould.wheels')}</b></li>
      <li><span>${t('store.load_mass')}</span><b>${amount(told.mass_kg, 'kg')}</b></li>
      <li><span>${t('store.load_days')}</span><b>${plain(told.days)}</b></li></ul></${Sheet}>`;
}
