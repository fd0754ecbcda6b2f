import { me, people, person } from "./source.js";
import { t } from "../messages/index.js";

/** @type {Role[]} */
const RANKS = ["viewer", "helper", "maker", "owner"];

/** @param {string} personId */
function byId(personId) {
  return (people.value ?? []).find((one) => one.id === personId) ?? null;
}

/**
 * The name of a person by id; a short id while names are not known yet.
 *
 * @param {?string} [personId]
 */
export function nameOf(personId) {
  if (!personId) return "";
  return (
    byId(personId)?.name ?? t("people.unknown", { id: String(personId).slice(0, 6) })
  );
}

/** Who taps on this phone now. */
export function tapper() {
  const paired = me.value?.person ?? null;
  if (!person.value || person.value === paired?.id) return paired;
  return byId(person.value) ?? paired;
}

/**
 * Tell whether this phone and who taps on it may both do what this role may.
 *
 * @param {Role} role
 */
export function mayAs(role) {
  const rank = (/** @type {?Person | undefined} */ who) =>
    RANKS.indexOf(who?.role ?? "viewer");
  return Math.min(rank(tapper()), rank(me.value?.person)) >= RANKS.indexOf(role);
}
