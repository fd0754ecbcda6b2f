// Which screen the set-up page shows, from what is known. Nothing here looks at
// the page or the network.

// Certificates begin a month back, for phones whose clocks lag: only a clock that
// is off by days makes one "not yet valid" or run out.
export const CLOCK_OFF_MS = 86400000;

/** What the phone is, as its browser tells: "iphone", "android", or null. */
export function deviceOf(agent, touches) {
  if (/iPhone|iPad|iPod/.test(agent)) return "iphone";
  // An iPad calls itself a Mac, but no Mac has a touch screen.
  if (/Macintosh/.test(agent) && touches > 1) return "iphone";
  return /Android/.test(agent) ? "android" : null;
}

/** Whether this browser cannot take the certificate, though its phone could. */
export function isWrongBrowser(agent, device) {
  if (device === "iphone") return /CriOS|FxiOS|EdgiOS|OPiOS|DuckDuckGo/.test(agent);
  return device === "android" && /Firefox|Focus\//.test(agent);
}

/** The steps on a phone before it trusts the server. */
export function stepsOf(device) {
  return device === "iphone" ? ["take", "profile", "trust"] : ["take", "install"];
}

/** The first secure address that the phone trusts, or null. */
export function trustedOf(probes) {
  const found = probes.filter((one) => one.is === "trusted")[0];
  return found ? found.url : null;
}

/**
 * Return the screen to show.
 *
 * @param {object} known
 *   facts: what the server told, null before, false when it did not answer
 *   probes: [{url, is: "trusted" | "untrusted" | "unreachable"}], null before
 *   offMs: by how much the phone's clock is ahead of the server's
 *   isClockSkipped: true once the person went on with clocks that differ
 *   device, step: which phone, and how many steps are done
 * @returns {string} asking, silent, open, clock, lost, which, or one of the steps
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
