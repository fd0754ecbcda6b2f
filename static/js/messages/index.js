import { EN } from './en.js';

const CATALOGUES = { en: EN };
let language = 'en';

/** Choose the language of the screens; an unknown one leaves English. */
export function setLanguage(code) {
  language = code in CATALOGUES ? code : 'en';
}

/** Tell whether the catalogue has a text for a key. */
export function has(key) {
  return key in CATALOGUES[language] || key in EN;
}

/** The text of a key, with {names} filled in; the key itself when it has none. */
export function t(key, values = {}) {
  const text = CATALOGUES[language][key] ?? EN[key] ?? key;
  return text.replace(/\{(\w+)\}/g, (whole, name) =>
    name in values ? String(values[name]) : whole,
  );
}

/** As t, with ".one" or ".many" added to the key by the count `n`. */
export function tn(key, n, values = {}) {
  return t(`${key}.${n === 1 ? 'one' : 'many'}`, { n, ...values });
}

/** The first of these keys that has a text, or the last one's words. */
export function tFirst(keys, values = {}) {
  const found = keys.find(has);
  return found ? t(found, values) : words(keys[keys.length - 1]);
}

/** A recipe's own text in the language shown. */
export function own(text) {
  if (!text) return '';
  if (typeof text === 'string') return text;
  return text[language] ?? text.en ?? Object.values(text)[0] ?? '';
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
