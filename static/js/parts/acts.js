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
 * @property {(event: Entry) => Promise<object>} [prove] gives the proof of the entry
 */

/**
 * The last everyday tap, while it can still be undone.
 *
 * @type {Signal<?{event: Entry, said: string, untilMs: number, isFinal: boolean}>}
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
  { make, data = {}, ref = null, by = null, prove },
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
    const event = await record(kind, { make, data, ref, by, prove: proof });
    forget(kind, make, data);
    trouble.value = null;
    // What a person proved is struck out with a reason and a proof, not undone.
    if (said)
      lastAct.value = {
        event,
        said,
        untilMs: nowMs() + UNDO_MS,
        isFinal: Boolean(event.proof),
      };
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

/** Strike the last everyday tap; the record keeps both. */
export async function undo() {
  const last = lastAct.value;
  lastAct.value = null;
  if (!last || last.isFinal) return;
  await act("entry_struck", {
    make: last.event.make,
    ref: last.event.id,
    data: { why: t("undo.why") },
  });
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

/**
 * One problem in words.
 *
 * @param {Problem} problem
 * @param {string} [name] the quantity that a "value" is of
 */
export function problemText({ field, key, limit }, name) {
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
