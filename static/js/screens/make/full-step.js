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
  const brief = shown?.steps.find((one) => one.key === key) ?? null;
  const [found, setFound] = useState(/** @type {Step | null} */ (null));
  const mustAsk = brief !== null && !brief.full;
  useEffect(() => {
    if (!mustAsk || !key) return undefined;
    let isCurrent = true;
    ask.step({ make, step: key }).then(
      (step) => isCurrent && setFound(step),
      () => {},
    );
    return () => {
      isCurrent = false;
    };
  }, [make, key, mustAsk, shown]);
  if (!mustAsk) return brief;
  return found?.key === key ? found : null;
}
