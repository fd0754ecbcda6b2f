// The only place where a number becomes text, and where typed text without a
// quantity of its own becomes a number. Nothing here is used to decide: the
// core decides on the number itself, and what is shown is rounded only here.
//
// Figures are shown in the units and the language of who has the phone in hand
// (data/reads.js says which). What is kept, and what was typed, stays as it is.

/** @typedef {number | null | undefined} MaybeNumber */
/** @typedef {{unit?: string, decimals?: number, scale?: number, signed?: boolean}} Shown */
/**
 * How a quantity is typed and shown.
 *
 * @typedef {{unit: string, decimals: number, scale: number, offset: number,
 *     signed: boolean, kept: string, typed: string}} Form
 */

const MINUTE_S = 60;
const HOUR_S = 3600;
const DAY_S = 86400;

// `lines`: the core's table of units; `units`: kept unit to the one that is read.
/**
 * @type {{language: string, point: string, units: Record<string, string>,
 *     lines: UnitLine[]}}
 */
let reads = { language: "en", point: ".", units: {}, lines: [] };
let follow = () => {};

/**
 * Show figures from now on as a person reads them.
 *
 * @param {{language?: string, units?: Record<string, string>, lines?: UnitLine[]}} next
 * @param {() => void} [onRead] called whenever a figure is written, so that a
 *     screen knows what it rests on
 */
export function setReads(next, onRead = follow) {
  reads = { ...reads, ...next };
  reads.point = new Intl.NumberFormat(reads.language).format(1.1)[1];
  follow = onRead;
}

// English as it is written here, not with its months first.
function locale() {
  return reads.language === "en" ? "en-GB" : reads.language;
}

/** The sign that parts whole from decimals. */
export function point() {
  follow();
  return reads.point;
}

/** @param {string} unit */
function lineOf(unit) {
  follow();
  const to = reads.units[unit];
  return to ? reads.lines.find((one) => one.from === unit && one.to === to) : undefined;
}

/**
 * A kept value in the unit that the person reads: {value, unit}.
 *
 * @param {any} value a number, or the word of a sum
 * @param {string} unit
 * @returns {{value: any, unit: string}}
 */
export function asRead(value, unit) {
  if (typeof value !== "number") return { value, unit };
  const line = lineOf(unit === "K/s" ? "K" : unit);
  if (!line) return { value, unit };
  return {
    value: value * line.scale + line.offset,
    unit: unit === "K/s" ? "F/s" : line.to,
  };
}

/**
 * The unit in which the person reads what is kept in another.
 *
 * @param {string} unit
 */
export function unitRead(unit) {
  return lineOf(unit)?.to ?? unit;
}

