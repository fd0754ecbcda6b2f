// What units are called.

import { days } from "./times.js";
import { language } from "./reads.js";

// Any other unit is called as the table has it.
/** @type {Record<string, string>} */
const SIGNS = {
  C: "°C",
  F: "°F",
  K: "°C",
  F_rise: "°F",
  "K/min": "°C/min",
  "F/min": "°F/min",
  fraction: "%",
  "fraction lactic": "%",
  lactic_percent: "%",
  pH: "",
  pH_rise: "pH",
  multiple: "×",
  imp_gal: "imp. gal",
  dornic: "°D",
  thorner: "°Th",
  soxhlet_henkel: "°SH",
  Baume: "°Bé",
  salometer: "°Sal",
  ug: "µg",
  "kg/m3": "kg/m³",
  "m2/s": "m²/s",
};

// What is counted, not weighed.
/** @type {Record<string, Record<string, string>>} */
const COUNTED = {
  pack: { en: "pack", es: "sobre", fr: "sachet" },
  tablet: { en: "tablet", es: "pastilla", fr: "comprimé" },
};

/** @param {string} unit */
export function unitName(unit) {
  const [counted] = unit?.split("/") ?? [];
  if (counted in COUNTED)
    return unit.replace(counted, COUNTED[counted][language()] ?? counted);
  if (unit === "d") return days(2, 0).slice(2);
  if (unit === "g/m2/d") return "g/m²\u00a0/\u00a0" + days(1, 0).slice(2);
  return SIGNS[unit] ?? unit ?? "";
}

/** @param {string} text @param {string} name of its unit */
export function withUnit(text, name) {
  return name === "" ? text : text + "\u00a0" + name;
}
