// The only two script addresses that this app ever starts from code. Under
// Trusted Types the browser refuses every address that did not pass here.

const ADDRESSES = ["/js/core/worker.js", "/sw.js"];

/** @param {string} address */
function known(address) {
  if (!ADDRESSES.includes(address)) {
    throw new TypeError(`not a script of this app: ${address}`);
  }
  return address;
}

const policy = globalThis.trustedTypes?.createPolicy("vatside", {
  createScriptURL: known,
});

/**
 * Return an address that `new Worker` and `register` accept.
 *
 * @param {string} address one of the app's own two scripts
 */
export function scriptAddress(address) {
  return policy ? policy.createScriptURL(address) : known(address);
}
