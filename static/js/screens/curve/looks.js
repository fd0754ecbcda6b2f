// How each quantity is told from the others: by mark and dash first, for a grey
// print and a colour-blind eye. Colour is kept for what is out of its band.

/** @typedef {{ink: string, dash: number[], mark: string}} Look ink: a name of theme.css */
/** @typedef {(name: string) => string} Inks */

/** @type {Record<string, Look>} */
const LOOKS = {
  milk_temp_c: { ink: "--ink", dash: [], mark: "disc" },
  curd_temp_c: { ink: "--ink", dash: [12, 4], mark: "square" },
  air_space_temp_c: { ink: "--ink-soft", dash: [3, 4], mark: "triangle" },
  water_temp_c: { ink: "--due", dash: [8, 5], mark: "diamond" },
  jacket_temp_c: { ink: "--ink-soft", dash: [2, 7], mark: "cross" },
  ph: { ink: "--ink", dash: [], mark: "disc" },
};

/** @param {string} quantity */
export function lookOf(quantity) {
  return LOOKS[quantity] ?? { ink: "--ink", dash: [], mark: "disc" };
}

/**
 * The outline of a mark about a point, as an SVG path; a canvas draws it too.
 *
 * @param {string} mark
 * @param {number} x
 * @param {number} y
 * @param {number} size
 */
export function markPath(mark, x, y, size) {
  const half = size / 2;
  if (mark === "square") return `M${x - half} ${y - half}h${size}v${size}h${-size}z`;
  if (mark === "triangle") return `M${x} ${y - half}l${half} ${size}h${-size}z`;
  if (mark === "diamond")
    return `M${x} ${y - half * 1.2}l${half * 1.2} ${half * 1.2}l${-half * 1.2} ${half * 1.2}l${-half * 1.2} ${-half * 1.2}z`;
  if (mark === "cross")
    return `M${x - half} ${y - half}l${size} ${size}M${x + half} ${y - half}l${-size} ${size}`;
  return `M${x - half} ${y}a${half} ${half} 0 1 0 ${size} 0a${half} ${half} 0 1 0 ${-size} 0z`;
}

/**
 * Read the page's own colours, so that light and dark need no second list.
 *
 * @returns {Inks}
 */
export function inks() {
  const style = getComputedStyle(document.documentElement);
  return (name) => style.getPropertyValue(name).trim();
}