// How many decimals an instrument of this kind is read to, and how the number
// is shown. `scale` turns a fraction into percent.
const PERCENT = { unit: "%", scale: 100 };
const LITRES = { unit: "L", decimals: 0 };
const CELSIUS = { unit: "C", decimals: 1, signed: true };
/** @type {Record<string, Shown>} */
const QUANTITY_FORMS = {
  milk_volume_l: LITRES,
  milk_mass_kg: { unit: "kg", decimals: 1 },
  milk_age_h: { unit: "h", decimals: 1 },
  milk_temp_c: CELSIUS,
  air_space_temp_c: CELSIUS,
  jacket_temp_c: CELSIUS,
  indicator_temp_c: CELSIUS,
  recorder_temp_c: CELSIUS,
  curd_temp_c: CELSIUS,
  water_temp_c: CELSIUS,
  room_temp_c: CELSIUS,
  brine_temp_c: CELSIUS,
  store_temp_c: CELSIUS,
  ph: { unit: "", decimals: 2 },
  brine_ph: { unit: "", decimals: 2 },
  titratable_acidity_frac: { ...PERCENT, decimals: 3 },
  fat_frac: { ...PERCENT, decimals: 2 },
  snf_frac: { ...PERCENT, decimals: 2 },
  protein_frac: { ...PERCENT, decimals: 2 },
  whey_drained_l: LITRES,
  water_added_l: LITRES,
  bed_load_kg: { unit: "kg", decimals: 1 },
  press_gauge_kpa: { unit: "kPa", decimals: 0 },
  wheel_mass_kg: { unit: "kg", decimals: 2 },
  brine_salt_frac: { ...PERCENT, decimals: 2 },
  store_humidity_frac: { ...PERCENT, decimals: 1 },
  cheese_moisture_frac: { ...PERCENT, decimals: 2 },
  cheese_fat_frac: { ...PERCENT, decimals: 2 },
  cheese_salt_frac: { ...PERCENT, decimals: 2 },
  cheese_ph: { unit: "", decimals: 2 },
  milk_phosphatase_mu_l: { unit: "mU/L", decimals: 0 },
  cheese_phosphatase_ug: { unit: "ug", decimals: 1 },
};
// A gallon is larger than a litre, a psi than a kPa: one decimal more is read.
/** @type {Record<string, number>} */
const MORE_DECIMALS = { gal: 1, imp_gal: 1, psi: 1 };
/** @type {Record<string, string>} */
const UNIT_NAMES = {
  C: "°C",
  F: "°F",
  K: "°C",
  "K/min": "°C/min",
  fraction: "%",
  "fraction lactic": "%",
  pH: "",
  pH_rise: "",
  times: "",
  multiple: "×",
  min: "min",
  F_rise: "°F",
  imp_gal: "imp. gal",
  lactic_percent: "%",
  dornic: "°D",
  thorner: "°Th",
  soxhlet_henkel: "°SH",
  Baume: "°Bé",
  salometer: "°Sal",
  ug: "µg",
  "kg/m3": "kg/m³",
  "m2/s": "m²/s",
};
// How a sum's value is shown in each unit; any other unit to three or four figures.
/** @type {Record<string, {decimals: number, scale?: number, unit?: string}>} */
const SUM_FORMS = {
  C: { decimals: 1 },
  F: { decimals: 1 },
  K: { decimals: 2 },
  F_rise: { decimals: 2 },
  pH: { decimals: 2 },
  pH_rise: { decimals: 2 },
  fraction: { decimals: 2, scale: 100 },
  "%": { decimals: 2 },
  "fraction lactic": { decimals: 3, scale: 100 },
  lactic_percent: { decimals: 3 },
  dornic: { decimals: 1 },
  thorner: { decimals: 1 },
  soxhlet_henkel: { decimals: 2 },
  "K/s": { decimals: 2, scale: 60, unit: "°C/min" },
  "F/s": { decimals: 2, scale: 60, unit: "°F/min" },
  m: { decimals: 0, scale: 1000, unit: "mm" },
  Baume: { decimals: 1 },
  salometer: { decimals: 1 },
  "kg/m3": { decimals: 1 },
  "kg/L": { decimals: 4 },
  "g/L": { decimals: 1 },
  "g/kg": { decimals: 1 },
  psi: { decimals: 1 },
  bar: { decimals: 2 },
  mm: { decimals: 0 },
  cm: { decimals: 1 },
  in: { decimals: 2 },
};
// How many decimals are typed in each unit.
/** @type {Record<string, number>} */
const TYPED_DECIMALS = {
  C: 1,
  F: 1,
  K: 2,
  F_rise: 2,
  "%": 3,
  pH: 2,
  kg: 3,
  lb: 2,
  oz: 2,
  L: 2,
  gal: 2,
  imp_gal: 2,
  mL: 2,
  kPa: 2,
  bar: 3,
  psi: 1,
  s: 0,
  min: 1,
  h: 2,
  d: 2,
  mm: 1,
  cm: 2,
  m: 3,
  in: 3,
  "kg/m3": 1,
  Baume: 1,
  salometer: 1,
  dornic: 1,
  thorner: 1,
};

/**
 * How a quantity is typed and shown: {unit, decimals, scale, offset, signed, kept:
 * its own unit, typed: the unit of typed text for the core, "" for its own}.
 *
 * @param {string} quantity
 * @returns {Form}
 */
export function formOf(quantity) {
  const form = {
    unit: "",
    decimals: 2,
    scale: 1,
    offset: 0,
    signed: false,
    ...QUANTITY_FORMS[quantity],
  };
  const line = lineOf(form.unit);
  const kept = form.unit;
  if (!line) return { ...form, kept, typed: form.unit === "%" ? "%" : "" };
  const decimals = form.decimals + (MORE_DECIMALS[line.to] ?? 0);
  return {
    ...form,
    kept,
    decimals,
    unit: line.to,
    typed: line.to,
    scale: line.scale,
    offset: line.offset,
  };
}

/**
 * A number with a fixed count of decimals.
 *
 * @param {MaybeNumber} value
 * @param {number} decimals
 */
export function number(value, decimals) {
  if (value === null || value === undefined || Number.isNaN(value)) return "–";
  const text = Math.abs(value).toFixed(decimals);
  const isNegative = value < 0 && Number(text) !== 0;
  const [whole, part] = text.split(".");
  // A thin space parts thousands in all three languages: a point or a comma would
  // be the decimal of a colleague.
  const grouped =
    whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, "\u202f") : whole;
  return (isNegative ? "−" : "") + grouped + (part ? point() + part : "");
}

