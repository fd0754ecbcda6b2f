// One chart over time. The plotting library is asked for when a curve is first
// looked at, so that no other screen waits for it.

import { asRead, clock, day, number } from "../../format.js";
import { t, tFirst } from "../../messages/index.js";
import { styleSheet } from "../../parts/style-sheet.js";
import { inks, lookOf } from "./looks.js";
import {
  paintAcid,
  paintBands,
  paintMarks,
  paintNames,
  paintNow,
  paintSteps,
} from "./paint.js";

/** @import UPlot from "uplot" */
/** @import { Inks } from "./looks.js" */

const DAY_MS = 86400000;
const FONT = "20px system-ui, -apple-system, sans-serif";

/** @type {Promise<typeof UPlot> | null} */
let loading = null;

/** Load the plotting library; rejects when it is not on this phone. */
export function loadPlot() {
  loading ??= Promise.all([import("/lib/uplot.js"), styleSheet("/lib/uplot.css")]).then(
    ([module]) => module.default,
  );
  loading.catch(() => {
    loading = null;
  });
  return loading;
}

/**
 * uPlot wants one list of times for all lines; a line has null where it has none.
 *
 * @param {Curve["series"]} series
 * @returns {UPlot.AlignedData}
 */
function columns(series) {
  const times = [
    ...new Set(series.flatMap((line) => line.points.map((point) => point.at_ms))),
  ].sort((a, b) => a - b);
  const rows = series.map(({ points }) => {
    const at = new Map(points.map((point) => [point.at_ms, point.value]));
    return times.map((ms) => at.get(ms) ?? null);
  });
  return [times, ...rows];
}

/**
 * Temperatures as the person reads them; the core's curve stays as it is.
 *
 * @param {Curve} curve
 * @returns {Curve}
 */
function asShown(curve) {
  /**
   * @template {CurveBand | CurvePoint & {quantity: string}} T
   * @param {T} read
   * @returns {T}
   */
  const shown = (read) =>
    read.quantity === "ph"
      ? read
      : {
          ...read,
          ...Object.fromEntries(
            /** @type {const} */ (["low", "value", "high"])
              .filter((name) => name in read)
              .map((name) => [name, asRead(read[name], "C").value]),
          ),
        };
  const series = curve.series.map((line) => ({
    ...line,
    points: line.points.map((point) => shown({ ...point, quantity: line.quantity })),
  }));
  return { ...curve, series, bands: curve.bands.map(shown) };
}

/**
 * The values that must be in sight between two instants.
 *
 * @param {Curve} curve
 * @param {Curve["series"]} series
 * @param {boolean} isAcid
 * @param {[number, number]} span
 * @returns {[number, number]}
 */
function extent(curve, series, isAcid, [fromMs, toMs]) {
  const values = series
    .flatMap((line) => line.points)
    .filter((point) => point.at_ms >= fromMs && point.at_ms <= toMs)
    .map((point) => point.value);
  for (const band of curve.bands) {
    if (
      (band.quantity === "ph") === isAcid &&
      band.begin_ms < toMs &&
      band.end_ms > fromMs
    ) {
      values.push(
        ...[band.low, band.value, band.high].filter((value) => value !== null),
      );
    }
  }
  if (isAcid && curve.acid) {
    const inside = curve.acid.points.filter(
      (point) => point.at_ms >= fromMs && point.at_ms <= toMs,
    );
    values.push(...inside.flatMap((point) => [point.low_ph, point.high_ph]));
  }
  if (!values.length)
    return isAcid ? [5, 7] : [asRead(0, "C").value, asRead(70, "C").value];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const pad = Math.max((high - low) * 0.08, isAcid ? 0.1 : 2);
  return [low - pad, high + pad];
}

/**
 * @param {Inks} ink
 * @param {boolean} isAcid
 * @param {boolean} isLong
 * @returns {UPlot.Axis[]}
 */
function axes(ink, isAcid, isLong) {
  const common = {
    font: FONT,
    stroke: ink("--ink"),
    grid: { stroke: ink("--line-soft"), width: 1 },
    ticks: { stroke: ink("--line") },
  };
  return [
    {
      ...common,
      space: isLong ? 130 : 84,
      size: 44,
      values: (u, splits) => splits.map((ms) => (isLong ? day(ms) : clock(ms))),
    },
    {
      ...common,
      size: 64,
      space: 48,
      values: (u, splits) => splits.map((value) => number(value, isAcid ? 1 : 0)),
    },
  ];
}

/**
 * What the lines of a chart are called: the quantities read, and the recipe's own curve.
 *
 * @param {Curve["series"]} series
 * @param {Curve["acid"]} acid
 * @returns {import("./paint.js").Named[]}
 */
function namedOf(series, acid) {
  const read = series.map(({ quantity, points }) => ({
    name: tFirst(["curve.short_" + quantity, "quantity." + quantity]),
    ink: lookOf(quantity).ink,
    points,
  }));
  const asked = (acid?.points ?? []).map((point) => ({ ...point, value: point.ph }));
  return acid
    ? [...read, { name: t("fact.recipe"), ink: "--due", points: asked }]
    : read;
}

/**
 * Draw a chart into an element.
 *
 * @param {typeof UPlot} Plot the library
 * @param {HTMLElement} root
 * @param {object} given
 * @param {Curve} given.curve
 * @param {boolean} given.isAcid
 * @param {[number, number]} given.span from and to [ms]
 * @param {number} given.height [px]
 * @param {number | null} given.nowMs
 * @returns {() => void} takes the chart away
 */
export function draw(Plot, root, { curve: kept, isAcid, span, height, nowMs }) {
  const ink = inks();
  const curve = asShown(kept);
  const series = curve.series.filter((line) => (line.quantity === "ph") === isAcid);
  /** @type {UPlot.AlignedData} */
  const data = series.length
    ? columns(series)
    : [
        [span[0], span[1]],
        [null, null],
      ];
  const bands = curve.bands.filter((band) => (band.quantity === "ph") === isAcid);
  const lines = series.map(({ quantity }) => {
    const look = lookOf(quantity);
    return {
      scale: "y",
      stroke: ink(look.ink),
      width: 2,
      dash: look.dash,
      spanGaps: true,
      points: { show: false },
    };
  });
  const plot = new Plot(
    {
      width: Math.max(root.clientWidth, 200),
      height,
      ms: 1,
      legend: { show: false },
      cursor: { show: false },
      padding: [10, span[1] - span[0] > 3 * DAY_MS ? 60 : 26, 0, 0],
      scales: {
        x: { time: true, range: () => span },
        y: { range: () => extent(curve, series, isAcid, span) },
      },
      axes: axes(ink, isAcid, span[1] - span[0] > 3 * DAY_MS),
      series: [
        {},
        ...(lines.length ? lines : [{ scale: "y", points: { show: false } }]),
      ],
      hooks: {
        drawClear: [
          (u) => {
            if (isAcid) paintAcid(u, curve.acid, ink);
            paintBands(u, bands, ink);
            paintSteps(u, curve.steps, ink, !isAcid);
          },
        ],
        draw: [
          (u) => {
            if (nowMs !== null) paintNow(u, nowMs, ink);
            paintMarks(u, series, ink);
            paintNames(u, namedOf(series, isAcid ? curve.acid : null), ink);
          },
        ],
      },
    },
    data,
    root,
  );
  const wider = new ResizeObserver(() => {
    if (Math.abs(plot.width - root.clientWidth) > 1 && root.clientWidth)
      plot.setSize({ width: root.clientWidth, height });
  });
  wider.observe(root);
  return () => {
    wider.disconnect();
    plot.destroy();
  };
}
