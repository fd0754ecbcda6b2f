// The scale of type and the colours of both themes, as css/theme.css has them:
//   node demo/scales.mjs > demo/scales.svg

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const THEME = new URL("../static/css/theme.css", import.meta.url);
const REM_PX = 20;
const WIDE = 780;
const SWATCH = { wide: 120, high: 64, columns: 6 };

/** The declarations of the nth `:root` of a style sheet, by name. */
function declared(css, n) {
  const block = css.split(":root {")[n + 1].split("}")[0];
  return Object.fromEntries(
    [...block.matchAll(/--([\w-]+): ([^;]+);/g)].map(([, name, value]) => [
      name,
      value,
    ]),
  );
}

/** What theme.css sets: the sizes of type [rem], and the colours of each theme. */
export function scales(css = readFileSync(THEME, "utf8")) {
  const [light, dark] = [declared(css, 0), declared(css, 1)];
  const sizes = Object.entries(light)
    .filter(([name]) => name.startsWith("t-"))
    .map(([name, value]) => [name.slice(2), parseFloat(value)]);
  const names = Object.keys(light).filter((name) => light[name].startsWith("#"));
  const colours = (theme) => names.map((name) => [name, theme[name]]);
  return { sizes, light: colours(light), dark: colours({ ...light, ...dark }) };
}

/** A line in each size of type, and where the next thing stands [px]. */
function drawnType(sizes) {
  let y = 24;
  const lines = sizes.map(([name, rem]) => {
    y += rem * REM_PX * 1.35;
    return `<text x="24" y="${y.toFixed(0)}" font-size="${(rem * REM_PX).toFixed(0)}">34.5 °C · 8:41</text><text x="${WIDE - 24}" y="${y.toFixed(0)}" font-size="15" text-anchor="end">${name}, ${rem} rem</text>`;
  });
  return { drawn: lines.join("\n"), endPx: y + 32 };
}

/** The colours of a theme as swatches from a height on [px]. */
function drawnColours(colours, ground, ink, top) {
  const { wide, high, columns } = SWATCH;
  const rows = Math.ceil(colours.length / columns);
  const swatches = colours.map(([name, value], n) => {
    const x = 24 + (n % columns) * (wide + 2);
    const y = top + 16 + Math.floor(n / columns) * (high + 26);
    return `<rect x="${x}" y="${y}" width="${wide - 8}" height="${high}" rx="6" fill="${value}" stroke="${ink}" stroke-opacity=".3"/><text x="${x}" y="${y + high + 17}" font-size="13" fill="${ink}">${name}</text>`;
  });
  const tall = rows * (high + 26) + 32;
  return {
    drawn: `<rect y="${top}" width="100%" height="${tall}" fill="${ground}"/>\n${swatches.join("\n")}`,
    endPx: top + tall,
  };
}

/** The sheet as the text of an SVG. */
export function sheet() {
  const { sizes, light, dark } = scales();
  const find = (colours, name) => Object.fromEntries(colours)[name];
  const type = drawnType(sizes);
  const themes = [];
  let top = type.endPx;
  for (const theme of [light, dark]) {
    const part = drawnColours(theme, find(theme, "ground"), find(theme, "ink"), top);
    themes.push(part.drawn);
    top = part.endPx;
  }
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDE}" height="${top.toFixed(0)}" font-family="sans-serif">
<rect width="100%" height="100%" fill="${find(light, "surface")}"/>
${type.drawn}
${themes.join("\n")}
</svg>
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) process.stdout.write(sheet());
