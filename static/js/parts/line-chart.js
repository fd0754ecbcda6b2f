import { html } from "./html.js";

// Drawn here, with no library: a few dozen points, one line, three levels. The
// figures stand in the table beside it, so nothing is told by the drawing alone.

// About a phone's width, so that its text is as large as all other text there.
const WIDE = 380;
const HIGH = 260;
const LEFT = 128; // what each level is, and its figure below
const PAD = 22;
const TEXT_HIGH = 22;

/** @param {number[]} values */
function scale(values) {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const room = (high - low || Math.abs(high) || 1) * 0.08;
  const from = low - room;
  const to = high + room;
  return (/** @type {number} */ value) =>
    HIGH - PAD - ((value - from) / (to - from)) * (HIGH - 2 * PAD);
}

/**
 * @param {{value: number, y: (value: number) => number, look: string, name: string,
 *   text: (value: number) => string, isTold?: boolean}} props
 */
function Level({ value, y, look, name, text, isTold = true }) {
  const at = y(value);
  return html`<g><line class=${look} x1=${LEFT} x2=${WIDE} y1=${at} y2=${at} />
    ${isTold ? html`<text x=${LEFT - 8} y=${at - 3} text-anchor="end">${name}</text><text x=${LEFT - 8} y=${at + TEXT_HIGH - 2} text-anchor="end" class="is-figure">${text(value)}</text>` : null}</g>`;
}

/**
 * Where the name of a line stands: beyond its point that lies farthest from the middle,
 * where no other line is.
 *
 * @param {number[]} values
 * @param {number} middle
 */
export function nameAt(values, middle) {
  let place = 0;
  values.forEach((value, at) => {
    if (Math.abs(value - middle) > Math.abs(values[place] - middle)) place = at;
  });
  const share = values.length > 1 ? place / (values.length - 1) : 0;
  return {
    place,
    isAbove: values[place] >= middle,
    anchor: share < 0.34 ? "start" : share > 0.66 ? "end" : "middle",
  };
}

/**
 * @param {{values: number[], middle: number, name: string, isBeside?: boolean,
 *   x: (place: number) => number, y: (value: number) => number}} props
 *   isBeside: on the other side of its line
 */
function Name({ values, middle, name, isBeside = false, x, y }) {
  const { place, isAbove, anchor } = nameAt(values, middle);
  const at = y(values[place]);
  const above = isAbove !== isBeside ? at - 14 : at + 14 + TEXT_HIGH - 6;
  const within = Math.min(HIGH - 6, Math.max(TEXT_HIGH, above));
  return html`<text class="name" x=${x(place)} y=${within} text-anchor=${anchor}>${name}</text>`;
}

/**
 * @typedef {object} Names what the lines are called, each at its line
 * @property {string} values
 * @property {string} average
 * @property {string} mean
 * @property {string} low
 * @property {string} high
 */

/**
 * Single values with their middle and limits.
 *
 * @param {{values: number[], limits: ?{mean: number, low: number, high: number},
 *   marked?: number[], averages?: number[], text: (value: number) => string,
 *   label: string, names: Names}} props
 *   marked: places to mark; averages: a second line, dotted; label: what the drawing
 *   says in words
 */
export function LineChart({
  values,
  limits,
  marked = [],
  averages = [],
  text,
  label,
  names,
}) {
  const levels = limits ? [limits.mean, limits.low, limits.high] : [];
  const y = scale([...values, ...levels]);
  const step = values.length > 1 ? (WIDE - LEFT - PAD) / (values.length - 1) : 0;
  const x = (/** @type {number} */ index) => LEFT + PAD / 2 + index * step;
  const path = (/** @type {number[]} */ line) =>
    line.map((value, index) => `${x(index)},${y(value)}`).join(" ");
  // A make far off draws the limits together: their figures stand in the words above.
  const isRoomy =
    limits &&
    (limits.low === limits.high || y(limits.low) - y(limits.high) >= 4 * TEXT_HIGH);
  const ends = [...new Set([Math.min(...values), Math.max(...values)])];
  return html`<svg class="chart" viewBox=${`0 0 ${WIDE} ${HIGH}`} role="img" aria-label=${label}>
    ${
      limits
        ? html`<${Level} value=${limits.mean} y=${y} look="middle" text=${text} name=${names.mean} />
        ${limits.low === limits.high ? null : html`<${Level} value=${limits.low} y=${y} look="limit" text=${text} name=${names.low} isTold=${isRoomy} /><${Level} value=${limits.high} y=${y} look="limit" text=${text} name=${names.high} isTold=${isRoomy} />`}`
        : ends.map(
            (value) =>
              html`<text key=${value} class="is-figure" x=${LEFT - 8} y=${y(value) + 7} text-anchor="end">${text(value)}</text>`,
          )
    }
    ${averages.length ? html`<polyline class="trace is-average" points=${path(averages)} />` : null}
    <polyline class="trace" points=${path(values)} />
    ${values.map(
      (
        value,
        index,
      ) => html`<circle key=${index} class=${marked.includes(index) ? "point is-marked" : "point"}
      cx=${x(index)} cy=${y(value)} r=${marked.includes(index) ? 9 : 5} />`,
    )}
    ${
      limits && averages.length
        ? html`<${Name} values=${averages} middle=${limits.mean} name=${names.average} x=${x} y=${y} isBeside />
      <${Name} values=${values} middle=${limits.mean} name=${names.values} x=${x} y=${y} />`
        : null
    }
  </svg>`;
}
