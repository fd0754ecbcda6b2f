// What is painted on a chart besides its lines: bands, boundaries, marks and now.

import { lookOf, markPath } from "./looks.js";

/** @import UPlot from "uplot" */
/** @import { Inks } from "./looks.js" */

const NAME_HIGH = 22; // of a name at its line; two closer than this would run together
const NAME_FONT = "20px system-ui, -apple-system, sans-serif";
const LABEL_GAP = 30; // between two numbers of steps, else they run together
const EDGE = 10; // depth of the shade beside a limit that has no other side

/**
 * @param {UPlot} u
 * @param {(ctx: CanvasRenderingContext2D, bbox: UPlot.BBox) => void} work
 */
function clipped(u, work) {
  const { ctx, bbox } = u;
  ctx.save();
  ctx.beginPath();
  ctx.rect(bbox.left, bbox.top, bbox.width, bbox.height);
  ctx.clip();
  work(ctx, bbox);
  ctx.restore();
}

/**
 * @param {CanvasRenderingContext2D} ctx
 * @param {number} fromX
 * @param {number} fromY
 * @param {number} toX
 * @param {number} toY
 */
function line(ctx, fromX, fromY, toX, toY) {
  ctx.beginPath();
  ctx.moveTo(fromX, fromY);
  ctx.lineTo(toX, toY);
  ctx.stroke();
}

/**
 * @param {UPlot} u
 * @param {CanvasRenderingContext2D} ctx
 * @param {CurveBand} band
 * @param {Inks} ink
 */
function paintBand(u, ctx, band, ink) {
  const x = (/** @type {number} */ ms) => u.valToPos(ms, "x", true);
  const y = (/** @type {number} */ value) => u.valToPos(value, "y", true);
  const px = devicePixelRatio;
  const [left, right] = [
    x(band.begin_ms),
    Math.max(x(band.end_ms), x(band.begin_ms) + 2),
  ];
  // A band has one limit at least.
  const top =
    band.high === null ? y(/** @type {number} */ (band.low)) - EDGE * px : y(band.high);
  const bottom =
    band.low === null ? y(/** @type {number} */ (band.high)) + EDGE * px : y(band.low);
  ctx.fillStyle = ink("--due-soft");
  ctx.fillRect(left, top, right - left, bottom - top);
  ctx.strokeStyle = ink("--due");
  ctx.lineWidth = px;
  ctx.setLineDash(band.is_real ? [] : [4 * px, 4 * px]);
  if (band.high !== null) line(ctx, left, y(band.high), right, y(band.high));
  if (band.low !== null) line(ctx, left, y(band.low), right, y(band.low));
}

/**
 * The bands that steps want, behind everything.
 *
 * @param {UPlot} u
 * @param {CurveBand[]} bands
 * @param {Inks} ink
 */
export function paintBands(u, bands, ink) {
  clipped(u, (ctx) => bands.forEach((band) => paintBand(u, ctx, band, ink)));
}

/**
 * The recipe's pH curve with its band.
 *
 * @param {UPlot} u
 * @param {Curve["acid"]} acid
 * @param {Inks} ink
 */
export function paintAcid(u, acid, ink) {
  if (!acid) return;
  const px = devicePixelRatio;
  const points = acid.points.map((point) => ({
    x: u.valToPos(point.at_ms, "x", true),
    y: u.valToPos(point.ph, "y", true),
    low: u.valToPos(point.low_ph, "y", true),
    high: u.valToPos(point.high_ph, "y", true),
  }));
  clipped(u, (ctx) => {
    ctx.beginPath();
    points.forEach((point) => ctx.lineTo(point.x, point.high));
    [...points].reverse().forEach((point) => ctx.lineTo(point.x, point.low));
    ctx.closePath();
    ctx.fillStyle = ink("--due-soft");
    ctx.fill();
    ctx.beginPath();
    points.forEach((point) => ctx.lineTo(point.x, point.y));
    ctx.strokeStyle = ink("--due");
    ctx.lineWidth = 2 * px;
    ctx.setLineDash(acid.is_real ? [] : [6 * px, 5 * px]);
    ctx.stroke();
  });
}

/**
 * Where steps begin: a full line in fact or expectation, a foot where planned.
 *
 * @param {UPlot} u
 * @param {CurveStep[]} steps
 * @param {Inks} ink
 * @param {boolean} isNumbered
 */
export function paintSteps(u, steps, ink, isNumbered) {
  const px = devicePixelRatio;
  clipped(u, (ctx, bbox) => {
    const foot = bbox.top + bbox.height;
    ctx.font = `${16 * px}px system-ui, sans-serif`;
    ctx.textBaseline = "top";
    ctx.textAlign = "left";
    let lastX = -Infinity;
    steps.forEach((step, index) => {
      if (step.status === "skipped") return;
      const planned = u.valToPos(step.planned_begin_ms, "x", true);
      ctx.strokeStyle = ink("--line");
      ctx.lineWidth = 2 * px;
      ctx.setLineDash([]);
      line(ctx, planned, foot - 12 * px, planned, foot);
      const x = u.valToPos(step.begin_ms, "x", true);
      const isReal = step.status === "running" || step.status === "ended";
      ctx.strokeStyle = ink(isReal ? "--line" : "--line-soft");
      ctx.lineWidth = px;
      ctx.setLineDash(isReal ? [] : [5 * px, 5 * px]);
      line(ctx, x, bbox.top, x, foot);
      if (isNumbered && x >= bbox.left && x - lastX >= LABEL_GAP * px) {
        ctx.fillStyle = ink("--ink-soft");
        ctx.fillText(String(index + 1), x + 4 * px, bbox.top + 3 * px);
        lastX = x;
      }
    });
  });
}

