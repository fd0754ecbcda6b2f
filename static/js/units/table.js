// Written by deploy/page_units.py from server/core/units: change the tables
// there, then run it. What each field means stands there too.

/**
 * @typedef {{dimension: string, size?: number, per?: number, zero?: number,
 *     shown?: number, typed?: number}} Unit
 * @typedef {{unit: string, decimals: number, low: number}} Quantity
 * @typedef {"temp_unit" | "volume_unit" | "mass_unit" | "pressure_unit"} KindOfUnit
 */

/** @type {Record<string, Unit>} */
export const UNITS = {
  C: {
    dimension: "temperature",
    shown: 1,
    typed: 1,
  },
  F: {
    dimension: "temperature",
    size: 0.5555555555555556,
    zero: -17.77777777777778,
    shown: 1,
    typed: 1,
  },
  K: { dimension: "rise", shown: 2, typed: 2 },
  F_rise: {
    dimension: "rise",
    size: 0.5555555555555556,
    shown: 2,
    typed: 2,
  },
  "K/s": { dimension: "rate" },
  "K/min": {
    dimension: "rate",
    per: 60,
    shown: 2,
    typed: 2,
  },
  "F/min": {
    dimension: "rate",
    size: 0.5555555555555556,
    per: 60,
    shown: 2,
    typed: 2,
  },
  L: { dimension: "volume", typed: 2 },
  mL: { dimension: "volume", per: 1000, typed: 2 },
  gal: {
    dimension: "volume",
    size: 3.785411784,
    typed: 2,
  },
  imp_gal: {
    dimension: "volume",
    size: 4.54609,
    typed: 2,
  },
  kg: { dimension: "mass", typed: 3 },
  g: { dimension: "mass", per: 1000 },
  lb: {
    dimension: "mass",
    size: 0.45359237,
    typed: 2,
  },
  oz: {
    dimension: "mass",
    size: 0.028349523125,
    typed: 2,
  },
  ug: { dimension: "mass", per: 1000000000 },
  Pa: { dimension: "pressure" },
  kPa: {
    dimension: "pressure",
    size: 1000,
    typed: 2,
  },
  bar: {
    dimension: "pressure",
    size: 100000,
    shown: 2,
    typed: 3,
  },
  psi: {
    dimension: "pressure",
    size: 6894.757293168361,
    shown: 1,
    typed: 1,
  },
  N: { dimension: "force" },
  W: { dimension: "power" },
  kW: { dimension: "power", size: 1000 },
  "fraction lactic": { dimension: "acidity" },
  lactic_percent: { dimension: "acidity", per: 100, shown: 3 },
  dornic: {
    dimension: "acidity",
    per: 10000,
    shown: 1,
    typed: 1,
  },
  thorner: {
    dimension: "acidity",
    size: 9,
    per: 100000,
    shown: 1,
    typed: 1,
  },
  soxhlet_henkel: {
    dimension: "acidity",
    size: 9,
    per: 40000,
    shown: 2,
  },
  fraction: { dimension: "share" },
  "%": {
    dimension: "share",
    per: 100,
    shown: 2,
    typed: 3,
  },
  pH: { dimension: "pH", shown: 2, typed: 2 },
  pH_rise: {
    dimension: "rise of pH",
    shown: 2,
    typed: 2,
  },
  s: { dimension: "time", typed: 0 },
  min: { dimension: "time", size: 60, typed: 1 },
  h: { dimension: "time", size: 3600, typed: 2 },
  d: { dimension: "time", size: 86400, typed: 2 },
  "1/h": { dimension: "growth" },
  ms: { dimension: "instant" },
  m: { dimension: "length", typed: 3 },
  cm: {
    dimension: "length",
    per: 100,
    shown: 1,
    typed: 2,
  },
  mm: {
    dimension: "length",
    per: 1000,
    shown: 0,
    typed: 1,
  },
  in: {
    dimension: "length",
    size: 0.0254,
    shown: 2,
    typed: 3,
  },
  "kg/m3": { dimension: "density", shown: 1, typed: 1 },
  "kg/L": {
    dimension: "density",
    size: 1000,
    shown: 4,
  },
  Baume: {
    dimension: "degrees Baum\u00e9",
    shown: 1,
    typed: 1,
  },
  salometer: {
    dimension: "degrees of the salometer",
    shown: 1,
    typed: 1,
  },
  "g/L": { dimension: "mass in volume", shown: 1 },
  "g/kg": { dimension: "share", per: 1000, shown: 1 },
  "kg/kg": { dimension: "share" },
  "mL/kg": { dimension: "volume in mass" },
  "mL/t": { dimension: "volume in mass", per: 1000 },
  "mL/L": { dimension: "volume in volume", per: 1000 },
  "L/L": { dimension: "volume in volume" },
  "mol/L": { dimension: "amount in volume" },
  "mU/L": { dimension: "activity in volume" },
  "IMCU/mL": {
    dimension: "clotting activity in volume",
    size: 1000,
  },
  "IMCU/L": { dimension: "clotting activity in volume" },
  pack: { dimension: "packs" },
  "pack/L": { dimension: "packs in volume" },
  "pack/kg": { dimension: "packs in mass" },
  "m2/s": { dimension: "diffusivity" },
  "g/m2/d": { dimension: "loss of an area" },
  "J/(kg K)": { dimension: "heat capacity" },
  multiple: { dimension: "multiple" },
  "": { dimension: "count" },
};

