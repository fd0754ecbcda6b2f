// How a person proves an act with a PIN: the page's half of server/seal.py, byte for
// byte. Only where the browser has cryptography, which is on https and on the box
// itself; elsewhere the server lends its own.

const CURVE = { name: "ECDSA", namedCurve: "P-256" };
const SIGNING = { name: "ECDSA", hash: "SHA-256" };
const ROUNDS = 600000; // as server/seal.py says why
const SALT_BYTES = 16;
const NONCE_BYTES = 12;
const SIGNED = [
  "id",
  "make",
  "device",
  "person",
  "at_ms",
  "entered_ms",
  "off_ms",
  "kind",
  "v",
  "ref",
  "data",
];
const SEALED = ["key", "person", "public", "salt", "rounds", "wrapped"];

const bytes = (/** @type {string} */ text) => new TextEncoder().encode(text);

/** @param {ArrayBuffer | Uint8Array<ArrayBuffer>} raw */
function toText(raw) {
  const letters = Array.from(new Uint8Array(raw), (byte) =>
    String.fromCharCode(byte),
  ).join("");
  return btoa(letters).replace(/\+/g, "-").replace(/\//g, "_").replace(/=/g, "");
}

/** @param {string} text */
function fromText(text) {
  const letters = atob(text.replace(/-/g, "+").replace(/_/g, "/"));
  return Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
}

/**
 * The text of a JSON value that page and server write alike.
 *
 * @param {any} value
 * @returns {string}
 */
export function oneText(value) {
  if (Array.isArray(value)) return `[${value.map(oneText).join(",")}]`;
  if (value && typeof value === "object") {
    const rows = Object.keys(value)
      .sort()
      .map((name) => `${oneText(name)}:${oneText(value[name])}`);
    return `{${rows.join(",")}}`;
  }
  if (typeof value === "number" && !Number.isInteger(value))
    return value.toExponential();
  // Plain ASCII, as the server escapes it.
  return JSON.stringify(value ?? null).replace(
    /[\u007f-\uffff]/g,
    (letter) => "\\u" + letter.charCodeAt(0).toString(16).padStart(4, "0"),
  );
}

/** @type {(content: Record<string, any>, names: string[]) => Record<string, any>} */
const pick = (content, names) =>
  Object.fromEntries(names.map((name) => [name, content[name] ?? null]));

/**
 * @param {string} what
 * @param {Record<string, any>} content
 * @param {string[]} names
 */
function signedText(what, content, names) {
  return bytes(`vatside ${what} 1\n${oneText(pick(content, names))}`);
}

/**
 * What is signed of an entry: all that a person answers for.
 *
 * @param {Entry} event
 */
export function actText(event) {
  return signedText("act", event, SIGNED);
}

/**
 * All that is signed of an entry but whose it is, for the server to sign instead.
 *
 * @param {Entry} event
 */
export function actOf(event) {
  return pick(
    event,
    SIGNED.filter((name) => name !== "person"),
  );
}

/**
 * What is signed of a new key with the one before it.
 *
 * @param {Sealed} sealed
 */
export function sealedText(sealed) {
  return signedText("pin", sealed, SEALED);
}

/** @type {(pin: string, salt: Uint8Array<ArrayBuffer>, rounds: number) => Promise<CryptoKey>} */
async function wrapper(pin, salt, rounds) {
  const typed = await crypto.subtle.importKey("raw", bytes(pin), "PBKDF2", false, [
    "deriveKey",
  ]);
  const how = { name: "PBKDF2", hash: "SHA-256", salt, iterations: rounds };
  return crypto.subtle.deriveKey(how, typed, { name: "AES-GCM", length: 256 }, false, [
    "encrypt",
    "decrypt",
  ]);
}

// A wrapped key given out under another's name must not open.
/** @type {(person: string, key: string) => Uint8Array<ArrayBuffer>} */
const bound = (person, key) => bytes(`${person}/${key}`);

/**
 * Make a new signing key that a PIN opens.
 *
 * @param {string} person id of whose it is
 * @param {string} pin
 * @returns {Promise<Sealed>}
 */
export async function newSealed(person, pin) {
  const pair = await crypto.subtle.generateKey(CURVE, true, ["sign", "verify"]);
  const key = crypto.randomUUID();
  const salt = crypto.getRandomValues(new Uint8Array(SALT_BYTES));
  const nonce = crypto.getRandomValues(new Uint8Array(NONCE_BYTES));
  const how = { name: "AES-GCM", iv: nonce, additionalData: bound(person, key) };
  const plain = await crypto.subtle.exportKey("pkcs8", pair.privateKey);
  const closed = new Uint8Array(
    await crypto.subtle.encrypt(how, await wrapper(pin, salt, ROUNDS), plain),
  );
  const wrapped = new Uint8Array([...nonce, ...closed]);
  return {
    key,
    person,
    public: toText(await crypto.subtle.exportKey("spki", pair.publicKey)),
    salt: toText(salt),
    rounds: ROUNDS,
    wrapped: toText(wrapped),
  };
}

/**
 * Sign a text with the key that a PIN opens.
 *
 * @param {Sealed} sealed
 * @param {string} pin
 * @param {Uint8Array<ArrayBuffer>} text
 * @returns {Promise<string | null>} null when the PIN does not open the key
 */
export async function sign(sealed, pin, text) {
  const raw = fromText(sealed.wrapped);
  const how = {
    name: "AES-GCM",
    iv: raw.slice(0, NONCE_BYTES),
    additionalData: bound(sealed.person, sealed.key),
  };
  const opener = await wrapper(pin, fromText(sealed.salt), sealed.rounds);
  let plain;
  try {
    plain = await crypto.subtle.decrypt(how, opener, raw.slice(NONCE_BYTES));
  } catch {
    return null;
  }
  const key = await crypto.subtle.importKey("pkcs8", plain, CURVE, false, ["sign"]);
  return toText(await crypto.subtle.sign(SIGNING, key, text));
}

export const make = () => ({ actOf, actText, newSealed, sealedText, sign });
