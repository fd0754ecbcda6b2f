// Drawings of what to tap in a phone's own settings: plain outlines that look like
// no maker's phone, with the one thing to tap in words and marked.

import { draw } from "./dom.js";

/** @import { Child } from "./dom.js" */
/** @typedef {(x: number, y: number) => Node} Icon drawn around a point */

const WIDE = 320;
const ROW = 44;
const LINE = 24;
const LETTERS = 21; // of a line beside the mark of the finger
const INK = "#12171c";
const GREY = "#8a949f";
const CHOSEN = "#004c80";
const CHOSEN_SOFT = "#e3eef6";

/**
 * @param {number} x
 * @param {number} y
 * @param {number} wide
 * @param {number} high
 * @param {object} [more] other attributes
 */
function box(x, y, wide, high, more) {
  return draw(
    "rect",
    Object.assign(
      {
        x,
        y,
        width: wide,
        height: high,
        rx: 8,
        fill: "none",
        stroke: GREY,
        "stroke-width": 2,
      },
      more,
    ),
  );
}

/**
 * @param {number} x
 * @param {number} y
 * @param {number} wide
 */
function bar(x, y, wide) {
  return draw("rect", { x, y, width: wide, height: 10, rx: 5, fill: "#c4cad1" });
}

/**
 * @param {string} text
 * @param {number} x
 * @param {number} y
 * @param {object} [more] other attributes
 */
function words(text, x, y, more) {
  return draw(
    "text",
    Object.assign(
      {
        x,
        y,
        fill: INK,
        "font-size": 18,
        "font-weight": 650,
        "font-family": "system-ui, sans-serif",
      },
      more,
    ),
    text,
  );
}

/**
 * @param {string} d
 * @param {object} [more] other attributes
 */
function path(d, more) {
  return draw(
    "path",
    Object.assign(
      {
        d,
        fill: "none",
        stroke: INK,
        "stroke-width": 3,
        "stroke-linecap": "round",
        "stroke-linejoin": "round",
      },
      more,
    ),
  );
}

// A fingertip: where to tap.
/**
 * @param {number} x
 * @param {number} y
 */
function finger(x, y) {
  return draw(
    "g",
    {},
    draw("circle", {
      cx: x,
      cy: y,
      r: 15,
      fill: "none",
      stroke: CHOSEN,
      "stroke-width": 3,
    }),
    draw("circle", { cx: x, cy: y, r: 7, fill: CHOSEN }),
  );
}

/**
 * @param {string} text
 * @param {number} letters
 * @returns {string[]}
 */
function linesOf(text, letters) {
  return text.split(" ").reduce((/** @type {string[]} */ lines, word) => {
    const last = lines[lines.length - 1];
    if (last !== undefined && (last + " " + word).length <= letters) {
      return lines.slice(0, -1).concat(last + " " + word);
    }
    return lines.concat(word);
  }, []);
}

/**
 * @param {string} text
 * @param {number} x
 * @param {number} y
 * @param {number} wide
 * @param {Icon | null} [icon]
 */
function chosen(text, x, y, wide, icon) {
  const lines = linesOf(text, icon ? LETTERS - 4 : LETTERS);
  const high = ROW + (lines.length - 1) * LINE;
  const left = x + (icon ? 44 : 14);
  return {
    high,
    parts: [
      box(x, y, wide, high, { fill: CHOSEN_SOFT, stroke: CHOSEN, "stroke-width": 3 }),
      icon && icon(x + 24, y + high / 2),
      ...lines.map((line, at) => words(line, left, y + 28 + at * LINE)),
      finger(x + wide - 24, y + high / 2),
    ],
  };
}

/**
 * @param {number} x
 * @param {number} y
 */
function glass(x, y) {
  return draw(
    "g",
    {},
    draw("circle", {
      cx: x - 2,
      cy: y - 2,
      r: 7,
      fill: "none",
      stroke: INK,
      "stroke-width": 3,
    }),
    path(`M${x + 4} ${y + 4}l6 6`),
  );
}

/**
 * @param {number} x
 * @param {number} y
 */
function paper(x, y) {
  return path(`M${x - 7} ${y - 10}h9l6 6v14h-15z`);
}

/**
 * @param {number} x
 * @param {number} y
 */
function arrowUp(x, y) {
  return draw(
    "g",
    {},
    path(`M${x - 5} ${y - 4}h-5v15h20v-15h-5`),
    path(`M${x} ${y + 3}v-14m-5 5l5-5l5 5`),
  );
}

/**
 * @param {number} x
 * @param {number} y
 */
function plus(x, y) {
  return draw(
    "g",
    {},
    box(x - 10, y - 10, 20, 20, { rx: 5, stroke: INK, "stroke-width": 3 }),
    path(`M${x - 5} ${y}h10m-5-5v10`),
  );
}

