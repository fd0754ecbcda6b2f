import { signal } from "@preact/signals";
import { useEffect, useState } from "preact/hooks";
import { whyOf } from "../../parts/acts.js";
import { ask } from "../../parts/source.js";

// Laying out every sum takes a slow phone a third of a second: the list comes from
// the keys alone, and a topic is laid out when one of its sums is opened.

const topics = signal(/** @type {SumTopic[] | null} */ (null));
const layouts = signal(/** @type {Record<string, SumRow[]>} */ ({}));
export const catalogueProblem = signal(/** @type {string | null} */ (null));
/** @type {Set<string>} */
const asked = new Set();

/**
 * @param {string} name
 * @param {() => Promise<void>} load
 */
async function askOnce(name, load) {
  if (asked.has(name)) return;
  asked.add(name);
  try {
    await load();
    catalogueProblem.value = null;
  } catch (problem) {
    catalogueProblem.value = whyOf(problem);
    asked.delete(name);
  }
}

async function loadTopics() {
  topics.value = await ask.sumsTopics();
}

/** @param {string} key */
async function loadTopic(key) {
  const rows = await ask.sumsCatalogue({ topic: key });
  layouts.value = { ...layouts.value, [key]: rows };
}

/** Topics with the keys of their sums, in the order of a make; null until the core has said. */
export function useTopics() {
  useEffect(() => {
    askOnce("", loadTopics);
  }, []);
  return topics.value;
}

/**
 * One sum's row of the catalogue; null until its topic is there, or where there is
 * no such sum.
 *
 * @param {string} key
 */
export function useSum(key) {
  const topic = useTopics()?.find((one) => one.sums.includes(key))?.key;
  useEffect(() => {
    if (topic) askOnce(topic, () => loadTopic(topic));
  }, [topic]);
  return sumRow(key);
}

/**
 * One sum of a topic that is there already, or null.
 *
 * @param {string} key
 */
export function sumRow(key) {
  return (
    Object.values(layouts.value)
      .flat()
      .find((sum) => sum.key === key) ?? null
  );
}

/**
 * The core's answer to a sum of its own; the last one stays until the next is there.
 *
 * @param {string} key
 * @param {Record<string, SumGiven>} given
 */
export function useAnswer(key, given) {
  const [answer, setAnswer] = useState(/** @type {Answer | null} */ (null));
  useEffect(() => {
    let isCurrent = true;
    ask.sum({ sum: key, given }).then(
      (answered) => isCurrent && setAnswer(answered),
      (problem) => {
        if (isCurrent) catalogueProblem.value = whyOf(problem);
      },
    );
    return () => {
      isCurrent = false;
    };
  }, [key, given]);
  return answer?.key === key ? answer : null;
}