/** @type {Record<string, Quantity>} */
export const QUANTITIES = {
  milk_volume_l: { unit: "L", decimals: 0, low: 0 },
  milk_mass_kg: { unit: "kg", decimals: 1, low: 0 },
  milk_age_h: { unit: "h", decimals: 1, low: 0 },
  milk_temp_c: { unit: "C", decimals: 1, low: -2 },
  air_space_temp_c: { unit: "C", decimals: 1, low: -10 },
  jacket_temp_c: { unit: "C", decimals: 1, low: -10 },
  indicator_temp_c: { unit: "C", decimals: 1, low: -2 },
  recorder_temp_c: { unit: "C", decimals: 1, low: -2 },
  curd_temp_c: { unit: "C", decimals: 1, low: -2 },
  water_temp_c: { unit: "C", decimals: 1, low: -2 },
  room_temp_c: { unit: "C", decimals: 1, low: -30 },
  ph: { unit: "pH", decimals: 2, low: 0 },
  titratable_acidity_frac: {
    unit: "fraction lactic",
    decimals: 5,
    low: 0,
  },
  fat_frac: { unit: "fraction", decimals: 4, low: 0 },
  snf_frac: { unit: "fraction", decimals: 4, low: 0 },
  protein_frac: { unit: "fraction", decimals: 4, low: 0 },
  whey_drained_l: { unit: "L", decimals: 0, low: 0 },
  water_added_l: { unit: "L", decimals: 0, low: 0 },
  bed_load_kg: { unit: "kg", decimals: 1, low: 0 },
  press_gauge_kpa: { unit: "kPa", decimals: 0, low: 0 },
  wheel_mass_kg: { unit: "kg", decimals: 2, low: 0 },
  brine_temp_c: { unit: "C", decimals: 1, low: -20 },
  brine_salt_frac: { unit: "fraction", decimals: 4, low: 0 },
  brine_ph: { unit: "pH", decimals: 2, low: 0 },
  water_salt_ratio: { unit: "", decimals: 2, low: 0 },
  store_temp_c: { unit: "C", decimals: 1, low: -30 },
  store_humidity_frac: { unit: "fraction", decimals: 3, low: 0 },
  cheese_moisture_frac: { unit: "fraction", decimals: 4, low: 0 },
  cheese_fat_frac: { unit: "fraction", decimals: 4, low: 0 },
  cheese_salt_frac: { unit: "fraction", decimals: 4, low: 0 },
  cheese_ph: { unit: "pH", decimals: 2, low: 0 },
  milk_phosphatase_mu_l: { unit: "mU/L", decimals: 0, low: 0 },
  cheese_phosphatase_ug: { unit: "ug", decimals: 1, low: 0 },
};

/** @type {Record<string, string>} */
export const READ_AS = {
  fraction: "%",
  "fraction lactic": "lactic_percent",
  "K/s": "K/min",
  Pa: "kPa",
};

/** @type {Record<KindOfUnit, string[]>} */
export const CHOICES = {
  temp_unit: ["C", "F"],
  volume_unit: ["L", "gal", "imp_gal"],
  mass_unit: ["kg", "lb"],
  pressure_unit: ["kPa", "psi"],
};

/** @type {Record<string, Record<string, string>>} */
export const FOLLOWING = {
  F: { K: "F_rise", "K/min": "F/min" },
};

/** @type {Record<string, string[]>} */
export const SUM_CHOICES = {
  C: ["C", "F"],
  kg: ["kg", "lb"],
  L: ["L", "gal", "imp_gal"],
  kPa: ["kPa", "bar", "psi"],
  m: ["mm", "cm", "in"],
};

/** @type {Record<string, string[]>} */
export const TYPED_IN = {
  C: ["C", "F"],
  K: ["K", "F_rise"],
  "K/min": ["K/min", "F/min"],
  L: ["L", "gal", "imp_gal", "mL"],
  mL: ["mL", "L"],
  kg: ["kg", "lb", "g"],
  g: ["g", "kg", "oz"],
  kPa: ["kPa", "bar", "psi"],
  fraction: ["%", "fraction"],
  "fraction lactic": [
    "lactic_percent",
    "dornic",
    "thorner",
    "soxhlet_henkel",
    "fraction lactic",
  ],
  s: ["min", "h", "d", "s"],
  h: ["h", "d"],
  min: ["min", "h"],
  m: ["mm", "cm", "in", "m"],
};
