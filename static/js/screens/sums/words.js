// The core's names, keys and numbers of a sum, in words.

import { plain, sumValue, typedValue } from "../../format.js";
import { nowMs } from "../../parts/source.js";
import {
  capital,
  has,
  inside,
  reasons,
  t,
  tFirst,
  words,
} from "../../messages/index.js";
import { convert } from "../../units/convert.js";
import { asUsed } from "./units.js";

/**
 * What an input, an output or a figure below an answer is called; in one sum by its
 * own name.
 *
 * @param {string} name
 * @param {string} [sum] key
 */
export function label(name, sum = "") {
  const [base, ...rest] = String(name).split(".");
  const title = tFirst([
    `in.${sum}.${base}`,
    `in.${base}`,
    `out.${base}`,
    `of.${base}`,
    `quantity.${base}`,
  ]);
  return capital(rest.length ? `${title}, ${ofWords(rest.join("."))}` : title);
}

/**
 * @param {string} name
 * @param {string} [sum] key
 */
export function outLabel(name, sum = "") {
  return tFirst([`out.${sum}.${name}`, `out.${name}`, `in.${name}`]);
}

/**
 * What a value is of: a rule, a step, a size of wheel.
 *
 * @param {string | null} of
 */
export function ofWords(of) {
  if (!of) return "";
  const press = /^(press_\d)\.(\d+)$/.exec(of);
  if (press) return `${t("of." + press[1])}, ${t("of.mm", { n: press[2] })}`;
  const counted = /^(make|size)_(\d+)$/.exec(of);
  if (counted) return t(`of.${counted[1]}_n`, { n: counted[2] });
  return has("of." + of) || has("pick." + of)
    ? tFirst([`of.${of}`, `pick.${of}`])
    : inside(words(of));
}

/**
 * A choice of an input.
 *
 * @param {string | undefined} name
 * @param {string | undefined} choice
 */
export function pickWords(name, choice) {
  return tFirst([`pick.${name}.${choice}`, `pick.${choice}`]);
}

/**
 * A word that the core answers with.
 *
 * @param {string} name
 * @param {string} word
 */
export function isWords(name, word) {
  return tFirst([`is.${name}.${word}`, `is.${word}`, `pick.${word}`]);
}

/**
 * A figure in its unit as this person reads it.
 *
 * @param {number} figure
 * @param {string} unit
 */
export function shown(figure, unit) {
  const used = asUsed(figure, unit);
  return sumValue(used.value, used.unit, nowMs());
}

/**
 * @param {unknown} value
 * @returns {value is null | undefined}
 */
export function isNothing(value) {
  return value === null || value === undefined;
}

/**
 * A figure that an answer rests on.
 *
 * @param {Pick<RestsOn, "name" | "value" | "unit">} row
 * @param {{name: string}} [input]
 */
export function restsValue(row, input) {
  if (Array.isArray(row.value)) return rowsWords(row.value);
  if (typeof row.value === "boolean" || isNothing(row.value)) return "";
  if (typeof row.value === "string")
    return pickWords(input?.name ?? row.name, row.value);
  return shown(row.value, row.unit);
}

/**
 * How many rows a table has.
 *
 * @param {unknown[]} rows
 */
export function rowsWords(rows) {
  return t(rows.length === 1 ? "sums.rows.one" : "sums.rows.many", { n: rows.length });
}

/**
 * What was typed for an input, as it was typed.
 *
 * @param {{name: string}} row
 * @param {SumGiven} given
 */
export function givenWords(row, given) {
  if (given.rows) return rowsWords(given.rows);
  if (given.typed === undefined) return pickWords(row.name, given.value);
  return typedValue(given.typed, given.unit);
}

/**
 * What was begun for an input and not kept.
 *
 * @param {SumInput} row
 * @param {{typed: string, unit: string}} begun
 */
export function beginWords(row, begun) {
  if (row.kind !== "series")
    return t("sums.begun", { value: typedValue(begun.typed, begun.unit) });
  return t("sums.begun_row");
}

/**
 * @param {SumRow | null | undefined} sum
 * @param {string | null} field
 */
function fieldOf(sum, field) {
  const [name, place, column] = String(field).split(".");
  const row = sum?.inputs.find((one) => one.name === name) ?? null;
  const part = column ? row?.columns?.find((one) => one.name === column) : row;
  const whole = label(name, sum?.key);
  const title = column
    ? `${whole}, ${t("of.row_n", { n: place })}, ${inside(label(column, sum?.key))}`
    : whole;
  return { row, part, title, name };
}

