// The pad for a PIN: large keys for wet hands, digits as dots, and a look at them.

const DIGITS = ["7", "8", "9", "4", "5", "6", "1", "2", "3"];
const BOUNCE_MS = 75; // a key bounces within this; a real double digit is slower
const LONGEST = 8; // as many as a PIN may have, see server/core/log/pin.py

/** @param {import("../later.js").Kit} kit */
export function make({ html, Tap, t, tn, useEffect, useRef, useState }) {
  /**
   * @param {{title: string, lead: string, word: string, onPin: (pin: string) => unknown,
   *   onBack: () => unknown, problem?: string, tries?: number, isBusy?: boolean,
   *   isOff?: boolean, aside?: any, children?: any}} props
   *   word: of the large key; problem: in words; tries: a count, the pad is emptied
   *   when it moves; isOff: nothing is taken now; aside: beside the large key
   */
  function PinPad({
    title,
    lead,
    word,
    onPin,
    onBack,
    problem,
    tries = 0,
    isBusy,
    isOff,
    aside,
    children,
  }) {
    const [pin, setPin] = useState("");
    const [isSeen, setSeen] = useState(false);
    // A second key may come before the first is painted: it counts from here.
    const newest = useRef("");
    const become = (/** @type {string} */ next) => {
      newest.current = next;
      setPin(next);
    };
    useEffect(() => {
      become("");
      setSeen(false);
    }, [tries]);
    const press = (/** @type {string} */ key) => {
      if (isBusy || isOff) return;
      if (key === "back") become(newest.current.slice(0, -1));
      else if (newest.current.length < LONGEST) become(newest.current + key);
    };
    useEffect(() => {
      const onKey = (/** @type {KeyboardEvent} */ event) => {
        const key = event.key === "Backspace" ? "back" : event.key;
        if (!/^(\d|back)$/.test(key)) return;
        event.preventDefault();
        press(key);
      };
      addEventListener("keydown", onKey);
      return () => removeEventListener("keydown", onKey);
    });
    /** @type {(name: string, shown: string, spoken?: string) => any} */
    const key = (name, shown, spoken) =>
      html`<${Tap} steady class="key" guardMs=${BOUNCE_MS} label=${spoken} onTap=${() => press(name)}>${shown}</${Tap}>`;
    const isReady = pin.length > 0 && !isBusy && !isOff;
    return html`<section class="keypad pin-pad" aria-label=${title}>
      <div class="keypad-title"><${Tap} class="back" onTap=${onBack}>‹ ${t("word.back")}</${Tap}><div class="keypad-name"><h2>${title}</h2></div></div>
      <div class=${problem ? "entered is-bad" : "entered"} aria-live="polite">
        <span class="entered-value" role="img" aria-label=${isSeen ? pin : tn("pin.digits", pin.length)}>${isSeen ? pin || "–" : "●".repeat(pin.length) || "–"}</span>
      </div>
      <p class=${problem ? "keypad-says is-bad" : "keypad-says"} role="status">${isBusy ? t("pin.checking") : problem}</p>
      <div class="keypad-more"><p>${lead}</p>${children}</div>
      <div class="keys">
        ${DIGITS.map((digit) => key(digit, digit))}
        <${Tap} steady class="key key-peek" pressed=${isSeen} label=${t("pin.peek")} onTap=${() => setSeen(!isSeen)}>${isSeen ? "●●●" : "123"}</${Tap}>
        ${key("0", "0")}
        ${key("back", "⌫", t("keypad.back"))}
      </div>
      <div class="foot"><${Tap} class="primary" disabled=${!isReady} onTap=${() => onPin(newest.current)}>${word}</${Tap}>${aside}</div>
    </section>`;
  }

  return { PinPad };
}
