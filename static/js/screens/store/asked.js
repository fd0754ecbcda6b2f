import { useEffect, useState } from "preact/hooks";
import { lastAct, whyOf } from "../../parts/acts.js";
import { ask, board } from "../../parts/source.js";

/** @typedef {{view: View, step: Step, sums: Answer[]}} Ageing a make in the store */

// Asked again after each entry: the board is painted anew then.

/**
 * @template T
 * @param {() => Promise<T>} question
 * @param {string[]} wanted what the question asks about
 */
function useDesk(question, wanted) {
  const [answer, setAnswer] = useState({
    value: /** @type {T | null} */ (null),
    problem: "",
  });
  useEffect(() => {
    let isCurrent = true;
    question().then(
      (value) => isCurrent && setAnswer({ value, problem: "" }),
      (failure) =>
        isCurrent && setAnswer((before) => ({ ...before, problem: whyOf(failure) })),
    );
    return () => {
      isCurrent = false;
    };
  }, [board.value, lastAct.value, ...wanted]);
  return answer;
}

/** The account of every tank: {value, problem}. */
export function useTanks() {
  return useDesk(() => ask.tanks(), []);
}

/**
 * Every entry of a tank, newest first.
 *
 * @param {string} tank
 */
export function useLedger(tank) {
  return useDesk(async () => [...(await ask.record({ make: tank }))].reverse(), [tank]);
}

/**
 * One make in the store: its view, its store step and that step's sums; null when it
 * is not there yet.
 *
 * @param {string} make
 * @returns {Promise<Ageing | null>}
 */
export async function ageingOf(make) {
  const view = await ask.view({ make });
  const key = view?.make.store_step;
  const step = key && (await ask.step({ make, step: key }));
  if (!view || !step) return null;
  const sums = await ask.stepSums({ make, step: step.key });
  return { view, step, sums };
}

/** Every make that is out of the press, newest first. */
export function ageingMakes() {
  const { makes = [], ripening = [] } = board.value ?? {};
  return ripening.flatMap((id) => makes.filter((make) => make.id === id));
}

/**
 * What is known of some of them, by id, one asked after the other; they appear as
 * they come.
 *
 * @param {string[]} ids
 */
export function useAgeing(ids) {
  const [known, setKnown] = useState(/** @type {Record<string, Ageing | null>} */ ({}));
  const [problem, setProblem] = useState("");
  const wanted = ids.join();
  useEffect(() => {
    let isCurrent = true;
    const askAll = async () => {
      for (const id of wanted ? wanted.split(",") : []) {
        if (!isCurrent) return;
        const ageing = await ageingOf(id);
        if (isCurrent) setKnown((before) => ({ ...before, [id]: ageing }));
      }
    };
    askAll().catch((failure) => isCurrent && setProblem(whyOf(failure)));
    return () => {
      isCurrent = false;
    };
  }, [wanted, board.value, lastAct.value]);
  return { known, problem };
}

/**
 * One make of them.
 *
 * @param {string} make
 */
export function useAgeingOf(make) {
  return useDesk(() => ageingOf(make), [make]);
}
