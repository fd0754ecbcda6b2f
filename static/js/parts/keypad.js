import { useEffect, useRef, useState } from "preact/hooks";
import { html } from "./html.js";
import { useDraft } from "./draft.js";
import { OfferKeys } from "./offer-keys.js";
import { Tap } from "./tap.js";
import { WhoseLine } from "./whose.js";
import { problemsText } from "./acts.js";
import { refuse } from "./sound.js";
import { nowMs } from "./source.js";
import { clockDay, point, typedText } from "../format.js";
import { t } from "../messages/index.js";

// The phone's own keyboard covers the screen, gives a comma where a point is
// meant, and takes its focus from a wet drop. This pad is the whole entry.

const BOUNCE_MS = 75; // a key bounces within this; a real double digit is slower
/** @import { Figure } from "./acts.js" */
/** @import { Offered } from "./offer-keys.js" */

const DIGITS = ["7", "8", "9", "4", "5", "6", "1", "2", "3"];

/**
 * What the typed text becomes when a key is pressed; null refuses the key.
 *
 * @param {string} typed
 * @param {string} key
 * @param {{decimals: number, signed?: boolean, longest?: number}} form
 */
export function pressed(typed, key, { decimals, signed, longest = 9 }) {
  if (key === "back") return typed.slice(0, -1);
  if (key === "sign") {
    if (!signed) return null;
    return typed.startsWith("-") ? typed.slice(1) : "-" + typed;
  }
  if (key === ".") {
    if (decimals === 0 || typed.includes(".")) return null;
    return /\d$/.test(typed) ? typed + "." : typed + "0.";
  }
  const part = typed.split(".")[1];
  if (part !== undefined && part.length >= decimals) return null;
  if (typed.replace(/\D/g, "").length >= longest) return null;
  return typed === "0" || typed === "-0" ? typed.slice(0, -1) + key : typed + key;
}

/**
 * The typed text moved by one step of its last decimal; starts from `last`.
 *
 * @param {string} typed
 * @param {number} way 1 or -1
 * @param {number} decimals
 * @param {string | number | null} [last]
 */
export function stepped(typed, way, decimals, last) {
  const from = typed === "" || typed === "-" ? Number(last ?? 0) : Number(typed);
  return (from + way / 10 ** decimals).toFixed(decimals);
}

/** @type {Record<string, string>} */
const KEY_OF = { ",": ".", ".": ".", Backspace: "back", "-": "sign", Decimal: "." };

/** @param {KeyboardEvent} event */
function keyOf(event) {
  return /^\d$/.test(event.key) ? event.key : (KEY_OF[event.key] ?? null);
}

/** @param {?{text: string, age?: string} | undefined} last */
function lastWords(last) {
  if (!last) return t("keypad.no_last");
  return t(last.age ? "keypad.last_aged" : "keypad.last", {
    value: last.text,
    age: last.age ?? "",
  });
}

/** @typedef {Figure & {typed: string, unit: string}} Answered */
/** @typedef {"typing" | "asking" | "saving" | "unsaved"} Phase */

/**
 * Number entry: what is asked, what was typed, and one large key to save it.
 *
 * @param {object} props
 * @param {string} props.title
 * @param {string} props.unit
 * @param {number} props.decimals
 * @param {boolean} [props.signed]
 * @param {string} [props.start] typed text to begin with
 * @param {?{typed?: ?string, text: string, age?: string}} [props.last] the value
 *   before, and how old it is
 * @param {Offered[]} [props.offers] values that one tap types and saves
 * @param {(typed: string) => Promise<Figure>} props.read the core's answer
 * @param {(value: number) => string} [props.difference] text beside the last value
 * @param {(ask: any, typed: string) => string} [props.askText] words of a second look
 * @param {(problems: Problem[], typed: string) => string} [props.problemWords] words of
 *   a refusal where a field has its own
 * @param {(value: number, typed: string) => unknown} props.save true when kept
 * @param {string} [props.saveWord]
 * @param {any} [props.hint]
 * @param {string} [props.quantity] whose limits are named in problems
 * @param {() => unknown} props.onBack
 * @param {(typed: string) => unknown} [props.onTyped] after each key, by a pad that
 *   keeps what is half typed itself
 * @param {boolean} [props.isBare] a figure that none came before, so nothing stands
 *   beside it
 * @param {any} [props.aside] beside Save
 * @param {string} [props.wanted] the band in words
 * @param {any} [props.children] shown above the keys
 */
