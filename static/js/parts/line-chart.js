import { html } from "./html.js";

// Drawn here, with no library: a few dozen points, one line, three levels. The
// figures stand in the table beside it, so nothing is told by the drawing alone.

// About a phone's width, so that its text is as large as all other text there.
const WIDE = 380;
const HIGH = 230;
const LEFT = 92;
const PAD = 18;

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

const TEXT_HIGH = 22;

/**
 * @param {{value: number, y: (value: number) => number, look: string,
 *   text: (value: number) => string, isTold?: boolean}} props
 */
function Level({ value, y, look, text, isTold = true }) {
  return html`<g><line class=${look} x1=${LEFT} x2=${WIDE - PAD} y1=${y(value)} y2=${y(value)} />
    ${isTold ? html`<text x=${LEFT - 8} y=${y(value) + 7} text-anchor="end">${text(value)}</text>` : null}</g>`;
}

/**
 * Single values with their middle and limits.
 *
 * @param {{values: number[], limits: ?{mean: number, low: number, high: number},
 *   marked?: number[], averages?: number[], text: (value: number) => string,
 *   label: string}} props
 *   marked: places to mark; averages: a second, thin line; label: what the drawing
 *   says in words
 */
export function LineChart({ values, limits, marked = [], averages = [], text, label }) {
  const levels = limits ? [limits.mean, limits.low, limits.high] : [];
  const y = scale([...values, ...levels]);
  const step = values.length > 1 ? (WIDE - LEFT - 2 * PAD) / (values.length - 1) : 0;
  const x = (/** @type {number} */ index) => LEFT + PAD / 2 + index * step;
  const path = (/** @type {number[]} */ line) =>
    line.map((value, index) => `${x(index)},${y(value)}`).join(" ");
  // A make far off draws the limits together: their figures stand in the words above.
  const isRoomy =
    limits &&
    (limits.low === limits.high || y(limits.low) - y(limits.high) >= 2 * TEXT_HIGH);
  const ends = [...new Set([Math.min(...values), Math.max(...values)])];
  return html`<svg class="chart" viewBox=${`0 0 ${WIDE} ${HIGH}`} role="img" aria-label=${label}>
    ${
      limits
        ? html`<${Level} value=${limits.mean} y=${y} look="middle" text=${text} />
        ${limits.low === limits.high ? null : html`<${Level} value=${limits.low} y=${y} look="limit" text=${text} isTold=${isRoomy} /><${Level} value=${limits.high} y=${y} look="limit" text=${text} isTold=${isRoomy} />`}`
        : ends.map(
            (value) =>
              html`<text key=${value} x=${LEFT - 8} y=${y(value) + 7} text-anchor="end">${text(value)}</text>`,
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
  </svg>`;
}
