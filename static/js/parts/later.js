import { useEffect, useRef, useState } from "preact/hooks";
import { effect, signal } from "@preact/signals";
import { html } from "./html.js";
import * as acts from "./acts.js";
import { silenceAlarm } from "./alarm-bar.js";
import { alarmText, alarmWhose } from "./alarm-words.js";
import { alertText } from "./alert-line.js";
import { Countdown } from "./countdown.js";
import { HoldBar } from "./hold-bar.js";
import { may, tapper } from "./people-names.js";
import { Row, Sheet } from "./sheet.js";
import { MainFigure } from "./step-card.js";
import { StateMark } from "./state-mark.js";
import { stepTitle } from "./step-title.js";
import { pressTap, Tap } from "./tap.js";
import { secondMs } from "./ticker.js";
import { whoseOf } from "./whose.js";
import * as source from "./source.js";
import { alarms, ring } from "../data/alarm.js";
import { clock, span } from "../format.js";
import { own, t, tn } from "../messages/index.js";
import { route } from "../router.js";

// Parts that the first screen does without are files of their own. They import
// nothing: phones load one packed page, and a second copy of its modules would
// have signals of its own. So each is a function of this kit. The service worker
// keeps them in quiet time, so that they are there without a network.
const KIT = {
  alarms,
  alarmText,
  alarmWhose,
  alertText,
  clock,
  Countdown,
  effect,
  HoldBar,
  html,
  later,
  MainFigure,
  may,
  own,
  pressTap,
  ring,
  route,
  Row,
  secondMs,
  Sheet,
  signal,
  silenceAlarm,
  span,
  StateMark,
  stepTitle,
  t,
  Tap,
  tapper,
  tn,
  useEffect,
  useRef,
  useState,
  whoseOf,
  ...acts,
  ...source,
};

/**
 * What only the screens know.
 *
 * @typedef {object} FromScreens
 * @property {(step: Step) => string} buttonWords
 * @property {(view: View) => ?Step} stepShown
 */
/**
 * What each of these parts is made from.
 *
 * @typedef {typeof KIT & FromScreens
 *   & Pick<typeof import("./hands.js"), "learning" | "pedal" | "voice">} Kit
 */
/**
 * @typedef {{
 *   hands: typeof import("./later/hands.js"),
 *   pedal: typeof import("./later/pedal.js"),
 *   pin: typeof import("./later/pin.js"),
 *   "pin-pad": typeof import("./later/pin-pad.js"),
 *   "pin-proof": typeof import("./later/pin-proof.js"),
 *   "pin-tries": typeof import("./later/pin-tries.js"),
 *   seal: typeof import("./later/seal.js"),
 *   voice: typeof import("./later/voice.js"),
 *   "wet-lock": typeof import("./later/wet-lock.js"),
 * }} Parts
 */

const FOLDER = "/js/parts/later/";

/** @type {Map<keyof Parts, Promise<any>>} */
const asked = new Map();

/**
 * Fetch one of these parts; rejects when it is not on this phone.
 *
 * @template {keyof Parts} N
 * @param {N} name
 * @returns {Promise<Awaited<ReturnType<Parts[N]["make"]>>>}
 */
export function later(name) {
  const known = asked.get(name);
  if (known) return known;
  const coming = import(`${FOLDER}${name}.js`).then((module) => module.make(KIT));
  coming.catch(() => asked.delete(name));
  asked.set(name, coming);
  return coming;
}

/**
 * Hand these parts what only the screens know.
 *
 * @param {Partial<Kit>} more
 */
export function addToKit(more) {
  Object.assign(KIT, more);
}

/**
 * A component of such a part, and what stands there until it has come.
 *
 * @param {{part: keyof Parts, name: string, children?: any, onFail?: () => unknown}
 *   & Record<string, any>} props
 */
export function Later({ part, name, children = null, onFail, ...rest }) {
  const [module, setModule] = useState(/** @type {?Record<string, any>} */ (null));
  useEffect(() => {
    let isCurrent = true;
    later(part).then(
      (made) => isCurrent && setModule(made),
      () => isCurrent && onFail?.(),
    );
    return () => {
      isCurrent = false;
    };
  }, [part]);
  return module ? html`<${module[name]} ...${rest} />` : children;
}
