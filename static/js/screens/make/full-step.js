import { useEffect, useState } from "preact/hooks";
import { ask } from "../../parts/source.js";

// The view carries in full only the steps at hand; the core is asked for others.

/**
 * One step of the view in full, or null until the core has answered.
 *
 * @param {string} make
 * @param {View | null} shown
 * @param {string | null | undefined} key
 * @returns {Step | null}
 */
export function useFullStep(make, shown, key) {
  const brief = shown?.steps.find((step) => step.key === key) ?? null;
  const [full, setFull] = useState(/** @type {Step | null} */ (null));
  const mustAsk = brief !== null && !brief.full;
  useEffect(() => {
    if (!mustAsk || !key) return undefined;
    let isCurrent = true;
    ask.step({ make, step: key }).then(
      (step) => isCurrent && setFull(step),
      () => {},
    );
    return () => {
      isCurrent = false;
    };
  }, [make, key, mustAsk, shown]);
  if (!mustAsk) return brief;
  return full?.key === key ? full : null;
}