/** @param {MaybeNumber} value */
export function count(value) {
  return number(value, 0);
}

/**
 * A number as it stands, without zeros that nobody measured.
 *
 * @param {MaybeNumber} value
 */
export function plain(value) {
  if (value === null || value === undefined) return "–";
  return typedText(Number(value.toPrecision(6)));
}

/**
 * Typed text as it is shown: with the person's decimal sign.
 *
 * @param {string | number} typed
 */
export function typedText(typed) {
  return String(typed).replace("-", "−").replace(".", point());
}

/** @param {number} value @param {number} decimals */
function days(value, decimals) {
  follow();
  /** @type {Intl.NumberFormatOptions} */
  const form = {
    style: "unit",
    unit: "day",
    unitDisplay: "long",
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  };
  return new Intl.NumberFormat(locale(), form).format(value).replace(/\s/, "\u00a0");
}

// Of the starter: it is counted, not weighed.
function packs() {
  follow();
  return { es: "sobre", fr: "sachet" }[reads.language] ?? "pack";
}

/** @param {string} unit */
export function unitName(unit) {
  if (/^pack\b/.test(unit)) return unit.replace("pack", packs());
  if (unit === "d") return days(2, 0).slice(2);
  if (unit === "g/m2/d") return "g/m²\u00a0/\u00a0" + days(1, 0).slice(2);
  return unit in UNIT_NAMES ? UNIT_NAMES[unit] : unit || "";
}

/**
 * The unit a quantity is shown in.
 *
 * @param {string} quantity
 */
export function unitOf(quantity) {
  return unitName(formOf(quantity).unit);
}

/** @param {string} text @param {string} unit */
function withUnit(text, unit) {
  if (unit === "") return text;
  return unit === "%" ? text + "\u00a0%" : text + "\u00a0" + unit;
}

/**
 * A value of a quantity without its unit: "31.5".
 *
 * @param {string} quantity
 * @param {MaybeNumber | string} value
 */
export function bare(quantity, value) {
  if (typeof value === "string") return value;
  const form = formOf(quantity);
  return value === null || value === undefined
    ? "–"
    : number(value * form.scale + form.offset, form.decimals);
}

/**
 * A value of a quantity with its unit: "31.5 °C".
 *
 * @param {string} name
 * @param {MaybeNumber | string} value
 */
export function quantity(name, value) {
  return withUnit(bare(name, value), unitOf(name));
}

/**
 * How far a value moved from the one before: "+0.4 °C".
 *
 * @param {string} name
 * @param {number} value
 * @param {number} before
 */
export function change(name, value, before) {
  const form = formOf(name);
  const sign = value - before > 0 ? "+" : "";
  // A difference: the zero of the scale does not count.
  return (
    sign +
    withUnit(number((value - before) * form.scale, form.decimals), unitName(form.unit))
  );
}

/**
 * What a keypad starts from when a known value is edited.
 *
 * @param {string} name
 * @param {MaybeNumber} value
 */
export function typedFrom(name, value) {
  const form = formOf(name);
  return value === null || value === undefined
    ? ""
    : (value * form.scale + form.offset).toFixed(form.decimals);
}

/** @param {number} size */
function amountDecimals(size) {
  return size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
}

/** @param {number} value @param {string} unit */
function bareAmount(value, unit) {
  const shown = asRead(value, unit).value;
  return number(shown, amountDecimals(Math.abs(shown)));
}

/**
 * A measured amount: three figures, for a dose read off a scale or cylinder.
 *
 * @param {MaybeNumber} value
 * @param {string} unit
 */
export function amount(value, unit) {
  if (value === null || value === undefined) return "–";
  return withUnit(bareAmount(value, unit), unitName(unitRead(unit)));
}

/**
 * A kept amount as text for a keypad that types in the unit read.
 *
 * @param {MaybeNumber} value
 * @param {string} unit
 * @param {number} decimals
 */
export function amountTyped(value, unit, decimals) {
  return hasNot(value) ? "" : asRead(value, unit).value.toFixed(decimals);
}

/**
 * The limits of an amount: "214 – 237 mL".
 *
 * @param {MaybeNumber} low
 * @param {MaybeNumber} high
 * @param {string} unit
 */
export function amountBand(low, high, unit) {
  if (hasNot(low) && hasNot(high)) return "";
  if (hasNot(high)) return "≥ " + amount(low, unit);
  if (hasNot(low)) return "≤ " + amount(high, unit);
  return `${bareAmount(low, unit)} – ${amount(high, unit)}`;
}

