import { signal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { whyOf } from '../../parts/acts.js';
import { call } from '../../parts/source.js';
import { learnUnits } from './units.js';

/** Every sum of the core, in the order of a make; null until asked for. */
export const catalogue = signal(null);
export const catalogueProblem = signal(null);
let asking = null;

async function ask() {
  const rows = await call('desk', 'sums_catalogue', [], { desk: true });
  const inputs = rows.flatMap((row) => row.inputs.flatMap((one) => [one, ...(one.columns ?? [])]));
  await learnUnits(inputs);
  catalogue.value = rows;
  catalogueProblem.value = null;
}

/** Load the catalogue when a screen first needs it. */
export function useCatalogue() {
  useEffect(() => {
    if (catalogue.value) return;
    asking ??= ask().catch((problem) => { catalogueProblem.value = whyOf(problem); asking = null; });
  }, []);
  return catalogue.value;
}

/** One sum of the catalogue, or null. */
export function sumRow(key) {
  return catalogue.value?.find((row) => row.key === key) ?? null;
}

/** The core's answer to a sum of its own; the last one stays until the next is there. */
export function useAnswer(key, given) {
  const [answer, setAnswer] = useState(null);
  useEffect(() => {
    let isCurrent = true;
    call('desk', 'sum', [key, given], { desk: true }).then(
      (found) => isCurrent && setAnswer(found),
      (problem) => { if (isCurrent) catalogueProblem.value = whyOf(problem); },
    );
    return () => { isCurrent = false; };
  }, [key, given]);
  return answer?.key === key ? answer : null;
}
