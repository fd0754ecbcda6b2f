import { signal } from "@preact/signals";
import { EN_PAGE } from "./en.js";
import { capital as atHead, within } from "./inside.js";

// English comes with the page and stays the fallback; its texts of the sums, half
// of all, follow once the page is painted. The other catalogues are fetched when a
// person needs them: the first load has no room for any of it.

/** Every language, by the name that it gives itself. */
export const LANGUAGES = { en: "English", es: "Español", fr: "Français" };
const packs = { en: { TEXTS: EN_PAGE, RECIPE: {} } };
// Phones load one packed file of each; a checkout has the plain modules.
const isPacked = import.meta.url.includes("/lib/");
let wanted = "en";

// The English texts that came after the page; none until then.
const rest = signal(null);
const NOTHING = {};

/** The language of the screens. Whoever asks for a text is painted anew with it. */
export const language = signal("en");

function load(code) {
  return import(isPacked ? `/lib/lang-${code}.js` : `/js/messages/${code}/index.js`);
}

/** Fetch the English texts that did not come with the page; again where that failed. */
export async function loadRest() {
  if (rest.value && rest.value !== NOTHING) return;
  try {
    const { TEXTS, WHY } = await load("en");
    packs.en.WHY = WHY;
    rest.value = TEXTS;
  } catch {
    rest.value = NOTHING; // keys are better than blanks, until it can be had
  }
}

/**
 * Choose the language of the screens; an unknown one leaves English.
 *
 * @returns {Promise<boolean>} false when its texts are not to be had now: what was
 *     shown before stays
 */
export async function setLanguage(code) {
  wanted = code in LANGUAGES ? code : "en";
  const mine = wanted;
  try {
    packs[mine] ??= await load(mine);
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
  return packs[language.value].TEXTS[key] ?? EN_PAGE[key] ?? rest.value?.[key];
}

/** Tell whether the catalogue has a text for a key. */
export function has(key) {
  return textOf(key) !== undefined;
}

/**
 * The text of a key, with {names} filled in; the key itself when it has none, and
 * nothing while that is not known yet.
 */
export function t(key, values = {}) {
  return (textOf(key) ?? (rest.value ? key : "")).replace(
    /\{(\w+)\}/g,
    (whole, name) => (name in values ? String(values[name]) : whole),
  );
}

/** As t, with ".one" or ".many" added to the key by the count `n`. */
export function tn(key, n, values = {}) {
  const isOne = new Intl.PluralRules(language.value).select(n) === "one";
  return t(`${key}.${isOne ? "one" : "many"}`, { n, ...values });
}

/** The first of these keys that has a text, or the last one's words. */
export function tFirst(keys, values = {}) {
  const found = keys.find(has);
  return found ? t(found, values) : words(keys[keys.length - 1]);
}

/** A recipe's own text in the language shown: its own words first, then ours. */
export function own(text) {
  if (!text) return "";
  const { RECIPE } = packs[language.value];
  if (typeof text === "string") return RECIPE[text] ?? text;
  return (
    text[language.value] ?? RECIPE[text.en] ?? text.en ?? Object.values(text)[0] ?? ""
  );
}

/** What a figure rests on, as the core says it in English, in the language shown. */
export function prose(text) {
  return packs[language.value].PROSE?.[text] ?? text;
}

/** Why a formula refuses, keyed by the core's words with {} for each figure; null in English. */
export function reasons() {
  return packs[language.value].REASONS ?? null;
}

/** A recorded reason: a ready one in the language shown, own words as they are. */
export function whyWords(why) {
  const known = packs[language.value].WHY ?? (rest.value ? packs.en.WHY : null) ?? {};
  const ready = Object.keys(known).find(
    (one) => why === one || why?.startsWith(one + ": "),
  );
  if (!ready) return why;
  const more = why.slice(ready.length + 2);
  return more
    ? t("word.told", { name: t(known[ready]), value: more })
    : t(known[ready]);
}

/** A text for use inside a sentence: "Curd" becomes "curd"; "pH" and "Gouda" stay. */
export function inside(text) {
  return within(text, t("word.names").split(" "), language.value);
}

/** A text at the head of a line. */
export function capital(text) {
  return atHead(text, language.value);
}

/** A key that came without a text, as readable words: "clean_break". */
export function words(key) {
  const last = String(key).split(".").pop().replace(/_/g, " ");
  return last.charAt(0).toUpperCase() + last.slice(1);
}
