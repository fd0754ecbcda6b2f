// What is wrong with the values of a sum, in words and in the units a person typed.

import { plain, sumValue, typedValue } from "../../format.js";
import { nowMs } from "../../parts/source.js";
import { has, inside, t } from "../../messages/index.js";
import { convert } from "../../units/convert.js";
import { asUsed, unitUsed } from "./units.js";
import { label, pickWords } from "./words.js";

/**
 * @param {SumRow | null | undefined} sum
 * @param {string | null} field
 */
function fieldOf(sum, field) {
  const [name, rowNumber, column] = String(field).split(".");
  const input = sum?.inputs.find((one) => one.name === name) ?? null;
  const part = column ? input?.columns?.find((one) => one.name === column) : input;
  const whole = label(name, sum?.key);
  const title = column
    ? `${whole}, ${t("of.row_n", { n: rowNumber })}, ${inside(label(column, sum?.key))}`
    : whole;
  return { input, part, title, name };
}

/**
 * @param {any} figure number, word or words
 * @param {string} own unit that the core gives it in
 * @param {string} shown unit that a person typed the input in
 * @param {string} [name] of the input that has the words to choose from
 * @returns {string}
 */
function figureWords(figure, own, shown, name) {
  if (Array.isArray(figure))
    return figure.map((item) => figureWords(item, own, shown, name)).join(", ");
  if (typeof figure === "string") return pickWords(name, figure);
  if (typeof figure !== "number") return "";
  if (shown === "") return plain(figure);
  return sumValue(convert(figure, own, shown), shown, nowMs());
}

/**
 * The numbers that a refusal speaks of, by the names of its sentence.
 *
 * @param {SumProblem} problem
 * @param {string} unit
 * @param {string} [name] of the input
 */
function refusedFigures(problem, unit, name) {
  const own = problem.unit;
  const [low, high] = Array.isArray(problem.limit) ? problem.limit : [];
  const told = {
    value: problem.value,
    limit: problem.limit,
    ...(typeof low === "number" ? { low, high } : {}),
  };
  /** @type {Record<string, string>} */
  const words = {};
  for (const [key, figure] of Object.entries(told))
    words[key] = figureWords(figure, own, unit, name);
  for (const [key, figure] of Object.entries(problem.figures)) {
    const used = asUsed(figure.value, figure.unit);
    words[key] = figureWords(used.value, used.unit, used.unit);
  }
  return words;
}

/**
 * What a formula refuses without a sum beside it.
 *
 * @param {SumProblem} problem
 */
export function refusedWords(problem) {
  const unit = unitUsed(problem.unit);
  return t("refused." + problem.key, {
    ...refusedFigures(problem, unit),
    field: label(String(problem.field)),
  });
}

/**
 * A problem of a sum, with its field, the value and the limit.
 *
 * @param {Problem} told by the core, also through the keypad, which knows no sums
 * @param {SumRow | null} [sum]
 * @param {Record<string, SumGiven>} [given]
 */
export function sumProblem(told, sum, given = {}) {
  const problem = /** @type {SumProblem} */ (told);
  const { input, part, title, name } = fieldOf(sum, problem.field);
  const typed = given[name];
  const own = problem.unit;
  const isSame = !problem.of && own === part?.unit;
  const isKnown = typed?.unit && (part?.units ?? []).includes(typed.unit);
  const unit = isSame && isKnown ? typed.unit : unitUsed(own);
  const isAsTyped = isSame && typed?.typed !== undefined && part === input;
  const values = refusedFigures(problem, unit, part?.name);
  if (isAsTyped) values.value = typedValue(typed.typed, typed.unit);
  if (problem.of)
    return `${refusedWords({ ...problem, field: problem.of })} ${t("refused.look_at", { field: title })}`;
  const text = t("refused." + problem.key, { ...values, field: title });
  const why = `why.${part?.name}.${problem.key}`;
  return has(why) ? `${text} ${t(why)}` : text;
}

/**
 * Why an unlikely value is asked about once more.
 *
 * @param {ValueProblem} ask
 * @param {SumRow} sum
 * @param {string} name
 * @param {string} typed
 * @param {string} unit
 */
export function askWords(ask, sum, name, typed, unit) {
  const { part } = fieldOf(sum, ask.field);
  return t("sums.ask", {
    value: typedValue(typed, unit),
    side: inside(t("keypad." + ask.key)),
    limit: figureWords(ask.limit, part?.unit ?? "", unit),
  });
}
