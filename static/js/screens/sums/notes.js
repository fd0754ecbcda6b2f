// A note of an answer, or a reason of a verdict, in words.

import { day, plain, sumValue } from "../../format.js";
import { has, inside, t, words } from "../../messages/index.js";
import { refusedWords } from "./refusals.js";
import { ofWords, shown } from "./words.js";

/** @typedef {Answer["notes"][number]} Note its numbers, and in `units` what they are in */

/**
 * @param {Note} note
 * @param {number} figure
 * @param {string | undefined} unit
 */
function numberWords(note, figure, unit) {
  if (!unit) return plain(figure);
  // A rule's figure is told as the thermometer shows it.
  return note.as_read ? sumValue(figure, unit) : shown(figure, unit);
}

/**
 * @param {Note} note
 * @param {string} name
 * @param {any} figure number, word or fields of a chart
 */
function partWords(note, name, figure) {
  if (typeof figure === "number")
    return name.endsWith("_ms")
      ? day(figure)
      : numberWords(note, figure, note.units?.[name]);
  if (Array.isArray(figure))
    return figure.map((field) => t("chart." + field)).join(", ");
  return figure === null ? "–" : ofWords(String(figure));
}

/**
 * A note of an answer, or a reason of a verdict.
 *
 * @param {Note} note
 */
export function noteWords(note) {
  const name = String(note.key).replace(/^note\./, "");
  const { units, as_read: _, refused, ...parts } = note;
  const values = Object.fromEntries(
    Object.entries(parts).map(([key, figure]) => [key, partWords(note, key, figure)]),
  );
  const text = has("note." + name)
    ? t("note." + name, values)
    : t("note.other", { words: words(name) });
  if (refused) return `${text} ${refusedWords(refused)}`;
  return note.row
    ? t("word.told", { name: ofWords(note.row), value: inside(text) })
    : text;
}
