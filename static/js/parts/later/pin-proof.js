// What a PIN opens on this phone: the key that proves an act; and how one is set.

class PinError extends Error {
  /**
   * @param {string} key of the catalogue
   * @param {{n?: number, name?: string, span?: string}} [values]
   */
  constructor(key, values = {}) {
    super(key);
    this.name = "PinError";
    this.key = key;
    this.values = values;
  }
}

/**
 * Proofs by PIN, and why one failed.
 *
 * @param {import("../later.js").Kit} kit
 */
export async function make(kit) {
  const {
    freshenPins,
    later,
    me,
    nowMs,
    pins,
    post,
    setTries,
    span,
    t,
    tapper,
    tn,
    triesOf,
    whyOf,
  } = kit;
  const [seal, rule] = await Promise.all([later("seal"), later("pin-tries")]);
  // Browsers have cryptography on https and on the box itself alone.
  const isPlain = !globalThis.crypto?.subtle;

  /** @type {(who: string) => Sealed | undefined} */
  const pinOf = (who) => pins.value?.pins.find((pin) => pin.person === who);

  /** @param {string} who */
  function maySet(who) {
    const isGranted = pins.value?.granted.some(
      (grant) => grant.person === who && grant.until_ms > nowMs(),
    );
    return who === me.value?.person.id || isGranted;
  }

  /** @param {any} problem whatever was thrown */
  function words(problem) {
    if (problem.name === "PinError") {
      const { n } = problem.values;
      return n === undefined ? t(problem.key, problem.values) : tn(problem.key, n);
    }
    if (problem.key === "wrong_pin" && problem.limit)
      return tn("pin.wrong", problem.limit);
    if (problem.retryAfterS) return t("pin.wait", { span: span(problem.retryAfterS) });
    return problem.status === 0 ? t("pin.no_server") : whyOf(problem);
  }

  /** @type {(who: string, path: string, body: object) => Promise<any>} */
  async function onServer(who, path, body) {
    try {
      return await post(`/people/${who}/pin${path}`, body);
    } catch (failure) {
      if (/** @type {{status?: number}} */ (failure).status === 0)
        throw new PinError(isPlain ? "pin.no_server" : "pin.locked");
      throw failure;
    }
  }

  /**
   * Sign with who's key, opened by the PIN.
   *
   * Counted as wrong before it is tried: a reload in between forgets nothing.
   *
   * @param {string} who
   * @param {string} pin
   * @param {(sealed: Sealed) => Uint8Array<ArrayBuffer>} textOf what is signed
   * @returns {Promise<{key: string, sig: string}>}
   */
  async function opened(who, pin, textOf) {
    const tries = await triesOf(who);
    const waitMs = rule.waitMs(tries, Date.now());
    if (waitMs) throw new PinError("pin.wait", { span: span(waitMs / 1000) });
    let tried = pinOf(who);
    // Reset by the owner while the pad was open: no try was wrong.
    if (!tried) throw new PinError("pin.not_here", { name: tapper()?.name });
    const counted = rule.afterWrong(tries, Date.now());
    await setTries(who, counted);
    let sig = await seal.sign(tried, pin, textOf(tried));
    if (!sig) {
      // It may have been changed on another phone.
      await freshenPins().catch(() => {});
      const now = pinOf(who);
      if (now && now.key !== tried.key) {
        tried = now;
        sig = await seal.sign(now, pin, textOf(now));
      }
    }
    if (sig) {
      await setTries(who, null);
      return { key: tried.key, sig };
    }
    const left = rule.left(counted);
    if (left) throw new PinError("pin.wrong", { n: left });
    if (rule.isLocked(counted)) throw new PinError("pin.locked");
    throw new PinError("pin.wait", {
      span: span(rule.waitMs(counted, Date.now()) / 1000),
    });
  }

  /** @type {(event: Entry, pin: string) => Promise<{by: string, key: string, sig: string}>} */
  async function prove(event, pin) {
    const who = /** @type {string} */ (event.person);
    if (!isPlain && !rule.isLocked(await triesOf(who))) {
      return { by: "pin", ...(await opened(who, pin, () => seal.actText(event))) };
    }
    const proof = await onServer(who, "/prove", { pin, act: seal.actOf(event) });
    await setTries(who, null);
    return { by: proof.by, key: proof.key, sig: proof.sig };
  }

  /** @type {(who: string, pin: string, before: ?string) => Promise<void>} */
  async function setPin(who, pin, before) {
    if (isPlain) await onServer(who, "/plain", { pin, before });
    else {
      const made = await seal.newSealed(who, pin);
      const sig =
        before === null
          ? null
          : (await opened(who, before, () => seal.sealedText(made))).sig;
      const { person, ...body } = made;
      await post(`/people/${person}/pin`, { ...body, sig });
    }
    await freshenPins();
  }

  return { isPlain, maySet, opened, pinOf, prove, setPin, words };
}
