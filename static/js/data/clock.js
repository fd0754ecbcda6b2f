// The server's time, told by a phone whose own clock may be wrong, moved or asleep.
//
// Each answer of the server gives a sample: its `now` belongs to the middle of
// the exchange, uncertain by half the round trip. The sample with the shortest
// round trip of the last eight is the anchor. From there on the page's
// monotonic clock counts, so moving the phone's wall clock changes nothing.
//
// The monotonic clock stands still on some phones while they sleep. So when
// wall and monotonic clock part while the page was hidden, and the wall clock is
// ahead, the phone slept and the wall clock is believed; when they part in front
// of someone's eyes, the wall clock was moved. Either way a fresh sample is due.

const KEPT = 8;
const PARTED_MS = 1000;
const WARN_MS = 120000;

/** Tells corrected time; pass clocks in to test it. */
export class Clock {
  /**
   * @param {() => number} wall the phone's clock [ms since 1970]
   * @param {() => number} mono a clock that nobody can set [ms]
   */
  constructor(wall = () => Date.now(), mono = () => performance.now()) {
    this.wall = wall;
    this.mono = mono;
    /** @type {{monoMs: number, serverMs: number, qMs: number}[]} */
    this.samples = [];
    this.rate = 1;
    this.sleptMs = 0;
    this.jumpedMs = 0;
    this.hidden = false;
    this.doubt = false;
    this.parted = wall() - mono();
    /** @type {{monoMs: number, serverMs: number, qMs: number | null}} */
    this.anchor = { monoMs: this.steadyMs(), serverMs: wall(), qMs: null };
  }

  /** Milliseconds on the monotonic clock, sleep included. */
  steadyMs() {
    return this.mono() + this.sleptMs;
  }

  /**
   * Compare the two clocks; call at least on every change of visibility.
   *
   * @param {boolean} hidden whether the page is out of sight from now on
   * @returns {boolean} true when a fresh sample is wanted
   */
  observe(hidden = this.hidden) {
    const by = this.wall() - this.mono() - this.parted;
    if (Math.abs(by) > PARTED_MS) {
      this.parted += by;
      if (this.hidden && by > 0) this.sleptMs += by;
      else this.jumpedMs += by;
      this.doubt = true;
    }
    this.hidden = hidden;
    return this.doubt;
  }

  /**
   * Start from what an earlier page learned.
   *
   * @param {{server_ms: number, wall_ms: number, rate: number, q_ms: number} | null} saved as `save` gave it
   */
  restore(saved) {
    if (!saved || this.samples.length) return;
    this.rate = saved.rate;
    const passedMs = (this.wall() - saved.wall_ms) * saved.rate;
    this.anchor = {
      monoMs: this.steadyMs(),
      serverMs: saved.server_ms + passedMs,
      qMs: saved.q_ms,
    };
  }

  /** Return what `restore` of a later page needs; null if never measured. */
  save() {
    if (this.anchor.qMs === null) return null;
    return {
      server_ms: this.nowMs(),
      wall_ms: this.wall(),
      rate: this.rate,
      q_ms: this.anchor.qMs,
    };
  }

  /** Note the start of an exchange; give the result to `learn`. */
  begin() {
    this.observe();
    return this.steadyMs();
  }

  /**
   * Learn from one exchange.
   *
   * @param {number} beganMs what `begin` returned
   * @param {number} serverMs the server's `now` in the answer
   * @param {number} rate server milliseconds per millisecond; 1 except in practice
   */
  learn(beganMs, serverMs, rate = 1) {
    this.observe();
    const endedMs = this.steadyMs();
    const qMs = (endedMs - beganMs) / 2;
    const sample = { monoMs: beganMs + qMs, serverMs, qMs };
    const gapMs = Math.abs(this.at(sample.monoMs) - serverMs);
    const boundMs = (qMs + (this.anchor.qMs ?? 0)) * Math.max(1, rate) + PARTED_MS;
    // Older samples speak of another clock: the server's was set, or ours slept.
    if (rate !== this.rate || gapMs > boundMs) this.samples = [];
    this.rate = rate;
    this.samples = [...this.samples, sample].slice(-KEPT);
    this.anchor = this.samples.reduce((best, next) =>
      next.qMs <= best.qMs ? next : best,
    );
    this.doubt = false;
  }

  /** @param {number} steadyMs */
  at(steadyMs) {
    return this.anchor.serverMs + (steadyMs - this.anchor.monoMs) * this.rate;
  }

  /** Corrected time now, whole milliseconds. */
  nowMs() {
    this.observe();
    return Math.round(this.at(this.steadyMs()));
  }

  /**
   * Return the instants that an entry made now carries.
   *
   * `at_ms + off_ms` is the corrected time, whatever the wall clock says.
   *
   * @param {number|null} observedMs corrected instant of what was seen; now if null
   */
  stamp(observedMs = null) {
    const nowMs = this.nowMs();
    const enteredMs = Math.round(this.wall());
    const offMs = nowMs - enteredMs;
    return {
      at_ms: (observedMs === null ? nowMs : Math.round(observedMs)) - offMs,
      entered_ms: enteredMs,
      mono_ms: Math.round(this.mono()),
      off_ms: offMs,
      off_q_ms: this.anchor.qMs === null ? null : Math.round(this.anchor.qMs),
    };
  }

  /** Return {off_ms, jumped_ms} when a person should look at the phone's clock. */
  warning() {
    // A practice server has a clock of its own on purpose.
    if (this.rate !== 1) return null;
    const offMs = this.nowMs() - Math.round(this.wall());
    const known = this.anchor.qMs !== null;
    if (known && Math.abs(offMs) > WARN_MS) {
      return { off_ms: offMs, jumped_ms: Math.round(this.jumpedMs) };
    }
    if (Math.abs(this.jumpedMs) > WARN_MS && !known) {
      return { off_ms: null, jumped_ms: Math.round(this.jumpedMs) };
    }
    return null;
  }
}

/** The page's clock. */
export const clock = new Clock();

/** Corrected time now, whole milliseconds. */
export function nowMs() {
  return clock.nowMs();
}

/**
 * The phone's time zone at an instant, minutes east of UTC.
 *
 * @param {number} atMs
 */
export function tzMin(atMs) {
  return 0 - new Date(atMs).getTimezoneOffset();
}

/**
 * What a person waits while the server's clock moves so far [ms]; less in practice.
 *
 * @param {number} shownMs
 */
export function waitedMs(shownMs) {
  return shownMs / clock.rate;
}
