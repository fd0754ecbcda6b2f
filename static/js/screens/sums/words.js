// The core's names, keys and numbers of a sum, in words.

import { plain, sumRange, sumValue, typedValue } from "../../format.js";
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
import { asUsed, inUnits } from "./units.js";

/** @typedef {Record<string, string>} Names the make's own, of its steps and sizes */
/**
 * @typedef {object} How
 * @property {string} [sum] key of the sum
 * @property {string} [thermometer] unit that the thermometer of a rule reads
 * @property {boolean} [isInside] whether what it is of is said above
 */

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

// A verdict carries what was read and the limit; in which unit, by its name.
/** @type {Record<string, string>} */
const READ_IN = {
  age: "s",
  cooling: "s",
  limit: "g",
  in_time: "s",
  rate_verdict: "K/min",
  fill_verdict: "kg",
};
// An answer without a unit of its own: so many times, or a share of the whole.
const TIMES = ["pace", "dose_factor", "speed_now", "factor"];
const SHARES = ["accounted_ratio"];
// A time against another: positive is later, or earlier.
/** @type {Record<string, number>} */
const LATER = { late_s: 1, behind_s: 1, lag_s: 1, earlier_s: -1, ahead_s: -1 };
// Here the two ends are what is wanted, not what was read and its limit.
const WANTED = ["rate_verdict", "fill_verdict"];

/**
 * @param {SumValue} value
 * @param {string} thermometer
 */
function readUnit(value, thermometer) {
  if (value.name in READ_IN) return READ_IN[value.name];
  if (/_frac$/.test(value.of ?? "")) return "fraction";
  if (value.of === "temp_c") return "C";
  if (value.name === "temperature") return thermometer;
  return value.of === "cured_days" ? "d" : "";
}

/**
 * A figure in its unit as this person reads it; degrees a minute are kept by the
 * second.
 *
 * @param {number} figure
 * @param {string} unit
 */
function shown(figure, unit) {
  const used = unit === "K/min" ? asUsed(figure / 60, "K/s") : asUsed(figure, unit);
  return sumValue(used.value, used.unit, nowMs());
}

/**
 * What was read, in the very unit it was read in: a rule is never converted.
 *
 * @param {any} figure number or word
 * @param {string} unit
 * @param {boolean} isRule
 */
function readWords(figure, unit, isRule) {
  if (typeof figure !== "number") return isWords("figure", String(figure));
  if (isRule) return sumValue(figure, unit, nowMs());
  return unit || Number.isInteger(figure) ? shown(figure, unit) : plain(figure);
}

/**
 * @param {unknown} value
 * @returns {value is null | undefined}
 */
function isNothing(value) {
  return value === null || value === undefined;
}

/**
 * @param {SumValue} value
 * @param {string} thermometer
 */
function verdictDetail(value, thermometer) {
  const unit = readUnit(value, thermometer);
  if (WANTED.includes(value.name)) {
    return isNothing(value.low)
      ? ""
      : t("sums.wanted_between", pair(value.low, value.high, unit).ends);
  }
  if (value.name === "in_time")
    return t("sums.wanted_after", { span: sumValue(value.high, unit) });
  const isRule = value.name === "temperature";
  const read = isNothing(value.low) ? "" : readWords(value.low, unit, isRule);
  const limit = isNothing(value.high) ? "" : readWords(value.high, unit, isRule);
  if (read && limit) return t("sums.reads_limit", { value: read, limit });
  return limit
    ? t("sums.limit", { limit })
    : read
      ? t("sums.reads", { value: read })
      : "";
}

/**
 * @param {number} low
 * @param {number} high
 * @param {string} unit
 */
function pair(low, high, unit) {
  const [from, to] = [low, high].map((one) =>
    unit === "K/min" ? asUsed(one / 60, "K/s") : asUsed(one, unit),
  );
  const [first, last] = sumRange(from.value, to.value, from.unit, nowMs());
  return {
    ends: { low: first, high: last },
    isOne: shown(low, unit) === shown(high, unit),
  };
}

/**
 * @param {string} name
 * @param {number} seconds
 */
function againstWords(name, seconds) {
  return t(LATER[name] * seconds < 0 ? "sums.earlier" : "sums.later", {
    span: sumValue(Math.abs(seconds), "s"),
  });
}