/**
 * The readings themselves; what is out of its band is ringed.
 *
 * @param {UPlot} u
 * @param {Curve["series"]} series
 * @param {Inks} ink
 */
export function paintMarks(u, series, ink) {
  const px = devicePixelRatio;
  clipped(u, (ctx) =>
    series.forEach(({ quantity, points }) => {
      const look = lookOf(quantity);
      ctx.setLineDash([]);
      for (const point of points) {
        const x = u.valToPos(point.at_ms, "x", true);
        const y = u.valToPos(point.value, "y", true);
        if (point.verdict === "below" || point.verdict === "above") {
          ctx.fillStyle = ink("--check");
          ctx.strokeStyle = ink("--ink");
          ctx.lineWidth = 2 * px;
          const ring = new Path2D(markPath("disc", x, y, 20 * px));
          ctx.fill(ring);
          ctx.stroke(ring);
        }
        const mark = new Path2D(markPath(look.mark, x, y, 9 * px));
        ctx.strokeStyle = ctx.fillStyle = ink(
          point.verdict === "below" || point.verdict === "above"
            ? "--check-ink"
            : look.ink,
        );
        ctx.lineWidth = 2.5 * px;
        if (look.mark === "cross") ctx.stroke(mark);
        else ctx.fill(mark);
      }
    }),
  );
}

/**
 * Where names of lines stand: each at its own height, pushed apart where two are nearer
 * to each other than a line of text, and none beyond the chart.
 *
 * @template {{y: number}} T
 * @param {T[]} names with the height wanted
 * @param {number} high of a line of text
 * @param {number} top of the chart
 * @param {number} foot
 * @returns {T[]} from the top down
 */
export function apart(names, high, top, foot) {
  const placed = [...names].sort((a, b) => a.y - b.y).map((one) => ({ ...one }));
  placed.forEach((one, at) => {
    const least = at ? placed[at - 1].y + high : top;
    one.y = Math.max(one.y, least);
  });
  for (let at = placed.length - 1; at >= 0; at -= 1) {
    const most = at === placed.length - 1 ? foot : placed[at + 1].y - high;
    placed[at].y = Math.min(placed[at].y, most);
  }
  return placed;
}

/**
 * @typedef {object} Named a line with a name, and its points in the chart's own units
 * @property {string} name
 * @property {string} ink a name of theme.css
 * @property {{at_ms: number, value: number}[]} points
 */

/**
 * What each line is, at its last point in sight.
 *
 * @param {UPlot} u
 * @param {Named[]} lines
 * @param {Inks} ink
 */
export function paintNames(u, lines, ink) {
  const px = devicePixelRatio;
  clipped(u, (ctx, bbox) => {
    const right = bbox.left + bbox.width;
    ctx.font = NAME_FONT.replace("20px", `${20 * px}px`);
    ctx.textBaseline = "middle";
    ctx.textAlign = "left"; // the axes leave another
    const names = lines.flatMap(({ name, ink: colour, points }) => {
      const seen = points
        .map((point) => ({
          x: u.valToPos(point.at_ms, "x", true),
          y: u.valToPos(point.value, "y", true),
        }))
        .filter(({ x }) => x >= bbox.left && x <= right);
      const last = seen[seen.length - 1];
      return last ? [{ ...last, name, colour, wide: ctx.measureText(name).width }] : [];
    });
    const half = (NAME_HIGH * px) / 2;
    const high = NAME_HIGH * px;
    for (const one of apart(
      names,
      high,
      bbox.top + half,
      bbox.top + bbox.height - half,
    )) {
      const gap = 16 * px;
      const isRoom = one.x + gap + one.wide <= right;
      const x = isRoom
        ? one.x + gap
        : Math.max(bbox.left + 4 * px, one.x - gap - one.wide);
      ctx.lineWidth = 6 * px;
      ctx.lineJoin = "round";
      ctx.strokeStyle = ink("--surface");
      ctx.setLineDash([]);
      ctx.strokeText(one.name, x, one.y);
      ctx.fillStyle = ink(one.colour);
      ctx.fillText(one.name, x, one.y);
    }
  });
}

/**
 * Now, where it lies in sight.
 *
 * @param {UPlot} u
 * @param {number} nowMs
 * @param {Inks} ink
 */
export function paintNow(u, nowMs, ink) {
  clipped(u, (ctx, bbox) => {
    const x = u.valToPos(nowMs, "x", true);
    ctx.strokeStyle = ink("--due");
    ctx.lineWidth = 3 * devicePixelRatio;
    ctx.setLineDash([]);
    line(ctx, x, bbox.top, x, bbox.top + bbox.height);
  });
}
