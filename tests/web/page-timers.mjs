// A page's timers, held: what would come later comes when the test lets time pass.
// On a slow machine nothing then happens between two lines of a test by itself.

/**
 * Make the timers of one page. Only what is asked for at once (0 ms) comes by itself.
 *
 * @returns {{fakes: object, pass: (ms: number) => number, soon: () => number}}
 *   fakes are the four functions of a browser; pass(ms) runs what falls due within
 *   ms, in order, and returns how many; soon() counts what will come by itself.
 */
export function heldTimers() {
  const held = new Map();
  let count = 0;
  let nowMs = 0;
  const run = (id) => {
    const timer = held.get(id);
    if (!timer) return; // cleared meanwhile
    if (timer.everyMs === null) held.delete(id);
    else timer.atMs += timer.everyMs;
    timer.work();
  };
  const hold = (work, ms, everyMs) => {
    count += 1;
    const id = count;
    held.set(id, { work, atMs: nowMs + ms, everyMs, isSoon: ms === 0 });
    if (ms === 0) setImmediate(run, id);
    return id;
  };
  const clear = (id) => void held.delete(id);
  const nextBy = (endMs) =>
    [...held]
      .filter(([, { atMs, isSoon }]) => !isSoon && atMs <= endMs)
      .sort(([, one], [, other]) => one.atMs - other.atMs)[0];
  const pass = (ms) => {
    const endMs = nowMs + ms;
    let ran = 0;
    for (let next = nextBy(endMs); next; next = nextBy(endMs)) {
      nowMs = Math.max(nowMs, next[1].atMs);
      run(next[0]);
      ran += 1;
    }
    nowMs = endMs;
    return ran;
  };
  return {
    fakes: {
      setTimeout: (work, ms = 0) => hold(work, ms, null),
      setInterval: (work, ms) => hold(work, ms, ms),
      clearTimeout: clear,
      clearInterval: clear,
    },
    pass,
    soon: () => [...held.values()].filter(({ isSoon }) => isSoon).length,
  };
}
