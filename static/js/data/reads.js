// How each person reads: language and units.
//
// They belong to the person, so that a shared phone follows who taps. What is
// changed on this phone is kept on it, holds at once, and goes to the server when
// that answers; what is kept and recorded is the same for everyone.

import { computed, effect, signal } from "@preact/signals";

import { setReads } from "../format.js";
import { following } from "../units/convert.js";
import { CHOICES } from "../units/table.js";
import { LANGUAGES, language, loadRest, setLanguage } from "../messages/index.js";
import { ApiError, patch, post } from "./api.js";
import { setSaved } from "./db.js";
import { roleMay } from "./rights.js";
import { me, people, person } from "./state.js";

const WAIT_MS = 1500;
/** @import { Signal } from "@preact/signals" */
/** @typedef {Exclude<keyof Reads, "language">} Kind */

const KINDS = /** @type {[Kind, string[]][]} */ (Object.entries(CHOICES));

/**
 * By person, what was changed here and is not on the server yet.
 *
 * @type {Signal<Record<string, Partial<Reads>>>}
 */
const changed = signal({});
/**
 * Chosen before there was a person: on the pairing screen or behind a link.
 *
 * @type {Signal<string | null>}
 */
const picked = signal(null);
const shown = signal(0);

function phonesLanguage() {
  const asked = navigator.languages.map((tag) => tag.slice(0, 2));
  return asked.find((tag) => tag in LANGUAGES) ?? "en";
}

// The language shown last, for first.js and for whoever is nobody yet.
function shownLast() {
  try {
    return localStorage.getItem("language");
  } catch {
    return null; // a browser that keeps nothing says so elsewhere
  }
}

/** @param {string} code */
function keepShown(code) {
  try {
    localStorage.setItem("language", code);
  } catch {
    // As above.
  }
}

/** @param {string | null} id @returns {Partial<Person>} */
function told(id) {
  const mine = me.value?.person;
  return people.value.find((one) => one.id === id) ?? (mine?.id === id ? mine : {});
}

/** How the person in front reads: {language, temp_unit, ...}, each one set. */
export const reads = computed(() => {
  const id = person.value;
  const own = { ...told(id), ...(id ? changed.value[id] : {}) };
  const before = picked.value ?? (id ? null : shownLast());
  const settings = /** @type {Reads} */ ({
    language: own.language ?? before ?? phonesLanguage(),
  });
  for (const [name, units] of KINDS) settings[name] = own[name] ?? units[0];
  return settings;
});

/** Whether what this person changed here waits: "", "sending", or "here" for good. */
export const waiting = computed(() => {
  if (!person.value || !(person.value in changed.value)) return "";
  return addressOf(person.value) ? "sending" : "here";
});

/** False while the texts of the chosen language are not on this phone. */
export const hasLanguage = computed(() => reads.value.language === language.value);

/** @param {Reads} settings */
function unitsOf(settings) {
  return following(KINDS.map(([name, [kept]]) => [kept, settings[name]]));
}

/** @type {Promise<boolean> | null} */
let loading = null;
// Only a change of language asks for its texts, not every news of people.
const wantedLanguage = computed(() => reads.value.language);

effect(() => {
  const code = wantedLanguage.value;
  keepShown(code);
  loading = setLanguage(code);
});

const units = computed(() => JSON.stringify(unitsOf(reads.value)));

effect(() => {
  const next = {
    language: language.value,
    units: JSON.parse(units.value),
  };
  setReads(next, () => shown.value);
  shown.value = shown.peek() + 1;
});

/**
 * Bring back what was kept of it, before the first painting.
 *
 * @param {Record<string, Partial<Reads>> | undefined} kept what was changed and not sent
 * @returns {Promise<void>} when the language is there, or is too slow to wait for
 */
export async function restoreReads(kept) {
  if (kept) changed.value = kept;
  const late = new Promise((resolve) => setTimeout(resolve, WAIT_MS));
  await Promise.race([loading, late]);
  setTimeout(retryLanguage); // after the painting
}

/** @param {Record<string, Partial<Reads>>} next */
function keepChanged(next) {
  changed.value = next;
  return setSaved("reads", next);
}

/**
 * Change how the person in front reads: {language} or {temp_unit} and so on.
 *
 * @param {Partial<Reads>} change
 */
export async function changeReads(change) {
  const id = person.value;
  if (!id) {
    picked.value = change.language ?? picked.value;
    return;
  }
  await keepChanged({ ...changed.value, [id]: { ...changed.value[id], ...change } });
  sendReads().catch(() => {});
}

/** Give a language picked before there was a person to who has joined since. */
export async function adoptPicked() {
  const code = picked.value;
  picked.value = null;
  if (code && person.value && !told(person.value).language)
    await changeReads({ language: code });
}

// A phone speaks for its own person, an owner's for everyone; what another person
// sets on a shared phone stays on it.
/**
 * @param {string} id
 * @returns {[(path: string, body: any) => Promise<any>, string] | null}
 */
function addressOf(id) {
  const mine = me.value?.person;
  if (mine?.id === id) return [patch, "/me"];
  return roleMay(mine?.role, "people") ? [post, `/people/${id}`] : null;
}

/** Send what was changed here; it stays until the server has taken it. */
export async function sendReads() {
  for (const [id, change] of Object.entries(changed.value)) {
    const way = addressOf(id);
    if (!way) continue;
    try {
      const answer = await way[0](way[1], change);
      people.value = people.value.map((known) =>
        known.id === id ? { ...known, ...answer } : known,
      );
      await setSaved("people", people.value);
    } catch (failure) {
      if (failure instanceof ApiError) continue; // asked again each minute
      throw failure;
    }
    // A change made meanwhile waits for its own turn.
    if (changed.value[id] !== change) continue;
    const { [id]: _, ...rest } = changed.value;
    await keepChanged(rest);
  }
}

/** Ask for the texts that are not here yet; what is missing comes with the network. */
export function retryLanguage() {
  loadRest();
  if (!hasLanguage.value) loading = setLanguage(wantedLanguage.value);
}