export function Keypad({
  title,
  unit,
  decimals,
  signed = false,
  start = "",
  last,
  read,
  difference,
  askText,
  problemWords,
  save,
  saveWord,
  hint,
  quantity,
  onBack,
  onTyped,
  isBare = false,
  aside = null,
  wanted = "",
  offers = [],
  children,
}) {
  const draft = useDraft(onTyped ? null : `${title} ${unit}`, nowMs);
  const [typed, setTyped] = useState(draft.found?.typed ?? start);
  // A second key may come before the first is painted: it counts from here.
  const newest = useRef(typed);
  const [isFromBefore, setFromBefore] = useState(Boolean(draft.found));
  const [answer, setAnswer] = useState(/** @type {?Answered} */ (null));
  const [phase, setPhase] = useState(/** @type {Phase} */ ("typing"));
  const [denied, setDenied] = useState(/** @type {?string} */ (null)); // the key that could not be taken

  useEffect(() => {
    let isCurrent = true;
    if (typed === "" || typed === "-") {
      setAnswer(null);
      return undefined;
    }
    read(typed).then((figure) => isCurrent && setAnswer({ ...figure, typed, unit }));
    return () => {
      isCurrent = false;
    };
  }, [typed, unit]);

  const become = (/** @type {string} */ next) => {
    newest.current = next;
    setTyped(next);
    setPhase("typing");
    setDenied(null);
    setFromBefore(false);
    draft.hold(next === start ? "" : next);
    onTyped?.(next);
  };
  const press = (/** @type {string} */ key) => {
    const next = pressed(newest.current, key, { decimals, signed });
    if (phase === "saving") return;
    if (next !== null) return become(next);
    // A digit that vanishes in silence would be a value silently changed.
    refuse();
    setDenied(key);
  };
  const step = (/** @type {number} */ way) =>
    become(stepped(newest.current, way, decimals, last?.typed ?? offers[0]?.typed));
  // An answer to other digits, or to these in another unit, is none.
  const isAnswered = answer?.typed === typed && answer.unit === unit;
  const refused = isAnswered ? answer.problems : [];
  const value = isAnswered && refused.length === 0 ? answer.value : null;
  const isReady = value !== null;
  const keepValue = async (
    /** @type {number} */ figure,
    /** @type {string} */ text,
  ) => {
    setPhase("saving");
    const isKept = await save(figure, text);
    if (isKept) draft.drop();
    setPhase(isKept ? "typing" : "unsaved");
  };
  const keep = () => value !== null && keepValue(value, typed);
  const take = async (/** @type {string} */ text) => {
    if (phase === "saving") return;
    become(text);
    const figure = await read(text);
    if (newest.current !== text) return; // typed on meanwhile
    setAnswer({ ...figure, typed: text, unit });
    if (figure.problems.length || figure.value === null) return;
    if (figure.ask) setPhase("asking");
    else keepValue(figure.value, text);
  };
  const onSave = () => {
    if (!isReady || phase === "saving" || newest.current !== typed) return;
    // The answer to this lies above, never where Save was just tapped.
    if (answer?.ask) setPhase("asking");
    else keep();
  };
  useEffect(() => {
    const onKey = (/** @type {KeyboardEvent} */ event) => {
      if (/** @type {Element} */ (event.target).matches?.("input, textarea")) return;
      const key = keyOf(event);
      if (key) {
        event.preventDefault();
        press(key);
      }
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  });

  /** @type {(name: string, shown: string, spoken?: string, look?: string) => any} */
  const key = (name, shown, spoken, look = "") => html`<${Tap} steady
    class=${"key " + look} guardMs=${BOUNCE_MS} label=${spoken} onTap=${() => press(name)}>${shown}</${Tap}>`;
  const isAsking = phase === "asking";
  const isRefused = refused.length > 0;
  const shownOffers = typed === "" && !isAsking ? offers : [];
  const [again, others] = ["last", "wanted"].map((why) =>
    shownOffers.filter((one) => one.why === why),
  );
  const refusal = () =>
    problemWords ? problemWords(refused, typed) : problemsText(refused, quantity);
  const deniedWords = () => {
    if (denied === "." && decimals > 0) return t("keypad.one_point");
    return newest.current.includes(".") || denied === "."
      ? t("keypad.decimals", { n: decimals })
      : t("keypad.full");
  };
  const says = () => {
    if (phase === "unsaved") return t("keypad.unsaved");
    if (isRefused) return refusal();
    if (denied) return deniedWords();
    return isFromBefore && draft.found
      ? t("keypad.from_before", { at: clockDay(draft.found.at_ms, nowMs()) })
      : "";
  };
  /** @type {(way: number, shown: string, spoken: string) => any} */
  const stepKey = (way, shown, spoken) => html`<${Tap} steady
    class="key key-step" guardMs=${BOUNCE_MS} label=${spoken} onTap=${() => step(way)}>${shown}</${Tap}>`;
  // The order is that of giving way: what stands last in .keypad-more is scrolled
  // out first; title, value, keys and Save never are. See keypad.css.
  return html`<section class="keypad" aria-label=${title}>
    <div class="keypad-title">
      <${Tap} class="back" onTap=${onBack}>‹ ${t("word.back")}</${Tap}>
      <div class="keypad-name"><h2>${title}</h2><${WhoseLine} /></div>
    </div>
    <div class=${`entered ${phase === "unsaved" || isRefused ? "is-bad" : ""} ${isFromBefore ? "is-from-before" : ""}`} aria-live="polite">
      <span class="entered-value">${typed ? typedText(typed) : "–"}</span>
      <span class="entered-unit">${unit}</span>
      ${signed ? key("sign", "+/−", t("keypad.sign"), "key-sign") : null}
    </div>
    <p class=${isRefused || phase === "unsaved" ? "keypad-says is-bad" : "keypad-says"} role="status">${says()}</p>
    <div class="keypad-more">
      ${isAsking ? html`<p class="lead is-asking" role="alert">${askText?.(answer?.ask, typed)}</p>` : children}
      ${wanted ? html`<p>${t("keypad.wanted", { band: wanted })}</p>` : null}
      ${hint ? html`<p class="quiet">${hint}</p>` : null}
      ${
        isBare
          ? null
          : html`<div class="keypad-last">
        ${stepKey(-1, "−", t("keypad.less"))}
        ${
          again.length
            ? html`<${OfferKeys} offers=${again} title=${title} onTake=${take} />`
            : html`<p>${lastWords(last)}
          ${value !== null && last && difference ? html` <b>${difference(value)}</b>` : null}</p>`
        }
        ${stepKey(1, "+", t("keypad.more"))}
      </div>
      <${OfferKeys} offers=${others} title=${title} onTake=${take} />`
      }
    </div>
    ${
      isAsking
        ? null
        : html`<div class="keys">
      ${DIGITS.map((digit) => key(digit, digit))}
      ${decimals > 0 ? key(".", point(), t("keypad.point")) : html`<span></span>`}
      ${key("0", "0")}
      ${key("back", "⌫", t("keypad.back"))}
    </div>`
    }
    <div class="foot">
      ${
        isAsking
          ? html`<${Tap} key="keep" class="primary is-check" onTap=${keep}>${t("keypad.keep_it", { value: typedText(typed), unit })}</${Tap}>
          <${Tap} key="again" class="second tall" onTap=${() => setPhase("typing")}>${t("keypad.change")}</${Tap}>`
          : html`<${Tap} key="save" class="primary" disabled=${!isReady || phase === "saving"} onTap=${onSave}>${saveWord ?? t("keypad.save")}</${Tap}>${aside}`
      }
    </div>
  </section>`;
}