// A figure of a recipe has the digits that its author gave it; converted, four.
/** @param {number} value @param {string} unit */
function bareIn(value, unit) {
  const shown = asRead(value, unit);
  if (shown.unit === unit)
    return plain(unit.startsWith("fraction") ? value * 100 : value);
  return plain(
    Number(shown.unit === "F" ? shown.value.toFixed(1) : shown.value.toPrecision(4)),
  );
}

/**
 * Any value in a named unit of a recipe: temperatures, shares, times, masses.
 *
 * @param {MaybeNumber} value
 * @param {string | null} unit
 */
export function inUnit(value, unit) {
  if (value === null || value === undefined) return "–";
  if (unit === "s") return span(value);
  return withUnit(bareIn(value, unit ?? ""), unitName(unitRead(unit ?? "")));
}

/**
 * A figure of a recipe in the recipe's own unit, where it is changed in that.
 *
 * @param {MaybeNumber} value
 * @param {string} unit
 */
export function inOwnUnit(value, unit) {
  return unit in reads.units
    ? withUnit(plain(value), unitName(unit))
    : inUnit(value, unit);
}

/**
 * A band: "30.0 to 32.0 °C", "at least 6.30", or "" when there is none.
 *
 * @param {string} name
 * @param {MaybeNumber} low
 * @param {MaybeNumber} high
 */
export function band(name, low, high) {
  if (hasNot(low) && hasNot(high)) return "";
  if (hasNot(high)) return "≥ " + quantity(name, low);
  if (hasNot(low)) return "≤ " + quantity(name, high);
  return bare(name, low) + " – " + quantity(name, high);
}

/**
 * A band in a recipe's own unit.
 *
 * @param {MaybeNumber} low
 * @param {MaybeNumber} high
 * @param {string} unit
 */
export function bandIn(low, high, unit) {
  if (hasNot(low) && hasNot(high)) return "";
  if (hasNot(high)) return "≥ " + inUnit(low, unit);
  if (hasNot(low)) return "≤ " + inUnit(high, unit);
  if (unit === "s") return `${span(low)} – ${span(high)}`;
  return `${bareIn(low, unit)} – ${inUnit(high, unit)}`;
}

/** @param {unknown} value @returns {value is null | undefined} */
function hasNot(value) {
  return value === null || value === undefined;
}

/** @param {number} value */
function two(value) {
  return String(value).padStart(2, "0");
}

/**
 * A running clock: "4:07", "1:02:34". Always of a positive span.
 *
 * @param {number} seconds
 */
export function ticks(seconds) {
  const whole = Math.floor(Math.abs(seconds));
  const hours = Math.floor(whole / HOUR_S);
  const minutes = Math.floor((whole % HOUR_S) / MINUTE_S);
  const tail = two(whole % MINUTE_S);
  if (hours >= 24) return span(whole);
  return hours > 0 ? `${hours}:${two(minutes)}:${tail}` : `${minutes}:${tail}`;
}

/**
 * A span in words: "45 s", "12 min", "1 h 05 min", "3 days".
 *
 * @param {MaybeNumber} seconds
 */
export function span(seconds) {
  if (hasNot(seconds)) return "–";
  const size = Math.abs(seconds);
  if (size < 90) return `${Math.round(size)}\u00a0s`;
  const minutes = Math.round(size / MINUTE_S);
  if (minutes < 60) return `${minutes}\u00a0min`;
  if (size < 2 * DAY_S) {
    const rest = minutes % 60;
    const hours = `${Math.floor(minutes / 60)}\u00a0h`;
    return rest ? `${hours} ${two(rest)}\u00a0min` : hours;
  }
  return days(Math.round(size / DAY_S), 0);
}

/**
 * A span to the finest that is used: "12 min", "1 h 05 min", "2.6 days".
 *
 * @param {MaybeNumber} seconds
 */
export function fineSpan(seconds) {
  if (hasNot(seconds)) return "–";
  const sign = seconds < 0 ? "−" : "";
  if (Math.abs(seconds) < 2 * DAY_S) return sign + span(seconds);
  return sign + days(Math.abs(seconds) / DAY_S, 1);
}

