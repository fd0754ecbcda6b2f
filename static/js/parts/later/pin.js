// Ask for a PIN before an act is recorded; set one where there is none yet, change it.

/** @import { Tries } from "../../data/pins.js" */

/**
 * The two ways to be asked for a PIN.
 *
 * @param {import("../later.js").Kit} kit
 */
export async function make(kit) {
  const {
    act,
    ask,
    freshenPins,
    html,
    later,
    me,
    pins,
    restorePins,
    secondMs,
    Sheet,
    span,
    t,
    tapper,
    triesOf,
    useEffect,
    useState,
  } = kit;
  const [{ PinPad }, proof, rule] = await Promise.all([
    later("pin-pad"),
    later("pin-proof"),
    later("pin-tries"),
  ]);
  const { isPlain, maySet, opened, pinOf, prove, setPin, words } = proof;

  // One try at a time; what went wrong stands in words until the next.
  /** @param {(pin: string) => unknown} work */
  function useTries(work) {
    const [state, setState] = useState({ problem: "", tries: 0, isBusy: false });
    const run = async (/** @type {string} */ pin) => {
      setState({ ...state, problem: "", isBusy: true });
      let problem = "";
      try {
        await work(pin);
      } catch (failure) {
        problem = words(failure);
      }
      setState({ problem, tries: state.tries + 1, isBusy: false });
    };
    return { ...state, run };
  }

  /**
   * @param {string} who
   * @param {number} tries
   */
  function useWait(who, tries) {
    const [kept, setKept] = useState(/** @type {?Tries} */ (null));
    useEffect(() => {
      triesOf(who).then(setKept, () => {});
    }, [who, tries]);
    const leftMs = secondMs.value && rule.waitMs(kept, Date.now());
    return leftMs > 0 && !isPlain
      ? t("pin.wait", { span: span(Math.ceil(leftMs / 1000)) })
      : "";
  }

  const Plain = () => (isPlain ? html`<p class="quiet">${t("pin.plain")}</p>` : null);

  /**
   * Two screens: choose, and the same again.
   *
   * @param {{title: string, name: string, onSet: (pin: string) => unknown,
   *   onBack: () => unknown, aside?: any}} props
   */
  function NewPin({ title, name, onSet, onBack, aside }) {
    const [first, setFirst] = useState(/** @type {?string} */ (null));
    const [differs, setDiffers] = useState(false);
    const choosing = useTries(async (pin) => {
      setDiffers(false);
      const problems = await ask.checkPin({ pin });
      if (problems.length) throw Object.assign(new Error(), { problems });
      setFirst(pin);
    });
    const again = useTries(async (pin) => {
      if (pin === first) return onSet(pin);
      setDiffers(true);
      return setFirst(null);
    });
    if (first === null) {
      return html`<${PinPad} key="choose" title=${title} lead=${t("pin.choose", { name })} word=${t("pin.next")} onPin=${choosing.run} onBack=${onBack}
        problem=${choosing.problem || (differs ? t("pin.differs") : "")} tries=${choosing.tries} isBusy=${choosing.isBusy} aside=${aside}><${Plain} /></${PinPad}>`;
    }
    return html`<${PinPad} key="again" title=${title} lead=${t("pin.again")} word=${t("pin.keep")} onPin=${again.run} onBack=${() => setFirst(null)}
      problem=${again.problem} tries=${again.tries} isBusy=${again.isBusy} aside=${aside} />`;
  }

  function useKnown() {
    const [isKnown, setKnown] = useState(false);
    useEffect(() => {
      restorePins().then(
        () => setKnown(true),
        () => setKnown(true),
      );
      freshenPins().catch(() => {});
    }, []);
    return isKnown && pins.value !== null;
  }

  /** @param {{title: string, text: string, onBack: () => unknown, aside?: any}} props */
  function Nothing({ title, text, onBack, aside }) {
    return html`<${Sheet} title=${title} onBack=${onBack} foot=${aside}><p class="lead" role="status">${text}</p></${Sheet}>`;
  }

  /**
   * Ask for the PIN of who taps, then record the act; see parts/pin.js.
   *
   * @param {import("../pin.js").Asked & {Hurry: typeof import("../pin.js").Hurry}} props
   */
  function PinStep(props) {
    const { title, doWord, kind, given, said, asked, onDone, onBack, Hurry } = props;
    const [who] = useState(/** @type {Person} */ (tapper()));
    const isKnown = useKnown();
    const record = async (/** @type {string} */ pin) => {
      const event = await act(
        kind,
        {
          ...given,
          by: who.id,
          prove: (/** @type {Entry} */ made) => prove(made, pin),
        },
        said,
      );
      if (event) onDone();
    };
    const entering = useTries(record);
    const wait = useWait(who.id, entering.tries);
    const aside = asked === "phone" ? html`<${Hurry} ...${props} />` : null;
    const hint = aside
      ? html`<p class="quiet">${t("pin.hurry_detail", { name: me.value?.person.name })}</p>`
      : null;
    const first = async (/** @type {string} */ pin) => {
      await setPin(who.id, pin, null);
      await record(pin);
    };
    if (!isKnown)
      return html`<${Nothing} title=${title} text=${t("pin.opening")} onBack=${onBack} aside=${aside} />`;
    if (pinOf(who.id)) {
      return html`<${PinPad} title=${title} lead=${t("pin.enter", { name: who.name })} word=${doWord} onPin=${entering.run} onBack=${onBack}
        problem=${wait || entering.problem} isOff=${Boolean(wait)} tries=${entering.tries} isBusy=${entering.isBusy} aside=${aside}>${hint}<${Plain} /></${PinPad}>`;
    }
    if (!maySet(who.id))
      return html`<${Nothing} title=${title} text=${t("pin.not_here", { name: who.name })} onBack=${onBack} aside=${aside} />`;
    return html`<${NewPin} title=${title} name=${who.name} onSet=${first} onBack=${onBack} aside=${aside} />`;
  }

  /** The PIN of who taps: set or changed. */
  function PinScreen() {
    const [who] = useState(/** @type {Person} */ (tapper()));
    const [before, setBefore] = useState(/** @type {?string} */ (null));
    const [isSet, setDone] = useState(false);
    const isKnown = useKnown();
    const back = () => history.back();
    const had = pinOf(who.id);
    // Looked at before two more screens: a slip is told where it was made.
    const checking = useTries(async (pin) => {
      if (!isPlain) await opened(who.id, pin, () => new Uint8Array(1));
      setBefore(pin);
    });
    const wait = useWait(who.id, checking.tries);
    const keep = async (/** @type {string} */ pin) => {
      await setPin(who.id, pin, had ? before : null);
      setDone(true);
    };
    const title = t("pin.of", { name: who.name });
    if (isSet)
      return html`<${Nothing} title=${title} text=${t("pin.done")} onBack=${back} />`;
    if (!isKnown)
      return html`<${Nothing} title=${title} text=${t("pin.opening")} onBack=${back} />`;
    if (had && before === null) {
      return html`<${PinPad} title=${title} lead=${t("pin.before", { name: who.name })} word=${t("pin.next")} onPin=${checking.run} onBack=${back}
        problem=${wait || checking.problem} isOff=${Boolean(wait)} tries=${checking.tries} isBusy=${checking.isBusy}><p class="quiet">${t("pin.forgotten")}</p><${Plain} /></${PinPad}>`;
    }
    if (!had && !maySet(who.id))
      return html`<${Nothing} title=${title} text=${t("pin.not_here", { name: who.name })} onBack=${back} />`;
    return html`<${NewPin} title=${title} name=${who.name} onSet=${keep} onBack=${back} />`;
  }

  return { PinStep, PinScreen };
}
