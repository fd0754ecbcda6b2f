// Whether a phone finds and trusts the server's secure addresses.
//
// A browser does not say why it could not fetch: a certificate that it does not
// trust fails like a name that nobody knows. So each name is asked over plain http
// too, at this page's own port: what answers there is found, and not trusted.

/** @import { Facts, Probe } from "./state.js" */
/** @typedef {(address: string, options: RequestInit) => Promise<Response>} Fetcher */

const FILE = "/setup/ok.svg";

/**
 * @param {Promise<any>} promise
 * @param {number} waitMs
 * @returns {Promise<boolean>}
 */
function inTime(promise, waitMs) {
  return new Promise((resolve) => {
    const late = setTimeout(() => resolve(false), waitMs);
    const end = (/** @type {boolean} */ is) => () => {
      clearTimeout(late);
      resolve(is);
    };
    promise.then(end(true), end(false));
  });
}

/**
 * @param {Fetcher} fetcher
 * @param {string} address
 * @param {number} waitMs
 */
function answers(fetcher, address, waitMs) {
  const asked = fetcher(address, {
    mode: "no-cors",
    cache: "no-store",
    credentials: "omit",
  });
  return inTime(asked, waitMs);
}

/**
 * @param {string} url
 * @param {string} port
 */
function plainAddress(url, port) {
  return "http://" + new URL(url).hostname + (port ? ":" + port : "") + FILE;
}

/**
 * Ask one secure address.
 *
 * @param {Fetcher} fetcher the browser's fetch
 * @param {string} url
 * @param {string} port of this page, "" for 80
 * @param {number} waitMs how long to wait for an answer
 * @returns {Promise<Probe>} never rejects
 */
export function probe(fetcher, url, port, waitMs) {
  const secure = answers(fetcher, url.replace(/\/+$/, "") + FILE, waitMs);
  const plain = answers(fetcher, plainAddress(url, port), waitMs);
  return Promise.all([secure, plain]).then(([isTrusted, isFound]) => ({
    url,
    is: isTrusted ? "trusted" : isFound ? "untrusted" : "unreachable",
  }));
}

/**
 * Ask what the server tells of itself; false when it does not answer.
 *
 * @param {Fetcher} fetcher
 * @param {number} waitMs
 * @returns {Promise<Facts | false>}
 */
export function askFacts(fetcher, waitMs) {
  const asked = fetcher("/facts.json", { cache: "no-store" }).then((answer) => {
    if (!answer.ok) throw new Error("status " + answer.status);
    return answer.json();
  });
  return inTime(asked, waitMs).then((isThere) => (isThere ? asked : false));
}
