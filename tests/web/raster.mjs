// A drawing as dots: enough of SVG's paths for our own marks, by the grammar of
// SVG 1.1, 8.3 (M L H V Q T C S Z, each absolute or relative).

const FIELD = 24; // what the marks are drawn in
const LINE = 3; // how wide their lines are, as in theme.css
const PIECES = 12; // straight pieces to a curve
const SIZES = { M: 2, L: 2, H: 1, V: 1, Q: 4, T: 2, C: 6, S: 4, Z: 0 };

function* commands(path) {
  for (const [, letter, rest] of path.matchAll(/([a-z])([^a-z]*)/gi)) {
    const size = SIZES[letter.toUpperCase()];
    if (size === undefined) throw new Error(`${letter} in ${path}`);
    const numbers = (rest.match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
    if (size ? numbers.length % size || !numbers.length : numbers.length)
      throw new Error(`${letter}${rest} in ${path}`);
    if (!size) yield ["Z", false, []];
    for (let at = 0; at < numbers.length; at += size) {
      const isNext = at > 0 && letter.toUpperCase() === "M";
      const name = isNext ? "L" : letter.toUpperCase();
      yield [name, letter === letter.toLowerCase(), numbers.slice(at, at + size)];
    }
  }
}

const between = (from, to, share) => from.map((one, n) => one + (to[n] - one) * share);

/** A point of a Bézier curve, by de Casteljau. */
function onCurve(points, share) {
  if (points.length === 1) return points[0];
  const nearer = points.slice(1).map((one, n) => between(points[n], one, share));
  return onCurve(nearer, share);
}

/** The path as chains of points. */
export function chains(path) {
  const told = [];
  let [here, start, pull] = [[0, 0], [0, 0], null];
  for (const [name, isRelative, numbers] of commands(path)) {
    const base = isRelative ? here : [0, 0];
    const pairs = [];
    if (name === "H") pairs.push([base[0] + numbers[0], here[1]]);
    else if (name === "V") pairs.push([here[0], base[1] + numbers[0]]);
    else
      for (let at = 0; at < numbers.length; at += 2)
        pairs.push([base[0] + numbers[at], base[1] + numbers[at + 1]]);
    if (name === "T" || name === "S")
      pairs.unshift(pull ? here.map((one, n) => 2 * one - pull[n]) : here);
    if (name === "M") told.push([(start = pairs[0])]);
    else if (name === "Z") told.at(-1).push((pairs[0] = start));
    else if (pairs.length === 1) told.at(-1).push(pairs[0]);
    else
      for (let piece = 1; piece <= PIECES; piece += 1)
        told.at(-1).push(onCurve([here, ...pairs], piece / PIECES));
    here = pairs.at(-1);
    if (name === "Z") told.push([start]);
    pull = pairs.length > 1 ? pairs.at(-2) : null;
  }
  return told.filter((chain) => chain.length > 1);
}

/** Whether a point lies in what the chains close, by the even-odd rule. */
function isIn(polygons, [x, y]) {
  let isOdd = false;
  for (const points of polygons)
    points.forEach(([x1, y1], n) => {
      const [x2, y2] = points[(n + 1) % points.length];
      if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1))
        isOdd = !isOdd;
    });
  return isOdd;
}

/** Whether a point lies within half a line's width of a chain. */
function isNear(lines, [x, y]) {
  return lines.some((points) =>
    points.slice(1).some(([x2, y2], n) => {
      const [x1, y1] = points[n];
      const [dx, dy] = [x2 - x1, y2 - y1];
      const along = ((x - x1) * dx + (y - y1) * dy) / (dx * dx + dy * dy || 1);
      const share = Math.min(1, Math.max(0, along));
      return Math.hypot(x - x1 - share * dx, y - y1 - share * dy) <= LINE / 2;
    }),
  );
}

/** A shape as rows of dots, `size` to a row: true where there is ink. */
export function dots({ solid = "", line = "" }, size) {
  const [polygons, lines] = [chains(solid), chains(line)];
  const place = (n) => ((n + 0.5) / size) * FIELD;
  const count = Array.from({ length: size }, (_, n) => n);
  return count.map((row) =>
    count.map((column) => {
      const point = [place(column), place(row)];
      return isIn(polygons, point) || isNear(lines, point);
    }),
  );
}

/** The outline alone: all that white from the edge cannot reach. */
export function outline(rows) {
  const size = rows.length;
  const isOutside = rows.map((row) => row.map(() => false));
  const edge = rows.flatMap((_, n) => [
    [n, 0],
    [n, size - 1],
    [0, n],
    [size - 1, n],
  ]);
  while (edge.length) {
    const [row, column] = edge.pop();
    if (rows[row]?.[column] !== false || isOutside[row][column]) continue;
    isOutside[row][column] = true;
    edge.push(
      [row + 1, column],
      [row - 1, column],
      [row, column + 1],
      [row, column - 1],
    );
  }
  return isOutside.map((row) => row.map((one) => !one));
}

/** What an eye sees that takes `by` times `by` dots for one: grey, 0 to 1. */
export function blurred(rows, by) {
  const size = rows.length / by;
  return Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (_, column) => {
      let ink = 0;
      for (let y = 0; y < by; y += 1)
        for (let x = 0; x < by; x += 1) ink += rows[row * by + y][column * by + x];
      return ink / (by * by);
    }),
  );
}

/** How much two pictures differ, of all their dots: 0 to 1. */
export function unlikeFrac(one, other) {
  let apart = 0;
  one.forEach((row, y) =>
    row.forEach((dot, x) => (apart += Math.abs(dot - other[y][x]))),
  );
  return apart / (one.length * one.length);
}
