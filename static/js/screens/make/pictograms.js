import { html } from "../../parts/html.js";

// Signs of our own drawing, in the manner that people know from the walls of a
// dairy: a yellow triangle warns, a blue disc says what must be worn or done. Their
// colours are the signs' own, by day and by night.

const INK = "#000";
const YELLOW = "#f9c800";
const BLUE = "#005aa9";

// In a field of 20 by 18; what has no fill of its own is a line.
/** @type {Record<string, any>} */
const WARNINGS = {
  blade: html`<path fill=${INK} d="M-1 7h5v2.5h-5zM5.5 5H20c0 3.5-3.5 5.5-7.5 5.5h-7z" /><path d="M1 17.5h11a1.7 1.7 0 0 0 0-3.4H9" /><path fill=${INK} stroke="none" d="M17 12.5c1.2 1.7 1.8 2.7 1.8 3.6a1.8 1.8 0 0 1-3.6 0c0-.9.6-1.9 1.8-3.6z" />`,
  cold: html`<path d="M10 0v18M2.2 4.5l15.6 9M17.8 4.5l-15.6 9M7.5 1.2 10 3.5l2.5-2.3M7.5 16.8 10 14.5l2.5 2.3M2 8l3.2-1.7L4.9 2.7M18 10l-3.2 1.7.300 3.6M18 8l-3.2-1.7.300-3.6M2 10l3.2 1.7-.3 3.6" />`,
  corrosive: html`<path fill=${INK} d="m3 1 8 3-1 3-8-3z" /><path d="M1.5 15.5h5l1-1.5 2.5 2 2.5-2 1 1.5h5" /><circle cx="12" cy="9" r="1.2" fill=${INK} /><circle cx="9.5" cy="11.5" r="1" fill=${INK} />`,
  crush: html`<path fill=${INK} d="M4 1.5h12V5H4z" /><path d="M10 6v5M7.5 8.5 10 11l2.5-2.5" /><path fill=${INK} d="M1 18v-2.5L5.5 14H17a1.5 1.5 0 0 1 0 3h-6.5v1z" />`,
  electricity: html`<path fill=${INK} stroke="none" d="M11.5 0 4.5 10.5H9L7.5 18 15.5 7H11z" />`,
  gas: html`<path fill=${INK} d="M5 12a3.5 3.5 0 0 1 .5-7A5 5 0 0 1 15 4.5 3.8 3.8 0 0 1 15 12z" /><path d="M3 15h10M7 17.5h10" />`,
  general: html`<path fill=${INK} stroke="none" d="M8.2-1h3.6l-.7 12.5H8.9z" /><circle cx="10" cy="15.3" r="2" fill=${INK} stroke="none" />`,
  heat: html`<path d="M1 17h18M5 13.5c-2.5-3 2.5-5 0-8M10 13.5c-2.5-4 2.5-6.5 0-11M15 13.5c-2.5-3 2.5-5 0-8" />`,
  load: html`<circle cx="6" cy="2.5" r="2.5" fill=${INK} stroke="none" /><path d="M7 6.5 4 11l2.5 2.5-1 4M7 7l3.5 4.5" /><path fill=${INK} d="M11 9h7.5v7H11z" />`,
  moving: html`<path d="M10 0v9" /><path fill=${INK} d="M3 9.5h14v3H3zM3 12.5h3V18H3zM14 12.5h3V18h-3z" /><path d="M4.5 6C2 4.5 4 2 7 2M15.5 6C18 4.5 16 2 13 2M5.3 3.8 7 2 5.5.500" />`,
  pressure: html`<circle cx="10" cy="8" r="7" /><path d="M10 8.5 13.5 4M10 15v3M5 18h10" /><circle cx="10" cy="8.5" r="1.2" fill=${INK} />`,
  slip: html`<circle cx="14" cy="2" r="2.3" fill=${INK} stroke="none" /><path d="M12.5 5 8 10l5 1.5 3.5 4.5M8 10l-5.5 1M12 5.5l-6-1M12.5 5.5l4.5 3M1 18h18" />`,
  steam: html`<path fill=${INK} d="M-1 9h6v6h-6z" /><path d="M8 9.5c3 0 2.5-3 5-3.5s2.5 1 5.5-1.5M8.5 12c3 0 3-1.5 5.5-1.5S17 12 20.5 11M8 14.5c3 0 2.5 3 5 3s3-1.5 6.5.5" />`,
};

// In a field of 24 by 24, white on blue.
/** @type {Record<string, any>} */
const MANDATORY = {
  call: html`<path fill="#fff" d="M7.5 1h9v22h-9z" stroke="#fff" stroke-linejoin="round" /><path fill=${BLUE} d="M9 4h6v12H9z" /><circle cx="12" cy="19.5" r="1.3" fill=${BLUE} />`,
  gloves: html`<path fill="#fff" d="M7.5 23v-5.5l-4-5a1.6 1.6 0 0 1 2.5-2L8 13V4.5a1.5 1.5 0 0 1 3 0V2.5a1.5 1.5 0 0 1 3 0v2a1.5 1.5 0 0 1 3 0v3a1.4 1.4 0 0 1 2.8 0V15l-2.3 3.5V23z" /><path stroke=${BLUE} d="M11 4.5V11M14 4.5V11M17 7v4M7.5 20h10" />`,
  goggles: html`<path fill="#fff" d="M12 1a9.5 9.5 0 0 1 9.5 9.5c0 7-4.5 12.5-9.5 12.5S2.5 17.5 2.5 10.5A9.5 9.5 0 0 1 12 1z" /><path fill=${BLUE} d="M2 8h20v6.5h-7.5L12 12.5l-2.5 2H2z" /><path fill="#fff" d="M5 9.5h5v3H5zM14 9.5h5v3h-5z" />`,
  lock: html`<path stroke="#fff" stroke-width="2.8" fill="none" d="M7 11V7a5 5 0 0 1 10 0v4" /><path fill="#fff" d="M4 10.5h16V22H4z" /><path fill=${BLUE} d="M10.7 14h2.6v4.5h-2.6z" />`,
};

/** @param {{pictogram: string}} props */
function Warning({ pictogram }) {
  return html`<path fill=${YELLOW} stroke=${INK} stroke-width="3.5" stroke-linejoin="round" d="M24 4 46 43H2z" />
    <g transform="translate(14 21.5)" fill="none" stroke=${INK} stroke-width="1.7" stroke-linecap="round" stroke-linejoin="round">${WARNINGS[pictogram] ?? WARNINGS.general}</g>`;
}

/** @param {{pictogram: string}} props */
function Mandatory({ pictogram }) {
  return html`<circle cx="24" cy="24" r="22" fill=${BLUE} stroke="#fff" stroke-width="1.5" />
    <g transform="translate(8.4 8.4) scale(1.3)">${MANDATORY[pictogram]}</g>`;
}

/**
 * One sign of a caution; its words stand beside it.
 *
 * @param {{sign: Sign, high: number}} props
 */
export function SignMark({ sign, high }) {
  const Shape = sign.kind === "warning" ? Warning : Mandatory;
  return html`<svg viewBox="0 0 48 48" width=${high} height=${high} aria-hidden="true"><${Shape} pictogram=${sign.pictogram} /></svg>`;
}