/** @param {number} value @param {string} unit */
function figures(value, unit) {
  const size = Math.abs(value);
  if (Number.isInteger(value)) return number(value, 0);
  if (unit === "m2/s") {
    const [digits, power] = value.toExponential(2).split("e");
    const raised = [...power.replace("+", "")].map(
      (one) => "⁻⁰¹²³⁴⁵⁶⁷⁸⁹"["-0123456789".indexOf(one)],
    );
    return `${typedText(digits)}\u00a0×\u00a010${raised.join("")}`;
  }
  return number(value, size >= 1000 ? 0 : size >= 100 ? 1 : size >= 10 ? 2 : 3);
}

/**
 * How many decimals the pad takes in a unit.
 *
 * @param {string} unit
 */
export function decimalsTyped(unit) {
  return TYPED_DECIMALS[unit] ?? 4;
}

/**
 * A value of a sum in its unit: "31.5 °C", "22 min", "2.00 %". `nowMs` for instants.
 *
 * @param {MaybeNumber} value
 * @param {string} unit
 * @param {number} [nowMs]
 */
export function sumValue(value, unit, nowMs) {
  if (hasNot(value)) return "–";
  if (unit === "s") return fineSpan(value);
  if (unit === "min") return fineSpan(value * MINUTE_S);
  if (unit === "d") return days(value, Number.isInteger(value) ? 0 : 1);
  if (unit === "ms") return clockDay(value, nowMs);
  const form = SUM_FORMS[unit];
  const name = form?.unit ?? unitName(unit);
  if (!form) return withUnit(figures(value, unit), name);
  return withUnit(number(value * (form.scale ?? 1), form.decimals), name);
}

/**
 * Two ends of a range; a unit that both carry is said once.
 *
 * @param {MaybeNumber} low
 * @param {MaybeNumber} high
 * @param {string} unit
 * @param {number} [nowMs]
 */
export function sumRange(low, high, unit, nowMs) {
  const ends = [sumValue(low, unit, nowMs), sumValue(high, unit, nowMs)];
  const tails = ends.map((one) => (/^[^\u00a0]+\u00a0(\D+)$/.exec(one) ?? [])[1]);
  if (tails[0] && tails[0] === tails[1])
    ends[0] = ends[0].slice(0, -tails[0].length - 1);
  return ends;
}

/**
 * A figure as it was typed, with the unit it was typed in.
 *
 * @param {string | number} typed
 * @param {string} unit
 */
export function typedValue(typed, unit) {
  return withUnit(typedText(typed), unitName(unit));
}

/**
 * The time of day on this phone: "14:05".
 *
 * @param {MaybeNumber} ms
 */
export function clock(ms) {
  if (hasNot(ms)) return "–";
  const at = new Date(ms);
  return `${two(at.getHours())}:${two(at.getMinutes())}`;
}

/**
 * The day: "Tue 25 Nov".
 *
 * @param {number} ms
 */
export function day(ms) {
  follow();
  return new Date(ms).toLocaleDateString(locale(), {
    weekday: "short",
    day: "numeric",
    month: "short",
  });
}

/**
 * The time, with its day when that is not the day of `nowMs`.
 *
 * @param {MaybeNumber} ms
 * @param {number} [nowMs]
 */
export function clockDay(ms, nowMs) {
  if (hasNot(ms)) return "–";
  const isToday = new Date(ms).toDateString() === new Date(nowMs ?? NaN).toDateString();
  return isToday ? clock(ms) : `${day(ms)} ${clock(ms)}`;
}

/**
 * From one instant to another; what both share is said once.
 *
 * @param {MaybeNumber} fromMs
 * @param {MaybeNumber} toMs
 * @param {number} [nowMs]
 */
export function clockSpan(fromMs, toMs, nowMs) {
  if (hasNot(fromMs) || hasNot(toMs)) return "–";
  const isSameDay = new Date(fromMs).toDateString() === new Date(toMs).toDateString();
  return `${clockDay(fromMs, nowMs)} – ${isSameDay ? clock(toMs) : clockDay(toMs, nowMs)}`;
}

/**
 * How old something is.
 *
 * @param {number} ms
 */
export function age(ms) {
  return span(Math.max(0, ms) / 1000);
}

/** @param {MaybeNumber} value */
export function bytes(value) {
  if (hasNot(value)) return "–";
  if (value < 1e6) return `${number(value / 1e3, 0)}\u00a0kB`;
  if (value < 1e9) return `${number(value / 1e6, 1)}\u00a0MB`;
  return `${number(value / 1e9, 1)}\u00a0GB`;
}

/**
 * Text typed on the keypad as a number; null when it is not one.
 *
 * @param {string} typed
 */
export function readNumber(typed) {
  const text = typed.replace(",", ".").replace("−", "-");
  return /^-?\d+(\.\d*)?$/.test(text) ? Number(text) : null;
}
