import { signal } from "@preact/signals";
import { PAGE } from "./en/page.js";
import { capital as atHead, within } from "./inside.js";

/** @import { Signal } from "@preact/signals" */
/** @typedef {Record<string, string>} Texts */
/** @typedef {Record<string, any>} Values */
/**
 * What a language's file holds; English says some of it by its keys alone.
 *
 * @typedef {{TEXTS: Texts, RECIPE: Texts, WHY?: Texts}} Pack
 */

// English comes with the page and stays the fallback; its texts of the sums, half
// of all, follow once the page is painted. The other catalogues are fetched when a
// person needs them: the first load has no room for any of it.

/**
 * Every language, by the name that it gives itself.
 *
 * @type {Texts}
 */
export const LANGUAGES = { en: "English", es: "Español", fr: "Français" };
/** @type {Record<string, Pack>} */
const packs = { en: { TEXTS: PAGE, RECIPE: {} } };
// Phones load one packed file of each; a checkout has the plain modules.
const isPacked = import.meta.url.includes("/lib/");
let wanted = "en";

/**
 * The English texts that came after the page; none until then.
 *
 * @type {Signal<Texts | null>}
 */
const rest = signal(null);
/** @type {Texts} */
const NOTHING = {};

/** The language of the screens. Whoever asks for a text is painted anew with it. */
export const language = signal("en");

/** @param {string} code @returns {Promise<Pack>} */
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
 * @param {string} code
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

/** @param {string} key @returns {string | undefined} */
function textOf(key) {
  return packs[language.value].TEXTS[key] ?? packs.en.TEXTS[key] ?? rest.value?.[key];
}

/**
 * Tell whether the catalogue has a text for a key.
 *
 * @param {string} key
 */
export function has(key) {
  return textOf(key) !== undefined;
}

/**
 * The text of a key, with {names} filled in; the key itself when it has none, and
 * nothing while that is not known yet.
 *
 * @param {string} key
 * @param {Values} values
 */
export function t(key, values = {}) {
  return (textOf(key) ?? (rest.value ? key : "")).replace(
    /\{(\w+)\}/g,
    (whole, name) => (name in values ? String(values[name]) : whole),
  );
}

/**
 * As t, with ".one" or ".many" added to the key by the count `n`.
 *
 * @param {string} key
 * @param {number} n
 * @param {Values} values
 */
export function tn(key, n, values = {}) {
  const isOne = new Intl.PluralRules(language.value).select(n) === "one";
  return t(`${key}.${isOne ? "one" : "many"}`, { n, ...values });
}

/**
 * The first of these keys that has a text, or the last one's words.
 *
 * @param {string[]} keys
 * @param {Values} values
 */
export function tFirst(keys, values = {}) {
  const key = keys.find(has);
  return key ? t(key, values) : words(keys[keys.length - 1]);
}

/**
 * A recipe's own text in the language shown: its own words first, then ours.
 *
 * @param {Words | string | null | undefined} text
 * @returns {string}
 */
export function own(text) {
  if (!text) return "";
  const { RECIPE } = packs[language.value];
  if (typeof text === "string") return RECIPE[text] ?? text;
  return (
    text[language.value] ?? RECIPE[text.en] ?? text.en ?? Object.values(text)[0] ?? ""
  );
}

/**
 * What a figure rests on: a source that we know by its id, or somebody's own words.
 * A make that was opened with an older recipe names what is cited no longer, and says so.
 *
 * @param {string} source
 */
export function sourceWords(source) {
  const retired = textOf("retired." + source);
  return (
    textOf("source." + source) ??
    (retired ? t("sources.retired", { source: retired }) : rest.value ? source : "")
  );
}

/**
 * A recorded reason: a ready one in the language shown, own words as they are.
 *
 * @param {string | null | undefined} why
 */
export function whyWords(why) {
  const known = packs[language.value].WHY ?? (rest.value ? packs.en.WHY : null) ?? {};
  const ready = Object.keys(known).find(
    (reason) => why === reason || why?.startsWith(reason + ": "),
  );
  if (!ready || !why) return why;
  const more = why.slice(ready.length + 2);
  return more
    ? t("word.told", { name: t(known[ready]), value: more })
    : t(known[ready]);
}

/**
 * A text for use inside a sentence: "Curd" becomes "curd"; "pH" and "Gouda" stay.
 *
 * @param {string} text
 */
export function inside(text) {
  return within(text, t("word.names").split(" "), language.value);
}

/**
 * A text at the head of a line.
 *
 * @param {string} text
 */
export function capital(text) {
  return atHead(text, language.value);
}

/**
 * A key that came without a text, as readable words: "clean_break".
 *
 * @param {string} key
 */
export function words(key) {
  const last = String(key).split(".").slice(-1)[0].replace(/_/g, " ");
  return last.charAt(0).toUpperCase() + last.slice(1);
}
