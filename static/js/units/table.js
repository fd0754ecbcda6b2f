// Written by deploy/page_units.py from server/core/units: change the tables
// there, then run it. What each field means stands there too.

/**
 * @typedef {{dimension: string, size?: number, per?: number, zero?: number,
 *     shown?: number, typed?: number}} Unit
 * @typedef {{unit: string, decimals: number, signed: boolean}} Quantity
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
  "IMCU/g": { dimension: "clotting activity in mass" },
  tablet: { dimension: "tablets" },
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
  milk_volume_l: { unit: "L", decimals: 0, signed: false },
  milk_mass_kg: { unit: "kg", decimals: 1, signed: false },
  milk_age_h: { unit: "h", decimals: 1, signed: false },
  milk_temp_c: { unit: "C", decimals: 1, signed: false },
  air_space_temp_c: { unit: "C", decimals: 1, signed: true },
  jacket_temp_c: { unit: "C", decimals: 1, signed: true },
  indicator_temp_c: { unit: "C", decimals: 1, signed: true },
  recorder_temp_c: { unit: "C", decimals: 1, signed: true },
  check_temp_c: { unit: "C", decimals: 1, signed: true },
  curd_temp_c: { unit: "C", decimals: 1, signed: false },
  water_temp_c: { unit: "C", decimals: 1, signed: false },
  room_temp_c: { unit: "C", decimals: 1, signed: true },
  ph: { unit: "pH", decimals: 2, signed: false },
  titratable_acidity_frac: {
    unit: "fraction lactic",
    decimals: 5,
    signed: false,
  },
  fat_frac: {
    unit: "fraction",
    decimals: 4,
    signed: false,
  },
  snf_frac: {
    unit: "fraction",
    decimals: 4,
    signed: false,
  },
  protein_frac: {
    unit: "fraction",
    decimals: 4,
    signed: false,
  },
  whey_drained_l: { unit: "L", decimals: 0, signed: false },
  water_added_l: { unit: "L", decimals: 0, signed: false },
  bed_load_kg: { unit: "kg", decimals: 1, signed: false },
  press_gauge_kpa: { unit: "kPa", decimals: 0, signed: false },
  wheel_mass_kg: { unit: "kg", decimals: 2, signed: false },
  brine_temp_c: { unit: "C", decimals: 1, signed: true },
  brine_salt_frac: {
    unit: "fraction",
    decimals: 4,
    signed: false,
  },
  brine_ph: { unit: "pH", decimals: 2, signed: false },
  water_salt_ratio: { unit: "", decimals: 2, signed: false },
  store_temp_c: { unit: "C", decimals: 1, signed: true },
  store_humidity_frac: {
    unit: "fraction",
    decimals: 3,
    signed: false,
  },
  cheese_moisture_frac: {
    unit: "fraction",
    decimals: 4,
    signed: false,
  },
  cheese_fat_frac: {
    unit: "fraction",
    decimals: 4,
    signed: false,
  },
  cheese_salt_frac: {
    unit: "fraction",
    decimals: 4,
    signed: false,
  },
  cheese_ph: { unit: "pH", decimals: 2, signed: false },
  milk_phosphatase_mu_l: { unit: "mU/L", decimals: 0, signed: false },
  cheese_phosphatase_ug: { unit: "ug", decimals: 1, signed: false },
  staph_per_g: { unit: "", decimals: 0, signed: false },
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

/** @type {Record<string, [number, number][]>} */
export const TOOLS = {
  mL: [
    [0, 0.1],
    [10, 0.5],
    [50, 1],
    [250, 5],
    [1000, 10],
  ],
  L: [
    [0, 0.05],
    [5, 0.1],
    [10, 0.5],
    [20, 1],
    [500, 5],
  ],
  gal: [
    [0, 0.05],
    [2, 0.1],
    [20, 0.5],
    [50, 1],
  ],
  imp_gal: [
    [0, 0.05],
    [2, 0.1],
    [20, 0.5],
    [50, 1],
  ],
  g: [
    [0, 0.1],
    [50, 1],
    [1000, 5],
    [5000, 10],
  ],
  oz: [
    [0, 0.05],
    [10, 0.1],
    [50, 0.5],
  ],
  kg: [
    [0, 0.01],
    [10, 0.1],
    [50, 0.5],
    [100, 1],
  ],
  lb: [
    [0, 0.01],
    [5, 0.1],
    [100, 1],
  ],
  kPa: [
    [0, 0.5],
    [10, 1],
    [100, 5],
  ],
  bar: [
    [0, 0.01],
    [0.5, 0.05],
    [5, 0.1],
  ],
  psi: [
    [0, 0.1],
    [5, 0.5],
    [20, 1],
  ],
  pack: [
    [0, 0.05],
    [5, 0.1],
  ],
  tablet: [[0, 0.25]],
  K: [[0, 0.1]],
  F_rise: [[0, 0.1]],
};

/** @type {[number, number][]} */
export const TYPED_TO = [
  [10, 2],
  [100, 1],
];

/** @type {number} */
export const TYPED_BEYOND = 0;
