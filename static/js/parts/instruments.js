// The instruments that readings are taken with, as small drawings in the manner of
// the marks: a field of 24 by 24, filled by the even-odd rule or as a line.

import { QUANTITIES } from "../units/table.js";

/** @type {Record<string, import("./marks.js").Shape>} */
export const INSTRUMENTS = {
  // A glass tube with its bulb, and two of its lines.
  thermometer: {
    solid:
      "M12 12.5c3.04 0 5.5 2.46 5.5 5.5s-2.46 5.5-5.5 5.5s-5.5-2.46-5.5-5.5s2.46-5.5 5.5-5.5z",
    line: "M12 14V2.5M18 4h4M18 9.5h4",
  },
  // A rod in what is read.
  electrode: {
    solid: "M8.5.5h7V16L12 19.5 8.5 16z",
    line: "M2 13h3M19 13h3M2 21.5h20",
  },
  // A tube with its cock, and what falls from it.
  burette: { solid: "M12 16q3.5 4 0 7.5-3.5-3.5 0-7.5z", line: "M12 2v11M6.5 9.5h11" },
  scale: {
    solid:
      "M1 1.5h22v4H1zM5 10h14l3 13H2zM12 12.5c2.21 0 4 1.79 4 4s-1.79 4-4 4s-4-1.79-4-4s1.79-4 4-4z",
    line: "M12 5v5",
  },
  // A jug with its lines.
  jug: { line: "M3.5 3h14v18.5h-14zM3.5 9h5M3.5 15h5M18 6.5h4v8h-4" },
  gauge: {
    line: "M12 2c4.69 0 8.5 3.81 8.5 8.5s-3.81 8.5-8.5 8.5s-8.5-3.81-8.5-8.5s3.81-8.5 8.5-8.5zM12 10.5 16 7M12 19v3.5",
  },
  // A float in the brine, and the stem that is read.
  float: {
    solid: "M12 10q3.5 3 3.5 5.5T12 20t-3.5-4.5T12 10z",
    line: "M12 1.5v10M3 6v16h18V6",
  },
  // Water in the air.
  hygrometer: {
    solid:
      "M12 .5q8.5 9.5 8.5 14.5c0 4.7-3.8 8.5-8.5 8.5S3.5 19.7 3.5 15q0-5 8.5-14.5zM7 14.5q0 5.5 5.5 5.5v-3.2q-2.3 0-2.3-2.3z",
  },
  clock: {
    line: "M12 2c5.52 0 10 4.48 10 10s-4.48 10-10 10s-10-4.48-10-10s4.48-10 10-10zM12 6.5V12l4 3",
  },
  // What goes to the laboratory, and what a strip or a plate tells.
  vial: { solid: "M6 11h12v6q0 6.5-6 6.5T6 17z", line: "M5.5 2h13M7.5 2v10M16.5 2v10" },
};

/** @type {Record<string, string>} */
const OF_QUANTITY = {
  brine_salt_frac: "float",
  store_humidity_frac: "hygrometer",
  titratable_acidity_frac: "burette",
  cheese_ph: "vial",
};
/** @type {Record<string, string>} */
const OF_UNIT = {
  C: "thermometer",
  pH: "electrode",
  kg: "scale",
  L: "jug",
  kPa: "gauge",
  h: "clock",
};

/**
 * Which drawing stands for a reading: the one of its own, or of its unit.
 *
 * @param {string} quantity
 */
export function instrumentOf(quantity) {
  const unit = QUANTITIES[quantity]?.unit;
  return OF_QUANTITY[quantity] ?? OF_UNIT[unit] ?? "vial";
}
