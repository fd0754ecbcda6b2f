// The core's names, keys and numbers of a sum, in words.

import { plain, sumRange, sumValue, typedValue } from '../../format.js';
import { nowMs } from '../../parts/source.js';
import { has, inside, t, tFirst, words } from '../../messages/index.js';
import { asUsed, inUnits } from './units.js';

/** What an input, an output or a figure below an answer is called. */
export function label(name) {
  const [base, ...rest] = String(name).split('.');
  const title = tFirst([`in.${base}`, `out.${base}`, `of.${base}`, `quantity.${base}`]);
  return capital(rest.length ? `${title}, ${ofWords(rest.join('.'))}` : title);
}

export function outLabel(name) {
  return tFirst([`out.${name}`, `in.${name}`]);
}

/** What a value is of: a rule, a step, a size of wheel. */
export function ofWords(of) {
  if (!of) return '';
  const press = /^(press_\d)\.(\d+)$/.exec(of);
  if (press) return `${t('of.' + press[1])}, ${t('of.mm', { n: press[2] })}`;
  const counted = /^(make|size)_(\d+)$/.exec(of);
  if (counted) return t(`of.${counted[1]}_n`, { n: counted[2] });
  return has('of.' + of) || has('pick.' + of) ? tFirst([`of.${of}`, `pick.${of}`]) : inside(words(of));
}

/** A choice of an input. */
export function pickWords(name, choice) {
  return tFirst([`pick.${name}.${choice}`, `pick.${choice}`]);
}

/** A word that the core answers with. */
export function isWords(name, word) {
  return tFirst([`is.${name}.${word}`, `is.${word}`, `pick.${word}`]);
}

// A verdict carries what was read and the limit; in which unit, by its name.
const READ_IN = { age: 's', limit: 'g', in_time: 's', rate_verdict: 'K/min', fill_verdict: 'kg' };
// Here the two ends are what is wanted, not what was read and its limit.
const WANTED = ['rate_verdict', 'fill_verdict'];

function readUnit(value) {
  if (value.name in READ_IN) return READ_IN[value.name];
  if (/_frac$/.test(value.of ?? '')) return 'fraction';
  if (value.of === 'temp_c') return 'C';
  return value.of === 'cured_days' ? 'd' : '';
}

function readWords(figure, unit) {
  if (typeof figure !== 'number') return isWords('figure', String(figure));
  return unit || Number.isInteger(figure) ? sumValue(figure, unit, nowMs()) : plain(figure);
}

function isNothing(value) {
  return value === null || value === undefined;
}

function verdictDetail(value) {
  const unit = readUnit(value);
  if (WANTED.includes(value.name)) {
    return isNothing(value.low) ? '' : t('sums.wanted_between', pair(value.low, value.high, unit));
  }
  if (value.name === 'in_time') return t('sums.wanted_after', { span: sumValue(value.high, unit) });
  const read = isNothing(value.low) ? '' : readWords(value.low, unit);
  const limit = isNothing(value.high) ? '' : readWords(value.high, unit);
  if (read && limit) return t('sums.reads_limit', { value: read, limit });
  return limit ? t('sums.limit', { limit }) : read ? t('sums.reads', { value: read }) : '';
}

function pair(low, high, unit) {
  const [first, last] = sumRange(low, high, unit, nowMs());
  return { low: first, high: last };
}

function earlierWords(seconds) {
  return t(seconds < 0 ? 'sums.later' : 'sums.earlier', { span: sumValue(Math.abs(seconds), 's') });
}

function range(value) {
  if (value.name === 'held_s') return t('sums.needed_span', { span: sumValue(value.low, 's') });
  if (value.name === 'counted_days') return isNothing(value.high) ? '' : t('sums.needed_days', { n: plain(value.high) });
  if (isNothing(value.low) && isNothing(value.high)) return '';
  if (value.name === 'accounted_ratio') return t('sums.wanted_between', pair(value.low, value.high, value.unit));
  if (value.name === 'earlier_s') return t('sums.between', { low: earlierWords(value.low), high: earlierWords(value.high) });
  const low = asUsed(value.low, value.unit);
  const high = asUsed(value.high, value.unit);
  if (isNothing(value.high)) return t('sums.at_least', { low: sumValue(low.value, low.unit, nowMs()) });
  if (isNothing(value.low)) return t('sums.at_most', { high: sumValue(high.value, high.unit, nowMs()) });
  const ends = pair(low.value, high.value, low.unit);
  return ends.low === ends.high ? '' : t('sums.between', ends);
}

function capital(text) {
  return /^[a-z]{2}/.test(text) ? text.charAt(0).toUpperCase() + text.slice(1) : text;
}

/** One value of an answer: {label, main, detail}. */
export function valueWords(value, names = {}) {
  // What it means is of no rule: the rule stands beside the readings.
  const of = value.name === 'meaning' ? '' : value.of in names ? inside(names[value.of]) : ofWords(value.of);
  const title = value.name === 'figure' ? capital(of) : of ? `${outLabel(value.name)}, ${of}` : outLabel(value.name);
  if (value.unit === 'key') {
    return { label: title, main: isWords(value.name, value.value), detail: verdictDetail(value) };
  }
  const used = asUsed(value.value, value.unit);
  const main = isNothing(value.value) ? t('sums.not_known')
    : value.name === 'earlier_s' ? earlierWords(value.value) : sumValue(used.value, used.unit, nowMs());
  return { label: title, main, detail: range(value) };
}

