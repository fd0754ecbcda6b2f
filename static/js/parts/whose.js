import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { html } from "./html.js";
import { board } from "./source.js";

// In a room with two vats at the same step, the step alone says nothing. Whatever
// ends, begins, rings or asks for a figure says whose it is, the vat first.

/** The words for whose a sheet or pad is, or null outside a make. */
export const Whose = createContext(/** @type {?string} */ (null));

/**
 * A make's vat; its name where it has none, and both while two share a vat.
 *
 * @param {{id: string, name: string, vat: ?string}} make
 */
export function whoseOf({ id, name, vat }) {
  if (!vat) return name;
  const isShared = (board.value?.makes ?? []).some(
    (make) => make.id !== id && make.vat === vat && make.is_open,
  );
  return isShared ? `${vat} · ${name}` : vat;
}

/**
 * The same of a make known by its id only; null when it is none of the board's.
 *
 * @param {?string} id
 */
export function whoseId(id) {
  const make = board.value?.makes.find((summary) => summary.id === id);
  return make ? whoseOf(make) : null;
}

/**
 * Whose this is, as a line of its own: in a head, or in a button below its words.
 *
 * @param {{class?: string}} props
 */
export function WhoseLine({ class: name = "" }) {
  const whose = useContext(Whose);
  return whose ? html` <b class=${"whose " + name}>${whose}</b>` : null;
}
