// crypto.randomUUID needs a secure context; getRandomValues does not, and a
// phone on a plain-http address must record as well.

/** @param {Uint8Array} bytes @param {number} version */
function text(bytes, version) {
  bytes[6] = (bytes[6] & 0x0f) | (version << 4);
  bytes[8] = (bytes[8] & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0"));
  const parts = [4, 6, 8, 10, 16].map((end, at, ends) =>
    hex.slice(at ? ends[at - 1] : 0, end).join(""),
  );
  return parts.join("-");
}

/**
 * Return a random UUID (RFC 9562, version 4).
 */
export function uuid4() {
  return text(crypto.getRandomValues(new Uint8Array(16)), 4);
}

/**
 * Return a UUID that begins with an instant (RFC 9562, version 7).
 *
 * The instant comes from a clock that may be wrong: never sort by it.
 *
 * @param {number} atMs whole milliseconds since 1970 UTC
 */
export function uuid7(atMs) {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  let rest = Math.floor(atMs);
  for (let at = 5; at >= 0; at -= 1) {
    bytes[at] = rest % 256;
    rest = Math.floor(rest / 256);
  }
  return text(bytes, 7);
}
