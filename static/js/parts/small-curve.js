import { html } from "./html.js";
import { useCurve } from "./use-curve.js";
import { band as bandText, clockDay, quantity } from "../format.js";
import { t, tFirst } from "../messages/index.js";

// Stretched to its card: lines keep their width, and dots are ends of lines.
const WIDE = 300;
const HIGH = 100;
const PAD = 10;

/**
 * What is drawn of a make: its readings, and what the recipe wants beside them, in the
 * units of the drawing; null where nothing was read.
 *
 * @param {Curve} curve
 */
export function drawnOf({ at_hand: hand, series, bands, acid }) {
  const points = series.find((line) => line.quantity === hand?.quantity)?.points;
  if (!hand || !points) return null;
  const from = hand.from_ms;
  const to = hand.to_ms;
  const isIn = (/** @type {{at_ms: number}} */ point) =>
    point.at_ms >= from && point.at_ms <= to;
  const read = points.filter(isIn);
  const wanted = bands
    .filter((one) => one.quantity === hand.quantity && one.is_real)
    .filter((one) => one.begin_ms < to && one.end_ms > from);
  const line =
    hand.quantity === "ph" && acid?.is_real && !wanted.length ? acid.points : [];
  const values = [
    ...read.map((point) => point.value),
    ...wanted.flatMap((one) => [one.low, one.high]),
    ...line.filter(isIn).flatMap((point) => [point.low_ph, point.high_ph]),
  ].filter((value) => value !== null);
  const low = Math.min(...values);
  const high = Math.max(...values);
  const x = (/** @type {number} */ ms) => ((ms - from) / (to - from)) * WIDE;
  const within = (/** @type {number} */ ms) => x(Math.min(to, Math.max(from, ms)));
  const y = (/** @type {number} */ value) =>
    high === low
      ? HIGH / 2
      : HIGH - PAD - ((value - low) / (high - low)) * (HIGH - 2 * PAD);
  return {
    quantity: hand.quantity,
    last: read[read.length - 1],
    points: read.map((point) => [x(point.at_ms), y(point.value)]),
    bands: wanted.map((one) => ({
      x: within(one.begin_ms),
      wide: within(one.end_ms) - within(one.begin_ms),
      top: one.high === null ? 0 : y(one.high),
      foot: one.low === null ? HIGH : y(one.low),
    })),
    acid: {
      high: line.map((point) => [x(point.at_ms), y(point.high_ph)]),
      low: line.map((point) => [x(point.at_ms), y(point.low_ph)]),
    },
  };
}

// Of a word, in the units of the drawing: as it stands on the smallest card.
const NAME_HIGH = 22;
const NAME_WIDE = 80;
const across = (/** @type {number} */ x) => ((x / WIDE) * 100).toFixed(1) + "%";
const down = (/** @type {number} */ y) => ((y / HIGH) * 100).toFixed(1) + "%";

/**
 * The name of the line: behind its last reading, else above or below it.
 *
 * @param {number} x
 * @param {number} y
 */
function lineStyle(x, y) {
  const top = Math.min(HIGH - NAME_HIGH, Math.max(0, y - NAME_HIGH / 2));
  if (WIDE - x >= NAME_WIDE) return { left: across(x + 6), top: down(top) };
  const isBelow = y + 8 + NAME_HIGH <= HIGH;
  return { right: across(WIDE - x), top: down(isBelow ? y + 8 : y - 8 - NAME_HIGH) };
}

/**
 * The name of the band: before it, where it begins late enough, else within it.
 *
 * @param {{x: number, top: number, foot: number}} band
 */
function bandStyle({ x, top, foot }) {
  const middle = (top + foot) / 2 - NAME_HIGH / 2;
  const at = down(Math.min(HIGH - NAME_HIGH, Math.max(0, middle)));
  return x >= NAME_WIDE
    ? { right: across(WIDE - x + 4), top: at }
    : { left: across(x), top: at };
}

/**
 * The last reading and the band as it stood last, each by name where it is drawn.
 *
 * @param {NonNullable<ReturnType<typeof drawnOf>>} drawn
 */
export function namesOf({ quantity: name, bands, points }) {
  const band = bands[bands.length - 1];
  const [x, y] = points[points.length - 1];
  const words = tFirst(["curve.short_" + name, "quantity." + name]);
  const line = { key: "line", words, style: lineStyle(x, y) };
  if (!band) return [line];
  return [line, { key: "band", words: t("curve.wanted"), style: bandStyle(band) }];
}

/** @param {number[][]} points */
const path = (points) => points.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`);

/**
 * The course of the quantity at hand against the recipe, small, with its last value.
 *
 * @param {{make: string, changedMs: number}} props changedMs: when it may have changed
 */
export function SmallCurve({ make, changedMs }) {
  const { curve } = useCurve(make, changedMs);
  const drawn = curve && drawnOf(curve);
  if (!drawn?.last) return null;
  const { last } = drawn;
  const what = t("quantity." + drawn.quantity);
  const value = quantity(drawn.quantity, last.value);
  const isJudged = last.low !== null || last.high !== null;
  const wanted = isJudged ? bandText(drawn.quantity, last.low, last.high) : "";
  const at = clockDay(last.at_ms, changedMs);
  const said = isJudged
    ? t("live.curve_wanted", { what, value, at, wanted })
    : t("live.curve", { what, value, at });
  return html`<figure class="small-curve">
    <figcaption><span class="label">${what}</span> <b class="live-value">${value}</b>
      <span class="label">${isJudged ? t("live.wanted", { wanted }) : ""}</span></figcaption>
    <div class="small-drawn"><svg viewBox=${`0 0 ${WIDE} ${HIGH}`} preserveAspectRatio="none" role="img" aria-label=${said}>
      ${drawn.bands.map((one) => html`<rect class="small-band" x=${one.x} y=${one.top} width=${one.wide} height=${Math.max(2, one.foot - one.top)} />`)}
      ${drawn.acid.high.length ? html`<polygon class="small-band" points=${path([...drawn.acid.high, ...[...drawn.acid.low].reverse()]).join(" ")} />` : null}
      <polyline class="small-line" points=${path(drawn.points).join(" ")} />
      <path class="small-dots" d=${path(drawn.points)
        .map((one) => `M${one}h0.01`)
        .join("")} />
    </svg>
      ${namesOf(drawn).map((one) => html`<span class="small-name" key=${one.key} style=${one.style} aria-hidden="true">${one.words}</span>`)}</div>
  </figure>`;
}