/** A figure that an answer rests on. */
export function restsValue(row, input) {
  if (Array.isArray(row.value)) return rowsWords(row.value);
  if (typeof row.value === 'boolean' || isNothing(row.value)) return '';
  if (typeof row.value === 'string') return pickWords(input?.name ?? row.name, row.value);
  // A rule's share comes without its unit; its name tells.
  const used = asUsed(row.value, row.unit || (/_frac$/.test(row.name) ? 'fraction' : ''));
  return sumValue(used.value, used.unit, nowMs());
}

/** How many rows a table has. */
export function rowsWords(rows) {
  return t(rows.length === 1 ? 'sums.rows.one' : 'sums.rows.many', { n: rows.length });
}

/** What was typed for an input, as it was typed. */
export function givenWords(row, given) {
  if (given.rows) return rowsWords(given.rows);
  if (row.kind === 'choice') return pickWords(row.name, given.value);
  return typedValue(given.typed, given.unit);
}

// Numbers of a note are spans, temperatures of the thermometer, or plain.
const SPANS = [
  'hold_too_short', 'gap_too_long', 'reading_missing', 'holding_time_not_entered', 'reads_as_thermised',
  'thermised_if_phosphatase_positive', 'cut.floc_too_early', 'cut.floc_too_late',
];
const TEMPS = [
  'temperature_never_reached', 'temperature_fell_below', 'airspace_too_cold',
  'airspace_not_recorded_in_hold', 'recorder_reads_above_indicator',
];

function noteNumber(name, figure, unit) {
  if (SPANS.includes(name)) return sumValue(figure, 's');
  if (TEMPS.includes(name)) return sumValue(figure, unit);
  return plain(figure);
}

/** A note of an answer, or a reason of a verdict; `unit` is what the thermometer reads. */
export function noteWords(note, unit = '') {
  const name = String(note.key).replace(/^note\./, '');
  const values = {};
  for (const [key, figure] of Object.entries(note)) {
    if (typeof figure === 'number') values[key] = noteNumber(name, figure, unit);
    else if (Array.isArray(figure)) values[key] = figure.map((one) => inside(label('chart_' + one).replace(/^.*: /, ''))).join(', ');
    else values[key] = figure === null ? '–' : ofWords(String(figure));
  }
  const text = has('note.' + name) ? t('note.' + name, values) : t('note.other', { words: words(name) });
  return note.row ? `${ofWords(note.row)}: ${inside(text)}` : text;
}

function fieldOf(sum, field) {
  const [name, place, column] = String(field).split('.');
  const row = sum?.inputs.find((one) => one.name === name) ?? null;
  const part = column ? row?.columns?.find((one) => one.name === column) : row;
  const title = column ? `${label(name)}, ${t('of.row_n', { n: place })}, ${inside(label(column))}` : label(name);
  return { row, part, title, name };
}

function figureWords(figure, part, unit) {
  if (Array.isArray(figure)) return figure.map((one) => pickWords(part?.name, one)).join(', ');
  if (typeof figure !== 'number') return isNothing(figure) ? '' : String(figure);
  const own = part?.unit ?? '';
  const shown = inUnits(figure, own, unit ?? own);
  return sumValue(shown.value, shown.unit, nowMs());
}

// A formula refuses in words that begin with the field and its value; the
// names and the last number in them are put into words and units here.
function formulaWords(problem, part, unit) {
  const rest = problem.text.split(' ').slice(2);
  const isCounted = typeof problem.limit === 'number' && rest.length > 0;
  if (isCounted && Number.isFinite(Number(rest[rest.length - 1]))) {
    rest[rest.length - 1] = figureWords(problem.limit, part, unit);
  }
  return rest.map((word) => (/_/.test(word) ? inside(label(word.replace(/[,;:]$/, ''))) : word)).join(' ') + '.';
}

/** A problem of a sum, with its field, the value and the limit. */
export function sumProblem(problem, sum, given = {}) {
  const { row, part, title, name } = fieldOf(sum, problem.field);
  const typed = given[name];
  const unit = typed?.unit && (part?.units ?? []).includes(typed.unit) ? typed.unit : undefined;
  const isAsTyped = typed?.typed !== undefined && part === row;
  const value = isAsTyped ? typedValue(typed.typed, typed.unit) : figureWords(problem.value, part, unit);
  const isCount = ['too_few', 'too_many', 'not_whole'].includes(problem.key);
  const limit = isCount ? plain(problem.limit) : figureWords(problem.limit, part, unit);
  const key = has('sum_problem.' + problem.key) ? problem.key : 'impossible';
  return t('sum_problem.' + key, {
    field: title, value, limit, words: key === 'impossible' ? formulaWords(problem, part, unit) : '',
  });
}

/** Why an unlikely value is asked about once more. */
export function askWords(ask, sum, name, typed, unit) {
  const { part } = fieldOf(sum, ask.field);
  return t('sums.ask', {
    value: typedValue(typed, unit), side: inside(t('keypad.' + ask.key)), limit: figureWords(ask.limit, part, unit),
  });
}
