import { useEffect, useState } from "preact/hooks";
import { whyOf } from "./acts.js";
import { ask, core, get } from "./source.js";

/**
 * A phone lets go of finished makes after a while; the server keeps them all.
 *
 * @param {string} make
 * @returns {Promise<Curve>}
 */
async function curveOf(make) {
  const mine = await ask.curve({ make }).catch(() => null);
  return mine ?? get(`/makes/${make}/curve`);
}

/**
 * The course of a make, and why it could not be had; the last one is kept meanwhile.
 *
 * @param {string} make
 * @param {number} changedMs when it may have changed
 */
export function useCurve(make, changedMs) {
  const [curve, setCurve] = useState(/** @type {Curve | null} */ (null));
  const [problem, setProblem] = useState("");
  const isStarting = core.value === "starting";
  useEffect(() => {
    if (isStarting) return undefined; // until it has its entries it knows no make
    let isCurrent = true;
    const told = (/** @type {Curve | null} */ found, /** @type {string} */ why) => {
      if (!isCurrent) return;
      if (found) setCurve(found);
      setProblem(why);
    };
    curveOf(make).then(
      (found) => told(found, ""),
      (failure) => told(null, whyOf(failure)),
    );
    return () => {
      isCurrent = false;
    };
  }, [make, changedMs, isStarting]);
  return { curve, problem };
}
