// All marks and instruments on one sheet, large and at 24 px, as demo/marks.svg:
//   node demo/marks.mjs > demo/marks.svg

import { fileURLToPath } from "node:url";

import { PAGE } from "../static/js/messages/en/page.js";
import { INSTRUMENTS } from "../static/js/parts/instruments.js";
import { MARKS } from "../static/js/parts/marks.js";

const WIDE = 112;
const COLUMNS = 6;
const HIGH = 176;

/** One shape at a place and size. */
function drawn({ solid, line }, x, y, size) {
  const parts = [
    solid ? `<path fill-rule="evenodd" d="${solid}"/>` : "",
    line
      ? `<path fill="none" stroke="#000" stroke-width="3" stroke-linecap="round" stroke-linejoin="round" d="${line}"/>`
      : "",
  ];
  return `<g transform="translate(${x} ${y}) scale(${size / 24})">${parts.join("")}</g>`;
}

/** The sheet as the text of an SVG. */
export function sheet() {
  const all = [...Object.entries(MARKS), ...Object.entries(INSTRUMENTS)];
  const cells = all.map(([name, shape], n) => {
    const [x, y] = [(n % COLUMNS) * WIDE, Math.floor(n / COLUMNS) * HIGH];
    return [
      drawn(shape, x + 20, y + 16, 72),
      drawn(shape, x + 44, y + 104, 24),
      `<text x="${x + WIDE / 2}" y="${y + 152}">${PAGE["state." + name] ?? name}</text>`,
    ].join("\n");
  });
  const high = Math.ceil(cells.length / COLUMNS) * HIGH;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDE * COLUMNS}" height="${high}" font-family="sans-serif" font-size="15" text-anchor="middle">
<rect width="100%" height="100%" fill="#fff"/>
${cells.join("\n")}
</svg>
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.stdout.write(sheet());
