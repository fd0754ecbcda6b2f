// Which language is shown, and a text in it.
//
// Written for browsers of many years: the set-up page meets phones that nobody
// has chosen.

import { TEXTS as en } from "./texts-en.js";
import { TEXTS as es } from "./texts-es.js";
import { TEXTS as fr } from "./texts-fr.js";

/** @typedef {"en" | "es" | "fr"} Language */

export const LANGUAGES = { en: "English", es: "Español", fr: "Français" };
/** @type {Record<Language, Record<string, string>>} */
const TEXTS = { en, es, fr };

/** @type {Language} */
let shown = "en";

/**
 * Return the language to begin with: the one asked for, else the browser's.
 *
 * @param {string} search the address's part behind "?"
 * @param {readonly string[]} languages as the browser prefers them
 * @returns {Language}
 */
export function languageOf(search, languages) {
  const asked = new URLSearchParams(search).get("lang");
  const all = [asked || ""]
    .concat(languages)
    .map((one) => one.slice(0, 2).toLowerCase());
  const found = all.find((one) => one in LANGUAGES);
  return /** @type {Language} */ (found || "en");
}

/**
 * Show texts in a language from now on.
 *
 * @param {Language} language
 */
export function setLanguage(language) {
  shown = language;
  document.documentElement.lang = language;
  document.title = "Vatside: " + t("page.title");
}

/** Return the language that is shown. */
export function language() {
  return shown;
}

/**
 * Return a text, its {names} filled in.
 *
 * @param {string} key
 * @param {Record<string, any>} [values]
 * @returns {string}
 */
export function t(key, values) {
  const text = TEXTS[shown][key];
  if (text === undefined) throw new Error("no text " + key);
  return text.replace(/\{(\w+)\}/g, (whole, name) => (values || {})[name]);
}
