import { useEffect, useState } from "preact/hooks";
import { whyOf } from "./acts.js";
import { get } from "./source.js";

/**
 * Ask the server for something that this phone does not keep.
 *
 * @template [T=any] what the server answers at this address
 * @param {string} path
 * @returns {{value: ?T, problem: ?string, again: () => void}} value null until it
 *   came; problem in words
 */
export function useAsked(path) {
  const [answer, setAnswer] = useState(
    /** @type {{value: ?T, problem: ?string}} */ ({ value: null, problem: null }),
  );
  const [round, setRound] = useState(0);
  useEffect(() => {
    let isCurrent = true;
    get(path).then(
      (value) => isCurrent && setAnswer({ value, problem: null }),
      (problem) => isCurrent && setAnswer({ value: null, problem: whyOf(problem) }),
    );
    return () => {
      isCurrent = false;
    };
  }, [path, round]);
  return { ...answer, again: () => setRound(round + 1) };
}
