import { html } from '../../parts/html.js';
import { inside, t } from '../../messages/index.js';
import { sumRow } from './catalogue.js';
import { label, noteWords, outLabel, restsValue, sumProblem, valueWords } from './words.js';

function Value({ value, names, isFirst }) {
  const { label: title, main, detail } = valueWords(value, names);
  return html`<li class=${isFirst ? 'sum-value is-first' : 'sum-value'}>
    <span class="sum-label">${title}</span><b class=${value.unit === 'key' ? 'sum-main is-words' : 'sum-main'}>${main}</b>
    ${detail ? html`<span class="sum-range">${detail}</span>` : null}</li>`;
}

// The same instant told as a span and as a time of day: the time of day is read.
function shownValues(values) {
  const hasInstant = values.some((one) => one.name === 'reach_ms');
  const rest = values.filter((one) => !(hasInstant && (one.name === 'reach_s' || one.name === 'left_s')));
  return [...rest.filter((one) => one.name === 'reach_ms'), ...rest.filter((one) => one.name !== 'reach_ms')];
}

/** What came out, or what is in its way: problems in words, and what is missing. */
export function Answer({ answer, sum, given, names }) {
  if (!answer) return html`<p class="quiet" role="status">${t('sums.working')}</p>`;
  return html`<section class="sum-answer" aria-label=${t('sums.answer')} aria-live="polite">
    ${answer.problems.map((one) => html`<p key=${one.field + one.key} class="is-bad" role="alert">${sumProblem(one, sum, given)}</p>`)}
    ${answer.missing.length ? html`<p class="lead">${t('sums.missing_list', { list: answer.missing.map((name) => inside(label(name))).join(', ') })}</p>` : null}
    ${answer.values.length ? html`<ul class="sum-values">${shownValues(answer.values).map((one, place) => html`<${Value}
      key=${one.name + one.of + place} value=${one} names=${names} isFirst=${place === 0} />`)}</ul>` : null}
    ${answer.values.length && answer.status ? html`<p class="quiet">${t('sums.weakest', { status: t('status.' + answer.status) })}</p>` : null}
    ${answer.notes.length ? html`<h3>${t('sums.notes')}</h3><ul class="lines">${answer.notes.map((one, place) => html`<li key=${one.key + place}>${noteWords(one, unitOfThermometer(answer))}</li>`)}</ul>` : null}
  </section>`;
}

function unitOfThermometer(answer) {
  return answer.rests_on.find((one) => one.name === 'thermometer')?.value ?? '';
}

// Where a figure came from, how well it is known, and its source; said once each.
function originWords(row, input, sources) {
  const source = sources[row.source]?.title ?? row.source;
  const isFigure = !input || (row.from === 'default' && !input.default);
  return [...new Set([t('from.' + (isFigure ? 'figure' : row.from)), t('status.' + row.status), source].filter(Boolean))];
}

/** Each figure that the answer rests on: where it came from, and how well it is known. */
export function RestsOn({ answer, sum, sources = {} }) {
  if (!answer?.rests_on.length) return null;
  return html`<section class="block"><h2>${t('sums.rests')}</h2><ul class="facts facts-wide">
    ${answer.rests_on.map((row, place) => {
      const input = sum?.inputs.find((one) => one.name === row.name);
      return html`<li key=${row.name + place}><span>${label(row.name)}</span>
        <b>${restsValue(row, input)}</b>
        <span class="quiet">${originWords(row, input, sources).join(' · ')}</span></li>`;
    })}</ul></section>`;
}

/** The one figure of an answer that stands in a list: words, or null without one. */
export function headline(answer, names, pick) {
  if (answer.problems.length) return sumProblem(answer.problems[0], sumRow(answer.key));
  if (answer.missing.length) return t('sums.asks', { list: answer.missing.map((name) => inside(label(name))).join(', ') });
  const values = shownValues(answer.values);
  const chosen = pick ? pick(values) : [];
  const rows = chosen.length ? chosen : values.slice(0, 1);
  return rows.map((one) => {
    const { label: title, main, detail } = valueWords(one, names);
    const name = rows.length > 1 || one.of ? title : outLabel(one.name);
    return `${name} ${main}${detail ? `, ${detail}` : ''}`;
  }).join(' · ');
}
