import { me, people, person, roleMay } from "./source.js";
import { t } from "../messages/index.js";

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
 * Tell whether this phone and who taps on it are both of some roles.
 *
 * @param {string[]} roles
 */
export function areBothOf(roles) {
  return [tapper(), me.value?.person].every((one) => one && roles.includes(one.role));
}

/**
 * Tell whether this phone and who taps on it may both do something.
 *
 * @param {string} act a kind of entry, or what is no entry; see data/rights.js
 */
export function may(act) {
  return roleMay(tapper()?.role, act) && roleMay(me.value?.person.role, act);
}
