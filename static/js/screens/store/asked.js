import { useEffect, useState } from 'preact/hooks';
import { lastAct, whyOf } from '../../parts/acts.js';
import { board, call, nowMs } from '../../parts/source.js';

// Asked again after each entry: the board is painted anew then.

function useDesk(question, wanted) {
  const [answer, setAnswer] = useState({ value: null, problem: '' });
  useEffect(() => {
    let isCurrent = true;
    question().then(
      (value) => isCurrent && setAnswer({ value, problem: '' }),
      (failure) => isCurrent && setAnswer((before) => ({ ...before, problem: whyOf(failure) })),
    );
    return () => { isCurrent = false; };
  }, [board.value, lastAct.value, ...wanted]);
  return answer;
}

/** The account of every tank: {value, problem}. */
export function useTanks() {
  return useDesk(() => call('desk', 'tanks', [nowMs()], { desk: true }), []);
}

/** Every entry of a tank, newest first. */
export function useLedger(tank) {
  return useDesk(async () => [...await call('desk', 'record', [tank], { desk: true })].reverse(), [tank]);
}

// The step whose sums tell of ripening: the last one in the store.
function storeStep(view) {
  return view.steps.filter((one) => one.place === 'store').pop() ?? null;
}

function isOutOfThePress(view) {
  return view.steps.some((one) => ['brine', 'store'].includes(one.place) && one.status !== 'waiting')
    || view.make.state === 'closed';
}

/** One make in the store: its view, its store step and that step's sums; null when it is not there yet. */
export async function ageingOf(make) {
  const view = await call('desk', 'view', [make, nowMs()], { desk: true });
  const step = view && storeStep(view);
  if (!step || view.make.state === 'abandoned' || !isOutOfThePress(view)) return null;
  const sums = await call('desk', 'step_sums', [make, step.key, nowMs()], { desk: true });
  const full = await call('desk', 'step', [make, step.key, nowMs()], { desk: true });
  return { view, step: full ?? step, sums };
}

const SHOWN = 12;

/** The newest makes that are out of the press, one after the other. */
export function useAgeing() {
  return useDesk(async () => {
    const makes = (board.value?.makes ?? []).filter((one) => one.state !== 'abandoned').slice(0, SHOWN);
    const found = [];
    for (const make of makes) found.push(await ageingOf(make.id));
    return found.filter(Boolean);
  }, []);
}

/** One make of them. */
export function useAgeingOf(make) {
  return useDesk(() => ageingOf(make), [make]);
}
