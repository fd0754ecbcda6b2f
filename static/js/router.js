import { signal } from "@preact/signals";

// Routes live in the hash, so a reload or the system's Back key works with no
// server and no network.

/**
 * Split "#/make/ID/reading" into its parts.
 *
 * @param {string} hash
 */
export function partsOf(hash) {
  return hash
    .replace(/^#\/?/, "")
    .split("/")
    .filter((part) => part !== "")
    .map((part) => decodeURIComponent(part));
}

/** The parts of the address shown now. */
export const route = signal(partsOf(location.hash));

addEventListener("hashchange", () => {
  route.value = partsOf(location.hash);
});

/**
 * Write an address from parts: to('make', id) is "#/make/ID".
 *
 * @param {...(string | number)} parts
 */
export function to(...parts) {
  return "#/" + parts.map((part) => encodeURIComponent(part)).join("/");
}

/**
 * Open an address; the system's Back key returns from it.
 *
 * @param {...(string | number)} parts
 */
export function go(...parts) {
  location.hash = to(...parts);
}

/**
 * Open an address in place of this one: for closing what Back must not reopen.
 *
 * @param {...(string | number)} parts
 */
export function swap(...parts) {
  location.replace(to(...parts));
}