/**
 * @param {any} figure number, word or words
 * @param {SumInput | null | undefined} part
 * @param {string} [unit]
 */
function figureWords(figure, part, unit) {
  if (Array.isArray(figure))
    return figure.map((one) => pickWords(part?.name, one)).join(", ");
  if (typeof figure !== "number") return isNothing(figure) ? "" : String(figure);
  const own = part?.unit ?? "";
  const asked = unit ?? own;
  return sumValue(convert(figure, own, asked), asked, nowMs());
}

const PARTS = /[.*+?^$()|[\]\\]/g;

/**
 * The figures of the core's words for a reason, or null where they are others.
 *
 * @param {string} said
 * @param {string} reason
 */
function figuresOf(said, reason) {
  const pattern = reason.replace(PARTS, "\\$&").replaceAll("{}", "(\\S+?)");
  return new RegExp(`(?:^| )${pattern}$`).exec(said)?.slice(1);
}

/**
 * A reason in the language shown, its figures in words; none in English. A field of
 * several words stands before it, so the longest reason that ends the text counts.
 *
 * @param {string} text
 * @param {SumInput | null | undefined} part
 * @param {string} [unit]
 */
function reasonWords(text, part, unit) {
  const known = reasons() ?? {};
  const said = text.split(" ").slice(2).join(" ");
  const key = Object.keys(known)
    .filter((one) => figuresOf(said, one))
    .sort((a, b) => b.length - a.length)[0];
  if (!key) return "";
  const figures = /** @type {string[]} */ (figuresOf(said, key));
  return (
    known[key].replace(
      /\{(u?)(\d)\}/g,
      (
        /** @type {string} */ _,
        /** @type {string} */ isOwn,
        /** @type {string} */ place,
      ) => {
        const told = figures[Number(place) - 1];
        const figure = Number(told);
        if (Number.isNaN(figure)) return told;
        return isOwn ? figureWords(figure, part, unit) : plain(figure);
      },
    ) + "."
  );
}

/**
 * A formula refuses in words that begin with the field and its value; the
 * names and the last number in them are put into words and units here.
 *
 * @param {string} text
 * @param {any} limit
 * @param {SumInput | null | undefined} part
 * @param {string} [unit]
 */
function formulaWords(text, limit, part, unit) {
  const rest = text.split(" ").slice(2);
  const isCounted = typeof limit === "number" && rest.length > 0;
  if (isCounted && Number.isFinite(Number(rest[rest.length - 1]))) {
    rest[rest.length - 1] = figureWords(limit, part, unit);
  }
  return (
    rest
      .map((word) =>
        /_/.test(word) ? inside(label(word.replace(/[,;:]$/, ""))) : word,
      )
      .join(" ") + "."
  );
}

/**
 * A problem of a sum, with its field, the value and the limit.
 *
 * @param {Problem} problem
 * @param {SumRow | null} [sum]
 * @param {Record<string, SumGiven>} [given]
 */
export function sumProblem(problem, sum, given = {}) {
  const { row, part, title, name } = fieldOf(sum, problem.field);
  const typed = given[name];
  const unit =
    typed?.unit && (part?.units ?? []).includes(typed.unit) ? typed.unit : undefined;
  const isAsTyped = typed?.typed !== undefined && part === row;
  const value = isAsTyped
    ? typedValue(typed.typed, typed.unit)
    : figureWords(problem.value, part, unit);
  const isCount = ["too_few", "too_many", "not_whole"].includes(problem.key);
  const limit = isCount ? plain(problem.limit) : figureWords(problem.limit, part, unit);
  const said = problem.text ?? "";
  const key = has("sum_problem." + problem.key) ? problem.key : "impossible";
  const text = t("sum_problem." + key, {
    field: title,
    value,
    limit,
    words:
      key === "impossible"
        ? reasonWords(said, part, unit) || formulaWords(said, problem.limit, part, unit)
        : "",
  });
  const why = `why.${part?.name}.${problem.key}`;
  return has(why) ? `${text} ${t(why)}` : text;
}

/**
 * Why an unlikely value is asked about once more.
 *
 * @param {Problem} ask
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
    limit: figureWords(ask.limit, part, unit),
  });
}
