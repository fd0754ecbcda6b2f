// The shapes of how things stand, drawn from a dairy and from plain geometry, in a
// field of 24 by 24. What is solid is filled, what is a line is three wide with round
// ends: one weight for all. They differ in outline, so that a grey print, a colour-
// blind eye, a fogged screen or a wall across the room still tells them apart.

/**
 * @typedef {object} Shape
 * @property {string} [solid] path that is filled by the even-odd rule
 * @property {string} [line] path that is drawn as a line
 */

/** @type {Record<StepMark | "act" | "check" | "ok", Shape>} */
export const MARKS = {
  // An octagon and a triangle, as signs have them.
  act: { solid: "M7 1h10l6 6v10l-6 6H7l-6-6V7zM10.5 5v9h3V5zm0 11v3h3v-3z" },
  check: { solid: "M12 1.5 23.5 22.5H.5zM10.7 9v7h2.6V9zm0 8.6v2.6h2.6v-2.6z" },
  // The milk lies still.
  ok: { line: "M3 12h18" },
  // The milk moves.
  running: { line: "M2 5q5-5 10 0t10 0M2 12q5-5 10 0t10 0M2 19q5-5 10 0t10 0" },
  // It stands in its vat, below the rim.
  waiting: { line: "M2.5 3.5v17h19v-17M8 13h8" },
  // A curd knife, strung.
  ready: { line: "M12 1.5V8M4 8h16v14H4zM9.3 8v14M14.7 8v14" },
  // A raised hand.
  due: {
    solid: "M6.5 13h15.3v5l-3 5h-8l-5-5z",
    line: "M8.2 14V5.5M12.2 14V2.5M16.2 14V3.5M20.2 14V7M8 19l-5.5-5.5",
  },
  // A wheel kept too long: it has split.
  late: {
    solid:
      "M10 .5v19c-5.2 0-9.5-4.2-9.5-9.5S4.8.5 10 .5zM14 4.5v19c5.2 0 9.5-4.2 9.5-9.5S19.2 4.5 14 4.5z",
  },
  // A whole wheel on its board.
  done: { solid: "M5 3h14q4 0 4 6.5t-4 6.5H5q-4 0-4-6.5T5 3z", line: "M2 20.5h20" },
  // A mould turned over: nothing goes in.
  skipped: { line: "M7.5 4.5h9l5 16h-19z" },
  // A pipe, and the plate that shuts it.
  stopped: { solid: "M0 8h8v8H0zM16 8h8v8h-8zM10 0h4v24h-4z" },
};
