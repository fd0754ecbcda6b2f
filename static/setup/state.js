// Which screen the set-up page shows, from what is known. Nothing here looks at
// the page or the network.

/** @typedef {"iphone" | "android"} Device */
/** @typedef {{now_ms: number, secure_urls: string[], fingerprint: string}} Facts */
/** @typedef {{url: string, is: "trusted" | "untrusted" | "unreachable"}} Probe */
/** @typedef {"take" | "profile" | "trust" | "install"} TrustStep */
/** @typedef {"asking" | "silent" | "open" | "clock" | "lost" | "which" | TrustStep} Screen */
/**
 * What is known of the phone and the server.
 *
 * @typedef {object} Known
 * @property {Facts | false | null} facts null before, false when it did not answer
 * @property {Probe[] | null} probes null before
 * @property {number} offMs by how much the phone's clock is ahead of the server's
 * @property {boolean} isClockSkipped true once the person went on with clocks that differ
 * @property {Device | null} device
 * @property {number} step how many steps are done
 */

// Certificates begin a month back, for phones whose clocks lag: only a clock that
// is off by days makes one "not yet valid" or run out.
export const CLOCK_OFF_MS = 86400000;

/**
 * What the phone is, as its browser tells: "iphone", "android", or null.
 *
 * @param {string} agent
 * @param {number} touches
 * @returns {Device | null}
 */
export function deviceOf(agent, touches) {
  if (/iPhone|iPad|iPod/.test(agent)) return "iphone";
  // An iPad calls itself a Mac, but no Mac has a touch screen.
  if (/Macintosh/.test(agent) && touches > 1) return "iphone";
  return /Android/.test(agent) ? "android" : null;
}

/**
 * Whether this browser cannot take the certificate, though its phone could.
 *
 * @param {string} agent
 * @param {Device | null} device
 */
export function isWrongBrowser(agent, device) {
  if (device === "iphone") return /CriOS|FxiOS|EdgiOS|OPiOS|DuckDuckGo/.test(agent);
  return device === "android" && /Firefox|Focus\//.test(agent);
}

/**
 * The steps on a phone before it trusts the server.
 *
 * @param {Device | null} device
 * @returns {TrustStep[]}
 */
export function stepsOf(device) {
  return device === "iphone" ? ["take", "profile", "trust"] : ["take", "install"];
}

/**
 * The first secure address that the phone trusts, or null.
 *
 * @param {Probe[]} probes
 */
export function trustedOf(probes) {
  const found = probes.filter((one) => one.is === "trusted")[0];
  return found ? found.url : null;
}

/**
 * Return the screen to show.
 *
 * @param {Known} known
 * @returns {Screen}
 */
export function screenOf({ facts, probes, offMs, isClockSkipped, device, step }) {
  if (facts === false) return "silent";
  if (!facts || !probes) return "asking";
  if (trustedOf(probes)) return "open";
  if (Math.abs(offMs) > CLOCK_OFF_MS && !isClockSkipped) return "clock";
  if (probes.every((one) => one.is === "unreachable")) return "lost";
  if (!device) return "which";
  const steps = stepsOf(device);
  return steps[Math.min(step, steps.length - 1)];
}

/**
 * Return where to go on: the self-check, with the language and the code.
 *
 * @param {string} url secure address of the server
 * @param {string} language
 * @param {string} hash the address's part from "#" on; it is sent to nobody
 */
export function nextAddress(url, language, hash) {
  return url.replace(/\/+$/, "") + "/setup?lang=" + language + hash;
}

/**
 * Return the code behind the address's "#": alone, or as the app's own address.
 *
 * @param {string} hash such as "#K7QM-3XHD" or "#/pair/K7QM-3XHD"
 */
export function codeOf(hash) {
  const code = hash.replace(/^#(\/pair\/)?/, "");
  try {
    return decodeURIComponent(code);
  } catch (failure) {
    return code; // typed by somebody: shown as it is
  }
}
