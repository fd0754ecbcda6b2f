// The few ways in which the set-up pages make elements.

import { LANGUAGES, language, t } from "./texts.js";

const SVG = "http://www.w3.org/2000/svg";

function fill(made, attributes, children) {
  Object.keys(attributes).forEach((name) => {
    const value = attributes[name];
    if (name === "onclick") made.addEventListener("click", value);
    else if (value !== false && value !== null)
      made.setAttribute(name, value === true ? "" : value);
  });
  children.filter(Boolean).forEach((child) => {
    made.appendChild(
      typeof child === "string" ? document.createTextNode(child) : child,
    );
  });
  return made;
}

/** Make an element; `false` and `null` attributes and children are left out. */
export function el(tag, attributes, ...children) {
  return fill(document.createElement(tag), attributes || {}, children);
}

/** Make an element of a drawing. */
export function draw(tag, attributes, ...children) {
  return fill(document.createElementNS(SVG, tag), attributes || {}, children);
}

/** Put other children into an element. */
export function show(parent, children) {
  while (parent.firstChild) parent.removeChild(parent.firstChild);
  children.filter(Boolean).forEach((child) => parent.appendChild(child));
}

/** A row of buttons of which one is chosen. */
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

/** The languages in a row. */
export function languagePick(onPick) {
  return choice(t("page.language"), LANGUAGES, language(), onPick);
}
