import { signal } from "@preact/signals";
import { dropUnsaved, nowMs, record, unsaved } from "./source.js";
import { plain, quantity } from "../format.js";
import { has, inside, t, tFirst, words } from "../messages/index.js";

export const UNDO_MS = 12000;

/** @import { Signal } from "@preact/signals" */
/**
 * What an act is recorded with.
 *
 * @typedef {object} Given
 * @property {?string} [make]
 * @property {Record<string, any>} [data]
 * @property {?string} [ref] id of the entry that it is about
 * @property {?string} [by] who did it, if not who taps
 * @property {?number} [atMs] corrected instant of what was seen, when that was not now
 * @property {(event: Entry) => Promise<object>} [prove] gives the proof of the entry
 * @property {?string} [joins] id of the entry before that is one act with this one
 */

/**
 * The last everyday act, while it can still be undone; `before`: its earlier entries.
 *
 * @typedef {{event: Entry, before: Entry[], said: string, untilMs: number,
 *   isFinal: boolean}} Last
 * @type {Signal<?Last>}
 */
export const lastAct = signal(null);
/**
 * What could not be saved, in words; stays until the person puts it away.
 *
 * @type {Signal<?string>}
 */
export const trouble = signal(null);

/**
 * Record one fact, say what was recorded, and offer to undo it.
 *
 * @param {string} kind
 * @param {Given} given
 * @param {string} [said]
 * @returns {Promise<?Entry>} null when it could not be saved (then `trouble` says why);
 *   rejects when `prove` does, and nothing was recorded
 */
export async function act(
  kind,
  { make, data = {}, ref = null, by = null, atMs = null, prove, joins = null },
  said,
) {
  /** @type {any} */
  let refusal = null;
  const proof =
    prove &&
    ((/** @type {Entry} */ event) =>
      prove(event).catch((problem) => {
        throw (refusal = problem);
      }));
  try {
    const event = await record(kind, { make, data, ref, by, atMs, prove: proof });
    forget(kind, make, data);
    trouble.value = null;
    // What a person proved is struck out with a reason and a proof, not undone.
    if (said) lastAct.value = lastOf(event, said, joins);
    return event;
  } catch (problem) {
    if (refusal) throw refusal; // the pad says so, and the value still stands there
    trouble.value = t("trouble.not_saved", {
      what: said ?? t("kind." + kind),
      why: whyOf(problem),
    });
    return null;
  }
}

// What was undone in the meantime is joined no more.
/** @type {(event: Entry, said: string, joins: ?string) => Last} */
function lastOf(event, said, joins) {
  const first = joins && lastAct.value?.event.id === joins ? lastAct.value : null;
  return {
    event,
    before: first ? [...first.before, first.event] : [],
    said: first ? `${first.said} \u00b7 ${said}` : said,
    untilMs: nowMs() + UNDO_MS,
    isFinal: Boolean(event.proof),
  };
}

// The same value entered again and saved: the copy that failed is done with.
/** @type {(kind: string, make: ?string | undefined, data: object) => void} */
function forget(kind, make, data) {
  const text = JSON.stringify(data);
  for (const entry of unsaved.value) {
    const isSame =
      entry.kind === kind && entry.make === make && JSON.stringify(entry.data) === text;
    if (isSame) dropUnsaved(entry.id);
  }
}

/** Strike the last everyday act, all entries of it; the record keeps them. */
export async function undo() {
  const last = lastAct.value;
  lastAct.value = null;
  if (!last || last.isFinal) return;
  for (const { make, id } of [last.event, ...last.before])
    await act("entry_struck", { make, ref: id, data: { why: t("undo.why") } });
}

/**
 * Why something failed, in words: the core's problems, the server's, or the text.
 *
 * @param {any} problem whatever was thrown
 * @returns {string}
 */
export function whyOf(problem) {
  if (Array.isArray(problem?.problems)) return problemsText(problem.problems);
  if (has("error." + problem?.key))
    return t("error." + problem.key, { seconds: problem.limit });
  return problem?.text ?? problem?.message ?? String(problem);
}

/**
 * What is wrong, as one line of words.
 *
 * @param {Problem[]} problems
 * @param {string} [name] the quantity that a "value" is of
 */
export function problemsText(problems, name) {
  return problems.map((problem) => problemText(problem, name)).join(" ");
}

/** @type {(field: ?string, limit: any, name?: string) => string} */
function limitText(field, limit, name) {
  if (Array.isArray(limit)) return limit.map(words).join(", ");
  if (typeof limit !== "number") return limit ?? "";
  return name && field === "value" ? quantity(name, limit) : plain(limit);
}

/** @param {{key: string, role: ?string}} limit the matter that stands, and who decides */
function stoppedText({ key, role }) {
  const matter = t(key);
  if (!role) return t("problem.stopped", { matter });
  return t("problem.stopped_role", { matter, role: inside(t("role." + role)) });
}

/**
 * One problem in words.
 *
 * @param {ValueProblem} problem
 * @param {string} [name] the quantity that a "value" is of
 */
export function problemText({ field, key, limit, value }, name) {
  if (key === "stopped") return stoppedText(limit);
  const path = String(field).split(".");
  const label =
    name && field === "value"
      ? t("quantity." + name)
      : tFirst(["field." + path.at(-1)]);
  // Of many rows that have such a field: which one.
  const what =
    path.length > 2 ? t("problem.field_in", { field: label, path: field }) : label;
  return t("problem." + key, {
    field: what,
    value: value ?? "",
    limit: has("role." + limit)
      ? inside(t("role." + limit))
      : limitText(field, limit, name),
  });
}

/**
 * What the core says of a typed figure; `ask` where it wants a second look.
 *
 * @typedef {{value: ?number, problems: Problem[], ask: any}} Figure
 */
