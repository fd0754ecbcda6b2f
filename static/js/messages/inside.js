// How a text begins within a sentence and at its head, in any of the languages.

// "Curd", "Écart", "A vat", "L’eau"; not "pH", "IMCU" or "D-value".
const SMALL = /^\p{Lu}(?:\p{Ll}|’\p{Ll})|^[AÀ] \p{Ll}/u;

/**
 * A text as it stands within a sentence; one that begins with one of the names stays.
 *
 * @param {string} text
 * @param {string[]} names
 * @param {string} code
 */
export function within(text, names, code) {
  const [first] = /^[\p{L}-]*/u.exec(text) ?? [""];
  if (!SMALL.test(text) || names.includes(first)) return text;
  return text.charAt(0).toLocaleLowerCase(code) + text.slice(1);
}

/**
 * A text at the head of a line; "pH" stays.
 *
 * @param {string} text
 * @param {string} code
 */
export function capital(text, code) {
  return /^\p{Ll}(?!\p{Lu})/u.test(text)
    ? text.charAt(0).toLocaleUpperCase(code) + text.slice(1)
    : text;
}
