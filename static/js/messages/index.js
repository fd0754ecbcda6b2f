import { signal } from '@preact/signals';
import { EN } from './en.js';

// English comes with the page and stays the fallback. The other catalogues are
// fetched when a person needs them: the first load has no room for them.

/** Every language, by the name that it gives itself. */
export const LANGUAGES = { en: 'English', es: 'Español', fr: 'Français' };
const packs = { en: { TEXTS: EN, RECIPE: {} } };
// Phones load one packed file of each; a checkout has the plain modules.
const isPacked = import.meta.url.includes('/lib/');
let wanted = 'en';

/** The language of the screens. Whoever asks for a text is painted anew with it. */
export const language = signal('en');

/**
 * Choose the language of the screens; an unknown one leaves English.
 *
 * @returns {Promise<boolean>} false when its texts are not to be had now: what was
 *     shown before stays
 */
export async function setLanguage(code) {
  wanted = code in LANGUAGES ? code : 'en';
  const mine = wanted;
  try {
    packs[mine] ??= await import(isPacked ? `/lib/lang-${mine}.js` : `/js/messages/${mine}/index.js`);
  } catch {
    return false;
  }
  if (mine === wanted) {
    language.value = mine;
    document.documentElement.lang = mine;
  }
  return true;
}

function textOf(key) {
  return packs[language.value].TEXTS[key] ?? EN[key];
}

/** Tell whether the catalogue has a text for a key. */
export function has(key) {
  return textOf(key) !== undefined;
}

/** The text of a key, with {names} filled in; the key itself when it has none. */
export function t(key, values = {}) {
  return (textOf(key) ?? key).replace(/\{(\w+)\}/g, (whole, name) =>
    name in values ? String(values[name]) : whole,
  );
}

/** As t, with ".one" or ".many" added to the key by the count `n`. */
export function tn(key, n, values = {}) {
  const isOne = new Intl.PluralRules(language.value).select(n) === 'one';
  return t(`${key}.${isOne ? 'one' : 'many'}`, { n, ...values });
}

/** The first of these keys that has a text, or the last one's words. */
export function tFirst(keys, values = {}) {
  const found = keys.find(has);
  return found ? t(found, values) : words(keys[keys.length - 1]);
}

/** A recipe's own text in the language shown: its own words first, then ours. */
export function own(text) {
  if (!text) return '';
  const { RECIPE } = packs[language.value];
  if (typeof text === 'string') return RECIPE[text] ?? text;
  return text[language.value] ?? RECIPE[text.en] ?? text.en ?? Object.values(text)[0] ?? '';
}

/** A text for use inside a sentence: "Curd" becomes "curd", "pH" stays. */
export function inside(text) {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** A key that came without a text, as readable words: "clean_break". */
export function words(key) {
  const last = String(key).split('.').pop().replace(/_/g, ' ');
  return last.charAt(0).toUpperCase() + last.slice(1);
}
