// The few ways in which the set-up pages make elements.

import { LANGUAGES, language, t } from "./texts.js";

const SVG = "http://www.w3.org/2000/svg";

/** @typedef {Node | string | false | null | undefined} Child left out unless a node or words */
/** @typedef {Record<string, any>} Attributes of an element, and its onclick */

/**
 * @template {Element} T
 * @param {T} made
 * @param {Attributes} attributes
 * @param {Child[]} children
 * @returns {T}
 */
function fill(made, attributes, children) {
  Object.keys(attributes).forEach((name) => {
    const value = attributes[name];
    if (name === "onclick") made.addEventListener("click", value);
    else if (value !== false && value !== null)
      made.setAttribute(name, value === true ? "" : value);
  });
  children.forEach((child) => {
    if (!child) return;
    made.appendChild(
      typeof child === "string" ? document.createTextNode(child) : child,
    );
  });
  return made;
}

/**
 * Make an element; `false` and `null` attributes and children are left out.
 *
 * @template {keyof HTMLElementTagNameMap} K
 * @param {K} tag
 * @param {Attributes | null} attributes
 * @param {Child[]} children
 */
export function el(tag, attributes, ...children) {
  return fill(document.createElement(tag), attributes || {}, children);
}

/**
 * Make an element of a drawing.
 *
 * @param {string} tag
 * @param {Attributes | null} attributes
 * @param {Child[]} children
 */
export function draw(tag, attributes, ...children) {
  return fill(document.createElementNS(SVG, tag), attributes || {}, children);
}

/**
 * Put other children into an element.
 *
 * @param {Element} parent
 * @param {(Node | false | null | undefined | "")[]} children
 */
export function show(parent, children) {
  while (parent.firstChild) parent.removeChild(parent.firstChild);
  children.forEach((child) => {
    if (child) parent.appendChild(child);
  });
}

/**
 * A row of buttons of which one is chosen.
 *
 * @param {string} label
 * @param {Record<string, string>} names by key
 * @param {string} chosen
 * @param {(key: any) => void} onPick
 */
export function choice(label, names, chosen, onPick) {
  const buttons = Object.keys(names).map((key) =>
    el(
      "button",
      {
        type: "button",
        class: "pick",
        lang: key in LANGUAGES ? key : null,
        "aria-pressed": String(key === chosen),
        onclick: () => onPick(key),
      },
      names[key],
    ),
  );
  return el("div", { class: "picks", role: "group", "aria-label": label }, ...buttons);
}

/**
 * The languages in a row.
 *
 * @param {(code: import("./texts.js").Language) => void} onPick
 */
export function languagePick(onPick) {
  return choice(t("page.language"), LANGUAGES, language(), onPick);
}
