// How a thing stands, as shape, word and colour: a grey print, a colour-blind eye or
// a fogged screen still tells them apart.

import { draw, el } from "./dom.js";
import { t } from "./texts.js";

// A tick in a disc, a mark in an octagon, three dots, a square.
/** @typedef {"good" | "bad" | "wait" | "try"} Standing */

/** @type {Record<Standing, [string, object][]>} */
const SHAPES = {
  good: [
    ["circle", { cx: 12, cy: 12, r: 11 }],
    ["path", { d: "M6 12.5l4 4 8-9", class: "cut" }],
  ],
  bad: [
    ["path", { d: "M7 1h10l6 6v10l-6 6H7l-6-6V7z" }],
    ["path", { d: "M12 6v7m0 4v1", class: "cut" }],
  ],
  wait: [5, 12, 19].map((cx) => ["circle", { cx, cy: 12, r: 3 }]),
  try: [["rect", { x: 3, y: 3, width: 18, height: 18, class: "line" }]],
};

/**
 * One state: good, bad, wait or try.
 *
 * @param {Standing} state
 */
export function mark(state) {
  const shape = draw(
    "svg",
    { viewBox: "0 0 24 24", "aria-hidden": "true" },
    ...SHAPES[state].map(([tag, how]) => draw(tag, how)),
  );
  return el("span", { class: "mark " + state }, shape, t("state." + state));
}
