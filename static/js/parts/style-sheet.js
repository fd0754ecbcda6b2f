/** @type {Map<string, Promise<unknown>>} */
const asked = new Map();

/**
 * Load a style sheet that does not come with the page; rejects when it is not to be
 * had, and asks again the next time.
 *
 * @param {string} address
 * @returns {Promise<unknown>}
 */
export function styleSheet(address) {
  const known = asked.get(address);
  if (known) return known;
  const link = document.createElement("link");
  const coming = new Promise((resolve, reject) => {
    link.rel = "stylesheet";
    link.href = address;
    link.onload = resolve;
    link.onerror = () => reject(new Error(address));
    document.head.append(link);
  });
  asked.set(address, coming);
  coming.catch(() => {
    asked.delete(address);
    link.remove();
  });
  return coming;
}
