// An act is recorded, worked out and shown: on a slow phone that takes as long as a
// wet finger needs to come down again. Until its outcome can be seen, the same is not
// done a second time.

const REST_MS = 1000; // until the page shows what was recorded

/**
 * Return what does one act of a meaning at a time.
 *
 * @param {number} [restMs] how long it is not done again once it is over
 * @returns {(meaning: string, does: () => unknown) => void}
 */
export function once(restMs = REST_MS) {
  /** @type {?string} */
  let resting = null;
  return (meaning, does) => {
    if (resting === meaning) return;
    const doing = does();
    if (!(doing instanceof Promise)) return;
    resting = meaning;
    const over = () => {
      if (resting === meaning) resting = null;
    };
    doing.finally(() => setTimeout(over, restMs));
  };
}