/** @param {SumValue} value */
function range(value) {
  if (value.name === "held_s")
    return t("sums.needed_span", { span: sumValue(value.low, "s") });
  if (value.name === "counted_days")
    return isNothing(value.high) ? "" : t("sums.needed_days", { n: plain(value.high) });
  if (isNothing(value.low) && isNothing(value.high)) return "";
  const { unit } = value;
  if (SHARES.includes(value.name))
    return t("sums.wanted_between", pair(value.low, value.high, "fraction").ends);
  if (value.name in LATER) {
    return t("sums.between", {
      low: againstWords(value.name, value.low),
      high: againstWords(value.name, value.high),
    });
  }
  if (isNothing(value.high)) return t("sums.at_least", { low: shown(value.low, unit) });
  if (isNothing(value.low)) return t("sums.at_most", { high: shown(value.high, unit) });
  const { ends, isOne } = pair(value.low, value.high, unit);
  return isOne ? "" : t("sums.between", ends);
}

/** @param {SumValue} value */
function mainWords(value) {
  if (isNothing(value.value)) return t("sums.not_known");
  if (value.name in LATER) return againstWords(value.name, value.value);
  if (SHARES.includes(value.name)) return shown(value.value, "fraction");
  const text = shown(value.value, value.unit);
  if (TIMES.includes(value.name)) return t("sums.times", { value: text });
  if (value.name === "ph_gap") return t("sums.ph_more", { value: text });
  return value.unit === "pH" ? t("sums.ph", { value: text }) : text;
}

/**
 * One value of an answer: {label, main, detail}.
 *
 * @param {SumValue} value
 * @param {Names} [names]
 * @param {How} [how]
 */
export function valueWords(
  value,
  names = {},
  { sum = "", thermometer = "C", isInside = false } = {},
) {
  // What it means is of no rule: the rule stands beside the readings.
  const of =
    value.name === "meaning" || isInside
      ? ""
      : value.of !== null && value.of in names
        ? inside(names[value.of])
        : ofWords(value.of);
  const name = outLabel(value.name, sum);
  const title = value.name === "figure" ? capital(of) : of ? `${name}, ${of}` : name;
  if (value.unit === "key") {
    return {
      label: title,
      main: isWords(value.name, value.value),
      detail: verdictDetail(value, thermometer),
    };
  }
  return { label: title, main: mainWords(value), detail: range(value) };
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
  // A rule's share comes without its unit; its name tells.
  return shown(row.value, row.unit || (/_frac$/.test(row.name) ? "fraction" : ""));
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

// Numbers of a note are spans, temperatures of the thermometer, or plain.
const SPANS = [
  "hold_too_short",
  "gap_too_long",
  "reading_missing",
  "holding_time_not_entered",
  "reads_as_thermised",
  "thermised_if_phosphatase_positive",
  "cut.floc_too_early",
  "cut.floc_too_late",
];
const TEMPS = [
  "temperature_never_reached",
  "temperature_fell_below",
  "airspace_too_cold",
  "airspace_not_recorded_in_hold",
  "recorder_reads_above_indicator",
];

// These are no thermometer's own: they are told as the person reads them.
/** @type {Record<string, string[]>} */
const KEPT_TEMPS = {
  density_outside_table: ["low", "high"],
  jacket_out_of_reach: ["value"],
  reading_set_aside: ["temp_c"],
  vat_is_warm_enough: ["value"],
  water_hotter_than_most: ["value", "limit"],
};

/**
 * @param {string} name
 * @param {string} field
 * @param {number} figure
 * @param {string} unit
 */
function noteNumber(name, field, figure, unit) {
  if (KEPT_TEMPS[name]?.includes(field)) {
    const used = asUsed(figure, "C");
    return sumValue(used.value, used.unit);
  }
  if (SPANS.includes(name)) return sumValue(figure, "s");
  if (TEMPS.includes(name)) return sumValue(figure, unit);
  return plain(figure);
}

/**
 * A note of an answer, or a reason of a verdict.
 *
 * @param {Answer["notes"][number]} note
 * @param {string} [unit] what the thermometer reads
 */
export function noteWords(note, unit = "") {
  const name = String(note.key).replace(/^note\./, "");
  /** @type {Record<string, string>} */
  const values = {};
  for (const [key, figure] of Object.entries(note)) {
    if (typeof figure === "number") values[key] = noteNumber(name, key, figure, unit);
    else if (Array.isArray(figure))
      values[key] = figure
        .map((one) => inside(label("chart_" + one).replace(/^.*: /, "")))
        .join(", ");
    else values[key] = figure === null ? "–" : ofWords(String(figure));
  }
  const text = has("note." + name)
    ? t("note." + name, values)
    : t("note.other", { words: words(name) });
  return note.row
    ? t("word.told", { name: ofWords(note.row), value: inside(text) })
    : text;
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
  const shown = inUnits(figure, own, unit ?? own);
  return sumValue(shown.value, shown.unit, nowMs());
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