/**
 * @param {string} label
 * @param {number} high
 * @param {Child[]} parts
 */
function sheet(label, high, parts) {
  return draw(
    "svg",
    {
      class: "picture",
      viewBox: `0 0 ${WIDE} ${high}`,
      role: "img",
      "aria-label": label,
    },
    box(2, 2, WIDE - 4, high - 4, {
      rx: 18,
      fill: "#ffffff",
      stroke: INK,
      "stroke-width": 3,
    }),
    ...parts,
  );
}

/**
 * A list of settings: rows of bars, the row to tap in words.
 *
 * @param {string} label
 * @param {string} text
 * @param {{before?: number, after?: number, icon?: Icon | null}} [how]
 */
export function rows(label, text, { before = 1, after = 1, icon = null } = {}) {
  const top = 18 + before * ROW;
  const row = chosen(text, 14, top - 4, WIDE - 28, icon);
  /** @type {Child[]} */
  const bars = [];
  for (let n = 0; n < before; n += 1)
    bars.push(bar(28, 30 + n * ROW, 120 + ((n * 47) % 90)));
  const below = top + row.high + 6;
  for (let n = 0; n < after; n += 1)
    bars.push(bar(28, below + 12 + n * ROW, 150 - ((n * 37) % 80)));
  return sheet(label, below + after * ROW + 8, bars.concat(row.parts));
}

/**
 * A search field with words typed, and the settings' wheel above.
 *
 * @param {string} label
 * @param {string} text
 */
export function search(label, text) {
  const row = chosen(text, 14, 72, WIDE - 28, glass);
  const wheel = draw(
    "g",
    { transform: "translate(160 38)" },
    draw("circle", {
      r: 12,
      fill: "none",
      stroke: INK,
      "stroke-width": 6,
      "stroke-dasharray": "6.3 3.1",
    }),
    draw("circle", { r: 4, fill: INK }),
  );
  return sheet(label, 72 + row.high + 16, [wheel, ...row.parts]);
}

/**
 * A question of the phone's: two buttons, the one to tap marked.
 *
 * @param {string} label
 * @param {string} text
 * @param {{isWarning?: boolean, other?: string}} [how]
 */
export function question(label, text, { isWarning = false, other = "" } = {}) {
  const row = chosen(text, 14, 96, WIDE - 28);
  const mark = isWarning
    ? draw("g", {}, path("M160 20l22 38h-44z"), path("M160 33v11m0 6v0.5"))
    : path("M160 20v26m-10-10l10 10l10-10M142 56h36");
  const below = 96 + row.high + 34;
  return sheet(label, below + 16, [
    mark,
    bar(60, 72, 200),
    ...row.parts,
    other
      ? words(other, 28, below, { fill: "#454e57", "font-weight": 400 })
      : bar(28, below - 10, 110),
  ]);
}

/**
 * A button at the top right.
 *
 * @param {string} label
 * @param {string} text
 */
export function corner(label, text) {
  const wide = Math.max(120, text.length * 12 + 70);
  const row = chosen(text, WIDE - 14 - wide, 16, wide);
  return sheet(label, 150, [
    ...row.parts,
    box(28, 80, 36, 36),
    bar(80, 82, 180),
    bar(80, 104, 110),
  ]);
}

/**
 * A switch that is to be on.
 *
 * @param {string} label
 * @param {string} text
 */
export function switched(label, text) {
  return sheet(label, 130, [
    bar(28, 26, 190),
    box(14, 56, WIDE - 28, 56, {
      fill: CHOSEN_SOFT,
      stroke: CHOSEN,
      "stroke-width": 3,
    }),
    words(text, 28, 91),
    draw("rect", { x: 218, y: 68, width: 62, height: 32, rx: 16, fill: CHOSEN }),
    draw("circle", { cx: 264, cy: 84, r: 12, fill: "#ffffff" }),
    draw("circle", {
      cx: 264,
      cy: 84,
      r: 20,
      fill: "none",
      stroke: CHOSEN,
      "stroke-width": 3,
    }),
  ]);
}

/**
 * A file among files.
 *
 * @param {string} label
 * @param {string} text
 */
export function file(label, text) {
  return rows(label, text, { before: 0, after: 2, icon: paper });
}

/**
 * The square with an arrow that browsers share pages by.
 *
 * @param {string} label
 * @param {string} text
 */
export function share(label, text) {
  return rows(label, text, { before: 1, after: 0, icon: arrowUp });
}

/**
 * The row that puts a page on the home screen.
 *
 * @param {string} label
 * @param {string} text
 */
export function home(label, text) {
  return rows(label, text, { before: 1, after: 1, icon: plus });
}
